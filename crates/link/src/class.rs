//! What a class hands in, in every spelling.

mod fields;
mod gather;
mod rules;
mod table;

pub use gather::{Found, Gathering, HandedIn};
pub use rules::{rules_of_text, rules_text};
pub use table::{ClassRow, ClassRows, class_to_table, looks_like_class_table};
