//! The graphs of the air against their own numbers, and the turned rocket.

use std::f64::consts::PI;

use noseward_stability::{Design, Figures, Units};

use super::{
    Axis, dots, evaluated, group, level, number, paths, points, texts, the_path,
    the_words, upright,
};
use crate::{AirSheet, Colour, Item, Path, Point, Scene, Style};
use crate::{air_graph, swing_rocket, turned_rocket};

/// Both graphs as a person reads them.
struct Graphs<'a> {
    items: &'a [Item],
    /// Degrees across, the same in both.
    angles: Axis,
    /// From the nose down the upper one.
    lengths: Axis,
    /// Where the upper one ends.
    foot_y: f64,
}

impl<'a> Graphs<'a> {
    fn new(scene: &'a Scene) -> Self {
        let items = group(scene, "graphs");
        let grid = Style::line(Colour::BoldLine, 1.0);
        let mut across = Path::default();
        for (path, style) in paths(items) {
            if *style == grid {
                across.runs.extend(path.runs.clone());
            }
        }
        let all = texts(items);
        // The last number is moved inwards, at both graphs.
        let degrees = all.iter().filter(|text| text.1.ends_with('°') && text.1 != "180°");
        let degrees = degrees.map(|text| (text.0.x, number(text.1).unwrap()));
        let angles = Axis::new(&upright(&across), degrees, 0.0);
        let first = all.iter().find(|text| text.1 == "0°").unwrap();
        let foot_y = first.0.y;
        let lengths =
            all.iter().filter(|text| !text.1.ends_with('°') && text.0.y < foot_y);
        let lengths = lengths.filter_map(|text| Some((text.0.y, number(text.1)?)));
        let lengths = Axis::new(&level(&across), lengths, 4.5);
        Self { items, angles, lengths, foot_y }
    }

    fn curve(&self, colour: Colour, width_px: f64) -> &'a Path {
        the_path(self.items, |_, style| *style == Style::line(colour, width_px))
    }

    /// A curve's height at some place across, if it is drawn there.
    fn height(path: &Path, x: f64) -> Option<f64> {
        path.runs.iter().find_map(|(run, _)| {
            run.windows(2).find(|p| p[0].x <= x && x <= p[1].x).map(|p| {
                let share = (x - p[0].x) / (p[1].x - p[0].x).max(1e-12);
                p[0].y + share * (p[1].y - p[0].y)
            })
        })
    }
}

fn graphs() -> Vec<(Figures, AirSheet)> {
    let mut all = Vec::new();
    for (_, figures) in evaluated() {
        for units in [Units::METRIC, Units::INCH] {
            for width_px in [280.0, 340.0, 700.0] {
                all.push((figures.clone(), AirSheet { width_px, units, angle_rad: 1.0 }));
            }
        }
    }
    all
}

/// The curve of the colour of "centre of pressure" is the centre of pressure, the line of
/// the colour of "centre of mass" the centre of mass.
#[test]
fn each_legend_has_the_colour_of_its_line() {
    for (figures, sheet) in graphs() {
        let scene = air_graph(&figures, &sheet);
        let graphs = Graphs::new(&scene);
        let unit_m = sheet.units.mm_per_unit() / 1000.0;
        let (_, colour) = the_words(graphs.items, "centre of mass");
        for p in points(graphs.curve(colour, 2.0)) {
            graphs.lengths.holds(p.y, figures.mass.centre_m / unit_m, "centre of mass");
        }
        let (_, colour) = the_words(graphs.items, "centre of pressure");
        let mut seen = 0;
        for p in points(graphs.curve(colour, 3.0)) {
            let angle_rad = graphs.angles.read(p.x).to_radians();
            let Some(at_m) = figures.air.centre_of_pressure_m(angle_rad) else {
                continue;
            };
            graphs.lengths.holds(p.y, at_m / unit_m, "centre of pressure");
            seen += 1;
        }
        assert!(seen > 30, "{seen}");
    }
}

/// A dot for every angle at which the rocket rests: full where it holds, open where it does
/// not, and, between the ends, where the curve crosses the line.
#[test]
fn resting_dots_lie_where_curve_and_line_meet() {
    let mut inner = 0;
    for (figures, sheet) in graphs() {
        let scene = air_graph(&figures, &sheet);
        let graphs = Graphs::new(&scene);
        let resting = dots(graphs.items);
        let resting: Vec<_> = resting
            .iter()
            .filter(|(_, _, style)| style.stroke == Some(Colour::Ink))
            .collect();
        assert_eq!(resting.len(), figures.resting_angles.len());
        let curve = graphs.curve(Colour::Wind, 3.0);
        for ((centre, _, style), rest) in resting.iter().zip(&figures.resting_angles) {
            graphs.angles.holds(centre.x, rest.angle_rad.to_degrees(), "a rest");
            let mass_mm = figures.mass.centre_m * 1000.0;
            graphs.lengths.holds(centre.y, mass_mm / sheet.units.mm_per_unit(), "a rest");
            let fill = if rest.holds { Colour::Ink } else { Colour::Sheet };
            assert_eq!(style.fill, Some(fill), "{rest:?}");
            if rest.angle_rad > 0.02 && rest.angle_rad < PI - 0.02 {
                let y = Graphs::height(curve, centre.x).expect("the curve is there");
                assert!((y - centre.y).abs() < 1.0, "{y} for {centre:?}");
                inner += 1;
            }
        }
    }
    assert!(inner > 0);
}

/// The lower curve is on the side of "back" where the upper one has the centre of pressure
/// behind the centre of mass, and on the side of "away" where it is in front.
#[test]
fn the_moment_turns_the_nose_back_where_the_wind_is_behind_the_mass() {
    let (mut back, mut away) = (0, 0);
    for (figures, sheet) in graphs() {
        let scene = air_graph(&figures, &sheet);
        let graphs = Graphs::new(&scene);
        let below = |p: Point| p.y > graphs.foot_y;
        let zero = the_path(graphs.items, |path, style| {
            *style == Style::line(Colour::Ink, 1.0) && points(path).all(below)
        });
        let zero_y = level(zero)[0];
        let all = texts(graphs.items);
        let word = |wanted: &str| {
            let found = all.iter().find(|text| text.1 == wanted && below(text.0));
            found.expect("the word is there").0.y
        };
        assert!((word("0") - 4.5 - zero_y).abs() < 1.0);
        assert!(word("back") < zero_y && word("away") > zero_y);
        let moment = graphs.curve(Colour::Ink, 2.5);
        let mass_y = level(graphs.curve(Colour::Fulcrum, 2.0))[0];
        let centre = graphs.curve(Colour::Wind, 3.0);
        let most_px = points(moment).map(|p| (p.y - zero_y).abs()).fold(0.0, f64::max);
        let of = |p: &Point| {
            let angle_rad = graphs.angles.read(p.x).to_radians();
            figures.air.turning_moment_m(angle_rad, figures.mass.centre_m)
        };
        let most = points(moment).map(|p| of(&p).abs()).fold(0.0, f64::max);
        for p in points(moment) {
            let share = (zero_y - p.y) / most_px;
            assert!(
                (share - of(&p) / most).abs() < 1e-6,
                "{share} for {}",
                of(&p) / most
            );
            let Some(wind_y) = Graphs::height(centre, p.x) else { continue };
            // Down the upper graph is towards the tail.
            let behind_px = wind_y - mass_y;
            if behind_px.abs() < 1.0 || share.abs() < 0.01 {
                continue;
            }
            assert_eq!(behind_px > 0.0, p.y < zero_y, "{p:?}");
            if behind_px > 0.0 { back += 1 } else { away += 1 }
        }
    }
    assert!(back > 100 && away > 100, "{back} and {away}");
}

/// The broken line and the dot on the curve are at the chosen angle.
#[test]
fn the_chosen_angle_is_marked() {
    for (figures, sheet) in graphs() {
        for angle_rad in [0.3, 1.0, 2.6] {
            let sheet = AirSheet { angle_rad, ..sheet };
            let scene = air_graph(&figures, &sheet);
            let graphs = Graphs::new(&scene);
            let drawn = paths(graphs.items);
            let markers: Vec<_> =
                drawn.iter().filter(|(_, style)| !style.dashes.is_empty()).collect();
            assert_eq!(markers.len(), 2);
            for (path, _) in markers {
                for x in upright(path) {
                    graphs.angles.holds(x, angle_rad.to_degrees(), "the marker");
                }
            }
            let all = dots(graphs.items);
            let chosen: Vec<_> = all
                .iter()
                .filter(|(_, _, style)| style.fill == Some(Colour::Wind))
                .collect();
            for (centre, ..) in &chosen {
                graphs.angles.holds(centre.x, angle_rad.to_degrees(), "its dot");
                let at_m = figures.air.centre_of_pressure_m(angle_rad).unwrap();
                let at = at_m * 1000.0 / sheet.units.mm_per_unit();
                graphs.lengths.holds(centre.y, at, "its dot");
            }
        }
    }
}

/// Holds a turned body against the rocket: along the line at `angle_rad` it reaches forward
/// of the pivot by the centre of mass and back by the rest of its length, and to both sides
/// by half its width, all at one scale.
fn turned_about(
    items: &[Item],
    pivot: Point,
    angle_rad: f64,
    design: &Design,
    figures: &Figures,
) {
    let body = the_path(items, |_, style| style.fill == Some(Colour::Body));
    // The nose is at the left at 0 and swings down as the angle grows.
    let (sin, cos) = libm::sincos(angle_rad);
    let nose = Point { x: -cos, y: sin };
    let (mut front, mut rear, mut one, mut other) = (0.0_f64, 0.0_f64, 0.0_f64, 0.0_f64);
    for p in points(body) {
        let (x, y) = (p.x - pivot.x, p.y - pivot.y);
        let (along, across) = (x * nose.x + y * nose.y, x * nose.y - y * nose.x);
        (front, rear) = (front.max(along), rear.max(-along));
        (one, other) = (one.max(across), other.max(-across));
    }
    let px_per_m = (front + rear) / figures.length_m;
    let width_m = noseward_stability::Body::new(design).unwrap().width_m();
    let which = format!("{} at {angle_rad}", design.name);
    for (px, m) in [
        (front, figures.mass.centre_m),
        (rear, figures.length_m - figures.mass.centre_m),
        (one, width_m / 2.0),
        (other, width_m / 2.0),
    ] {
        assert!((px - m * px_per_m).abs() < 1e-6, "{which}: {px} for {}", m * px_per_m);
    }
    // The outline begins at the nose tip.
    let tip = points(body).next().unwrap();
    let (x, y) = (tip.x - pivot.x, tip.y - pivot.y);
    assert!((x * nose.x + y * nose.y - front).abs() < 1e-6, "{which}: {tip:?}");
}

const ANGLES: [f64; 8] = [0.0, 0.4, 1.0, PI / 2.0, 2.2, PI, 4.0, -0.7];

#[test]
fn the_turned_rocket_turns_about_its_centre_of_mass() {
    for (design, figures) in evaluated() {
        for angle_rad in ANGLES {
            let scene = turned_rocket(&design, &figures, angle_rad).unwrap();
            let items = group(&scene, "turned");
            let all = dots(items);
            let [(pivot, _, style)] = all[..] else { panic!("one pivot: {all:?}") };
            assert_eq!(style.fill, Some(Colour::Fulcrum));
            turned_about(items, pivot, angle_rad, &design, &figures);
        }
    }
}

#[test]
fn the_swung_rocket_turns_about_the_string() {
    for (design, figures) in evaluated() {
        for angle_rad in ANGLES {
            let scene = swing_rocket(&design, &figures, angle_rad, 240.0).unwrap();
            let items = group(&scene, "rocket");
            let all = dots(items);
            let [(string, ..)] = all[..] else { panic!("one string: {all:?}") };
            turned_about(items, string, angle_rad, &design, &figures);
            // The path goes through the string.
            let path =
                the_path(group(&scene, "path"), |_, style| !style.dashes.is_empty());
            assert_eq!(level(path), [string.y]);
        }
    }
}
