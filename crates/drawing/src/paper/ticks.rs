//! Boxes to tick.

use super::flow::{ASCENT, BODY_MM, Flow, GAP_MM, LINE, Slot, wide};
use super::page::{MARGIN_MM, Tag};
use crate::scene::Item;

/// A cell of a table with nothing but this is a box to tick.
pub const TO_TICK: &str = "\u{2610}";

/// The side of a box.
const SIDE_MM: f64 = 3.4;
/// From the left edge of a box to its words, and from these to the next box.
const INDENT_MM: f64 = 4.8;
const APART_MM: f64 = 6.0;
/// From one line to the next.
const STEP_MM: f64 = BODY_MM * LINE + 1.4;

impl Flow {
    /// Things to choose from, each behind a box to tick, in as many lines as they take. The
    /// label stands before the first; it may be empty.
    pub fn ticks<S: AsRef<str>>(&mut self, label: &str, choices: &[S]) {
        let all = self.slot;
        let (mut x, mut line) = (0.0, 0);
        let mut places = Vec::new();
        let labels = (!label.is_empty()).then_some((label, true));
        let choices = choices.iter().map(|choice| (choice.as_ref(), false));
        for (words, is_label) in labels.into_iter().chain(choices) {
            let indent = if is_label { 0.0 } else { INDENT_MM };
            let width = indent + wide(words, BODY_MM, is_label);
            if x > 0.0 && x + width > all.width {
                (x, line) = (0.0, line + 1);
            }
            places.push((words, is_label, x, line));
            x += width + if is_label { 3.0 } else { APART_MM };
        }
        let height = f64::from(line + 1) * STEP_MM;
        self.keep_mm(height);
        let mut items = Vec::new();
        for (words, is_label, x, line) in places {
            let base = MARGIN_MM + self.y + f64::from(line) * STEP_MM + BODY_MM * ASCENT;
            let indent = if is_label { 0.0 } else { INDENT_MM };
            let slot = Slot { x: all.x + x + indent, width: all.width - x - indent };
            items.push(self.words(slot, base, BODY_MM, is_label, words));
            if !is_label {
                let side = Slot { x: all.x + x, width: SIDE_MM };
                items.push(self.frame(side, base - SIDE_MM + 0.4, SIDE_MM));
            }
        }
        self.page().push(Tag::Paragraph, items);
        self.y += height + GAP_MM / 2.0;
    }

    /// A box in the middle of a cell.
    pub(super) fn box_in(&self, cell: Slot, top: f64, height: f64) -> Item {
        let x = cell.x + (cell.width - SIDE_MM) / 2.0;
        self.frame(Slot { x, width: SIDE_MM }, top + (height - SIDE_MM) / 2.0, SIDE_MM)
    }
}
