//! Graphs of the air from every side, and the rocket turned to one angle.
//!
//! The upper graph runs down the same ruler as the drawing: the curve of the centre of
//! pressure meets the line of the centre of mass where the rocket rests. The lower one
//! shows which way the air turns it.

use crate::written::Written;
use std::f64::consts::PI;

use noseward_stability::{Design, Figures, Units};
use noseward_words as words;

use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::turned::Turnable;
use crate::width::bold_px;

/// How the graphs are drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirSheet {
    /// Width in CSS pixels, 280 or more.
    pub width_px: f64,
    /// How lengths are written.
    pub units: Units,
    /// The angle that is marked, in radians from 0 to π.
    pub angle_rad: f64,
}

const LEFT: f64 = 58.0;
const RIGHT: f64 = 14.0;
const TOP: f64 = 44.0;
const CENTRE_HEIGHT: f64 = 210.0;
const GAP: f64 = 54.0;
const MOMENT_HEIGHT: f64 = 96.0;
const BOTTOM: f64 = 40.0;
/// Points of a curve.
const STEPS: u32 = 90;

/// A rectangle in which a curve is drawn, with what its edges mean.
#[derive(Clone, Copy)]
struct Frame {
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
    /// Value at the top and at the bottom.
    at_top: f64,
    at_bottom: f64,
}

impl Frame {
    fn x(&self, angle_rad: f64) -> f64 {
        self.left + (self.right - self.left) * angle_rad / PI
    }

    fn y(&self, value: f64) -> f64 {
        let share = (value - self.at_top) / (self.at_bottom - self.at_top);
        self.top + (self.bottom - self.top) * share
    }

    fn holds(&self, value: f64) -> bool {
        let (low, high) =
            (self.at_top.min(self.at_bottom), self.at_top.max(self.at_bottom));
        (low..=high).contains(&value)
    }

    fn rule(&self, path: &mut Path, y: f64) {
        path.line(Point { x: self.left, y }, Point { x: self.right, y });
    }

    /// A curve over all angles, broken where it has no value or leaves the frame.
    fn curve(&self, value: impl Fn(f64) -> Option<f64>) -> Path {
        let mut path = Path::default();
        let mut run = Vec::new();
        for k in 0..=STEPS {
            let angle = PI * f64::from(k) / f64::from(STEPS);
            match value(angle).filter(|&v| self.holds(v)) {
                Some(v) => run.push(Point { x: self.x(angle), y: self.y(v) }),
                None => path.runs.push((std::mem::take(&mut run), false)),
            }
        }
        path.runs.push((run, false));
        path.runs.retain(|(points, _)| points.len() > 1);
        path
    }
}

/// The angle, in degrees, at a distance from the left edge of graphs of some width.
#[must_use]
pub fn air_graph_angle_deg(x_px: f64, width_px: f64) -> f64 {
    let share = (x_px - LEFT) / (width_px - RIGHT - LEFT);
    180.0 * share.clamp(0.0, 1.0)
}

/// Height of the graphs in CSS pixels.
fn height_px() -> f64 {
    TOP + CENTRE_HEIGHT + GAP + MOMENT_HEIGHT + BOTTOM
}

/// Both graphs for a rocket with these figures.
#[must_use]
pub fn air_graph(figures: &Figures, sheet: &AirSheet) -> Scene {
    let right = sheet.width_px - RIGHT;
    let mm = |m: f64| m * 1000.0;
    let centre = Frame {
        left: LEFT,
        right,
        top: TOP,
        bottom: TOP + CENTRE_HEIGHT,
        at_top: 0.0,
        at_bottom: mm(figures.length_m),
    };
    let moments: Vec<f64> = (0..=STEPS)
        .map(|k| {
            let angle = PI * f64::from(k) / f64::from(STEPS);
            figures.air.turning_moment_m(angle, figures.mass.centre_m)
        })
        .collect();
    let largest = moments.iter().fold(0.0_f64, |most, m| most.max(m.abs())).max(1e-12);
    let top = centre.bottom + GAP;
    let moment = Frame {
        left: LEFT,
        right,
        top,
        bottom: top + MOMENT_HEIGHT,
        at_top: 1.0,
        at_bottom: -1.0,
    };
    let mut items = centre_graph(figures, &centre, sheet);
    items.extend(moment_graph(figures, &moment, largest, sheet));
    Scene {
        width: sheet.width_px,
        height: height_px(),
        unit: Unit::Px,
        name: words::drawing_air_graphs().into(),
        groups: vec![Group { key: "graphs", items }],
    }
}

fn centre_graph(figures: &Figures, frame: &Frame, sheet: &AirSheet) -> Vec<Item> {
    let mm = |m: f64| m * 1000.0;
    let mass_mm = mm(figures.mass.centre_m);
    let mut items = angles(frame);
    let unit_mm = sheet.units.mm_per_unit();
    let step_mm = [10.0, 20.0, 50.0, 100.0, 200.0, 500.0]
        .map(|step| if unit_mm > 1.0 { step / 10.0 * unit_mm } else { step })
        .into_iter()
        .find(|&step| (frame.y(step) - frame.y(0.0)).abs() >= 32.0)
        .unwrap_or(500.0);
    let mut lines = Path::default();
    let mut at_mm = 0.0;
    while frame.holds(at_mm) {
        let y = frame.y(at_mm);
        frame.rule(&mut lines, y);
        items.push(Item::text(
            Point { x: frame.left - 6.0, y: y + 4.5 },
            Anchor::End,
            sheet.units.length_alone(at_mm),
            Colour::Ink,
            false,
        ));
        at_mm += step_mm;
    }
    items.push(Item::Path { path: lines, style: Style::line(Colour::BoldLine, 1.0) });
    let heading = |x: f64, up: f64, words: &str, colour, bold| {
        let at = Point { x, y: frame.top - up };
        Item::text(at, Anchor::Start, words, colour, bold)
    };
    let unit = words::drawing_from_nose(sheet.units.length_unit());
    items.push(heading(6.0, 11.0, &unit, Colour::Ink, false));
    let pressure = words::drawing_pressure();
    items.push(heading(6.0, 30.0, &pressure, Colour::Wind, true));
    let beside = (6.0 + bold_px(&pressure) + 14.0).max(158.0);
    items.push(heading(beside, 30.0, &words::drawing_mass(), Colour::Fulcrum, true));
    let mut mass = Path::default();
    frame.rule(&mut mass, frame.y(mass_mm));
    items.push(Item::Path { path: mass, style: Style::line(Colour::Fulcrum, 2.0) });
    let curve = frame.curve(|a| figures.air.centre_of_pressure_m(a).map(mm));
    items.push(Item::Path { path: curve, style: Style::line(Colour::Wind, 3.0) });
    for rest in &figures.resting_angles {
        let fill = if rest.holds { Colour::Ink } else { Colour::Sheet };
        items.push(Item::Dot {
            centre: Point { x: frame.x(rest.angle_rad), y: frame.y(mass_mm) },
            radius: 5.0,
            style: Style::line(Colour::Ink, 2.0).filled(fill),
        });
    }
    items.extend(marker(frame, sheet.angle_rad));
    let at = figures.air.centre_of_pressure_m(sheet.angle_rad).map(mm);
    if let Some(at) = at.filter(|&at| frame.holds(at)) {
        items.push(Item::Dot {
            centre: Point { x: frame.x(sheet.angle_rad), y: frame.y(at) },
            radius: 4.0,
            style: Style::line(Colour::Sheet, 1.5).filled(Colour::Wind),
        });
    }
    items
}

fn moment_graph(
    figures: &Figures,
    frame: &Frame,
    largest: f64,
    sheet: &AirSheet,
) -> Vec<Item> {
    let mut items = angles(frame);
    let mut zero = Path::default();
    frame.rule(&mut zero, frame.y(0.0));
    items.push(Item::Path { path: zero, style: Style::line(Colour::Ink, 1.0) });
    let share = |a: f64| figures.air.turning_moment_m(a, figures.mass.centre_m) / largest;
    let curve = frame.curve(|a| Some(share(a).clamp(-1.0, 1.0)));
    items.push(Item::Path { path: curve, style: Style::line(Colour::Ink, 2.5) });
    let word = |y: f64, words: &str| {
        let at = Point { x: frame.left - 6.0, y };
        Item::text(at, Anchor::End, words, Colour::Ink, false)
    };
    items.push(word(frame.top + 12.0, &words::drawing_back()));
    items.push(word(frame.y(0.0) + 4.5, "0"));
    items.push(word(frame.bottom - 4.0, &words::drawing_away()));
    items.push(Item::text(
        Point { x: 6.0, y: frame.top - 11.0 },
        Anchor::Start,
        words::drawing_turns_nose(),
        Colour::Ink,
        false,
    ));
    items.extend(marker(frame, sheet.angle_rad));
    for (angle, anchor, words) in [
        (0.0, Anchor::Start, words::drawing_nose_first()),
        (PI / 2.0, Anchor::Middle, words::drawing_side_on()),
        (PI, Anchor::End, words::drawing_tail_first()),
    ] {
        let at = Point { x: frame.x(angle), y: frame.bottom + 34.0 };
        items.push(Item::text(at, anchor, words, Colour::Ink, false));
    }
    items
}

/// The frame with a line and a number every thirty degrees.
fn angles(frame: &Frame) -> Vec<Item> {
    let mut lines = Path::default();
    let mut items = Vec::new();
    for k in 0..=6_u32 {
        let degrees = 30 * k;
        let x = frame.x(f64::from(degrees).to_radians());
        lines.line(Point { x, y: frame.top }, Point { x, y: frame.bottom });
        let anchor = if k == 6 { Anchor::End } else { Anchor::Middle };
        let at = Point { x: if k == 6 { x + 8.0 } else { x }, y: frame.bottom + 17.0 };
        items.push(Item::text(at, anchor, format!("{degrees}°"), Colour::Ink, false));
    }
    items.insert(0, Item::grid(lines));
    items
}

fn marker(frame: &Frame, angle_rad: f64) -> [Item; 1] {
    let x = frame.x(angle_rad);
    let ends = vec![Point { x, y: frame.top }, Point { x, y: frame.bottom }];
    [Item::Path {
        path: Path::open(ends),
        style: Style::line(Colour::Soft, 1.5).dashed(&[5.0, 3.0]),
    }]
}

/// Width and height of the turned rocket's picture, in CSS pixels.
const TURNED_PX: f64 = 150.0;

/// The rocket turned about its centre of mass, with the wind from the left. `None` when
/// the design has no body.
#[must_use]
pub fn turned_rocket(
    design: &Design,
    figures: &Figures,
    angle_rad: f64,
) -> Option<Scene> {
    let rocket = Turnable::new(design, figures)?;
    let half = TURNED_PX / 2.0;
    let pivot = Point { x: half + 14.0, y: half };
    let mut items = rocket.items(angle_rad, pivot, half - 4.0);
    items.push(Item::Dot {
        centre: pivot,
        radius: 4.0,
        style: Style::area(Colour::Fulcrum),
    });
    let mut air = Path::default();
    for y in [half - 40.0, half, half + 40.0] {
        air.line(Point { x: 2.0, y }, Point { x: 20.0, y });
        air.line(Point { x: 14.0, y: y - 4.0 }, Point { x: 20.0, y });
        air.line(Point { x: 14.0, y: y + 4.0 }, Point { x: 20.0, y });
    }
    items.push(Item::Path { path: air, style: Style::line(Colour::Wind, 2.0) });
    Some(Scene {
        width: TURNED_PX + 28.0,
        height: TURNED_PX,
        unit: Unit::Px,
        name: words::drawing_turned().into(),
        groups: vec![Group { key: "turned", items }],
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use noseward_stability::{Example, evaluate};

    fn sheet(width_px: f64) -> AirSheet {
        AirSheet { width_px, units: Units::METRIC, angle_rad: 1.0 }
    }

    #[test]
    fn everything_stays_on_the_sheet() {
        for example in Example::ALL {
            let design = example.design();
            let figures = evaluate(&design).figures.unwrap();
            for width in [280.0, 340.0, 700.0] {
                let scene = air_graph(&figures, &sheet(width));
                for item in &scene.groups[0].items {
                    let points: Vec<Point> = match item {
                        Item::Path { path, .. } => {
                            path.runs.iter().flat_map(|(run, _)| run.clone()).collect()
                        }
                        Item::Dot { centre, .. } => vec![*centre],
                        Item::Text { at, .. } => vec![*at],
                        Item::Part { .. } | Item::Grip { .. } | Item::Placed { .. } => {
                            vec![]
                        }
                    };
                    for p in points {
                        assert!((0.0..=width).contains(&p.x), "{example:?} {p:?}");
                        assert!((0.0..=scene.height).contains(&p.y), "{p:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn a_place_on_the_graph_is_an_angle() {
        assert_eq!(air_graph_angle_deg(LEFT, 600.0), 0.0);
        assert_eq!(air_graph_angle_deg(600.0 - RIGHT, 600.0), 180.0);
        assert_eq!(air_graph_angle_deg(0.0, 600.0), 0.0);
        let middle = (LEFT + 600.0 - RIGHT) / 2.0;
        assert!((air_graph_angle_deg(middle, 600.0) - 90.0).abs() < 1e-9);
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&everything_stays_on_the_sheet);
    }
}
