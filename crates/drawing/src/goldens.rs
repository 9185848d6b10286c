//! Every drawing as it was when a person last looked at it, down to a hundredth of a pixel.
//!
//! A difference fails. After a change that is meant, `INSTA_UPDATE=always` writes the
//! pictures anew; `target/drawings.html` shows them all.

use std::fmt::Write as _;
use std::path::Path as FilePath;

use noseward_lesson::SwingOutcome::{NotSure, Sideways, Steady, TailFirst, Wobbling};
use noseward_lesson::{Seen, turning_point};
use noseward_stability::{
    Design, Example, Figures, FinSet, Mass, MeasuredPoint, MeasuredPoints, Planform,
    Section, SectionKind, Settles, StartRange, Swing, SwingSetup, Turning, Units, Weight,
    evaluate, evaluate_measured,
};

use crate::{
    AirSheet, ChartTrial, ClassChart, ClassTrial, LabelStyle, Picture, Scene,
    SeparationUnit, SeriesTrial, Sheet, SwingCurve, Told, agreement_chart, air_graph,
    class_chart, pair, picture, push_bars, qr, rocket, start_strip, svg_document,
    swing_circle, swing_graph, swing_rocket, trial_chart, trial_chart_blank,
    trial_series, turned_rocket,
};

/// A picture by its name.
type Golden = (String, String);

fn golden(name: &str, scene: &Scene) -> Golden {
    (name.to_owned(), svg_document(scene, None))
}

fn whole(design: &Design) -> Figures {
    let report = evaluate(design);
    report.figures.unwrap_or_else(|| panic!("{}: {:?}", design.name, report.faults))
}

fn section(kind: SectionKind, length_mm: f64, diameter_mm: Option<f64>) -> Section {
    let mass = Mass::WeighedG(length_mm / 8.0);
    Section { kind, length_mm, diameter_mm, closed_front: false, mass }
}

fn fins(count: u32, start_mm: f64, roll_deg: f64, size_mm: f64) -> FinSet {
    FinSet {
        count,
        start_mm,
        roll_deg,
        planform: Planform::FourSided {
            root_mm: size_mm,
            tip_mm: size_mm * 0.5,
            span_mm: size_mm * 0.7,
            sweep_mm: size_mm * 0.4,
        },
        mass: Mass::WeighedG(size_mm / 10.0),
    }
}

/// As many parts as a design may have.
pub(crate) fn crowded() -> Design {
    let mut sections = vec![section(SectionKind::Ogive, 90.0, Some(40.0))];
    for k in 0..5_u32 {
        let wide = 52.0 + 12.0 * f64::from(k % 3);
        sections.push(section(SectionKind::RoundedTaper, 30.0, Some(wide)));
        sections.push(section(SectionKind::Tube, 70.0, None));
    }
    sections.push(section(SectionKind::StraightTaper, 40.0, Some(30.0)));
    Design {
        name: "Great northern diver 123".into(),
        sections,
        fins: vec![
            fins(4, 190.0, 0.0, 40.0),
            fins(3, 290.0, 20.0, 50.0),
            fins(8, 390.0, 11.0, 60.0),
            fins(2, 480.0, 45.0, 90.0),
        ],
        weights: (0..12_u32)
            .map(|k| Weight {
                label: if k == 6 {
                    "a washer, bolted outside".into()
                } else {
                    format!("nut {k}")
                },
                mass_g: 1.0 + 9.0 * f64::from(k),
                position_mm: 30.0 + 12.0 * f64::from(k),
            })
            .collect(),
        ..Design::default()
    }
}

fn tiny() -> Design {
    Design {
        name: "Little auk".into(),
        sections: vec![
            section(SectionKind::Cone, 6.0, Some(5.0)),
            section(SectionKind::Tube, 16.0, None),
        ],
        fins: vec![fins(3, 15.0, 0.0, 6.0)],
        ..Design::default()
    }
}

/// A rocket of almost three metres.
pub(crate) fn huge() -> Design {
    Design {
        name: "Albatross".into(),
        sections: vec![
            section(SectionKind::Dome, 200.0, Some(500.0)),
            section(SectionKind::Tube, 2000.0, None),
            section(SectionKind::Tube, 600.0, None),
        ],
        fins: vec![fins(4, 2000.0, 0.0, 800.0)],
        ..Design::default()
    }
}

/// Its centre of mass is behind its centre of pressure.
fn tail_heavy() -> Design {
    let mut design = Example::Puffin.design();
    design.weights.iter_mut().for_each(|weight| weight.position_mm = 300.0);
    design
}

fn wide(units: Units) -> Sheet {
    Sheet {
        width_px: 760.0,
        height_px: 440.0,
        units,
        labels: LabelStyle::Full,
        told: Told::BOTH,
    }
}

fn narrow(units: Units) -> Sheet {
    Sheet {
        width_px: 320.0,
        height_px: 330.0,
        units,
        labels: LabelStyle::Short,
        told: Told::BOTH,
    }
}

fn sheets() -> Vec<Golden> {
    let sheet = |name: &str, design: &Design, sheet: Sheet| {
        golden(name, &rocket(design, &whole(design), &sheet).expect("it has a body"))
    };
    let mut all: Vec<Golden> = Example::ALL
        .into_iter()
        .map(|example| {
            let name = format!("sheet-{example:?}").to_lowercase();
            sheet(&name, &example.design(), wide(Units::METRIC))
        })
        .collect();
    let puffin = Example::Puffin.design();
    let read = |m: f64| MeasuredPoint::new(&[m]).ok();
    let measured =
        MeasuredPoints { centre_of_mass: read(0.150), centre_of_pressure: read(0.195) };
    let figures = evaluate_measured(&puffin, &measured).figures.expect("a whole rocket");
    let measured =
        rocket(&puffin, &figures, &wide(Units::METRIC)).expect("it has a body");
    all.extend([
        golden("sheet-measured", &measured),
        sheet("sheet-narrow", &puffin, narrow(Units::METRIC)),
        sheet("sheet-inches", &Example::Tern.design(), wide(Units::INCH)),
        sheet("sheet-inches-narrow", &Example::Gannet.design(), narrow(Units::INCH)),
        sheet("sheet-tail-heavy", &tail_heavy(), wide(Units::METRIC)),
        sheet("sheet-crowded", &crowded(), wide(Units::METRIC)),
        sheet("sheet-crowded-narrow", &crowded(), narrow(Units::METRIC)),
        sheet("sheet-tiny", &tiny(), wide(Units::INCH)),
        sheet("sheet-huge", &huge(), narrow(Units::METRIC)),
    ]);
    all
}

fn pairs() -> Vec<Golden> {
    let two = |name: &str, left: &Design, right: &Design, units, (width, height)| {
        let (before, after) = (whole(left), whole(right));
        let (left, right) = ((left, &before, "Trial 1"), (right, &after, "Trial 2"));
        golden(name, &pair(left, right, units, width, height).expect("both have a body"))
    };
    let puffin = Example::Puffin.design();
    vec![
        two("pair", &puffin, &Example::Tern.design(), Units::METRIC, (900.0, 600.0)),
        two("pair-narrow", &puffin, &tail_heavy(), Units::METRIC, (320.0, 380.0)),
        two("pair-tiny-and-crowded", &tiny(), &crowded(), Units::INCH, (560.0, 420.0)),
    ]
}

fn winds() -> Vec<Golden> {
    let graph = |name: &str, design: &Design, units, width_px, angle_rad| {
        let sheet = AirSheet { width_px, units, angle_rad };
        golden(name, &air_graph(&whole(design), &sheet))
    };
    let turned = |name: &str, design: &Design, angle_rad| {
        let scene = turned_rocket(design, &whole(design), angle_rad);
        golden(name, &scene.expect("it has a body"))
    };
    let mut all: Vec<Golden> = Example::ALL
        .into_iter()
        .map(|example| {
            let name = format!("air-{example:?}").to_lowercase();
            graph(&name, &example.design(), Units::METRIC, 700.0, 1.0)
        })
        .collect();
    let puffin = Example::Puffin.design();
    let push = |name: &str, design: &Design, units| {
        golden(name, &push_bars(design, &whole(design), units).expect("air pushes it"))
    };
    all.extend([
        graph("air-narrow-inches", &puffin, Units::INCH, 320.0, 2.2),
        graph("air-tail-heavy", &tail_heavy(), Units::METRIC, 700.0, 0.0),
        turned("turned-puffin", &puffin, 0.6),
        turned("turned-crowded", &crowded(), 2.5),
        push("push-puffin", &puffin, Units::METRIC),
        push("push-crowded", &crowded(), Units::INCH),
    ]);
    all
}

/// A made motion, so that a change of the physics does not change the picture.
fn motion(middle: f64, start: f64, turns_rad_per_s: f64, seconds: u32) -> Vec<Turning> {
    (0..=seconds * 50)
        .map(|k| {
            let time_s = f64::from(k) / 50.0;
            let dying = libm::exp(-0.6 * time_s) * libm::cos(5.0 * time_s);
            Turning {
                time_s,
                angle_rad: middle + (start - middle) * dying + turns_rad_per_s * time_s,
                ..Turning::default()
            }
        })
        .collect()
}

fn starts() -> [StartRange; 4] {
    let range = |from_deg: f64, to_deg: f64, comes_to| StartRange {
        from_rad: from_deg.to_radians(),
        to_rad: to_deg.to_radians(),
        comes_to,
        slowest: None,
    };
    [
        range(0.0, 60.0, Settles::NoseFirst),
        range(60.0, 103.0, Settles::Across { angle_rad: 1.2 }),
        range(103.0, 118.0, Settles::StillSwinging { about_rad: None }),
        range(118.0, 180.0, Settles::TailFirst),
    ]
}

fn swings() -> Vec<Golden> {
    let puffin = Example::Puffin.design();
    let figures = whole(&puffin);
    let setup = SwingSetup::default();
    let space = Swing::new(&figures, &setup).expect("it can be swung").space();
    let (one, two) = (motion(0.4, 2.4, 0.0, 6), motion(2.6, 2.0, 0.0, 6));
    let over = motion(0.0, 1.0, 9.0, 4);
    let curve = |samples, dashed, label| SwingCurve { samples, dashed, label };
    let both = [
        curve(&one[..], false, "on the string"),
        curve(&two[..], true, "if the spin did not help it along"),
    ];
    let turning = [curve(&over[..], false, "on the string")];
    let seen = swing_rocket(&puffin, &figures, 0.7, 240.0).expect("it has a body");
    vec![
        golden("swing-circle", &swing_circle(&space, &setup, 0.7, 0.3, 900.0)),
        golden("swing-circle-narrow", &swing_circle(&space, &setup, 3.7, 1.3, 320.0)),
        golden("swing-rocket", &seen),
        golden("swing-graph", &swing_graph(&both, Some(0.4), Some(2.5), 900.0)),
        golden(
            "swing-graph-turning-over",
            &swing_graph(&turning, None, Some(1.0), 320.0),
        ),
        golden("swing-graph-empty", &swing_graph(&[], None, None, 320.0)),
        golden("starts", &start_strip(&starts(), 0.9, 900.0)),
        golden("starts-narrow", &start_strip(&starts(), 2.9, 320.0)),
        golden("starts-empty", &start_strip(&[], 0.0, 320.0)),
    ]
}

fn charts() -> Vec<Golden> {
    let trial = |n: u32, separation_mm: f64, measured: bool, outcomes| ChartTrial {
        label: n.to_string(),
        separation_mm,
        calibre_mm: 88.0,
        measured,
        range_mm: measured.then_some((separation_mm - 17.0, separation_mm + 12.0)),
        outcomes,
    };
    let trials = [
        trial(1, -46.0, false, &[TailFirst, TailFirst, Sideways][..]),
        trial(2, -4.0, true, &[Sideways, NotSure, Sideways]),
        trial(3, 31.0, true, &[Wobbling, Steady, Wobbling]),
        trial(4, 38.5, false, &[Steady; 4]),
        trial(5, 140.0, true, &[Steady, Steady]),
    ];
    let series: Vec<SeriesTrial> = trials
        .iter()
        .map(|trial| SeriesTrial {
            label: trial.label.clone(),
            measured_mm: trial.range_mm.map(|(a, b)| (trial.separation_mm, a, b)),
            computed_mm: (trial.label != "3").then_some(trial.separation_mm + 9.0),
        })
        .collect();
    let chart = |name: &str, units, width_px| {
        golden(name, &trial_chart(&trials, units, width_px).expect("there are trials"))
    };
    let series = |name: &str, units, width_px| {
        golden(name, &trial_series(&series, units, width_px).expect("there are trials"))
    };
    vec![
        chart("trials", Units::METRIC, 900.0),
        chart("trials-narrow", Units::METRIC, 320.0),
        chart("trials-inches", Units::INCH, 520.0),
        golden("trials-blank", &trial_chart_blank(700.0, 420.0, Units::METRIC)),
        series("series", Units::METRIC, 700.0),
        series("series-narrow-inches", Units::INCH, 320.0),
    ]
}

/// A class that nobody taught: the larger the separation, the more fly nose-first.
pub(crate) fn class_trials(count: u32) -> Vec<ClassTrial> {
    let colours = ["Red", "Orange", "Blue", "Purple"];
    (0..count)
        .map(|k| {
            let spread = |step: u32| f64::from(k * step % 1009) / 1009.0;
            let separation = (180.0 * spread(389) - 70.0).round();
            let luck = 30.0 * (spread(257) + spread(601) - 1.0);
            ClassTrial {
                separation,
                nose_first: (k % 11 != 5).then_some(separation + luck > 24.0),
                label: format!("{} {}", colours[k as usize % 4], k / 4 + 1),
                marked: k % 17 == 3,
            }
        })
        .collect()
}

/// What a lesson finds in them.
pub(crate) fn class_seen(trials: &[ClassTrial]) -> Vec<Seen> {
    let seen = |trial: &ClassTrial| Some((trial.separation, trial.nose_first?).into());
    trials.iter().filter_map(seen).collect()
}

fn classes() -> Vec<Golden> {
    let chart = |name: &str,
                 trials: &[ClassTrial],
                 width_px,
                 change: &dyn Fn(&mut ClassChart<'_>)| {
        let found = turning_point(&class_seen(&trials[..trials.len().min(200)]));
        let mut chart = ClassChart {
            trials,
            unit: SeparationUnit::Length(Units::METRIC),
            measured: true,
            body_width: Some(88.0),
            found: Some(&found),
            invented: false,
            width_px,
            height_px: 420.0,
        };
        change(&mut chart);
        golden(name, &class_chart(&chart))
    };
    let one_class = class_trials(48);
    let unlabelled = |trials: &[ClassTrial]| -> Vec<_> {
        let bare =
            |trial: &ClassTrial| ClassTrial { label: String::new(), ..trial.clone() };
        trials.iter().map(bare).collect()
    };
    let pairs: Vec<(f64, f64)> = class_trials(3_000)
        .iter()
        .zip(0_u32..)
        .map(|(trial, k)| {
            (trial.separation + f64::from(k * 29 % 31) - 12.0, trial.separation)
        })
        .collect();
    let agreement = |pairs: &[(f64, f64)], width_px| {
        agreement_chart(pairs, Units::METRIC, width_px, 300.0).expect("there are pairs")
    };
    let mut parted = class_trials(30);
    parted.iter_mut().for_each(|trial| trial.nose_first = Some(trial.separation > 20.0));
    let many = class_trials(10_000);
    let mut widths = unlabelled(&one_class);
    widths.iter_mut().for_each(|trial| trial.separation /= 88.0);
    vec![
        chart("class", &one_class, 1300.0, &|_| {}),
        chart("class-narrow", &unlabelled(&one_class), 328.0, &|chart| {
            chart.invented = true;
        }),
        chart("class-big-screen", &unlabelled(&one_class), 590.0, &|chart| {
            chart.height_px = 248.0;
        }),
        chart("class-widths", &widths, 700.0, &|chart| {
            chart.unit = SeparationUnit::BodyWidths;
            chart.body_width = Some(1.0);
            chart.measured = false;
        }),
        chart("class-parted", &parted, 700.0, &|_| {}),
        chart("class-many", &many, 1300.0, &|_| {}),
        chart("class-many-narrow", &many, 328.0, &|chart| chart.measured = false),
        chart("class-one", &one_class[..1], 520.0, &|_| {}),
        golden("agreement", &agreement(&pairs[..48], 560.0)),
        golden("agreement-narrow", &agreement(&pairs[..48], 328.0)),
        golden("agreement-many", &agreement(&pairs, 560.0)),
        chart("class-empty", &[], 328.0, &|chart| chart.body_width = None),
    ]
}

fn small() -> Vec<Golden> {
    let pictures: Vec<String> =
        Picture::ALL.map(|what| svg_document(&picture(what), None)).into();
    let symbol = qr(None, "HARBOUR CLUB 1234567890").expect("a short code");
    vec![("pictures".into(), pictures.join("\n")), ("qr".into(), symbol)]
}

/// Holds pictures against those that are kept, an element a line.
fn hold(goldens: Vec<Golden>) {
    for (name, svg) in goldens {
        let mut settings = insta::Settings::clone_current();
        settings.set_prepend_module_to_snapshot(false);
        settings.set_omit_expression(true);
        let lines = svg.replace("><", ">\n<");
        settings.bind(|| insta::assert_snapshot!(name, lines));
    }
}

#[test]
fn sheets_are_as_they_were() {
    hold(sheets());
}

#[test]
fn pairs_are_as_they_were() {
    hold(pairs());
}

#[test]
fn graphs_of_the_air_are_as_they_were() {
    hold(winds());
}

#[test]
fn swings_are_as_they_were() {
    hold(swings());
}

#[test]
fn charts_are_as_they_were() {
    hold(charts());
}

#[test]
fn charts_of_classes_are_as_they_were() {
    hold(classes());
}

#[test]
fn small_pictures_are_as_they_were() {
    hold(small());
}

/// Nothing is kept that is no longer drawn. All pictures are put on one page, to be looked
/// at.
#[test]
fn every_kept_picture_is_drawn() {
    let all: Vec<Golden> =
        [sheets(), pairs(), winds(), swings(), charts(), classes(), small()].concat();
    let here = FilePath::new(env!("CARGO_MANIFEST_DIR"));
    for file in std::fs::read_dir(here.join("src/snapshots")).unwrap() {
        let name = file.unwrap().file_name().into_string().unwrap();
        let drawn = all.iter().any(|(one, _)| name == format!("{one}.snap"));
        assert!(drawn || name.ends_with(".snap.new"), "nothing draws {name}");
    }
    let mut page = String::from(
        "<!doctype html><meta charset=utf-8><title>Drawings</title><style>body{font:13px \
         system-ui,sans-serif;background:#fffdf8}svg{display:block;outline:1px solid \
         #ccc}svg[width='44'],svg:not([width]){display:inline-block}svg:not([width])\
         {width:150px}</style>",
    );
    for (name, svg) in &all {
        write!(page, "<h2>{name}</h2>{svg}").unwrap();
    }
    let target = here.join("../../target");
    std::fs::create_dir_all(&target).unwrap();
    std::fs::write(target.join("drawings.html"), page).unwrap();
}
