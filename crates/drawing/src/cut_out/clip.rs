//! What of a path lies on one sheet.

use crate::scene::{Path, Point};

/// From where to where a sheet reaches.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Window {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
}

impl Window {
    /// Its top left corner.
    pub(crate) fn corner(self) -> Point {
        Point { x: self.left, y: self.top }
    }

    /// Whether a point lies in it.
    pub(crate) fn has(self, p: Point) -> bool {
        (self.left..=self.right).contains(&p.x) && (self.top..=self.bottom).contains(&p.y)
    }

    /// The same without an edge of some width.
    pub(crate) fn without(self, edge: f64) -> Self {
        Self {
            left: self.left + edge,
            top: self.top + edge,
            right: self.right - edge,
            bottom: self.bottom - edge,
        }
    }

    /// The same, so much farther to the right and down.
    pub(crate) fn moved(self, by: f64) -> Self {
        Self {
            left: self.left + by,
            top: self.top + by,
            right: self.right + by,
            bottom: self.bottom + by,
        }
    }
}

/// The runs of a path within a window, moved so that its corner is the origin.
pub(crate) fn clipped(path: &Path, window: Window) -> Path {
    let mut runs: Vec<(Vec<Point>, bool)> = Vec::new();
    for (points, is_closed) in &path.runs {
        let closing = points.first().filter(|_| *is_closed);
        let ends = points.iter().skip(1).chain(closing);
        let mut last: Option<Point> = None;
        for (&from, &to) in points.iter().zip(ends) {
            let Some((from, to)) = within(from, to, window) else {
                last = None;
                continue;
            };
            match runs.last_mut().filter(|_| last == Some(from)) {
                Some((run, _)) => run.push(to),
                None => runs.push((vec![from, to], false)),
            }
            last = Some(to);
        }
    }
    for point in runs.iter_mut().flat_map(|(points, _)| points) {
        *point = Point { x: point.x - window.left, y: point.y - window.top };
    }
    Path { runs }
}

/// The piece of a line within a window (Liang and Barsky's way: the largest share at which it
/// comes in, the least at which it leaves).
fn within(from: Point, to: Point, window: Window) -> Option<(Point, Point)> {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    for (step, room) in [
        (-dx, from.x - window.left),
        (dx, window.right - from.x),
        (-dy, from.y - window.top),
        (dy, window.bottom - from.y),
    ] {
        if step == 0.0 {
            if room < 0.0 {
                return None;
            }
        } else if step < 0.0 {
            enters = enters.max(room / step);
        } else {
            leaves = leaves.min(room / step);
        }
    }
    let at = |share: f64| {
        // Ends that lie within stay as they are, so that runs go on.
        if share <= 0.0 {
            from
        } else if share >= 1.0 {
            to
        } else {
            Point { x: from.x + share * dx, y: from.y + share * dy }
        }
    };
    (enters < leaves).then(|| (at(enters), at(leaves)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_over_a_corner_leaves_its_two_sides_there() {
        let corner = |x, y| Point { x, y };
        let square = Path::closed(vec![
            corner(5.0, 5.0),
            corner(15.0, 5.0),
            corner(15.0, 15.0),
            corner(5.0, 15.0),
        ]);
        let window = Window { left: 10.0, top: 10.0, right: 30.0, bottom: 30.0 };
        let runs = clipped(&square, window).runs;
        let wanted = vec![corner(5.0, 0.0), corner(5.0, 5.0), corner(0.0, 5.0)];
        assert_eq!(runs, [(wanted, false)]);
        let beside = Window { left: 20.0, top: 0.0, right: 30.0, bottom: 30.0 };
        assert_eq!(clipped(&square, beside), Path::default());
    }
}
