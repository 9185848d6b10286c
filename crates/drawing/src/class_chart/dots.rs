//! A mark for each trial, stacked where they would overlap: every one keeps its place along
//! the axis.

use super::marks::{INSET, NOT_CLEAR, RING_APART, mark, plates, ring, row_of};
use super::rows::Rows;
use super::{ClassChart, ClassTrial};
use crate::palette::Colour;
use crate::plot::{HALF_LETTER_PX, Scale, Stack, plate};
use crate::scene::{Anchor, Item, Path, Point};
use crate::width::words_px;

/// From a mark to its label.
const LABEL_APART: f64 = 4.0;

/// All marks.
pub(super) struct Dots<'a> {
    placed: Vec<Placed<'a>>,
    /// How many stand one on another in each row.
    levels: [u32; 3],
    radius: f64,
    /// From the middle of a mark to that of the one above.
    pitch: f64,
}

/// A trial on the level of its row.
struct Placed<'a> {
    trial: &'a ClassTrial,
    x: f64,
    row: usize,
    level: u32,
    label: Option<Label>,
}

/// Where the words beside a mark begin or end, and what they take.
#[derive(Clone, Copy)]
struct Label {
    at_x: f64,
    anchor: Anchor,
    span: (f64, f64),
}

impl Label {
    /// At the right of a mark, or at its left where it would leave the row.
    fn new(words: &str, x: f64, apart: f64, (left, right): (f64, f64)) -> Self {
        let px = words_px(words);
        let goes_right = x + apart + px <= right || x - apart - px < left;
        let (at_x, anchor) = if goes_right {
            (x + apart, Anchor::Start)
        } else {
            (x - apart, Anchor::End)
        };
        let from = if goes_right { at_x } else { at_x - px };
        Self { at_x, anchor, span: (from, from + px) }
    }
}

impl<'a> Dots<'a> {
    /// With labels where it is said from where to where those may go.
    pub(super) fn new(
        chart: &ClassChart<'a>,
        scale: &Scale,
        radius: f64,
        named_in: Option<(f64, f64)>,
    ) -> Self {
        let mut stacks = [Stack::default(), Stack::default(), Stack::default()];
        let mut placed = Vec::new();
        let mut pitch = 2.0 * radius + Stack::APART;
        for (mm, trial) in chart.shown() {
            let (x, row) = (scale.px(mm), row_of(trial));
            let mut half = radius;
            if trial.marked {
                half += RING_APART;
                pitch = 2.0 * half;
            }
            let label = named_in
                .filter(|_| !trial.label.is_empty())
                .map(|sides| Label::new(&trial.label, x, half + LABEL_APART, sides));
            let (from, to) = label.map_or((x, x), |label| label.span);
            let level = stacks[row].put((from.min(x - half), to.max(x + half)));
            placed.push(Placed { trial, x, row, level, label });
        }
        let levels = stacks.map(|stack| stack.levels());
        Self { placed, levels, radius, pitch }
    }

    /// What each row takes: those in the middle stand about a line.
    pub(super) fn heights_px(&self) -> [f64; 3] {
        let [upper, middle, lower] = self.levels;
        [upper.max(1) - 1, middle / 2 * 2, lower.max(1) - 1]
            .map(|above| 2.0 * (INSET + self.radius) + f64::from(above) * self.pitch)
    }

    pub(super) fn items(&self, rows: &Rows, measured: bool) -> Vec<Item> {
        let mut hidden = Path::default();
        let mut items = Vec::new();
        for one in &self.placed {
            let at = Point { x: one.x, y: self.y(one, rows) };
            items.push(mark(at, one.row, self.radius, measured));
            if one.trial.marked {
                items.push(ring(at, self.radius));
            }
            if let Some(Label { at_x, anchor, span }) = one.label {
                let at = Point { x: at_x, y: at.y + HALF_LETTER_PX };
                let words = one.trial.label.clone();
                items.push(Item::text(at, anchor, words, Colour::Ink, false));
                hidden.runs.extend(plate(span, at.y).runs);
            }
        }
        if !hidden.runs.is_empty() {
            items.insert(0, plates(hidden));
        }
        items
    }

    fn y(&self, one: &Placed<'_>, rows: &Rows) -> f64 {
        let from_edge = INSET + self.radius + f64::from(one.level) * self.pitch;
        match one.row {
            0 => rows.full_y - from_edge,
            NOT_CLEAR => {
                // By turns under and above the line.
                let off = f64::from(one.level.div_ceil(2)) * self.pitch;
                rows.y(0.5) + if one.level % 2 == 1 { off } else { -off }
            }
            _ => rows.hang_y + from_edge,
        }
    }
}
