//! What a message does where trials are compared.

use noseward_lesson::Trial;
use noseward_words as words;

use super::CompareMsg;
use crate::app::{Effect, Place, State, go_to};
use crate::notebook::{NotebookField, begun_trial, full, open_trial, say, written};
use crate::places::labels::{self, number};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: CompareMsg) -> Vec<Effect> {
    match msg {
        CompareMsg::Again => again(state),
        CompareMsg::BeginPlan(plan) => {
            let record = state.record();
            let begun = state.desk.notebook.begin_plan(plan, &record);
            begun_trial(state, begun)
        }
        CompareMsg::Copy(id) => match state.desk.notebook.copy(id) {
            Ok(Some(copied)) => open_trial(state, copied),
            Ok(None) => Vec::new(),
            Err(_) => full(state),
        },
        CompareMsg::Open(id) => open_trial(state, id),
        CompareMsg::Delete(id) => delete(state, id),
        CompareMsg::Restore(id) => restore(state, id),
        CompareMsg::Shift { id, to_front } => shift(state, id, to_front),
        CompareMsg::Pair(id) => {
            let trial = state.desk.notebook.trial(id);
            state.desk.look.pair = trial
                .and_then(|trial| Some((trial.compared_with()?, trial.id())))
                .filter(|pair| Some(*pair) != state.desk.look.pair);
            vec![Effect::Redraw]
        }
        CompareMsg::AddPlan => add_plan(state),
        CompareMsg::RemovePlan(plan) => remove_plan(state, plan),
    }
}

/// Another trial of the same rocket, for three swings more.
fn again(state: &mut State) -> Vec<Effect> {
    let Some(id) = state.desk.notebook.in_hand().map(Trial::id) else {
        return Vec::new();
    };
    if state.desk.notebook.copy(id).is_err() {
        return full(state);
    }
    state.forget_space();
    state.desk.begin_anew();
    state.swings_from_trial();
    let mut effects = written(state);
    effects.extend(go_to(state, Place::Predict, true));
    effects
}

fn delete(state: &mut State, id: u16) -> Vec<Effect> {
    if !state.desk.notebook.delete(id) {
        return Vec::new();
    }
    let mut effects = say(state, false, words::compare_is_deleted(number(id)));
    effects.extend(written(state));
    effects.push(Effect::Focus(format!("nb-restore:{id}")));
    effects
}

fn restore(state: &mut State, id: u16) -> Vec<Effect> {
    if !state.desk.notebook.restore(id) {
        return Vec::new();
    }
    let record = state.record();
    let notebook = &mut state.desk.notebook;
    let is_here = |trial: &Trial| trial.record() == record;
    let said = if notebook.in_hand().is_none() && notebook.trial(id).is_some_and(is_here)
    {
        notebook.take_in_hand(id);
        words::compare_is_back(number(id))
    } else {
        words::compare_is_back_closed(number(id))
    };
    let mut effects = say(state, false, said);
    effects.extend(written(state));
    effects.push(Effect::Focus(format!("nb-open:{id}")));
    effects
}

fn shift(state: &mut State, id: u16, to_front: bool) -> Vec<Effect> {
    if !state.desk.notebook.shift(id, to_front) {
        let end = if to_front { words::compare_is_first } else { words::compare_is_last };
        return say(state, false, end(number(id)));
    }
    let button = if to_front { "nb-up" } else { "nb-down" };
    let mut effects = written(state);
    effects.push(Effect::Focus(format!("{button}:{id}")));
    effects
}

fn add_plan(state: &mut State) -> Vec<Effect> {
    let plan = state.desk.look.plan.clone();
    if !state.desk.notebook.add_plan(&plan) {
        return if plan.trim().is_empty() {
            say(state, true, words::compare_write_first())
        } else {
            say(state, true, labels::room_for_plans())
        };
    }
    state.desk.look.plan.clear();
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Plan.name()));
    effects
}

fn remove_plan(state: &mut State, plan: usize) -> Vec<Effect> {
    if let Some(plan) = state.desk.notebook.remove_plan(plan) {
        // It stands in the field again, should that have been a slip.
        if state.desk.look.plan.is_empty() {
            state.desk.look.plan = plan;
        }
    }
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Plan.name()));
    effects
}
