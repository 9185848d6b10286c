//! A notebook, or one trial, as the text after `#`.

use noseward_lesson::Notebook;

use super::payload::{self, NOTEBOOK, TRIAL};
use super::{NotebookFile, SharedTrial};
use crate::link::{Damage, open_whole, spell};

/// Characters of a link to a notebook with its `#`, at most.
pub const NOTEBOOK_HASH_CHARS: usize = 2000;
/// Characters of a link to one trial with its `#`, at most.
pub const TRIAL_HASH_CHARS: usize = 1000;

/// The text for a link to a notebook, without the `#`; `None` where that would be longer
/// than [`NOTEBOOK_HASH_CHARS`], or where something in it has no room in the bytes, such
/// as a length of many metres: a file holds every notebook.
#[must_use]
pub fn notebook_hash(file: &NotebookFile) -> Option<String> {
    let text = spell("n1.", &payload::seal_notebook(file)?);
    (text.len() + "#".len() <= NOTEBOOK_HASH_CHARS).then_some(text)
}

/// Reads a link to a notebook, as [`open_hash`](crate::open_hash) does one to a rocket;
/// `None` for any other text. One that was cut short is
/// [`Damage::CutShort`]: nothing of it is shown.
///
/// # Errors
///
/// [`Damage`], in words for a pupil.
#[must_use]
pub fn open_notebook_hash(text: &str) -> Option<Result<NotebookFile, Damage>> {
    let payload = open_whole(NOTEBOOK, text)?;
    Some(payload.and_then(|payload| payload::read_notebook(&payload)))
}

/// The text for a link to one trial whole, without the `#`; `None` without a trial of that
/// number, where it would be longer than [`TRIAL_HASH_CHARS`], or where something in it
/// has no room in the bytes.
#[must_use]
pub fn trial_hash(notebook: &Notebook, id: u16) -> Option<String> {
    let trial = notebook.trial(id)?.clone();
    let shared = SharedTrial { group: notebook.group, trial };
    let text = spell("t1.", &payload::seal_trial(&shared)?);
    (text.len() + "#".len() <= TRIAL_HASH_CHARS).then_some(text)
}

/// Reads a link to one trial; `None` for any other text.
///
/// # Errors
///
/// [`Damage`], in words for a pupil.
#[must_use]
pub fn open_trial_hash(text: &str) -> Option<Result<SharedTrial, Damage>> {
    let payload = open_whole(TRIAL, text)?;
    Some(payload.and_then(|payload| payload::read_trial(&payload)))
}
