//! The charts of a class against their own numbers.

use noseward_lesson::{Band, NoTurningPoint, TurningPoint, agreement, turning_point};
use noseward_stability::Units;

use super::charts::grid;
use super::{Axis, SEEN_PX, dots, group, level, number, paths, points, texts, upright};
use crate::goldens::{class_seen, class_trials};
use crate::{
    ClassChart, ClassTrial, Colour, Item, Point, Scene, SeparationUnit, Style,
    agreement_chart, class_chart,
};

const WIDTHS: [f64; 4] = [300.0, 420.0, 700.0, 1300.0];
const DASHES_TURNING: &[f64] = &[9.0, 4.0];
const DASHES_HATCH: &[f64] = &[5.0, 3.0];
const DASHES_PRACTICE: &[f64] = &[2.0, 3.0];
const DASHES_BAND: &[f64] = &[4.0, 3.0];

type Found = Result<TurningPoint, NoTurningPoint>;

fn chart<'a>(
    trials: &'a [ClassTrial],
    found: &'a Found,
    unit: SeparationUnit,
    width_px: f64,
) -> ClassChart<'a> {
    ClassChart {
        trials,
        unit,
        measured: true,
        body_width: Some(if unit == SeparationUnit::BodyWidths { 1.0 } else { 88.0 }),
        found: Some(found),
        invented: false,
        width_px,
        height_px: 420.0,
    }
}

/// A class in every unit, with the length of one of these in the unit of the axis.
fn units() -> [(SeparationUnit, f64, Vec<ClassTrial>); 3] {
    let trials = class_trials(48);
    let mut in_widths = trials.clone();
    in_widths.iter_mut().for_each(|trial| trial.separation /= 88.0);
    [
        (SeparationUnit::Length(Units::METRIC), 1.0, trials.clone()),
        (SeparationUnit::Length(Units::INCH), 25.4, trials),
        (SeparationUnit::BodyWidths, 1.0, in_widths),
    ]
}

/// The axis across.
fn across(scene: &Scene) -> Axis {
    let items = group(scene, "axis");
    let all = texts(items);
    let lowest = all.iter().filter(|text| number(text.1).is_some());
    let foot = lowest.map(|text| text.0.y).fold(0.0, f64::max);
    let numbers = all.iter().filter(|text| text.0.y == foot);
    let numbers = numbers.filter_map(|text| Some((text.0.x, number(text.1)?)));
    Axis::new(&upright(&grid(items)), numbers, 0.0)
}

/// The axis of chances at the right.
fn chances(scene: &Scene) -> Axis {
    let items = group(scene, "axis");
    let all = texts(items);
    let numbers = all
        .iter()
        .filter_map(|text| Some((text.0.y, number(text.1.strip_suffix(" %")?)?)));
    Axis::new(&level(&grid(items)), numbers, 4.5)
}

/// Where the upright lines with such dashes stand.
fn lines(scene: &Scene, dashes: &[f64]) -> Vec<f64> {
    let mut found: Vec<f64> = Vec::new();
    for (path, style) in paths(group(scene, "found")) {
        if style.dashes == dashes {
            found.extend(upright(path));
        }
    }
    found.sort_by(f64::total_cmp);
    // In a narrow chart each is interrupted by the name of a row.
    found.dedup();
    found
}

#[test]
fn marks_of_a_class_are_read_on_their_axis() {
    for (unit, per_unit, trials) in units() {
        let found = turning_point(&class_seen(&trials));
        for width in WIDTHS {
            let scene = class_chart(&chart(&trials, &found, unit, width));
            let axis = across(&scene);
            let marks = group(&scene, "marks");
            let mut round = Vec::new();
            for (centre, radius, style) in dots(marks) {
                if style.fill.is_some() {
                    assert!(radius > 2.0);
                    round.push(centre);
                }
            }
            let mut square = Vec::new();
            for (path, _) in
                paths(marks).iter().filter(|(_, style)| style.stroke.is_some())
            {
                let xs: Vec<f64> = points(path).map(|p| p.x).collect();
                square.push(f64::midpoint(xs[0], xs[1]));
            }
            let of = |wanted: bool| {
                let is_it =
                    move |trial: &&ClassTrial| trial.nose_first.is_none() == wanted;
                trials.iter().filter(is_it)
            };
            assert_eq!(
                (round.len(), square.len()),
                (of(false).count(), of(true).count())
            );
            let full = level_of(&chances(&scene), 50.0);
            for (at, trial) in round.iter().zip(of(false)) {
                axis.holds(at.x, trial.separation / per_unit, &trial.label);
                assert_eq!(at.y < full, trial.nose_first == Some(true), "{trial:?}");
            }
            for (x, trial) in square.iter().zip(of(true)) {
                axis.holds(*x, trial.separation / per_unit, &trial.label);
            }
        }
    }
}

fn level_of(axis: &Axis, value: f64) -> f64 {
    let (px, at) = axis.0[0];
    px + (value - at) / axis.per_px()
}

#[test]
fn the_curve_of_a_class_and_its_band_are_read_on_both_axes() {
    for (unit, per_unit, trials) in units() {
        let found = turning_point(&class_seen(&trials));
        let curve = found.unwrap().curve;
        for width in WIDTHS {
            let scene = class_chart(&chart(&trials, &found, unit, width));
            let (across, chances) = (across(&scene), chances(&scene));
            let all = paths(group(&scene, "found"));
            let hold = |line: &[Point], value: &dyn Fn(f64) -> f64| {
                assert!(line.len() > 40, "{}", line.len());
                for p in line {
                    let separation = across.read(p.x) * per_unit;
                    chances.holds(p.y, 100.0 * value(separation), "the curve");
                }
            };
            let is_curve = |style: &Style| *style == Style::line(Colour::Ink, 2.5);
            let line = all.iter().find(|(_, style)| is_curve(style)).unwrap().0;
            hold(&line.runs[0].0, &|separation| curve.chance(separation));
            let band =
                all.iter().find(|(_, style)| style.dashes == DASHES_BAND).unwrap().0;
            hold(&band.runs[0].0, &|separation| curve.chance_band(separation).1);
            hold(&band.runs[1].0, &|separation| curve.chance_band(separation).0);
        }
    }
}

/// The line of one half, the ends of its band, what is said of both, and one and two body widths.
#[test]
fn lines_of_a_class_stand_where_their_words_say() {
    for (unit, per_unit, trials) in units() {
        let found = turning_point(&class_seen(&trials));
        let turning = found.unwrap();
        let Band::Between { least, most } = turning.band else { panic!("{turning:?}") };
        for width in WIDTHS {
            let mut chart = chart(&trials, &found, unit, width);
            // Half a body width, so that two of them are on the axis.
            let body_width = chart.body_width.unwrap() / 2.0;
            chart.body_width = Some(body_width);
            let scene = class_chart(&chart);
            let axis = across(&scene);
            let hold = |dashes, values: &[f64]| {
                let lines = lines(&scene, dashes);
                assert_eq!(lines.len(), values.len(), "{lines:?}");
                for (px, value) in lines.iter().zip(values) {
                    axis.holds(*px, value / per_unit, "a line");
                }
            };
            hold(DASHES_TURNING, &[turning.at]);
            hold(DASHES_HATCH, &[least, most]);
            hold(DASHES_PRACTICE, &[body_width, 2.0 * body_width]);
            // The words round to what a ruler tells.
            let said = |start: &str| {
                let all = [texts(group(&scene, "axis")), texts(group(&scene, "legend"))];
                let words =
                    all.concat().into_iter().find(|text| text.1.starts_with(start));
                words.unwrap().1.to_owned()
            };
            let numbers = |words: &str| -> Vec<f64> {
                let words = words.replace("(95 %)", "");
                words.split(' ').filter_map(number).collect()
            };
            let near = |found: f64, value: f64| {
                let off = (found - value / per_unit).abs();
                let most = match unit {
                    SeparationUnit::Length(units) if units == Units::METRIC => 0.5,
                    SeparationUnit::Length(_) => 0.03,
                    SeparationUnit::BodyWidths => 0.005,
                };
                assert!(off <= most + 1e-9, "{found} for {value}");
            };
            near(numbers(&said("half fly"))[0], turning.at);
            let band = numbers(&said("hatched"));
            near(band[0], least);
            near(band[1], most);
        }
    }
}

#[test]
fn the_gap_of_a_class_goes_from_one_outcome_to_the_other() {
    let mut trials = class_trials(30);
    trials.iter_mut().for_each(|t| t.nose_first = Some(t.separation > 20.0));
    let found = turning_point(&class_seen(&trials));
    let fold = |nose_first, start: f64, of: fn(f64, f64) -> f64| {
        let those = trials.iter().filter(|trial| trial.nose_first == Some(nose_first));
        those.map(|trial| trial.separation).fold(start, of)
    };
    let ends = [fold(false, f64::MIN, f64::max), fold(true, f64::MAX, f64::min)];
    for width in WIDTHS {
        let unit = SeparationUnit::Length(Units::METRIC);
        let scene = class_chart(&chart(&trials, &found, unit, width));
        let axis = across(&scene);
        let lines = lines(&scene, DASHES_HATCH);
        assert_eq!(lines.len(), 2);
        for (px, mm) in lines.into_iter().zip(ends) {
            axis.holds(px, mm, "the gap");
        }
    }
}

/// A bar is as long as its number says, over as much of the axis as it covers.
#[test]
fn bars_of_a_class_hold_as_many_as_their_numbers_say() {
    let trials = class_trials(10_000);
    let found = turning_point(&class_seen(&trials[..100]));
    for width in WIDTHS {
        let unit = SeparationUnit::Length(Units::METRIC);
        let scene = class_chart(&chart(&trials, &found, unit, width));
        let axis = across(&scene);
        let marks = group(&scene, "marks");
        let bars = paths(marks);
        let bars = bars.iter().filter(|(_, style)| style.stroke.is_some());
        let bars: Vec<&Vec<Point>> =
            bars.flat_map(|(path, _)| path.runs.iter().map(|(run, _)| run)).collect();
        let half = level_of(&chances(&scene), 50.0);
        let mut each = Vec::new();
        for (at, words, _) in texts(marks) {
            let count = number(words).unwrap();
            let is_above = |bar: &&&Vec<Point>| {
                let (top, bottom) = (bar[0].y, bar[2].y);
                let beside = (f64::midpoint(bar[0].x, bar[1].x) - at.x).abs() < 1e-9;
                beside
                    && ((top - 3.0 - at.y).abs() < 1e-9
                        || (bottom + 12.0 - at.y).abs() < 1e-9)
            };
            let bar = bars.iter().find(is_above).unwrap();
            let (top, bottom) = (bar[0].y, bar[2].y);
            let row =
                if bottom < half { Some(true) } else { (top > half).then_some(false) };
            // A pixel of paper stands between two bars.
            let (from, to) = (axis.read(bar[0].x - 1.0), axis.read(bar[1].x + 1.0));
            let ends = axis.0.last().unwrap().1;
            let inside = trials.iter().filter(|trial| {
                let mm = trial.separation;
                let is_last = mm == ends && to > ends - 1e-6;
                trial.nose_first == row && (mm > from - 1e-6 && mm < to - 1e-6 || is_last)
            });
            assert_eq!(inside.count() as f64, count, "{from} to {to} at {width}");
            if bottom - top > 3.0 {
                each.push((bottom - top) / count);
            }
        }
        assert_eq!(texts(marks).len(), bars.len());
        let longest = each.iter().copied().fold(0.0, f64::max);
        assert!(each.iter().all(|px| (px - longest).abs() < 1e-9), "{each:?}");
    }
}

#[test]
fn pairs_of_a_class_are_read_on_both_axes() {
    let pairs: Vec<(f64, f64)> = (0..30_u32)
        .map(|k| f64::from(k * 37 % 101) - 40.0)
        .zip((0..30_u32).map(|k| f64::from(k * 29 % 97) - 50.0))
        .collect();
    let found = agreement(&pairs).unwrap();
    let limits = found.limits.unwrap();
    for units in [Units::METRIC, Units::INCH] {
        let per_unit = units.mm_per_unit();
        for width in [300.0, 560.0] {
            let scene = agreement_chart(&pairs, units, width, 300.0).unwrap();
            let axis = group(&scene, "axis");
            let (lines, all) = (grid(axis), texts(axis));
            let across = across(&scene);
            let foot = level(&lines).into_iter().fold(0.0, f64::max);
            let numbers = all.iter().filter(|text| text.0.y < foot + 8.0);
            let numbers = numbers.filter_map(|text| Some((text.0.y, number(text.1)?)));
            let up = Axis::new(&level(&lines), numbers, 4.5);
            let circles = dots(group(&scene, "marks"));
            assert_eq!(circles.len(), pairs.len());
            for ((at, ..), (measured, computed)) in circles.iter().zip(&pairs) {
                across.holds(
                    at.x,
                    f64::midpoint(*measured, *computed) / per_unit,
                    "mean",
                );
                up.holds(at.y, (measured - computed) / per_unit, "difference");
            }
            let of = |dashes: &[f64]| {
                let all = paths(axis);
                let path =
                    all.iter().find(|(_, style)| style.dashes == dashes).unwrap().0;
                level(path)
            };
            up.holds(of(DASHES_TURNING)[0], found.mean_difference / per_unit, "middle");
            let ends = of(DASHES_HATCH);
            up.holds(ends[0], limits.least / per_unit, "least");
            up.holds(ends[1], limits.most / per_unit, "most");
            let off_px = (level_of(&up, 0.0) - zero(axis)).abs();
            assert!(off_px < SEEN_PX, "{off_px}");
        }
    }
}

/// Where the line at 0 is.
fn zero(items: &[Item]) -> f64 {
    let all = paths(items);
    let is_it = |style: &Style| *style == Style::line(Colour::Ink, 2.0);
    level(all.iter().find(|(_, style)| is_it(style)).unwrap().0)[0]
}
