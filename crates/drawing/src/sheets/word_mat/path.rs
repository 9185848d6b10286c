//! Paths as SVG writes them (SVG 1.1, chapters 7.6 and 8), with the commands and the transforms
//! that the pictures of the word mat use; curves become short strokes.

use core::f64::consts::PI;

use noseward_lesson::decimal;

use crate::scene::{Path, Point};

/// Strokes that a curve becomes.
const STROKES: u32 = 12;

/// What `transform` does to points: `x` becomes `a x + c y + e`, `y` becomes `b x + d y + f`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Turned([f64; 6]);

impl Turned {
    /// Nothing.
    pub(super) const NOT: Self = Self([1.0, 0.0, 0.0, 1.0, 0.0, 0.0]);

    /// `translate`, `scale` and `rotate`, the last one first.
    pub(super) fn of(text: &str) -> Self {
        let calls = text.split(')').filter_map(|call| call.split_once('('));
        calls.fold(Self::NOT, |all, (name, numbers)| {
            let numbers: Vec<f64> = Tokens(numbers).numbers();
            let number = |i: usize| numbers.get(i).copied().unwrap_or(0.0);
            match name {
                "translate" => all.then([1.0, 0.0, 0.0, 1.0, number(0), number(1)]),
                "scale" => all.then([number(0), 0.0, 0.0, number(0), 0.0, 0.0]),
                _ => {
                    let (sin, cos) = libm::sincos(number(0) * PI / 180.0);
                    all.then([1.0, 0.0, 0.0, 1.0, number(1), number(2)])
                        .then([cos, sin, -sin, cos, 0.0, 0.0])
                        .then([1.0, 0.0, 0.0, 1.0, -number(1), -number(2)])
                }
            }
        })
    }

    /// This one after another one.
    fn then(self, [a, b, c, d, e, f]: [f64; 6]) -> Self {
        let [p, q, r, s, t, u] = self.0;
        let along = |x: f64, y: f64| [p * x + r * y, q * x + s * y];
        let ([a, b], [c, d], [e, f]) = (along(a, b), along(c, d), along(e, f));
        Self([a, b, c, d, e + t, f + u])
    }

    fn point(self, Point { x, y }: Point) -> Point {
        let [a, b, c, d, e, f] = self.0;
        Point { x: a * x + c * y + e, y: b * x + d * y + f }
    }
}

/// The letters and numbers of a path.
struct Tokens<'a>(&'a str);

impl Tokens<'_> {
    /// All numbers that are left.
    fn numbers(mut self) -> Vec<f64> {
        core::iter::from_fn(|| self.number()).collect()
    }

    fn command(&mut self) -> Option<char> {
        self.0 = self.0.trim_start_matches([' ', ',']);
        let letter = self.0.chars().next().filter(char::is_ascii_alphabetic)?;
        self.0 = &self.0[1..];
        Some(letter)
    }

    fn number(&mut self) -> Option<f64> {
        let text = self.0.trim_start_matches([' ', ',']);
        let (sign, digits) = match text.strip_prefix('-') {
            Some(digits) => (-1.0, digits),
            None => (1.0, text),
        };
        let end =
            |text: &str| text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
        let (whole, rest) = digits.split_at(end(digits));
        let (part, rest) = match rest.strip_prefix('.') {
            Some(behind) => behind.split_at(end(behind)),
            None => ("", rest),
        };
        let value = decimal(whole, part)?;
        self.0 = rest;
        Some(sign * value)
    }

    fn point(&mut self, from: Point) -> Option<Point> {
        Some(Point { x: from.x + self.number()?, y: from.y + self.number()? })
    }
}

/// The pen.
struct Pen {
    path: Path,
    turned: Turned,
    at: Point,
    /// Where the curve before had its last handle.
    handle: Point,
}

impl Pen {
    fn to(&mut self, point: Point) {
        self.at = point;
        let point = self.turned.point(point);
        match self.path.runs.last_mut().filter(|(_, is_closed)| !is_closed) {
            Some((points, _)) => points.push(point),
            None => self.path.runs.push((vec![point], false)),
        }
    }

    /// A cubic curve.
    fn curve(&mut self, [one, two, end]: [Point; 3]) {
        let start = self.at;
        for i in 1..=STROKES {
            let t = f64::from(i) / f64::from(STROKES);
            let s = 1.0 - t;
            let shares = [s * s * s, 3.0 * s * s * t, 3.0 * s * t * t, t * t * t];
            let along = |of: fn(Point) -> f64| {
                [start, one, two, end]
                    .map(of)
                    .iter()
                    .zip(shares)
                    .map(|(v, k)| v * k)
                    .sum()
            };
            self.to(Point { x: along(|p| p.x), y: along(|p| p.y) });
        }
        self.handle = two;
    }

    /// An arc of a circle, as SVG 1.1, F.6.5, finds its middle.
    fn arc(&mut self, radius: f64, is_large: bool, is_clockwise: bool, end: Point) {
        let start = self.at;
        let (half_x, half_y) = ((end.x - start.x) / 2.0, (end.y - start.y) / 2.0);
        let half = libm::hypot(half_x, half_y);
        let away = libm::sqrt((radius * radius - half * half).max(0.0)) / half.max(1e-9);
        let side = if is_large == is_clockwise { 1.0 } else { -1.0 };
        let middle = Point {
            x: start.x + half_x + side * away * half_y,
            y: start.y + half_y - side * away * half_x,
        };
        let angle = |p: Point| libm::atan2(p.y - middle.y, p.x - middle.x);
        let from = angle(start);
        let mut by = angle(end) - from;
        if is_clockwise && by < 0.0 {
            by += 2.0 * PI;
        } else if !is_clockwise && by > 0.0 {
            by -= 2.0 * PI;
        }
        let reach = libm::hypot(start.x - middle.x, start.y - middle.y);
        for i in 1..=2 * STROKES {
            let (sin, cos) =
                libm::sincos(from + by * f64::from(i) / f64::from(2 * STROKES));
            self.to(Point { x: middle.x + reach * cos, y: middle.y + reach * sin });
        }
    }
}

/// The path of a text, moved and turned.
pub(super) fn path(text: &str, turned: Turned) -> Path {
    let mut tokens = Tokens(text);
    let at = Point::default();
    let mut pen = Pen { path: Path::default(), turned, at, handle: at };
    let mut command = 'M';
    loop {
        if let Some(letter) = tokens.command() {
            command = letter;
            if matches!(letter, 'Z' | 'z') {
                if let Some((_, is_closed)) = pen.path.runs.last_mut() {
                    *is_closed = true;
                }
                continue;
            }
        }
        if step(&mut pen, &mut tokens, command).is_none() {
            return pen.path;
        }
    }
}

/// One command with its numbers; `None` at the end.
fn step(pen: &mut Pen, tokens: &mut Tokens<'_>, command: char) -> Option<()> {
    let from = if command.is_ascii_lowercase() { pen.at } else { Point::default() };
    let before = core::mem::replace(&mut pen.handle, pen.at);
    match command.to_ascii_uppercase() {
        'M' => {
            let point = tokens.point(from)?;
            pen.path.runs.push((Vec::new(), false));
            pen.to(point);
        }
        'H' => {
            let x = from.x + tokens.number()?;
            pen.to(Point { x, ..pen.at });
        }
        'V' => {
            let y = from.y + tokens.number()?;
            pen.to(Point { y, ..pen.at });
        }
        'C' => {
            let points = [tokens.point(from)?, tokens.point(from)?, tokens.point(from)?];
            pen.curve(points);
        }
        'S' => {
            let mirrored =
                Point { x: 2.0 * pen.at.x - before.x, y: 2.0 * pen.at.y - before.y };
            pen.curve([mirrored, tokens.point(from)?, tokens.point(from)?]);
        }
        'A' => {
            let radius = tokens.number()?;
            // The other radius, and how an ellipse would lie.
            let _ = (tokens.number()?, tokens.number()?);
            let (large, clockwise) = (tokens.number()?, tokens.number()?);
            let end = tokens.point(from)?;
            pen.arc(radius, large > 0.5, clockwise > 0.5, end);
        }
        _ => {
            let point = tokens.point(from)?;
            pen.to(point);
        }
    }
    if !matches!(command.to_ascii_uppercase(), 'C' | 'S') {
        pen.handle = pen.at;
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ends(text: &str, turned: Turned) -> Vec<(f64, f64)> {
        let path = path(text, turned);
        let points = path.runs.iter().filter_map(|(points, _)| points.last());
        let round = |value: f64| (value * 1000.0).round() / 1000.0;
        points.map(|p| (round(p.x), round(p.y))).collect()
    }

    #[test]
    fn commands_go_where_they_say() {
        assert_eq!(ends("M1 2L3-4", Turned::NOT), [(3.0, -4.0)]);
        assert_eq!(ends("M1 2h0M5 6V9H.5", Turned::NOT), [(1.0, 2.0), (0.5, 9.0)]);
        assert_eq!(ends("M1 2a5 5 0 1 0 10 0a5 5 0 1 0-10 0", Turned::NOT), [(1.0, 2.0)]);
        assert_eq!(
            ends("M28 16C26 10 29 8 32 8S38 10 36 16Z", Turned::NOT),
            [(36.0, 16.0)]
        );
        let closed = path("M0 0H9V9ZM1 1H2", Turned::NOT);
        assert_eq!(
            closed.runs.iter().map(|run| run.1).collect::<Vec<_>>(),
            [true, false]
        );
    }

    /// The half of a circle above its ends, and the one below.
    #[test]
    fn arcs_bulge_to_their_side() {
        for (sweep, y) in [("1", -5.0), ("0", 5.0)] {
            let path = path(&format!("M0 0A5 5 0 0 {sweep} 10 0"), Turned::NOT);
            let middle = path.runs[0].0[STROKES as usize];
            assert!(
                (middle.x - 5.0).abs() < 1e-9 && (middle.y - y).abs() < 1e-9,
                "{middle:?}"
            );
        }
        let long = path("M54 20A25 25 0 0 0 10 20", Turned::NOT);
        let top = long.runs[0].0.iter().map(|p| p.y).fold(f64::MAX, f64::min);
        let middle_y = 20.0 + libm::sqrt(25.0 * 25.0 - 22.0 * 22.0);
        assert!((top - (middle_y - 25.0)).abs() < 0.05, "{top}");
    }

    #[test]
    fn a_curve_is_smooth_where_it_goes_on() {
        let path = path("M28 16C26 10 29 8 32 8S38 10 36 16", Turned::NOT);
        let points = &path.runs[0].0;
        let at = STROKES as usize;
        assert!((points[at].y - 8.0).abs() < 1e-9);
        assert!((points[at - 1].y - points[at + 1].y).abs() < 0.02);
        assert!(((points[at - 1].x + points[at + 1].x) / 2.0 - 32.0).abs() < 0.02);
    }

    #[test]
    fn transforms_are_done_from_the_last_to_the_first() {
        assert_eq!(ends("M1 0", Turned::of("translate(10 5)scale(2)")), [(12.0, 5.0)]);
        assert_eq!(ends("M10 0", Turned::of("rotate(90)")), [(0.0, 10.0)]);
        assert_eq!(ends("M10 0", Turned::of("rotate(180 5 5)")), [(0.0, 10.0)]);
        let all = Turned::of("rotate(90)translate(-3-4)scale(.5)");
        assert_eq!(ends("M10 10", all), [(-1.0, 2.0)]);
    }
}
