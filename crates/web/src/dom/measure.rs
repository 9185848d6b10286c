//! Being told when an element changes its size or comes into view, without asking for it at
//! every keystroke: asking makes the browser lay the page out on the spot.

use std::rc::Rc;

use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IntersectionObserver, IntersectionObserverEntry, ResizeObserver};

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
                page.measure();
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

/// Watches whether an element is in view, for as long as it lives.
pub(super) struct ViewWatch {
    observer: IntersectionObserver,
    /// Called by the observer.
    _closure: Closure<dyn Fn(js_sys::Array)>,
}

impl ViewWatch {
    /// Does something whenever the element with this id comes into view or leaves it.
    pub(super) fn new(
        page: &Rc<Page>,
        id: &str,
        does: fn(&Rc<Page>, bool),
    ) -> Result<Self, JsValue> {
        let weak = Rc::downgrade(page);
        let closure =
            Closure::<dyn Fn(js_sys::Array)>::new(move |changes: js_sys::Array| {
                let last = changes.iter().last();
                let last =
                    last.and_then(|e| e.dyn_into::<IntersectionObserverEntry>().ok());
                if let (Some(page), Some(entry)) = (weak.upgrade(), last) {
                    does(&page, entry.is_intersecting());
                }
            });
        let observer = IntersectionObserver::new(closure.as_ref().unchecked_ref())?;
        let element = page.document.get_element_by_id(id).ok_or("an element is gone")?;
        observer.observe(&element);
        Ok(Self { observer, _closure: closure })
    }
}

impl Drop for ViewWatch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}
