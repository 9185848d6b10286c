//! A whole class: how it is set up, what its groups hand in, and what all that comes to.

mod gathered;
mod result;
mod rules;

pub use gathered::{
    Added, Class, ClassLabel, Entry, LABEL_CHARS, MOST_RESULTS, MOST_WORKS, Refusal, Work,
};
pub use result::{
    CHANGED_CHARS, PointResult, ResultModel, ResultPrediction, TrialResult,
};
pub use rules::{RULES_BITS, RulesCode};
