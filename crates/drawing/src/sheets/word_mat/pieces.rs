//! A picture of the word mat as a scene. What its letters stand for is told where the pictures
//! are, in the place Word mat.

use super::path::{Turned, path};
use crate::palette::Colour;
use crate::scene::{Group, Item, Path, Scene, Style, Unit};

/// Width and height of a picture.
const SIDE: f64 = 64.0;
/// The rocket, upright; a fin by itself; a ruler; and air from above, as on the page.
const ROCKET: &str = "M25 18C25 10 28 5 32 3C36 5 39 10 39 18V44L36 50V60H28V50L25 44ZM25 18H39M25 44H39M28 50H36M25 27L13 39V50L25 43M39 27L51 39V50L39 43";
const BIG_FIN: &str = "M14 2V62M14 10L46 28V54L14 48";
const RULER: &str =
    "M3 40H61V54H3ZM9 40V47M17 40V45M25 40V47M33 40V45M41 40V47M49 40V45M57 40V47";
const AIR: &str = "M8 3V13M5 10L8 13L11 10M56 3V13M53 10L56 13L59 10";

/// The scene. It has no name: the words beside it say what it shows.
pub(super) fn scene(pieces: &str) -> Scene {
    let items = pieces.split(';').flat_map(piece).collect();
    Scene {
        width: SIDE,
        height: SIDE,
        unit: Unit::Px,
        name: String::new(),
        groups: vec![Group { key: "picture", items }],
    }
}

fn piece(piece: &str) -> Vec<Item> {
    let Some((letter, rest)) = piece.split_at_checked(1) else { return Vec::new() };
    let fine = Style::line(Colour::Soft, 1.3);
    let air = Style::line(Colour::Wind, 3.5);
    let drawn =
        |text: &str, style| vec![Item::Path { path: path(text, Turned::NOT), style }];
    match letter {
        "r" => {
            vec![Item::Path { path: path(ROCKET, Turned::of(rest)), style: fine }]
        }
        "b" => drawn(BIG_FIN, fine),
        "s" => drawn(RULER, fine),
        "v" => drawn(AIR, air),
        "a" => drawn(rest, Style::line(Colour::Ink, 3.0).filled(Colour::Fin)),
        "l" => drawn(rest, Style::line(Colour::Ink, 4.0)),
        "m" => drawn(rest, Style::line(Colour::Fulcrum, 1.0).filled(Colour::Fulcrum)),
        "w" => drawn(rest, air),
        "d" => dots(&path(rest, Turned::NOT)),
        _ => drawn(rest, fine),
    }
}

/// Readings: a dot where each run begins.
fn dots(path: &Path) -> Vec<Item> {
    let style = Style::area(Colour::Ink);
    let dot = |points: &Vec<_>| {
        Some(Item::Dot { centre: *points.first()?, radius: 4.0, style })
    };
    path.runs.iter().filter_map(|(points, _)| dot(points)).collect()
}

#[cfg(test)]
mod tests {
    use super::super::tests::pictures;
    use super::*;
    use crate::svg_document;

    #[test]
    fn the_common_pieces_are_those_of_the_page() {
        let page = include_str!("../../../../web/src/places/word_mat/pictures.rs");
        for common in [ROCKET, BIG_FIN, RULER, AIR] {
            assert!(page.contains(common), "{common}");
        }
    }

    /// Every picture is within its square, each is another one, and none has lost a piece.
    #[test]
    fn every_picture_of_the_page_is_drawn() {
        let mut seen = Vec::new();
        for pieces in pictures() {
            let scene = scene(pieces);
            assert!(scene.groups[0].items.len() >= pieces.split(';').count(), "{pieces}");
            for item in &scene.groups[0].items {
                let Item::Path { path, .. } = item else { continue };
                assert!(!path.runs.is_empty(), "{pieces}");
                for point in path.runs.iter().flat_map(|(points, _)| points) {
                    let inside = -0.5..=SIDE + 0.5;
                    assert!(inside.contains(&point.x), "{pieces}: {point:?}");
                    assert!(inside.contains(&point.y), "{pieces}: {point:?}");
                }
            }
            let drawn = svg_document(&scene, None);
            assert!(!seen.contains(&drawn), "{pieces}");
            seen.push(drawn);
        }
        assert_eq!(seen.len(), 30);
    }
}
