//! Results of many schools, made up, and merged twice: by the page's own code, and by the
//! statements of `merge.sql`, which DuckDB runs.
//!
//! `cargo run -- test many-schools` brings DuckDB and runs the tests of this package.

mod cells;
mod duckdb;
mod page;
mod schools;
mod table;
mod trials;

pub use cells::every_cell;
pub use duckdb::Merged;
pub use page::{Along, Counts, Page, Refused, points};
pub use schools::{FILES_IN_REGION, Known, RULES, Schools, schools};
