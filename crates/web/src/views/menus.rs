//! What the menu of new rockets offers.

use maud::{Markup, html};

use crate::app::{Start, starts};

/// Examples and empty bottles.
pub(crate) fn start_menu() -> Markup {
    let all: Vec<(usize, Start)> = starts().into_iter().enumerate().collect();
    let (examples, bottles): (Vec<_>, Vec<_>) =
        all.into_iter().partition(|(_, start)| matches!(start, Start::Example(_)));
    html! {
        (group("Examples", &examples))
        (group("An empty bottle (typical sizes: measure yours)", &bottles))
    }
}

fn group(title: &str, starts: &[(usize, Start)]) -> Markup {
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
        Start::Example(example) => example.summary().to_owned(),
        Start::Bottle(size) => format!("{} litre", size.litres()),
    }
}
