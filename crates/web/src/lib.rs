//! The page.
//!
//! `app` holds the state, turns messages into effects and knows no browser; `places` turns
//! the state into the markup of each place, `shell` into what stands round them all; `dom`
//! listens, performs the effects and is the only part that touches the browser; `js` is the
//! call for other programs. `later` is what loads after the first drawing, a `part` for each
//! place or two: every place but the first, and `notebook`.

mod app;
mod dom;
mod js;
mod later;
mod notebook;
mod part;
mod places;
mod shell;

pub use dom::{start, table_came, wish, written};
pub use js::evaluate;
