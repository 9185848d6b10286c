//! Centroid and moments of inertia of thin shells and plates.
//!
//! `data/inertia_shapes.csv` gives the textbook shapes: Myers, Handbook of Equations for
//! Mass and Area Properties of Various Geometrical Shapes, NAVWEPS Report 7827, 1962
//! (citation from memory). Each row is found by its name and its formulas are compared as
//! text with the ones written here, so that neither can change unnoticed. The shells of
//! curved sections that no table has are in `tests/fixtures/shells.json`.

use noseward_references_tests::{
    UNIT_SHEET, assert_close, assert_within, bare, figures, fins, first_section,
    four_sided, part, section, table,
};
use noseward_stability::{Component, MassProperties, SectionKind};
use serde::Deserialize;

const TABLE: &str = include_str!("../data/inertia_shapes.csv");
const SHELLS: &str = include_str!("../../fixtures/shells.json");

/// Closed form against closed form, and quadrature asked for 1e-12 against quadrature.
const RELATIVE: f64 = 1e-9;

/// Radius and length in metres: bottle, slim tube, flat lid, tiny, as large as allowed.
const SIZES: [(f64, f64); 5] =
    [(0.0325, 0.12), (0.012, 0.24), (0.055, 0.02), (0.001, 0.005), (0.25, 2.0)];

/// A row's three formulas as text.
fn row(name: &str) -> [String; 3] {
    let rows = table(TABLE);
    let found = rows.iter().find(|r| r[0] == name);
    let found = found.unwrap_or_else(|| panic!("no row {name}"));
    [found[1].clone(), found[2].clone(), found[3].clone()]
}

#[track_caller]
fn assert_shell(found: MassProperties, centroid: f64, axial: f64, transverse: f64) {
    let m = found.mass_kg;
    assert_close("centroid", found.centre_m, centroid, RELATIVE);
    assert_close("axial", found.axial_inertia_kg_m2 / m, axial, RELATIVE);
    assert_close("transverse", found.transverse_inertia_kg_m2 / m, transverse, RELATIVE);
}

#[test]
fn cone() {
    let formulas = row("cone shell, no base, apex at 0, height L, radius R");
    assert_eq!(formulas, ["2L/3 from apex", "R^2/2", "R^2/4 + L^2/18"]);
    for (r, l) in SIZES {
        let design = bare(vec![section(SectionKind::Cone, l * 1e3, r * 2e3)]);
        let transverse = r * r / 4.0 + l * l / 18.0;
        assert_shell(first_section(&design), 2.0 * l / 3.0, r * r / 2.0, transverse);
    }
}

#[test]
fn cylinder() {
    let formulas = row("cylinder shell, open ends");
    assert_eq!(formulas, ["L/2", "R^2", "R^2/2 + L^2/12"]);
    for (r, l) in SIZES {
        let design = bare(vec![section(SectionKind::Tube, l * 1e3, r * 2e3)]);
        let transverse = r * r / 2.0 + l * l / 12.0;
        assert_shell(first_section(&design), l / 2.0, r * r, transverse);
    }
}

/// Three of the project's shapes become half a ball: the dome in closed form, the ogive
/// and the ellipsoid by quadrature.
#[test]
fn hemisphere() {
    let formulas = row("hemisphere shell, open");
    assert_eq!(formulas, ["R/2 from centre", "2R^2/3", "5R^2/12"]);
    for (r, _) in SIZES {
        for kind in [SectionKind::Dome, SectionKind::Ogive, SectionKind::Ellipsoid] {
            let design = bare(vec![section(kind, r * 1e3, r * 2e3)]);
            let found = first_section(&design);
            // R/2 from the centre is as far from the tip.
            assert_shell(found, r / 2.0, 2.0 * r * r / 3.0, 5.0 * r * r / 12.0);
        }
    }
}

/// A floor is a disc: a tube with one, less the same tube without.
#[test]
fn disc() {
    assert_eq!(row("disc"), ["centre", "R^2/2", "R^2/4"]);
    for (r, l) in SIZES {
        let open = section(SectionKind::Tube, l * 1e3, r * 2e3);
        let mut closed = open.clone();
        closed.closed_front = true;
        let open = first_section(&bare(vec![open]));
        let closed = first_section(&bare(vec![closed]));
        let m = closed.mass_kg - open.mass_kg;
        assert!(m > 0.0, "a floor weighs something");
        // About the plane of the floor, by the parallel-axis rule.
        let about_front = |p: MassProperties| {
            p.transverse_inertia_kg_m2 + p.mass_kg * p.centre_m * p.centre_m
        };
        let first = |p: MassProperties| p.mass_kg * p.centre_m;
        // The difference of two larger numbers: as many digits as their ratio are lost.
        let lost = about_front(open) / (m * r * r);
        assert_within("centre", first(closed), first(open), RELATIVE * first(open));
        let axial = closed.axial_inertia_kg_m2 - open.axial_inertia_kg_m2;
        assert_close("axial", axial / m, r * r / 2.0, RELATIVE);
        let transverse = about_front(closed) - about_front(open);
        let tolerance = RELATIVE * lost.max(1.0);
        assert_close("transverse", transverse / m, r * r / 4.0, tolerance);
    }
}

/// No part is a ring. The shortest tube, 1 mm, comes near one: the tube's formula differs
/// by L²/12, which is known and taken off.
#[test]
fn ring() {
    assert_eq!(row("ring"), ["centre", "R^2", "R^2/2"]);
    for r in [0.03, 0.25] {
        let design = bare(vec![section(SectionKind::Tube, 1.0, r * 2e3)]);
        let found = first_section(&design);
        let m = found.mass_kg;
        assert_close("axial", found.axial_inertia_kg_m2 / m, r * r, RELATIVE);
        let length_term = 0.001 * 0.001 / 12.0;
        let transverse = found.transverse_inertia_kg_m2 / m - length_term;
        assert_close("transverse", transverse, r * r / 2.0, RELATIVE);
    }
}

#[test]
fn frustum() {
    let formulas = row("frustum shell radii R1 (front) R2 (rear), length L");
    assert_eq!(
        formulas,
        [
            "L(R1+2R2)/(3(R1+R2)) from R1 end",
            "(R1^2+R2^2)/2",
            "(R1^2+R2^2)/4 + L^2(R1^2+4R1R2+R2^2)/(18(R1+R2)^2)"
        ]
    );
    for (a, l) in SIZES {
        for b in [0.5 * a, 0.9 * a, (1.7 * a).min(0.25)] {
            let design = bare(vec![
                section(SectionKind::Tube, 10.0, a * 2e3),
                section(SectionKind::StraightTaper, l * 1e3, b * 2e3),
            ]);
            let found = part(&design, Component::Section(1)).mass;
            let sum = a + b;
            let mixed = a * a + 4.0 * a * b + b * b;
            let squares = a * a + b * b;
            assert_shell(
                found,
                0.010 + l * (a + 2.0 * b) / (3.0 * sum),
                squares / 2.0,
                squares / 4.0 + l * l * mixed / (18.0 * sum * sum),
            );
        }
    }
}

/// The fin's own two rows: its centre along the body, and, from the axial inertia on two
/// bodies, outwards.
#[test]
fn trapezoid_plate() {
    let chordwise =
        row("trapezoid plate root a tip b span s LE offset m: chordwise centroid");
    assert_eq!(chordwise[0], "(m(a+2b) + a^2+ab+b^2)/(3(a+b)) from root LE");
    let spanwise = row("trapezoid plate: spanwise centroid");
    assert_eq!(spanwise[0], "s(a+2b)/(3(a+b)) from root");
    for (a, b, s, m) in [(110.0, 60.0, 55.0, 50.0), (45.0, 0.0, 25.0, 20.0)] {
        let on = |width_mm| {
            let mut design = bare(vec![section(SectionKind::Tube, 300.0, width_mm)]);
            design.fins.push(fins(4, 150.0, four_sided(a, b, s, m)));
            part(&design, Component::Fins(0)).mass
        };
        let (slim, wide) = (on(20.0), on(60.0));
        let along = (m * (a + 2.0 * b) + a * a + a * b + b * b) / (3.0 * (a + b));
        assert_close("along", slim.centre_m * 1e3 - 150.0, along, RELATIVE);
        let per_mass = |p: MassProperties| p.axial_inertia_kg_m2 / p.mass_kg * 1e6;
        let out = (per_mass(wide) - per_mass(slim) - (900.0 - 100.0)) / 40.0;
        assert_close("out", out, s * (a + 2.0 * b) / (3.0 * (a + b)), RELATIVE);
    }
}

/// Solids are no part of the project, whose parts are shells, plates and points. The list
/// keeps the table and the tests in step.
#[test]
fn every_row_is_either_tested_or_a_solid() {
    let names: Vec<String> = table(TABLE).into_iter().map(|r| r[0].clone()).collect();
    let solids = names.iter().filter(|name| name.starts_with("solid ")).count();
    assert_eq!(solids, 3);
    // cone, cylinder, hemisphere, disc, ring, frustum, and two of the trapezoid.
    assert_eq!(names.len() - solids, 8);
}

#[derive(Deserialize)]
struct Shells {
    quadrature_error: f64,
    cases: Vec<Shell>,
}

#[derive(Deserialize)]
struct Shell {
    kind: SectionKind,
    length_mm: f64,
    front_mm: f64,
    rear_mm: f64,
    area_m2: f64,
    centroid_m: f64,
    axial_per_kg_m2: f64,
    transverse_per_kg_m2: f64,
}

/// Ogive, ellipsoid, paraboloid, dome and rounded taper against `scipy.integrate.quad`
/// over another parameter of the same curve (`tests/fixtures/make_shells.py`).
#[test]
fn curved_shells_agree_with_an_independent_quadrature() {
    let shells: Shells = serde_json::from_str(SHELLS).unwrap();
    assert!(shells.quadrature_error < RELATIVE / 100.0);
    assert!(shells.cases.len() > 30);
    for shell in shells.cases {
        let mut sections = vec![section(shell.kind, shell.length_mm, shell.rear_mm)];
        let mut ahead_m = 0.0;
        if shell.kind == SectionKind::RoundedTaper {
            sections.insert(0, section(SectionKind::Tube, 10.0, shell.front_mm));
            ahead_m = 0.010;
        }
        let last = Component::Section(sections.len() - 1);
        let found = part(&bare(sections), last).mass;
        let name = format!(
            "{:?} {} × {}–{} mm",
            shell.kind, shell.length_mm, shell.front_mm, shell.rear_mm
        );
        let close = |what: &str, found: f64, expected: f64| {
            assert_close(&format!("{name}, {what}"), found, expected, RELATIVE);
        };
        let m = found.mass_kg;
        close("area", m, shell.area_m2);
        close("centroid", found.centre_m - ahead_m, shell.centroid_m);
        close("axial", found.axial_inertia_kg_m2 / m, shell.axial_per_kg_m2);
        let transverse = found.transverse_inertia_kg_m2 / m;
        close("transverse", transverse, shell.transverse_per_kg_m2);
    }
}

/// The shape alone decides a shell's centroid and its area per square of length: a great
/// many noses and shoulders, each at a tenth, at its own and at ten times its size.
#[test]
fn curved_shells_do_not_depend_on_the_unit_of_length() {
    let shell = |kind, length_mm: f64, width_mm: f64| {
        let mut sections = vec![section(kind, length_mm, width_mm)];
        if kind == SectionKind::RoundedTaper {
            sections.insert(0, section(SectionKind::Tube, length_mm, width_mm / 2.0));
        }
        let found = part(
            &bare(sections),
            Component::Section(usize::from(kind == SectionKind::RoundedTaper)),
        );
        let (m, l) = (found.mass.mass_kg, length_mm / 1000.0);
        [
            m / (l * l),
            found.mass.centre_m / l,
            found.mass.axial_inertia_kg_m2 / m / (l * l),
            found.mass.transverse_inertia_kg_m2 / m / (l * l),
        ]
    };
    for kind in [
        SectionKind::Ogive,
        SectionKind::Ellipsoid,
        SectionKind::Paraboloid,
        SectionKind::RoundedTaper,
    ] {
        for length in 20..60 {
            for width in 20..40 {
                let (l, w) = (f64::from(length), f64::from(width));
                let own = shell(kind, l, w);
                for times in [0.1, 0.37, 3.1, 10.0] {
                    let other = shell(kind, l * times, w * times);
                    for (a, b) in own.into_iter().zip(other) {
                        assert_close(
                            &format!("{kind:?} {l} × {w} mm × {times}"),
                            b,
                            a,
                            RELATIVE,
                        );
                    }
                }
            }
        }
    }
}

/// MathWorld, "Paraboloid" (page not read, confirmed by integration with sympy): the shell
/// of height h and base radius a has the area π a / (6 h²) ((a² + 4 h²)^{3/2} − a³).
#[test]
fn paraboloids_of_many_sizes() {
    for length in 10..200 {
        for width in 10..60 {
            let (l, w) = (f64::from(length), f64::from(width) * 2.0);
            let found =
                first_section(&bare(vec![section(SectionKind::Paraboloid, l, w)]));
            let (h, a) = (l / 1000.0, w / 2000.0);
            let square = a * a + 4.0 * h * h;
            let area = std::f64::consts::PI * a / (6.0 * h * h)
                * (square * square.sqrt() - a * a * a);
            assert_close(&format!("{l} × {w} mm"), found.mass_kg, area, RELATIVE);
        }
    }
}

/// The whole from its parts by the parallel-axis rule, for a nose, a tube and weights.
/// Source: MathWorld, "Parallel Axis Theorem" (page not read; it follows from squaring
/// x = (x − c) + c under the integral).
#[test]
fn the_whole_follows_from_its_parts() {
    let mut design = bare(vec![
        section(SectionKind::Cone, 80.0, 50.0),
        section(SectionKind::Tube, 200.0, 50.0),
    ]);
    design.sections[1].mass = UNIT_SHEET;
    let (r, l) = (0.025_f64, 0.2);
    let slant = (0.08_f64 * 0.08 + r * r).sqrt();
    let cone = std::f64::consts::PI * r * slant;
    let tube = 2.0 * std::f64::consts::PI * r * l;
    let mass = cone + tube;
    let centre = (cone * 0.16 / 3.0 + tube * 0.18) / mass;
    let own =
        |m: f64, about_own: f64, at: f64| m * (about_own + (at - centre) * (at - centre));
    let transverse = own(cone, r * r / 4.0 + 0.08 * 0.08 / 18.0, 0.16 / 3.0)
        + own(tube, r * r / 2.0 + l * l / 12.0, 0.18);
    let found = figures(&design).mass;
    assert_close("mass", found.mass_kg, mass, RELATIVE);
    assert_close("centre", found.centre_m, centre, RELATIVE);
    assert_close("transverse", found.transverse_inertia_kg_m2, transverse, RELATIVE);
    let axial = cone * r * r / 2.0 + tube * r * r;
    assert_close("axial", found.axial_inertia_kg_m2, axial, RELATIVE);
}
