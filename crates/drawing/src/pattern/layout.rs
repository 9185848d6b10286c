//! Parts on pages: beside each other as close as a pair of scissors allows, every second one
//! turned about where that saves card, with bars of 100 mm on each page.

use super::piece::{EDGE_MM, Piece, in_mm, reach_between};
use crate::cut_out::{TILE_MM, Tiles, clipped};
use crate::paper::{CHECK_BAR_MM, CHECK_BAR_WIDE_MM, Flow, check_bars};
use crate::scene::{Group, Item, Path, Point, Scene};
use noseward_words as texts;

/// Between two parts, and between a part and a bar.
const GAP_MM: f64 = 3.0;
const BESIDE_BAR_MM: f64 = 3.0;
/// What a page has room for beside its bars, in millimetres.
pub(super) const AREA_MM: (f64, f64) = (
    Flow::WIDTH_MM - CHECK_BAR_WIDE_MM - BESIDE_BAR_MM,
    Flow::HEIGHT_MM - CHECK_BAR_WIDE_MM - BESIDE_BAR_MM,
);

/// How far from the left the picture of all sheets of a large part is, in millimetres.
const MAP_AT_MM: f64 = 40.0;

/// Where a part lies.
#[derive(Clone, Copy, Debug)]
struct Place {
    piece: usize,
    x: f64,
    quarters: u8,
}

/// Parts beside each other.
#[derive(Clone, Debug, Default)]
struct Row {
    places: Vec<Place>,
    height: f64,
    /// How far it is filled, for each millimetre from above.
    filled: Vec<f64>,
}

/// By how many quarter turns a part has to be turned to fit on a page; `None` where it does not.
fn turn_to_fit(piece: &Piece) -> Option<u8> {
    let (width, height) = piece.size();
    let fits = |width: f64, height: f64| {
        width + 2.0 * EDGE_MM <= AREA_MM.0 && height + 2.0 * EDGE_MM <= AREA_MM.1
    };
    if fits(width, height) { Some(0) } else { fits(height, width).then_some(1) }
}

/// Whether a page has room for a part.
pub(super) fn fits(piece: &Piece) -> bool {
    turn_to_fit(piece).is_some()
}

/// The outline of a part after some quarter turns clockwise, its corner at 0.
fn turned(piece: &Piece, quarters: u8) -> (Vec<Point>, (f64, f64)) {
    let (width, height) = piece.size();
    let turn = |p: &Point| match quarters {
        0 => *p,
        1 => Point { x: height - p.y, y: p.x },
        2 => Point { x: width - p.x, y: height - p.y },
        _ => Point { x: p.y, y: width - p.x },
    };
    let size = if quarters.is_multiple_of(2) { (width, height) } else { (height, width) };
    (piece.cut.iter().map(turn).collect(), size)
}

/// How far a part reaches to either side, for each millimetre from above, a gap wider above and
/// below than it is.
fn sides(outline: &[Point], height: f64) -> Vec<Option<(f64, f64)>> {
    let mut sides = Vec::new();
    let mut y = 0.0;
    while y < height + GAP_MM {
        sides.push(reach_between(outline, y - GAP_MM, y + 1.0 + GAP_MM));
        y += 1.0;
    }
    sides
}

impl Row {
    /// Puts a part at the end of the row, if it has room there: as it is or turned about, but
    /// the first one as it is told.
    fn take(&mut self, piece: usize, of: &Piece, first: u8) -> bool {
        let Some(quarters) = turn_to_fit(of) else { return false };
        let ways = [quarters, quarters + 2].into_iter();
        let is_first = self.places.is_empty();
        let ways = ways.filter(|&way| !is_first || way == quarters + first);
        let mut best: Option<(f64, Place, Vec<f64>, f64)> = None;
        for quarters in ways {
            let (outline, (width, height)) = turned(of, quarters);
            let sides = sides(&outline, height);
            let mut x = 0.0_f64;
            for (side, filled) in sides.iter().zip(&self.filled) {
                if let Some((left, _)) = side {
                    x = x.max(filled + GAP_MM - left);
                }
            }
            let mut filled = self.filled.clone();
            filled.resize(filled.len().max(sides.len()), 0.0);
            for (side, filled) in sides.iter().zip(&mut filled) {
                if let Some((_, right)) = side {
                    *filled = filled.max(x + right);
                }
            }
            let end = filled.iter().copied().fold(0.0, f64::max).max(x + width);
            let place = Place { piece, x, quarters };
            if best.as_ref().is_none_or(|(least, ..)| end < *least - 0.5) {
                best = Some((end, place, filled, height));
            }
        }
        let Some((end, place, filled, height)) = best else { return false };
        if end + 2.0 * EDGE_MM > AREA_MM.0 {
            return false;
        }
        self.places.push(place);
        self.filled = filled;
        self.height = self.height.max(height);
        true
    }
}

/// Parts in rows, in their order. A row begins with a part that is turned about where it then
/// has room for more.
fn rows(pieces: &[Piece]) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    let mut next = 0;
    while next < pieces.len() {
        let begun = |first: u8| {
            let mut row = Row::default();
            let mut left = pieces.iter().enumerate().skip(next);
            while left.next().is_some_and(|(i, piece)| row.take(i, piece, first)) {}
            row
        };
        let [plain, about] = [0, 2].map(begun);
        let row = if about.places.len() > plain.places.len() { about } else { plain };
        // What fits on no page has no place.
        next += row.places.len().max(1);
        rows.push(row);
    }
    rows
}

/// Lays parts on what is left of the page and on as many more as they need. All fit on a page.
pub(super) fn lay(flow: &mut Flow, name: &str, pieces: &[Piece]) {
    let bars = CHECK_BAR_WIDE_MM + BESIDE_BAR_MM;
    let mut items = Vec::new();
    let (mut y, mut filled) = (0.0, 0.0);
    let rows = rows(pieces);
    if rows.first().is_some_and(|row| high(row).max(CHECK_BAR_MM) > flow.room_mm() - bars)
    {
        small_picture(flow, &pieces[0]);
    }
    for row in rows {
        let high = high(&row);
        if (y + high).max(CHECK_BAR_MM) > flow.room_mm() - bars {
            sheet(flow, name, filled, std::mem::take(&mut items));
            flow.next_page();
            y = 0.0;
        }
        for place in &row.places {
            items.push(placed(&pieces[place.piece], *place, y));
        }
        filled = y + high;
        y = filled + GAP_MM - 2.0 * EDGE_MM;
    }
    sheet(flow, name, filled, items);
}

fn high(row: &Row) -> f64 {
    row.height + 2.0 * EDGE_MM
}

/// On a page with words alone: what the part looks like that needs a page of its own.
fn small_picture(flow: &mut Flow, piece: &Piece) {
    const MOST_MM: (f64, f64) = (110.0, 75.0);
    const LEAST_MM: f64 = 40.0;
    let room = flow.room_mm() - 14.0;
    if room > LEAST_MM {
        flow.paragraph(texts::paper_parts_small().as_str());
        let without_words = Piece { words: Vec::new(), ..piece.clone() };
        flow.figure(&without_words.scene(""), (MOST_MM.0, MOST_MM.1.min(room)));
    }
}

fn placed(piece: &Piece, place: Place, y: f64) -> Item {
    let scene = piece.scene("");
    let (width, height) = (scene.width, scene.height);
    // Where its corner comes to lie.
    let (x, y) = match place.quarters {
        0 => (place.x, y),
        1 => (place.x + height, y),
        2 => (place.x + width, y + height),
        _ => (place.x, y + width),
    };
    let turned_deg = 90.0 * f64::from(place.quarters);
    Item::Placed { at: Point { x, y }, scale: 1.0, turned_deg, scene }
}

/// Puts a page of parts between its bars.
fn sheet(flow: &mut Flow, name: &str, filled: f64, parts: Vec<Item>) {
    if parts.is_empty() {
        return;
    }
    let below = filled.max(CHECK_BAR_MM) + BESIDE_BAR_MM;
    let along = Point { x: Flow::WIDTH_MM - CHECK_BAR_WIDE_MM, y: 0.0 };
    let mut items = check_bars(Point { x: 0.0, y: below }, along);
    items.extend(parts);
    flow.drawing(name, below + CHECK_BAR_WIDE_MM, items);
}

/// A part that is larger than a page, over several with crosses where they join: `None` where
/// these are too many.
pub(super) fn tiled(flow: &mut Flow, piece: &Piece, most: usize) -> Option<()> {
    let over = |piece: &Piece| {
        let (width, height) = piece.size();
        Tiles::over(width + 2.0 * EDGE_MM, height + 2.0 * EDGE_MM)
    };
    let lying = piece.turned();
    let is_lying = over(&lying).count() < over(piece).count();
    let piece = if is_lying { &lying } else { piece };
    let tiles = over(piece);
    let of = tiles.count();
    if of > most {
        return None;
    }
    // Bars on the page with the steps.
    let along = Point { x: Flow::WIDTH_MM - CHECK_BAR_WIDE_MM, y: 0.0 };
    let across = Point { x: 0.0, y: CHECK_BAR_MM - CHECK_BAR_WIDE_MM };
    let mut items = check_bars(across, along);
    let outline = Path::closed(piece.cut.clone());
    let at = Point { x: MAP_AT_MM, y: 0.0 };
    let scene = tiles.map(&outline);
    items.push(Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene });
    flow.drawing(texts::cut_out_map().as_str(), CHECK_BAR_MM, items);
    for i in 0..of {
        flow.next_page();
        let name = texts::cut_out_sheet((i + 1).into(), of.into());
        flow.small(&name);
        // Lines end before the edge, which half their width would cross.
        let window = tiles.window_of(i).moved(-EDGE_MM).without(EDGE_MM / 2.0);
        let corner = Point { x: window.left, y: window.top };
        let shown = |path: &Path| clipped(path, window);
        let part = piece.with_words_within(window).layers(&shown, corner);
        let at = Point { x: EDGE_MM / 2.0, y: EDGE_MM / 2.0 };
        let mut items = tiles.joins(i, &shown(&outline));
        items.push(Item::Placed {
            at,
            scale: 1.0,
            turned_deg: 0.0,
            scene: in_mm("", part),
        });
        let groups = vec![Group { key: "tile", items }];
        let tile = Scene { width: TILE_MM.0, height: TILE_MM.1, ..in_mm(&name, groups) };
        flow.figure(&tile, TILE_MM);
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::super::fin::fin;
    use super::super::piece::edges;
    use super::*;
    use noseward_stability::{Example, Planform};

    fn fins(planform: &Planform) -> Vec<Piece> {
        let mut set = Example::Puffin.design().fins.remove(0);
        (set.count, set.planform) = (8, planform.clone());
        (1..=8).map(|number| fin(&set, Some(number)).unwrap()).collect()
    }

    /// From a corner to an edge.
    fn distance(p: Point, (a, b): (Point, Point)) -> f64 {
        let (dx, dy) = (b.x - a.x, b.y - a.y);
        let long = dx * dx + dy * dy;
        let along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / long.max(1e-12);
        let share = along.clamp(0.0, 1.0);
        libm::hypot(p.x - a.x - share * dx, p.y - a.y - share * dy)
    }

    /// Two outlines that do not cross are nowhere nearer than at a corner of one of them.
    #[test]
    fn parts_lie_beside_each_other_with_room_for_scissors() {
        let own = vec![[0.0, 0.0], [20.0, 45.0], [60.0, 45.0], [30.0, 12.0], [50.0, 0.0]];
        for planform in [
            Planform::FourSided {
                root_mm: 90.0,
                tip_mm: 0.0,
                span_mm: 60.0,
                sweep_mm: 80.0,
            },
            Planform::FourSided {
                root_mm: 40.0,
                tip_mm: 30.0,
                span_mm: 50.0,
                sweep_mm: -15.0,
            },
            Planform::PointsMm(own),
        ] {
            let pieces = fins(&planform);
            let rows = rows(&pieces);
            let laid: usize = rows.iter().map(|row| row.places.len()).sum();
            assert_eq!(laid, 8);
            for row in rows {
                let outlines: Vec<Vec<Point>> = row
                    .places
                    .iter()
                    .map(|place| {
                        let (outline, _) = turned(&pieces[place.piece], place.quarters);
                        let moved = |p: Point| Point { x: p.x + place.x, ..p };
                        outline.into_iter().map(moved).collect()
                    })
                    .collect();
                for pair in outlines.windows(2) {
                    let nearest = |one: &[Point], other: &[Point]| {
                        let corners = one.iter();
                        corners
                            .flat_map(|p| edges(other).map(|edge| distance(*p, edge)))
                            .fold(f64::MAX, f64::min)
                    };
                    let near =
                        nearest(&pair[0], &pair[1]).min(nearest(&pair[1], &pair[0]));
                    assert!(near > GAP_MM - 0.1, "{planform:?}: {near}");
                }
            }
        }
    }

    /// Three triangles beside each other where only two would be if none were turned about.
    #[test]
    fn a_part_is_turned_about_where_that_saves_card() {
        let (root_mm, span_mm) = (70.0, 100.0);
        let triangle = Planform::FourSided {
            root_mm,
            tip_mm: 0.0,
            span_mm,
            sweep_mm: root_mm / 2.0,
        };
        let rows = rows(&fins(&triangle));
        assert_eq!(rows[0].places.len(), 3);
        let quarters: Vec<u8> =
            rows[0].places.iter().map(|place| place.quarters).collect();
        assert_eq!(quarters, [0, 2, 0]);
    }
}
