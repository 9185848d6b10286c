//! Holds the sentences of every language against those of English.

use std::collections::BTreeSet;

use super::Fault;
use super::book::{Book, Entry};
use super::plurals::{Plurals, plurals};
use super::resolve::pieces;
use super::signature::{Argument, ArgumentKind, is_small, signature};
use super::tree::{MarksUsed, Piece, arguments};
use crate::languages::{Kind, LANGUAGES, Language};

/// An English sentence. Its number is its place.
#[derive(Debug)]
pub(crate) struct Sentence {
    /// Its name.
    pub(crate) id: String,
    /// The file it stands in, in every language.
    pub(crate) file: String,
    /// Where it is seen.
    pub(crate) about: String,
    /// What it is given.
    pub(crate) arguments: Vec<Argument>,
    /// What it says.
    pub(crate) pieces: Vec<Piece>,
    /// Its marks.
    pub(crate) marks: MarksUsed,
}

/// Names that functions cannot have: Rust's, and those this crate has already.
const KEYWORDS: &str = " abstract as async await become box break const continue crate do dyn \
    else enum extern false final fn for gen if impl in let loop macro match mod move mut \
    override priv pub ref return self static struct super trait true try type typeof union \
    unsafe unsized use virtual where while yield ";
const TAKEN: &str =
    " as_typed by_key decimal_mark language plain say speak table_of written ";
/// Types that this crate has already.
const TAKEN_TYPES: &str = " choice kind language mark marked number runs table table-error text arg \
    message string ";

/// The sentences of English.
pub(crate) fn english(book: &Book<'_>, faults: &mut Vec<Fault>) -> Vec<Sentence> {
    let plurals = plurals_of(&LANGUAGES[0], faults);
    let mut sentences: Vec<Sentence> = Vec::new();
    for entry in &book.messages {
        let (arguments, about) = signature(entry, faults);
        check_names(entry, &arguments, faults);
        for argument in &arguments {
            check_choices(entry, argument, &sentences, faults);
        }
        let pieces = pieces(entry, &[book], &arguments, &plurals, faults);
        check_arguments(entry, &arguments, &pieces, &BTreeSet::new(), faults);
        sentences.push(Sentence {
            id: entry.id.into(),
            file: entry.source.file.clone(),
            about,
            arguments,
            marks: MarksUsed::of(&pieces),
            pieces,
        });
    }
    if sentences.len() >= usize::from(u16::MAX) {
        faults.push(Fault::of_language("en", "there are more sentences than numbers"));
    }
    sentences
}

/// What another language has in place of each sentence; `None` where it says the same.
pub(crate) fn translation(
    language: &Language,
    book: &Book<'_>,
    english: &Book<'_>,
    sentences: &[Sentence],
    faults: &mut Vec<Fault>,
) -> Vec<Option<Vec<Piece>>> {
    for entry in &book.messages {
        if english.message(entry.id).is_none() {
            let what = format!("English has no {}", entry.id);
            let help = "give it the name it has in languages/en, or delete it";
            faults.push(Fault::new(entry.source, entry.line, &what, help));
        }
    }
    let plurals = plurals_of(language, faults);
    let is_over_english = language.kind == Kind::OverEnglish;
    let books: &[&Book<'_>] = if is_over_english { &[book, english] } else { &[book] };
    let mut all = Vec::new();
    for sentence in sentences {
        let Some(entry) = book.message(&sentence.id) else {
            if !is_over_english {
                faults.push(missing(language, book, sentence));
            }
            all.push(None);
            continue;
        };
        if entry.source.file != sentence.file {
            let what = format!("{} stands in {} in English", entry.id, sentence.file);
            let help = format!("move it to {}", sentence.file);
            faults.push(Fault::new(entry.source, entry.line, &what, &help));
        }
        let left_out = left_out(entry, &sentence.arguments, faults);
        let pieces = pieces(entry, books, &sentence.arguments, &plurals, faults);
        check_arguments(entry, &sentence.arguments, &pieces, &left_out, faults);
        if MarksUsed::of(&pieces) != sentence.marks {
            let what = format!("{} has other marks than in English", entry.id);
            let help = "mark the same words, in every text that is chosen from";
            faults.push(Fault::new(entry.source, entry.line, &what, help));
        }
        if is_over_english && pieces == sentence.pieces {
            let what = format!("{} says the same as English does", entry.id);
            faults.push(Fault::new(entry.source, entry.line, &what, "delete it"));
        }
        all.push(Some(pieces));
    }
    all
}

fn missing(language: &Language, book: &Book<'_>, sentence: &Sentence) -> Fault {
    let what = format!("no sentence for {}", sentence.id);
    match book.files.iter().find(|source| source.file == sentence.file) {
        Some(source) => Fault::new(source, 1, &what, "translate it from languages/en"),
        None => {
            let what = format!("{what}, and no file {}", sentence.file);
            Fault::of_language(language.key, &what)
        }
    }
}

fn plurals_of(language: &Language, faults: &mut Vec<Fault>) -> Plurals {
    plurals(language.tag).unwrap_or_else(|what| {
        faults.push(Fault::of_language(language.key, &what));
        Plurals { categories: vec![5], table: Vec::new() }
    })
}

fn check_names(entry: &Entry<'_>, arguments: &[Argument], faults: &mut Vec<Fault>) {
    let mut fault = |what: String, help: &str| {
        faults.push(Fault::new(entry.source, entry.line, &what, help));
    };
    let another = "give it another name: it becomes one in Rust";
    if !is_small(entry.id) {
        fault(format!("{} is not in small letters and dashes", entry.id), another);
    }
    let in_rust = format!(" {} ", entry.id.replace('-', "_"));
    if KEYWORDS.contains(&in_rust) {
        fault(format!("{} is a keyword of Rust", entry.id), another);
    }
    if TAKEN.contains(&in_rust) {
        fault(format!("{} is taken by this crate", entry.id), another);
    }
    for Argument { name, kind, .. } in arguments {
        let spaced = format!(" {} ", name.replace('-', "_"));
        if KEYWORDS.contains(&spaced) {
            fault(format!("${name} is a keyword of Rust"), another);
        }
        let is_choice = matches!(kind, ArgumentKind::Choice(_));
        if is_choice && TAKEN_TYPES.contains(&format!(" {name} ")) {
            fault(format!("${name} would become a type that this crate has"), another);
        }
    }
}

/// The same name is one type, with one list of choices.
fn check_choices(
    entry: &Entry<'_>,
    argument: &Argument,
    sentences: &[Sentence],
    faults: &mut Vec<Fault>,
) {
    let ArgumentKind::Choice(_) = argument.kind else { return };
    let other = sentences.iter().find(|sentence| {
        sentence.arguments.iter().any(|other| {
            other.name == argument.name
                && matches!(other.kind, ArgumentKind::Choice(_))
                && other.kind != argument.kind
        })
    });
    if let Some(other) = other {
        let what = format!("${} has other choices than in {}", argument.name, other.id);
        let help = "give it another name, or both the same choices in the same order";
        faults.push(Fault::new(entry.source, entry.line, &what, help));
    }
}

/// Every text and number is said; a choice may be of no use to a language.
fn check_arguments(
    entry: &Entry<'_>,
    declared: &[Argument],
    pieces: &[Piece],
    left_out: &BTreeSet<usize>,
    faults: &mut Vec<Fault>,
) {
    let said = arguments(pieces);
    for (place, Argument { name, kind, .. }) in declared.iter().enumerate() {
        let is_choice = matches!(kind, ArgumentKind::Choice(_));
        match (said.contains(&place), left_out.contains(&place)) {
            (false, false) if !is_choice => {
                let what = format!("${name} is missing in {}", entry.id);
                let help = format!("say it, or write “# without ${name}” above");
                faults.push(Fault::new(entry.source, entry.line, &what, &help));
            }
            (true, true) => {
                let what = format!("{} says ${name} all the same", entry.id);
                let help = format!("delete “# without ${name}”");
                faults.push(Fault::new(entry.source, entry.line, &what, &help));
            }
            _ => {}
        }
    }
}

/// The arguments that a translation leaves out, as the comment above it says.
fn left_out(
    entry: &Entry<'_>,
    declared: &[Argument],
    faults: &mut Vec<Fault>,
) -> BTreeSet<usize> {
    let mut left_out = BTreeSet::new();
    for line in &entry.comment {
        let Some(name) = line.trim().strip_prefix("without $") else { continue };
        match declared.iter().position(|argument| argument.name == name.trim()) {
            Some(place) => {
                left_out.insert(place);
            }
            None => {
                let what = format!("${name} is no argument of {}", entry.id);
                let help = "write the name it has in English";
                faults.push(Fault::new(entry.source, entry.line, &what, help));
            }
        }
    }
    left_out
}
