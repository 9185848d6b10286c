//! The parts of the page that load when somebody needs them.
//!
//! The compiled module is cut where a function of a part is called: with the feature
//! `parts`, the calls below go through imports, and everything that only they reach comes
//! in a file of its own, which shares the memory of the first. Without the feature, in
//! native tests and in the single file, they are plain calls.
//!
//! The names are those that the cutting program looks for:
//! `__wasm_split_00PART00_import_ID_NAME`, `…_export_ID_NAME`, with an ID of 32
//! hexadecimal digits, and `__wasm_split_load_PART`.

use crate::later::{self, Question};

/// Asks the part that loads later. It must be [loaded](load_later).
pub(crate) fn call_later(question: &mut Question<'_>) {
    #[cfg(feature = "parts")]
    split::call_later(question);
    #[cfg(not(feature = "parts"))]
    later::answer(question);
}

/// Loads that part and tells how that went: at once, where nothing is to be loaded.
pub(crate) fn load_later(loaded: impl FnOnce(bool) + 'static) {
    #[cfg(feature = "parts")]
    split::load_later(Box::new(loaded));
    #[cfg(not(feature = "parts"))]
    loaded(true);
}

#[cfg(feature = "parts")]
#[expect(unsafe_code, reason = "calls into another part of the module are imports")]
mod split {
    use std::ffi::c_void;

    use super::{Question, later};

    #[link(wasm_import_module = "./__wasm_split.js")]
    unsafe extern "C" {
        fn __wasm_split_load_later(
            callback: unsafe extern "C" fn(*const c_void, bool),
            data: *const c_void,
        );
        #[expect(improper_ctypes, reason = "both sides are compiled together")]
        fn __wasm_split_00later00_import_00000000000000000000000000000001_call(
            question: *mut Question<'_>,
        );
    }

    /// The other side of the import.
    ///
    /// # Safety
    ///
    /// It must be an exclusive borrow that lives as long as the call.
    #[unsafe(no_mangle)]
    unsafe extern "C" fn __wasm_split_00later00_export_00000000000000000000000000000001_call(
        question: *mut Question<'_>,
    ) {
        // SAFETY: only called below, with an exclusive borrow.
        let question = unsafe { &mut *question };
        later::answer(question);
    }

    pub(super) fn call_later(question: &mut Question<'_>) {
        // SAFETY: the import is the function above, once the part is loaded; before that
        // it ends the module, and touches nothing.
        unsafe {
            __wasm_split_00later00_import_00000000000000000000000000000001_call(question);
        }
    }

    type Loaded = Box<dyn FnOnce(bool)>;

    pub(super) fn load_later(loaded: Loaded) {
        let data = Box::into_raw(Box::new(loaded)).cast::<c_void>();
        // SAFETY: the script calls `tell` exactly once, with this pointer.
        unsafe { __wasm_split_load_later(tell, data) };
    }

    /// # Safety
    ///
    /// `data` comes from [`load_later`], and is told once.
    unsafe extern "C" fn tell(data: *const c_void, done: bool) {
        // SAFETY: it was made from such a box, and nobody else has it.
        let loaded = unsafe { Box::from_raw(data.cast_mut().cast::<Loaded>()) };
        loaded(done);
    }
}
