//! From the modules of a symbol to its text (ISO/IEC 18004, clause 7).

use super::SymbolFault;
use super::correction::corrected;
use super::segments;

/// Words of error correction in a block, for each level as the format names it (M, L, H, Q) and
/// each version from 1 on (table 9).
#[rustfmt::skip]
const CHECK_WORDS: [[u8; 40]; 4] = [
    [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28],
    [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28, 28, 30, 30, 26, 28, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30],
    [17, 28, 22, 16, 22, 28, 26, 26, 24, 28, 24, 28, 22, 24, 24, 30, 28, 28, 26, 28, 30, 24, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30],
    [13, 22, 18, 26, 18, 24, 18, 22, 20, 24, 28, 26, 24, 20, 30, 24, 28, 28, 26, 30, 28, 30, 30, 30, 30, 28, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30],
];
/// Blocks, in the same order.
#[rustfmt::skip]
const BLOCKS: [[u8; 40]; 4] = [
    [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21, 23, 25, 26, 28, 29, 31, 33, 35, 37, 38, 40, 43, 45, 47, 49],
    [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8, 9, 9, 10, 12, 12, 12, 13, 14, 15, 16, 17, 18, 19, 19, 20, 21, 22, 24, 25],
    [1, 1, 2, 4, 4, 4, 5, 6, 8, 8, 11, 11, 16, 16, 18, 16, 19, 21, 25, 25, 25, 34, 30, 32, 35, 37, 40, 42, 45, 48, 51, 54, 57, 60, 63, 66, 70, 74, 77, 81],
    [1, 1, 2, 2, 4, 4, 6, 6, 8, 8, 8, 10, 12, 16, 12, 17, 16, 18, 21, 20, 23, 23, 25, 27, 29, 34, 34, 35, 38, 40, 43, 45, 48, 51, 53, 56, 59, 62, 65, 68],
];
/// Wrong modules of the fifteen of the format that can be made good.
const FORMAT_SLIPS: u32 = 3;

/// The modules of a symbol of one of the sizes of the standard, row by row.
pub(super) struct Modules {
    pub(super) size: usize,
    pub(super) dark: Vec<bool>,
}

impl Modules {
    /// What a symbol says; seen in a mirror too.
    pub(super) fn text(&self) -> Result<String, SymbolFault> {
        self.words(false)
            .or_else(|| self.words(true))
            .ok_or(SymbolFault::Unclear)
            .and_then(|words| {
                segments::text(&words, self.version()).ok_or(SymbolFault::NotText)
            })
    }

    fn version(&self) -> usize {
        (self.size - 17) / 4
    }

    /// The data, once its blocks are in order and corrected.
    fn words(&self, mirrored: bool) -> Option<Vec<u8>> {
        let is_dark = |x: usize, y: usize| {
            self.dark[if mirrored { x * self.size + y } else { y * self.size + x }]
        };
        let (level, mask) = self.format(is_dark)?;
        let words = self.in_order(|x, y| is_dark(x, y) != is_masked(mask, x, y));
        let at = self.version() - 1;
        let blocks = usize::from(BLOCKS[level][at]);
        let check = usize::from(CHECK_WORDS[level][at]);
        // The last blocks have a word of data more than the first ones.
        let (short, longer) = (words.len() / blocks, words.len() % blocks);
        let data = short - check;
        let mut all = Vec::with_capacity(words.len());
        for block in 0..blocks {
            let more = block + longer >= blocks;
            let mut mine: Vec<u8> =
                (0..data).map(|i| words[i * blocks + block]).collect();
            if more {
                mine.push(words[data * blocks + block + longer - blocks]);
            }
            let check_words = &words[data * blocks + longer..];
            mine.extend((0..check).map(|i| check_words[i * blocks + block]));
            all.extend_from_slice(&corrected(mine, check)?[..data + usize::from(more)]);
        }
        Some(all)
    }

    /// Level of error correction and mask, which stand twice in the symbol.
    fn format(&self, is_dark: impl Fn(usize, usize) -> bool) -> Option<(usize, usize)> {
        let mut seen = [0_u32; 2];
        for i in 0..15 {
            let near = match i {
                0..6 => (8, i),
                6 | 7 => (8, i + 1),
                8 => (7, 8),
                _ => (14 - i, 8),
            };
            let far =
                if i < 8 { (self.size - 1 - i, 8) } else { (8, self.size - 15 + i) };
            for (seen, (x, y)) in seen.iter_mut().zip([near, far]) {
                *seen |= u32::from(is_dark(x, y)) << i;
            }
        }
        let slips = |format: u32| seen.map(|seen| (seen ^ spelled(format)).count_ones());
        let (wrong, format) = (0..32).map(|f| (slips(f)[0].min(slips(f)[1]), f)).min()?;
        let format = format as usize;
        (wrong <= FORMAT_SLIPS).then_some((format >> 3, format & 7))
    }

    /// The words in the order in which they are laid out: up and down in pairs of columns from
    /// the right, round everything that is the same in every symbol.
    fn in_order(&self, is_set: impl Fn(usize, usize) -> bool) -> Vec<u8> {
        let small = small_marks(self.size);
        let mut words = Vec::new();
        let (mut word, mut bits) = (0_u8, 0);
        // The line of modules in turn takes a column.
        let pairs = (0..self.size).rev().filter(|x| *x != 6).collect::<Vec<_>>();
        for (i, pair) in pairs.chunks_exact(2).enumerate() {
            for row in 0..self.size {
                let y = if i % 2 == 0 { self.size - 1 - row } else { row };
                for &x in pair {
                    if is_fixed(self.size, &small, x, y) {
                        continue;
                    }
                    word = word << 1 | u8::from(is_set(x, y));
                    bits += 1;
                    if bits == 8 {
                        words.push(word);
                        (word, bits) = (0, 0);
                    }
                }
            }
        }
        words
    }
}

/// The fifteen modules of a format: its five and ten to check them (annex C).
fn spelled(format: u32) -> u32 {
    let mut rest = format;
    for _ in 0..10 {
        rest = (rest << 1) ^ ((rest >> 9) * 0x537);
    }
    (format << 10 | rest) ^ 0x5412
}

/// Whether a mask turns a module round (table 10).
fn is_masked(mask: usize, x: usize, y: usize) -> bool {
    let rest = match mask {
        0 => (x + y) % 2,
        1 => y % 2,
        2 => x % 3,
        3 => (x + y) % 3,
        4 => (x / 3 + y / 2) % 2,
        5 => x * y % 2 + x * y % 3,
        6 => (x * y % 2 + x * y % 3) % 2,
        _ => ((x + y) % 2 + x * y % 3) % 2,
    };
    rest == 0
}

/// Whether a module belongs to no word.
fn is_fixed(size: usize, small: &[usize], x: usize, y: usize) -> bool {
    let is_far = |at: usize, by: usize| at + by >= size;
    let in_corner = (x < 9 && (y < 9 || is_far(y, 8))) || (is_far(x, 8) && y < 9);
    let is_version = size >= 45 && (x < 6 && is_far(y, 11) || y < 6 && is_far(x, 11));
    let near = |at: usize| small.iter().position(|&middle| middle.abs_diff(at) <= 2);
    let in_small = near(x).zip(near(y)).is_some_and(|at| has_small_mark(small, at));
    x == 6 || y == 6 || in_corner || is_version || in_small
}

/// The columns, and rows, of the small marks: as far apart as the standard's annex E says, which
/// follows this rule but for version 32.
pub(super) fn small_marks(size: usize) -> Vec<usize> {
    let version = (size - 17) / 4;
    if version < 2 {
        return Vec::new();
    }
    let gaps = version / 7 + 1;
    let step = if version == 32 { 26 } else { (size - 13).div_ceil(2 * gaps) * 2 };
    let mut places = vec![6];
    places.extend((0..gaps).rev().map(|i| size - 7 - i * step));
    places
}

/// Whether there is a small mark in the column and the row with these places in the list: not
/// where the large ones are.
pub(super) fn has_small_mark(small: &[usize], at: (usize, usize)) -> bool {
    let last = small.len() - 1;
    ![(0, 0), (0, last), (last, 0)].contains(&at)
}

#[cfg(test)]
mod tests {
    use super::*;
    use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

    const LEVELS: [QrCodeEcc; 4] =
        [QrCodeEcc::Low, QrCodeEcc::Medium, QrCodeEcc::Quartile, QrCodeEcc::High];

    fn modules(symbol: &QrCode) -> Modules {
        let size = symbol.size();
        let dark = (0..size * size).map(|i| symbol.get_module(i % size, i / size));
        Modules { size: size.try_into().unwrap(), dark: dark.collect() }
    }

    fn symbol(text: &str, version: u8, level: QrCodeEcc) -> QrCode {
        let segments = QrSegment::make_segments(text);
        let version = Version::new(version);
        QrCode::encode_segments_advanced(&segments, level, version, version, None, false)
            .unwrap()
    }

    #[test]
    fn a_symbol_of_every_size_and_level_is_read_and_in_a_mirror() {
        for version in 1..=40 {
            for level in LEVELS {
                let text = format!("v{version}");
                let mut modules = modules(&symbol(&text, version, level));
                assert_eq!(modules.text(), Ok(text.clone()));
                let size = modules.size;
                let other = |i: usize| modules.dark[i % size * size + i / size];
                modules.dark = (0..size * size).map(other).collect();
                assert_eq!(modules.text(), Ok(text));
            }
        }
    }

    #[test]
    fn every_mask_is_taken_off() {
        let segments = QrSegment::make_segments("NOSEWARD");
        let (least, most) = (Version::MIN, Version::MAX);
        for mask in 0..8 {
            let mask = Some(qrcodegen::Mask::new(mask));
            let level = QrCodeEcc::Medium;
            let symbol = QrCode::encode_segments_advanced(
                &segments, level, least, most, mask, false,
            );
            assert_eq!(modules(&symbol.unwrap()).text(), Ok("NOSEWARD".into()));
        }
    }

    #[test]
    fn every_kind_of_letters_is_read() {
        for version in [9, 10, 26, 27] {
            for text in
                ["0", "12", "345", "0123456789", "A", "N1", "AB C$%*+-./:", "½ ä 🚀", ""]
            {
                let read = modules(&symbol(text, version, QrCodeEcc::Low)).text();
                assert_eq!(read.as_deref(), Ok(text));
            }
        }
    }

    /// As another reader reads it.
    #[test]
    fn a_spoilt_symbol_is_read_as_long_as_the_standard_promises() {
        for (version, level) in
            [(3, QrCodeEcc::Low), (7, QrCodeEcc::Quartile), (14, QrCodeEcc::High)]
        {
            let clean = modules(&symbol("R1 AB", version, level));
            let (mut most, mut others) = (0, 0);
            for side in 1..clean.size - 17 {
                let mut spoilt = Modules { size: clean.size, dark: clean.dark.clone() };
                for i in 0..side * 2 {
                    spoilt.dark[(9 + i / 2) * clean.size + 9 + i % 2] ^= true;
                }
                let read = spoilt.text();
                assert!(read == Ok("R1 AB".into()) || read == Err(SymbolFault::Unclear));
                most = if read.is_ok() { side } else { most };
                let grid = rqrr::SimpleGrid::from_func(clean.size, |x, y| {
                    spoilt.dark[y * clean.size + x]
                });
                let is_read = rqrr::Grid::new(grid).decode().is_ok();
                others = if is_read { side } else { others };
            }
            assert!(most > 3, "{version} {level:?}");
            assert_eq!(most, others, "{version} {level:?}");
        }
    }

    #[test]
    fn noise_says_nothing() {
        for size in [21, 25, 45, 177] {
            // A linear congruence (Knuth), of which the high bits are taken.
            let mut lot = 1_u32;
            let dark = (0..size * size).map(|_| {
                lot = lot.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                lot >> 31 == 1
            });
            let modules = Modules { size, dark: dark.collect() };
            assert_eq!(modules.text(), Err(SymbolFault::Unclear));
        }
        for is_dark in [false, true] {
            let modules = Modules { size: 21, dark: vec![is_dark; 441] };
            assert!(modules.text().is_err());
        }
    }
}
