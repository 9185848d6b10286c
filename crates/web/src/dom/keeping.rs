//! What is kept in this browser.

use std::cell::RefCell;

use noseward_lesson::Record;
use noseward_link as link;
use noseward_stability::UnitSystem;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CacheStorage, ServiceWorkerRegistration, Storage, StorageEvent, Window};

use crate::app::{Opening, State};

/// Every key starts with the same word, so that all can be found and deleted.
const PREFIX: &str = "noseward/";
const ROCKET: &str = "noseward/rocket";
const VIEW: &str = "noseward/view";
/// What this page itself put into the address last.
const ADDRESS: &str = "noseward/address";
const PROBE: &str = "noseward/probe";

/// The place in this browser where the page keeps things.
pub(super) struct Store {
    window: Window,
    /// The text that this tab last read or wrote where the rocket is kept.
    seen: RefCell<Option<String>>,
}

/// How keeping a rocket went.
pub(super) enum Kept {
    /// It is kept.
    Done,
    /// Something else stands there that this tab has not seen: nothing was written.
    Unseen(Option<String>),
    /// The browser refused.
    Refused,
}

impl Store {
    pub(super) fn new(window: Window) -> Self {
        Self { window, seen: RefCell::default() }
    }

    /// What is kept, put into what the page finds when it opens.
    pub(super) fn opening(&self, opening: Opening) -> Opening {
        let Some(storage) = self.writable() else { return opening };
        let get = |key: &str| storage.get_item(key).ok().flatten();
        let kept = get(ROCKET);
        self.seen.replace(kept.clone());
        let view = get(VIEW).unwrap_or_default();
        let has = |word: &str| view.split_whitespace().any(|w| w == word);
        Opening {
            own_hash: get(ADDRESS).is_some_and(|own| opening.hash == format!("#{own}")),
            kept,
            can_keep: true,
            units: if has("inch") { UnitSystem::Inch } else { UnitSystem::Metric },
            all_measurements: has("all"),
            predict_first: has("predict"),
            ..opening
        }
    }

    fn storage(&self) -> Option<Storage> {
        self.window.local_storage().ok()?
    }

    /// The storage of this browser, if it can be written to.
    fn writable(&self) -> Option<Storage> {
        let storage = self.storage()?;
        storage.set_item(PROBE, "1").ok()?;
        storage.remove_item(PROBE).ok()?;
        Some(storage)
    }

    /// Keeps the rocket, unless something stands there that this tab has not seen: another
    /// tab that slept or ran ahead may have put it there.
    pub(super) fn keep(&self, record: &Record) -> Kept {
        let Some(storage) = self.storage() else { return Kept::Refused };
        let Ok(there) = storage.get_item(ROCKET) else { return Kept::Refused };
        if there != *self.seen.borrow() {
            self.seen.replace(there.clone());
            return Kept::Unseen(there);
        }
        let text = link::to_file(record);
        if storage.set_item(ROCKET, &text).is_err() {
            return Kept::Refused;
        }
        self.seen.replace(Some(text));
        Kept::Done
    }

    /// What another tab has put where the rocket is kept, if the event tells of that.
    pub(super) fn heard(&self, event: &StorageEvent) -> Option<Option<String>> {
        // No key: everything was cleared.
        if event.key().is_some_and(|key| key != ROCKET) {
            return None;
        }
        let text = event.new_value();
        self.seen.replace(text.clone());
        Some(text)
    }

    /// Keeps what this page put into the address, so that a reload is told from a link.
    pub(super) fn keep_address(&self, hash: &str) {
        if let Some(storage) = self.storage() {
            let _ = storage.set_item(ADDRESS, hash);
        }
    }

    /// Keeps the units and the choice of measurements. Where nothing can be kept the page
    /// says so already, so a failure is no news.
    pub(super) fn keep_view(&self, state: &State) {
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
        if let Some(storage) = self.storage() {
            let _ = storage.set_item(VIEW, &words.join(" "));
        }
    }

    /// Deletes everything of this page from this browser: what it keeps, its copy for
    /// use without a network, and what looks after that copy. Returns how many entries
    /// are still there afterwards.
    pub(super) async fn delete_everything(window: Window) -> usize {
        let mut left = 0;
        if let Ok(Some(storage)) = window.local_storage() {
            for key in keys(&storage) {
                let _ = storage.remove_item(&key);
            }
            left += keys(&storage).len();
        }
        left + delete_copies(&window).await.unwrap_or(0)
    }

    /// Forgets what this tab has seen, after everything was deleted.
    pub(super) fn forget(&self) {
        self.seen.replace(None);
    }
}

/// The keys of this page.
fn keys(storage: &Storage) -> Vec<String> {
    let count = storage.length().unwrap_or(0);
    let keys = (0..count).filter_map(|i| storage.key(i).ok().flatten());
    keys.filter(|key| key.starts_with(PREFIX)).collect()
}

/// Deletes the copies for use without a network. Returns how many are left; an error
/// where the browser has none of all that.
async fn delete_copies(window: &Window) -> Result<usize, JsValue> {
    let workers = window.navigator().service_worker();
    if workers.is_undefined() {
        return Ok(0);
    }
    // Only what belongs to this page: other copies may lie in folders of one server.
    let mut ours = String::from("noseward ");
    let registration = JsFuture::from(workers.get_registration()).await?;
    if let Ok(registration) = registration.dyn_into::<ServiceWorkerRegistration>() {
        // As the service worker names its caches.
        ours = format!("noseward {} ", registration.scope());
        JsFuture::from(registration.unregister()?).await?;
    }
    let caches = window.caches()?;
    for name in copies(&caches, &ours).await? {
        JsFuture::from(caches.delete(&name)).await?;
    }
    Ok(copies(&caches, &ours).await?.len())
}

async fn copies(caches: &CacheStorage, ours: &str) -> Result<Vec<String>, JsValue> {
    let names: js_sys::Array = JsFuture::from(caches.keys()).await?.dyn_into()?;
    let names = names.iter().filter_map(|name| name.as_string());
    Ok(names.filter(|name| name.starts_with(ours)).collect())
}
