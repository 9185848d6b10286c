//! Rocket: what a person types of it, a card for each piece.

mod field;
mod measurements;

use maud::{Markup, html};

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
        div class="begin" role="group" aria-label="Begin with" {
            span class="begin__words" { "Begin with" }
            details class="menu" id="begin-bottle" {
                summary class="button button--small" { "our bottle" }
                div class="menu__panel" { (menus::bottles()) }
            }
            details class="menu" id="begin-example" {
                summary class="button button--small" { "an example" }
                div class="menu__panel" { (menus::examples()) }
            }
            details class="menu" id="begin-open" {
                summary class="button button--small" { "a link, code or file" }
                div class="menu__panel" { (open(state)) }
            }
        }
    }
}

/// Opening what somebody has.
fn open(state: &State) -> Markup {
    html! {
        p class="menu__title" { label for="open-file" { "A file that was saved here" } }
        input class="menu__file" id="open-file" type="file"
            accept=".json,.txt,.csv,.tsv,application/json,text/plain,text/csv";
        p class="menu__title" {
            label for="open-text" { "Or paste a link or the text of a file, or type a code" }
        }
        textarea class="menu__text" id="open-text" rows="3" spellcheck="false" data-own-text="" {}
        p class="menu__fault" id="open-fault" role="alert" {
            @if let Some(Notice::FileFault(fault)) = &state.notice {
                span class="field__words" { (fault) }
            }
        }
        button class="button button--main" type="button" id="open-pasted"
            data-action="open-pasted" { "Open this text" }
    }
}
