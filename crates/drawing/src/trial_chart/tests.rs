use noseward_lesson::SwingOutcome::{
    NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling,
};

use super::*;
use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
use crate::names::outcome_name;

const WIDTHS: [f64; 6] = [300.0, 320.0, 420.0, 519.0, 700.0, 900.0];

fn trial<'a>(
    number: u32,
    separation_mm: f64,
    measured: bool,
    outcomes: &'a [SwingOutcome],
) -> ChartTrial<'a> {
    ChartTrial {
        label: number.to_string(),
        separation_mm,
        calibre_mm: 88.0,
        measured,
        range_mm: measured.then_some((separation_mm - 7.0, separation_mm + 9.0)),
        outcomes,
    }
}

/// Twelve trials of three swings, many of them in one place.
fn crowded() -> Vec<ChartTrial<'static>> {
    (1..=12)
        .map(|number| {
            let separation_mm = if number % 3 == 0 { 46.0 } else { f64::from(number) };
            let outcomes: &[SwingOutcome] = match number % 4 {
                0 => &[Steady; 3],
                1 => &[Steady, Wobbling, Steady],
                2 => &[Steady, Slipped, NotSure, TailFirst],
                _ => &[Sideways, Steady, Wobbling],
            };
            trial(number, separation_mm, number % 2 == 0, outcomes)
        })
        .collect()
}

fn charts() -> Vec<Vec<ChartTrial<'static>>> {
    let mut far = crowded();
    far[0].separation_mm = 1_234.0;
    far[0].label = "1234".into();
    let mut thin = crowded();
    thin.iter_mut().for_each(|trial| trial.calibre_mm = 3.0);
    let negative: Vec<_> = (1..=5)
        .map(|n| trial(n, -31.0 * f64::from(n), n > 2, &[TailFirst, Sideways]))
        .collect();
    let mut unwieldy = vec![trial(1, 20.0, false, &[])];
    unwieldy[0].calibre_mm = f64::NAN;
    vec![
        crowded(),
        far,
        thin,
        negative,
        unwieldy,
        vec![trial(1, 30.0, true, &[Steady])],
        vec![trial(1, 0.0, false, &[NotSure; 3]), trial(2, 320.0, true, &[Steady; 3])],
    ]
}

/// The dots of a scene, each with the label in it, in the order in which they are drawn.
fn drawn(scene: &Scene) -> Vec<(Point, f64, Style, String)> {
    let dots = scene.groups.iter().find(|group| group.key == "dots");
    let items = &dots.expect("a chart has dots").items;
    let mut found = Vec::new();
    for pair in items.windows(2) {
        if let [Item::Dot { centre, radius, style }, Item::Text { words, .. }] = pair {
            found.push((*centre, *radius, *style, words.clone()));
        }
    }
    found
}

fn texts(scene: &Scene) -> Vec<(Point, String)> {
    scene
        .groups
        .iter()
        .flat_map(|group| &group.items)
        .filter_map(|item| match item {
            Item::Text { at, words, .. } => Some((*at, words.clone())),
            _ => None,
        })
        .collect()
}

#[test]
fn words_stay_clear_of_lines_and_of_each_other() {
    for (i, trials) in charts().iter().enumerate() {
        for units in [Units::METRIC, Units::INCH] {
            for width in WIDTHS {
                let scene = trial_chart(trials, units, width).unwrap();
                let which = format!("chart {i} at {width} in {}", units.length_unit());
                words_keep_apart(&scene, &which);
                lines_miss_words(&scene, &["dots"], &which);
                let keys: Vec<_> = scene.groups.iter().map(|g| g.key).collect();
                assert_eq!(keys, ["axis", "dots", "legend"]);
            }
        }
    }
}

#[test]
fn every_swing_that_counts_has_a_dot_above_its_separation() {
    for trials in charts() {
        for width in WIDTHS {
            let scene = trial_chart(&trials, Units::METRIC, width).unwrap();
            let dots = drawn(&scene);
            let count: usize = trials
                .iter()
                .map(|t| t.outcomes.iter().filter(|o| o.counts()).count())
                .sum();
            assert_eq!(dots.len(), count);
            // One scale, told by the numbers of the axis themselves.
            let numbers: Vec<(f64, f64)> = texts(&scene)
                .iter()
                .filter_map(|(at, words)| {
                    Some((words.replace('−', "-").parse().ok()?, at))
                        .filter(|(_, at)| {
                            !dots.iter().any(|d| at.x == d.0.x && at.y == d.0.y + 4.5)
                        })
                        .map(|(mm, at): (f64, &Point)| (mm, at.x))
                })
                .collect();
            let (first, last) = (numbers[0], numbers[numbers.len() - 1]);
            assert!(last.0 > first.0, "{numbers:?}");
            let px_per_mm = (last.1 - first.1) / (last.0 - first.0);
            for (centre, _, style, label) in dots {
                let trial = trials.iter().find(|t| t.label == label).unwrap();
                let mm = first.0 + (centre.x - first.1) / px_per_mm;
                assert!((mm - trial.separation_mm).abs() < 1e-6, "{label} at {mm}");
                assert_eq!(style.fill == Some(Colour::Ink), trial.measured);
            }
        }
    }
}

#[test]
fn dots_do_not_overlap_and_ranges_go_through_no_other_dot() {
    for trials in charts() {
        for width in WIDTHS {
            let scene = trial_chart(&trials, Units::METRIC, width).unwrap();
            let dots = drawn(&scene);
            for (i, (a, radius, ..)) in dots.iter().enumerate() {
                for (b, ..) in &dots[i + 1..] {
                    let apart = libm::hypot(a.x - b.x, a.y - b.y);
                    // Both outlines are two pixels wide.
                    assert!(apart >= 2.0 * radius + 2.0, "{a:?} {b:?} at {width}");
                }
            }
            let mut ranges = 0;
            for item in &scene.groups[1].items {
                let Item::Path { path, .. } = item else { continue };
                let ends = &path.runs[0].0;
                ranges += 1;
                let through = dots.iter().filter(|(c, radius, ..)| {
                    (c.y - ends[0].y).abs() < *radius
                        && c.x + radius > ends[0].x
                        && c.x - radius < ends[1].x
                });
                assert_eq!(through.count(), 1, "{ends:?} at {width}");
            }
            // On the wide sheet some ranges are wider than their dots.
            let some = trials.len() == 12 && trials[0].separation_mm < 100.0;
            assert!(ranges > 0 || !some || width < 700.0);
        }
    }
}

#[test]
fn dots_stand_in_the_row_of_what_was_seen() {
    let outcomes = [NotSure, TailFirst, Sideways, Wobbling, Steady];
    let trials: Vec<_> = (0..5_u32)
        .map(|i| {
            let seen = &outcomes[i as usize..=i as usize];
            trial(i + 1, 40.0, true, seen)
        })
        .collect();
    for width in WIDTHS {
        let scene = trial_chart(&trials, Units::METRIC, width).unwrap();
        let mut dots = drawn(&scene);
        dots.sort_by(|a, b| a.0.y.total_cmp(&b.0.y));
        let labels: Vec<&str> = dots.iter().map(|d| d.3.as_str()).collect();
        assert_eq!(labels, ["5", "4", "3", "2", "1"]);
        let names: Vec<(Point, String)> = texts(&scene)
            .into_iter()
            .filter(|(_, words)| ROWS.iter().any(|row| outcome_name(*row) == **words))
            .collect();
        assert_eq!(names.len(), 5);
        for ((name, words), dot) in names.iter().zip(&dots) {
            let off = dot.0.y - name.y;
            let beside = width >= 520.0 && (-6.0..0.0).contains(&off);
            let under = width < 520.0 && (10.0..24.0).contains(&off);
            assert!(beside || under, "{words} is {off} off at {width}");
        }
    }
}

#[test]
fn every_outcome_that_counts_has_a_row() {
    let counted = SwingOutcome::ALL.into_iter().filter(|outcome| outcome.counts());
    assert!(counted.eq(ROWS));
}

#[test]
fn nothing_joins_two_dots() {
    let trials: Vec<_> =
        (1..=4).map(|n| trial(n, 15.0 * f64::from(n), false, &[Steady; 3])).collect();
    let scene = trial_chart(&trials, Units::METRIC, 700.0).unwrap();
    let paths = scene.groups[1].items.iter().filter(|i| matches!(i, Item::Path { .. }));
    assert_eq!(paths.count(), 0);
}

#[test]
fn the_band_goes_from_one_to_two_body_widths() {
    let mut trials = vec![
        trial(1, 10.0, true, &[Steady]),
        trial(2, 20.0, true, &[Steady]),
        trial(3, 30.0, true, &[Steady]),
    ];
    trials[0].calibre_mm = 300.0;
    trials[1].calibre_mm = 60.0;
    trials[2].calibre_mm = 66.0;
    let refs: Vec<_> = trials.iter().collect();
    assert_eq!(median_mm(&refs), Some(66.0));
    assert_eq!(median_mm(&refs[1..]), Some(63.0));
    for width in WIDTHS {
        let scene = trial_chart(&trials, Units::METRIC, width).unwrap();
        let scale = scale(&refs, width, dots::radius_px(&refs) + PADDING);
        let edges = scene.groups[0].items.iter().find_map(|item| match item {
            Item::Path { path, style } if !style.dashes.is_empty() => Some(path),
            _ => None,
        });
        let xs: Vec<f64> =
            edges.unwrap().runs.iter().map(|(points, _)| points[0].x).collect();
        assert_eq!(xs, [scale.px(66.0), scale.px(132.0)]);
        let named =
            texts(&scene).iter().filter(|(_, words)| *words == BAND.as_str()).count();
        assert_eq!(named, 1, "{width}");
    }
}

#[test]
fn without_a_trial_there_is_no_chart() {
    assert_eq!(trial_chart(&[], Units::METRIC, 700.0), None);
    for bad in [f64::NAN, f64::INFINITY, -1e300] {
        let trials = [trial(1, bad, true, &[Steady])];
        assert_eq!(trial_chart(&trials, Units::METRIC, 700.0), None);
        assert_eq!(trial_chart_words(&trials, Units::METRIC), "");
    }
}

#[test]
fn a_blank_chart_has_rows_and_no_number() {
    for units in [Units::METRIC, Units::INCH] {
        for width in WIDTHS {
            for height in [100.0, 300.0, 640.0] {
                let scene = trial_chart_blank(width, height, units);
                let which = format!("blank, {width} by {height}");
                words_keep_apart(&scene, &which);
                lines_miss_words(&scene, &[], &which);
                assert!(scene.height == height || height < 320.0, "{which}");
                let words = texts(&scene);
                assert!(
                    words.iter().all(|(_, w)| !w.contains(|c: char| c.is_ascii_digit()))
                );
                let rows = ROWS.iter().filter(|row| {
                    words.iter().any(|(_, words)| **words == *outcome_name(**row))
                });
                assert_eq!(rows.count(), 5);
            }
        }
    }
}

#[test]
fn words_tell_rows_places_and_the_band() {
    let trials = [
        trial(1, 20.2, true, &[Steady, Slipped, Steady]),
        trial(2, 46.0, false, &[Steady, TailFirst]),
        trial(3, -12.0, false, &[TailFirst]),
    ];
    assert_eq!(
        trial_chart_words(&trials, Units::METRIC),
        "Three dots in the row nose first, steady, from 20 to 46 mm: 2 measured, \
         1 computed. Two dots in the row tail first, from −12 to 46 mm: computed. Common \
         practice, 1 to 2 body widths, goes from 88 to 176 mm."
    );
    assert_eq!(
        trial_chart_words(&trials[2..], Units::INCH),
        "One dot in the row tail first, at −0.47 in: computed. Common practice, 1 to 2 \
         body widths, goes from 3.46 to 6.93 in."
    );
    let none = [trial(1, 20.0, true, &[Slipped])];
    assert!(trial_chart_words(&none, Units::METRIC).starts_with("No swing yet."));
}

#[test]
fn there_is_room_in_german_and_arabic() {
    in_languages(&words_stay_clear_of_lines_and_of_each_other);
}
