//! Trials that groups might have handed in: the same at every call.

use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
use noseward_lesson::{
    Colour, Group, PointResult, ResultModel, ResultPrediction, SwingOutcome, TrialResult,
};
use rand_pcg::Pcg32;
use rand_pcg::rand_core::Rng;

/// From this separation on, in tenths of a millimetre, most rockets fly nose-first.
const TURNS_AT: i32 = 180;
/// Widths of bodies, in millimetres.
const WIDTHS_MM: [f64; 3] = [24.0, 65.0, 90.0];

/// A whole number from `least` up to, and without, `most`.
fn draw(random: &mut Pcg32, least: i32, most: i32) -> i32 {
    let span = most.abs_diff(least);
    least.saturating_add_unsigned(random.next_u32() % span)
}

fn tenths(value: i32) -> f64 {
    f64::from(value) / 10.0
}

/// The finished trial of this number, of a file in which no two numbers are the same.
pub(crate) fn trial(file: usize, number: u16) -> TrialResult {
    let mut random = Pcg32::new(file as u64, number.into());
    let colour = Colour::ALL[file % Colour::ALL.len()];
    let group = u8::try_from(number % 40 + 1).ok();
    let group = group.and_then(|group| Group::new(colour, group)).unwrap_or_default();
    let (mass, separation) =
        (draw(&mut random, 1500, 2500), draw(&mut random, -300, 700));
    let pressure = mass + separation;
    let flew = separation + draw(&mut random, -150, 150) > TURNS_AT;
    let mut result = TrialResult {
        compared_with: (number > 1).then_some(1),
        changes: (number > 1).then_some(1),
        what_changed: "heavier nose; \"clay\",\n5 g more".into(),
        model: Some(ResultModel {
            length_mm: tenths(draw(&mut random, 3000, 4500)),
            body_width_mm: WIDTHS_MM[file % WIDTHS_MM.len()],
            mass_g: tenths(draw(&mut random, 300, 1500)),
            mass_point_mm: tenths(mass),
            pressure_point_mm: tenths(pressure),
        }),
        mass: readings(&mut random, mass),
        pressure: readings(&mut random, pressure),
        predicted: Some(ResultPrediction { outcome: Steady, swings_seen: 0 }),
        outcomes: swings(&mut random, flew),
        ..TrialResult::empty(group, number)
    };
    make_unusual(&mut result, number, &mut random);
    result
}

/// One, two or three readings of a point, to a millimetre or a half.
fn readings(random: &mut Pcg32, at: i32) -> Option<PointResult> {
    let count = [3, 3, 3, 2, 1][draw(random, 0, 5).unsigned_abs() as usize];
    let mut readings_mm = [None; 3];
    for reading in &mut readings_mm[..count] {
        *reading = Some(tenths((at + draw(random, -30, 30)) / 5 * 5));
    }
    PointResult::of(readings_mm)
}

fn swings(random: &mut Pcg32, flew: bool) -> Vec<SwingOutcome> {
    let usual = if flew { [Steady, Wobbling] } else { [TailFirst, Sideways] };
    let mut seen: Vec<_> =
        (0..3).map(|_| usual[draw(random, 0, 2).unsigned_abs() as usize]).collect();
    match draw(random, 0, 12) {
        0 => seen[1] = NotSure,
        1 => seen.insert(1, Slipped),
        2 => seen.splice(0..0, [Slipped; 3]).for_each(drop),
        3 => (seen[0], seen[1]) = (NotSure, NotSure),
        4 => (seen[0], seen[2]) = (Steady, Sideways),
        _ => {}
    }
    seen
}

/// What some groups do and others do not: slips above all, as large as those that are asked about
/// and a little smaller.
fn make_unusual(result: &mut TrialResult, number: u16, random: &mut Pcg32) {
    let shifted = |point: Option<PointResult>, by: i32| {
        let readings = point?.readings_mm;
        PointResult::of(readings.map(|reading| reading.map(|at| at + tenths(by))))
    };
    match number {
        2 => result.model = None,
        3 => (result.mass, result.pressure) = (None, None),
        // The ruler's zero was not at the nose tip.
        4 => {
            let by = draw(random, 60, 140);
            result.mass = shifted(result.mass, by);
            result.pressure = shifted(result.pressure, by + draw(random, -40, 40));
        }
        // One reading, written three times.
        5 => {
            let other = 203.0 + tenths(draw(random, 0, 2));
            result.mass = PointResult::of([Some(203.0), Some(203.0), Some(other)]);
            result.pressure = PointResult::of([Some(251.0); 3]);
        }
        // The points changed places.
        6 => std::mem::swap(&mut result.mass, &mut result.pressure),
        // One reading lies apart.
        7 => {
            let apart = 255.0 - tenths(draw(random, 300, 800));
            let point = PointResult::of([Some(254.0), Some(apart), Some(255.0)]);
            let of = [&mut result.mass, &mut result.pressure];
            *of[draw(random, 0, 2).unsigned_abs() as usize] = point;
        }
        // Read at the end of the rocket, or in front of it.
        8 => {
            let length_mm = result.model.map_or(0.0, |model| model.length_mm);
            let end_mm = length_mm + tenths(draw(random, -5, 25));
            result.pressure = PointResult::of([Some(end_mm), None, None]);
            result.mass =
                PointResult::of([Some(tenths(draw(random, -20, 20))), None, None]);
            result.outcomes = vec![Steady; 3];
            if draw(random, 0, 2) == 0 {
                std::mem::swap(&mut result.mass, &mut result.pressure);
                result.outcomes = vec![TailFirst; 3];
            }
        }
        9 => {
            result.swung_first = true;
            result.predicted =
                Some(ResultPrediction { outcome: NotSure, swings_seen: 3 });
        }
        10 => (result.altered, result.allows_two_changes) = (true, true),
        11 => (result.changes, result.predicted) = (None, None),
        // Tail and nose mixed up.
        13 => {
            let flew = result.nose_first() == Some(true);
            result.outcomes = vec![if flew { TailFirst } else { Steady }; 3];
        }
        _ => {}
    }
}

/// The same as a code has it: without words, and without single readings.
pub(crate) fn as_code(result: &TrialResult) -> TrialResult {
    let without = |point: Option<PointResult>| {
        point.map(|point| PointResult { readings_mm: [None; 3], ..point })
    };
    TrialResult {
        what_changed: String::new(),
        mass: without(result.mass),
        pressure: without(result.pressure),
        ..result.clone()
    }
}

/// The same with another value in one place: in each in its turn, of those that tell whether two
/// results are the same.
pub(crate) fn with_one_changed(mut result: TrialResult, turn: usize) -> TrialResult {
    let more = |value: &mut f64| *value += 0.1;
    let TrialResult { model, mass, pressure, predicted, .. } = &mut result;
    let (Some(model), Some(mass), Some(pressure), Some(predicted)) =
        (model, mass, pressure, predicted)
    else {
        return result;
    };
    match turn % 18 {
        0 => more(&mut model.length_mm),
        1 => more(&mut model.body_width_mm),
        2 => more(&mut model.mass_g),
        3 => more(&mut model.mass_point_mm),
        4 => more(&mut model.pressure_point_mm),
        5 => more(&mut mass.middle_mm),
        6 => more(&mut mass.range_mm),
        7 => mass.count = mass.count % 3 + 1,
        8 => more(&mut pressure.middle_mm),
        9 => more(&mut pressure.range_mm),
        10 => pressure.count = pressure.count % 3 + 1,
        11 => predicted.outcome = Sideways,
        12 => predicted.swings_seen = 6,
        13 => result.compared_with = Some(2),
        14 => result.changes = Some(2),
        15 => result.altered = true,
        16 => result.allows_two_changes = true,
        _ => result.swung_first = true,
    }
    result
}
