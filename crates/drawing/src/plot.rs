//! What charts of separations are made of: scales, their lines and numbers, words about a
//! place, and marks that keep clear of each other.

use noseward_stability::Units;
use noseward_words::{self as words, Text};

use crate::area::Area;
use crate::axis::{Reach, round_step_mm};
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::words_px;

/// Between the edge of the sheet and what is drawn.
pub(crate) const EDGE: f64 = 6.0;
/// Numbers on an axis across stand at least this far apart.
pub(crate) const NUMBERS_APART_PX: f64 = 44.0;
/// Words in one line stand at least this far apart.
pub(crate) const WORDS_APART_PX: f64 = 12.0;
pub(crate) const LINE_PX: f64 = 17.0;
/// From the line of words to the middle of their letters.
pub(crate) const HALF_LETTER_PX: f64 = 4.5;
const CAP_PX: f64 = 4.0;
/// A legend stays so far from the right edge: some fonts are wider than expected.
pub(crate) const LEGEND_EDGE: f64 = 14.0;

const MASS_NEARER: Text = words::drawing_mass_nearer_arrow();
const WIND_NEARER: Text = words::drawing_pressure_nearer_arrow();

/// Where a length stands, across or upwards.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Scale {
    pub(crate) reach: Reach,
    from_px: f64,
    px_per_mm: f64,
}

impl Scale {
    /// The reach from one place to another.
    pub(crate) fn new(reach: Reach, from_px: f64, to_px: f64) -> Self {
        let px_per_mm = (to_px - from_px) / (reach.most_mm - reach.least_mm);
        Self { reach, from_px, px_per_mm }
    }

    pub(crate) fn px(&self, mm: f64) -> f64 {
        self.from_px + (mm - self.reach.least_mm) * self.px_per_mm
    }

    pub(crate) fn mm(&self, px: f64) -> f64 {
        self.reach.least_mm + (px - self.from_px) / self.px_per_mm
    }

    /// The least round step that takes so many pixels.
    pub(crate) fn step_mm(&self, units: Units, least_px: f64) -> f64 {
        round_step_mm(units, |mm| mm * self.px_per_mm >= least_px)
    }

    /// The least round step that takes so many pixels and of which a whole number goes into
    /// the step of an axis across; that one if none does.
    pub(crate) fn part_of_step_mm(&self, units: Units, least_px: f64) -> f64 {
        let step_mm = self.step_mm(units, NUMBERS_APART_PX);
        round_step_mm(units, |mm| {
            let parts = step_mm / mm;
            let is_whole = (parts - parts.round()).abs() < 1e-6;
            is_whole && mm * self.px_per_mm >= least_px || mm >= step_mm
        })
    }

    /// The lines and numbers of an axis across: lines where upright ones may go, of which the
    /// last ends at the axis.
    pub(crate) fn ticks(
        &self,
        plots: &[Area],
        units: Units,
        number: impl Fn(f64) -> String,
        width_px: f64,
    ) -> Vec<Item> {
        let step_mm = self.step_mm(units, NUMBERS_APART_PX);
        let (mut lines, mut ends) = (Path::default(), Path::default());
        let mut items = Vec::new();
        let bottom = plots.last().map_or(0.0, |plot| plot.bottom);
        for mm in self.reach.multiples_mm(step_mm) {
            let x = self.px(mm);
            lines.runs.extend(upright(plots, x).runs);
            ends.line(Point { x, y: bottom }, Point { x, y: bottom + CAP_PX });
            let number = number(mm);
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

    /// The lines and numbers of an axis upwards, at its left, with the line at 0.
    pub(crate) fn levels(
        &self,
        area: &Area,
        step_mm: f64,
        number: impl Fn(f64) -> String,
    ) -> Vec<Item> {
        let mut lines = Path::default();
        let mut items = Vec::new();
        for mm in self.reach.multiples_mm(step_mm) {
            let y = self.px(mm);
            lines.runs.extend(level(area, y).runs);
            let at = Point { x: area.left - 6.0, y: y + HALF_LETTER_PX };
            items.push(Item::text(at, Anchor::End, number(mm), Colour::Ink, false));
        }
        items.insert(0, Item::grid(lines));
        items.push(Item::Path { path: level(area, self.px(0.0)), style: zero_style() });
        items
    }
}

/// A level line through an area.
pub(crate) fn level(area: &Area, y: f64) -> Path {
    Path::open(vec![Point { x: area.left, y }, Point { x: area.right, y }])
}

/// An upright line through some areas.
pub(crate) fn upright(plots: &[Area], x: f64) -> Path {
    let mut path = Path::default();
    for plot in plots {
        path.line(Point { x, y: plot.top }, Point { x, y: plot.bottom });
    }
    path
}

/// The line at 0.
pub(crate) fn zero_style() -> Style {
    Style::line(Colour::Ink, 2.0)
}

/// Words that would best stand about a place.
pub(crate) struct About {
    pub(crate) left: f64,
    pub(crate) right: f64,
    at_x: f64,
    anchor: Anchor,
}

impl About {
    /// They are held at the edge of the sheet that they would cross, so that letters
    /// wider than expected do not leave it.
    pub(crate) fn new(middle: f64, words: &str, width_px: f64) -> Self {
        Self::between(EDGE, width_px - EDGE, middle, words)
    }

    /// The same held between two places, if those leave room.
    pub(crate) fn between(least: f64, most: f64, middle: f64, words: &str) -> Self {
        let half = words_px(words) / 2.0;
        let (middle, at_x, anchor) = if middle - half < least {
            (least + half, least, Anchor::Start)
        } else if middle + half > most {
            (most - half, most, Anchor::End)
        } else {
            (middle, middle, Anchor::Middle)
        };
        Self { left: middle - half, right: middle + half, at_x, anchor }
    }

    /// Words that stand from here to there.
    pub(crate) fn from(left: f64, right: f64) -> Self {
        Self { left, right, at_x: left, anchor: Anchor::Start }
    }

    /// Whether they stand over a place, and are not wider than the room between two.
    pub(crate) fn is_over(&self, x: f64, least: f64, most: f64) -> bool {
        self.left <= x && x <= self.right && self.right - self.left <= most - least
    }

    pub(crate) fn is_clear_of(&self, other: &Self) -> bool {
        self.right + WORDS_APART_PX <= other.left
            || other.right + WORDS_APART_PX <= self.left
    }

    pub(crate) fn item(&self, y: f64, words: &str, colour: Colour) -> Item {
        Item::text(Point { x: self.at_x, y }, self.anchor, words, colour, false)
    }
}

/// What the two sides of zero mean, in one line where both have room, with the y below.
/// Each begins at zero where it fits.
pub(crate) fn sides(zero_x: f64, top: f64, width_px: f64) -> (Vec<Item>, f64) {
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

/// A hatched area with broken edges.
pub(crate) fn hatched(area: &Area) -> Vec<Item> {
    let mut edges = Path::default();
    for x in [area.left, area.right] {
        edges.runs.extend(upright(&[*area], x).runs);
    }
    vec![
        Item::Path { path: area.hatching(HATCH_PX), style: hatch_style() },
        Item::Path { path: edges, style: hatch_edge_style() },
    ]
}

/// Between two lines of a hatched area.
pub(crate) const HATCH_PX: f64 = 9.0;

pub(crate) fn hatch_style() -> Style {
    Style::line(Colour::BoldLine, 1.0)
}

pub(crate) fn hatch_edge_style() -> Style {
    Style::line(Colour::Soft, 1.5).dashed(&[5.0, 3.0])
}

/// What hides the lines behind words that stand from here to there on a line.
pub(crate) fn plate((left, right): (f64, f64), line_y: f64) -> Path {
    let (left, right) = (left - 1.0, right + 1.0);
    Area { left, right, top: line_y - 11.5, bottom: line_y + 2.5 }.outline()
}

/// A level line with a cap at each end.
pub(crate) fn range(from_x: f64, to_x: f64, y: f64) -> Path {
    let mut path = Path::default();
    path.line(Point { x: from_x, y }, Point { x: to_x, y });
    for x in [from_x, to_x] {
        path.line(Point { x, y: y - CAP_PX }, Point { x, y: y + CAP_PX });
    }
    path
}

/// What stands beside each other on each level.
#[derive(Default)]
pub(crate) struct Stack(Vec<Vec<(f64, f64)>>);

impl Stack {
    /// Between two on one level.
    pub(crate) const APART: f64 = 3.0;

    /// Puts one that goes from here to there on the lowest level on which it finds room.
    pub(crate) fn put(&mut self, span: (f64, f64)) -> u32 {
        let clear = |a: (f64, f64), b: (f64, f64)| a.1 + Self::APART <= b.0;
        let is_free = |level: &Vec<(f64, f64)>| {
            level.iter().all(|&other| clear(span, other) || clear(other, span))
        };
        let level = self.0.iter().position(is_free).unwrap_or(self.0.len());
        if level == self.0.len() {
            self.0.push(Vec::new());
        }
        self.0[level].push(span);
        u32::try_from(level).expect("a row has few marks")
    }

    /// How many levels are taken.
    pub(crate) fn levels(&self) -> u32 {
        u32::try_from(self.0.len()).expect("a row has few marks")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_is_parted_into_whole_parts() {
        for units in [Units::METRIC, Units::INCH] {
            for px_per_mm in [0.01, 0.3, 0.9, 2.3, 4.4, 9.1, 60.0] {
                let reach = Reach { least_mm: 0.0, most_mm: 100.0 };
                let scale = Scale::new(reach, 0.0, 100.0 * px_per_mm);
                let step_mm = scale.step_mm(units, NUMBERS_APART_PX);
                for least_px in [1.0, 12.0, 18.0, 30.0, 40.0, 90.0] {
                    let part_mm = scale.part_of_step_mm(units, least_px);
                    let parts = step_mm / part_mm;
                    assert!(
                        (parts - parts.round()).abs() < 1e-9,
                        "{part_mm} of {step_mm}"
                    );
                    assert!(parts > 0.5, "{part_mm} of {step_mm}");
                    let wide = part_mm * px_per_mm >= least_px - 1e-9;
                    assert!(wide || (parts - 1.0).abs() < 1e-9, "{part_mm} of {step_mm}");
                }
            }
        }
        // 20 goes into 100, and not into 50.
        let scale = Scale::new(Reach { least_mm: 0.0, most_mm: 500.0 }, 0.0, 500.0);
        assert!((scale.part_of_step_mm(Units::METRIC, 18.0) - 50.0).abs() < 1e-9);
    }
}
