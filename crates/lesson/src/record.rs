//! A rocket together with what a class did with it.

use noseward_stability::Design;
use serde::{Deserialize, Serialize};

use crate::Swings;

/// A rocket, and what was tried with it: all that a link, a code or a file holds.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    /// The rocket.
    pub design: Design,
    /// How it was swung, and what was seen.
    #[serde(default)]
    pub swings: Swings,
}

impl Record {
    /// Whether at least one outcome of a swing is there, a slip included. A setup that
    /// somebody chose is none.
    #[must_use]
    pub fn has_swings(&self) -> bool {
        !self.swings.outcomes().is_empty()
    }

    /// The same record as links keep it: see [`Design::rounded`] and
    /// [`Swings::rounded`].
    #[must_use]
    pub fn rounded(self) -> Self {
        Self { design: self.design.rounded(), swings: self.swings.rounded() }
    }
}

impl From<Design> for Record {
    /// The rocket, not yet swung.
    fn from(design: Design) -> Self {
        Self { design, swings: Swings::default() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SwingOutcome;
    use noseward_stability::{Example, SwingSetup};

    #[test]
    fn a_design_alone_has_no_swings() {
        let mut record = Record::from(Example::Tern.design());
        assert!(!record.has_swings());
        record.swings.setup.string_m = 2.0;
        assert!(!record.has_swings());
        assert_eq!(record.clone().rounded(), Example::Tern.design().into());
        assert!(record.swings.add(SwingOutcome::Slipped));
        assert!(record.has_swings());
        assert_eq!(record.clone().rounded(), record);
    }

    #[test]
    fn both_halves_are_rounded() {
        let mut record = Record::from(Example::Tern.design());
        record.swings.add(SwingOutcome::Steady);
        let kept = record.clone();
        record.design.sections[0].length_mm += 0.04;
        record.swings.setup.string_m += 0.004;
        assert_ne!(record, kept);
        assert_eq!(record.rounded(), kept);
    }

    #[test]
    fn json_needs_no_swings() {
        let record = Record::from(Example::Razorbill.design());
        let text = serde_json::to_string(&record).unwrap();
        assert_eq!(serde_json::from_str::<Record>(&text).unwrap(), record);
        let design = serde_json::to_string(&record.design).unwrap();
        let text = format!("{{\"design\": {design}}}");
        let read: Record = serde_json::from_str(&text).unwrap();
        assert_eq!(
            (read.swings.setup, read.has_swings()),
            (SwingSetup::default(), false)
        );
    }
}
