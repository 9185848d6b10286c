//! What holds for every sheet with parts.

use noseward_stability::{BottleSize, Design, Example, Planform, SectionKind};

use super::piece::edges;
use super::*;
use crate::boxes::in_languages;
use crate::paper::{Tag, wide};
use crate::scene::Scene;

/// Area of an outline, by triangles from the origin.
pub(super) fn area_mm2(outline: &[Point]) -> f64 {
    let twice: f64 = edges(outline).map(|(a, b)| a.x * b.y - b.x * a.y).sum();
    twice.abs() / 2.0
}

/// Four corners of a line of words, and the words.
type WordBox = ([Point; 4], String);

/// What is on a page, on its paper.
#[derive(Default)]
struct Marks {
    words: Vec<WordBox>,
    lines: Vec<(Point, Point)>,
}

impl Marks {
    fn of(page: &Page) -> Self {
        let mut marks = Self::default();
        marks.add(&page.scene, &|p| p);
        marks
    }

    fn add(&mut self, scene: &Scene, onto: &dyn Fn(Point) -> Point) {
        for item in scene.groups.iter().flat_map(|group| &group.items) {
            match item {
                Item::Path { path, .. } => {
                    for (points, closed) in &path.runs {
                        let count = points.len() - usize::from(!closed);
                        let all = edges(points).take(count);
                        self.lines.extend(all.map(|(a, b)| (onto(a), onto(b))));
                    }
                }
                Item::Text { at, anchor, words, bold, size, .. } => {
                    let width = wide(words, *size, *bold);
                    let left = match anchor {
                        Anchor::Start => at.x,
                        Anchor::Middle => at.x - width / 2.0,
                        Anchor::End => at.x - width,
                    };
                    let (top, bottom) = (at.y - 0.74 * size, at.y + 0.22 * size);
                    let corners =
                        [(0.0, top), (width, top), (width, bottom), (0.0, bottom)];
                    let corners = corners.map(|(x, y)| onto(Point { x: left + x, y }));
                    self.words.push((corners, words.clone()));
                }
                Item::Placed { at, scale, turned_deg, scene } => {
                    if *scale != 1.0 {
                        self.is_told_small(*scale);
                    }
                    let (sin, cos) = libm::sincos(turned_deg.to_radians());
                    self.add(scene, &|p| {
                        let p = Point { x: p.x * scale, y: p.y * scale };
                        onto(Point {
                            x: at.x + p.x * cos - p.y * sin,
                            y: at.y + p.x * sin + p.y * cos,
                        })
                    });
                }
                other => panic!("{other:?}"),
            }
        }
    }
}

impl Marks {
    /// All is at true size, but for what the words before it call a small picture.
    fn is_told_small(&self, scale: f64) {
        let said: Vec<&str> = self.words.iter().map(|(_, said)| said.as_str()).collect();
        assert!(scale < 1.0, "{scale}");
        assert!(said.join(" ").ends_with(texts::paper_parts_small().as_str()), "{scale}");
    }
}

/// Whether two shapes without dents have room between them: along the normal of one of the edges
/// (the theorem of separating axes).
fn apart(one: &[Point], other: &[Point]) -> bool {
    edges(one).chain(edges(other)).any(|(a, b)| {
        let over = |shape: &[Point]| {
            let along = shape.iter().map(|p| p.x * (b.y - a.y) - p.y * (b.x - a.x));
            along
                .fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
        };
        let ((a_low, a_high), (b_low, b_high)) = (over(one), over(other));
        a_high <= b_low + 1e-9 || b_high <= a_low + 1e-9
    })
}

/// Designs with every kind of section that can be cut from card, on bottles of every size.
fn designs() -> Vec<Design> {
    let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
    for (size, i) in BottleSize::ALL.into_iter().zip(0_u32..) {
        let mut design = Example::Puffin.design();
        design.name = String::new();
        let bottle = size.design().sections;
        let noses = SectionKind::ALL.into_iter().filter(|kind| kind.is_nose());
        for kind in noses.cycle().skip(i as usize).step_by(2).take(2) {
            let mut nose = design.sections[0].clone();
            (nose.kind, nose.length_mm) = (kind, 90.0);
            if kind == SectionKind::Dome {
                nose.length_mm = 25.0;
            }
            let mut sections = vec![nose];
            sections.extend(bottle.clone());
            if i % 2 == 0 {
                sections[2].kind = SectionKind::StraightTaper;
            }
            let mut fins = Example::Tern.design().fins.remove(0);
            (fins.count, fins.roll_deg) = (2 + i, 10.0);
            if kind == SectionKind::Cone {
                let own = vec![[0.0, 0.0], [-10.0, 60.0], [30.0, 40.0], [70.0, 0.0]];
                fins.planform = Planform::PointsMm(own);
            }
            let fins = vec![design.fins[0].clone(), fins];
            designs.push(Design { sections, fins, ..design.clone() });
        }
        designs.push(size.design());
    }
    designs
}

/// Every sheet of a design, each with its name.
fn sheets(size: PaperSize, design: &Design) -> Vec<(String, Vec<Page>)> {
    let mut sheets = vec![("strip".to_owned(), strip_pattern(size, design))];
    for set in 0..design.fins.len() {
        sheets.push((format!("fins {set}"), fin_pattern(size, design, set)));
    }
    for section in 0..design.sections.len() {
        let name = format!("section {section}");
        sheets.push((name, section_pattern(size, design, section)));
    }
    sheets
}

fn inside(page: &Page, which: &str) {
    let Marks { words, lines } = Marks::of(page);
    let left = (page.scene.width - Flow::WIDTH_MM) / 2.0;
    let is_inside = |p: &Point| {
        p.x >= left - 1e-6
            && p.x <= left + Flow::WIDTH_MM + 1e-6
            && p.y >= 12.0 - 1e-6
            && p.y <= 12.0 + 255.0 + 1e-6
    };
    for (corners, said) in &words {
        assert!(corners.iter().all(is_inside), "{which}: {said} {corners:?}");
    }
    for (a, b) in &lines {
        assert!(is_inside(a) && is_inside(b), "{which}: {a:?} {b:?}");
    }
}

fn words_stand_alone(page: &Page, which: &str) {
    let Marks { words, lines } = Marks::of(page);
    for (i, (one, said)) in words.iter().enumerate() {
        for (other, too) in &words[i + 1..] {
            assert!(apart(one, other), "{which}: {said:?} and {too:?}");
        }
        for (a, b) in &lines {
            assert!(apart(one, &[*a, *b]), "{which}: {said:?} and {a:?} {b:?}");
        }
    }
}

#[test]
fn all_is_within_the_room_of_both_papers() {
    for size in PaperSize::ALL {
        for design in designs() {
            for (name, pages) in sheets(size, &design) {
                for page in &pages {
                    inside(page, &format!("{size:?} {} {name}", design.name));
                }
            }
        }
        tools_pattern(size).iter().for_each(|page| inside(page, "tools"));
    }
}

#[test]
fn words_keep_off_each_other_and_off_lines() {
    let check = || {
        for design in designs() {
            for (name, pages) in sheets(PaperSize::A4, &design) {
                for page in &pages {
                    let language = texts::language().key;
                    words_stand_alone(
                        page,
                        &format!("{language} {} {name}", design.name),
                    );
                }
            }
        }
        tools_pattern(PaperSize::A4)
            .iter()
            .for_each(|page| words_stand_alone(page, "tools"));
    };
    check();
    in_languages(&check);
}

#[test]
fn both_papers_have_the_same_pages() {
    for design in designs() {
        let of = |size| {
            let pages = sheets(size, &design).into_iter().flat_map(|(_, pages)| pages);
            pages.map(|page| page.tags).collect::<Vec<Vec<Tag>>>()
        };
        assert_eq!(of(PaperSize::A4), of(PaperSize::Letter));
    }
}

/// Whatever is cut has bars beside it, and whatever can be cut has a sheet.
#[test]
fn every_part_has_a_sheet_and_every_sheet_its_bars() {
    for design in designs() {
        for (name, pages) in sheets(PaperSize::A4, &design) {
            let is_neck = |section: usize| {
                name == format!("section {section}")
                    && design.sections[section].kind == SectionKind::Neck
            };
            let none = (0..design.sections.len()).any(is_neck)
                || (name == "strip" && design.fins.is_empty());
            assert_eq!(pages.is_empty(), none, "{} {name}", design.name);
            for page in &pages {
                let figures = page.tags.iter().filter(|t| matches!(t, Tag::Figure(_)));
                let bars = Marks::of(page).words.into_iter();
                let bars = bars.filter(|(_, said)| said == "100 mm").count();
                // The lines are told on the first page; a page with parts has both bars.
                let told = usize::from(std::ptr::eq(page, &pages[0]));
                assert_eq!(2 * (figures.count() - told), bars, "{name}");
            }
        }
    }
}

/// What is too large is told so: over several sheets, or why not.
#[test]
fn large_parts_are_told() {
    let mut design = Example::Puffin.design();
    let said = |pages: &[Page]| -> String {
        let words = pages.iter().flat_map(|page| Marks::of(page).words);
        words.map(|(_, said)| said).collect::<Vec<_>>().join(" ")
    };
    let mut with_fins = |root_mm: f64| {
        design.fins[0].planform = Planform::FourSided {
            root_mm,
            tip_mm: root_mm / 2.0,
            span_mm: root_mm / 2.0,
            sweep_mm: root_mm / 2.0,
        };
        fin_pattern(PaperSize::A4, &design, 0)
    };
    let several = with_fins(400.0);
    assert_eq!(several.len(), 1 + 3);
    several.iter().for_each(|page| inside(page, "large fin"));
    let words = said(&several);
    assert!(words.contains("larger than a sheet: 400 mm by 212 mm"), "{words}");
    assert!(words.contains("draw round it 4 times") && words.contains("Part 3 of 3"));
    // 450 by 237 mm: two sheets by two where it lies down, three by two where it does not.
    assert_eq!(with_fins(450.0).len(), 1 + 4);
    let refused = with_fins(1600.0);
    assert_eq!(refused.len(), 1);
    assert!(said(&refused).contains("more than 12 sheets"));
    // A cone of which half fits is made of two.
    design.sections[0].kind = SectionKind::Cone;
    design.sections[0].length_mm = 150.0;
    design.sections[1].diameter_mm = Some(160.0);
    let halves = section_pattern(PaperSize::A4, &design, 0);
    let words = said(&halves);
    assert!(words.contains("made of 2 parts") && words.contains("Nose, part 2 of 2"));
    halves.iter().for_each(|page| inside(page, "halves"));
    // Leaves that are longer than a sheet are drawn once.
    design.sections[0].kind = SectionKind::Ogive;
    design.sections[0].length_mm = 500.0;
    let leaves = section_pattern(PaperSize::A4, &design, 0);
    assert!(said(&leaves).contains("draw round it 12 times"));
    leaves.iter().for_each(|page| inside(page, "leaves"));
}

#[test]
fn a_piece_alone_is_of_its_size() {
    let design = Example::Puffin.design();
    let size = |scene: Scene| (scene.width, scene.height);
    let near = |(a, b): (f64, f64), (c, d): (f64, f64)| {
        (a - c - 2.0).abs() < 1e-9 && (b - d - 2.0).abs() < 1e-9
    };
    assert!(near(size(fin_piece(&design, 0).unwrap()), (110.0, 55.0 + fin::TAB_MM)));
    let strip = (PI * 65.0 + strip::TAB_MM, strip::HEIGHT_MM);
    assert!(near(size(strip_piece(&design, 0).unwrap()), strip));
    assert!(near(size(ruler_piece()), (250.0, 26.0)));
    assert!(near(size(stand_piece()), (tools::EDGE_MM, 138.0)));
    let [tube] = &section_pieces(&design, 1)[..] else { panic!() };
    assert!(near(size(tube.clone()), (PI * 65.0 + 10.0, 125.0)));
    let [nose] = &section_pieces(&design, 0)[..] else { panic!() };
    assert!((nose.width - 2.0 - PI * 65.0 - gore::TAB_MM).abs() < 1e-9);
    assert_eq!((fin_piece(&design, 1), strip_piece(&design, 1)), (None, None));
    assert_eq!(section_pieces(&design, 3), [], "a neck");
    assert_eq!(section_pieces(&design, 9), []);
    assert_eq!(fin_pattern(PaperSize::A4, &design, 1), []);
    assert_eq!(strip_pattern(PaperSize::A4, &Design::default()), []);
}

/// A design with faults comes to no part rather than to an endless one.
#[test]
fn numbers_beyond_all_bounds_come_to_nothing() {
    let none = |change: &dyn Fn(&mut Design)| {
        let mut design = Example::Puffin.design();
        change(&mut design);
        let sheets = sheets(PaperSize::A4, &design);
        assert!(sheets.iter().all(|(_, pages)| pages.is_empty()));
    };
    for wrong in [f64::NAN, f64::INFINITY, 1e9] {
        none(&|d| d.sections[0].length_mm = wrong);
        none(&|d| d.sections[1].diameter_mm = Some(wrong));
        none(&|d| d.fins[0].start_mm = wrong);
        none(&|d| {
            d.fins[0].planform = Planform::PointsMm(vec![[0.0, 0.0], [wrong, 9.0]]);
        });
    }
    none(&|d| d.fins[0].count = 1_000_000);
    none(&|d| d.fins[0].roll_deg = f64::NAN);
}
