//! How measured and computed separations of a class agree: what lies between them, against
//! their mean.

use noseward_lesson::{Agreement, agreement};
use noseward_stability::{UnitSystem, Units};
use noseward_words::{self as words, WrittenIn};

use crate::area::Area;
use crate::axis::{Reach, axis_number, is_shown, reading, reading_number};
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::plot::{
    EDGE, LEGEND_EDGE, LINE_PX, NUMBERS_APART_PX, Scale, level, upright, zero_style,
};
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::width::words_px;

const RIGHT: f64 = 12.0;
const TOP: f64 = 28.0;
/// Lines of the axis upwards stand at least this far apart.
const STEPS_APART_PX: f64 = 30.0;
/// The plot is at least so high.
const LEAST_PX: f64 = 90.0;
/// Between a mark and the edges of the plot.
const MARGIN_PX: f64 = 6.0;
const RADIUS: f64 = 3.5;
/// More pairs than these are counted in squares of this size.
const MOST_EACH: usize = 400;
const CELL_PX: f64 = 12.0;

fn mark_style() -> Style {
    Style::line(Colour::Ink, 1.5)
}

fn middle_style() -> Style {
    Style::line(Colour::Ink, 2.0).dashed(&[9.0, 4.0])
}

fn limit_style() -> Style {
    Style::line(Colour::Soft, 1.5).dashed(&[5.0, 3.0])
}

/// Measured less computed separation upwards, the mean of both across, a circle for each pair
/// (measured, computed) in millimetres, with the mean of the differences and their 95 %
/// limits; groups `axis`, `marks` and `legend`.
///
/// Of more than 400, squares tell how many lie together. The width is 300 CSS pixels or more; a
/// height that is too little becomes more. A pair that is not finite or beyond 100 m is left
/// out; `None` when there is no other.
#[must_use]
pub fn agreement_chart(
    pairs: &[(f64, f64)],
    units: Units,
    width_px: f64,
    height_px: f64,
) -> Option<Scene> {
    let mut shown = Vec::new();
    shown.extend(pairs.iter().copied().filter(|&(a, b)| is_shown(a) && is_shown(b)));
    let found = agreement(&shown)?;
    let entries = entries(&found, units, shown.len() > MOST_EACH);
    let under = |bottom: f64| {
        let top = bottom + 2.0 * LINE_PX + 8.0;
        legend(&entries, EDGE, width_px - LEGEND_EDGE, top)
    };
    let bottom = (height_px - under(0.0).1 - 4.0).max(TOP + LEAST_PX);
    let plot = Plot::new(&shown, &found, units, width_px, bottom);
    let (legend, below) = under(bottom);
    Some(Scene {
        width: width_px,
        height: below + 4.0,
        unit: Unit::Px,
        name: words::class_chart_agreement().into(),
        groups: vec![
            Group { key: "axis", items: plot.axis(&found, units, width_px) },
            Group { key: "marks", items: plot.marks(&shown) },
            Group { key: "legend", items: legend },
        ],
    })
}

/// Where a pair stands.
struct Plot {
    area: Area,
    across: Scale,
    up: Scale,
    step_mm: f64,
}

impl Plot {
    fn new(
        pairs: &[(f64, f64)],
        found: &Agreement,
        units: Units,
        width_px: f64,
        bottom: f64,
    ) -> Self {
        let limits = found.limits.map(|limits| [limits.least, limits.most]);
        let differences = pairs.iter().map(|(a, b)| a - b);
        let (up, step_mm) = Reach::of(differences.chain(limits.into_iter().flatten()))
            .in_steps(units, bottom - TOP, STEPS_APART_PX);
        let widest = up
            .multiples_mm(step_mm)
            .map(|mm| words_px(&axis_number(units, mm)))
            .fold(0.0, f64::max);
        let left = EDGE + widest + 8.0;
        let area = Area { left, right: width_px - RIGHT, top: TOP, bottom };
        let (left, right) = (left + MARGIN_PX, area.right - MARGIN_PX);
        let means = pairs.iter().map(|(a, b)| f64::midpoint(*a, *b));
        let (means, _) = Reach::of(means).in_steps(units, right - left, NUMBERS_APART_PX);
        Self {
            area,
            across: Scale::new(means, left, right),
            up: Scale::new(up, bottom - MARGIN_PX, TOP + MARGIN_PX),
            step_mm,
        }
    }

    fn place(&self, (measured, computed): (f64, f64)) -> Point {
        let mean = f64::midpoint(measured, computed);
        Point { x: self.across.px(mean), y: self.up.px(measured - computed) }
    }

    /// Both axes and the lines of what was found.
    fn axis(&self, found: &Agreement, units: Units, width_px: f64) -> Vec<Item> {
        let number = |mm| axis_number(units, mm);
        let mut items = self.across.ticks(&[self.area], units, number, width_px);
        items.extend(self.up.levels(&self.area, self.step_mm, number));
        let zero = upright(&[self.area], self.across.px(0.0));
        items.push(Item::Path { path: zero, style: Style::line(Colour::Soft, 1.0) });
        let axis = level(&self.area, self.area.bottom);
        items.push(Item::Path { path: axis, style: Style::line(Colour::Ink, 1.5) });
        if let Some(limits) = found.limits {
            let mut path = level(&self.area, self.up.px(limits.least));
            path.runs.extend(level(&self.area, self.up.px(limits.most)).runs);
            items.push(Item::Path { path, style: limit_style() });
        }
        let path = level(&self.area, self.up.px(found.mean_difference));
        items.push(Item::Path { path, style: middle_style() });
        let written_in = || match units.system {
            UnitSystem::Metric => WrittenIn::Millimetres,
            UnitSystem::Inch => WrittenIn::Inches,
        };
        let mut title = |at, anchor, words| {
            items.push(Item::text(at, anchor, words, Colour::Ink, true));
        };
        let at = Point { x: EDGE, y: LINE_PX };
        title(at, Anchor::Start, words::class_chart_difference_in(written_in()));
        let at = Point { x: self.area.middle().x, y: self.area.bottom + 2.0 * LINE_PX };
        title(at, Anchor::Middle, words::class_chart_mean_in(written_in()));
        items
    }

    fn marks(&self, pairs: &[(f64, f64)]) -> Vec<Item> {
        let places = pairs.iter().map(|&pair| self.place(pair));
        if pairs.len() > MOST_EACH {
            let path = self.squares(places);
            return vec![Item::Path { path, style: Style::area(Colour::Ink) }];
        }
        places
            .map(|centre| Item::Dot { centre, radius: RADIUS, style: mark_style() })
            .collect()
    }

    /// A square for each cell in which there is something: its area tells how much.
    fn squares(&self, places: impl Iterator<Item = Point>) -> Path {
        let Area { left, right, top, bottom } = self.area;
        let columns = ((right - left) / CELL_PX).ceil();
        let rows = ((bottom - top) / CELL_PX).ceil();
        let mut counts = vec![0.0_f64; index(columns * rows)];
        for Point { x, y } in places {
            let (column, row) = ((x - left) / CELL_PX, (y - top) / CELL_PX);
            counts[index(row.floor() * columns + column.floor())] += 1.0;
        }
        let most = counts.iter().copied().fold(1.0, f64::max);
        let mut path = Path::default();
        let (mut column, mut row) = (0.0, 0.0);
        for count in counts {
            if count > 0.0 {
                let x = left + (column + 0.5) * CELL_PX;
                let y = top + (row + 0.5) * CELL_PX;
                let half = square_half(count / most);
                let area = Area {
                    left: x - half,
                    right: x + half,
                    top: y - half,
                    bottom: y + half,
                };
                path.runs.extend(area.outline().runs);
            }
            column += 1.0;
            if column >= columns {
                (column, row) = (0.0, row + 1.0);
            }
        }
        path
    }
}

/// Half the side of a square for a share of the most: never too small to be seen.
fn square_half(share: f64) -> f64 {
    (share.sqrt() * (CELL_PX / 2.0 - 0.5)).max(1.0)
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole, and within the plot"
)]
fn index(number: f64) -> usize {
    number as usize
}

fn entries(found: &Agreement, units: Units, are_many: bool) -> Vec<Entry<'static>> {
    let mean = reading(units, found.mean_difference);
    let mut entries = vec![Entry::line(middle_style(), words::class_chart_middle(&mean))];
    if let Some(limits) = found.limits {
        let from = reading_number(units, limits.least);
        let words = words::class_chart_limits(&from, &reading(units, limits.most));
        entries.push(Entry::line(limit_style(), words));
    }
    entries.push(Entry::line(zero_style(), words::class_chart_agree()));
    if are_many {
        let sample = |area: &Area| {
            let mut path = Path::default();
            let Point { x, y } = area.middle();
            for (off, share) in [(-7.0, 0.1), (5.0, 1.0)] {
                let half = square_half(share);
                let (left, right) = (x + off - half, x + off + half);
                let square = Area { left, right, top: y - half, bottom: y + half };
                path.runs.extend(square.outline().runs);
            }
            vec![Item::Path { path, style: Style::area(Colour::Ink) }]
        };
        let words = words::class_chart_larger().into();
        entries.push(Entry { sample: Box::new(sample), words });
    }
    entries
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};

    fn classes() -> Vec<Vec<(f64, f64)>> {
        let pairs = |count: u32, spread: f64| -> Vec<_> {
            (0..count)
                .map(|k| {
                    let computed = f64::from(k * 37 % 101) - 40.0;
                    (computed + spread * f64::from(k * 13 % 17) / 17.0, computed)
                })
                .collect()
        };
        vec![
            pairs(1, 9.0),
            pairs(2, 0.0),
            pairs(48, 20.0),
            pairs(10_000, 90.0),
            vec![(30.0, 30.0); 12],
            vec![(-20_000.0, 31_000.0), (4.0, 2.0), (f64::NAN, 2.0)],
        ]
    }

    #[test]
    fn words_stay_clear_of_lines_and_of_each_other() {
        for (i, pairs) in classes().iter().enumerate() {
            for units in [Units::METRIC, Units::INCH] {
                for width in [300.0, 360.0, 560.0, 900.0] {
                    for height in [100.0, 260.0, 500.0] {
                        let scene = agreement_chart(pairs, units, width, height).unwrap();
                        let which = format!("{i} at {width} by {height}");
                        words_keep_apart(&scene, &which);
                        lines_miss_words(&scene, &[], &which);
                        assert!(scene.height >= height, "{which}");
                        assert!(height < 250.0 || scene.height == height, "{which}");
                    }
                }
            }
        }
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_stay_clear_of_lines_and_of_each_other);
    }

    #[test]
    fn many_pairs_are_one_path_and_each_is_in_a_square() {
        let pairs = &classes()[3];
        let scene = agreement_chart(pairs, Units::METRIC, 560.0, 400.0).unwrap();
        let [Item::Path { path, .. }] = &scene.groups[1].items[..] else {
            panic!("one path")
        };
        assert!(path.runs.len() < 1500, "{}", path.runs.len());
        let found = agreement(pairs).unwrap();
        let bottom = scene.groups[0].items.iter().find_map(|item| match item {
            Item::Path { path, style } if *style == Style::line(Colour::Ink, 1.5) => {
                Some(path.runs[0].0[0].y)
            }
            _ => None,
        });
        let plot = Plot::new(pairs, &found, Units::METRIC, 560.0, bottom.unwrap());
        for &pair in pairs {
            let Point { x, y } = plot.place(pair);
            let near = path.runs.iter().any(|(corners, _)| {
                let at_x = f64::midpoint(corners[0].x, corners[1].x);
                let at_y = f64::midpoint(corners[0].y, corners[2].y);
                (at_x - x).abs() <= CELL_PX / 2.0 && (at_y - y).abs() <= CELL_PX / 2.0
            });
            assert!(near, "{pair:?}");
        }
        // The largest fills its cell, no other is larger.
        let widths = path.runs.iter().map(|(corners, _)| corners[1].x - corners[0].x);
        let widest = widths.fold(0.0, f64::max);
        assert!((widest - (CELL_PX - 1.0)).abs() < 1e-9, "{widest}");
    }

    #[test]
    fn without_a_pair_there_is_no_chart() {
        for pairs in [&[][..], &[(f64::NAN, 1.0)], &[(1.0, 1e300)]] {
            assert_eq!(agreement_chart(pairs, Units::METRIC, 360.0, 260.0), None);
        }
    }

    #[test]
    fn one_pair_has_no_limits() {
        let scene = agreement_chart(&[(3.0, 8.0)], Units::METRIC, 360.0, 260.0).unwrap();
        let is_limit = |item: &&Item| matches!(item, Item::Path { style, .. } if *style == limit_style());
        let items = scene.groups.iter().flat_map(|group| &group.items);
        assert_eq!(items.filter(is_limit).count(), 0);
    }
}
