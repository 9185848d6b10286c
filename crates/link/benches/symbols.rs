//! How long it takes to look for symbols in a picture of 12 megapixels, as the page gets it:
//! reduced to 2,400 pixels along the longer side.

use noseward_link::symbols_in_picture;
use qrcodegen::{QrCode, QrCodeEcc};

const WIDTH: usize = 2400;
const HEIGHT: usize = 1800;
/// White modules round a symbol.
const QUIET: i32 = 4;
const PAPER: u8 = 220;

fn main() {
    divan::main();
}

/// A picture with so many symbols in each row and column, turned a little.
fn sheet(across: usize, letters: usize) -> Vec<u8> {
    let text: String = "NOSEWARD-".chars().cycle().take(letters).collect();
    let symbol = QrCode::encode_text(&text, QrCodeEcc::Low).expect("it fits");
    let cell = WIDTH / across;
    let modules = symbol.size() + 2 * QUIET;
    let module = cell as f64 / f64::from(modules) / 1.2;
    pixels(|x, y| {
        let middle = cell as f64 / 2.0;
        let (x, y) = ((x % cell) as f64 - middle, (y % cell) as f64 - middle);
        let (x, y) = (0.99 * x + 0.14 * y, 0.99 * y - 0.14 * x);
        #[expect(clippy::cast_possible_truncation, reason = "some hundred modules")]
        let at =
            |along: f64| (along / module + f64::from(symbol.size()) / 2.0).floor() as i32;
        if symbol.get_module(at(x), at(y)) { 30 } else { PAPER }
    })
}

/// Corner marks and nothing else, as close as those of a symbol.
fn marks(module: usize) -> Vec<u8> {
    pixels(|x, y| {
        let ring = |at: usize| (at / module % 14).abs_diff(6);
        let dark = matches!(ring(x).max(ring(y)), 0 | 1 | 3);
        if dark { 30 } else { PAPER }
    })
}

fn noise() -> Vec<u8> {
    let mut lot = 1_u32;
    let mut next = || {
        // A linear congruence (Knuth), of which the high bits are taken.
        lot = lot.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        lot.to_be_bytes()[0]
    };
    pixels(|_, _| next())
}

fn pixels(mut grey: impl FnMut(usize, usize) -> u8) -> Vec<u8> {
    (0..WIDTH * HEIGHT).map(|i| grey(i % WIDTH, i / WIDTH)).collect()
}

fn look(bencher: divan::Bencher<'_, '_>, luma: &[u8], found: usize) {
    bencher.bench(|| {
        let reads = symbols_in_picture(luma.to_vec(), WIDTH, HEIGHT);
        assert_eq!(reads.iter().flatten().count(), found);
    });
}

#[divan::bench(args = [(1, 400), (2, 200), (4, 60), (6, 60)], sample_count = 5)]
fn a_sheet(bencher: divan::Bencher<'_, '_>, (across, letters): (usize, usize)) {
    let cell = WIDTH / across;
    look(bencher, &sheet(across, letters), across * (HEIGHT / cell));
}

#[divan::bench(sample_count = 5)]
fn paper(bencher: divan::Bencher<'_, '_>) {
    look(bencher, &pixels(|_, _| PAPER), 0);
}

#[divan::bench(sample_count = 3)]
fn noise_alone(bencher: divan::Bencher<'_, '_>) {
    look(bencher, &noise(), 0);
}

#[divan::bench(args = [3, 6, 12, 24], sample_count = 1)]
fn corner_marks_alone(bencher: divan::Bencher<'_, '_>, module: usize) {
    look(bencher, &marks(module), 0);
}

/// Modules in turn everywhere: whatever has corner marks looks like a symbol.
#[divan::bench(args = [3, 6, 12, 24], sample_count = 1)]
fn corner_marks_in_a_board(bencher: divan::Bencher<'_, '_>, module: usize) {
    let luma = pixels(|x, y| {
        let (x, y) = (x / module, y / module);
        let (u, v) = ((x % 18).abs_diff(6), (y % 18).abs_diff(6));
        let ring = u.max(v);
        let dark = if ring < 5 { matches!(ring, 0 | 1 | 3) } else { (x + y) % 2 == 0 };
        if dark { 30 } else { PAPER }
    });
    look(bencher, &luma, 0);
}
