//! Nobody finds a sentence outside the tables: no text of two words stands in the code of the
//! page, of drawings, of what is written for others, or of the physics.
//!
//! Tests say sentences, and so do attributes, comments and what only programmers read:
//! [`FOR_PROGRAMMERS`] and the messages of panics.

use std::fs;
use std::path::{Path, PathBuf};

use proc_macro2::{Delimiter, TokenStream, TokenTree};

/// Rooms that hold no sentences, under `crates/`.
const ROOMS: [&str; 5] = ["stability", "lesson", "link", "drawing", "web"];

/// What a reader of the console, a caller of the crate or a browser sees.
const FOR_PROGRAMMERS: [&str; 25] = [
    // Why a program's call or the document is refused.
    "not a design: {detail}",
    "a part of the module could not be loaded",
    "it is no object",
    "there is no window",
    "there is no document",
    "the document is empty",
    "an element is gone",
    "the page has no element #{id}",
    "the drawing #{id} has no group {key}",
    // What serde is told, or tells: it comes behind a sentence that says so.
    "there are more swings than a rocket can have: {COUNTED} that count, {MOST_OUTCOMES} in all",
    " at line {line} column {column}",
    "an object",
    "duplicate field `{key}`",
    "a seal is eight hexadecimal digits",
    // What a table in a text stands between, in every language.
    "--- noseward table ---",
    "--- end of noseward table ---",
    // Selectors, queries and type.
    "13px system-ui, Segoe UI, Roboto, Noto Sans, sans-serif",
    "bold 100px Arial, Helvetica, Liberation Sans, sans-serif",
    "100px Arial, Helvetica, Liberation Sans, sans-serif",
    "(prefers-reduced-motion: reduce)",
    "#swing-graph svg",
    "#air-graph svg",
    // Symbols of units.
    "in, oz",
    // The letters of an encoding.
    "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž ‘’“”•–—˜™š›œ žŸ",
    // What an example's weight is called until the page says it.
    "sticky tape",
];

/// Whose text is no sentence: names of classes, and what a panic says.
const BEFORE: [&str; 10] = [
    "class",
    "d",
    "expect",
    "panic",
    "assert",
    "debug_assert",
    "unreachable",
    "reason",
    "error",
    "viewBox",
];

/// The files of a room, but for modules that only tests have.
fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)
        .expect("the sources can be read")
        .map(|entry| entry.expect("the sources can be read").path())
        .collect();
    let is_code = |path: &&PathBuf| path.extension().is_some_and(|ending| ending == "rs");
    let mut all = String::new();
    for file in paths.iter().filter(is_code) {
        all += &fs::read_to_string(file).expect("the sources can be read");
    }
    paths.retain(|path| {
        let name = path
            .file_stem()
            .expect("the sources can be read")
            .to_string_lossy()
            .into_owned();
        name != "tests" && !all.contains(&format!("#[cfg(test)]\nmod {name};"))
    });
    for path in paths {
        if path.is_dir() {
            sources(&path, found);
        } else if is_code(&&path) {
            found.push(path);
        }
    }
}

/// Whether two words stand beside each other: letters, a space, letters.
fn is_sentence(text: &str) -> bool {
    let is_word = |word: &&str| {
        word.chars().filter(|c| c.is_alphabetic()).count() > 1
            // Of a path in a picture.
            && !word.contains(|c: char| c.is_ascii_digit())
            && !word.contains(['_', '=', '/', '<', '#', '{', '}'])
            && !word.contains("--")
    };
    let words: Vec<&str> = text.split_whitespace().collect();
    words.windows(2).any(|pair| pair.iter().all(is_word))
}

/// The texts in some code, tests and attributes left out.
fn texts(code: TokenStream, before: &str, found: &mut Vec<String>) {
    let mut tokens = code.into_iter().peekable();
    let mut last = [String::new(), before.to_owned()];
    let mut is_test = false;
    while let Some(token) = tokens.next() {
        let written = token.to_string();
        match token {
            TokenTree::Punct(mark) if mark.as_char() == '#' => {
                tokens.next_if(|token| token.to_string() == "!");
                let attribute = tokens.next_if(|token| {
                    matches!(token, TokenTree::Group(g) if g.delimiter() == Delimiter::Bracket)
                });
                let attribute = attribute.map(|group| group.to_string().replace(' ', ""));
                is_test |= attribute.is_some_and(|text| text == "[cfg(test)]");
                continue;
            }
            TokenTree::Group(group) => {
                if is_test && group.delimiter() == Delimiter::Brace {
                    is_test = false;
                } else if !is_test {
                    let outer = last.iter().rev().find(|word| **word != "!");
                    let outer =
                        outer.filter(|_| group.delimiter() == Delimiter::Parenthesis);
                    texts(group.stream(), outer.map_or("", String::as_str), found);
                }
            }
            TokenTree::Punct(mark) if mark.as_char() == ';' => is_test = false,
            TokenTree::Literal(_) if written.starts_with('"') && !is_test => {
                let is_left_out = BEFORE
                    .iter()
                    .any(|&word| word == before || last.iter().any(|last| last == word));
                let text = written.trim_matches('"').replace("\\\n", "");
                let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
                let known = FOR_PROGRAMMERS.iter().any(|known| known.trim() == text);
                if !is_left_out && !known && is_sentence(&text) {
                    found.push(text);
                }
            }
            _ => {}
        }
        last = [std::mem::take(&mut last[1]), written];
    }
}

#[test]
fn no_sentence_stands_outside_the_tables() {
    let crates = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let mut told = Vec::new();
    for room in ROOMS {
        let mut files = Vec::new();
        sources(&crates.join(room).join("src"), &mut files);
        assert!(files.len() > 5, "{room} has moved");
        for file in files {
            let code: TokenStream = fs::read_to_string(&file).unwrap().parse().unwrap();
            let mut found = Vec::new();
            texts(code, "", &mut found);
            let name = file.strip_prefix(crates).unwrap().display().to_string();
            told.extend(found.into_iter().map(|text| format!("{name}: {text}")));
        }
    }
    let told = told.join("\n");
    assert!(told.is_empty(), "put these into crates/words/languages:\n{told}");
}

#[test]
fn a_sentence_is_found_wherever_it_stands() {
    let found = |code: &str| {
        let mut found = Vec::new();
        texts(code.parse().unwrap(), "", &mut found);
        found
    };
    assert_eq!(found("html! { p { \"Not here.\" } }"), ["Not here."]);
    assert_eq!(found("format!(\"{n} fins more\")"), ["{n} fins more"]);
    assert_eq!(found("html! { p class=\"big red\" { (words::x()) } }"), [""; 0]);
    assert_eq!(
        found("#[cfg(test)] mod tests { fn a() { b(\"Two words\") } } c(\"Or three\")"),
        ["Or three"]
    );
    assert_eq!(found("x.expect(\"it was checked\"); y(\"well-known\")"), [""; 0]);
}
