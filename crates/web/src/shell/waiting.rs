//! What stands in the place of the part that loads later, until it is here.

use maud::{Markup, html};
use noseward_words as words;

use super::marked::marked;
use crate::app::{Code, State};

pub(crate) fn state(state: &State) -> Markup {
    html! {
        @match state.desk.code {
            Code::NotAsked | Code::Loading => p { (words::waiting_loading()) },
            Code::Failed => {
                p class="notice notice--alarm" role="alert" {
                    (marked(&words::waiting_failed(), &|_, run| html! {
                        button type="button" class="button button--small"
                            data-action="nb-again" { (run) }
                    }))
                }
            },
            Code::Here => {},
        }
    }
}
