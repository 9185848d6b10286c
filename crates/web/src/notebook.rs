//! What the notebook does, and how it is opened and put away.

mod fields;
mod opening;
mod refused;
mod rules;
mod set_up;
mod trial;
mod typed;
mod update;

pub(crate) use fields::NotebookField;
pub(crate) use opening::{
    contents, delete_open, file, hash as link_hash, kept, new_group, open_link, open_text,
};
pub(crate) use refused::said as said_of;
pub(crate) use rules::{broken_by_swing, fixed, rules_name, told_broken};
pub(crate) use set_up::{join, joins};
pub(crate) use trial::{begin_if_needed, begun_trial, full, onto_page, open_trial};
pub(crate) use typed::fault;
pub(crate) use update::{say, update, written};

/// Whether a field of the notebook has this name.
#[cfg(test)]
pub(crate) fn is_field(name: &str) -> bool {
    NotebookField::parse(name).is_some()
}
