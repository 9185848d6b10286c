//! What a line or a pattern stands for, in words.

use crate::area::Area;
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::{NARROWEST, cut, words_px};

const SAMPLE_PX: f64 = 28.0;
const SAMPLE_HEIGHT_PX: f64 = 14.0;
/// Between sample and words, and between two entries.
const GAP_PX: f64 = 8.0;
const BETWEEN_PX: f64 = 20.0;
const ROW_PX: f64 = 21.0;

/// Draws a sample within its area.
type Sample<'a> = Box<dyn Fn(&Area) -> Vec<Item> + 'a>;

/// One thing that is explained: its sample and the words.
pub(crate) struct Entry<'a> {
    pub(crate) sample: Sample<'a>,
    pub(crate) words: String,
}

impl Entry<'_> {
    /// A line.
    pub(crate) fn line(style: Style, words: impl Into<String>) -> Self {
        let sample = move |area: &Area| {
            let y = area.middle().y;
            let ends = [area.left, area.right].map(|x| Point { x, y });
            vec![Item::Path { path: Path::open(ends.into()), style }]
        };
        Self { sample: Box::new(sample), words: words.into() }
    }
}

/// The entries one after the other in as many rows as they need, with the y below the
/// last row. Words too long for a row are set narrower, and cut where that is not enough.
pub(crate) fn legend(
    entries: &[Entry<'_>],
    left: f64,
    right: f64,
    top: f64,
) -> (Vec<Item>, f64) {
    let mut items = Vec::new();
    let (mut x, mut y) = (left, top);
    for entry in entries {
        let before = SAMPLE_PX + GAP_PX;
        let words = cut(&entry.words, (right - left - before) / NARROWEST);
        let width = before + words_px(&words);
        if x > left && x + width > right {
            x = left;
            y += ROW_PX;
        }
        let area = Area {
            left: x,
            right: x + SAMPLE_PX,
            top: y + (ROW_PX - SAMPLE_HEIGHT_PX) / 2.0,
            bottom: y + (ROW_PX + SAMPLE_HEIGHT_PX) / 2.0,
        };
        items.extend((entry.sample)(&area));
        let at = Point { x: x + before, y: y + ROW_PX / 2.0 + 4.5 };
        items.push(Item::text(at, Anchor::Start, words, Colour::Ink, false));
        x += width + BETWEEN_PX;
    }
    (items, if entries.is_empty() { top } else { y + ROW_PX })
}
