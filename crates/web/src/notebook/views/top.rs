//! Whose notebook it is, how it is set up, and where the rocket on the page stands.

use maud::{Markup, html};
use noseward_lesson::{Colour, Level, MOST_GROUP_NUMBER, Support};

use super::{button, choice};
use crate::app::{Keeping, State, Waits};
use crate::notebook::fields::Note;
use crate::views::pressed;

pub(super) fn form(state: &State) -> Markup {
    let desk = &state.desk;
    let notebook = &desk.notebook;
    let group = notebook.group;
    let colours: Vec<_> = Colour::ALL
        .into_iter()
        .enumerate()
        .map(|(i, c)| (i.to_string(), c.label().to_owned(), c == group.colour))
        .collect();
    let numbers: Vec<_> = (1..=MOST_GROUP_NUMBER)
        .map(|n| (n.to_string(), n.to_string(), n == group.number()))
        .collect();
    html! {
        div class="nb__row" {
            span class="nb__choices" role="group" aria-label="This group’s label" {
                (choice(Note::Colour, &html! { "Group" }, &colours))
                span class="visually-hidden" { label for=(Note::Number.name()) { "Number of the group" } }
                select class="field__select" id=(Note::Number.name()) data-note=(Note::Number.name()) {
                    @for (value, words, chosen) in &numbers {
                        option value=(value) selected[*chosen] { (words) }
                    }
                }
            }
            (others(state))
            (button("nb-new-group", "", true, &html! { "Another group on this computer" }))
        }
        p class="nb__hint" { "Write about the rocket, not about people: no names." }
        details class="nb__settings" id="nb-settings" {
            summary { "For whoever leads: detail, help, rules" }
            div class="nb__row" {
                @let levels: Vec<_> = Level::ALL.into_iter().enumerate()
                    .map(|(i, l)| (i.to_string(), l.label().to_owned(), l == notebook.level)).collect();
                (choice(Note::Level, &html! { "Detail" }, &levels))
                @let supports: Vec<_> = Support::ALL.into_iter().enumerate()
                    .map(|(i, s)| (i.to_string(), s.label().to_owned(), s == notebook.support)).collect();
                (choice(Note::Support, &html! { "Help with the conclusion" }, &supports))
                button type="button" class="button button--small" id="nb-allow" data-action="nb-allow"
                    aria-pressed=(pressed(notebook.allows_two_changes)) { "Allow two changes at once" }
            }
            p class="nb__hint" {
                "Changing these loses nothing. Ages are a guide; the readings are the same at every level."
            }
            div class="nb__row" {
                @if desk.look.asks_to_delete {
                    span { "Delete the notebook of " (group) " from this computer? It cannot be brought back." }
                    (button("nb-delete-now", "", true, &html! { "Delete it" }))
                    (button("nb-keep-it", "", true, &html! { "Keep it" }))
                } @else {
                    (button("nb-ask-delete", "", true, &html! { "Delete this notebook" }))
                }
            }
        }
    }
}

/// The notebooks of other groups on this computer.
fn others(state: &State) -> Markup {
    let desk = &state.desk;
    let others: Vec<_> = desk
        .slots
        .iter()
        .filter(|slot| slot.number != desk.slot)
        .map(|slot| {
            let label =
                slot.group.map_or("one that this page cannot read".into(), |group| {
                    format!("{group}: {}", slot.holds)
                });
            (slot.number.to_string(), label, false)
        })
        .collect();
    if others.is_empty() {
        return html! {};
    }
    let mut entries =
        vec![(desk.slot.to_string(), format!("{} (open)", desk.notebook.group), true)];
    entries.extend(others);
    choice(Note::Slot, &html! { "Notebooks here" }, &entries)
}

/// The message at the top.
pub(super) fn said(state: &State) -> Markup {
    let look = &state.desk.look;
    html! {
        (not_kept(state))
        @if let Some(said) = &look.said {
            div class=(if said.alarming { "notice notice--alarm" } else { "notice" }) {
                @for line in said.words.lines() { p class="notice__line" { (line) } }
            }
        }
        @let parts = look.parts.progress();
        @if parts.of > 0 {
            @let missing: Vec<String> = look.parts.missing().iter().map(u8::to_string).collect();
            p class="notice" {
                (parts.have) " of " (parts.of) " parts are here. Still missing: "
                (missing.join(", ")) ". Open them in the same way, in any order."
            }
        }
        @if let Some(text) = &look.by_hand {
            label for="nb-by-hand" { "The text to copy:" }
            textarea class="menu__text" id="nb-by-hand" readonly rows="4" { (super::in_area(text)) }
            (button("nb-dismiss", "", true, &html! { "Done" }))
        }
    }
}

/// A warning for as long as what was written is nowhere but in this tab.
fn not_kept(state: &State) -> Markup {
    let is_lost = state.refused || state.keeping == Keeping::Blocked;
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

/// What the rocket on the page has to do with the trials, and what to do next.
pub(super) fn page(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let next = notebook.next_number();
    html! {
        @match (notebook.in_hand(), state.waits()) {
            (None, _) if notebook.trials().is_empty() => {
                p {
                    "Describe your first rocket above. Then begin its trial: this is your "
                    strong { "baseline" } ". You measure, predict, swing, change " strong { "one thing" }
                    ", and compare."
                }
                (button("nb-begin", "", false, &html! { "Begin the baseline with this rocket" }))
            }
            (Some(trial), Some(Waits::ForTrial)) => {
                p {
                    "You have changed the rocket since trial " (trial.id()) ". Begin a "
                    "trial with it, or bring the rocket of trial " (trial.id()) " back."
                }
                (button("nb-begin", "", false, &html! { "Begin trial " (next) " with this rocket" })) " "
                button type="button" class="button" id="nb-bring-back" data-action="nb-open"
                    data-target=(trial.id()) { "Bring trial " (trial.id()) " back" }
            }
            (Some(trial), waits) => {
                p {
                    "This is " strong { "trial " (trial.id()) } ". "
                    @if waits.is_some() { "It changes with the rocket until you lock a prediction." }
                    @else if trial.is_complete() { "It is complete: change one thing above, then begin the next trial." }
                    @else { "Its prediction is locked: whatever you change above is for the next trial." }
                }
                @if trial.is_complete() {
                    (button("nb-begin", "", false, &html! { "Begin trial " (next) " with this rocket" }))
                }
            }
            (None, _) => {
                p { "The rocket above belongs to no trial yet." }
                (button("nb-begin", "", false, &html! { "Begin trial " (next) " with this rocket" }))
            }
        }
    }
}
