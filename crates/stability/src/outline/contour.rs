//! The line along which a cut-out is cut: the edges of body and fins that lie within neither.
//!
//! By hand, because a general union of polygons weighs more than all else that Paper loads; tests
//! hold it to geo's.

use geo::Coord;

use super::side_view::SideView;

/// Points nearer to each other are one, in metres.
const SAME_M: f64 = 1e-9;
/// So far outside of an edge it is looked at what lies there, in metres.
const ASIDE_M: f64 = 1e-7;

type Ring = Vec<Coord<f64>>;
type Edge = (Coord<f64>, Coord<f64>);

impl SideView {
    /// The outline of the whole cut-out, in metres: closed rings, without the first point again.
    /// Of a ring round the cut-out the inside lies on the left in the axes of the view (x along
    /// the rocket, y across); of one round a gap within it on the right.
    #[must_use]
    pub fn contours_m(&self) -> Vec<Ring> {
        let mut rings: Vec<Ring> = vec![ring_of(self.body_polygon().exterior().coords())];
        let seen = self.fins().iter().filter(|fin| fin.turned.abs() > SAME_M);
        rings.extend(seen.map(|fin| ring_of(fin.corners.iter())));
        let mut kept: Vec<Edge> = Vec::new();
        for (i, ring) in rings.iter().enumerate() {
            for edge in edges(ring) {
                for (a, b) in parted(edge, i, &rings) {
                    let is_edge = !is_inside(aside(a, b), &rings);
                    let is_same = |&(c, d): &Edge| is_one(a, c) && is_one(b, d);
                    if is_edge && (i == 0 || !kept.iter().any(is_same)) {
                        kept.push((a, b));
                    }
                }
            }
        }
        chained(kept)
    }
}

/// A ring with its inside on the left, without points that repeat the one before.
fn ring_of<'a>(points: impl Iterator<Item = &'a Coord<f64>>) -> Ring {
    let mut ring: Ring = Vec::new();
    for &point in points {
        if ring.last().is_none_or(|last| !is_one(*last, point)) {
            ring.push(point);
        }
    }
    if ring.len() > 1 && is_one(ring[0], ring[ring.len() - 1]) {
        ring.pop();
    }
    let doubled: f64 = edges(&ring).map(|(a, b)| a.x * b.y - b.x * a.y).sum();
    if doubled < 0.0 {
        ring.reverse();
    }
    ring
}

fn edges(ring: &[Coord<f64>]) -> impl Iterator<Item = Edge> + '_ {
    ring.iter().copied().zip(ring.iter().copied().cycle().skip(1))
}

fn is_one(a: Coord<f64>, b: Coord<f64>) -> bool {
    (a.x - b.x).abs() < SAME_M && (a.y - b.y).abs() < SAME_M
}

/// How far a point lies to the left of an edge, times the length of the edge.
fn left_of((a, b): Edge, p: Coord<f64>) -> f64 {
    (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)
}

/// The pieces of an edge of ring `own` between the places where other rings cross or touch it.
fn parted(edge: Edge, own: usize, rings: &[Ring]) -> Vec<Edge> {
    let (a, b) = edge;
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let length2 = dx * dx + dy * dy;
    let length = length2.sqrt();
    let mut cuts = vec![0.0, 1.0];
    let others = rings.iter().enumerate().filter(|(i, _)| *i != own);
    for (c, d) in others.flat_map(|(_, ring)| edges(ring)) {
        let (of_c, of_d) = (left_of(edge, c), left_of(edge, d));
        if of_c.abs() < SAME_M * length {
            cuts.push(((c.x - a.x) * dx + (c.y - a.y) * dy) / length2);
        } else if of_c * of_d < 0.0 {
            let share = of_c / (of_c - of_d);
            let (x, y) = (c.x + share * (d.x - c.x), c.y + share * (d.y - c.y));
            cuts.push(((x - a.x) * dx + (y - a.y) * dy) / length2);
        }
    }
    cuts.retain(|t| (0.0..=1.0).contains(t));
    cuts.sort_unstable_by(f64::total_cmp);
    // The ends are as they are, so that the next edge begins there to the last bit.
    let at = |t: f64| {
        if t <= 0.0 {
            a
        } else if t >= 1.0 {
            b
        } else {
            Coord { x: a.x + t * dx, y: a.y + t * dy }
        }
    };
    let mut pieces = Vec::new();
    let mut last = a;
    for &t in &cuts[1..] {
        if !is_one(last, at(t)) {
            pieces.push((last, at(t)));
            last = at(t);
        }
    }
    pieces
}

/// A point a little to the right of the middle of an edge.
fn aside(a: Coord<f64>, b: Coord<f64>) -> Coord<f64> {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let scale = ASIDE_M / (dx * dx + dy * dy).sqrt();
    Coord {
        x: f64::midpoint(a.x, b.x) + dy * scale,
        y: f64::midpoint(a.y, b.y) - dx * scale,
    }
}

/// Whether a point lies in any of the rings: a line from it crosses such a ring an odd number of
/// times.
fn is_inside(p: Coord<f64>, rings: &[Ring]) -> bool {
    let crosses = |&(a, b): &Edge| {
        (a.y > p.y) != (b.y > p.y) && {
            let rises = b.y > a.y;
            (left_of((a, b), p) > 0.0) == rises
        }
    };
    rings.iter().any(|ring| edges(ring).filter(crosses).count() % 2 == 1)
}

/// Edges put end to end.
fn chained(mut edges: Vec<Edge>) -> Vec<Ring> {
    let mut rings = Vec::new();
    while let Some((first, mut end)) = edges.pop() {
        let mut ring = vec![first];
        while !is_one(end, first) {
            let begins = |(a, _): &Edge| is_near(*a, end);
            let Some(next) = edges.iter().rposition(begins) else { break };
            ring.push(end);
            end = edges.remove(next).1;
        }
        if ring.len() > 2 {
            rings.push(ring);
        }
    }
    rings
}

/// Where edges cross, their ends differ by more than a rounding.
fn is_near(a: Coord<f64>, b: Coord<f64>) -> bool {
    (a.x - b.x).abs() < 10.0 * SAME_M && (a.y - b.y).abs() < 10.0 * SAME_M
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outline::Body;
    use crate::{BottleSize, Design, Example, Planform};
    use geo::{Area, Centroid, LineString, MultiPolygon, Polygon};

    /// The rings against geo's union of the same outlines.
    fn assert_is_union(design: &Design) {
        let view = SideView::new(design, &Body::new(design).unwrap());
        let union: MultiPolygon<f64> = view.union();
        let rings = view.contours_m();
        let (mut area, mut first) = (0.0, 0.0);
        for ring in &rings {
            let polygon = Polygon::new(LineString::from(ring.clone()), vec![]);
            let signed = polygon.signed_area();
            area += signed;
            first += signed * polygon.centroid().unwrap().x();
        }
        let (true_area, name) = (union.unsigned_area(), &design.name);
        assert!(
            (area - true_area).abs() < 1e-7 * true_area,
            "{name}: {area} {true_area}"
        );
        let centroid = union.centroid().unwrap().x();
        assert!((first / area - centroid).abs() < 1e-7, "{name}: {rings:?}");
        let holes: usize = union.iter().map(|polygon| polygon.interiors().len()).sum();
        assert_eq!(rings.len(), union.iter().count() + holes, "{name}");
    }

    #[test]
    fn the_contour_is_that_of_the_union() {
        let examples = Example::ALL.map(Example::design);
        for mut design in
            examples.into_iter().chain(BottleSize::ALL.map(BottleSize::design))
        {
            assert_is_union(&design);
            if design.fins.is_empty() {
                continue;
            }
            for (count, roll_deg) in [(1, 0.0), (2, 0.0), (3, 20.0), (5, 7.0), (8, 10.0)]
            {
                design.fins[0].count = count;
                design.fins[0].roll_deg = roll_deg;
                assert_is_union(&design);
            }
            // Behind the tail, and back again.
            design.fins[0].start_mm += 30.0;
            assert_is_union(&design);
            let mut second = design.fins[0].clone();
            second.start_mm -= 60.0;
            second.planform = Planform::PointsMm(vec![
                [0.0, 0.0],
                [10.0, 40.0],
                [30.0, 15.0],
                [60.0, 45.0],
                [80.0, 0.0],
            ]);
            design.fins.push(second.clone());
            assert_is_union(&design);
            design.fins.push(second);
            assert_is_union(&design);
        }
    }
}
