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
}
