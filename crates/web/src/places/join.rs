//! Which group of a class somebody is: the page that a link for a whole class opens.

use maud::html;
use noseward_words as words;

use super::form::button;
use super::labels;
use crate::app::{Place, State};
use crate::notebook::joins;
use crate::shell::{Region, link_to, region};

/// Somebody is the group with this place in the list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct JoinMsg(pub(crate) usize);

impl JoinMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        (action == "join").then(|| target.parse().ok().map(Self)).flatten()
    }
}

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(joining) = &state.desk.look.joining else {
        return vec![region(
            "join",
            html! {
                p class="place__lead" { (words::join_nothing()) }
                p { (link_to(Place::Rocket, "join-to-rocket", &html! { (words::places_rocket()) })) }
            },
        )];
    };
    let groups = joins(state, &joining.set_up);
    vec![region(
        "join",
        html! {
            p class="place__lead" { (words::join_lead()) }
            ul class="join" {
                @for ((group, held), i) in groups.into_iter().zip(0_usize..) {
                    li class={ "join__group label--" (noseward_lesson::key(&group.colour)) } {
                        (button("join", &i.to_string(), false, &html! { (labels::group(group)) }))
                        @if let Some(held) = held { " " span class="nb__hint" { (words::join_here(&held)) } }
                    }
                }
            }
        },
    )]
}
