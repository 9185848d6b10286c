//! The tangent ogive and the volumes of noses.
//!
//! Source of both tables: exact integration of the published shapes with `x_cp = L − V/A`
//! (Munk, NACA Report 184, 1924; Barrowman 1967, master's thesis); each file says so on
//! its first line. Cross-check of the ogive: Hoult, technical note "Ogive Nose", 2011.

use std::f64::consts::PI;

use noseward_references_tests::{
    assert_close, assert_within, bare, body, figures, first_section, part, section, table,
};
use noseward_stability::{Component, Design, SectionKind};

const OGIVE: &str = include_str!("../data/tangent_ogive.csv");
const NOSES: &str = include_str!("../data/nose_cp.csv");

/// Half of the last of the eight digits of `tangent_ogive.csv`.
const EIGHT_DIGITS: f64 = 0.5e-8 + 1e-12;
/// An exact fraction against double precision.
const EXACT: f64 = 1e-9;

/// Base widths in millimetres at which each shape is tried.
const WIDTHS_MM: [f64; 3] = [24.0, 65.0, 100.0];

fn nose(kind: SectionKind, length_mm: f64, width_mm: f64) -> Design {
    bare(vec![section(kind, length_mm, width_mm)])
}

/// `V / (A_base L)`.
fn volume_ratio(design: &Design) -> f64 {
    let section = &design.sections[0];
    let r_m = section.diameter_mm.expect("it has one") / 2000.0;
    let box_m3 = PI * r_m * r_m * section.length_mm / 1000.0;
    body(design).volume_m3() / box_m3
}

#[test]
fn every_row_of_the_tangent_ogive_table() {
    let rows = table(OGIVE);
    assert_eq!(rows.len(), 11);
    for row in rows {
        let number = |i: usize| row[i].parse::<f64>().unwrap();
        let f = number(0);
        for d_mm in WIDTHS_MM {
            if f * d_mm > 2000.0 {
                continue;
            }
            let design = nose(SectionKind::Ogive, f * d_mm, d_mm);
            let (d, l) = (d_mm / 1000.0, f * d_mm / 1000.0);
            let shell = first_section(&design);
            let side_m2 = part(&design, Component::Section(0)).area_m2;
            let centroid_m = figures(&design).centre_of_pressure_side_on_m;
            let volume = volume_ratio(&design);
            for (what, found, expected) in [
                ("x_cp / L = 1 − V / (A L)", 1.0 - volume, number(1)),
                ("V / (A L)", volume, number(2)),
                ("lateral surface / (π d L)", shell.mass_kg / (PI * d * l), number(3)),
                ("shell centroid / L", shell.centre_m / l, number(4)),
                ("planform / (d L)", side_m2 / (d * l), number(5)),
                ("planform centroid / L", centroid_m / l, number(6)),
            ] {
                let what = format!("f = {f}, d = {d_mm} mm: {what}");
                assert_within(&what, found, expected, EIGHT_DIGITS);
            }
        }
    }
}

/// Hoult, "Ogive Nose", 2011, a worked case: R = 3 in and L = 30 in have a lateral area of
/// 379.2477 in² with its centroid 18.70511 in from the tip.
#[test]
fn the_worked_ogive_of_hoult() {
    let inch = 25.4;
    let shell = first_section(&nose(SectionKind::Ogive, 30.0 * inch, 6.0 * inch));
    let in2 = shell.mass_kg * 1e6 / (inch * inch);
    assert_within("area, in²", in2, 379.2477, 0.5e-4);
    assert_within("centroid, in", shell.centre_m * 1e3 / inch, 18.70511, 0.5e-5);
}

/// The rows of `nose_cp.csv` that the project has a shape for. The power series, the Haack
/// shapes and the parabola tangent to its base are not built; the first as n = 1 and
/// n = 1/2 are the cone and the paraboloid.
#[test]
fn volumes_of_noses() {
    let rows = table(NOSES);
    assert_eq!(rows.len(), 9);
    let fraction = |text: &str| {
        let (up, down) = text.split_once('/').unwrap();
        up.parse::<f64>().unwrap() / down.parse::<f64>().unwrap()
    };
    let ratio = |name: &str| {
        let row = rows.iter().find(|r| r[0].starts_with(name)).expect(name);
        let decimal: f64 = row[3].parse().unwrap();
        let (volume, cp) = (fraction(&row[1]), fraction(&row[2]));
        assert_within("x_cp / L = 1 − V / (A L)", 1.0 - volume, cp, EXACT);
        assert_within("as a decimal", decimal, cp, 0.5e-10 + f64::EPSILON);
        volume
    };
    for (name, kind) in [
        ("cone", SectionKind::Cone),
        ("paraboloid of revolution", SectionKind::Paraboloid),
        ("semi-ellipsoid", SectionKind::Ellipsoid),
    ] {
        for width in WIDTHS_MM {
            for length in [0.4 * width, width, 3.0 * width] {
                let found = volume_ratio(&nose(kind, length, width));
                assert_close(name, found, ratio(name), EXACT);
            }
        }
    }
    // Half a ball, as the dome and as the shortest ogive.
    for kind in [SectionKind::Dome, SectionKind::Ogive] {
        let design = nose(kind, 30.0, 60.0);
        assert_close(
            "half a ball",
            volume_ratio(&design),
            ratio("semi-ellipsoid"),
            EXACT,
        );
        assert_close("its shell", first_section(&design).centre_m, 0.015, EXACT);
    }
    // The shell of a cone: the last column.
    let cone = nose(SectionKind::Cone, 90.0, 65.0);
    assert_eq!(rows[0][4], "2/3");
    assert_close("cone", first_section(&cone).centre_m, 0.09 * fraction("2/3"), EXACT);
}

/// The long limit of `nose_cp.csv`, 8/15, is reached from above and with the square of the
/// slenderness: by `tangent_ogive.csv` 0.038 / f² above it.
#[test]
fn a_slim_ogive_tends_to_eight_fifteenths() {
    let mut before = 1.0;
    for f in [20.0, 50.0, 100.0, 200.0] {
        let above = volume_ratio(&nose(SectionKind::Ogive, f * 5.0, 5.0)) - 8.0 / 15.0;
        assert!(above > 0.0 && above < 0.039 / (f * f), "f = {f}: {above:e}");
        assert!(above < before);
        before = above;
    }
}
