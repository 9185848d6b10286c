//! How the lesson is set up: detail, help, rules, and what is told when.

use maud::{Markup, html};
use noseward_lesson::{Level, Support, Telling};

use crate::app::State;
use crate::notebook::NotebookField;
use crate::places::form::{button, choice};
use crate::shell::pressed;

/// The settings of the open notebook, and deleting it.
pub(crate) fn settings(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let levels: Vec<_> = Level::ALL
        .into_iter()
        .enumerate()
        .map(|(i, l)| (i.to_string(), l.label().to_owned(), l == notebook.level))
        .collect();
    let supports: Vec<_> = Support::ALL
        .into_iter()
        .enumerate()
        .map(|(i, s)| (i.to_string(), s.label().to_owned(), s == notebook.support))
        .collect();
    let tellings: Vec<_> = Telling::ALL
        .into_iter()
        .enumerate()
        .map(|(i, t)| (i.to_string(), t.label().to_owned(), t == notebook.telling))
        .collect();
    html! {
        section class="card card--place" aria-labelledby="settings-title" {
            h3 id="settings-title" { "The lesson of " (notebook.group) }
            div class="nb__row" {
                (choice(NotebookField::Level, &html! { "Detail" }, &levels))
                (choice(NotebookField::Support, &html! { "Help with the conclusion" }, &supports))
            }
            div class="nb__row" { (choice(NotebookField::Telling, &html! { "What is told when" }, &tellings)) }
            div class="nb__row" {
                button type="button" class="button button--small" id="nb-allow" data-action="nb-allow"
                    aria-pressed=(pressed(notebook.allows_two_changes)) { "Allow two changes at once" }
            }
            p class="nb__hint" {
                "Changing these loses nothing. Ages are a guide; the readings are the same at every \
                 level. They go along in the link of the notebook."
            }
            div class="nb__row" {
                @if state.desk.look.asks_to_delete {
                    span { "Delete the notebook of " (notebook.group) " from this computer? It cannot be brought back." }
                    (button("nb-delete-now", "", true, &html! { "Delete it" }))
                    (button("nb-keep-it", "", true, &html! { "Keep it" }))
                } @else {
                    (button("nb-ask-delete", "", true, &html! { "Delete this notebook" }))
                }
            }
        }
    }
}
