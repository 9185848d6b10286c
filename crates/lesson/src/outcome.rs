//! What one swing showed.

use serde::{Deserialize, Serialize};

/// What a pupil saw the rocket do in one swing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum SwingOutcome {
    Steady,
    Wobbling,
    Sideways,
    TailFirst,
    Slipped,
    NotSure,
}

impl SwingOutcome {
    /// Every outcome, in the order in which a list shows them.
    pub const ALL: [Self; 6] = [
        Self::Steady,
        Self::Wobbling,
        Self::Sideways,
        Self::TailFirst,
        Self::Slipped,
        Self::NotSure,
    ];

    /// Whether it says something about the rocket. A string that slipped says something
    /// about the string; "not sure" is what somebody saw, and counts.
    #[must_use]
    pub fn counts(self) -> bool {
        self != Self::Slipped
    }

    /// Whether somebody can say beforehand that it will be so: not of a slip.
    #[must_use]
    pub fn can_be_predicted(self) -> bool {
        self.counts()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_a_slip_does_not_count() {
        let not_counted: Vec<_> =
            SwingOutcome::ALL.into_iter().filter(|outcome| !outcome.counts()).collect();
        assert_eq!(not_counted, [SwingOutcome::Slipped]);
    }
}
