//! The ways out of this computer that need nothing but eyes, a pencil or a phone.

use maud::{Markup, PreEscaped, html};
use noseward_link as link;
use noseward_words as words;

use crate::app::State;
use crate::places::form::told;

/// Link, code, symbol, file, paper.
pub(crate) fn panel(state: &State) -> Markup {
    let record = state.record();
    let code = link::code(&record);
    let code = code.as_str();
    let symbol = noseward_drawing::qr(state.address.as_deref(), code).map(PreEscaped);
    let link = state.address.as_ref().map(|at| format!("{at}#{}", link::hash(&record)));
    html! {
        div class="share__buttons" {
            button type="button" class="button" id="print-too" data-action="print" { (words::share_print()) }
            button type="button" class="button" id="save-too" data-action="save-rocket" {
                (words::share_save())
            }
        }
        p class="menu__title" { (words::share_code_title()) }
        (code_rows(code, &words::share_code()))
        p class="share__hint" { (words::share_code_hint()) }
        @if let Some(symbol) = symbol {
            p class="menu__title" {
                @if link.is_some() { (words::share_point_at_link()) }
                @else { (words::share_point_at_code()) }
            }
            div class="share__symbol" { (symbol) }
        }
        @if let Some(link) = &link {
            p class="menu__title" { label for="share-link" { (words::share_link()) } }
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
            @let again = if is_served { words::share_open_again() } else { words::share_open_again_typed() };
            p { (told(again)) }
            (code_rows(code, &words::share_code()))
            p { (words::share_no_permission()) }
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
