//! The sheets of the place Paper: what a class writes on, cuts apart and hangs up, and what
//! whoever leads takes along.

mod cards;
mod record;
mod results;
mod said;
mod swing_picture;
pub mod teacher;

pub use cards::{cue_cards, role_cards};
pub use record::record;
pub use results::results;
