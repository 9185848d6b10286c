//! A record, a rocket with what a class did with it, as a link, as a code to be typed,
//! and as a file; and a group's notebook, or one of its results, in the same ways.
//!
//! Pure: text in, a record or a notebook out, and back. This crate owns every version of each format;
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
#![forbid(unsafe_code)]

mod any;
mod cells;
mod code;
mod file;
mod link;
mod notebook;
mod result;
mod table;
mod text;

pub use any::{Any, AnyError, looks_like_notebook, open_any};
pub use cells::defused;
pub use code::{CodeFault, code, dense, looks_like_code, open_code};
pub use file::name::file_name;
pub use file::{FILE_BYTES, FileError, open_file, to_file};
pub use link::missing::Missing;
pub use link::{Damage, HASH_CHARS, Opened, hash, open_hash};
pub use notebook::file::{
    NOTEBOOK_BYTES, NotebookFileError, notebook_file_name, open_notebook_file,
    to_notebook_file,
};
pub use notebook::link::{
    NOTEBOOK_HASH_CHARS, TRIAL_HASH_CHARS, notebook_hash, open_notebook_hash,
    open_trial_hash, trial_hash,
};
pub use notebook::parts::{PartFault, Parts, Progress, notebook_parts};
pub use notebook::{NotebookFile, SharedTrial};
pub use result::{
    ResultCode, ResultFault, ResultMiddle, ResultModel, ResultPrediction,
    open_result_code, result_code, result_of,
};
pub use table::error::{CellFault, TableError};
pub use table::plain::to_plain_text;
pub use table::{Format, TABLE_BYTES, looks_like_table, open_table, to_table};
pub use text::{Spelling, Text, open_text};
