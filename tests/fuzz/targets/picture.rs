//! Bytes as a picture in which symbols are looked for: how many columns, how large each of them
//! is, then the grey values.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::enlarged;
use noseward_link::symbols_in_picture;

/// Digits in the largest symbol (ISO/IEC 18004, table 7).
const MOST_BYTES: usize = 7089;

fuzz_target!(|bytes: &[u8]| {
    let [columns, side, greys @ ..] = bytes else { return };
    let (columns, side) = (usize::from(*columns), usize::from(side % 8) + 1);
    let (luma, width, height) = enlarged(greys, columns, side);
    for text in symbols_in_picture(luma, width, height).into_iter().flatten() {
        assert!(text.len() <= MOST_BYTES);
    }
});
