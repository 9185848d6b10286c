//! A whole class: how it is set up, what its groups hand in, and what all that comes to.

mod changeable;
mod kit;
mod plan;
mod question;
mod rules;
mod set_up;
mod shown;

pub use changeable::{BrokenRule, Changeable, Changeables, Limits};
pub use kit::{Kit, KitRow};
pub use plan::{Plan, PlanStep};
pub use question::{ClassQuestion, Expected, Kept, OWN_CHARS};
pub use rules::{RULES_BITS, RulesCode};
pub use set_up::{Labels, MOST_GROUPS, SetUp};
pub use shown::{LessonPlace, LessonPlaces};
