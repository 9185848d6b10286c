//! What the browser has for pictures and cameras, called by its name: each function of `web_sys`
//! is some bytes of the script that every first visit loads.

use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};

use super::Page;

pub(super) fn get(of: &JsValue, name: &str) -> Result<JsValue, JsValue> {
    Reflect::get(of, &name.into())
}

pub(super) fn set(of: &JsValue, name: &str, value: &JsValue) -> Result<bool, JsValue> {
    Reflect::set(of, &name.into(), value)
}

pub(super) fn call(
    of: &JsValue,
    name: &str,
    with: &[JsValue],
) -> Result<JsValue, JsValue> {
    let function: Function = get(of, name)?.dyn_into()?;
    Reflect::apply(&function, of, &with.iter().collect::<Array>())
}

pub(super) fn canvas(page: &Page) -> Result<JsValue, JsValue> {
    Ok(page.document.create_element("canvas")?.into())
}
