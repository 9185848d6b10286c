//! What the notebook does, and how it is opened and put away.

mod fields;
mod opening;
mod update;

pub(crate) use fields::NotebookField;
pub(crate) use opening::{contents, file};
pub(crate) use update::{fault, update};

/// Whether a field of the notebook has this name.
#[cfg(test)]
pub(crate) fn is_field(name: &str) -> bool {
    NotebookField::parse(name).is_some()
}
