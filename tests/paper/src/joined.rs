//! A cut-out that was joined from its sheets, cut out and measured, pixel by pixel.

use crate::document::{Document, MM_PER_INCH};
use crate::picture::Picture;
use crate::tile::{Edge, INK, Tile};
use anyhow::{Context, Result};
use noseward_drawing::Point;
use noseward_drawing::paper::Page;

/// What is found by counting pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutOutFound {
    /// From the nose tip to the tail, in millimetres.
    pub length_mm: f64,
    /// In square millimetres.
    pub area_mm2: f64,
    /// From the nose tip, in millimetres.
    pub centroid_mm: f64,
    /// The most by which a line goes on elsewhere on the next sheet, in millimetres.
    pub jump_mm: f64,
    /// How many sheets there are.
    pub sheets: usize,
}

/// Joins the sheets of a cut-out and measures it.
///
/// # Errors
///
/// When the sheets do not fit together.
pub fn cut_out_found(document: &Document, pages: &[Page]) -> Result<CutOutFound> {
    let mut tiles = Vec::new();
    // The first page says how it is made.
    for (page, number) in pages.iter().zip(1..).skip(1) {
        tiles.extend(Tile::read(document, page, number)?);
    }
    let columns = tiles.iter().filter(|tile| tile.along(Edge::Top).is_empty()).count();
    // Where the paper's corner of each sheet lies on that of the first.
    let mut corners = vec![Point::default()];
    let mut jump_mm: f64 = 0.0;
    for i in 1..tiles.len() {
        let before = (i % columns > 0).then(|| (i - 1, Edge::Left));
        let above = (i >= columns).then(|| (i - columns, Edge::Top));
        for (neighbour, edge) in [before, above].into_iter().flatten() {
            let by = shift(&tiles[neighbour], &tiles[i], edge).context("no crosses")?;
            jump_mm = jump_mm.max(jump(&tiles[neighbour], &tiles[i], edge, by));
            let corner = corners[neighbour];
            let corner = Point { x: corner.x + by.x, y: corner.y + by.y };
            // What fits the sheet beside it fits the one above too.
            let known = *corners.get(i).unwrap_or(&corner);
            jump_mm =
                jump_mm.max((known.x - corner.x).abs().max((known.y - corner.y).abs()));
            corners.truncate(i);
            corners.push(known);
        }
    }
    Ok(measured(&tiles, &corners, jump_mm))
}

/// Measures a cut-out that was made so small that it stands on the first page, beside the bars.
///
/// # Errors
///
/// When nothing stands there.
pub fn small_cut_out_found(document: &Document, page: &Page) -> Result<CutOutFound> {
    /// Room for the bars, above it and to its left.
    const BARS_MM: (f64, f64) = (11.0, 8.0);
    let mut tile = Tile::read(document, page, 1)?.context("no figure")?;
    tile.corners.0 =
        Point { x: tile.corners.0.x + BARS_MM.0, y: tile.corners.0.y + BARS_MM.1 };
    Ok(measured(&[tile], &[Point::default()], 0.0))
}

fn measured(tiles: &[Tile], corners: &[Point], jump_mm: f64) -> CutOutFound {
    let (outer, inner) = Canvas::of(tiles, corners).regions();
    CutOutFound {
        length_mm: f64::midpoint(outer.bottom - outer.top, inner.bottom - inner.top),
        area_mm2: f64::midpoint(outer.area, inner.area),
        centroid_mm: (outer.moment + inner.moment) / (outer.area + inner.area)
            - f64::midpoint(outer.top, inner.top),
        jump_mm,
        sheets: tiles.len(),
    }
}

/// From the corner of a sheet to that of the next, which has it at this edge, when the crosses of
/// both lie on each other.
fn shift(one: &Tile, next: &Tile, edge: Edge) -> Option<Point> {
    let (ours, theirs) = (one.along(edge.other()), next.along(edge));
    let ([a, b], [c, d]) = (ours.as_slice(), theirs.as_slice()) else { return None };
    Some(Point {
        x: f64::midpoint(a.x - c.x, b.x - d.x),
        y: f64::midpoint(a.y - c.y, b.y - d.y),
    })
}

/// By how much lines differ in what a sheet and the next both show.
fn jump(one: &Tile, next: &Tile, edge: Edge, by: Point) -> f64 {
    let Some(cross) = one.along(edge.other()).first().copied() else { return f64::MAX };
    let mut most: f64 = 0.0;
    for beside in [-4.5, -3.5, 3.5, 4.5] {
        let (ours, theirs, by) = if edge == Edge::Top {
            let y = cross.y + beside;
            (one.in_row(y), next.in_row(y - by.y), by.x)
        } else {
            let x = cross.x + beside;
            (one.in_column(x), next.in_column(x - by.x), by.y)
        };
        if ours.len() != theirs.len() {
            return f64::MAX;
        }
        let differences = ours.iter().zip(&theirs).map(|(a, b)| (a - b - by).abs());
        most = differences.fold(most, f64::max);
    }
    most
}

/// What of the joined sheets is paper, and what is a line.
struct Canvas {
    width: usize,
    height: usize,
    mm: f64,
    is_line: Vec<bool>,
}

/// An area with its moment about the upper edge, and its ends, in millimetres.
#[derive(Clone, Copy, Debug, Default)]
struct Region {
    area: f64,
    moment: f64,
    top: f64,
    bottom: f64,
}

impl Canvas {
    /// Each sheet from line to line, at its place.
    fn of(tiles: &[Tile], corners: &[Point]) -> Self {
        let mm = MM_PER_INCH / 300.0;
        let places: Vec<(&Tile, (Point, Point), &Point)> =
            tiles.iter().zip(corners).map(|(tile, at)| (tile, shown(tile), at)).collect();
        let most = |end: &dyn Fn(&(Point, Point), &Point) -> f64| {
            places.iter().map(|(_, shown, at)| end(shown, at)).fold(0.0, f64::max)
        };
        let width = whole(most(&|shown, at| shown.1.x + at.x) / mm) + 2;
        let height = whole(most(&|shown, at| shown.1.y + at.y) / mm) + 2;
        let mut canvas = Self { width, height, mm, is_line: vec![false; width * height] };
        for (tile, shown, at) in places {
            canvas.lay(&tile.picture, shown, *at);
        }
        canvas
    }

    fn lay(&mut self, picture: &Picture, shown: (Point, Point), at: Point) {
        let (from, to) = shown;
        for y in picture.pixel(from.y)..picture.pixel(to.y) {
            let to_y = whole(y as f64 + at.y / self.mm);
            for x in picture.pixel(from.x)..picture.pixel(to.x) {
                let to_x = whole(x as f64 + at.x / self.mm);
                if picture.grey(x, y) < INK {
                    self.is_line[to_y * self.width + to_x] = true;
                }
            }
        }
    }

    /// What is left where all outside of the line is cut away, and where the line is too.
    fn regions(&self) -> (Region, Region) {
        let is_out = self.reached(vec![0], |place| !self.is_line[place]);
        let is_inner = |place: usize| !is_out[place] && !self.is_line[place];
        // Crosses that stand alone are no part of it.
        let inner = (0..is_out.len()).filter(|place| is_inner(*place)).collect();
        let is_left = self.reached(inner, |place| !is_out[place]);
        (self.region(|place| is_left[place]), self.region(is_inner))
    }

    /// What can be reached from some places by steps of a pixel on free ones.
    fn reached(&self, from: Vec<usize>, is_free: impl Fn(usize) -> bool) -> Vec<bool> {
        let mut is_reached = vec![false; self.is_line.len()];
        from.iter().for_each(|place| is_reached[*place] = true);
        let mut todo = from;
        while let Some(place) = todo.pop() {
            let (x, y) = (place % self.width, place / self.width);
            let beside = [
                (x > 0).then(|| place - 1),
                (x + 1 < self.width).then_some(place + 1),
                (y > 0).then(|| place - self.width),
                (y + 1 < self.height).then_some(place + self.width),
            ];
            for next in beside.into_iter().flatten() {
                if !is_reached[next] && is_free(next) {
                    is_reached[next] = true;
                    todo.push(next);
                }
            }
        }
        is_reached
    }

    fn region(&self, is_in: impl Fn(usize) -> bool) -> Region {
        let mut found = Region { top: f64::MAX, ..Region::default() };
        for y in 0..self.height {
            let row = y * self.width..(y + 1) * self.width;
            let count =
                row.filter(|place| is_in(*place)).fold(0.0, |count, _| count + 1.0);
            if count > 0.0 {
                let (top, area) = (y as f64 * self.mm, count * self.mm * self.mm);
                found.area += area;
                found.moment += area * (top + self.mm / 2.0);
                found.top = found.top.min(top);
                found.bottom = top + self.mm;
            }
        }
        found
    }
}

/// What of a sheet is left where it was cut half a millimetre beyond the lines of joining.
fn shown(tile: &Tile) -> (Point, Point) {
    let mean = |edge: Edge, of: fn(&Point) -> f64, none: f64| match tile
        .along(edge)
        .as_slice()
    {
        [a, b] => f64::midpoint(of(a), of(b)),
        _ => none,
    };
    let (from, to) = tile.corners;
    const BEYOND_MM: f64 = 0.5;
    let from = Point {
        x: mean(Edge::Left, |p| p.x, from.x) - BEYOND_MM,
        y: mean(Edge::Top, |p| p.y, from.y) - BEYOND_MM,
    };
    let to = Point {
        x: mean(Edge::Right, |p| p.x, to.x) + BEYOND_MM,
        y: mean(Edge::Bottom, |p| p.y, to.y) + BEYOND_MM,
    };
    (from, to)
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "pixels")]
fn whole(pixels: f64) -> usize {
    pixels.max(0.0) as usize
}
