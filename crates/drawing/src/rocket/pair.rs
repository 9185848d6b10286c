//! Two rockets on one ruler: what moved, and how far.
//!
//! The ruler stands between them and is read from both sides. Brackets and words stand on
//! the far sides, so that nothing comes between a mark and the ruler.

use noseward_stability::{Body, Design, Figures, SideView, Units};
use noseward_words as texts;

use super::LabelStyle;
use super::layout::{BOTTOM_PX, Extent, LINE_PX, Layout, TOP_PX};
use super::{marks, outline, paper};
use crate::area::Area;
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::width::{bold_px, cut};

const EDGE: f64 = 4.0;
const RULER_PX: f64 = 56.0;
/// Between the ruler and the room of a rocket.
const FROM_RULER: f64 = 6.0;
/// From a rocket, or its marks, to its bracket.
const TO_BRACKET: f64 = 12.0;
/// How much wider the words of a separation may be than so many ordinary letters.
const WIDE: f64 = 1.35;
/// Between the bracket and its words.
const WORDS_GAP: f64 = 6.0;
/// The marks need so much room at either side of the axis.
const MARKS_PX: f64 = marks::FULCRUM_LENGTH + 2.0;
/// From this width on the separation stands beside its bracket; under the caption else.
const BESIDE_PX: f64 = 480.0;
/// The legend stays so far from the right edge: some fonts are wider than expected.
const LEGEND_EDGE: f64 = 14.0;

/// One of the two rockets.
struct Side<'a> {
    design: &'a Design,
    figures: &'a Figures,
    caption: &'a str,
    body: Body,
    view: SideView,
}

impl<'a> Side<'a> {
    fn new(
        (design, figures, caption): (&'a Design, &'a Figures, &'a str),
    ) -> Option<Self> {
        let body = Body::new(design)?;
        let view = SideView::new(design, &body);
        Some(Self { design, figures, caption, body, view })
    }

    fn extent(&self) -> Extent {
        Extent::new(&self.body, &self.view)
    }

    fn levels(&self, layout: &Layout) -> (f64, f64) {
        let mass_y = layout.y(self.figures.mass.centre_m);
        (mass_y, layout.y(self.figures.centre_of_pressure_side_on_m))
    }

    fn items(&self, layout: &Layout) -> Vec<Item> {
        let mut items = outline::rocket(self.design, &self.body, &self.view, layout);
        items.extend(outline::weights(self.design, layout));
        items.into_iter().flat_map(without_part).collect()
    }

    /// From both marks to the ruler; from the fulcrum also to a bracket on the other side.
    fn level_lines(&self, layout: &Layout) -> [Item; 2] {
        let (mass_y, wind_y) = self.levels(layout);
        let (left, right) = layout.ruler;
        let is_left = layout.axis_x < left;
        let to_x = if is_left { left } else { right };
        let mass_x = if is_left { marks::hook_x(layout) } else { layout.axis_x };
        let level = |from_x: f64, y: f64, style| {
            let ends = vec![Point { x: from_x, y }, Point { x: to_x, y }];
            Item::Path { path: Path::open(ends), style }
        };
        [
            level(mass_x, mass_y, mass_level()),
            level(layout.axis_x, wind_y, marks::wind_level()),
        ]
    }

    fn marks(&self, layout: &Layout) -> Vec<Item> {
        let (mass_y, wind_y) = self.levels(layout);
        let mut items = marks::bracket(mass_y, wind_y, layout);
        items.extend(marks::wind(wind_y, layout));
        items.extend(marks::fulcrum(mass_y, layout));
        items
    }

    fn separation(&self, units: Units, full: bool) -> String {
        marks::apart(self.figures, units, full)
    }

    /// The separation at the far side of its bracket, on a plate that keeps the squares
    /// away.
    fn beside_bracket(&self, layout: &Layout) -> [Item; 2] {
        let (mass_y, wind_y) = self.levels(layout);
        let words = self.separation(layout.units, false);
        let width = bold_px(&words);
        let x = layout.right_words_x;
        let is_left = layout.bracket_x < layout.axis_x;
        let (left, anchor) =
            if is_left { (x - width, Anchor::End) } else { (x, Anchor::Start) };
        let y = f64::midpoint(mass_y, wind_y);
        let plate = Area { left, right: left + width, top: y - 9.0, bottom: y + 9.0 };
        [
            Item::Path { path: plate.outline(), style: Style::area(Colour::Sheet) },
            Item::text(Point { x, y: y + 4.5 }, anchor, words, Colour::Ink, true),
        ]
    }
}

/// The two rockets, upright, nose up and to one scale, their nose tips level with the zero
/// of the ruler between them, with groups `paper`, `rockets`, `levels`, `marks` and `words`.
///
/// Each comes with its figures and a caption, which stands under it and is cut where it has
/// no room. Broken lines bring each mark to the ruler; a bracket carries the separation,
/// which is told without a sign. The width is 300 CSS pixels or more, the height 260 or
/// more. `None` when one of the designs has no body.
#[must_use]
pub fn pair(
    left: (&Design, &Figures, &str),
    right: (&Design, &Figures, &str),
    units: Units,
    width_px: f64,
    height_px: f64,
) -> Option<Scene> {
    let sides = [Side::new(left)?, Side::new(right)?];
    let beside = width_px >= BESIDE_PX;
    let lines = if beside { 1.0 } else { 2.0 };
    let legend_right = width_px - LEGEND_EDGE;
    let (_, legend_px) = legend(&entries(), EDGE, legend_right, 0.0);
    let paper_px = height_px - lines * LINE_PX - legend_px - 14.0;
    let layouts = layouts(&sides, units, (width_px, paper_px), beside);

    let mut words = Vec::new();
    for (side, layout) in sides.iter().zip(&layouts) {
        if beside {
            words.extend(side.beside_bracket(layout));
        }
        let room = 2.0 * (layout.axis_x - EDGE).min(width_px - EDGE - layout.axis_x);
        let room = room.min((width_px / 2.0 - layout.axis_x).abs() * 2.0 - EDGE);
        // Bold letters are wider than those that are counted.
        let caption = cut(side.caption, room * 0.88);
        let line = |k: f64, words: String, bold| {
            let y = paper_px + k * LINE_PX;
            let at = Point { x: layout.axis_x, y };
            Item::text(at, Anchor::Middle, words, Colour::Ink, bold)
        };
        words.push(line(1.0, caption, true));
        if !beside {
            words.push(line(2.0, side.separation(units, true), false));
        }
    }
    let top = paper_px + lines * LINE_PX + 8.0;
    words.extend(legend(&entries(), EDGE, legend_right, top).0);

    let each = || sides.iter().zip(&layouts);
    Some(Scene {
        width: width_px,
        height: height_px,
        unit: Unit::Px,
        name: texts::drawing_pair(sides[0].caption, sides[1].caption),
        groups: vec![
            Group { key: "paper", items: paper::paper(&layouts[0]) },
            Group {
                key: "rockets",
                items: each().flat_map(|(side, layout)| side.items(layout)).collect(),
            },
            Group {
                key: "levels",
                items: each().flat_map(|(s, layout)| s.level_lines(layout)).collect(),
            },
            Group {
                key: "marks",
                items: each().flat_map(|(side, layout)| side.marks(layout)).collect(),
            },
            Group { key: "words", items: words },
        ],
    })
}

/// Where each rocket stands on the sheet. They share the scale and the ruler.
fn layouts(
    sides: &[Side<'_>; 2],
    units: Units,
    (width, height): (f64, f64),
    beside: bool,
) -> [Layout; 2] {
    let middle = width / 2.0;
    let ruler = (middle - RULER_PX / 2.0, middle + RULER_PX / 2.0);
    // An "mm" is wider than two other letters.
    let words = sides.iter().map(|side| WIDE * bold_px(&side.separation(units, false)));
    let words_px = if beside { WORDS_GAP + words.fold(0.0, f64::max) } else { 0.0 };
    // The room of a rocket, from its far side to the ruler.
    let room_x = ruler.0 - FROM_RULER - (EDGE + words_px + TO_BRACKET);
    let room_y = height - TOP_PX - BOTTOM_PX;
    let extent = sides[0].extent().with(sides[1].extent());
    let px_per_mm = extent.px_per_mm(room_x, room_y);
    let spare_y = room_y - extent.length_mm() * px_per_mm;
    let half = (extent.half_m * 1000.0 * px_per_mm).max(MARKS_PX);
    let from_ruler = FROM_RULER + room_x / 2.0;
    [(ruler.0 - from_ruler, -1.0), (ruler.1 + from_ruler, 1.0)].map(|(axis_x, away)| {
        let bracket_x = axis_x + away * (half + TO_BRACKET);
        Layout {
            width,
            height,
            units,
            labels: if beside { LabelStyle::Full } else { LabelStyle::Short },
            px_per_mm,
            axis_x,
            nose_y: TOP_PX + spare_y / 2.0 - extent.front_m * 1000.0 * px_per_mm,
            ruler,
            two_edged: true,
            left_words_x: axis_x - half,
            rocket_right: axis_x + half,
            bracket_x,
            right_words_x: bracket_x + away * WORDS_GAP,
            ruler_mm: extent.rear_m * 1000.0,
        }
    })
}

/// What is drawn of a part: here it belongs to no field of a page, and no hand moves it.
fn without_part(item: Item) -> Vec<Item> {
    match item {
        Item::Part { items, .. } => {
            let stays =
                |item: &Item| !matches!(item, Item::Grip { .. } | Item::Placed { .. });
            items.into_iter().filter(stays).collect()
        }
        other => vec![other],
    }
}

/// The line that shows how far down the centre of mass is.
fn mass_level() -> Style {
    Style::line(Colour::Fulcrum, 1.5).dashed(&[2.0, 3.0])
}

fn entries() -> [Entry<'static>; 2] {
    let fulcrum = |area: &Area| {
        let Area { left, right, top, bottom } = *area;
        let y = area.middle().y;
        let corners = [(left, y), (right, top), (right, bottom)];
        let path = Path::closed(corners.map(|(x, y)| Point { x, y }).into());
        vec![Item::Path { path, style: Style::area(Colour::Fulcrum) }]
    };
    let wind = |area: &Area| {
        let Area { left, right, top, bottom } = *area;
        let (y, neck) = (area.middle().y, right - 14.0);
        let shaft = Path::open(vec![Point { x: left, y }, Point { x: neck + 1.0, y }]);
        let corners = [(right, y), (neck, top), (neck, bottom)];
        let head = Path::closed(corners.map(|(x, y)| Point { x, y }).into());
        vec![
            Item::Path { path: shaft, style: Style::line(Colour::Wind, 4.0) },
            Item::Path { path: head, style: Style::area(Colour::Wind) },
        ]
    };
    [
        Entry { sample: Box::new(fulcrum), words: texts::drawing_mass().into() },
        Entry { sample: Box::new(wind), words: texts::drawing_pressure_side_on().into() },
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::written::Written;
    use noseward_stability::{Example, evaluate};

    const SIZES: [(f64, f64); 5] =
        [(300.0, 380.0), (320.0, 260.0), (479.0, 420.0), (560.0, 420.0), (900.0, 600.0)];

    /// Every two examples, and one with its points the other way round.
    fn pairs() -> Vec<(Design, Design)> {
        let mut heavy = Example::Puffin.design();
        heavy.weights.iter_mut().for_each(|weight| weight.position_mm = 300.0);
        let mut all = vec![(Example::Puffin.design(), heavy)];
        for left in Example::ALL {
            all.extend(Example::ALL.map(|right| (left.design(), right.design())));
        }
        all
    }

    fn drawn(
        (left, right): &(Design, Design),
        units: Units,
        size: (f64, f64),
    ) -> (Scene, [Figures; 2]) {
        let figures = [left, right].map(|d| evaluate(d).figures.expect("a whole rocket"));
        let scene = pair(
            (left, &figures[0], "Trial 1"),
            (right, &figures[1], "Trial 2"),
            units,
            size.0,
            size.1,
        );
        (scene.expect("both have a body"), figures)
    }

    fn group<'a>(scene: &'a Scene, key: &str) -> &'a [Item] {
        let found = scene.groups.iter().find(|group| group.key == key);
        &found.expect("every group is there").items
    }

    fn paths(items: &[Item]) -> Vec<&[Point]> {
        let mut found = Vec::new();
        for item in items {
            if let Item::Path { path, .. } = item {
                found.push(path.runs[0].0.as_slice());
            }
        }
        found
    }

    #[test]
    fn words_keep_apart_and_lines_miss_them() {
        for designs in pairs() {
            for units in [Units::METRIC, Units::INCH] {
                for size in SIZES {
                    let (mut scene, _) = drawn(&designs, units, size);
                    let which = format!("{} in {size:?}", designs.0.name);
                    words_keep_apart(&scene, &which);
                    // Words may stand on the squares, and the ruler's on the ruler.
                    scene.groups.retain(|group| group.key != "paper");
                    lines_miss_words(&scene, &[], &which);
                }
            }
        }
    }

    #[test]
    fn words_keep_apart_in_other_languages() {
        in_languages(&words_keep_apart_and_lines_miss_them);
    }

    /// Each level line ends at the ruler, level with the reading of its mark.
    #[test]
    fn level_lines_bring_each_mark_to_one_ruler() {
        for designs in pairs() {
            for size in SIZES {
                let (scene, figures) = drawn(&designs, Units::METRIC, size);
                let ruler = paths(&group(&scene, "paper")[2..])[0];
                let (zero_y, end_y) = (ruler[0].y, ruler[2].y);
                let sides = [&designs.0, &designs.1]
                    .map(|design| Side::new((design, &figures[0], "")).unwrap().extent());
                let rear_m = sides[0].with(sides[1]).rear_m;
                let px_per_m = (end_y - zero_y) / rear_m;
                let levels = paths(group(&scene, "levels"));
                assert_eq!(levels.len(), 4);
                let points_m = figures
                    .iter()
                    .flat_map(|f| [f.mass.centre_m, f.centre_of_pressure_side_on_m]);
                for (i, (ends, at_m)) in levels.iter().zip(points_m).enumerate() {
                    let at_ruler = if i < 2 { ruler[0].x } else { ruler[1].x };
                    assert_eq!(ends[1].x, at_ruler);
                    assert_eq!(ends[0].y, ends[1].y);
                    let told_m = (ends[1].y - zero_y) / px_per_m;
                    assert!((told_m - at_m).abs() < 1e-9, "{told_m} for {at_m}");
                }
            }
        }
    }

    /// The rockets keep to their side of the ruler, and both noses are at its zero.
    #[test]
    fn rockets_stand_at_either_side_of_the_ruler() {
        for designs in pairs() {
            for size in SIZES {
                let (scene, _) = drawn(&designs, Units::METRIC, size);
                let ruler = paths(&group(&scene, "paper")[2..])[0];
                let middle = f64::midpoint(ruler[0].x, ruler[1].x);
                let mut highest = [f64::MAX; 2];
                for points in paths(group(&scene, "rockets")) {
                    // The axis runs on beyond both ends.
                    if points.len() == 2 && points[0].x == points[1].x {
                        continue;
                    }
                    for p in points {
                        let left = p.x < ruler[0].x - 2.0 && p.x > 0.0;
                        let right = p.x > ruler[1].x + 2.0 && p.x < size.0;
                        assert!(left || right, "{p:?} in {size:?}");
                        let side = usize::from(p.x > middle);
                        highest[side] = highest[side].min(p.y);
                    }
                }
                assert_eq!(highest, [ruler[0].y; 2], "{size:?}");
            }
        }
    }

    #[test]
    fn captions_and_separations_stand_on_their_side() {
        let designs = (Example::Puffin.design(), Example::Tern.design());
        for size in SIZES {
            let (scene, figures) = drawn(&designs, Units::METRIC, size);
            let at = |wanted: &str| {
                let found = group(&scene, "words").iter().find_map(|item| match item {
                    Item::Text { at, words, .. } if words == wanted => Some(at.x),
                    _ => None,
                });
                found.unwrap_or_else(|| panic!("{wanted} in {size:?}"))
            };
            assert!(at("Trial 1") < size.0 / 2.0 && at("Trial 2") > size.0 / 2.0);
            let [left, right] = figures.map(|f| {
                let told = Units::METRIC.reading(f.separation_m.abs() * 1000.0);
                if size.0 < BESIDE_PX { format!("{told} apart") } else { told }
            });
            assert_ne!(left, right);
            assert!(at(&left) < size.0 / 2.0 && at(&right) > size.0 / 2.0);
        }
    }

    #[test]
    fn a_long_caption_is_cut_and_no_part_can_be_pointed_at() {
        let design = Example::Puffin.design();
        let figures = evaluate(&design).figures.unwrap();
        let long = "a caption of far more words than any sheet has room for";
        for (width, height) in SIZES {
            let one = (&design, &figures, long);
            let scene = pair(one, one, Units::METRIC, width, height).unwrap();
            words_keep_apart(&scene, "long captions");
            for item in scene.groups.iter().flat_map(|group| &group.items) {
                assert!(!matches!(
                    item,
                    Item::Part { .. } | Item::Grip { .. } | Item::Placed { .. }
                ));
            }
        }
    }

    #[test]
    fn without_a_body_there_is_no_pair() {
        let design = Example::Puffin.design();
        let figures = evaluate(&design).figures.unwrap();
        let mut empty = design.clone();
        empty.sections.clear();
        let (whole, none) = ((&design, &figures, "1"), (&empty, &figures, "2"));
        assert_eq!(pair(whole, none, Units::METRIC, 500.0, 400.0), None);
        assert_eq!(pair(none, whole, Units::METRIC, 500.0, 400.0), None);
    }
}
