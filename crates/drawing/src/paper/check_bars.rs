//! Two bars that tell whether a sheet was printed true to size.

use noseward_words as texts;

use super::flow::wide;
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// How long each bar is, in millimetres, from the middle of one end stroke to that of the other.
pub const CHECK_BAR_MM: f64 = 100.0;
/// How much room a bar takes across its length, in millimetres.
pub const CHECK_BAR_WIDE_MM: f64 = 4.0;
const WORDS_MM: f64 = 3.0;
const STROKE_MM: f64 = 0.25;

/// Two bars of 100 mm, in millimetres: one across the sheet, to the right of `across`, and one
/// along it, down from `along`. These are the top left corners of the room that they take:
/// 100 × 4 mm and 4 × 100 mm. A printer may stretch a sheet one way only, so both belong on every
/// sheet whose size matters.
#[must_use]
pub fn check_bars(across: Point, along: Point) -> Vec<Item> {
    let words = texts::paper_parts_bar().as_str();
    let width = wide(words, WORDS_MM, false);
    let (half, gap) = (CHECK_BAR_WIDE_MM / 2.0, (CHECK_BAR_MM - width) / 2.0 - 1.5);
    let mut path = Path::default();
    let strokes = [
        ((0.0, 0.0), (0.0, CHECK_BAR_WIDE_MM)),
        ((0.0, half), (gap, half)),
        ((CHECK_BAR_MM - gap, half), (CHECK_BAR_MM, half)),
        ((CHECK_BAR_MM, 0.0), (CHECK_BAR_MM, CHECK_BAR_WIDE_MM)),
    ];
    for (from, to) in strokes {
        let place = |(x, y): (f64, f64)| Point { x: across.x + x, y: across.y + y };
        path.line(place(from), place(to));
        let place = |(x, y): (f64, f64)| Point { x: along.x + y, y: along.y + x };
        path.line(place(from), place(to));
    }
    let word = |at| Item::Text {
        at,
        anchor: Anchor::Middle,
        words: words.to_owned(),
        colour: Colour::Ink,
        bold: false,
        size: WORDS_MM,
    };
    let base = half + WORDS_MM * 0.36;
    let turned = Scene {
        width: CHECK_BAR_MM,
        height: CHECK_BAR_WIDE_MM,
        unit: Unit::Mm,
        name: String::new(),
        groups: vec![Group {
            key: "words",
            items: vec![word(Point { x: CHECK_BAR_MM / 2.0, y: base })],
        }],
    };
    vec![
        Item::Path { path, style: Style::line(Colour::Ink, STROKE_MM) },
        word(Point { x: across.x + CHECK_BAR_MM / 2.0, y: across.y + base }),
        Item::Placed {
            at: Point { x: along.x, y: along.y + CHECK_BAR_MM },
            scale: 1.0,
            turned_deg: -90.0,
            scene: turned,
        },
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sheet of paper shrunk "to fit" is some 3 to 6 % short: on these bars 3 mm and more.
    #[test]
    fn each_bar_is_100_mm_long_between_its_end_strokes() {
        let items = check_bars(Point { x: 3.0, y: 5.0 }, Point { x: 120.0, y: 8.0 });
        let Item::Path { path, .. } = &items[0] else { panic!("{items:?}") };
        let ends = |upright: bool| -> Vec<f64> {
            let strokes = path.runs.iter().map(|(points, _)| (points[0], points[1]));
            let of_bar = strokes.filter(|(a, _)| (a.x < 110.0) == upright);
            of_bar
                .filter(|(a, b)| if upright { a.x == b.x } else { a.y == b.y })
                .map(|(a, _)| if upright { a.x } else { a.y })
                .collect()
        };
        assert_eq!(ends(true), [3.0, 103.0]);
        assert_eq!(ends(false), [8.0, 108.0]);
    }
}
