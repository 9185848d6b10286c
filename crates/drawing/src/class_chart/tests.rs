use std::cell::Cell;

use noseward_lesson::{Band, turning_point};

use super::*;
use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
use crate::goldens::{class_seen, class_trials};
use crate::plot::{hatch_edge_style, hatch_style};
use crate::scene::Path;

const WIDTHS: [f64; 6] = [300.0, 328.0, 420.0, 520.0, 700.0, 1300.0];
const HEIGHTS: [f64; 3] = [120.0, 300.0, 500.0];

fn trial(separation: f64, nose_first: Option<bool>) -> ClassTrial {
    ClassTrial { separation, nose_first, ..ClassTrial::default() }
}

/// Classes of every kind, by what is found in them and by how many they are.
fn classes() -> Vec<Vec<ClassTrial>> {
    let mut parted = class_trials(30);
    parted.iter_mut().for_each(|t| t.nose_first = Some(t.separation > 20.0));
    let mut met = parted.clone();
    met.extend([trial(20.0, Some(true)), trial(20.0, Some(false))]);
    let mut falling = class_trials(48);
    falling.iter_mut().for_each(|t| t.separation *= -1.0);
    let mut one_sided = class_trials(20);
    one_sided.iter_mut().for_each(|t| t.nose_first = Some(false));
    let mut unclear = class_trials(20);
    unclear.iter_mut().for_each(|t| t.nose_first = None);
    let in_one_place = |count| vec![trial(31.0, Some(true)); count];
    let mut open = vec![trial(1.0, Some(false)), trial(2.0, Some(true))];
    open.extend((0..8_u32).map(|k| trial(f64::from(k), Some(k % 2 == 0))));
    let mut far = class_trials(12);
    far.push(trial(-9_999.0, Some(false)));
    vec![
        class_trials(48),
        class_trials(160),
        class_trials(1_000),
        parted,
        met,
        falling,
        one_sided,
        unclear,
        in_one_place(1),
        in_one_place(12),
        in_one_place(390),
        in_one_place(500),
        open,
        far,
        Vec::new(),
    ]
}

fn chart<'a>(
    trials: &'a [ClassTrial],
    found: &'a Result<TurningPoint, NoTurningPoint>,
    (width_px, height_px): (f64, f64),
) -> ClassChart<'a> {
    ClassChart {
        trials,
        unit: SeparationUnit::Length(Units::METRIC),
        measured: true,
        body_width: Some(88.0),
        found: Some(found),
        invented: false,
        width_px,
        height_px,
    }
}

fn items<'a>(scene: &'a Scene, key: &str) -> &'a [Item] {
    let found = scene.groups.iter().find(|group| group.key == key);
    &found.expect("it has such a group").items
}

fn each_chart(check: impl Fn(&ClassChart<'_>, &str)) {
    for (i, trials) in classes().iter().enumerate() {
        let found = turning_point(&class_seen(&trials[..trials.len().min(60)]));
        for width in WIDTHS {
            for height in HEIGHTS {
                let mut chart = chart(trials, &found, (width, height));
                check(&chart, &format!("{i} at {width} by {height}"));
                chart.unit = SeparationUnit::BodyWidths;
                (chart.body_width, chart.invented) = (Some(1.0), true);
                check(&chart, &format!("{i} in body widths at {width} by {height}"));
                chart.unit = SeparationUnit::Length(Units::INCH);
                (chart.body_width, chart.measured) = (None, false);
                check(&chart, &format!("{i} in inches at {width} by {height}"));
            }
        }
    }
}

#[test]
fn words_stay_clear_of_lines_and_of_each_other() {
    each_chart(|chart, which| {
        let scene = class_chart(chart);
        words_keep_apart(&scene, which);
        // Words among the marks stand on plates.
        lines_miss_words(&scene, &["marks"], which);
        let keys: Vec<_> = scene.groups.iter().map(|group| group.key).collect();
        assert_eq!(keys, ["axis", "found", "marks", "legend"]);
        assert!(scene.height >= chart.height_px, "{which}");
    });
}

#[test]
fn there_is_room_in_german_and_arabic() {
    in_languages(&words_stay_clear_of_lines_and_of_each_other);
}

/// Middle and half the width of every mark, without rings.
fn marks(scene: &Scene) -> Vec<(Point, f64)> {
    let of = |item: &Item| match item {
        Item::Dot { centre, radius, style } if style.fill.is_some() => {
            Some((*centre, *radius))
        }
        Item::Path { path, style } if style.stroke.is_some() => {
            let corners = &path.runs[0].0;
            let half = (corners[1].x - corners[0].x) / 2.0;
            let centre = Point { x: corners[0].x + half, y: corners[0].y + half };
            Some((centre, half))
        }
        _ => None,
    };
    items(scene, "marks").iter().filter_map(of).collect()
}

fn is_counted(scene: &Scene) -> bool {
    let what: String = words::class_chart_bars().into();
    let is_it = |item: &Item| matches!(item, Item::Text { words, .. } if *words == what);
    items(scene, "axis").iter().any(is_it)
}

#[test]
fn no_mark_hides_another() {
    let stood_alone = Cell::new(0);
    each_chart(|chart, which| {
        let scene = class_chart(chart);
        if is_counted(&scene) {
            return;
        }
        stood_alone.set(stood_alone.get() + 1);
        let marks = marks(&scene);
        assert_eq!(marks.len(), chart.shown().count(), "{which}");
        for (i, (a, half)) in marks.iter().enumerate() {
            for (b, other) in &marks[i + 1..] {
                let apart = libm::hypot(a.x - b.x, a.y - b.y);
                assert!(apart >= half + other + 1.5, "{which}: {a:?} {b:?}");
            }
        }
    });
    assert!(stood_alone.get() > 500, "{}", stood_alone.get());
}

/// Nose-first ones above 100 %, the others under 0 %, and what is not clear between.
#[test]
fn marks_stand_in_their_row_outside_of_the_curve() {
    each_chart(|chart, which| {
        let scene = class_chart(chart);
        if is_counted(&scene) {
            return;
        }
        let edges = items(&scene, "axis").iter().find_map(|item| match item {
            Item::Path { path, style } if *style == rows::edge_style() => Some(path),
            _ => None,
        });
        let ys: Vec<f64> = edges.unwrap().runs.iter().map(|(run, _)| run[0].y).collect();
        let [top, full, none, hang] = ys[..] else { panic!("{ys:?}") };
        let bottom = items(&scene, "axis").iter().find_map(|item| match item {
            Item::Path { path, style } if *style == rows::axis_style() => {
                Some(path.runs[0].0[0].y)
            }
            _ => None,
        });
        for ((at, half), (_, trial)) in marks(&scene).iter().zip(chart.shown()) {
            let (from, to) = match trial.nose_first {
                Some(true) => (top, full),
                None => (full, none),
                Some(false) => (hang, bottom.unwrap()),
            };
            assert!(at.y - half > from && at.y + half < to, "{which}: {trial:?} {at:?}");
        }
    });
}

#[test]
fn a_ring_is_round_each_marked_one_and_touches_no_other() {
    let trials = class_trials(48);
    let found = turning_point(&class_seen(&trials));
    for width in WIDTHS {
        let scene = class_chart(&chart(&trials, &found, (width, 420.0)));
        let rings = items(&scene, "marks").iter().filter_map(|item| match item {
            Item::Dot { centre, radius, style } if style.fill.is_none() => {
                Some((*centre, *radius))
            }
            _ => None,
        });
        let rings: Vec<_> = rings.collect();
        let marks = marks(&scene);
        let marked: Vec<Point> = marks
            .iter()
            .zip(&trials)
            .filter_map(|((at, _), trial)| trial.marked.then_some(*at))
            .collect();
        assert_eq!(marked.len(), 3);
        assert!(rings.iter().map(|(at, _)| *at).eq(marked), "{width}");
        for (ring, radius) in rings {
            let others = marks.iter().filter(|(at, _)| *at != ring);
            for (at, half) in others {
                let apart = libm::hypot(at.x - ring.x, at.y - ring.y);
                assert!(apart > radius + half, "{width}: {ring:?} {at:?}");
            }
        }
    }
}

/// Every group's label stands once, beside its own mark, where there is room; else none does.
#[test]
fn labels_stand_beside_their_marks_or_not_at_all() {
    let trials = class_trials(48);
    let found = turning_point(&class_seen(&trials));
    for (width, height, are_named) in
        [(1300.0, 420.0, true), (700.0, 600.0, true), (328.0, 300.0, false)]
    {
        let scene = class_chart(&chart(&trials, &found, (width, height)));
        let marks = marks(&scene);
        let labels = items(&scene, "marks").iter().filter_map(|item| match item {
            Item::Text { at, words, anchor, .. } => Some((*at, words, *anchor)),
            _ => None,
        });
        let labels: Vec<_> = labels.collect();
        assert_eq!(labels.len(), if are_named { 48 } else { 0 }, "{width}");
        for (((mark, half), trial), (at, words, anchor)) in
            marks.iter().zip(&trials).zip(labels)
        {
            assert_eq!(*words, trial.label);
            let off = if anchor == Anchor::Start { at.x - mark.x } else { mark.x - at.x };
            assert!(off > *half && off < half + 9.0, "{words} at {width}");
            assert!((at.y - mark.y - 4.5).abs() < 1e-9, "{words} at {width}");
        }
    }
}

/// The numbers on the bars, with their places.
fn numbers(scene: &Scene) -> Vec<(Point, u32)> {
    let of = |item: &Item| match item {
        Item::Text { at, words, .. } => Some((*at, words.parse().unwrap())),
        _ => None,
    };
    items(scene, "marks").iter().filter_map(of).collect()
}

#[test]
fn of_ten_thousand_each_is_counted_once_and_the_chart_stays_light() {
    let trials = class_trials(10_000);
    let found = turning_point(&class_seen(&trials[..100]));
    for size in [(300.0, 120.0), (328.0, 420.0), (1300.0, 420.0)] {
        let scene = class_chart(&chart(&trials, &found, size));
        assert!(is_counted(&scene), "{size:?}");
        let all: usize = scene.groups.iter().map(|group| group.items.len()).sum();
        assert!(all < 400, "{all} at {size:?}");
        assert!(crate::svg_document(&scene, None).len() < 100_000, "{size:?}");
        let sum: u32 = numbers(&scene).iter().map(|(_, count)| count).sum();
        assert_eq!(sum, 10_000, "{size:?}");
    }
}

#[test]
fn all_in_one_place_are_stacked_and_counted_where_they_are_too_many() {
    let found = turning_point(&[]);
    for count in [12, 390, 500] {
        let trials = vec![trial(31.0, Some(true)); count];
        let scene = class_chart(&chart(&trials, &found, (700.0, 420.0)));
        assert_eq!(is_counted(&scene), count > 12);
        if count == 12 {
            let marks = marks(&scene);
            assert!(marks.iter().all(|(at, _)| at.x == marks[0].0.x));
        } else {
            let numbers = numbers(&scene);
            assert_eq!(numbers.len(), 1);
            assert_eq!(numbers[0].1 as usize, count);
        }
    }
}

#[test]
fn one_trial_is_one_mark_and_none_is_said() {
    let found = turning_point(&[]);
    for size in [(300.0, 120.0), (700.0, 420.0)] {
        let one = [trial(-12.0, Some(false))];
        assert_eq!(marks(&class_chart(&chart(&one, &found, size))).len(), 1);
        let bad = [trial(f64::NAN, Some(true)), trial(-1e300, None)];
        for trials in [&[][..], &bad] {
            let scene = class_chart(&chart(trials, &found, size));
            let none: String = words::class_chart_none().into();
            let said = items(&scene, "marks").iter().filter(
                |item| matches!(item, Item::Text { words, .. } if *words == none),
            );
            assert_eq!((said.count(), marks(&scene).len()), (1, 0));
        }
    }
}

#[test]
fn only_what_was_found_is_drawn() {
    let counts = |trials: &[ClassTrial]| {
        let found = turning_point(&class_seen(trials));
        let chart = chart(trials, &found, (700.0, 420.0));
        let scene = class_chart(&ClassChart { body_width: None, ..chart });
        let of = |style: Style| {
            let is_it = |item: &&Item| matches!(item, Item::Path { style: other, .. } if *other == style);
            items(&scene, "found").iter().filter(is_it).count()
        };
        let styles = [found::curve_style(), found::turning_style(), hatch_style()];
        styles.map(of)
    };
    let classes = classes();
    assert_eq!(counts(&classes[0]), [1, 1, 1], "a curve");
    assert_eq!(counts(&classes[3]), [0, 0, 1], "a gap");
    assert_eq!(counts(&classes[6]), [0, 0, 0], "all went one way");
    assert_eq!(counts(&classes[12]), [1, 1, 0], "a band without an end");
    assert_eq!(counts(&[]), [0, 0, 0]);
}

/// Where half fly nose-first is far from all trials, the axis stays theirs.
#[test]
fn a_turning_point_far_off_does_not_stretch_the_axis() {
    let trials: Vec<_> =
        (0..40_u32).map(|k| trial(f64::from(k), Some(k % 9 == 0))).collect();
    let found = turning_point(&class_seen(&trials));
    assert!(found.as_ref().unwrap().at.abs() > 100.0, "{found:?}");
    let chart = ClassChart { body_width: None, ..chart(&trials, &found, (700.0, 420.0)) };
    let reach = chart.scale(0.0, 500.0).reach;
    assert_eq!((reach.least_mm, reach.most_mm), (0.0, 40.0));
    let scene = class_chart(&chart);
    let lines: Vec<&Path> = items(&scene, "found")
        .iter()
        .filter_map(|item| match item {
            Item::Path { path, style } if *style == found::turning_style() => Some(path),
            _ => None,
        })
        .collect();
    assert_eq!(lines, Vec::<&Path>::new());
}

#[test]
fn what_is_invented_says_so_in_the_picture() {
    let trials = class_trials(12);
    let found = turning_point(&class_seen(&trials));
    let said: String = words::class_chart_invented().into();
    for invented in [true, false] {
        let chart = chart(&trials, &found, (328.0, 420.0));
        let scene = class_chart(&ClassChart { invented, ..chart });
        let says = items(&scene, "axis").iter().any(
            |item| matches!(item, Item::Text { words, bold: true, .. } if *words == said),
        );
        assert_eq!(says, invented);
    }
}

#[test]
fn numbers_on_bars_keep_apart_whatever_the_width() {
    let trials = class_trials(10_000);
    let few = class_trials(900);
    let found = turning_point(&class_seen(&trials[..100]));
    for width in (0..30).map(|k| 300.0 + 40.0 * f64::from(k)) {
        for trials in [&trials, &few] {
            let scene = class_chart(&chart(trials, &found, (width, 420.0)));
            assert!(is_counted(&scene));
            words_keep_apart(&scene, &format!("{} at {width}", trials.len()));
        }
    }
}

/// Where half fly nose-first is seen if it is not far from the trials, and a band that goes on
/// beyond the axis is hatched up to there, without an end.
#[test]
fn the_axis_goes_to_the_turning_point_and_its_band_to_the_axis() {
    let trials = class_trials(48);
    let found = turning_point(&class_seen(&trials)).unwrap();
    for at in [-120.0, 31.0, 150.0] {
        let band = Band::Between { least: -1e6, most: 1e6 };
        let found = Ok(TurningPoint { at, band, ..found });
        let chart = chart(&trials, &found, (700.0, 420.0));
        let (left, right) = rows::sides_px(&chart);
        let reach = chart.scale(left, right).reach;
        assert!(reach.least_mm <= at && at <= reach.most_mm, "{at}: {reach:?}");
        let scene = class_chart(&chart);
        let xs = |wanted: Style| -> Vec<f64> {
            let of = |item: &Item| match item {
                Item::Path { path, style } if *style == wanted => Some(path.clone()),
                _ => None,
            };
            let paths = items(&scene, "found").iter().filter_map(of);
            let runs = paths.flat_map(|path| path.runs);
            runs.flat_map(|(run, _)| run).map(|point| point.x).collect()
        };
        assert_eq!(xs(found::turning_style()).len(), 2, "{at}");
        assert!(xs(hatch_edge_style()).is_empty());
        let xs = xs(hatch_style());
        let (least, most) =
            xs.iter().fold((f64::MAX, f64::MIN), |(a, b), &x| (a.min(x), b.max(x)));
        assert!((least - left).abs() < 10.0 && least >= left, "{least} for {left}");
        assert!((most - right).abs() < 10.0 && most <= right, "{most} for {right}");
    }
}

/// A gap without a width is told as one place.
#[test]
fn a_gap_is_named_by_its_ends_or_by_its_only_place() {
    for (class, said) in
        [(3, "half fly nose-first at 17 to 28 mm"), (4, "half fly nose-first at 20 mm")]
    {
        let trials = &classes()[class];
        let found = turning_point(&class_seen(trials));
        let chart = chart(trials, &found, (700.0, 420.0));
        let (left, right) = rows::sides_px(&chart);
        let (_, words) = found::named(&chart, &chart.scale(left, right)).unwrap();
        assert_eq!(words, said);
    }
}
