//! Small pictures of where the ruler goes.

use crate::palette::Colour;
use crate::scene::{Item, Path, Point, Scene, Style};

/// Width and height of a picture, in CSS pixels.
pub const PICTURE_SIZE_PX: f64 = 44.0;

/// What is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Picture {
    /// Across a bottle or tube.
    Width,
    /// Along the straight part.
    Straight,
    /// Along the shoulder.
    Shoulder,
    /// Along the nose.
    NoseLength,
    /// Along the neck.
    NeckLength,
    /// Across the neck.
    NeckWidth,
    /// Along the edge of a fin that is on the body.
    FinRoot,
    /// Along the outer edge of a fin.
    FinTip,
    /// From the body to the outer edge of a fin.
    FinSpan,
    /// From the front of the root back to the front of the tip.
    FinSweep,
    /// From the nose tip to the front of the fins.
    FinStart,
    /// How many fins.
    FinCount,
    /// From the nose tip to a weight.
    WeightPlace,
    /// From the nose tip to the string.
    HangingPoint,
    /// On the kitchen scales.
    Scales,
    /// From the nose tip of the cut-out to the edge on which it balances.
    Balance,
}

impl Picture {
    /// Every picture.
    pub const ALL: [Self; 16] = [
        Self::Width,
        Self::Straight,
        Self::Shoulder,
        Self::NoseLength,
        Self::NeckLength,
        Self::NeckWidth,
        Self::FinRoot,
        Self::FinTip,
        Self::FinSpan,
        Self::FinSweep,
        Self::FinStart,
        Self::FinCount,
        Self::WeightPlace,
        Self::HangingPoint,
        Self::Scales,
        Self::Balance,
    ];
}

type Run = &'static [(f64, f64)];

const NOSE: Run = &[(15.0, 14.0), (17.0, 9.0), (22.0, 3.0), (27.0, 9.0), (29.0, 14.0)];
const TUBE: Run = &[(15.0, 14.0), (15.0, 29.0), (29.0, 29.0), (29.0, 14.0), (15.0, 14.0)];
const SHOULDER: Run =
    &[(15.0, 29.0), (16.0, 32.0), (19.0, 36.0), (25.0, 36.0), (28.0, 32.0), (29.0, 29.0)];
const NECK: Run = &[(19.0, 36.0), (19.0, 41.0), (25.0, 41.0), (25.0, 36.0)];
const RIGHT_FIN: Run = &[(29.0, 20.0), (38.0, 28.0), (38.0, 38.0), (29.0, 35.0)];
const LEFT_FIN: Run = &[(15.0, 20.0), (6.0, 28.0), (6.0, 38.0), (15.0, 35.0)];
/// A fin by itself, large.
const BIG_FIN: Run =
    &[(12.0, 6.0), (31.0, 18.0), (31.0, 36.0), (12.0, 38.0), (12.0, 6.0)];
const BIG_BODY: Run = &[(12.0, 2.0), (12.0, 42.0)];
/// A rocket's side view in one piece of card.
const CUT_OUT: Run = &[
    (22.0, 3.0),
    (29.0, 14.0),
    (29.0, 20.0),
    (38.0, 28.0),
    (38.0, 38.0),
    (29.0, 35.0),
    (25.0, 41.0),
    (19.0, 41.0),
    (15.0, 35.0),
    (6.0, 38.0),
    (6.0, 28.0),
    (15.0, 20.0),
    (15.0, 14.0),
    (22.0, 3.0),
];
const PAN: Run = &[(8.0, 16.0), (36.0, 16.0), (32.0, 21.0), (12.0, 21.0), (8.0, 16.0)];
const BOX: Run = &[(13.0, 21.0), (10.0, 38.0), (34.0, 38.0), (31.0, 21.0)];

/// The picture of one measurement: the thing in ink, the distance in the colour of the
/// wind with a stop at each end. It says nothing to those who cannot see it: the label
/// beside it does.
#[must_use]
pub fn picture(what: Picture) -> Scene {
    let rocket: &[Run] = &[NOSE, TUBE, SHOULDER, NECK];
    let finned: &[Run] = &[NOSE, TUBE, SHOULDER, NECK, RIGHT_FIN, LEFT_FIN];
    let big_fin: &[Run] = &[BIG_FIN, BIG_BODY];
    let mut items = Vec::new();
    let mut draw = |runs: &[Run], from: (f64, f64), to: (f64, f64)| {
        items.push(ink(runs));
        items.extend(distance(from, to));
    };
    match what {
        Picture::Width => draw(rocket, (15.0, 22.0), (29.0, 22.0)),
        Picture::Straight => draw(rocket, (34.0, 14.0), (34.0, 29.0)),
        Picture::Shoulder => draw(rocket, (34.0, 29.0), (34.0, 36.0)),
        Picture::NoseLength => draw(rocket, (34.0, 3.0), (34.0, 14.0)),
        Picture::NeckLength => draw(rocket, (30.0, 36.0), (30.0, 41.0)),
        Picture::NeckWidth => draw(rocket, (19.0, 39.0), (25.0, 39.0)),
        Picture::FinRoot => draw(big_fin, (7.0, 6.0), (7.0, 38.0)),
        Picture::FinTip => draw(big_fin, (36.0, 18.0), (36.0, 36.0)),
        Picture::FinSpan => draw(big_fin, (12.0, 28.0), (31.0, 28.0)),
        Picture::FinSweep => draw(big_fin, (36.0, 6.0), (36.0, 18.0)),
        Picture::FinStart => draw(finned, (40.5, 3.0), (40.5, 20.0)),
        Picture::WeightPlace => {
            draw(rocket, (36.0, 3.0), (36.0, 11.0));
            items.push(Item::Dot {
                centre: Point { x: 22.0, y: 11.0 },
                radius: 3.0,
                style: Style::area(Colour::Ink),
            });
        }
        Picture::HangingPoint => {
            draw(rocket, (36.0, 3.0), (36.0, 21.0));
            items.push(ink(&[&[(22.0, 21.0), (4.0, 21.0)]]));
        }
        Picture::FinCount => {
            items.push(Item::Dot {
                centre: Point { x: 22.0, y: 22.0 },
                radius: 8.0,
                style: Style::line(Colour::Ink, 1.5),
            });
            let arms: [Run; 4] = [
                &[(22.0, 14.0), (22.0, 3.0)],
                &[(30.0, 22.0), (41.0, 22.0)],
                &[(22.0, 30.0), (22.0, 41.0)],
                &[(14.0, 22.0), (3.0, 22.0)],
            ];
            items.push(Item::Path {
                path: joined(&arms),
                style: Style::line(Colour::Wind, 2.5),
            });
        }
        Picture::Balance => {
            draw(&[CUT_OUT], (40.5, 3.0), (40.5, 24.0));
            items.push(Item::Path {
                path: Path::open(
                    [(2.0, 24.0), (37.5, 24.0)].map(|(x, y)| Point { x, y }).to_vec(),
                ),
                style: Style::line(Colour::Ink, 3.0),
            });
        }
        Picture::Scales => {
            items.push(ink(&[PAN, BOX]));
            items.push(Item::Dot {
                centre: Point { x: 22.0, y: 10.0 },
                radius: 5.0,
                style: Style::area(Colour::Wind),
            });
        }
    }
    Scene::picture(PICTURE_SIZE_PX, items)
}

/// All lines of the thing as one path: a page with many pictures has fewer elements.
fn ink(runs: &[Run]) -> Item {
    Item::Path { path: joined(runs), style: Style::line(Colour::Ink, 1.5) }
}

fn joined(runs: &[Run]) -> Path {
    let points = |run: &Run| run.iter().map(|&(x, y)| Point { x, y }).collect();
    Path { runs: runs.iter().map(|run| (points(run), false)).collect() }
}

fn distance(from: (f64, f64), to: (f64, f64)) -> [Item; 1] {
    let stop = 3.0;
    let (dx, dy) = if from.0 == to.0 { (stop, 0.0) } else { (0.0, stop) };
    let mut path = Path::default();
    let point = |(x, y): (f64, f64), k: f64| Point { x: x + k * dx, y: y + k * dy };
    path.line(point(from, 0.0), point(to, 0.0));
    path.line(point(from, -1.0), point(from, 1.0));
    path.line(point(to, -1.0), point(to, 1.0));
    [Item::Path { path, style: Style::line(Colour::Wind, 2.5) }]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::svg_document;

    #[test]
    fn every_picture_is_different_and_within_its_square() {
        let mut seen = Vec::new();
        for what in Picture::ALL {
            let scene = picture(what);
            for item in &scene.groups[0].items {
                if let Item::Path { path, .. } = item {
                    for point in path.runs.iter().flat_map(|(points, _)| points) {
                        let inside = 0.0..=PICTURE_SIZE_PX;
                        assert!(inside.contains(&point.x), "{what:?}");
                        assert!(inside.contains(&point.y), "{what:?}");
                    }
                }
            }
            let text = svg_document(&scene, None);
            assert!(!seen.contains(&text), "{what:?}");
            seen.push(text);
        }
    }
}
