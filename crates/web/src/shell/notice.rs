//! Messages above the place, and the line about what is kept.

use maud::{Markup, html};
use noseward_drawing::listed;
use noseward_link::Missing;
use noseward_words::{self as words, LinkHolds, LinkOpens, Text};

use super::marked::said;
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
            @let missing = listed(parts.missing().iter().map(u8::to_string));
            p class="notice" {
                (words::notice_parts(progress.have.into(), progress.of.into(), &missing))
            }
        }
    }
}

fn message(notice: &Notice, is_served: bool) -> Markup {
    let (alarming, words) = match notice {
        Notice::LinkCut(missing) => (
            true,
            said(if missing.is_empty() {
                words::notice_link_cut()
            } else {
                words::notice_link_cut_before(&listed(
                    missing.iter().copied().map(missing_words),
                ))
            }),
        ),
        Notice::LinkDamaged(damage) => (true, said(words::notice_link_damaged(damage))),
        Notice::FileFault(fault) => (true, said(words::notice_file_fault(fault))),
        Notice::Said { alarming, words } => (
            *alarming,
            html! { @for line in words.lines() { p class="notice__line" { (line) } } },
        ),
        Notice::KeptThis => (false, html! { (words::notice_kept_this()) }),
        Notice::KeepsNothing => (
            true,
            html! { (said(words::notice_keeps_nothing())) " " (copy_link_instead()) },
        ),
        Notice::NotKept => (
            true,
            html! {
                (said(words::notice_not_kept())) " " (copy_link_instead()) " "
                button type="button" class="button button--small" id="save-instead"
                    data-action="save" { (words::notice_save()) }
            },
        ),
        Notice::Deleted { left: 0 } => (false, said(words::notice_deleted())),
        Notice::Deleted { left } => (true, said(words::notice_left((*left).into()))),
        Notice::Opened => (false, html! { (words::notice_opened()) }),
        Notice::Started(name) => (false, html! { (words::notice_started(name)) }),
        Notice::Copied { with_notebook } => {
            let holds =
                if *with_notebook { LinkHolds::NotebookToo } else { LinkHolds::Rocket };
            let opens =
                if is_served { LinkOpens::Anywhere } else { LinkOpens::InThePage };
            (false, html! { (words::notice_copied(holds, opens)) })
        }
        Notice::CopyByHand(text) => (
            true,
            html! {
                label for="copy-by-hand" { (words::notice_copy_by_hand()) }
                textarea class="menu__text" id="copy-by-hand" readonly rows="3" { "\n" (text) }
            },
        ),
        Notice::Saved(name) => (false, said(words::notice_saved(name))),
    };
    html! {
        div class={ "notice" @if alarming { " notice--alarm" } } {
            div class="notice__words" { (words) }
            button type="button" class="button button--small" id="dismiss"
                data-action="dismiss" { (said(words::notice_close())) }
        }
    }
}

/// What a link has lost.
fn missing_words(missing: Missing) -> String {
    match missing {
        Missing::Sections(count) => words::notice_missing_sections(count.into()),
        Missing::FinSets(count) => words::notice_missing_fins(count.into()),
        Missing::Weights(count) => words::notice_missing_weights(count.into()),
        Missing::Swings => words::notice_missing_swings().into(),
    }
}

fn copy_link_instead() -> Markup {
    html! {
        button type="button" class="button button--small" id="copy-link-instead"
            data-action="copy-link" { (words::way_copy_link()) }
    }
}

/// What is kept in the place of the rocket that is shown, and what can be done about it.
fn kept_instead(keeping: &Keeping) -> Markup {
    let (words, buttons) = match keeping {
        Keeping::Here | Keeping::Blocked => return Markup::default(),
        Keeping::Other(kept) => {
            let words = if kept.design.name.is_empty() {
                words::notice_other_unnamed()
            } else {
                words::notice_other(&kept.design.name)
            };
            (words, ("back-to-mine", words::notice_show_kept()))
        }
        Keeping::Unreadable(_) => {
            (words::notice_unreadable(), ("save-kept", words::notice_save_kept()))
        }
        Keeping::Emptied => {
            let words = html! { (words::notice_emptied()) };
            return block(&words, None, words::notice_keep_rocket());
        }
    };
    block(&said(words), Some(buttons), words::notice_keep_instead())
}

fn block(words: &Markup, first: Option<(&str, Text)>, keep: Text) -> Markup {
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
            Keeping::Blocked => (said(words::notice_keeping_nothing())),
            Keeping::Here if state.refused => (said(words::notice_keeping_refused())),
            Keeping::Here => (words::notice_keeping()),
            Keeping::Other(_) | Keeping::Unreadable(_) | Keeping::Emptied => {
                (words::notice_keeping_other())
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
                (said(words::notice_lost())) " "
                @if !state.desk.put_away.is_empty() { (words::notice_lost_before()) " " }
                button type="button" class="button button--small" id="nb-save-instead"
                    data-action="nb-save" { (words::notice_save_notebook()) }
            }
        }
    }
}
