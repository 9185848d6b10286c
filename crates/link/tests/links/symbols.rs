//! Symbols of ours, photographed.

use noseward_link::{SymbolFault, SymbolRead, SymbolSearch, symbols_in_picture};
use proptest::prelude::*;

use crate::photograph::{Photograph, View, symbol};

const ADDRESS: &str = "https://rockets.school.test/noseward/";

/// The blocks of a file that was shipped: a link, then codes.
fn blocks(text: &str) -> Vec<String> {
    let blocks = text.trim().split("\n\n");
    blocks.map(|block| block.split_whitespace().collect()).collect()
}

/// The codes of a rocket, of three parts of a notebook and of its results.
fn codes() -> Vec<String> {
    let notebook = blocks(include_str!("shipped/notebook.txt"));
    let puffin = blocks(include_str!("shipped/puffin.txt"));
    [&puffin[1..], &notebook[1..]].concat()
}

fn read(picture: &Photograph) -> Vec<SymbolRead> {
    symbols_in_picture(picture.luma(), picture.width, picture.height)
}

/// The texts, in an order of their own.
fn texts(picture: &Photograph) -> Vec<String> {
    let mut texts: Vec<String> =
        read(picture).into_iter().map(|read| read.expect("readable")).collect();
    texts.sort();
    texts
}

/// One symbol in the middle of a picture in which it takes two thirds of a side.
fn alone(code: &str, module_px: f64, turned_deg: f64, leans_deg: f64) -> Photograph {
    let symbol = symbol(None, code);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a few hundred"
    )]
    let side = (f64::from(symbol.size()) * module_px * 1.6) as usize;
    let middle = side as f64 / 2.0;
    let view = View { middle: (middle, middle), module_px, turned_deg, leans_deg };
    Photograph::new(side, side, 200.0).put(&symbol, view)
}

#[test]
fn every_symbol_of_ours_is_read_off_a_screen() {
    for code in codes() {
        for module_px in [2.0, 3.0, 4.0, 10.0] {
            assert_eq!(read(&alone(&code, module_px, 0.0, 0.0)), [Ok(code.clone())]);
        }
    }
}

/// A rocket's link is an address in bytes and a code in capital letters.
#[test]
fn a_link_is_read_with_its_address() {
    let code = &codes()[0];
    let symbol = symbol(Some(ADDRESS), code);
    let view = View::straight((300.0, 300.0), 6.0);
    let picture = Photograph::new(600, 600, 240.0).put(&symbol, view);
    assert_eq!(read(&picture), [Ok(format!("{ADDRESS}#{code}"))]);
}

#[test]
fn text_is_utf_8() {
    let text = "Älpler, ½ 🚀 صاروخ";
    assert_eq!(read(&alone(text, 5.0, 20.0, 0.0)), [Ok(text.to_owned())]);
}

#[test]
fn a_symbol_of_every_size_is_read() {
    for letters in [1, 20, 40, 80, 200, 400, 800, 1600, 2400, 3200, 4296] {
        let code: String = "NOSEWARD-".chars().cycle().take(letters).collect();
        assert_eq!(read(&alone(&code, 4.0, 10.0, 0.0)), [Ok(code)], "{letters}");
    }
}

#[test]
fn a_symbol_is_read_whatever_way_it_is_turned() {
    let code = &codes()[1];
    for turned_deg in (0..360).step_by(15) {
        let picture = alone(code, 5.0, f64::from(turned_deg), 0.0);
        assert_eq!(read(&picture), [Ok(code.clone())], "{turned_deg}");
    }
}

#[test]
fn a_symbol_is_read_from_aside_out_of_focus_in_poor_light() {
    for (seed, code) in codes().iter().enumerate() {
        for leans_deg in [-25.0, -10.0, 10.0, 20.0, 25.0] {
            let turned_deg = 37.0 * seed as f64;
            let picture = alone(code, 6.0, turned_deg, leans_deg)
                .shaded(0.45)
                .blurred(2.0)
                .noisy(8.0, seed as u64);
            assert_eq!(read(&picture), [Ok(code.clone())], "{seed}, leaning {leans_deg}");
        }
    }
}

/// Half a module of blur leaves a third of the contrast between modules in turn.
#[test]
fn a_symbol_is_read_well_out_of_focus() {
    for (seed, code) in codes().iter().enumerate() {
        let picture = alone(code, 6.0, 37.0 * seed as f64, 10.0);
        let picture = picture.blurred(0.45 * 6.0).noisy(4.0, 1);
        assert_eq!(read(&picture), [Ok(code.clone())], "{seed}");
    }
}

/// Of a hand, or of whoever takes the picture.
#[test]
fn a_symbol_with_the_edge_of_a_shadow_across_it_is_read() {
    for (seed, code) in codes().iter().enumerate() {
        for share in [0.5, 0.6, 0.7] {
            let picture = alone(code, 6.0, 23.0 * seed as f64, 10.0).shadowed(share);
            let picture = picture.blurred(1.0).noisy(4.0, seed as u64);
            assert_eq!(read(&picture), [Ok(code.clone())], "{seed}, {share}");
        }
    }
}

#[test]
fn light_on_dark_is_read_too() {
    for code in codes() {
        let picture = alone(&code, 5.0, 12.0, 10.0).inverted().blurred(1.0);
        assert_eq!(read(&picture), [Ok(code)]);
    }
}

/// A page of parts and results, as a telephone takes it.
fn page() -> (Photograph, Vec<String>) {
    let mut codes = codes();
    let mut picture = Photograph::new(3000, 2400, 235.0);
    for (i, code) in codes.iter().enumerate() {
        let middle = (520.0 + 960.0 * (i % 3) as f64, 450.0 + 750.0 * (i / 3) as f64);
        let view =
            View { middle, module_px: 9.0, turned_deg: 4.0 + i as f64, leans_deg: 12.0 };
        picture = picture.put(&symbol(None, code), view);
    }
    codes.sort();
    (picture.shaded(0.5).blurred(2.5).noisy(6.0, 1), codes)
}

#[test]
fn a_page_of_several_symbols_is_read_from_one_photograph() {
    let (picture, codes) = page();
    assert!(codes.len() > 6);
    assert_eq!(texts(&picture), codes);
}

#[test]
fn a_symbol_that_is_half_cut_off_is_told() {
    let code = &codes()[1];
    let whole = alone(code, 6.0, 0.0, 0.0);
    for share in [0.35, 0.5, 0.65] {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a few hundred"
        )]
        let cut = whole.clone().cut_at((whole.width as f64 * share) as usize);
        assert_eq!(read(&cut), [Err(SymbolFault::Incomplete)], "{share}");
    }
}

#[test]
fn a_symbol_with_a_stain_is_told_unless_the_stain_is_small() {
    let code = &codes()[1];
    let whole = alone(code, 6.0, 0.0, 0.0);
    let middle = (whole.width as f64 / 2.0, whole.height as f64 / 2.0);
    assert_eq!(read(&whole.clone().stained(middle, 10.0)), [Ok(code.clone())]);
    assert_eq!(read(&whole.stained(middle, 70.0)), [Err(SymbolFault::Unclear)]);
}

#[test]
fn what_is_no_text_is_told() {
    let bytes = [0xff, 0xfe, 0x00, 0x80, 0xc3];
    let symbol = qrcodegen::QrCode::encode_binary(&bytes, qrcodegen::QrCodeEcc::Low);
    let view = View::straight((100.0, 100.0), 4.0);
    let picture = Photograph::new(200, 200, 230.0).put(&symbol.unwrap(), view);
    assert_eq!(read(&picture), [Err(SymbolFault::NotText)]);
}

#[test]
fn a_page_says_which_symbols_are_read_and_that_one_is_not() {
    let codes = codes();
    let mut picture = Photograph::new(1200, 600, 230.0);
    for (middle, code) in [(300.0, &codes[0]), (900.0, &codes[1])] {
        picture = picture.put(&symbol(None, code), View::straight((middle, 300.0), 7.0));
    }
    let found = read(&picture.cut_at(940));
    assert_eq!(found, [Ok(codes[0].clone()), Err(SymbolFault::Incomplete)]);
}

/// Two groups may have one text: a code of an example, say.
#[test]
fn the_same_symbol_twice_is_two() {
    let code = &codes()[0];
    let mut picture = Photograph::new(1000, 500, 230.0);
    for middle in [250.0, 750.0] {
        let view = View::straight((middle, 250.0), 8.0);
        picture = picture.put(&symbol(None, code), view);
    }
    assert_eq!(read(&picture), [Ok(code.clone()), Ok(code.clone())]);
}

#[test]
fn there_is_none_in_paper_noise_stripes_and_rings() {
    let sheet = Photograph::new(400, 300, 200.0);
    assert_eq!(read(&sheet), []);
    assert_eq!(read(&sheet.clone().noisy(60.0, 3)), []);
    assert_eq!(read(&sheet.shaded(0.1).noisy(8.0, 4)), []);
    let luma = |of: fn(usize, usize) -> bool| -> Vec<u8> {
        let all = (0..300 * 300).map(|i| of(i % 300, i / 300));
        all.map(|is_dark| if is_dark { 20 } else { 235 }).collect()
    };
    // Stripes and a chequered board.
    assert_eq!(symbols_in_picture(luma(|x, _| x / 5 % 2 == 0), 300, 300), []);
    assert_eq!(symbols_in_picture(luma(|x, y| (x / 5 + y / 5) % 2 == 0), 300, 300), []);
    // A target: rings of one width.
    let target = |x: usize, y: usize| {
        let (x, y) = (x.abs_diff(150), y.abs_diff(150));
        (x * x + y * y) / 900 % 2 == 0
    };
    assert_eq!(symbols_in_picture(luma(target), 300, 300), []);
}

/// From a camera of 17 megapixels, at its full size.
#[test]
fn a_symbol_in_a_huge_picture_is_read() {
    let code = &codes()[1];
    let view = View { turned_deg: 25.0, ..View::straight((620.0, 420.0), 4.0) };
    let small = Photograph::new(1200, 900, 210.0).put(&symbol(None, code), view);
    let (luma, side) = (small.luma(), 4 * 1200);
    let large = (0..side * 4 * 900).map(|i| luma[i / side / 4 * 1200 + i % side / 4]);
    let read = symbols_in_picture(large.collect(), side, 4 * 900);
    assert_eq!(read, [Ok(code.clone())]);
}

/// Corner marks on a board of modules in turn: hundreds of them look like symbols.
#[test]
fn what_only_looks_like_symbols_is_left_after_a_while() {
    let (width, height, module) = (1200, 900, 6);
    let is_dark = |x: usize, y: usize| {
        let (x, y) = (x / module, y / module);
        let ring = (x % 18).abs_diff(6).max((y % 18).abs_diff(6));
        if ring < 5 { matches!(ring, 0 | 1 | 3) } else { (x + y) % 2 == 0 }
    };
    let all = (0..width * height).map(|i| is_dark(i % width, i / width));
    let luma = all.map(|is_dark| if is_dark { 20 } else { 235 }).collect();
    let mut search = SymbolSearch::new(luma, width, height);
    let mut steps = 0;
    while search.goes_on() {
        steps += 1;
    }
    // Three scales in two ways, with 32 tries and what comes before and after them.
    assert!((100..=6 * 35).contains(&steps), "{steps}");
    assert!(search.found().iter().all(Result::is_err));
}

#[test]
fn sizes_that_do_not_fit_hold_none() {
    for (luma, width, height) in [
        (0, 0, 0),
        (1, 1, 1),
        (0, 5, 0),
        (0, 0, 5),
        (400, 20, 20),
        (10_000, 100, 99),
        (10_000, 99, 100),
        (16, usize::MAX, usize::MAX),
        (16, usize::MAX / 2 + 1, 2),
        (100, 100, 1),
        (100_000, 100_000, 1),
        (100_000, 1, 100_000),
    ] {
        assert_eq!(symbols_in_picture(vec![7; luma], width, height), []);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Whatever the angle, the distance and the light.
    #[test]
    fn any_usual_view_is_read(
        which in 0_usize..7,
        turned_deg in 0.0..360.0,
        leans_deg in -20.0..20.0,
        module_px in 4.0..9.0,
        light in 0.5..1.0,
        seed: u64,
    ) {
        let codes = codes();
        let code = &codes[which % codes.len()];
        let picture = alone(code, module_px, turned_deg, leans_deg)
            .shaded(light)
            .blurred(module_px / 4.0)
            .noisy(8.0, seed);
        prop_assert_eq!(read(&picture), [Ok(code.clone())]);
    }
}
