//! The angle between nose and path against time.

use std::f64::consts::PI;

use noseward_stability::Turning;
use noseward_words as words;

use crate::area::Area;
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// One motion that is drawn.
#[derive(Clone, Copy, Debug)]
pub struct SwingCurve<'a> {
    /// What it does, in the order of time.
    pub samples: &'a [Turning],
    /// Whether its line is broken.
    pub dashed: bool,
    /// What it is, in a few words.
    pub label: &'a str,
}

const LEFT: f64 = 76.0;
const RIGHT: f64 = 16.0;
const TOP: f64 = 34.0;
const HEIGHT: f64 = 220.0;
/// From the plot to the legend: the times and what they are.
const TIMES: f64 = 42.0;
/// Half the height of the band about where it rests: [`noseward_stability::Settling`]
/// counts a rocket within it as settled.
const BAND_RAD: f64 = 10.0 * PI / 180.0;
/// Pixels for which a long curve keeps two points, its highest and its lowest.
const COLUMN_PX: f64 = 2.0;

/// The time in seconds at a distance from the left edge of a graph of some width that
/// shows so many seconds.
#[must_use]
pub fn swing_graph_time_s(x_px: f64, width_px: f64, duration_s: f64) -> f64 {
    let share = (x_px - LEFT) / (width_px - RIGHT - LEFT);
    duration_s * share.clamp(0.0, 1.0)
}

/// The angle between nose and path against time, with groups `graph` and `cursor`.
///
/// The first curve decides where the angles are cut open: at tail first, or at nose first
/// for a rocket that goes back and forth through tail first. `rest_rad` is where the first
/// one rests, from 0 to π; a band of 10 degrees to either side is drawn there. The graph
/// ends with the last sample of all curves; samples that are not finite are left out. The
/// width is 280 CSS pixels or more.
#[must_use]
pub fn swing_graph(
    curves: &[SwingCurve<'_>],
    rest_rad: Option<f64>,
    cursor_s: Option<f64>,
    width_px: f64,
) -> Scene {
    let duration_s = duration_s(curves);
    let first = curves.first().map_or(&[][..], |curve| curve.samples);
    let centre_rad = if breaks(first, PI) < breaks(first, 0.0) { PI } else { 0.0 };
    let runs: Vec<Vec<Vec<Instant>>> =
        curves.iter().map(|curve| wrapped(curve.samples, centre_rad)).collect();
    let rest_rad = rest_rad.map(|rest| nearest(rest, runs.first(), centre_rad));
    let plot = Plot::new(&runs, rest_rad, duration_s, width_px);

    let mut items = Vec::new();
    let mut entries = Vec::new();
    if let Some(rest) = rest_rad {
        items.push(plot.band(rest));
    }
    items.extend(plot.angles());
    items.extend(plot.times());
    // The first curve lies on top.
    for (curve, runs) in curves.iter().zip(&runs).rev() {
        let runs = runs.iter().map(|run| (plot.simplified(run), false)).collect();
        items.push(Item::Path { path: Path { runs }, style: line(curve.dashed) });
    }
    for curve in curves.iter().filter(|curve| !curve.label.is_empty()) {
        entries.push(Entry::line(line(curve.dashed), curve.label));
    }
    if rest_rad.is_some() {
        let sample =
            |area: &Area| vec![Item::Path { path: area.outline(), style: band_style() }];
        entries.push(Entry {
            sample: Box::new(sample),
            words: words::drawing_rest_band().into(),
        });
    }
    let below = plot.area.bottom + TIMES;
    let (rows, height_px) = legend(&entries, 6.0, width_px - 4.0, below);
    items.extend(rows);
    Scene {
        width: width_px,
        height: height_px,
        unit: Unit::Px,
        name: words::drawing_angle_graph().into(),
        groups: vec![
            Group { key: "graph", items },
            swing_cursor(cursor_s, duration_s, width_px),
        ],
    }
}

/// Only the line at one time in [`swing_graph`]: its group `cursor`, empty without a time.
#[must_use]
pub fn swing_cursor(cursor_s: Option<f64>, duration_s: f64, width_px: f64) -> Group {
    let mut items = Vec::new();
    if let Some(time_s) = cursor_s.filter(|time_s| time_s.is_finite()) {
        let share = (time_s / duration_s.max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
        let x = LEFT + (width_px - RIGHT - LEFT) * share;
        let ends = vec![Point { x, y: TOP }, Point { x, y: TOP + HEIGHT }];
        items.push(Item::Path {
            path: Path::open(ends),
            style: Style::line(Colour::Ink, 2.0),
        });
    }
    Group { key: "cursor", items }
}

/// A time in seconds and an angle in radians.
#[derive(Clone, Copy, Debug)]
struct Instant {
    time_s: f64,
    angle_rad: f64,
}

fn instants(samples: &[Turning]) -> impl Iterator<Item = Instant> {
    samples
        .iter()
        .map(|s| Instant { time_s: s.time_s, angle_rad: s.angle_rad })
        .filter(|i| i.time_s.is_finite() && i.angle_rad.is_finite())
}

/// Seconds that the graph shows; one where nothing moves.
fn duration_s(curves: &[SwingCurve<'_>]) -> f64 {
    let ends = curves.iter().filter_map(|curve| instants(curve.samples).last());
    let last = ends.map(|i| i.time_s).fold(0.0, f64::max);
    if last > 0.0 { last } else { 1.0 }
}

/// In which turn an angle lies, counted from half a turn before the centre.
fn turn_of(angle_rad: f64, centre_rad: f64) -> f64 {
    let off = angle_rad - centre_rad;
    libm::round((off - libm::remainder(off, 2.0 * PI)) / (2.0 * PI))
}

/// How often a motion leaves the turn about a centre.
fn breaks(samples: &[Turning], centre_rad: f64) -> usize {
    let turns: Vec<f64> =
        instants(samples).map(|i| turn_of(i.angle_rad, centre_rad)).collect();
    turns.windows(2).filter(|pair| pair[0] != pair[1]).count()
}

/// The motion within half a turn of the centre, cut where it leaves it at one edge and
/// comes in at the other.
fn wrapped(samples: &[Turning], centre_rad: f64) -> Vec<Vec<Instant>> {
    let mut runs = Vec::new();
    let mut run: Vec<Instant> = Vec::new();
    let mut before: Option<Instant> = None;
    for now in instants(samples) {
        let turn = turn_of(now.angle_rad, centre_rad);
        if let Some(before) = before {
            let mut from = turn_of(before.angle_rad, centre_rad);
            while from != turn {
                let way = (turn - from).signum();
                let edge_rad = centre_rad + 2.0 * PI * from + way * PI;
                let whole = now.angle_rad - before.angle_rad;
                let share = ((edge_rad - before.angle_rad) / whole).clamp(0.0, 1.0);
                let time_s = before.time_s + share * (now.time_s - before.time_s);
                run.push(Instant { time_s, angle_rad: centre_rad + way * PI });
                runs.push(std::mem::take(&mut run));
                run.push(Instant { time_s, angle_rad: centre_rad - way * PI });
                from += way;
            }
        }
        run.push(Instant { angle_rad: now.angle_rad - 2.0 * PI * turn, ..now });
        before = Some(now);
    }
    runs.push(run);
    runs.retain(|run| !run.is_empty());
    runs
}

/// The one of the two sides, or of their next turns, on which a motion ends.
fn nearest(rest_rad: f64, runs: Option<&Vec<Vec<Instant>>>, centre_rad: f64) -> f64 {
    let last = runs.and_then(|runs| runs.last()?.last());
    let end = last.map_or(centre_rad, |i| i.angle_rad);
    let mut best = rest_rad;
    for one in [rest_rad, -rest_rad, 2.0 * PI - rest_rad, 2.0 * PI + rest_rad] {
        let shown = (one - centre_rad).abs() <= PI + 1e-9;
        if shown && (one - end).abs() < (best - end).abs() {
            best = one;
        }
    }
    best
}

fn line(dashed: bool) -> Style {
    if dashed {
        Style::line(Colour::Soft, 2.0).dashed(&[6.0, 4.0])
    } else {
        Style::line(Colour::Ink, 2.5)
    }
}

fn band_style() -> Style {
    Style::line(Colour::Fulcrum, 1.0).dashed(&[2.0, 3.0]).filled(Colour::Fin)
}

/// Where the curves are drawn, and what its edges mean.
struct Plot {
    area: Area,
    duration_s: f64,
    top_deg: f64,
    bottom_deg: f64,
    step_deg: f64,
}

impl Plot {
    /// As many whole steps as the curves and the band's middle need, nose first with them.
    fn new(
        runs: &[Vec<Vec<Instant>>],
        rest_rad: Option<f64>,
        duration_s: f64,
        width_px: f64,
    ) -> Self {
        let angles = runs.iter().flatten().flatten().map(|i| i.angle_rad);
        let (low, high) = angles
            .chain(rest_rad)
            .map(f64::to_degrees)
            .fold((0.0_f64, 0.0_f64), |(low, high), a| (low.min(a), high.max(a)));
        // A rounding of the last bits must not add a step.
        let whole = |step: f64| {
            let up = ((high / step - 1e-6).ceil() * step).max(step);
            (up, ((low / step + 1e-6).floor() * step).min(0.0))
        };
        let (top, bottom) = whole(45.0);
        let step_deg = if top - bottom > 180.0 { 90.0 } else { 45.0 };
        let (top_deg, bottom_deg) = whole(step_deg);
        let (left, right) = (LEFT, width_px - RIGHT);
        let area = Area { left, right, top: TOP, bottom: TOP + HEIGHT };
        Self { area, duration_s, top_deg, bottom_deg, step_deg }
    }

    fn x(&self, time_s: f64) -> f64 {
        let share = (time_s / self.duration_s).clamp(0.0, 1.0);
        self.area.left + (self.area.right - self.area.left) * share
    }

    fn y(&self, degrees: f64) -> f64 {
        let share = (self.top_deg - degrees) / (self.top_deg - self.bottom_deg);
        self.area.top + (self.area.bottom - self.area.top) * share
    }

    fn point(&self, i: Instant) -> Point {
        Point { x: self.x(i.time_s), y: self.y(i.angle_rad.to_degrees()) }
    }

    /// The part of the band that the plot shows.
    fn band(&self, rest_rad: f64) -> Item {
        let within = |a: f64| a.to_degrees().clamp(self.bottom_deg, self.top_deg);
        let band = Area {
            top: self.y(within(rest_rad + BAND_RAD)),
            bottom: self.y(within(rest_rad - BAND_RAD)),
            ..self.area
        };
        Item::Path { path: band.outline(), style: band_style() }
    }

    fn angles(&self) -> Vec<Item> {
        let mut lines = Path::default();
        let mut items = Vec::new();
        let mut degrees = self.bottom_deg;
        while degrees <= self.top_deg + 1e-6 {
            let y = self.y(degrees);
            let (left, right) = (self.area.left, self.area.right);
            lines.line(Point { x: left, y }, Point { x: right, y });
            // Past tail first it is nearer to count from the other side.
            let words = match libm::remainder(degrees, 360.0) {
                0.0 => words::drawing_nose_first().into(),
                side if side.abs() == 180.0 => words::drawing_tail_first().into(),
                side => format!("{}°", words::Number::trimmed(side, 0)),
            };
            let at = Point { x: left - 6.0, y: y + 4.5 };
            items.push(Item::text(at, Anchor::End, words, Colour::Ink, false));
            degrees += self.step_deg;
        }
        items.push(Item::text(
            Point { x: 6.0, y: self.area.top - 17.0 },
            Anchor::Start,
            words::drawing_angle_axis(),
            Colour::Ink,
            true,
        ));
        items.insert(0, Item::grid(lines));
        items
    }

    fn times(&self) -> Vec<Item> {
        let px_per_s = (self.area.right - self.area.left) / self.duration_s;
        let step_s = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0]
            .into_iter()
            .find(|step| step * px_per_s >= 44.0)
            .unwrap_or(100.0);
        let mut lines = Path::default();
        let mut items = Vec::new();
        for k in 0_u32.. {
            let time_s = f64::from(k) * step_s;
            if time_s > self.duration_s + 1e-9 {
                break;
            }
            let x = self.x(time_s);
            let (top, bottom) = (self.area.top, self.area.bottom);
            lines.line(Point { x, y: top }, Point { x, y: bottom + 4.0 });
            let decimals = u8::from(step_s < 1.0);
            let words = words::Number::fixed(time_s, decimals).to_string();
            let at = Point { x, y: bottom + 17.0 };
            items.push(Item::text(at, Anchor::Middle, words, Colour::Ink, false));
        }
        items.push(Item::text(
            Point { x: self.area.middle().x, y: self.area.bottom + 34.0 },
            Anchor::Middle,
            words::drawing_time_axis(),
            Colour::Ink,
            false,
        ));
        items.insert(0, Item::grid(lines));
        items
    }

    /// A run, of which each column of pixels keeps its highest and its lowest point.
    fn simplified(&self, run: &[Instant]) -> Vec<Point> {
        let points: Vec<Point> = run.iter().map(|&i| self.point(i)).collect();
        let column = |p: &Point| (p.x / COLUMN_PX).floor();
        let mut kept: Vec<Point> = Vec::new();
        for chunk in points.chunk_by(|a, b| column(a) == column(b)) {
            let by_height =
                |a: &(usize, &Point), b: &(usize, &Point)| a.1.y.total_cmp(&b.1.y);
            let high = chunk.iter().enumerate().min_by(by_height).map_or(0, |(i, _)| i);
            let low = chunk.iter().enumerate().max_by(by_height).map_or(0, |(i, _)| i);
            let (first, last) = (high.min(low), high.max(low));
            kept.push(chunk[first]);
            if last > first {
                kept.push(chunk[last]);
            }
        }
        // A run begins and ends where it does: at an edge, if it goes on at the other.
        if let (Some(first), Some(last)) = (points.first(), points.last()) {
            if kept.first() != Some(first) {
                kept.insert(0, *first);
            }
            if kept.last() != Some(last) {
                kept.push(*last);
            }
        }
        kept
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::swing::examples;
    use noseward_stability::Trajectory;

    fn curve<'a>(samples: &'a [Turning], dashed: bool, label: &'a str) -> SwingCurve<'a> {
        SwingCurve { samples, dashed, label }
    }

    /// The runs of each curve: the paths in the style of a curve.
    fn drawn(scene: &Scene) -> Vec<Vec<Vec<Point>>> {
        let items = scene.groups[0].items.iter();
        let curves = items.filter_map(|item| match item {
            Item::Path { path, style }
                if *style == line(false) || *style == line(true) =>
            {
                let runs: Vec<Vec<Point>> =
                    path.runs.iter().map(|(run, _)| run.clone()).collect();
                let is_sample = runs.iter().flatten().any(|p| p.y > TOP + HEIGHT + 1.0);
                (!is_sample).then_some(runs)
            }
            Item::Path { .. } | Item::Dot { .. } => None,
            Item::Text { .. }
            | Item::Part { .. }
            | Item::Grip { .. }
            | Item::Placed { .. } => None,
        });
        curves.collect()
    }

    fn no_jumps(scene: &Scene) -> usize {
        let curves = drawn(scene);
        assert!(!curves.is_empty());
        for pair in curves.iter().flatten().flat_map(|run| run.windows(2)) {
            let jump = (pair[1].y - pair[0].y).abs();
            assert!(jump < HEIGHT / 4.0, "{pair:?}");
        }
        curves[0].len()
    }

    /// Turning over and over, at a steady rate.
    fn tumbling(rate_rad_per_s: f64, duration_s: f64) -> Vec<Turning> {
        (0..)
            .map(|k| f64::from(k) * Trajectory::STEP_S)
            .take_while(|&time_s| time_s <= duration_s + 1e-9)
            .map(|time_s| Turning {
                time_s,
                angle_rad: 1.0 + rate_rad_per_s * time_s,
                rate_rad_per_s,
                ..Turning::default()
            })
            .collect()
    }

    #[test]
    fn words_stay_clear_of_lines_and_of_each_other() {
        for (_, swing) in examples() {
            let alone = swing.air_alone();
            for start_deg in [0.0_f64, 60.0, 110.0, 180.0] {
                let start = start_deg.to_radians();
                for (duration, width) in [
                    (0.3, 280.0),
                    (2.0, 280.0),
                    (6.0, 360.0),
                    (20.0, 900.0),
                    (45.0, 600.0),
                ] {
                    let (a, b) = (
                        swing.trajectory(start, duration),
                        alone.trajectory(start, duration),
                    );
                    let scene = swing_graph(
                        &[
                            curve(&a.samples, false, "on the string"),
                            curve(&b.samples, true, "if the spin did not help it along"),
                        ],
                        swing.settling(start).rest_rad,
                        Some(duration / 3.0),
                        width,
                    );
                    let which = format!("{start_deg} for {duration} s at {width}");
                    words_keep_apart(&scene, &which);
                    lines_miss_words(&scene, &[], &which);
                    let keys = [scene.groups[0].key, scene.groups[1].key];
                    assert_eq!(keys, ["graph", "cursor"]);
                }
            }
        }
    }

    #[test]
    fn a_rocket_that_turns_over_breaks_its_line() {
        for rate in [25.0, -25.0] {
            let samples = tumbling(rate, 2.0);
            let scene = swing_graph(&[curve(&samples, false, "")], None, None, 900.0);
            let runs = no_jumps(&scene);
            // 50 radians are just short of 8 turns.
            assert!((8..=9).contains(&runs), "{runs}");
            // Each break lies at the edges: one run ends there, the next begins opposite.
            let curves = drawn(&scene);
            for pair in curves[0].windows(2) {
                let (end, start) = (pair[0].last().unwrap(), pair[1].first().unwrap());
                assert!(((end.y - start.y).abs() - HEIGHT).abs() < 1e-6, "{end:?}");
                assert!((end.x - start.x).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn motions_of_the_examples_have_no_jumps() {
        for (_, swing) in examples() {
            for rate in [0.0, 15.0, -25.0] {
                for start in [0.1, 1.6, 3.1] {
                    let moved = swing.trajectory_from(start, rate, 2.0);
                    let curves = [curve(&moved.samples, false, "")];
                    no_jumps(&swing_graph(&curves, None, None, 900.0));
                }
            }
        }
    }

    /// Back and forth through tail first: one line, for the angles are cut at nose first.
    #[test]
    fn going_through_tail_first_breaks_nothing() {
        let samples: Vec<Turning> = (0..300)
            .map(|k| {
                let time_s = f64::from(k) * Trajectory::STEP_S;
                let angle_rad = PI + libm::sin(6.0 * time_s);
                Turning { time_s, angle_rad, ..Turning::default() }
            })
            .collect();
        let scene = swing_graph(&[curve(&samples, false, "")], Some(PI), None, 600.0);
        assert_eq!(drawn(&scene)[0].len(), 1);
    }

    #[test]
    fn a_long_curve_keeps_a_point_a_pixel_and_its_peaks() {
        let (_, swing) = &examples()[0];
        let moved = swing.undamped().trajectory(1.0, 40.0);
        assert!(moved.samples.len() > 4_000);
        let scene = swing_graph(&[curve(&moved.samples, false, "")], None, None, 400.0);
        let points = drawn(&scene)[0].concat();
        let px = 400.0 - LEFT - RIGHT;
        #[expect(clippy::cast_precision_loss, reason = "a few hundred")]
        let count = points.len() as f64;
        assert!(count <= px + 4.0, "{count}");
        let short = swing.undamped().trajectory(1.0, 1.0);
        let scene = swing_graph(&[curve(&short.samples, false, "")], None, None, 400.0);
        let top = |points: &[Point]| points.iter().map(|p| p.y).fold(f64::MAX, f64::min);
        assert!((top(&points) - top(&drawn(&scene)[0].concat())).abs() < 0.5);
    }

    #[test]
    fn a_place_on_the_graph_is_a_time() {
        assert_eq!(swing_graph_time_s(LEFT, 600.0, 8.0), 0.0);
        assert_eq!(swing_graph_time_s(600.0 - RIGHT, 600.0, 8.0), 8.0);
        assert_eq!(swing_graph_time_s(0.0, 600.0, 8.0), 0.0);
        let cursor = swing_cursor(Some(3.0), 8.0, 600.0);
        let Item::Path { path, .. } = &cursor.items[0] else { panic!() };
        let x = path.runs[0].0[0].x;
        assert!((swing_graph_time_s(x, 600.0, 8.0) - 3.0).abs() < 1e-9);
    }

    /// The band lies about where the line ends, on the side on which it ends.
    #[test]
    fn the_band_holds_the_end_of_the_line() {
        let mut held = 0;
        for (_, swing) in examples() {
            for start_deg in [-170.0_f64, -60.0, 30.0, 100.0, 200.0, 370.0] {
                let start = start_deg.to_radians();
                let settling = swing.settling(start);
                if settling.when.is_none_or(|when| when.on_axis_s() > 12.0) {
                    continue;
                }
                let moved = swing.trajectory(start, 20.0);
                let curves = [curve(&moved.samples, false, "")];
                let scene = swing_graph(&curves, settling.rest_rad, None, 900.0);
                let Item::Path { path, .. } = &scene.groups[0].items[0] else { panic!() };
                let ys = || path.runs[0].0.iter().map(|p| p.y);
                let (top, bottom) =
                    (ys().fold(f64::MAX, f64::min), ys().fold(0.0, f64::max));
                let end = drawn(&scene)[0].concat().last().unwrap().y;
                assert!((top - 1e-6..=bottom + 1e-6).contains(&end), "{start_deg}");
                held += 1;
            }
        }
        assert!(held > 8, "{held}");
    }

    #[test]
    fn nothing_to_draw_is_drawn_as_nothing() {
        let bad = [Turning { time_s: f64::NAN, ..Turning::default() }];
        for curves in [vec![], vec![curve(&[], false, "a")], vec![curve(&bad, true, "b")]]
        {
            let scene = swing_graph(&curves, None, Some(f64::NAN), 280.0);
            words_keep_apart(&scene, "nothing");
            assert_eq!(scene.groups[1].items, []);
        }
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_stay_clear_of_lines_and_of_each_other);
    }
}
