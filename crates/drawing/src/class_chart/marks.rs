//! The marks of the trials: one for each while they find room, bars else.

use noseward_words as words;

use super::rows::{Rows, is_beside};
use super::{ClassChart, ClassTrial};
use crate::area::Area;
use crate::legend::Entry;
use crate::palette::Colour;
use crate::plot::{HALF_LETTER_PX, Scale, Stack};
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// More trials than these are counted.
const MOST_EACH: usize = 400;
/// The radius of a mark, from where there is much room to where there is little.
const RADII: [f64; 3] = [6.0, 4.5, 3.0];
/// Of the chart's height, what a row may take; and what it may in any case.
const SHARE: f64 = 0.3;
const ROOM_PX: f64 = 72.0;
/// Between the marks of a row and its edges.
const INSET: f64 = 5.0;
/// From a mark to its label.
const LABEL_APART: f64 = 4.0;
/// From a mark to the ring round it.
const RING_APART: f64 = 2.5;
/// The room of a number at the end of a bar.
const NUMBER_PX: f64 = 16.0;
/// However few it is of, so much of a bar is seen.
const LEAST_BAR_PX: f64 = 2.0;

/// The marks of the chart.
pub(super) enum Marks<'a> {
    /// One for each trial.
    Each { placed: Vec<Placed<'a>>, levels: [u32; 3], size: Size },
    /// Bars.
    Counted { bars: Vec<Bar>, px_each: f64 },
}

/// How large marks are and how far apart their middles stand, one on another.
#[derive(Clone, Copy)]
pub(super) struct Size {
    radius: f64,
    pitch: f64,
}

/// A trial on the level of its row, with the place of its label.
pub(super) struct Placed<'a> {
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

/// The trials of one row in one stretch of the axis.
pub(super) struct Bar {
    row: usize,
    left: f64,
    right: f64,
    count: u32,
    marked: bool,
}

fn row_of(trial: &ClassTrial) -> usize {
    match trial.nose_first {
        Some(true) => 0,
        None => 1,
        Some(false) => 2,
    }
}

impl<'a> Marks<'a> {
    /// As large as there is room for, with their labels if those have room too.
    pub(super) fn new(
        chart: &ClassChart<'a>,
        scale: &Scale,
        (left, right): (f64, f64),
    ) -> Self {
        let room_px = (chart.height_px * SHARE).max(ROOM_PX);
        let are_few = chart.shown().count() <= MOST_EACH;
        let sizes = RADII.into_iter().map(|radius| (radius, false));
        for (radius, named) in [(RADII[0], true)].into_iter().chain(sizes) {
            if !are_few {
                break;
            }
            let marks = Self::each(chart, scale, radius, named.then_some((left, right)));
            if marks.heights_px().into_iter().fold(0.0, f64::max) <= room_px {
                return marks;
            }
        }
        Self::counted(chart, scale, room_px)
    }

    /// One for each, with their labels if those have an area.
    fn each(
        chart: &ClassChart<'a>,
        scale: &Scale,
        radius: f64,
        named_in: Option<(f64, f64)>,
    ) -> Self {
        let mut stacks = [Stack::default(), Stack::default(), Stack::default()];
        let mut placed = Vec::new();
        for (mm, trial) in chart.shown() {
            let (x, row) = (scale.px(mm), row_of(trial));
            let ring = if trial.marked { RING_APART } else { 0.0 };
            let half = radius + ring;
            let label = named_in
                .filter(|_| !trial.label.is_empty())
                .map(|sides| Label::new(&trial.label, x, half + LABEL_APART, sides));
            let (from, to) = label.map_or((x, x), |label| label.span);
            let level = stacks[row].put((from.min(x - half), to.max(x + half)));
            placed.push(Placed { trial, x, row, level, label });
        }
        let ring = if chart.shown().any(|(_, trial)| trial.marked) { 1.0 } else { 0.0 };
        let pitch = 2.0 * radius + Stack::APART + ring;
        let levels = stacks.map(|stack| stack.levels());
        Self::Each { placed, levels, size: Size { radius, pitch } }
    }

    /// So many a stretch of the axis; the highest bar takes all of the room.
    fn counted(chart: &ClassChart<'a>, scale: &Scale, room_px: f64) -> Self {
        let units = chart.unit.steps();
        let widest = words_px(&words::Number::from(chart.shown().count()).to_string());
        let step_mm = scale.part_of_step_mm(units, widest + LABEL_APART);
        // What lies at the very end belongs to the last stretch.
        let last = scale.reach.multiples_mm(step_mm).count() - 2;
        let mut counts = vec![[(0_u32, false); 3]; last + 1];
        for (mm, trial) in chart.shown() {
            let place = ((mm - scale.reach.least_mm) / step_mm + 1e-9).floor();
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a chart has few bars, none before its beginning"
            )]
            let place = (place as usize).min(last);
            let (count, marked) = &mut counts[place][row_of(trial)];
            *count += 1;
            *marked |= trial.marked;
        }
        let mut bars = Vec::new();
        for (mm, rows) in scale.reach.multiples_mm(step_mm).zip(counts) {
            let (left, right) = (scale.px(mm) + 1.0, scale.px(mm + step_mm) - 1.0);
            for (row, (count, marked)) in rows.into_iter().enumerate() {
                if count > 0 {
                    bars.push(Bar { row, left, right, count, marked });
                }
            }
        }
        let most = bars.iter().map(|bar| bar.count).max().unwrap_or(1);
        let px_each = (room_px - NUMBER_PX - INSET) / f64::from(most);
        Self::Counted { bars, px_each }
    }

    pub(super) fn are_counted(&self) -> bool {
        matches!(self, Self::Counted { .. })
    }

    /// What each row takes.
    pub(super) fn heights_px(&self) -> [f64; 3] {
        match self {
            Self::Each { levels, size, .. } => {
                // Those in the middle stand about a line.
                let above =
                    [levels[0].max(1) - 1, levels[1] / 2 * 2, levels[2].max(1) - 1];
                above.map(|above| {
                    2.0 * (INSET + size.radius) + f64::from(above) * size.pitch
                })
            }
            Self::Counted { bars, px_each } => [0, 1, 2].map(|row| {
                let heights =
                    bars.iter().filter(|bar| bar.row == row).map(|bar| bar.px(*px_each));
                heights.fold(LEAST_BAR_PX, f64::max) + NUMBER_PX + INSET
            }),
        }
    }

    pub(super) fn items(&self, chart: &ClassChart<'_>, rows: &Rows) -> Vec<Item> {
        if chart.shown().next().is_none() {
            return vec![Item::text(
                rows.middle().middle(),
                Anchor::Middle,
                words::class_chart_none(),
                Colour::Ink,
                false,
            )];
        }
        match self {
            Self::Each { placed, size, .. } => {
                let mut plates = Path::default();
                let mut items = Vec::new();
                for one in placed {
                    items.extend(one.items(*size, rows, chart.measured));
                    if let Some(label) = one.label {
                        let y = one.y(*size, rows);
                        plates.runs.extend(label.plate(y).runs);
                    }
                }
                if !plates.runs.is_empty() {
                    let style = Style::area(Colour::Sheet);
                    items.insert(0, Item::Path { path: plates, style });
                }
                items
            }
            Self::Counted { bars, px_each } => bars
                .iter()
                .flat_map(|bar| bar.items(*px_each, rows, chart.measured))
                .collect(),
        }
    }

    /// What its marks are.
    pub(super) fn entries<'b>(&self, chart: &ClassChart<'_>) -> Vec<Entry<'b>> {
        let measured = chart.measured;
        let any = |is: fn(&ClassTrial) -> bool| chart.shown().any(|(_, trial)| is(trial));
        let alone = |row: usize| {
            move |area: &Area| vec![mark(area.middle(), row, RADII[0], measured)]
        };
        let how =
            if measured { words::drawing_filled() } else { words::drawing_hollow() };
        let mut entries = if self.are_counted() {
            let sample = move |area: &Area| {
                let bar =
                    Area { left: area.left + 7.0, right: area.right - 7.0, ..*area };
                vec![Item::Path { path: bar.outline(), style: style(measured) }]
            };
            vec![Entry { sample: Box::new(sample), words: how.into() }]
        } else {
            vec![Entry { sample: Box::new(alone(0)), words: how.into() }]
        };
        if !self.are_counted() && !is_beside(chart) && any(|t| t.nose_first.is_none()) {
            let words = words::class_chart_square().into();
            entries.push(Entry { sample: Box::new(alone(1)), words });
        }
        if any(|trial| trial.marked) {
            let sample = move |area: &Area| {
                let at = area.middle();
                vec![mark(at, 0, RADII[2], measured), ring(at, RADII[2])]
            };
            let words = words::class_chart_ring().into();
            entries.push(Entry { sample: Box::new(sample), words });
        }
        entries
    }
}

impl Label {
    /// At the right of a mark, or at its left where it would leave the row.
    fn new(words: &str, x: f64, apart: f64, (left, right): (f64, f64)) -> Self {
        let px = words_px(words);
        let (at_x, anchor) = if x + apart + px <= right || x - apart - px < left {
            (x + apart, Anchor::Start)
        } else {
            (x - apart, Anchor::End)
        };
        let from = if anchor == Anchor::Start { at_x } else { at_x - px };
        Self { at_x, anchor, span: (from, from + px) }
    }

    /// What hides the lines behind the words.
    fn plate(&self, y: f64) -> Path {
        let (left, right) = self.span;
        Area { left, right, top: y - 7.0, bottom: y + 7.0 }.outline()
    }
}

impl Placed<'_> {
    fn y(&self, size: Size, rows: &Rows) -> f64 {
        let up = f64::from(self.level) * size.pitch;
        match self.row {
            0 => rows.full_y - INSET - size.radius - up,
            1 => {
                // By turns below and above.
                let off = f64::from(self.level.div_ceil(2)) * size.pitch;
                rows.y(0.5) + if self.level % 2 == 1 { off } else { -off }
            }
            _ => rows.hang_y + INSET + size.radius + up,
        }
    }

    fn items(&self, size: Size, rows: &Rows, measured: bool) -> Vec<Item> {
        let at = Point { x: self.x, y: self.y(size, rows) };
        let mut items = vec![mark(at, self.row, size.radius, measured)];
        if self.trial.marked {
            items.push(ring(at, size.radius));
        }
        if let Some(Label { at_x, anchor, .. }) = self.label {
            let at = Point { x: at_x, y: at.y + HALF_LETTER_PX };
            let words = self.trial.label.clone();
            items.push(Item::text(at, anchor, words, Colour::Ink, false));
        }
        items
    }
}

impl Bar {
    fn px(&self, px_each: f64) -> f64 {
        (f64::from(self.count) * px_each).max(LEAST_BAR_PX)
    }

    /// The bar, its number at its end, and a ring at its foot where a trial is marked.
    fn items(&self, px_each: f64, rows: &Rows, measured: bool) -> Vec<Item> {
        let Self { left, right, .. } = *self;
        let px = self.px(px_each);
        let middle = rows.y(0.5);
        let (top, bottom, number_y, ring_y) = match self.row {
            0 => (rows.full_y - px, rows.full_y, -3.0, RING_UNDER),
            1 => (middle - px / 2.0, middle + px / 2.0, -3.0, RING_UNDER),
            _ => (rows.hang_y, rows.hang_y + px, 12.0, -RING_UNDER),
        };
        let (number_y, foot_y) = match self.row {
            2 => (bottom + number_y, rows.none_y + ring_y),
            _ => (top + number_y, bottom + ring_y),
        };
        let area = Area { left, right, top, bottom };
        let x = area.middle().x;
        let number = words::Number::from(self.count as usize).to_string();
        let at = Point { x, y: number_y };
        let mut items = vec![
            Item::Path { path: area.outline(), style: style(measured) },
            Item::text(at, Anchor::Middle, number, Colour::Ink, false),
        ];
        if self.marked {
            let at = Point { x, y: foot_y };
            items.extend([mark(at, 0, RADII[2], measured), ring(at, RADII[2])]);
        }
        items
    }
}

/// From the foot of a bar to the middle of a ring.
const RING_UNDER: f64 = 9.0;

fn style(measured: bool) -> Style {
    let fill = if measured { Colour::Ink } else { Colour::Sheet };
    Style::line(Colour::Ink, 1.5).filled(fill)
}

/// A dot, or a square in the row of those that are not clear; its line is within its radius.
fn mark(centre: Point, row: usize, radius: f64, measured: bool) -> Item {
    let style = style(measured);
    if row != 1 {
        let radius = radius - style.width_px / 2.0;
        return Item::Dot { centre, radius, style };
    }
    let half = radius * SQUARE;
    let Point { x, y } = centre;
    let area = Area { left: x - half, right: x + half, top: y - half, bottom: y + half };
    Item::Path { path: area.outline(), style }
}

/// Half the side of a square, as a share of the radius of a dot: they look alike in size.
const SQUARE: f64 = 0.75;

fn ring(centre: Point, radius: f64) -> Item {
    let style = Style::line(Colour::Ink, 1.5);
    Item::Dot { centre, radius: radius + RING_APART, style }
}
