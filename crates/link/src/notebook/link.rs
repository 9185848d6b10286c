//! A notebook as the text after `#`.

use super::NotebookFile;
use crate::error::{At, LinkError};
use crate::link::{open_bytes, spell};
use crate::payload::notebook;

/// Characters of a link to a notebook with its `#`, at most.
pub const NOTEBOOK_HASH_CHARS: usize = 2000;

/// The text for a link to a notebook, without the `#`; `None` where that would be longer
/// than [`NOTEBOOK_HASH_CHARS`], or where something in it has no room in the bytes, such
/// as a length of many metres: a file holds every notebook.
#[must_use]
pub fn notebook_hash(file: &NotebookFile) -> Option<String> {
    let text = spell('n', &notebook::encode(file)?);
    (text.len() + "#".len() <= NOTEBOOK_HASH_CHARS).then_some(text)
}

/// Reads a link to a notebook, as [`open_hash`](crate::open_hash) does one to a rocket;
/// `None` for any other text. One that was cut short is
/// [`CutShort`](crate::LinkErrorKind::CutShort): nothing of it is shown.
///
/// # Errors
///
/// [`LinkError`].
#[must_use]
pub fn open_notebook_hash(text: &str) -> Option<Result<NotebookFile, LinkError>> {
    let bytes = open_bytes(b'n', text)?;
    let opened = bytes.and_then(|bytes| notebook::open(&bytes));
    Some(opened.map_err(|kind| kind.at(At::Link)))
}
