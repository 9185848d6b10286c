//! One fin as a flat plate, in metres.

use geo::line_intersection::{LineIntersection, line_intersection};
use geo::{Area, Centroid, Coord, Line, LineString, Polygon};

use crate::design::Planform;

/// The outline of a fin with its root at `out = 0` and the front of the root at the
/// origin: x runs towards the tail, y outwards.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Fin {
    outline: Polygon<f64>,
}

/// Second moments of a plate about the axes of its coordinates, per unit of area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct SecondMoments {
    /// Mean of x².
    pub(crate) along2: f64,
    /// Mean of y².
    pub(crate) out2: f64,
}

impl Fin {
    pub(crate) fn new(planform: &Planform) -> Self {
        let corners = planform.corners_mm().into_iter();
        let ring: LineString<f64> = corners
            .map(|[along, out]| Coord { x: along / 1000.0, y: out / 1000.0 })
            .collect();
        Self { outline: Polygon::new(ring, vec![]) }
    }

    /// The corners, without the first one repeated at the end.
    pub(crate) fn corners(&self) -> &[Coord<f64>] {
        let ring = &self.outline.exterior().0;
        &ring[..ring.len().saturating_sub(1)]
    }

    /// Whether the outline is a simple polygon with an area: its edges meet nowhere but
    /// each at its end with the next. A corner may be repeated, as a triangle does.
    ///
    /// geo's `Validation` says the same, but brings its whole relation engine to the page;
    /// a test compares the two.
    pub(crate) fn is_simple(&self) -> bool {
        let edges = self.outline.exterior().lines();
        let edges: Vec<Line<f64>> = edges.filter(|e| e.start != e.end).collect();
        let count = edges.len();
        let clear = |i: usize, j: usize| {
            let meeting = line_intersection(edges[i], edges[j]);
            let neighbours = j == i + 1 || (i == 0 && j == count - 1);
            match meeting {
                None => true,
                Some(LineIntersection::SinglePoint { is_proper, .. }) => {
                    neighbours && !is_proper
                }
                Some(LineIntersection::Collinear { .. }) => false,
            }
        };
        count >= 3
            && (0..count).all(|i| (i + 1..count).all(|j| clear(i, j)))
            && self.area_m2() > 0.0
    }

    pub(crate) fn area_m2(&self) -> f64 {
        self.outline.unsigned_area()
    }

    /// Centroid: along from the front of the root, and out from the root, in metres.
    pub(crate) fn centroid_m(&self) -> (f64, f64) {
        self.outline.centroid().map_or((0.0, 0.0), |p| (p.x(), p.y()))
    }

    /// How far the outline reaches behind the front of the root, in metres.
    pub(crate) fn reach_m(&self) -> f64 {
        self.corners().iter().map(|c| c.x).fold(0.0, f64::max)
    }

    /// Second moments per area, in m², from the triangles of the origin with each edge.
    pub(crate) fn second_moments_m2(&self) -> SecondMoments {
        let (mut twice_area, mut along2, mut out2) = (0.0, 0.0, 0.0);
        for edge in self.outline.exterior().lines() {
            let (a, b) = (edge.start, edge.end);
            let cross = a.x * b.y - b.x * a.y;
            twice_area += cross;
            along2 += cross * (a.x * a.x + a.x * b.x + b.x * b.x) / 6.0;
            out2 += cross * (a.y * a.y + a.y * b.y + b.y * b.y) / 6.0;
        }
        SecondMoments { along2: along2 / twice_area, out2: out2 / twice_area }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn four_sided(root_mm: f64, tip_mm: f64, span_mm: f64, sweep_mm: f64) -> Fin {
        Fin::new(&Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm })
    }

    /// Second moments of a rectangle about its edges: b²/3 and h²/3 (MathWorld, "Area
    /// Moment of Inertia").
    #[test]
    fn a_rectangle() {
        let fin = four_sided(60.0, 60.0, 40.0, 0.0);
        assert!((fin.area_m2() - 0.0024).abs() < 1e-15);
        let (along, out) = fin.centroid_m();
        assert!((along - 0.030).abs() < 1e-12 && (out - 0.020).abs() < 1e-12);
        let second = fin.second_moments_m2();
        assert!((second.along2 - 0.06 * 0.06 / 3.0).abs() < 1e-12);
        assert!((second.out2 - 0.04 * 0.04 / 3.0).abs() < 1e-12);
    }

    #[test]
    fn the_way_round_does_not_matter() {
        let there = vec![[0.0, 0.0], [20.0, 30.0], [50.0, 30.0], [60.0, 0.0]];
        let back: Vec<_> = there.iter().copied().rev().collect();
        let a = Fin::new(&Planform::PointsMm(there));
        let b = Fin::new(&Planform::PointsMm(back));
        assert!((a.area_m2() - b.area_m2()).abs() < 1e-15);
        let (sa, sb) = (a.second_moments_m2(), b.second_moments_m2());
        assert!((sa.along2 - sb.along2).abs() < 1e-15);
        assert!((sa.out2 - sb.out2).abs() < 1e-15);
    }

    /// Random corners on a coarse grid, so that edges often touch, cross or coincide.
    #[test]
    fn simple_means_what_geo_means_by_valid() {
        use geo::Validation;
        use proptest::prelude::{prop_assert_eq, proptest};
        proptest!(|(corners in proptest::collection::vec((0_i8..5, 0_i8..5), 3..8))| {
            let points = corners.iter().map(|&(x, y)| [f64::from(x), f64::from(y)]);
            let fin = Fin::new(&Planform::PointsMm(points.collect()));
            let valid = fin.outline.is_valid() && fin.area_m2() > 0.0;
            prop_assert_eq!(fin.is_simple(), valid, "{:?}", corners);
        });
    }

    #[test]
    fn crossed_and_flat_outlines_are_not_simple() {
        let crossed = vec![[0.0, 0.0], [50.0, 30.0], [0.0, 30.0], [50.0, 0.0]];
        assert!(!Fin::new(&Planform::PointsMm(crossed)).is_simple());
        let flat = vec![[0.0, 0.0], [20.0, 0.0], [50.0, 0.0]];
        assert!(!Fin::new(&Planform::PointsMm(flat)).is_simple());
        assert!(!Fin::new(&Planform::PointsMm(vec![])).is_simple());
        assert!(four_sided(60.0, 0.0, 40.0, 80.0).is_simple());
    }
}
