//! A whole class: how it is set up, what its groups hand in, and what all that comes to.

mod result;
mod rules;

pub use result::{
    CHANGED_CHARS, PointResult, ResultModel, ResultPrediction, TrialResult,
};
pub use rules::{RULES_BITS, RulesCode};
