//! The sheets of a cut-out, laid together by the crosses on them.

use crate::document::Document;
use crate::picture::Picture;
use anyhow::{Context, Result, ensure};
use noseward_drawing::paper::{Page, Tag};
use noseward_drawing::{Item, Path, Point};

/// Of a line in ink the darkest pixels are darker than this, and of every lesser colour none.
pub const INK: u8 = 70;
/// The same of lesser lines, which may lie over a cross and then have the same middle.
const LESSER: u8 = 128;
/// So far beside its middle a cross is read, and no nearer: there is the other of its lines.
const READ_MM: [f64; 6] = [-2.4, -1.9, -1.4, 1.4, 1.9, 2.4];
/// A cross stands nowhere else on a sheet than it should, within this.
const NEAR_MM: f64 = 1.0;
/// Lines of joining lie nearer to an edge of a sheet's part than this.
const EDGE_MM: f64 = 15.0;

/// An edge at which a sheet may join another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Edge {
    /// Towards the sheet before.
    Left,
    /// Towards the sheet above.
    Top,
    /// Towards the next sheet.
    Right,
    /// Towards the sheet below.
    Bottom,
}

impl Edge {
    /// The one over there.
    pub(crate) fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Top => Self::Bottom,
            Self::Right => Self::Left,
            Self::Bottom => Self::Top,
        }
    }
}

/// A sheet with a part of the outline.
#[derive(Debug)]
pub(crate) struct Tile {
    /// As it is drawn.
    pub(crate) picture: Picture,
    /// From where to where its part reaches on it, in millimetres.
    pub(crate) corners: (Point, Point),
    /// The crosses at which others join, as they were read from the picture.
    crosses: Vec<(Edge, Point)>,
}

impl Tile {
    /// The sheet with this number, from 1, or what is wrong with it; `None` where no part stands
    /// on it.
    ///
    /// # Errors
    ///
    /// When a cross is not where it should be.
    pub(crate) fn read(
        document: &Document,
        page: &Page,
        number: usize,
    ) -> Result<Option<Self>> {
        let figures = page.scene.groups.iter().zip(&page.tags);
        let mut figures = figures.filter(|(_, tag)| matches!(tag, Tag::Figure(_)));
        let items = figures.next().map(|(group, _)| group.items.as_slice());
        let Some([Item::Placed { at, scene, .. }]) = items else { return Ok(None) };
        let items = scene.groups.iter().flat_map(|group| &group.items);
        let paths = items.filter_map(|item| match item {
            Item::Path { path, .. } => Some(path),
            _ => None,
        });
        let meant: Vec<Point> = paths.flat_map(crosses).collect();
        let picture = document.picture(number, 300)?;
        let size = (scene.width, scene.height);
        let read = meant.iter().map(|cross| {
            let near = Point { x: at.x + cross.x, y: at.y + cross.y };
            Ok((edge(*cross, size)?, read_cross(&picture, near)?))
        });
        let crosses = read.collect::<Result<_>>()?;
        let corners = (*at, Point { x: at.x + size.0, y: at.y + size.1 });
        Ok(Some(Self { picture, corners, crosses }))
    }

    /// The lines that cross a row of the part.
    pub(crate) fn in_row(&self, y: f64) -> Vec<f64> {
        let mut strokes = self.picture.strokes_in_row(y, INK);
        strokes.retain(|x| self.corners.0.x < *x && *x < self.corners.1.x);
        strokes
    }

    /// The lines that cross a column of the part.
    pub(crate) fn in_column(&self, x: f64) -> Vec<f64> {
        let mut strokes = self.picture.strokes_in_column(x, INK);
        strokes.retain(|y| self.corners.0.y < *y && *y < self.corners.1.y);
        strokes
    }

    /// The crosses along an edge, in their order.
    #[must_use]
    pub(crate) fn along(&self, edge: Edge) -> Vec<Point> {
        let these = self.crosses.iter().filter(|(known, _)| *known == edge);
        these.map(|(_, cross)| *cross).collect()
    }
}

/// The middles of all pairs of strokes that cross each other there at right angles.
fn crosses(path: &Path) -> Vec<Point> {
    let runs = path.runs.windows(2);
    let middle = |points: &[Point]| match points {
        [a, b] => {
            Some((f64::midpoint(a.x, b.x), f64::midpoint(a.y, b.y), a.x - b.x, a.y - b.y))
        }
        _ => None,
    };
    let found = runs.filter_map(|pair| {
        let (x, y, dx, dy) = middle(&pair[0].0)?;
        let (other_x, other_y, other_dx, other_dy) = middle(&pair[1].0)?;
        let apart = (x - other_x).abs() + (y - other_y).abs();
        let slant = (dx * other_dx + dy * other_dy).abs();
        (apart < 1e-6 && slant < 1e-6).then_some(Point { x, y })
    });
    found.collect()
}

fn edge(cross: Point, size: (f64, f64)) -> Result<Edge> {
    let edges = [
        (Edge::Left, cross.x),
        (Edge::Top, cross.y),
        (Edge::Right, size.0 - cross.x),
        (Edge::Bottom, size.1 - cross.y),
    ];
    let found = edges.iter().find(|(_, distance)| *distance < EDGE_MM);
    found.map(|(edge, _)| *edge).context("a cross in the middle of a sheet")
}

/// Where a cross is, read from pixels.
fn read_cross(picture: &Picture, near: Point) -> Result<Point> {
    let nearest = |strokes: Vec<f64>, to: f64| {
        let distance = |stroke: &f64| (stroke - to).abs();
        strokes.into_iter().min_by(|a, b| distance(a).total_cmp(&distance(b)))
    };
    // Where the outline comes near, some rows tell something else: the middle one of all leads.
    let middle = |mut read: Vec<f64>, to: f64| -> Result<f64> {
        read.retain(|stroke| (stroke - to).abs() < NEAR_MM);
        read.sort_by(f64::total_cmp);
        ensure!(read.len() > 3, "no cross at {near:?}, but {read:?}");
        Ok(f64::midpoint(read[(read.len() - 1) / 2], read[read.len() / 2]))
    };
    let row =
        |beside: &f64| nearest(picture.strokes_in_row(near.y + beside, LESSER), near.x);
    let column = |beside: &f64| {
        nearest(picture.strokes_in_column(near.x + beside, LESSER), near.y)
    };
    Ok(Point {
        x: middle(READ_MM.iter().filter_map(row).collect(), near.x)?,
        y: middle(READ_MM.iter().filter_map(column).collect(), near.y)?,
    })
}
