//! How wide words are, and what is done where they are wider than their room.

use std::cell::Cell;

use crate::scene::{Anchor, Point};

/// Width of an ordinary letter of a wide system font at 13 px; generous.
const LETTER_PX: f64 = 6.7;
const BOLD_LETTER_PX: f64 = 7.5;
/// Wider than any letter.
const WIDEST_PX: f64 = 16.0;
/// Words are set so much narrower at most; what is longer still is cut.
pub(crate) const NARROWEST: f64 = 0.6;

thread_local! {
    static MEASURE: Cell<fn(&str, bool) -> f64> = const { Cell::new(estimated) };
}

/// From now on this thread's drawings have words measured by what shows them: their width in
/// CSS pixels at 13 px, ordinary or bold. Without it they are estimated by their letters,
/// which fits no script but ours.
pub fn measure_words(measure: fn(words: &str, bold: bool) -> f64) {
    MEASURE.with(|cell| cell.set(measure));
}

fn estimated(words: &str, bold: bool) -> f64 {
    let each = if bold { BOLD_LETTER_PX } else { LETTER_PX };
    words.chars().filter(|&c| takes_room(c)).map(|_| each).sum()
}

/// Isolates, marks of direction and the marks of Arabic take none.
pub(crate) fn takes_room(letter: char) -> bool {
    !matches!(
        letter,
        '\u{200e}' | '\u{200f}' | '\u{2066}'..='\u{2069}' | '\u{64B}'..='\u{652}'
    )
}

/// Pixels that words take.
pub(crate) fn words_px(words: &str) -> f64 {
    MEASURE.with(Cell::get)(words, false)
}

/// The same of bold words.
pub(crate) fn bold_px(words: &str) -> f64 {
    MEASURE.with(Cell::get)(words, true)
}

/// The words, or as many of their letters as fit.
pub(crate) fn cut(words: &str, room_px: f64) -> String {
    if words_px(words) <= room_px {
        return words.to_owned();
    }
    let mut kept = String::new();
    for letter in words.chars() {
        if words_px(&kept) + 2.0 * LETTER_PX > room_px {
            break;
        }
        kept.push(letter);
    }
    format!("{}…", kept.trim_end())
}

/// The room of words up to the edge of a sheet, if they would cross it.
pub(crate) fn narrowed(
    at: Point,
    anchor: Anchor,
    (words, bold): (&str, bool),
    sheet_px: f64,
) -> Option<f64> {
    let room_px = match anchor {
        Anchor::Start => sheet_px - at.x,
        Anchor::Middle => 2.0 * at.x.min(sheet_px - at.x),
        Anchor::End => at.x,
    };
    // Most words are so short that nobody need measure them.
    let may_cross = words.len() as f64 * WIDEST_PX > room_px;
    (may_cross && MEASURE.with(Cell::get)(words, bold) > room_px)
        .then_some(room_px.max(0.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_words_are_cut_to_their_room() {
        assert_eq!(cut("short", 40.0), "short");
        assert_eq!(cut("too long for it", 40.0), "too…");
        assert!(words_px(&cut(&"a".repeat(90), 100.0)) <= 100.0);
    }

    #[test]
    fn words_that_would_cross_an_edge_are_set_narrower() {
        let words = ("centre of pressure", false);
        let room = |x, anchor, words| narrowed(Point { x, y: 0.0 }, anchor, words, 300.0);
        assert_eq!(room(6.0, Anchor::Start, words), None);
        assert_eq!(room(200.0, Anchor::Start, words), Some(100.0));
        assert_eq!(room(100.0, Anchor::End, words), Some(100.0));
        assert_eq!(room(200.0, Anchor::End, words), None);
        assert_eq!(room(250.0, Anchor::Middle, words), Some(100.0));
        assert_eq!(room(30.0, Anchor::Middle, words), Some(60.0));
        assert_eq!(room(150.0, Anchor::Middle, words), None);
        // Bold words are wider.
        assert_eq!(room(172.0, Anchor::Start, words), None);
        assert_eq!(room(172.0, Anchor::Start, (words.0, true)), Some(128.0));
    }

    #[test]
    fn words_are_measured_by_whoever_shows_them() {
        measure_words(|words, bold| words.len() as f64 + f64::from(u8::from(bold)));
        assert_eq!((words_px("ab"), bold_px("ab")), (2.0, 3.0));
        measure_words(estimated);
        assert_eq!(words_px("\u{2068}ab\u{2069}"), 2.0 * LETTER_PX);
    }
}
