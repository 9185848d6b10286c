//! For whoever leads: how the lesson is set up, and what this computer allows. What IT asks,
//! and the lesson on paper, stand in `index.html`, since they need no module.

pub(crate) mod computer;
mod language;
mod message;
mod settings;
mod update;

pub(crate) use message::LeadMsg;
pub(crate) use update::update;

use maud::html;
use noseward_words as words;

use super::form::more;
use crate::app::{Place, State};
use crate::shell::{Region, delete, link_to, region};

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    vec![
        region("lead-settings", settings::settings(state)),
        region("lead-language", language::language(state)),
        region(
            "lead-set-up",
            html! { p {
                (link_to(Place::SetUp, "lead-to-set-up", &html! { (words::places_set_up()) })) " "
                (words::lead_set_up())
            } },
        ),
        region(
            "lead-class",
            html! { p {
                (link_to(Place::Class, "lead-to-class", &html! { (words::places_class()) })) " "
                (words::lead_class())
            } },
        ),
        region(
            "lead-paper",
            html! { p {
                (link_to(Place::Paper, "lead-to-paper", &html! { (words::places_paper()) })) " "
                (words::lead_paper())
            } },
        ),
        region(
            "lead-words",
            html! { p {
                (link_to(Place::Words, "lead-to-words", &html! { (words::places_words()) })) " "
                (words::lead_words())
            } },
        ),
        region(
            "lead-computer",
            html! {
                (more(
                    "computer",
                    &html! { (words::computer_check()) },
                    &html! { div id="check" { (computer::computer(state)) } },
                ))
            },
        ),
        region("delete", delete::delete(state.asks_to_delete)),
    ]
}
