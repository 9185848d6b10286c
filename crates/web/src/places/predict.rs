//! Predict: what changed, and what it will do on its string.

mod message;
mod update;

pub(crate) use message::PredictMsg;
pub(crate) use update::update;

use maud::{Markup, html};
use noseward_lesson::{BECAUSE_CHARS, SwingOutcome, Trial};
use noseward_words as words;

use super::form::{area, button, no_names};
use super::labels;
use super::trial::{changed, compared, thought};
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
                p class="place__lead" { (words::predict_lead(labels::number(trial.id()))) }
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
                        summary { (words::predict_again()) }
                        (prediction(state, trial))
                    }
                } @else { (prediction(state, trial)) }
            },
        ),
        region(
            "predict-changed",
            html! {
                section class="card card--place" aria-labelledby="predict-changed-title" {
                    h3 id="predict-changed-title" { (words::predict_fair()) }
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
        (area(state, NotebookField::Because, &html! { (words::predict_because()) (no_names()) }, 2, BECAUSE_CHARS))
        p class="nb__lock" {
            (button("nb-lock", "", false, &html! {
                @if trial.is_locked() { (words::predict_add()) } @else { (words::predict_lock()) }
            }))
            @if let Some(asks) = &state.desk.look.nudge {
                " " strong id="nb-lock-asks" role="alert" { (asks) }
            } @else if !trial.is_locked() {
                " " span class="nb__hint" { (words::predict_stays()) }
            }
        }
    }
}

fn outcomes(trial: &Trial) -> Markup {
    html! {
        div class="outcomes" role="group" aria-label=(words::predict_outcomes()) {
            @for (i, outcome) in SwingOutcome::ALL.into_iter().enumerate().filter(|(_, o)| o.can_be_predicted()) {
                button type="button" class="button" id=(format!("nb-outcome:{i}"))
                    data-action="nb-outcome" data-target=(i)
                    aria-pressed=(pressed(trial.draft.outcome == Some(outcome))) { (labels::outcome(outcome)) }
            }
        }
    }
}

fn predicted(trial: &Trial) -> Markup {
    let versions = trial.predictions().versions();
    html! {
        @for (i, version) in versions.iter().enumerate() {
            p class=(if i == 0 { "nb__locked" } else { "nb__later" }) {
                strong { @if i == 0 { (words::predict_locked()) } @else { (words::predict_later()) } " " }
                (thought(version, &version.because))
                @if version.swings_seen > 0 {
                    span class="nb__mark" { " " (words::predict_after(version.swings_seen.into())) }
                }
            }
        }
        @if trial.is_altered() {
            p class="notice notice--alarm" {
                (words::predict_altered())
            }
        }
    }
}
