//! A record, a rocket with what a class did with it, as a link, as a code to be typed,
//! and as a file; and a group's notebook, or one of its results, in the same ways.
//!
//! Pure: text in, a record or a notebook out, and back. What is stored is named by keys, and
//! what is wrong is a kind with values: there are no sentences here. The formats themselves are
//! written down below.
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
//! assert!(text.starts_with("r1."));
//! assert_eq!(open_hash(&text), Opened::Record(tern));
//! ```
#![doc = include_str!("../FORMATS.md")]
#![forbid(unsafe_code)]

mod any;
mod cells;
mod class;
mod code;
mod error;
mod fields;
mod file;
mod frame;
mod link;
mod missing;
mod notebook;
mod payload;
mod result;
mod symbol;
mod table;
mod text;

pub use any::{Any, looks_like_notebook, may_be_more, open_any, pieces};
pub use cells::escape_formula;
pub use class::{
    ClassRow, ClassRows, Found, Gathering, HandedIn, SET_UP_HASH_CHARS, SetUpLink,
    class_to_table, day_of, open_set_up, rules_of_text, rules_text, set_up_code,
    set_up_hash, set_up_text,
};
pub use code::{code, compact, looks_like_code, open_code};
pub use error::{At, LinkError, LinkErrorKind};
pub use file::name::file_name;
pub use file::{FILE_BYTES, design_of_json, open_file, to_file};
pub use link::{HASH_CHARS, Opened, hash, open_hash};
pub use missing::Missing;
pub use notebook::NotebookFile;
pub use notebook::file::{
    NOTEBOOK_BYTES, notebook_file_name, open_notebook_file, to_notebook_file,
};
pub use notebook::link::{
    NOTEBOOK_HASH_CHARS, NOTEBOOK_TEXT_CHARS, notebook_hash, notebook_text,
    notebook_text_name, open_notebook_hash,
};
pub use notebook::parts::{Progress, QrSegments, notebook_parts};
pub use result::{in_code, open_result_code, result_code};
pub use symbol::{SymbolFault, SymbolRead, SymbolSearch, symbols_in_picture};
pub use table::{
    Format, TABLE_BYTES, TABLE_END, list_to_table, looks_like_table, open_table,
    table_in_text, to_table,
};
pub use text::{Spelling, Text, open_text};
