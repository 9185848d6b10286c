//! The circle from above.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};

use noseward_stability::{Space, SwingSetup};
use noseward_words::{self as words, Number};

use super::arrow_head;
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// The largest radius that the outer circle is drawn with.
const MOST_RADIUS_PX: f64 = 190.0;
/// Room beside the circle for a number at its corner.
const NUMBER_PX: f64 = 62.0;
const MARGIN_PX: f64 = 8.0;
/// From this width on the words stand beside the circle.
const BESIDE_PX: f64 = 720.0;
/// The rocket is drawn no shorter than this, but for the smallest of circles.
const ROCKET_PX: f64 = 20.0;
const CORNERS: u32 = 120;

/// Where the circles lie.
#[derive(Clone, Copy)]
struct Layout {
    centre: Point,
    px_per_m: f64,
    swept_px: f64,
    clear_px: f64,
}

impl Layout {
    fn new(space: &Space, width_px: f64) -> Self {
        let half = width_px / 2.0;
        let diagonal = libm::cos(FRAC_PI_4);
        let clear_px = ((half - NUMBER_PX) / diagonal).min(half - MARGIN_PX);
        let clear_px = clear_px.clamp(1.0, MOST_RADIUS_PX);
        let px_per_m = clear_px / space.clear_m;
        let beside = width_px >= BESIDE_PX;
        let x = if beside { diagonal * clear_px + NUMBER_PX } else { half };
        let x = x.max(clear_px + MARGIN_PX);
        Self {
            centre: Point { x, y: clear_px + MARGIN_PX },
            px_per_m,
            swept_px: space.swept_m * px_per_m,
            clear_px,
        }
    }

    /// A place at a distance from the middle; the angle grows anticlockwise from the right.
    fn at(&self, radius_px: f64, angle_rad: f64) -> Point {
        let (sin, cos) = libm::sincos(angle_rad);
        Point { x: self.centre.x + radius_px * cos, y: self.centre.y - radius_px * sin }
    }

    fn circle(&self, radius_px: f64) -> Path {
        let turn = |k: u32| 2.0 * PI * f64::from(k) / f64::from(CORNERS);
        Path::closed((0..CORNERS).map(|k| self.at(radius_px, turn(k))).collect())
    }
}

/// The circle of a swing seen from above, to scale, with groups `circles`, `turning`,
/// `person` and `words`.
///
/// The rocket is at `place_rad`, anticlockwise from the right, and flies anticlockwise. Its
/// own length is not to scale. The circle that rocket and string sweep is solid, the one
/// within which nobody stands is dashed. `space` is that of the same setup; the width is
/// 280 CSS pixels or more.
#[must_use]
pub fn swing_circle(
    space: &Space,
    setup: &SwingSetup,
    place_rad: f64,
    nose_rad: f64,
    width_px: f64,
) -> Scene {
    let layout = Layout::new(space, width_px);
    let (words, height_px) = explained(space, &layout, width_px);
    Scene {
        width: width_px,
        height: height_px,
        unit: Unit::Px,
        name: words::drawing_circle(
            Number::fixed(space.swept_told_m(), 1),
            Number::fixed(space.clear_m, 1),
        ),
        groups: vec![
            Group { key: "circles", items: circles(&layout) },
            swing_turning(space, setup, place_rad, nose_rad, width_px),
            Group { key: "person", items: person(&layout) },
            Group { key: "words", items: words },
        ],
    }
}

/// Only what goes round in [`swing_circle`]: its group `turning`.
#[must_use]
pub fn swing_turning(
    space: &Space,
    setup: &SwingSetup,
    place_rad: f64,
    nose_rad: f64,
    width_px: f64,
) -> Group {
    let layout = Layout::new(space, width_px);
    let hand = layout.at(setup.arm_m * layout.px_per_m, place_rad);
    let rocket_px = setup.radius_m() * layout.px_per_m;
    let rocket = layout.at(rocket_px, place_rad);
    let line = |from, to, width| Item::Path {
        path: Path::open(vec![from, to]),
        style: Style::line(Colour::Ink, width),
    };
    let length_m = 2.0 * (space.swept_m - setup.radius_m());
    let length_px = (length_m * layout.px_per_m).max(ROCKET_PX.min(rocket_px));
    let items = vec![
        line(layout.centre, hand, 5.0),
        line(hand, rocket, 1.5),
        Item::Path {
            path: glyph(rocket, place_rad + FRAC_PI_2, length_px, nose_rad),
            style: Style::line(Colour::Sheet, 1.0).filled(Colour::Ink),
        },
    ];
    Group { key: "turning", items }
}

/// A rocket seen from its end is still drawn with this share of its length.
const LEAST_SEEN: f64 = 0.2;

/// A small rocket about a place, its path in a direction. It turns about the string, out of
/// the picture's plane: the more its nose is off the path, the shorter it looks from above.
fn glyph(middle: Point, heading_rad: f64, length_px: f64, nose_rad: f64) -> Path {
    let (sin, cos) = libm::sincos(heading_rad);
    let seen = libm::cos(nose_rad);
    let seen = seen.abs().max(LEAST_SEEN).copysign(seen);
    let place = |&(along, across): &(f64, f64)| {
        let (along, across) = (along * seen * length_px, across * length_px);
        Point {
            x: middle.x + along * cos - across * sin,
            y: middle.y - along * sin - across * cos,
        }
    };
    let outline = [
        (0.5, 0.0),
        (0.2, 0.16),
        (-0.2, 0.16),
        (-0.5, 0.34),
        (-0.4, 0.0),
        (-0.5, -0.34),
        (-0.2, -0.16),
        (0.2, -0.16),
    ];
    Path::closed(outline.iter().map(place).collect())
}

fn swept_style() -> Style {
    Style::line(Colour::Ink, 2.0)
}

fn clear_style() -> Style {
    Style::line(Colour::Alert, 2.5).dashed(&[9.0, 5.0])
}

/// Both circles and the two radii.
fn circles(layout: &Layout) -> Vec<Item> {
    let radius = |length_px: f64, to_px: f64, angle_rad: f64, colour| {
        let tip = layout.at(length_px, angle_rad);
        let line = Path::open(vec![layout.centre, layout.at(to_px, angle_rad)]);
        let along = (tip.x - layout.centre.x, tip.y - layout.centre.y);
        [
            Item::Path { path: line, style: Style::line(colour, 1.0) },
            Item::Path {
                path: arrow_head(tip, along, (length_px * 0.5).min(9.0)),
                style: Style::area(colour),
            },
        ]
    };
    let mut items = vec![
        Item::Path { path: layout.circle(layout.clear_px), style: clear_style() },
        Item::Path {
            path: layout.circle(layout.swept_px),
            style: swept_style().filled(Colour::Fin),
        },
    ];
    let (clear, swept) = (layout.clear_px, layout.swept_px);
    items.extend(radius(clear, clear + LEADER_PX, FRAC_PI_4, Colour::Alert));
    items.extend(radius(swept, swept, PI + FRAC_PI_4, Colour::Ink));
    items
}

/// How far a radius runs on beyond the outer circle, towards its number.
const LEADER_PX: f64 = 9.0;

fn person(layout: &Layout) -> Vec<Item> {
    let radius = (layout.swept_px * 0.3).min(7.0);
    vec![Item::Dot {
        centre: layout.centre,
        radius,
        style: Style::line(Colour::Ink, 2.0).filled(Colour::Body),
    }]
}

/// Both numbers at the corners and what the lines mean, with the height of the sheet.
fn explained(space: &Space, layout: &Layout, width_px: f64) -> (Vec<Item>, f64) {
    let out = layout.clear_px + LEADER_PX;
    let right = layout.at(out, FRAC_PI_4);
    let clear_at = Point { x: right.x + 3.0, y: right.y - 2.0 };
    // The number of the ring alone stands at it: that of the swept circle would be read as
    // another one.
    let mut items = vec![Item::text(
        clear_at,
        Anchor::Start,
        format!("{} m", Number::trimmed(space.clear_m, 1)),
        Colour::Alert,
        true,
    )];
    let reach = words::drawing_reach(Number::trimmed(space.swept_told_m(), 1));
    let entries = [
        Entry::line(swept_style(), reach),
        Entry::line(clear_style(), words::drawing_nobody_inside()),
    ];
    let below = layout.centre.y + layout.clear_px + MARGIN_PX;
    if width_px >= BESIDE_PX {
        let from = layout.centre.x + layout.clear_px + 70.0;
        let mut top = layout.centre.y - 24.0;
        for entry in entries {
            let (rows, next) = legend(&[entry], from, width_px, top);
            items.extend(rows);
            top = next + 6.0;
        }
        return (items, below);
    }
    let (rows, bottom) = legend(&entries, 6.0, width_px, below + 4.0);
    items.extend(rows);
    (items, bottom + 2.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::swing::examples;
    use noseward_stability::{Swing, SwingField};

    const WIDTHS: [f64; 5] = [280.0, 360.0, 600.0, 720.0, 900.0];

    /// Every corner of what a setup can be, for every example.
    fn spaces() -> Vec<(Space, SwingSetup)> {
        let fields = [SwingField::String, SwingField::Arm, SwingField::Turns];
        let mut all = Vec::new();
        for (figures, swing) in examples() {
            all.push((swing.space(), *swing.setup()));
            for corner in 0..8_u32 {
                let mut setup = SwingSetup::default();
                for (i, field) in fields.into_iter().enumerate() {
                    let (least, most) = field.bounds();
                    let high = corner >> i & 1 == 1;
                    field.set(&mut setup, if high { most } else { least });
                }
                // The nearest pace at which it can be swung.
                while setup.limit(figures.mass.mass_kg).is_some() {
                    setup.turns_per_s *= 0.95;
                }
                let swing = loop {
                    match Swing::new(&figures, &setup) {
                        Some(swing) => break swing,
                        None => setup.turns_per_s *= 1.02,
                    }
                };
                all.push((swing.space(), setup));
            }
        }
        assert!(all.len() >= 12, "{}", all.len());
        all
    }

    #[test]
    fn words_stay_clear_of_lines_and_of_each_other() {
        for (space, setup) in spaces() {
            for width in WIDTHS {
                for place in [0.3, 2.4, 3.9, 5.5] {
                    let scene = swing_circle(&space, &setup, place, 0.0, width);
                    let which = format!("{setup:?} at {width}");
                    words_keep_apart(&scene, &which);
                    lines_miss_words(&scene, &[], &which);
                }
            }
        }
    }

    #[test]
    fn both_circles_are_to_one_scale() {
        for (space, setup) in spaces() {
            let layout = Layout::new(&space, 500.0);
            let scene = swing_circle(&space, &setup, 0.0, 0.0, 500.0);
            let radii: Vec<f64> = scene.groups[0].items[..2]
                .iter()
                .map(|item| {
                    let Item::Path { path, .. } = item else { panic!("{item:?}") };
                    let points = &path.runs[0].0;
                    let most = points.iter().map(|p| p.x).fold(0.0, f64::max);
                    most - layout.centre.x
                })
                .collect();
            let ratio = radii[1] / radii[0];
            assert!((ratio - space.swept_m / space.clear_m).abs() < 1e-9, "{radii:?}");
        }
    }

    /// Else a small circle would be all head and no line.
    #[test]
    fn the_head_of_a_radius_leaves_half_of_its_line() {
        for (space, setup) in spaces() {
            for width in WIDTHS {
                let layout = Layout::new(&space, width);
                let scene = swing_circle(&space, &setup, 0.0, 0.0, width);
                for item in [&scene.groups[0].items[3], &scene.groups[0].items[5]] {
                    let Item::Path { path, .. } = item else { panic!("{item:?}") };
                    let [tip, one, other] = path.runs[0].0[..] else {
                        panic!("{path:?}")
                    };
                    let from_centre = |x: f64, y: f64| {
                        libm::hypot(x - layout.centre.x, y - layout.centre.y)
                    };
                    let (x, y) =
                        (f64::midpoint(one.x, other.x), f64::midpoint(one.y, other.y));
                    let rest = from_centre(x, y) / from_centre(tip.x, tip.y);
                    assert!(rest > 0.499 && rest < 1.0, "{rest} of {setup:?} at {width}");
                }
            }
        }
    }

    #[test]
    fn the_turning_group_is_that_of_the_scene_and_goes_round() {
        let (_, swing) = &examples()[0];
        let (space, setup) = (swing.space(), swing.setup());
        let scene = swing_circle(&space, setup, 1.0, 0.4, 400.0);
        assert_eq!(scene.groups[1], swing_turning(&space, setup, 1.0, 0.4, 400.0));
        let later = swing_circle(&space, setup, 2.0, 0.4, 400.0);
        for (a, b) in scene.groups.iter().zip(&later.groups) {
            assert_eq!(a == b, a.key != "turning", "{}", a.key);
        }
        // The rocket hangs on the string at its radius.
        let layout = Layout::new(&space, 400.0);
        let Item::Path { path, .. } = &scene.groups[1].items[1] else { panic!() };
        let end = path.runs[0].0[1];
        let radius = libm::hypot(end.x - layout.centre.x, end.y - layout.centre.y);
        assert!((radius / layout.px_per_m - setup.radius_m()).abs() < 1e-9);
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_stay_clear_of_lines_and_of_each_other);
    }
}
