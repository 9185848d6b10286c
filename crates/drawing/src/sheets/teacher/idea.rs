//! The idea: two points, what finds them, and why one must be nearer the nose.

use std::f64::consts::PI;

use noseward_words as words;

use crate::palette::Colour;
use crate::paper::{Flow, Page, PaperSize};
use crate::scene::{Item, Path, Point, Style};

/// The rocket of the pictures, in millimetres of paper from its nose tip.
const LENGTH: f64 = 60.0;
const HALF: f64 = 5.0;
const NOSE: f64 = 12.0;
/// A fin, from the body outwards: on the lower side.
const FIN: [(f64, f64); 4] = [(46.0, HALF), (54.0, 13.0), (62.0, 13.0), (LENGTH, HALF)];
/// Where its clay lets it hang level.
const MASS: f64 = 24.0;
/// The middle of its side view: a test says so.
const PRESSURE: f64 = 36.9;
/// Half the width of the room.
const MIDDLE: f64 = 93.0;
const LINE: f64 = 0.4;
/// The heights of the pictures: of a level rocket, and of one that is turned.
pub(super) const LEVEL: f64 = 30.0;
const TURNED: f64 = 41.0;

pub(super) fn pages(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_idea().as_str());
    let parts = [
        (words::idea_string(), words::idea_mass(), LEVEL, string_finds()),
        (words::idea_cut_out(), words::idea_pressure(), LEVEL, cut_out_finds()),
        (words::idea_nose(), words::idea_turns(), TURNED, turned()),
    ];
    for (heading, text, height, picture) in parts {
        flow.heading(2, heading.as_str());
        flow.paragraph(text.as_str());
        flow.drawing(heading.as_str(), height, picture);
    }
    flow.paragraph(words::idea_separation().as_str());
    flow.pages()
}

/// The side view from the nose round to the tail, in its own millimetres.
fn outline() -> Vec<Point> {
    let at = |(x, y): (f64, f64)| Point { x, y };
    let nose = (0..=24).map(|i| {
        let (sin, cos) = libm::sincos(PI * (0.5 + f64::from(i) / 24.0));
        Point { x: NOSE + NOSE * cos, y: -HALF * sin }
    });
    let upper = FIN.into_iter().rev().map(|(x, y)| at((x, -y)));
    nose.chain(FIN.map(at)).chain(upper).collect()
}

/// Points of the rocket on the picture: its centre of mass in a place, its nose turned up.
struct Held {
    at: Point,
    up_deg: f64,
}

impl Held {
    fn of(&self, Point { x, y }: Point) -> Point {
        let (sin, cos) = libm::sincos(self.up_deg.to_radians());
        let x = x - MASS;
        Point { x: self.at.x + x * cos - y * sin, y: self.at.y + x * sin + y * cos }
    }

    fn rocket(&self, fill: Colour) -> Item {
        let points = outline().into_iter().map(|point| self.of(point)).collect();
        let style = Style::line(Colour::Ink, LINE).filled(fill);
        Item::Path { path: Path::closed(points), style }
    }

    /// The clay in its nose.
    fn clay(&self) -> Item {
        let centre = self.of(Point { x: 9.0, y: 0.0 });
        Item::Dot { centre, radius: 3.4, style: Style::area(Colour::Fulcrum) }
    }

    /// The fulcrum: it touches the axis from below.
    fn fulcrum(&self) -> Item {
        let corner = |x: f64, y: f64| self.of(Point { x: MASS + x, y });
        let corners = vec![corner(0.0, 0.0), corner(2.6, 4.6), corner(-2.6, 4.6)];
        Item::Path { path: Path::closed(corners), style: Style::area(Colour::Fulcrum) }
    }
}

fn line(points: Vec<Point>, colour: Colour) -> Item {
    Item::Path { path: Path::open(points), style: Style::line(colour, LINE) }
}

/// An arrow of one colour.
fn arrow(from: Point, to: Point, colour: Colour) -> [Item; 2] {
    let (x, y) = (to.x - from.x, to.y - from.y);
    let length = libm::hypot(x, y);
    let (x, y) = (2.6 * x / length, 2.6 * y / length);
    let foot = Point { x: to.x - x, y: to.y - y };
    let corner = |side: f64| Point { x: foot.x - side * y, y: foot.y + side * x };
    let head = Path::closed(vec![to, corner(0.5), corner(-0.5)]);
    [
        line(vec![from, foot], colour),
        Item::Path { path: head, style: Style::area(colour) },
    ]
}

/// Level, with its centre of mass so far from the left.
fn level(x: f64) -> Held {
    Held { at: Point { x, y: 16.0 }, up_deg: 0.0 }
}

/// It hangs level from a string.
pub(super) fn hung(x: f64) -> Vec<Item> {
    let held = level(x);
    let string = vec![Point { x, y: 0.5 }, Point { x, y: held.at.y + HALF }];
    vec![held.rocket(Colour::Sheet), held.clay(), line(string, Colour::Ink)]
}

fn string_finds() -> Vec<Item> {
    let mut items = hung(MIDDLE);
    items.push(level(MIDDLE).fulcrum());
    items
}

/// Its cut-out lies level on a finger.
pub(super) fn balanced(x: f64) -> Vec<Item> {
    let held = level(x);
    let finger = held.of(Point { x: PRESSURE, y: HALF });
    let round = (0..=16).map(|i| {
        let (sin, cos) = libm::sincos(PI * f64::from(i) / 16.0);
        Point { x: finger.x + 4.0 * cos, y: finger.y + 4.0 - 4.0 * sin }
    });
    let foot = |x: f64| Point { x: finger.x + x, y: LEVEL - 0.5 };
    let hand = [foot(4.0)].into_iter().chain(round).chain([foot(-4.0)]).collect();
    vec![held.rocket(Colour::Ruler), line(hand, Colour::Ink)]
}

fn cut_out_finds() -> Vec<Item> {
    let mut items = balanced(MIDDLE);
    let to = level(MIDDLE).of(Point { x: PRESSURE, y: 0.0 });
    items.extend(arrow(Point { x: to.x, y: 1.0 }, to, Colour::Wind));
    items
}

/// The air pushes behind the centre of mass, and brings the nose round.
fn turned() -> Vec<Item> {
    let held = Held { at: Point { x: MIDDLE, y: 14.0 }, up_deg: 17.0 };
    let mut items = vec![held.rocket(Colour::Sheet), held.clay(), held.fulcrum()];
    for y in [8.0, 14.0, 20.0] {
        let wind = [Point { x: 38.0, y }, Point { x: 56.0, y }];
        items.extend(arrow(wind[0], wind[1], Colour::Wind));
    }
    let along = |x: f64, y: f64| held.of(Point { x, y });
    items.extend(arrow(along(PRESSURE, 16.0), along(PRESSURE, 0.0), Colour::Wind));
    items.extend(arrow(along(-3.0, 0.0), along(-3.0, 11.0), Colour::Ink));
    items
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The centroid of the polygon, by the shoelace formula.
    #[test]
    fn the_finger_is_where_the_cut_out_balances() {
        let points = outline();
        let next = points.iter().cycle().skip(1);
        let (mut area, mut moment) = (0.0, 0.0);
        for (a, b) in points.iter().zip(next) {
            let cross = a.x * b.y - b.x * a.y;
            area += cross / 2.0;
            moment += (a.x + b.x) * cross / 6.0;
        }
        assert!((moment / area - PRESSURE).abs() < 0.1, "{}", moment / area);
        const { assert!(MASS < PRESSURE, "the centre of mass is nearer the nose") };
    }
}
