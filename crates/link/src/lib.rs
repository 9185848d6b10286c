//! A record, a rocket with what a class did with it, as a link, as a code to be typed,
//! and as a file.
//!
//! Pure: text in, a record out, and back. This crate owns every version of each format;
//! the formats themselves are written down below.
//!
//! ```
//! use noseward_link::{Opened, hash, open_hash};
//! use noseward_lesson::{Record, SwingOutcome};
//! use noseward_stability::Example;
//!
//! let mut tern = Record::from(Example::Tern.design());
//! let text = hash(&tern);
//! assert!(text.starts_with("r1."));
//! assert_eq!(open_hash(&text), Opened::Record(tern.clone()));
//!
//! tern.swings.add(SwingOutcome::Steady);
//! let text = hash(&tern);
//! assert!(text.starts_with("r2."));
//! assert_eq!(open_hash(&text), Opened::Record(tern));
//! ```
#![doc = include_str!("../FORMATS.md")]

mod cells;
mod code;
mod file;
mod link;
mod table;
mod text;

pub use cells::defused;
pub use code::{CodeFault, code, looks_like_code, open_code};
pub use file::name::file_name;
pub use file::{FILE_BYTES, FileError, open_file, to_file};
pub use link::missing::Missing;
pub use link::{Damage, HASH_CHARS, Opened, hash, open_hash};
pub use table::error::{CellFault, TableError};
pub use table::plain::to_plain_text;
pub use table::{Format, TABLE_BYTES, looks_like_table, open_table, to_table};
pub use text::{Spelling, Text, open_text};
