//! What the groups of a class found, together: gathered, looked at, and given away again.

mod as_text;
mod chart;
mod columns;
mod example;
mod grid;
mod handed_in;
mod marking;
mod message;
mod model;
mod pattern;
mod report;
mod sheets;
mod statements;
pub(crate) mod symbols;
mod table;
mod take_in;
mod timer;
mod update;
mod why_not;

pub(crate) use message::ClassMsg;
#[cfg(test)]
pub(crate) use model::is_field;
pub(crate) use model::{CLASS_BYTES, CLASS_FILES, ClassState, FIELD};
pub(crate) use sheets::paper;
pub(crate) use update::{gather, kept, open, typed, update};

use maud::{Markup, html};
use noseward_lesson::{ClassLabel, LABEL_CHARS};
use noseward_link::rules_text;
use noseward_words::{self as words, Text};

use super::form::{button, more, plain_button};
use crate::app::State;
use crate::shell::marked::said;
use crate::shell::{Region, pressed, region};
use model::{ClassDesk, ClassField, View};

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(desk) = state.class.desk.as_deref() else { return Vec::new() };
    vec![
        region("class-head", head(state, desk)),
        region(
            "class-view",
            html! {
                div class="class" {
                    @match desk.view {
                        View::Gather => (handed_in::handed_in(state, desk)),
                        View::Pattern => (pattern::pattern(state, desk)),
                        View::Table => (table::table(state, desk)),
                        View::Marking => (marking::marking(state, desk)),
                        View::Reports => (report::reports(desk)),
                    }
                }
            },
        ),
    ]
}

/// Which class it is, what there is of it, and the ways to look at it.
fn head(state: &State, desk: &ClassDesk) -> Markup {
    let class = &desk.class;
    let trials = count(class.entries().len());
    html! {
        p class="place__lead" {
            @if class.is_empty() { (words::class_lead()) }
            @else if state.class.is_busy { b { (words::class_holds_so_far(trials.into())) } }
            @else { b { (words::class_holds(trials.into(), groups(desk).into())) } }
        }
        div class="nb__row" role="group" aria-label=(words::class_views().as_str()) {
            @for (view, i) in View::ALL.into_iter().zip(0_usize..) {
                button type="button" class="button" id={ "cl-show:" (i) } data-action="cl-show"
                    data-target=(i) aria-pressed=(pressed(view == desk.view)) { (name(view)) }
            }
        }
        @if class.entries().iter().any(|entry| entry.result.example) {
            p class="class__invented" {
                (if class.is_example() { words::class_invented() } else { words::class_invented_beside() }) " "
                (plain_button("cl-drop-example", true, words::class_drop_example()))
            }
        }
        @if class.delete_by.is_some_and(|day| day < state.class.today) {
            p class="notice notice--alarm" { (words::class_is_due()) }
        }
    }
}

/// How many groups there are.
fn groups(desk: &ClassDesk) -> u32 {
    if let Some(known) = desk.groups.get() {
        return known;
    }
    let entries = desk.class.entries().iter();
    let mut groups: Vec<_> = entries.map(|e| (&e.class, e.result.group)).collect();
    groups.sort_unstable();
    groups.dedup();
    let groups = count(groups.len());
    desk.groups.set(Some(groups));
    groups
}

fn name(view: View) -> Text {
    match view {
        View::Gather => words::class_gather(),
        View::Pattern => words::class_pattern(),
        View::Table => words::class_table(),
        View::Marking => words::marking_view(),
        View::Reports => words::report_view(),
    }
}

fn count(many: usize) -> u32 {
    u32::try_from(many).unwrap_or(u32::MAX)
}

/// A field of the place with its label.
fn field(
    desk: &ClassDesk,
    field: ClassField,
    label: Text,
    text: &str,
    kind: &str,
) -> Markup {
    let name = field.name();
    let draft = desk.drafts.iter().find(|(known, _)| *known == update::key(field));
    let text = draft.map_or(text, |(_, text)| text);
    html! {
        span class="nb__number" {
            label class="field__label" for=(name) { (label) }
            span class="field__box" {
                input class="field__input" id=(name) type=(kind) data-note=(name) autocomplete="off"
                    maxlength="40" value=(text) aria-invalid=[draft.map(|_| "true")];
            }
        }
    }
}

/// Where it is kept, for how long, and the ways to save and to delete it.
fn keeping(state: &State, desk: &ClassDesk) -> Markup {
    let class = &desk.class;
    let day = class
        .delete_by
        .map_or_else(String::new, |(y, m, d)| format!("{y:04}-{m:02}-{d:02}"));
    let label_is_bad = desk.drafts.iter().any(|(known, _)| *known == "label");
    html! {
        section class="card card--place" aria-labelledby="class-keeping" {
            h3 id="class-keeping" { (words::class_keeping()) }
            div class="nb__row" {
                (field(desk, ClassField::Label, words::class_label(), class.label.as_str(), "text"))
                (field(desk, ClassField::DeleteBy, words::class_delete_by(), &day, "date"))
            }
            @if label_is_bad { p class="field__words" role="status" { (words::class_label_wrong(LABEL_CHARS.into())) } }
            (rules(state, desk))
            p class="nb__hint" { (words::class_kept_here()) }
            div class="nb__row" {
                (plain_button("cl-save", false, words::class_save()))
                @if desk.asks_to_delete {
                    span role="status" { (words::class_ask_delete()) }
                    (plain_button("cl-delete", false, words::class_delete_now()))
                    (plain_button("cl-keep", false, words::class_keep()))
                } @else if !class.is_empty() || class.label != ClassLabel::default() {
                    (plain_button("cl-ask-delete", false, words::class_delete()))
                }
            }
        }
    }
}

/// The rules that results are held to.
fn rules(state: &State, desk: &ClassDesk) -> Markup {
    html! {
        div class="nb__row" {
            @match desk.class.rules {
                Some(rules) => {
                    span { (said(words::class_rules(&rules_text(rules)))) }
                    (plain_button("cl-hold-none", true, words::class_rules_drop()))
                },
                None => {
                    span { (words::class_rules_none()) }
                    @if state.set_up.text.is_some() {
                        (plain_button("cl-hold", true, words::class_rules_hold()))
                    }
                },
            }
        }
    }
}
