//! The two points, the separation between them, and the words beside the rocket.
//!
//! The centre of mass is a fulcrum: a triangle whose point touches the axis from the
//! right. The centre of pressure is the wind: an arrow that ends on the axis from the
//! left. The bracket between them carries the separation.

use crate::written::Written;
use noseward_stability::{Design, Figures, Units};
use noseward_words as words;

use super::labels::{Wanted, place};
use super::layout::{LINE_PX, Layout};
use super::paper;
use super::{LabelStyle, Told};
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Style};
use crate::width::{cut, words_px};

pub(super) const FULCRUM_LENGTH: f64 = 40.0;
const FULCRUM_HALF_BASE: f64 = 13.0;
const ARROW_HEAD: f64 = 17.0;
const ARROW_HALF_HEAD: f64 = 8.0;
/// Width of the sheet-coloured rim that keeps a mark apart from lines under it.
const RIM: f64 = 3.0;

pub(super) fn marks(
    design: &Design,
    figures: &Figures,
    told: Told,
    layout: &Layout,
) -> Vec<Item> {
    let mass_y = layout.y(figures.mass.centre_m);
    let wind_y = layout.y(figures.centre_of_pressure_side_on_m);
    let mut items = Vec::new();
    if told == Told::BOTH {
        items.extend(bracket(mass_y, wind_y, layout));
    }
    if told.pressure {
        items.extend(wind(wind_y, layout));
    }
    if told.mass {
        items.extend(fulcrum(mass_y, layout));
    }
    if told.pressure {
        items.extend(left_words(figures, wind_y, layout));
    }
    items.extend(right_words(design, figures, told, layout));
    items
}

pub(super) fn fulcrum(y: f64, layout: &Layout) -> Vec<Item> {
    let tip = Point { x: layout.axis_x, y };
    let base = layout.axis_x + FULCRUM_LENGTH;
    let triangle = Path::closed(vec![
        tip,
        Point { x: base, y: y - FULCRUM_HALF_BASE },
        Point { x: base, y: y + FULCRUM_HALF_BASE },
    ]);
    let line = Path::open(vec![
        Point { x: base, y },
        Point { x: layout.bracket_x.max(base), y },
    ]);
    vec![
        rim(line.clone(), 0.0),
        Item::Path { path: line, style: Style::line(Colour::Fulcrum, 1.5) },
        rim(triangle.clone(), 0.0),
        Item::Path { path: triangle, style: Style::area(Colour::Fulcrum) },
    ]
}

pub(super) fn wind(y: f64, layout: &Layout) -> Vec<Item> {
    let tip = Point { x: layout.axis_x, y };
    let neck = layout.axis_x - ARROW_HEAD;
    let tail = layout.left_words_x;
    let mut shaft = Path::default();
    let mut from = tail;
    // A number of the ruler in its way stays readable.
    let number = paper::number_at(y, layout);
    if let Some((start, end)) = number.filter(|(from, to)| tail < *from && *to < neck) {
        shaft.line(Point { x: tail, y }, Point { x: start, y });
        from = end;
    }
    shaft.line(Point { x: from, y }, Point { x: neck + 1.0, y });
    let head = Path::closed(vec![
        tip,
        Point { x: neck, y: y - ARROW_HALF_HEAD },
        Point { x: neck, y: y + ARROW_HALF_HEAD },
    ]);
    // Two shorter lines of moving air below the shaft; the words stand above it.
    let mut air = Path::default();
    for (k, length) in [(1.0, 26.0), (2.0, 14.0)] {
        let y = y + 6.0 * k;
        air.line(Point { x: tail, y }, Point { x: tail + length, y });
    }
    vec![
        rim(shaft.clone(), 4.0),
        Item::Path { path: shaft, style: Style::line(Colour::Wind, 4.0) },
        rim(head.clone(), 0.0),
        Item::Path { path: head, style: Style::area(Colour::Wind) },
        Item::Path { path: air, style: Style::line(Colour::Wind, 2.0) },
    ]
}

fn rim(path: Path, width: f64) -> Item {
    Item::Path { path, style: Style::line(Colour::Sheet, width + RIM) }
}

/// From the level of one point to the level of the other, with a thin line that brings
/// the wind's level over.
pub(super) fn bracket(mass_y: f64, wind_y: f64, layout: &Layout) -> Vec<Item> {
    let x = layout.bracket_x;
    let hook = hook_x(layout);
    let level = Path::open(vec![
        Point { x: layout.axis_x, y: wind_y },
        Point { x: hook, y: wind_y },
    ]);
    let bracket = Path::open(vec![
        Point { x: hook, y: mass_y },
        Point { x, y: mass_y },
        Point { x, y: wind_y },
        Point { x: hook, y: wind_y },
    ]);
    vec![
        Item::Path { path: level, style: wind_level() },
        Item::Path { path: bracket, style: Style::line(Colour::Ink, 2.0) },
    ]
}

/// Where the ends of the bracket are: towards the axis.
pub(super) fn hook_x(layout: &Layout) -> f64 {
    let away = (layout.bracket_x - layout.axis_x).signum();
    layout.bracket_x - 7.0 * away
}

/// The line that shows how far down the centre of pressure is.
pub(super) fn wind_level() -> Style {
    Style::line(Colour::Wind, 1.5).dashed(&[5.0, 4.0])
}

/// The words of the centre of pressure stand above the tail of its arrow, or below it
/// where the arrow is near the top of the sheet.
fn left_words(figures: &Figures, y: f64, layout: &Layout) -> Vec<Item> {
    let distance = layout.units.reading(figures.centre_of_pressure_side_on_m * 1000.0);
    let computed_m = figures.computed_centre_of_pressure_side_on_m;
    let is_measured = figures.centre_of_pressure_side_on_m != computed_m;
    let lines = match layout.labels {
        LabelStyle::Full if is_measured => vec![
            (words::drawing_pressure().into(), true),
            (words::drawing_side_on_measured().into(), false),
            (distance, false),
        ],
        LabelStyle::Full => vec![
            (words::drawing_pressure().into(), true),
            (words::drawing_side_on_at(&distance), false),
        ],
        LabelStyle::Short => {
            let name = words::drawing_pressure_lines().as_str().split('|');
            let name = name.map(|line| (line.to_owned(), true));
            name.chain([(distance, false)]).collect()
        }
    };
    #[expect(clippy::cast_precision_loss, reason = "a few lines")]
    let height = lines.len() as f64 * LINE_PX;
    let mut base = y - 8.0 - height + LINE_PX;
    if base - LINE_PX < 0.0 {
        base = y + 14.0 + LINE_PX;
    }
    let x = layout.left_words_x;
    lines
        .into_iter()
        .zip([base, base + LINE_PX, base + 2.0 * LINE_PX])
        .map(|((words, bold), y)| {
            Item::text(Point { x, y }, Anchor::Start, words, Colour::Wind, bold)
        })
        .collect()
}

/// One label of the right-hand column.
struct Label {
    /// The level of the thing that it belongs to.
    level: f64,
    /// Where its leader starts.
    from_x: f64,
    lines: Vec<String>,
    colour: Colour,
    /// How many of them are bold.
    bold: usize,
}

fn right_words(
    design: &Design,
    figures: &Figures,
    told: Told,
    layout: &Layout,
) -> Vec<Item> {
    let mass_y = layout.y(figures.mass.centre_m);
    let wind_y = layout.y(figures.centre_of_pressure_side_on_m);
    let units = layout.units;
    let full = layout.labels == LabelStyle::Full;
    let mass_mm = figures.mass.centre_m * 1000.0;
    let measured = figures.mass.centre_m != figures.computed_mass.centre_m;
    let distance = units.reading(mass_mm);
    let mut labels = Vec::new();
    if told.mass {
        labels.push(Label {
            level: mass_y,
            from_x: layout.bracket_x,
            lines: if full {
                let at = if measured {
                    words::drawing_measured_at(&distance)
                } else {
                    words::drawing_from_nose(&distance)
                };
                vec![words::drawing_mass().into(), at]
            } else {
                let name = words::drawing_mass_lines().as_str().split('|');
                name.map(str::to_owned).chain([distance]).collect()
            },
            colour: Colour::Fulcrum,
            bold: if full { 1 } else { 2 },
        });
    }
    if told == Told::BOTH {
        labels.push(Label {
            level: f64::midpoint(mass_y, wind_y),
            from_x: layout.bracket_x,
            lines: vec![apart(figures, units, full)],
            colour: Colour::Ink,
            bold: 1,
        });
    }
    let room = layout.width - layout.right_words_x;
    labels.extend(design.weights.iter().map(|weight| {
        let mass = units.mass(weight.mass_g);
        let words = if full && !weight.label.is_empty() {
            shortened(&weight.label, &mass, room)
        } else {
            mass
        };
        Label {
            level: layout.y(weight.position_mm / 1000.0),
            from_x: layout.axis_x + 12.0,
            lines: vec![words],
            colour: Colour::Ink,
            bold: 0,
        }
    }));

    let wanted: Vec<Wanted> = labels
        .iter()
        .map(|label| {
            #[expect(clippy::cast_precision_loss, reason = "a few lines")]
            let height = label.lines.len() as f64 * LINE_PX + 2.0;
            Wanted { middle: label.level, height }
        })
        .collect();
    let middles = place(&wanted, 2.0, layout.height - 2.0);
    let mut items = Vec::new();
    for ((label, wanted), middle) in labels.into_iter().zip(&wanted).zip(middles) {
        items.push(leader(&label, middle, layout));
        let mut base = middle - wanted.height / 2.0 + 13.0;
        for (i, words) in label.lines.into_iter().enumerate() {
            let at = Point { x: layout.right_words_x, y: base };
            let bold = i < label.bold;
            items.push(Item::text(at, Anchor::Start, words, label.colour, bold));
            base += LINE_PX;
        }
    }
    items
}

fn leader(label: &Label, middle: f64, layout: &Layout) -> Item {
    let mut points = vec![Point { x: label.from_x, y: label.level }];
    if label.from_x < layout.rocket_right {
        points.push(Point { x: layout.bracket_x + 3.0, y: label.level });
    }
    points.push(Point { x: layout.right_words_x - 4.0, y: middle });
    Item::Path { path: Path::open(points), style: Style::line(label.colour, 1.0) }
}

pub(super) fn apart(figures: &Figures, units: Units, full: bool) -> String {
    let distance = units.reading(figures.separation_m.abs() * 1000.0);
    if full { words::drawing_points_apart(&distance) } else { distance }
}

/// A label and a mass, the label cut to what fits in `room` pixels.
fn shortened(label: &str, mass: &str, room: f64) -> String {
    let mass = format!(" {}", words::isolated(mass));
    cut(label, room - words_px(&mass)) + &mass
}
