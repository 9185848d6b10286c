//! The marks in three corners of a symbol: rings round a square, so that any line through the
//! middle meets them in the ratio 1 : 1 : 3 : 1 : 1.

use super::picture::{Picture, Point, whole};

/// As many marks as a picture may have at one scale: those of twenty symbols, and some.
const MOST: usize = 64;
/// Noise makes marks too, with modules of a pixel and a half at most or hardly darker than what
/// is round them (seen in the tests of noise). Alone, without a symbol that is read, only others
/// count.
const LEAST_CLEAR_PX: f64 = 2.0;
/// Grey values between the ink of such a mark and its paper, at least.
const LEAST_CLEAR: f64 = 64.0;
/// Half of the sides of a square, in steps from its middle: the directions of the rays.
const STEPS: i32 = 4;
/// Rays from the middle of a mark.
const RAYS: usize = 8 * STEPS as usize;
/// Rays that must meet the rings where they should be.
const GOOD_RAYS: usize = RAYS * 3 / 4;

/// A mark.
#[derive(Clone, Copy, Debug)]
pub(super) struct Mark {
    pub(super) at: Point,
    /// Side of a module, in pixels.
    pub(super) module: f64,
    /// Whether it is light on dark.
    pub(super) inverted: bool,
    /// Grey values between its ink and its paper.
    contrast: f64,
}

impl Mark {
    /// The same in pixels of the whole picture.
    pub(super) fn in_whole(self, picture: &Picture) -> Self {
        Self { at: self.at * picture.scale, module: self.module * picture.scale, ..self }
    }

    /// Whether it is one even where no symbol is read.
    pub(super) fn is_clear(&self) -> bool {
        self.module > LEAST_CLEAR_PX && self.contrast > LEAST_CLEAR
    }

    /// Whether two marks may be of one symbol of usual size.
    pub(super) fn is_near(&self, other: &Self) -> bool {
        let large = self.module.max(other.module);
        (self.at - other.at).length() < 60.0 * large
            && large < 1.6 * self.module.min(other.module)
    }

    /// Side of a module in a direction of this length.
    pub(super) fn module_along(&self, picture: &Picture, direction: Point) -> f64 {
        let unit = direction * (1.0 / direction.length());
        let reach = 8.0 * self.module;
        let edge = |unit| rings(picture, self.at, unit, self.inverted, reach);
        match (edge(unit), edge(unit * -1.0)) {
            (Some(on), Some(back)) => (on[2] + back[2]) / 7.0,
            _ => self.module,
        }
    }
}

/// Every mark in a picture, but for those in places that are known.
pub(super) fn find(picture: &Picture, is_known: impl Fn(Point) -> bool) -> Vec<Mark> {
    let mut marks: Vec<Mark> = Vec::new();
    for y in 0..picture.height {
        let mut runs = [0; 5];
        let mut was_dark = picture.is_dark(0, y);
        for x in 0..=picture.width {
            let goes_on = x < picture.width && picture.is_dark(x, y) == was_dark;
            if goes_on {
                runs[4] += 1;
                continue;
            }
            if is_mark(&runs) {
                let middle = x - runs[4] - runs[3] - runs[2].div_ceil(2);
                let at = Point { x: middle as f64, y: y as f64 };
                let is_new = marks.iter().all(|m| (m.at - at).length() > 3.5 * m.module);
                if is_new && !is_known(at * picture.scale) {
                    marks.extend(confirmed(picture, middle, y));
                    if marks.len() == MOST {
                        return marks;
                    }
                }
            }
            runs.rotate_left(1);
            runs[4] = 1;
            was_dark = !was_dark;
        }
    }
    marks
}

/// Whether the runs of a line are in the ratio of a mark, to half a module and some.
fn is_mark(runs: &[usize; 5]) -> bool {
    let unit = runs.iter().sum::<usize>() as f64 / 7.0;
    let is_near = |run: usize, of: f64| (run as f64 - of * unit).abs() < 0.7 * unit;
    runs[0] > 0
        && is_near(runs[2], 3.0)
        && [0, 1, 3, 4].into_iter().all(|i| is_near(runs[i], 1.0))
}

/// Looks down, across and all round what looks like a mark in one row.
fn confirmed(picture: &Picture, x: usize, y: usize) -> Option<Mark> {
    let y = centred(picture, (x, y), (0, 1))?.1;
    let (x, y) = centred(picture, (x, y), (1, 0))?;
    let at = Point { x: x as f64 + 0.5, y: y as f64 + 0.5 };
    ringed(picture, at, !picture.is_dark(x, y))
}

/// The middle of the mark along a row or a column.
fn centred(
    picture: &Picture,
    (x, y): (usize, usize),
    (dx, dy): (usize, usize),
) -> Option<(usize, usize)> {
    let back =
        arm(picture, (x, y), |(x, y)| Some((x.checked_sub(dx)?, y.checked_sub(dy)?)));
    let on = arm(picture, (x, y), |(x, y)| Some((x + dx, y + dy)));
    let (back, on) = (back?, on?);
    let runs = [back[2], back[1], back[0] + on[0] - 1, on[1], on[2]];
    let first = (x + 1) * dx + (y + 1) * dy - back[0];
    let middle = first + runs[2] / 2;
    is_mark(&runs)
        .then_some((if dx == 1 { middle } else { x }, if dy == 1 { middle } else { y }))
}

/// The three runs from the middle of a mark outwards.
fn arm(
    picture: &Picture,
    from: (usize, usize),
    step: impl Fn((usize, usize)) -> Option<(usize, usize)>,
) -> Option<[usize; 3]> {
    let mut runs = [0; 3];
    let (mut run, mut is_dark) = (0, picture.is_dark(from.0, from.1));
    let mut at = Some(from);
    while let Some((x, y)) = at.filter(|(x, y)| *x < picture.width && *y < picture.height)
    {
        if picture.is_dark(x, y) != is_dark {
            is_dark = !is_dark;
            run += 1;
            if run == 3 {
                break;
            }
        }
        runs[run] += 1;
        at = step((x, y));
    }
    (runs[2] > 0).then_some(runs)
}

/// The mark round a point: its rings are met by rays in all directions.
fn ringed(picture: &Picture, at: Point, inverted: bool) -> Option<Mark> {
    let reach = (picture.width + picture.height) as f64;
    let mut edges = [None; RAYS];
    for (edge, direction) in edges.iter_mut().zip(directions()) {
        *edge = rings(picture, at, direction, inverted, reach)
            .filter(|[square, gap, ring]| {
                // Half a pixel either way, and corners that blur has taken.
                let some = 0.14 + 0.5 / ring;
                (square / ring - 3.0 / 7.0).abs() < some
                    && (gap / ring - 5.0 / 7.0).abs() < some
            })
            .map(|[_, _, ring]| direction * ring);
    }
    let (mut pairs, mut middle, mut area) = (0.0, Point::default(), 0.0);
    for i in 0..RAYS / 2 {
        if let (Some(edge), Some(opposite)) = (edges[i], edges[i + RAYS / 2]) {
            pairs += 1.0;
            middle = middle + (edge + opposite) * 0.5;
        }
    }
    for i in 0..RAYS {
        if let (Some(edge), Some(next)) = (edges[i], edges[(i + 1) % RAYS]) {
            area += edge.cross(next) / 2.0;
        }
    }
    let good = edges.iter().flatten().count();
    if good < GOOD_RAYS || pairs * 3.0 < GOOD_RAYS as f64 {
        return None;
    }
    let module = (area * RAYS as f64 / good as f64).sqrt() / 7.0;
    let middle = middle * (1.0 / pairs);
    let contrast = 2.0 * picture.threshold(whole(at.x), whole(at.y)).1;
    (middle.length() < module).then_some(Mark {
        at: at + middle,
        module,
        inverted,
        contrast,
    })
}

/// The directions of the rays, clockwise as seen: to points on the sides of a square. What is
/// compared along a ray does not depend on how long a direction is.
fn directions() -> impl Iterator<Item = Point> {
    let side = (-STEPS..STEPS).map(|i| (f64::from(STEPS), f64::from(i)));
    let sides = [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)];
    sides.into_iter().flat_map(move |(cos, sin)| {
        side.clone().map(move |(x, y)| {
            let to = Point { x: x * cos - y * sin, y: x * sin + y * cos };
            to * (1.0 / to.length())
        })
    })
}

/// How far from the middle of a mark a ray in the direction of a unit leaves the square, the
/// gap and the ring.
fn rings(
    picture: &Picture,
    from: Point,
    unit: Point,
    inverted: bool,
    reach: f64,
) -> Option<[f64; 3]> {
    const STEP: f64 = 0.5;
    let mut met = [0.0; 3];
    let mut ring = 0;
    let mut before = 1.0;
    for i in 0..whole(reach / STEP) {
        let far = i as f64 * STEP;
        let ink = picture.ink(from + unit * far);
        let ink = if inverted { -ink } else { ink };
        let is_in = if ring == 1 { ink < 0.0 } else { ink > 0.0 };
        if ink == 0.0 {
            return None;
        }
        if !is_in {
            let change: f64 = ink - before;
            met[ring] = far - if i == 0 { 0.0 } else { STEP * ink / change };
            ring += 1;
            if ring == 3 {
                return Some(met);
            }
        }
        before = ink;
    }
    None
}
