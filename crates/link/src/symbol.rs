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

use grid::Group;
use marks::Mark;
use picture::{Light, Picture, Point};

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
pub fn symbols_in_picture(luma: Vec<u8>, width: usize, height: usize) -> Vec<SymbolRead> {
    let mut search = SymbolSearch::new(luma, width, height);
    while search.goes_on() {}
    search.found()
}

/// Symbols that cannot be read are tried so often at one scale, the likeliest first: what
/// only looks like many symbols does not hold a page up.
const MOST_FAILURES: usize = 32;

/// Where a symbol lies, in pixels of the whole picture: its corners in turn.
type Corners = [Point; 4];

/// A search for symbols that can be left and gone on with, so that a page is not held up:
/// what it finds is what [`symbols_in_picture`] does.
#[derive(Debug)]
pub struct SymbolSearch {
    luma: Vec<u8>,
    width: usize,
    /// In which the picture is still to be looked at, the next one last.
    ways: Vec<(usize, Light)>,
    /// How it is looked at now, and what there may be symbols.
    now: Option<(Picture, Option<Vec<Group>>)>,
    failures: usize,
    read: Vec<(Corners, String)>,
    /// Three corner marks that belong together, and nothing to be made of what is between.
    failed: Vec<(Corners, SymbolFault)>,
    marks: Vec<Mark>,
}

impl SymbolSearch {
    /// A search in a picture of grey values, row by row.
    #[must_use]
    pub fn new(luma: Vec<u8>, width: usize, height: usize) -> Self {
        Self {
            ways: picture::ways(luma.len(), width, height),
            luma,
            width,
            now: None,
            failures: 0,
            read: Vec::new(),
            failed: Vec::new(),
            marks: Vec::new(),
        }
    }

    /// Looks at a little more; false where all was looked at.
    pub fn goes_on(&mut self) -> bool {
        let (picture, mut groups) = match self.now.take() {
            Some((picture, Some(groups))) => (picture, groups),
            Some((picture, None)) => {
                let marks = marks::find(&picture, |at| self.is_read(at));
                let clear = marks.iter().filter(|mark| mark.is_clear());
                self.marks.extend(clear.map(|mark| mark.in_whole(&picture)));
                self.failures = 0;
                let groups = grid::groups(&picture, &marks);
                self.now = Some((picture, Some(groups)));
                return true;
            }
            None => {
                // The coarse ones first: there the large symbols are without noise.
                let Some((by, light)) = self.ways.pop() else { return false };
                let picture = Picture::reduced(&self.luma, self.width, by, light);
                self.now = Some((picture, None));
                return true;
            }
        };
        let Some(best) = best(&groups).filter(|_| self.failures < MOST_FAILURES) else {
            return true;
        };
        let group = groups.swap_remove(best);
        match group.read(&picture) {
            Ok((corners, text)) => {
                groups.retain(|other| !other.shares(&group));
                self.read.push((corners, text));
            }
            Err(failed) => {
                self.failures += 1;
                self.failed.extend(group.is_sure().then_some(failed));
            }
        }
        self.now = Some((picture, Some(groups)));
        true
    }

    fn is_read(&self, at: Point) -> bool {
        self.read.iter().any(|(corners, _)| contains(corners, at))
    }

    /// What was read so far, and what else is there: a symbol that failed at one scale and was
    /// read at another counts as read, and one that failed twice as one.
    #[must_use]
    pub fn found(self) -> Vec<SymbolRead> {
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
fn best(groups: &[Group]) -> Option<usize> {
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
