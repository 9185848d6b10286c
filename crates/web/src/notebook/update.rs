//! What a message does to the notebook.

use super::fields::NotebookField;
use super::{opening, typed};
use crate::app::{Effect, NotebookMsg, Notice, State};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: &NotebookMsg) -> Vec<Effect> {
    match msg {
        NotebookMsg::Kept { slots, open, afresh } => {
            opening::open_kept(state, slots, *open, *afresh)
        }
        NotebookMsg::IsKept { slot, text } => {
            opening::is_kept(state, *slot, text);
            Vec::new()
        }
        NotebookMsg::KeptElsewhere { slot, text, mine } => {
            opening::kept_elsewhere(state, *slot, text.as_deref(), mine.as_deref())
        }
        NotebookMsg::Typed { field, text } => match NotebookField::parse(field) {
            Some(field) => typed::typed(state, field, text),
            None => Vec::new(),
        },
        NotebookMsg::Left { field } => {
            state.typing.take_if(|(typing, _)| typing == field);
            vec![Effect::Redraw]
        }
        // Other parts of the page look after these.
        NotebookMsg::OpenText(_)
        | NotebookMsg::OpenLink(_)
        | NotebookMsg::Place(_)
        | NotebookMsg::Print(_)
        | NotebookMsg::Loaded(..)
        | NotebookMsg::Again => Vec::new(),
    }
}

/// What was written is to be kept.
pub(crate) fn written(state: &mut State) -> Vec<Effect> {
    state.desk.unsaved = true;
    vec![Effect::Redraw, Effect::Keep]
}

/// Tells what happened.
pub(crate) fn say(
    state: &mut State,
    alarming: bool,
    words: impl Into<String>,
) -> Vec<Effect> {
    state.notice = Some(Notice::Said { alarming, words: words.into() });
    vec![Effect::Redraw]
}
