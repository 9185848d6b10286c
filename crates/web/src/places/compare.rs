//! Compare: what changed, what it did, and the pattern over the trials.

pub(crate) mod charts;
pub(crate) mod list;
mod message;
mod update;

pub(crate) use message::CompareMsg;
pub(crate) use update::update;

use maud::{Markup, html};
use noseward_lesson::{COUNTED, Level, NOTE_CHARS, Overall, PLAN_CHARS, Trial};

use super::form::{button, level, measured, mm, no_names, area};
use super::trial::{changed, compared};
use crate::app::State;
use crate::notebook::NotebookField;
use crate::shell::{Region, region};

/// The place: the trial in hand, all trials as a table, and the charts.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    // What each trial comes to is worked out once.
    let summaries = state.desk.notebook.summaries();
    let in_hand = state.desk.notebook.in_hand();
    vec![
        region(
            "compare-trial",
            html! {
                @if let Some(trial) = in_hand { (this_trial(state, trial)) }
                @else if summaries.is_empty() {
                    p class="place__lead" { "There is no trial yet. Measure, predict and swing: then the results stand here." }
                }
            },
        ),
        region("compare-list", list::list(state, &summaries)),
        region("compare-charts", charts::charts(state, &summaries)),
        region("compare-plans", plans(state)),
    ]
}

fn this_trial(state: &State, trial: &Trial) -> Markup {
    html! {
        section class="card card--place" aria-labelledby="compare-title" {
            h3 id="compare-title" { "Trial " (trial.id()) @if !trial.design().name.is_empty() { ": " (trial.design().name) } }
            @if !trial.plan.is_empty() { p { "Planned: " (trial.plan) } }
            (compared(state, trial))
            (changed(state, trial))
            (versus(state, trial))
            (area(state, NotebookField::Words, &html! { "It did this because … and anything else to remember." (no_names()) }, 2, NOTE_CHARS))
        }
    }
}

/// What the group thought beside what it saw.
fn versus(state: &State, trial: &Trial) -> Markup {
    let seen = trial.swings().counted().count();
    let first = trial.predictions().first();
    html! {
        @if seen > 0 {
            table class="table nb__versus" {
                thead { tr { th scope="col" { "We thought" } th scope="col" { "We saw" } th scope="col" { "Together" } } }
                tbody { tr {
                    td { @if let Some(first) = first { (first.outcome.label())
                            @if !first.because.is_empty() { ", because " q { (first.because) } } }
                        @else { "nothing" } }
                    td { @for (i, outcome) in trial.swings().outcomes().iter().enumerate() {
                        @if i > 0 { br; } (outcome.label()) @if !outcome.counts() { " (not counted)" } } }
                    td { (trial.overall().label()) }
                } }
            }
            @if let (Some(first), true) = (first, seen >= COUNTED) {
                @if trial.overall() == Overall::Mostly(first.outcome) {
                    p { "It did what you predicted. Was your reason right too?" }
                } @else {
                    p { "It did something else: now you have found something out. What could be the reason?" }
                }
            }
        }
        @if level(state) == Level::Model { (moment(state, trial)) }
    }
}

/// Why the separation turns the rocket: for the most detailed level only, and only once the
/// group has predicted.
fn moment(state: &State, trial: &Trial) -> Markup {
    let figures = trial.rocket().figures().filter(|_| trial.is_locked());
    html! {
        @if let Some(figures) = figures {
            p class="nb__hint" {
                "Moments: side-on, the air pushes at the centre of pressure, "
                @let found = trial.measured.separation_mm(trial.design().length_mm());
                @let separation_mm = found.unwrap_or(figures.separation_m * 1000.0);
                @if found.is_some() { (measured(state, separation_mm.abs())) " (measured)" }
                @else { (mm(state, separation_mm.abs())) " (worked out)" }
                " from the centre of mass. Push × that distance turns the rocket: "
                @if separation_mm > 0.0 { "its tail goes back, nose into the air." }
                @else { "its nose goes back, tail into the air." }
                " The cut-out stands for air straight from the side; flying straight, the air pushes at "
                "another place. With water inside, the centre of mass is elsewhere and moves."
            }
        }
    }
}

/// What the group plans to try.
fn plans(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    html! {
        h3 { "What we will try next" }
        @if !notebook.plans().is_empty() {
            ol class="list list--numbers" {
                @for (i, plan) in notebook.plans().iter().enumerate() {
                    li {
                        (plan) " "
                        (button("nb-begin-plan", &i.to_string(), true, &html! { "Begin it with the rocket above" span class="visually-hidden" { ": " (plan) } })) " "
                        (button("nb-plan-remove", &i.to_string(), true, &html! { "Take it off the list" span class="visually-hidden" { ": " (plan) } }))
                    }
                }
            }
        }
        div class="nb__row" {
            label for=(NotebookField::Plan.name()) { "One change to try" (no_names()) }
            span class="field__box nb__plan" {
                input class="field__input field__input--words" id=(NotebookField::Plan.name()) type="text"
                    data-note=(NotebookField::Plan.name()) maxlength=(PLAN_CHARS) autocomplete="off"
                    value=(NotebookField::Plan.text(state)) placeholder="bigger fins";
            }
            (button("nb-plan-add", "", true, &html! { "Add it" }))
        }
    }
}
