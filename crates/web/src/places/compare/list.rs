//! All trials as a table, and what was deleted.

use maud::{Markup, html};
use noseward_lesson::{Level, Overall, Summary, SwingOutcome, Trial};
use noseward_link::escape_formula;
use noseward_stability::{Nearer, fixed};

use crate::app::State;
use crate::places::form::{button, level, measured, mm, wide};

pub(crate) fn list(state: &State, summaries: &[Summary]) -> Markup {
    let notebook = &state.desk.notebook;
    let level = level(state);
    html! {
        @if !notebook.trials().is_empty() {
            (wide("The trials", &html! { table class="table nb__table" {
                caption { "The trials of " (notebook.group) }
                thead { tr {
                    th scope="col" { "Trial" }
                    th scope="col" { "What changed" }
                    @if level == Level::Balance { th scope="col" { "Nearer the nose" } }
                    @else { th scope="col" { "Separation" } }
                    @if level >= Level::Explain { th scope="col" { "Body widths" } }
                    @if level == Level::Model { th scope="col" { "Mass" } }
                    th scope="col" { "We predicted" }
                    th scope="col" { "We saw" }
                    th scope="col" class="screen-only" { "Do" }
                } }
                tbody {
                    @for (trial, found) in notebook.trials().iter().zip(summaries) {
                        (row(state, trial, found))
                    }
                }
            } }))
        }
        @if notebook.is_altered() {
            p class="notice notice--alarm" {
                "Trials were taken out of this notebook, or put in, by hand, outside of the page. "
                "A mark such as this one shows a change by hand. It cannot show that somebody went back to an earlier file."
            }
        }
        @if !notebook.deleted().is_empty() {
            p class="nb__deleted" {
                "Deleted: "
                @for deleted in notebook.deleted() {
                    @let id = deleted.trial.id();
                    "trial " (id) " "
                    (button("nb-restore", &id.to_string(), true, &html! { "Bring trial " (id) " back" })) " "
                }
            }
        }
    }
}

fn row(state: &State, trial: &Trial, found: &Summary) -> Markup {
    let notebook = &state.desk.notebook;
    let level = level(state);
    let id = trial.id();
    let target = id.to_string();
    let in_hand = notebook.in_hand().map(Trial::id) == Some(id);
    let predicted = trial.predictions();
    let first = trial.predictions().first();
    html! {
        tr aria-current=[in_hand.then_some("true")] {
            th scope="row" { (id) @if in_hand { span class="nb__hint" { " (in hand)" } } }
            td { (changed(state, trial, found)) }
            @if level == Level::Balance {
                td { @if is_told(state, found) { (nearer(found)) } }
            } @else {
                td { (separation(state, found)) }
            }
            @if level >= Level::Explain {
                td { @if let Some(widths) = found.calibres().filter(|_| is_told(state, found)) { (fixed(widths, 1)) } }
            }
            @if level == Level::Model {
                td { @if let Some(g) = found.mass_g { (state.units.scale_reading(g)) } }
            }
            td {
                @if let Some(first) = first {
                    (first.outcome.label())
                    @if !first.because.is_empty() { ", because " q { (escape_formula(&first.because)) } }
                    @for later in predicted.later() {
                        br; span class="nb__hint" { "later: " (later.outcome.label())
                            @if !later.because.is_empty() { ", because " q { (escape_formula(&later.because)) } } }
                    }
                } @else { "nothing yet" }
                @if trial.swung_first() { br; span class="nb__mark" { "swung before it was predicted" } }
                @if trial.is_altered() { br; span class="nb__mark" { "changed by hand, outside of the page" } }
            }
            td {
                (trial.overall().label())
                @let seen: Vec<_> = trial.swings().counted().collect();
                @match trial.overall() {
                    Overall::Mostly(outcome) => {
                        @let so = seen.iter().filter(|one| **one == outcome).count();
                        span class="nb__hint" { " (" (so) " of " (seen.len()) ")" }
                    }
                    Overall::Mixed => span class="nb__hint" { " (" (seen.len()) " swings)" },
                    Overall::Nothing => {},
                }
                @if !trial.taken_back().is_empty() {
                    br; span class="nb__hint" {
                        "taken back: "
                        (SwingOutcome::list(trial.taken_back()))
                    }
                }
                @if !trial.note.is_empty() { br; span class="nb__hint" { (escape_formula(&trial.note)) } }
            }
            td class="screen-only" {
                span class="nb__do" {
                    (button("nb-open", &target, true, &html! { "Open" span class="visually-hidden" { " trial " (id) } }))
                    (button("nb-copy", &target, true, &html! { "Copy" span class="visually-hidden" { " trial " (id) } }))
                    @if trial.compared_with().is_some() {
                        (button("nb-pair", &target, true, &html! { "Side by side" span class="visually-hidden" { ", trial " (id) } }))
                    }
                    (button("nb-up", &target, true, &html! { span aria-hidden="true" { "↑" } span class="visually-hidden" { "Move trial " (id) " up" } }))
                    (button("nb-down", &target, true, &html! { span aria-hidden="true" { "↓" } span class="visually-hidden" { "Move trial " (id) " down" } }))
                    (button("nb-delete", &target, true, &html! { "Delete" span class="visually-hidden" { " trial " (id) } }))
                }
            }
        }
    }
}

/// What changed since the trial that it is compared with.
fn changed(state: &State, trial: &Trial, found: &Summary) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.baseline_of(trial).is_none() {
        return html! { "baseline" };
    }
    let changes = &found.changes;
    html! {
        @if changes.is_empty() { "nothing" }
        @for (i, change) in changes.iter().enumerate() {
            @if i > 0 { br; }
            (change)
        }
        @if changes.len() > 1 {
            br; span class="nb__mark" {
                (count(changes.len())) " changes"
                @if notebook.allows_two_changes { " (allowed)" }
            }
        }
        @if notebook.in_hand().is_none() || trial.compared_with() != previous(state, trial) {
            @if let Some(with) = trial.compared_with() {
                span class="nb__hint" { " since trial " (with) }
            }
        }
    }
}

/// The number of the trial in the row above.
fn previous(state: &State, trial: &Trial) -> Option<u16> {
    let trials = state.desk.notebook.trials();
    let place = trials.iter().position(|other| other.id() == trial.id())?;
    Some(trials.get(place.checked_sub(1)?)?.id())
}

/// "two", "three", and beyond as digits.
pub(crate) fn count(n: usize) -> String {
    match n {
        2 => "two".into(),
        3 => "three".into(),
        4 => "four".into(),
        n => n.to_string(),
    }
}

fn nearer(found: &Summary) -> &'static str {
    match found.separation_mm().map(|mm| Nearer::of(mm / 1000.0)) {
        _ if found.too_close == Some(true) => "too close to call",
        Some(Nearer::CentreOfMass) => "centre of mass",
        Some(Nearer::CentreOfPressure) => "centre of pressure",
        Some(Nearer::Neither) => "both in one place",
        None => "",
    }
}

/// Whether the points of a trial may be told: worked-out ones may have to wait for measured
/// ones.
pub(crate) fn is_told(state: &State, found: &Summary) -> bool {
    state.desk.notebook.telling.tells_point(found.is_measured())
}

fn separation(state: &State, found: &Summary) -> Markup {
    html! {
        @if let Some(value) = found.measured_separation_mm {
            (measured(state, value)) " measured"
            @if found.too_close == Some(true) { br; span class="nb__mark" { "too close to call" } }
            br;
        }
        @if let Some(value) = found.computed_separation_mm().filter(|_| is_told(state, found)) {
            span class="nb__hint" { (mm(state, value)) " worked out" }
        }
    }
}
