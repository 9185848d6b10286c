//! A whole class: how it is set up, what its groups hand in, and what all that comes to.

mod rules;

pub use rules::{RULES_BITS, RulesCode};
