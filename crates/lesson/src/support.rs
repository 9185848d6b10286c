//! How much the page shows and how much it helps.

use serde::{Deserialize, Serialize};

/// How much detail the notebook shows. A choice of whoever leads, never a question about
/// somebody's age; the readings are the same at every level.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// From about 8: which point is nearer the nose, whole millimetres, ranges in words.
    Balance,
    /// From about 10: the separation in millimetres, three readings, their range.
    #[default]
    Measure,
    /// From about 12: body widths as well, what else moved, charts.
    Explain,
    /// From about 14: the model beside the measurement, its limits, moments.
    Model,
}

impl Level {
    /// Every level, the one that shows least first.
    pub const ALL: [Self; 4] = [Self::Balance, Self::Measure, Self::Explain, Self::Model];

    /// Its name, with the ages it is meant for.
    #[must_use]
    pub fn label(self) -> &'static str {
        match self {
            Self::Balance => "Balance (about 8 to 10)",
            Self::Measure => "Measure (about 10 to 12)",
            Self::Explain => "Explain (about 12 to 14)",
            Self::Model => "Model (about 14 to 16)",
        }
    }
}

/// How much help the conclusion gets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Support {
    /// Sentences with the group's own numbers, ready to use.
    #[default]
    Sentences,
    /// A question at each box.
    Questions,
    /// An empty page beside the data.
    None,
}

impl Support {
    /// Every kind, the most helpful first.
    pub const ALL: [Self; 3] = [Self::Sentences, Self::Questions, Self::None];

    /// What it is called.
    #[must_use]
    pub fn label(self) -> &'static str {
        match self {
            Self::Sentences => "sentences to use",
            Self::Questions => "questions only",
            Self::None => "an empty page",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Colour, Overall, Statement, SwingOutcome, Telling};

    /// Two entries of one list that read alike are no choice.
    #[test]
    fn each_choice_has_words_of_its_own() {
        let outcomes = SwingOutcome::ALL.map(Overall::Mostly).into_iter();
        let overall = outcomes.chain([Overall::Nothing, Overall::Mixed]);
        for labels in [
            Level::ALL.map(Level::label).to_vec(),
            Support::ALL.map(Support::label).to_vec(),
            Telling::ALL.map(Telling::label).to_vec(),
            Statement::ALL.map(Statement::label).to_vec(),
            Colour::ALL.map(Colour::label).to_vec(),
            overall.map(Overall::label).collect(),
        ] {
            for (i, label) in labels.iter().enumerate() {
                assert!(!label.is_empty() && !labels[..i].contains(label), "{labels:?}");
            }
        }
    }
}
