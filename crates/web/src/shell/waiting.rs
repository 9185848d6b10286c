//! What stands in the place of a part that loads later, until it is here.

use maud::{Markup, html};
use noseward_words as words;

use super::marked::marked;
use crate::app::{Code, State};
use crate::part::Part;

pub(crate) fn state(state: &State) -> Markup {
    let parts = [Some(Part::Notebook), state.place.part()].into_iter().flatten();
    let codes: Vec<Code> = parts.map(|part| state.parts.of(part)).collect();
    html! {
        @if codes.contains(&Code::Failed) {
            p class="notice notice--alarm" role="alert" {
                (marked(&words::waiting_failed(), &|_, run| html! {
                    button type="button" class="button button--small"
                        data-action="nb-again" { (run) }
                }))
            }
        } @else if codes.iter().any(|code| *code != Code::Here) {
            p { (words::waiting_loading()) }
        }
    }
}
