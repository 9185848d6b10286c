//! Things beside each other: columns, and cards to cut apart.

use super::flow::{ALL, Flow, HAIR_MM, Slot};
use super::page::{MARGIN_MM, ROOM_MM, Tag};
use crate::palette::Colour;
use crate::scene::{Item, Style};

/// Between the edge of a card and what stands on it.
const CARD_MM: f64 = 2.8;
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

#[cfg(test)]
mod tests {
    use super::super::inside::{says_in_order, sheet_is_sound};
    use super::super::{Page, PaperSize};
    use super::*;

    /// Where words begin: the page, and how far from its left and upper edges.
    fn place(pages: &[Page], wanted: &str) -> (usize, f64, f64) {
        let found = pages.iter().enumerate().find_map(|(i, page)| {
            let items = page.scene.groups.iter().flat_map(|group| &group.items);
            items.into_iter().find_map(|item| match item {
                Item::Text { at, words, .. } => {
                    (words == wanted).then_some((i, at.x, at.y))
                }
                _ => None,
            })
        });
        found.unwrap_or_else(|| panic!("{wanted} is nowhere"))
    }

    fn columns(size: PaperSize) -> Vec<Page> {
        let mut flow = Flow::new(size, "Columns");
        flow.beside(&[2.0, 1.0], 6.0, &mut |flow, i| {
            flow.paragraph(["left", "right"][i]);
            if i == 0 {
                flow.paragraph("low");
            }
        });
        flow.paragraph("below");
        flow.pages()
    }

    #[test]
    fn columns_begin_at_one_height_and_end_with_the_longest() {
        sheet_is_sound(1, &columns);
        let pages = columns(PaperSize::A4);
        says_in_order(&pages, &["left", "low", "right", "below"]);
        let [left, low, right, below] =
            ["left", "low", "right", "below"].map(|words| place(&pages, words));
        assert_eq!((left.2, left.1), (right.2, low.1));
        assert!((right.1 - left.1 - (ROOM_MM.0 - 6.0) / 1.5 - 6.0).abs() < 1e-9);
        assert!(below.2 > low.2 && below.1 == left.1);
    }

    #[test]
    fn cards_of_a_row_are_on_one_page() {
        let sheet = |size| {
            let mut flow = Flow::new(size, "Cards");
            flow.cards(2, 9, 60.0, &mut |flow, i| {
                flow.heading(3, &format!("card {i}"));
                flow.list(&["a", "b"][..1 + i % 2], crate::paper::Mark::Box);
            });
            flow.pages()
        };
        sheet_is_sound(2, &sheet);
        let pages = sheet(PaperSize::Letter);
        let cards: Vec<_> = (0..9).map(|i| place(&pages, &format!("card {i}"))).collect();
        for row in cards.chunks(2) {
            assert!(row.iter().all(|card| (card.0, card.2) == (row[0].0, row[0].2)));
        }
        let pages: Vec<usize> = cards.iter().map(|card| card.0).collect();
        assert_eq!(pages, [0, 0, 0, 0, 0, 0, 1, 1, 1]);
        assert!((cards[2].2 - cards[0].2 - 60.0).abs() < 1e-9);
    }
}
