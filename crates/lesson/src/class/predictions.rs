//! How many first predictions of a class came true.

use crate::TrialResult;

/// How many came true, of how many.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Score {
    /// How many came true.
    pub right: u32,
    /// Of how many of which the swings say so or otherwise.
    pub of: u32,
}

/// The first predictions of a class. None is in two of the three.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct PredictionCounts {
    /// Those made before anything was swung.
    pub before: Score,
    /// Those made after swings were seen: no predictions in the strict sense.
    pub after_swings: Score,
    /// How many are not judged: nothing that counts was seen, it was mixed, or "not sure"
    /// stands on either side.
    pub unjudged: u32,
}

/// How many first predictions came true, as [`Overall::bears_out`](crate::Overall::bears_out)
/// judges one. Trials without a prediction count nowhere.
#[must_use]
pub fn count_predictions<'a>(
    trials: impl IntoIterator<Item = &'a TrialResult>,
) -> PredictionCounts {
    let mut counts = PredictionCounts::default();
    for trial in trials {
        let Some(predicted) = trial.predicted else { continue };
        let Some(right) = trial.overall().bears_out(predicted.outcome) else {
            counts.unjudged += 1;
            continue;
        };
        let after_swings = predicted.swings_seen > 0 || trial.swung_first;
        let score =
            if after_swings { &mut counts.after_swings } else { &mut counts.before };
        score.of += 1;
        score.right += u32::from(right);
    }
    counts
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Group, ResultPrediction, SwingOutcome};
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, Wobbling};

    fn trial(
        outcome: SwingOutcome,
        swings_seen: u8,
        seen: &[SwingOutcome],
    ) -> TrialResult {
        TrialResult {
            predicted: Some(ResultPrediction { outcome, swings_seen }),
            outcomes: seen.to_vec(),
            ..TrialResult::empty(Group::default(), 1)
        }
    }

    #[test]
    fn each_is_counted_once_and_apart() {
        let trials = [
            trial(Steady, 0, &[Steady, Slipped, Wobbling, Steady]),
            trial(Sideways, 0, &[Sideways]),
            trial(Steady, 0, &[Wobbling; 3]),
            trial(Steady, 1, &[Steady; 2]),
            TrialResult { swung_first: true, ..trial(Steady, 0, &[Sideways; 3]) },
            trial(Steady, 0, &[Slipped]),
            trial(Steady, 2, &[Steady, Wobbling]),
            trial(Steady, 0, &[NotSure]),
            trial(NotSure, 0, &[NotSure]),
            TrialResult { predicted: None, ..trial(Steady, 0, &[Steady]) },
        ];
        let expected = PredictionCounts {
            before: Score { right: 2, of: 3 },
            after_swings: Score { right: 1, of: 2 },
            unjudged: 4,
        };
        assert_eq!(count_predictions(&trials), expected);
        assert_eq!(count_predictions([]), PredictionCounts::default());
    }
}
