//! Letters, the numbers 0 to 31 that they stand for, and bytes made of those.
//!
//! The alphabet is Crockford's: digits and capital letters without I, L, O and U.
//! Source: D. Crockford, "Base 32", <https://www.crockford.com/base32.html>.

/// Letters in the order of their numbers.
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// What stands in one place of a row: a symbol, or a character that is none.
pub(crate) type Slot = Result<u8, char>;

/// Symbols that a number of bytes takes.
pub(crate) fn count(bytes: usize) -> usize {
    (bytes * 8).div_ceil(5)
}

/// The letter of a symbol.
pub(crate) fn letter(symbol: u8) -> char {
    ALPHABET[usize::from(symbol)].into()
}

/// The same as a small letter, which a link begins with.
pub(crate) fn small_letter(symbol: u8) -> u8 {
    ALPHABET[usize::from(symbol)].to_ascii_lowercase()
}

/// What a character stands for; `None` for one that only separates.
pub(crate) fn symbol(c: char) -> Option<Slot> {
    let separates = matches!(c, '-' | '\u{ad}' | '\u{2010}'..='\u{2015}' | '\u{2212}')
        || matches!(c, '.' | '\u{200b}'..='\u{200f}' | '\u{feff}')
        || c.is_whitespace()
        || c.is_control();
    if separates {
        return None;
    }
    let letter = match c.to_ascii_uppercase() {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    };
    let value = ALPHABET.iter().zip(0..).find(|&(&known, _)| char::from(known) == letter);
    Some(value.map(|(_, value)| value).ok_or(c))
}

/// The symbols of some bytes; unused bits of the last are zero.
pub(crate) fn pack(bytes: &[u8]) -> Vec<u8> {
    let bit = |i: usize| bytes.get(i / 8).map_or(0, |byte| byte >> (7 - i % 8) & 1);
    let symbol = |i| (5 * i..5 * i + 5).fold(0, |symbol, i| symbol << 1 | bit(i));
    (0..count(bytes.len())).map(symbol).collect()
}

/// The whole bytes of some symbols.
pub(crate) fn unpack(symbols: &[u8]) -> Vec<u8> {
    let bit = |i: usize| symbols[i / 5] >> (4 - i % 5) & 1;
    let byte = |i| (8 * i..8 * i + 8).fold(0, |byte, i| byte << 1 | bit(i));
    (0..symbols.len() * 5 / 8).map(byte).collect()
}
