//! What a group says before it swings.

use noseward_stability::cleaned_lines;

use crate::SwingOutcome;

/// The most characters of a "because".
pub const BECAUSE_CHARS: usize = 300;
/// Versions that are kept at most: the first, and the latest of those that followed.
pub const MOST_VERSIONS: usize = 6;

/// What a group thinks the rocket will do, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Prediction {
    /// What it will do on the string.
    pub outcome: SwingOutcome,
    /// Why the group thinks so.
    pub because: String,
    /// How many swings, slips included, were on record when it was written.
    pub swings_seen: u8,
}

/// The predictions for one trial. The first is locked: nothing here changes it or takes it
/// away. Whoever thinks anew adds a version, and all stand side by side.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Predictions {
    versions: Vec<Prediction>,
}

impl From<Predictions> for Vec<Prediction> {
    fn from(predictions: Predictions) -> Self {
        predictions.versions
    }
}

/// Why versions are no predictions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PredictionsError {
    /// There are more of them than [`MOST_VERSIONS`].
    TooMany,
    /// One of them predicts a slip of the string.
    Slipped,
}

impl TryFrom<Vec<Prediction>> for Predictions {
    type Error = PredictionsError;

    fn try_from(versions: Vec<Prediction>) -> Result<Self, PredictionsError> {
        if versions.len() > MOST_VERSIONS {
            return Err(PredictionsError::TooMany);
        }
        if versions.iter().any(|version| !version.outcome.can_be_predicted()) {
            return Err(PredictionsError::Slipped);
        }
        let clean = |prediction: Prediction| Prediction {
            because: cleaned_lines(&prediction.because, BECAUSE_CHARS),
            ..prediction
        };
        Ok(Self { versions: versions.into_iter().map(clean).collect() })
    }
}

impl Predictions {
    /// The locked one; `None` while nothing was predicted.
    #[must_use]
    pub fn first(&self) -> Option<&Prediction> {
        self.versions.first()
    }

    /// What was written later, the oldest first.
    #[must_use]
    pub fn later(&self) -> &[Prediction] {
        self.versions.get(1..).unwrap_or_default()
    }

    /// All versions, the first first.
    #[must_use]
    pub fn versions(&self) -> &[Prediction] {
        &self.versions
    }

    /// Whether one is locked.
    #[must_use]
    pub fn is_locked(&self) -> bool {
        !self.versions.is_empty()
    }

    /// Locks a prediction, or adds a later version of it; `false`, and nothing changes,
    /// where it says nothing new or cannot be predicted. Of more than [`MOST_VERSIONS`] the
    /// second oldest goes.
    pub fn add(&mut self, prediction: Prediction) -> bool {
        let because = cleaned_lines(prediction.because.trim(), BECAUSE_CHARS);
        let prediction = Prediction { because, ..prediction };
        let is_new = self.versions.last().is_none_or(|last| {
            (last.outcome, &last.because) != (prediction.outcome, &prediction.because)
        });
        if !is_new || !prediction.outcome.can_be_predicted() {
            return false;
        }
        if self.versions.len() == MOST_VERSIONS {
            self.versions.remove(1);
        }
        self.versions.push(prediction);
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{Sideways, Slipped, Steady, Wobbling};

    fn prediction(outcome: SwingOutcome, because: &str) -> Prediction {
        Prediction { outcome, because: because.into(), swings_seen: 0 }
    }

    #[test]
    fn as_many_as_are_kept_come_back_and_clean() {
        let six = vec![prediction(Steady, "x\u{202e}y\0"); MOST_VERSIONS];
        let read = Predictions::try_from(six).unwrap();
        assert_eq!(read.versions(), vec![prediction(Steady, "xy"); MOST_VERSIONS]);
    }

    #[test]
    fn the_first_stays_whatever_follows() {
        let mut all = Predictions::default();
        assert!(!all.is_locked() && all.first().is_none());
        assert!(all.add(prediction(Sideways, " small fins ")));
        let first = prediction(Sideways, "small fins");
        assert_eq!(all.first(), Some(&first));
        assert!(!all.add(first.clone()), "nothing new");
        for i in 0..10 {
            assert!(all.add(prediction(Steady, &i.to_string())));
            assert_eq!(all.first(), Some(&first));
        }
        let kept: Vec<_> = all.later().iter().map(|v| v.because.as_str()).collect();
        assert_eq!(kept, ["5", "6", "7", "8", "9"]);
        assert_eq!(all.versions().len(), MOST_VERSIONS);
    }

    #[test]
    fn a_slip_is_nobodys_prediction() {
        let mut all = Predictions::default();
        assert!(!all.add(prediction(Slipped, "")));
        let slipped = Predictions::try_from(vec![prediction(Slipped, "")]);
        assert_eq!(slipped, Err(PredictionsError::Slipped));
    }

    #[test]
    fn texts_come_clean_and_short() {
        let mut all = Predictions::default();
        all.add(prediction(Wobbling, &"x\u{202e}".repeat(400)));
        assert_eq!(all.first().unwrap().because, "x".repeat(BECAUSE_CHARS));
        let taken_apart = Vec::from(all.clone());
        assert_eq!(Predictions::try_from(taken_apart).unwrap(), all);
        let seven = Predictions::try_from(vec![prediction(Steady, "a"); 7]);
        assert_eq!(seven, Err(PredictionsError::TooMany));
    }
}
