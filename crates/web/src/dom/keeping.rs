//! What is kept in this browser.

use std::cell::RefCell;

use noseward_lesson::Record;
use noseward_link as link;
use noseward_stability::{UnitSystem, fixed};
use web_sys::{Storage, StorageEvent, Window};

use crate::app::{Opening, Slot, State};

/// Every key starts with the same word, so that boot.js finds all and can delete them.
const PREFIX: &str = "noseward/";
const ROCKET: &str = "noseward/rocket";
/// The place of the notebook that was open last, in this tab and on this computer.
const OPEN_NOTEBOOK: &str = "noseward/notebook";
/// The set-up that whoever leads is at.
const SET_UP: &str = "noseward/set-up";
/// What the groups of a class found, together.
const CLASS: &str = "noseward/class";
const VIEW: &str = "noseward/view";
/// In front of the language that somebody chose.
const LANGUAGE: &str = "lang=";
/// In front of the number by which a new group's label is chosen: it stays the same.
const LOT: &str = "lot=";
/// It is kept as a whole number.
const LOT_STEPS: f64 = 1e6;
/// What this page itself put into the address last.
const ADDRESS: &str = "noseward/address";
const PROBE: &str = "noseward/probe";

/// The place in this browser where the page keeps things.
pub(super) struct Store {
    window: Window,
    /// The texts that this tab last read or wrote.
    seen: RefCell<Vec<Seen>>,
}

/// What a tab knows to stand in a place.
struct Seen {
    key: String,
    text: String,
    /// Whether this tab wrote it.
    is_ours: bool,
}

/// What another tab has put where something is kept; `None` where it emptied that.
pub(super) enum Heard {
    Rocket(Option<String>),
    Notebook {
        slot: u32,
        text: Option<String>,
        /// What this tab had put there at the same moment, unseen by the other.
        mine: Option<String>,
    },
    Class(Option<String>),
    /// Everything was cleared.
    Cleared,
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
        let Some(storage) = self.storage() else { return opening };
        let get = |key: &str| storage.get_item(key).ok().flatten();
        let kept = get(ROCKET);
        self.see(ROCKET, kept.clone());
        let class = get(CLASS);
        self.see(CLASS, class.clone());
        let view = get(VIEW).unwrap_or_default();
        let has = |word: &str| view.split_whitespace().any(|w| w == word);
        let lot = view.split_whitespace().find_map(|word| word.strip_prefix(LOT));
        Opening {
            own_hash: get(ADDRESS).is_some_and(|own| opening.hash == format!("#{own}")),
            kept,
            set_up: get(SET_UP),
            class,
            can_keep: true,
            refused: !can_write(&storage),
            units: if has("inch") { UnitSystem::Inch } else { UnitSystem::Metric },
            all_measurements: has("all"),
            big: has("big"),
            leads: has("leads"),
            lot: lot
                .and_then(|lot| lot.parse::<u32>().ok())
                .map_or(opening.lot, |steps| f64::from(steps) / LOT_STEPS),
            ..opening
        }
    }

    fn storage(&self) -> Option<Storage> {
        self.window.local_storage().ok()?
    }

    /// What this tab alone remembers, until it is closed.
    fn of_tab(&self) -> Option<Storage> {
        self.window.session_storage().ok()?
    }

    /// The notebooks that are kept, each with the number of its place, and the place that
    /// was open last in this tab, or else in any.
    pub(super) fn notebooks(&self) -> (Vec<(u32, String)>, u32) {
        let Some(storage) = self.storage() else { return (Vec::new(), 0) };
        let get = |key: &str| storage.get_item(key).ok().flatten();
        let notebooks: Vec<(u32, String)> = keys(&storage)
            .iter()
            .filter_map(|key| {
                let slot = Slot::number_of(key.strip_prefix(Slot::KEY)?)?;
                let text = get(key)?;
                self.see(key, Some(text.clone()));
                Some((slot, text))
            })
            .collect();
        let open = self.of_tab().and_then(|tab| tab.get_item(OPEN_NOTEBOOK).ok()?);
        let open = open.or_else(|| get(OPEN_NOTEBOOK)).and_then(|slot| slot.parse().ok());
        (notebooks, open.unwrap_or(0))
    }

    fn see(&self, key: &str, text: Option<String>) {
        let mut seen = self.seen.borrow_mut();
        seen.retain(|seen| seen.key != key);
        let key = key.to_owned();
        seen.extend(text.map(|text| Seen { key, text, is_ours: false }));
    }

    fn has_seen(&self, key: &str, text: Option<&str>) -> bool {
        let seen = self.seen.borrow();
        let known = seen.iter().find(|seen| seen.key == key);
        known.map(|seen| seen.text.as_str()) == text
    }

    /// What this tab has put there, if nobody has written there since as far as it knows.
    fn ours(&self, key: &str) -> Option<String> {
        let seen = self.seen.borrow();
        let ours = seen.iter().find(|seen| seen.key == key && seen.is_ours);
        ours.map(|seen| seen.text.clone())
    }

    /// Keeps the rocket, unless something stands there that this tab has not seen.
    pub(super) fn keep(&self, record: &Record) -> Kept {
        self.keep_text(ROCKET, link::hash(record))
    }

    /// Keeps the open notebook in its place, unless something stands there that this tab
    /// has not seen.
    pub(super) fn keep_notebook(&self, slot: u32, text: String) -> Kept {
        let kept = self.keep_text(&Slot::key(slot), text);
        if matches!(kept, Kept::Done) {
            for storage in [self.storage(), self.of_tab()].into_iter().flatten() {
                let _ = storage.set_item(OPEN_NOTEBOOK, &slot.to_string());
            }
        }
        kept
    }

    /// Keeps what was gathered of a class, unless something stands there that this tab has not
    /// seen; nothing is forgotten.
    pub(super) fn keep_class(&self, text: String) -> Kept {
        if !text.is_empty() {
            return self.keep_text(CLASS, text);
        }
        if let Some(storage) = self.storage() {
            let _ = storage.remove_item(CLASS);
        }
        self.see(CLASS, None);
        Kept::Done
    }

    /// Forgets the notebook that is kept in a place.
    pub(super) fn drop_notebook(&self, slot: u32) {
        let key = Slot::key(slot);
        if let Some(storage) = self.storage() {
            let _ = storage.remove_item(&key);
        }
        self.see(&key, None);
    }

    /// Another tab that slept or ran ahead may have put something there.
    fn keep_text(&self, key: &str, text: String) -> Kept {
        let Some(storage) = self.storage() else { return Kept::Refused };
        let Ok(there) = storage.get_item(key) else { return Kept::Refused };
        if !self.has_seen(key, there.as_deref()) {
            self.see(key, there.clone());
            return Kept::Unseen(there);
        }
        if storage.set_item(key, &text).is_err() {
            return Kept::Refused;
        }
        self.see(key, None);
        let key = key.to_owned();
        self.seen.borrow_mut().push(Seen { key, text, is_ours: true });
        Kept::Done
    }

    /// What another tab has put where something is kept, if the event tells of that.
    pub(super) fn heard(&self, event: &StorageEvent) -> Option<Heard> {
        let Some(key) = event.key() else {
            self.forget();
            return Some(Heard::Cleared);
        };
        let text = event.new_value();
        match key.strip_prefix(Slot::KEY) {
            Some(name) => {
                let slot = Slot::number_of(name)?;
                let mine = self.give_way(&key, event.old_value(), text.as_deref());
                Some(Heard::Notebook { slot, text, mine })
            }
            None if key == ROCKET => {
                // What is shown here is ours.
                self.give_way(&key, event.old_value(), text.as_deref());
                Some(Heard::Rocket(text))
            }
            None if key == CLASS => {
                // This tab still has what it had there, and brings both together.
                self.see(CLASS, text.clone());
                Some(Heard::Class(text))
            }
            None => None,
        }
    }

    /// Another tab has put `theirs` where it saw `before`. If that was not what this tab
    /// had put there, one of the two was overwritten unseen: theirs stands there from now
    /// on, and ours is given back.
    fn give_way(
        &self,
        key: &str,
        before: Option<String>,
        theirs: Option<&str>,
    ) -> Option<String> {
        let ours = self
            .ours(key)
            .filter(|ours| before.as_ref() != Some(ours) && theirs != Some(ours));
        if let (Some(_), Some(theirs), Some(storage)) = (&ours, theirs, self.storage())
            && storage.get_item(key).ok().flatten() == ours
        {
            // Where the browser refuses, theirs is still on this page.
            let _ = storage.set_item(key, theirs);
        }
        self.see(key, theirs.map(str::to_owned));
        ours
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
        let lot = format!("{LOT}{}", fixed(state.desk.lot * LOT_STEPS, 0));
        let mut words = vec![lot.as_str()];
        let language =
            state.speech.chosen().map(|language| format!("{LANGUAGE}{language}"));
        words.extend(language.as_deref());
        if state.units.system == UnitSystem::Inch {
            words.push("inch");
        }
        if state.all_measurements {
            words.push("all");
        }
        if state.big {
            words.push("big");
        }
        if state.leads {
            words.push("leads");
        }
        if let Some(storage) = self.storage() {
            let _ = storage.set_item(VIEW, &words.join(" "));
            // Another tab’s stays, unless something was changed in this one.
            if let Some(text) =
                state.set_up.text.as_ref().filter(|_| state.set_up.changed)
            {
                let _ = storage.set_item(SET_UP, text);
            }
        }
    }

    /// The language that somebody chose here.
    pub(super) fn language(&self) -> Option<String> {
        let view = self.storage()?.get_item(VIEW).ok()??;
        let mut words = view.split_whitespace();
        words.find_map(|word| word.strip_prefix(LANGUAGE)).map(str::to_owned)
    }

    /// Forgets what this tab has seen, after everything was deleted.
    pub(super) fn forget(&self) {
        self.seen.borrow_mut().clear();
    }
}

/// Whether the browser takes anything.
fn can_write(storage: &Storage) -> bool {
    storage.set_item(PROBE, "1").and_then(|()| storage.remove_item(PROBE)).is_ok()
}

/// The keys of this page.
fn keys(storage: &Storage) -> Vec<String> {
    let count = storage.length().unwrap_or(0);
    let keys = (0..count).filter_map(|i| storage.key(i).ok().flatten());
    keys.filter(|key| key.starts_with(PREFIX)).collect()
}
