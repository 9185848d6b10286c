//! A typed code, row by row.

use super::flow::{BODY_MM, Flow, GAP_MM, LINE, SMALL_MM, Slot, wide};
use super::page::{MARGIN_MM, Tag};

/// Its letters are no smaller than this, in millimetres.
const LEAST_MM: f64 = 2.2;

impl Flow {
    /// A code as it is typed: each of its rows in one line, however narrow the column is.
    pub fn code(&mut self, code: &str) {
        let rows: Vec<String> = code.lines().map(str::to_owned).collect();
        let widest = rows.iter().map(|row| wide(row, 1.0, true)).fold(1e-9, f64::max);
        let room = self.slot.width;
        let size = (room / widest).clamp(LEAST_MM, BODY_MM).min(SMALL_MM + 0.6);
        let height = rows.len() as f64 * size * LINE;
        self.keep_mm(height);
        let slot = Slot { x: self.slot.x, width: room };
        let items = self.lines(slot, MARGIN_MM + self.y, size, true, &rows);
        self.page().push(Tag::Paragraph, items);
        self.y += height + GAP_MM;
    }
}
