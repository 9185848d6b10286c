//! The room that words take, for tests. Widths are those of a wide system font at 13 px.

use crate::scene::{Anchor, Item, Point, Scene};
use crate::width::takes_room;
use noseward_words as words;

/// The box of one line of words.
#[derive(Clone, Debug)]
struct WordBox {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
    #[expect(dead_code, reason = "a failure shows it")]
    words: String,
}

impl WordBox {
    fn all(items: &[Item], out: &mut Vec<Self>) {
        for item in items {
            match item {
                Item::Text { at, anchor, words, bold, .. } => {
                    let each = if *bold { 7.4 } else { 6.6 };
                    let width = words
                        .chars()
                        .filter(|&c| takes_room(c))
                        .map(|_| each)
                        .sum::<f64>();
                    let left = match anchor {
                        Anchor::Start => at.x,
                        Anchor::Middle => at.x - width / 2.0,
                        Anchor::End => at.x - width,
                    };
                    out.push(Self {
                        left,
                        top: at.y - 10.0,
                        right: left + width,
                        bottom: at.y + 2.0,
                        words: words.clone(),
                    });
                }
                Item::Part { items, .. } => Self::all(items, out),
                Item::Path { .. }
                | Item::Dot { .. }
                | Item::Grip { .. }
                | Item::Placed { .. } => {}
            }
        }
    }

    /// Whether a straight line has a point inside: the line is cut at each edge in turn.
    fn is_crossed(&self, from: Point, to: Point) -> bool {
        let (mut first, mut last) = (0.0_f64, 1.0_f64);
        for (start, step, low, high) in [
            (from.x, to.x - from.x, self.left, self.right),
            (from.y, to.y - from.y, self.top, self.bottom),
        ] {
            if step == 0.0 {
                if start <= low || start >= high {
                    return false;
                }
                continue;
            }
            let (a, b) = ((low - start) / step, (high - start) / step);
            first = first.max(a.min(b));
            last = last.min(a.max(b));
        }
        first < last
    }
}

/// Fails where two lines of words overlap or one leaves the sheet.
pub(crate) fn words_keep_apart(scene: &Scene, which: &str) {
    let mut found = Vec::new();
    for group in &scene.groups {
        WordBox::all(&group.items, &mut found);
    }
    for (i, a) in found.iter().enumerate() {
        let inside = a.left >= 0.0
            && a.top >= 0.0
            && a.right <= scene.width
            && a.bottom <= scene.height;
        assert!(inside, "{which}: {a:?}");
        for b in &found[i + 1..] {
            let apart = a.right <= b.left
                || b.right <= a.left
                || a.bottom <= b.top
                || b.bottom <= a.top;
            assert!(apart, "{which}: {a:?} {b:?}");
        }
    }
}

/// Fails where a line of a scene crosses words, or anything is drawn outside the sheet.
/// Groups whose words stand on a plate of their own are left out of the first.
pub(crate) fn lines_miss_words(scene: &Scene, plated: &[&str], which: &str) {
    let mut words = Vec::new();
    for group in scene.groups.iter().filter(|g| !plated.contains(&g.key)) {
        WordBox::all(&group.items, &mut words);
    }
    for item in scene.groups.iter().flat_map(|group| &group.items) {
        match item {
            Item::Path { path, .. } => {
                for (points, closed) in &path.runs {
                    for p in points {
                        let inside = p.x >= 0.0
                            && p.y >= 0.0
                            && p.x <= scene.width
                            && p.y <= scene.height;
                        assert!(inside, "{which}: {p:?}");
                    }
                    let back = if *closed { points.first() } else { None };
                    let ends = points.iter().skip(1).chain(back);
                    for (&from, &to) in points.iter().zip(ends) {
                        let hit = words.iter().find(|b| b.is_crossed(from, to));
                        assert!(hit.is_none(), "{which}: {from:?} {to:?} {hit:?}");
                    }
                }
            }
            Item::Dot { centre, radius, .. } => {
                let inside = centre.x >= *radius
                    && centre.y >= *radius
                    && centre.x + radius <= scene.width
                    && centre.y + radius <= scene.height;
                assert!(inside, "{which}: {centre:?}");
            }
            Item::Text { .. }
            | Item::Part { .. }
            | Item::Grip { .. }
            | Item::Placed { .. } => {}
        }
    }
}

/// Checks it in German and in Arabic, whose words are longer or shorter than ours.
pub(crate) fn in_languages(check: &dyn Fn()) {
    for key in ["de", "ar"] {
        words::speak(words::table_of(key));
        assert_eq!(words::language().key, key);
        check();
    }
    words::speak(None);
}
