//! One fin as a flat plate, in metres.

use geo::line_intersection::{LineIntersection, line_intersection};
use geo::{Area, Centroid, Coord, Line, LineString, Polygon};

use super::Body;
use crate::design::Planform;

/// A body that stands no higher than this above the root line hides nothing.
const SAME_PLACE_M: f64 = 1e-9;

/// The outline of a fin with its root at `out = 0` and the front of the root at the
/// origin: x runs towards the tail, y outwards.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Fin {
    outline: Polygon<f64>,
}

/// The mean chord of a fin and where it is, as strip theory needs them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Strips {
    /// Distance from the root line to the tip, in metres.
    pub(crate) span: f64,
    /// Area, in m².
    pub(crate) area: f64,
    /// ∫ c² dy / area: the mean aerodynamic chord, in metres.
    pub(crate) mean_chord: f64,
    /// ∫ c `x_front` dy / area: where its front is, behind the front of the root, in metres.
    pub(crate) front: f64,
    /// How far the middle of the chord moves back for each metre outwards.
    pub(crate) middle_slope: f64,
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

    /// Length of the root, from its first corner to its last, in metres.
    pub(crate) fn root_m(&self) -> f64 {
        match self.corners() {
            [front, .., rear] => (rear.x - front.x).max(0.0),
            _ => 0.0,
        }
    }

    /// The fin cut into strips along the axis: exact, since chord and front edge change
    /// linearly between the heights of the corners. Where a strip has gaps, its chord is
    /// the sum of its pieces and its front that of the foremost. `None` for a fin without
    /// area off the root line.
    pub(crate) fn strips(&self) -> Option<Strips> {
        strips_between(self.heights(), &|y| self.pieces_at(y))
    }

    /// The same of what lies outside a body, with the front of the root at `start_m`. A
    /// body that widens behind that place hides some of the fin. `chain_m` is one side of its
    /// outline.
    pub(crate) fn strips_outside(
        &self,
        body: &Body,
        chain_m: &[(f64, f64)],
        start_m: f64,
    ) -> Option<Strips> {
        let above_root = self.body_above_root(body, chain_m, start_m);
        if above_root.iter().all(|line| line.start.y.max(line.end.y) <= SAME_PLACE_M) {
            return self.strips();
        }
        let mut heights = self.heights();
        for line in &above_root {
            heights.extend([line.start.y, line.end.y]);
            for edge in self.outline.exterior().lines() {
                if let Some(LineIntersection::SinglePoint { intersection, .. }) =
                    line_intersection(edge, *line)
                {
                    heights.push(intersection.y);
                }
            }
        }
        strips_between(heights, &|y| outside(self.pieces_at(y), &above_root, y))
    }

    /// Whether some of the outline lies on the body or inside it, with the front of the
    /// root at `start_m` and a gap of up to `gap_m` for glue.
    pub(crate) fn touches(&self, body: &Body, start_m: f64, gap_m: f64) -> bool {
        const STEPS: u32 = 64;
        let root_m = body.radius_at_m(start_m);
        self.outline.exterior().lines().any(|edge| {
            (0..=STEPS).any(|k| {
                let share = f64::from(k) / f64::from(STEPS);
                let x = edge.start.x + share * (edge.end.x - edge.start.x);
                let y = edge.start.y + share * (edge.end.y - edge.start.y);
                let radius_m = body.radius_at_m(start_m + x);
                radius_m > 0.0 && y <= radius_m - root_m + gap_m
            })
        })
    }

    /// The heights of the corners.
    fn heights(&self) -> Vec<f64> {
        self.corners().iter().map(|c| c.y).collect()
    }

    /// The outline of the body beside this fin as short lines in the fin's own coordinates.
    fn body_above_root(
        &self,
        body: &Body,
        chain_m: &[(f64, f64)],
        start_m: f64,
    ) -> Vec<Line<f64>> {
        let root_m = body.radius_at_m(start_m);
        let ahead = self.corners().iter().map(|c| c.x).fold(0.0, f64::min);
        let reach = self.reach_m();
        // A body begins and ends with a step from its axis.
        let ends = [(0.0, 0.0), (body.length_m(), 0.0)];
        let points: Vec<(f64, f64)> =
            ends[..1].iter().chain(chain_m).chain(&ends[1..]).copied().collect();
        let own = |(x, r): (f64, f64)| Coord { x: x - start_m, y: r - root_m };
        points
            .windows(2)
            .map(|w| Line::new(own(w[0]), own(w[1])))
            .filter(|line| line.end.x > ahead && line.start.x < reach)
            .collect()
    }

    /// The stretches of the fin at a height, front to rear.
    fn pieces_at(&self, height: f64) -> Vec<(f64, f64)> {
        let mut crossings: Vec<f64> = Vec::new();
        for edge in self.outline.exterior().lines() {
            let (a, b) = (edge.start, edge.end);
            if (a.y < height) != (b.y < height) {
                let x = a.x + (b.x - a.x) * (height - a.y) / (b.y - a.y);
                crossings.insert(crossings.partition_point(|&c| c < x), x);
            }
        }
        crossings.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
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

/// Strips between heights, at which the stretches of a fin bend, from those stretches at
/// any height. Between two of them chord and front change linearly.
fn strips_between(
    mut heights: Vec<f64>,
    pieces: &dyn Fn(f64) -> Vec<(f64, f64)>,
) -> Option<Strips> {
    heights.sort_unstable_by(f64::total_cmp);
    heights.dedup();
    let chord_at = |y: f64| {
        let pieces = pieces(y);
        let chord: f64 = pieces.iter().map(|(from, to)| to - from).sum();
        pieces.first().filter(|_| chord > 0.0).map(|&(front, _)| (chord, front))
    };
    let (mut area, mut chord2, mut front) = (0.0, 0.0, 0.0);
    // Moments of the chord's middle line, for a straight line through it.
    let (mut sum_1, mut sum_y, mut sum_m, mut sum_yy, mut sum_ym) =
        (0.0, 0.0, 0.0, 0.0, 0.0);
    let mut tip = f64::NEG_INFINITY;
    for w in heights.windows(2) {
        let (low, high) = (w[0], w[1]);
        // The ends belong to the strips beside this one too: look inside, and draw the
        // straight lines out to them.
        let quarter = |k: f64| low + (high - low) * k;
        let (Some((ca, fa)), Some((cb, fb))) =
            (chord_at(quarter(0.25)), chord_at(quarter(0.75)))
        else {
            continue;
        };
        let ends =
            |a: f64, b: f64| (1.5 * a - 0.5 * b, f64::midpoint(a, b), 1.5 * b - 0.5 * a);
        let ((c0, cm, c1), (f0, fm, f1)) = (ends(ca, cb), ends(fa, fb));
        let ym = quarter(0.5);
        // Simpson's rule is exact for the products of two straight lines.
        let simpson = |a: f64, m: f64, b: f64| (high - low) * (a + 4.0 * m + b) / 6.0;
        area += simpson(c0, cm, c1);
        chord2 += simpson(c0 * c0, cm * cm, c1 * c1);
        front += simpson(c0 * f0, cm * fm, c1 * f1);
        let (m0, mm, m1) = (f0 + c0 / 2.0, fm + cm / 2.0, f1 + c1 / 2.0);
        sum_1 += high - low;
        sum_y += simpson(low, ym, high);
        sum_m += simpson(m0, mm, m1);
        sum_yy += simpson(low * low, ym * ym, high * high);
        sum_ym += simpson(low * m0, ym * mm, high * m1);
        tip = high;
    }
    let spread = sum_1 * sum_yy - sum_y * sum_y;
    if !(area > 0.0 && tip > 0.0 && spread > 0.0) {
        return None;
    }
    Some(Strips {
        span: tip,
        area,
        mean_chord: chord2 / area,
        front: front / area,
        middle_slope: (sum_1 * sum_ym - sum_y * sum_m) / spread,
    })
}

/// Stretches of a fin at a height less where the body is thicker than that.
fn outside(
    mut pieces: Vec<(f64, f64)>,
    body: &[Line<f64>],
    height: f64,
) -> Vec<(f64, f64)> {
    for line in body {
        let at = |y: f64| line.start.x + line.dx() * (y - line.start.y) / line.dy();
        let (from, to) = match (line.start.y > height, line.end.y > height) {
            (false, false) => continue,
            (true, true) => (line.start.x, line.end.x),
            (true, false) => (line.start.x, at(height)),
            (false, true) => (at(height), line.end.x),
        };
        pieces = pieces
            .into_iter()
            .flat_map(|(a, b)| [(a, b.min(from)), (a.max(to), b)])
            .filter(|(a, b)| b > a)
            .collect();
    }
    pieces
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

    /// On a cone that widens as the fin reaches back, a rectangle shows as the part above
    /// the cone's side: here a triangle.
    #[test]
    fn what_is_inside_the_body_is_no_part_of_it() {
        use crate::{Example, SectionKind};
        let mut design = Example::Gannet.design();
        design.sections[0].kind = SectionKind::Cone;
        design.sections[0].length_mm = 60.0;
        // The radius grows from 0 to 12 mm within 60 mm: 0.2 for each millimetre.
        let body = Body::new(&design).unwrap();
        let chain = body.chain_m(1e-5);
        let fin = four_sided(50.0, 50.0, 10.0, 0.0);
        let shown = fin.strips_outside(&body, &chain, 0.0).unwrap();
        assert!((shown.area - 0.010 * 0.050 / 2.0).abs() < 1e-12, "{shown:?}");
        assert!((shown.front - 0.0).abs() < 1e-12);
        assert!((shown.mean_chord - 0.050 * 2.0 / 3.0).abs() < 1e-12);
        // On the tube behind nothing is hidden.
        assert_eq!(fin.strips_outside(&body, &chain, 0.1), fin.strips());
        // One that is no higher than the body is at its front shows nothing.
        let low = four_sided(10.0, 10.0, 2.0, 0.0);
        let flush = low.strips_outside(&body, &chain, 0.055).unwrap();
        assert!(flush.area < low.area_m2());
    }

    /// Mean aerodynamic chord of a trapezoid, 2/3 (a + b − ab/(a + b)), its front at
    /// m (a + 2b) / (3 (a + b)), and the slope of its mid-chord line (Barrowman &
    /// Barrowman 1966; text not read, confirmed by integrating over the span with sympy).
    #[test]
    fn strips_of_a_trapezoid() {
        for (a, b, s, m) in [(0.12, 0.06, 0.09, 0.06), (0.05, 0.0, 0.07, -0.02)] {
            let strips = four_sided(1000.0 * a, 1000.0 * b, 1000.0 * s, 1000.0 * m)
                .strips()
                .unwrap();
            let near = |x: f64, y: f64| (x - y).abs() < 1e-12;
            assert!(near(strips.area, (a + b) * s / 2.0));
            assert!(near(strips.mean_chord, 2.0 / 3.0 * (a + b - a * b / (a + b))));
            assert!(near(strips.front, m * (a + 2.0 * b) / (3.0 * (a + b))));
            assert!(near(strips.middle_slope, (m + b / 2.0 - a / 2.0) / s));
            assert!(near(strips.span, s));
        }
    }

    /// A corner in the middle of a straight edge changes nothing.
    #[test]
    fn strips_do_not_depend_on_needless_corners() {
        let plain = vec![[0.0, 0.0], [40.0, 50.0], [90.0, 50.0], [100.0, 0.0]];
        let more = vec![
            [0.0, 0.0],
            [20.0, 25.0],
            [40.0, 50.0],
            [90.0, 50.0],
            [92.0, 40.0],
            [100.0, 0.0],
        ];
        let a = Fin::new(&Planform::PointsMm(plain)).strips().unwrap();
        let b = Fin::new(&Planform::PointsMm(more)).strips().unwrap();
        assert!((a.mean_chord - b.mean_chord).abs() < 1e-12);
        assert!((a.front - b.front).abs() < 1e-12);
        assert!((a.middle_slope - b.middle_slope).abs() < 1e-10);
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
