//! A notebook as a table for a spreadsheet, and back.

mod cell;
mod heading;
mod kind;
mod list;
mod mail;
mod number;
mod read;
#[cfg(test)]
mod tests;
mod write;

use csv::Terminator;
use noseward_lesson::Notebook;

use crate::error::{At, LinkError, LinkErrorKind};
pub(crate) use heading::has_key;
pub use list::list_to_table;
pub(crate) use mail::{Line, line_of_table};
pub(crate) use read::{Row, are_headings, head, known, reader as table_reader};
use write::rows;
pub(crate) use write::{Cells, mm_cell, overall_cell, rows_of};

/// Bytes of a text that is opened as a table, at most: 1 MiB. A full notebook whose every
/// text is as long as it may be takes some 500 KB.
pub const TABLE_BYTES: usize = 1024 * 1024;

/// The column by which a table is known.
pub(crate) const KIND: &str = "kind_of_row";
/// Whose a row is.
pub(crate) const GROUP: &str = "group";
/// The number of a trial.
const TRIAL: &str = "trial";
/// The version of the table.
pub(crate) const VERSION_KEY: &str = "version";
/// A plan for a trial, also for one to come.
const PLAN: &str = "plan";

/// The line before a table that stands in a text.
const BEGIN: &str = "--- noseward table ---";
/// The line behind a table that stands in a text.
pub const TABLE_END: &str = "--- end of noseward table ---";

/// What may part cells, the rarest in texts first.
const DELIMITERS: [u8; 3] = [b'\t', b';', b','];

/// How a table is spelled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// A file with commas between the cells and points in the numbers.
    PointComma,
    /// A file with semicolons between the cells and commas in the numbers.
    CommaSemicolon,
    /// For pasting: tabs between the cells, points in the numbers.
    Tabs,
    /// For pasting: tabs between the cells, commas in the numbers.
    TabsComma,
}

impl Format {
    /// All four, files first.
    pub const ALL: [Self; 4] =
        [Self::PointComma, Self::CommaSemicolon, Self::Tabs, Self::TabsComma];

    fn delimiter(self) -> u8 {
        match self {
            Self::PointComma => b',',
            Self::CommaSemicolon => b';',
            Self::Tabs | Self::TabsComma => b'\t',
        }
    }

    pub(crate) fn mark(self) -> char {
        match self {
            Self::PointComma | Self::Tabs => '.',
            Self::CommaSemicolon | Self::TabsComma => ',',
        }
    }

    fn is_file(self) -> bool {
        matches!(self, Self::PointComma | Self::CommaSemicolon)
    }
}

/// The notebook as a table: a row with the headings of the columns, then one row for each
/// trial, deleted ones included, and rows for the plans, the conclusion and the settings. Lines
/// end in CR LF; the two files begin with a byte order mark, by which spreadsheets know UTF-8.
///
/// `called` has the words for a column, given its key, in whatever language. The key stands
/// behind them in brackets, or alone where there are no words: by the key a column is found
/// again. All else is the same in every language.
///
/// Numbers are kept to 0.1 mm, and texts as the notebook keeps them. What a spreadsheet
/// would take for a formula, a number or a date stands behind an apostrophe, which
/// [`open_table`] takes away.
#[must_use]
pub fn to_table(
    notebook: &Notebook,
    format: Format,
    called: &dyn Fn(&str) -> String,
) -> String {
    rows(notebook, format, Terminator::CRLF, called)
}

/// The notebook as a table for the end of a text: with tabs, between two lines by which
/// [`open_table`] finds it. Lines end in LF; what stands above it must not begin with either.
#[must_use]
pub fn table_in_text(notebook: &Notebook, called: &dyn Fn(&str) -> String) -> String {
    let table = rows(notebook, Format::Tabs, Terminator::Any(b'\n'), called);
    format!("{BEGIN}\n{table}{TABLE_END}\n")
}

/// Opens a table in any of the four formats, also after a spreadsheet has saved it, and a
/// text with a table in it, as [`table_in_text`] makes it. Either may be quoted by a mail
/// program, or have words above it.
///
/// Columns are found by their keys, in any order and whatever the words before them; unknown
/// ones are ignored, and what is missing has its default. A number may have a point or a comma. A trial whose
/// prediction, number or rocket was changed [is altered](noseward_lesson::Trial::is_altered).
///
/// # Errors
///
/// [`LinkError`] names the row and the column that cannot be read. No row is left out.
pub fn open_table(text: &str) -> Result<Notebook, LinkError> {
    if text.len() > TABLE_BYTES {
        return Err(LinkErrorKind::TooLarge { bytes: text.len() }.at(At::Table));
    }
    read::read(read::table_in(&mail::unquoted(text))?)
}

/// Whether a text is meant as a table: a line of it has headings, is a row, or is the line that
/// stands before a table in a text. A glance: nothing is taken apart, so that whoever
/// only asks does without what reads tables.
#[must_use]
pub fn looks_like_table(text: &str) -> bool {
    text.len() <= TABLE_BYTES && mail::holds_a_table(text)
}
