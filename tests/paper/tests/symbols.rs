//! QR symbols on paper are read by a reader that others wrote.

use anyhow::{Context, Result};
use noseward_drawing::paper::{Flow, Page, PaperSize};
use noseward_drawing::qr_scene;
use noseward_paper_tests::{Document, Picture};

/// What the reader finds in a picture.
fn read(picture: &Picture) -> Result<Vec<String>> {
    let (width, height) = (picture.width, picture.height);
    let grey = |x, y| picture.grey(x, y);
    let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(width, height, grey);
    let grids = prepared.detect_grids();
    let read = |grid: &rqrr::Grid<_>| Ok(grid.decode().context("a spoilt symbol")?.1);
    grids.iter().map(read).collect()
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
                let found = read(&document.picture(1, per_inch)?)?;
                assert_eq!(found, wanted, "{name} at {per_inch} dpi");
            }
        }
    }
    Ok(())
}
