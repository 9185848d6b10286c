//! What stands in the place of the part that loads later, until it is here.

use maud::{Markup, html};

use crate::app::{Code, State};

pub(crate) fn state(state: &State) -> Markup {
    html! {
        @match state.desk.code {
            Code::NotAsked | Code::Loading => p { "Getting it out…" },
            Code::Failed => {
                p class="notice notice--alarm" role="alert" {
                    "This part of the page could not be loaded. What is kept has not changed. See that \
                     the network is there. "
                    button type="button" class="button button--small"
                        data-action="nb-again" { "Try again" }
                }
            },
            Code::Here => {},
        }
    }
}
