//! The three rows, the stretch of the curve between them, and what all are called.

use noseward_words::{self as words, Number, Text};

use super::ClassChart;
use super::marks::Marks;
use crate::area::Area;
use crate::palette::Colour;
use crate::plot::{EDGE, HALF_LETTER_PX, LEGEND_EDGE, level};
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// From this width on the rows are named at their left; above them else.
const BESIDE_PX: f64 = 520.0;
/// Between a name or a number and the rows.
const APART_PX: f64 = 8.0;
/// Height of a name above its row, and its base above the row.
const NAME_PX: f64 = 20.0;
const BASE_PX: f64 = 5.0;
/// The least height from 0 to 100 %, and that of a low chart.
const LEAST_MIDDLE_PX: f64 = 96.0;
const LOW_MIDDLE_PX: f64 = 72.0;
/// Of the room of all rows, the least that each of the outer ones takes.
const LEAST_SHARE: f64 = 0.2;
/// Numbers upwards stand at least this far apart.
const NUMBERS_APART_PX: f64 = 26.0;

/// What a row is of, from top to bottom.
pub(super) const ROWS: [Option<bool>; 3] = [Some(true), None, Some(false)];

fn name(row: Option<bool>) -> Text {
    match row {
        Some(true) => words::class_chart_nose_first(),
        None => words::class_chart_not_clear(),
        Some(false) => words::class_chart_otherwise(),
    }
}

fn percent(percent: f64) -> String {
    words::class_chart_percent(Number::trimmed(percent, 0))
}

pub(super) fn edge_style() -> Style {
    Style::line(Colour::Soft, 1.0)
}

pub(super) fn axis_style() -> Style {
    Style::line(Colour::Ink, 1.5)
}

/// Whether rows are named at their left.
pub(super) fn is_beside(chart: &ClassChart<'_>) -> bool {
    chart.width_px >= BESIDE_PX
}

/// The left and right edge of every row.
pub(super) fn sides_px(chart: &ClassChart<'_>) -> (f64, f64) {
    let left = if is_beside(chart) {
        let widest = ROWS.map(|row| words_px(&name(row))).into_iter().fold(0.0, f64::max);
        EDGE + widest + APART_PX
    } else {
        EDGE
    };
    let right = if chart.turning().is_some() {
        LEGEND_EDGE + words_px(&percent(100.0)) + APART_PX
    } else {
        EDGE
    };
    (left, chart.width_px - right)
}

/// Where marks and curve stand.
#[derive(Debug)]
pub(super) struct Rows {
    /// The whole of it.
    pub(super) area: Area,
    /// Where 100 % is, and nose-first ones stand on.
    pub(super) full_y: f64,
    /// Where 0 % is.
    pub(super) none_y: f64,
    /// Where those hang that were not nose-first: a name may stand between.
    pub(super) hang_y: f64,
}

impl Rows {
    /// As high as asked for, if that is enough.
    pub(super) fn new(
        chart: &ClassChart<'_>,
        marks: &Marks<'_>,
        (left, right): (f64, f64),
        top: f64,
        bottom: f64,
    ) -> Self {
        let name_px = if is_beside(chart) { 0.0 } else { NAME_PX };
        let room_px = bottom - top - 2.0 * name_px;
        let mut heights = marks.heights_px();
        for outer in [0, 2] {
            heights[outer] = heights[outer].max(room_px * LEAST_SHARE);
        }
        let left_px = room_px - heights[0] - heights[2];
        let least_px = if chart.is_low() { LOW_MIDDLE_PX } else { LEAST_MIDDLE_PX };
        let middle = left_px.max(heights[1]).max(least_px);
        let top = top + name_px;
        let full_y = top + heights[0];
        let none_y = full_y + middle;
        let hang_y = none_y + name_px;
        let area = Area { left, right, top, bottom: hang_y + heights[2] };
        Self { area, full_y, none_y, hang_y }
    }

    /// Where the axis is.
    pub(super) fn bottom(&self) -> f64 {
        self.area.bottom
    }

    /// Where a chance stands.
    pub(super) fn y(&self, chance: f64) -> f64 {
        self.none_y + (self.full_y - self.none_y) * chance
    }

    /// From 0 to 100 %.
    pub(super) fn middle(&self) -> Area {
        Area { top: self.full_y, bottom: self.none_y, ..self.area }
    }

    /// Where upright lines may go: no name stands there.
    pub(super) fn plots(&self) -> Vec<Area> {
        if self.hang_y > self.none_y {
            let [upper, lower] = [self.none_y, self.hang_y];
            vec![Area { bottom: upper, ..self.area }, Area { top: lower, ..self.area }]
        } else {
            vec![self.area]
        }
    }

    /// Names and edges of the rows, the axis, and the axis of the curve if there is one.
    pub(super) fn items(&self, chart: &ClassChart<'_>) -> Vec<Item> {
        let beside = is_beside(chart);
        let Area { top, bottom, right, .. } = self.area;
        let mut items = Vec::new();
        let mut put = |row, y| {
            let at = Point { x: EDGE, y };
            items.push(Item::text(at, Anchor::Start, name(row), Colour::Ink, false));
        };
        let between = |a: f64, b: f64| f64::midpoint(a, b) + HALF_LETTER_PX;
        if beside {
            put(Some(true), between(top, self.full_y));
            put(Some(false), between(self.hang_y, bottom));
            if chart.shown().any(|(_, trial)| trial.nose_first.is_none()) {
                put(None, between(self.full_y, self.none_y));
            }
        } else {
            put(Some(true), top - BASE_PX);
            put(Some(false), self.hang_y - BASE_PX);
        }
        let mut light = Path::default();
        if chart.turning().is_some() {
            let fine = self.none_y - self.full_y >= 4.0 * NUMBERS_APART_PX;
            let all = [0.0, 25.0, 50.0, 75.0, 100.0];
            for each in all.into_iter().filter(|each| fine || each % 50.0 == 0.0) {
                let y = self.y(each / 100.0);
                light.runs.extend(level(&self.area, y).runs);
                let at = Point { x: right + APART_PX, y: y + HALF_LETTER_PX };
                let words = percent(each);
                items.push(Item::text(at, Anchor::Start, words, Colour::Ink, false));
            }
        }
        let mut edges = Path::default();
        for y in [top, self.full_y, self.none_y, self.hang_y] {
            edges.runs.extend(level(&self.area, y).runs);
        }
        items.insert(0, Item::Path { path: edges, style: edge_style() });
        items.insert(0, Item::grid(light));
        let path = level(&self.area, bottom);
        items.push(Item::Path { path, style: axis_style() });
        items
    }
}
