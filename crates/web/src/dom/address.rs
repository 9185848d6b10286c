//! The address of the page, and what stands in it after `#`.

use wasm_bindgen::JsValue;
use web_sys::Window;

/// A search text that asks for a fresh start: neither the link nor what is kept is opened.
const AFRESH: &str = "?afresh";

/// What stands in the address after `#`, with it.
pub(super) fn hash(window: &Window) -> String {
    window.location().hash().unwrap_or_default()
}

/// The address without what stands after `#`.
pub(super) fn base(window: &Window) -> String {
    let href = window.location().href().unwrap_or_default();
    let base = href.split('#').next().unwrap_or_default();
    base.strip_suffix(AFRESH).unwrap_or(base).to_owned()
}

/// Whether others can open this address: not that of a file on this computer.
pub(super) fn is_served(window: &Window) -> bool {
    window.location().protocol().is_ok_and(|protocol| protocol.starts_with("http"))
}

/// Whether the person asked for a fresh start.
pub(super) fn asks_afresh(window: &Window) -> bool {
    window.location().search().is_ok_and(|search| search == AFRESH)
}

/// Puts a design into the address bar, without a step in the browser's history. Some
/// frames forbid it; the copy button works there all the same.
pub(super) fn put(window: &Window, hash: &str) {
    replace(window, &format!("{}#{hash}", base(window)));
}

/// Takes everything out of the address that belongs to a rocket.
pub(super) fn clear(window: &Window) {
    replace(window, &base(window));
}

fn replace(window: &Window, address: &str) {
    if let Ok(history) = window.history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(address));
    }
}
