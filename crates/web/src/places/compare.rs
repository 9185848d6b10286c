//! Compare: what changed, what it did, and the pattern over the trials.

pub(crate) mod charts;
pub(crate) mod list;
mod message;
mod update;

pub(crate) use message::CompareMsg;
pub(crate) use update::update;

use maud::{Markup, html};
use noseward_lesson::{COUNTED, Level, NOTE_CHARS, Overall, PLAN_CHARS, Trial};
use noseward_words::{self as words, GoesBack, HowKnown, Text};

use super::form::{
    area, heads, level, measured, mm, no_names, plain_button, told_button,
};
use super::labels::{self, number};
use super::trial::{changed, compared, thought};
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
                    p class="place__lead" { (words::compare_no_trial()) }
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
            h3 id="compare-title" {
                @match trial.design().name.as_str() {
                    "" => (words::compare_trial(number(trial.id()))),
                    name => (words::compare_trial_of(number(trial.id()), name)),
                }
            }
            @if !trial.plan.is_empty() { p { (words::compare_planned(&trial.plan)) } }
            (compared(state, trial))
            (changed(state, trial))
            (versus(state, trial))
            (area(state, NotebookField::Words, &html! { (words::compare_note()) (no_names()) }, 2, NOTE_CHARS))
        }
    }
}

/// What the group thought beside what it saw.
fn versus(state: &State, trial: &Trial) -> Markup {
    const HEADS: [Text; 3] =
        [words::compare_we_thought(), words::compare_we_saw(), words::compare_together()];
    let seen = trial.swings().counted().count();
    let first = trial.predictions().first();
    html! {
        @if seen > 0 {
            table class="table nb__versus" {
                thead { tr { (heads(&HEADS)) } }
                tbody { tr {
                    td { @if let Some(first) = first { (thought(first, &first.because)) }
                        @else { (words::compare_nothing_thought()) } }
                    td { @for (i, outcome) in trial.swings().outcomes().iter().enumerate() {
                        @let label = labels::outcome(*outcome);
                        @if i > 0 { br; }
                        @if outcome.counts() { (label) } @else { (words::compare_not_counted(&label)) } } }
                    td { (labels::overall(trial.overall())) }
                } }
            }
            @if let (Some(first), true) = (first, seen >= COUNTED) {
                @if trial.overall() == Overall::Mostly(first.outcome) {
                    p { (words::compare_as_predicted()) }
                } @else {
                    p { (words::compare_not_as_predicted()) }
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
    let Some(figures) = figures else { return html! {} };
    let found = trial.measured.separation_mm(trial.design().length_mm());
    let separation_mm = found.unwrap_or(figures.separation_m * 1000.0);
    let (distance, how) = match found {
        Some(_) => (measured(state, separation_mm.abs()), HowKnown::Measured),
        None => (mm(state, separation_mm.abs()), HowKnown::WorkedOut),
    };
    let back = if separation_mm > 0.0 { GoesBack::Tail } else { GoesBack::Nose };
    html! { p class="nb__hint" { (words::compare_moment(&distance, how, back)) } }
}

/// What the group plans to try.
fn plans(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    html! {
        h3 { (words::compare_next()) }
        @if !notebook.plans().is_empty() {
            ol class="list list--numbers" {
                @for (i, plan) in notebook.plans().iter().enumerate() {
                    li {
                        (plan) " "
                        (told_button("nb-begin-plan", &i.to_string(), words::compare_begin_plan(plan))) " "
                        (told_button("nb-plan-remove", &i.to_string(), words::compare_remove_plan(plan)))
                    }
                }
            }
        }
        div class="nb__row" {
            label for=(NotebookField::Plan.name()) { (words::compare_one_change()) (no_names()) }
            span class="field__box nb__plan" {
                input class="field__input field__input--words" id=(NotebookField::Plan.name()) type="text"
                    data-note=(NotebookField::Plan.name()) data-enter="nb-plan-add" maxlength=(PLAN_CHARS) autocomplete="off"
                    value=(NotebookField::Plan.text(state)) placeholder=(words::compare_plan_example());
            }
            (plain_button("nb-plan-add", true, words::compare_add_plan()))
        }
    }
}
