//! How the air's push on a rocket that flies nearly straight is shared among its parts: a
//! bar for each, at its place on the rocket's own ruler.

use noseward_stability::{Design, Figures, Units};
use noseward_words::{self as words, Number};

use crate::axis::{Reach, axis_number, round_step_mm};
use crate::names::part_name;
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

const WIDTH_PX: f64 = 512.0;
const TOP_PX: f64 = 44.0;
const BODY_PX: f64 = 260.0;
const BOTTOM_PX: f64 = 14.0;
const RULER_PX: f64 = 46.0;
/// Where the bars stand, and how long the longest is to either side.
const ZERO_X: f64 = 190.0;
const LONGEST_PX: f64 = 120.0;
const BAR_PX: f64 = 9.0;
const LINE_PX: f64 = 16.0;
/// Numbers on the ruler stand at least this far apart.
const NUMBERS_APART_PX: f64 = 28.0;

/// One part's bar.
struct Bar {
    y: f64,
    length_px: f64,
    words: String,
}

/// The picture; `None` where the air pushes nothing nose-on.
#[must_use]
pub fn push_bars(design: &Design, figures: &Figures, units: Units) -> Option<Scene> {
    let pushed: Vec<(f64, f64, String)> = figures
        .parts
        .iter()
        .filter(|part| part.normal_force_slope_per_rad.abs() > 1e-9)
        .filter_map(|part| {
            let slope = part.normal_force_slope_per_rad;
            Some((part.nose_on_centre_m?, slope, part_name(design, part.part)))
        })
        .collect();
    let all: f64 = pushed.iter().map(|(_, slope, _)| slope.abs()).sum();
    let most = pushed.iter().map(|(_, slope, _)| slope.abs()).fold(0.0, f64::max);
    if pushed.is_empty() {
        return None;
    }
    let reach_m = pushed.iter().map(|&(at, ..)| at).fold(figures.length_m, f64::max);
    let y = |m: f64| TOP_PX + BODY_PX * (m / reach_m).max(0.0);
    let bar = |(at, slope, name): (f64, f64, String)| Bar {
        y: y(at),
        length_px: LONGEST_PX * slope / most,
        words: {
            let share = Number::fixed(slope.abs() / all * 100.0, 0);
            if slope < 0.0 {
                words::drawing_push_other_way(&name, share)
            } else {
                words::drawing_push_share(&name, share)
            }
        },
    };
    let mut bars: Vec<Bar> = Vec::new();
    for bar in pushed.into_iter().map(bar) {
        let before = bars.iter().take_while(|other| other.y <= bar.y).count();
        bars.insert(before, bar);
    }
    Some(Scene {
        width: WIDTH_PX,
        height: TOP_PX + BODY_PX + BOTTOM_PX,
        unit: Unit::Px,
        name: words::drawing_push().into(),
        groups: vec![
            Group { key: "ruler", items: ruler(reach_m, units, &y) },
            Group { key: "bars", items: drawn(&bars) },
        ],
    })
}

fn ruler(reach_m: f64, units: Units, y: &dyn Fn(f64) -> f64) -> Vec<Item> {
    let (left, right) = (8.0, 8.0 + RULER_PX);
    let corner = |x, m: f64| Point { x, y: y(m) };
    let mut items = vec![
        Item::text(
            Point { x: left, y: LINE_PX },
            Anchor::Start,
            words::drawing_from_nose(units.length_unit()),
            Colour::Ink,
            false,
        ),
        Item::Path {
            path: Path::closed(vec![
                corner(left, 0.0),
                corner(right, 0.0),
                corner(right, reach_m),
                corner(left, reach_m),
            ]),
            style: Style::line(Colour::Ink, 1.0).filled(Colour::Ruler),
        },
    ];
    let mut ticks = Path::default();
    let px_per_mm = BODY_PX / (reach_m * 1000.0);
    let step_mm = round_step_mm(units, |mm| mm * px_per_mm >= NUMBERS_APART_PX);
    for mm in Reach::of([0.0, reach_m * 1000.0]).multiples_mm(step_mm) {
        let at = corner(right, mm / 1000.0);
        ticks.line(at, Point { x: right - 10.0, ..at });
        let base = Point { x: right - 13.0, y: (at.y + 4.5).max(TOP_PX + 12.0) };
        items.push(Item::text(
            base,
            Anchor::End,
            axis_number(units, mm),
            Colour::Ink,
            false,
        ));
    }
    items.push(Item::Path { path: ticks, style: Style::line(Colour::Ink, 1.0) });
    items
}

fn drawn(bars: &[Bar]) -> Vec<Item> {
    let axis = [TOP_PX, TOP_PX + BODY_PX].map(|y| Point { x: ZERO_X, y });
    let mut items = vec![Item::Path {
        path: Path::open(axis.to_vec()),
        style: Style::line(Colour::Ink, 1.0),
    }];
    let mut words_y = f64::NEG_INFINITY;
    for bar in bars {
        let (top, bottom) = (bar.y - BAR_PX / 2.0, bar.y + BAR_PX / 2.0);
        let end = ZERO_X + bar.length_px;
        items.push(Item::Path {
            path: Path::closed(vec![
                Point { x: ZERO_X, y: top },
                Point { x: end, y: top },
                Point { x: end, y: bottom },
                Point { x: ZERO_X, y: bottom },
            ]),
            style: Style::area(Colour::Wind),
        });
        // Words keep a line's distance from those above.
        words_y = (bar.y + 4.5).max(words_y + LINE_PX);
        // No bar may hide them, their own or another.
        let (high, low) = (words_y - 12.0, words_y + 3.0);
        let longest_px = bars
            .iter()
            .filter(|other| {
                let half = BAR_PX / 2.0;
                other.y == bar.y || (other.y + half > high && other.y - half < low)
            })
            .map(|other| other.length_px)
            .fold(0.0, f64::max);
        let x = ZERO_X + longest_px + 8.0;
        let at = Point { x, y: words_y };
        items.push(Item::text(at, Anchor::Start, bar.words.clone(), Colour::Ink, false));
    }
    items
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::svg_document;
    use noseward_stability::{Example, evaluate};

    /// Read back from the picture: a bar's middle on the ruler is where its part is pushed,
    /// and bars are as long as the pushes are strong.
    #[test]
    fn each_bar_stands_where_its_part_is_pushed() {
        for example in Example::ALL {
            let design = example.design();
            let figures = evaluate(&design).figures.unwrap();
            let scene = push_bars(&design, &figures, Units::METRIC).unwrap();
            let bars: Vec<&Path> = scene.groups[1]
                .items
                .iter()
                .filter_map(|item| match item {
                    Item::Path { path, style } if style.fill.is_some() => Some(path),
                    _ => None,
                })
                .collect();
            let mut pushed: Vec<(f64, f64)> = figures
                .parts
                .iter()
                .filter(|p| p.normal_force_slope_per_rad.abs() > 1e-9)
                .map(|p| (p.nose_on_centre_m.unwrap(), p.normal_force_slope_per_rad))
                .collect();
            pushed.sort_by(|a, b| a.0.total_cmp(&b.0));
            assert_eq!(bars.len(), pushed.len(), "{example:?}");
            let px_per_m = BODY_PX / figures.length_m.max(pushed.last().unwrap().0);
            for (bar, (at, slope)) in bars.iter().zip(&pushed) {
                let corners = &bar.runs[0].0;
                let middle = f64::midpoint(corners[0].y, corners[2].y);
                assert!((middle - TOP_PX - at * px_per_m).abs() < 1e-9, "{example:?}");
                let long = corners[1].x - corners[0].x;
                let first = bars[0].runs[0].0[1].x - bars[0].runs[0].0[0].x;
                let ratio = slope / pushed[0].1;
                assert!((long / first - ratio).abs() < 1e-9, "{example:?}");
            }
            let svg = svg_document(&scene, None);
            assert!(svg.contains("Fins: "), "{svg}");
        }
    }

    #[test]
    fn words_never_stand_on_one_another() {
        let mut design = Example::Puffin.design();
        for _ in 0..3 {
            design.fins.push(design.fins[0].clone());
        }
        let figures = evaluate(&design).figures.unwrap();
        let scene = push_bars(&design, &figures, Units::METRIC).unwrap();
        let lines: Vec<f64> = scene.groups[1]
            .items
            .iter()
            .filter_map(|item| match item {
                Item::Text { at, .. } => Some(at.y),
                Item::Path { .. }
                | Item::Dot { .. }
                | Item::Part { .. }
                | Item::Grip { .. }
                | Item::Placed { .. } => None,
            })
            .collect();
        assert!(lines.windows(2).all(|w| w[1] - w[0] >= LINE_PX - 1e-9), "{lines:?}");
    }

    #[test]
    fn no_bar_hides_words() {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        let mut finned = Example::Puffin.design();
        for start_mm in [150.0, 158.0, 170.0] {
            let mut fins = finned.fins[0].clone();
            fins.start_mm = start_mm;
            finned.fins.push(fins);
        }
        designs.push(finned);
        designs.push(crate::goldens::crowded());
        for design in designs {
            let figures = evaluate(&design).figures.unwrap();
            let scene = push_bars(&design, &figures, Units::METRIC).unwrap();
            words_keep_apart(&scene, &design.name);
            lines_miss_words(&scene, &["ruler"], &design.name);
        }
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_never_stand_on_one_another);
    }
}
