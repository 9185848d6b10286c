//! The address of the page, and what stands in it after `#`.

use wasm_bindgen::JsValue;
use web_sys::Window;

use crate::app::Place;

/// A search text that asks for a fresh start: neither the link nor what is kept is opened.
const AFRESH: &str = "?afresh";

/// What stands before the language in the search text.
const LANGUAGE: &str = "lang=";

/// What stands in the address after `#`, with it.
pub(super) fn hash(window: &Window) -> String {
    window.location().hash().unwrap_or_default()
}

/// The address of the page: without the place, and without what stands after `#`.
pub(super) fn base(window: &Window) -> String {
    let href = window.location().href().unwrap_or_default();
    href.split(['?', '#']).next().unwrap_or_default().to_owned()
}

/// The place that the address names.
pub(super) fn place(window: &Window) -> Place {
    let search = window.location().search().unwrap_or_default();
    let keys = search.trim_start_matches('?').split('&');
    keys.filter_map(|key| key.strip_prefix("at="))
        .find_map(Place::parse)
        .unwrap_or_default()
}

/// The language that the address names: whoever leads may choose it for a class.
pub(super) fn language(window: &Window) -> Option<String> {
    let search = window.location().search().unwrap_or_default();
    let mut keys = search.trim_start_matches('?').split('&');
    keys.find_map(|key| key.strip_prefix(LANGUAGE)).map(str::to_owned)
}

/// Names another language, where the address names one.
pub(super) fn rename_language(window: &Window, key: &str) {
    let search = window.location().search().unwrap_or_default();
    let mut renamed = false;
    let mut new = String::new();
    for part in search.trim_start_matches('?').split('&') {
        new.push(if new.is_empty() { '?' } else { '&' });
        let is_language = part.starts_with(LANGUAGE);
        renamed |= is_language;
        new += if is_language { LANGUAGE } else { part };
        new += if is_language { key } else { "" };
    }
    if renamed {
        show(window, &format!("{}{new}{}", base(window), hash(window)), false);
    }
}

/// What stands in the address for a place, before `#`. What a school's server put there, and
/// this page does not know, stays.
fn search(window: &Window, place: Place) -> String {
    let now = window.location().search().unwrap_or_default();
    let is_ours = |key: &str| key.is_empty() || key.starts_with("at=") || key == "afresh";
    let others = now.trim_start_matches('?').split('&').filter(|key| !is_ours(key));
    let place = place.search();
    let mut keys: Vec<&str> = others.collect();
    keys.extend(place.strip_prefix('?'));
    if keys.is_empty() { String::new() } else { format!("?{}", keys.join("&")) }
}

/// Whether others can open this address: not that of a file on this computer.
pub(super) fn is_served(window: &Window) -> bool {
    window.location().protocol().is_ok_and(|protocol| protocol.starts_with("http"))
}

/// Whether the person asked for a fresh start.
pub(super) fn asks_afresh(window: &Window) -> bool {
    window.location().search().is_ok_and(|search| search == AFRESH)
}

/// Puts a place and a rocket into the address bar, without a step in the browser's history.
/// Some frames forbid it; the copy button works there all the same.
pub(super) fn put(window: &Window, place: Place, hash: &str) {
    go(window, place, hash, false);
}

/// The same, with a step in the history or without.
pub(super) fn go(window: &Window, place: Place, hash: &str, step: bool) {
    show(window, &format!("{}{}#{hash}", base(window), search(window, place)), step);
}

/// Takes everything out of the address that belongs to a rocket.
pub(super) fn clear(window: &Window) {
    show(window, &format!("{}{}", base(window), search(window, place(window))), false);
}

/// Marked as ours: going back to it changes the place and not the rocket.
fn show(window: &Window, address: &str, step: bool) {
    let Ok(history) = window.history() else { return };
    let ours = JsValue::TRUE;
    let _ = if step {
        history.push_state_with_url(&ours, "", Some(address))
    } else {
        history.replace_state_with_url(&ours, "", Some(address))
    };
}

/// Whether the browser went to an address that this page has put there.
pub(super) fn is_ours(window: &Window) -> bool {
    window
        .history()
        .and_then(|history| history.state())
        .is_ok_and(|state| state.is_truthy())
}
