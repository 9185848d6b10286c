//! What a message does where a group predicts.

use noseward_lesson::same_build;
use noseward_words::{self as words, RuleSetting};

use super::PredictMsg;
use crate::app::{Effect, State};
use crate::notebook::{
    NotebookField, begin_if_needed, fixed, full, onto_page, say, told_broken, written,
};
use crate::places::labels::number;

/// What a message does.
pub(crate) fn update(state: &mut State, msg: PredictMsg) -> Vec<Effect> {
    match msg {
        PredictMsg::Outcome(outcome) => {
            if !begin_if_needed(state) {
                return full(state);
            }
            if let Some(trial) = state.desk.notebook.in_hand_mut() {
                trial.draft.outcome = Some(outcome);
            }
            written(state)
        }
        PredictMsg::Lock => lock(state),
        PredictMsg::UndoChange(change) => undo_change(state, change),
        PredictMsg::AllowTwoChanges => {
            if let Some(told) = fixed(state, RuleSetting::FairTest) {
                return told;
            }
            let notebook = &mut state.desk.notebook;
            notebook.allows_two_changes = !notebook.allows_two_changes;
            written(state)
        }
    }
}

fn lock(state: &mut State) -> Vec<Effect> {
    let Some(trial) = state.desk.notebook.in_hand() else { return Vec::new() };
    let (id, was_locked) = (trial.id(), trial.is_locked());
    if trial.draft.outcome.is_none() {
        return say(state, true, words::predict_first_choose());
    }
    if let Some(broken) = state.desk.notebook.broken_by(trial).filter(|_| !was_locked) {
        return told_broken(state, broken);
    }
    let wordless = trial.draft.because.trim().is_empty();
    let mut asks = Vec::new();
    if wordless {
        asks.push(words::predict_why().into());
    }
    let notebook = &state.desk.notebook;
    if let Some(before) = notebook.baseline_of(trial).filter(|_| !was_locked) {
        match notebook.changes_of(trial).len() {
            0 => asks.push(words::trial_unchanged(number(before.id()))),
            1 => {}
            _ if notebook.allows_two_changes => {}
            _ => asks.push(words::predict_several_changes(number(before.id()))),
        }
    }
    if !asks.is_empty() && state.desk.look.nudge.is_none() {
        asks.push(words::predict_or_again().into());
        state.desk.look.nudge = Some(asks.join(" "));
        let mut effects = vec![Effect::Redraw];
        if wordless {
            effects.push(Effect::Focus(NotebookField::Because.name()));
        }
        return effects;
    }
    state.desk.look.nudge = None;
    if !was_locked {
        // The rocket as it is on the page now.
        state.desk.notebook.follow(&state.record());
    }
    if !state.desk.notebook.lock(id) {
        return say(state, false, words::predict_already());
    }
    let said =
        if was_locked { words::predict_beside() } else { words::predict_now_cards() };
    let mut effects = say(state, false, said);
    effects.extend(written(state));
    let next = if was_locked { "nb-lock" } else { "next" };
    effects.push(Effect::Focus(next.into()));
    effects
}

/// Takes one of the changes back, so that one is left.
fn undo_change(state: &mut State, place: usize) -> Vec<Effect> {
    let Some(trial) = state.desk.notebook.in_hand() else { return Vec::new() };
    if trial.is_locked() {
        return Vec::new();
    }
    let found = state.desk.notebook.changes_of(trial);
    let Some(change) = found.get(place) else { return Vec::new() };
    let mut record = change.undo(&trial.record());
    if !same_build(&record.design, trial.design()) {
        record.swings = record.swings.setup.into();
    }
    let mut effects = onto_page(state, record);
    effects.extend(written(state));
    effects.push(Effect::Focus("place-title".into()));
    effects
}
