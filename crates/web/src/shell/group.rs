//! Whose notebook is open: the group's label, and the other notebooks on this computer.

use maud::{Markup, html};
use noseward_lesson::{Colour, MOST_GROUP_NUMBER};
use noseward_words as words;

use super::marked::said;
use crate::app::State;
use crate::notebook::NotebookField;
use crate::places::form::{button, choice};
use crate::places::labels;

/// The label as a menu.
pub(crate) fn menu(state: &State) -> Markup {
    let group = state.desk.notebook.group;
    let colours: Vec<_> = Colour::ALL
        .into_iter()
        .enumerate()
        .map(|(i, c)| (i.to_string(), labels::colour(c).into(), c == group.colour))
        .collect();
    html! {
        details class="menu menu--group" id="group-menu" {
            summary { (said(words::group_menu(&labels::group(group)))) }
            div class="menu__panel" {
                div class="nb__choices" role="group" aria-label=(words::group_label()) {
                    (choice(NotebookField::Colour, &html! { (words::group_colour()) }, &colours))
                    span class="visually-hidden" { label for=(NotebookField::Number.name()) { (words::group_number()) } }
                    select class="field__select" id=(NotebookField::Number.name()) data-note=(NotebookField::Number.name()) {
                        @for n in 1..=MOST_GROUP_NUMBER {
                            option value=(n) selected[n == group.number()] { (words::Number::from(n).to_string()) }
                        }
                    }
                }
                p class="nb__hint" { (words::group_hint()) }
                (others(state))
                p { (button("nb-new-group", "", true, &html! { (words::group_another()) })) }
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
            let label = slot.group.map_or(words::group_unreadable().into(), |group| {
                words::group_other(&labels::group(group), &slot.holds)
            });
            (slot.number.to_string(), label, false)
        })
        .collect();
    if others.is_empty() {
        return html! {};
    }
    let open = words::group_open(&labels::group(desk.notebook.group));
    let mut entries = vec![(desk.slot.to_string(), open, true)];
    entries.extend(others);
    choice(NotebookField::Slot, &html! { (words::group_notebooks()) }, &entries)
}
