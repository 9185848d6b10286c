//! The trial in hand: what changed, measuring, predicting, swinging, and the next plans.

use maud::{Markup, html};
use noseward_lesson::{
    BECAUSE_CHARS, BalancePoint, COUNTED, Level, NOTE_CHARS, PLAN_CHARS, SwingOutcome,
    Trial, moved,
};

use super::{button, choice, faults, level, list, no_names, points, words};
use crate::app::State;
use crate::notebook::fields::Note;
use crate::notebook::update::sentence;
use crate::views::{Region, pressed, regions};

pub(super) fn form(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let Some(trial) = notebook.in_hand() else { return html! {} };
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
        h3 { "Trial " (id) @if !trial.design().name.is_empty() { ": " (trial.design().name) } }
        @if !trial.plan.is_empty() { p { "Planned: " (trial.plan) } }
        @if others.len() > 1 { (choice(Note::Compared, &html! { "Compared with" }, &others)) }
        div id="nb-changes" {}
        h4 { "1. Measure" }
        (points::form(state, trial))
        h4 { "2. Predict" }
        div id="nb-predicted" {}
        @if trial.is_locked() {
            details class="nb__again" id="nb-think-again" {
                summary { "Think again: the first prediction stays" }
                (prediction(state, trial))
            }
        } @else { (prediction(state, trial)) }
        h4 { "3. Swing" }
        div id="nb-swings" {}
        h4 { "4. Why did it do that?" }
        (words(state, Note::Words, &html! { "It did this because … and anything else to remember." (no_names()) }, 2, NOTE_CHARS))
    }
}

fn prediction(state: &State, trial: &Trial) -> Markup {
    html! {
        div id="nb-outcomes" {}
        (words(state, Note::Because, &html! { "because …" (no_names()) }, 2, BECAUSE_CHARS))
        (button("nb-lock", "", false, &html! {
            @if trial.is_locked() { "Add this as a later prediction" } @else { "Lock the prediction" }
        }))
        @if !trial.is_locked() {
            p class="nb__hint" { "Once it is locked, this page never changes it. Only then can you record a swing." }
        }
    }
}

pub(super) fn outputs(state: &State) -> Vec<Region> {
    let Some(trial) = state.desk.notebook.in_hand() else { return Vec::new() };
    let mut outputs = regions([
        ("nb-changes", changed(state, trial)),
        ("nb-predicted", predicted(trial)),
        ("nb-outcomes", outcomes(trial)),
        ("nb-swings", swings(state, trial)),
    ]);
    outputs.extend(points::outputs(state, trial));
    outputs
}

/// What the program found changed, and what moved with it.
fn changed(state: &State, trial: &Trial) -> Markup {
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
            (knock_on(state, trial, baseline))
        }
    }
}

/// A change moves more than itself.
fn knock_on(state: &State, trial: &Trial, baseline: &Trial) -> Markup {
    let Some(moved) = moved(baseline.rocket(), trial.rocket()) else { return html! {} };
    let sentences = moved.sentences(state.units);
    html! {
        @if sentences.is_empty() {}
        @else if level(state) == Level::Balance {
            p { "That moved a balance point too: see the drawing above." }
        } @else {
            p { "What else moved (worked out): " (sentences.join(" ")) }
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

fn swings(state: &State, trial: &Trial) -> Markup {
    let seen = trial.swings().counted().count();
    let first = trial.predictions().first();
    html! {
        @if first.is_none() { p { "First predict." } }
        @else {
            @if seen < COUNTED {
                p { (seen) " of " (COUNTED) " swings recorded. "
                    (button("nb-to-swing", "", false, &html! { "Go to the swing test" })) }
            }
        }
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
                @if trial.overall() == noseward_lesson::Overall::Mostly(first.outcome) {
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
                (super::mm(state, figures.separation_m.abs() * 1000.0))
                " from the centre of mass. Push × that distance turns the rocket: "
                @if figures.separation_m > 0.0 { "its tail goes back, nose into the air." }
                @else { "its nose goes back, tail into the air." }
                " The cut-out stands for air straight from the side; flying straight, the air pushes at "
                "another place. With water inside, the centre of mass is elsewhere and moves."
            }
        }
    }
}

/// What the group plans to try.
pub(super) fn plans(state: &State) -> Markup {
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
            label for=(Note::Plan.name()) { "One change to try" (no_names()) }
            span class="field__box nb__plan" {
                input class="field__input field__input--words" id=(Note::Plan.name()) type="text"
                    data-note=(Note::Plan.name()) maxlength=(PLAN_CHARS) autocomplete="off"
                    value=(Note::Plan.text(state)) placeholder="bigger fins";
            }
            (button("nb-plan-add", "", true, &html! { "Add it" }))
        }
    }
}

/// The notes of a point, in their order.
pub(super) fn notes_of(point: BalancePoint) -> Vec<Note> {
    let mut notes = vec![Note::Guess(point)];
    notes.extend((0..noseward_lesson::REPEATS).map(|i| Note::Reading(point, i)));
    notes
}

/// What is wrong in the fields of a point.
pub(super) fn faults_of(state: &State, point: BalancePoint) -> Markup {
    faults(state, notes_of(point))
}
