//! Deleting everything of this page from this computer.

use maud::{Markup, html};
use noseward_words as words;

use super::marked::said;

/// The button that deletes everything. It is there before the rest.
pub(crate) fn delete(asks: bool) -> Markup {
    html! {
        @if asks {
            p { (said(words::delete_question())) }
            button type="button" class="button" id="delete-now" data-action="delete-now" {
                (words::delete_now())
            } " "
            button type="button" class="button" id="keep-all" data-action="keep-all" {
                (words::delete_keep())
            }
        } @else {
            button type="button" class="button" id="ask-to-delete"
                data-action="ask-to-delete" { (words::delete_ask()) }
        }
    }
}
