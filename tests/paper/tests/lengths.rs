//! What is drawn at true size has that size, by counted pixels.

use anyhow::{Context, Result, ensure};
use noseward_drawing::paper::{
    CHECK_BAR_MM, CHECK_BAR_WIDE_MM, Flow, Page, PaperSize, Tag, check_bars,
};
use noseward_drawing::{CutOut, Group, Item, Point, Scene, cut_out};
use noseward_paper_tests::{
    Document, INK, Picture, cut_out_found, small_cut_out_found, words,
};
use noseward_stability::{
    Body, BottleSize, Design, Example, FinSet, Planform, SideView, Units,
};

/// How far two bars at these places are from end stroke to end stroke.
fn bars_mm(picture: &Picture, across: Point, along: Point) -> Result<[f64; 2]> {
    let apart = |strokes: Vec<f64>, start: f64| {
        let near = |mm: f64| strokes.iter().find(|stroke| (*stroke - mm).abs() < 2.0);
        let (from, to) = near(start).zip(near(start + CHECK_BAR_MM)).context("no bar")?;
        Ok::<f64, anyhow::Error>(to - from)
    };
    // There the end strokes are, and nothing of the bar between them.
    let beside = CHECK_BAR_WIDE_MM / 6.0;
    Ok([
        apart(picture.strokes_in_row(across.y + beside, INK), across.x)?,
        apart(picture.strokes_in_column(along.x + beside, INK), along.y)?,
    ])
}

/// Where the drawing lies that stands on a page.
fn drawing_at(page: &Page) -> Option<Point> {
    let mut groups = page.scene.groups.iter().zip(&page.tags);
    let (group, _) = groups.find(|(_, tag)| matches!(tag, Tag::Figure(_)))?;
    match group.items.first()? {
        Item::Placed { at, .. } => Some(*at),
        _ => None,
    }
}

fn assert_true_to_size(name: &str, bars: [f64; 2]) {
    for bar in bars {
        assert!((bar - CHECK_BAR_MM).abs() < 0.2, "{name}: {bars:?}");
    }
}

#[test]
fn check_bars_are_100_mm_long_both_ways() -> Result<()> {
    for size in PaperSize::ALL {
        let (across, along) = (Point { x: 31.7, y: 12.3 }, Point { x: 160.9, y: 20.1 });
        let mut flow = Flow::new(size, "Bars");
        flow.drawing("Bars", 130.0, check_bars(across, along));
        let pages = flow.pages();
        let document = Document::write(&format!("bars-{size:?}"), &pages, "en-GB")?;
        let at = drawing_at(&pages[0]).context("no drawing")?;
        let moved = |to: Point| Point { x: at.x + to.x, y: at.y + to.y };
        let picture = document.picture(1, 300)?;
        let bars = bars_mm(&picture, moved(across), moved(along))?;
        eprintln!("{size:?}: {bars:?}");
        assert_true_to_size(&format!("{size:?}"), bars);
    }
    Ok(())
}

/// The tests above would see it: "fit to page" makes some 3 % less of a sheet.
#[test]
fn a_sheet_that_was_made_smaller_is_told_by_its_bars() -> Result<()> {
    let at = Point { x: 20.0, y: 20.0 };
    let mut flow = Flow::new(PaperSize::A4, "Bars");
    flow.drawing("Bars", 130.0, check_bars(at, at));
    let page = flow.pages().remove(0);
    let corner = drawing_at(&page).context("no drawing")?;
    let scene = page.scene.clone();
    let origin = Point::default();
    let smaller = Item::Placed { at: origin, scale: 0.97, turned_deg: 0.0, scene };
    let groups = vec![Group { key: "page", items: vec![smaller] }];
    let scene = Scene { groups, ..page.scene };
    let pages = [Page { scene, tags: vec![Tag::Artifact] }];
    let picture = Document::write("bars-smaller", &pages, "en-GB")?.picture(1, 300)?;
    let at = Point { x: 0.97 * (corner.x + at.x), y: 0.97 * (corner.y + at.y) };
    let apart = |strokes: Vec<f64>, start: f64| {
        let near = |mm: f64| strokes.iter().find(|stroke| (*stroke - mm).abs() < 0.3);
        near(start).zip(near(start + 97.0)).is_some()
    };
    assert!(apart(picture.strokes_in_row(at.y + 0.6, INK), at.x));
    assert!(bars_mm(&picture, at, at).is_err());
    Ok(())
}

fn four_sided(root_mm: f64, tip_mm: f64, span_mm: f64, sweep_mm: f64) -> Planform {
    Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm }
}

/// Puffin with other fins: how many, from where, by how much they are turned, and their outline.
fn with_fins(count: u32, start_mm: f64, roll_deg: f64, planform: Planform) -> Design {
    let mut design = Example::Puffin.design();
    let fins = FinSet { count, start_mm, roll_deg, planform, ..design.fins[0].clone() };
    design.fins = vec![fins];
    design
}

fn designs() -> Vec<Design> {
    let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
    designs.extend(BottleSize::ALL.map(BottleSize::design));
    let own = |corners: &[[f64; 2]]| Planform::PointsMm(corners.into());
    designs.extend([
        with_fins(2, 200.0, 0.0, four_sided(100.0, 100.0, 90.0, 0.0)),
        with_fins(3, 180.0, 0.0, four_sided(120.0, 0.0, 140.0, 150.0)),
        with_fins(3, 150.0, 30.0, four_sided(60.0, 40.0, 30.0, 20.0)),
        with_fins(4, 215.0, 45.0, four_sided(110.0, 60.0, 80.0, 90.0)),
        with_fins(4, 180.0, 20.0, four_sided(100.0, 50.0, 60.0, -60.0)),
        with_fins(5, 230.0, 0.0, four_sided(70.0, 70.0, 35.0, 70.0)),
        with_fins(6, 210.0, 10.0, four_sided(80.0, 20.0, 100.0, 60.0)),
        with_fins(8, 215.0, 0.0, four_sided(90.0, 30.0, 50.0, 30.0)),
        with_fins(
            2,
            205.0,
            0.0,
            own(&[[0.0, 0.0], [40.0, 70.0], [90.0, 60.0], [60.0, 25.0], [80.0, 0.0]]),
        ),
        with_fins(4, 60.0, 0.0, own(&[[0.0, 0.0], [20.0, 30.0], [30.0, 0.0]])),
    ]);
    designs
}

/// Length and centre of the side view from the nose tip, in millimetres, and its area.
fn computed(design: &Design) -> Result<[f64; 3]> {
    let view = SideView::new(design, &Body::new(design).context("it has a body")?);
    let (area, centroid) = view.area_and_centroid_m();
    let all = view.contours_m();
    let tail = all.iter().flatten().map(|place| place.x).fold(0.0, f64::max);
    Ok([tail * 1e3, centroid * 1e3, area * 1e6])
}

/// Every second design from `first` on is put on this paper, drawn at 300 dpi, joined, cut out
/// and measured, and comes to what was computed.
fn cut_outs_are_what_was_computed(size: PaperSize, first: usize) -> Result<()> {
    for (design, i) in designs().iter().zip(0..).skip(first).step_by(2) {
        let name = format!("cut-out-{i}-{size:?}");
        let wish =
            CutOut { size, on_one_sheet: false, units: Units::METRIC, answers_mm: None };
        let pages = cut_out(design, &wish).context("it has a body")?;
        let document = Document::write(&name, &pages, "en-GB")?;
        let found = cut_out_found(&document, &pages).context(name.clone())?;
        let [length, centroid, area] = computed(design)?;
        eprintln!(
            "{name}: {} sheets, length {:+.3}, centroid {:+.3}, area {:+.3} %, jump {:.3}",
            found.sheets,
            found.length_mm - length,
            found.centroid_mm - centroid,
            (found.area_mm2 / area - 1.0) * 100.0,
            found.jump_mm
        );
        ensure!((found.length_mm - length).abs() < 0.3, "{name}: {found:?}, {length}");
        ensure!(
            (found.centroid_mm - centroid).abs() < 0.3,
            "{name}: {found:?}, {centroid}"
        );
        ensure!((found.area_mm2 / area - 1.0).abs() < 0.003, "{name}: {found:?}, {area}");
        ensure!(found.jump_mm < 0.3, "{name}: {found:?}");
        let at = drawing_at(&pages[0]).context("bars")?;
        let moved = |x, y| Point { x: at.x + x, y: at.y + y };
        let bars =
            bars_mm(&document.picture(1, 300)?, moved(10.0, 0.0), moved(0.0, 4.0))?;
        assert_true_to_size(&name, bars);
    }
    Ok(())
}

#[test]
fn cut_outs_on_a4_are_what_was_computed() -> Result<()> {
    cut_outs_are_what_was_computed(PaperSize::A4, 0)
}

#[test]
fn cut_outs_on_letter_are_what_was_computed() -> Result<()> {
    cut_outs_are_what_was_computed(PaperSize::Letter, 1)
}

/// On one sheet it is as small as the sheet says, and whole.
#[test]
fn small_cut_outs_have_the_size_that_they_tell() -> Result<()> {
    for (design, i) in designs().iter().zip(0..) {
        let name = format!("cut-out-small-{i}");
        let wish = CutOut {
            size: PaperSize::A4,
            on_one_sheet: true,
            units: Units::METRIC,
            answers_mm: None,
        };
        let pages = cut_out(design, &wish).context("it has a body")?;
        let document = Document::write(&name, &pages, "en-GB")?;
        let text = words(&document.text(1)?);
        let sign =
            text.iter().position(|word| word == "%").context("it tells its size")?;
        let scale = text[sign - 1].parse::<f64>()? / 100.0;
        let found = small_cut_out_found(&document, &pages[0]).context(name.clone())?;
        let [length, centroid, area] = computed(design)?;
        eprintln!("{name}: {scale}, {:+.3}", found.centroid_mm - centroid * scale);
        ensure!((found.length_mm - length * scale).abs() < 0.3, "{name}: {found:?}");
        ensure!((found.centroid_mm - centroid * scale).abs() < 0.3, "{name}: {found:?}");
        let share = found.area_mm2 / (area * scale * scale);
        ensure!((share - 1.0).abs() < 0.01, "{name}: {found:?}");
    }
    Ok(())
}
