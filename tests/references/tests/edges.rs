//! Places and sizes at the very edge, where a sum of decimals is off by its last bit.
//!
//! Places that a person types are on a grid of 0.1 mm, which binary numbers only come near:
//! 60.1 mm and 155.7 mm do not add up to 215.8 mm exactly. No source is needed: what must
//! come out is what the drawing shows.

use noseward_references_tests::{
    assert_close, bare, body, figures, fins, four_sided, section,
};
use noseward_stability::{Design, SectionKind, Weight, evaluate};

/// A slim arc is a parabola but for a share of (width / length)² (see
/// `handbook_shapes.rs`); at 1 : 400 and beyond less than this.
const SLIM: f64 = 1e-5;

/// Two tubes of 60 mm width, a few thousand pairs of lengths, and where the second ends.
fn tubes() -> impl Iterator<Item = (Design, f64)> {
    let second = [155.7, 200.2, 125.3, 60.1, 55.0, 33.3];
    let pairs = (600..1000).flat_map(move |tenths| second.map(|b| (tenths, b)));
    pairs.map(|(tenths, b)| {
        let a = f64::from(tenths) / 10.0;
        let end_mm = ((a + b) * 10.0).round() / 10.0;
        let tube = |length_mm| section(SectionKind::Tube, length_mm, 60.0);
        (bare(vec![tube(a), tube(b)]), end_mm)
    })
}

/// A fin that starts where the body steps in sits on what is behind the step, as
/// `Body::radius_at_m` says.
#[test]
fn a_fin_at_a_step_sits_on_what_is_behind_it() {
    for (mut design, end_mm) in tubes() {
        design.sections.push(section(SectionKind::Tube, 100.0, 30.0));
        design.fins.push(fins(2, end_mm, four_sided(50.0, 50.0, 40.0, 0.0)));
        assert_close(
            &format!("radius at {end_mm} mm"),
            body(&design).radius_at_m(end_mm / 1000.0),
            0.015,
            1e-12,
        );
        let fins_m2 = 2.0 * 0.050 * 0.040;
        let body_m2 = 0.060 * end_mm / 1000.0 + 0.030 * 0.100;
        let found = figures(&design).side_area_m2;
        assert_close(&format!("{end_mm} mm"), found, body_m2 + fins_m2, 1e-9);
    }
}

/// A weight, or the string, at the very tail is not outside the rocket.
#[test]
fn the_tail_belongs_to_the_rocket() {
    for (mut design, end_mm) in tubes() {
        design.weights.push(Weight {
            label: String::new(),
            mass_g: 5.0,
            position_mm: end_mm,
        });
        let report = evaluate(&design);
        assert!(report.figures.is_some(), "{end_mm} mm: {:?}", report.faults);
    }
}

/// Beyond the tail by the least that can be typed is outside.
#[test]
fn a_step_of_the_grid_behind_the_tail_is_outside() {
    for (mut design, end_mm) in tubes() {
        let position_mm = ((end_mm + 0.1) * 10.0).round() / 10.0;
        design.weights.push(Weight { label: String::new(), mass_g: 5.0, position_mm });
        assert!(evaluate(&design).figures.is_none(), "{end_mm} mm");
    }
}

/// The slimmest ogives that the bounds allow: half a parabola, 5/8 of the length from the
/// point (MathWorld, "Parabola"; page not read, confirmed by integration with sympy). The
/// arc's radius is up to 4 km there.
#[test]
fn the_slimmest_ogives() {
    for (l_mm, w_mm) in [(2000.0, 1.0), (1000.0, 1.0), (2000.0, 2.0), (2000.0, 5.0)] {
        let design = bare(vec![section(SectionKind::Ogive, l_mm, w_mm)]);
        let found = figures(&design);
        let name = format!("{l_mm} × {w_mm} mm");
        let box_m2 = l_mm * w_mm * 1e-6;
        assert_close(&name, found.side_area_m2, 2.0 / 3.0 * box_m2, SLIM);
        let centroid_m = 5.0 / 8.0 * l_mm / 1000.0;
        assert_close(&name, found.centre_of_pressure_side_on_m, centroid_m, SLIM);
    }
}

/// The flattest domes: again a parabola, 3/5 of the height from the vertex (MathWorld,
/// "Parabolic Segment"; page not read, confirmed by integration with sympy).
#[test]
fn the_flattest_domes() {
    for w_mm in [250.0, 400.0, 500.0] {
        let design = bare(vec![section(SectionKind::Dome, 1.0, w_mm)]);
        let found = figures(&design);
        let box_m2 = w_mm * 1e-6;
        let slim = 2.0 / (w_mm * w_mm);
        assert_close("area", found.side_area_m2, 2.0 / 3.0 * box_m2, slim);
        // A centroid is a difference of two large moments here: seven digits are left.
        let centroid = found.centre_of_pressure_side_on_m * 1000.0;
        assert_close("centroid", centroid, 0.6, slim.max(1e-6));
    }
}
