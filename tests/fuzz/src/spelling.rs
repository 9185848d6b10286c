//! Links and codes around any payload, written from `FORMATS.md` and sharing nothing with
//! the crate that is tested.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use crc::{CRC_32_ISO_HDLC, Crc};

const CRC: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// A link of version 1 with a good checksum.
#[must_use]
pub fn link_of(payload: &[u8]) -> String {
    format!("r1.{}", URL_SAFE_NO_PAD.encode(frame(payload)))
}

/// A code of version 1 with good checksums.
#[must_use]
pub fn code_of(payload: &[u8]) -> String {
    let mut symbols = vec![24, 1];
    let (mut bits, mut held) = (0_u32, 0);
    for byte in frame(payload) {
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

/// The payload of a link that [`link_of`] gave.
#[must_use]
pub fn payload(link: &str) -> Vec<u8> {
    let bytes =
        link.strip_prefix("r1.").and_then(|text| URL_SAFE_NO_PAD.decode(text).ok());
    let mut bytes = bytes.unwrap_or_default().into_iter().skip(4);
    while bytes.next().is_some_and(|byte| byte >= 128) {}
    bytes.collect()
}

fn frame(payload: &[u8]) -> Vec<u8> {
    let mut digest = CRC.digest();
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
    use noseward_link::{code, hash};
    use noseward_stability::Example;

    #[test]
    fn the_product_spells_alike() {
        for design in Example::ALL.map(Example::design) {
            let link = hash(&design);
            let payload = payload(&link);
            assert_eq!(link_of(&payload), link);
            assert_eq!(
                code_of(&payload).replace('\n', ""),
                code(&design).replace([' ', '\n'], "")
            );
        }
    }
}
