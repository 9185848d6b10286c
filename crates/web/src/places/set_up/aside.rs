//! What stands beside the form all the time: the link, its code and its symbol.

use maud::{Markup, PreEscaped, html};
use noseward_link::{SET_UP_HASH_CHARS, set_up_code};
use noseward_words as words;

use super::model::Form;
use super::{address_of, for_all};
use crate::app::{Place, State};
use crate::places::form::{more, plain_button};
use crate::places::hand_in::share::code_rows;
use crate::shell::link_to;

/// The link that hands out labels, in every spelling, and the way to paper.
pub(super) fn aside(state: &State, form: &Form) -> Markup {
    let link = for_all(form);
    html! {
        aside class="set-up__aside card card--place" aria-labelledby="set-up-link-title" {
            h3 id="set-up-link-title" { (words::set_up_link()) }
            @match address_of(state, &link) {
                None => p class="field__words" role="status" { (words::set_up_too_long(SET_UP_HASH_CHARS.into())) },
                Some(address) => {
                    @let code = set_up_code(&link);
                    input class="notice__link" id="set-up-link" type="text" readonly
                        aria-labelledby="set-up-link-title" value=(address);
                    div class="share__buttons" {
                        button type="button" class="button button--main" id="su-copy" data-action="su-copy" { (words::set_up_copy()) }
                        (plain_button("su-save", false, words::set_up_save()))
                        (link_to(Place::Paper, "set-up-to-paper", &html! { (words::set_up_to_paper()) }))
                    }
                    p class="nb__hint" { (words::set_up_link_is()) }
                    @if let Some(symbol) = noseward_drawing::qr(state.address.as_deref(), &code) {
                        div class="share__symbol" { (PreEscaped(symbol)) }
                    }
                    (more("set-up-code", &html! { (words::set_up_code()) }, &code_rows(&code, words::set_up_code().as_str())))
                },
            }
        }
    }
}
