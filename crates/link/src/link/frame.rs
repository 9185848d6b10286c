//! What links and typed codes of every kind and version hold: checksum, length and
//! payload.

use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use noseward_lesson::{Record, Swings};
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use super::{Damage, Opened, v1, v2};

/// The checksum that PNG and zip use. Without a table: a link is short.
pub(crate) const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// What stands in front of the payload.
#[derive(Serialize, Deserialize)]
struct Frame {
    #[serde(with = "postcard::fixint::le")]
    checksum: u32,
    length: u16,
}

/// A version of the payload that is known here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Version {
    /// A design.
    One = 1,
    /// A design, and swings.
    Two = 2,
}

impl Version {
    /// The version with this number; `None` for one that is not known here.
    pub(crate) fn known(number: u32) -> Option<Self> {
        [Self::One, Self::Two].into_iter().find(|version| version.number() == number)
    }

    pub(crate) fn number(self) -> u32 {
        self.byte().into()
    }

    pub(crate) fn byte(self) -> u8 {
        self as u8
    }
}

/// The bytes for a record, in the lowest version that has room for what it holds: a
/// version, once shipped, is still written.
pub(crate) fn seal(record: &Record) -> (Version, Vec<u8>) {
    let (version, payload) = if record.has_swings() {
        (Version::Two, v2::write(record))
    } else {
        (Version::One, v1::write(&record.design))
    };
    let length = u16::try_from(payload.len()).expect("counts and texts are bounded");
    (version, framed(&[version.byte()], length, &payload))
}

/// A payload in its frame. What tells its kind and version is covered by the checksum.
pub(crate) fn framed(mark: &[u8], length: u16, payload: &[u8]) -> Vec<u8> {
    let frame = Frame { checksum: checksum(mark, payload), length };
    let mut bytes = postcard::to_allocvec(&frame).expect("numbers can always be written");
    bytes.extend_from_slice(payload);
    bytes
}

/// The payload of a frame that must be whole, with whatever follows it.
///
/// # Errors
///
/// [`Damage::CutShort`] and [`Damage::Changed`].
pub(crate) fn unframed<'a>(mark: &[u8], bytes: &'a [u8]) -> Result<&'a [u8], Damage> {
    let (frame, bytes) = front(bytes)?;
    let payload = bytes.get(..usize::from(frame.length)).ok_or(Damage::CutShort)?;
    let agrees = checksum(mark, payload) == frame.checksum;
    agrees.then_some(payload).ok_or(Damage::Changed)
}

fn front(bytes: &[u8]) -> Result<(Frame, &[u8]), Damage> {
    take_from_bytes(bytes).map_err(|error| match error {
        Error::DeserializeUnexpectedEnd => Damage::CutShort,
        _ => Damage::Changed,
    })
}

/// Opens frame and payload, with whatever follows them: a record, or the part of one.
///
/// # Errors
///
/// [`Damage::CutShort`] and [`Damage::Changed`].
pub(crate) fn open(version: Version, bytes: &[u8]) -> Result<Opened, Damage> {
    let (frame, bytes) = front(bytes)?;
    match bytes.get(..usize::from(frame.length)) {
        Some(payload) if checksum(&[version.byte()], payload) != frame.checksum => {
            Err(Damage::Changed)
        }
        Some(payload) => {
            let (read, swings) = read(version, payload).map_err(|_| Damage::Changed)?;
            let whole = read.missing.is_empty() && read.rest.is_empty();
            let record = Record { design: read.design.cleaned(), swings };
            if whole { Ok(Opened::Record(record)) } else { Err(Damage::Changed) }
        }
        None => {
            let (read, _) = read(version, bytes)?;
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

/// The swings come last: where something is missing, they are too.
fn read(version: Version, payload: &[u8]) -> Result<(v1::Read<'_>, Swings), Damage> {
    match version {
        Version::One => Ok((v1::read(payload)?, Swings::default())),
        Version::Two => v2::read(payload),
    }
}

/// How many bytes the front of a frame announces, itself included; `None` where it ends
/// too early to say, or says nonsense.
pub(crate) fn announced(front: &[u8]) -> Option<usize> {
    let (frame, payload) = take_from_bytes::<Frame>(front).ok()?;
    Some(front.len() - payload.len() + usize::from(frame.length))
}

/// The checksum covers the version: no payload passes for one of another version.
fn checksum(mark: &[u8], payload: &[u8]) -> u32 {
    let mut digest = CRC.digest();
    digest.update(mark);
    digest.update(payload);
    digest.finalize()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::SwingOutcome;
    use noseward_stability::{Example, SwingSetup};

    /// The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC
    /// algorithms.
    #[test]
    fn the_checksum_is_the_named_one() {
        assert_eq!(CRC.checksum(b"123456789"), 0xcbf4_3926);
        assert_eq!(checksum(b"1", b"23456789"), 0xcbf4_3926);
    }

    #[test]
    fn versions_are_found_by_their_numbers() {
        for (number, version) in [(1, Version::One), (2, Version::Two)] {
            assert_eq!(Version::known(number), Some(version));
            assert_eq!(version.number(), number);
        }
        for number in [0, 3, 257, 258, u32::MAX] {
            assert_eq!(Version::known(number), None);
        }
    }

    #[test]
    fn a_wrong_length_is_not_taken_for_a_cut() {
        let mut record = Record::from(Example::Puffin.design());
        for _ in 0..2 {
            let (version, bytes) = seal(&record);
            let (frame, payload) = take_from_bytes::<Frame>(&bytes).unwrap();
            let open_as =
                |length| open(version, &framed(&[version.byte()], length, payload));
            assert_eq!(open_as(frame.length), Ok(Opened::Record(record.clone())));
            assert_eq!(open_as(frame.length + 1), Err(Damage::Changed));
            assert_eq!(open_as(frame.length - 1), Err(Damage::Changed));
            assert_eq!(open_as(u16::MAX), Err(Damage::Changed));
            record.swings.add(SwingOutcome::Steady);
        }
    }

    #[test]
    fn no_payload_passes_for_one_of_another_version() {
        let mut record = Record::from(Example::Puffin.design());
        let (_, bytes) = seal(&record);
        assert_eq!(open(Version::Two, &bytes), Err(Damage::Changed));
        record.swings.add(SwingOutcome::Steady);
        let (_, bytes) = seal(&record);
        assert_eq!(open(Version::One, &bytes), Err(Damage::Changed));
    }

    /// Bytes that no record gives, under a checksum that agrees.
    #[test]
    fn nonsense_under_a_good_checksum_is_refused() {
        for payload in [&[][..], &[255; 40], &[0; 3], &[0, 0, 0, 0, 0, 0, 0, 7]] {
            let length = u16::try_from(payload.len()).unwrap();
            for version in [Version::One, Version::Two] {
                let bytes = framed(&[version.byte()], length, payload);
                assert_eq!(open(version, &bytes), Err(Damage::Changed), "{payload:?}");
            }
        }
        // Swings that are announced, and whole but for the last byte of the outcomes.
        let record = Swings::new(SwingSetup::default(), [SwingOutcome::Steady; 3]);
        let record = Record { design: Example::Tern.design(), swings: record.unwrap() };
        let mut payload = v2::write(&record);
        payload.pop();
        let length = u16::try_from(payload.len()).unwrap();
        let bytes = framed(&[2], length, &payload);
        assert_eq!(open(Version::Two, &bytes), Err(Damage::Changed));
    }
}
