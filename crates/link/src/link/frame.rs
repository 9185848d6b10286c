//! What links and typed codes of version 1 hold: checksum, length and payload.

use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use noseward_stability::Design;
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use super::{Damage, Opened, v1};

/// The checksum that PNG and zip use. Without a table: a link is short.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// What stands in front of the payload.
#[derive(Serialize, Deserialize)]
struct Frame {
    #[serde(with = "postcard::fixint::le")]
    checksum: u32,
    length: u16,
}

/// The bytes for a design.
pub(crate) fn seal(design: &Design) -> Vec<u8> {
    let payload = v1::write(design);
    let length = u16::try_from(payload.len()).expect("counts and texts are bounded");
    let frame = Frame { checksum: checksum(1, &payload), length };
    let mut bytes = postcard::to_allocvec(&frame).expect("numbers can always be written");
    bytes.extend_from_slice(&payload);
    bytes
}

/// Opens frame and payload, with whatever follows them: a design, or the part of one.
///
/// # Errors
///
/// [`Damage::CutShort`] and [`Damage::Changed`].
pub(crate) fn open(bytes: &[u8]) -> Result<Opened, Damage> {
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
            let design = read.design.cleaned();
            if whole { Ok(Opened::Design(design)) } else { Err(Damage::Changed) }
        }
        None => {
            let read = v1::read(bytes)?;
            if read.missing.is_empty() {
                // All of it is here, so it is the length that is wrong.
                Err(Damage::Changed)
            } else if read.design.sections.is_empty() {
                Err(Damage::CutShort)
            } else {
                let design = read.design.cleaned();
                Ok(Opened::Partial { design, missing: read.missing })
            }
        }
    }
}

/// How many bytes the front of a frame announces, itself included; `None` where it ends
/// too early to say, or says nonsense.
pub(crate) fn announced(front: &[u8]) -> Option<usize> {
    let (frame, payload) = take_from_bytes::<Frame>(front).ok()?;
    Some(front.len() - payload.len() + usize::from(frame.length))
}

/// The checksum covers the version: no payload passes for one of another version.
fn checksum(version: u8, payload: &[u8]) -> u32 {
    let mut digest = CRC.digest();
    digest.update(&[version]);
    digest.update(payload);
    digest.finalize()
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
    fn a_wrong_length_is_not_taken_for_a_cut() {
        let payload = v1::write(&Example::Puffin.design());
        let length = u16::try_from(payload.len()).unwrap();
        let open_as = |length| {
            let frame = Frame { checksum: checksum(1, &payload), length };
            let mut bytes = postcard::to_allocvec(&frame).unwrap();
            bytes.extend_from_slice(&payload);
            open(&bytes)
        };
        assert!(matches!(open_as(length), Ok(Opened::Design(_))));
        assert_eq!(open_as(length + 1), Err(Damage::Changed));
        assert_eq!(open_as(length - 1), Err(Damage::Changed));
        assert_eq!(open_as(u16::MAX), Err(Damage::Changed));
    }

    /// Bytes that no design gives, under a checksum that agrees.
    #[test]
    fn nonsense_under_a_good_checksum_is_refused() {
        for payload in [&[][..], &[255; 40], &[0; 3], &[0, 0, 0, 0, 0, 0, 0, 7]] {
            let length = u16::try_from(payload.len()).unwrap();
            let frame = Frame { checksum: checksum(1, payload), length };
            let mut bytes = postcard::to_allocvec(&frame).unwrap();
            bytes.extend_from_slice(payload);
            assert_eq!(open(&bytes), Err(Damage::Changed), "{payload:?}");
        }
    }
}
