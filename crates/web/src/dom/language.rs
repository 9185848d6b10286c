//! Which language the browser wishes for, and how its sentences are asked for.

use wasm_bindgen::JsValue;
use web_sys::{Document, Event, Window};

use super::address;
use super::keeping::Store;
use crate::app::Speech;

/// With which language the page opens.
pub(super) fn opening(window: &Window, document: &Document, store: &Store) -> Speech {
    let root = document.document_element();
    let noted = |name| root.as_ref().and_then(|root| root.get_attribute(name));
    let noted = |name| noted(name).unwrap_or_default();
    let chosen = address::language(window).or_else(|| store.language());
    Speech::opening(noted("data-languages"), chosen.as_deref(), &noted("data-wished"))
}

/// Notes which language's sentences are wanted, for the scripts.
pub(super) fn want(document: &Document, key: &str) -> Result<(), JsValue> {
    let root = document.document_element().ok_or("the document is empty")?;
    root.set_attribute("data-table", key)
}

/// Has them fetched by the script that loaded this module.
pub(super) fn fetch(document: &Document, key: &str) -> Result<(), JsValue> {
    want(document, key)?;
    document.dispatch_event(&Event::new("noseward-table")?)?;
    Ok(())
}
