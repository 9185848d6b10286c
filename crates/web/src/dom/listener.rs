//! A listener that removes itself when dropped.

use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::{Event, EventTarget};

/// Listens for one kind of event on one target, for as long as it lives. What it hears may
/// make the browser tell of another such event at once: hence `Fn`.
pub(super) struct Listener {
    target: EventTarget,
    kind: &'static str,
    closure: Closure<dyn Fn(Event)>,
}

impl Listener {
    pub(super) fn new(
        target: &EventTarget,
        kind: &'static str,
        heard: impl Fn(Event) + 'static,
    ) -> Result<Self, JsValue> {
        let closure = Closure::new(heard);
        target
            .add_event_listener_with_callback(kind, closure.as_ref().unchecked_ref())?;
        Ok(Self { target: target.clone(), kind, closure })
    }
}

impl Drop for Listener {
    fn drop(&mut self) {
        // It can only fail when the target is gone already.
        let _ = self.target.remove_event_listener_with_callback(
            self.kind,
            self.closure.as_ref().unchecked_ref(),
        );
    }
}
