//! Drag of bodies and plates square to the wind.

/// Drag coefficients square to the wind, on the area that is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crossflow {
    /// Of the body.
    pub body: f64,
    /// Of the fins.
    pub fins: f64,
}

/// Of a square plate square to the wind (Matthews, Aeronautical Engineer's Data Book,
/// p. 95).
const SQUARE_PLATE: f64 = 1.17;

impl Crossflow {
    /// Each part's own drag, for a body of this fineness (length by width).
    #[must_use]
    pub fn of_parts(fineness: f64) -> Self {
        Self { body: cylinder(fineness), fins: SQUARE_PLATE }
    }

    /// The same drag everywhere: what a card cut-out stands for.
    #[must_use]
    pub fn common() -> Self {
        Self { body: 1.0, fins: 1.0 }
    }
}

/// Drag of a cylinder of finite length across the wind (Matthews, Aeronautical Engineer's
/// Data Book, p. 95: l/d of 1, 2, 5, 10, 40 and infinity), straight lines over d/l between
/// the points. A body shorter than its width counts as one of l/d 1.
fn cylinder(fineness: f64) -> f64 {
    const POINTS: [(f64, f64); 6] = [
        (0.0, 1.20),
        (1.0 / 40.0, 0.98),
        (1.0 / 10.0, 0.82),
        (1.0 / 5.0, 0.74),
        (1.0 / 2.0, 0.68),
        (1.0, 0.63),
    ];
    between(&POINTS, 1.0 / fineness)
}

/// The straight line between the points around `x`; the end points hold beyond the ends.
pub(super) fn between(points: &[(f64, f64)], x: f64) -> f64 {
    let after = points.partition_point(|&(at, _)| at < x);
    let Some(&(x1, y1)) = points.get(after) else {
        return points.last().map_or(0.0, |&(_, y)| y);
    };
    let Some(&(x0, y0)) = after.checked_sub(1).and_then(|i| points.get(i)) else {
        return y1;
    };
    y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_points_of_the_handbook() {
        for (fineness, drag) in
            [(1.0, 0.63), (2.0, 0.68), (5.0, 0.74), (10.0, 0.82), (40.0, 0.98)]
        {
            let found = Crossflow::of_parts(fineness).body;
            assert!((found - drag).abs() < 1e-12, "{fineness}: {found}");
        }
        assert!((Crossflow::of_parts(1e9).body - 1.2).abs() < 1e-6);
        assert_eq!(Crossflow::of_parts(0.2).body, 0.63);
    }
}
