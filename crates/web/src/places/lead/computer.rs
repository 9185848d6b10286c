//! What this computer allows, and what to do about each thing that it does not.

use maud::{Markup, html};

use crate::app::{Capability, CapabilityProbe, Computer, Keeping, State};

/// The least width in pixels for which the page is made.
const LEAST_WIDTH_PX: u32 = 320;

/// The list.
pub(crate) fn computer(state: &State) -> Markup {
    let computer = &state.computer;
    html! {
        table class="table table--words" {
            caption { "What this computer allows, and what to do where it does not" }
            thead { tr {
                th scope="col" { "What" }
                th scope="col" { "Here" }
                th scope="col" { "What to do" }
            } }
            tbody {
                (keeping(state))
                (offline(state))
                (way(computer, Capability::Copy, "Copying the link", "Works: Copy link, under More.",
                    "Under Hand in, select the link and press Ctrl and C, write down the \
                     code, or point a phone at the QR symbol."))
                (way(computer, Capability::Save, "Saving files", "Works: Save as a file, under More.",
                    "Use the link, or write down the code under Hand in."))
                (way(computer, Capability::Pick, "Opening files", "Works: “a link, code or file”, under Rocket.",
                    "Open the file in a text editor, copy all of it and paste it under \
                     “a link, code or file”. Or type its code there."))
                (way(computer, Capability::Print, "Printing", "Works: Print, under More and Hand in.",
                    "Draw from the table of numbers under Why?, or open the link on a computer with a \
                     printer."))
                (row("Camera", "Not used", html! {
                    "This page never asks for the camera. A phone reads the QR symbol with \
                     its own camera."
                }))
                (frame(state))
                (window(computer))
            }
        }
        p {
            "If none of these works, one way is left: write the code under Hand in on paper, \
             and type it under “a link, code or file” on another computer."
        }
    }
}

fn row(what: &str, here: &str, to_do: Markup) -> Markup {
    html! { tr { th scope="row" { (what) } td { (here) } td { (to_do) } } }
}

fn keeping(state: &State) -> Markup {
    let (here, to_do) = match state.keeping {
        Keeping::Blocked => (
            "Barred",
            "Copy the link, save a file or write down the code before you close the page.",
        ),
        _ if state.refused => (
            "Refused",
            "The browser’s room for this page may be full. The page tries again at each change; \
             until then save a file or copy the link. Deleting notebooks you no longer need \
             makes room.",
        ),
        _ => (
            "Allowed",
            "It lasts until you sign out or the browser’s data are cleared: some schools do \
             that every day. Copy the link to be sure.",
        ),
    };
    row("Keeping your rocket", here, html! { (to_do) })
}

fn offline(state: &State) -> Markup {
    let (here, to_do) = match state.computer.offline {
        Some(true) => {
            ("Works", "This page opens here without a network, in this browser.")
        }
        Some(false) if state.address.is_none() => {
            ("Works", "This page is a file: it needs no network.")
        }
        Some(false) => (
            "Barred",
            "Keep the page open, or get it as one file (at the foot of the page).",
        ),
        None => (
            "Not yet",
            "The browser is still storing the page. If this does not change, get it as one \
             file (at the foot of the page).",
        ),
    };
    row("Without a network", here, html! { (to_do) })
}

fn frame(state: &State) -> Markup {
    if state.computer.framed {
        let own = noseward_link::hash(&state.record());
        row(
            "In another page",
            "Yes",
            html! {
                "This page stands inside another one, which may keep it from storing, saving \
                 and printing. "
                @if let Some(address) = &state.address {
                    a id="own-tab" href=(format!("{address}#{own}")) target="_blank"
                        rel="noopener" { "Open it in its own tab" }
                    ", or copy the link and open that."
                }
            },
        )
    } else {
        row("In another page", "No", html! { "Nothing to do." })
    }
}

fn window(computer: &Computer) -> Markup {
    let (width, height) = computer.window_px;
    let here = format!("{width} by {height}");
    row(
        "Window",
        &here,
        html! {
            @if width < LEAST_WIDTH_PX {
                "Narrower than this page is made for: make the window wider or the text smaller."
            } @else {
                "Wide enough."
            }
        },
    )
}

/// Something that only a trial can tell.
fn way(
    computer: &Computer,
    way: Capability,
    what: &str,
    works: &str,
    barred: &str,
) -> Markup {
    let trial = computer.trial(way);
    let here = match trial {
        CapabilityProbe::Open => "Not tried",
        CapabilityProbe::Asking => "Trying",
        CapabilityProbe::Works => "Works",
        CapabilityProbe::Barred => "Barred",
    };
    row(
        what,
        here,
        html! {
            @match trial {
                CapabilityProbe::Works => { (works) }
                CapabilityProbe::Barred => { (barred) }
                CapabilityProbe::Open => { (answer("try", way, "Try it")) }
                CapabilityProbe::Asking => {
                    (question(way)) " "
                    (answer("works", way, "Yes")) " "
                    (answer("barred", way, "No"))
                }
            }
        },
    )
}

fn question(way: Capability) -> &'static str {
    match way {
        Capability::Copy => "Did the browser let the page copy?",
        Capability::Save => "Did a file named noseward-try.txt arrive?",
        Capability::Pick => "Did a window for choosing a file open? (Close it again.)",
        Capability::Print => "Did a window for printing open? (Close it again.)",
    }
}

fn answer(action: &str, way: Capability, label: &str) -> Markup {
    html! {
        button type="button" class="button button--small" id=(format!("{action}:{}", way.name()))
            data-action=(action) data-target=(way.name()) {
            (label) span class="visually-hidden" { ": " (way.name()) }
        }
    }
}
