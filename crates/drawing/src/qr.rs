//! A symbol that a phone reads.

mod on_paper;

use std::fmt::Write as _;

use maud::html;
use noseward_words as words;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

pub use on_paper::qr_scene;

/// White modules around a symbol, as the standard (ISO/IEC 18004) asks for.
const QUIET: i32 = 4;

/// A QR symbol for a typed code, as an SVG element, black on white whatever the colours of
/// the page.
///
/// With the `address` of a page the symbol holds `address#code`, which a phone opens;
/// without one, the code alone. White space in the code is left out. Capital letters and
/// digits take five and a half bits each, so a typed code makes a smaller symbol than the
/// text of a link. Error correction is level L, raised where that costs no larger symbol.
///
/// `None` when the text does not fit into the largest symbol.
#[must_use]
pub fn qr(address: Option<&str>, code: &str) -> Option<String> {
    let symbol = encode(address, code)?;
    let size = symbol.size() + 2 * QUIET;
    let name = if address.is_some() {
        words::drawing_qr_link()
    } else {
        words::drawing_qr_code()
    };
    let markup = html! {
        svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label=(name)
            viewBox=(format!("0 0 {size} {size}")) shape-rendering="crispEdges" {
            path fill="#fff" d=(format!("M0 0h{size}v{size}h-{size}z")) {}
            path fill="#000" d=(dark(&symbol)) {}
        }
    };
    Some(markup.into_string())
}

fn encode(address: Option<&str>, code: &str) -> Option<QrCode> {
    let code: String = code.split_whitespace().collect();
    let mut segments = Vec::new();
    if let Some(address) = address {
        segments.push(QrSegment::make_bytes(format!("{address}#").as_bytes()));
    }
    segments.extend(QrSegment::make_segments(&code));
    QrCode::encode_segments_advanced(
        &segments,
        QrCodeEcc::Low,
        Version::MIN,
        Version::MAX,
        None,
        true,
    )
    .ok()
}

/// One path over every dark module, a run of a row at a time.
fn dark(symbol: &QrCode) -> String {
    let mut path = String::new();
    for y in 0..symbol.size() {
        let mut x = 0;
        while x < symbol.size() {
            let start = x;
            while symbol.get_module(x, y) {
                // Beyond the edge no module is dark.
                x += 1;
            }
            let run = x - start;
            if run > 0 {
                write!(path, "M{} {}h{run}v1h-{run}z", start + QUIET, y + QUIET)
                    .expect("a string takes any text");
            }
            x += 1;
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Record, SwingOutcome};
    use noseward_link::{Opened, code, open_hash};
    use noseward_stability::Example;

    const PX: usize = 4;

    /// What a reader makes of the drawn symbol: its runs are painted, then read.
    fn read(svg: &str) -> String {
        let size: usize = between(svg, "viewBox=\"0 0 ", " ").parse().unwrap();
        let mut modules = vec![255; size * size];
        for run in between(svg, "fill=\"#000\" d=\"M", "\"").split('M') {
            let (x, rest) = run.split_once(' ').unwrap();
            let (y, rest) = rest.split_once('h').unwrap();
            let (length, _) = rest.split_once('v').unwrap();
            let [x, y, length] = [x, y, length].map(|n| n.parse::<usize>().unwrap());
            modules[y * size + x..][..length].fill(0_u8);
        }
        let side = size * PX;
        let pixel = |x, y| modules[y / PX * size + x / PX];
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, pixel);
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1);
        grids[0].decode().unwrap().1
    }

    fn between<'a>(text: &'a str, from: &str, to: &str) -> &'a str {
        let rest = &text[text.find(from).unwrap() + from.len()..];
        &rest[..rest.find(to).unwrap()]
    }

    /// A design as large as designs may be, swung.
    fn crowded() -> Record {
        let mut design = Example::Puffin.design();
        design.name = "Great northern diver 123".into();
        let fins = design.fins[0].clone();
        design.fins = vec![fins; 4];
        let weight = design.weights[0].clone();
        design.weights = vec![weight; 12];
        let tube = design.sections[1].clone();
        design.sections.resize(12, tube);
        let mut record = Record::from(design);
        record.swings.add(SwingOutcome::Steady);
        record
    }

    #[test]
    fn a_reader_opens_the_same_rocket() {
        let examples = Example::ALL.map(|example| Record::from(example.design()));
        for record in examples.into_iter().chain([crowded()]) {
            for address in [None, Some("https://rockets.school.test/noseward/")] {
                let text = read(&qr(address, &code(&record)).unwrap());
                let hash = match address {
                    Some(address) => text.strip_prefix(address).unwrap(),
                    None => text.as_str(),
                };
                assert_eq!(open_hash(hash), Opened::Record(record.clone().rounded()));
            }
        }
    }

    /// Phones read small symbols from a worn print; about version 10 is the most that
    /// guides for phones advise.
    #[test]
    fn usual_rockets_make_small_symbols() {
        for example in Example::ALL {
            let code = code(&example.design().into());
            let alone = encode(None, &code).unwrap().version().value();
            let address = "https://rockets.school.test/noseward/";
            let linked = encode(Some(address), &code).unwrap().version().value();
            assert!(alone <= 6 && linked <= 8, "{example:?}: {alone} and {linked}");
        }
    }

    #[test]
    fn a_text_beyond_the_largest_symbol_makes_none() {
        assert!(qr(None, &"A".repeat(4296)).is_some());
        assert_eq!(qr(None, &"A".repeat(4297)), None);
    }
}
