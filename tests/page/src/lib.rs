//! Drives the built page in a real browser.
//!
//! `cargo run -- test page` builds the page, serves it, finds the browsers and runs
//! the tests of this package; see [`Page`] for what a test can do.
//!
//! ```no_run
//! use noseward_page_tests::{Page, Result};
//!
//! #[tokio::main]
//! async fn main() -> Result<()> {
//!     let page = Page::open(1280, 800).await?;
//!     page.type_into("#length", "250").await?;
//!     page.wait_until("document.querySelector('#length').value === '250'").await?;
//!     assert_eq!(page.errors().await?, Vec::<String>::new());
//!     Ok(())
//! }
//! ```

mod axe;
mod console;
mod display;
mod driver;
mod engine;
mod page;
mod settings;
mod tabs;

pub use anyhow::Result;
pub use axe::Violation;
pub use engine::{Engine, Storage};
pub use page::Page;
pub use thirtyfour::{Key, TypingData};
