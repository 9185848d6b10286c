//! Predict: what changed, and what it will do on its string.

mod message;
mod update;

pub(crate) use message::PredictMsg;
pub(crate) use update::update;

use maud::{Markup, html};
use noseward_lesson::{BECAUSE_CHARS, SwingOutcome, Trial};

use super::form::{button, no_names, words};
use super::trial::{changed, compared};
use crate::app::State;
use crate::notebook::NotebookField;
use crate::shell::{Region, pressed, region};

/// The place: what changed, and the prediction.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(trial) = state.trial() else { return super::full() };
    let trial = trial.as_ref();
    vec![
        region(
            "predict-what",
            html! {
                p class="place__lead" { "Trial " (trial.id()) ". On its string, what will the rocket do?" }
            },
        ),
        region(
            "predict-locked",
            html! {
                @if trial.is_locked() || trial.is_altered() { (predicted(trial)) }
            },
        ),
        region(
            "predict-form",
            html! {
                @if trial.is_locked() {
                    details class="nb__again" id="nb-think-again" {
                        summary { "Think again: the first prediction stays" }
                        (prediction(state, trial))
                    }
                } @else { (prediction(state, trial)) }
            },
        ),
        region(
            "predict-changed",
            html! {
                section class="card card--place" aria-labelledby="predict-changed-title" {
                    h3 id="predict-changed-title" { "A fair test changes one thing" }
                    (compared(state, trial))
                    (changed(state, trial))
                }
            },
        ),
    ]
}

fn prediction(state: &State, trial: &Trial) -> Markup {
    html! {
        (outcomes(trial))
        (words(state, NotebookField::Because, &html! { "because …" (no_names()) }, 2, BECAUSE_CHARS))
        p class="nb__lock" {
            (button("nb-lock", "", false, &html! {
                @if trial.is_locked() { "Add this as a later prediction" } @else { "Lock the prediction" }
            }))
            @if let Some(asks) = &state.desk.look.nudge {
                " " strong id="nb-lock-asks" role="alert" { (asks) }
            } @else if !trial.is_locked() {
                " " span class="nb__hint" { "Once it is locked, this page never changes it. Only then can you record a swing." }
            }
        }
    }
}

fn outcomes(trial: &Trial) -> Markup {
    html! {
        div class="outcomes" role="group" aria-label="On the string it will fly" {
            @for (i, outcome) in SwingOutcome::ALL.into_iter().enumerate().filter(|(_, o)| o.can_be_predicted()) {
                button type="button" class="button" id=(format!("nb-outcome:{i}"))
                    data-action="nb-outcome" data-target=(i)
                    aria-pressed=(pressed(trial.draft.outcome == Some(outcome))) { (outcome.label()) }
            }
        }
    }
}

fn predicted(trial: &Trial) -> Markup {
    let versions = trial.predictions().versions();
    html! {
        @for (i, version) in versions.iter().enumerate() {
            p class=(if i == 0 { "nb__locked" } else { "nb__later" }) {
                strong { @if i == 0 { "Locked: " } @else { "Later: " } }
                (version.outcome.label())
                @if !version.because.is_empty() { ", because " q { (version.because) } }
                @if version.swings_seen > 0 {
                    span class="nb__mark" { " written after " (version.swings_seen)
                        @if version.swings_seen == 1 { " swing" } @else { " swings" } }
                }
            }
        }
        @if trial.is_altered() {
            p class="notice notice--alarm" {
                "Something in this trial was changed by hand, outside of the page: in a file, a table or a code."
            }
        }
    }
}
