//! The rocket on its string: the circle from above, the rocket as seen along the string,
//! its turning against time, and what every starting angle leads to.
//!
//! What moves is a group of its own, so that a frame redraws nothing else.

mod circle;
mod facing;
mod graph;
mod starts;

pub use circle::{swing_circle, swing_turning};
pub use facing::swing_rocket;
pub use graph::{SwingCurve, swing_cursor, swing_graph, swing_graph_time_s};
pub use starts::start_strip;

use crate::scene::{Path, Point};

/// The head of an arrow that points in a direction, of which the length does not matter.
fn arrow_head(tip: Point, along: (f64, f64), length_px: f64) -> Path {
    let size = libm::hypot(along.0, along.1).max(f64::MIN_POSITIVE);
    let (dx, dy) = (along.0 / size * length_px, along.1 / size * length_px);
    let corner = |side: f64| Point {
        x: tip.x - dx + side * dy * 0.42,
        y: tip.y - dy - side * dx * 0.42,
    };
    Path::closed(vec![tip, corner(1.0), corner(-1.0)])
}

/// The examples on their strings, for tests.
#[cfg(test)]
fn examples() -> Vec<(noseward_stability::Figures, noseward_stability::Swing)> {
    use noseward_stability::{Example, Swing, SwingSetup, evaluate};

    Example::ALL
        .iter()
        .map(|example| {
            let figures = evaluate(&example.design()).figures.unwrap();
            let swing = Swing::new(&figures, &SwingSetup::default()).unwrap();
            (figures, swing)
        })
        .collect()
}
