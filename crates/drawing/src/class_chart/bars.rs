//! Bars that tell how many trials there are in each stretch of the axis.

use noseward_words::Number;

use super::ClassChart;
use super::marks::{INSET, NOT_CLEAR, plates, ringed, row_of, style};
use super::rows::Rows;
use crate::area::Area;
use crate::palette::Colour;
use crate::plot::{Scale, plate};
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// Bars are at least so wide, or as their numbers ask for.
const LEAST_WIDTH_PX: f64 = 18.0;
/// Between two numbers.
const NUMBERS_APART: f64 = 4.0;
/// The room of a number at the end of a bar, and where it stands above and under one.
const NUMBER_PX: f64 = 16.0;
const ABOVE_PX: f64 = 3.0;
const UNDER_PX: f64 = 12.0;
/// However few it is of, so much of a bar is seen.
const LEAST_PX: f64 = 2.0;
/// From the foot of a bar to the middle of a ring.
const RING_PX: f64 = 9.0;

/// All bars.
pub(super) struct Bars {
    bars: Vec<Bar>,
    /// The length of a bar for each trial.
    px_each: f64,
}

/// The trials of one row in one stretch of the axis.
struct Bar {
    row: usize,
    left: f64,
    right: f64,
    count: u32,
    marked: bool,
}

/// A bar where it is drawn.
struct Drawn {
    area: Area,
    /// The line of its number.
    number_y: f64,
    /// The middle of its ring.
    ring_y: f64,
}

impl Bars {
    /// As narrow as their numbers allow; the longest takes all of the room.
    pub(super) fn new(chart: &ClassChart<'_>, scale: &Scale, room_px: f64) -> Self {
        let mut least_px = LEAST_WIDTH_PX;
        loop {
            let step_mm = scale.part_of_step_mm(chart.unit.steps(), least_px);
            let bars = bars(chart, scale, step_mm);
            let most = bars.iter().map(|bar| bar.count).max().unwrap_or(1);
            let px = words_px(&Number::from(most).to_string()) + NUMBERS_APART;
            // Wider bars hold more: their numbers may need more room in turn.
            if px <= least_px || px <= scale.px(step_mm) - scale.px(0.0) {
                let px_each = (room_px - NUMBER_PX - INSET) / f64::from(most);
                return Self { bars, px_each };
            }
            least_px = px;
        }
    }

    fn px(&self, bar: &Bar) -> f64 {
        (f64::from(bar.count) * self.px_each).max(LEAST_PX)
    }

    /// What each row takes.
    pub(super) fn heights_px(&self) -> [f64; 3] {
        [0, NOT_CLEAR, 2].map(|row| {
            let bars = self.bars.iter().filter(|bar| bar.row == row);
            let longest = bars.map(|bar| self.px(bar)).fold(LEAST_PX, f64::max);
            longest + NUMBER_PX + INSET
        })
    }

    fn drawn(&self, bar: &Bar, rows: &Rows) -> Drawn {
        let px = self.px(bar);
        let (top, number_y, ring_y) = match bar.row {
            0 => {
                let top = rows.full_y - px;
                (top, top - ABOVE_PX, rows.full_y + RING_PX)
            }
            NOT_CLEAR => {
                let top = rows.y(0.5) - px / 2.0;
                (top, top - ABOVE_PX, top + px + RING_PX)
            }
            _ => (rows.hang_y, rows.hang_y + px + UNDER_PX, rows.none_y - RING_PX),
        };
        let area = Area { left: bar.left, right: bar.right, top, bottom: top + px };
        Drawn { area, number_y, ring_y }
    }

    /// The bars, of which those that are not clear let the curve through, their numbers, and a
    /// ring at the foot of each that holds a marked trial.
    pub(super) fn items(&self, rows: &Rows, measured: bool) -> Vec<Item> {
        let (mut clear, mut unclear) = (Path::default(), Path::default());
        let mut hidden = Path::default();
        let mut numbers = Vec::new();
        for bar in &self.bars {
            let Drawn { area, number_y, ring_y } = self.drawn(bar, rows);
            let of_row = if bar.row == NOT_CLEAR { &mut unclear } else { &mut clear };
            of_row.runs.extend(area.outline().runs);
            let at = Point { x: area.middle().x, y: number_y };
            let number = Number::from(bar.count).to_string();
            let half = words_px(&number) / 2.0;
            hidden.runs.extend(plate((at.x - half, at.x + half), at.y).runs);
            numbers.push(Item::text(at, Anchor::Middle, number, Colour::Ink, false));
            if bar.marked {
                numbers.extend(ringed(Point { y: ring_y, ..at }, measured));
            }
        }
        let mut items = vec![
            plates(hidden),
            Item::Path { path: clear, style: style(measured) },
            Item::Path { path: unclear, style: Style::line(Colour::Ink, 1.5) },
        ];
        items.extend(numbers);
        items
    }
}

/// Those with a trial, from left to right.
fn bars(chart: &ClassChart<'_>, scale: &Scale, step_mm: f64) -> Vec<Bar> {
    let mut counts = Vec::new();
    for mm in scale.reach.multiples_mm(step_mm) {
        counts.push((mm, [(0_u32, false); 3]));
    }
    // What lies at the very end belongs to the last stretch.
    counts.pop();
    for (mm, trial) in chart.shown() {
        let after = counts.iter_mut().rev().find(|(from, _)| *from <= mm + 1e-9);
        if let Some((_, rows)) = after {
            let (count, marked) = &mut rows[row_of(trial)];
            *count += 1;
            *marked |= trial.marked;
        }
    }
    let mut bars = Vec::new();
    for (mm, rows) in counts {
        let (left, right) = (scale.px(mm) + 1.0, scale.px(mm + step_mm) - 1.0);
        for (row, (count, marked)) in rows.into_iter().enumerate() {
            if count > 0 {
                bars.push(Bar { row, left, right, count, marked });
            }
        }
    }
    bars
}
