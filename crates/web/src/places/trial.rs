//! What a trial changed: Predict and Compare show it.

use maud::{Markup, html};
use noseward_lesson::{Level, Trial, measured_separation, moved};

use super::compare::list;
use super::form::{button, choice, level};
use super::sentence;
use crate::app::State;
use crate::notebook::NotebookField;

/// Which trial this one is compared with.
pub(crate) fn compared(state: &State, trial: &Trial) -> Markup {
    let notebook = &state.desk.notebook;
    let id = trial.id();
    let mut others = vec![(
        String::new(),
        "nothing: it is a baseline".to_owned(),
        trial.compared_with().is_none(),
    )];
    others.extend(notebook.trials().iter().filter(|other| other.id() != id).map(
        |other| {
            let chosen = trial.compared_with() == Some(other.id());
            (other.id().to_string(), format!("trial {}", other.id()), chosen)
        },
    ));
    let gone = notebook.deleted().iter().map(|deleted| deleted.trial.id());
    others.extend(
        gone.filter(|gone| trial.compared_with() == Some(*gone))
            .map(|gone| (gone.to_string(), format!("trial {gone} (deleted)"), true)),
    );
    html! {
        @if others.len() > 1 { (choice(NotebookField::Compared, &html! { "Compared with" }, &others)) }
    }
}

/// What the program found changed, and what moved with it.
pub(crate) fn changed(state: &State, trial: &Trial) -> Markup {
    let notebook = &state.desk.notebook;
    let Some(baseline) = notebook.baseline_of(trial) else {
        return html! { p { "This is a baseline: the others are compared with it." } };
    };
    let changes = notebook.changes_of(trial);
    let open = !trial.is_locked();
    html! {
        @if changes.is_empty() {
            p { "Nothing has changed since trial " (baseline.id()) ". "
                @if open { "Change " strong { "one thing" } " about the rocket above; this trial follows it." } }
        } @else {
            p { "Since trial " (baseline.id()) ":" }
            ul class="list" {
                @for (i, change) in changes.iter().enumerate() {
                    li {
                        (change.sentence(state.units))
                        @if changes.len() > 1 && open && !notebook.allows_two_changes {
                            " " (button("nb-undo-change", &i.to_string(), true, &html! { "Undo this change" span class="visually-hidden" { ": " (change.label()) } }))
                        }
                    }
                }
            }
            @if changes.len() > 1 {
                p class="notice notice--alarm" id="nb-unfair" {
                    (sentence(&format!("{} things changed", list::count(changes.len())))) " Which of them did it? "
                    @if notebook.allows_two_changes { "Whoever leads allows it; the table says so." }
                    @else if open { "Undo all but one for a fair test." }
                    @else { "The table says so." }
                }
            }
            @if state.tells_points() { (knock_on(state, trial, baseline)) }
        }
    }
}

/// A change moves more than itself.
fn knock_on(state: &State, trial: &Trial, baseline: &Trial) -> Markup {
    let Some(moved) = moved(baseline.rocket(), trial.rocket()) else { return html! {} };
    let sentences = moved.sentences(state.units);
    html! {
        @if let Some(measured) = measured_separation(baseline, trial, state.units).filter(|_| level(state) > Level::Balance) {
            p { (measured) }
        }
        @if sentences.is_empty() {}
        @else if level(state) == Level::Balance {
            p { "That moved a balance point too: see the drawing above." }
        } @else {
            p { "What else moved (worked out): " (sentences.join(" ")) }
        }
    }
}
