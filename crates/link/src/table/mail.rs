//! A table in a text that came by mail: quoted, or with words above it.

use std::borrow::Cow;

use super::heading::has_key;
use super::kind::Kind;
use super::{BEGIN, GROUP, KIND, TABLE_END, TRIAL};

/// Cells of a row of a table, at least. Other texts have fewer commas in a line.
const MANY: usize = 10;

/// What mail programs put in front of a line that they quote.
fn quote(line: &str) -> &str {
    let unquoted = line.trim_start_matches(['>', ' ']);
    let quote = &line[..line.len() - unquoted.len()];
    if quote.contains('>') { quote } else { "" }
}

fn lines(text: &str) -> impl Iterator<Item = &str> {
    text.split(['\n', '\r']).map(|line| line.trim_matches('\u{feff}'))
}

/// Whether a line has the headings of a table, perhaps with its tabs turned into spaces.
fn has_headings(line: &str) -> bool {
    let cells = line.split([',', ';', '\t']);
    let cells: Vec<&str> =
        cells.map(|cell| cell.trim().trim_matches('"').trim()).collect();
    let has = |key: &str| cells.iter().any(|cell| has_key(cell, key));
    let spaced = |key: &str| is_bracketed(line, key);
    let bare = line.strip_prefix(KIND).unwrap_or_default();
    has(KIND) && (has(TRIAL) || has(GROUP))
        || spaced(KIND) && (spaced(TRIAL) || spaced(GROUP))
        || bare.contains(TRIAL)
        || bare.contains(GROUP)
}

/// Whether a key stands in brackets anywhere in a line.
fn is_bracketed(line: &str, key: &str) -> bool {
    let behind =
        |rest: &str| rest.strip_prefix(key).is_some_and(|rest| rest.starts_with(']'));
    line.split('[').skip(1).any(behind)
}

/// What a line is to a table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Line {
    /// It stands before a table in a text.
    Begins,
    /// The headings.
    Headings,
    /// It stands behind a table in a text.
    Ends,
}

/// What a line, quoted or not, is to a table; `None` for rows and everything else.
pub(crate) fn line_of_table(line: &str) -> Option<Line> {
    let line = line.trim_start_matches('\u{feff}');
    let line = line[quote(line).len()..].trim_start();
    if line.starts_with(BEGIN) {
        Some(Line::Begins)
    } else if line.starts_with(TABLE_END) {
        Some(Line::Ends)
    } else {
        has_headings(line).then_some(Line::Headings)
    }
}

/// Whether a line is a row of a table.
fn is_row(line: &str) -> bool {
    let mut cells = line.split([',', ';', '\t']);
    let kind = cells.next().unwrap_or_default().trim_matches('"');
    Kind::ALL.iter().any(|known| known.key() == kind) && cells.nth(MANY - 2).is_some()
}

/// Whether any line of a text is of a table, quoted or not.
pub(super) fn holds_a_table(text: &str) -> bool {
    lines(text).any(|line| {
        let line = line[quote(line).len()..].trim_start();
        line.starts_with(BEGIN) || has_headings(line) || is_row(line)
    })
}

/// A text without the marks in front of its lines by which the table in it is quoted.
pub(super) fn unquoted(text: &str) -> Cow<'_, str> {
    let begins = |line: &str| line.starts_with(BEGIN) || has_headings(line);
    // A note may hold such a line too, further to the right.
    let quotes = lines(text).filter(|line| begins(&line[quote(line).len()..]));
    let Some(quote) = quotes.map(quote).min_by_key(|quote| quote.len()) else {
        return Cow::Borrowed(text);
    };
    if quote.is_empty() {
        return Cow::Borrowed(text);
    }
    let mut plain = String::with_capacity(text.len());
    for line in text.lines() {
        // Blanks at the end of an empty line get lost on the way. A line without the mark
        // may be the rest of one that was broken: it stays, so that no cell is lost.
        let unmarked = line.strip_prefix(quote).or(line.strip_prefix(quote.trim_end()));
        plain.push_str(unmarked.unwrap_or(line));
        plain.push('\n');
    }
    Cow::Owned(plain)
}

/// A text from the line on that has the headings.
pub(super) fn from_headings(text: &str) -> &str {
    let headings = lines(text).find(|line| has_headings(line.trim()));
    let start = headings.and_then(|line| text.find(line));
    start.map_or(text, |start| &text[start..])
}
