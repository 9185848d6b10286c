//! What programs that others wrote make of the project's PDFs: qpdf reads their parts, poppler
//! their words and structure, and draws them, so that lengths on paper are counted in pixels.

#![forbid(unsafe_code)]

mod document;
mod joined;
mod picture;
mod pupil;
mod sheets;
mod tile;
mod words;

pub use document::{Document, MM_PER_INCH, POINTS_PER_INCH};
pub use joined::{CutOutFound, cut_out_found, small_cut_out_found};
pub use picture::{Bounds, Picture};
pub use pupil::symbol_words;
pub use sheets::{SHEETS, Sheet};
pub use tile::INK;
pub use words::{Told, line, told, words};
