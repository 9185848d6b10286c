//! The graph of a swing and the strip of its starts against their own numbers.

use std::f64::consts::PI;

use noseward_stability::{Settles, StartRange, Swing, SwingSetup, Turning};

use super::{
    Axis, evaluated, group, level, number, paths, points, texts, the_path, the_words,
    upright,
};
use crate::{Colour, Item, Path, Scene, Style, SwingCurve, start_strip, swing_graph};

fn grid(items: &[Item]) -> Path {
    let mut all = Path::default();
    for (path, style) in paths(items) {
        if *style == Style::line(Colour::BoldLine, 1.0) {
            all.runs.extend(path.runs.clone());
        }
    }
    all
}

/// Seconds across and degrees up.
fn axes(scene: &Scene) -> (Axis, Axis) {
    let items = group(scene, "graph");
    let lines = grid(items);
    let foot = level(&lines).into_iter().fold(0.0, f64::max);
    let all = texts(items);
    let times = all.iter().filter(|text| text.0.y > foot + 8.0);
    let times = times.filter_map(|text| Some((text.0.x, number(text.1)?)));
    let times = Axis::new(&upright(&lines), times, 0.0);
    let angles = all.iter().filter(|text| text.0.y < foot + 8.0).filter_map(|text| {
        let degrees = match text.1 {
            "nose first" => 0.0,
            "tail first" => 180.0,
            words => number(words)?,
        };
        Some((text.0.y, degrees))
    });
    (times, Axis::new(&level(&lines), angles, 4.5))
}

/// The angle of a motion at a time, in degrees.
fn degrees_at(samples: &[Turning], time_s: f64) -> f64 {
    let after =
        samples.partition_point(|s| s.time_s < time_s).clamp(1, samples.len() - 1);
    let (a, b) = (&samples[after - 1], &samples[after]);
    let share = ((time_s - a.time_s) / (b.time_s - a.time_s)).clamp(0.0, 1.0);
    (a.angle_rad + share * (b.angle_rad - a.angle_rad)).to_degrees()
}

/// Both curves hold the angles of their motion, each in the line that the legend gives its
/// name, and the band is ten degrees to either side of where the first one rests.
#[test]
fn curves_of_the_swing_are_read_on_their_axes() {
    let mut seen = 0;
    for (design, figures) in evaluated() {
        let Some(swing) = Swing::new(&figures, &SwingSetup::default()) else { continue };
        let one = swing.trajectory(2.0, 3.0).samples;
        let two = swing.air_alone().trajectory(1.0, 3.0).samples;
        let inside = |s: &Turning| (-0.05..PI - 0.01).contains(&s.angle_rad);
        // The others are cut open, for which there are tests of their own.
        let whole = |samples: &[Turning]| samples.iter().all(inside);
        let one = if whole(&one) { one } else { slow(2.0) };
        let two = if whole(&two) { two } else { slow(1.0) };
        let curve = |samples, dashed, label| SwingCurve { samples, dashed, label };
        let curves = [curve(&one[..], false, "first"), curve(&two[..], true, "second")];
        for width in [280.0, 600.0, 900.0] {
            let scene = swing_graph(&curves, Some(0.5), Some(1.25), width);
            let items = group(&scene, "graph");
            let (times, angles) = axes(&scene);
            for (samples, dashed, label) in
                [(&one, false, "first"), (&two, true, "second")]
            {
                let (at, _) = the_words(items, label);
                let beside = |path: &Path| {
                    let mut all = points(path);
                    all.all(|p| p.x < at.x && (p.y - at.y).abs() < 12.0)
                };
                let all = paths(items);
                let near = all
                    .iter()
                    .filter(|(path, style)| beside(path) && style.fill.is_none())
                    .max_by(|a, b| a.0.runs[0].0[0].x.total_cmp(&b.0.runs[0].0[0].x));
                let (_, style) = near.expect("its sample is beside the name");
                assert_eq!(style.dashes.is_empty(), !dashed, "{label}");
                let line =
                    the_path(items, |path, other| other == *style && !beside(path));
                assert!(points(line).count() > 50);
                for p in points(line) {
                    let told = degrees_at(samples, times.read(p.x));
                    assert!(
                        (angles.read(p.y) - told).abs() < 0.2,
                        "{} {label} at {width}: {} for {told}",
                        design.name,
                        angles.read(p.y)
                    );
                    seen += 1;
                }
            }
            let band = the_path(items, |path, style| {
                style.fill == Some(Colour::Fin) && points(path).all(|p| p.y < 260.0)
            });
            let ys: Vec<f64> = points(band).map(|p| p.y).collect();
            let top = ys.iter().copied().fold(f64::MAX, f64::min);
            let bottom = ys.iter().copied().fold(f64::MIN, f64::max);
            angles.holds(top, 0.5_f64.to_degrees() + 10.0, "the band");
            angles.holds(bottom, 0.5_f64.to_degrees() - 10.0, "the band");
            let cursor = the_path(group(&scene, "cursor"), |_, _| true);
            times.holds(upright(cursor)[0], 1.25, "the cursor");
        }
    }
    assert!(seen > 1_000, "{seen}");
}

/// A swing that dies away within half a turn.
fn slow(start: f64) -> Vec<Turning> {
    (0..=300)
        .map(|k| {
            let time_s = f64::from(k) / 100.0;
            let angle_rad =
                1.5 + (start - 1.5) * libm::cos(5.0 * time_s) * libm::exp(-time_s);
            Turning { time_s, angle_rad, ..Turning::default() }
        })
        .collect()
}

/// The stretches of the strip: from where to where, in degrees.
fn stretches(scene: &Scene, degrees: &Axis) -> Vec<(f64, f64)> {
    let mut found = Vec::new();
    for (path, style) in paths(group(scene, "strip")) {
        if *style == Style::line(Colour::Ink, 1.0) && path.runs[0].1 {
            let xs: Vec<f64> = points(path).map(|p| degrees.read(p.x)).collect();
            let from = xs.iter().copied().fold(f64::MAX, f64::min);
            let to = xs.iter().copied().fold(f64::MIN, f64::max);
            found.push((from, to));
        }
    }
    found
}

#[test]
fn ranges_of_the_starts_are_read_on_the_strip() {
    let range = |from_deg: f64, to_deg: f64, comes_to| StartRange {
        from_rad: from_deg.to_radians(),
        to_rad: to_deg.to_radians(),
        comes_to,
        slowest: None,
    };
    let across = Settles::Across { angle_rad: 70.0_f64.to_radians() };
    let ranges = [
        range(0.0, 62.0, Settles::NoseFirst),
        range(62.0, 101.0, across),
        range(101.0, 118.5, Settles::StillSwinging { about_rad: None }),
        range(118.5, 180.0, Settles::TailFirst),
    ];
    for width in [280.0, 600.0, 900.0] {
        let scene = start_strip(&ranges, 47.0_f64.to_radians(), width);
        let axis = group(&scene, "axis");
        let ticks = paths(axis).into_iter().find(|(path, style)| {
            **style == Style::line(Colour::Ink, 1.0) && path.runs.len() == 5
        });
        let lines = upright(ticks.unwrap().0);
        let all = texts(axis);
        let numbers = all.iter().filter_map(|text| Some((text.0.x, number(text.1)?)));
        let degrees = Axis::new(&lines, numbers, 0.0);
        let found = stretches(&scene, &degrees);
        assert_eq!(found.len(), ranges.len(), "{found:?}");
        for ((from, to), range) in found.iter().zip(&ranges) {
            assert!((from - range.from_rad.to_degrees()).abs() < 0.1, "{from}");
            assert!((to - range.to_rad.to_degrees()).abs() < 0.1, "{to}");
        }
        // Words on the strip are within the stretch that they name.
        let mut named = 0;
        for (at, words, _) in texts(group(&scene, "strip")) {
            let degrees = degrees.read(at.x).to_radians();
            let range =
                ranges.iter().find(|r| r.from_rad <= degrees && degrees <= r.to_rad);
            let expected = match range.unwrap().comes_to {
                Settles::NoseFirst => "nose first",
                Settles::Across { .. } => "across, at 70°",
                Settles::TailFirst => "tail first",
                Settles::StillSwinging { .. } => "still swinging",
            };
            assert_eq!(words, expected, "{width}");
            named += 1;
        }
        assert!(named >= if width > 500.0 { 3 } else { 1 }, "{named} at {width}");
        let marker = the_path(group(&scene, "start"), |_, _| true);
        let tip = points(marker).max_by(|a, b| a.y.total_cmp(&b.y)).unwrap();
        degrees.holds(tip.x, 47.0, "the start");
        the_words(group(&scene, "start"), "starts at 47°");
    }
}
