//! A rectangle of a picture.

use crate::scene::{Path, Point};

/// A rectangle in CSS pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Area {
    pub(crate) left: f64,
    pub(crate) right: f64,
    pub(crate) top: f64,
    pub(crate) bottom: f64,
}

impl Area {
    pub(crate) fn outline(&self) -> Path {
        Path::closed(vec![
            Point { x: self.left, y: self.top },
            Point { x: self.right, y: self.top },
            Point { x: self.right, y: self.bottom },
            Point { x: self.left, y: self.bottom },
        ])
    }

    pub(crate) fn middle(&self) -> Point {
        Point {
            x: f64::midpoint(self.left, self.right),
            y: f64::midpoint(self.top, self.bottom),
        }
    }

    /// Slanting lines so far apart, cut off at the edges.
    pub(crate) fn hatching(&self, apart: f64) -> Path {
        let mut path = Path::default();
        let height = self.bottom - self.top;
        // Each line is that of the x at which it meets the bottom.
        let mut foot = ((self.left - height) / apart).ceil() * apart;
        while foot < self.right {
            let (low, high) = (foot.max(self.left), (foot + height).min(self.right));
            if high > low {
                let y = |x: f64| self.bottom - (x - foot);
                path.line(Point { x: low, y: y(low) }, Point { x: high, y: y(high) });
            }
            foot += apart;
        }
        path
    }
}
