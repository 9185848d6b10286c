//! Whatever was handed in, taken apart: links, codes, parts, files and tables, many in one text.
//! What cannot be read is told with its place, and nothing is passed over in silence.

use noseward_lesson::{Notebook, TrialResult};

use super::table::{ClassRow, ClassRows};
use crate::any::{Any, begins_code, open_any, pieces};
use crate::code::looks_like;
use crate::error::{At, LinkError, LinkErrorKind};
use crate::notebook::parts::{Progress, QrSegments};
use crate::result;
use crate::table::{Line, line_of_table, looks_like_table, open_table};

/// Characters of what was found that are kept with a fault, to be mended, at most.
const KEPT_CHARS: usize = 100_000;
/// Letters of a word that is more than a word: of something that was damaged in front.
const WORD: usize = 20;
/// Rows of the code of a result.
const RESULT_ROWS: usize = 3;

/// One thing that stood in what was handed in.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The name of the file; empty for what was pasted or typed.
    pub source: String,
    /// The line where it begins, from 1.
    pub line: usize,
    /// What stands there, to be mended.
    pub text: String,
    /// What it is.
    pub what: Result<HandedIn, LinkError>,
}

/// What was handed in.
#[derive(Clone, Debug, PartialEq)]
pub enum HandedIn {
    /// The result of one trial.
    Result(Box<TrialResult>),
    /// A notebook.
    Notebook(Box<Notebook>),
    /// A row of the table of a class.
    Row(Box<ClassRow>),
    /// A rocket, which says nothing of a trial.
    Rocket,
    /// How a lesson is set up, which says nothing of one either.
    SetUp,
    /// A part of a notebook of which others are still missing.
    Part {
        /// How many are here.
        here: usize,
        /// How many there are.
        of: usize,
    },
    /// Words that hold nothing.
    Words,
}

/// One text or file, taken apart step by step.
#[expect(missing_debug_implementations, reason = "what reads cells has none")]
pub struct Gathering {
    source: String,
    rest: Rest,
    /// Parts of notebooks that came so far, and where the first of them stood.
    parts: Vec<(usize, String, QrSegments)>,
}

enum Rest {
    /// The table of a class whose headings cannot be read.
    Unread(Option<(String, LinkError)>),
    /// Rows of the table of a class.
    Rows(Box<ClassRows>),
    /// Texts with the lines at which they begin, the last first.
    Texts(Vec<(usize, String)>),
}

impl Gathering {
    /// Begins with a text: what was pasted, or the file called `source`.
    #[must_use]
    pub fn new(source: &str, text: &str) -> Self {
        let rest = match ClassRows::open(text) {
            Some(Ok(rows)) => Rest::Rows(Box::new(rows)),
            Some(Err(error)) => Rest::Unread(Some((text.to_owned(), error))),
            None => {
                let mut texts = taken_apart(text);
                texts.reverse();
                Rest::Texts(texts)
            }
        };
        Self { source: source.to_owned(), rest, parts: Vec::new() }
    }

    fn found(&self, line: usize, text: &str, what: Result<HandedIn, LinkError>) -> Found {
        let text = text.trim().chars().take(KEPT_CHARS).collect();
        Found { source: self.source.clone(), line, text, what }
    }

    /// Adds a part; the notebook, once all are here.
    fn add_part(
        &mut self,
        line: usize,
        text: &str,
        part: &QrSegments,
    ) -> Option<Result<HandedIn, LinkError>> {
        let notebook = |parts: &QrSegments| {
            let file = parts.notebook()?;
            Some(file.map(|file| HandedIn::Notebook(Box::new(file.notebook))))
        };
        for i in 0..self.parts.len() {
            let (_, all, known) = &mut self.parts[i];
            if known.add(text).is_ok() {
                all.push('\n');
                all.push_str(text.trim());
                let whole = notebook(known);
                if whole.is_some() {
                    self.parts.remove(i);
                }
                return whole;
            }
        }
        let whole = notebook(part);
        if whole.is_none() {
            self.parts.push((line, text.trim().to_owned(), part.clone()));
        }
        whole
    }
}

impl Iterator for Gathering {
    type Item = Found;

    fn next(&mut self) -> Option<Found> {
        loop {
            let next = match &mut self.rest {
                Rest::Unread(text) => {
                    let (text, error) = text.take()?;
                    return Some(self.found(1, &text, Err(error)));
                }
                Rest::Rows(rows) => {
                    let (line, text, row) = rows.next()?;
                    let what = row.map(|row| HandedIn::Row(Box::new(row)));
                    return Some(self.found(line, &text, what));
                }
                Rest::Texts(texts) => texts.pop(),
            };
            let Some((line, text)) = next else {
                let (line, text, parts) = self.parts.pop()?;
                let Progress { have, of, .. } = parts.progress();
                let (here, of) = (have.into(), of.into());
                return Some(self.found(line, &text, Ok(HandedIn::Part { here, of })));
            };
            let what = match opened(&text) {
                Ok(Any::Parts(part)) => match self.add_part(line, &text, &part) {
                    Some(whole) => whole,
                    None => continue,
                },
                Ok(Any::Notebook(file)) => {
                    Ok(HandedIn::Notebook(Box::new(file.notebook)))
                }
                Ok(Any::Result(result)) => Ok(HandedIn::Result(Box::new(result))),
                Ok(Any::Rocket(_)) => Ok(HandedIn::Rocket),
                Ok(Any::SetUp(_)) => Ok(HandedIn::SetUp),
                Err(LinkError { kind: LinkErrorKind::Nothing, .. })
                    if !has_long_word(&text) && !begins_code(&text) =>
                {
                    Ok(HandedIn::Words)
                }
                Err(error) => Err(error),
            };
            return Some(self.found(line, &text, what));
        }
    }
}

fn opened(text: &str) -> Result<Any, LinkError> {
    if looks_like_table(text) {
        let notebook = open_table(text)?;
        return Ok(Any::Notebook(crate::NotebookFile { notebook, rocket: None }));
    }
    if pieces(text).is_empty() {
        return Err(LinkErrorKind::Nothing.at(At::File));
    }
    open_any(text)
}

/// The texts that stand in one, with the lines at which they begin: each file, each table, each
/// link, each code with its rows, and every other line.
fn taken_apart(text: &str) -> Vec<(usize, String)> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.trim_start().starts_with('{') {
        return vec![(1, text.to_owned())];
    }
    let mut texts: Vec<(usize, String)> = Vec::new();
    let (mut in_table, mut behind_blank) = (false, false);
    for (line, number) in text.lines().zip(1..) {
        let of_table = line_of_table(line);
        let goes_on = match of_table {
            Some(Line::Begins) => false,
            Some(Line::Headings) if !in_table => false,
            Some(Line::Headings) => texts.last().is_some_and(|(_, last)| {
                // The headings behind the line that begins a table.
                last.lines().count() == 1 && line_of_table(last) == Some(Line::Begins)
            }),
            Some(Line::Ends) => in_table,
            None if in_table => true,
            None => {
                let last = texts.last().map_or("", |(_, last)| last);
                !behind_blank && is_further_row(line) && ends_in_row(last)
            }
        };
        match texts.last_mut().filter(|_| goes_on) {
            Some((_, last)) => {
                last.push('\n');
                last.push_str(line);
            }
            None if line.trim().is_empty() => {}
            None => {
                let found = if of_table.is_some() { vec![line] } else { pieces(line) };
                let found = if found.len() < 2 { vec![line] } else { found };
                texts.extend(found.into_iter().map(|piece| (number, piece.to_owned())));
            }
        }
        behind_blank = line.trim().is_empty();
        in_table = match of_table {
            Some(Line::Begins | Line::Headings) => true,
            Some(Line::Ends) => false,
            None => in_table,
        };
    }
    texts
}

/// The groups of four that a line of a code consists of, the last perhaps shorter.
fn groups(line: &str) -> impl Iterator<Item = &str> {
    let is_group = |group: &&str| {
        group.len() <= 4 && group.bytes().all(|b| b.is_ascii_alphanumeric())
    };
    line.split_ascii_whitespace().rev().take_while(is_group)
}

/// Whether a line may be a further row of a code: such a row may look like the beginning of
/// another one, but not like a whole first row.
fn is_further_row(line: &str) -> bool {
    let words = line.split_ascii_whitespace().count();
    (1..=5).contains(&words) && groups(line).count() == words && !begins_code(line)
}

/// Whether a text ends in a whole row of a code, so that another may follow.
fn ends_in_row(text: &str) -> bool {
    let last = text.lines().last().unwrap_or_default();
    let is_whole = groups(last).take(5).filter(|group| group.len() == 4).count() == 5;
    let is_full = looks_like(result::KIND, text) && text.lines().count() >= RESULT_ROWS;
    is_whole && !is_full
}

/// Whether a text holds something that is no word of any language.
fn has_long_word(text: &str) -> bool {
    text.split_ascii_whitespace().any(|word| {
        word.len() >= WORD
            && word.is_ascii()
            && word.bytes().any(|b| b.is_ascii_digit())
            && word.bytes().any(|b| b.is_ascii_alphabetic())
    })
}
