//! One part as it lies flat: where it is cut and folded, and what is written on it.

use crate::cut_out::Window;
use crate::palette::Colour;
use crate::paper::wide;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// What stays free round a part, so that its line is whole, in millimetres.
pub(super) const EDGE_MM: f64 = 1.0;
/// Words on parts are as large as they fit, between these sizes in millimetres.
const WORDS_MM: [f64; 4] = [4.2, 3.4, 2.8, 2.2];
/// How high a line of words is, in sizes of its letters, and what lies below its base.
const HIGH: f64 = 1.0;
const BELOW: f64 = 0.24;
const CUT: Style = line(0.5, &[]);
const FOLD: Style = line(0.3, &[3.0, 2.0]);
const MARK: Style = line(0.2, &[]);

const fn line(width: f64, dashes: &'static [f64]) -> Style {
    Style { fill: None, stroke: Some(Colour::Ink), width, dashes, clear: false }
}

/// A part, in millimetres.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Piece {
    /// Its outline.
    pub(super) cut: Vec<Point>,
    /// Where it is folded.
    pub(super) folds: Path,
    /// Lines that only show something.
    pub(super) marks: Path,
    /// What stands on it.
    pub(super) words: Vec<Label>,
}

/// Words on a part.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Label {
    /// The middle of their line.
    pub(super) middle: Point,
    pub(super) words: String,
    pub(super) size: f64,
    pub(super) bold: bool,
    /// Clockwise, in degrees.
    pub(super) turned_deg: f64,
}

impl Label {
    /// Words in the middle of a room, as large as it allows; nothing where it has none.
    pub(super) fn new(
        middle: Point,
        (width, height): (f64, f64),
        turned_deg: f64,
        words: &str,
    ) -> Option<Self> {
        let fits =
            |&size: &f64| size * HIGH <= height && wide(words, size, false) <= width;
        let size = WORDS_MM.into_iter().find(fits).filter(|_| !words.is_empty())?;
        Some(Self { middle, words: words.into(), size, bold: false, turned_deg })
    }

    fn item(&self) -> Item {
        let Self { middle, words, size, bold, turned_deg } = self;
        let (width, height) = (wide(words, *size, *bold), size * HIGH);
        let text = Item::Text {
            at: Point { x: width / 2.0, y: height - size * BELOW },
            anchor: Anchor::Middle,
            words: words.clone(),
            colour: Colour::Ink,
            bold: *bold,
            size: *size,
        };
        let (sin, cos) = libm::sincos(turned_deg.to_radians());
        let (x, y) = (width / 2.0, height / 2.0);
        let at =
            Point { x: middle.x - x * cos + y * sin, y: middle.y - x * sin - y * cos };
        let scene = Scene {
            width,
            height,
            ..in_mm("", vec![Group { key: "words", items: vec![text] }])
        };
        Item::Placed { at, scale: 1.0, turned_deg: *turned_deg, scene }
    }
}

impl Piece {
    /// The same with the left and upper ends of its outline at 0.
    pub(super) fn at_home(self) -> Self {
        let ((left, _), (top, _)) = self.reach();
        self.moved(&|p| Point { x: p.x - left, y: p.y - top })
    }

    /// The same, a quarter turned clockwise.
    pub(super) fn turned(&self) -> Self {
        let (_, height) = self.size();
        let mut turned = self.clone().moved(&|p| Point { x: height - p.y, y: p.x });
        turned.words.iter_mut().for_each(|label| label.turned_deg += 90.0);
        turned
    }

    fn moved(mut self, to: &dyn Fn(Point) -> Point) -> Self {
        let move_it = |p: &mut Point| *p = to(*p);
        self.cut.iter_mut().for_each(move_it);
        for (points, _) in self.folds.runs.iter_mut().chain(&mut self.marks.runs) {
            points.iter_mut().for_each(move_it);
        }
        self.words.iter_mut().for_each(|label| move_it(&mut label.middle));
        self
    }

    fn reach(&self) -> ((f64, f64), (f64, f64)) {
        let over = |value: fn(&Point) -> f64| {
            let all = self.cut.iter().map(value);
            all.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
        };
        (over(|p| p.x), over(|p| p.y))
    }

    /// How wide and how high it is.
    pub(super) fn size(&self) -> (f64, f64) {
        let ((left, right), (top, bottom)) = self.reach();
        (right - left, bottom - top)
    }

    /// The part alone, with a narrow edge round it.
    pub(super) fn scene(&self, name: &str) -> Scene {
        let (width, height) = self.size();
        let corner = Point { x: -EDGE_MM, y: -EDGE_MM };
        let (width, height) = (width + 2.0 * EDGE_MM, height + 2.0 * EDGE_MM);
        let moved = |path: &Path| {
            let moved = |p: &Point| Point { x: p.x - corner.x, y: p.y - corner.y };
            let run = |(points, closed): &(Vec<Point>, bool)| {
                (points.iter().map(moved).collect(), *closed)
            };
            Path { runs: path.runs.iter().map(run).collect() }
        };
        Scene { width, height, ..in_mm(name, self.layers(&moved, corner)) }
    }

    /// The same with only the words that lie well within a window, and not askew: across the
    /// lines of joining they would be hard to read.
    pub(super) fn with_words_within(&self, window: Window) -> Self {
        const CLEAR_MM: f64 = 16.0;
        let is_within = |label: &&Label| {
            let half = wide(&label.words, label.size, label.bold) / 2.0 + CLEAR_MM;
            let Point { x, y } = label.middle;
            label.turned_deg.rem_euclid(90.0) < 1e-9
                && x - half > window.left
                && x + half < window.right
                && y - half > window.top
                && y + half < window.bottom
        };
        let words = self.words.iter().filter(is_within).cloned().collect();
        Self { words, ..self.clone() }
    }

    /// It seen from a corner, its lines as `shown` leaves them: a group for each kind of line, so
    /// that a cutter finds what it is to cut, and one for the words.
    pub(super) fn layers(
        &self,
        shown: &dyn Fn(&Path) -> Path,
        corner: Point,
    ) -> Vec<Group> {
        let cut = Path::closed(self.cut.clone());
        let line = |key, path, style| {
            let path = shown(path);
            Group { key, items: vec![Item::Path { path, style }] }
        };
        let words = self.words.iter().map(|label| {
            let Point { x, y } = label.middle;
            let middle = Point { x: x - corner.x, y: y - corner.y };
            Label { middle, ..label.clone() }.item()
        });
        vec![
            line("mark", &self.marks, MARK),
            line("fold", &self.folds, FOLD),
            line("cut", &cut, CUT),
            Group { key: "words", items: words.collect() },
        ]
    }
}

/// A scene in millimetres, without a size.
pub(super) fn in_mm(name: &str, groups: Vec<Group>) -> Scene {
    Scene { unit: Unit::Mm, name: name.into(), groups, ..Scene::default() }
}

/// Samples of each kind of line, in the order cut, fold, mark.
pub(super) fn samples() -> [Style; 3] {
    [CUT, FOLD, MARK]
}

/// How far an outline reaches to the left and to the right between two heights, if it is there.
pub(super) fn reach_between(outline: &[Point], from: f64, to: f64) -> Option<(f64, f64)> {
    let mut found: Option<(f64, f64)> = None;
    for (a, b) in edges(outline) {
        let (low, high) = if a.y <= b.y { (a, b) } else { (b, a) };
        let (top, bottom) = (low.y.max(from), high.y.min(to));
        if top > bottom {
            continue;
        }
        let at = |y: f64| {
            if high.y > low.y {
                low.x + (high.x - low.x) * (y - low.y) / (high.y - low.y)
            } else {
                low.x
            }
        };
        let ends = if high.y > low.y { [at(top), at(bottom)] } else { [low.x, high.x] };
        for x in ends {
            let (left, right) = found.unwrap_or((x, x));
            found = Some((left.min(x), right.max(x)));
        }
    }
    found
}

/// Where an outline has most room for words of some height, and how wide that is: its middle
/// and its width. `None` where it has none.
pub(super) fn widest_room(outline: &[Point], height: f64) -> Option<(Point, f64)> {
    let rows =
        |of: fn(f64, f64) -> f64, start: f64| outline.iter().map(|p| p.y).fold(start, of);
    let (top, bottom) = (rows(f64::min, f64::MAX), rows(f64::max, f64::MIN));
    let mut best: Option<(Point, f64)> = None;
    let mut y = top;
    while y + height <= bottom {
        // Within an outline at each of a few heights: between two neighbouring crossings.
        let mut spans: Option<Vec<(f64, f64)>> = None;
        for k in 0..=4_u8 {
            let here = spans_at(outline, y + height * f64::from(k) / 4.0);
            spans = Some(match spans {
                None => here,
                Some(spans) => both(&spans, &here),
            });
        }
        for (left, right) in spans.unwrap_or_default() {
            if best.is_none_or(|(_, width)| right - left > width + 0.01) {
                let middle = Point { x: f64::midpoint(left, right), y: y + height / 2.0 };
                best = Some((middle, right - left));
            }
        }
        y += 0.5;
    }
    best
}

fn both(one: &[(f64, f64)], other: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let shared = |a: &(f64, f64), b: &(f64, f64)| (a.0.max(b.0), a.1.min(b.1));
    let all = one.iter().flat_map(|a| other.iter().map(move |b| shared(a, b)));
    all.filter(|(left, right)| right > left).collect()
}

fn spans_at(outline: &[Point], y: f64) -> Vec<(f64, f64)> {
    let mut crossings: Vec<f64> = edges(outline)
        .filter(|(a, b)| (a.y < y) != (b.y < y))
        .map(|(a, b)| a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
        .collect();
    crossings.sort_unstable_by(f64::total_cmp);
    crossings.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
}

pub(super) fn edges(outline: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    let next = outline.iter().skip(1).chain(outline.first());
    outline.iter().copied().zip(next.copied())
}
