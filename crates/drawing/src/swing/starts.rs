//! What every starting angle leads to, as a strip.

use std::f64::consts::PI;

use noseward_stability::{Settles, StartRange};
use noseward_words::{self as words, Number, Text};

use super::arrow_head;
use crate::area::Area;
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::width::{bold_px, words_px};

const SIDE: f64 = 16.0;
const TOP: f64 = 34.0;
const HEIGHT: f64 = 52.0;
/// From the strip to the legend: the angles and their names.
const ANGLES: f64 = 44.0;

/// How a result looks; angles across the path share one look.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Pattern {
    NoseFirst,
    Across,
    TailFirst,
    StillSwinging,
}

impl Pattern {
    const ALL: [Self; 4] =
        [Self::NoseFirst, Self::Across, Self::TailFirst, Self::StillSwinging];

    fn of(result: Settles) -> Self {
        match result {
            Settles::NoseFirst => Self::NoseFirst,
            Settles::Across { .. } => Self::Across,
            Settles::TailFirst => Self::TailFirst,
            Settles::StillSwinging { .. } => Self::StillSwinging,
        }
    }

    fn words(self) -> Text {
        match self {
            Self::NoseFirst => words::drawing_nose_first(),
            Self::Across => words::drawing_across(),
            Self::TailFirst => words::drawing_tail_first(),
            Self::StillSwinging => words::drawing_still_swinging(),
        }
    }

    /// The pattern of an area. It is told by its lines, not by its colour.
    fn drawn(self, area: &Area) -> Vec<Item> {
        let ground =
            |colour| Item::Path { path: area.outline(), style: Style::area(colour) };
        match self {
            Self::NoseFirst => vec![ground(Colour::Body)],
            Self::Across => vec![
                ground(Colour::Fin),
                Item::Path {
                    path: upright(area, 9.0),
                    style: Style::line(Colour::Soft, 1.0),
                },
            ],
            Self::TailFirst => vec![
                ground(Colour::BoldLine),
                Item::Path {
                    path: area.hatching(7.0),
                    style: Style::line(Colour::Ink, 2.5),
                },
            ],
            Self::StillSwinging => vec![
                ground(Colour::Sheet),
                Item::Path {
                    path: rows(area, 7.0),
                    style: Style::line(Colour::Soft, 2.0).dashed(&[2.0, 5.0]),
                },
            ],
        }
    }

    /// The pattern with an edge and, where there is room, the arrow of a rocket that flies
    /// nose first.
    fn sample(self, area: &Area) -> Vec<Item> {
        let mut items = self.drawn(area);
        if self == Self::NoseFirst {
            items.extend(arrow(area.middle(), area.right - area.left));
        }
        items.push(Item::Path {
            path: area.outline(),
            style: Style::line(Colour::Ink, 1.0),
        });
        items
    }
}

/// An arrow to the left, the way in which a rocket nose first flies.
fn arrow(middle: Point, room_px: f64) -> Vec<Item> {
    let half = ((room_px - 4.0) / 2.0).min(11.0);
    if half < 3.0 {
        return Vec::new();
    }
    let tip = Point { x: middle.x - half, y: middle.y };
    let head = half.min(8.0);
    let shaft = vec![
        Point { x: tip.x + head - 1.0, y: tip.y },
        Point { x: middle.x + half, y: middle.y },
    ];
    vec![
        Item::Path { path: Path::open(shaft), style: Style::line(Colour::Ink, 2.0) },
        Item::Path {
            path: arrow_head(tip, (-1.0, 0.0), head),
            style: Style::area(Colour::Ink),
        },
    ]
}

fn upright(area: &Area, apart: f64) -> Path {
    let mut path = Path::default();
    let mut x = (area.left / apart).ceil() * apart;
    while x < area.right {
        path.line(Point { x, y: area.top }, Point { x, y: area.bottom });
        x += apart;
    }
    path
}

fn rows(area: &Area, apart: f64) -> Path {
    let mut path = Path::default();
    let mut y = area.top + apart / 2.0;
    while y < area.bottom {
        path.line(Point { x: area.left + 2.0, y }, Point { x: area.right, y });
        y += apart;
    }
    path
}

/// What every starting angle from 0 to 180 degrees leads to, with groups `strip`, `axis`
/// and `start`.
///
/// Angles without a range, not yet worked out, stay empty. `start_rad` is the start that is
/// marked; it is kept within 0 to π. The width is 280 CSS pixels or more.
#[must_use]
pub fn start_strip(ranges: &[StartRange], start_rad: f64, width_px: f64) -> Scene {
    let strip =
        Area { left: SIDE, right: width_px - SIDE, top: TOP, bottom: TOP + HEIGHT };
    let mut items = Vec::new();
    let mut unnamed = Vec::new();
    for (result, area) in segments(ranges, &strip) {
        let look = Pattern::of(result);
        let words = match result {
            Settles::Across { angle_rad } => {
                words::drawing_across_at(Number::fixed(angle_rad.to_degrees(), 0))
            }
            Settles::NoseFirst | Settles::TailFirst | Settles::StillSwinging { .. } => {
                look.words().into()
            }
        };
        let named = words_px(&words) + 16.0 <= area.right - area.left;
        items.extend(look.drawn(&area));
        if look == Pattern::NoseFirst {
            let up = if named { 10.0 } else { 0.0 };
            let middle = Point { y: area.middle().y - up, ..area.middle() };
            items.extend(arrow(middle, area.right - area.left));
        }
        items.push(Item::Path {
            path: area.outline(),
            style: Style::line(Colour::Ink, 1.0),
        });
        if named {
            items.extend(plate(&area, words, look));
        } else if !unnamed.contains(&look) {
            unnamed.push(look);
        }
    }
    items
        .push(Item::Path { path: strip.outline(), style: Style::line(Colour::Ink, 2.0) });
    let mut axis = axis(&strip);
    let entries: Vec<Entry<'_>> = Pattern::ALL
        .into_iter()
        .filter(|look| unnamed.contains(look))
        .map(|look| Entry {
            sample: Box::new(move |area: &Area| look.sample(area)),
            words: look.words().into(),
        })
        .collect();
    let (rows, bottom) = legend(&entries, SIDE, width_px - 4.0, strip.bottom + ANGLES);
    axis.extend(rows);
    Scene {
        width: width_px,
        height: bottom,
        unit: Unit::Px,
        name: words::drawing_starts().into(),
        groups: vec![
            Group { key: "strip", items },
            Group { key: "axis", items: axis },
            Group { key: "start", items: marker(&strip, start_rad) },
        ],
    }
}

/// The ranges on the strip. Those side by side that still swing are one.
fn segments(ranges: &[StartRange], strip: &Area) -> Vec<(Settles, Area)> {
    let mut found: Vec<(Settles, Area)> = Vec::new();
    for range in ranges {
        let (left, right) = (x(strip, range.from_rad), x(strip, range.to_rad));
        let still = |result| Pattern::of(result) == Pattern::StillSwinging;
        match found.last_mut() {
            Some((before, area)) if still(*before) && still(range.comes_to) => {
                area.right = right;
            }
            _ => found.push((range.comes_to, Area { left, right, ..*strip })),
        }
    }
    found.retain(|(_, area)| area.right > area.left);
    found
}

fn x(strip: &Area, angle_rad: f64) -> f64 {
    strip.left + (strip.right - strip.left) * (angle_rad / PI).clamp(0.0, 1.0)
}

/// Words in the middle of a segment, on a plate that keeps its pattern away.
fn plate(area: &Area, words: String, look: Pattern) -> Vec<Item> {
    let middle = area.middle();
    let down = if look == Pattern::NoseFirst { 11.0 } else { 0.0 };
    let half = words_px(&words) / 2.0 + 5.0;
    let plate = Area {
        left: middle.x - half,
        right: middle.x + half,
        top: middle.y + down - 11.0,
        bottom: middle.y + down + 11.0,
    };
    let ground = Style::area(Colour::Body);
    let at = Point { x: middle.x, y: middle.y + down + 4.5 };
    vec![
        Item::Path { path: plate.outline(), style: ground },
        Item::text(at, Anchor::Middle, words, Colour::Ink, false),
    ]
}

fn axis(strip: &Area) -> Vec<Item> {
    let mut ticks = Path::default();
    let mut items = Vec::new();
    for degrees in [0.0_f64, 45.0, 90.0, 135.0, 180.0] {
        let x = x(strip, degrees.to_radians());
        let (from, to) = (strip.bottom, strip.bottom + 5.0);
        ticks.line(Point { x, y: from }, Point { x, y: to });
        let at = Point { x, y: strip.bottom + 19.0 };
        items.push(Item::text(
            at,
            Anchor::Middle,
            format!("{degrees}°"),
            Colour::Ink,
            false,
        ));
    }
    items.push(Item::Path { path: ticks, style: Style::line(Colour::Ink, 1.0) });
    for (at_x, anchor, words) in [
        (4.0, Anchor::Start, words::drawing_nose_first()),
        (strip.middle().x, Anchor::Middle, words::drawing_side_on()),
        (strip.right + SIDE - 4.0, Anchor::End, words::drawing_tail_first()),
    ] {
        let at = Point { x: at_x, y: strip.bottom + 35.0 };
        items.push(Item::text(at, anchor, words, Colour::Soft, false));
    }
    items
}

/// The chosen start: a triangle that stands on the strip, with its angle.
fn marker(strip: &Area, start_rad: f64) -> Vec<Item> {
    let start_rad = if start_rad.is_finite() { start_rad.clamp(0.0, PI) } else { 0.0 };
    let tip = Point { x: x(strip, start_rad), y: strip.top };
    let words = words::drawing_starts_at(Number::fixed(start_rad.to_degrees(), 0));
    let half = bold_px(&words) / 2.0;
    let right = strip.right + SIDE;
    let at = Point { x: tip.x.clamp(half, right - half), y: strip.top - 18.0 };
    vec![
        Item::Path {
            path: arrow_head(tip, (0.0, 1.0), 13.0),
            style: Style::area(Colour::Wind),
        },
        Item::text(at, Anchor::Middle, words, Colour::Wind, true),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::swing::examples;

    const WIDTHS: [f64; 4] = [280.0, 360.0, 600.0, 900.0];

    fn range(from_deg: f64, to_deg: f64, comes_to: Settles) -> StartRange {
        StartRange {
            from_rad: from_deg.to_radians(),
            to_rad: to_deg.to_radians(),
            comes_to,
            slowest: None,
        }
    }

    fn still(about_rad: Option<f64>) -> Settles {
        Settles::StillSwinging { about_rad }
    }

    /// Those of the examples, and made ones of every kind and many widths.
    fn strips() -> Vec<Vec<StartRange>> {
        let mut all: Vec<Vec<StartRange>> =
            examples().iter().map(|(_, swing)| swing.starts().ranges()).collect();
        let across = Settles::Across { angle_rad: 1.1 };
        all.push(vec![
            range(0.0, 44.0, Settles::NoseFirst),
            range(44.0, 90.0, across),
            range(90.0, 92.5, still(Some(1.1))),
            range(92.5, 140.0, still(None)),
            range(140.0, 180.0, Settles::TailFirst),
        ]);
        let results = [Settles::NoseFirst, across, Settles::TailFirst, still(None)];
        all.push(
            (0..36_u32)
                .zip(results.into_iter().cycle())
                .map(|(k, result)| {
                    range(5.0 * f64::from(k), 5.0 * f64::from(k + 1), result)
                })
                .collect(),
        );
        all.push(vec![]);
        all
    }

    #[test]
    fn words_stay_clear_of_lines_and_of_each_other() {
        for ranges in strips() {
            for width in WIDTHS {
                for start in [0.0, 0.2, 1.6, 3.0, PI] {
                    let scene = start_strip(&ranges, start, width);
                    let which = format!("{ranges:?} from {start} at {width}");
                    words_keep_apart(&scene, &which);
                    lines_miss_words(&scene, &["strip"], &which);
                    let keys: Vec<_> = scene.groups.iter().map(|g| g.key).collect();
                    assert_eq!(keys, ["strip", "axis", "start"]);
                }
            }
        }
    }

    /// Whatever is on the strip is named on it or under it.
    #[test]
    fn every_result_is_named() {
        for ranges in strips() {
            for width in WIDTHS {
                let scene = start_strip(&ranges, 1.0, width);
                let words: Vec<String> = scene
                    .groups
                    .iter()
                    .filter(|group| group.key != "start")
                    .flat_map(|group| &group.items)
                    .filter_map(|item| match item {
                        Item::Text { words, colour: Colour::Ink, .. } => {
                            Some(words.clone())
                        }
                        _ => None,
                    })
                    .collect();
                for range in &ranges {
                    let name = Pattern::of(range.comes_to).words();
                    let name = name.split(' ').next().unwrap();
                    let named = words.iter().any(|words| words.starts_with(name));
                    assert!(named, "{name}: {words:?} at {width}");
                }
            }
        }
    }

    #[test]
    fn patterns_stay_within_their_segment() {
        let wide = Area { left: 20.0, right: 83.0, top: 10.0, bottom: 40.0 };
        let narrow = Area { right: 22.0, ..wide };
        for (look, area) in
            Pattern::ALL.into_iter().flat_map(|look| [(look, wide), (look, narrow)])
        {
            for item in look.sample(&area) {
                let Item::Path { path, .. } = item else { continue };
                for p in path.runs.iter().flat_map(|(points, _)| points) {
                    let inside = p.x >= area.left - 1e-9
                        && p.x <= area.right + 1e-9
                        && p.y >= area.top - 1e-9
                        && p.y <= area.bottom + 1e-9;
                    assert!(inside, "{look:?} {p:?}");
                }
            }
        }
    }

    #[test]
    fn what_still_swings_side_by_side_is_one() {
        let strip = Area { left: 0.0, right: 180.0, top: 0.0, bottom: 1.0 };
        let ranges = [
            range(0.0, 40.0, still(None)),
            range(40.0, 100.0, still(Some(0.0))),
            range(100.0, 180.0, Settles::TailFirst),
        ];
        let found = segments(&ranges, &strip);
        assert_eq!(found.len(), 2);
        assert!((found[0].1.right - 100.0).abs() < 1e-9);
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_stay_clear_of_lines_and_of_each_other);
    }
}
