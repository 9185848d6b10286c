//! Compiles `languages/` into functions and tables. Included by `build.rs`, and by
//! `tests/compile.rs`, which runs the tests beside this code.

mod book;
mod check;
mod encode;
mod fault;
mod numbers;
mod plurals;
mod pseudo;
mod resolve;
mod rust;
mod signature;
mod tree;

use std::collections::BTreeMap;

use crate::languages::{Kind, LANGUAGES};
use book::Book;
pub(crate) use fault::Fault;

/// A file of sentences.
#[derive(Clone, Debug)]
pub(crate) struct Source {
    /// The language it belongs to: the name of its folder.
    pub(crate) language: String,
    /// Its own name, such as `faults.ftl`.
    pub(crate) file: String,
    /// What it says.
    pub(crate) text: String,
}

/// What the build makes of all files.
#[derive(Debug)]
pub(crate) struct Compiled {
    /// The functions, as Rust.
    pub(crate) rust: String,
    /// The tables, by the keys of their languages.
    pub(crate) tables: Vec<(&'static str, Vec<u8>)>,
}

/// Compiles every language of [`LANGUAGES`].
///
/// # Errors
///
/// All faults of all files.
pub(crate) fn compile(sources: &[Source]) -> Result<Compiled, Vec<Fault>> {
    let mut faults: Vec<Fault> = sources
        .iter()
        .filter(|source| !is_written(&source.language))
        .map(|source| {
            Fault::new(source, 1, "no such language", "add a row to src/languages.rs")
        })
        .collect();
    let english = Book::read(sources, LANGUAGES[0].key, &mut faults);
    let sentences = check::english(&english, &mut faults);
    let mut trees = BTreeMap::new();
    for language in LANGUAGES.iter().filter(|l| is_written(l.key)).skip(1) {
        let book = Book::read(sources, language.key, &mut faults);
        let tree = check::translation(language, &book, &english, &sentences, &mut faults);
        trees.insert(language.key, tree);
    }
    let mut tables = Vec::new();
    for language in &LANGUAGES[1..] {
        let tree: Vec<_> = match language.kind {
            Kind::Pseudo => {
                sentences.iter().map(|s| Some(pseudo::stretched(&s.pieces))).collect()
            }
            _ => trees.remove(language.key).unwrap_or_default(),
        };
        match encode::table(language, &sentences, &tree) {
            Ok(table) => tables.push((language.key, table)),
            Err(what) => faults.push(Fault::of_language(language.key, &what)),
        }
    }
    if faults.is_empty() {
        Ok(Compiled { rust: rust::functions(&sentences, &tables), tables })
    } else {
        Err(faults)
    }
}

/// Whether somebody writes the language: it has a folder.
fn is_written(key: &str) -> bool {
    LANGUAGES.iter().any(|l| l.key == key && l.kind != Kind::Pseudo)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn source(language: &str, file: &str, text: &str) -> Source {
        Source { language: language.into(), file: file.into(), text: text.into() }
    }

    const ENGLISH: &str = "\
## The strip.
# $count (number): how many
things = { $count ->
    [one] One thing
   *[other] { $count } things
} to mend
# $name (text): whose
# $way (up | down): where to
moved = { $name } goes <b>{ $way ->
    [up] up
   *[down] down
}</b>.
";
    const GERMAN: &str = "\
things = { NUMBER($count) ->
    [one] Ein Ding
   *[other] { $count } Dinge
}
moved = <b>{ $name }</b> geht { $way ->
    [up] hoch
   *[down] runter
}.
";
    const ARABIC: &str = "\
things = { $count ->
    [zero] لا شيء
    [one] شيء واحد
    [two] شيئان
    [few] { $count } أشياء
    [many] { $count } شيئًا
   *[other] { $count } شيء
}
# without $way
moved = { $name } <b>يتحرك</b>
";

    /// What is wrong with these three files, and with a fourth.
    fn faults(english: &str, german: &str, arabic: &str, more: &[Source]) -> Vec<String> {
        let mut sources = vec![
            source("en", "strip.ftl", english),
            source("de", "strip.ftl", german),
            source("ar", "strip.ftl", arabic),
        ];
        sources.extend(more.iter().cloned());
        match compile(&sources) {
            Ok(_) => Vec::new(),
            Err(faults) => faults.iter().map(ToString::to_string).collect(),
        }
    }

    #[track_caller]
    fn assert_fault(faults: &[String], place: &str, words: &str) {
        let found = faults.iter().any(|f| f.starts_with(place) && f.contains(words));
        assert!(found, "no {place} … {words} in {faults:#?}");
        assert_eq!(faults.len(), 1, "{faults:#?}");
    }

    #[test]
    fn what_is_right_compiles() {
        assert_eq!(faults(ENGLISH, GERMAN, ARABIC, &[]), [""; 0]);
    }

    #[test]
    fn the_same_files_give_the_same_bytes() {
        let sources = [
            source("en", "strip.ftl", ENGLISH),
            source("de", "strip.ftl", GERMAN),
            source("ar", "strip.ftl", ARABIC),
        ];
        let (first, second) = (compile(&sources).unwrap(), compile(&sources).unwrap());
        assert_eq!(first.rust, second.rust);
        assert_eq!(first.tables, second.tables);
        assert_eq!(first.tables.len(), LANGUAGES.len() - 1);
    }

    #[test]
    fn faults_of_a_translation_stop_the_build() {
        for (from, to, place, words) in [
            ("things =", "thing =", "languages/de/strip.ftl:1", "English has no thing"),
            ("{ $name }", "Es", "languages/de/strip.ftl:5", "$name is missing"),
            ("{ $name }", "{ $nam }", "languages/de/strip.ftl:5", "no argument $nam"),
            ("[one] Ein", "[two] Ein", "languages/de/strip.ftl:2", "no plural “two”"),
            ("    [one] Ein Ding\n", "", "languages/de/strip.ftl:1", "“one” is missing"),
            ("*[other]", "[other]", "languages/de/strip.ftl:4", "default"),
            ("[up]", "[upp]", "languages/de/strip.ftl:6", "no choice “upp”"),
            ("</b>", "", "languages/de/strip.ftl:5", "<b> is not closed"),
            ("<b>", "<bb>", "languages/de/strip.ftl:5", "no mark <bb>"),
            ("NUMBER($count)", "COUNT($count)", "languages/de/strip.ftl:1", "COUNT"),
            ("{ $way ->", "{ $name ->", "languages/de/strip.ftl:5", "$name is text"),
            ("<b>{ $name }</b>", "{ $name }", "languages/de/strip.ftl:5", "marks"),
            ("geht", "{ -going }", "languages/de/strip.ftl:5", "no term -going"),
            ("geht", "{ moved }", "languages/de/strip.ftl:5", "itself"),
            ("moved =", "moved", "languages/de/strip.ftl:5", "Expected"),
        ] {
            let german = GERMAN.replace(from, to);
            assert_ne!(german, GERMAN, "{from}");
            let found = faults(ENGLISH, &german, ARABIC, &[]);
            assert!(
                found.iter().any(|f| f.starts_with(place) && f.contains(words)),
                "{from} -> {to}: {found:#?}"
            );
        }
    }

    #[test]
    fn a_full_language_misses_nothing_and_has_nothing_of_its_own() {
        let german = GERMAN.split("moved").next().unwrap();
        let found = faults(ENGLISH, german, ARABIC, &[]);
        assert_fault(&found, "languages/de/strip.ftl:1", "no sentence for moved");

        let elsewhere = source("de", "other.ftl", "extra = Mehr\n");
        let found = faults(ENGLISH, GERMAN, ARABIC, &[elsewhere]);
        assert_fault(&found, "languages/de/other.ftl:1", "English has no extra");

        let twice = source("de", "tail.ftl", "things = Ding\n");
        let found = faults(ENGLISH, GERMAN, ARABIC, &[twice]);
        assert_fault(&found, "languages/de/tail.ftl:1", "stands in strip.ftl too");
    }

    #[test]
    fn a_sentence_stands_in_the_file_of_its_place() {
        let (things, moved) = GERMAN.split_at(GERMAN.find("moved").unwrap());
        let elsewhere = source("de", "other.ftl", moved);
        let found = faults(ENGLISH, things, ARABIC, &[elsewhere]);
        assert_fault(&found, "languages/de/other.ftl:1", "move it to strip.ftl");
    }

    #[test]
    fn every_category_of_arabic_is_asked_for() {
        let arabic = ARABIC.replace("    [two] شيئان\n", "");
        let found = faults(ENGLISH, GERMAN, &arabic, &[]);
        assert_fault(&found, "languages/ar/strip.ftl:1", "“two” is missing");
    }

    #[test]
    fn what_is_left_out_is_said() {
        let arabic = ARABIC.replace("# without $way\n", "");
        // A choice may be of no use to a language.
        assert_eq!(faults(ENGLISH, GERMAN, &arabic, &[]), [""; 0]);
        let arabic = ARABIC.replace("$way", "$wya");
        let found = faults(ENGLISH, GERMAN, &arabic, &[]);
        assert_fault(&found, "languages/ar/strip.ftl:10", "$wya");

        let german = GERMAN.replace("<b>{ $name }</b>", "<b>Es</b>");
        let german = german.replace("moved", "# without $name\nmoved");
        assert_eq!(faults(ENGLISH, &german, ARABIC, &[]), [""; 0]);
    }

    #[test]
    fn registers_say_what_is_different_and_nothing_else() {
        let plain = |text: &str| source("en-plain", "strip.ftl", text);
        let moved = "# without $name\nmoved = It goes <b>{ $way ->\n    [up] up\n   *[down] down\n}</b>.\n";
        assert_eq!(faults(ENGLISH, GERMAN, ARABIC, &[plain(moved)]), [""; 0]);
        let found = faults(ENGLISH, GERMAN, ARABIC, &[plain("extra = Mehr\n")]);
        assert_fault(&found, "languages/en-plain/strip.ftl:1", "English has no extra");
        let same = &ENGLISH[ENGLISH.find("moved").unwrap()..];
        let found = faults(ENGLISH, GERMAN, ARABIC, &[plain(same)]);
        assert_fault(&found, "languages/en-plain/strip.ftl:1", "as English does");
        let found =
            faults(ENGLISH, GERMAN, ARABIC, &[source("en-Plain", "a.ftl", "a = A\n")]);
        assert_fault(&found, "languages/en-Plain/a.ftl:1", "no such language");
    }

    #[test]
    fn english_says_what_its_arguments_are() {
        for (from, to, line, words) in [
            ("# $count (number): how many\n", "", 2, "no argument $count"),
            ("# $name (text): whose\n", "", 8, "no argument $name"),
            ("(text)", "(number)", 0, ""),
            ("(text)", "(words)", 7, "text, number"),
            ("(up | down)", "(up | up)", 8, "twice"),
            ("whose\n", "whose\n# $old (text): gone\n", 10, "$old is missing"),
            ("## The strip.\n", "", 2, "where it is seen"),
            ("things =", "Things =", 3, "small letters"),
            ("things =", "type =", 3, "keyword"),
            ("things =", "table =", 0, ""),
            ("things =", "language =", 3, "taken"),
            ("moved =", "moved = Go.\n    .title = More\nother =", 0, "attribute"),
            ("goes", "goe\u{7}s", 9, "control character"),
            ("(up | down): where to", "(number): where to", 10, "no plural “up”"),
        ] {
            let english = ENGLISH.replace(from, to);
            assert_ne!(english, ENGLISH, "{from}");
            let found: Vec<_> = faults(&english, GERMAN, ARABIC, &[])
                .into_iter()
                .filter(|fault| fault.starts_with("languages/en/"))
                .collect();
            if words.is_empty() {
                assert_eq!(found, [""; 0], "{from} -> {to}");
                continue;
            }
            let place = match line {
                0 => "languages/en/strip.ftl:".into(),
                line => format!("languages/en/strip.ftl:{line}: "),
            };
            assert!(
                found.iter().any(|f| f.starts_with(&place) && f.contains(words)),
                "{from} -> {to}: {found:#?}"
            );
        }
    }

    #[test]
    fn one_name_means_the_same_choices_everywhere() {
        let english = format!(
            "{ENGLISH}# $way (left | right): to
turned = To {OTHER_WAY}
"
        );
        let found = faults(&english, GERMAN, ARABIC, &[]);
        assert!(
            found.iter().any(|f| f.contains("other choices than in moved")),
            "{found:?}"
        );
    }
    const OTHER_WAY: &str = "{ $way ->\n    [left] left\n   *[right] right\n}";

    /// What the sentence `it` says, with its codes, when German says this.
    fn german(text: &str) -> Result<String, Vec<Fault>> {
        let sources = [
            source(
                "en",
                "a.ftl",
                "## Here.\n# $n (number): how many\nit = { $n }\nnone = No\n",
            ),
            source("de", "a.ftl", text),
            source("ar", "a.ftl", "it = { $n }\nnone = No\n"),
        ];
        let tables = compile(&sources)?.tables;
        let (_, bytes) = tables.iter().find(|(key, _)| *key == "de").unwrap();
        let strings = &bytes[crate::code::HEADER..];
        let first = strings.split(|byte| *byte == 0).next().unwrap();
        Ok(String::from_utf8(first.to_vec()).unwrap())
    }

    #[test]
    fn words_are_put_in_by_the_build() {
        for (text, said) in [
            ("it = { $n } -x\nnone = No", "\u{1} -x"),
            // A new line is a space, as in markup.
            ("it =\n    { $n }\n    zwei\n\n    drei\nnone = No", "\u{1} zwei drei"),
            (
                "it = { $n }{\"  \"}{ \"<\" }{ \"\\u00E4\" } < b\nnone = No",
                "\u{1}  <ä < b",
            ),
            ("it = { none }: { NUMBER($n) }{ 5 }\nnone = No", "No: \u{1}5"),
            ("-a = Flosse\nit = { -a } { $n }\nnone = No", "Flosse \u{1}"),
            (
                "-a = { $case ->\n    [dative] der Flosse\n   *[nominative] die Flosse\n}\n\
                 it = { $n } an { -a(case: \"dative\") }, { -a }\nnone = No",
                "\u{1} an der Flosse, die Flosse",
            ),
            (
                "-a = Flosse\n    .gender = f\nit = { $n } { -a.gender ->\n    [f] ihre\n   \
                 *[m] seine\n}\nnone = No",
                "\u{1} ihre",
            ),
            (
                "it = { $n ->\n    [1] genau eine\n    [one] eine\n    [0] keine\n   *[other] { $n }\n}\n\
                 none = No",
                "\u{10}\u{1}\u{11}0keine\u{11}1genau eine\u{11}!eine\u{12}\u{1}\u{13}",
            ),
        ] {
            assert_eq!(german(text), Ok(said.into()), "{text}");
        }
    }

    #[test]
    fn words_that_cannot_be_put_in_stop_the_build() {
        for (text, words) in [
            ("it = { $n }{ -a }\nnone = No", "no term -a"),
            ("-a = { -b }\n-b = { -a }\nit = { $n }{ -a }\nnone = No", "part of itself"),
            ("-a = { $x }\nit = { $n }{ -a }\nnone = No", "not given $x"),
            ("-a = A\nit = { $n }{ -a.x ->\n   *[y] z\n}\nnone = No", "no word .x"),
            ("-a = A\n-a = B\nit = { $n }{ -a }\nnone = No", "twice"),
            ("it = { $n }{ other }\nnone = No", "no sentence other"),
            ("it = { $n }{ none.title }\nnone = No", "no attributes"),
            ("it = { NUMBER($n, digits: 2) }\nnone = No", "options"),
            (
                "it = { $n ->\n    [99] a\n    [one] b\n   *[other] c\n}\nnone = No",
                "“99”",
            ),
            ("it = { $n ->\n   *[one] b\n    [other] c\n}\nnone = No", "default"),
            ("it = { $n }<b>a<key>b</key>c</b>\nnone = No", "within another"),
            ("it = { $n }<b>a</key>\nnone = No", "closes nothing"),
            ("it = { $n }a</b>\nnone = No", "closes nothing"),
            ("it = { $n } <b\nnone = No", "without its >"),
            ("it = { $n }<b>a</b>\nnone = No", "other marks"),
            ("it = { $n }\nnone = { \"\" }", "empty sentence"),
        ] {
            let faults = german(text).unwrap_err();
            let found = faults.iter().any(|fault| fault.to_string().contains(words));
            assert!(found, "{text}: {faults:#?}");
        }
    }
}
