//! Why a table cannot be opened.

use noseward_lesson::{NotebookError, SwingsError};

/// Why a text cannot be opened as a table. Its own text is for a pupil, and says how to
/// mend it.
///
/// Rows count as a spreadsheet counts them: the headings are row 1.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum TableError {
    /// It is larger than [`TABLE_BYTES`](crate::TABLE_BYTES).
    #[error(
        "This is too large to be the table of a notebook ({} KB). Open a table that this \
         page saved.",
        bytes / 1024
    )]
    TooLarge {
        /// Its size.
        bytes: usize,
    },
    /// It has no row of headings.
    #[error(
        "There is no table of a notebook in this. Open a table that this page saved, or \
         paste all of it, with its row of headings."
    )]
    NotATable,
    /// It begins with the line that stands before a table, and stops before the line that
    /// stands behind one.
    #[error(
        "The table in this text ends too early: the line “{}” is missing. Copy the whole \
         text again.",
        super::END
    )]
    CutShort,
    /// It was written by a newer version of the page.
    #[error(
        "This table was saved by a newer version of this page. Reload the page, then open \
         the table again."
    )]
    Newer {
        /// The version it names.
        version: u32,
    },
    /// Two columns have one heading.
    #[error(
        "Two columns have the heading “{heading}”. Take one of them out, or give it a \
         heading of its own."
    )]
    TwoColumns {
        /// The heading.
        heading: String,
    },
    /// A row has a cell beyond the last heading.
    #[error(
        "Row {row} has more cells than there are headings. Look there for a comma, a \
         semicolon or a quotation mark too many, or save the table again."
    )]
    TooManyCells {
        /// The row.
        row: usize,
    },
    /// A row of a kind that is there once stands there again.
    #[error("Row {row} is a second row “{kind}”. Keep one of the two.")]
    TwoRows {
        /// The row.
        row: usize,
        /// Its kind.
        kind: &'static str,
    },
    /// A cell cannot be read.
    #[error("Row {row}, column “{heading}”: {fault}")]
    Cell {
        /// The row.
        row: usize,
        /// The heading of the column.
        heading: String,
        /// What is wrong with the cell, and how to mend it.
        fault: CellFault,
    },
    /// The rows make no notebook.
    #[error("These rows make no notebook: {0}. Take rows out, or save the table again.")]
    Notebook(NotebookError),
}

/// What is wrong with a cell, and how to mend it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CellFault {
    /// It must hold one of some words.
    #[error("“{found}” is not known here. Write one of these: {}.", choices.join("; "))]
    Choice {
        /// What stands there.
        found: String,
        /// What may stand there.
        choices: Vec<&'static str>,
    },
    /// It must hold a number.
    #[error(
        "“{found}” is not a number. Write, for example, 12.5 or 12,5. A spreadsheet may \
         have made a date of it."
    )]
    Number {
        /// What stands there.
        found: String,
    },
    /// Its number could be two.
    #[error(
        "“{found}” can be read in two ways. Write it without a mark, or with fewer digits \
         behind the mark."
    )]
    Ambiguous {
        /// What stands there.
        found: String,
    },
    /// It must hold a whole number within bounds.
    #[error("“{found}” must be a whole number from {least} to {most}.")]
    Count {
        /// What stands there.
        found: String,
        /// The least.
        least: u16,
        /// The most.
        most: u16,
    },
    /// Its text is too long.
    #[error("this text has {chars} characters. There is room for {most}: shorten it.")]
    TooLong {
        /// How many it has.
        chars: usize,
        /// How many it may have.
        most: usize,
    },
    /// It holds no group's label.
    #[error("“{found}” is no group. Write a colour and a number, such as Blue 4.")]
    Group {
        /// What stands there.
        found: String,
    },
    /// It names another group than a row before.
    #[error(
        "“{found}” is another group than in the rows before. A notebook is of one group: \
         keep the rows of one."
    )]
    OtherGroup {
        /// What stands there.
        found: String,
    },
    /// Its trial's number stands in another row too.
    #[error("trial {id} stands there twice. Give each trial a number of its own.")]
    Taken {
        /// The number.
        id: u16,
    },
    /// It has to hold something.
    #[error("this is empty, and something else in the row needs it. Fill it in.")]
    Empty,
    /// It holds no rocket.
    #[error(
        "there is no rocket in this ({detail}). Copy the link of the rocket into it again."
    )]
    Rocket {
        /// What opening it says.
        detail: String,
    },
    /// It holds no seal.
    #[error(
        "“{found}” is no seal. Put back what stood there; with an empty cell the trial \
         counts as altered."
    )]
    Seal {
        /// What stands there.
        found: String,
    },
    /// There are more swings than there can be.
    #[error("{0}. Take some out.")]
    Swings(SwingsError),
    /// Rows of this kind hold nothing in this column.
    #[error(
        "“{found}” does not belong into a row “{kind}”. Take it out, or move it to another \
         row."
    )]
    Misplaced {
        /// What stands there.
        found: String,
        /// The kind of the row.
        kind: &'static str,
    },
}
