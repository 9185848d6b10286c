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
