//! The centre of pressure nose-on against published values and worked cases.
//!
//! Source of every table: slender-body theory (Munk, NACA Report 184, 1924) and the
//! component method (Barrowman & Barrowman 1966; Barrowman 1967, master's thesis); each
//! file says on its first line what is from memory.

use noseward_references_tests::{
    assert_close, assert_within, bare, body, fins, four_sided, section, table,
};
use noseward_stability::{
    Air, AirPart, CarryOver, Component, Design, Model, SectionKind, Shoulder,
};

const NOSES: &str = include_str!("../data/nose_cp.csv");
const OGIVE: &str = include_str!("../data/tangent_ogive.csv");
const CASES: &str = include_str!("../data/cp_worked_cases.csv");
const FINNER: &str = include_str!("../data/basic_finner.csv");

/// Half of the last of the eight digits of `tangent_ogive.csv`.
const EIGHT_DIGITS: f64 = 0.5e-8 + 1e-12;
/// Half of the last of the six digits of the worked cases.
const SIX_DIGITS: f64 = 0.5e-6 + 1e-10;
/// A closed form against double precision.
const EXACT: f64 = 1e-9;
/// The centre of a rounded shoulder comes by quadrature.
const QUADRATURE: f64 = 1e-8;

/// One calibre of the cases in calibres, in millimetres.
const CALIBRE_MM: f64 = 100.0;
/// 0.5 / tan 10°: the cone of `basic_finner.csv`, which gives four decimals of it.
const CONE_CALIBRES: f64 = 2.835_640_909_8;

fn air(design: &Design, model: Model) -> Air {
    Air::new(design, model, None).expect("the design has a body")
}

fn part(air: &Air, part: Component) -> AirPart {
    *air.parts().iter().find(|p| p.part == part).expect("it has the part")
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text} is a number"))
}

fn nose_on_m(air: &Air) -> f64 {
    air.centre_of_pressure_m(0.0).expect("the air pushes")
}

/// A nose and a tube behind it, which adds nothing.
fn nosed(kind: SectionKind, length_mm: f64, width_mm: f64) -> Design {
    bare(vec![
        section(kind, length_mm, width_mm),
        section(SectionKind::Tube, 300.0, width_mm),
    ])
}

/// The rows of `nose_cp.csv` that the project has a shape for.
#[test]
fn noses_of_the_table() {
    let rows = table(NOSES);
    for (name, kind) in [
        ("cone", SectionKind::Cone),
        ("paraboloid of revolution", SectionKind::Paraboloid),
        ("semi-ellipsoid", SectionKind::Ellipsoid),
    ] {
        let row = rows.iter().find(|r| r[0].starts_with(name)).expect(name);
        let (up, down) = row[2].split_once('/').expect("a fraction");
        let expected = number(up) / number(down);
        for width in [24.0, 65.0, 110.0] {
            for length in [0.4 * width, width, 3.0 * width] {
                let air = air(&nosed(kind, length, width), Model::default());
                assert_close(name, air.slope_per_rad(), 2.0, EXACT);
                assert_close(name, nose_on_m(&air) / length * 1e3, expected, EXACT);
            }
        }
    }
    // Half a ball is the dome of that length: 1/3.
    let dome = air(&nosed(SectionKind::Dome, 32.5, 65.0), Model::default());
    assert_close("dome", nose_on_m(&dome), 0.0325 / 3.0, EXACT);
}

#[test]
fn ogives_of_the_table() {
    for row in table(OGIVE) {
        let f = number(&row[0]);
        for width in [24.0, 65.0, 100.0] {
            let design = nosed(SectionKind::Ogive, f * width, width);
            let air = air(&design, Model::default());
            let found = nose_on_m(&air) / (f * width / 1e3);
            assert_within(&format!("f = {f}"), found, number(&row[1]), EIGHT_DIGITS);
            assert_close("slope", air.slope_per_rad(), 2.0, EXACT);
        }
    }
}

/// Geometry of the Basic Finner in calibres, from memory: a cone of 10° half-angle, ten
/// long, four square fins of one calibre that end at the base.
fn basic_finner() -> Design {
    let c = CALIBRE_MM;
    let mut design = bare(vec![
        section(SectionKind::Cone, CONE_CALIBRES * c, c),
        section(SectionKind::Tube, (10.0 - CONE_CALIBRES) * c, c),
    ]);
    design.fins = vec![fins(4, 9.0 * c, four_sided(c, c, c, 0.0))];
    design
}

/// The second worked case: an ogive nose of 200 mm on a bottle of 110 mm, three fins.
fn bottle() -> Design {
    let mut design = bare(vec![
        section(SectionKind::Ogive, 200.0, 110.0),
        section(SectionKind::Tube, 400.0, 110.0),
    ]);
    design.fins = vec![fins(3, 480.0, four_sided(120.0, 60.0, 90.0, 60.0))];
    design
}

/// Both cases of `cp_worked_cases.csv`: each component and the sum.
#[test]
fn worked_cases() {
    let rows = table(CASES);
    assert_eq!(rows.len(), 6);
    for (case, design, unit_m) in [
        ("basic_finner", basic_finner(), CALIBRE_MM / 1e3),
        ("bottle_ogive_3fins", bottle(), 1e-3),
    ] {
        let air = air(&design, Model::default());
        let nose = part(&air, Component::Section(0));
        let tail = part(&air, Component::Fins(0));
        assert_eq!(
            part(&air, Component::Section(1)).slope_per_rad,
            0.0,
            "a tube adds nothing"
        );
        for (name, slope, centre_m) in [
            ("nose", nose.slope_per_rad, nose.forward_centre_m),
            ("fins", tail.slope_per_rad, tail.forward_centre_m),
            ("TOTAL", air.slope_per_rad(), nose_on_m(&air)),
        ] {
            let row = rows.iter().find(|r| r[0].starts_with(case) && r[1] == name);
            let row = row.expect(name);
            let what = format!("{case}, {name}");
            assert_within(&what, slope, number(&row[2]), SIX_DIGITS);
            assert_within(&what, centre_m / unit_m, number(&row[3]), SIX_DIGITS);
        }
    }
}

/// The predictions of `basic_finner.csv`, with both published carry-overs. No measured
/// coefficients are given there: the 0.29 calibres between the two are the spread of the
/// methods, and the model's doubt must show all of it.
#[test]
fn basic_finner_by_both_methods() {
    let rows = table(FINNER);
    let value = |name: &str| {
        let row = rows.iter().find(|r| r[0] == name).expect(name);
        number(&row[1])
    };
    let plain = air(&basic_finner(), Model::default());
    let with_body = Model { carry_over: CarryOver::WithBody, ..Model::default() };
    let carried = air(&basic_finner(), with_body);
    let calibres = |air: &Air| nose_on_m(air) / (CALIBRE_MM / 1e3);
    let fins = part(&plain, Component::Fins(0));
    let nose = part(&plain, Component::Section(0));
    // K at r/s = 1/3 of the total semispan.
    let isolated = fins.slope_per_rad / (1.0 + 1.0 / 3.0);
    for (name, found) in [
        ("CN_alpha nose", nose.slope_per_rad),
        ("x_cp nose", nose.forward_centre_m / (CALIBRE_MM / 1e3)),
        ("CN_alpha fins isolated pair", isolated),
        ("CN_alpha fins with K_T(B)=1+r/s", fins.slope_per_rad),
        ("x_cp fins", fins.forward_centre_m / (CALIBRE_MM / 1e3)),
        ("CN_alpha total Barrowman", plain.slope_per_rad()),
        ("x_cp total Barrowman", calibres(&plain)),
        ("CN_alpha total with K_W(B)+K_B(W)", carried.slope_per_rad()),
        ("x_cp total with K_W(B)+K_B(W)", calibres(&carried)),
    ] {
        // One unit in the last digit for the sums, whose terms are rounded in the file.
        assert_within(name, found, value(name), 2.0 * SIX_DIGITS);
    }
    let spread = calibres(&carried) - calibres(&plain);
    assert_within("spread of the methods, calibres", spread, 0.29, 0.005);
}

/// How far behind the plain factor's centre the one with the carry-over lies, as a share of
/// the length. Pitts, Nielsen & Kaattari 1957 (NACA Report 1307, summary) found theirs
/// within 0.02 of measured ones, so the plain factor may be 0.03 to 0.05 ahead of the truth
/// on these two models: more than a test of the whole should ask, but towards the nose,
/// which is the cautious side.
#[test]
fn the_plain_factor_is_cautious() {
    let with_body = Model { carry_over: CarryOver::WithBody, ..Model::default() };
    for (design, length_m, expected) in
        [(basic_finner(), 1.0, 0.029), (bottle(), 0.6, 0.047)]
    {
        let plain = nose_on_m(&air(&design, Model::default()));
        let behind = (nose_on_m(&air(&design, with_body)) - plain) / length_m;
        assert_within("share of the length", behind, expected, 0.0005);
    }
}

/// A conical change of width from d1 to d2 (Barrowman & Barrowman 1966; text not read,
/// confirmed by integrating x dS with sympy):
/// `2 ((d2/d)² − (d1/d)²)` at `x0 + (L/3) (1 + (1 − d1/d2)/(1 − (d1/d2)²))`. It is positive
/// where the body widens and negative where it narrows.
#[test]
fn the_sign_of_a_shoulder() {
    let in_full = Model { shoulder: Shoulder::InFull, ..Model::default() };
    let none = Model { shoulder: Shoulder::NotAtAll, ..Model::default() };
    for (d1, d2, length) in [(40.0, 80.0, 60.0), (80.0, 40.0, 60.0), (80.0, 40.0, 200.0)]
    {
        let design = bare(vec![
            section(SectionKind::Cone, 100.0, d1),
            section(SectionKind::Tube, 50.0, d1),
            section(SectionKind::StraightTaper, length, d2),
            section(SectionKind::Tube, 50.0, d2),
        ]);
        let found = part(&air(&design, in_full), Component::Section(2));
        let squared = |d: f64| d / 80.0 * (d / 80.0);
        let slope = 2.0 * (squared(d2) - squared(d1));
        let ratio: f64 = d1 / d2;
        let centre = 1.0 + (1.0 - ratio) / (1.0 - ratio * ratio);
        let centre_mm = 150.0 + length / 3.0 * centre;
        assert_close("slope", found.slope_per_rad, slope, EXACT);
        assert_close("centre", found.forward_centre_m * 1e3, centre_mm, EXACT);
        assert_eq!(found.slope_per_rad > 0.0, d2 > d1, "{d1} to {d2}");

        // Widening counts whatever is chosen. Of the narrowing ones the first leans 18.4°
        // and counts 0.6565 (our judgement: 1 up to 15°, 0 from 25°), the second 5.7°.
        let share = part(&air(&design, Model::default()), Component::Section(2))
            .slope_per_rad
            / found.slope_per_rad;
        let expected = if d2 > d1 || length > 100.0 { 1.0 } else { 0.656_505_1 };
        assert_within("share", share, expected, 1e-7);
        let alone = part(&air(&design, none), Component::Section(2)).slope_per_rad;
        assert_eq!(alone, if d2 > d1 { found.slope_per_rad } else { 0.0 });
    }
}

/// A rounded shoulder in full has the same slope as a straight one, and its centre at
/// `∫x dS / ΔS`, which is `(L S2 − V) / (S2 − S1)` by parts.
#[test]
fn a_rounded_shoulder_in_full() {
    let in_full = Model { shoulder: Shoulder::InFull, ..Model::default() };
    for (d1, d2) in [(65.0, 28.0), (28.0, 65.0)] {
        let design = bare(vec![
            section(SectionKind::Tube, 100.0, d1),
            section(SectionKind::RoundedTaper, 55.0, d2),
        ]);
        let found = part(&air(&design, in_full), Component::Section(1));
        let volume_m3 = body(&design).stretches()[1].profile.volume_m3();
        let area = |d: f64| std::f64::consts::PI * d * d / 4e6;
        let expected = 2.0 * (area(d2) - area(d1)) / area(65.0);
        assert_close("slope", found.slope_per_rad, expected, QUADRATURE);
        let centre = (0.055 * area(d2) - volume_m3) / (area(d2) - area(d1));
        assert_close("centre", found.forward_centre_m - 0.1, centre, QUADRATURE);
    }
}

/// Three fins have three quarters of the slope of four, at the same place (Barrowman &
/// Barrowman 1966, the factor 4N; text not read. The squares of the cosines of n equal
/// turns add up to n/2.)
#[test]
fn three_fins_against_four() {
    for mut design in [basic_finner(), bottle()] {
        let mut of = |count| {
            design.fins[0].count = count;
            part(&air(&design, Model::default()), Component::Fins(0))
        };
        let (three, four) = (of(3), of(4));
        assert_close("3 / 4", three.slope_per_rad / four.slope_per_rad, 0.75, 1e-14);
        assert_eq!(three.forward_centre_m, four.forward_centre_m);
        // And a pair flat to the crosswind is what four are, in any roll.
        let two = of(2);
        assert_close("2 / 4", two.slope_per_rad, four.slope_per_rad, 1e-14);
    }
}
