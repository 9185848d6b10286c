//! The cut-out on paper: the side view at true size over several sheets, or smaller on one.

mod clip;
mod outline;
mod tiles;

use noseward_stability::{Body, Design, SideView, Units};
use noseward_words as texts;

use crate::palette::Colour;
use crate::paper::{
    CHECK_BAR_MM, CHECK_BAR_WIDE_MM, Flow, Mark, Page, PaperSize, check_bars,
};
use crate::pattern::within_limits;
use crate::scene::{Anchor, Item, Point, Scene};
use crate::written::Written;
pub(crate) use clip::{Window, clipped};
use outline::Outline;
pub(crate) use tiles::{TILE_MM, Tiles};

/// What takes more sheets than this is made smaller.
const MOST_SHEETS: usize = 24;
/// Between a picture and the bars beside it.
const APART_MM: f64 = 6.0;
/// What the bars take of the width and of the height, with what is free round them.
const BARS_MM: (f64, f64) =
    (CHECK_BAR_WIDE_MM + 2.0 * APART_MM, CHECK_BAR_WIDE_MM + APART_MM + 6.0);

/// How a cut-out is put on paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutOut {
    /// The paper.
    pub size: PaperSize,
    /// Whether it is made smaller so that one sheet has room for it.
    pub on_one_sheet: bool,
    /// How lengths are written.
    pub units: Units,
    /// The two points, in millimetres from the nose tip, on a sheet with answers: the centre of
    /// mass, and the centre of pressure side-on.
    pub answers_mm: Option<(f64, f64)>,
}

/// The pages of a cut-out: how it is made, and its parts. `None` when the design has no body,
/// or numbers beyond the limits of one without faults.
///
/// The outline is that of [`SideView::contours_m`]; a line is as wide as a pencil's, and its middle
/// lies on the outline.
#[must_use]
pub fn cut_out(design: &Design, wish: &CutOut) -> Option<Vec<Page>> {
    if !within_limits(design) {
        return None;
    }
    let view = SideView::new(design, &Body::new(design)?);
    let outlined = |scale: f64| Outline::new(&view, scale, wish.answers_mm);
    let full = outlined(1.0);
    let mut flow = Flow::new(wish.size, &title(design, wish));
    let is_too_large = !wish.on_one_sheet && Tiles::new(&full).count() > MOST_SHEETS;
    if is_too_large {
        flow.paragraph(&texts::paper_parts_too_large(MOST_SHEETS.into()));
    }
    // What the words leave of a sheet.
    let mut with_words = flow.clone();
    explain(&mut with_words, &outlined(0.99), wish, false);
    let room = (
        Flow::WIDTH_MM - BARS_MM.0 - 2.0 * full.beside_mm(),
        with_words.room_mm() - BARS_MM.1,
    );
    let fit = (room.0 / full.width).min(room.1 / full.height);
    let is_small = wish.on_one_sheet || is_too_large || fit >= 1.0;
    let outline = if is_small { outlined(whole_percent(fit.min(1.0))) } else { full };
    let tiles = (!is_small).then(|| Tiles::new(&outline));
    explain(&mut flow, &outline, wish, tiles.is_some());
    let (name, picture) = match &tiles {
        Some(tiles) => (texts::cut_out_map(), tiles.map(&outline.path)),
        None => (texts::cut_out_drawing(), outline.scene(texts::cut_out_drawing())),
    };
    beside_bars(&mut flow, name.as_str(), picture);
    if let Some(tiles) = tiles {
        let of = tiles.count();
        for i in 0..of {
            flow.next_page();
            flow.small(&texts::cut_out_sheet((i + 1).into(), of.into()));
            let tile = tiles.tile(&outline, i);
            let size = (tile.width, tile.height);
            flow.figure(&tile, size);
        }
    }
    Some(flow.pages())
}

/// The outline alone, in millimetres, for a cutter or another program. `None` when the design has
/// no body.
#[must_use]
pub fn cut_out_outline(design: &Design) -> Option<Scene> {
    if !within_limits(design) {
        return None;
    }
    let view = SideView::new(design, &Body::new(design)?);
    Some(Outline::new(&view, 1.0, None).scene(texts::cut_out_drawing()))
}

/// A share of the whole, down to whole per cent, or where that is little to tenths.
fn whole_percent(share: f64) -> f64 {
    let steps = if share < 0.1 { 1000.0 } else { 100.0 };
    (share * steps).floor().max(1.0) / steps
}

fn title(design: &Design, wish: &CutOut) -> String {
    match (design.name.as_str(), wish.answers_mm.is_some()) {
        ("", false) => texts::cut_out_title_nameless().into(),
        ("", true) => texts::cut_out_answers_nameless().into(),
        (name, false) => texts::cut_out_title(name),
        (name, true) => texts::cut_out_answers(name),
    }
}

/// What it is, and how it is made and used.
fn explain(flow: &mut Flow, outline: &Outline, wish: &CutOut, is_tiled: bool) {
    let length = wish.units.length(outline.length_mm * outline.scale);
    // The unit stays beside its number.
    let length = length.replace(' ', "\u{a0}");
    let size = if outline.scale < 1.0 {
        let percent = texts::Number::trimmed(outline.scale * 100.0, 1);
        texts::cut_out_scaled(percent, &length)
    } else {
        texts::cut_out_true_size(&length)
    };
    flow.paragraph(&format!("{} {size}", texts::cut_out_view()));
    if let Some((mass, pressure)) = wish.answers_mm {
        let told = |mm: f64| wish.units.reading(mm);
        flow.list(
            &[
                texts::cut_out_mass_at(&told(mass)),
                texts::cut_out_pressure_at(&told(pressure)),
                texts::cut_out_apart(&told((pressure - mass).abs())),
            ],
            Mark::Dot,
        );
        return;
    }
    flow.caution(texts::cut_out_caution().as_str());
    let mut steps = if is_tiled {
        vec![texts::cut_out_step_check_all(), texts::cut_out_step_join()]
    } else {
        vec![texts::cut_out_step_check()]
    };
    steps.extend(outline.is_loose.then(texts::cut_out_step_loose));
    steps.extend([
        texts::cut_out_step_cut(),
        texts::cut_out_step_card(),
        texts::cut_out_step_measure(),
        texts::cut_out_step_balance(),
    ]);
    flow.list(&steps, Mark::Number);
    flow.fields(&[
        texts::cut_out_own_length().as_str(),
        texts::cut_out_balances().as_str(),
    ]);
}

/// A picture with a bar of 100 mm above it and another beside it.
fn beside_bars(flow: &mut Flow, name: &str, picture: Scene) {
    flow.space(3.0);
    let left = CHECK_BAR_WIDE_MM + APART_MM;
    let height = (CHECK_BAR_WIDE_MM + APART_MM + picture.height)
        .max(2.0 * CHECK_BAR_WIDE_MM + CHECK_BAR_MM);
    let along = Point { x: 0.0, y: CHECK_BAR_WIDE_MM };
    let mut items = check_bars(Point { x: left, y: 0.0 }, along);
    let at = Point {
        x: left + APART_MM + (Flow::WIDTH_MM - left - APART_MM - picture.width) / 2.0,
        y: CHECK_BAR_WIDE_MM + APART_MM,
    };
    items.push(Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene: picture });
    flow.drawing(name, height, items);
}

const WORDS_MM: f64 = 3.0;

/// Small words of a cut-out.
fn words(at: Point, anchor: Anchor, words: &str) -> Item {
    Item::Text {
        at,
        anchor,
        words: words.to_owned(),
        colour: Colour::Soft,
        bold: false,
        size: WORDS_MM,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use crate::paper::Tag;
    use crate::paper::inside::everything_is_inside;
    use noseward_stability::{BottleSize, Example, Section};

    fn wish(size: PaperSize, on_one_sheet: bool) -> CutOut {
        CutOut { size, on_one_sheet, units: Units::METRIC, answers_mm: None }
    }

    fn designs() -> Vec<Design> {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        designs.extend(BottleSize::ALL.map(BottleSize::design));
        designs
    }

    #[test]
    fn every_line_is_on_some_sheet() {
        for design in designs() {
            let view = SideView::new(&design, &Body::new(&design).unwrap());
            let outline = Outline::new(&view, 1.0, None);
            let (shown, all) =
                (Tiles::new(&outline).ink_mm(&outline), tiles::length_mm(&outline.path));
            assert!((shown - all).abs() < 1e-6, "{}: {shown} {all}", design.name);
        }
    }

    #[test]
    fn both_papers_have_the_same_pages() {
        for design in designs() {
            for on_one in [true, false] {
                let [a4, letter] =
                    PaperSize::ALL.map(|size| cut_out(&design, &wish(size, on_one)));
                let (a4, letter) = (a4.unwrap(), letter.unwrap());
                assert_eq!(a4.len(), letter.len());
                assert!(!on_one || a4.len() == 1, "{}: {}", design.name, a4.len());
                for (one, other) in a4.iter().zip(&letter) {
                    assert_eq!(one.tags, other.tags);
                }
            }
        }
    }

    /// The third fin of one example has a straight root beside a body that tapers.
    #[test]
    fn a_part_that_would_fall_off_is_told() {
        for example in Example::ALL {
            let pages = cut_out(&example.design(), &wish(PaperSize::A4, true)).unwrap();
            let is_told = format!("{pages:?}").contains("touches the body at a point");
            assert_eq!(is_told, example == Example::Tern, "{example:?}");
        }
    }

    /// The words at both points, over lines of no outline and within the sheet.
    #[test]
    fn answers_keep_off_the_outline() {
        let check = || {
            for (design, on_one) in designs().iter().flat_map(|d| [(d, true), (d, false)])
            {
                let view = SideView::new(design, &Body::new(design).unwrap());
                let long = design.length_mm();
                for share in [0.1, 0.4, 0.7, 0.9] {
                    let answers_mm = Some((long * share, long * (1.0 - share)));
                    let scale = if on_one { 0.3 } else { 1.0 };
                    assert!(Outline::new(&view, scale, answers_mm).has_free_words());
                    let wish = CutOut { answers_mm, ..wish(PaperSize::A4, on_one) };
                    let pages = cut_out(design, &wish).unwrap();
                    assert!(!on_one || pages.len() == 1);
                    everything_is_inside(&pages);
                }
            }
        };
        check();
        in_languages(&check);
    }

    #[test]
    fn one_sheet_is_one_sheet_in_every_language() {
        in_languages(&|| {
            for design in designs() {
                let pages = cut_out(&design, &wish(PaperSize::A4, true)).unwrap();
                assert_eq!(pages.len(), 1, "{} {}", texts::language().key, design.name);
                everything_is_inside(&pages);
            }
        });
    }

    #[test]
    fn what_is_as_long_as_a_room_is_made_smaller_and_says_so() {
        let mut design = Example::Puffin.design();
        let tube = Section { length_mm: 2_000.0, ..design.sections[1].clone() };
        design.sections.splice(1..2, vec![tube; 4]);
        let pages = cut_out(&design, &wish(PaperSize::A4, false)).unwrap();
        assert_eq!(pages.len(), 1);
        assert!(format!("{pages:?}").contains("more than 24 sheets"));
        design.sections[1].length_mm = 1e300;
        assert_eq!(cut_out(&design, &wish(PaperSize::A4, false)), None);
        assert_eq!(cut_out_outline(&design), None);
    }

    #[test]
    fn no_point_is_told_to_whoever_measures() {
        let design = Example::Puffin.design();
        let told = |answers_mm| {
            let wish = CutOut { answers_mm, ..wish(PaperSize::A4, false) };
            format!("{:?}", cut_out(&design, &wish).unwrap())
        };
        let both = told(Some((140.0, 202.0)));
        for words in ["140 mm", "202 mm", "62 mm", "centre of mass"] {
            assert!(both.contains(words) && !told(None).contains(words), "{words}");
        }
        let figures = cut_out(&design, &wish(PaperSize::A4, false)).unwrap();
        let figures = figures.iter().flat_map(|page| &page.tags);
        assert_eq!(figures.filter(|tag| matches!(tag, Tag::Figure(_))).count(), 3);
    }
}
