//! A ruler and a stand on whose edge a cut-out balances.

use noseward_words::{self as texts, Number};

use super::piece::{Label, Piece};
use crate::scene::{Path, Point};

/// How long the ruler is, and how wide.
pub(super) const RULER_MM: (u32, f64) = (250, 26.0);
/// The stand: how long its top edge is, how wide each side, its floor and its tab.
pub(super) const EDGE_MM: f64 = 100.0;
const SIDE_MM: f64 = 45.0;
const FLOOR_MM: f64 = 36.0;
const TAB_MM: f64 = 12.0;
/// Lengths of ticks: of a millimetre, of five and of ten.
const TICKS_MM: [f64; 3] = [3.0, 4.8, 6.8];

/// The ruler, its zero at the left end.
pub(super) fn ruler() -> Piece {
    let (long, wide) = (f64::from(RULER_MM.0), RULER_MM.1);
    let at = |x: f64, y: f64| Point { x, y };
    let cut = vec![at(0.0, 0.0), at(long, 0.0), at(long, wide), at(0.0, wide)];
    let mut piece = Piece { cut, ..Piece::default() };
    for mm in 1..RULER_MM.0 {
        let kind = usize::from(mm % 5 == 0) + usize::from(mm % 10 == 0);
        let x = f64::from(mm);
        piece.marks.line(at(x, 0.0), at(x, TICKS_MM[kind]));
    }
    let mut words = |x: f64, y: f64, words: String, bold: bool| {
        let middle = at(x, y);
        piece.words.push(Label { middle, words, size: 3.2, bold, turned_deg: 0.0 });
    };
    for mm in (0..=RULER_MM.0).step_by(10) {
        // The first and the last stand within the ruler.
        let x = f64::from(mm).max(1.6).min(long - 3.6);
        words(x, 9.4, Number::from(mm).to_string(), mm % 50 == 0);
    }
    words(6.0, 17.0, texts::paper_parts_mm().into(), true);
    piece
}

/// The stand, unfolded: a tab, a side, the other side and the floor.
pub(super) fn stand() -> Piece {
    let at = |x: f64, y: f64| Point { x, y };
    let (ridge, foot) = (TAB_MM + SIDE_MM, TAB_MM + 2.0 * SIDE_MM);
    let bottom = foot + FLOOR_MM;
    let cut = vec![
        at(TAB_MM / 2.0, 0.0),
        at(EDGE_MM - TAB_MM / 2.0, 0.0),
        at(EDGE_MM, TAB_MM),
        at(EDGE_MM, bottom),
        at(0.0, bottom),
        at(0.0, TAB_MM),
    ];
    let mut folds = Path::default();
    for y in [TAB_MM, ridge, foot] {
        folds.line(at(0.0, y), at(EDGE_MM, y));
    }
    let label = |y: f64, said: &str| {
        Label::new(at(EDGE_MM / 2.0, y), (EDGE_MM - TAB_MM - 4.0, 6.0), 0.0, said)
    };
    let tab = label(TAB_MM / 2.0, texts::paper_parts_under().as_str());
    let top = label(ridge + 6.0, texts::paper_parts_top().as_str());
    let words = tab.into_iter().chain(top).collect();
    Piece { cut, folds, marks: Path::default(), words }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ruler_has_a_line_for_each_millimetre() {
        let piece = ruler();
        assert_eq!(piece.size(), (250.0, 26.0));
        let places: Vec<f64> =
            piece.marks.runs.iter().map(|(points, _)| points[0].x).collect();
        let wanted: Vec<f64> = (1..250).map(f64::from).collect();
        assert_eq!(places, wanted);
        let long = |mm: usize| piece.marks.runs[mm - 1].0[1].y;
        assert!(long(50) > long(45) && long(45) > long(44) && long(49) < long(45));
        let said: Vec<&str> = piece.words.iter().map(|w| w.words.as_str()).collect();
        assert_eq!((said[0], said[10], said[25]), ("0", "100", "250"));
        assert_eq!(piece.words[10].middle.x, 100.0);
    }

    /// It closes: the floor is shorter than both sides, and the tab lies on it.
    #[test]
    fn the_stand_folds_to_a_triangle() {
        let folds: Vec<f64> =
            stand().folds.runs.iter().map(|(points, _)| points[0].y).collect();
        let bottom = stand().size().1;
        let sides = [folds[1] - folds[0], folds[2] - folds[1], bottom - folds[2]];
        assert_eq!(sides[0], sides[1]);
        assert!(sides[2] < sides[0] + sides[1] && sides[2] > folds[0], "{sides:?}");
    }
}
