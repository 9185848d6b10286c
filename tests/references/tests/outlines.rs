//! 200 random designs against shapely and scipy.
//!
//! `tests/fixtures/make_outlines.py` writes each design in the project's own JSON, the area
//! and centroid of its cut-out by shapely (GEOS), and its masses by `scipy.integrate.quad`.
//! The formulas there are written again, not translated.

use geo::{Area, Centroid};
use noseward_references_tests::{assert_close, assert_within, body, figures};
use noseward_stability::{Design, Planform, Problem, SectionKind, SideView, evaluate};
use serde::Deserialize;

const OUTLINES: &str = include_str!("../../fixtures/outlines.json");

/// How far the script's own polygons may be from the curves, as a share of the area. The
/// file says how far they were: less, which a test checks.
const SCRIPT: f64 = 1e-8;
/// The crate draws curves to 2e-5 m (`FLATTENING_M`). A chord cuts off a parabolic segment,
/// two thirds of its height times its length (MathWorld, "Parabolic Segment"; from
/// memory): so much area for every metre of curve, both sides together.
const CUT_OFF_M: f64 = 2.0 * 2.0 / 3.0 * 2e-5;
/// Whatever the outline, this is asked for: a hundredth of what a ruler can tell, and a
/// ten-thousandth of the area from `HAND_M2` up. Below, the flattening is a larger share.
const CENTROID_M: f64 = 1e-5;
const AREA: f64 = 1e-4;
/// A quarter of the side view of the smallest bottle.
const HAND_M2: f64 = 0.005;
/// Both sides integrate to about 1e-12; the file keeps twelve digits.
const MASSES: f64 = 1e-9;

#[derive(Deserialize)]
struct Outlines {
    flattening_error: f64,
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    design: Design,
    length_m: f64,
    area_m2: f64,
    centroid_m: f64,
    curve_beside_fins_m: f64,
    mass_kg: f64,
    centre_of_mass_m: f64,
    axial_inertia_kg_m2: f64,
    transverse_inertia_kg_m2: f64,
}

fn outlines() -> Outlines {
    serde_json::from_str(OUTLINES).expect("the fixture is in the project's own JSON")
}

/// The designs whose fins all touch the body. Random outlines may miss it, which is a fault;
/// then there is nothing to compare.
fn whole(cases: &[Case]) -> Vec<&Case> {
    let floats = |case: &&Case| {
        evaluate(&case.design)
            .faults
            .iter()
            .any(|f| f.problem == Problem::FinTouchesNothing)
    };
    let whole: Vec<&Case> = cases.iter().filter(|case| !floats(case)).collect();
    assert!(whole.len() >= 160, "{}", whole.len());
    whole
}

fn is_curved(kind: SectionKind) -> bool {
    matches!(
        kind,
        SectionKind::Ogive
            | SectionKind::Ellipsoid
            | SectionKind::Paraboloid
            | SectionKind::Dome
            | SectionKind::RoundedTaper
    )
}

/// How far a slip in the body's outline can be from the centroid of the cut-out.
fn lever_m(case: &Case) -> f64 {
    case.length_m.max(case.centroid_m)
}

/// The random designs are worth the name: nothing that the schema has is missing.
#[test]
fn the_fixture_covers_the_schema() {
    let outlines = outlines();
    assert!(outlines.flattening_error < SCRIPT);
    assert_eq!(outlines.cases.len(), 200);
    let designs: Vec<&Design> = outlines.cases.iter().map(|c| &c.design).collect();
    for kind in SectionKind::ALL {
        let with = designs.iter().filter(|d| d.sections.iter().any(|s| s.kind == kind));
        assert!(with.count() >= 10, "{kind:?}");
    }
    for count in 1..=12 {
        assert!(designs.iter().any(|d| d.sections.len() == count), "{count} sections");
    }
    for count in 0..=4 {
        assert!(designs.iter().any(|d| d.fins.len() == count), "{count} fin sets");
    }
    let sets: Vec<_> = designs.iter().flat_map(|d| &d.fins).collect();
    for count in 2..=8 {
        assert!(sets.iter().any(|set| set.count == count), "{count} fins");
    }
    let free = sets.iter().filter(|s| matches!(s.planform, Planform::PointsMm(_)));
    let free = free.count();
    assert!(free > 100 && sets.len() - free > 100, "{free} of {}", sets.len());
    let beside_a_curve = outlines.cases.iter().filter(|c| c.curve_beside_fins_m > 0.0);
    assert!((50..150).contains(&beside_a_curve.count()));
}

/// Overlapping fins, fins behind the tail and ahead of the nose, steps in width: the strips
/// of `area_and_centroid_m` against the union by GEOS. The body is in closed form, so only
/// fins beside a curve bring in the crate's flattening.
#[test]
fn side_view_agrees_with_shapely() {
    for case in whole(&outlines().cases) {
        let name = &case.design.name;
        let found = figures(&case.design);
        assert_close(name, found.length_m, case.length_m, 1e-12);
        let mut area_m2 = SCRIPT * case.area_m2 + CUT_OFF_M * case.curve_beside_fins_m;
        if case.area_m2 > HAND_M2 {
            area_m2 = area_m2.min(AREA * case.area_m2);
        }
        assert_within(name, found.side_area_m2, case.area_m2, area_m2);
        // The same slip of area, at the end of the longest lever.
        let centroid_m = (area_m2 / case.area_m2 * lever_m(case)).min(CENTROID_M);
        let centre_m = found.centre_of_pressure_side_on_m;
        assert_within(name, centre_m, case.centroid_m, centroid_m);
    }
}

/// The union that is drawn and cut out. Its body is flattened, so that every curved
/// section costs area.
#[test]
fn the_union_that_is_drawn_agrees_with_shapely() {
    for case in outlines().cases {
        let design = &case.design;
        let name = &design.name;
        let body = body(design);
        let union = SideView::new(design, &body).union();
        let curved_m: f64 = design
            .sections
            .iter()
            .zip(body.stretches())
            .filter(|(section, _)| is_curved(section.kind))
            .map(|(_, stretch)| {
                // A curve that only rises or only falls is no longer than this.
                let profile = stretch.profile;
                let rise = profile.rear_radius_m() - profile.front_radius_m();
                profile.length_m() + rise.abs()
            })
            .sum();
        let area_m2 = SCRIPT * case.area_m2 + CUT_OFF_M * curved_m;
        assert_within(name, union.unsigned_area(), case.area_m2, area_m2);
        let centroid = union.centroid().expect("it has an area");
        let centroid_m = area_m2 / case.area_m2 * lever_m(&case);
        assert_within(name, centroid.x(), case.centroid_m, centroid_m);
    }
}

/// Sheets, weighed pieces, joined sections, bottle floors, necks, fins and weights.
#[test]
fn masses_agree_with_scipy() {
    for case in whole(&outlines().cases) {
        let found = figures(&case.design).mass;
        let close = |what: &str, found: f64, expected: f64| {
            let what = format!("{}, {what}", case.design.name);
            assert_close(&what, found, expected, MASSES);
        };
        close("mass", found.mass_kg, case.mass_kg);
        close("centre of mass", found.centre_m, case.centre_of_mass_m);
        close("axial inertia", found.axial_inertia_kg_m2, case.axial_inertia_kg_m2);
        close(
            "transverse inertia",
            found.transverse_inertia_kg_m2,
            case.transverse_inertia_kg_m2,
        );
    }
}
