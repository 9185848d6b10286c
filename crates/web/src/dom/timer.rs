//! Doing something later: after a pause, or in the next frame.

use std::cell::Cell;
use std::rc::Rc;

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::Window;

/// Does one thing once nothing has restarted it for a while.
pub(super) struct Timer {
    window: Window,
    waiting: Rc<Cell<Option<i32>>>,
    closure: Closure<dyn FnMut()>,
}

impl Timer {
    pub(super) fn new(window: Window, does: impl Fn() + 'static) -> Self {
        let waiting = Rc::new(Cell::new(None));
        let fired = Rc::clone(&waiting);
        let closure = Closure::new(move || {
            fired.set(None);
            does();
        });
        Self { window, waiting, closure }
    }

    pub(super) fn restart(&self, after_ms: i32) {
        self.stop();
        let callback = self.closure.as_ref().unchecked_ref();
        let handle = self
            .window
            .set_timeout_with_callback_and_timeout_and_arguments_0(callback, after_ms);
        self.waiting.set(handle.ok());
    }

    pub(super) fn stop(&self) {
        if let Some(handle) = self.waiting.take() {
            self.window.clear_timeout_with_handle(handle);
        }
    }

    pub(super) fn is_waiting(&self) -> bool {
        self.waiting.get().is_some()
    }
}

/// Does one thing in the next frame, however often it is asked for.
pub(super) struct Frame {
    window: Window,
    waiting: Rc<Cell<bool>>,
    closure: Closure<dyn FnMut()>,
}

impl Frame {
    pub(super) fn new(window: Window, does: impl Fn() + 'static) -> Self {
        let waiting = Rc::new(Cell::new(false));
        let fired = Rc::clone(&waiting);
        let closure = Closure::new(move || {
            fired.set(false);
            does();
        });
        Self { window, waiting, closure }
    }

    pub(super) fn is_waiting(&self) -> bool {
        self.waiting.get()
    }

    pub(super) fn request(&self) {
        if !self.waiting.replace(true) {
            let callback = self.closure.as_ref().unchecked_ref();
            let asked = self.window.request_animation_frame(callback);
            self.waiting.set(asked.is_ok());
        }
    }
}
