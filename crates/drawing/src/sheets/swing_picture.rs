//! The picture on the card for swinging: seen from above, string and rocket go round.

use crate::palette::Colour;
use crate::pictures::PICTURE_SIZE_PX;
use crate::scene::{Item, Path, Point, Scene, Style};

/// Half of the picture, the reach of the string, and of a rocket along its path.
const MIDDLE: f64 = PICTURE_SIZE_PX / 2.0;
const REACH: f64 = 15.0;

/// Somebody in the middle, the string, the rocket along the circle, and the line outside which
/// everybody stands, broken. It has no name: the words beside it say what it shows.
pub(super) fn swing_picture() -> Scene {
    const BROKEN: &[f64] = &[3.0, 2.5];
    let at = |reach: f64, turned: f64| Point {
        x: MIDDLE + reach * libm::sin(turned),
        y: MIDDLE - reach * libm::cos(turned),
    };
    let circle = |reach, from: f64, to: f64| {
        let angle = |i: u32| from + (to - from) * f64::from(i) / 32.0;
        (0..=32).map(|i| at(reach, angle(i))).collect::<Vec<_>>()
    };
    let path = |path, style| Item::Path { path, style };
    let full = core::f64::consts::TAU;
    let rocket = Path::closed(vec![
        at(REACH, 0.55),
        at(REACH + 2.6, 0.28),
        at(REACH + 2.6, -0.1),
        at(REACH + 4.6, -0.3),
        at(REACH - 4.6, -0.42),
        at(REACH - 2.6, -0.14),
        at(REACH - 2.6, 0.36),
    ]);
    let mut ahead = Path::open(circle(REACH, 0.75, 1.9));
    ahead
        .runs
        .push((vec![at(REACH - 3.0, 1.65), at(REACH, 1.9), at(REACH + 3.0, 1.7)], false));
    let ink = Style::line(Colour::Ink, 1.5);
    let items = vec![
        path(
            Path::open(circle(MIDDLE - 1.0, 0.0, full)),
            Style::line(Colour::Ink, 1.0).dashed(BROKEN),
        ),
        path(
            Path::open(vec![at(0.0, 0.0), at(REACH, 0.0)]),
            Style::line(Colour::Ink, 1.0),
        ),
        path(rocket, ink.filled(Colour::Body)),
        path(ahead, Style::line(Colour::Wind, 2.0)),
        Item::Dot { centre: at(0.0, 0.0), radius: 3.0, style: Style::area(Colour::Ink) },
    ];
    Scene::picture(PICTURE_SIZE_PX, items)
}
