//! The text after `#`: frame, checksum and version of a link.

pub(crate) mod missing;
mod v1;

use base64::Engine;
use base64::alphabet::URL_SAFE;
use base64::engine::general_purpose::GeneralPurpose;
use base64::engine::{DecodePaddingMode, GeneralPurposeConfig};
use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use noseward_stability::Design;
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use missing::Missing;

/// Characters of base64url in a link that is opened, at most. More than three times what
/// a design without faults takes; the bound is there to keep the work small.
pub const HASH_CHARS: usize = 4096;

/// Bits that a cut or a following letter leaves over are no fault.
const BASE64URL: GeneralPurpose = GeneralPurpose::new(
    &URL_SAFE,
    GeneralPurposeConfig::new()
        .with_encode_padding(false)
        .with_decode_padding_mode(DecodePaddingMode::RequireNone)
        .with_decode_allow_trailing_bits(true),
);

/// The checksum that PNG and zip use. Without a table: a link is short.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// What a text after `#` turned out to be.
#[derive(Clone, Debug, PartialEq)]
pub enum Opened {
    /// No rocket: empty, or some other text such as an ordinary anchor.
    Nothing,
    /// The design, whole, and its checksum agrees.
    Design(Design),
    /// The link was cut short, and at least one whole section arrived.
    ///
    /// Nothing vouches for what arrived: the checksum only holds for a whole link.
    Partial {
        /// What arrived: the name, the measured values, and every whole part.
        design: Design,
        /// What did not; never empty.
        missing: Vec<Missing>,
    },
    /// A link to a rocket that cannot be shown.
    Damaged(Damage),
}

/// Why a link cannot be shown. Its text is for a pupil, and says how to mend it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Damage {
    /// It is longer than [`HASH_CHARS`].
    #[error(
        "This link is longer than any that this page makes. Copy it again from where it \
         came from."
    )]
    TooLong,
    /// It has a version that is not known here.
    #[error(
        "This link was made by a newer version of this page. Reload the page, then open \
         the link again."
    )]
    Newer {
        /// The version it names.
        version: u32,
    },
    /// So little of it arrived that there is nothing to show.
    #[error("This link was cut short on its way. Copy the whole link and open it again.")]
    CutShort,
    /// Its checksum does not agree, or what it holds makes no sense.
    #[error(
        "This link was changed on its way, so its numbers cannot be trusted. Copy it \
         again from where it came from."
    )]
    Changed,
}

/// What stands in front of the payload.
#[derive(Serialize, Deserialize)]
struct Frame {
    #[serde(with = "postcard::fixint::le")]
    checksum: u32,
    length: u16,
}

/// The text for a link to the design, without the `#`: ASCII letters, digits, `.`, `-`
/// and `_` only.
///
/// The link holds [`Design::rounded`]. For a design without a fault that stops it, link
/// and `#` are at most 1,000 characters. From a design with faults it keeps what
/// the format has room for: numbers beyond its range become the end of the range, parts
/// beyond its counts and the ends of very long texts are left out, and "not a number"
/// stays what it is.
#[must_use]
pub fn hash(design: &Design) -> String {
    let payload = v1::write(design);
    let length = u16::try_from(payload.len()).expect("counts and texts are bounded");
    let frame = Frame { checksum: checksum(1, &payload), length };
    let mut bytes = postcard::to_allocvec(&frame).expect("numbers can always be written");
    bytes.extend_from_slice(&payload);
    let mut text = String::from("r1.");
    BASE64URL.encode_string(bytes, &mut text);
    text
}

/// Reads the text after `#`, which may still have the `#` in front.
///
/// White space around it, percent signs for `.`, `-` and `_`, and whatever a chat
/// program has put behind it are no fault. Takes any text, of any length; the work is
/// bounded by [`HASH_CHARS`].
#[must_use]
pub fn open_hash(text: &str) -> Opened {
    let text = text.trim_start_matches(|c: char| c == '\u{feff}' || c.is_whitespace());
    let mut bytes = unescaped(text.strip_prefix('#').unwrap_or(text));
    let Some(version) = version(&mut bytes) else { return Opened::Nothing };
    if version != 1 {
        return Opened::Damaged(Damage::Newer { version });
    }
    let is_base64url = |b: &u8| b.is_ascii_alphanumeric() || matches!(b, b'-' | b'_');
    let mut symbols: Vec<u8> =
        bytes.take_while(is_base64url).take(HASH_CHARS + 1).collect();
    if symbols.len() > HASH_CHARS {
        return Opened::Damaged(Damage::TooLong);
    }
    if symbols.len() % 4 == 1 {
        // Six bits alone make no byte.
        symbols.pop();
    }
    match BASE64URL.decode(symbols) {
        Ok(bytes) => open_bytes(&bytes).unwrap_or_else(Opened::Damaged),
        Err(_) => Opened::Damaged(Damage::Changed),
    }
}

/// Opens frame and payload, with whatever follows them.
fn open_bytes(bytes: &[u8]) -> Result<Opened, Damage> {
    let (frame, bytes) =
        take_from_bytes::<Frame>(bytes).map_err(|error| match error {
            Error::DeserializeUnexpectedEnd => Damage::CutShort,
            _ => Damage::Changed,
        })?;
    match bytes.get(..usize::from(frame.length)) {
        Some(payload) if checksum(1, payload) != frame.checksum => Err(Damage::Changed),
        Some(payload) => {
            let read = v1::read(payload).map_err(|_| Damage::Changed)?;
            let whole = read.missing.is_empty() && read.rest.is_empty();
            if whole { Ok(Opened::Design(read.design)) } else { Err(Damage::Changed) }
        }
        None => {
            let read = v1::read(bytes)?;
            if read.missing.is_empty() {
                // All of it is here, so it is the length that is wrong.
                Err(Damage::Changed)
            } else if read.design.sections.is_empty() {
                Err(Damage::CutShort)
            } else {
                Ok(Opened::Partial { design: read.design, missing: read.missing })
            }
        }
    }
}

/// The checksum covers the version: no payload passes for one of another version.
fn checksum(version: u8, payload: &[u8]) -> u32 {
    let mut digest = CRC.digest();
    digest.update(&[version]);
    digest.update(payload);
    digest.finalize()
}

/// Takes `r`, a version of up to four digits and `.` off the front.
fn version(bytes: &mut impl Iterator<Item = u8>) -> Option<u32> {
    if bytes.next() != Some(b'r') {
        return None;
    }
    let mut version = 0;
    for byte in bytes.by_ref().take(5) {
        match byte {
            b'.' => return (version > 0).then_some(version),
            b'0' if version == 0 => return None,
            b'0'..=b'9' => version = version * 10 + u32::from(byte - b'0'),
            _ => return None,
        }
    }
    None
}

/// The bytes of a text, with `.`, `-` and `_` in place of their percent forms.
fn unescaped(text: &str) -> impl Iterator<Item = u8> {
    let mut rest = text.as_bytes();
    std::iter::from_fn(move || {
        let (byte, tail) = match rest {
            [b'%', b'2', b'E' | b'e', tail @ ..] => (b'.', tail),
            [b'%', b'2', b'D' | b'd', tail @ ..] => (b'-', tail),
            [b'%', b'5', b'F' | b'f', tail @ ..] => (b'_', tail),
            &[byte, ref tail @ ..] => (byte, tail),
            [] => return None,
        };
        rest = tail;
        Some(byte)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::Example;

    /// The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC
    /// algorithms.
    #[test]
    fn the_checksum_is_the_named_one() {
        assert_eq!(CRC.checksum(b"123456789"), 0xcbf4_3926);
        assert_eq!(checksum(b'1', b"23456789"), 0xcbf4_3926);
    }

    #[test]
    fn other_texts_are_no_rocket() {
        for text in [
            "", "#", " ", "r", "r1", "#r1", "rocket", "#help", "r.", "r0.", "r01.AA",
            "1.", "R1.AA", "r1-AA", "r12345.", "r99999.", "r-1.", "#results", "r%31.AA",
        ] {
            assert_eq!(open_hash(text), Opened::Nothing, "{text}");
        }
    }

    #[test]
    fn another_version_is_named() {
        for (text, version) in [("r2.", 2), ("#r10.AbC", 10), ("r9999.", 9999)] {
            assert_eq!(open_hash(text), Opened::Damaged(Damage::Newer { version }));
        }
    }

    #[test]
    fn what_others_do_to_a_link_is_tolerated() {
        let design = Example::Puffin.design();
        let plain = hash(&design);
        let escaped = plain.replace('.', "%2E").replace('-', "%2d").replace('_', "%5F");
        for text in [
            format!("#{plain}"),
            format!(" \n\u{feff}#{plain}\t\n"),
            format!("{plain})."),
            format!("#{plain}>, see below"),
            format!("{plain}AndMore-Letters_1"),
            format!("{plain}x"),
            format!("{plain}%20and"),
            format!("{plain}…"),
            escaped,
        ] {
            assert_eq!(open_hash(&text), Opened::Design(design.clone()), "{text}");
        }
    }

    #[test]
    fn only_what_a_link_is_made_of_is_unescaped() {
        let text = String::from_utf8(unescaped("%2E%2e%2D%2d%5F%5f%41%2%").collect());
        assert_eq!(text.as_deref(), Ok("..--__%41%2%"));
    }

    #[test]
    fn an_endless_link_is_refused() {
        let mut text = String::from("r1.");
        text.push_str(&"A".repeat(HASH_CHARS));
        assert_eq!(open_hash(&text), Opened::Damaged(Damage::Changed));
        text.push('A');
        assert_eq!(open_hash(&text), Opened::Damaged(Damage::TooLong));
    }

    #[test]
    fn a_wrong_length_is_not_taken_for_a_cut() {
        let payload = v1::write(&Example::Puffin.design());
        let length = u16::try_from(payload.len()).unwrap();
        let open = |length| {
            let frame = Frame { checksum: checksum(1, &payload), length };
            let mut bytes = postcard::to_allocvec(&frame).unwrap();
            bytes.extend_from_slice(&payload);
            open_bytes(&bytes)
        };
        assert!(matches!(open(length), Ok(Opened::Design(_))));
        assert_eq!(open(length + 1), Err(Damage::Changed));
        assert_eq!(open(length - 1), Err(Damage::Changed));
        assert_eq!(open(u16::MAX), Err(Damage::Changed));
    }

    /// Bytes that no design gives, under a checksum that agrees.
    #[test]
    fn nonsense_under_a_good_checksum_is_refused() {
        for payload in [&[][..], &[255; 40], &[0; 3], &[0, 0, 0, 0, 0, 0, 0, 7]] {
            let length = u16::try_from(payload.len()).unwrap();
            let frame = Frame { checksum: checksum(1, payload), length };
            let mut bytes = postcard::to_allocvec(&frame).unwrap();
            bytes.extend_from_slice(payload);
            assert_eq!(open_bytes(&bytes), Err(Damage::Changed), "{payload:?}");
        }
    }
}
