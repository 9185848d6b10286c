//! The places of the page, a folder or a file each: functions from the state to regions. A
//! place names no other place's ids, and adds no effects.

pub(crate) mod class;
pub(crate) mod compare;
pub(crate) mod conclude;
pub(crate) mod form;
pub(crate) mod hand_in;
pub(crate) mod join;
pub(crate) mod labels;
pub(crate) mod lead;
pub(crate) mod materials;
pub(crate) mod measure;
mod message;
mod notebook_on_paper;
pub(crate) mod paper;
pub(crate) mod predict;
pub(crate) mod rocket;
pub(crate) mod set_up;
pub(crate) mod swing;
pub(crate) mod trial;
pub(crate) mod why;
pub(crate) mod word_mat;

pub(crate) use message::PlaceMsg;

use maud::{Markup, html};
use noseward_stability::capital;

use crate::app::{Paper, State};
use crate::shell::{Region, region};

/// A sheet of paper. The lesson's stands in `index.html`, and that of the swing in its place.
pub(crate) fn paper(state: &State, paper: Paper) -> Vec<Region> {
    let markup = match paper {
        Paper::Rocket => html! {
            (why::table::in_words(state))
            (why::table::as_table(state))
            div class="handout" { (hand_in::share::handout(state)) }
        },
        Paper::Notebook => notebook_on_paper::notebook(state),
        Paper::Swing
        | Paper::Lesson
        | Paper::Sheets
        | Paper::Group
        | Paper::Groups
        | Paper::Class => html! {},
    };
    sheet_of_paper(markup)
}

/// What is printed.
pub(crate) fn sheet_of_paper(markup: Markup) -> Vec<Region> {
    vec![region("sheet-of-paper", markup)]
}

/// In place of a trial, where the notebook has no room for another.
fn full() -> Vec<Region> {
    vec![region("full", html! { p { (labels::room_for_trials()) } })]
}

/// A sentence of what an error says of itself.
pub(crate) fn sentence(error: &str) -> String {
    let mut words = capital(error);
    if !words.ends_with(['.', '?', '!']) {
        words.push('.');
    }
    words
}
