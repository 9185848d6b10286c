//! What each group wrote, beside its own data, and what whoever marks finds in it.

use maud::{Markup, html};
use noseward_drawing::listed;
use noseward_drawing::names::lesson as names;
use noseward_lesson::{
    Class, ClassLabel, Conclusion, Criterion, Group, Notebook, TrialResult, Work,
};
use noseward_words::{self as words, Text};

use super::model::{ClassDesk, ClassField};
use super::report::{Report, way};
use super::table::Shown;
use super::take_in::results_of;
use super::{button, count, report, statements, table};
use crate::app::{Effect, Paper, State};
use crate::places::form::wide;
use crate::places::labels;
use crate::shell::pressed;

/// Groups that are named, at most.
const NAMED: usize = 40;
/// The ways to another notebook, as the controls name them.
const BEFORE: usize = 0;
const NEXT: usize = 1;
const FROM_BELOW: usize = 2;

/// To another notebook: the one before, the next one, or that from below the statements, which is
/// looked at from its beginning. Behind the last comes the first.
pub(super) fn step(desk: &mut ClassDesk, way: usize) -> Vec<Effect> {
    let order = order(&desk.class);
    let Some(place) = place(desk, &order) else { return Vec::new() };
    let by = if way == BEFORE { order.len() - 1 } else { 1 };
    desk.marked = order[(place + by) % order.len()];
    let mut effects = vec![Effect::Redraw];
    if way == FROM_BELOW {
        effects.push(Effect::Focus(ClassField::Marked.name()));
    }
    effects
}

/// Finds the statement with this place in the notebook, or no longer.
pub(super) fn find(desk: &mut ClassDesk, statement: usize) {
    let order = order(&desk.class);
    if let Some(place) = place(desk, &order)
        && let Some(work) = desk.class.work_mut(order[place])
        && let Some(criterion) = Criterion::ALL.get(statement)
    {
        work.toggle(*criterion);
        // What was gathered before is not undone together with this.
        desk.before = None;
    }
}

/// To the notebook that stands here in the list.
pub(super) fn choose(desk: &mut ClassDesk, place: usize) {
    if let Some(&at) = order(&desk.class).get(place) {
        desk.marked = at;
    }
}

/// The places of the notebooks in the class, in the order of their labels.
pub(super) fn order(class: &Class) -> Vec<usize> {
    let mut order: Vec<usize> = (0..class.works().len()).collect();
    let key = |at: &usize| {
        let work = &class.works()[*at];
        (&work.class, work.notebook.group, *at)
    };
    order.sort_unstable_by(|a, b| key(a).cmp(&key(b)));
    order
}

/// Where the notebook that is looked at stands in that order.
fn place(desk: &ClassDesk, order: &[usize]) -> Option<usize> {
    let found = order.iter().position(|at| *at == desk.marked);
    found.or(order.first().map(|_| 0))
}

/// The notebook that is looked at.
pub(super) fn looked_at(desk: &ClassDesk) -> Option<&Work> {
    let order = order(&desk.class);
    desk.class.works().get(order[place(desk, &order)?])
}

/// The label of a group, and of its class where that is another than the one in hand.
pub(super) fn group_of(class: &Class, of: &ClassLabel, group: Group) -> String {
    let group = labels::group(group);
    if *of == class.label { group } else { words::marking_of_class(&group, of.as_str()) }
}

/// What a notebook is called: its group, and which it is where several came under one label.
pub(super) fn name(class: &Class, work: &Work) -> String {
    let group = work.notebook.group;
    let name = group_of(class, &work.class, group);
    let same = class
        .works()
        .iter()
        .filter(|other| other.class == work.class && other.notebook.group == group);
    let place = same.clone().position(|other| std::ptr::eq(other, work)).unwrap_or(0);
    match same.count() {
        0 | 1 => name,
        of => words::marking_one_of(&name, count(place + 1).into(), count(of).into()),
    }
}

pub(super) fn marking(state: &State, desk: &ClassDesk) -> Markup {
    let order = order(&desk.class);
    html! {
        @match place(desk, &order) {
            None => p { (words::marking_none()) },
            Some(place) => {
                (chooser(desk, &order, place))
                (one(state, desk, &desk.class.works()[order[place]]))
            },
        }
        (only_numbers(&desk.class))
    }
}

/// The list of the notebooks, and the ways to the next one and the one before.
fn chooser(desk: &ClassDesk, order: &[usize], place: usize) -> Markup {
    let field = ClassField::Marked.name();
    html! {
        div class="nb__row" {
            span class="nb__choice" {
                label for=(field) { (words::marking_whose()) }
                select class="field__select" id=(field) data-note=(field) {
                    @for (at, i) in order.iter().zip(0_usize..) {
                        option value=(i) selected[i == place] { (name(&desk.class, &desk.class.works()[*at])) }
                    }
                }
            }
            (button("cl-step", &BEFORE.to_string(), false, &html! { (words::marking_previous()) }))
            (button("cl-step", &NEXT.to_string(), false, &html! { (words::marking_next()) }))
            span role="status" { (words::marking_at(count(place + 1).into(), count(order.len()).into())) }
            (way(Report::Print(Paper::Group), true, words::marking_print()))
            (way(Report::GroupText, true, words::marking_text()))
        }
    }
}

/// One notebook.
fn one(state: &State, desk: &ClassDesk, work: &Work) -> Markup {
    let results = results_of(&work.notebook);
    let rows: Vec<_> = results.iter().map(|result| (None, result)).collect();
    html! {
        div class="marking" {
            div {
                section class="card card--place" aria-labelledby="marking-wrote" {
                    h3 id="marking-wrote" {
                        (words::marking_wrote(&name(&desk.class, work)))
                        @if work.example { " " span class="nb__mark" { (words::marking_invented()) } }
                    }
                    (wrote(&work.notebook))
                }
                section class="card card--place" aria-labelledby="marking-data" {
                    h3 id="marking-data" { (words::marking_data()) }
                    (wide(&words::marking_data(), &table::plain(state, &rows, Shown::Readings)))
                }
            }
            section class="card card--place" aria-labelledby="marking-found" {
                h3 id="marking-found" { (words::marking_found()) }
                p class="nb__hint" { (words::marking_how()) }
                ul class="marking__list" {
                    @for (criterion, i) in Criterion::ALL.into_iter().zip(0_usize..) {
                        li { (statement(state, work, &results, criterion, i)) }
                    }
                }
                (button("cl-step", &FROM_BELOW.to_string(), true, &html! { (words::marking_next()) }))
            }
        }
    }
}

/// The boxes of a conclusion: what each is called, and what stands in it.
pub(super) fn boxes(conclusion: &Conclusion) -> [(Text, &str); 4] {
    let Conclusion { claim, evidence, reason, trust } = conclusion;
    [
        (words::lesson_claim(), claim),
        (words::lesson_evidence(), evidence),
        (words::lesson_reason(), reason),
        (words::lesson_trust(), trust),
    ]
}

/// The four boxes of the conclusion, and what the group plans.
pub(super) fn wrote(notebook: &Notebook) -> Markup {
    html! {
        @for (label, text) in boxes(&notebook.conclusion) {
            div class="nb__written marking__box" {
                p { strong { (label) } }
                p class="nb__text" { @if text.is_empty() { (words::marking_nothing()) } @else { (text) } }
            }
        }
        @if !notebook.plans().is_empty() {
            div class="nb__written marking__box" {
                p { strong { (words::report_plans()) } }
                p class="nb__text" { (notebook.plans().join("\n")) }
            }
        }
    }
}

/// A statement to choose, with what is known to it.
fn statement(
    state: &State,
    work: &Work,
    results: &[TrialResult],
    criterion: Criterion,
    i: usize,
) -> Markup {
    let described = format!("cl-known:{i}");
    let known = statements::known(state, &work.notebook, results, criterion);
    html! {
        button type="button" class="button button--small" id={ "cl-find:" (i) } data-action="cl-find"
            data-target=(i) aria-pressed=(pressed(work.has(criterion)))
            aria-describedby=[(!known.is_empty()).then_some(&described)] { (names::criterion(criterion)) }
        @if !known.is_empty() {
            div id=(described) class="nb__hint" { @for said in known { p { (said) } } }
        }
    }
}

/// Groups of which no notebook came.
fn only_numbers(class: &Class) -> Markup {
    let subjects = report::subjects(class);
    let without = || subjects.iter().filter(|subject| subject.work.is_none());
    let groups = listed(without().take(NAMED).map(|subject| subject.name(class)));
    let more = without().count().saturating_sub(NAMED);
    html! {
        @if !groups.is_empty() { p { (words::marking_only_numbers(&groups)) } }
        @if more > 0 { p { (words::class_and_more(count(more).into())) } }
    }
}
