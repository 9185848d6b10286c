//! The path through the lesson, the line that says which trial it is, and the way on.

use maud::{Markup, html};
use noseward_lesson::Trial;
use noseward_stability::Severity;
use noseward_words::{self as words, Number, Text};

use super::{group, pressed};
use crate::app::{Place, State};

/// The places of the lesson, numbered, with a tick at those that the trial is done with.
pub(crate) fn path(state: &State, hash: &str) -> Markup {
    html! {
        ol class="path" {
            @for (place, number) in Place::path(state).zip(1_usize..) {
                @let done = place.is_done(state);
                li class="path__step" {
                    a class="path__link" id={ "to-" (place.key()) }
                        href=(href(place, hash)) data-action="to"
                        data-target=(place.key())
                        aria-current=[(place == state.place).then_some("page")] {
                        span class={ "path__dot" @if done { " path__dot--done" } } aria-hidden="true" {
                            @if done { "✓" } @else { (Number::from(number).to_string()) }
                        }
                        span class="path__name" { (place.name()) }
                        @if done { span class="visually-hidden" { " " (words::way_done()) } }
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
        @if Place::Why.is_shown(state) { (link(state, Place::Why, "button", hash)) }
        button class="button" type="button" id="undo" data-action="undo"
            aria-disabled=(aria_disabled(state.can_undo())) { (words::way_undo()) }
        button class="button" type="button" id="redo" data-action="redo"
            aria-disabled=(aria_disabled(state.can_redo())) { (words::way_redo()) }
        details class="menu" id="more-menu" {
            summary class="button" { (words::way_more()) }
            div class="menu__panel" {
                button class="menu__item" type="button" id="copy-link" data-action="copy-link" { (words::way_copy_link()) }
                button class="menu__item" type="button" id="save" data-action="save" { (words::way_save()) }
                button class="menu__item" type="button" id="print" data-action="print" { (words::way_print()) }
                button class="menu__item" type="button" id="big" data-action=(if state.big { "usual" } else { "big" })
                    aria-pressed=(pressed(state.big)) { (words::way_large()) }
                @for place in [Place::Words, Place::SetUp, Place::Class, Place::Paper, Place::Lead] {
                    @if place.is_shown(state) { (link(state, place, "menu__item", hash)) }
                }
            }
        }
    }
}

/// The link to a place beside the path.
fn link(state: &State, place: Place, class: &str, hash: &str) -> Markup {
    html! {
        a class=(class) id={ "to-" (place.key()) } href=(href(place, hash)) data-action="to"
            data-target=(place.key()) aria-current=[(place == state.place).then_some("page")] { (place.name()) }
    }
}

/// Whose notebook it is, and which trial is in hand.
pub(crate) fn trial_line(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    html! {
        (group::menu(state))
        @match state.trial_in_hand() {
            Some(trial) => {
                @let number = usize::from(trial.id()).into();
                " · "
                @if let Some(with) = trial.compared_with() {
                    (words::way_compared(number, usize::from(with).into()))
                } @else { (words::way_baseline(number)) }
            }
            None => @if let Some(trial) = notebook.in_hand() { (changed(trial, notebook.next_number())) }
        }
        @if !state.design.name.is_empty() { " · " (state.design.name) }
    }
}

/// The rocket is no longer that of the trial in hand.
fn changed(trial: &Trial, next: u16) -> Markup {
    let number = usize::from(trial.id()).into();
    html! {
        " · " (words::way_changed(number, usize::from(next).into())) " "
        button type="button" class="button button--small" id="nb-bring-back" data-action="nb-open"
            data-target=(trial.id()) { (words::way_bring_back(number)) }
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
    let next = state.place.next(state);
    let (why, waits) = reason(state);
    let label = if next == Place::first(state) { words::way_back() } else { next.name() };
    html! {
        p class="next__words" id="next-words" { @if let Some(why) = why { (why) } }
        // Above a small page that one scrolls away.
        @if state.can_undo() {
            button class="button narrow" type="button" id="undo-below" data-action="undo" { (words::way_undo()) }
        }
        @if state.place == Place::Compare && Place::Rocket.is_shown(state) {
            a class="button" id="next-rocket" href=(href(Place::Rocket, hash)) data-action="to"
                data-target="rocket" { (words::way_change_one()) }
        }
        a class={ "button" @if !waits { " button--main" } } id="next" href=(href(next, hash)) data-action="to"
            data-target=(next.key()) aria-describedby="next-words" { (label) " " span class="onwards" aria-hidden="true" { "→" } }
    }
}

/// Why one goes on, or what should be done before; whether something should.
fn reason(state: &State) -> (Option<Text>, bool) {
    let trial = state.trial_in_hand();
    let (why, waits) = match state.place {
        Place::Rocket
            if state
                .faults()
                .iter()
                .any(|(_, severity, _)| *severity == Severity::Stop) =>
        {
            (words::way_mend(), true)
        }
        Place::Rocket => (words::way_to_measure(), false),
        Place::Measure if Place::Measure.is_done(state) && trial.is_some() => {
            (words::way_to_predict(), false)
        }
        Place::Measure => (words::way_first_measure(), true),
        Place::Predict if state.is_predicted() => (words::way_to_swing(), false),
        Place::Predict => (words::way_first_choose(), true),
        Place::Swing if trial.is_some_and(|trial| trial.swings().is_done()) => {
            (words::way_to_compare(), false)
        }
        Place::Swing if !state.is_predicted() => (words::way_first_lock(), true),
        Place::Swing => (words::way_first_swings(), true),
        Place::Compare => (words::way_to_conclude(), false),
        Place::Conclude => (words::way_to_hand_in(), false),
        Place::HandIn => (words::way_round_again(), false),
        Place::Why
        | Place::Words
        | Place::Join
        | Place::SetUp
        | Place::Class
        | Place::Paper
        | Place::Lead => return (None, false),
    };
    (Some(why), waits)
}
