//! What holds for every sheet.
use super::piece::edges;
use crate::scene::Point;

/// Area of an outline, by triangles from the origin.
pub(super) fn area_mm2(outline: &[Point]) -> f64 {
    let twice: f64 = edges(outline).map(|(a, b)| a.x * b.y - b.x * a.y).sum();
    twice.abs() / 2.0
}
