//! What stands in the place of a part that loads later, until it is here.

use maud::{Markup, html};

use crate::app::{Code, State};
use crate::part::Part;

pub(crate) fn state(state: &State) -> Markup {
    let parts = [Some(Part::Notebook), state.place.part()].into_iter().flatten();
    let codes: Vec<Code> = parts.map(|part| state.parts.of(part)).collect();
    html! {
        @if codes.contains(&Code::Failed) {
            p class="notice notice--alarm" role="alert" {
                "This part of the page could not be loaded. What is kept has not changed. See that \
                 the network is there. "
                button type="button" class="button button--small"
                    data-action="nb-again" { "Try again" }
            }
        } @else if codes.iter().any(|code| *code != Code::Here) {
            p { "Getting it out…" }
        }
    }
}
