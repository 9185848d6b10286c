//! What every sheet is held to, for tests: its pages, the room of its papers, and words that
//! keep apart.

use super::flow::wide;
use super::page::{MARGIN_MM, Page, PaperSize, ROOM_MM};
use crate::boxes::in_languages;
use crate::scene::{Anchor, Item, Point, Scene, TEXT_PX};

/// Less than anybody sees, in millimetres.
const NOTHING_MM: f64 = 0.02;

/// From the units of a scene to millimetres of paper, with the width of that scene.
#[derive(Clone, Copy, Debug)]
struct Frame {
    at: Point,
    cos: f64,
    sin: f64,
    width: f64,
}

impl Frame {
    const PAGE: Self =
        Self { at: Point { x: 0.0, y: 0.0 }, cos: 1.0, sin: 0.0, width: f64::MAX };

    fn of(&self, Point { x, y }: Point) -> Point {
        Point {
            x: self.at.x + x * self.cos - y * self.sin,
            y: self.at.y + x * self.sin + y * self.cos,
        }
    }

    fn within(&self, at: Point, scale: f64, turned_deg: f64, width: f64) -> Self {
        let turned = turned_deg.to_radians();
        let (sin, cos) = (libm::sin(turned) * scale, libm::cos(turned) * scale);
        Self {
            at: self.of(at),
            cos: self.cos * cos - self.sin * sin,
            sin: self.sin * cos + self.cos * sin,
            width,
        }
    }
}

/// What something takes of a page, in millimetres.
#[derive(Clone, Debug)]
struct Taken {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
    /// Its words; empty for a line or an area.
    words: String,
}

impl Taken {
    fn new(corners: &[Point], words: &str) -> Self {
        let least =
            |of: fn(&Point) -> f64| corners.iter().map(of).fold(f64::MAX, f64::min);
        let most =
            |of: fn(&Point) -> f64| corners.iter().map(of).fold(f64::MIN, f64::max);
        let words = words.to_owned();
        let (left, top) = (least(|p| p.x), least(|p| p.y));
        Self { left, top, right: most(|p| p.x), bottom: most(|p| p.y), words }
    }

    fn all(page: &Page) -> Vec<Self> {
        let mut all = Vec::new();
        Self::of_scene(&page.scene, Frame::PAGE, &mut all);
        all
    }

    fn of_scene(scene: &Scene, frame: Frame, all: &mut Vec<Self>) {
        for item in scene.groups.iter().flat_map(|group| &group.items) {
            Self::of_item(item, frame, all);
        }
    }

    fn of_item(item: &Item, frame: Frame, all: &mut Vec<Self>) {
        match item {
            Item::Path { path, .. } => {
                for (points, _) in path.runs.iter().filter(|(run, _)| !run.is_empty()) {
                    let points: Vec<_> = points.iter().map(|p| frame.of(*p)).collect();
                    all.push(Self::new(&points, ""));
                }
            }
            Item::Dot { centre, radius, .. } => {
                let corner = |k: f64| {
                    frame.of(Point { x: centre.x + k * radius, y: centre.y + k * radius })
                };
                all.push(Self::new(&[corner(-1.0), corner(1.0)], ""));
            }
            Item::Text { .. } => all.extend(Self::of_words(item, frame)),
            Item::Placed { at, scale, turned_deg, scene } => {
                let inner = frame.within(*at, *scale, *turned_deg, scene.width);
                Self::of_scene(scene, inner, all);
            }
            Item::Part { items, .. } => {
                for item in items {
                    Self::of_item(item, frame, all);
                }
            }
            Item::Grip { .. } => {}
        }
    }

    /// Words of a picture that would cross its edge are set narrower.
    fn of_words(item: &Item, frame: Frame) -> Option<Self> {
        let Item::Text { at, anchor, words, bold, size, .. } = item else { return None };
        let (share, room) = match anchor {
            Anchor::Start => (0.0, frame.width - at.x),
            Anchor::Middle => (0.5, 2.0 * at.x.min(frame.width - at.x)),
            Anchor::End => (1.0, at.x),
        };
        let own = wide(words, *size, *bold);
        let is_page = (*size - TEXT_PX).abs() > 1e-9;
        let width = if is_page { own } else { own.min(room) };
        let left = at.x - share * width;
        let corner = |x: f64, y: f64| frame.of(Point { x: left + x, y: at.y + y });
        let (up, down) = (-0.72 * size, 0.2 * size);
        let corners =
            [corner(0.0, up), corner(width, up), corner(0.0, down), corner(width, down)];
        (!words.trim().is_empty()).then(|| Self::new(&corners, words))
    }

    fn overlaps(&self, other: &Self) -> bool {
        self.left + NOTHING_MM < other.right
            && other.left + NOTHING_MM < self.right
            && self.top + NOTHING_MM < other.bottom
            && other.top + NOTHING_MM < self.bottom
    }
}

/// Fails where anything of a page lies outside the room that both papers have.
pub(crate) fn everything_is_inside(pages: &[Page]) {
    for (page, i) in pages.iter().zip(1..) {
        let left = (page.scene.width - ROOM_MM.0) / 2.0 - NOTHING_MM;
        let top = MARGIN_MM - NOTHING_MM;
        let right = left + ROOM_MM.0 + 2.0 * NOTHING_MM;
        let bottom = top + ROOM_MM.1 + 2.0 * NOTHING_MM;
        for one in Taken::all(page) {
            let is_inside = one.left >= left
                && one.top >= top
                && one.right <= right
                && one.bottom <= bottom;
            assert!(is_inside, "{}, page {i}: {one:?}", page.scene.name);
        }
    }
}

/// Fails where words of a page lie over each other.
pub(crate) fn words_keep_apart(pages: &[Page]) {
    for (page, i) in pages.iter().zip(1..) {
        let mut words = Taken::all(page);
        words.retain(|one| !one.words.is_empty());
        for (k, one) in words.iter().enumerate() {
            let over = words[k + 1..].iter().find(|other| one.overlaps(other));
            assert!(over.is_none(), "{}, page {i}: {one:?} {over:?}", page.scene.name);
        }
    }
}

/// All that is written on pages, in the order in which it is read.
pub(crate) fn words_of(pages: &[Page]) -> String {
    let words = pages.iter().flat_map(Taken::all).map(|one| one.words);
    let words: Vec<String> = words.filter(|words| !words.is_empty()).collect();
    words.join(" ")
}

/// Fails unless pages say all of this, in this order.
pub(crate) fn says_in_order<S: AsRef<str>>(pages: &[Page], all: &[S]) {
    let said = words_of(pages);
    let mut rest = said.as_str();
    for words in all.iter().map(AsRef::as_ref) {
        let found = rest.find(words);
        let at = found.unwrap_or_else(|| panic!("“{words}” is not in: {rest}"));
        rest = &rest[at + words.len()..];
    }
}

/// Holds a sheet to all of that, on both papers and in English, German and Arabic: it has no
/// more pages than it may have, and as many on the one as on the other.
pub(crate) fn sheet_is_sound(most: usize, sheet: &dyn Fn(PaperSize) -> Vec<Page>) {
    let check = || {
        let [a4, letter] = PaperSize::ALL.map(sheet);
        let name = &a4[0].scene.name;
        assert!(a4.len() <= most, "{name}: {} pages", a4.len());
        assert_eq!(a4.len(), letter.len(), "{name}");
        for pages in [&a4, &letter] {
            everything_is_inside(pages);
            words_keep_apart(pages);
        }
    };
    check();
    in_languages(&check);
}

#[cfg(test)]
mod tests {
    use super::super::Flow;
    use super::*;
    use crate::palette::Colour;

    fn page_with(at: Point, turned_deg: f64, words: &[&str]) -> Page {
        let text =
            |words: &&str| Item::text(at, Anchor::Start, *words, Colour::Ink, false);
        let scene = Scene {
            width: 200.0,
            height: 40.0,
            groups: vec![crate::scene::Group {
                key: "",
                items: words.iter().map(text).collect(),
            }],
            ..Scene::default()
        };
        let mut page = Page::blank(PaperSize::A4, "");
        let at = Point { x: 105.0, y: 200.0 };
        let placed = Item::Placed { at, scale: 1.0, turned_deg, scene };
        page.push(super::super::Tag::Artifact, vec![placed]);
        page
    }

    #[test]
    fn a_usual_sheet_is_sound() {
        sheet_is_sound(1, &|size| {
            let mut flow = Flow::new(size, "Sheet");
            flow.paragraph(&"words ".repeat(200));
            flow.fields(&["a", "b"]);
            flow.pages()
        });
    }

    #[test]
    #[should_panic(expected = "far too wide")]
    fn words_beyond_the_room_are_found() {
        let mut page = page_with(Point { x: 0.0, y: 20.0 }, 0.0, &[]);
        let at = Point { x: 180.0, y: 20.0 };
        let words = Item::text(at, Anchor::Start, "far too wide", Colour::Ink, false);
        page.push(super::super::Tag::Artifact, vec![words]);
        everything_is_inside(&[page]);
    }

    /// Turned to the left its words go up, and there is more room.
    #[test]
    fn pictures_are_turned() {
        let page = |turned| {
            [page_with(Point { x: 90.0, y: 20.0 }, turned, &["quite long words"])]
        };
        everything_is_inside(&page(-90.0));
        let is_out = std::panic::catch_unwind(|| everything_is_inside(&page(0.0)));
        assert!(is_out.is_err());
    }

    #[test]
    #[should_panic(expected = "over")]
    fn words_over_each_other_are_found() {
        words_keep_apart(&[page_with(
            Point { x: 5.0, y: 20.0 },
            0.0,
            &["under", "over"],
        )]);
    }
}
