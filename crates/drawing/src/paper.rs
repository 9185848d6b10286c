//! Sheets of paper, true to size: what stands on them flows over pages, which are scenes in
//! millimetres, and these become PDF or SVG.

mod beside;
mod check_bars;
mod code;
mod flow;
#[cfg(test)]
pub(crate) mod inside;
mod letters;
mod page;
mod pdf;
mod ticks;
mod widths;

pub use check_bars::{CHECK_BAR_MM, CHECK_BAR_WIDE_MM, check_bars};
pub(crate) use flow::wide;
pub use flow::{Column, Flow, Mark, Table};
pub use page::{Page, PaperSize, Tag};
pub use pdf::{DocumentInfo, has_all_letters, pdf};
pub use ticks::TO_TICK;
