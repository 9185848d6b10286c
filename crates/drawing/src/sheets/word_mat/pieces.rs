//! A picture of the word mat as a scene. What its letters stand for is told where the pictures
//! are, in the place Word mat.

use super::path::{Turned, path};
use super::strokes::{AIR, BIG_FIN, ROCKET, RULER};
use crate::palette::Colour;
use crate::scene::{Item, Path, Scene, Style};

/// Width and height of a picture.
const SIDE: f64 = 64.0;

/// The scene. It has no name: the words beside it say what it shows.
pub(super) fn scene(pieces: &str) -> Scene {
    let items = pieces.split(';').flat_map(piece).collect();
    Scene::picture(SIDE, items)
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
