//! Why?: the air from every side, how sure that is, and the rocket in words and numbers.

pub(crate) mod air;
pub(crate) mod table;

use maud::{Markup, html};
use noseward_stability::fixed;
use noseward_words::{self as words, Number, Text};

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
                            &html! {
                                (words::why_how_sure()) " "
                                span class="nb__hint" { (words::why_likely(&likely(state))) }
                            },
                            &html! {
                                div id="air-sure" { (air::sure(state)) }
                                (resolution(state))
                            },
                        ))
                    } @else { p id="air-words" { (words::why_hidden()) } }
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
                                label for="angle" { (words::why_angle()) }
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
                &html! { (words::why_in_words()) },
                &html! { div id="rocket-in-words" { (table::in_words(state)) } },
            ),
        ),
        region(
            "why-table",
            more(
                "why-table-part",
                &html! { (words::why_as_table()) },
                &html! { div id="as-table" { (table::as_table(state)) } },
            ),
        ),
        region("why-governing", html! { p class="governing" { (words::why_caution()) } }),
    ]
}

/// How finely ruler and scales are read.
fn resolution(state: &State) -> Markup {
    let (mm, g) = (state.resolution.length_mm, state.resolution.mass_g);
    let choice = |id: &str, label: Text, steps: [f64; 3], unit: &str, now: f64| {
        html! {
            label {
                (label) " "
                select class="field__select" id=(id) data-resolution="" {
                    @for step in steps {
                        option value=(step) selected[(step - now).abs() < 1e-9] {
                            (Number::trimmed(step, 1).to_string()) " " (unit)
                        }
                    }
                }
            }
        }
    };
    html! {
        p class="air__tools" {
            (choice("ruler-step", words::why_ruler(), [0.5, 1.0, 5.0], "mm", mm))
            (choice("scales-step", words::why_scales(), [0.1, 1.0, 5.0], "g", g))
        }
    }
}

/// The rocket in words, by which the drawing is described.
pub(crate) fn described(state: &State) -> Vec<Region> {
    vec![region("in-words", table::in_words(state))]
}
