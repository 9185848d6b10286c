//! What the menu of new rockets offers.

use maud::{Markup, html};
use noseward_stability::Example;
use noseward_words::{self as words, Number, Text};

use crate::app::{Start, starts};

/// Every start of one kind, with its place among all.
fn of_kind(is_wanted: fn(&Start) -> bool) -> Vec<(usize, Start)> {
    starts().into_iter().enumerate().filter(|(_, start)| is_wanted(start)).collect()
}

/// The examples.
pub(crate) fn examples() -> Markup {
    group(words::menus_examples(), &of_kind(|start| matches!(start, Start::Example(_))))
}

/// The empty bottles.
pub(crate) fn bottles() -> Markup {
    let bottles = of_kind(|start| matches!(start, Start::Bottle(_)));
    group(words::menus_bottles(), &bottles)
}

fn group(title: Text, starts: &[(usize, Start)]) -> Markup {
    html! {
        p class="menu__title" { (title) }
        ul class="menu__list" {
            @for (i, start) in starts {
                li {
                    button type="button" class="menu__item" id=(format!("start:{i}"))
                        data-action="start" data-target=(i) { (name(*start)) }
                }
            }
        }
    }
}

fn name(start: Start) -> String {
    match start {
        Start::Example(Example::Puffin) => words::menus_puffin().into(),
        Start::Example(Example::Tern) => words::menus_tern().into(),
        Start::Example(Example::Razorbill) => words::menus_razorbill().into(),
        Start::Example(Example::Gannet) => words::menus_gannet().into(),
        Start::Bottle(size) => words::menus_litres(Number::trimmed(size.litres(), 2)),
    }
}
