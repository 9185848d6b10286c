//! Squared paper and the ruler.

use noseward_stability::UnitSystem;
use noseward_words as texts;

use super::LabelStyle;
use super::layout::Layout;
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Style};

/// A ruler's divisions: one numbered step, in millimetres, and how it is divided.
struct Divisions {
    step_mm: f64,
    /// What is written at one step, so that the n-th says n times this.
    step_value: f64,
    /// Divisions of a step, finest last; each is drawn while it can be told apart.
    parts: &'static [u32],
}

const MM: [(f64, &[u32]); 9] = [
    (10.0, &[2, 10]),
    (20.0, &[2, 4, 20]),
    (50.0, &[5, 10, 50]),
    (100.0, &[2, 10, 20, 100]),
    (200.0, &[2, 4, 20]),
    (500.0, &[5, 10, 50]),
    (1000.0, &[2, 10, 20]),
    (2000.0, &[2, 4, 20]),
    (5000.0, &[5, 10, 50]),
];
const INCH: [(f64, &[u32]); 9] = [
    (0.5, &[2, 4, 8]),
    (1.0, &[2, 4, 8, 16]),
    (2.0, &[2, 4, 8]),
    (5.0, &[5, 10]),
    (10.0, &[2, 10]),
    (20.0, &[4, 20]),
    (50.0, &[5, 10, 50]),
    (100.0, &[2, 10, 20]),
    (200.0, &[2, 4, 20]),
];
/// Numbers on the ruler stand at least this far apart.
const NUMBERS_APART_PX: f64 = 34.0;
/// Ticks stand at least this far apart.
const TICKS_APART_PX: f64 = 3.5;
/// How wide and how high a digit is at most.
const DIGIT_PX: (f64, f64) = (8.5, 9.5);
/// What stays free around a number.
const FREE_PX: f64 = 3.0;
/// Lines of the squared paper stand at least this far apart.
const LINES_APART_PX: f64 = 9.0;

pub(super) fn paper(layout: &Layout) -> Vec<Item> {
    let mut items = squares(layout);
    items.extend(ruler(layout));
    items
}

fn unit_mm(layout: &Layout) -> f64 {
    layout.units.mm_per_unit()
}

fn squares(layout: &Layout) -> Vec<Item> {
    let fine_units: &[f64] = match layout.units.system {
        UnitSystem::Metric => &[10.0, 50.0, 100.0, 500.0],
        UnitSystem::Inch => &[0.25, 1.0, 5.0, 20.0],
    };
    let each_bold = match layout.units.system {
        UnitSystem::Metric => 5,
        UnitSystem::Inch => 4,
    };
    let step = fine_units
        .iter()
        .map(|u| u * unit_mm(layout) * layout.px_per_mm)
        .find(|&px| px >= LINES_APART_PX)
        .unwrap_or(LINES_APART_PX);
    let (mut fine, mut bold) = (Path::default(), Path::default());
    let mut rule = |position: f64, origin: f64, from: Point, to: Point| {
        let index = ((position - origin) / step).round();
        let path = if index.rem_euclid(f64::from(each_bold)) == 0.0 {
            &mut bold
        } else {
            &mut fine
        };
        path.line(from, to);
    };
    for y in grid(layout.nose_y, step, layout.height) {
        let ends = (Point { x: 0.0, y }, Point { x: layout.width, y });
        rule(y, layout.nose_y, ends.0, ends.1);
    }
    for x in grid(layout.axis_x, step, layout.width) {
        let ends = (Point { x, y: 0.0 }, Point { x, y: layout.height });
        rule(x, layout.axis_x, ends.0, ends.1);
    }
    vec![
        Item::Path { path: fine, style: Style::line(Colour::FineLine, 1.0) },
        Item::Path { path: bold, style: Style::line(Colour::BoldLine, 1.0) },
    ]
}

/// Every `origin + k · step` within 0 and `end`.
fn grid(origin: f64, step: f64, end: f64) -> impl Iterator<Item = f64> {
    let first = origin.rem_euclid(step);
    std::iter::successors(Some(first), move |at| Some(at + step))
        .take_while(move |&at| at <= end)
}

fn divisions(layout: &Layout) -> Divisions {
    let table = match layout.units.system {
        UnitSystem::Metric => &MM,
        UnitSystem::Inch => &INCH,
    };
    let px_per_unit = unit_mm(layout) * layout.px_per_mm;
    let fits = |&&(step, _): &&(f64, &[u32])| step * px_per_unit >= NUMBERS_APART_PX;
    let (step_value, parts) =
        table.iter().find(fits).copied().unwrap_or(table[table.len() - 1]);
    Divisions { step_mm: step_value * unit_mm(layout), step_value, parts }
}

fn ruler(layout: &Layout) -> Vec<Item> {
    let (left, right) = layout.ruler;
    let Divisions { step_mm, parts, .. } = divisions(layout);
    let step_px = step_mm * layout.px_per_mm;
    let end_mm = layout.ruler_mm;
    let end_y = layout.nose_y + end_mm * layout.px_per_mm;
    let mut items = vec![Item::Path {
        path: Path::closed(vec![
            Point { x: left, y: layout.nose_y },
            Point { x: right, y: layout.nose_y },
            Point { x: right, y: end_y },
            Point { x: left, y: end_y },
        ]),
        style: Style::line(Colour::Ink, 1.0).filled(Colour::Ruler),
    }];

    let mut ticks = Path::default();
    let mut tick = |mm: f64, length: f64| {
        let y = layout.nose_y + mm * layout.px_per_mm;
        ticks.line(Point { x: right, y }, Point { x: right - length, y });
        if layout.two_edged {
            ticks.line(Point { x: left, y }, Point { x: left + length, y });
        }
    };
    let lengths = [8.0, 6.0, 4.0, 3.0];
    for (&part, length) in parts.iter().zip(lengths) {
        if step_px / f64::from(part) < TICKS_APART_PX {
            break;
        }
        let part_mm = step_mm / f64::from(part);
        for mm in multiples(part_mm, end_mm) {
            tick(mm, length);
        }
    }
    for mm in multiples(step_mm, end_mm) {
        tick(mm, 11.0);
    }
    items.push(Item::Path { path: ticks, style: Style::line(Colour::Ink, 1.0) });

    for number in numbers(layout) {
        items.push(words(number.at, number.anchor, number.words));
    }
    let heading = match layout.labels {
        LabelStyle::Full => texts::drawing_from_nose(layout.units.length_unit()),
        LabelStyle::Short => layout.units.length_unit().to_owned(),
    };
    let (x, anchor) = if layout.two_edged {
        (f64::midpoint(left, right), Anchor::Middle)
    } else {
        (left, Anchor::Start)
    };
    items.push(words(Point { x, y: layout.nose_y - 7.0 }, anchor, heading));
    items
}

/// A number on the ruler.
struct Number {
    at: Point,
    anchor: Anchor,
    words: String,
}

fn numbers(layout: &Layout) -> impl Iterator<Item = Number> {
    let (left, right) = layout.ruler;
    let Divisions { step_mm, step_value, .. } = divisions(layout);
    let end_mm = layout.ruler_mm;
    let end_y = layout.nose_y + end_mm * layout.px_per_mm;
    let (x, anchor) = if layout.two_edged {
        (f64::midpoint(left, right), Anchor::Middle)
    } else {
        (right - 13.0, Anchor::End)
    };
    multiples(step_mm, end_mm).zip(0_u32..).map(move |(mm, index)| {
        let y = layout.nose_y + mm * layout.px_per_mm;
        // The first and the last number are kept within the ruler, if it has the room.
        let last = (end_y - 3.0).max(y - 3.0);
        let base = (y + 4.5).min(last).max(layout.nose_y + 12.0);
        Number {
            at: Point { x, y: base },
            anchor,
            words: noseward_words::Number::trimmed(f64::from(index) * step_value, 3)
                .to_string(),
        }
    })
}

/// From where to where, across the sheet, a line at this level would run through a number
/// of the ruler.
pub(super) fn number_at(y: f64, layout: &Layout) -> Option<(f64, f64)> {
    let number = numbers(layout).find(|number| {
        (number.at.y - DIGIT_PX.1 / 2.0 - y).abs() < DIGIT_PX.1 / 2.0 + FREE_PX
    })?;
    let wide = number.words.chars().map(|_| DIGIT_PX.0).sum::<f64>();
    let start = match number.anchor {
        Anchor::Start => number.at.x,
        Anchor::Middle => number.at.x - wide / 2.0,
        Anchor::End => number.at.x - wide,
    };
    Some((start - FREE_PX, start + wide + FREE_PX))
}

fn multiples(step: f64, end: f64) -> impl Iterator<Item = f64> {
    (0_u32..).map(move |k| f64::from(k) * step).take_while(move |&at| at <= end + 1e-9)
}

fn words(at: Point, anchor: Anchor, words: String) -> Item {
    Item::text(at, anchor, words, Colour::Ink, false)
}
