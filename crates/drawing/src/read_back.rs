//! Reads drawings as a person reads them: a mark is held against the numbers that are
//! drawn beside it, never against the code that placed it.

mod charts;
mod classes;
mod rockets;
mod swings;
mod winds;

use noseward_stability::{Design, Example, Figures, evaluate};

use crate::{Colour, Item, Path, Point, Scene, Style};

/// An eighth of a pixel: nobody sees it, and a number's own rounding is far less.
const SEEN_PX: f64 = 0.125;

fn evaluated() -> Vec<(Design, Figures)> {
    let mut heavy = Example::Puffin.design();
    // Its centre of mass is behind its centre of pressure.
    heavy.weights.iter_mut().for_each(|weight| weight.position_mm = 300.0);
    Example::ALL
        .map(Example::design)
        .into_iter()
        .chain([heavy])
        .map(|design| {
            let figures = evaluate(&design).figures.unwrap();
            (design, figures)
        })
        .collect()
}

fn group<'a>(scene: &'a Scene, key: &str) -> &'a [Item] {
    let found = scene.groups.iter().find(|group| group.key == key);
    &found.unwrap_or_else(|| panic!("no group {key}")).items
}

/// Every path in order, those of parts too.
fn paths(items: &[Item]) -> Vec<(&Path, &Style)> {
    let mut found = Vec::new();
    for item in items {
        match item {
            Item::Path { path, style } => found.push((path, style)),
            Item::Part { items, .. } => found.extend(paths(items)),
            Item::Dot { .. }
            | Item::Text { .. }
            | Item::Grip { .. }
            | Item::Placed { .. } => {}
        }
    }
    found
}

/// The only path of which `which` holds.
fn the_path(items: &[Item], which: impl Fn(&Path, &Style) -> bool) -> &Path {
    let all = paths(items);
    let mut found = all.into_iter().filter(|(path, style)| which(path, style));
    let (path, _) = found.next().expect("there is such a path");
    assert_eq!(found.next(), None, "there is one such path");
    path
}

fn points(path: &Path) -> impl Iterator<Item = Point> {
    path.runs.iter().flat_map(|(points, _)| points.iter().copied())
}

fn dots(items: &[Item]) -> Vec<(Point, f64, Style)> {
    let dot = |item: &Item| match item {
        Item::Dot { centre, radius, style } => Some((*centre, *radius, *style)),
        Item::Path { .. }
        | Item::Text { .. }
        | Item::Part { .. }
        | Item::Grip { .. }
        | Item::Placed { .. } => None,
    };
    items.iter().filter_map(dot).collect()
}

fn texts(items: &[Item]) -> Vec<(Point, &str, Colour)> {
    let mut found = Vec::new();
    for item in items {
        if let Item::Text { at, words, colour, .. } = item {
            found.push((*at, words.as_str(), *colour));
        }
    }
    found
}

/// The place and colour of the only words that are just these.
fn the_words(items: &[Item], wanted: &str) -> (Point, Colour) {
    let found: Vec<_> =
        texts(items).into_iter().filter(|(_, words, _)| *words == wanted).collect();
    let [(at, _, colour)] = found[..] else { panic!("{wanted}: {found:?}") };
    (at, colour)
}

/// The number that words are, with a real minus sign and with or without degrees.
fn number(words: &str) -> Option<f64> {
    words.trim_end_matches('°').replace('−', "-").parse().ok()
}

/// Straight lines of one direction, each where it stands.
fn level(path: &Path) -> Vec<f64> {
    let runs = path.runs.iter().map(|(points, _)| points);
    runs.filter(|p| p.len() == 2 && p[0].y == p[1].y).map(|p| p[0].y).collect()
}

fn upright(path: &Path) -> Vec<f64> {
    let runs = path.runs.iter().map(|(points, _)| points);
    runs.filter(|p| p.len() == 2 && p[0].x == p[1].x).map(|p| p[0].x).collect()
}

/// A row of numbered lines: pixels and what stands there.
#[derive(Debug)]
struct Axis(Vec<(f64, f64)>);

impl Axis {
    /// Each number at the line nearest to it, which is at most half a letter's height away
    /// once `off_px` is taken off. The numbers are evenly spread over the lines.
    fn new(
        lines: &[f64],
        numbers: impl Iterator<Item = (f64, f64)>,
        off_px: f64,
    ) -> Self {
        let mut found = Vec::new();
        for (at, value) in numbers {
            let at = at - off_px;
            let near = lines
                .iter()
                .copied()
                .min_by(|a, b| (a - at).abs().total_cmp(&(b - at).abs()));
            let line = near.expect("an axis has lines");
            assert!((line - at).abs() < 1.0, "{value} at {at} by the line {line}");
            found.push((line, value));
        }
        Self::checked(found)
    }

    fn checked(mut found: Vec<(f64, f64)>) -> Self {
        found.sort_by(|a, b| a.0.total_cmp(&b.0));
        assert!(found.len() > 1, "{found:?}");
        let axis = Self(found);
        for &(px, value) in &axis.0 {
            let off_px = (axis.read(px) - value) / axis.per_px();
            assert!(off_px.abs() < 1e-6, "{axis:?}");
        }
        axis
    }

    fn per_px(&self) -> f64 {
        let (first, last) = (self.0[0], self.0[self.0.len() - 1]);
        (last.1 - first.1) / (last.0 - first.0)
    }

    fn read(&self, px: f64) -> f64 {
        self.0[0].1 + (px - self.0[0].0) * self.per_px()
    }

    /// Fails where `px` is not at `value`.
    #[track_caller]
    fn holds(&self, px: f64, value: f64, which: &str) {
        let off_px = (self.read(px) - value) / self.per_px();
        assert!(off_px.abs() < SEEN_PX, "{which}: {} for {value}", self.read(px));
    }
}

/// The corner of a mark that points at something: the one that does not stand on the same
/// upright line as another.
fn tip(path: &Path) -> Point {
    let corners = &path.runs[0].0;
    let alone = |p: &&Point| {
        corners.iter().filter(|other| (other.x - p.x).abs() < 1e-9).count() == 1
    };
    *corners.iter().find(alone).expect("a triangle has a tip")
}

/// The tips of all triangles of a colour, from left to right.
fn tips(items: &[Item], colour: Colour) -> Vec<Point> {
    let all = paths(items);
    let triangles = all.iter().filter(|(path, style)| {
        style.fill == Some(colour) && path.runs[0].1 && path.runs[0].0.len() == 3
    });
    let mut found: Vec<Point> = triangles.map(|(path, _)| tip(path)).collect();
    found.sort_by(|a, b| a.x.total_cmp(&b.x));
    found
}

/// The numbered ticks of the ruler on the paper, the longest of all its ticks.
fn ruler(paper: &[Item]) -> Axis {
    let ticks = the_path(paper, |_, style| *style == Style::line(Colour::Ink, 1.0));
    let length = |p: &[Point]| (p[1].x - p[0].x).abs();
    let longest = ticks.runs.iter().map(|(p, _)| length(p)).fold(0.0, f64::max);
    let mut lines: Vec<f64> = Vec::new();
    for (p, _) in ticks.runs.iter().filter(|(p, _)| length(p) > longest - 1e-6) {
        if !lines.contains(&p[0].y) {
            lines.push(p[0].y);
        }
    }
    lines.sort_by(f64::total_cmp);
    let all = texts(paper);
    let mut numbers: Vec<(f64, f64)> =
        all.iter().filter_map(|(at, words, _)| Some((at.y, number(words)?))).collect();
    numbers.sort_by(|a, b| a.0.total_cmp(&b.0));
    assert_eq!(lines.len(), numbers.len());
    // The first and the last number are kept within the ruler; the others stand beside
    // their ticks.
    let inner = 1..numbers.len().saturating_sub(1).max(1);
    for (line, (y, _)) in lines[inner.clone()].iter().zip(&numbers[inner]) {
        assert!((y - line - 4.5).abs() < 1.0, "a number at {y} by the tick {line}");
    }
    Axis::checked(lines.into_iter().zip(numbers.into_iter().map(|n| n.1)).collect())
}
