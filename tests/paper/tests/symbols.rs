//! QR symbols on paper are read by a reader that others wrote.

use anyhow::{Context, Result};
use noseward_drawing::paper::{Flow, Page, PaperSize};
use noseward_drawing::{Item, Point, Scene, qr_scene};
use noseward_paper_tests::{Document, Picture, SHEETS, Sheet, symbol_words};

/// From where to where a symbol reaches, in millimetres.
type Place = (Point, Point);

/// What the reader finds in a part of a picture.
fn read(picture: &Picture, (from, to): Place) -> Result<Vec<String>> {
    let (left, top) = (picture.pixel(from.x), picture.pixel(from.y));
    let (width, height) = (picture.pixel(to.x) - left, picture.pixel(to.y) - top);
    let grey = |x, y| picture.grey(left + x, top + y);
    let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(width, height, grey);
    let grids = prepared.detect_grids();
    let read = |grid: &rqrr::Grid<_>| Ok(grid.decode().context("a spoilt symbol")?.1);
    grids.iter().map(read).collect()
}

/// Where symbols lie in a drawing that is laid into a page, with their white edges. The reader
/// takes corners of several for one, so it is shown one after the other, as a camera is.
fn places(scene: &Scene, at: Point, scale: f64) -> Vec<Place> {
    let mut found = Vec::new();
    if scene.groups.iter().any(|group| group.key == "symbol") {
        let (width, height) = (scene.width * scale, scene.height * scale);
        found.push((at, Point { x: at.x + width, y: at.y + height }));
    }
    for item in scene.groups.iter().flat_map(|group| &group.items) {
        if let Item::Placed { at: inner, scale: by, scene, .. } = item {
            let inner = Point { x: at.x + inner.x * scale, y: at.y + inner.y * scale };
            found.extend(places(scene, inner, scale * by));
        }
    }
    found
}

/// A sheet with a symbol that is so large.
fn sheet(size: PaperSize, code: &str, side_mm: f64) -> Result<Vec<Page>> {
    let scene = qr_scene(Some("https://noseward.example/"), code).context("it fits")?;
    let mut flow = Flow::new(size, "Symbol");
    flow.paragraph("Point a camera at it. ");
    flow.figure(&scene, (side_mm, side_mm));
    Ok(flow.pages())
}

#[test]
fn symbols_are_read_as_a_camera_sees_a_printed_sheet() -> Result<()> {
    // As much as a rocket takes, and as a full notebook's part does.
    for (letters, side_mm) in [(40, 25.0), (300, 45.0), (900, 80.0)] {
        let code: String = "HARBOUR23456789K7Q0".chars().cycle().take(letters).collect();
        for size in PaperSize::ALL {
            let name = format!("symbol-{letters}-{size:?}");
            let document =
                Document::write(&name, &sheet(size, &code, side_mm)?, "en-GB")?;
            let wanted = [format!("https://noseward.example/#{code}")];
            for per_inch in [150, 300] {
                let picture = document.picture(1, per_inch)?;
                let (width, height) = size.size_mm();
                let all = (Point::default(), Point { x: width, y: height });
                let found = read(&picture, all)?;
                assert_eq!(found, wanted, "{name} at {per_inch} dpi");
            }
        }
    }
    Ok(())
}

#[test]
fn every_symbol_on_a_sheet_is_read() -> Result<()> {
    let mut count = 0;
    for Sheet { name, make } in SHEETS {
        let pages = make(PaperSize::A4);
        let document = Document::write(&format!("symbols-{name}"), &pages, "en-GB")?;
        for (page, number) in pages.iter().zip(1..) {
            let places = places(&page.scene, Point::default(), 1.0);
            if places.is_empty() {
                continue;
            }
            let picture = document.picture(number, 300)?;
            for place in places {
                let found = read(&picture, place).context(*name)?;
                assert_eq!(found, [symbol_words()], "{name}, page {number}: {place:?}");
                count += 1;
            }
        }
    }
    assert!(count > 6, "each label has a symbol, and a report: {count}");
    Ok(())
}
