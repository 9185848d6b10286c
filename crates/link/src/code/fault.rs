//! What is wrong with a code, as far as its rows tell.

use super::row::{ROW, is_right};
use super::symbols::Slot;

/// Why a code cannot be read. Its text is for a pupil, and says where to look.
///
/// Rows count from 1, in groups of twenty characters, wherever the lines end.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CodeFault {
    /// It does not begin as a code does.
    #[error("There is no code in this. A code begins with R1 or R2.")]
    NotACode,
    /// It has a version that is not known here.
    #[error(
        "This code was made by a newer version of this page. Reload the page, then type \
         it again."
    )]
    Newer {
        /// The version it names.
        version: u32,
    },
    /// It announces more than any design takes.
    #[error(
        "This code is longer than any that this page makes. Copy it again from where it \
         came from."
    )]
    TooLong,
    /// Every row that is there is right, and there are too few.
    #[error("The code ends too early: row {row} is missing or short.")]
    EndsEarly {
        /// The first that is not there, or not whole.
        row: usize,
    },
    /// It holds a character of ASCII that stands for nothing.
    #[error("Row {row} has “{character}”, which no code has: compare it with the paper.")]
    Character {
        /// The first such row.
        row: usize,
        /// The first of the row: a printing character of ASCII.
        character: char,
    },
    /// One row is wrong.
    #[error("Row {row} has a wrong character: compare it with the paper.")]
    Row {
        /// Which.
        row: usize,
    },
    /// Several rows are wrong.
    #[error("Rows {} are wrong: compare them with the paper.", list(rows))]
    Rows {
        /// Which, in order; two or more.
        rows: Vec<usize>,
    },
    /// From some row on, all stands one character too far to the front.
    #[error("Row {row} has a character too few: compare it with the paper.")]
    TooFew {
        /// The first wrong row.
        row: usize,
    },
    /// From some row on, all stands one character too far to the back.
    #[error("Row {row} has a character too many: compare it with the paper.")]
    TooMany {
        /// The first wrong row.
        row: usize,
    },
    /// The row after the one before is there, and this is not.
    #[error("Row {row} is missing.")]
    MissingRow {
        /// Which.
        row: usize,
    },
    /// A row stands there twice, one after the other.
    #[error("Row {row} is there twice. Take one of the two out.")]
    RowTwice {
        /// Which.
        row: usize,
    },
    /// Two rows stand in each other's place.
    #[error("Rows {} and {} have changed places.", rows.0, rows.1)]
    Swapped {
        /// Which.
        rows: (usize, usize),
    },
    /// Every row agrees with its check character, and the whole does not agree with its
    /// checksum.
    #[error(
        "Something in this code is wrong, and its rows do not tell where. Compare each \
         row with the paper."
    )]
    Changed,
}

/// What is wrong with a row that is.
pub(super) fn in_row(row: usize, slots: &[Slot]) -> CodeFault {
    match slots.iter().find_map(|slot| slot.err()) {
        Some(character) if character.is_ascii_graphic() => {
            CodeFault::Character { row, character }
        }
        _ => CodeFault::Row { row },
    }
}

/// Finds the fault of a code that should take `whole` slots, and may be followed by
/// others. The first row is right.
pub(super) fn find(slots: &[Slot], whole: usize) -> Option<CodeFault> {
    let code = Code { slots, whole };
    let wrong: Vec<usize> = (1..=code.rows())
        .filter(|&row| code.row(row, 0).is_some_and(|slots| !is_right(row, slots)))
        .collect();
    let Some(&first) = wrong.first() else {
        let missing = slots.len() / ROW + 1;
        return (slots.len() < whole).then_some(CodeFault::EndsEarly { row: missing });
    };
    let alone = in_row(first, code.row(first, 0)?);
    if matches!(alone, CodeFault::Character { .. }) {
        return Some(alone);
    }
    if code.is_twice(first - 1) {
        return Some(CodeFault::RowTwice { row: first - 1 });
    }
    if wrong.len() == 1 && slots.len() >= whole {
        return Some(alone);
    }
    if let Some(shift) = code.shift(first) {
        return Some(shift);
    }
    if wrong.len() == 1 {
        return Some(alone);
    }
    if let &[one, other] = &wrong[..]
        && code.stands_for(one, other)
        && code.stands_for(other, one)
    {
        return Some(CodeFault::Swapped { rows: (one, other) });
    }
    Some(CodeFault::Rows { rows: wrong })
}

struct Code<'a> {
    slots: &'a [Slot],
    whole: usize,
}

impl Code<'_> {
    fn rows(&self) -> usize {
        self.whole.div_ceil(ROW)
    }

    /// A row, if it is there, where everything stands `by` slots further back.
    fn row(&self, row: usize, by: isize) -> Option<&[Slot]> {
        let start = ((row - 1) * ROW).checked_add_signed(by)?;
        let end = (row * ROW).min(self.whole).checked_add_signed(by)?;
        self.slots.get(start..end)
    }

    /// Whether what stands in one row's place is another row.
    fn stands_for(&self, place: usize, row: usize) -> bool {
        self.row(place, 0).is_some_and(|slots| is_right(row, slots))
    }

    /// Whether the slots of a row follow once more.
    fn is_twice(&self, row: usize) -> bool {
        let places = (row - 1) * ROW..row * ROW;
        let again = self.slots.get(row * ROW..(row + 1) * ROW);
        self.slots.get(places).is_some_and(|slots| Some(slots) == again)
    }

    /// What moved the rest of the code, if every row behind a wrong one is right at its
    /// new place.
    fn shift(&self, wrong: usize) -> Option<CodeFault> {
        let right_behind = |by: isize| {
            let mut rows = wrong + 1..=self.rows();
            !rows.is_empty()
                && rows.all(|row| {
                    self.row(row, by).is_some_and(|slots| is_right(row, slots))
                })
        };
        if right_behind(-1) {
            Some(CodeFault::TooFew { row: wrong })
        } else if right_behind(1) {
            Some(CodeFault::TooMany { row: wrong })
        } else if right_behind(-ROW.cast_signed()) {
            Some(CodeFault::MissingRow { row: wrong })
        } else {
            None
        }
    }
}

fn list(rows: &[usize]) -> String {
    let words: Vec<String> = rows.iter().map(ToString::to_string).collect();
    match words.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, before)) => format!("{} and {last}", before.join(", ")),
        None => String::new(),
    }
}
