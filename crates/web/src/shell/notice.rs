//! Messages above the place, and the line about what is kept.

use maud::{Markup, html};

use crate::app::{Keeping, Notice, State};

/// A message that stays until somebody closes it, and what is kept instead of this rocket.
pub(crate) fn notice(state: &State) -> Markup {
    html! {
        @if let Some(notice) = state.notice.as_ref().filter(|notice| !notice.is_passing()) {
            (message(notice, state.address.is_some()))
        }
        (kept_instead(&state.keeping))
        (not_kept(state))
        (parts(state))
    }
}

/// A message that only says what was done: it goes by itself.
pub(crate) fn passing(state: &State) -> Markup {
    html! {
        @if let Some(notice) = state.notice.as_ref().filter(|notice| notice.is_passing()) {
            (message(notice, state.address.is_some()))
        }
    }
}

/// Parts of a notebook that are here, as long as others are missing.
fn parts(state: &State) -> Markup {
    let parts = &state.desk.look.parts;
    let progress = parts.progress();
    html! {
        @if progress.of > 0 {
            @let missing: Vec<String> = parts.missing().iter().map(u8::to_string).collect();
            p class="notice" {
                (progress.have) " of " (progress.of) " parts are here. Still missing: "
                (missing.join(", ")) ". Open them in the same way, in any order."
            }
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
                strong { "The link could not be opened. " } (damage)
                " What is shown is not from the link."
            },
        ),
        Notice::FileFault(fault) => {
            (true, html! { strong { "That could not be opened. " } (fault) })
        }
        Notice::Said { alarming, words } => (
            *alarming,
            html! { @for line in words.lines() { p class="notice__line" { (line) } } },
        ),
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
                "Your rocket and your notebook are gone when this page is closed. Copy the \
                 link, or save a file. "
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
        Notice::Copied { with_notebook } => {
            let what =
                if *with_notebook { "the rocket and the notebook" } else { "the rocket" };
            let how = if is_served {
                "paste it anywhere"
            } else {
                "on another computer paste it where a link is opened"
            };
            (false, html! { "Link copied. It holds " (what) "; " (how) "." })
        }
        Notice::CopyByHand(text) => (
            true,
            html! {
                label for="copy-by-hand" {
                    "Copying is blocked here. Select this and press Ctrl and C:"
                }
                textarea class="menu__text" id="copy-by-hand" readonly rows="3" { "\n" (text) }
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
pub(crate) fn keeping(state: &State) -> Markup {
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

/// A warning for as long as what was written is nowhere but in this tab.
fn not_kept(state: &State) -> Markup {
    // The message about the rocket has the same file.
    let is_told = state.notice == Some(Notice::NotKept);
    let is_lost = (state.refused && !is_told) || state.keeping == Keeping::Blocked;
    html! {
        @if is_lost && (state.desk.unsaved || !state.desk.put_away.is_empty()) {
            p class="notice notice--alarm" {
                strong { "What you wrote last is not kept on this computer. " }
                "The browser refuses. Save the notebook as a file before you close the page; \
                 open the file here later. "
                @if !state.desk.put_away.is_empty() {
                    "Do the same with each notebook that you had open before. "
                }
                button type="button" class="button button--small" id="nb-save-instead"
                    data-action="nb-save" { "Save the notebook as a file" }
            }
        }
    }
}
