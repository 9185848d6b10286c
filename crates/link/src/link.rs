//! The text after `#`: a link's spelling of the frame.

use base64::Engine;
use base64::alphabet::URL_SAFE;
use base64::engine::general_purpose::GeneralPurpose;
use base64::engine::{DecodePaddingMode, GeneralPurposeConfig};
use noseward_lesson::Record;
use noseward_stability::Design;

use crate::code::{looks_like_code, open_code};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::frame::{self, VERSION};
use crate::missing::Missing;

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

/// What a text after `#` turned out to be.
#[derive(Clone, Debug, PartialEq)]
pub enum Opened {
    /// No rocket: empty, or some other text such as an ordinary anchor.
    Nothing,
    /// The record, whole, and its checksum agrees.
    Record(Record),
    /// The link was cut short, and at least one whole section arrived.
    ///
    /// Nothing vouches for what arrived: the checksum only holds for a whole link.
    Partial {
        /// What arrived: the name, the measured values, and every whole part. The
        /// swings stand last in a link, so that they never arrive with one that was cut.
        design: Design,
        /// What did not; never empty.
        missing: Vec<Missing>,
    },
    /// A link to a rocket that cannot be shown.
    Damaged(LinkError),
}

/// The text for a link to the record, without the `#`: ASCII letters, digits, `.`, `-`
/// and `_` only.
///
/// The link holds [`Record::rounded`]: a setup of the swing without an outcome is not
/// kept. For a design without a fault that stops it, link and `#` are at most 1,000
/// characters, swings included. From a record with faults it keeps what the format has room for: numbers beyond its range become the end of the range, parts
/// beyond its counts and the ends of very long texts are left out, and "not a number"
/// stays what it is.
#[must_use]
pub fn hash(record: &Record) -> String {
    spell('r', &frame::encode(record))
}

/// A link of some kind.
pub(crate) fn spell(kind: char, bytes: &[u8]) -> String {
    let mut text = format!("{kind}{VERSION}.");
    BASE64URL.encode_string(bytes, &mut text);
    text
}

/// Reads the text after `#`, which may still have the `#` in front.
///
/// White space around it, percent signs for `.`, `-` and `_`, and whatever a chat
/// program has put behind it are no fault. A [code](crate::code()), as a QR symbol holds
/// it, will do in place of a link. Takes any text, of any length; the work is
/// bounded by [`HASH_CHARS`].
#[must_use]
pub fn open_hash(text: &str) -> Opened {
    let mut bytes = unescaped(body(text));
    let Some(version) = version(b'r', &mut bytes) else {
        if !looks_like_code(text) {
            return Opened::Nothing;
        }
        return open_code(text).map_or_else(Opened::Damaged, Opened::Record);
    };
    decoded(version, bytes, HASH_CHARS)
        .and_then(|bytes| frame::open(&bytes))
        .unwrap_or_else(|kind| Opened::Damaged(kind.at(At::Link)))
}

/// The bytes that stand behind the version of a link.
fn decoded(
    version: u32,
    bytes: impl Iterator<Item = u8>,
    most: usize,
) -> Result<Vec<u8>, LinkErrorKind> {
    if version != u32::from(VERSION) {
        return Err(LinkErrorKind::Newer { version });
    }
    let mut symbols: Vec<u8> = bytes.take_while(is_base64url).take(most + 1).collect();
    if symbols.len() > most {
        return Err(LinkErrorKind::TooLarge { bytes: symbols.len() });
    }
    if symbols.len() % 4 == 1 {
        // Six bits alone make no byte.
        symbols.pop();
    }
    BASE64URL.decode(symbols).map_err(|_| LinkErrorKind::Changed)
}

/// Whether a byte may stand in a link, behind its version.
#[expect(clippy::trivially_copy_pass_by_ref, reason = "iterators hand it over so")]
fn is_base64url(byte: &u8) -> bool {
    byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_')
}

/// The bytes of a link of another kind, of so many characters at most; `None` for any other
/// text.
pub(crate) fn open_bytes(
    kind: u8,
    text: &str,
    most: usize,
) -> Option<Result<Vec<u8>, LinkErrorKind>> {
    let mut bytes = unescaped(body(text));
    let version = version(kind, &mut bytes)?;
    Some(decoded(version, bytes, most))
}

/// Whether a text begins as a link of a kind does, with at least so many characters of
/// base64url. No more of the text is looked at.
pub(crate) fn is_long_link_of(kind: u8, text: &str, chars: usize) -> bool {
    let mut bytes = unescaped(body(text));
    version(kind, &mut bytes).is_some()
        && bytes.take_while(is_base64url).take(chars).count() == chars
}

/// Whether a text begins as a link of any version does.
pub(crate) fn is_link(text: &str) -> bool {
    is_link_of(b'r', text)
}

/// Whether a text begins as a link of a kind does.
pub(crate) fn is_link_of(kind: u8, text: &str) -> bool {
    version(kind, &mut unescaped(body(text))).is_some()
}

/// The text without white space and `#` in front.
pub(crate) fn body(text: &str) -> &str {
    let text = text.trim_start_matches(|c: char| c == '\u{feff}' || c.is_whitespace());
    text.strip_prefix('#').unwrap_or(text)
}

/// Takes the kind, a version of up to four digits and `.` off the front.
fn version(kind: u8, bytes: &mut impl Iterator<Item = u8>) -> Option<u32> {
    if bytes.next() != Some(kind) {
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
    use noseward_lesson::SwingOutcome;
    use noseward_stability::Example;

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
            let error = LinkErrorKind::Newer { version }.at(At::Link);
            assert_eq!(open_hash(text), Opened::Damaged(error));
        }
    }

    #[test]
    fn what_others_do_to_a_link_is_tolerated() {
        let mut record = Record::from(Example::Puffin.design());
        tolerated(&record);
        record.swings.add(SwingOutcome::Wobbling);
        tolerated(&record);
    }

    fn tolerated(record: &Record) {
        let plain = hash(record);
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
            assert_eq!(open_hash(&text), Opened::Record(record.clone()), "{text}");
        }
    }

    #[test]
    fn only_what_a_link_is_made_of_is_unescaped() {
        let text = String::from_utf8(unescaped("%2E%2e%2D%2d%5F%5f%41%2%").collect());
        assert_eq!(text.as_deref(), Ok("..--__%41%2%"));
    }

    #[test]
    fn an_endless_link_is_refused() {
        let damaged = |kind: LinkErrorKind| Opened::Damaged(kind.at(At::Link));
        let mut text = String::from("r1.");
        text.push_str(&"A".repeat(HASH_CHARS));
        assert_eq!(open_hash(&text), damaged(LinkErrorKind::Changed));
        text.push('A');
        let too_large = LinkErrorKind::TooLarge { bytes: HASH_CHARS + 1 };
        assert_eq!(open_hash(&text), damaged(too_large));
    }
}
