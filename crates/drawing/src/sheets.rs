//! The sheets of the place Paper: what a class writes on, cuts apart and hangs up, and what
//! whoever leads takes along.

mod blank;
mod cards;
mod labels;
mod record;
mod report;
mod results;
mod said;
mod swing_picture;
pub mod teacher;
mod word_mat;

pub use blank::blank_charts;
pub use cards::{cue_cards, cue_cards_with_room, role_cards};
pub use labels::labels;
pub use record::record;
pub use report::{GroupReport, point_as_read, report};
pub use results::results;
pub use word_mat::{MatTerm, strokes, word_mat};
