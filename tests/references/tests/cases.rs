//! Designs at which an earlier model of the air jumped, counted twice or lost something.
//! They were found by an independent check; no publication.

use std::collections::BTreeMap;

use noseward_references_tests::{assert_within, figures};
use noseward_stability::{
    Air, Body, Design, Doubts, Figures, MeasuredPoints, Model, Outcome, Problem,
    Resolution, SeparationDraws, Severity, evaluate, separation_over_rolls,
};
use serde::Deserialize;

#[derive(Deserialize)]
struct Cases {
    designs: BTreeMap<String, Design>,
}

fn case(name: &str) -> Design {
    let cases: Cases = serde_json::from_str(include_str!("../data/cases.json"))
        .expect("it is in the project's own JSON");
    cases.designs.get(name).unwrap_or_else(|| panic!("no case {name}")).clone()
}

fn nose_on_mm(figures: &Figures) -> f64 {
    figures.centre_of_pressure_nose_on_m.expect("the air pushes") * 1e3
}

/// Four fins turned by half the angle between them show less of themselves: as drawn the
/// points are 67 mm apart, turned by 45 degrees 56.5. The rocket is the same one.
#[test]
fn the_roll_of_the_drawing_does_not_decide() {
    let (flat, turned) =
        (figures(&case("puffin_roll0")), figures(&case("puffin_roll45")));
    assert_within("as drawn", flat.separation_m * 1e3, 67.0, 0.5);
    assert_within("turned", turned.separation_m * 1e3, 56.5, 0.1);
    assert_within(
        "same rocket",
        flat.least_separation_m,
        turned.least_separation_m,
        1e-12,
    );
    assert_within("turned", flat.least_separation_m, turned.separation_m, 1e-12);
    assert_eq!(flat.outcome, turned.outcome);
    assert_within("nose-on", nose_on_mm(&flat), nose_on_mm(&turned), 1e-9);
    // It is judged turned by 45 degrees, or by as much the other way.
    assert_within("roll", flat.deciding_roll_deg.rem_euclid(90.0), 45.0, 1e-9);
    assert_within("roll", turned.deciding_roll_deg.rem_euclid(90.0), 0.0, 1e-9);
}

/// Nothing that a search in steps of half a degree finds is less favourable than the least
/// favourable roll by more than half a millimetre: what a ruler can tell.
#[test]
fn no_other_roll_is_less_favourable() {
    for name in ["puffin_roll0", "two_fins_tie_span30", "eight_two_sets_of_four"] {
        for counts in [None, Some(2), Some(3), Some(5), Some(7)] {
            let mut design = case(name);
            if let Some(count) = counts {
                design.fins[0].count = count;
            }
            let drawn = figures(&design);
            let over = separation_over_rolls(&design, &drawn).expect("it has a body");
            assert_within("least", over.least, drawn.least_separation_m, 0.5e-3);
            let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
            for half_degrees in 0..360 {
                let mut turned = design.clone();
                for set in &mut turned.fins {
                    set.roll_deg += 0.5 * f64::from(half_degrees);
                }
                let here = figures(&turned).separation_m;
                (least, most) = (least.min(here), most.max(here));
            }
            assert!(
                drawn.least_separation_m < least + 0.5e-3,
                "{name} {counts:?}: {least}"
            );
            assert_within(name, over.most, most, 0.5e-3);
        }
    }
}

/// A tenth of a millimetre of span moves nothing by more than a millimetre.
#[test]
fn two_fins_do_not_jump_from_plane_to_plane() {
    for (a, b) in [
        ("pair_plane_jump_a", "pair_plane_jump_b"),
        ("two_fins_tie_span29", "two_fins_tie_span30"),
    ] {
        let (a, b) = (figures(&case(a)), figures(&case(b)));
        assert_within("nose-on", nose_on_mm(&a), nose_on_mm(&b), 1.0);
        let (a, b) = (a.least_separation_m, b.least_separation_m);
        assert_within("separation", a * 1e3, b * 1e3, 1.0);
    }
}

/// Eight fins are eight fins, however they are typed.
#[test]
fn fins_at_one_place_count_together() {
    let one = figures(&case("eight_one_set"));
    let two = figures(&case("eight_two_sets_of_four"));
    assert_within("nose-on", nose_on_mm(&one), nose_on_mm(&two), 1e-6);
    assert_within("side-on", one.separation_m, two.separation_m, 1e-9);
    assert_eq!(one.outcome, two.outcome);
    // And no more than four of them push.
    let mut four = case("eight_one_set");
    four.fins[0].count = 4;
    let four = figures(&four).normal_force_slope_per_rad;
    assert_within("slope", one.normal_force_slope_per_rad, four, 1e-9);
}

fn asked(name: &str) -> Vec<(String, Problem, Severity)> {
    let faults = evaluate(&case(name)).faults.into_iter();
    faults.map(|f| (f.field.to_string(), f.problem, f.severity())).collect()
}

#[test]
fn odd_sets_of_fins_are_named() {
    let twice = asked("same_set_twice");
    let place = ("/fins/1/roll_deg".to_owned(), Problem::SameFinsTwice, Severity::Ask);
    assert!(twice.contains(&place), "{twice:?}");
    let floating = asked("floating_fin");
    let place =
        ("/fins/0/planform".to_owned(), Problem::FinTouchesNothing, Severity::Stop);
    assert_eq!(floating, [place]);
    let tandem = asked("tandem_sets");
    let place = ("/fins/0/start_mm".to_owned(), Problem::FinsInWake, Severity::Ask);
    assert!(tandem.contains(&place), "{tandem:?}");
}

/// The set behind may push nothing at all: the doubt reaches from there to full.
#[test]
fn fins_in_a_wake_have_a_band() {
    let design = case("tandem_sets");
    let whole = figures(&design);
    let doubts = Doubts::of(&design, &whole).expect("it has a body");
    let band = doubts.centre_of_pressure_nose_on_m.expect("the air pushes");
    let mut ahead_alone = design.clone();
    ahead_alone.fins.remove(0);
    let alone = Air::new(&ahead_alone, Model::default(), None).expect("it has a body");
    let alone_m = alone.centre_of_pressure_m(0.0).expect("the air pushes");
    assert!(band.least <= alone_m + 1e-9, "{band:?} {alone_m}");
    assert!(band.most >= whole.centre_of_pressure_nose_on_m.expect("the air pushes"));
}

/// A fin that mostly lies inside the nose pushes with what is outside: less than the whole
/// fin would, by the formula of [`air_nose_on`](../air_nose_on.rs), and further forward.
#[test]
fn what_lies_inside_the_body_pushes_nothing() {
    let design = case("fins_buried_in_nose");
    let body = Body::new(&design).expect("it has a body");
    let (span, chord, start) = (0.015, 0.100, 0.010);
    let radius = body.radius_at_m(start);
    let (s_over_d, r_over) = (span / body.width_m(), radius / (span + radius));
    let lean: f64 = span / chord;
    let whole =
        (1.0 + r_over) * 16.0 * s_over_d * s_over_d / (1.0 + (1.0 + lean * lean).sqrt());
    let air = Air::new(&design, Model::default(), None).expect("it has a body");
    let shown = air.parts().last().expect("the second set");
    assert!(shown.slope_per_rad < 0.9 * whole, "{} {whole}", shown.slope_per_rad);
    assert!(shown.forward_centre_m < start + 0.25 * chord);
}

/// A reading at the edge of what a shape allows loses no draw.
#[test]
fn a_half_ball_loses_no_draw() {
    let design = case("half_ball_dome");
    let mut draws =
        SeparationDraws::new(&design, &MeasuredPoints::default(), Resolution::default());
    draws.run(10_000);
    assert_eq!(draws.lost(), 0);
    assert!(draws.verdict().is_some());
}

/// What readings and model leave open is told by the word before the outcome.
#[test]
fn a_rocket_whose_air_sources_differ_is_only_probably_so() {
    let design = case("puffin_roll0");
    let found = figures(&design);
    assert_eq!(found.outcome, Outcome::SelfRighting);
    let doubts = Doubts::of(&design, &found).expect("it has a body");
    let band = doubts.centre_of_pressure_nose_on_m.expect("the air pushes");
    assert!(band.most - band.least > 0.02, "{band:?}");
}
