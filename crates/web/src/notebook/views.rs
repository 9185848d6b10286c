//! The notebook as markup.

mod charts;
mod conclusion;
mod crash;
mod list;
mod out;
mod paper;
mod points;
mod top;
mod trial;

use maud::{Markup, html};
use noseward_lesson::Level;
use noseward_stability::minus;

use super::fields::Note;
use super::update;
use crate::app::State;
use crate::views::{Region, regions, spoken_unit};

pub(crate) use crash::for_crash;
pub(super) use out::{result_code, result_words};

/// What has fields in it: built anew only when its structure changes.
pub(crate) fn forms(state: &State) -> Vec<Region> {
    regions([
        ("nb-top", top::form(state)),
        ("nb-trial", trial::form(state)),
        ("nb-plans", trial::plans(state)),
        ("nb-conclusion", conclusion::form(state)),
    ])
}

/// What is redrawn after each change.
pub(crate) fn outputs(state: &State) -> Vec<Region> {
    // What each trial comes to is worked out once.
    let summaries = state.desk.notebook.summaries();
    let mut outputs = regions([
        ("nb-said", top::said(state)),
        ("nb-page", top::page(state)),
        ("nb-list", list::list(state, &summaries)),
        ("nb-charts", charts::charts(state, &summaries)),
        ("nb-offered", conclusion::data(state)),
        ("nb-paper", paper::paper(state)),
        ("nb-out", out::out(state)),
    ]);
    outputs.extend(trial::outputs(state));
    outputs.extend(conclusion::outputs(state));
    outputs
}

fn level(state: &State) -> Level {
    state.desk.notebook.level
}

/// A distance in words, to the digits of a ruler.
fn mm(state: &State, value: f64) -> String {
    minus(&state.units.reading(value))
}

/// A distance that was measured, to the digits that were typed.
fn measured(state: &State, value: f64) -> String {
    minus(&state.units.length(value))
}

/// A button of the notebook.
fn button(action: &str, target: &str, small: bool, words: &Markup) -> Markup {
    let id =
        if target.is_empty() { action.to_owned() } else { format!("{action}:{target}") };
    let class = if small { "button button--small" } else { "button" };
    html! {
        button type="button" class=(class) id=(id) data-action=(action) data-target=(target) {
            (words)
        }
    }
}

/// A list to choose from: values, words, and which is chosen.
fn choice(note: Note, label: &Markup, entries: &[(String, String, bool)]) -> Markup {
    let name = note.name();
    html! {
        span class="nb__choice" {
            label for=(name) { (label) }
            select class="field__select" id=(name) data-note=(name) {
                @for (value, words, chosen) in entries {
                    option value=(value) selected[*chosen] { (words) }
                }
            }
        }
    }
}

/// A length's field with the place for what is wrong in it.
fn number(state: &State, note: Note, label: &str, spoken: &str) -> Markup {
    let name = note.name();
    let unit = state.units.length_unit();
    let described = match note {
        Note::Reading(point, _) | Note::Guess(point) => points::output_id(point),
        _ => "nb-lengths",
    };
    html! {
        span class="nb__number" {
            label class="field__label" for=(name) {
                (label) span class="visually-hidden" { " " (spoken) " in " (spoken_unit(unit)) }
            }
            span class="field__box" {
                input class="field__input" id=(name) type="text" inputmode="decimal"
                    autocomplete="off" spellcheck="false" maxlength="40" data-note=(name)
                    data-number="" value=(note.text(state)) aria-describedby=(described)
                    aria-invalid=[update::fault(state, note).map(|_| "true")];
                span class="field__unit" aria-hidden="true" { (unit) }
            }
        }
    }
}

/// A table that may be wider than the window: it scrolls in a region of its own, and the
/// page does not.
fn wide(name: &str, table: &Markup) -> Markup {
    html! {
        p class="nb__hint nb__sideways" {
            "If the table is cut off, scroll it sideways: with a finger, or with Tab and the arrow keys."
        }
        div class="nb__wide" tabindex="0" role="group" aria-label=(name) { (table) }
    }
}

/// The text of an area: a browser drops the first line break in it.
fn in_area(text: &str) -> String {
    format!("\n{text}")
}

/// Room for some lines of the group's own.
fn words(state: &State, note: Note, label: &Markup, lines: usize, most: usize) -> Markup {
    let name = note.name();
    html! {
        div class="nb__words" {
            label for=(name) { (label) }
            textarea class="menu__text" id=(name) data-note=(name) rows=(lines)
                maxlength=(most) autocomplete="off" spellcheck="false" { (in_area(&note.text(state))) }
        }
    }
}

/// Beside every room for free text.
fn no_names() -> Markup {
    html! { span class="nb__hint" { " (no names)" } }
}

/// What is wrong in some fields, as sentences.
fn faults(state: &State, notes: impl IntoIterator<Item = Note>) -> Markup {
    let faults: Vec<String> =
        notes.into_iter().filter_map(|note| update::fault(state, note)).collect();
    html! { @for fault in faults { p class="field__words" { (fault) } } }
}
