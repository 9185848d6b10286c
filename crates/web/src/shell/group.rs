//! Whose notebook is open: the group's label, and the other notebooks on this computer.

use maud::{Markup, html};
use noseward_lesson::{Colour, MOST_GROUP_NUMBER};

use crate::app::State;
use crate::notebook::NotebookField;
use crate::places::form::{button, choice};

/// The label as a menu.
pub(crate) fn menu(state: &State) -> Markup {
    let group = state.desk.notebook.group;
    let colours: Vec<_> = Colour::ALL
        .into_iter()
        .enumerate()
        .map(|(i, c)| (i.to_string(), c.label().to_owned(), c == group.colour))
        .collect();
    html! {
        details class="menu menu--group" id="group-menu" {
            summary { strong { (group) } span class="visually-hidden" { ": this group’s label" } }
            div class="menu__panel" {
                div class="nb__choices" role="group" aria-label="This group’s label" {
                    (choice(NotebookField::Colour, &html! { "Group" }, &colours))
                    span class="visually-hidden" { label for=(NotebookField::Number.name()) { "Number of the group" } }
                    select class="field__select" id=(NotebookField::Number.name()) data-note=(NotebookField::Number.name()) {
                        @for n in 1..=MOST_GROUP_NUMBER {
                            option value=(n) selected[n == group.number()] { (n) }
                        }
                    }
                }
                p class="nb__hint" { "Your group’s label, in place of names. Change it here." }
                (others(state))
                p { (button("nb-new-group", "", true, &html! { "Another group on this computer" })) }
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
    choice(NotebookField::Slot, &html! { "Notebooks here" }, &entries)
}
