//! Three marks that belong to one symbol, and what stands between them.

use super::marks::Mark;
use super::modules::{Modules, has_small_mark, small_marks};
use super::picture::{Picture, Point};
use super::{Corners, SymbolFault};

/// Modules from the edge of a symbol to the middle of a mark.
const INSET: f64 = 3.5;
/// How much of the two lines of modules in turn must be seen, from -1 to 1, before reading is
/// tried: out of focus they are nearly grey.
const LEAST_LIKENESS: f64 = 0.2;
/// How much of them is seen where there surely is a symbol.
const SURE_LIKENESS: f64 = 0.4;

/// So many marks round one are looked at: a large symbol may stand among small ones.
const NEAREST: usize = 24;
/// How much more modules there may seem to be along one side than along the other.
const ASKEW: f64 = 1.3;

/// What a module has of each of the four beside it, in a picture out of focus by half a module.
const OUT_OF_FOCUS: f64 = 0.15;

/// Three marks with a line of modules in turn from the first to each of the others.
#[derive(Debug)]
pub(super) struct Group {
    fit: Fit,
    marks: [Point; 3],
    module: f64,
    inverted: bool,
    /// How well these lines are seen.
    pub(super) likeness: f64,
}

/// Where each module of a symbol is in the picture: a projection of the plane, given by the
/// middles of the three marks and how much farther than the first the others are.
#[derive(Clone, Copy, Debug)]
struct Fit {
    values: [f64; 8],
    /// Modules along a side.
    size: usize,
}

impl Fit {
    fn point(&self, u: f64, v: f64) -> Point {
        let [ax, ay, bx, by, cx, cy, wb, wc] = self.values;
        let across = self.size as f64 - 2.0 * INSET;
        let (b, c) = ((u - INSET) / across, (v - INSET) / across);
        let (a, b, c) = (1.0 - b - c, b * wb, c * wc);
        let sum = a + b + c;
        Point { x: (a * ax + b * bx + c * cx) / sum, y: (a * ay + b * by + c * cy) / sum }
    }

    fn corners(&self, scale: f64) -> Corners {
        let end = self.size as f64;
        [(0.0, 0.0), (end, 0.0), (end, end), (0.0, end)]
            .map(|(u, v)| self.point(u, v) * scale)
    }
}

/// Every three marks of a picture that may be those of a symbol.
pub(super) fn groups(picture: &Picture, marks: &[Mark]) -> Vec<Group> {
    let mut groups = Vec::new();
    for corner in marks {
        let near = nearest(corner, marks);
        for (i, one) in near.iter().enumerate() {
            for other in near.iter().skip(i + 1) {
                if is_corner(corner, one, other) {
                    groups.extend(group(picture, corner, one, other));
                }
            }
        }
    }
    groups
}

/// Those of the marks near one that may belong to it.
fn nearest<'a>(corner: &Mark, marks: &'a [Mark]) -> Vec<&'a Mark> {
    let far = |mark: &Mark| (mark.at - corner.at).length();
    let may_belong = |mark: &&Mark| {
        let (small, large) =
            (mark.module.min(corner.module), mark.module.max(corner.module));
        mark.inverted == corner.inverted
            && large < 1.7 * small
            && (1.0..200.0 * large).contains(&far(mark))
    };
    let mut near: Vec<&Mark> = marks.iter().filter(may_belong).collect();
    while near.len() > NEAREST {
        let mut farthest = 0;
        for (i, mark) in near.iter().enumerate() {
            farthest = if far(mark) > far(near[farthest]) { i } else { farthest };
        }
        near.swap_remove(farthest);
    }
    near
}

/// Whether three marks that may belong together are in a corner, as far as seen from aside.
fn is_corner(corner: &Mark, one: &Mark, other: &Mark) -> bool {
    let (to_one, to_other) = (one.at - corner.at, other.at - corner.at);
    let (far, further) = (to_one.length(), to_other.length());
    one.module.max(other.module) < 1.7 * one.module.min(other.module)
        && far.max(further) < 1.8 * far.min(further)
        && to_one.dot(to_other).abs() < 0.55 * far * further
}

/// The marks as a group of the size for which the lines between them are seen best.
fn group(picture: &Picture, corner: &Mark, one: &Mark, other: &Mark) -> Option<Group> {
    let clockwise = (one.at - corner.at).cross(other.at - corner.at) > 0.0;
    let (right, down) = if clockwise { (one, other) } else { (other, one) };
    let side = |mark: &Mark| {
        let way = mark.at - corner.at;
        let near = corner.module_along(picture, way);
        let far = mark.module_along(picture, way);
        // A module looks smaller by the square of how much farther it is.
        (way.length() / ((near + far) / 2.0), (near / far).sqrt())
    };
    let ((across, wb), (along, wc)) = (side(right), side(down));
    let estimate = (across + along) / 2.0 + 2.0 * INSET;
    let is_square = across.max(along) < ASKEW * across.min(along);
    if !is_square || !(18.0..190.0).contains(&estimate) {
        return None;
    }
    let [a, b, c] = [corner.at, right.at, down.at];
    let values = [a.x, a.y, b.x, b.y, c.x, c.y, wb, wc];
    let sizes = (21..=177).step_by(4);
    let mut best: Option<Group> = None;
    for size in sizes.filter(|size| (*size as f64 / estimate - 1.0).abs() < 0.25) {
        let mut group = Group {
            fit: Fit { values, size },
            marks: [a, b, c],
            module: corner.module,
            inverted: corner.inverted,
            likeness: 0.0,
        };
        group.likeness = group.in_turn(picture);
        if group.likeness > best.as_ref().map_or(LEAST_LIKENESS, |best| best.likeness) {
            best = Some(group);
        }
    }
    best
}

impl Group {
    /// Whether it has a mark of another group.
    pub(super) fn shares(&self, other: &Self) -> bool {
        self.marks.iter().any(|mark| other.marks.contains(mark))
    }

    /// Whether it is a symbol even if it cannot be read.
    pub(super) fn is_sure(&self) -> bool {
        self.likeness > SURE_LIKENESS
    }

    fn ink(&self, picture: &Picture, fit: &Fit, u: f64, v: f64) -> f64 {
        let ink = picture.ink(fit.point(u, v));
        if self.inverted { -ink } else { ink }
    }

    /// How well the two lines of modules in turn are seen.
    fn in_turn(&self, picture: &Picture) -> f64 {
        let (mut sum, mut count) = (0.0, 0.0);
        for i in 8..self.fit.size - 8 {
            let sign = if i % 2 == 0 { 1.0 } else { -1.0 };
            let at = i as f64 + 0.5;
            let row = self.ink(picture, &self.fit, at, 6.5);
            sum += sign * (row + self.ink(picture, &self.fit, 6.5, at));
            count += 2.0;
        }
        sum / count
    }

    /// What the symbol says, and where it is.
    ///
    /// # Errors
    ///
    /// What is wrong with it, and where it is.
    pub(super) fn read(
        &self,
        picture: &Picture,
    ) -> Result<(Corners, String), (Corners, SymbolFault)> {
        let fit = self.fitted(picture);
        let corners = fit.corners(picture.scale);
        let first = match self.text(picture, &fit) {
            Ok(text) => return Ok((corners, text)),
            Err(error) => error,
        };
        // How far away the others are is what the marks tell least of.
        for (b, c) in nearby(2, 0.012) {
            let mut other = fit;
            other.values[6] *= 1.0 + b;
            other.values[7] *= 1.0 + c;
            if let Ok(text) = self.text(picture, &other) {
                return Ok((corners, text));
            }
        }
        Err((corners, first))
    }

    fn text(&self, picture: &Picture, fit: &Fit) -> Result<String, SymbolFault> {
        const POINTS: [(f64, f64); 5] =
            [(0.5, 0.5), (0.3, 0.3), (0.7, 0.3), (0.3, 0.7), (0.7, 0.7)];
        let size = fit.size;
        let ink = |i: usize| {
            let (x, y) = ((i % size) as f64, (i / size) as f64);
            let ink = |(u, v)| self.ink(picture, fit, x + u, y + v);
            POINTS.into_iter().map(ink).sum::<f64>()
        };
        let inks: Vec<f64> = (0..size * size).map(ink).collect();
        let text = |blur: f64| {
            let is_dark = |i: usize| {
                let (x, y) = (i % size, i / size);
                let next = [(0, 1), (2, 1), (1, 0), (1, 2)].map(|(dx, dy)| {
                    let (x, y) = ((x + dx).clamp(1, size), (y + dy).clamp(1, size));
                    inks[(y - 1) * size + x - 1]
                });
                inks[i] > blur * next.into_iter().sum::<f64>()
            };
            let dark = (0..size * size).map(is_dark).collect();
            Modules { size, dark }.text()
        };
        // Out of focus each module has something of those beside it.
        text(0.0).or_else(|error| text(OUT_OF_FOCUS).map_err(|_| error))
    }

    /// The projection under which all that every symbol of this size has is seen best.
    fn fitted(&self, picture: &Picture) -> Fit {
        let known = known_modules(self.fit.size);
        let likeness = |fit: &Fit| -> f64 {
            let ink = |&(x, y, is_dark): &(f64, f64, bool)| {
                let parts = [(0.25, 0.25), (0.75, 0.25), (0.25, 0.75), (0.75, 0.75)];
                let ink = |(u, v)| self.ink(picture, fit, x + u, y + v);
                let ink: f64 = parts.into_iter().map(ink).sum();
                if is_dark { ink } else { -ink }
            };
            known.iter().map(ink).sum()
        };
        let mut fit = self.fit;
        let mut best = likeness(&fit);
        let mut better = |fit: &mut Fit, other: Fit| {
            let like = likeness(&other);
            if like > best {
                (best, *fit) = (like, other);
            }
        };
        for (b, c) in nearby(4, 0.02) {
            let mut other = self.fit;
            other.values[6] *= 1.0 + b;
            other.values[7] *= 1.0 + c;
            better(&mut fit, other);
        }
        let (mut far, mut side) = (0.02, self.module / 2.0);
        for _ in 0..6 {
            for i in 0..8 {
                for sign in [1.0, -1.0] {
                    let mut other = fit;
                    other.values[i] += sign * if i < 6 { side } else { far };
                    better(&mut fit, other);
                }
            }
            (far, side) = (far / 2.0, side / 2.0);
        }
        fit
    }
}

/// Pairs of small numbers round nought, `steps` of a size to each side.
fn nearby(steps: i32, size: f64) -> impl Iterator<Item = (f64, f64)> {
    let all = move || (-steps..=steps).map(move |i| f64::from(i) * size);
    all().flat_map(move |b| all().map(move |c| (b, c)))
}

/// Column, row and whether it is dark, of each module that is the same in every symbol of a
/// size: marks and the white round them, the lines in turn, and the small marks (ISO/IEC 18004,
/// 6.3).
fn known_modules(size: usize) -> Vec<(f64, f64, bool)> {
    let mut known = Vec::new();
    let mut add = |x: usize, y: usize, is_dark| known.push((x as f64, y as f64, is_dark));
    let end = size - 7;
    for (left, top) in [(0, 0), (end, 0), (0, end)] {
        for x in left.max(1) - 1..(left + 8).min(size) {
            for y in top.max(1) - 1..(top + 8).min(size) {
                let ring = x.abs_diff(left + 3).max(y.abs_diff(top + 3));
                add(x, y, ring != 2 && ring != 4);
            }
        }
    }
    for i in 8..size - 8 {
        add(i, 6, i % 2 == 0);
        add(6, i, i % 2 == 0);
    }
    let small = small_marks(size);
    for (i, &column) in small.iter().enumerate() {
        for (j, &row) in small.iter().enumerate() {
            if !has_small_mark(&small, (i, j)) {
                continue;
            }
            for x in column - 2..=column + 2 {
                for y in row - 2..=row + 2 {
                    add(x, y, x.abs_diff(column).max(y.abs_diff(row)) != 1);
                }
            }
        }
    }
    known
}
