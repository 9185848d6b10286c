//! The notebook on paper: what was measured in every trial, the notes, and the conclusion
//! in full, or room to write it.

use maud::{Markup, html};
use noseward_lesson::{BalancePoint, End, REPEATS, Statement, Trial};

use super::compare::{charts, list};
use super::form::measured;
use crate::app::State;

/// The open notebook: the trials, the charts, the readings and the conclusion.
pub(crate) fn notebook(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let summaries = notebook.summaries();
    html! {
        h2 { "Notebook of " (notebook.group) }
        (list::list(state, &summaries))
        (charts::charts(state, &summaries))
        @if notebook.trials().iter().any(|trial| trial.measured.any()) {
            (readings(state, notebook.trials()))
        }
        @for trial in notebook.trials().iter().filter(|trial| !trial.note.is_empty()) {
            p { strong { "Trial " (trial.id()) ": " } (trial.note) }
        }
        @if !notebook.plans().is_empty() {
            p { strong { "What we will try next: " } (notebook.plans().join("; ")) }
        }
        h3 { "What we found out" }
        @for of in Statement::ALL {
            div class="nb__written" {
                p { strong { (of.label()) } }
                @let text = notebook.conclusion.text(of);
                @if text.is_empty() { p class="nb__lines" {} } @else { p class="nb__text" { (text) } }
            }
        }
        p { "Adult’s initials, space checked before every three swings: ____ ____ ____ ____" }
        p { "A good swing is not permission to launch. Local rules, your school’s own risk \
             assessment and a qualified person decide." }
    }
}

fn readings(state: &State, trials: &[Trial]) -> Markup {
    html! {
        table class="table nb__table" {
            caption { "What we measured, from the nose tip" }
            thead { tr {
                th scope="col" { "Trial" } th scope="col" { "Point" }
                @for i in 1..=REPEATS { th scope="col" { (i) } }
                th scope="col" { "Middle" } th scope="col" { "Range" }
            } }
            tbody {
                @for trial in trials {
                    @for point in BalancePoint::ALL { (row(state, trial, point)) }
                }
            }
        }
    }
}

fn row(state: &State, trial: &Trial, point: BalancePoint) -> Markup {
    let readings = trial.measured.of(point);
    if !readings.any() {
        return html! {};
    }
    let length_mm = trial.design().length_mm();
    let middle = trial.measured.middle(point, length_mm);
    html! {
        tr {
            th scope="row" { (trial.id()) }
            td {
                (point.label())
                @if readings.from == End::Tail { " (readings from the tail)" }
                @if let Some(out) = &readings.left_out {
                    ", reading " (out.reading + 1) " left out"
                    @if !out.reason.is_empty() { ": " (out.reason) }
                }
                @for i in (0..REPEATS).filter(|i| !trial.measured.counts(point, *i, length_mm)) {
                    ", reading " (i + 1) " does not count: it cannot be true"
                }
            }
            @for reading in readings.mm {
                td { @if let Some(value) = reading { (state.units.length(value)) } }
            }
            td { @if let Some(middle) = middle { (measured(state, middle.middle_mm)) } }
            td { @if let Some(middle) = middle { (measured(state, middle.range_mm())) } }
        }
    }
}
