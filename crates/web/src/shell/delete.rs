//! Deleting everything of this page from this computer.

use maud::{Markup, html};

/// The button that deletes everything. It is there before the rest.
pub(crate) fn delete(asks: bool) -> Markup {
    html! {
        @if asks {
            p {
                strong { "Delete this rocket and everything else of this page from this \
                          computer? " }
                "It cannot be undone. Links, codes and files you have made still work."
            }
            button type="button" class="button" id="delete-now" data-action="delete-now" {
                "Delete everything now"
            } " "
            button type="button" class="button" id="keep-all" data-action="keep-all" {
                "Keep it"
            }
        } @else {
            button type="button" class="button" id="ask-to-delete"
                data-action="ask-to-delete" { "Delete everything on this computer" }
        }
    }
}
