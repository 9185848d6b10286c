//! Separation and what was seen: one dot for every swing of every trial.
//!
//! A dot stands exactly above its trial's separation, in the row of what was seen. No line
//! joins dots: what lies between two trials was not tried.

mod dots;
mod rows;
mod words;

use noseward_lesson::SwingOutcome;
use noseward_stability::Units;
use noseward_words::{self as texts, Text};

use crate::area::Area;
use crate::axis::{Reach, axis_number, is_shown, round_step_mm, separation_in};
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style};
use crate::width::words_px;
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

/// What a row of the chart stands for, from top to bottom.
const ROWS: [SwingOutcome; 5] = [
    SwingOutcome::Steady,
    SwingOutcome::Wobbling,
    SwingOutcome::Sideways,
    SwingOutcome::TailFirst,
    SwingOutcome::NotSure,
];

const EDGE: f64 = 6.0;
/// Between the ends of the axis and the dots nearest to them.
const PADDING: f64 = 3.0;
/// Numbers on the axis stand at least this far apart.
const NUMBERS_APART_PX: f64 = 44.0;
/// Words in one line stand at least this far apart.
const WORDS_APART_PX: f64 = 12.0;
const LINE_PX: f64 = 17.0;
const CAP_PX: f64 = 4.0;
/// The legend stays so far from the right edge: some fonts are wider than expected.
const LEGEND_EDGE: f64 = 14.0;

const HEADING: Text = texts::drawing_one_dot();
const BAND: Text = texts::drawing_band();
const ZERO: Text = texts::drawing_zero();
const MASS_NEARER: Text = texts::drawing_mass_nearer_arrow();
const WIND_NEARER: Text = texts::drawing_pressure_nearer_arrow();

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
    let scale = Scale::new(&trials, width_px, radius + PADDING);
    let placed = ROWS.map(|outcome| dots::place(&trials, outcome, &scale, radius));
    let heights = [0, 1, 2, 3, 4].map(|i| dots::height_px(&placed[i], radius));
    let band = median_mm(&trials).map(|mm| (scale.x(mm), scale.x(2.0 * mm)));

    let (heading, below, band_named) = heading(scale.x(0.0), band, width_px);
    let rows = Rows::new(width_px, below, heights);
    let mut axis = heading;
    if let Some((left, right)) = band {
        for plot in rows.plots() {
            axis.extend(hatched(&Area { left, right, ..plot }));
        }
    }
    axis.extend(ticks(&scale, &rows, units, width_px));
    axis.extend(rows.items());
    axis.extend(zero(&scale, &rows));
    let (sides, below) = sides(scale.x(0.0), rows.bottom() + 2.0 * LINE_PX, width_px);
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
        width_px,
        height_px: bottom + 4.0,
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
        ends.line(
            Point { x, y: rows.bottom() },
            Point { x, y: rows.bottom() + CAP_PX + 1.0 },
        );
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
        width_px,
        height_px: height_px.max(below + 4.0),
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
struct Scale {
    left: f64,
    px_per_mm: f64,
    reach: Reach,
}

impl Scale {
    fn new(trials: &[&ChartTrial<'_>], width_px: f64, margin_px: f64) -> Self {
        let lengths = trials.iter().flat_map(|trial| {
            let (least, most) =
                range_mm(trial).unwrap_or((trial.separation_mm, trial.separation_mm));
            [trial.separation_mm, least, most]
        });
        let band = median_mm(trials).map(|mm| 2.0 * mm);
        let reach = Reach::of(lengths.chain(band));
        let (left, right) = rows::sides_px(width_px);
        let (left, right) = (left + margin_px, right - margin_px);
        let px_per_mm = (right - left) / (reach.most_mm - reach.least_mm);
        Self { left, px_per_mm, reach }
    }

    fn x(&self, mm: f64) -> f64 {
        self.left + (mm - self.reach.least_mm) * self.px_per_mm
    }
}

/// Words that would best stand about a place.
struct About {
    left: f64,
    right: f64,
    at_x: f64,
    anchor: Anchor,
}

impl About {
    /// They are held at the edge of the sheet that they would cross, so that letters
    /// wider than expected do not leave it.
    fn new(middle: f64, words: &str, width_px: f64) -> Self {
        let half = words_px(words) / 2.0;
        let (least, most) = (EDGE, width_px - EDGE);
        let (middle, at_x, anchor) = if middle - half < least {
            (least + half, least, Anchor::Start)
        } else if middle + half > most {
            (most - half, most, Anchor::End)
        } else {
            (middle, middle, Anchor::Middle)
        };
        Self { left: middle - half, right: middle + half, at_x, anchor }
    }

    fn is_clear_of(&self, other: &Self) -> bool {
        self.right + WORDS_APART_PX <= other.left
            || other.right + WORDS_APART_PX <= self.left
    }

    fn item(&self, y: f64, words: &str, colour: Colour) -> Item {
        Item::text(Point { x: self.at_x, y }, self.anchor, words, colour, false)
    }
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

/// What the two sides of zero mean, in one line where both have room, with the y below.
/// Each begins at zero where it fits.
fn sides(zero_x: f64, top: f64, width_px: f64) -> (Vec<Item>, f64) {
    const FROM_ZERO: f64 = 8.0;
    let (mass_px, wind_px) = (words_px(&MASS_NEARER), words_px(&WIND_NEARER));
    let mut line = top + LINE_PX;
    let word = |x, y, anchor, words| {
        Item::text(Point { x, y }, anchor, words, Colour::Ink, false)
    };
    // The end of the words on the left, the start of those on the right.
    let between = 2.0 * FROM_ZERO;
    let one_line = EDGE + wind_px + between + mass_px + EDGE <= width_px;
    let least = EDGE + wind_px + FROM_ZERO;
    let most = width_px - EDGE - mass_px - FROM_ZERO;
    let mut items = Vec::new();
    if one_line {
        let middle = zero_x.min(most).max(least);
        items.push(word(middle + FROM_ZERO, line, Anchor::Start, MASS_NEARER));
        items.push(word(middle - FROM_ZERO, line, Anchor::End, WIND_NEARER));
    } else {
        items.push(if zero_x > most {
            word(width_px - EDGE, line, Anchor::End, MASS_NEARER)
        } else {
            word(zero_x + FROM_ZERO, line, Anchor::Start, MASS_NEARER)
        });
        line += LINE_PX;
        items.push(if zero_x < least {
            word(EDGE, line, Anchor::Start, WIND_NEARER)
        } else {
            word(zero_x - FROM_ZERO, line, Anchor::End, WIND_NEARER)
        });
    }
    (items, line + 5.0)
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

/// The lines and numbers of the axis.
fn ticks(scale: &Scale, rows: &Rows, units: Units, width_px: f64) -> Vec<Item> {
    let step_mm = round_step_mm(units, |mm| mm * scale.px_per_mm >= NUMBERS_APART_PX);
    let (mut lines, mut ends) = (Path::default(), Path::default());
    let mut items = Vec::new();
    let bottom = rows.bottom();
    for mm in scale.reach.multiples_mm(step_mm) {
        let x = scale.x(mm);
        for plot in rows.plots() {
            lines.line(Point { x, y: plot.top }, Point { x, y: plot.bottom });
        }
        ends.line(Point { x, y: bottom }, Point { x, y: bottom + 4.0 });
        let number = axis_number(units, mm);
        let half = words_px(&number) / 2.0;
        if x >= half && x + half <= width_px {
            let at = Point { x, y: bottom + LINE_PX };
            items.push(Item::text(at, Anchor::Middle, number, Colour::Ink, false));
        }
    }
    items.insert(0, Item::Path { path: ends, style: Style::line(Colour::Ink, 1.0) });
    items.insert(0, Item::grid(lines));
    items
}

fn zero(scale: &Scale, rows: &Rows) -> Vec<Item> {
    let x = scale.x(0.0);
    let mut line = Path::default();
    for plot in rows.plots() {
        line.line(Point { x, y: plot.top }, Point { x, y: plot.bottom });
    }
    vec![Item::Path { path: line, style: Style::line(Colour::Ink, 2.0) }]
}

/// The band of common practice: hatched, with broken edges.
fn hatched(area: &Area) -> Vec<Item> {
    let mut edges = Path::default();
    for x in [area.left, area.right] {
        edges.line(Point { x, y: area.top }, Point { x, y: area.bottom });
    }
    vec![
        Item::Path {
            path: area.hatching(9.0),
            style: Style::line(Colour::BoldLine, 1.0),
        },
        Item::Path {
            path: edges,
            style: Style::line(Colour::Soft, 1.5).dashed(&[5.0, 3.0]),
        },
    ]
}

fn dot_style(measured: bool) -> Style {
    let fill = if measured { Colour::Ink } else { Colour::Sheet };
    Style::line(Colour::Ink, 2.0).filled(fill)
}

fn range_style() -> Style {
    Style::line(Colour::Ink, 1.5)
}

/// A level line with a cap at each end.
fn range(from_x: f64, to_x: f64, y: f64) -> Path {
    let mut path = Path::default();
    path.line(Point { x: from_x, y }, Point { x: to_x, y });
    for x in [from_x, to_x] {
        path.line(Point { x, y: y - CAP_PX }, Point { x, y: y + CAP_PX });
    }
    path
}

/// A swing: its range if it carries it, its dot, and the number in it.
fn dot(one: &Placed<'_>, scale: &Scale, row: &Area, radius: f64) -> Vec<Item> {
    let trial = one.trial;
    let x = scale.x(trial.separation_mm);
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
