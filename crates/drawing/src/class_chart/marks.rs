//! The marks of the trials: one for each while they find room, bars else.

use noseward_words as words;

use super::bars::Bars;
use super::dots::Dots;
use super::rows::{Rows, is_beside};
use super::{ClassChart, ClassTrial};
use crate::area::Area;
use crate::legend::Entry;
use crate::palette::Colour;
use crate::plot::{Scale, plate};
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// More trials than these are counted.
const MOST_EACH: usize = 400;
/// The radius of a mark, from where there is much room to where there is little.
pub(super) const RADII: [f64; 3] = [6.0, 4.5, 3.0];
/// Of the chart's height, what a row may take; and what it may in any case.
const SHARE: f64 = 0.3;
const ROOM_PX: f64 = 72.0;
/// Between the marks of a row and its edges.
pub(super) const INSET: f64 = 5.0;
/// From a mark to the ring round it.
pub(super) const RING_APART: f64 = 2.5;
/// Half the side of a square, as a share of the radius of a dot: they look alike in size.
const SQUARE: f64 = 0.75;

/// The marks of the chart.
pub(super) enum Marks<'a> {
    /// One for each trial.
    Each(Dots<'a>),
    /// Bars.
    Counted(Bars),
}

/// The row of those that are not clear.
pub(super) const NOT_CLEAR: usize = 1;

/// Which row a trial belongs to, from top to bottom.
pub(super) fn row_of(trial: &ClassTrial) -> usize {
    match trial.nose_first {
        Some(true) => 0,
        None => NOT_CLEAR,
        Some(false) => 2,
    }
}

impl<'a> Marks<'a> {
    /// As large as there is room for, with their labels if those have room too.
    pub(super) fn new(chart: &ClassChart<'a>, scale: &Scale, sides: (f64, f64)) -> Self {
        let room_px = (chart.height_px * SHARE).max(ROOM_PX);
        if chart.shown().count() <= MOST_EACH {
            let bare = RADII.map(|radius| (radius, None));
            for (radius, named_in) in [(RADII[0], Some(sides))].into_iter().chain(bare) {
                let dots = Dots::new(chart, scale, radius, named_in);
                if dots.heights_px().into_iter().all(|px| px <= room_px) {
                    return Self::Each(dots);
                }
            }
        }
        Self::Counted(Bars::new(chart, scale, room_px))
    }

    pub(super) fn are_counted(&self) -> bool {
        matches!(self, Self::Counted(_))
    }

    /// What each row takes.
    pub(super) fn heights_px(&self) -> [f64; 3] {
        match self {
            Self::Each(dots) => dots.heights_px(),
            Self::Counted(bars) => bars.heights_px(),
        }
    }

    pub(super) fn items(&self, chart: &ClassChart<'_>, rows: &Rows) -> Vec<Item> {
        if chart.shown().next().is_none() {
            return none(rows).into();
        }
        match self {
            Self::Each(dots) => dots.items(rows, chart.measured),
            Self::Counted(bars) => bars.items(rows, chart.measured),
        }
    }

    /// What its marks are.
    pub(super) fn entries(&self, chart: &ClassChart<'_>) -> Vec<Entry<'static>> {
        let (measured, are_counted) = (chart.measured, self.are_counted());
        let any = |is: fn(&ClassTrial) -> bool| chart.shown().any(|(_, trial)| is(trial));
        let sample = move |area: &Area| {
            if are_counted {
                let (left, right) = (area.left + 7.0, area.right - 7.0);
                let path = Area { left, right, ..*area }.outline();
                vec![Item::Path { path, style: style(measured) }]
            } else {
                vec![mark(area.middle(), 0, RADII[0], measured)]
            }
        };
        let how =
            if measured { words::drawing_filled() } else { words::drawing_hollow() };
        let mut entries = vec![Entry { sample: Box::new(sample), words: how.into() }];
        if !are_counted && !is_beside(chart) && any(|trial| trial.nose_first.is_none()) {
            let sample = move |area: &Area| {
                vec![mark(area.middle(), NOT_CLEAR, RADII[0], measured)]
            };
            let words = words::class_chart_square().into();
            entries.push(Entry { sample: Box::new(sample), words });
        }
        if any(|trial| trial.marked) {
            let sample = move |area: &Area| ringed(area.middle(), measured).into();
            let words = words::class_chart_ring().into();
            entries.push(Entry { sample: Box::new(sample), words });
        }
        entries
    }
}

/// What stands there without a trial.
fn none(rows: &Rows) -> [Item; 2] {
    let (at, none) = (rows.middle().middle(), words::class_chart_none());
    let half = words_px(&none) / 2.0;
    [
        plates(plate((at.x - half, at.x + half), at.y)),
        Item::text(at, Anchor::Middle, none, Colour::Ink, false),
    ]
}

pub(super) fn plates(path: Path) -> Item {
    Item::Path { path, style: Style::area(Colour::Sheet) }
}

pub(super) fn style(measured: bool) -> Style {
    let fill = if measured { Colour::Ink } else { Colour::Sheet };
    Style::line(Colour::Ink, 1.5).filled(fill)
}

/// A dot, or a square in the row of those that are not clear; its line is within its radius.
pub(super) fn mark(centre: Point, row: usize, radius: f64, measured: bool) -> Item {
    let style = style(measured);
    if row != NOT_CLEAR {
        let radius = radius - style.width / 2.0;
        return Item::Dot { centre, radius, style };
    }
    let half = radius * SQUARE;
    let Point { x, y } = centre;
    let area = Area { left: x - half, right: x + half, top: y - half, bottom: y + half };
    Item::Path { path: area.outline(), style }
}

pub(super) fn ring(centre: Point, radius: f64) -> Item {
    let style = Style::line(Colour::Ink, 1.5);
    Item::Dot { centre, radius: radius + RING_APART, style }
}

/// A small dot in a ring, where there is no mark to ring.
pub(super) fn ringed(centre: Point, measured: bool) -> [Item; 2] {
    [mark(centre, 0, RADII[2], measured), ring(centre, RADII[2])]
}
