//! A fin with the tab by which it is fixed.

use noseward_stability::FinSet;
use noseward_words as texts;

use super::piece::{Label, Piece, widest_room};
use crate::scene::{Path, Point};

/// How far the tab reaches in from the root, in millimetres.
pub(super) const TAB_MM: f64 = 12.0;
/// How much shorter its inner edge is at either end, at most.
const CHAMFER_MM: f64 = 5.0;
/// How long the arrow is that points to the nose.
const ARROW_MM: f64 = 9.0;

/// One fin of a set, with its number or without one, the front to the left, the tab below. `None`
/// for an outline without a root.
pub(super) fn fin(set: &FinSet, number: Option<u32>) -> Option<Piece> {
    let corners = set.planform.corners_mm();
    let mut cut: Vec<Point> =
        corners.iter().map(|&[along, out]| Point { x: along, y: -out }).collect();
    cut.dedup();
    let (&front, &rear) = (cut.first()?, cut.last()?);
    let (dx, dy) = (rear.x - front.x, rear.y - front.y);
    let root = libm::hypot(dx, dy);
    if !(root > 1.0 && root.is_finite()) {
        return None;
    }
    // Along the root, and down from it.
    let at = |along: f64, down: f64| Point {
        x: front.x + (along * dx - down * dy) / root,
        y: front.y + (along * dy + down * dx) / root,
    };
    let mut words = Vec::new();
    let said = number
        .map(|number| texts::paper_parts_fin(number.into(), set.count.into()))
        .unwrap_or_default();
    for height in [5.0, 4.0, 3.0, 2.4] {
        let label = widest_room(&cut, height + 2.0).and_then(|(middle, width)| {
            Label::new(middle, (width - 3.0, height), 0.0, &said)
        });
        if let Some(label) = label {
            words.push(label);
            break;
        }
    }
    let chamfer = CHAMFER_MM.min(root / 4.0);
    let turned_deg = libm::atan2(dy, dx).to_degrees();
    let (from, room) = arrow_room(root, chamfer);
    let words_on_tab = (root - chamfer - from - room - 3.0, TAB_MM - 4.0);
    let middle = at(f64::midpoint(from + room + 1.5, root - chamfer - 1.5), TAB_MM / 2.0);
    let said = texts::paper_parts_tab().as_str();
    words.extend(Label::new(middle, words_on_tab, turned_deg, said));
    cut.extend([at(root - chamfer, TAB_MM), at(chamfer, TAB_MM)]);
    let mut marks = Path::default();
    let (tip, end) = (at(from, TAB_MM / 2.0), at(from + room, TAB_MM / 2.0));
    marks.line(tip, end);
    for side in [-1.0, 1.0] {
        marks.line(tip, at(from + room / 3.0, TAB_MM / 2.0 + side * room / 4.0));
    }
    let folds = Path::open(vec![front, rear]);
    Some(Piece { cut, folds, marks, words }.at_home())
}

/// Where the arrow begins on the tab, and how long it is.
fn arrow_room(root: f64, chamfer: f64) -> (f64, f64) {
    (chamfer + 1.0, ARROW_MM.min(root - 2.0 * chamfer - 2.0))
}

#[cfg(test)]
mod tests {
    use super::super::tests::area_mm2;
    use super::*;
    use noseward_stability::{Example, Planform};

    /// Area of a trapezoid: half the sum of its two parallel sides times their distance.
    fn trapezoid(a: f64, b: f64, height: f64) -> f64 {
        (a + b) / 2.0 * height
    }

    #[test]
    fn a_fin_and_its_tab_have_their_areas() {
        let mut set = Example::Puffin.design().fins.remove(0);
        for (root_mm, tip_mm, span_mm, sweep_mm) in
            [(110.0, 60.0, 55.0, 50.0), (45.0, 0.0, 25.0, -20.0), (9.0, 9.0, 40.0, 0.0)]
        {
            set.planform = Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm };
            let chamfer = CHAMFER_MM.min(root_mm / 4.0);
            let tab = trapezoid(root_mm, root_mm - 2.0 * chamfer, TAB_MM);
            let wanted = trapezoid(root_mm, tip_mm, span_mm) + tab;
            let found = area_mm2(&fin(&set, Some(1)).unwrap().cut);
            assert!((found - wanted).abs() < 1e-9, "{root_mm}: {found} {wanted}");
        }
        // An outline of one's own: a rectangle of 60 by 40 with a triangle of 20 by 40 before it.
        let own = vec![[0.0, 0.0], [20.0, 40.0], [80.0, 40.0], [80.0, 0.0]];
        set.planform = Planform::PointsMm(own);
        let wanted = 60.0 * 40.0 + 20.0 * 40.0 / 2.0 + trapezoid(80.0, 70.0, TAB_MM);
        let found = area_mm2(&fin(&set, Some(1)).unwrap().cut);
        assert!((found - wanted).abs() < 1e-9, "{found} {wanted}");
    }

    #[test]
    fn a_fin_without_a_root_is_none() {
        let mut set = Example::Puffin.design().fins.remove(0);
        set.planform = Planform::PointsMm(vec![[0.0, 0.0], [9.0, 9.0], [0.0, 0.0]]);
        assert_eq!(fin(&set, Some(1)), None);
    }
}
