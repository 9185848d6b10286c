//! What a class hands in, in every spelling, and how its lesson is set up.

mod fields;
mod gather;
mod rules;
pub(crate) mod set_up;
mod table;

pub use gather::{Found, Gathering, HandedIn};
pub use rules::{rules_of_text, rules_text};
pub use set_up::{
    SET_UP_HASH_CHARS, SetUpLink, open_set_up, set_up_code, set_up_hash, set_up_text,
};
pub use table::{ClassRow, ClassRows, class_to_table, day_of};
