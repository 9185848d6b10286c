//! Why?: the air from every side, how sure that is, and the rocket in words and numbers.

pub(crate) mod air;
pub(crate) mod table;

use maud::{Markup, html};
use noseward_stability::fixed;

use super::form::more;
use crate::app::State;
use crate::shell::verdict::likely;
use crate::shell::{Region, region};

/// The place: words on the left, graphs on the right, the numbers below.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    vec![
        region(
            "why-words",
            html! {
                div class="why__words" {
                    @if state.tells_outcome() {
                        div id="air-words" { (air::words(state)) }
                        (more("why-points", &air::pushes(state), &air::points(state)))
                        (more(
                            "why-sure",
                            &html! { "How sure is that? " span class="nb__hint" { (likely(state)) " apart" } },
                            &html! {
                                div id="air-sure" { (air::sure(state)) }
                                (resolution(state))
                            },
                        ))
                    } @else { p id="air-words" { "Hidden until you have predicted." } }
                }
            },
        ),
        region(
            "why-graphs",
            html! {
                div class="why__graphs" {
                    @if state.tells_outcome() {
                        div class="air__chosen" {
                            div id="air-turned" { (air::turned(state)) }
                            div class="air__angle" {
                                label for="angle" { "Angle between the nose and the oncoming air" }
                                input id="angle" type="range" min="0" max="180" step="5"
                                    value=(fixed(state.angle_deg, 0)) aria-describedby="air-reading";
                                p id="air-reading" role="status" { (air::reading(state)) }
                            }
                        }
                        div class="air__graph" id="air-graph" { (air::graph(state)) }
                    }
                }
            },
        ),
        region(
            "why-in-words",
            more(
                "why-sentences",
                &html! { "The rocket in words" },
                &html! { div id="rocket-in-words" { (table::in_words(state)) } },
            ),
        ),
        region(
            "why-table",
            more(
                "why-table-part",
                &html! { "The rocket as a table" },
                &html! { div id="as-table" { (table::as_table(state)) } },
            ),
        ),
        region(
            "why-governing",
            html! {
                p class="governing" {
                    "The cut-out’s centre of pressure stands for air from the side. A good separation \
                     is not permission to swing or launch. Local rules, your school’s own risk \
                     assessment and a qualified person decide. This page does not."
                }
            },
        ),
    ]
}

/// How finely ruler and scales are read.
fn resolution(state: &State) -> Markup {
    let (mm, g) = (state.resolution.length_mm, state.resolution.mass_g);
    let choice = |id: &str, label: &str, entries: [(f64, &str); 3], now: f64| {
        html! {
            label {
                (label) " "
                select class="field__select" id=(id) data-resolution="" {
                    @for (value, words) in entries {
                        option value=(value) selected[(value - now).abs() < 1e-9] { (words) }
                    }
                }
            }
        }
    };
    html! {
        p class="air__tools" {
            (choice("ruler-step", "Ruler reads to", [(0.5, "0.5 mm"), (1.0, "1 mm"), (5.0, "5 mm")], mm))
            (choice("scales-step", "Scales read to", [(0.1, "0.1 g"), (1.0, "1 g"), (5.0, "5 g")], g))
        }
    }
}

/// The rocket in words, by which the drawing is described.
pub(crate) fn described(state: &State) -> Vec<Region> {
    vec![region("in-words", table::in_words(state))]
}
