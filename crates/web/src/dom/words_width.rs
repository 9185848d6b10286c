//! How wide words are in a drawing: the browser measures them, without a layout.

use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, Document, HtmlCanvasElement};

/// The type of the drawings, as the style sheets have it, in ordinary letters.
const TYPE: &str = "13px system-ui, Segoe UI, Roboto, Noto Sans, sans-serif";
/// Figures of one width, which drawings have, may be wider than those that a canvas knows.
const SPARE: f64 = 1.02;

thread_local! {
    static CANVAS: Option<CanvasRenderingContext2d> = canvas();
}

fn canvas() -> Option<CanvasRenderingContext2d> {
    let document: Document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement =
        document.create_element("canvas").ok()?.unchecked_into();
    Some(canvas.get_context("2d").ok()??.unchecked_into())
}

/// Has every drawing measure its words, where the browser lends a canvas.
pub(super) fn measure_words() {
    if CANVAS.with(Option::is_some) {
        noseward_drawing::measure_words(px);
    }
}

fn px(words: &str, bold: bool) -> f64 {
    CANVAS.with(|canvas| {
        let measured = canvas.as_ref().and_then(|canvas| {
            canvas.set_font(&(if bold { "bold " } else { "" }.to_owned() + TYPE));
            canvas.measure_text(words).ok()
        });
        measured.map_or(0.0, |measured| measured.width()) * SPARE
    })
}
