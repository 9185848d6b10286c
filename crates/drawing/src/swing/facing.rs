//! The rocket as one sees it who swings it.

use noseward_stability::{Design, Figures};
use noseward_words as words;

use super::arrow_head;
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::turned::Turnable;

/// Height of the row with the arrow of the path.
const ROW_PX: f64 = 28.0;

/// The rocket seen along the string, with groups `path` and `rocket`. `None` when the
/// design has no body.
///
/// It flies to the left. At 0 the nose is ahead; it swings down as the angle grows. The dot
/// is the string, at the centre of mass. The picture is `size_px` wide, 140 CSS pixels or
/// more, and a row of words higher.
#[must_use]
pub fn swing_rocket(
    design: &Design,
    figures: &Figures,
    angle_rad: f64,
    size_px: f64,
) -> Option<Scene> {
    let half = size_px / 2.0;
    let centre = Point { x: half, y: ROW_PX + half };
    let mut rocket = Turnable::new(design, figures)?.items(angle_rad, centre, half - 4.0);
    rocket.push(Item::Dot {
        centre,
        radius: 5.0,
        style: Style::line(Colour::Sheet, 1.5).filled(Colour::Ink),
    });
    Some(Scene {
        width: size_px,
        height: ROW_PX + size_px,
        unit: Unit::Px,
        name: words::drawing_along().into(),
        groups: vec![
            Group { key: "path", items: path(size_px, centre.y) },
            Group { key: "rocket", items: rocket },
        ],
    })
}

/// The line on which it flies, and which way.
fn path(size_px: f64, path_y: f64) -> Vec<Item> {
    let y = ROW_PX / 2.0;
    let across = |y, from, to| Path::open(vec![Point { x: from, y }, Point { x: to, y }]);
    let tip = Point { x: 4.0, y };
    vec![
        Item::Path {
            path: across(path_y, 1.0, size_px - 1.0),
            style: Style::line(Colour::Soft, 1.0).dashed(&[5.0, 4.0]),
        },
        Item::Path {
            path: across(y, tip.x + 8.0, tip.x + 28.0),
            style: Style::line(Colour::Ink, 3.0),
        },
        Item::Path {
            path: arrow_head(tip, (-1.0, 0.0), 12.0),
            style: Style::area(Colour::Ink),
        },
        Item::text(
            Point { x: 40.0, y: y + 4.5 },
            Anchor::Start,
            words::drawing_flies_this_way(),
            Colour::Ink,
            false,
        ),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use noseward_stability::{Example, evaluate};

    #[test]
    fn the_string_is_in_the_middle_and_words_keep_apart() {
        for example in Example::ALL {
            let design = example.design();
            let figures = evaluate(&design).figures.unwrap();
            for size in [140.0, 240.0] {
                for turn in 0..16 {
                    let angle = f64::from(turn) * 0.8 - 4.0;
                    let scene = swing_rocket(&design, &figures, angle, size).unwrap();
                    let which = format!("{example:?} at {angle}");
                    words_keep_apart(&scene, &which);
                    lines_miss_words(&scene, &[], &which);
                    assert_eq!(scene.groups[0].key, "path");
                    assert_eq!(scene.groups[1].key, "rocket");
                    let middle = Point { x: size / 2.0, y: ROW_PX + size / 2.0 };
                    let is_string = |item: &Item| matches!(item, Item::Dot { centre, .. } if *centre == middle);
                    assert!(scene.groups[1].items.iter().any(is_string), "{which}");
                }
            }
        }
    }

    /// At 0 the nose, where the body is drawn from, is ahead: at the left; at half a turn
    /// at the right.
    #[test]
    fn the_nose_is_ahead_at_nought() {
        let design = Example::Puffin.design();
        let figures = evaluate(&design).figures.unwrap();
        let nose_x = |angle: f64| {
            let scene = swing_rocket(&design, &figures, angle, 200.0).unwrap();
            let bodies = scene.groups[1].items.iter().rev().find_map(|item| match item {
                Item::Path { path, .. } => Some(path.runs[0].0[0].x),
                Item::Dot { .. }
                | Item::Text { .. }
                | Item::Part { .. }
                | Item::Grip { .. }
                | Item::Placed { .. } => None,
            });
            bodies.unwrap()
        };
        assert!(nose_x(0.0) < 60.0, "{}", nose_x(0.0));
        assert!(nose_x(std::f64::consts::PI) > 140.0);
        assert!((nose_x(std::f64::consts::FRAC_PI_2) - 100.0).abs() < 1.0);
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&the_string_is_in_the_middle_and_words_keep_apart);
    }
}
