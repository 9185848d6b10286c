//! A cone, a taper with straight sides or a tube, unrolled: a sector of a ring, or a rectangle.

use std::f64::consts::PI;

use noseward_words as texts;

use super::piece::{Label, Piece, widest_room};
use crate::scene::{Path, Point};

/// How far the tab reaches under the other edge, in millimetres, at most.
const TAB_MM: f64 = 10.0;
/// Chords lie so near to their arc, in millimetres.
const FLAT_MM: f64 = 0.01;
/// Parts that are nearer to a full turn than this have no room for a tab, in radians.
const LEAST_GAP: f64 = 0.7;

/// What is to be unrolled: radii at the front and at the rear and the length, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Straight {
    pub(super) front: f64,
    pub(super) rear: f64,
    pub(super) length: f64,
}

/// One of some equal parts: radii from the tip of its sector and its angle. A tube has no tip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Flat {
    Sector { inner: f64, outer: f64, angle: f64 },
    Rectangle { width: f64, height: f64 },
}

impl Straight {
    /// Along its side, from end to end.
    fn slant(self) -> f64 {
        libm::hypot(self.length, self.rear - self.front)
    }

    /// One of some equal parts, unrolled.
    pub(super) fn flat(self, parts: u32) -> Flat {
        let (least, most) = (self.front.min(self.rear), self.front.max(self.rear));
        let (slant, parts) = (self.slant(), f64::from(parts));
        // Flatter than this over its whole length nobody cuts.
        if most - least < 1e-3 {
            let width = PI * (self.front + self.rear) / parts;
            return Flat::Rectangle { width, height: slant };
        }
        let (inner, outer) =
            (slant * least / (most - least), slant * most / (most - least));
        Flat::Sector { inner, outer, angle: 2.0 * PI * (most - least) / slant / parts }
    }

    /// One of some equal parts with its tab and with words on it; `None` where it has no room
    /// for the tab.
    pub(super) fn piece(self, parts: u32, said: &str) -> Option<Piece> {
        let mut piece = Piece::default();
        let (mut body, run) = match self.flat(parts) {
            Flat::Rectangle { width, height } => {
                let at = |x: f64, y: f64| Point { x, y };
                let corners = vec![
                    at(width, 0.0),
                    at(width, height),
                    at(0.0, height),
                    at(0.0, 0.0),
                ];
                let edge = Edge {
                    from: at(width, 0.0),
                    along: at(0.0, 1.0),
                    length: height,
                    tip: 0.0,
                };
                (corners, edge)
            }
            Flat::Sector { inner, outer, angle } => {
                if angle > 2.0 * PI - LEAST_GAP {
                    return None;
                }
                let on = |radius: f64, share: f64| {
                    let (sin, cos) = libm::sincos(angle * (share - 0.5));
                    Point { x: radius * sin, y: radius * cos }
                };
                let mut corners = arc(outer, angle, &|share| on(outer, 1.0 - share));
                corners.extend(arc(inner, angle, &|share| on(inner, share)));
                corners.rotate_right(1);
                corners.dedup();
                let along = on(1.0, 1.0);
                let tip = if inner < 1.0 { 7.0 } else { 1.0 };
                let (from, length) = (on(inner, 1.0), outer - inner);
                (corners, Edge { from, along, length, tip })
            }
        };
        piece.words.extend(said_in(&body, said, 0.0));
        if (self.front - self.rear).abs() > 1e-3 && self.front.min(self.rear) > 0.0 {
            let end = if self.front < self.rear {
                texts::paper_parts_narrow_front()
            } else {
                texts::paper_parts_narrow_rear()
            };
            piece.words.extend(said_in(&body, end.as_str(), LINE_MM));
        }
        let tab = run.tab();
        piece.words.extend(run.label());
        piece.marks = Path::open(vec![tab[0], tab[3]]);
        // The outline begins at the inner end of the edge with the tab.
        body.splice(1..1, tab);
        piece.cut = body;
        Some(piece.at_home())
    }
}

/// What two lines of words in a part are apart.
const LINE_MM: f64 = 6.0;

/// Words in the widest room of an outline, or so much below.
fn said_in(outline: &[Point], said: &str, below: f64) -> Option<Label> {
    let (mut middle, width) = widest_room(outline, 2.0 * LINE_MM)?;
    middle.y += below - LINE_MM / 2.0;
    Label::new(middle, (width - 3.0, LINE_MM), 0.0, said)
}

/// The edge that the tab is at.
struct Edge {
    from: Point,
    along: Point,
    length: f64,
    /// How far from its beginning the tab begins.
    tip: f64,
}

impl Edge {
    /// How far the tab reaches.
    fn reach(&self) -> f64 {
        TAB_MM.min(self.length / 3.0)
    }

    fn at(&self, run: f64, out: f64) -> Point {
        let Point { x, y } = self.along;
        Point { x: self.from.x + run * x + out * y, y: self.from.y + run * y - out * x }
    }

    /// From where to where the tab reaches along the edge.
    fn ends(&self) -> (f64, f64) {
        (self.tip.min(self.length / 3.0), self.length - 1.0_f64.min(self.length / 9.0))
    }

    fn tab(&self) -> [Point; 4] {
        let ((from, to), out) = (self.ends(), self.reach());
        let chamfer = out.min((to - from) / 3.0);
        [
            self.at(from, 0.0),
            self.at(from + chamfer, out),
            self.at(to - chamfer / 2.0, out),
            self.at(to, 0.0),
        ]
    }

    fn label(&self) -> Option<Label> {
        let ((from, to), out) = (self.ends(), self.reach());
        let chamfer = out.min((to - from) / 3.0);
        let (from, to) = (from + chamfer, to - chamfer / 2.0);
        let middle = self.at(f64::midpoint(from, to), out / 2.0);
        let turned_deg = libm::atan2(self.along.y, self.along.x).to_degrees();
        let said = texts::paper_parts_under().as_str();
        Label::new(middle, (to - from, out - 2.0), turned_deg, said)
    }
}

/// Points along an arc, `place` being where some share of it is.
fn arc(radius: f64, angle: f64, place: &dyn Fn(f64) -> Point) -> Vec<Point> {
    let step = (8.0 * FLAT_MM / radius.max(FLAT_MM)).sqrt();
    let count = (angle / step).ceil().clamp(1.0, 720.0);
    let mut points = Vec::new();
    let mut k = 0.0;
    while k <= count {
        points.push(place(k / count));
        k += 1.0;
    }
    points
}

#[cfg(test)]
mod tests {
    use super::super::tests::area_mm2;
    use super::*;

    const SHAPES: [Straight; 4] = [
        Straight { front: 0.0, rear: 32.5, length: 120.0 },
        Straight { front: 0.0, rear: 60.0, length: 9.0 },
        Straight { front: 45.0, rear: 14.0, length: 90.0 },
        Straight { front: 12.0, rear: 12.004, length: 240.0 },
    ];

    /// Rolled back, an arc of a sector is a circle round the end of the cone, and its straight
    /// edge is the side (MathWorld, "Cone" and "Conical Frustum").
    #[test]
    fn a_sector_rolled_back_is_the_cone() {
        for shape in SHAPES {
            for parts in [1, 2, 3] {
                let Flat::Sector { inner, outer, angle } = shape.flat(parts) else {
                    panic!("{shape:?}");
                };
                let turn = angle * f64::from(parts) / (2.0 * PI);
                let ends = [outer * turn, inner * turn];
                let wanted = [shape.front.max(shape.rear), shape.front.min(shape.rear)];
                for (found, wanted) in ends.iter().zip(wanted) {
                    assert!((found - wanted).abs() < 1e-9, "{shape:?}: {ends:?}");
                }
                let grows = shape.rear - shape.front;
                let slant = (shape.length * shape.length + grows * grows).sqrt();
                assert!((outer - inner - slant).abs() < 1e-9, "{shape:?}");
            }
        }
    }

    /// The side of a frustum: π (R + r) s (MathWorld, "Conical Frustum").
    #[test]
    fn a_part_and_its_tab_have_their_areas() {
        for (shape, parts) in [(SHAPES[0], 1), (SHAPES[2], 1), (SHAPES[1], 2)] {
            let piece = shape.piece(parts, "part").unwrap();
            let [(fold, _)] = &piece.marks.runs[..] else { panic!("{piece:?}") };
            let side = PI * (shape.front + shape.rear) * shape.slant() / f64::from(parts);
            let [from, to] = fold[..] else { panic!("{fold:?}") };
            let edge = libm::hypot(to.x - from.x, to.y - from.y);
            let out = TAB_MM.min(shape.slant() / 3.0);
            let chamfer = out.min(edge / 3.0);
            let tab = (2.0 * edge - 1.5 * chamfer) / 2.0 * out;
            let found = area_mm2(&piece.cut);
            assert!((found / (side + tab) - 1.0).abs() < 1e-3, "{found} {side} {tab}");
        }
    }

    #[test]
    fn a_tube_is_a_rectangle_as_wide_as_its_girth() {
        let tube = Straight { front: 12.0, rear: 12.0, length: 240.0 };
        assert_eq!(tube.flat(1), Flat::Rectangle { width: 24.0 * PI, height: 240.0 });
        let piece = tube.piece(1, "Tube").unwrap();
        assert!((piece.size().0 - 24.0 * PI - TAB_MM).abs() < 1e-9);
    }

    #[test]
    fn a_cone_that_is_nearly_flat_has_no_room_for_its_tab_in_one_part() {
        assert_eq!(SHAPES[1].piece(1, ""), None);
        assert!(SHAPES[1].piece(2, "").is_some());
    }
}
