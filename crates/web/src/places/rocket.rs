//! Rocket: what a person types of it, a card for each piece.

mod field;
mod measurements;

use maud::{Markup, html};
use noseward_words as words;

use crate::app::{Notice, State};
use crate::shell::{Region, menus, notice, region};

pub(crate) use measurements::{is_bottle, is_shown};

/// The place: ways to begin, the cards, and what is kept.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let mut regions = vec![region("rocket-begin", begin(state))];
    regions.extend(measurements::steps(state));
    regions.push(region(
        "keeping",
        html! { p class="keeping" { (notice::keeping(state)) } },
    ));
    regions
}

/// Three ways in: a bottle like one's own, an example, a link or code.
fn begin(state: &State) -> Markup {
    html! {
        div class="begin" role="group" aria-label=(words::rocket_begin()) {
            span class="begin__words" { (words::rocket_begin()) }
            details class="menu" id="begin-bottle" {
                summary class="button button--small" { (words::rocket_begin_bottle()) }
                div class="menu__panel" { (menus::bottles()) }
            }
            details class="menu" id="begin-example" {
                summary class="button button--small" { (words::rocket_begin_example()) }
                div class="menu__panel" { (menus::examples()) }
            }
            details class="menu" id="begin-open" {
                summary class="button button--small" { (words::rocket_begin_open()) }
                div class="menu__panel" { (open(state)) }
            }
        }
    }
}

/// Opening what somebody has.
fn open(state: &State) -> Markup {
    html! {
        p class="menu__title" { label for="open-file" { (words::rocket_open_file()) } }
        input class="menu__file" id="open-file" type="file"
            accept=".json,.txt,.csv,.tsv,application/json,text/plain,text/csv";
        p class="menu__title" {
            label for="open-text" { (words::rocket_open_text()) }
        }
        textarea class="menu__text" id="open-text" rows="3" spellcheck="false" data-own-text="" {}
        p class="menu__fault" id="open-fault" role="alert" {
            @if let Some(Notice::FileFault(fault)) = &state.notice {
                span class="field__words" { (fault) }
            }
        }
        button class="button button--main" type="button" id="open-pasted"
            data-action="open-pasted" { (words::rocket_open_pasted()) }
    }
}
