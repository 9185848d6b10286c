//! Hand in: ways to keep the rocket and the notebook, and to give them away.

mod columns;
mod message;
pub(crate) mod out;
mod plain_text;
pub(crate) mod share;
mod update;

pub(crate) use columns::called;
pub(crate) use message::HandInMsg;
pub(crate) use update::{copy_link, show_symbols, update};

use maud::html;
use noseward_words as words;

use crate::app::State;
use crate::shell::{Region, region};

/// The place: the notebook's ways out, then those of the rocket alone.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    vec![
        region(
            "hand-in-out",
            html! {
                @if state.desk.notebook.is_blank() {
                    p class="place__lead" { (words::hand_in_nothing()) }
                } @else { (out::out(state)) }
            },
        ),
        region(
            "hand-in-rocket",
            html! {
                section class="card card--place" aria-labelledby="share-title" {
                    h3 id="share-title" { (words::share_title()) }
                    div id="share" { (share::panel(state)) }
                }
            },
        ),
    ]
}
