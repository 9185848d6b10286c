//! Writes a function for each sentence.

use std::collections::BTreeMap;

use super::check::Sentence;
use super::encode::{kind_code, sentences_sum, text};
use super::plurals::CATEGORIES;
use super::signature::{Argument, ArgumentKind};
use super::tree::{Key, MARKS, Piece};
use crate::mark::Mark;

/// The file that the crate includes.
pub(crate) fn functions(
    sentences: &[Sentence],
    tables: &[(&'static str, Vec<u8>)],
) -> String {
    let mut out = String::new();
    let mut add = |line: String| {
        out.push_str(&line);
        out.push('\n');
    };
    add("/// How many sentences there are.".into());
    add(format!("pub(crate) const COUNT: usize = {};", sentences.len()));
    add("/// What a table must agree on with the page, as one number.".into());
    add(format!("pub(crate) const SENTENCES: u32 = {:#010X};", sentences_sum(sentences)));
    let mut choices = BTreeMap::new();
    for argument in sentences.iter().flat_map(|sentence| &sentence.arguments) {
        if let ArgumentKind::Choice(names) = &argument.kind {
            choices.entry(&argument.name).or_insert((names, &argument.about));
        }
    }
    for (name, (names, about)) in choices {
        add(format!("\n/// {}", capital(&escaped(about))));
        add("#[derive(Clone, Copy, Debug, PartialEq, Eq)]".into());
        add(format!("pub enum {} {{", camel(name)));
        for name in names {
            add(format!("    /// “{name}”.\n    {},", camel(name)));
        }
        add("}".into());
    }
    for (id, sentence) in sentences.iter().enumerate() {
        add(function(id, sentence));
    }
    add("\n/// A sentence, for tests and for whoever writes it into a file.".into());
    add("#[cfg(any(test, feature = \"tables\"))]".into());
    add("#[derive(Debug)]".into());
    add("pub(crate) struct Message {".into());
    add("    pub(crate) key: &'static str,".into());
    add("    pub(crate) sentence: crate::say::Sentence,".into());
    add("    /// 0 for a text, 1 for a number, else how many choices there are.".into());
    add("    pub(crate) arguments: &'static [u8],".into());
    add("}".into());
    add("\n/// Every sentence. Its place is its number.".into());
    add("#[cfg(any(test, feature = \"tables\"))]".into());
    add("pub(crate) static MESSAGES: [Message; COUNT] = [".into());
    for (id, sentence) in sentences.iter().enumerate() {
        let kinds: Vec<u8> =
            sentence.arguments.iter().map(|a| kind_code(&a.kind)).collect();
        let (key, said) = (&sentence.id, as_rust(id, &sentence.pieces));
        add(format!(
            "    Message {{ key: {key:?}, sentence: {said}, arguments: &{kinds:?} }},"
        ));
    }
    add("];".into());
    add("\n/// The table of every language but English, by the language's key, for the page \
         to fetch."
        .into());
    add("#[cfg(any(test, feature = \"tables\"))]".into());
    add(format!("pub const TABLES: [(&str, &[u8]); {}] = [", tables.len()));
    for (key, _) in tables {
        add(format!(
            "    ({key:?}, include_bytes!(concat!(env!(\"OUT_DIR\"), \"/{key}.words\"))),"
        ));
    }
    add("];".into());
    out
}

fn function(id: usize, sentence: &Sentence) -> String {
    let Sentence { arguments, pieces, about, .. } = sentence;
    let mut doc = format!(
        "\n/// Says:\n///\n/// ```text\n/// {}\n/// ```\n",
        readable(pieces, arguments)
    );
    if !about.is_empty() {
        doc.push_str(&format!("///\n/// Seen: {}\n", escaped(about)));
    }
    if !arguments.is_empty() {
        doc.push_str("///\n");
    }
    for Argument { name, about, .. } in arguments {
        doc.push_str(&format!("/// - `{}`: {}\n", snake(name), escaped(about)));
    }
    let parameters: Vec<_> = arguments
        .iter()
        .map(|Argument { name, kind, .. }| {
            let kind = match kind {
                ArgumentKind::Text => "&str".into(),
                ArgumentKind::Number => "crate::number::Number".into(),
                ArgumentKind::Choice(_) => camel(name),
            };
            format!("{}: {kind}", snake(name))
        })
        .collect();
    let args: Vec<_> = arguments
        .iter()
        .map(|Argument { name, kind, .. }| match kind {
            ArgumentKind::Text => format!("crate::say::Arg::Text({})", snake(name)),
            ArgumentKind::Number => format!("crate::say::Arg::Number(&{})", snake(name)),
            ArgumentKind::Choice(_) => {
                format!("crate::say::Arg::Number(&({} as u8).into())", snake(name))
            }
        })
        .collect();
    let (is_plain, is_marked) = (args.is_empty(), !sentence.marks.ever.is_empty());
    let args = args.join(", ");
    let said = as_rust(id, pieces);
    let (result, body) = match (is_plain, is_marked) {
        (true, false) => ("crate::text::Text", format!("crate::text::Text(&{said})")),
        (true, true) => {
            ("crate::marked::Marked", format!("crate::marked::Marked::plain(&{said})"))
        }
        (false, false) => ("String", format!("crate::say::say(&{said}, &[{args}])")),
        (false, true) => (
            "crate::marked::Marked",
            format!("crate::say::say_marked(&{said}, &[{args}])"),
        ),
    };
    let constant = if is_plain && !is_marked { "const " } else { "" };
    let (name, parameters) = (snake(&sentence.id), parameters.join(", "));
    format!(
        "{doc}#[must_use]\n#[inline(always)]\npub {constant}fn {name}({parameters}) -> {result} {{\n    {body}\n}}"
    )
}

/// The sentence as a value.
fn as_rust(id: usize, pieces: &[Piece]) -> String {
    format!("crate::say::Sentence {{ id: {id}, english: {:?} }}", text(pieces))
}

/// A sentence as its file has it, in one line.
fn readable(pieces: &[Piece], arguments: &[Argument]) -> String {
    let mut out = String::new();
    let mut open = None;
    let name_of = |mark: Mark| MARKS[mark as usize];
    for piece in pieces {
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Argument(place) => {
                out.push_str(&format!("{{ ${} }}", arguments[*place].name));
            }
            Piece::Open(mark) => {
                open = Some(name_of(*mark));
                out.push_str(&format!("<{}>", name_of(*mark)));
            }
            Piece::Close => {
                out.push_str(&format!("</{}>", open.take().unwrap_or_default()));
            }
            Piece::Select { argument, cases, otherwise } => {
                let argument = &arguments[*argument];
                out.push_str(&format!("{{ ${} ->", argument.name));
                for (key, case) in cases {
                    let key = match (key, &argument.kind) {
                        (Key::Exact(exact), _) => exact.to_string(),
                        (Key::Choice(place), ArgumentKind::Choice(names)) => {
                            names[usize::from(*place)].clone()
                        }
                        (Key::Category(place) | Key::Choice(place), _) => {
                            CATEGORIES[usize::from(*place)].to_owned()
                        }
                    };
                    out.push_str(&format!(" [{key}] {}", readable(case, arguments)));
                }
                out.push_str(&format!(" *[…] {} }}", readable(otherwise, arguments)));
            }
        }
    }
    out
}

fn snake(name: &str) -> String {
    name.replace('-', "_")
}

fn camel(name: &str) -> String {
    name.split('-').map(capital).collect()
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}

/// Text that Rust's documentation shows as it is.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    for c in text.chars() {
        if "\\`*_[]<>".contains(c) {
            out.push('\\');
        }
        out.push(c);
    }
    out
}
