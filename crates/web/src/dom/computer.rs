//! Finds out what this computer allows.

use std::rc::Rc;

use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, HtmlElement, Window};

use super::Page;
use crate::app::{Capability, Computer};
use noseward_words as words;

/// What can be seen without trying anything.
pub(super) fn look(window: &Window) -> Computer {
    let mut computer = Computer::default();
    // A parent of another origin may not be looked at; that it is there can be seen.
    computer.framed = window.parent().ok().flatten().is_some_and(|p| p != *window);
    computer.window_px = window_px(window);
    computer.offline = window.document().and_then(|d| offline(&d));
    computer
}

/// Width and height of the window in pixels.
pub(super) fn window_px(window: &Window) -> (u32, u32) {
    let pixels = |size: Result<JsValue, JsValue>| {
        let size = size.ok().and_then(|v| v.as_f64()).unwrap_or(0.0);
        // Saturates; windows are smaller.
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "saturates"
        )]
        let size = size as u32;
        size
    };
    (pixels(window.inner_width()), pixels(window.inner_height()))
}

/// Whether the page starts without a network, as the script that loaded the module has
/// noted on the document.
pub(super) fn offline(document: &Document) -> Option<bool> {
    let noted = document.document_element()?.get_attribute("data-offline")?;
    match noted.as_str() {
        "ready" => Some(true),
        "no" => Some(false),
        _ => None,
    }
}

/// Tries one thing out. Whether it worked is for the person to say, except for copying.
pub(super) fn try_out(page: &Rc<Page>, way: Capability) -> Result<(), JsValue> {
    match way {
        Capability::Copy => page.try_copying(),
        Capability::Save => {
            page.hand(
                "noseward-try.txt",
                &words::computer_saved().as_str().into(),
                false,
            )?;
        }
        Capability::Pick => {
            let input = page.document.get_element_by_id("try-file");
            if let Some(input) = input.and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
                input.click();
            }
        }
        Capability::Print => page.window.print()?,
    }
    Ok(())
}

/// The day, as year, month and day.
pub(super) fn today() -> (u16, u8, u8) {
    let now = js_sys::Date::new_0();
    #[expect(clippy::cast_possible_truncation, reason = "a year, a month, a day")]
    let day =
        (now.get_full_year() as u16, now.get_month() as u8 + 1, now.get_date() as u8);
    day
}
