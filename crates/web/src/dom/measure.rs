//! Being told when an element changes its size, without asking for it at every
//! keystroke: asking makes the browser lay the page out on the spot.

use std::rc::Rc;

use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::ResizeObserver;

use super::Page;

/// Watches the size of some elements for as long as it lives.
pub(super) struct SizeWatch {
    observer: ResizeObserver,
    /// Called by the observer.
    _closure: Closure<dyn Fn()>,
}

impl SizeWatch {
    /// Has the page measured whenever one of the elements with these ids changes its size.
    pub(super) fn new(page: &Rc<Page>, ids: [&str; 2]) -> Result<Self, JsValue> {
        let weak = Rc::downgrade(page);
        let closure = Closure::<dyn Fn()>::new(move || {
            if let Some(page) = weak.upgrade() {
                // In the next frame: measuring now would lay the page out while the browser
                // tells of sizes, and WebKit reports what changes by that as an error.
                page.measure_due.set(true);
                page.frame.request();
            }
        });
        let observer = ResizeObserver::new(closure.as_ref().unchecked_ref())?;
        for id in ids {
            let element =
                page.document.get_element_by_id(id).ok_or("an element is gone")?;
            observer.observe(&element);
        }
        Ok(Self { observer, _closure: closure })
    }
}

impl Drop for SizeWatch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}
