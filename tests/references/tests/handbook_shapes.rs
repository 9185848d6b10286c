//! Areas and centroids of the plane shapes of the handbooks, as side views and as fins.
//!
//! Source of every formula unless a test says otherwise: MathWorld, "Geometric Centroid"
//! and the page of the shape's own name (pages not read; triangle, trapezoid, ellipse,
//! parabolas and segments of a circle confirmed by integration with sympy, the rest sums
//! of these). Beside it: Myers, Handbook of Equations for Mass and Area Properties
//! of Various Geometrical Shapes, NAVWEPS Report 7827, 1962 (citation from memory).

use std::f64::consts::PI;

use noseward_references_tests::{
    assert_close, assert_within, bare, body, figures, fins, four_sided, part, section,
};
use noseward_stability::{Component, Design, Planform, SectionKind, SideView};

/// Closed form against closed form: only rounding, with a few digits to spare.
const EXACT: f64 = 1e-11;
/// A slim arc against the parabola it tends to: the share falls with the square of width
/// by length, here 1/300.
const SLIM: f64 = 1e-5;

/// Length and width in millimetres: a bottle's nose, a paper tube's, a flat one.
const SIZES: [(f64, f64); 4] = [(120.0, 65.0), (60.0, 24.0), (20.0, 110.0), (2.0, 2.0)];

/// Area in mm² and centroid in mm of a bare body's side view.
fn side(design: &Design) -> (f64, f64) {
    let figures = figures(design);
    assert_close(
        "the part's own area",
        figures.parts.iter().map(|p| p.area_m2).sum(),
        figures.side_area_m2,
        EXACT,
    );
    (figures.side_area_m2 * 1e6, figures.centre_of_pressure_side_on_m * 1e3)
}

/// The same of the last section alone, by taking away the ones ahead of it.
fn last_section(design: &Design) -> (f64, f64) {
    let mut ahead = design.clone();
    ahead.sections.pop();
    let front_mm: f64 = ahead.sections.iter().map(|s| s.length_mm).sum();
    let ((all, all_x), (less, less_x)) = (side(design), side(&ahead));
    let area = all - less;
    (area, (all * all_x - less * less_x) / area - front_mm)
}

/// Area in mm² and centroid `(along, out)` in mm of one fin laid flat.
///
/// The report has no distance outwards. It shows in the axial inertia, which on a body of
/// radius R is m (R² + 2 R out + mean of out²): the difference of two bodies gives it.
fn fin(planform: &Planform) -> (f64, f64, f64) {
    let on_tube = |width_mm| {
        let mut design = bare(vec![section(SectionKind::Tube, 500.0, width_mm)]);
        design.fins.push(fins(3, 100.0, planform.clone()));
        part(&design, Component::Fins(0))
    };
    let (slim, wide) = (on_tube(40.0), on_tube(80.0));
    let per_mass = |of: noseward_stability::PartFigures| {
        of.mass.axial_inertia_kg_m2 / of.mass.mass_kg * 1e6
    };
    let (r, s) = (20.0, 40.0);
    let out = (per_mass(wide) - per_mass(slim) - (s * s - r * r)) / (2.0 * (s - r));
    assert_close("unit sheet", slim.mass.mass_kg, 3.0 * slim.area_m2, EXACT);
    (slim.area_m2 * 1e6, slim.mass.centre_m * 1e3 - 100.0, out)
}

fn assert_fin(name: &str, planform: &Planform, area: f64, along: f64, out: f64) {
    let found = fin(planform);
    assert_close(&format!("{name}, area"), found.0, area, EXACT);
    // A centroid is compared with the size of the fin: it may be zero.
    assert_within(&format!("{name}, along"), found.1, along, EXACT * area.sqrt());
    assert_within(&format!("{name}, out"), found.2, out, 10.0 * EXACT * area.sqrt());
}

/// MathWorld, "Triangle Centroid": two thirds of the height from a corner.
#[test]
fn triangle_as_a_cone() {
    for (l, w) in SIZES {
        let (area, centroid) = side(&bare(vec![section(SectionKind::Cone, l, w)]));
        assert_close("area", area, l * w / 2.0, EXACT);
        assert_close("centroid", centroid, 2.0 * l / 3.0, EXACT);
    }
}

/// MathWorld, "Rectangle".
#[test]
fn rectangle_as_a_tube_and_a_neck() {
    for (l, w) in SIZES {
        for kind in [SectionKind::Tube, SectionKind::Neck] {
            let (area, centroid) = side(&bare(vec![section(kind, l, w)]));
            assert_close("area", area, l * w, EXACT);
            assert_close("centroid", centroid, l / 2.0, EXACT);
        }
    }
}

/// MathWorld, "Trapezoid": from the side a, height (a + 2 b) / (3 (a + b)).
#[test]
fn trapezoid_as_a_straight_taper() {
    for (l, w) in SIZES {
        for rear in [0.6 * w, 0.999 * w, 2.5 * w] {
            let design = bare(vec![
                section(SectionKind::Tube, 30.0, w),
                section(SectionKind::StraightTaper, l, rear),
            ]);
            let (area, centroid) = last_section(&design);
            assert_close("area", area, l * (w + rear) / 2.0, 100.0 * EXACT);
            let expected = l * (w + 2.0 * rear) / (3.0 * (w + rear));
            assert_close("centroid", centroid, expected, 100.0 * EXACT);
        }
    }
}

/// MathWorld, "Semi-Ellipse" and "Semicircle": 4 a / (3π) from the flat side.
#[test]
fn semi_ellipse_as_an_ellipsoid() {
    for (l, w) in SIZES {
        let (area, centroid) = side(&bare(vec![section(SectionKind::Ellipsoid, l, w)]));
        assert_close("area", area, PI / 4.0 * l * w, EXACT);
        assert_close("from the base", l - centroid, 4.0 * l / (3.0 * PI), EXACT);
    }
}

/// MathWorld, "Parabola" and "Parabolic Segment": two thirds of the box, and 3/5 of the
/// height from the vertex, so 2/5 from the base.
#[test]
fn parabolic_segment_as_a_paraboloid() {
    for (l, w) in SIZES {
        let (area, centroid) = side(&bare(vec![section(SectionKind::Paraboloid, l, w)]));
        assert_close("area", area, 2.0 / 3.0 * l * w, EXACT);
        assert_close("from the vertex", centroid, 0.6 * l, EXACT);
        assert_close("from the base", l - centroid, 0.4 * l, EXACT);
    }
}

/// MathWorld, "Semicircle": 4 r / (3π) from the flat side.
#[test]
fn semicircle_as_a_full_dome() {
    for r in [1.0, 32.5, 250.0] {
        let (area, centroid) = side(&bare(vec![section(SectionKind::Dome, r, 2.0 * r)]));
        assert_close("area", area, PI * r * r / 2.0, EXACT);
        assert_close("from the base", r - centroid, 4.0 * r / (3.0 * PI), EXACT);
    }
}

/// MathWorld, "Circular Segment": area R² (θ − sin θ) / 2 and centroid
/// 4 R sin³(θ/2) / (3 (θ − sin θ)) from the centre of the circle, θ the whole angle.
#[test]
fn circular_segment_as_a_flat_dome() {
    let half = |angle_deg: f64, sin: f64, cos: f64| (angle_deg * PI / 180.0, sin, cos);
    let root = f64::sqrt;
    for (half_angle, sin, cos) in [
        half(30.0, 0.5, root(3.0) / 2.0),
        half(45.0, root(0.5), root(0.5)),
        half(60.0, root(3.0) / 2.0, 0.5),
    ] {
        for ball in [20.0, 70.0] {
            let (theta, sin_theta) = (2.0 * half_angle, 2.0 * sin * cos);
            let height = ball * (1.0 - cos);
            let dome = section(SectionKind::Dome, height, 2.0 * ball * sin);
            let (area, centroid) = side(&bare(vec![dome]));
            assert_close("area", area, ball * ball * (theta - sin_theta) / 2.0, EXACT);
            let from_centre = 4.0 * ball * sin * sin * sin / (3.0 * (theta - sin_theta));
            assert_close("centroid", centroid, ball - from_centre, 10.0 * EXACT);
        }
    }
}

/// A slim tangent ogive tends to half a parabola cut across its axis: two thirds of the
/// box, 5/8 of the length from the point (MathWorld, "Parabola"; Myers, the parabolic
/// half segment: 3/8 from the vertex).
#[test]
fn half_parabola_as_a_slim_ogive() {
    let (area, centroid) = side(&bare(vec![section(SectionKind::Ogive, 1500.0, 5.0)]));
    assert_close("area", area, 2.0 / 3.0 * 1500.0 * 5.0, SLIM);
    assert_close("centroid", centroid, 5.0 / 8.0 * 1500.0, SLIM);
}

/// MathWorld, "Triangle Centroid": the mean of the corners.
#[test]
fn triangle_as_a_fin() {
    for (root, span, sweep) in
        [(60.0, 40.0, 30.0), (45.0, 25.0, 80.0), (9.0, 90.0, -20.0)]
    {
        assert_fin(
            "triangle",
            &four_sided(root, 0.0, span, sweep),
            root * span / 2.0,
            (root + sweep) / 3.0,
            span / 3.0,
        );
    }
}

/// MathWorld, "Rectangle" and "Parallelogram".
#[test]
fn rectangle_and_parallelogram_as_fins() {
    for sweep in [0.0, 25.0, -15.0] {
        assert_fin(
            "parallelogram",
            &four_sided(70.0, 70.0, 45.0, sweep),
            70.0 * 45.0,
            35.0 + sweep / 2.0,
            22.5,
        );
    }
}

/// MathWorld, "Trapezoid"; the chordwise and spanwise centroid of a fin with root a, tip
/// b, span s and sweep m as in `inertia_shapes.csv`.
#[test]
fn trapezoid_as_a_fin() {
    for (a, b, s, m) in
        [(110.0, 60.0, 55.0, 50.0), (30.0, 80.0, 40.0, -10.0), (50.0, 49.0, 5.0, 0.0)]
    {
        let along = (m * (a + 2.0 * b) + a * a + a * b + b * b) / (3.0 * (a + b));
        let out = s * (a + 2.0 * b) / (3.0 * (a + b));
        let area = s * (a + b) / 2.0;
        assert_fin("trapezoid", &four_sided(a, b, s, m), area, along, out);
    }
}

/// The method of composite parts, from any statics handbook: an L from two rectangles; and
/// a kite by its two triangles.
#[test]
fn composite_shapes_as_fins() {
    let l_shape = Planform::PointsMm(vec![
        [0.0, 0.0],
        [0.0, 30.0],
        [20.0, 30.0],
        [20.0, 10.0],
        [60.0, 10.0],
        [60.0, 0.0],
    ]);
    // 20 × 30 about (10, 15) and 40 × 10 about (40, 5).
    assert_fin("L", &l_shape, 1000.0, 22.0, 11.0);
    let kite =
        Planform::PointsMm(vec![[0.0, 20.0], [30.0, 40.0], [90.0, 20.0], [30.0, 0.0]]);
    assert_fin("kite", &kite, 90.0 * 40.0 / 2.0, 40.0, 20.0);
}

/// A semi-ellipse as a fin of 24 corners would only come near; a regular hexagon is exact:
/// area 3√3/2 a² (MathWorld, "Hexagon").
#[test]
fn hexagon_as_a_fin() {
    let (a, h) = (20.0, 20.0 * f64::sqrt(3.0) / 2.0);
    let hexagon = Planform::PointsMm(vec![
        [0.0, h],
        [a / 2.0, 2.0 * h],
        [a * 1.5, 2.0 * h],
        [a * 2.0, h],
        [a * 1.5, 0.0],
        [a / 2.0, 0.0],
    ]);
    assert_fin("hexagon", &hexagon, 1.5 * f64::sqrt(3.0) * a * a, a, h);
}

/// Composite parts once more: a tube with fins as one cut-out. One third of a turn round,
/// a fin shows half of its distance from the axis (cos 60° = 1/2), so that of the fin
/// itself half its span less what the tube hides.
#[test]
fn fins_on_a_tube_by_composite_parts() {
    let mut design = bare(vec![section(SectionKind::Tube, 300.0, 40.0)]);
    design.fins.push(fins(3, 200.0, four_sided(80.0, 80.0, 60.0, 0.0)));
    let figures = figures(&design);
    // Right: from 20 to 80. Left, twice the same: from 10 to 40, of which 10 are hidden.
    let (tube, right, left) = (300.0 * 40.0, 80.0 * 60.0, 80.0 * 20.0);
    let area = tube + right + left;
    assert_close("area", figures.side_area_m2 * 1e6, area, EXACT);
    let centroid = (tube * 150.0 + (right + left) * 240.0) / area;
    let found = figures.centre_of_pressure_side_on_m * 1e3;
    assert_close("centroid", found, centroid, EXACT);

    let view = SideView::new(&design, &body(&design));
    let (view_area, view_centroid) = view.area_and_centroid_m();
    assert_close("view, area", view_area * 1e6, area, EXACT);
    assert_close("view, centroid", view_centroid * 1e3, centroid, EXACT);
}
