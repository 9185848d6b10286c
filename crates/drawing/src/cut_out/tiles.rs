//! A cut-out that is larger than a sheet, over several that overlap.

use noseward_words as texts;

use super::clip::{Window, clipped};
use super::outline::Outline;
use super::{WORDS_MM, words};
use crate::palette::Colour;
use crate::paper::{Flow, wide};
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// What a sheet shows of the outline: lines that end at its sides stay in the room of a page.
pub(crate) const TILE_MM: (f64, f64) = (Flow::WIDTH_MM - 1.0, 236.0);
/// What two neighbours both show.
const OVERLAP_MM: f64 = 12.0;
/// Half of a cross on a line at which two parts are joined.
const CROSS_MM: f64 = 3.0;
/// The crosses stand so far from both ends of such a line.
const CROSS_INSET_MM: f64 = 36.0;
/// The words between the crosses begin so far from an end.
const WORDS_INSET_MM: f64 = CROSS_INSET_MM + 6.0;
/// The most that the picture of all parts takes.
const MAP_MM: (f64, f64) = (100.0, 92.0);

/// How an outline lies on its sheets: columns, rows, and where the first begins.
pub(crate) struct Tiles {
    columns: usize,
    rows: usize,
    corner: Point,
}

impl Tiles {
    pub(super) fn new(outline: &Outline) -> Self {
        Self::over(outline.width, outline.height)
    }

    /// Of a drawing of some size.
    pub(crate) fn over(width: f64, height: f64) -> Self {
        let (columns, left) = along(width, TILE_MM.0);
        let (rows, _) = along(height, TILE_MM.1);
        Self { columns, rows, corner: Point { x: left, y: 0.0 } }
    }

    /// From where to where the sheet with this number, from 0, reaches.
    pub(crate) fn window_of(&self, i: usize) -> Window {
        let (column, row) = self.place(i);
        self.window(column, row)
    }

    /// How many sheets there are.
    pub(crate) fn count(&self) -> usize {
        self.columns * self.rows
    }

    /// From where to where one reaches.
    fn window(&self, column: usize, row: usize) -> Window {
        let left = self.corner.x + column as f64 * (TILE_MM.0 - OVERLAP_MM);
        let top = self.corner.y + row as f64 * (TILE_MM.1 - OVERLAP_MM);
        Window { left, top, right: left + TILE_MM.0, bottom: top + TILE_MM.1 }
    }

    fn place(&self, i: usize) -> (usize, usize) {
        (i % self.columns, i / self.columns)
    }

    /// The part with this number, from 0, as it stands on its sheet.
    pub(super) fn tile(&self, outline: &Outline, i: usize) -> Scene {
        let (column, row) = self.place(i);
        let window = self.window(column, row);
        let corner = window.corner();
        // The lines of joining come first: over it they would break the outline.
        let mut drawn = outline.path.clone();
        // In the middle of two columns sheets join: a second line there would hide where.
        let has_axis = self.columns % 2 == 1;
        if has_axis {
            drawn.runs.extend(outline.axis.runs.clone());
        }
        let mut items = self.joins(i, &clipped(&drawn, window));
        items.extend(has_axis.then(|| outline.axis_in(Some(window))));
        items.extend(outline.items(Some(window)));
        if row == 0 && column == self.columns / 2 && self.columns % 2 == 1 {
            let moved = outline.nose();
            items.push(Item::Placed {
                at: Point { x: -corner.x, y: -corner.y },
                scale: 1.0,
                turned_deg: 0.0,
                scene: alone(vec![moved]),
            });
        }
        let name = texts::cut_out_sheet((i + 1).into(), self.count().into());
        Scene { width: TILE_MM.0, height: TILE_MM.1, name, ..alone(items) }
    }

    /// The lines on the sheet with this number at which others join it. Their words keep off
    /// what is drawn there.
    pub(crate) fn joins(&self, i: usize, drawn: &Path) -> Vec<Item> {
        let (column, row) = self.place(i);
        let mut items = Vec::new();
        let half = OVERLAP_MM / 2.0;
        let number = |column: usize, row: usize| row * self.columns + column + 1;
        if row > 0 {
            items.extend(join(false, half, number(column, row - 1), -1.6, drawn));
        }
        if row + 1 < self.rows {
            let next = number(column, row + 1);
            items.extend(join(false, TILE_MM.1 - half, next, 4.2, drawn));
        }
        if column > 0 {
            items.extend(join(true, half, number(column - 1, row), -1.6, drawn));
        }
        if column + 1 < self.columns {
            let next = number(column + 1, row);
            items.extend(join(true, TILE_MM.0 - half, next, 4.2, drawn));
        }
        items
    }

    /// All parts in one small picture.
    pub(crate) fn map(&self, outline: &Path) -> Scene {
        let last = self.window(self.columns - 1, self.rows - 1);
        let (width, height) = (last.right - self.corner.x, last.bottom - self.corner.y);
        let scale = (MAP_MM.0 / width).min(MAP_MM.1 / height);
        let at = |x: f64, y: f64| Point {
            x: (x - self.corner.x) * scale,
            y: (y - self.corner.y) * scale,
        };
        let shrink = |(points, is_closed): &(Vec<Point>, bool)| {
            (points.iter().map(|p| at(p.x, p.y)).collect(), *is_closed)
        };
        let path = Path { runs: outline.runs.iter().map(shrink).collect() };
        let mut items = vec![Item::Path { path, style: Style::line(Colour::Soft, 0.3) }];
        for i in 0..self.count() {
            let (column, row) = self.place(i);
            let Window { left, top, right, bottom } = self.window(column, row);
            let corners = [(left, top), (right, top), (right, bottom), (left, bottom)];
            let path = Path::closed(corners.map(|(x, y)| at(x, y)).into());
            items.push(Item::Path { path, style: Style::line(Colour::Ink, 0.3) });
            let middle = at(left + 30.0, top + 45.0);
            items.push(Item::Text {
                at: middle,
                anchor: Anchor::Middle,
                words: texts::Number::from(i + 1).to_string(),
                colour: Colour::Ink,
                bold: true,
                size: 5.0,
            });
        }
        Scene { width: width * scale, height: height * scale, ..alone(items) }
    }
}

/// How many sheets lie beside each other over a length, and where the first begins, so that
/// what is drawn lies in the middle.
fn along(length: f64, tile: f64) -> (usize, f64) {
    let mut count = 1;
    let mut reach = tile;
    while reach < length {
        count += 1;
        reach += tile - OVERLAP_MM;
    }
    (count, (length - reach) / 2.0)
}

fn alone(items: Vec<Item>) -> Scene {
    let groups = vec![Group { key: "part", items }];
    Scene { unit: Unit::Mm, groups, ..Scene::default() }
}

/// A dashed line across a sheet, or along it, with two crosses and the number of the part that
/// joins there, a little beyond the line.
fn join(along: bool, at: f64, number: usize, beyond: f64, drawn: &Path) -> Vec<Item> {
    let length = if along { TILE_MM.1 } else { TILE_MM.0 };
    let place = |run: f64, aside: f64| {
        if along {
            Point { x: at + aside, y: run }
        } else {
            Point { x: run, y: at + aside }
        }
    };
    let mut line = Path::default();
    line.line(place(0.0, 0.0), place(length, 0.0));
    let mut crosses = Path::default();
    for run in [CROSS_INSET_MM, length - CROSS_INSET_MM] {
        crosses.line(place(run - CROSS_MM, 0.0), place(run + CROSS_MM, 0.0));
        crosses.line(place(run, -CROSS_MM), place(run, CROSS_MM));
    }
    let said = texts::cut_out_join(number.into());
    let word = words(Point::default(), Anchor::Start, &said);
    let long = wide(&said, WORDS_MM, false);
    let is_free = |&run: &f64| {
        let ends =
            [place(run - 1.0, beyond - WORDS_MM), place(run + long + 1.0, beyond + 1.0)];
        let [Point { x: left, y: top }, Point { x: right, y: bottom }] = ends;
        clipped(drawn, Window { left, top, right, bottom }).runs.is_empty()
    };
    let last = length - WORDS_INSET_MM - long;
    let between = [last, WORDS_INSET_MM, length / 2.0, length / 2.0 - long];
    // Turned words begin at their lower end.
    let preferred = if along { last } else { WORDS_INSET_MM };
    let run =
        std::iter::once(preferred).chain(between).find(is_free).unwrap_or(preferred);
    let turned_deg = if along { -90.0 } else { 0.0 };
    vec![
        Item::Path {
            path: line,
            style: Style::line(Colour::Soft, 0.2).dashed(&[2.0, 2.0]),
        },
        Item::Path { path: crosses, style: Style::line(Colour::Ink, 0.25) },
        Item::Placed {
            at: place(if along { run + long } else { run }, beyond),
            scale: 1.0,
            turned_deg,
            scene: alone(vec![word]),
        },
    ]
}

#[cfg(test)]
pub(super) fn length_mm(path: &Path) -> f64 {
    let run = |(points, is_closed): &(Vec<Point>, bool)| {
        let closing = points.first().filter(|_| *is_closed);
        let ends = points.iter().skip(1).chain(closing);
        points
            .iter()
            .zip(ends)
            .map(|(a, b)| libm::hypot(a.x - b.x, a.y - b.y))
            .sum::<f64>()
    };
    path.runs.iter().map(run).sum()
}

#[cfg(test)]
impl Tiles {
    /// The length of the line to cut along on all sheets together, what neighbours both show
    /// counted once.
    pub(super) fn ink_mm(&self, outline: &Outline) -> f64 {
        // Of a sheet and those to the right, below, and below to the right, what all show.
        let both = |i: usize, right: usize, below: usize| {
            let (column, row) = self.place(i);
            if column + right >= self.columns || row + below >= self.rows {
                return 0.0;
            }
            let (one, other) =
                (self.window(column, row), self.window(column + right, row + below));
            let Window { left, top, .. } = other;
            let both = Window { left, top, right: one.right, bottom: one.bottom };
            length_mm(&clipped(&outline.path, both))
        };
        let of = |i| both(i, 0, 0) - both(i, 1, 0) - both(i, 0, 1) + both(i, 1, 1);
        (0..self.count()).map(of).sum()
    }
}
