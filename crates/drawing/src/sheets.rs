//! The sheets of the place Paper: what a class writes on, cuts apart and hangs up.

mod cards;
mod record;
mod report;
mod results;
mod said;
mod swing_picture;

pub use cards::{cue_cards, role_cards};
pub use record::record;
pub use report::{GroupReport, report};
pub use results::results;
