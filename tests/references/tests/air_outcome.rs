//! Where a rocket comes to rest in the wind, and what that makes of it.
//!
//! The resting angles are compared with `tests/fixtures/resting.json`, which
//! `make_resting.py` works out from the published formulas written again in Python, with
//! the zeros by `scipy.optimize.brentq`. What every class finds out is common practice, no
//! source.

use std::collections::BTreeMap;
use std::f64::consts::PI;

use noseward_references_tests::{assert_close, assert_within, figures, four_sided};
use noseward_stability::{
    Air, Design, Example, Figures, Mass, MeasuredPoints, Model, Outcome, Planform,
    Problem, Rest, Severity, Weight, evaluate, evaluate_measured,
};
use serde::Deserialize;

const RESTING: &str = include_str!("../../fixtures/resting.json");

/// How closely a resting angle agrees, in radians: a twentieth of a thousandth of a degree.
/// The crate halves to 1e-10; the file keeps 13 digits.
const ANGLE_RAD: f64 = 1e-6;
/// Slopes, centres and centres of mass: the same closed forms in another order.
const SAME: f64 = 1e-10;
/// The same rocket mirrored or at another size: what is left is how closely the angle is
/// found, twice, and its last bits.
const UNCHANGED_RAD: f64 = 1e-9;

#[derive(Deserialize)]
struct Resting {
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    design: Design,
    outcome: String,
    slope_per_rad: f64,
    nose_on_m: f64,
    centre_of_mass_m: f64,
    rests: Vec<(f64, bool)>,
}

fn cases() -> Vec<Case> {
    let resting: Resting =
        serde_json::from_str(RESTING).expect("it is in the project's own JSON");
    resting.cases
}

fn kind(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::SelfRighting => "self_righting",
        Outcome::StraightStartOnly => "straight_start_only",
        Outcome::Broadside { .. } => "broadside",
        Outcome::SwapsEnds => "swaps_ends",
    }
}

/// From the best outcome to the worst.
fn rank(figures: &Figures) -> u32 {
    match figures.outcome {
        Outcome::SelfRighting => 0,
        Outcome::StraightStartOnly => 1,
        Outcome::Broadside { .. } => 2,
        Outcome::SwapsEnds => 3,
    }
}

#[track_caller]
fn assert_same_rests(name: &str, found: &[Rest], expected: &[(f64, bool)], rad: f64) {
    let kinds: Vec<bool> = found.iter().map(|r| r.holds).collect();
    let expected_kinds: Vec<bool> = expected.iter().map(|r| r.1).collect();
    assert_eq!(kinds, expected_kinds, "{name}");
    for (rest, (angle_rad, _)) in found.iter().zip(expected) {
        assert_within(name, rest.angle_rad, *angle_rad, rad);
    }
}

/// Fifteen designs of each outcome; three and four fins, one and two sets, both ways of
/// weighing, narrowing and widening tapers.
#[test]
fn the_fixture_is_worth_the_name() {
    let cases = cases();
    let mut outcomes = BTreeMap::new();
    for case in &cases {
        *outcomes.entry(case.outcome.as_str()).or_insert(0) += 1;
    }
    assert_eq!(outcomes.len(), 4);
    assert!(outcomes.values().all(|&n| n == 15), "{outcomes:?}");
    let some = |has: &dyn Fn(&Design) -> bool| {
        let count = cases.iter().filter(|c| has(&c.design)).count();
        assert!((5..=55).contains(&count), "{count}");
    };
    some(&|d| d.fins.len() == 2);
    some(&|d| d.fins.iter().any(|set| set.count == 3));
    some(&|d| d.fins.iter().any(|set| matches!(set.mass, Mass::WeighedG(_))));
    some(&|d| d.sections.len() > 2);
    some(&|d| d.weights.is_empty());
}

/// The air from nose-on to tail-on and the centre of mass, written twice.
#[test]
fn resting_angles_agree_with_brentq() {
    for case in cases() {
        let name = &case.design.name;
        let found = figures(&case.design);
        // The fixture is about the view of the drawing, whichever roll decides.
        let air = Air::new(&case.design, Model::default(), None).expect("it has a body");
        assert_close(name, air.slope_per_rad(), case.slope_per_rad, SAME);
        let nose_on_m = air.centre_of_pressure_m(0.0).expect("the air pushes");
        assert_within(name, nose_on_m, case.nose_on_m, SAME);
        assert_within(name, found.mass.centre_m, case.centre_of_mass_m, SAME);
        let rests = air.resting_angles(found.mass.centre_m);
        assert_same_rests(name, &rests, &case.rests, ANGLE_RAD);
        let outcome = air.outcome(found.mass.centre_m);
        assert_eq!(kind(outcome), case.outcome, "{name}");
        assert!(rank(&found) >= u32::from(outcome.rank()), "{name}");
        // Broadside names the smallest angle that holds, here always between the ends.
        if let Outcome::Broadside { angle_rad } = outcome {
            let first = case.rests.iter().find(|r| r.1).expect("one holds");
            assert_within(name, angle_rad, first.0, ANGLE_RAD);
            assert!(angle_rad > ANGLE_RAD && angle_rad < PI - ANGLE_RAD);
        }
    }
}

fn rests(figures: &Figures) -> Vec<(f64, bool)> {
    figures.resting_angles.iter().map(|r| (r.angle_rad, r.holds)).collect()
}

fn everything() -> impl Iterator<Item = Design> {
    cases().into_iter().map(|c| c.design).chain(Example::ALL.map(Example::design))
}

/// The designs whose nose-on centre is behind the nose tip. One of the fixture narrows so
/// much behind a flat front that its centre lies ahead of it: no weight puts it right.
fn sound() -> Vec<Design> {
    let on =
        |d: &Design| figures(d).centre_of_pressure_nose_on_m.is_some_and(|x| x > 0.0);
    let sound: Vec<Design> = everything().filter(on).collect();
    assert_eq!(sound.len(), 63);
    sound
}

/// Seen from the other side of the drawing, every fin is at 180° less its angle.
#[test]
fn a_mirrored_rocket_rests_where_it_did() {
    let mut changed = 0;
    for design in everything() {
        let before = figures(&design);
        let mut mirrored = design.clone();
        for set in &mut mirrored.fins {
            set.roll_deg = 180.0 - set.roll_deg;
            changed += u32::from(set.count == 3);
        }
        let after = figures(&mirrored);
        assert_eq!(kind(after.outcome), kind(before.outcome), "{}", design.name);
        assert_same_rests(
            &design.name,
            &after.resting_angles,
            &rests(&before),
            UNCHANGED_RAD,
        );
    }
    assert!(changed > 10, "a set of three is another one when mirrored");
}

/// A tenth of the size: lengths a tenth, sheets ten times as heavy, so that everything
/// weighs a tenth of what it did. What was found for it holds ten times as large. A few
/// designs have a part that is stopped as too small at that size.
#[test]
fn size_does_not_matter() {
    let mut compared = 0;
    for case in cases() {
        let design = case.design;
        let mass = |mass: &mut Mass| match mass {
            Mass::WeighedG(g) => *g /= 10.0,
            Mass::SheetGPerM2(density) => *density *= 10.0,
            other => panic!("the fixture has no {other:?}"),
        };
        let mut small = design.clone();
        for section in &mut small.sections {
            section.length_mm /= 10.0;
            section.diameter_mm = section.diameter_mm.map(|mm| mm / 10.0);
            mass(&mut section.mass);
        }
        for set in &mut small.fins {
            set.start_mm /= 10.0;
            set.planform = scaled(&set.planform, [0.1; 4]);
            mass(&mut set.mass);
        }
        for weight in &mut small.weights {
            weight.mass_g /= 10.0;
            weight.position_mm /= 10.0;
        }
        let name = &design.name;
        let report = evaluate(&small);
        let Some(small) = report.figures else {
            let stops = report.faults.iter().find(|f| f.severity() == Severity::Stop);
            let problem = stops.expect("a reason").problem;
            let small = matches!(problem, Problem::OutOfBounds { .. });
            assert!(small, "{name}: {problem:?}");
            continue;
        };
        compared += 1;
        let large = figures(&design);
        assert_close(name, 10.0 * small.mass.centre_m, large.mass.centre_m, 1e-12);
        assert_eq!(kind(small.outcome), kind(large.outcome), "{name}");
        assert_same_rests(name, &small.resting_angles, &rests(&large), UNCHANGED_RAD);
    }
    assert!(compared >= 50, "{compared}");
}

/// Root, tip, span and sweep times these.
fn scaled(planform: &Planform, times: [f64; 4]) -> Planform {
    let &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } = planform else {
        panic!("they are four-sided")
    };
    let [root, tip, span, sweep] = times;
    four_sided(root * root_mm, tip * tip_mm, span * span_mm, sweep * sweep_mm)
}

/// Half of the length off every fin: the outer half, or the rear half.
fn cut(design: &Design) -> [Design; 2] {
    let [mut outer, mut rear] = [design.clone(), design.clone()];
    for set in &mut outer.fins {
        let &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } = &set.planform
        else {
            panic!("they are four-sided")
        };
        let middle_mm = f64::midpoint(root_mm, tip_mm);
        set.planform = four_sided(root_mm, middle_mm, span_mm / 2.0, sweep_mm / 2.0);
    }
    for set in &mut rear.fins {
        set.planform = scaled(&set.planform, [0.5, 0.5, 1.0, 1.0]);
    }
    [outer, rear]
}

/// The weakest moment back towards nose-first, in m³ on the pressure, where the rocket is
/// turned by 10 to 170 degrees.
fn weakest_m3(figures: &Figures) -> f64 {
    let area_m2 = PI * figures.body_width_m * figures.body_width_m / 4.0;
    let moment = |degrees: u32| {
        let angle_rad = f64::from(degrees).to_radians();
        figures.air.turning_moment_m(angle_rad, figures.mass.centre_m)
    };
    (10..=170).map(moment).fold(f64::INFINITY, f64::min) * area_m2
}

/// Common practice, no source: cutting half of the length off every fin of a rocket that
/// flies well takes it towards tumbling. Of Puffin and Gannet, which right themselves, the
/// outer half matters most: at most 0.35 of the push is left. Without the rear half, which
/// lightens the tail too, it is at most 0.85.
#[test]
fn shorter_fins_take_a_good_rocket_towards_tumbling() {
    for example in [Example::Puffin, Example::Gannet] {
        let design = example.design();
        let before = figures(&design);
        assert_eq!(before.outcome, Outcome::SelfRighting);
        // About a body width apart in the view of the drawing.
        assert!(before.separation_body_widths > 0.9);
        for (cut, left) in cut(&design).iter().zip([0.35, 0.85]) {
            let after = figures(cut);
            let share = weakest_m3(&after) / weakest_m3(&before);
            assert!(share < left, "{example:?}: {share}");
            assert!(rank(&after) >= rank(&before));
            let nose_on = |f: &Figures| f.centre_of_pressure_nose_on_m.unwrap();
            assert!(nose_on(&after) < nose_on(&before) - 0.01, "{example:?}");
        }
    }
    // With half of its clay or less Puffin still rights itself, but no longer without the
    // outer half of its fins.
    for clay_g in [2.0, 4.0, 6.0, 8.0, 10.0] {
        let mut design = Example::Puffin.design();
        design.weights[0].mass_g = clay_g;
        assert_eq!(figures(&design).outcome, Outcome::SelfRighting, "{clay_g} g");
        let [outer, _] = cut(&design);
        let outcome = figures(&outer).outcome;
        assert!(matches!(outcome, Outcome::Broadside { .. }), "{clay_g} g: {outcome:?}");
    }
}

/// Common practice, no source: weight in the nose improves a rocket, and enough of it puts
/// any of them right.
#[test]
fn weight_in_the_nose_improves() {
    let mut improved = 0;
    for mut design in sound() {
        let name = design.name.clone();
        let mut before = figures(&design);
        let first = rank(&before);
        design.weights.push(Weight { label: "clay".into(), ..Weight::default() });
        for grams in [1.0, 5.0, 20.0, 80.0, 320.0, 1280.0, 5000.0] {
            design.weights.last_mut().expect("it has one").mass_g = grams;
            let after = figures(&design);
            assert!(rank(&after) <= rank(&before), "{name}: {grams} g");
            assert!(weakest_m3(&after) > weakest_m3(&before), "{name}: {grams} g");
            before = after;
        }
        assert_eq!(before.outcome, Outcome::SelfRighting, "{name}");
        improved += u32::from(first > 0);
    }
    assert!(improved >= 45, "{improved}");
}

/// The same rocket hung as far ahead of its centre of pressure side-on as this.
fn hung(design: &Design, separation_mm: f64) -> Figures {
    let centre_m = figures(design).centre_of_pressure_side_on_m - separation_mm / 1e3;
    let hung = MeasuredPoints::hung_at(centre_m).expect("a finite place");
    let figures = evaluate_measured(design, &hung).figures.expect("it has figures");
    assert_within("separation", figures.separation_m * 1e3, separation_mm, 1e-9);
    figures
}

/// Common practice, no source: the closer the two points, the worse.
#[test]
fn closer_points_are_worse() {
    for design in sound() {
        let name = &design.name;
        let plain = figures(&design);
        let centre_mm = 1e3 * plain.centre_of_pressure_side_on_m;
        let length_mm = 1e3 * plain.length_m;
        let (mut worst, mut weakest) = (0, f64::INFINITY);
        for k in 0..=40 {
            let hanging_mm = length_mm * (0.005 + 0.99 * f64::from(k) / 40.0);
            let here = hung(&design, centre_mm - hanging_mm);
            assert!(rank(&here) >= worst, "{name} hung at {hanging_mm} mm");
            assert!(weakest_m3(&here) < weakest, "{name} hung at {hanging_mm} mm");
            (worst, weakest) = (rank(&here), weakest_m3(&here));
            assert!(k > 0 || worst == 0, "{name}: hung at the nose it rights itself");
        }
        assert!(worst > 0, "{name}: hung at the tail it does not");
    }
}

/// Common practice, no source: on a hand-sized bottle rocket, points less than 10 mm apart
/// go with tumbling or sideways flight.
///
/// So it is with Tern, whose fins are small. Puffin and Razorbill have large fins at the tail,
/// which push harder on their area than the body does: the model says that they still
/// right themselves with the two points together, with at most a quarter of the push that
/// they have at one calibre. The fact is met there in its direction, not in its word.
#[test]
fn points_less_than_ten_millimetres_apart() {
    for (example, tumbles) in
        [(Example::Tern, true), (Example::Puffin, false), (Example::Razorbill, false)]
    {
        let design = example.design();
        let calibre = hung(&design, 1e3 * figures(&design).body_width_m);
        assert_eq!(calibre.outcome, Outcome::SelfRighting, "{example:?}");
        for separation_mm in [0.0, 5.0, 9.9] {
            let here = hung(&design, separation_mm);
            let share = weakest_m3(&here) / weakest_m3(&calibre);
            assert!(share < 0.25, "{example:?} at {separation_mm} mm: {share}");
            let broadside = matches!(here.outcome, Outcome::Broadside { .. });
            assert_eq!(broadside, tumbles, "{example:?} at {separation_mm} mm");
        }
        let behind = hung(&design, -9.9).outcome;
        assert!(matches!(behind, Outcome::Broadside { .. }), "{example:?}: {behind:?}");
    }
}
