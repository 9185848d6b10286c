//! The language of the page, for whoever leads: who has read it.

use maud::{Markup, html};
use noseward_words as words;

use crate::app::State;
use crate::places::form::more;
use crate::shell::marked::said;

/// What is told of the language; nothing where there is only one.
pub(super) fn language(state: &State) -> Markup {
    let choice = state.speech.spoken();
    if state.speech.offered().len() < 2 {
        return html! {};
    }
    let inside = html! {
        @if choice.language.awaits_a_teacher { p { (said(words::lead_language_unread(choice.name))) } }
        p { (words::lead_language_kept()) }
    };
    more("language-told", &html! { (words::lead_language()) }, &inside)
}
