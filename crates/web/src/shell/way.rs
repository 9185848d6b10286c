//! The path through the lesson, the line that says which trial it is, and the way on.

use maud::{Markup, html};
use noseward_lesson::Trial;
use noseward_stability::Severity;

use super::{group, pressed};
use crate::app::{Place, State};

/// The places of the lesson, numbered, with a tick at those that the trial is done with.
pub(crate) fn path(state: &State, hash: &str) -> Markup {
    html! {
        ol class="path" {
            @for (place, number) in Place::all().filter_map(|place| Some((place, place.number()?))) {
                @let done = place.is_done(state);
                li class="path__step" {
                    a class="path__link" id=(format!("to-{}", place.key()))
                        href=(href(place, hash)) data-action="to"
                        data-target=(place.key())
                        aria-current=[(place == state.place).then_some("page")] {
                        span class={ "path__dot" @if done { " path__dot--done" } } aria-hidden="true" {
                            @if done { "✓" } @else { (number) }
                        }
                        span class="path__name" { (place.name()) }
                        @if done { span class="visually-hidden" { " (done)" } }
                    }
                }
            }
        }
    }
}

/// The address of a place with the rocket on the page, for whoever opens it in another tab.
fn href(place: Place, hash: &str) -> String {
    format!("{}#{hash}", place.href())
}

/// What can be done from everywhere.
pub(crate) fn tools(state: &State, hash: &str) -> Markup {
    let aria_disabled = |on: bool| if on { "false" } else { "true" };
    html! {
        a class="button" id="to-why" href=(href(Place::Why, hash)) data-action="to"
            data-target="why" aria-current=[(state.place == Place::Why).then_some("page")] { "Why?" }
        button class="button" type="button" id="undo" data-action="undo"
            aria-disabled=(aria_disabled(state.can_undo())) { "Undo" }
        button class="button" type="button" id="redo" data-action="redo"
            aria-disabled=(aria_disabled(state.can_redo())) { "Redo" }
        details class="menu" id="more-menu" {
            summary class="button" { "More" }
            div class="menu__panel" {
                button class="menu__item" type="button" id="copy-link" data-action="copy-link" { "Copy link" }
                button class="menu__item" type="button" id="save" data-action="save" { "Save as a file" }
                button class="menu__item" type="button" id="print" data-action="print" { "Print the rocket" }
                button class="menu__item" type="button" id="big" data-action=(if state.big { "usual" } else { "big" })
                    aria-pressed=(pressed(state.big)) { "Large, for a projector" }
                a class="menu__item" id="to-lead" href=(href(Place::Lead, hash)) data-action="to"
                    data-target="lead" aria-current=[(state.place == Place::Lead).then_some("page")] { "For whoever leads" }
            }
        }
    }
}

/// Whose notebook it is, and which trial is in hand.
pub(crate) fn trial_line(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    html! {
        (group::menu(state))
        @match state.trial_in_hand() {
            Some(trial) => {
                " · trial " (trial.id())
                @if let Some(with) = trial.compared_with() { ", compared with trial " (with) }
                @else { ", the baseline" }
            }
            None => @if let Some(trial) = notebook.in_hand() { (changed(trial, notebook.next_number())) }
        }
        @if !state.design.name.is_empty() { " · " (state.design.name) }
    }
}

/// The rocket is no longer that of the trial in hand.
fn changed(trial: &Trial, next: u16) -> Markup {
    html! {
        " · changed since trial " (trial.id()) ": trial " (next) " begins when you measure or predict "
        button type="button" class="button button--small" id="nb-bring-back" data-action="nb-open"
            data-target=(trial.id()) { "Bring trial " (trial.id()) " back" }
    }
}

/// The heading of the place.
pub(crate) fn head(state: &State) -> Markup {
    html! {
        h2 class="place__title" id="place-title" tabindex="-1" { (state.place.heading()) }
    }
}

/// The way to the next place: what is done there, or what it waits for.
pub(crate) fn next(state: &State, hash: &str) -> Markup {
    let next = state.place.next();
    let (words, waits) = reason(state);
    let label = match state.place {
        Place::HandIn | Place::Why | Place::Lead => "Back to the rocket".to_owned(),
        _ => next.name().to_owned(),
    };
    html! {
        p class="next__words" id="next-words" { (words) }
        // Above a small page that one scrolls away.
        @if state.can_undo() {
            button class="button narrow" type="button" id="undo-below" data-action="undo" { "Undo" }
        }
        @if state.place == Place::Compare {
            a class="button" id="next-rocket" href=(href(Place::Rocket, hash)) data-action="to"
                data-target="rocket" { "Change one thing" }
        }
        a class={ "button" @if !waits { " button--main" } } id="next" href=(href(next, hash)) data-action="to"
            data-target=(next.key()) aria-describedby="next-words" { (label) " " span aria-hidden="true" { "→" } }
    }
}

/// Why one goes on, or what should be done before; whether something should.
fn reason(state: &State) -> (&'static str, bool) {
    let trial = state.trial_in_hand();
    match state.place {
        Place::Rocket
            if state
                .faults()
                .iter()
                .any(|(_, severity, _)| *severity == Severity::Stop) =>
        {
            ("First put right what is marked.", true)
        }
        Place::Rocket => ("Next: find both points of the real rocket.", false),
        Place::Measure if Place::Measure.is_done(state) && trial.is_some() => {
            ("Next: say what it will do, before you swing it.", false)
        }
        Place::Measure => (
            "First a guess and three readings of each point. No rocket at hand? Go on.",
            true,
        ),
        Place::Predict if state.is_predicted() => {
            ("Locked. Next: the cards, with the adult.", false)
        }
        Place::Predict => ("First choose, say why, and lock it.", true),
        Place::Swing if trial.is_some_and(|trial| trial.swings().is_done()) => {
            ("Next: did it do what you thought?", false)
        }
        Place::Swing if !state.is_predicted() => ("First lock a prediction.", true),
        Place::Swing => ("First three swings, each recorded.", true),
        Place::Compare => {
            ("Next: change one thing and test again, or say what you found out.", false)
        }
        Place::Conclude => ("Next: keep it, and hand it in.", false),
        Place::HandIn => {
            ("That is the whole path. Change one thing, and go round again.", false)
        }
        Place::Why | Place::Lead => ("", false),
    }
}
