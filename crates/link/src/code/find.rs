//! What is wrong with a code, as far as its rows tell.

use super::row::{ROW, is_right};
use super::symbols::Slot;
use crate::error::LinkErrorKind;

/// What is wrong with a row that is.
pub(super) fn in_row(row: usize, slots: &[Slot]) -> LinkErrorKind {
    match slots.iter().find_map(|slot| slot.err()) {
        Some(character) if character.is_ascii_graphic() => {
            LinkErrorKind::Character { row, character }
        }
        _ => LinkErrorKind::Rows { rows: vec![row] },
    }
}

/// Finds the fault of a code that should take `whole` slots, and may be followed by
/// others. The first row is right.
pub(super) fn find(slots: &[Slot], whole: usize) -> Option<LinkErrorKind> {
    let code = Code { slots, whole };
    let wrong: Vec<usize> = (1..=code.rows())
        .filter(|&row| code.row(row, 0).is_some_and(|slots| !is_right(row, slots)))
        .collect();
    let Some(&first) = wrong.first() else {
        let missing = slots.len() / ROW + 1;
        return (slots.len() < whole)
            .then_some(LinkErrorKind::EndsEarly { row: missing });
    };
    let alone = in_row(first, code.row(first, 0)?);
    if matches!(alone, LinkErrorKind::Character { .. }) {
        return Some(alone);
    }
    if code.is_twice(first - 1) {
        return Some(LinkErrorKind::RowTwice { row: first - 1 });
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
        return Some(LinkErrorKind::Swapped { rows: (one, other) });
    }
    Some(LinkErrorKind::Rows { rows: wrong })
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
    fn shift(&self, wrong: usize) -> Option<LinkErrorKind> {
        let right_behind = |by: isize| {
            let mut rows = wrong + 1..=self.rows();
            !rows.is_empty()
                && rows.all(|row| {
                    self.row(row, by).is_some_and(|slots| is_right(row, slots))
                })
        };
        if right_behind(-1) {
            Some(LinkErrorKind::TooFew { row: wrong })
        } else if right_behind(1) {
            Some(LinkErrorKind::TooMany { row: wrong })
        } else if right_behind(-ROW.cast_signed()) {
            Some(LinkErrorKind::MissingRow { row: wrong })
        } else {
            None
        }
    }
}
