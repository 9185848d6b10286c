//! Links and codes around any payload, written from `FORMATS.md` and sharing nothing with
//! the crate that is tested.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use crc::{CRC_32_ISO_HDLC, Crc};

const CRC: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// A link to a rocket (`r`) or a notebook (`n`) with a good checksum.
#[must_use]
pub fn link_of(kind: char, payload: &[u8]) -> String {
    format!("{kind}1.{}", URL_SAFE_NO_PAD.encode(framed(kind, payload)))
}

/// A code with good checksums.
#[must_use]
pub fn code_of(payload: &[u8]) -> String {
    let mut symbols = vec![24, 1];
    symbols.extend(symbols_of(&framed('r', payload)));
    rows(&symbols)
}

/// The symbols of bytes, five bits each.
fn symbols_of(bytes: &[u8]) -> Vec<u32> {
    let mut symbols = Vec::new();
    let (mut bits, mut held) = (0_u32, 0);
    for &byte in bytes {
        bits = bits << 8 | u32::from(byte);
        held += 8;
        while held >= 5 {
            held -= 5;
            symbols.push(bits >> held & 31);
        }
    }
    if held > 0 {
        symbols.push(bits << (5 - held) & 31);
    }
    symbols
}

/// Symbols in rows with their check symbols.
fn rows(symbols: &[u32]) -> String {
    let mut text = String::new();
    for (row, symbols) in (1..).zip(symbols.chunks(19)) {
        let sum = symbols.iter().fold(row % 32, |sum, symbol| times_x(sum) ^ symbol);
        for &symbol in symbols.iter().chain([&times_x(sum)]) {
            text.push(ALPHABET[symbol as usize].into());
        }
        text.push('\n');
    }
    text
}

/// The parts of a notebook with good checks, all in one text.
#[must_use]
pub fn notebook_parts_of(payload: &[u8]) -> String {
    let bytes = framed('n', payload);
    let parts = bytes.len().div_ceil(168).min(255);
    let size = bytes.len().div_ceil(parts);
    let tie = u32::from_le_bytes([bytes[0], bytes[1], bytes[2], bytes[3]]) % (1 << 20);
    let parts = low_byte(bytes.len().div_ceil(size)).into();
    let mut text = String::new();
    for (number, bytes) in (1..).zip(bytes.chunks(size)) {
        let mut symbols = vec![21, 1];
        let length = low_byte(bytes.len()).into();
        push(&mut symbols, &[(number, 2), (parts, 2), (tie, 4), (length, 2)]);
        let data = symbols_of(bytes);
        let mut digest = CRC.digest();
        for &symbol in symbols.iter().chain(&data) {
            digest.update(&symbol.to_le_bytes()[..1]);
        }
        push(&mut symbols, &[(digest.finalize() % (1 << 20), 4)]);
        symbols.extend(data);
        text.push_str(&rows(&symbols));
    }
    text
}

/// The code of a result with good checks; more or fewer than 32 bytes are made 32.
#[must_use]
pub fn result_code_of(payload: &[u8]) -> String {
    let mut bytes = payload.to_vec();
    bytes.resize(32, 0);
    let mut digest = CRC.digest();
    digest.update(&[26, 1]);
    digest.update(&bytes);
    bytes.extend(&digest.finalize().to_le_bytes()[..2]);
    let mut symbols = vec![26, 1];
    symbols.extend(symbols_of(&bytes));
    rows(&symbols)
}

/// Numbers, each in so many symbols, the most significant first.
fn push(symbols: &mut Vec<u32>, numbers: &[(u32, u32)]) {
    for &(number, count) in numbers {
        symbols.extend((0..count).rev().map(|i| number >> (5 * i) & 31));
    }
}

/// The payload of a link of any kind; `None` for any other text.
#[must_use]
pub fn payload(link: &str) -> Option<Vec<u8>> {
    let (_, text) = link.split_once("1.")?;
    let mut bytes = URL_SAFE_NO_PAD.decode(text).ok()?.into_iter().skip(4);
    while bytes.next().is_some_and(|byte| byte >= 128) {}
    Some(bytes.collect())
}

/// A payload in a frame whose checksum covers kind and version.
fn framed(kind: char, payload: &[u8]) -> Vec<u8> {
    let mut digest = CRC.digest();
    digest.update(kind.encode_utf8(&mut [0]).as_bytes());
    digest.update(&[1]);
    digest.update(payload);
    let mut bytes = digest.finalize().to_le_bytes().to_vec();
    let mut length = payload.len();
    while length >= 128 {
        bytes.push(low_byte(length % 128 + 128));
        length /= 128;
    }
    bytes.push(low_byte(length));
    bytes.extend_from_slice(payload);
    bytes
}

fn low_byte(number: usize) -> u8 {
    number.to_le_bytes()[0]
}

fn times_x(symbol: u32) -> u32 {
    let twice = symbol << 1;
    if twice < 32 { twice } else { twice ^ 0b10_0101 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Notebook, Record, SwingOutcome, TrialResult};
    use noseward_link::{
        NotebookFile, code, compact, hash, notebook_hash, notebook_parts, result_code,
    };
    use noseward_stability::Example;

    #[test]
    fn the_product_spells_alike() {
        for design in Example::ALL.map(Example::design) {
            let mut record = Record::from(design);
            for _ in 0..2 {
                let link = hash(&record);
                let payload = payload(&link).unwrap();
                assert_eq!(link_of('r', &payload), link);
                assert_eq!(compact(&code_of(&payload)), compact(&code(&record)));
                record.swings.add(SwingOutcome::Sideways);
            }
        }
    }

    #[test]
    fn the_product_spells_notebooks_alike() {
        let mut notebook = Notebook::default();
        for design in Example::ALL.map(Example::design) {
            notebook.begin(&design.into()).unwrap();
        }
        notebook.conclusion.claim = "Fins help.".repeat(30);
        let file = NotebookFile { notebook, rocket: None };
        let link = notebook_hash(&file).unwrap();
        let bytes = payload(&link).unwrap();
        assert_eq!(link_of('n', &bytes), link);
        let parts = notebook_parts(&file).unwrap();
        assert!(parts.len() > 2);
        assert_eq!(compact(&notebook_parts_of(&bytes)), compact(&parts.concat()));
        let code = result_code(&TrialResult::of(&file.notebook, 2).unwrap());
        let mut bytes = Vec::new();
        let (mut bits, mut held) = (0_u32, 0);
        let typed = compact(&code);
        // Behind the mark, and without the last of each row.
        let rows = typed.as_bytes().chunks(20).map(|row| &row[..row.len() - 1]);
        for letter in rows.flatten().skip(2) {
            let symbol = ALPHABET.iter().position(|known| known == letter).unwrap();
            bits = bits << 5 | u32::try_from(symbol).unwrap();
            held += 5;
            if held >= 8 {
                held -= 8;
                bytes.push((bits >> held).to_le_bytes()[0]);
            }
        }
        assert_eq!(compact(&result_code_of(&bytes[..32])), typed);
    }
}
