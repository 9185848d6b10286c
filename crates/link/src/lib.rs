//! A design as a link, and as a file.
//!
//! Pure: text in, a design out, and back. This crate owns every version of both formats;
//! the formats themselves are written down below.
//!
//! ```
//! use noseward_link::{Opened, hash, open_hash};
//! use noseward_stability::Example;
//!
//! let tern = Example::Tern.design();
//! let text = hash(&tern);
//! assert!(text.starts_with("r1."));
//! assert_eq!(open_hash(&text), Opened::Design(tern));
//! ```
#![doc = include_str!("../FORMATS.md")]

mod file;
mod link;

pub use file::name::file_name;
pub use file::{FILE_BYTES, FileError, open_file, to_file};
pub use link::missing::Missing;
pub use link::{Damage, HASH_CHARS, Opened, hash, open_hash};
