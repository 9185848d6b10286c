//! What the rocket covers seen from the side: its cut-out.

use geo::{BooleanOps, Coord, LineString, MultiPolygon, Polygon};

use super::Body;
use super::fin::Fin;
use super::profile::AreaMoments;
use crate::design::{Design, FinSet};

/// How far the drawn outline may lie from the true curve, in metres: a fifth of the
/// thickness of a pencil line.
pub(crate) const FLATTENING_M: f64 = 2e-5;
/// A fin turned so far that its outline is thinner than this share of its span is seen
/// edge-on.
const EDGE_ON: f64 = 1e-9;

/// The side view: the outline of the body and every fin as it is projected.
///
/// x runs from the nose tip towards the tail, y to the right of the drawing when the
/// rocket stands nose up. All in metres.
#[derive(Clone, Debug, PartialEq)]
pub struct SideView {
    chain: Vec<(f64, f64)>,
    body: AreaMoments,
    fins: Vec<ProjectedFin>,
    /// What the first so many fin sets add to the body; one more than there are sets.
    added: Vec<AreaMoments>,
}

/// One fin as it is seen from the side.
#[derive(Clone, Debug, PartialEq)]
pub struct ProjectedFin {
    /// Which fin set it belongs to.
    pub set: usize,
    /// How much of its span is seen: 1 flat to the right, -1 flat to the left, 0 edge-on.
    pub turned: f64,
    /// Whether it lies on the near side of the body.
    pub near: bool,
    /// Its corners in metres, the root first; not closed.
    pub corners: Vec<Coord<f64>>,
}

impl SideView {
    /// The side view of a design with this body.
    #[must_use]
    pub fn new(design: &Design, body: &Body) -> Self {
        let mut moments = AreaMoments::default();
        for stretch in body.stretches() {
            let side = stretch.profile.side();
            moments.area += side.area;
            moments.first += side.first + side.area * stretch.front_m;
        }
        Self::of_outline(design, body, body.chain_m(FLATTENING_M), moments)
    }

    /// The side view of the same body with other fins, or with its fins turned.
    pub(crate) fn with_fins_of(&self, design: &Design, body: &Body) -> Self {
        Self::of_outline(design, body, self.chain.clone(), self.body)
    }

    fn of_outline(
        design: &Design,
        body: &Body,
        chain: Vec<(f64, f64)>,
        moments: AreaMoments,
    ) -> Self {
        let fins: Vec<ProjectedFin> = design
            .fins
            .iter()
            .enumerate()
            .flat_map(|(i, set)| projections(i, set, body))
            .collect();
        let mut added = vec![AreaMoments::default()];
        for set in 0..design.fins.len() {
            let first = fins.partition_point(|fin| fin.set <= set);
            added.push(added_by_fins(&chain, &fins[..first]));
        }
        Self { chain, body: moments, fins, added }
    }

    /// One side of the body's outline: points `(x, radius)` in metres, front to tail.
    #[must_use]
    pub fn body_chain_m(&self) -> &[(f64, f64)] {
        &self.chain
    }

    /// Every fin that is not edge-on, and every fin that is (with all corners on one
    /// line), set by set.
    #[must_use]
    pub fn fins(&self) -> &[ProjectedFin] {
        &self.fins
    }

    /// The outline of the body as a closed polygon, in metres.
    #[must_use]
    pub fn body_polygon(&self) -> Polygon<f64> {
        let right = self.chain.iter().map(|&(x, r)| Coord { x, y: r });
        let left = self.chain.iter().rev().map(|&(x, r)| Coord { x, y: -r });
        let ring: LineString<f64> = right.chain(left).collect();
        Polygon::new(ring, vec![])
    }

    /// The outline of the whole cut-out, in metres: body and fins as one.
    ///
    /// For the two numbers alone [`area_and_centroid_m`](Self::area_and_centroid_m) is
    /// quicker; this is for drawing and cutting out.
    #[must_use]
    pub fn union(&self) -> MultiPolygon<f64> {
        let start = MultiPolygon::new(vec![self.body_polygon()]);
        self.fins.iter().filter(|fin| fin.turned.abs() > EDGE_ON).fold(
            start,
            |outline, fin| {
                let ring: LineString<f64> = fin.corners.iter().copied().collect();
                outline.union(&Polygon::new(ring, vec![]))
            },
        )
    }

    /// Area of the cut-out in m² and the distance of its centroid from the nose tip in
    /// metres. Overlaps count once.
    ///
    /// The body is taken in closed form. What the fins add is summed over strips across
    /// the axis, cut wherever an edge starts, ends or crosses another, so that in each
    /// strip the uncovered width changes linearly and the sum is exact for the polygons.
    #[must_use]
    pub fn area_and_centroid_m(&self) -> (f64, f64) {
        let added = self.added.last().copied().unwrap_or_default();
        let area = self.body.area + added.area;
        (area, (self.body.first + added.first) / area)
    }

    /// The area that a fin set adds to what the body and the sets before it cover, with
    /// its first moment about the nose tip.
    pub(crate) fn added_by_set(&self, set: usize) -> AreaMoments {
        let (before, with) = (self.added[set], self.added[set + 1]);
        AreaMoments { area: with.area - before.area, first: with.first - before.first }
    }
}

/// Every fin of a set as it is seen from the side.
fn projections(index: usize, set: &FinSet, body: &Body) -> Vec<ProjectedFin> {
    let fin = Fin::new(&set.planform);
    let start_m = set.start_mm / 1000.0;
    let root_m = body.radius_at_m(start_m);
    (0..set.count)
        .map(|k| {
            let angle_deg =
                set.roll_deg + 360.0 * f64::from(k) / f64::from(set.count.max(1));
            let (turned, depth) = facing(angle_deg);
            ProjectedFin {
                set: index,
                turned,
                near: depth >= 0.0,
                corners: fin
                    .corners()
                    .iter()
                    .map(|c| Coord { x: start_m + c.x, y: turned * (root_m + c.y) })
                    .collect(),
            }
        })
        .collect()
}

/// Cosine and sine of an angle in degrees, exact at quarter turns, so that a fin that is
/// edge-on is so to the last bit and a rocket mirrors exactly.
fn facing(angle_deg: f64) -> (f64, f64) {
    let turn = angle_deg.rem_euclid(360.0);
    if turn == 0.0 {
        (1.0, 0.0)
    } else if turn == 90.0 {
        (0.0, 1.0)
    } else if turn == 180.0 {
        (-1.0, 0.0)
    } else if turn == 270.0 {
        (0.0, -1.0)
    } else {
        let (sin, cos) = libm::sincos(turn.to_radians());
        (cos, sin)
    }
}

/// A straight edge over an interval of x, `a.x < b.x`.
#[derive(Clone, Copy, Debug)]
struct Edge {
    a: Coord<f64>,
    b: Coord<f64>,
}

impl Edge {
    fn new(a: Coord<f64>, b: Coord<f64>) -> Option<Self> {
        if a.x < b.x {
            Some(Self { a, b })
        } else if a.x > b.x {
            Some(Self { a: b, b: a })
        } else {
            None
        }
    }

    fn y(&self, x: f64) -> f64 {
        self.a.y + (self.b.y - self.a.y) * (x - self.a.x) / (self.b.x - self.a.x)
    }

    fn covers(&self, x: f64) -> bool {
        self.a.x <= x && x <= self.b.x
    }

    /// Where two edges cross, inside both.
    fn crossing(&self, other: &Self) -> Option<f64> {
        let from = self.a.x.max(other.a.x);
        let to = self.b.x.min(other.b.x);
        if from >= to {
            return None;
        }
        let at_from = self.y(from) - other.y(from);
        let at_to = self.y(to) - other.y(to);
        (at_from * at_to < 0.0).then(|| from + (to - from) * at_from / (at_from - at_to))
    }
}

/// The area that fins add beyond the body, with its first moment about the nose tip.
fn added_by_fins(chain: &[(f64, f64)], fins: &[ProjectedFin]) -> AreaMoments {
    let (right, left) = (seen_on_side(fins, 1.0), seen_on_side(fins, -1.0));
    let first = added_on_side(chain, &right, 1.0);
    // An even number of fins looks the same from both sides.
    let mirrored = right.len() == left.len()
        && right.iter().all(|fin| {
            left.iter().any(|other| {
                fin.set == other.set && (fin.turned + other.turned).abs() < EDGE_ON
            })
        });
    let second = if mirrored { first } else { added_on_side(chain, &left, -1.0) };
    AreaMoments { area: first.area + second.area, first: first.first + second.first }
}

/// The same on one side of the axis, by the fins that are seen there.
fn added_on_side(chain: &[(f64, f64)], fins: &[&ProjectedFin], side: f64) -> AreaMoments {
    // Mirrored to positive y.
    let mirrored = |c: &Coord<f64>| Coord { x: c.x, y: c.y * side };
    let outlines: Vec<Vec<Coord<f64>>> =
        fins.iter().map(|fin| fin.corners.iter().map(mirrored).collect()).collect();
    let fin_edges: Vec<Vec<Edge>> = outlines.iter().map(|ring| edges_of(ring)).collect();
    let from = outlines.iter().flatten().map(|c| c.x).fold(f64::INFINITY, f64::min);
    let to = outlines.iter().flatten().map(|c| c.x).fold(f64::NEG_INFINITY, f64::max);
    let body_edges: Vec<Edge> = chain
        .windows(2)
        .filter(|w| w[1].0 > from && w[0].0 < to)
        .filter_map(|w| {
            let point = |(x, r): (f64, f64)| Coord { x, y: r };
            Edge::new(point(w[0]), point(w[1]))
        })
        .collect();

    let mut added = AreaMoments::default();
    let cuts = cuts(&outlines, &fin_edges, &body_edges, from, to);
    let mut body_left = body_edges.as_slice();
    for w in cuts.windows(2) {
        let (a, b) = (w[0], w[1]);
        let middle = f64::midpoint(a, b);
        let behind = body_left.iter().position(|edge| edge.b.x >= middle);
        body_left = &body_left[behind.unwrap_or(body_left.len())..];
        let (at_a, at_b) = uncovered(&fin_edges, body_left.first(), a, b);
        // The integral of a linear width, and of x times it.
        let h = b - a;
        added.area += h * (at_a + at_b) / 2.0;
        added.first += h * (a * (2.0 * at_a + at_b) + b * (at_a + 2.0 * at_b)) / 6.0;
    }
    added
}

/// The fins on one side, each distinct outline once.
fn seen_on_side(fins: &[ProjectedFin], side: f64) -> Vec<&ProjectedFin> {
    let mut seen: Vec<&ProjectedFin> = Vec::new();
    for fin in fins.iter().filter(|fin| fin.turned * side > EDGE_ON) {
        let same = |known: &&ProjectedFin| {
            known.set == fin.set && (known.turned - fin.turned).abs() < EDGE_ON
        };
        if !seen.iter().any(same) {
            seen.push(fin);
        }
    }
    seen
}

fn edges_of(ring: &[Coord<f64>]) -> Vec<Edge> {
    let next = ring.iter().cycle().skip(1);
    ring.iter().zip(next).filter_map(|(&a, &b)| Edge::new(a, b)).collect()
}

/// Every x at which the covered width can change its slope, in order.
fn cuts(
    outlines: &[Vec<Coord<f64>>],
    fin_edges: &[Vec<Edge>],
    body_edges: &[Edge],
    from: f64,
    to: f64,
) -> Vec<f64> {
    let mut cuts: Vec<f64> = outlines.iter().flatten().map(|c| c.x).collect();
    let body_ends = body_edges.iter().flat_map(|e| [e.a.x, e.b.x]);
    cuts.extend(body_ends.filter(|&x| from < x && x < to));
    for (i, edges) in fin_edges.iter().enumerate() {
        for edge in edges {
            cuts.extend(body_edges.iter().filter_map(|other| edge.crossing(other)));
            let others = fin_edges[i + 1..].iter().flatten();
            cuts.extend(others.filter_map(|other| edge.crossing(other)));
        }
    }
    cuts.sort_unstable_by(f64::total_cmp);
    cuts.dedup();
    cuts
}

/// The width that fins cover outside the body, at both ends of a strip in which no edges
/// cross. `body_edge` is the body's outline there, or the next one behind.
fn uncovered(
    fin_edges: &[Vec<Edge>],
    body_edge: Option<&Edge>,
    a: f64,
    b: f64,
) -> (f64, f64) {
    let middle = f64::midpoint(a, b);
    // Kept in order from the axis outwards; both lists are short.
    let mut spans: Vec<(Edge, Edge)> = Vec::new();
    let mut active: Vec<Edge> = Vec::new();
    for edges in fin_edges {
        active.clear();
        for &edge in edges.iter().filter(|e| e.covers(middle)) {
            let place = active.partition_point(|other| other.y(middle) < edge.y(middle));
            active.insert(place, edge);
        }
        for pair in active.chunks_exact(2) {
            let y = pair[0].y(middle);
            let place = spans.partition_point(|(low, _)| low.y(middle) < y);
            spans.insert(place, (pair[0], pair[1]));
        }
    }

    let mut top = body_edge.copied().filter(|edge| edge.covers(middle));
    let (mut at_a, mut at_b) = (0.0, 0.0);
    for (low, high) in spans {
        let covered_to = top.map_or(0.0, |edge| edge.y(middle));
        if high.y(middle) <= covered_to {
            continue;
        }
        let bottom = if low.y(middle) < covered_to { top } else { Some(low) };
        let y = |x: f64| high.y(x) - bottom.map_or(0.0, |edge| edge.y(x));
        at_a += y(a);
        at_b += y(b);
        top = Some(high);
    }
    (at_a, at_b)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, Planform};
    use geo::{Area, Centroid};

    fn view(design: &Design) -> SideView {
        SideView::new(design, &Body::new(design).unwrap())
    }

    /// The strips against geo's union of the same outlines. The body of the strips is the
    /// curve itself, that of the union is flattened, which sets the tolerance.
    fn assert_agrees_with_union(design: &Design) {
        let view = view(design);
        let (area, centroid) = view.area_and_centroid_m();
        let union = view.union();
        let union_centroid = union.centroid().unwrap().x();
        assert!((area - union.unsigned_area()).abs() < 2e-4 * area, "{}", design.name);
        assert!((centroid - union_centroid).abs() < 3e-5, "{}", design.name);
    }

    #[test]
    fn strips_agree_with_the_union() {
        for example in Example::ALL {
            let mut design = example.design();
            assert_agrees_with_union(&design);
            for (count, roll_deg) in [(2, 0.0), (3, 20.0), (5, 7.0), (8, 10.0)] {
                design.fins[0].count = count;
                design.fins[0].roll_deg = roll_deg;
                assert_agrees_with_union(&design);
            }
        }
    }

    #[test]
    fn fins_that_overlap_each_other_and_the_tail_count_once() {
        let mut design = Example::Puffin.design();
        let mut second = design.fins[0].clone();
        second.start_mm += 30.0;
        second.planform = Planform::PointsMm(vec![
            [0.0, 0.0],
            [10.0, 40.0],
            [30.0, 15.0],
            [60.0, 45.0],
            [80.0, 0.0],
        ]);
        design.fins.push(second.clone());
        assert_agrees_with_union(&design);
        // The same set twice changes nothing.
        let once = view(&design).area_and_centroid_m();
        design.fins.push(second);
        let twice = view(&design).area_and_centroid_m();
        assert!((once.0 - twice.0).abs() < 1e-12 && (once.1 - twice.1).abs() < 1e-12);
    }

    #[test]
    fn a_fin_edge_on_adds_nothing() {
        let mut design = Example::Puffin.design();
        design.fins[0].count = 2;
        design.fins[0].roll_deg = 90.0;
        let (area, _) = view(&design).area_and_centroid_m();
        design.fins.clear();
        let (bare, _) = view(&design).area_and_centroid_m();
        assert_eq!(area, bare);
    }

    #[test]
    fn a_rectangle_on_a_tube_by_hand() {
        let mut design = Example::Gannet.design();
        design.sections.remove(0);
        design.sections[0].length_mm = 200.0;
        design.fins[0].count = 2;
        design.fins[0].start_mm = 150.0;
        design.fins[0].planform = Planform::FourSided {
            root_mm: 50.0,
            tip_mm: 50.0,
            span_mm: 30.0,
            sweep_mm: 0.0,
        };
        let (area, centroid) = view(&design).area_and_centroid_m();
        let (tube, fins) = (0.2 * 0.024, 2.0 * 0.05 * 0.03);
        assert!((area - (tube + fins)).abs() < 1e-12);
        let expected = (tube * 0.1 + fins * 0.175) / (tube + fins);
        assert!((centroid - expected).abs() < 1e-12);
    }
}
