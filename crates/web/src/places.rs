//! The places of the page, a folder or a file each: functions from the state to regions. A
//! place names no other place's ids, and adds no effects.

pub(crate) mod compare;
pub(crate) mod conclude;
pub(crate) mod form;
pub(crate) mod hand_in;
pub(crate) mod lead;
pub(crate) mod measure;
mod message;
mod paper;
pub(crate) mod predict;
pub(crate) mod rocket;
pub(crate) mod swing;
pub(crate) mod trial;
pub(crate) mod why;

pub(crate) use message::PlaceMsg;

use maud::html;
use noseward_lesson::NotebookError;
use noseward_stability::capital;

use crate::app::{Effect, Notice, Paper, Place, State};
use crate::shell::{Region, region};

/// What stands in the present place, unless that is the first one.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    match state.place {
        // The first part of the page has it.
        Place::Rocket => Vec::new(),
        Place::Measure => measure::regions(state),
        Place::Predict => predict::regions(state),
        Place::Swing => swing::regions(state),
        Place::Compare => compare::regions(state),
        Place::Conclude => conclude::regions(state),
        Place::HandIn => hand_in::regions(state),
        Place::Why => why::regions(state),
        Place::Lead => lead::regions(state),
    }
}

/// What a message of a place does.
pub(crate) fn update(state: &mut State, msg: &PlaceMsg) -> Vec<Effect> {
    if !matches!(msg, PlaceMsg::Swing(_)) {
        state.typing = None;
        state.notice.take_if(|notice| matches!(notice, Notice::Said { .. }));
    }
    match msg {
        PlaceMsg::Predict(msg) => predict::update(state, *msg),
        PlaceMsg::Swing(msg) => swing::update(state, msg.clone()),
        PlaceMsg::Compare(msg) => compare::update(state, *msg),
        PlaceMsg::Conclude(msg) => conclude::update(state, *msg),
        PlaceMsg::HandIn(msg) => hand_in::update(state, *msg),
        PlaceMsg::Lead(msg) => lead::update(state, *msg),
    }
}

/// A sheet of paper. The lesson's stands in `index.html`.
pub(crate) fn paper(state: &State, paper: Paper) -> Vec<Region> {
    let markup = match paper {
        Paper::Rocket => html! {
            (why::table::in_words(state))
            (why::table::as_table(state))
            div class="handout" { (hand_in::share::handout(state)) }
        },
        Paper::Swing => swing::paper(state),
        Paper::Notebook => paper::notebook(state),
        Paper::Lesson => html! {},
    };
    vec![region("sheet-of-paper", markup)]
}

/// In place of a trial, where the notebook has no room for another.
fn full() -> Vec<Region> {
    vec![region(
        "full",
        html! { p { (sentence(&NotebookError::TooManyTrials.to_string())) } },
    )]
}

/// A sentence of what an error says of itself.
pub(crate) fn sentence(error: &str) -> String {
    let mut words = capital(error);
    if !words.ends_with(['.', '?', '!']) {
        words.push('.');
    }
    words
}
