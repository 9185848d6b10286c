//! The symbol as a scene, to be laid into a page.

use noseward_words as words;
use qrcodegen::QrCode;

use super::{QUIET, encode};
use crate::palette::Colour;
use crate::scene::{Group, Item, Path, Point, Scene, Style, Unit};

/// A QR symbol for a typed code as a drawing, a millimetre a module, with the white round it: what
/// is laid into a page makes it as large as it is to be. It holds what [`qr`](crate::qr) holds.
///
/// `None` when the text does not fit into the largest symbol.
#[must_use]
pub fn qr_scene(address: Option<&str>, code: &str) -> Option<Scene> {
    let symbol = encode(address, code)?;
    let size = f64::from(symbol.size() + 2 * QUIET);
    let name = if address.is_some() {
        words::drawing_qr_link()
    } else {
        words::drawing_qr_code()
    };
    let square = Path::closed(corners(0.0, 0.0, size, size));
    let items = vec![
        Item::Path { path: square, style: Style::area(Colour::Body) },
        Item::Path { path: dark(&symbol), style: Style::area(Colour::Ink) },
    ];
    let groups = vec![Group { key: "symbol", items }];
    Some(Scene { width: size, height: size, unit: Unit::Mm, name: name.into(), groups })
}

fn corners(x: f64, y: f64, width: f64, height: f64) -> Vec<Point> {
    let (right, bottom) = (x + width, y + height);
    [(x, y), (right, y), (right, bottom), (x, bottom)].map(|(x, y)| Point { x, y }).into()
}

/// Every dark module, a run of a row at a time.
fn dark(symbol: &QrCode) -> Path {
    let mut path = Path::default();
    for y in 0..symbol.size() {
        let mut start = None;
        // Beyond the edge no module is dark.
        for x in 0..=symbol.size() {
            match (start, symbol.get_module(x, y)) {
                (None, true) => start = Some(x),
                (Some(from), false) => {
                    let [left, top, wide] =
                        [from + QUIET, y + QUIET, x - from].map(f64::from);
                    path.runs.push((corners(left, top, wide, 1.0), true));
                    start = None;
                }
                _ => {}
            }
        }
    }
    path
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::qr;
    use noseward_lesson::Record;
    use noseward_link::code;
    use noseward_stability::Example;

    /// What a reader makes of a symbol as it is drawn.
    pub(crate) fn read(symbol: &Scene) -> String {
        const PX: usize = 4;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "whole modules"
        )]
        let whole = |number: f64| number as usize;
        let size = whole(symbol.width);
        let mut modules = vec![255; size * size];
        let Item::Path { path, .. } = &symbol.groups[0].items[1] else {
            panic!("dark modules")
        };
        for (run, is_closed) in &path.runs {
            assert!(is_closed);
            let (from, to) = (run[0], run[2]);
            assert!((to.y - from.y - 1.0).abs() < 1e-9);
            modules[whole(from.y) * size + whole(from.x)..][..whole(to.x - from.x)]
                .fill(0_u8);
        }
        let pixel = |x, y| modules[y / PX * size + x / PX];
        let side = size * PX;
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, pixel);
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1);
        grids[0].decode().unwrap().1
    }

    #[test]
    fn a_reader_reads_the_scene() {
        let code = code(&Record::from(Example::Puffin.design()));
        let bare: String = code.split_whitespace().collect();
        let address = "https://rockets.example/noseward/";
        assert_eq!(read(&qr_scene(None, &code).unwrap()), bare);
        let linked = qr_scene(Some(address), &code).unwrap();
        assert_eq!(read(&linked), format!("{address}#{bare}"));
        assert_eq!(qr_scene(None, &"A".repeat(4297)), None);
    }

    /// Both spellings have the same modules.
    #[test]
    fn the_scene_is_what_the_page_shows() {
        let scene = qr_scene(None, "K7Q0").unwrap();
        let text = qr(None, "K7Q0").unwrap();
        assert!(text.contains(&format!("0 0 {0} {0}", scene.width)));
        assert!(text.contains(&scene.name));
        let Item::Path { path, .. } = &scene.groups[0].items[1] else {
            panic!("dark modules")
        };
        for (run, _) in &path.runs {
            let drawn = format!("M{} {}h{}v1", run[0].x, run[0].y, run[2].x - run[0].x);
            assert!(text.contains(&drawn), "{drawn}");
        }
        assert_eq!(text.matches("v1h").count(), path.runs.len());
    }
}
