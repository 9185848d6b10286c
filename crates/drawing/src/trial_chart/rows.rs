//! The rows of the chart, and what each is called.

use super::ROWS;
use crate::area::Area;
use crate::names::outcome_name;
use crate::palette::Colour;
use crate::plot::EDGE;
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// From this width on the rows are named at their left; above them else.
const BESIDE_PX: f64 = 520.0;
/// Room for the names at the left, if none is longer.
const NAMES_PX: f64 = 184.0;
/// Between the longest name and the rows.
const NAMES_APART_PX: f64 = 10.0;
/// Height of a name above its row, and its base above the row.
const NAME_PX: f64 = 20.0;
const BASE_PX: f64 = 5.0;

fn is_beside(width_px: f64) -> bool {
    width_px >= BESIDE_PX
}

/// The left and right edge of every row.
pub(super) fn sides_px(width_px: f64) -> (f64, f64) {
    let left = if is_beside(width_px) {
        let names = ROWS.iter().map(|&outcome| words_px(&outcome_name(outcome)));
        names.map(|px| EDGE + px + NAMES_APART_PX).fold(NAMES_PX, f64::max)
    } else {
        EDGE
    };
    (left, width_px - EDGE)
}

/// The rows from top to bottom, in the order of [`ROWS`].
pub(super) struct Rows {
    beside: bool,
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) areas: Vec<Area>,
}

impl Rows {
    pub(super) fn new(width_px: f64, top: f64, heights: [f64; 5]) -> Self {
        let beside = is_beside(width_px);
        let (left, right) = sides_px(width_px);
        let mut bottom = top;
        let areas = heights
            .into_iter()
            .map(|height| {
                let top = if beside { bottom } else { bottom + NAME_PX };
                bottom = top + height;
                Area { left, right, top, bottom }
            })
            .collect();
        Self { beside, left, right, areas }
    }

    /// Where the axis is.
    pub(super) fn bottom(&self) -> f64 {
        self.areas[ROWS.len() - 1].bottom
    }

    /// Where upright lines may go: no name stands there.
    pub(super) fn plots(&self) -> Vec<Area> {
        if self.beside {
            vec![Area { bottom: self.bottom(), ..self.areas[0] }]
        } else {
            self.areas.clone()
        }
    }

    /// Names and edges of the rows, and the axis.
    pub(super) fn items(&self) -> Vec<Item> {
        let mut edges = Path::default();
        let mut items = Vec::new();
        for (area, outcome) in self.areas.iter().zip(ROWS) {
            let level = |y| (Point { x: self.left, y }, Point { x: self.right, y });
            let (from, to) = level(area.top);
            edges.line(from, to);
            if !self.beside {
                let (from, to) = level(area.bottom);
                edges.line(from, to);
            }
            let y = if self.beside { area.middle().y + 4.5 } else { area.top - BASE_PX };
            let at = Point { x: EDGE, y };
            let name = outcome_name(outcome);
            items.push(Item::text(at, Anchor::Start, name, Colour::Ink, false));
        }
        let y = self.bottom();
        let axis = vec![Point { x: self.left, y }, Point { x: self.right, y }];
        items.insert(0, Item::grid(edges));
        items.push(Item::Path {
            path: Path::open(axis),
            style: Style::line(Colour::Ink, 1.5),
        });
        items
    }
}
