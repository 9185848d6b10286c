//! Why something cannot be opened: one type for every format.

use noseward_lesson::{NotebookError, SwingsError};

/// Why a text cannot be opened: what, where and with which values. Whoever opens it has the
/// words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LinkError {
    /// What is wrong.
    pub kind: LinkErrorKind,
    /// With what.
    pub at: At,
}

/// What could not be opened, and which part of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum At {
    /// A link, to a rocket or a notebook.
    Link,
    /// The code of a rocket.
    Code,
    /// A part of a notebook; its number, if its first row is right.
    Part(Option<u8>),
    /// The code of a result.
    Result,
    /// The file of a rocket, or a text that may be anything.
    File,
    /// The file of a notebook.
    NotebookFile,
    /// A value in the file of a notebook.
    Entry {
        /// The list that it stands in.
        list: &'static str,
        /// Which entry of the list, from 1.
        place: usize,
        /// The key of the value.
        key: String,
    },
    /// A table.
    Table,
    /// A row of a table, as a spreadsheet counts: the headings are row 1.
    TableRow(usize),
    /// A cell of a table.
    Cell {
        /// The row.
        row: usize,
        /// The key of the column.
        column: String,
    },
}

/// What is wrong with a text.
///
/// Lines, columns and rows count from 1. Rows of a code are groups of twenty characters,
/// wherever its lines end.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinkErrorKind {
    /// It is larger than anything that this page writes.
    TooLarge {
        /// Its size, as far as it was looked at.
        bytes: usize,
    },
    /// There is nothing of the kind in it.
    Nothing,
    /// It has a version that is not known here.
    Newer {
        /// The version that it names.
        version: u32,
    },
    /// It holds something that is not known here and must not be passed over.
    Unknown {
        /// Its key.
        key: String,
    },
    /// It ends too early.
    CutShort,
    /// Its checksum does not agree, or what it holds makes no sense.
    Changed,

    /// A code: every row that is there is right, and there are too few.
    EndsEarly {
        /// The first that is not there, or not whole.
        row: usize,
    },
    /// A code holds a character of ASCII that stands for nothing.
    Character {
        /// The first such row.
        row: usize,
        /// The first of the row: a printing character of ASCII.
        character: char,
    },
    /// Rows of a code are wrong.
    Rows {
        /// Which, in order; one or more.
        rows: Vec<usize>,
    },
    /// From some row of a code on, all stands one character too far to the front.
    TooFew {
        /// The first wrong row.
        row: usize,
    },
    /// From some row of a code on, all stands one character too far to the back.
    TooMany {
        /// The first wrong row.
        row: usize,
    },
    /// The row of a code after the one before is there, and this is not.
    MissingRow {
        /// Which.
        row: usize,
    },
    /// A row of a code stands there twice, one after the other.
    RowTwice {
        /// Which.
        row: usize,
    },
    /// Two rows of a code stand in each other's place.
    Swapped {
        /// Which.
        rows: (usize, usize),
    },
    /// A part is of another notebook than those before it, or of an earlier or later state
    /// of the same.
    OtherNotebook,

    /// JSON stops in the middle.
    EndsInLine {
        /// Its last line.
        line: usize,
    },
    /// It is not JSON.
    Syntax {
        /// Where reading stopped.
        line: usize,
        /// Where reading stopped.
        column: usize,
        /// What a programmer would want to know.
        detail: String,
    },
    /// It is JSON, but not of what it should be.
    Content {
        /// Where reading stopped.
        line: usize,
        /// Where reading stopped.
        column: usize,
        /// What was found, and what was expected.
        detail: String,
    },
    /// A rocket has more of something than any format keeps.
    Crowded {
        /// The key of the list.
        list: &'static str,
        /// How many there are.
        count: usize,
        /// How many are kept.
        most: usize,
    },

    /// Two columns of a table have one key.
    TwoColumns {
        /// The key.
        column: String,
    },
    /// A row has a cell beyond the last column.
    TooManyCells,
    /// A row of a kind that is there once stands there again.
    TwoRows {
        /// Its kind.
        kind: &'static str,
    },
    /// A cell must hold one of some keys.
    Choice {
        /// What stands there.
        found: String,
        /// What may stand there.
        choices: Vec<&'static str>,
    },
    /// A cell must hold a number.
    NotANumber {
        /// What stands there.
        found: String,
    },
    /// The number in a cell could be two.
    Ambiguous {
        /// What stands there.
        found: String,
    },
    /// A cell must hold a whole number within bounds.
    Count {
        /// What stands there.
        found: String,
        /// The least.
        least: u16,
        /// The most.
        most: u16,
    },
    /// The text in a cell is too long.
    TooLong {
        /// How many characters it has.
        chars: usize,
        /// How many it may have.
        most: usize,
    },
    /// A cell holds no group.
    NotAGroup {
        /// What stands there.
        found: String,
    },
    /// A cell names another group than a row before.
    OtherGroup {
        /// What stands there.
        found: String,
    },
    /// The trial's number stands in another row too.
    Taken {
        /// The number.
        id: u16,
    },
    /// A cell has to hold something.
    Empty,
    /// A cell holds no rocket.
    NotARocket {
        /// What opening it says.
        error: Box<LinkError>,
    },
    /// A value is no text.
    NotAText {
        /// What stands there.
        found: String,
    },
    /// A cell holds no seal.
    NotASeal {
        /// What stands there.
        found: String,
    },
    /// A cell holds no code of rules.
    NotRules {
        /// What stands there.
        found: String,
    },
    /// A cell holds no label of a class.
    NotAClass {
        /// What stands there.
        found: String,
    },
    /// A cell holds no notebook.
    NotANotebook {
        /// What opening it says.
        error: Box<LinkError>,
    },
    /// Rows of this kind hold nothing in this column.
    Misplaced {
        /// What stands there.
        found: String,
        /// The kind of the row.
        kind: &'static str,
    },
    /// There are more swings than there can be.
    Swings(SwingsError),
    /// What is there makes no notebook.
    Notebook(NotebookError),
}

impl LinkErrorKind {
    /// The error that this is at some place.
    pub(crate) fn at(self, at: At) -> LinkError {
        LinkError { kind: self, at }
    }
}
