//! A check over what is locked, so that a change by hand leaves a trace.

use std::fmt;
use std::str::FromStr;

use crc::{CRC_32_ISO_HDLC, Crc, Digest, NoTable};
use noseward_stability::{Design, Field};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::Predictions;

/// The checksum that PNG and zip use. Without a table: it is over a few hundred bytes.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// The check over what is locked in one trial: eight hexadecimal digits as text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seal(pub u32);

impl fmt::Display for Seal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:08x}", self.0)
    }
}

impl FromStr for Seal {
    type Err = &'static str;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let digits = text.len() == 8 && text.bytes().all(|b| b.is_ascii_hexdigit());
        let value = digits.then(|| u32::from_str_radix(text, 16).ok()).flatten();
        value.map(Self).ok_or("a seal is eight hexadecimal digits")
    }
}

impl Serialize for Seal {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Seal {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

/// The seal over a trial's number, its rocket's numbers and its predictions. The order is
/// a format: a change breaks every seal ever written.
pub(crate) fn over(
    id: u16,
    design: &Design,
    predictions: &Predictions,
    altered: bool,
) -> Seal {
    let mut digest = Sealing(CRC.digest());
    digest.number(id.into());
    digest.number(altered.into());
    for count in [design.sections.len(), design.fins.len(), design.weights.len()] {
        digest.number(count as u64);
    }
    for field in Field::numbers(design) {
        // A number on its grid, so that every spelling of it gives the same.
        let value = field.get(design).zip(field.quantity());
        let steps = value.map(|(v, q)| q.rounded(v) * q.steps_per_unit());
        digest.number(steps.map_or(u64::MAX, |steps| (steps.round() + 0.0).to_bits()));
    }
    for version in predictions.versions() {
        digest.text(version.outcome.label());
        digest.text(&version.because);
        digest.number(version.swings_seen.into());
    }
    Seal(digest.0.finalize())
}

/// Values one after the other, each with an end of its own.
struct Sealing(Digest<'static, u32, NoTable>);

impl Sealing {
    fn number(&mut self, value: u64) {
        self.0.update(&value.to_le_bytes());
    }

    fn text(&mut self, text: &str) {
        self.number(text.len() as u64);
        self.0.update(text.as_bytes());
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Prediction, SwingOutcome};
    use noseward_stability::Example;

    #[test]
    fn a_seal_is_eight_digits() {
        for (text, value) in [("00000000", 0), ("cbf43926", 0xcbf4_3926)] {
            assert_eq!(text.parse(), Ok(Seal(value)));
            assert_eq!(Seal(value).to_string(), text);
        }
        for bad in ["", "1", "+0000000", "cbf4392g", "cbf439260", "cbf4392 "] {
            assert!(bad.parse::<Seal>().is_err(), "{bad}");
        }
    }

    /// The order of what is sealed never changes: this seal was written once and stands in
    /// files.
    #[test]
    fn seals_once_written_stay_right() {
        let mut predictions = Predictions::default();
        predictions.add(Prediction {
            outcome: SwingOutcome::Wobbling,
            because: "small fins".into(),
            swings_seen: 0,
        });
        let seal = over(3, &Example::Tern.design(), &predictions, false);
        assert_eq!(seal.to_string(), "5bcafcfe");
    }
}
