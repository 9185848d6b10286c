//! The notebook: what it does and how it looks. It is in the part that loads later.

mod fields;
mod opening;
mod update;
mod views;

pub(crate) use opening::file;
pub(crate) use update::update;
pub(crate) use views::{for_crash, forms, outputs};

/// Whether a field of the notebook has this name.
#[cfg(test)]
pub(crate) fn is_field(name: &str) -> bool {
    fields::Note::parse(name).is_some()
}
