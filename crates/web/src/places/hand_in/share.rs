//! The ways out of this computer that need nothing but eyes, a pencil or a phone.

use maud::{Markup, PreEscaped, html};
use noseward_link as link;

use crate::app::State;

/// Link, code, symbol, file, paper.
pub(crate) fn panel(state: &State) -> Markup {
    let record = state.record();
    let code = link::code(&record);
    let code = code.as_str();
    let symbol = noseward_drawing::qr(state.address.as_deref(), code).map(PreEscaped);
    let link = state.address.as_ref().map(|at| format!("{at}#{}", link::hash(&record)));
    html! {
        div class="share__buttons" {
            button type="button" class="button" id="print-too" data-action="print" { "Print the rocket" }
            button type="button" class="button" id="save-too" data-action="save-rocket" {
                "Save the rocket as a file"
            }
        }
        p class="menu__title" { "A code to write down, and to type where a link is opened" }
        (code_rows(code, "The code"))
        p class="share__hint" {
            "Capital letters or small, spaces or none: all the same; leave out the numbers \
             of the rows. The last character of each row finds slips."
        }
        @if let Some(symbol) = symbol {
            p class="menu__title" {
                @if link.is_some() { "Or point a phone or tablet at this" }
                @else { "Or read the code with a phone" }
            }
            div class="share__symbol" { (symbol) }
        }
        @if let Some(link) = &link {
            p class="menu__title" { label for="share-link" { "The link" } }
            input class="notice__link" id="share-link" type="text" readonly
                value=(link);
        }
    }
}

/// On paper: the symbol with the code beside it.
pub(crate) fn handout(state: &State) -> Markup {
    let code = link::code(&state.record());
    let code = code.as_str();
    let symbol = noseward_drawing::qr(state.address.as_deref(), code).map(PreEscaped);
    let is_served = state.address.is_some();
    html! {
        @if let Some(symbol) = symbol { (symbol) }
        div {
            p {
                strong { "To open this rocket again: " }
                @if is_served {
                    "point a phone at the symbol, or open Noseward and type this code \
                     under “a link, code or file”."
                } @else {
                    "open Noseward and type this code under “a link, code or file”."
                }
            }
            (code_rows(code, "The code"))
            p { "A good separation is not permission to swing or launch." }
        }
    }
}

/// A code as it is written down, row by row.
pub(crate) fn code_rows(code: &str, name: &str) -> Markup {
    html! {
        div class="share__code" tabindex="0" aria-label=(name) role="group" {
            ol { @for row in code.lines() { li { (row) } } }
        }
    }
}
