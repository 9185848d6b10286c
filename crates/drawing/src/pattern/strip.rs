//! A strip that goes round the body once and shows where the fins of a set go.

use noseward_stability::FinSet;
use noseward_words::{self as texts, Number};

use super::piece::{Label, Piece};
use crate::scene::{Path, Point};

/// How high a strip is, and how far its tab reaches.
pub(super) const HEIGHT_MM: f64 = 36.0;
pub(super) const TAB_MM: f64 = 15.0;
/// From where to where the lines for fins reach.
const LINE_MM: (f64, f64) = (13.0, 23.0);
/// Lines stand at least so far apart to be numbered.
const NUMBER_APART_MM: f64 = 4.0;
const ANGLE_APART_MM: f64 = 9.0;

/// A strip for a set of fins.
#[derive(Clone, Copy, Debug)]
pub(super) struct Strip<'a> {
    /// What the set is called.
    pub(super) part: &'a str,
    pub(super) set: &'a FinSet,
    /// Once round the body, in millimetres.
    pub(super) girth: f64,
    /// In how many rows.
    pub(super) rows: usize,
    /// Whether it shows where 0 degrees are, by which those of several sets are held together.
    pub(super) zero: bool,
}

impl Strip<'_> {
    fn row_mm(&self) -> f64 {
        self.girth / self.rows as f64
    }

    /// By how many gaps between fins the end of the strip lies before the first fin, so that
    /// no fin comes to lie where rows meet.
    fn before(&self) -> f64 {
        let gaps = f64::from(self.set.count) / self.rows as f64;
        let nearest = |before: f64| {
            (0..self.rows)
                .map(|row| (gaps * row as f64 - before).rem_euclid(1.0))
                .map(|off| off.min(1.0 - off))
                .fold(1.0, f64::min)
        };
        let mut best = 0.5;
        for before in [0.375, 0.25, 0.125] {
            if nearest(before) > nearest(best) {
                best = before;
            }
        }
        best
    }

    /// Where an angle is on the strip, in millimetres from its left end. With the nose up and
    /// seen from outside, angles grow to the left.
    fn place(&self, degrees: f64) -> f64 {
        let gap = 360.0 / f64::from(self.set.count);
        let turn = (degrees - self.set.roll_deg + self.before() * gap) / 360.0;
        self.girth * (-turn).rem_euclid(1.0)
    }

    /// Where the lines for the fins are, with their angles, fin by fin.
    pub(super) fn fins(&self) -> Vec<(f64, f64)> {
        let degrees =
            |k: u32| self.set.roll_deg + 360.0 * f64::from(k) / f64::from(self.set.count);
        (0..self.set.count).map(|k| (self.place(degrees(k)), degrees(k))).collect()
    }

    /// Its rows, from the left.
    pub(super) fn pieces(&self) -> Vec<Piece> {
        (0..self.rows).map(|row| self.row(row)).collect()
    }

    fn row(&self, row: usize) -> Piece {
        let long = self.row_mm();
        let chamfer = 2.0;
        let end = long + TAB_MM;
        let corners = [
            (0.0, 0.0),
            (long, 0.0),
            (end, chamfer),
            (end, HEIGHT_MM - chamfer),
            (long, HEIGHT_MM),
            (0.0, HEIGHT_MM),
        ];
        let cut = corners.map(|(x, y)| Point { x, y }).into();
        let mut piece = Piece { cut, ..Piece::default() };
        let up =
            |x: f64, (from, to): (f64, f64)| (Point { x, y: from }, Point { x, y: to });
        let (from, to) = up(long, (0.0, HEIGHT_MM));
        piece.marks.line(from, to);
        let said = if row + 1 < self.rows {
            texts::paper_parts_next_row((row + 2).into())
        } else {
            texts::paper_parts_meets().into()
        };
        let middle = Point { x: long + TAB_MM / 2.0, y: HEIGHT_MM / 2.0 };
        let room = (HEIGHT_MM - 2.0 * chamfer, TAB_MM / 3.0);
        piece.words.extend(Label::new(middle, room, -90.0, &said));
        let said = if self.rows > 1 {
            texts::paper_parts_row(self.part, (row + 1).into())
        } else {
            texts::paper_parts_edge(self.part)
        };
        let middle = Point { x: long / 2.0, y: 9.5 };
        piece.words.extend(Label::new(middle, (long - 4.0, 4.0), 0.0, &said));
        self.mark(row, &mut piece);
        piece
    }

    fn mark(&self, row: usize, piece: &mut Piece) {
        let long = self.row_mm();
        let Piece { marks, words, .. } = piece;
        let within = |x: f64| {
            let x = x - long * row as f64;
            (x >= 0.0 && x < long).then_some(x)
        };
        let apart = self.girth / f64::from(self.set.count);
        let label = |x: f64, y: f64, said: String, size: f64| {
            let held = x.min(long - 4.5).max(4.5);
            let middle = Point { x: held, y };
            Label { middle, words: said, size, bold: size > 3.0, turned_deg: 0.0 }
        };
        for ((x, degrees), number) in self.fins().into_iter().zip(1_u32..) {
            let Some(x) = within(x) else { continue };
            marks.line(Point { x, y: LINE_MM.0 }, Point { x, y: LINE_MM.1 });
            if apart >= NUMBER_APART_MM {
                let said = Number::from(number).to_string();
                words.push(label(x, LINE_MM.1 + 3.5, said, 4.2));
            }
            if apart >= ANGLE_APART_MM {
                let degrees = Number::trimmed(degrees.rem_euclid(360.0), 0);
                let said = texts::paper_parts_degrees(degrees);
                words.push(label(x, LINE_MM.1 + 9.0, said, 3.0));
            }
        }
        if let Some(x) = within(self.place(0.0)).filter(|_| self.zero) {
            marks.runs.extend(arrow_down(x).runs);
            let said = texts::paper_parts_degrees(Number::trimmed(0.0, 0));
            words.push(label(x, 5.5, said, 3.0));
        }
    }
}

/// A short line in from the upper edge.
fn arrow_down(x: f64) -> Path {
    let mut path = Path::default();
    path.line(Point { x, y: 0.5 }, Point { x, y: 3.0 });
    path
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::Example;
    use std::f64::consts::PI;

    #[test]
    fn rows_are_together_as_long_as_the_girth() {
        for count in 2..=8 {
            let mut set = Example::Puffin.design().fins.remove(0);
            (set.count, set.roll_deg) = (count, 30.0);
            for rows in 1..=4 {
                let girth = PI * 65.0;
                let strip = Strip { part: "Fins", set: &set, girth, rows, zero: true };
                let long: f64 =
                    strip.pieces().iter().map(|row| row.size().0 - TAB_MM).sum();
                assert!((long - girth).abs() < 1e-9, "{long} {girth}");
                // Each fin has its line, clear of both ends of its row.
                let lines: usize =
                    strip.pieces().iter().map(|row| row.marks.runs.len()).sum();
                assert_eq!(rows + usize::try_from(count).unwrap() + 1, lines);
                for (x, _) in strip.fins() {
                    let along = x.rem_euclid(girth / rows as f64);
                    assert!(along > 3.0 && girth / rows as f64 - along > 3.0, "{x}");
                }
            }
        }
    }

    /// Fins are equally far apart all the way round, and angles grow to the left.
    #[test]
    fn fins_are_where_their_angles_say() {
        let mut set = Example::Puffin.design().fins.remove(0);
        set.roll_deg = 20.0;
        let strip = Strip { part: "Fins", set: &set, girth: 360.0, rows: 1, zero: true };
        let fins = strip.fins();
        for pair in fins.windows(2) {
            assert!((pair[0].0 - pair[1].0 - 90.0).abs() < 1e-9, "{fins:?}");
        }
        assert_eq!(
            fins.iter().map(|fin| fin.1).collect::<Vec<_>>(),
            [20.0, 110.0, 200.0, 290.0]
        );
        assert!((strip.place(0.0) - fins[0].0 - 20.0).abs() < 1e-9);
    }
}
