//! Things beside each other: columns, and cards to cut apart.

use super::flow::{ALL, Flow, HAIR_MM, Slot};
use super::page::{MARGIN_MM, ROOM_MM, Tag};
use crate::palette::Colour;
use crate::scene::{Item, Style};

/// Between the edge of a card and what stands on it.
const CARD_MM: f64 = 3.2;
/// Where to cut.
const CUT: &[f64] = &[1.6, 1.2];

impl Flow {
    /// Columns beside each other, each as wide as its share: `fill` is called for each by its
    /// number. They are not parted: what they are filled with has to fit on what is left of
    /// the page, or on another one.
    pub fn beside(
        &mut self,
        shares: &[f64],
        gap_mm: f64,
        fill: &mut dyn FnMut(&mut Self, usize),
    ) {
        let all = self.slot;
        let gaps = gap_mm * shares.len().saturating_sub(1) as f64;
        let mm = (all.width - gaps) / shares.iter().sum::<f64>();
        let slots = shares.iter().scan(all.x, |x, share| {
            let slot = Slot { x: *x, width: share * mm };
            *x += slot.width + gap_mm;
            Some(slot)
        });
        let slots: Vec<Slot> = slots.collect();
        let mut try_out = self.clone();
        try_out.columns(&slots, fill);
        self.keep_mm(try_out.y - self.y);
        self.columns(&slots, fill);
    }

    /// Fills columns from one height on, and goes on below the longest.
    fn columns(&mut self, slots: &[Slot], fill: &mut dyn FnMut(&mut Self, usize)) {
        let (all, top) = (self.slot, self.y);
        let mut bottom = top;
        for (slot, i) in slots.iter().zip(0..) {
            (self.slot, self.y) = (*slot, top);
            fill(self, i);
            bottom = bottom.max(self.y);
        }
        (self.slot, self.y) = (all, bottom);
    }

    /// Cards to cut apart, in a grid of so many columns, each at least so high. `fill` is
    /// called for each by its number. Those of a row are equally high.
    pub fn cards(
        &mut self,
        columns: usize,
        count: usize,
        least_mm: f64,
        fill: &mut dyn FnMut(&mut Self, usize),
    ) {
        let width = ROOM_MM.0 / columns as f64;
        let slot = |i: usize| {
            let x = (i % columns) as f64 * width;
            Slot { x: x + CARD_MM, width: width - 2.0 * CARD_MM }
        };
        for first in (0..count).step_by(columns) {
            let row: Vec<Slot> = (first..count.min(first + columns)).map(slot).collect();
            let mut try_out = self.clone();
            try_out.columns(&row, &mut |flow, i| fill(flow, first + i));
            let height = (try_out.y - self.y + 2.0 * CARD_MM).max(least_mm);
            self.keep_mm(height);
            let top = self.y;
            self.y += CARD_MM;
            self.columns(&row, &mut |flow, i| fill(flow, first + i));
            self.y = top + height;
            self.cut_lines(&row, top, height);
        }
    }

    /// Where the cards of a row are cut.
    fn cut_lines(&mut self, row: &[Slot], top: f64, height: f64) {
        let edges = row.iter().map(|slot| {
            let all = Slot { x: slot.x - CARD_MM, width: slot.width + 2.0 * CARD_MM };
            let mut edge = self.frame(all, MARGIN_MM + top, height);
            if let Item::Path { style, .. } = &mut edge {
                *style = Style::line(Colour::Soft, HAIR_MM).dashed(CUT);
            }
            edge
        });
        let edges = edges.collect();
        self.page().push(Tag::Artifact, edges);
        debug_assert!(self.slot == ALL, "cards take the whole width");
    }
}
