//! A whole class: separation, and whether the rocket flew nose-first. One mark for every
//! trial, or bars where there are too many for that.
//!
//! Marks stand outside of the stretch from 0 to 100 %, which is the curve's, so that neither
//! hides the other; between them stand those that are not clear.

mod bars;
mod dots;
mod found;
mod marks;
mod rows;

use noseward_lesson::{NoTurningPoint, TurningPoint};
use noseward_stability::Units;
use noseward_words::{self as words, Number, Text};

use crate::area::Area;
use crate::axis::{Reach, axis_number, is_shown, reading, reading_number, separation_in};
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::plot::{
    About, EDGE, LEGEND_EDGE, LINE_PX, NUMBERS_APART_PX, Scale, WORDS_APART_PX, sides,
    zero_style,
};
use crate::scene::{Anchor, Group, Item, Point, Scene, Style, Unit};
use crate::width::bold_px;
use marks::Marks;
use rows::Rows;

/// One trial of a class.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ClassTrial {
    /// Centre of pressure less centre of mass, in the unit of the chart: positive when the
    /// centre of mass is nearer the nose.
    pub separation: f64,
    /// Whether the rocket flew nose-first; `None` where its swings do not say.
    pub nose_first: Option<bool>,
    /// What stands beside its mark, such as its group. Empty for nothing.
    pub label: String,
    /// Whether it is marked, for a ring round its mark.
    pub marked: bool,
}

/// What separations are told in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SeparationUnit {
    /// Handed over in millimetres, and told in these units.
    Length(Units),
    /// In body widths.
    BodyWidths,
}

impl SeparationUnit {
    /// Body widths are drawn as lengths are: a hundredth as a millimetre.
    const WIDTH_MM: f64 = 100.0;

    fn mm(self, separation: f64) -> f64 {
        match self {
            Self::Length(_) => separation,
            Self::BodyWidths => separation * Self::WIDTH_MM,
        }
    }

    fn separation(self, mm: f64) -> f64 {
        match self {
            Self::Length(_) => mm,
            Self::BodyWidths => mm / Self::WIDTH_MM,
        }
    }

    /// The units whose round steps are those of the axis.
    fn steps(self) -> Units {
        match self {
            Self::Length(units) => units,
            Self::BodyWidths => Units::METRIC,
        }
    }

    fn axis_number(self, mm: f64) -> String {
        match self {
            Self::Length(units) => axis_number(units, mm),
            Self::BodyWidths => Number::trimmed(mm / Self::WIDTH_MM, 2).to_string(),
        }
    }

    /// A separation, with its unit if that is short: the axis names the other.
    fn told(self, separation: f64) -> String {
        match self {
            Self::Length(units) => reading(units, separation),
            Self::BodyWidths => Number::trimmed(separation, 2).to_string(),
        }
    }

    /// The same of two, the first always without its unit.
    fn told_between(self, from: f64, to: f64) -> (String, String) {
        let from = match self {
            Self::Length(units) => reading_number(units, from),
            Self::BodyWidths => self.told(from),
        };
        (from, self.told(to))
    }

    fn title(self) -> String {
        match self {
            Self::Length(units) => separation_in(units),
            Self::BodyWidths => words::class_chart_in_widths().into(),
        }
    }
}

/// What a chart of a class is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassChart<'a> {
    /// The trials, in any order. One whose separation is not finite or beyond 100 m, or 1,000
    /// body widths, is left out.
    pub trials: &'a [ClassTrial],
    /// What their separations are told in.
    pub unit: SeparationUnit,
    /// Whether the separations were measured; computed otherwise.
    pub measured: bool,
    /// A body width in the unit of the chart: 1 in body widths, else the median of the class.
    pub body_width: Option<f64>,
    /// What [`turning_point`](noseward_lesson::turning_point) says of the same separations;
    /// `None` for a chart without.
    pub found: Option<&'a Result<TurningPoint, NoTurningPoint>>,
    /// Whether all of it is invented.
    pub invented: bool,
    /// The width in CSS pixels, 300 or more.
    pub width_px: f64,
    /// The height for which it is made. Below 320 it saves lines, and where that is still too
    /// little, it becomes higher.
    pub height_px: f64,
}

/// Between the ends of the axis and the marks nearest to them.
const MARGIN_PX: f64 = 12.0;
/// A chart less high than this saves lines.
const LOW_PX: f64 = 320.0;
const BAND: Text = words::drawing_band();
const ZERO: Text = words::drawing_zero();

impl<'a> ClassChart<'a> {
    /// The trials that it can show, each with its separation as a length.
    fn shown(&self) -> impl Iterator<Item = (f64, &'a ClassTrial)> {
        let placed =
            self.trials.iter().map(|trial| (self.unit.mm(trial.separation), trial));
        placed.filter(|&(mm, _)| is_shown(mm))
    }

    /// One and two body widths as lengths.
    fn practice_mm(&self) -> Option<(f64, f64)> {
        let mm = self.unit.mm(self.body_width?);
        (mm > 0.0 && is_shown(mm)).then_some((mm, 2.0 * mm))
    }

    /// Whether it is made for a screen that has little room for its height: what can be told
    /// in one line is, and the curve takes less.
    fn is_low(&self) -> bool {
        self.height_px < LOW_PX
    }

    /// What was found, if it can be drawn.
    fn turning(&self) -> Option<&TurningPoint> {
        self.found.and_then(|found| found.as_ref().ok())
    }

    /// All trials, one body width, and where half fly nose-first if that is not far off.
    fn scale(&self, left: f64, right: f64) -> Scale {
        let trials = self.shown().map(|(mm, _)| mm);
        let practice = self.practice_mm().map(|(one, _)| one);
        let mut reach = Reach::of(trials.chain(practice));
        if let Some(found) = self.turning() {
            let (mm, far) = (self.unit.mm(found.at), reach.most_mm - reach.least_mm);
            if mm > reach.least_mm - far && mm < reach.most_mm + far {
                reach.least_mm = reach.least_mm.min(mm);
                reach.most_mm = reach.most_mm.max(mm);
            }
        }
        let (left, right) = (left + MARGIN_PX, right - MARGIN_PX);
        let (reach, _) =
            reach.in_steps(self.unit.steps(), right - left, NUMBERS_APART_PX);
        Scale::new(reach, left, right)
    }
}

/// The separation across and what was seen in three rows, nose-first at the top, with groups
/// `axis`, `found`, `marks` and `legend`.
///
/// A filled mark is of a measured separation, a hollow one of a computed one, a square is not
/// clear, a ring is round a marked one. Each stands above its separation; those that would
/// overlap are stacked. Where they are more than 400, or would stand too high, bars with a
/// number tell how many there are in each stretch of the axis. Between the rows is the curve of
/// the chance with its band, its axis at the right; hatched is where half fly nose-first, as
/// far as that is sure, or the gap that parts all trials.
#[must_use]
pub fn class_chart(chart: &ClassChart<'_>) -> Scene {
    let (left, right) = rows::sides_px(chart);
    let scale = chart.scale(left, right);
    let marks = Marks::new(chart, &scale, (left, right));
    let (mut axis, top, named) = heading(chart, &scale, &marks);
    let entries = entries(chart, &marks, &named);

    // What stands under the rows does not depend on where they end.
    let under = |bottom: f64| {
        let (sides, below) = sides(scale.px(0.0), bottom + 2.0 * LINE_PX, chart.width_px);
        let edge = chart.width_px - LEGEND_EDGE;
        let (legend, below) = legend(&entries, EDGE, edge, below + 4.0);
        (sides, legend, below + 4.0)
    };
    let rows =
        Rows::new(chart, &marks, (left, right), top, chart.height_px - under(0.0).2);
    let (sides, legend, height_px) = under(rows.bottom());

    let plots = rows.plots();
    let number = |mm| chart.unit.axis_number(mm);
    axis.extend(scale.ticks(&plots, chart.unit.steps(), number, chart.width_px));
    axis.extend(rows.items(chart));
    let at = Point { x: f64::midpoint(left, right), y: rows.bottom() + 2.0 * LINE_PX };
    axis.push(Item::text(at, Anchor::Middle, chart.unit.title(), Colour::Ink, true));
    axis.extend(sides);
    Scene {
        width: chart.width_px,
        height: height_px,
        unit: Unit::Px,
        name: words::class_chart_name().into(),
        groups: vec![
            Group { key: "axis", items: axis },
            Group { key: "found", items: found::items(chart, &scale, &rows) },
            Group { key: "marks", items: marks.items(chart, &rows) },
            Group { key: "legend", items: legend },
        ],
    }
}

/// What is named above the lines, and what is left for the legend.
#[derive(Default)]
struct Named {
    turning: bool,
    practice: bool,
    zero: bool,
}

/// What stands above the rows, with the y below it and what it names.
fn heading(
    chart: &ClassChart<'_>,
    scale: &Scale,
    marks: &Marks<'_>,
) -> (Vec<Item>, f64, Named) {
    let width_px = chart.width_px;
    let mut items = Vec::new();
    let mut line = LINE_PX;
    if chart.invented {
        items.extend(invented());
        line += LINE_PX + 8.0;
    }
    let what = if marks.are_counted() {
        words::class_chart_bars()
    } else {
        words::class_chart_one_mark()
    };
    let at = Point { x: EDGE, y: line };
    items.push(Item::text(at, Anchor::Start, what, Colour::Ink, true));
    let what = About::from(EDGE, EDGE + bold_px(&what));
    // Where a name may stand.
    let (mut least, mut most) = (EDGE, width_px - EDGE);
    if chart.is_low() {
        least = what.right + WORDS_APART_PX;
    }
    if chart.turning().is_some() {
        let chance = words::class_chart_chance();
        let right = width_px - EDGE;
        let title = About::from(right - bold_px(&chance), right);
        line += if title.is_clear_of(&what) { 0.0 } else { LINE_PX };
        let at = Point { x: right, y: line };
        items.push(Item::text(at, Anchor::End, chance, Colour::Ink, true));
        if chart.is_low() {
            most = title.left - WORDS_APART_PX;
        }
    }
    line += if chart.is_low() { 0.0 } else { LINE_PX + 4.0 };
    let (names, named) = names(chart, scale, (least, most), line);
    items.extend(names);
    (items, line + 9.0, named)
}

/// As many names of lines as have room beside each other, from here to there.
fn names(
    chart: &ClassChart<'_>,
    scale: &Scale,
    (least, most): (f64, f64),
    y: f64,
) -> (Vec<Item>, Named) {
    let mut items = Vec::new();
    let mut stand: Vec<About> = Vec::new();
    let mut name = |mm: f64, words: &str, colour| {
        let about = About::between(least, most, scale.px(mm), words);
        let fits = about.is_over(scale.px(mm), least, most)
            && stand.iter().all(|other| about.is_clear_of(other));
        if fits {
            items.push(about.item(y, words, colour));
            stand.push(about);
        }
        fits
    };
    let mut named = Named::default();
    if let Some((mm, words)) = found::named(chart, scale) {
        named.turning = name(mm, &words, Colour::Ink);
    }
    if let Some((one, _)) = chart.practice_mm() {
        named.practice = name(one, &BAND, Colour::Soft);
    }
    named.zero = name(0.0, &ZERO, Colour::Ink);
    (items, named)
}

/// The words in a frame that nobody takes for a measurement.
fn invented() -> [Item; 2] {
    let words = words::class_chart_invented();
    let (top, right) = (3.0, LEGEND_EDGE + 3.0 * EDGE + bold_px(&words));
    let frame = Area { left: EDGE, right, top, bottom: top + LINE_PX + 3.0 };
    let style = Style::line(Colour::Ink, 1.5).dashed(&[5.0, 3.0]);
    let at = Point { x: 2.0 * EDGE, y: LINE_PX };
    [
        Item::Path { path: frame.outline(), style },
        Item::text(at, Anchor::Start, words, Colour::Ink, true),
    ]
}

fn entries<'a>(
    chart: &'a ClassChart<'_>,
    marks: &Marks<'_>,
    named: &Named,
) -> Vec<Entry<'a>> {
    let mut entries = marks.entries(chart);
    entries.extend(found::entries(chart, named.turning));
    if chart.practice_mm().is_some() && !named.practice {
        entries.push(Entry::line(found::practice_style(), BAND));
    }
    if !named.zero {
        entries.push(Entry::line(zero_style(), ZERO));
    }
    entries
}

#[cfg(test)]
mod tests;
