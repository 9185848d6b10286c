//! The page.
//!
//! `app` holds the state, turns messages into effects and knows no browser; `views` turns
//! the state into markup; `dom` listens, performs the effects and is the only part that
//! touches the browser; `js` is the call for other programs. `later` is a part that
//! loads after the first drawing, through `part`; `notebook` is in it.

mod app;
mod dom;
mod js;
mod later;
mod notebook;
mod part;
mod views;

pub use dom::start;
pub use js::evaluate;
