//! What this computer allows, and what to do about each thing that it does not.

use maud::{Markup, Render, html};
use noseward_words::{self as words, Text};

use crate::app::{Capability, CapabilityProbe, Computer, Keeping, State};
use crate::places::form::heads;
use crate::shell::marked::marked;

/// The least width in pixels for which the page is made.
const LEAST_WIDTH_PX: u32 = 320;

/// The list.
pub(crate) fn computer(state: &State) -> Markup {
    const HEADS: [Text; 3] =
        [words::computer_what(), words::computer_here(), words::computer_to_do()];
    let computer = &state.computer;
    html! {
        table class="table table--words" {
            caption { (words::computer_caption()) }
            thead { tr {
                (heads(&HEADS))
            } }
            tbody {
                (keeping(state))
                (offline(state))
                @for capability in [Capability::Copy, Capability::Save, Capability::Pick, Capability::Print] {
                    (way(computer, capability))
                }
                (row(words::computer_camera(), &words::computer_not_used(), words::computer_camera_to_do()))
                (frame(state))
                (window(computer))
            }
        }
        p { (words::computer_one_way_left()) }
    }
}

fn row(what: Text, here: &str, to_do: impl Render) -> Markup {
    html! { tr { th scope="row" { (what) } td { (here) } td { (to_do) } } }
}

fn keeping(state: &State) -> Markup {
    let (here, to_do) = match state.keeping {
        Keeping::Blocked => {
            (words::computer_is_barred(), words::computer_keeping_barred())
        }
        _ if state.refused => {
            (words::computer_is_refused(), words::computer_keeping_refused())
        }
        _ => (words::computer_is_allowed(), words::computer_keeping_allowed()),
    };
    row(words::computer_keeping(), &here, to_do)
}

fn offline(state: &State) -> Markup {
    let (here, to_do) = match state.computer.offline {
        Some(true) => (words::computer_works(), words::computer_offline_works()),
        Some(false) if state.address.is_none() => {
            (words::computer_works(), words::computer_offline_file())
        }
        Some(false) => (words::computer_is_barred(), words::computer_offline_barred()),
        None => (words::computer_not_yet(), words::computer_offline_not_yet()),
    };
    row(words::computer_offline(), &here, to_do)
}

fn frame(state: &State) -> Markup {
    if state.computer.framed {
        let own = noseward_link::hash(&state.record());
        row(
            words::computer_frame(),
            &words::computer_yes(),
            html! {
                (words::computer_framed()) " "
                @if let Some(address) = &state.address {
                    (marked(&words::computer_own_tab(), &|_, run| html! {
                        a id="own-tab" href=(format!("{address}#{own}")) target="_blank"
                            rel="noopener" { (run) }
                    }))
                }
            },
        )
    } else {
        row(
            words::computer_frame(),
            &words::computer_no(),
            words::computer_nothing_to_do(),
        )
    }
}

fn window(computer: &Computer) -> Markup {
    let (width, height) = computer.window_px;
    let here = words::computer_window_size(&width.to_string(), &height.to_string());
    let to_do = if width < LEAST_WIDTH_PX {
        words::computer_narrow()
    } else {
        words::computer_wide_enough()
    };
    row(words::computer_window(), &here, to_do)
}

/// Something that only a trial can tell.
fn way(computer: &Computer, way: Capability) -> Markup {
    let [what, works, barred, question, about] = words_for(way);
    let trial = computer.trial(way);
    let here = match trial {
        CapabilityProbe::Open => words::computer_not_tried(),
        CapabilityProbe::Asking => words::computer_trying(),
        CapabilityProbe::Works => words::computer_works(),
        CapabilityProbe::Barred => words::computer_is_barred(),
    };
    let answer = |action, label| answer(action, way, label, about);
    row(
        what,
        &here,
        html! {
            @match trial {
                CapabilityProbe::Works => { (works) }
                CapabilityProbe::Barred => { (barred) }
                CapabilityProbe::Open => { (answer("try", words::computer_try())) }
                CapabilityProbe::Asking => {
                    (question) " "
                    (answer("works", words::computer_yes())) " "
                    (answer("barred", words::computer_no()))
                }
            }
        },
    )
}

/// What it is, what to do where it works and where it is barred, the question that only a
/// person can answer, and what its buttons are about.
fn words_for(way: Capability) -> [Text; 5] {
    match way {
        Capability::Copy => [
            words::computer_copy(),
            words::computer_copy_works(),
            words::computer_copy_barred(),
            words::computer_asks_copy(),
            words::computer_about_copy(),
        ],
        Capability::Save => [
            words::computer_save(),
            words::computer_save_works(),
            words::computer_save_barred(),
            words::computer_asks_save(),
            words::computer_about_save(),
        ],
        Capability::Pick => [
            words::computer_pick(),
            words::computer_pick_works(),
            words::computer_pick_barred(),
            words::computer_asks_pick(),
            words::computer_about_pick(),
        ],
        Capability::Print => [
            words::computer_print(),
            words::computer_print_works(),
            words::computer_print_barred(),
            words::computer_asks_print(),
            words::computer_about_print(),
        ],
    }
}

fn answer(action: &str, way: Capability, label: Text, about: Text) -> Markup {
    html! {
        button type="button" class="button button--small" id=(format!("{action}:{}", way.name()))
            data-action=(action) data-target=(way.name()) {
            (label) span class="visually-hidden" { ": " (about) }
        }
    }
}
