//! How many first predictions of a class came true.

use crate::{Overall, SwingOutcome};

/// A first prediction, and what was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Foretold {
    /// What was predicted first.
    pub outcome: SwingOutcome,
    /// How many swings were on record then, slips included.
    pub swings_seen: u8,
    /// What the swings come to.
    pub seen: Overall,
}

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

/// How many first predictions came true, as [`Overall::bears_out`] judges one.
#[must_use]
pub fn count_predictions(all: impl IntoIterator<Item = Foretold>) -> PredictionCounts {
    let mut counts = PredictionCounts::default();
    for Foretold { outcome, swings_seen, seen } in all {
        let Some(right) = seen.bears_out(outcome) else {
            counts.unjudged += 1;
            continue;
        };
        let score =
            if swings_seen == 0 { &mut counts.before } else { &mut counts.after_swings };
        score.of += 1;
        score.right += u32::from(right);
    }
    counts
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Sideways, Steady, Wobbling};

    #[test]
    fn each_is_counted_once_and_apart() {
        let foretold =
            |outcome, swings_seen, seen| Foretold { outcome, swings_seen, seen };
        let counts = count_predictions([
            foretold(Steady, 0, Overall::Mostly(Steady)),
            foretold(Sideways, 0, Overall::Mostly(Sideways)),
            foretold(Steady, 0, Overall::Mostly(Wobbling)),
            foretold(Steady, 1, Overall::Mostly(Steady)),
            foretold(Steady, 3, Overall::Mostly(Sideways)),
            foretold(Steady, 0, Overall::Nothing),
            foretold(Steady, 2, Overall::Mixed),
            foretold(Steady, 0, Overall::Mostly(NotSure)),
            foretold(NotSure, 0, Overall::Mostly(NotSure)),
        ]);
        let expected = PredictionCounts {
            before: Score { right: 2, of: 3 },
            after_swings: Score { right: 1, of: 2 },
            unjudged: 4,
        };
        assert_eq!(counts, expected);
        assert_eq!(count_predictions([]), PredictionCounts::default());
    }
}
