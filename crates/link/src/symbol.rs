//! QR symbols in a picture: found, and read.
//!
//! Written for the page, which is lost when its module ends: rqrr, by which the tests read what
//! the page draws, ends the program on some pictures (a line without a change of colour, a point
//! at infinity), and its tables would make 80 KB. Nothing in here can panic on a picture.

mod correction;
mod grid;
mod marks;
mod modules;
mod picture;
mod segments;

use marks::Mark;
use picture::{Picture, Point};

/// What a symbol says, or why it does not say it.
pub type SymbolRead = Result<String, SymbolFault>;

/// Why a symbol that is there could not be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SymbolFault {
    /// Not all three of its corner marks are in the picture.
    Incomplete,
    /// More of it is unclear than its error correction makes good.
    Unclear,
    /// It holds something other than text.
    NotText,
}

/// Every QR symbol in a picture of grey values, row by row, whatever way it is turned and
/// whether its modules are darker or lighter than what is round it.
///
/// Two symbols with one text are two. There are none in a picture whose sizes do not fit
/// its values.
#[must_use]
pub fn symbols_in_picture(luma: &[u8], width: usize, height: usize) -> Vec<SymbolRead> {
    let mut search = Search::default();
    // The coarse ones first: there the large symbols are without noise.
    for picture in picture::scales(luma, width, height).iter().rev() {
        search.look_at(picture);
    }
    search.end()
}

/// Noise makes marks too, with modules of a pixel and a half at most (seen in the tests of
/// noise). Alone, without a symbol that is read, only larger ones count.
const LEAST_CLEAR_PX: f64 = 2.0;

/// Where a symbol lies, in pixels of the whole picture: its corners in turn.
type Corners = [Point; 4];

/// What was found so far, over all scales.
#[derive(Default)]
struct Search {
    read: Vec<(Corners, String)>,
    /// Three corner marks that belong together, and nothing to be made of what is between.
    failed: Vec<(Corners, SymbolFault)>,
    marks: Vec<Mark>,
}

impl Search {
    fn look_at(&mut self, picture: &Picture) {
        let marks = marks::find(picture, |at| self.is_read(at));
        let mut groups = grid::groups(picture, &marks);
        while let Some(best) = best(&groups) {
            let group = groups.swap_remove(best);
            match group.read(picture) {
                Ok((corners, text)) => {
                    groups.retain(|other| !other.shares(&group));
                    self.read.push((corners, text));
                }
                Err(_) if !group.is_sure() => {}
                Err(failed) => self.failed.push(failed),
            }
        }
        let clear = marks.iter().filter(|mark| mark.module > LEAST_CLEAR_PX);
        self.marks.extend(clear.map(|mark| mark.in_whole(picture)));
    }

    fn is_read(&self, at: Point) -> bool {
        self.read.iter().any(|(corners, _)| contains(corners, at))
    }

    /// What was read, and what else is there: a symbol that failed at one scale and was read
    /// at another counts as read, and one that failed twice as one.
    fn end(self) -> Vec<SymbolRead> {
        let mut known: Vec<Corners> = self.read.iter().map(|(at, _)| *at).collect();
        let mut found: Vec<_> = self.read.into_iter().map(|(_, text)| Ok(text)).collect();
        // The last ones were seen at the finest scale.
        for (corners, fault) in self.failed.into_iter().rev() {
            let middle = middle(&corners);
            if !known.iter().any(|other| {
                contains(other, middle) || contains(&corners, self::middle(other))
            }) {
                known.push(corners);
                found.push(Err(fault));
            }
        }
        let is_free = |mark: &Mark| !known.iter().any(|c| contains(c, mark.at));
        let mut left: Vec<Mark> = self.marks.into_iter().filter(is_free).collect();
        while let Some(mark) = left.pop() {
            // However much of one symbol is in the picture, it is one.
            let mut together = vec![mark];
            while let Some(next) =
                left.iter().position(|mark| together.iter().any(|m| m.is_near(mark)))
            {
                together.push(left.swap_remove(next));
            }
            found.push(Err(SymbolFault::Incomplete));
        }
        found
    }
}

/// The group that looks most like a symbol.
fn best(groups: &[grid::Group]) -> Option<usize> {
    let mut best: Option<usize> = None;
    for (i, group) in groups.iter().enumerate() {
        if best.is_none_or(|b| group.likeness > groups[b].likeness) {
            best = Some(i);
        }
    }
    best
}

fn middle(corners: &Corners) -> Point {
    corners.iter().fold(Point::default(), |sum, corner| sum + *corner * 0.25)
}

/// Whether a point lies between four corners that are told in turn, clockwise as seen.
fn contains(corners: &Corners, at: Point) -> bool {
    (0..4).all(|i| {
        let (from, to) = (corners[i], corners[(i + 1) % 4]);
        (to - from).cross(at - from) >= 0.0
    })
}
