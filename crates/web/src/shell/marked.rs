//! A sentence with marks in it, as markup.

use maud::{Markup, html};
use noseward_words::{Mark, Marked};

/// The sentence with each marked run in the element that `element` makes of it; a strong
/// one is `<strong>` everywhere.
pub(crate) fn marked(
    sentence: &Marked,
    element: &dyn Fn(Mark, &str) -> Markup,
) -> Markup {
    html! {
        @for (mark, run) in sentence.runs() {
            @match mark {
                None => (run),
                Some(Mark::Strong) => strong { (run) },
                Some(mark) => (element(mark, run)),
            }
        }
    }
}

/// A sentence of which only some words are said with weight.
#[expect(clippy::needless_pass_by_value, reason = "less code wherever one is said")]
#[inline(never)]
pub(crate) fn said(sentence: Marked) -> Markup {
    marked(&sentence, &|_, run| html! { (run) })
}

/// A sentence of which some words are for screen readers only.
#[expect(clippy::needless_pass_by_value, reason = "less code wherever one is said")]
pub(crate) fn aside(sentence: Marked) -> Markup {
    marked(&sentence, &|_, run| html! { span class="visually-hidden" { (run) } })
}
