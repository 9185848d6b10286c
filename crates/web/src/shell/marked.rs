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

/// A sentence of which some words are said with weight, or for screen readers only.
#[expect(clippy::needless_pass_by_value, reason = "less code wherever one is said")]
#[inline(never)]
pub(crate) fn said(sentence: Marked) -> Markup {
    marked(&sentence, &|mark, run| {
        if mark == Mark::Aside {
            html! { span class="visually-hidden" { (run) } }
        } else {
            html! { (run) }
        }
    })
}
