//! Messages above the steps, and the line about what is kept.

use maud::{Markup, html};

use crate::app::{Notice, State};

/// The one message, with what can be done about it.
pub(super) fn notice(state: &State) -> Markup {
    html! {
        @if let Some(notice) = &state.notice { (message(notice)) }
        @if let Some(mine) = &state.kept { (visitor(&mine.name)) }
    }
}

fn message(notice: &Notice) -> Markup {
    let (alarming, words) = match notice {
        Notice::LinkCut(missing) => (
            true,
            html! {
                strong { "This link was cut short. " }
                @if missing.is_empty() {
                    "Its end is missing. Check every number, or ask for the link again."
                } @else {
                    "Missing: "
                    @for (i, what) in missing.iter().enumerate() {
                        @if i > 0 { ", " }
                        (what)
                    }
                    ". Check every number, or ask for the link again."
                }
            },
        ),
        Notice::LinkDamaged(damage) => (
            true,
            html! {
                strong { "The link could not be opened. " } (damage)
                " What is shown is not from the link."
            },
        ),
        Notice::FileFault(fault) => {
            (true, html! { strong { "That could not be opened. " } (fault) })
        }
        Notice::KeptThis => (
            false,
            html! { "This rocket is kept on this computer now. Undo brings yours back." },
        ),
        Notice::Opened => {
            (false, html! { "Opened. Undo brings the rocket before it back." })
        }
        Notice::Started(name) => {
            (false, html! { "This is " (name) ". Undo brings your rocket back." })
        }
        Notice::Copied => (
            false,
            html! { "Link copied. It holds the whole rocket; paste it anywhere." },
        ),
        Notice::CopyByHand(link) => (
            true,
            html! {
                label for="copy-by-hand" {
                    "Copying is blocked here. Select this link and press Ctrl and C:"
                }
                input class="notice__link" id="copy-by-hand" type="text" readonly
                    value=(link);
            },
        ),
        Notice::Saved(name) => (
            false,
            html! {
                "Saved as " strong { (name) } ", if this browser allows downloads. If no \
                 file appears, copy the link instead."
            },
        ),
    };
    html! {
        div class={ "notice" @if alarming { " notice--alarm" } } {
            div class="notice__words" { (words) }
            button type="button" class="button button--small" id="dismiss"
                data-action="dismiss" { "Close" span class="visually-hidden" { " message" } }
        }
    }
}

fn visitor(mine: &str) -> Markup {
    let mine = if mine.is_empty() { "without a name" } else { mine };
    html! {
        div class="notice" {
            div class="notice__words" {
                "This rocket came with a link. Your own rocket, " strong { (mine) }
                ", is still kept on this computer. Changes to this one are not kept: the \
                 address bar holds them."
            }
            div class="notice__buttons" {
                button type="button" class="button button--small" id="back-to-mine"
                    data-action="back-to-mine" { "Back to mine" }
                button type="button" class="button button--small" id="keep-this"
                    data-action="keep-this" { "Keep this one instead" }
            }
        }
    }
}

/// An honest line about what is kept where.
pub(super) fn keeping(state: &State) -> Markup {
    html! {
        @if !state.can_keep {
            strong { "This browser keeps nothing. " }
            "The link in the address bar holds the whole rocket: copy it before you close \
             the page."
        } @else if state.kept.is_some() {
            "The rocket from the link is not kept on this computer. The address bar holds it."
        } @else {
            "Kept in this browser as you type, until you sign out or its data are cleared. \
             To be sure, copy the link or save a file. Nothing is sent anywhere."
        }
    }
}
