//! The address bar and what is kept on this computer.

use noseward_link as link;
use noseward_stability::{Design, UnitSystem};
use wasm_bindgen::JsValue;
use web_sys::{Storage, Window};

use crate::app::{Opening, State};

/// Every key starts with the same word, so that all can be found and deleted.
const ROCKET: &str = "noseward/rocket";
const VIEW: &str = "noseward/view";
/// What this page itself put into the address last.
const ADDRESS: &str = "noseward/address";
const PROBE: &str = "noseward/probe";

/// What the page finds when it opens.
pub(super) fn opening(window: &Window) -> Opening {
    let storage = storage(window);
    let view = storage.as_ref().and_then(|s| s.get_item(VIEW).ok().flatten());
    let hash = hash(window);
    let address = storage.as_ref().and_then(|s| s.get_item(ADDRESS).ok().flatten());
    let has = |word: &str| {
        view.as_deref().is_some_and(|v| v.split_whitespace().any(|w| w == word))
    };
    Opening {
        own_hash: address.is_some_and(|own| hash == format!("#{own}")),
        hash,
        kept: storage.as_ref().and_then(|s| s.get_item(ROCKET).ok().flatten()),
        can_keep: storage.is_some(),
        units: if has("inch") { UnitSystem::Inch } else { UnitSystem::Metric },
        all_measurements: has("all"),
        predict_first: has("predict"),
    }
}

/// The storage of this browser, if it can be written to.
fn storage(window: &Window) -> Option<Storage> {
    let storage = window.local_storage().ok()??;
    storage.set_item(PROBE, "1").ok()?;
    storage.remove_item(PROBE).ok()?;
    Some(storage)
}

/// Keeps the design. Returns whether that worked.
pub(super) fn keep_design(window: &Window, design: &Design) -> bool {
    let text = link::to_file(design);
    let storage = window.local_storage().ok().flatten();
    storage.is_some_and(|s| s.set_item(ROCKET, &text).is_ok())
}

/// Keeps what this page put into the address, so that a reload is told from a link.
pub(super) fn keep_address(window: &Window, hash: &str) {
    if let Ok(Some(storage)) = window.local_storage() {
        let _ = storage.set_item(ADDRESS, hash);
    }
}

/// Keeps the units and the choice of measurements. Where nothing can be kept the page
/// says so already, so a failure is no news.
pub(super) fn keep_view(window: &Window, state: &State) {
    let mut words = Vec::new();
    if state.units.system == UnitSystem::Inch {
        words.push("inch");
    }
    if state.all_measurements {
        words.push("all");
    }
    if state.predict_first {
        words.push("predict");
    }
    if let Ok(Some(storage)) = window.local_storage() {
        let _ = storage.set_item(VIEW, &words.join(" "));
    }
}

/// What stands in the address after `#`, with it.
pub(super) fn hash(window: &Window) -> String {
    window.location().hash().unwrap_or_default()
}

/// The address without what stands after `#`.
pub(super) fn address(window: &Window) -> String {
    let href = window.location().href().unwrap_or_default();
    href.split('#').next().unwrap_or_default().to_owned()
}

/// Puts a design into the address bar, without a step in the browser's history. Some
/// frames forbid it; the copy button works there all the same.
pub(super) fn put_into_address(window: &Window, hash: &str) {
    if let Ok(history) = window.history() {
        let address = format!("#{hash}");
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address));
    }
}
