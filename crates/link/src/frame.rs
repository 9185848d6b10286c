//! What links and typed codes of every kind hold: checksum, length and payload.

use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use noseward_lesson::Record;
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use crate::Opened;
use crate::error::LinkErrorKind;
use crate::payload::design;

/// The checksum that PNG and zip use. Without a table: a link is short.
pub(crate) const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// The version of every spelling.
pub(crate) const VERSION: u8 = 1;
/// Kind and version of a rocket, as the checksum covers them.
const ROCKET: [u8; 2] = [b'r', VERSION];

/// What stands in front of the payload.
#[derive(Serialize, Deserialize)]
struct Frame {
    #[serde(with = "postcard::fixint::le")]
    checksum: u32,
    length: u32,
}

impl Frame {
    /// Saturates: no payload is that long.
    fn length(&self) -> usize {
        usize::try_from(self.length).unwrap_or(usize::MAX)
    }
}

/// The bytes for a record.
pub(crate) fn encode(record: &Record) -> Vec<u8> {
    framed(ROCKET, &design::write_record(record))
}

/// A payload in its frame. What tells its kind and version is covered by the checksum.
pub(crate) fn framed(mark: [u8; 2], payload: &[u8]) -> Vec<u8> {
    let length = u32::try_from(payload.len()).expect("counts and texts are bounded");
    let frame = Frame { checksum: checksum(mark, payload), length };
    let mut bytes = postcard::to_allocvec(&frame).expect("numbers can always be written");
    bytes.extend_from_slice(payload);
    bytes
}

/// The payload of a frame that must be whole, with whatever follows it.
///
/// # Errors
///
/// [`LinkErrorKind::CutShort`] and [`LinkErrorKind::Changed`].
pub(crate) fn unframed(mark: [u8; 2], bytes: &[u8]) -> Result<&[u8], LinkErrorKind> {
    let (frame, bytes) = front(bytes)?;
    let payload = bytes.get(..frame.length()).ok_or(LinkErrorKind::CutShort)?;
    let agrees = checksum(mark, payload) == frame.checksum;
    agrees.then_some(payload).ok_or(LinkErrorKind::Changed)
}

fn front(bytes: &[u8]) -> Result<(Frame, &[u8]), LinkErrorKind> {
    take_from_bytes(bytes).map_err(|error| match error {
        Error::DeserializeUnexpectedEnd => LinkErrorKind::CutShort,
        _ => LinkErrorKind::Changed,
    })
}

/// Opens frame and payload of a rocket, with whatever follows them: a record, or the part
/// of one.
///
/// # Errors
///
/// [`LinkErrorKind`]: what the payload says, [`LinkErrorKind::CutShort`] and
/// [`LinkErrorKind::Changed`].
pub(crate) fn open(bytes: &[u8]) -> Result<Opened, LinkErrorKind> {
    match unframed(ROCKET, bytes) {
        Ok(payload) => {
            let read = design::read(payload).map_err(|kind| match kind {
                // Its checksum agrees: nothing was cut.
                LinkErrorKind::CutShort => LinkErrorKind::Changed,
                kind => kind,
            })?;
            if read.missing.is_empty() && read.rest.is_empty() {
                Ok(Opened::Record(read.record))
            } else {
                Err(LinkErrorKind::Changed)
            }
        }
        Err(LinkErrorKind::CutShort) => {
            let (_, payload) = front(bytes)?;
            let read = design::read(payload)?;
            if read.missing.is_empty() {
                // All of it is here, so it is the length that is wrong.
                Err(LinkErrorKind::Changed)
            } else if read.record.design.sections.is_empty() {
                Err(LinkErrorKind::CutShort)
            } else {
                let design = read.record.design;
                Ok(Opened::Partial { design, missing: read.missing })
            }
        }
        Err(kind) => Err(kind),
    }
}

/// How many bytes the front of a frame announces, itself included; `None` where it ends
/// too early to say, or says nonsense.
pub(crate) fn announced(front: &[u8]) -> Option<usize> {
    let (frame, payload) = take_from_bytes::<Frame>(front).ok()?;
    Some((front.len() - payload.len()).saturating_add(frame.length()))
}

fn checksum(mark: [u8; 2], payload: &[u8]) -> u32 {
    let mut digest = CRC.digest();
    digest.update(&mark);
    digest.update(payload);
    digest.finalize()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::SwingOutcome;
    use noseward_stability::Example;

    /// The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC
    /// algorithms.
    #[test]
    fn the_checksum_is_the_named_one() {
        assert_eq!(CRC.checksum(b"123456789"), 0xcbf4_3926);
        assert_eq!(checksum(*b"12", b"3456789"), 0xcbf4_3926);
    }

    #[test]
    fn a_wrong_length_is_not_taken_for_a_cut() {
        let mut record = Record::from(Example::Puffin.design());
        for _ in 0..2 {
            let bytes = encode(&record);
            let (frame, payload) = take_from_bytes::<Frame>(&bytes).unwrap();
            let open_as = |length| {
                let frame = Frame { length, ..front(&bytes).unwrap().0 };
                let mut bytes = postcard::to_allocvec(&frame).unwrap();
                bytes.extend_from_slice(payload);
                open(&bytes)
            };
            assert_eq!(open_as(frame.length), Ok(Opened::Record(record.clone())));
            for wrong in [frame.length + 1, frame.length - 1, u32::MAX] {
                assert_eq!(open_as(wrong), Err(LinkErrorKind::Changed));
            }
            record.swings.add(SwingOutcome::Steady);
        }
    }

    #[test]
    fn no_payload_passes_for_one_of_another_kind() {
        let bytes = encode(&Example::Puffin.design().into());
        assert!(unframed(ROCKET, &bytes).is_ok());
        for mark in [[b'n', 1], [b'r', 2]] {
            assert_eq!(unframed(mark, &bytes), Err(LinkErrorKind::Changed));
        }
    }

    /// Bytes that no record gives, under a checksum that agrees.
    #[test]
    fn nonsense_under_a_good_checksum_is_refused() {
        let whole = design::write_record(&Example::Tern.design().into());
        let cut = &whole[..whole.len() - 1];
        for payload in [&[][..], &[1; 40], &[1, 0], &[1, 0, 0, 0, 7], cut] {
            let bytes = framed(ROCKET, payload);
            assert_eq!(open(&bytes), Err(LinkErrorKind::Changed), "{payload:?}");
        }
    }
}
