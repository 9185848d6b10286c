//! What a message does where somebody leads.

use noseward_words as words;

use super::LeadMsg;
use crate::app::{Effect, State};
use crate::notebook::{delete_open, new_group, say, written};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: LeadMsg) -> Vec<Effect> {
    match msg {
        LeadMsg::NewGroup => new_group(state),
        LeadMsg::AskToDelete(asks) => {
            state.desk.look.asks_to_delete = asks;
            let next = if asks { "nb-delete-now" } else { "nb-ask-delete" };
            vec![Effect::Redraw, Effect::Focus(next.into())]
        }
        LeadMsg::DeleteNow => delete_open(state),
        LeadMsg::Lift => {
            state.desk.notebook.lift_set_up();
            let mut effects = written(state);
            effects.extend(say(state, false, words::lead_lifted()));
            effects.push(Effect::Focus("place-title".into()));
            effects
        }
    }
}
