//! Messages above the steps, and the line about what is kept.

use maud::{Markup, html};

use crate::app::{Keeping, Notice, State};

/// The one message, with what can be done about it.
pub(super) fn notice(state: &State) -> Markup {
    html! {
        @if let Some(notice) = &state.notice { (message(notice, state.address.is_some())) }
        (kept_instead(&state.keeping))
    }
}

/// Why a file or a text could not be opened, beside the place where it was typed.
pub(super) fn open_fault(state: &State) -> Markup {
    html! {
        @if let Some(Notice::FileFault(fault)) = &state.notice {
            span class="field__words" { (fault) }
        }
    }
}

fn message(notice: &Notice, is_served: bool) -> Markup {
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
                        (what.label())
                    }
                    ". Check every number, or ask for the link again."
                }
            },
        ),
        Notice::LinkDamaged(damage) => (
            true,
            html! {
                strong { "The link could not be opened. " } (damage.sentence())
                " What is shown is not from the link."
            },
        ),
        Notice::FileFault(fault) => {
            (true, html! { strong { "That could not be opened. " } (fault) })
        }
        Notice::NoRoom(full) => (true, html! { strong { "No new trial: " } (full) "." }),
        Notice::KeptThis => (
            false,
            html! {
                "This rocket is kept on this computer now. If another was kept, undo \
                 brings it back."
            },
        ),
        Notice::KeepsNothing => (
            true,
            html! {
                strong { "This browser keeps nothing. " }
                "Your rocket is gone when this page is closed. Copy its link, or write \
                 down its code: both are under Share. "
                button type="button" class="button button--small" id="copy-link-instead"
                    data-action="copy-link" { "Copy link" }
            },
        ),
        Notice::NotKept => (
            true,
            html! {
                strong { "The last changes are not kept. " }
                "The browser refused, perhaps because its room for this page is full. What was \
                 kept before is still there, and the page tries again by itself. Until this \
                 message goes, copy the link or save a file. "
                button type="button" class="button button--small" id="copy-link-instead"
                    data-action="copy-link" { "Copy link" } " "
                button type="button" class="button button--small" id="save-instead"
                    data-action="save" { "Save" }
            },
        ),
        Notice::Deleted { left: 0 } => (
            false,
            html! {
                strong { "Everything of this page was deleted from this computer. " }
                "We checked: nothing is left. This page cannot delete files you saved, or the \
                 browser’s history. What you type from now on is kept again."
            },
        ),
        Notice::Deleted { left } => (
            true,
            html! {
                strong { "Not everything could be deleted: " (left) " entries are left. " }
                "Delete the data of this site in the browser’s own settings."
            },
        ),
        Notice::Opened => (false, html! { "Opened. Undo brings the last rocket back." }),
        Notice::Started(name) => {
            (false, html! { (name) " is here. Undo brings the last rocket back." })
        }
        Notice::Copied if !is_served => (
            false,
            html! {
                "Copied: the whole rocket, as text. On another computer paste it under Open."
            },
        ),
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

/// What is kept in the place of the rocket that is shown, and what can be done about it.
fn kept_instead(keeping: &Keeping) -> Markup {
    let (words, buttons) = match keeping {
        Keeping::Here | Keeping::Blocked => return Markup::default(),
        Keeping::Other(kept) => {
            let name = if kept.design.name.is_empty() {
                "without a name"
            } else {
                &kept.design.name
            };
            let words = html! {
                "Another rocket, " strong { (name) } ", is kept on this computer, from \
                 before or from another tab. Changes to this one are not kept: the address \
                 bar holds them."
            };
            (words, ("back-to-mine", "Show the kept one"))
        }
        Keeping::Unreadable(_) => {
            let words = html! {
                strong { "What is kept on this computer cannot be read here. " }
                "It may be from a newer version of this page, and is left as it is. \
                 Changes to this rocket are not kept: the address bar holds them."
            };
            (words, ("save-kept", "Save what is kept as a file"))
        }
        Keeping::Emptied => {
            let words = html! {
                "Everything kept on this computer was deleted in another tab. Changes \
                 here are not kept: the address bar holds them."
            };
            return block(&words, None, "Keep this rocket");
        }
    };
    block(&words, Some(buttons), "Keep this one instead")
}

fn block(words: &Markup, first: Option<(&str, &str)>, keep: &str) -> Markup {
    html! {
        div class="notice" {
            div class="notice__words" { (words) }
            div class="notice__buttons" {
                @if let Some((action, label)) = first {
                    button type="button" class="button button--small" id=(action)
                        data-action=(action) { (label) }
                }
                button type="button" class="button button--small" id="keep-this"
                    data-action="keep-this" { (keep) }
            }
        }
    }
}

/// An honest line about what is kept where.
pub(super) fn keeping(state: &State) -> Markup {
    html! {
        @match state.keeping {
            Keeping::Blocked => {
                strong { "This browser keeps nothing. " }
                "The link in the address bar holds the whole rocket: copy it before you \
                 close the page."
            }
            Keeping::Here if state.refused => {
                strong { "Your last changes are not kept: the browser refused. " }
                "The page tries again at your next change. The link in the address bar holds \
                 the whole rocket: copy it before you close the page."
            }
            Keeping::Here => {
                "Kept in this browser as you type, until you sign out or its data are \
                 cleared. To be sure, copy the link or save a file. Nothing is sent anywhere."
            }
            Keeping::Other(_) | Keeping::Unreadable(_) | Keeping::Emptied => {
                "This rocket is not kept on this computer. The address bar holds it."
            }
        }
    }
}
