//! All trials as a table, and what was deleted.

use maud::{Markup, html};
use noseward_drawing::Written;
use noseward_lesson::{Level, Overall, Summary, Trial};
use noseward_link::escape_formula;
use noseward_stability::Nearer;
use noseward_words::{self as words, Number, Text};

use crate::app::State;
use crate::places::form::{button, heads, level, measured, mm, told_button, wide};
use crate::places::labels::{self, number};
use crate::places::trial::{changed::label, thought};
use crate::shell::marked::marked;

pub(crate) fn list(state: &State, summaries: &[Summary]) -> Markup {
    let notebook = &state.desk.notebook;
    let level = level(state);
    html! {
        @if !notebook.trials().is_empty() {
            (wide(&words::compare_trials(), &html! { table class="table nb__table" {
                caption { (words::compare_trials_of(&labels::group(notebook.group))) }
                thead { tr {
                    (heads(heads_of(level)))
                    th scope="col" class="screen-only" { (words::compare_head_do()) }
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
                (words::compare_notebook_altered())
            }
        }
        @if !notebook.deleted().is_empty() {
            p class="nb__deleted" {
                (words::compare_deleted()) " "
                @for deleted in notebook.deleted() {
                    @let id = deleted.trial.id();
                    (words::compare_deleted_trial(number(id))) " "
                    (button("nb-restore", &id.to_string(), true, &html! { (words::compare_bring_back(number(id))) })) " "
                }
            }
        }
    }
}

/// The heads of the columns that each level has.
fn heads_of(level: Level) -> &'static [Text] {
    const HEADS: [Text; 7] = [
        words::compare_head_trial(),
        words::compare_head_changed(),
        words::compare_head_separation(),
        words::compare_head_widths(),
        words::compare_head_mass(),
        words::compare_head_predicted(),
        words::compare_we_saw(),
    ];
    const BALANCE: [Text; 5] =
        [HEADS[0], HEADS[1], words::compare_head_nearer(), HEADS[5], HEADS[6]];
    const MEASURE: [Text; 5] = [HEADS[0], HEADS[1], HEADS[2], HEADS[5], HEADS[6]];
    const EXPLAIN: [Text; 6] =
        [HEADS[0], HEADS[1], HEADS[2], HEADS[3], HEADS[5], HEADS[6]];
    match level {
        Level::Balance => &BALANCE,
        Level::Measure => &MEASURE,
        Level::Explain => &EXPLAIN,
        Level::Model => &HEADS,
    }
}

fn row(state: &State, trial: &Trial, found: &Summary) -> Markup {
    let notebook = &state.desk.notebook;
    let level = level(state);
    let id = trial.id();
    let target = id.to_string();
    let act = |action, label| told_button(action, &target, label);
    let in_hand = notebook.in_hand().map(Trial::id) == Some(id);
    let predicted = trial.predictions();
    let first = trial.predictions().first();
    html! {
        tr aria-current=[in_hand.then_some("true")] {
            th scope="row" { (id) @if in_hand { span class="nb__hint" { " " (words::compare_in_hand()) } } }
            td { (changed(state, trial, found)) }
            @if level == Level::Balance {
                td { @if is_told(state, found) { (nearer(found)) } }
            } @else {
                td { (separation(state, found)) }
            }
            @if level >= Level::Explain {
                td { @if let Some(widths) = found.calibres().filter(|_| is_told(state, found)) { (Number::fixed(widths, 1)) } }
            }
            @if level == Level::Model {
                td { @if let Some(g) = found.mass_g { (state.units.scale_reading(g)) } }
            }
            td {
                @if let Some(first) = first {
                    (thought(first, &escape_formula(&first.because)))
                    @for later in predicted.later() {
                        br; span class="nb__hint" {
                            (words::compare_later()) " " (thought(later, &escape_formula(&later.because)))
                        }
                    }
                } @else { (words::compare_nothing_yet()) }
                @if trial.swung_first() { br; span class="nb__mark" { (words::compare_swung_first()) } }
                @if trial.is_altered() { br; span class="nb__mark" { (words::compare_altered()) } }
            }
            td {
                (seen(trial))
                @if !trial.taken_back().is_empty() {
                    br; span class="nb__hint" {
                        (words::compare_taken_back(&labels::outcomes(trial.taken_back())))
                    }
                }
                @if !trial.note.is_empty() { br; span class="nb__hint" { (escape_formula(&trial.note)) } }
            }
            td class="screen-only" {
                span class="nb__do" {
                    (act("nb-open", words::compare_open(number(id))))
                    (act("nb-copy", words::compare_copy(number(id))))
                    @if trial.compared_with().is_some() {
                        (act("nb-pair", words::compare_pair(number(id))))
                    }
                    (button("nb-up", &target, true, &html! { span aria-hidden="true" { "↑" } span class="visually-hidden" { (words::compare_move_up(number(id))) } }))
                    (button("nb-down", &target, true, &html! { span aria-hidden="true" { "↓" } span class="visually-hidden" { (words::compare_move_down(number(id))) } }))
                    (act("nb-delete", words::compare_delete(number(id))))
                }
            }
        }
    }
}

/// What the swings of a trial come to.
fn seen(trial: &Trial) -> Markup {
    let seen: Vec<_> = trial.swings().counted().collect();
    let label = labels::overall(trial.overall());
    match trial.overall() {
        Overall::Mostly(outcome) => {
            let so = seen.iter().filter(|one| **one == outcome).count();
            let sentence = words::compare_seen(&label, so.into(), seen.len().into());
            marked(&sentence, &|_, run| html! { span class="nb__hint" { (run) } })
        }
        Overall::Mixed => html! {
            (label) span class="nb__hint" { " " (words::compare_swings(seen.len().into())) }
        },
        Overall::Nothing => html! { (label) },
    }
}

/// What changed since the trial that it is compared with.
fn changed(state: &State, trial: &Trial, found: &Summary) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.baseline_of(trial).is_none() {
        return html! { (words::compare_baseline()) };
    }
    let changes = &found.changes;
    html! {
        @if changes.is_empty() { (words::compare_nothing_changed()) }
        @for (i, change) in changes.iter().enumerate() {
            @if i > 0 { br; }
            (label(change))
        }
        @if changes.len() > 1 {
            br; span class="nb__mark" {
                @if notebook.allows_two_changes { (words::compare_changes_allowed(changes.len().into())) }
                @else { (words::compare_changes(changes.len().into())) }
            }
        }
        @if notebook.in_hand().is_none() || trial.compared_with() != previous(state, trial) {
            @if let Some(with) = trial.compared_with() {
                span class="nb__hint" { " " (words::compare_since(number(with))) }
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

fn nearer(found: &Summary) -> Markup {
    let sentence = match found.separation_mm().map(|mm| Nearer::of(mm / 1000.0)) {
        _ if found.too_close == Some(true) => words::compare_too_close(),
        Some(Nearer::CentreOfMass) => words::compare_mass(),
        Some(Nearer::CentreOfPressure) => words::compare_pressure(),
        Some(Nearer::Neither) => words::compare_one_place(),
        None => return html! {},
    };
    html! { (sentence) }
}

/// Whether the points of a trial may be told: worked-out ones may have to wait for measured
/// ones.
pub(crate) fn is_told(state: &State, found: &Summary) -> bool {
    state.desk.notebook.telling.tells_point(found.is_measured())
}

fn separation(state: &State, found: &Summary) -> Markup {
    html! {
        @if let Some(value) = found.measured_separation_mm {
            (words::compare_measured(&measured(state, value)))
            @if found.too_close == Some(true) { br; span class="nb__mark" { (words::compare_too_close()) } }
            br;
        }
        @if let Some(value) = found.computed_separation_mm().filter(|_| is_told(state, found)) {
            span class="nb__hint" { (words::compare_worked_out(&mm(state, value))) }
        }
    }
}
