//! What a class hands in, in every spelling.

mod rules;

pub use rules::{rules_of_text, rules_text};
