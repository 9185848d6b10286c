//! The sheet, the pair and the bars of the air's push, against their rulers.

use crate::written::Written;
use noseward_stability::Units;

use super::{
    Axis, dots, evaluated, group, number, paths, points, ruler, texts, the_path,
    the_words, tips,
};
use crate::{Colour, LabelStyle, Scene, Sheet, Style, Told, pair, push_bars, rocket};

const SIZES: [(f64, f64, LabelStyle); 4] = [
    (760.0, 440.0, LabelStyle::Full),
    (600.0, 400.0, LabelStyle::Full),
    (330.0, 330.0, LabelStyle::Short),
    (290.0, 300.0, LabelStyle::Short),
];

fn sheets() -> Vec<Sheet> {
    let mut all = Vec::new();
    for units in [Units::METRIC, Units::INCH] {
        for (width_px, height_px, labels) in SIZES {
            let told = Told::BOTH;
            all.push(Sheet { width_px, height_px, units, labels, told });
        }
    }
    all
}

/// From where to where the sections of the body reach: left, right, top, bottom.
fn body(scene: &Scene) -> (f64, f64, f64, f64) {
    let items = group(scene, "rocket");
    let sections = paths(items).into_iter().filter(|(_, style)| {
        matches!(style.fill, Some(Colour::Body | Colour::Ruler)) && style.stroke.is_none()
    });
    let mut reach = (f64::MAX, f64::MIN, f64::MAX, f64::MIN);
    for p in sections.flat_map(|(path, _)| points(path)) {
        reach = (reach.0.min(p.x), reach.1.max(p.x), reach.2.min(p.y), reach.3.max(p.y));
    }
    reach
}

/// The fulcrum's tip is at the centre of mass and the wind's at the centre of pressure, by
/// the ruler's own numbers, and both touch the axis of the rocket.
#[test]
fn both_marks_lie_where_their_numbers_say() {
    for (design, figures) in evaluated() {
        for sheet in sheets() {
            let which = format!("{}, {sheet:?}", design.name);
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let unit_m = sheet.units.mm_per_unit() / 1000.0;
            let ruler = ruler(group(&scene, "paper"));
            let (left, right, ..) = body(&scene);
            let marks = group(&scene, "marks");
            for (colour, at_m) in [
                (Colour::Fulcrum, figures.mass.centre_m),
                (Colour::Wind, figures.centre_of_pressure_side_on_m),
            ] {
                let [tip] = tips(marks, colour)[..] else {
                    panic!("{which}: {colour:?}")
                };
                ruler.holds(tip.y, at_m / unit_m, &which);
                assert!((tip.x - f64::midpoint(left, right)).abs() < 1e-9, "{which}");
                let told = sheet.units.reading(at_m * 1000.0);
                let words = texts(marks);
                let own = words.iter().filter(|text| text.2 == colour);
                assert!(
                    own.clone().any(|text| text.1.contains(&told)),
                    "{which}: {told}"
                );
            }
            if sheet.labels == LabelStyle::Full {
                let (_, colour) = the_words(marks, "centre of mass");
                assert_eq!(colour, Colour::Fulcrum, "{which}");
                let (_, colour) = the_words(marks, "centre of pressure");
                assert_eq!(colour, Colour::Wind, "{which}");
            }
        }
    }
}

/// The bracket goes from the level of the one point to that of the other.
#[test]
fn the_bracket_spans_the_separation() {
    for (design, figures) in evaluated() {
        for sheet in sheets() {
            let which = format!("{}, {sheet:?}", design.name);
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let unit_m = sheet.units.mm_per_unit() / 1000.0;
            let ruler = ruler(group(&scene, "paper"));
            let bracket = the_path(group(&scene, "marks"), |_, style| {
                *style == Style::line(Colour::Ink, 2.0)
            });
            let ys: Vec<f64> = points(bracket).map(|p| p.y).collect();
            let long_px = ys.iter().fold(0.0_f64, |most, y| most.max((y - ys[0]).abs()));
            let long = long_px * ruler.per_px() * unit_m;
            assert!((long - figures.separation_m.abs()).abs() < 1e-4, "{which}: {long}");
        }
    }
}

/// The nose tip is at the ruler's nought and the tail at the length; across, the same
/// scale holds. Nothing of the rocket leaves the sheet.
#[test]
fn the_whole_rocket_is_on_the_sheet_and_to_scale() {
    for (design, figures) in evaluated() {
        for sheet in sheets() {
            let which = format!("{}, {sheet:?}", design.name);
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let unit_m = sheet.units.mm_per_unit() / 1000.0;
            let ruler = ruler(group(&scene, "paper"));
            let (left, right, top, bottom) = body(&scene);
            ruler.holds(top, 0.0, &which);
            ruler.holds(bottom, figures.length_m / unit_m, &which);
            let wide_m = (right - left) * ruler.per_px() * unit_m;
            let widest_m = noseward_stability::Body::new(&design).unwrap().width_m();
            assert!((wide_m - widest_m).abs() < 1e-6, "{which}: {wide_m}");
            for p in
                paths(group(&scene, "rocket")).iter().flat_map(|(path, _)| points(path))
            {
                assert!(p.x > 0.0 && p.x < sheet.width_px, "{which}: {p:?}");
                assert!(p.y > 0.0 && p.y < sheet.height_px, "{which}: {p:?}");
            }
        }
    }
}

#[test]
fn weights_lie_at_their_distance_from_the_nose() {
    let mut seen = 0;
    for (design, figures) in evaluated() {
        for sheet in sheets() {
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let ruler = ruler(group(&scene, "paper"));
            for (i, weight) in design.weights.iter().enumerate() {
                let crate::Item::Part { items, .. } = &group(&scene, "weights")[i] else {
                    panic!("a weight can be pointed at")
                };
                let (centre, ..) = dots(items)[0];
                let at = weight.position_mm / sheet.units.mm_per_unit();
                ruler.holds(centre.y, at, &design.name);
                seen += 1;
            }
        }
    }
    assert!(seen > 8, "{seen}");
}

/// All four marks against the one ruler between the rockets.
#[test]
fn both_rockets_of_a_pair_are_read_on_one_ruler() {
    let all = evaluated();
    for (left, right) in all.iter().zip(all.iter().cycle().skip(1)) {
        for units in [Units::METRIC, Units::INCH] {
            for (width, height) in [(300.0, 380.0), (560.0, 420.0), (900.0, 600.0)] {
                let which = format!("{} and {}", left.0.name, right.0.name);
                let one = (&left.0, &left.1, "Trial 1");
                let two = (&right.0, &right.1, "Trial 2");
                let scene = pair(one, two, units, width, height).unwrap();
                let unit_m = units.mm_per_unit() / 1000.0;
                let ruler = ruler(group(&scene, "paper"));
                let mass = [&left.1, &right.1].map(|f| f.mass.centre_m);
                let wind = [&left.1, &right.1].map(|f| f.centre_of_pressure_side_on_m);
                for (colour, at_m) in [(Colour::Fulcrum, mass), (Colour::Wind, wind)] {
                    let found = tips(group(&scene, "marks"), colour);
                    assert_eq!(found.len(), 2, "{which}");
                    assert!(found[0].x < width / 2.0 && found[1].x > width / 2.0);
                    for (tip, at_m) in found.iter().zip(at_m) {
                        ruler.holds(tip.y, at_m / unit_m, &which);
                    }
                }
            }
        }
    }
}

/// What the legend says of a triangle's colour is what stands on the single sheet.
#[test]
fn the_legend_of_a_pair_names_each_mark_beside_its_colour() {
    let all = evaluated();
    let one = (&all[0].0, &all[0].1, "Trial 1");
    let scene = pair(one, one, Units::METRIC, 900.0, 600.0).unwrap();
    let words = group(&scene, "words");
    for (name, colour) in [
        ("centre of mass", Colour::Fulcrum),
        ("centre of pressure, side-on", Colour::Wind),
    ] {
        let (at, _) = the_words(words, name);
        let samples = paths(words);
        let sample = samples.iter().find(|(path, style)| {
            let beside = |p: crate::Point| {
                p.x < at.x && at.x - p.x < 40.0 && (p.y - at.y).abs() < 14.0
            };
            style.fill.is_some() && points(path).all(beside)
        });
        assert_eq!(sample.unwrap().1.fill, Some(colour), "{name}");
    }
}

/// Each bar's middle, by the ruler's numbers, is where its part is pushed.
#[test]
fn bars_of_the_push_are_read_on_their_ruler() {
    for (design, figures) in evaluated() {
        for units in [Units::METRIC, Units::INCH] {
            let scene = push_bars(&design, &figures, units).unwrap();
            let items = group(&scene, "ruler");
            let ticks =
                the_path(items, |_, style| *style == Style::line(Colour::Ink, 1.0));
            let mut lines: Vec<f64> =
                ticks.runs.iter().map(|(points, _)| points[0].y).collect();
            lines.sort_by(f64::total_cmp);
            let all = texts(items);
            let mut numbers: Vec<f64> =
                all.iter().filter_map(|(_, words, _)| number(words)).collect();
            numbers.sort_by(f64::total_cmp);
            assert_eq!(lines.len(), numbers.len());
            let ruler = Axis::checked(lines.into_iter().zip(numbers).collect());
            let mut pushed: Vec<f64> = figures
                .parts
                .iter()
                .filter(|part| part.normal_force_slope_per_rad.abs() > 1e-9)
                .map(|part| part.nose_on_centre_m.unwrap() * 1000.0 / units.mm_per_unit())
                .collect();
            pushed.sort_by(f64::total_cmp);
            let drawn = paths(group(&scene, "bars"));
            let bars: Vec<_> = drawn
                .iter()
                .filter(|(_, style)| style.fill == Some(Colour::Wind))
                .collect();
            assert_eq!(bars.len(), pushed.len());
            for ((bar, _), at) in bars.iter().zip(pushed) {
                let ys: Vec<f64> = points(bar).map(|p| p.y).collect();
                let top = ys.iter().copied().fold(f64::MAX, f64::min);
                let bottom = ys.iter().copied().fold(f64::MIN, f64::max);
                ruler.holds(f64::midpoint(top, bottom), at, &design.name);
            }
        }
    }
}
