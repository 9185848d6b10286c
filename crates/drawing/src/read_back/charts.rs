//! The charts of the trials against their own numbers, and the rim of a QR symbol.

use noseward_lesson::SwingOutcome::{
    self, NotSure, Sideways, Steady, TailFirst, Wobbling,
};
use noseward_stability::Units;

use super::{Axis, dots, group, level, number, paths, points, texts, upright};
use crate::names::outcome_name;
use crate::{ChartTrial, Colour, Item, Path, SeriesTrial, Style};
use crate::{qr, trial_chart, trial_series};

/// All the lines of a grid.
pub(super) fn grid(items: &[Item]) -> Path {
    let mut all = Path::default();
    for (path, style) in paths(items) {
        if *style == Style::line(Colour::BoldLine, 1.0) {
            all.runs.extend(path.runs.clone());
        }
    }
    all
}

fn trials() -> Vec<ChartTrial<'static>> {
    let trial =
        |n: u32, separation_mm: f64, measured, outcomes: &'static [SwingOutcome]| {
            ChartTrial {
                label: n.to_string(),
                separation_mm,
                calibre_mm: 60.0,
                measured,
                range_mm: measured
                    .then_some((separation_mm - 17.0, separation_mm + 21.0)),
                outcomes,
            }
        };
    vec![
        trial(1, -74.0, false, &[TailFirst, TailFirst, Sideways]),
        trial(2, -3.0, true, &[Sideways, NotSure]),
        trial(3, 41.5, true, &[Wobbling, Steady, Steady]),
        trial(4, 150.0, false, &[Steady; 4]),
    ]
}

/// A dot is above its trial's separation, in the row that is named what was seen, full
/// where the separation was measured.
#[test]
fn dots_of_the_trials_are_read_on_their_axis() {
    for units in [Units::METRIC, Units::INCH] {
        for width in [300.0, 420.0, 700.0, 900.0] {
            let trials = trials();
            let scene = trial_chart(&trials, units, width).unwrap();
            let axis = group(&scene, "axis");
            let lines = grid(axis);
            let all = texts(axis);
            let numbers = all.iter().filter_map(|text| Some((text.0.x, number(text.1)?)));
            let ruler = Axis::new(&upright(&lines), numbers, 0.0);
            let items = group(&scene, "dots");
            let mut names: Vec<(f64, &str)> = all
                .iter()
                .filter(|text| {
                    [Steady, Wobbling, Sideways, TailFirst, NotSure]
                        .iter()
                        .any(|outcome| outcome_name(*outcome) == *text.1)
                })
                .map(|text| (text.0.y, text.1))
                .collect();
            names.sort_by(|a, b| a.0.total_cmp(&b.0));
            assert_eq!(names.len(), 5);
            let mut edges = level(&lines);
            edges.sort_by(f64::total_cmp);
            let mut seen: Vec<(String, String)> = Vec::new();
            for pair in items.windows(2) {
                let [Item::Dot { centre, style, .. }, Item::Text { at, words, .. }] =
                    pair
                else {
                    continue;
                };
                assert!(at.x == centre.x && (at.y - 4.5 - centre.y).abs() < 1e-9);
                let trial = trials.iter().find(|trial| trial.label == *words).unwrap();
                let separation = trial.separation_mm / units.mm_per_unit();
                ruler.holds(centre.x, separation, words);
                let fill = if trial.measured { Colour::Ink } else { Colour::Sheet };
                assert_eq!(style.fill, Some(fill), "{words}");
                // Beside its row a name is between the row's edges; above it, it is the
                // last name above the dot.
                let row = if edges.len() == 5 {
                    edges.iter().filter(|&&edge| edge < centre.y).count()
                } else {
                    names.iter().filter(|(y, _)| *y < centre.y).count()
                };
                if edges.len() == 5 {
                    assert!(names[row - 1].0 > edges[row - 1]);
                    assert!(edges.get(row).is_none_or(|&edge| names[row - 1].0 < edge));
                }
                seen.push((words.clone(), names[row - 1].1.to_owned()));
            }
            let mut expected: Vec<(String, String)> = trials
                .iter()
                .flat_map(|trial| {
                    let seen = trial.outcomes.iter();
                    seen.map(|o| (trial.label.clone(), String::from(outcome_name(*o))))
                })
                .collect();
            seen.sort();
            expected.sort();
            assert_eq!(seen, expected, "{width}");
        }
    }
}

/// The ends of a trial's range, by the axis.
#[test]
fn ranges_of_the_trials_are_read_on_their_axis() {
    for width in [420.0, 900.0] {
        let trials = trials();
        let scene = trial_chart(&trials, Units::METRIC, width).unwrap();
        let axis = group(&scene, "axis");
        let all = texts(axis);
        let numbers = all.iter().filter_map(|text| Some((text.0.x, number(text.1)?)));
        let ruler = Axis::new(&upright(&grid(axis)), numbers, 0.0);
        let mut told: Vec<(f64, f64)> = Vec::new();
        for (path, _) in paths(group(&scene, "dots")) {
            let line = &path.runs[0].0;
            told.push((ruler.read(line[0].x), ruler.read(line[1].x)));
        }
        // One in each row in which the trial was seen.
        assert_eq!(told.len(), 4, "{told:?}");
        for (from, to) in told {
            let is_of = |trial: &ChartTrial<'_>| {
                let (least, most) = trial.range_mm.unwrap_or((f64::NAN, f64::NAN));
                (from - least).abs() < 0.1 && (to - most).abs() < 0.1
            };
            assert!(trials.iter().any(is_of), "{from} to {to}");
        }
    }
}

/// Dots, bars and diamonds at their separation, each by its own trial.
#[test]
fn marks_of_the_series_are_read_on_their_axis() {
    let trial = |n: u32, measured_mm: Option<f64>, computed_mm| SeriesTrial {
        label: n.to_string(),
        measured_mm: measured_mm.map(|mm| (mm, mm - 6.0, mm + 13.0)),
        computed_mm,
    };
    let trials = [
        trial(1, Some(-42.0), Some(-31.0)),
        trial(2, None, Some(12.5)),
        trial(3, Some(57.0), None),
        trial(4, Some(88.5), Some(101.0)),
    ];
    for units in [Units::METRIC, Units::INCH] {
        for width in [300.0, 700.0] {
            let scene = trial_series(&trials, units, width).unwrap();
            let axis = group(&scene, "axis");
            let lines = level(&grid(axis));
            let foot = lines.iter().copied().fold(0.0, f64::max);
            let all = texts(axis);
            let numbers = all.iter().filter(|text| text.0.y < foot + 8.0);
            let numbers = numbers.filter_map(|text| Some((text.0.y, number(text.1)?)));
            let ruler = Axis::new(&lines, numbers, 4.5);
            let names: Vec<_> = all
                .iter()
                .filter(|text| text.0.y > foot + 8.0 && number(text.1).is_some())
                .collect();
            let named = |x: f64| {
                let near = names
                    .iter()
                    .min_by(|a, b| (a.0.x - x).abs().total_cmp(&(b.0.x - x).abs()));
                let name = near.unwrap().1;
                trials.iter().find(|trial| trial.label == name).unwrap()
            };
            let unit_mm = units.mm_per_unit();
            let marks = group(&scene, "marks");
            let measured = dots(marks);
            assert_eq!(measured.len(), 3);
            for (centre, ..) in measured {
                let trial = named(centre.x);
                let (mm, ..) = trial.measured_mm.expect("it was measured");
                ruler.holds(centre.y, mm / unit_mm, &trial.label);
            }
            let (mut bars, mut diamonds) = (0, 0);
            for (path, _) in paths(marks) {
                if path.runs[0].1 {
                    let ys: Vec<f64> = points(path).map(|p| p.y).collect();
                    let xs: Vec<f64> = points(path).map(|p| p.x).collect();
                    let middle = |v: &[f64]| {
                        let low = v.iter().copied().fold(f64::MAX, f64::min);
                        f64::midpoint(low, v.iter().copied().fold(f64::MIN, f64::max))
                    };
                    let trial = named(middle(&xs));
                    let mm = trial.computed_mm.expect("it was computed");
                    ruler.holds(middle(&ys), mm / unit_mm, &trial.label);
                    diamonds += 1;
                } else {
                    let line = &path.runs[0].0;
                    let trial = named(line[0].x);
                    let (_, least, most) = trial.measured_mm.expect("it was measured");
                    ruler.holds(line[0].y, most / unit_mm, &trial.label);
                    ruler.holds(line[1].y, least / unit_mm, &trial.label);
                    bars += 1;
                }
            }
            assert_eq!((bars, diamonds), (3, 3));
        }
    }
}

/// Four modules of white at every side, as ISO/IEC 18004 asks for (text not read; the
/// segno library has four too).
#[test]
fn a_symbol_keeps_its_quiet_zone() {
    for code in ["R1 ABC", &"A1".repeat(400)] {
        let svg = qr(Some("https://rockets.school.test/"), code).unwrap();
        let after = |from: &str| &svg[svg.find(from).unwrap() + from.len()..];
        let size: i32 =
            after("viewBox=\"0 0 ").split(' ').next().unwrap().parse().unwrap();
        let white = format!("fill=\"#fff\" d=\"M0 0h{size}v{size}h-{size}z\"");
        assert!(svg.contains(&white), "{svg}");
        let dark = after("fill=\"#000\" d=\"M").split('"').next().unwrap();
        let (mut xs, mut ys) = (Vec::new(), Vec::new());
        for run in dark.split('M') {
            let (x, rest) = run.split_once(' ').unwrap();
            let (y, rest) = rest.split_once('h').unwrap();
            let (length, _) = rest.split_once('v').unwrap();
            let [x, y, length] = [x, y, length].map(|n| n.parse::<i32>().unwrap());
            xs.extend([x, x + length]);
            ys.extend([y, y + 1]);
        }
        for edge in [xs, ys] {
            assert_eq!(edge.iter().min(), Some(&4));
            assert_eq!(edge.iter().max(), Some(&(size - 4)));
        }
    }
}
