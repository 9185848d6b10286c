//! Separation and what was seen: one dot for every swing of every trial.
//!
//! A dot stands exactly above its trial's separation, in the row of what was seen. No line
//! joins dots: what lies between two trials was not tried.

mod dots;
mod rows;
mod words;

use noseward_lesson::{Summary, SwingOutcome};
use noseward_stability::Units;
use noseward_words::{self as texts, Text};

use crate::area::Area;
use crate::axis::{Reach, axis_number, is_shown, separation_in};
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::plot::{
    About, EDGE, LEGEND_EDGE, LINE_PX, Scale, hatched, range, sides, upright, zero_style,
};
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use dots::Placed;
use rows::Rows;

pub use words::trial_chart_words;

/// One trial of the chart.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartTrial<'a> {
    /// What stands in its dots: its number, or a few letters.
    pub label: String,
    /// Centre of pressure less centre of mass, in millimetres: positive when the centre of
    /// mass is nearer the nose.
    pub separation_mm: f64,
    /// The body width, in millimetres.
    pub calibre_mm: f64,
    /// Whether the separation was measured; computed otherwise.
    pub measured: bool,
    /// From where to where the separation may lie, in millimetres.
    pub range_mm: Option<(f64, f64)>,
    /// What was seen, in the order of the swings. Slips are left out.
    pub outcomes: &'a [SwingOutcome],
}

impl<'a> ChartTrial<'a> {
    /// A trial of a notebook with its swings; `None` where it has no separation.
    #[must_use]
    pub fn of(found: &Summary, outcomes: &'a [SwingOutcome]) -> Option<Self> {
        Some(Self {
            label: found.id.to_string(),
            separation_mm: found.separation_mm()?,
            calibre_mm: found.body_width_mm?,
            measured: found.is_measured(),
            range_mm: None,
            outcomes,
        })
    }
}

/// What a row of the chart stands for, from top to bottom.
const ROWS: [SwingOutcome; 5] = [
    SwingOutcome::Steady,
    SwingOutcome::Wobbling,
    SwingOutcome::Sideways,
    SwingOutcome::TailFirst,
    SwingOutcome::NotSure,
];

/// Between the ends of the axis and the dots nearest to them.
const PADDING: f64 = 3.0;

const HEADING: Text = texts::drawing_one_dot();
const BAND: Text = texts::drawing_band();
const ZERO: Text = texts::drawing_zero();

/// The separation across, one row for each outcome that counts, one dot for every swing,
/// with groups `axis`, `dots` and `legend`.
///
/// A filled dot is of a measured separation, a hollow one of a computed one; dots that
/// would overlap are stacked upwards, each in its place along the axis. The lowest dot of
/// a trial in a row carries the range of its separation, where that is wider than the dot.
/// The band from 1 to 2 body widths (the median of the trials) is common practice, for
/// which there is no source. The width is 300 CSS pixels or more; the height follows from
/// the dots. A trial whose separation is not finite or beyond 100 m is left out; `None`
/// when there is no other.
#[must_use]
pub fn trial_chart(
    trials: &[ChartTrial<'_>],
    units: Units,
    width_px: f64,
) -> Option<Scene> {
    let trials = shown(trials);
    if trials.is_empty() {
        return None;
    }
    let radius = dots::radius_px(&trials);
    let scale = scale(&trials, width_px, radius + PADDING);
    let placed = ROWS.map(|outcome| dots::place(&trials, outcome, &scale, radius));
    let heights = [0, 1, 2, 3, 4].map(|i| dots::height_px(&placed[i], radius));
    let band = median_mm(&trials).map(|mm| (scale.px(mm), scale.px(2.0 * mm)));

    let (heading, below, band_named) = heading(scale.px(0.0), band, width_px);
    let rows = Rows::new(width_px, below, heights);
    let mut axis = heading;
    if let Some((left, right)) = band {
        for plot in rows.plots() {
            axis.extend(hatched(&Area { left, right, ..plot }));
        }
    }
    let number = |mm| axis_number(units, mm);
    axis.extend(scale.ticks(&rows.plots(), units, number, width_px));
    axis.extend(rows.items());
    let path = upright(&rows.plots(), scale.px(0.0));
    axis.push(Item::Path { path, style: zero_style() });
    let (sides, below) = sides(scale.px(0.0), rows.bottom() + 2.0 * LINE_PX, width_px);
    axis.push(title(units, &rows));
    axis.extend(sides);

    let mut dots = Vec::new();
    for (row, placed) in rows.areas.iter().zip(&placed) {
        dots.extend(placed.iter().flat_map(|one| dot(one, &scale, row, radius)));
    }

    let has_range = placed.iter().flatten().any(|one| one.range_px.is_some());
    let entries = entries(has_range, band.is_some() && !band_named);
    let (legend, bottom) = legend(&entries, EDGE, width_px - LEGEND_EDGE, below + 4.0);
    Some(Scene {
        width: width_px,
        height: bottom + 4.0,
        unit: Unit::Px,
        name: texts::drawing_chart().into(),
        groups: vec![
            Group { key: "axis", items: axis },
            Group { key: "dots", items: dots },
            Group { key: "legend", items: legend },
        ],
    })
}

/// The same chart without numbers and dots, to be drawn by hand, with the group `axis`.
///
/// The width is 300 CSS pixels or more. It is at least as high as its five rows need, and
/// else as high as asked for.
#[must_use]
pub fn trial_chart_blank(width_px: f64, height_px: f64, units: Units) -> Scene {
    const SQUARE_PX: f64 = 24.0;
    const LEAST_ROW_PX: f64 = 26.0;
    let top = LINE_PX + 9.0;
    // Where the rows end and what stands under them does not depend on their height.
    let flat = Rows::new(width_px, top, [0.0; 5]);
    let (_, under) = sides(width_px / 2.0, flat.bottom() + 2.0 * LINE_PX, width_px);
    let row_px = ((height_px - under - 4.0) / 5.0).max(LEAST_ROW_PX);
    let rows = Rows::new(width_px, top, [row_px; 5]);
    let (sides, below) = sides(width_px / 2.0, rows.bottom() + 2.0 * LINE_PX, width_px);
    let squares = ((rows.right - rows.left) / SQUARE_PX).floor().max(1.0);
    let step = (rows.right - rows.left) / squares;
    let mut lines = Path::default();
    let mut ends = Path::default();
    let mut x = rows.left;
    while x <= rows.right + 1e-6 {
        for plot in rows.plots() {
            lines.line(Point { x, y: plot.top }, Point { x, y: plot.bottom });
        }
        ends.line(Point { x, y: rows.bottom() }, Point { x, y: rows.bottom() + 5.0 });
        x += step;
    }
    let at = Point { x: EDGE, y: LINE_PX };
    let mut items = vec![
        Item::text(at, Anchor::Start, HEADING, Colour::Ink, true),
        Item::grid(lines),
        Item::Path { path: ends, style: Style::line(Colour::Ink, 1.0) },
    ];
    items.extend(rows.items());
    items.push(title(units, &rows));
    items.extend(sides);
    Scene {
        width: width_px,
        height: height_px.max(below + 4.0),
        unit: Unit::Px,
        name: texts::drawing_chart_blank().into(),
        groups: vec![Group { key: "axis", items }],
    }
}

/// The trials that a chart can show.
fn shown<'a, 'b>(trials: &'a [ChartTrial<'b>]) -> Vec<&'a ChartTrial<'b>> {
    trials.iter().filter(|trial| is_shown(trial.separation_mm)).collect()
}

/// The range of a trial's separation in order, if a chart can show it.
fn range_mm(trial: &ChartTrial<'_>) -> Option<(f64, f64)> {
    let (a, b) = trial.range_mm?;
    (is_shown(a) && is_shown(b)).then(|| (a.min(b), a.max(b)))
}

/// The median of the body widths, in millimetres. `None` without any.
fn median_mm(trials: &[&ChartTrial<'_>]) -> Option<f64> {
    let mut sorted: Vec<f64> = Vec::new();
    for mm in trials.iter().map(|trial| trial.calibre_mm) {
        if mm > 0.0 && is_shown(mm) {
            sorted.insert(sorted.partition_point(|&other| other <= mm), mm);
        }
    }
    let last = sorted.len().checked_sub(1)?;
    Some(f64::midpoint(sorted[last / 2], sorted[last.div_ceil(2)]))
}

/// Where a separation stands across the chart.
fn scale(trials: &[&ChartTrial<'_>], width_px: f64, margin_px: f64) -> Scale {
    let lengths = trials.iter().flat_map(|trial| {
        let (least, most) =
            range_mm(trial).unwrap_or((trial.separation_mm, trial.separation_mm));
        [trial.separation_mm, least, most]
    });
    let band = median_mm(trials).map(|mm| 2.0 * mm);
    let (left, right) = rows::sides_px(width_px);
    Scale::new(Reach::of(lengths.chain(band)), left + margin_px, right - margin_px)
}

/// What stands above the rows, with the y below it and whether it names the band: that is
/// done where both it and zero have room in one line.
fn heading(
    zero_x: f64,
    band: Option<(f64, f64)>,
    width_px: f64,
) -> (Vec<Item>, f64, bool) {
    let line = 2.0 * LINE_PX + 4.0;
    let at = Point { x: EDGE, y: LINE_PX };
    let zero = About::new(zero_x, &ZERO, width_px);
    let mut items = vec![
        Item::text(at, Anchor::Start, HEADING, Colour::Ink, true),
        zero.item(line, &ZERO, Colour::Ink),
    ];
    let named = band
        .map(|(left, right)| About::new(f64::midpoint(left, right), &BAND, width_px))
        .filter(|band| band.is_clear_of(&zero));
    if let Some(band) = &named {
        items.push(band.item(line, &BAND, Colour::Soft));
    }
    (items, line + 9.0, named.is_some())
}

fn title(units: Units, rows: &Rows) -> Item {
    Item::text(
        Point { x: f64::midpoint(rows.left, rows.right), y: rows.bottom() + 34.0 },
        Anchor::Middle,
        separation_in(units),
        Colour::Ink,
        true,
    )
}

fn dot_style(measured: bool) -> Style {
    let fill = if measured { Colour::Ink } else { Colour::Sheet };
    Style::line(Colour::Ink, 2.0).filled(fill)
}

fn range_style() -> Style {
    Style::line(Colour::Ink, 1.5)
}

/// A swing: its range if it carries it, its dot, and the number in it.
fn dot(one: &Placed<'_>, scale: &Scale, row: &Area, radius: f64) -> Vec<Item> {
    let trial = one.trial;
    let x = scale.px(trial.separation_mm);
    let centre = Point { x, y: dots::y(one.level, row, radius) };
    let mut items = Vec::new();
    if let Some((from_x, to_x)) = one.range_px {
        let path = range(from_x, to_x, centre.y);
        items.push(Item::Path { path, style: range_style() });
    }
    items.push(Item::Dot { centre, radius, style: dot_style(trial.measured) });
    items.push(Item::text(
        Point { x, y: centre.y + 4.5 },
        Anchor::Middle,
        trial.label.clone(),
        if trial.measured { Colour::Sheet } else { Colour::Ink },
        true,
    ));
    items
}

fn entries(has_range: bool, has_band: bool) -> Vec<Entry<'static>> {
    let of_dot = |measured, words: Text| Entry {
        sample: Box::new(move |area: &Area| {
            let (centre, style) = (area.middle(), dot_style(measured));
            vec![Item::Dot { centre, radius: 6.0, style }]
        }),
        words: words.into(),
    };
    let mut entries = vec![
        of_dot(true, texts::drawing_filled()),
        of_dot(false, texts::drawing_hollow()),
    ];
    if has_range {
        entries.push(Entry {
            sample: Box::new(|area: &Area| {
                let path = range(area.left + 2.0, area.right - 2.0, area.middle().y);
                vec![Item::Path { path, style: range_style() }]
            }),
            words: texts::drawing_range().into(),
        });
    }
    if has_band {
        entries.push(Entry { sample: Box::new(hatched), words: BAND.into() });
    }
    entries
}

#[cfg(test)]
mod tests;
