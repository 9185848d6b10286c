//! The rocket upright on squared paper, with its ruler and its two points.

mod labels;
mod layout;
mod marks;
mod outline;
mod pair;
mod paper;

use noseward_stability::{Body, Design, Figures, SideView, Units};
use noseward_words as words;

use crate::scene::{Group, Scene, Unit};
use layout::Layout;

pub use pair::pair;

/// The sheet that the rocket is drawn on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet {
    /// Width in CSS pixels, 240 or more.
    pub width_px: f64,
    /// Height in CSS pixels, 160 or more.
    pub height_px: f64,
    /// How lengths and masses are written.
    pub units: Units,
    /// How much is written beside the rocket.
    pub labels: LabelStyle,
    /// Which of the two points are drawn.
    pub told: Told,
}

/// Which of a rocket's two points are drawn: a point that a group is still to find is not.
/// Their separation needs both.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Told {
    /// The centre of mass.
    pub mass: bool,
    /// The centre of pressure.
    pub pressure: bool,
}

impl Told {
    /// Both points.
    pub const BOTH: Self = Self { mass: true, pressure: true };
}

/// How much is written beside the rocket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabelStyle {
    /// Names and distances.
    Full,
    /// Names in short lines and distances, for a narrow sheet.
    Short,
}

/// The drawing of a rocket, with groups `paper`, `rocket`, `weights` and `marks`. `None`
/// when the design has no body.
///
/// The figures are those of the same design. Nose up; the ruler's zero is the nose tip.
#[must_use]
pub fn rocket(design: &Design, figures: &Figures, sheet: &Sheet) -> Option<Scene> {
    let body = Body::new(design)?;
    let view = SideView::new(design, &body);
    let layout = Layout::new(&body, &view, sheet);
    Some(Scene {
        width: layout.width,
        height: layout.height,
        unit: Unit::Px,
        name: match design.name.as_str() {
            "" => words::drawing_rocket_nameless().into(),
            name => words::drawing_rocket(name),
        },
        groups: vec![
            Group { key: "paper", items: paper::paper(&layout) },
            Group {
                key: "rocket",
                items: outline::rocket(design, &body, &view, &layout),
            },
            Group { key: "weights", items: outline::weights(design, &layout) },
            Group {
                key: "marks",
                items: marks::marks(design, figures, sheet.told, &layout),
            },
        ],
    })
}

/// How many millimetres one pixel of the drawing stands for, along the axis. `None` as
/// for [`rocket`].
#[must_use]
pub fn mm_per_px(design: &Design, sheet: &Sheet) -> Option<f64> {
    let body = Body::new(design)?;
    let view = SideView::new(design, &body);
    Some(1.0 / Layout::new(&body, &view, sheet).px_per_mm)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};
    use crate::palette::Colour;
    use crate::scene::{Item, Point};
    use crate::svg::GRIP_PX;
    use noseward_stability::{
        BottleSize, Component, Example, FinSet, Planform, SectionKind, UnitSystem,
        Weight, evaluate,
    };

    fn sheets() -> Vec<Sheet> {
        let sheet = |width_px, height_px, labels| Sheet {
            width_px,
            height_px,
            units: Units::METRIC,
            labels,
            told: Told::BOTH,
        };
        vec![
            sheet(760.0, 440.0, LabelStyle::Full),
            sheet(600.0, 400.0, LabelStyle::Full),
            sheet(330.0, 330.0, LabelStyle::Short),
            sheet(290.0, 300.0, LabelStyle::Short),
        ]
    }

    fn designs() -> Vec<Design> {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        designs.extend(BottleSize::ALL.map(BottleSize::design));
        let mut crowded = Example::Puffin.design();
        crowded.weights = (0..12)
            .map(|i| Weight {
                label: format!("steel nut {i}"),
                mass_g: 2.0,
                position_mm: 60.0 + f64::from(i) * 4.0,
            })
            .collect();
        designs.push(crowded);
        let mut wordy = Example::Gannet.design();
        wordy.weights[0].label = "a label as long as can be".chars().take(24).collect();
        designs.push(wordy);
        designs.push(crate::goldens::huge());
        designs
    }

    /// For every example on every sheet: no two texts overlap, and none is cut off.
    #[test]
    fn words_never_overlap_and_stay_on_the_sheet() {
        for design in designs() {
            let figures = evaluate(&design).figures.unwrap();
            for mut sheet in sheets() {
                for system in [UnitSystem::Metric, UnitSystem::Inch] {
                    sheet.units = Units { system };
                    let scene = rocket(&design, &figures, &sheet).unwrap();
                    words_keep_apart(&scene, &format!("{}, {sheet:?}", design.name));
                }
            }
        }
    }

    #[test]
    fn words_stay_on_the_sheet_in_other_languages() {
        in_languages(&words_never_overlap_and_stay_on_the_sheet);
    }

    /// The wind arrow comes from beyond the ruler, at whatever level.
    #[test]
    fn the_wind_covers_no_number_of_the_ruler() {
        let mut design = Example::Puffin.design();
        let mut crossed = 0;
        for start_mm in (0..60).map(|k| 170.0 + f64::from(k)) {
            // It moves the centre of pressure.
            design.fins[0].start_mm = start_mm;
            let figures = evaluate(&design).figures.unwrap();
            for sheet in sheets() {
                let mut scene = rocket(&design, &figures, &sheet).unwrap();
                scene.groups[0].items.retain(|item| matches!(item, Item::Text { .. }));
                scene.groups[3].items.retain(|item| {
                    matches!(item, Item::Path { style, .. }
                        if style.stroke == Some(Colour::Wind))
                });
                crossed += usize::from(scene.groups[3].items.iter().any(|item| {
                    let Item::Path { path, .. } = item else { return false };
                    matches!(&path.runs[..], [(a, _), (b, _)] if a[0].y == b[0].y)
                }));
                scene.groups.drain(1..3);
                lines_miss_words(&scene, &[], &format!("{start_mm}, {sheet:?}"));
            }
        }
        assert!(crossed > 0, "no level was that of a number");
    }

    /// There is no room above it: the words stand below the arrow and its air.
    #[test]
    fn the_words_of_a_point_at_the_nose_stay_clear_of_its_arrow() {
        let design = Example::Gannet.design();
        let mut figures = evaluate(&design).figures.unwrap();
        // As a group may measure it, by a slip.
        figures.centre_of_pressure_side_on_m = 0.001;
        let scene = rocket(&design, &figures, &sheets()[0]).unwrap();
        words_keep_apart(&scene, "a centre of pressure at the nose");
        let marks = &scene.groups[3].items;
        let air = marks.iter().filter_map(|item| match item {
            Item::Path { path, style } if style.stroke == Some(Colour::Wind) => {
                Some(path.runs.iter().flat_map(|(points, _)| points))
            }
            _ => None,
        });
        let lowest = air.flatten().map(|point| point.y).fold(0.0, f64::max);
        let words = marks.iter().filter_map(|item| match item {
            Item::Text { at, colour: Colour::Wind, .. } => Some(at.y),
            _ => None,
        });
        let highest = words.fold(f64::INFINITY, f64::min);
        assert!(lowest + 8.0 < highest && highest < lowest + 30.0, "{lowest} {highest}");
    }

    /// Found by fuzzing: fins so wide that the ruler is shorter than a digit is high.
    #[test]
    fn a_ruler_of_a_few_pixels_is_drawn() {
        let mut design = BottleSize::Ml500.design();
        design.sections.truncate(1);
        design.sections[0].kind = SectionKind::Tube;
        design.sections[0].length_mm = 10.0;
        design.sections[0].diameter_mm = Some(500.0);
        let figures = evaluate(&design).figures.unwrap();
        for sheet in sheets() {
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let layout_height = 10.0 / mm_per_px(&design, &sheet).unwrap();
            assert!(layout_height < 15.0, "{layout_height}");
            assert_eq!(scene.groups.len(), 4);
        }
    }

    /// Fins of every kind, turned every way.
    fn finned() -> Vec<Design> {
        let mut all = designs();
        let own = [(0.0, 0.0), (40.0, 50.0), (20.0, 20.0), (70.0, 60.0), (90.0, 0.0)];
        let four = |tip_mm, span_mm, sweep_mm| Planform::FourSided {
            root_mm: 80.0,
            tip_mm,
            span_mm,
            sweep_mm,
        };
        let planforms = [
            Planform::PointsMm(own.map(|(x, y)| [x, y]).into()),
            four(0.0, 40.0, 80.0),
            four(20.0, 3.0, -10.0),
            four(120.0, 90.0, -40.0),
        ];
        for planform in planforms {
            for count in 2..=8 {
                for roll_deg in [0.0, 30.0, 45.0, 90.0, 170.0, 180.0] {
                    let mut design = Example::Puffin.design();
                    let mut set = FinSet { count, roll_deg, ..design.fins[0].clone() };
                    set.planform = planform.clone();
                    design.fins = vec![set];
                    all.push(design);
                }
            }
        }
        all
    }

    /// Whether a point is within a closed run: it sees the edge an odd number of times.
    fn is_within(run: &[Point], p: Point) -> bool {
        let next = run.iter().cycle().skip(1);
        let crossed = run.iter().zip(next).filter(|(a, b)| {
            (a.y <= p.y) != (b.y <= p.y)
                && a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y) > p.x
        });
        crossed.count() % 2 == 1
    }

    /// Whatever can be dragged has one grip, which lies on it and is large enough.
    #[test]
    fn each_grip_lies_on_what_it_drags() {
        for design in finned() {
            let figures = evaluate(&design).figures.unwrap();
            for sheet in sheets() {
                let scene = rocket(&design, &figures, &sheet).unwrap();
                let mut held = Vec::new();
                for item in scene.groups.iter().flat_map(|group| &group.items) {
                    let Item::Part { part, hint, items } = item else { continue };
                    let which = format!("{part} of {design:?} on {sheet:?}");
                    let grips = || {
                        items.iter().filter_map(|item| match item {
                            &Item::Grip { at, apart_px, half_px } => {
                                Some((at, apart_px, half_px))
                            }
                            _ => None,
                        })
                    };
                    assert_eq!(grips().count(), usize::from(hint.is_some()), "{which}");
                    for (middle, apart_px, half_px) in grips() {
                        held.push(*part);
                        // A finger finds it, and what is seen is part of that.
                        assert!(GRIP_PX >= 12.0 && half_px < GRIP_PX, "{which}");
                        assert!(apart_px > 0.0 && apart_px < GRIP_PX, "{which}");
                        let (left, right) = (middle.x - half_px, middle.x + half_px);
                        assert!(left > 0.0 && right < sheet.width_px, "{which}");
                        let lies_on = items.iter().any(|item| match item {
                            Item::Path { path, .. } => is_within(&path.runs[0].0, middle),
                            Item::Dot { centre, radius, .. } => {
                                let (dx, dy) = (centre.x - middle.x, centre.y - middle.y);
                                libm::hypot(dx, dy) < *radius
                            }
                            _ => false,
                        });
                        assert!(lies_on, "{which}: {middle:?}");
                    }
                }
                let fins = (0..design.fins.len()).map(Component::Fins);
                let weights = (0..design.weights.len()).map(Component::Weight);
                let all: Vec<Component> = fins.chain(weights).collect();
                held.sort();
                let mut wanted = all;
                wanted.sort();
                assert_eq!(held, wanted);
            }
        }
    }

    /// A bottle shines and has its cap; a tube of paper has neither.
    #[test]
    fn a_bottle_looks_like_one() {
        let looks = |example: Example| {
            let design = example.design();
            let figures = evaluate(&design).figures.unwrap();
            let scene = rocket(&design, &figures, &sheets()[0]).unwrap();
            let is_bold = |item: &&Item| match item {
                Item::Path { style, .. } => {
                    [style.fill, style.stroke].contains(&Some(Colour::BoldLine))
                }
                _ => false,
            };
            scene.groups[1].items.iter().filter(is_bold).count()
        };
        assert_eq!(looks(Example::Puffin), 2);
        assert_eq!(looks(Example::Gannet), 0);
    }

    #[test]
    fn a_point_that_is_not_told_leaves_no_mark_and_no_words() {
        let design = Example::Puffin.design();
        let figures = evaluate(&design).figures.unwrap();
        let colours = |told: Told| {
            let sheet = Sheet { told, ..sheets()[0] };
            let scene = rocket(&design, &figures, &sheet).unwrap();
            let marks =
                scene.groups.into_iter().find(|group| group.key == "marks").unwrap();
            let words: Vec<(String, Colour)> = marks
                .items
                .into_iter()
                .filter_map(|item| match item {
                    Item::Text { words, colour, .. } => Some((words, colour)),
                    _ => None,
                })
                .collect();
            let is = |wanted: Colour| words.iter().any(|(_, colour)| *colour == wanted);
            let apart = words.iter().any(|(words, _)| words.contains("apart"));
            (is(Colour::Fulcrum), is(Colour::Wind), apart)
        };
        assert_eq!(colours(Told::BOTH), (true, true, true));
        let one = |mass: bool| Told { mass, pressure: !mass };
        assert_eq!(colours(one(true)), (true, false, false));
        assert_eq!(colours(one(false)), (false, true, false));
        let none = Told { mass: false, pressure: false };
        assert_eq!(colours(none), (false, false, false));
    }
}
