//! A notebook as the text after `#`.

use noseward_lesson::{Notebook, key};

use super::NotebookFile;
use crate::error::{At, LinkError};
use crate::link::{open_bytes, spell};
use crate::payload::notebook;

/// Characters of a link to a notebook with its `#`, at most.
pub const NOTEBOOK_HASH_CHARS: usize = 2000;

/// Characters of a [kept notebook](notebook_text) that are read, at most: forty trials with the
/// longest texts, which take less than half of that.
pub const NOTEBOOK_TEXT_CHARS: usize = 600_000;

/// A notebook of any size as it is kept on a computer: the text of its link, however long that
/// is. A rocket in it is as its own link holds it.
#[must_use]
pub fn notebook_text(file: &NotebookFile) -> String {
    spell('n', &notebook::encode_within_range(file))
}

/// A name for a file of that text: `noseward-notebook-blue-3.txt`.
#[must_use]
pub fn notebook_text_name(notebook: &Notebook) -> String {
    let group = notebook.group;
    format!("noseward-notebook-{}-{}.txt", key(&group.colour), group.number())
}

/// The text for a link to a notebook, without the `#`; `None` where that would be longer
/// than [`NOTEBOOK_HASH_CHARS`], or where something in it has no room in the bytes, such
/// as a fortieth weight: a file holds every notebook.
#[must_use]
pub fn notebook_hash(file: &NotebookFile) -> Option<String> {
    let text = spell('n', &notebook::encode(file)?);
    (text.len() + "#".len() <= NOTEBOOK_HASH_CHARS).then_some(text)
}

/// Reads a link to a notebook, or one that was [kept](notebook_text), as [`open_hash`](crate::open_hash) does one to a rocket;
/// `None` for any other text. One that was cut short is
/// [`CutShort`](crate::LinkErrorKind::CutShort): nothing of it is shown.
///
/// # Errors
///
/// [`LinkError`].
#[must_use]
pub fn open_notebook_hash(text: &str) -> Option<Result<NotebookFile, LinkError>> {
    let bytes = open_bytes(b'n', text, NOTEBOOK_TEXT_CHARS)?;
    let opened = bytes.and_then(|bytes| notebook::open(&bytes));
    Some(opened.map_err(|kind| kind.at(At::Link)))
}
