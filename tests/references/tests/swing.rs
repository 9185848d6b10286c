//! The rocket on its string: against scipy, hand formulas, and what every class finds out.
//!
//! The motions are compared with `tests/fixtures/swing.json`, which `make_swing.py` works out
//! from the published formulas written again in Python, with scipy's DOP853 at its tightest.

use std::f64::consts::{FRAC_PI_2, PI};

use noseward_references_tests::{
    assert_close, assert_within, figures, four_sided, section,
};
use noseward_stability::{
    Air, Design, Example, Figures, Mass, MeasuredPoints, Model, Outcome, Planform,
    Resolution, SectionKind, Settles, Swing, SwingDraws, SwingLimit, SwingSetup,
    Trajectory, Weight, evaluate_measured,
};
use serde::Deserialize;

const SWINGS: &str = include_str!("../../fixtures/swing.json");

/// How closely angles agree, in radians, and settling times, in seconds: steps are allowed
/// 5e-11, and add up.
const MOTION: f64 = 1e-7;
/// Masses, inertias: the same sums in another order, shells by quadrature.
const SAME: f64 = 1e-9;
/// Damping: the spread of a section's side area is exact for straight sides.
const DAMPING: f64 = 1e-9;

#[derive(Deserialize)]
struct Swings {
    samples_s: f64,
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    design: Design,
    setup: SwingSetup,
    start_rad: f64,
    mass_kg: f64,
    across_kg_m2: f64,
    along_kg_m2: f64,
    damping_n_m_s: [f64; 3],
    angles_rad: Vec<f64>,
    elevations_rad: Vec<f64>,
    rest_rad: f64,
    settled_s: f64,
}

fn swings() -> Swings {
    serde_json::from_str(SWINGS).expect("it is in the project's own JSON")
}

fn usual() -> SwingSetup {
    SwingSetup::default()
}

fn swing(design: &Design, setup: &SwingSetup) -> Swing {
    swung(&figures(design), setup)
}

fn swung(figures: &Figures, setup: &SwingSetup) -> Swing {
    Swing::new(figures, setup).expect("it can be swung")
}

#[test]
fn motions_agree_with_scipy() {
    let swings = swings();
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "25")]
    let every = (swings.samples_s / Trajectory::STEP_S).round() as usize;
    let mut kinds = [0; 3];
    for case in &swings.cases {
        let name = &case.design.name;
        let mut figures = figures(&case.design);
        // In the plane of the drawing, whichever roll decides.
        figures.air =
            Air::new(&case.design, Model::default(), None).expect("it has a body");
        let mass = figures.mass;
        assert_close(name, mass.mass_kg, case.mass_kg, SAME);
        assert_close(name, mass.transverse_inertia_kg_m2, case.across_kg_m2, SAME);
        assert_close(name, mass.axial_inertia_kg_m2, case.along_kg_m2, SAME);
        let swing = swung(&figures, &case.setup);
        for (angle_rad, damping) in [0.0, 0.7, 2.2].into_iter().zip(case.damping_n_m_s) {
            assert_close(name, swing.damping_n_m_s(angle_rad), damping, DAMPING);
        }
        let watched_s = swings.samples_s * 20.0;
        let samples = swing.trajectory(case.start_rad, watched_s).samples;
        assert_eq!(samples.len(), 20 * every + 1);
        assert_eq!(case.angles_rad.len(), 21);
        let expected = case.angles_rad.iter().zip(&case.elevations_rad);
        for (sample, (&angle_rad, &elevation_rad)) in
            samples.iter().step_by(every).zip(expected)
        {
            let what = format!("{name} at {} s", sample.time_s);
            assert_within(&what, sample.angle_rad, angle_rad, MOTION);
            assert_within(&what, sample.elevation_rad, elevation_rad, MOTION);
        }
        let settling = swing.settling(case.start_rad);
        assert_within(name, settling.rest_rad.expect("it rests"), case.rest_rad, MOTION);
        let when = settling.when.expect("it settles");
        assert_within(name, when.on_axis_s(), case.settled_s, MOTION);
        let (kind, expected) = match settling.comes_to {
            Settles::NoseFirst => (0, 0.0),
            Settles::TailFirst => (1, PI),
            Settles::Across { angle_rad } => (2, angle_rad),
            still @ Settles::StillSwinging { .. } => panic!("{name}: {still:?}"),
        };
        assert_within(name, case.rest_rad, expected, MOTION);
        kinds[kind] += 1;
    }
    assert_eq!(kinds, [6, 6, 6], "each end and across are worth the name");
}

/// A tube of a metre that weighs so much: half of it is the 0.5 m of the hand table.
fn metre(grams: f64) -> Design {
    let mut tube = section(SectionKind::Tube, 1000.0, 50.0);
    tube.mass = Mass::WeighedG(grams);
    Design { sections: vec![tube], ..Design::default() }
}

/// By hand: v = 2π r f and T = m v²/r, written to one digit. The hand turns on the spot in
/// this table: no arm.
#[test]
fn how_fast_and_how_hard() {
    for (grams, string_m, speed, pull) in
        [(100.0, 1.0, 6.3, 3.9), (150.0, 1.5, 9.4, 8.9), (110.0, 2.0, 12.6, 8.7)]
    {
        let setup = SwingSetup { string_m, arm_m: 0.0, turns_per_s: 1.0, ..usual() };
        let space = swing(&metre(grams), &setup).space();
        assert_within("speed", space.speed_m_per_s, speed, 0.05);
        assert_within("pull", space.pull_n, pull, 0.05);
        assert_within("swept", space.swept_m, string_m + 0.5, 1e-12);
    }
}

/// By hand, let go at 1.5 m and 20 degrees upwards without drag: with 8.55 m/s at 1.7 m and
/// 0.8 turns a second the rocket climbs at 2.92 m/s and goes at 8.03; it falls for
/// (2.92 + √(2.92² + 2 · 9.81 · 1.5))/9.81 = 0.926 s and flies 7.44 m. With 13.82 m/s (2.2 m,
/// one turn) 4.73 and 12.99 m/s, 1.216 s, 15.79 m.
#[test]
fn the_room_that_a_swing_takes() {
    let half_m = 0.5;
    let space = swing(&metre(150.0), &usual()).space();
    assert_within("throw", space.throw_m, 7.44, 0.005);
    assert_within("swept", space.swept_m, 1.7 + half_m, 1e-12);
    // 9.64 m, up to the next half metre.
    assert_within("clear", space.clear_m, 10.0, 1e-12);
    assert_within("across", space.clear_across_m(), 20.0, 1e-12);
    let old = SwingSetup { string_m: 1.5, turns_per_s: 1.0, ..usual() };
    let space = swing(&metre(150.0), &old).space();
    assert_within("throw", space.throw_m, 15.79, 0.005);
    assert_within("clear", space.clear_m, 18.5, 1e-12);
    // Level from there it would fly √(2 · 1.5/9.81) · 13.82 = 7.64 m, half as far.
    assert!(space.throw_m > 2.0 * 7.64);
    // So slow that 20 degrees are steeper than what flies furthest: with 1.885 m/s that is
    // at 18.2 degrees, V/g · √(V² + 2 g h) = 0.1922 · 5.742 = 1.104 m.
    let slow = SwingSetup { string_m: 0.3, arm_m: 0.0, turns_per_s: 1.0, ..usual() };
    let space = swing(&metre(150.0), &slow).space();
    assert_within("furthest", space.throw_m, 1.104, 5e-4);
}

/// The usual string and pace fit a hall with every example: 9.5 m at most.
#[test]
fn the_usual_swing_fits_a_hall() {
    for example in Example::ALL {
        let swing = swing(&example.design(), &usual());
        let space = swing.space();
        assert!(space.clear_m <= 9.5, "{example:?}: {space:?}");
        // Told once, everywhere the same: half metres.
        assert_eq!((space.clear_m * 2.0).fract(), 0.0);
        assert!(space.clear_m >= space.swept_m + space.throw_m);
        assert!(space.clear_m < space.swept_m + space.throw_m + 0.5);
        assert!(space.about_m <= space.clear_m && space.about_m > space.swept_m);
        let rows = swing.smaller_spaces();
        assert!(rows.len() >= 3, "{example:?}: {rows:?}");
        for row in rows {
            assert!(row.clear_m < space.clear_m, "{example:?}: {row:?}");
            let hung = swung(&figures(&example.design()), &row.setup);
            assert_eq!(hung.space().clear_m, row.clear_m);
        }
    }
}

/// A rocket across its path is braked by its whole side: by hand a tube of 0.3 m, 50 mm
/// wide, c = 0.75, 40 g: k = ½ · 1.225 · 0.75 · 0.015/0.04 = 0.172 per metre, so that the
/// horizontal flight of 7.44 m shrinks to some ln(1 + 0.172 · 7.44)/0.172 = 4.8 m.
#[test]
fn its_own_drag_shortens_the_throw() {
    let mut tube = metre(40.0);
    tube.sections[0].length_mm = 300.0;
    let across = swing(&tube, &usual());
    assert!(matches!(across.outcome(), Outcome::Broadside { .. }));
    let space = across.space();
    assert_within("about", space.about_m, 1.85 + 4.8, 0.5);
    // Nose-first next to nothing brakes it.
    let puffin = swing(&Example::Puffin.design(), &usual()).space();
    assert!(puffin.clear_m - puffin.about_m <= 1.0, "{puffin:?}");
    // The thinner the air, the further.
    let thin = SwingSetup { air_density_kg_m3: 0.8, ..usual() };
    assert!(swing(&tube, &thin).space().about_m > space.about_m);
}

/// Above 15 m/s or 15 N there is no result.
#[test]
fn too_fast_or_too_hard_is_not_swung() {
    let wild = SwingSetup { string_m: 3.0, turns_per_s: 3.0, ..usual() };
    let heavy = metre(650.0);
    assert_eq!(wild.limit(0.65), Some(SwingLimit::TooFast));
    assert!(Swing::new(&figures(&heavy), &wild).is_none());
    // 0.65 kg at 8.55 m/s on 1.7 m pull with 27.9 N.
    assert_eq!(usual().limit(0.65), Some(SwingLimit::PullsTooHard));
    assert!(Swing::new(&figures(&heavy), &usual()).is_none());
    // 15 N are 0.349 kg.
    assert_eq!(usual().limit(0.34), None);
    assert_eq!(usual().limit(0.36), Some(SwingLimit::PullsTooHard));
    // 15 m/s are 1.404 turns a second on 1.7 m.
    let at = |turns_per_s| SwingSetup { turns_per_s, ..usual() }.limit(0.05);
    assert_eq!((at(1.40), at(1.41)), (None, Some(SwingLimit::TooFast)));
}

/// A rocket of an independent check, at which air and spin nearly cancel: what a ruler
/// leaves open decides.
#[test]
fn a_rocket_at_the_border_is_too_close_to_call() {
    let cases: serde_json::Value =
        serde_json::from_str(include_str!("../data/cases.json"))
            .expect("it is in the project's own JSON");
    let design: Design =
        serde_json::from_value(cases["designs"]["example_razorbill"].clone())
            .expect("a design");
    // About half of them on the usual string.
    for setup in [usual(), SwingSetup { string_m: 1.5, turns_per_s: 1.0, ..usual() }] {
        let nothing = MeasuredPoints::default();
        let mut draws = SwingDraws::new(&design, &nothing, &setup, Resolution::default());
        while !draws.is_done() {
            draws.run(20);
        }
        let verdict = draws.verdict().expect("they are made");
        assert!(verdict.is_too_close(), "{verdict:?}");
        let nose_first = verdict.shares[0] + verdict.shares[1];
        assert!((0.2..0.8).contains(&nose_first), "{verdict:?}");
    }
}

/// When it first points within 10 degrees of nose-first, let go square across, in seconds.
fn comes_round_s(swing: &Swing) -> f64 {
    let samples = swing.trajectory(FRAC_PI_2, swing.watched_s()).samples;
    let ten = 10_f64.to_radians();
    let i = samples.iter().position(|t| t.angle_rad < ten).expect("it comes round");
    let (a, b) = (samples[i - 1], samples[i]);
    let share = (a.angle_rad - ten) / (a.angle_rad - b.angle_rad);
    a.time_s + share * (b.time_s - a.time_s)
}

/// The same rocket hung as far ahead of its centre of pressure side-on as this.
fn hung(design: &Design, separation_mm: f64) -> Figures {
    let centre_m = figures(design).centre_of_pressure_side_on_m - separation_mm / 1e3;
    let hung = MeasuredPoints::hung_at(centre_m).expect("a finite place");
    evaluate_measured(design, &hung).figures.expect("it has figures")
}

/// Common practice, no source: the further the centre of mass is ahead of the centre of
/// pressure, the quicker the rocket comes round nose-first.
#[test]
fn a_larger_separation_comes_round_quicker() {
    for example in [Example::Puffin, Example::Razorbill, Example::Gannet] {
        for setup in [
            SwingSetup::default(),
            SwingSetup { string_m: 0.8, turns_per_s: 1.4, ..SwingSetup::default() },
        ] {
            let mut before = 0.0;
            for separation_mm in [70.0, 60.0, 50.0, 40.0, 30.0, 20.0] {
                let figures = hung(&example.design(), separation_mm);
                let time_s = comes_round_s(&swung(&figures, &setup));
                assert!(
                    time_s > before * 1.01,
                    "{example:?} at {separation_mm} mm: {time_s} after {before}"
                );
                before = time_s;
            }
        }
    }
}

/// Half of the length off every fin: the outer half.
fn cut(design: &Design) -> Design {
    let mut cut = design.clone();
    for set in &mut cut.fins {
        let Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } = set.planform
        else {
            panic!("they are four-sided")
        };
        let middle_mm = f64::midpoint(root_mm, tip_mm);
        set.planform = four_sided(root_mm, middle_mm, span_mm / 2.0, sweep_mm / 2.0);
    }
    cut
}

/// Common practice, no source: cutting half of the length off every fin of a rocket that
/// flies well takes it towards sideways.
///
/// At small angles a third of the air's push is left, or less. Gannet still comes round from
/// across, and only a tenth slower: there its fins count by area, and it is lighter to turn.
#[test]
fn shorter_fins_come_round_slower_or_stay_across() {
    let setup = SwingSetup::default();
    for example in [Example::Puffin, Example::Gannet] {
        let design = example.design();
        let whole = swing(&design, &setup);
        let short = swing(&cut(&design), &setup);
        assert_eq!(whole.settling(FRAC_PI_2).comes_to, Settles::NoseFirst);
        let push = |swing: &Swing| swing.shares().air_stiffness_n_m;
        assert!(push(&short) < 0.35 * push(&whole), "{example:?}");
        if short.settling(FRAC_PI_2).comes_to == Settles::NoseFirst {
            let (whole_s, short_s) = (comes_round_s(&whole), comes_round_s(&short));
            assert!(short_s > 1.05 * whole_s, "{example:?}: {whole_s} and {short_s}");
        }
    }
    // With little clay Puffin comes round, but lies across without the outer halves.
    for clay_g in [2.0, 4.0, 6.0] {
        let mut design = Example::Puffin.design();
        design.weights[0].mass_g = clay_g;
        assert_eq!(swing(&design, &setup).settling(1.0).comes_to, Settles::NoseFirst);
        let short = swing(&cut(&design), &setup).settling(1.0).comes_to;
        assert!(matches!(short, Settles::Across { .. }), "{clay_g} g: {short:?}");
    }
}

/// A bottle-wide tube without fins, weighed at both ends, so that the two points fall
/// together.
fn dumb_bell(end_g: f64) -> Design {
    let mut tube = section(SectionKind::Tube, 300.0, 65.0);
    tube.mass = Mass::WeighedG(40.0);
    let end = |position_mm| Weight { label: String::new(), mass_g: end_g, position_mm };
    Design {
        sections: vec![tube],
        weights: vec![end(0.0), end(300.0)],
        ..Design::default()
    }
}

/// Common practice, no source: a long rocket without any separation can look steered on
/// the string, and can fly tail-first.
///
/// It takes mass at the ends or a short string: both pulls grow with the pace alike, but the
/// air's also with the square of the radius. A light tube on a long string lies across.
#[test]
fn a_long_body_without_separation_looks_steered() {
    let long = SwingSetup { string_m: 1.5, turns_per_s: 1.0, ..usual() };
    let short = SwingSetup { string_m: 0.4, arm_m: 0.0, turns_per_s: 1.2, ..usual() };
    for (end_g, setup, held) in
        [(150.0, usual(), true), (10.0, long, false), (10.0, short, true)]
    {
        let design = dumb_bell(end_g);
        assert_within("points", figures(&design).separation_m, 0.0, 1e-12);
        let swing = swing(&design, &setup);
        let ranges = swing.starts().ranges();
        let trap = ranges.iter().any(|range| range.is_tail_first_trap());
        let nose = ranges.iter().any(|range| range.comes_to == Settles::NoseFirst);
        assert_eq!((trap, nose), (held, held), "{end_g} g: {ranges:?}");
        let shares = swing.shares();
        assert_eq!(shares.spin_alone_holds, held);
        assert_eq!(shares.string_flatters, held);
        assert!(shares.air_stiffness_n_m < 0.0);
        // Without the spin nothing holds it but across.
        assert!(matches!(swing.air_alone().outcome(), Outcome::Broadside { .. }));
    }
}

/// Shorter strings leave more to the spin: its share grows as the radius shrinks.
#[test]
fn a_shorter_string_leaves_more_to_the_spin() {
    for example in [Example::Puffin, Example::Gannet] {
        let share = |string_m| {
            let setup = SwingSetup { string_m, arm_m: 0.0, turns_per_s: 1.1, ..usual() };
            let shares = swing(&example.design(), &setup).shares();
            shares.spin_share_at_small_angles.expect("both turn back")
        };
        let (long, short) = (share(2.1), share(0.3));
        assert!(long < 0.1 && short > 5.0 * long, "{example:?}: {long} and {short}");
        // Air by spin goes with the square of the radius.
        let ratio = |share: f64| (1.0 - share) / share;
        assert_close("square", ratio(long), 49.0 * ratio(short), 1e-9);
    }
}
