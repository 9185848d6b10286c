//! What stands behind a frame: rockets and notebooks in bytes.
//!
//! Every payload begins with a byte that tells its version and what it has, and may end in
//! a tail. The tail is for what comes later: values with a key and a length, which whoever
//! does not know them passes over, unless they are marked as ones that must not be.

pub(crate) mod codes;
mod corners;
pub(crate) mod design;
pub(crate) mod notebook;
pub(crate) mod numbers;
pub(crate) mod set_up;
pub(crate) mod swings;

use postcard::take_from_bytes;
use serde::{Deserialize, Serialize};

use crate::error::LinkErrorKind;

/// The version of every payload.
const VERSION: u8 = 1;
/// The bits of the first byte that tell the version.
const VERSION_BITS: u8 = 0b1111;
/// A tail stands at the end.
const TAIL: u8 = 1 << 6;

/// Values of one tail, at most, and bytes of a key. Enough for any that will be written;
/// the bounds keep the work small.
const TAIL_VALUES: u8 = 32;
const KEY_BYTES: usize = 32;
/// The value must not be passed over.
const CRITICAL: u8 = 1;

/// One value of a tail.
#[derive(Serialize, Deserialize)]
struct TailValue<'a> {
    flags: u8,
    key: &'a str,
    value: &'a [u8],
}

/// The first byte of a payload without its version; `known` are the bits that it may have.
///
/// # Errors
///
/// [`LinkErrorKind::Newer`] and [`LinkErrorKind::Changed`].
fn flags(form: u8, known: u8) -> Result<u8, LinkErrorKind> {
    match form & VERSION_BITS {
        0 => Err(LinkErrorKind::Changed),
        VERSION if form & !(VERSION_BITS | known | TAIL) == 0 => Ok(form & !VERSION_BITS),
        // Whoever needs another bit means more than version 1.
        VERSION => Err(LinkErrorKind::Newer { version: 2 }),
        version => Err(LinkErrorKind::Newer { version: version.into() }),
    }
}

/// What follows the tail of a payload. No key is known yet.
///
/// # Errors
///
/// [`LinkErrorKind::Unknown`] for a value that must not be passed over,
/// [`LinkErrorKind::CutShort`] and [`LinkErrorKind::Changed`].
fn behind_tail(bytes: &[u8]) -> Result<&[u8], LinkErrorKind> {
    let (count, mut rest) = take::<u8>(bytes)?;
    if count == 0 || count > TAIL_VALUES {
        return Err(LinkErrorKind::Changed);
    }
    let mut unknown = None;
    for _ in 0..count {
        let (TailValue { flags, key, .. }, behind) = take(rest)?;
        let is_key = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_';
        if key.is_empty() || key.len() > KEY_BYTES || !key.bytes().all(is_key) {
            return Err(LinkErrorKind::Changed);
        }
        if flags & CRITICAL != 0 {
            unknown.get_or_insert(key);
        }
        rest = behind;
    }
    match unknown {
        Some(key) => Err(LinkErrorKind::Unknown { key: key.to_owned() }),
        None => Ok(rest),
    }
}

/// The value at the front, and what follows it.
///
/// # Errors
///
/// [`LinkErrorKind::CutShort`] and [`LinkErrorKind::Changed`].
fn take<'a, T: Deserialize<'a>>(bytes: &'a [u8]) -> Result<(T, &'a [u8]), LinkErrorKind> {
    take_from_bytes(bytes).map_err(|error| match error {
        postcard::Error::DeserializeUnexpectedEnd => LinkErrorKind::CutShort,
        _ => LinkErrorKind::Changed,
    })
}

fn put(bytes: &mut Vec<u8>, value: &impl Serialize) {
    let more = postcard::to_allocvec(value).expect("every field can be written");
    bytes.extend_from_slice(&more);
}

/// A tail of these values, each with whether it must not be passed over, as a later
/// version will write it.
#[cfg(test)]
pub(crate) fn tail(values: &[(bool, &str, &[u8])]) -> Vec<u8> {
    let mut bytes = vec![u8::try_from(values.len()).unwrap()];
    for &(critical, key, value) in values {
        put(&mut bytes, &TailValue { flags: critical.into(), key, value });
    }
    bytes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_byte_tells_the_version() {
        assert_eq!(flags(1, 0), Ok(0));
        assert_eq!(flags(1 | TAIL | 16, 16), Ok(TAIL | 16));
        assert_eq!(flags(0, 0), Err(LinkErrorKind::Changed));
        assert_eq!(flags(2, 0), Err(LinkErrorKind::Newer { version: 2 }));
        assert_eq!(flags(15, 0), Err(LinkErrorKind::Newer { version: 15 }));
        for unknown in [1 | 16, 1 | 128] {
            assert_eq!(flags(unknown, 32), Err(LinkErrorKind::Newer { version: 2 }));
        }
    }

    #[test]
    fn a_tail_is_passed_over_or_names_what_must_not_be() {
        let passed = tail(&[(false, "colour", b"red"), (false, "x2", b"")]);
        let more = [&passed[..], b"more"].concat();
        assert_eq!(behind_tail(&more), Ok(&b"more"[..]));
        for end in 0..passed.len() {
            assert_eq!(
                behind_tail(&passed[..end]),
                Err(LinkErrorKind::CutShort),
                "{end}"
            );
        }
        let named = tail(&[(false, "colour", b""), (true, "foil", &[9; 200])]);
        let unknown = LinkErrorKind::Unknown { key: "foil".into() };
        assert_eq!(behind_tail(&named), Err(unknown));
        for bad in [
            tail(&[]),
            tail(&[(false, "", b"")]),
            tail(&[(false, "Two words", b"")]),
            tail(&[(true, &"k".repeat(33), b"")]),
            tail(&[(false, "k", &b""[..]); 33]),
        ] {
            assert_eq!(behind_tail(&bad), Err(LinkErrorKind::Changed), "{bad:?}");
        }
    }
}
