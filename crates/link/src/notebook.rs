//! A notebook in all its spellings: file, link, and the parts of a sequence of symbols.

mod entry;
pub(crate) mod file;
pub(crate) mod link;
pub(crate) mod parts;

use noseward_lesson::{Notebook, Record};

/// A notebook, and the rocket that was on the page beside it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NotebookFile {
    /// The notebook.
    pub notebook: Notebook,
    /// The rocket that was on the page, with its swings, if it goes along.
    pub rocket: Option<Record>,
}

impl NotebookFile {
    /// The same as it is kept: see [`Notebook::rounded`] and [`Record::rounded`].
    #[must_use]
    pub fn rounded(self) -> Self {
        Self {
            notebook: self.notebook.rounded(),
            rocket: self.rocket.map(Record::rounded),
        }
    }
}
