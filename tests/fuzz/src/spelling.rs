//! Links and codes around any payload, written from `FORMATS.md` and sharing nothing with
//! the crate that is tested.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use crc::{CRC_32_ISO_HDLC, Crc};

const CRC: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);
const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// A link of a version with a good checksum.
#[must_use]
pub fn link_of(version: u8, payload: &[u8]) -> String {
    format!("r{version}.{}", URL_SAFE_NO_PAD.encode(frame(version, payload)))
}

/// A code of a version from 1 to 9 with good checksums.
#[must_use]
pub fn code_of(version: u8, payload: &[u8]) -> String {
    let mut symbols = vec![24, version.into()];
    let (mut bits, mut held) = (0_u32, 0);
    for byte in frame(version, payload) {
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

/// Version and payload of a link that [`link_of`] gave; `None` for any other text.
#[must_use]
pub fn payload(link: &str) -> Option<(u8, Vec<u8>)> {
    let (version, text) = link.strip_prefix('r')?.split_once('.')?;
    let mut bytes = URL_SAFE_NO_PAD.decode(text).ok()?.into_iter().skip(4);
    while bytes.next().is_some_and(|byte| byte >= 128) {}
    Some((version.parse().ok()?, bytes.collect()))
}

fn frame(version: u8, payload: &[u8]) -> Vec<u8> {
    let mut digest = CRC.digest();
    digest.update(&[version]);
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
    use noseward_lesson::{Record, SwingOutcome};
    use noseward_link::{code, hash};
    use noseward_stability::Example;

    #[test]
    fn the_product_spells_alike() {
        for design in Example::ALL.map(Example::design) {
            let mut record = Record::from(design);
            for expected in 1..=2 {
                let link = hash(&record);
                let (version, payload) = payload(&link).unwrap();
                assert_eq!(version, expected);
                assert_eq!(link_of(version, &payload), link);
                assert_eq!(
                    code_of(version, &payload).replace('\n', ""),
                    code(&record).replace([' ', '\n'], "")
                );
                record.swings.add(SwingOutcome::Sideways);
            }
        }
    }
}
