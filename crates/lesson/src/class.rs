//! A whole class: how it is set up, what its groups hand in, and what all that comes to.

mod changeable;
mod gathered;
mod kit;
mod plan;
mod question;
mod result;
mod rules;
mod set_up;
mod shown;

pub use changeable::{BrokenRule, Changeable, Changeables, RuleLimits};
pub use gathered::{
    Added, Class, ClassLabel, Entry, LABEL_CHARS, MOST_RESULTS, MOST_WORKS, Refusal, Work,
};
pub use kit::{Kit, KitRow};
pub use plan::{Plan, PlanStep};
pub use question::{ClassQuestion, Expected, Kept, OWN_CHARS};
pub use result::{
    CHANGED_CHARS, PointResult, ResultModel, ResultPrediction, TrialResult,
};
pub use rules::{RULES_BITS, RulesCode};
pub use set_up::{Labels, MOST_GROUPS, SetUp};
pub use shown::{LessonPlace, LessonPlaces};
