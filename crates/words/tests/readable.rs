//! “English in plain words” is for pupils of 8 to 11: how hard it is to read, by a published
//! formula and a published list of words.
//!
//! The formula and its first two constants are of E. Dale and J. S. Chall, “A formula for
//! predicting readability”, Educational Research Bulletin 27 (1948): so much for each unfamiliar
//! word in 100, and for each word of a sentence. Their 3.6365 is added as is usual with the newer
//! list of J. S. Chall and E. Dale, “Readability revisited: the new Dale–Chall readability
//! formula” (1995): where more than 5 words in 100 are unfamiliar. Up to 4.9 is for the fourth grade
//! (9 to 10 years) and below, up to 5.9 for the fifth and sixth. The list is theirs too:
//! `tests/references/data/familiar_words.txt` says where it is from.
//!
//! An argument counts as one familiar word: a number, a length with its unit or a name. What is put
//! in as a sentence is measured where it stands itself. A label is a sentence, which makes them
//! short; so what is asked over all is much less than 4.9.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use fluent_syntax::ast::{
    Entry, Expression, InlineExpression as Inline, Pattern, PatternElement,
};
use fluent_syntax::parser;

/// The most that all sentences together may come to: some 2 unfamiliar words in 100. What English
/// says to the same pupils comes to 1.04, with more than twice as many.
const MOST_OVER_ALL: f64 = 0.6;
/// The most that those of a file may come to.
const MOST_IN_A_FILE: f64 = 4.9;
/// The most words of a sentence.
const LONGEST: usize = 18;

/// What pupils do not meet, by how the names of the sentences begin.
const LEFT_OUT: &[(&str, &str)] = &[
    ("lead.ftl", "for whoever leads, and for IT"),
    ("set_up.ftl", "for whoever leads, and labels for whoever holds a camera"),
    ("set_up-question.ftl", "for whoever leads"),
    ("class-marking.ftl", "for whoever leads"),
    ("class-report.ftl", "for whoever leads"),
    ("set_up-kit.ftl", "for whoever leads"),
    ("class.ftl", "for whoever leads"),
    ("paper-place.ftl", "for whoever leads"),
    ("class-pattern.ftl", "for whoever leads, who reads it out"),
    ("symbols.ftl", "for whoever leads"),
    ("paper-teacher.ftl", "for whoever leads"),
    ("paper-idea.ftl", "for whoever leads"),
    ("paper-hazards.ftl", "for whoever leads"),
    ("paper-evidence.ftl", "for whoever leads"),
    ("delete.ftl", "stands in the place for whoever leads"),
    ("lesson-level-", "chosen by whoever leads"),
    ("lesson-help-", "chosen by whoever leads"),
    ("lesson-telling-", "chosen by whoever leads"),
    ("index-privacy", "for IT"),
    ("index-more", "for IT"),
    ("index-try-file", "for IT, behind a try of the browser"),
    ("index-no-scripts", "for whoever looks after the computer"),
    ("index-failed-frame", "for whoever looks after the computer"),
    ("index-failed-browser", "for whoever looks after the computer"),
    ("index-failed-delete", "for whoever looks after the computer"),
    ("index-failed-left", "for whoever looks after the computer"),
    ("index-failed-reason", "for whoever looks after the computer"),
    ("index-failed-blocked", "for whoever looks after the computer"),
    ("index-failed-old", "for whoever looks after the computer"),
    ("index-title", "for search engines"),
    ("index-description", "for search engines"),
    ("index-edition", "for whoever reports a fault"),
    ("index-licences", "for whoever reuses the page"),
    ("columns.ftl", "heads of a spreadsheet"),
    ("hand-in-table", "buttons for a spreadsheet"),
    ("hand-in-copy-table", "buttons for a spreadsheet"),
    ("refused-table.ftl", "faults of a spreadsheet"),
    ("refused-syntax", "for whoever writes files with another program"),
    ("refused-content", "for whoever writes files with another program"),
    ("compare-moment", "at the level for 14 to 16 only"),
    ("why-pushed", "for experts, as it says"),
    ("typed-units-", "read, and never shown"),
];

/// What stays as it is.
const EXEMPT: &str =
    "Local rules, your school’s own risk assessment and a qualified person decide.";

/// Words that the page teaches, each familiar everywhere.
const TAUGHT: &[&str] = &[
    // PRODUCT.md, Words: centre of mass, centre of pressure, fin, angle of attack, body width,
    // prediction.
    "mass pressure fin angle width predict prediction",
    // PRODUCT.md, what it does, 6 and 7: the notebook, its trials (a change, a prediction, three
    // readings and three swings), links and codes.
    "notebook trial link code",
    // PRODUCT.md, what it does, 1: what a rocket is made of.
    "tube taper weight",
];

/// Names, which are familiar.
const NAMES: &[&str] =
    &["noseward puffin tern razorbill gannet qr ctrl tab", "uk us euro australian"];

/// What stands behind numbers, and is part of them.
const UNITS: &[&str] = &[
    "mm cm m g kg s n kb % g/m² p c",
    "millimetre centimetre metre gram kilogram degree inch ounce litre",
];

/// British spellings of familiar words.
const SPELLINGS: &[(&str, &str)] =
    &[("centre", "center"), ("colour", "color"), ("grey", "gray")];

/// A sentence as somebody reads it, with a sample in place of each argument.
struct Said {
    file: String,
    key: String,
    text: String,
}

/// What is counted of sentences.
#[derive(Default)]
struct Count {
    words: usize,
    sentences: usize,
    unfamiliar: usize,
}

impl Count {
    fn add(&mut self, sentence: &[String], unfamiliar: usize) {
        self.words += sentence.len();
        self.sentences += 1;
        self.unfamiliar += unfamiliar;
    }

    /// The raw score of Dale and Chall.
    fn score(&self) -> f64 {
        let of_100 = 100.0 * self.unfamiliar as f64 / self.words as f64;
        let length = self.words as f64 / self.sentences as f64;
        let harder = if of_100 > 5.0 { 3.636_5 } else { 0.0 };
        0.157_9 * of_100 + 0.049_6 * length + harder
    }
}

/// The endings that leave a word familiar, each with what the word without it ends in: “cried”
/// is a form of “cry”.
const ENDINGS: &[(&str, &str)] = &[
    ("", ""),
    ("s", ""),
    ("es", ""),
    ("ies", "y"),
    ("d", ""),
    ("ed", ""),
    ("ied", "y"),
    ("ing", ""),
    ("ing", "e"),
    ("n", ""),
    ("r", ""),
    ("er", ""),
    ("ier", "y"),
    ("st", ""),
    ("est", ""),
    ("iest", "y"),
    ("ly", ""),
    ("ily", "y"),
    ("ly", "le"),
];
/// The endings before which a last letter is doubled: “bigger”.
const DOUBLING: &[&str] = &["ed", "ing", "er", "est"];

/// The words that are familiar.
struct Familiar(BTreeSet<&'static str>);

impl Familiar {
    fn new() -> Self {
        let list = include_str!("../../../tests/references/data/familiar_words.txt");
        let listed = list.lines().filter(|line| !line.starts_with('#'));
        let ours = [TAUGHT, NAMES, UNITS].into_iter().flatten();
        let ours = ours.flat_map(|words| words.split(' '));
        Self(listed.chain(ours).collect())
    }

    /// Whether a word is: a number, or a word of which each part that a hyphen joins is listed or
    /// a regular form of a listed one.
    fn has(&self, word: &str) -> bool {
        self.0.contains(word)
            || word.contains(char::is_numeric)
            || word.split('-').all(|part| self.has_a_form_of(part))
    }

    /// The forms that the rules for the list call familiar: one ending, and what changes with it.
    fn has_a_form_of(&self, word: &str) -> bool {
        let word = word.strip_suffix("'s").or(word.strip_suffix('\'')).unwrap_or(word);
        let is_listed = |word: &str| {
            let american = SPELLINGS.iter().find(|(british, _)| *british == word);
            self.0.contains(american.map_or(word, |(_, american)| american))
        };
        ENDINGS.iter().any(|(ending, whole)| {
            let stem = word.strip_suffix(ending).filter(|stem| stem.len() > 1);
            let Some(stem) = stem else { return false };
            let last = stem.chars().next_back().unwrap_or_default();
            let single = stem.strip_suffix(last).filter(|single| single.ends_with(last));
            is_listed(&format!("{stem}{whole}"))
                || DOUBLING.contains(ending) && single.is_some_and(is_listed)
        })
    }
}

/// The sentences of a file of a language, by name, with those of English behind them.
fn read(language: &str, file: &str) -> Vec<(String, Pattern<String>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("languages").join(language);
    let text = fs::read_to_string(folder.join(file)).unwrap_or_default();
    let resource = parser::parse(text).expect("the build reads it too");
    let messages = resource.body.into_iter().filter_map(|entry| match entry {
        Entry::Message(message) => Some((message.id.name, message.value?)),
        _ => None,
    });
    messages.collect()
}

/// How many ways there are through the choices of a sentence, each choice being in one at least.
fn ways(pattern: &Pattern<String>) -> usize {
    let of_element = |element: &PatternElement<String>| match element {
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().map(|variant| ways(&variant.value)).sum()
        }
        _ => 1,
    };
    pattern.elements.iter().map(of_element).max().unwrap_or(1)
}

/// A sentence as it is said in one of those ways.
fn say(
    pattern: &Pattern<String>,
    way: usize,
    others: &BTreeMap<String, Pattern<String>>,
    out: &mut String,
) {
    for element in &pattern.elements {
        let expression = match element {
            PatternElement::TextElement { value } => {
                out.push_str(value);
                continue;
            }
            PatternElement::Placeable { expression } => expression,
        };
        match expression {
            Expression::Select { variants, .. } => {
                let all: usize =
                    variants.iter().map(|variant| ways(&variant.value)).sum();
                let mut way = way % all;
                for variant in variants {
                    let here = ways(&variant.value);
                    if way < here {
                        say(&variant.value, way, others, out);
                        break;
                    }
                    way -= here;
                }
            }
            Expression::Inline(Inline::VariableReference { .. }) => out.push('3'),
            Expression::Inline(Inline::StringLiteral { value }) => out.push_str(value),
            Expression::Inline(Inline::MessageReference { id, .. }) => {
                say(&others[&id.name], way, others, out);
            }
            Expression::Inline(other) => panic!("{other:?}"),
        }
    }
}

/// The files of sentences.
fn files() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("languages/en");
    let files = fs::read_dir(folder).expect("English is there");
    let name =
        |file: std::io::Result<fs::DirEntry>| file.ok()?.file_name().into_string().ok();
    let mut files: Vec<_> = files.filter_map(name).collect();
    files.sort();
    files
}

/// Whether a sentence is of a file, or has a name that begins so.
fn is_of(what: &str, file: &str, key: &str) -> bool {
    file == what || key.starts_with(what)
}

/// Everything that pupils read in plain words.
fn all() -> Vec<Said> {
    said_in("en-plain")
}

/// Everything that pupils read in English, or in a register of it.
fn said_in(language: &str) -> Vec<Said> {
    let mut said = Vec::new();
    for file in files() {
        let mut patterns: BTreeMap<_, _> = read("en", &file).into_iter().collect();
        patterns.extend(read(language, &file));
        for (key, pattern) in &patterns {
            if LEFT_OUT.iter().any(|(what, _)| is_of(what, &file, key)) {
                continue;
            }
            let mut texts = BTreeSet::new();
            for way in 0..ways(pattern) {
                let mut text = String::new();
                say(pattern, way, &patterns, &mut text);
                texts.insert(text.split_whitespace().collect::<Vec<_>>().join(" "));
            }
            let of = |text| Said { file: file.clone(), key: key.clone(), text };
            said.extend(texts.into_iter().map(of));
        }
    }
    said
}

/// The sentences of a text as words, in small letters.
fn sentences(text: &str) -> Vec<Vec<String>> {
    let mut sentences = vec![Vec::new()];
    for token in unmarked(text).split_whitespace() {
        let is_part = |c: char| c.is_alphanumeric() || c == '%';
        let word = token.trim_matches(|c| !is_part(c)).to_lowercase().replace('’', "'");
        let last = sentences.last_mut().expect("one is there from the start");
        if !word.is_empty() {
            last.push(word);
        }
        let ends =
            token.trim_end_matches(['”', ')', '“']).ends_with(['.', '?', '!', '…']);
        if ends && !last.is_empty() {
            sentences.push(Vec::new());
        }
    }
    sentences.retain(|sentence| !sentence.is_empty());
    sentences
}

/// A text without its marks.
fn unmarked(text: &str) -> String {
    let mut rest = text;
    let mut out = String::new();
    while let Some((before, mark)) = rest.split_once('<') {
        out.push_str(before);
        rest = mark.split_once('>').map_or("", |(_, after)| after);
    }
    out + rest
}

/// What was measured of all that pupils read.
#[derive(Default)]
struct Measured {
    over_all: Count,
    files: BTreeMap<String, Count>,
    /// The unfamiliar words of each text, the hardest first.
    hardest: Vec<(String, Vec<String>)>,
    too_long: Vec<String>,
}

fn measured() -> Measured {
    let familiar = Familiar::new();
    let mut measured = Measured::default();
    for Said { file, key, text } in all() {
        let mut unfamiliar = Vec::new();
        for sentence in sentences(&text.replace(EXEMPT, "")) {
            let hard = sentence.iter().filter(|word| !familiar.has(word)).cloned();
            let before = unfamiliar.len();
            unfamiliar.extend(hard);
            let count = unfamiliar.len() - before;
            measured.over_all.add(&sentence, count);
            measured.files.entry(file.clone()).or_default().add(&sentence, count);
            if sentence.len() > LONGEST {
                measured.too_long.push(format!("{key}: {}", sentence.join(" ")));
            }
        }
        measured.hardest.push((key, unfamiliar));
    }
    measured.hardest.sort_by_key(|(_, unfamiliar)| Reverse(unfamiliar.len()));
    measured
}

#[test]
fn a_pupil_of_nine_can_read_it() {
    let Measured { over_all, files, hardest, too_long } = measured();
    for (file, count) in files.iter().chain([(&"over all".to_owned(), &over_all)]) {
        let Count { unfamiliar, words, sentences } = count;
        let score = count.score();
        println!(
            "{score:5.2} {file}: {unfamiliar} unfamiliar of {words}, in {sentences}"
        );
    }
    for (key, unfamiliar) in &hardest[..10] {
        println!("{key}: {}", unfamiliar.join(", "));
    }
    assert!(over_all.score() <= MOST_OVER_ALL, "over all it is harder");
    let hard = files.iter().find(|(_, count)| count.score() > MOST_IN_A_FILE);
    assert!(hard.is_none(), "harder: {:?}", hard.map(|(file, _)| file));
    assert!(too_long.is_empty(), "longer than {LONGEST} words: {too_long:#?}");
}

#[test]
fn the_line_of_every_caution_stays() {
    let (english, plain) = (said_in("en"), all());
    let with_it = |said: &[Said]| -> BTreeSet<String> {
        let with_it = said.iter().filter(|said| said.text.contains(EXEMPT));
        with_it.map(|said| said.key.clone()).collect()
    };
    assert!(with_it(&english).len() >= 5);
    assert_eq!(with_it(&english), with_it(&plain));
}

/// An outcome as PRODUCT.md names it, twice as long as the English one.
const LONG_OUTCOME: &str = "stays straight only if started straight";

/// Names of buttons and fields, which are sentences without full stop and without an argument:
/// there is room for a third more, or for a button’s width.
#[test]
fn labels_are_no_much_longer_than_english() {
    let mut most: BTreeMap<String, usize> = BTreeMap::new();
    let length = |said: &Said| unmarked(&said.text).chars().count();
    for said in said_in("en") {
        let is_label = !said.text.contains(['.', '?', '!', ':', '…', '3']);
        let room = if is_label { (length(&said) * 4 / 3).max(16) } else { usize::MAX };
        let longest = most.entry(said.key).or_default();
        *longest = room.max(*longest);
    }
    most.retain(|_, most| *most < usize::MAX);
    assert!(most.len() > 250);
    let is_longer = |said: &Said| {
        most.get(&said.key).is_some_and(|most| length(said) > *most)
            && !said.text.starts_with(LONG_OUTCOME)
    };
    let longer: Vec<_> =
        all().into_iter().filter(is_longer).map(|said| said.text).collect();
    assert!(longer.is_empty(), "{longer:#?}");
}

/// Nothing is left out, or called familiar, that is not there any more.
#[test]
fn every_exception_is_needed() {
    let said = all();
    let words: BTreeSet<String> =
        said.iter().flat_map(|said| sentences(&said.text)).flatten().collect();
    for word in [TAUGHT, NAMES, UNITS].concat().join(" ").split(' ') {
        let is_said = |said: &String| said.split('-').any(|part| part.starts_with(word));
        assert!(words.iter().any(is_said), "{word} is nowhere");
    }
    let messages = files().into_iter().flat_map(|file| {
        let messages = read("en", &file);
        messages.into_iter().map(move |(key, _)| (file.clone(), key))
    });
    let messages: Vec<_> = messages.collect();
    for (what, _) in LEFT_OUT {
        let is_left_out = |(file, key): &(String, String)| is_of(what, file, key);
        assert!(messages.iter().any(is_left_out), "{what} is nowhere");
    }
}

#[test]
fn regular_forms_of_a_familiar_word_are_familiar() {
    let familiar = Familiar::new();
    for word in [
        "fly",
        "flies",
        "cried",
        "bigger",
        "making",
        "stopped",
        "nearest",
        "safely",
        "rocket's",
        "centre",
        "colours",
        "fins",
        "predicted",
        "nose-first",
        "0.8",
        "mm",
    ] {
        assert!(familiar.has(word), "{word}");
    }
    for word in [
        "separation",
        "baseline",
        "qualified",
        "computed",
        "permission",
        "per",
        "nose-wheel-axis",
        "calibre",
    ] {
        assert!(!familiar.has(word), "{word}");
    }
}

#[test]
fn the_score_is_what_the_formula_says() {
    let count =
        |words, sentences, unfamiliar| Count { words, sentences, unfamiliar }.score();
    assert!((count(100, 10, 5) - (0.789_5 + 0.496)).abs() < 1e-9);
    assert!((count(100, 5, 10) - (1.579 + 0.992 + 3.636_5)).abs() < 1e-9);
    let said = sentences("<b>Add 0.8 g (or none).</b> “Why?” A cut-out…");
    let words = |words: &str| words.split(' ').map(ToOwned::to_owned).collect::<Vec<_>>();
    assert_eq!(said, [words("add 0.8 g or none"), words("why"), words("a cut-out")]);
}
