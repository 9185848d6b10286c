//! Each trial in a row: sorted, filtered, hidden, marked.

use maud::{Markup, html};
use noseward_lesson::{Entry, Overall, PointResult, TrialResult, odd};
use noseward_link::escape_formula;
use noseward_words::{self as words, Text};
use std::cmp::Ordering;

use super::model::{ClassDesk, ClassField, Filter, Sort};
use super::{button, count, plain_button};
use crate::app::State;
use crate::places::form::{heads, measured, mm, wide};
use crate::places::labels;
use crate::shell::marked::marked;
use crate::shell::pressed;

/// Rows that are shown at first, and each time more are asked for.
const ROWS: usize = 100;

pub(super) fn table(state: &State, desk: &ClassDesk) -> Markup {
    let shown = rows(desk);
    let room = ROWS * (desk.table.more + 1);
    let several =
        desk.class.entries().iter().any(|entry| entry.class != desk.class.label);
    html! {
        div class="nb__row" {
            (choice(ClassField::Sort, words::class_sort(), &Sort::ALL.map(sort_name), Sort::ALL.iter().position(|s| *s == desk.table.sort)))
            (choice(ClassField::Filter, words::class_filter(), &Filter::ALL.map(filter_name), Filter::ALL.iter().position(|f| *f == desk.table.filter)))
            span role="status" { (words::class_rows(count(shown.len()).into(), count(desk.class.entries().len()).into())) }
        }
        @if desk.class.entries().is_empty() { p { (words::class_no_rows()) } }
        @else {
            (wide(&words::class_table(), &html! { table class="table nb__table" {
                thead { tr {
                    (heads(&HEADS))
                    th scope="col" class="screen-only" { (words::class_head_do()) }
                } }
                tbody { @for (i, entry) in shown.iter().take(room) { (row(state, *i, entry, several)) } }
            } }))
            @if shown.len() > room { (plain_button("cl-more", false, words::class_more())) }
        }
    }
}

const HEADS: [Text; 8] = [
    words::class_group(),
    words::class_trial(),
    words::class_changed(),
    words::lesson_mass(),
    words::lesson_pressure(),
    words::class_separation(),
    words::class_predicted(),
    words::class_seen(),
];

fn sort_name(sort: Sort) -> Text {
    match sort {
        Sort::Came => words::class_sort_came(),
        Sort::Group => words::class_sort_group(),
        Sort::Separation => words::class_sort_separation(),
        Sort::Outcome => words::class_sort_outcome(),
    }
}

fn filter_name(filter: Filter) -> Text {
    match filter {
        Filter::All => words::class_filter_all(),
        Filter::Marked => words::class_filter_marked(),
        Filter::Hidden => words::class_filter_hidden(),
        Filter::NotFair => words::class_filter_unfair(),
        Filter::Odd => words::class_filter_odd(),
        Filter::Twice => words::class_filter_twice(),
    }
}

/// A list of names, the chosen one among them.
pub(super) fn choice(
    field: ClassField,
    label: Text,
    names: &[Text],
    chosen: Option<usize>,
) -> Markup {
    let name = field.name();
    html! {
        span class="nb__choice" {
            label for=(name) { (label) }
            select class="field__select" id=(name) data-note=(name) {
                @for (one, i) in names.iter().zip(0_usize..) {
                    option value=(i) selected[chosen == Some(i)] { (one) }
                }
            }
        }
    }
}

/// The entries that the filter lets through, each with its place in the class, in their order.
fn rows(desk: &ClassDesk) -> Vec<(usize, &Entry)> {
    let lets_through = |entry: &Entry| match desk.table.filter {
        Filter::All => true,
        Filter::Marked => entry.marked,
        Filter::Hidden => entry.hidden,
        Filter::NotFair => entry.result.is_fair() == Some(false),
        Filter::Odd => !odd(&entry.result).is_empty(),
        Filter::Twice => !entry.older.is_empty(),
    };
    let entries = desk.class.entries().iter().enumerate();
    let mut rows: Vec<_> = entries.filter(|(_, entry)| lets_through(entry)).collect();
    let group =
        |entry: &Entry| (entry.class.clone(), entry.result.group, entry.result.trial);
    match desk.table.sort {
        Sort::Came => {}
        Sort::Group => rows.sort_by_key(|(_, entry)| group(entry)),
        Sort::Separation => rows.sort_by(|(_, a), (_, b)| {
            let [a, b] = [a, b].map(|entry| separation_mm(&entry.result));
            // What has none comes last.
            match (a, b) {
                (Some(a), Some(b)) => a.total_cmp(&b),
                _ => b.is_some().cmp(&a.is_some()),
            }
        }),
        Sort::Outcome => rows.sort_by(|(_, a), (_, b)| {
            let [a, b] = [a, b].map(|entry| entry.result.nose_first());
            b.cmp(&a).then(Ordering::Equal)
        }),
    }
    rows
}

/// The separation, measured where it was.
pub(super) fn separation_mm(result: &TrialResult) -> Option<f64> {
    result.measured_separation_mm().or_else(|| result.computed_separation_mm())
}

fn row(state: &State, i: usize, entry: &Entry, several: bool) -> Markup {
    let target = i.to_string();
    html! {
        tr class=[entry.hidden.then_some("class__hidden")] {
            th scope="row" {
                (labels::group(entry.result.group))
                @if several { span class="nb__hint" { " " (entry.class.as_str()) } }
            }
            td { (entry.result.trial) }
            (cells(state, &entry.result, Shown::Swings, entry.older.len()))
            td class="screen-only" {
                span class="nb__do" {
                    (toggle("cl-mark", &target, entry.marked, words::class_mark()))
                    (toggle("cl-hide", &target, entry.hidden, words::class_hide()))
                    (button("cl-remove", &target, true, &html! { (words::class_remove()) }))
                }
            }
        }
    }
}

/// How much of a trial is shown.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Shown {
    /// All swings, and what else there is to say of it.
    Swings,
    /// How often each point was read.
    Readings,
    /// Neither.
    Short,
}

/// Trials without what is done to them, with or without the group.
pub(super) fn plain(
    state: &State,
    results: &[(Option<String>, &TrialResult)],
    shown: Shown,
) -> Markup {
    let grouped = results.iter().any(|(group, _)| group.is_some());
    html! {
        table class="table nb__table" {
            thead { tr { (heads(&HEADS[usize::from(!grouped)..])) } }
            tbody {
                @for (group, result) in results {
                    tr {
                        @if let Some(group) = group { th scope="row" { (group) } td { (result.trial) } }
                        @else { th scope="row" { (result.trial) } }
                        (cells(state, result, shown, 0))
                    }
                }
            }
        }
    }
}

/// What a trial came to, in the columns behind its number.
fn cells(state: &State, result: &TrialResult, shown: Shown, older: usize) -> Markup {
    html! {
        td {
            @if result.what_changed.is_empty() {
                @match result.changes {
                    Some(changes) => (words::class_changes(u32::from(changes).into())),
                    None => "–",
                }
            } @else { (escape_formula(&result.what_changed)) }
            @if result.is_fair() == Some(false) { br; span class="nb__mark" { (words::class_unfair()) } }
        }
        td { (point(state, result.mass, shown)) }
        td { (point(state, result.pressure, shown)) }
        td {
            @if let Some(value) = result.measured_separation_mm() { (measured(state, value)) br; }
            @if let Some(value) = result.computed_separation_mm() {
                span class="nb__hint" { (words::class_worked_out(&mm(state, value))) }
            }
        }
        td {
            @if let Some(predicted) = result.predicted { (labels::outcome(predicted.outcome)) } @else { "–" }
            @if result.swung_first { br; span class="nb__mark" { (words::class_swung_first()) } }
        }
        td {
            (seen(result, shown))
            @if result.altered { br; span class="nb__mark" { (words::class_altered()) } }
            @if result.example && shown == Shown::Swings { br; span class="nb__mark" { (words::class_is_invented()) } }
            @if older > 0 { br; span class="nb__mark" { (words::class_older(count(older).into())) } }
        }
    }
}

/// What was seen: in short, where it was mostly one thing.
fn seen(result: &TrialResult, shown: Shown) -> Markup {
    let overall = labels::overall(result.overall());
    match result.overall() {
        Overall::Mostly(outcome) if shown != Shown::Swings => {
            let counted = result.counted();
            let so = counted.iter().filter(|one| **one == outcome).count();
            let said = words::marking_seen(
                &overall,
                count(so).into(),
                count(counted.len()).into(),
            );
            marked(&said, &|_, run| html! { span class="nb__hint" { (run) } })
        }
        _ => html! {
            (overall)
            br; span class="nb__hint" { (labels::outcomes(&result.outcomes)) }
        },
    }
}

/// A point as it was measured.
fn point(state: &State, point: Option<PointResult>, shown: Shown) -> Markup {
    html! {
        @if let Some(point) = point {
            (measured(state, point.middle_mm))
            @if shown == Shown::Readings {
                br; span class="nb__hint" {
                    (words::marking_of_readings(u32::from(point.count).into(), &measured(state, point.range_mm)))
                }
            }
        } @else { "–" }
    }
}

fn toggle(action: &str, target: &str, on: bool, label: Text) -> Markup {
    html! {
        button type="button" class="button button--small" id={ (action) ":" (target) }
            data-action=(action) data-target=(target) aria-pressed=(pressed(on)) { (label) }
    }
}
