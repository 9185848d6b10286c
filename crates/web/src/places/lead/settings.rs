//! How the lesson is set up: detail, help, rules, and what is told when.

use maud::{Markup, html};
use noseward_lesson::{Level, Support, Telling};
use noseward_words as words;

use crate::app::State;
use crate::notebook::{NotebookField, rules_name};
use crate::places::form::{choice, plain_button};
use crate::places::labels;
use crate::shell::pressed;

/// The settings of the open notebook, and deleting it.
pub(crate) fn settings(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let levels: Vec<_> = Level::ALL
        .into_iter()
        .enumerate()
        .map(|(i, l)| (i.to_string(), labels::level(l).into(), l == notebook.level))
        .collect();
    let supports: Vec<_> = Support::ALL
        .into_iter()
        .enumerate()
        .map(|(i, s)| (i.to_string(), labels::support(s).into(), s == notebook.support))
        .collect();
    let tellings: Vec<_> = Telling::ALL
        .into_iter()
        .enumerate()
        .map(|(i, t)| (i.to_string(), labels::telling(t).into(), t == notebook.telling))
        .collect();
    let group = labels::group(notebook.group);
    // Fixed as long as there are any.
    let rules = rules_name(state);
    html! {
        section class="card card--place" aria-labelledby="settings-title" {
            h3 id="settings-title" { (words::lead_lesson_of(&group)) }
            fieldset class="lead__settings" disabled[rules.is_some()] {
                div class="nb__row" {
                    (choice(NotebookField::Level, &html! { (words::lead_detail()) }, &levels))
                    (choice(NotebookField::Support, &html! { (words::lead_help()) }, &supports))
                }
                div class="nb__row" { (choice(NotebookField::Telling, &html! { (words::lead_telling()) }, &tellings)) }
                div class="nb__row" {
                    button type="button" class="button button--small" id="nb-allow" data-action="nb-allow"
                        aria-pressed=(pressed(notebook.allows_two_changes)) { (words::lead_allow_two()) }
                }
            }
            @if let Some(rules) = &rules {
                p { (words::lead_under_rules(&group, rules)) }
                div class="nb__row" { (plain_button("nb-lift", true, words::lead_lift())) }
            } @else { p class="nb__hint" { (words::lead_loses_nothing()) } }
            div class="nb__row" {
                @if state.desk.look.asks_to_delete {
                    span { (words::lead_delete_asks(&group)) }
                    (plain_button("nb-delete-now", true, words::lead_delete_now()))
                    (plain_button("nb-keep-it", true, words::lead_keep()))
                } @else {
                    (plain_button("nb-ask-delete", true, words::lead_delete()))
                }
            }
        }
    }
}
