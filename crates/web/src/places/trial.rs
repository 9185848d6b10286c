//! What a trial changed: Predict and Compare show it.

pub(crate) mod changed;
pub(crate) mod done;
pub(crate) mod moved;

use maud::{Markup, html};
use noseward_lesson::{Level, Prediction, Trial, measured_separation};
use noseward_words as words;

use super::form::{choice, level, told, told_button};
use super::labels::{self, number};
use crate::app::State;
use crate::notebook::NotebookField;

/// What a group predicted, with its reason as it is to be written.
pub(crate) fn thought(prediction: &Prediction, because: &str) -> Markup {
    let outcome = labels::outcome(prediction.outcome);
    html! {
        @if because.is_empty() { (outcome) }
        @else { (told(words::trial_because(&outcome, because))) }
    }
}

/// Which trial this one is compared with.
pub(crate) fn compared(state: &State, trial: &Trial) -> Markup {
    let notebook = &state.desk.notebook;
    let id = trial.id();
    let mut others = vec![(
        String::new(),
        words::trial_with_nothing().into(),
        trial.compared_with().is_none(),
    )];
    others.extend(notebook.trials().iter().filter(|other| other.id() != id).map(
        |other| {
            let chosen = trial.compared_with() == Some(other.id());
            (other.id().to_string(), words::trial_with(number(other.id())), chosen)
        },
    ));
    let gone = notebook.deleted().iter().map(|deleted| deleted.trial.id());
    others.extend(
        gone.filter(|gone| trial.compared_with() == Some(*gone)).map(|gone| {
            (gone.to_string(), words::trial_with_deleted(number(gone)), true)
        }),
    );
    html! {
        @if others.len() > 1 { (choice(NotebookField::Compared, &html! { (words::trial_compared_with()) }, &others)) }
    }
}

/// What the program found changed, and what moved with it.
pub(crate) fn changed(state: &State, trial: &Trial) -> Markup {
    let notebook = &state.desk.notebook;
    let Some(baseline) = notebook.baseline_of(trial) else {
        return html! { p { (words::trial_is_baseline()) } };
    };
    let changes = notebook.changes_of(trial);
    let designs = [baseline.design(), trial.design()];
    let open = !trial.is_locked();
    html! {
        @if changes.is_empty() {
            p { (words::trial_unchanged(number(baseline.id()))) " "
                @if open { (told(words::trial_change_one())) } }
        } @else {
            p { (words::trial_since(number(baseline.id()))) }
            ul class="list" {
                @for (i, change) in changes.iter().enumerate() {
                    li {
                        (changed::sentence(change, designs, state.units))
                        @if changes.len() > 1 && open && !notebook.allows_two_changes {
                            " " (told_button("nb-undo-change", &i.to_string(), words::trial_undo_change(&changed::label(change))))
                        }
                    }
                }
            }
            @if changes.len() > 1 {
                p class="notice notice--alarm" id="nb-unfair" {
                    (words::trial_things_changed(changes.len().into())) " "
                    @if notebook.allows_two_changes { (words::trial_several_allowed()) }
                    @else if open { (words::trial_undo_all_but_one()) }
                    @else { (words::trial_table_says_so()) }
                }
            }
            @if state.tells_points() { (knock_on(state, trial, baseline)) }
        }
    }
}

/// A change moves more than itself.
fn knock_on(state: &State, trial: &Trial, baseline: &Trial) -> Markup {
    let found = noseward_lesson::moved(baseline.rocket(), trial.rocket());
    let Some(found) = found else { return html! {} };
    html! {
        @if level(state) == Level::Balance {
            p { (words::trial_point_moved_too()) }
        } @else {
            @if let Some(measured) = measured_separation(baseline, trial) {
                p { (moved::measured(measured, state.units)) }
            }
            p { (words::trial_moved_too(&moved::sentences(&found, state.units))) }
        }
    }
}
