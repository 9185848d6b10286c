//! The one control for the language, which is in view everywhere.

use maud::{Markup, html};
use noseward_words as words;

use crate::app::State;

/// The list of languages, each by its own name; nothing where there is only one.
pub(crate) fn choice(state: &State) -> Markup {
    let offered = state.speech.offered();
    html! {
        @if offered.len() > 1 {
            select class="language" id="language" aria-label=(words::language_label()) {
                @for (choice, now) in offered {
                    option value=(choice.key) lang=(choice.language.tag) selected[now] {
                        (choice.name)
                    }
                }
            }
        }
    }
}
