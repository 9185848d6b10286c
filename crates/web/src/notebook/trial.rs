//! How a trial begins and comes into hand.

use noseward_lesson::{NotebookError, Record};

use super::update::{say, written};
use crate::app::{Effect, Place, State, changed, go_to};
use crate::places::labels;

/// Measuring or predicting begins a trial, where the rocket on the page has none. Returns
/// whether there is one now.
pub(crate) fn begin_if_needed(state: &mut State) -> bool {
    if state.is_of_trial() {
        return true;
    }
    let begun = state.desk.notebook.begin(&state.record()).is_ok();
    if begun {
        state.desk.begin_anew();
        state.desk.unsaved = true;
        state.swings_from_trial();
    }
    begun
}

pub(crate) fn full(state: &mut State) -> Vec<Effect> {
    say(state, true, labels::room_for_trials())
}

pub(crate) fn begun_trial(
    state: &mut State,
    begun: Result<u16, NotebookError>,
) -> Vec<Effect> {
    match begun {
        Ok(_) => {
            state.desk.begin_anew();
            state.swings_from_trial();
            let mut effects = written(state);
            effects.extend(go_to(state, Place::Measure, true));
            effects
        }
        Err(_) => full(state),
    }
}

/// The rocket of a trial, with its swings, comes onto the page.
pub(crate) fn open_trial(state: &mut State, id: u16) -> Vec<Effect> {
    let Some(record) = state.desk.notebook.take_in_hand(id).map(|t| t.record()) else {
        return Vec::new();
    };
    state.desk.begin_anew();
    let mut effects = onto_page(state, record);
    effects.extend(written(state));
    effects.extend(go_to(state, Place::Measure, true));
    effects
}

/// Puts a rocket onto the page, if it is another one.
pub(crate) fn onto_page(state: &mut State, record: Record) -> Vec<Effect> {
    if record != state.record() {
        state.show_record(record);
    }
    changed()
}
