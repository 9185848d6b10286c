//! When what is on the page goes into the address and into this browser, and what becomes of
//! a write that fails.

use std::cell::Cell;
use std::rc::Rc;

use noseward_link as link;
use wasm_bindgen::JsValue;
use web_sys::Event;

use super::keeping::Kept;
use super::{Page, address, report};
use crate::app::{self, Msg, NotebookMsg};
use crate::later::Ask;
use crate::places::PlaceMsg;
use crate::places::class::ClassMsg;

/// How long after a refused write it is tried again, if nothing changes before.
const KEEP_AGAIN_MS: i32 = 5000;
/// How often keeping a notebook is tried when the page is left.
const LAST_TRIES: usize = 3;

/// How a write went that was due.
#[derive(PartialEq)]
enum Written {
    Done,
    Refused,
}

impl Page {
    pub(super) fn put_into_address_unless_damaged(&self) {
        let state = self.state.borrow();
        let hash_opened = matches!(
            link::open_hash(&address::hash(&self.window)),
            link::Opened::Nothing | link::Opened::Record(_)
        );
        if hash_opened {
            let hash = link::hash(&state.record());
            address::put(&self.window, state.place, &hash);
            if state.keeping.is_here() {
                self.store.keep_address(&hash);
            }
        }
    }

    /// Keeps the design now: in the address bar, and on this computer unless something
    /// else is kept there.
    pub(super) fn keep_now(self: &Rc<Self>) {
        self.keep_timer.stop();
        {
            let state = self.state.borrow();
            // A link that is still to be opened stays in the address until then.
            if !state.desk.is_to_open(&address::hash(&self.window)) {
                address::put(&self.window, state.place, &link::hash(&state.record()));
            }
        }
        report(self.ask_to_keep(&self.keep_due));
    }

    /// Has the script that loaded this module say when no other tab is writing; where
    /// browsers know no turns that is at once.
    pub(super) fn ask_to_keep(&self, due: &Cell<bool>) -> Result<(), JsValue> {
        due.set(true);
        self.document.dispatch_event(&Event::new("noseward-keep")?)?;
        Ok(())
    }

    /// It is this tab's turn to write.
    pub(super) fn keep_in_turn(self: &Rc<Self>) {
        if self.view_due.take() {
            self.store.keep_view(&self.state.borrow());
        }
        if !self.keep_due.take() {
            return;
        }
        let mut written = self.keep_put_away();
        written.extend(self.keep_notebook());
        written.extend(self.keep_class());
        written.extend(self.keep_rocket());
        if written.is_empty() {
            return;
        }
        let refused = written.contains(&Written::Refused);
        self.send(Msg::Wrote { refused });
        if refused {
            self.keep_timer.restart(KEEP_AGAIN_MS);
        }
    }

    /// Keeps the rocket, unless something else is kept in its place.
    fn keep_rocket(self: &Rc<Self>) -> Option<Written> {
        let (record, is_free) = {
            let state = self.state.borrow();
            let is_free = !state.desk.is_to_open(&address::hash(&self.window));
            (state.keeping.is_here().then(|| state.record())?, is_free)
        };
        match self.store.keep(&record) {
            Kept::Done => {
                if is_free {
                    self.store.keep_address(&link::hash(&record));
                }
                Some(Written::Done)
            }
            Kept::Unseen(text) => {
                self.send(Msg::KeptElsewhere(text));
                None
            }
            Kept::Refused => Some(Written::Refused),
        }
    }

    /// Keeps the open notebook, if it has changed.
    fn keep_notebook(self: &Rc<Self>) -> Option<Written> {
        let (slot, text) = {
            let mut state = self.state.borrow_mut();
            if !state.desk.unsaved || state.keeping == app::Keeping::Blocked {
                return None;
            }
            (state.desk.slot, app::call(&mut state, Ask::Kept).text?)
        };
        let kept = self.store.keep_notebook(slot, text.clone());
        // What is refused is still to be kept.
        self.state.borrow_mut().desk.unsaved = matches!(kept, Kept::Refused);
        self.tell_kept(slot, text, kept)
    }

    /// Keeps what was gathered of a class, if that has changed. What another tab has gathered is
    /// taken in first.
    fn keep_class(self: &Rc<Self>) -> Option<Written> {
        let text = {
            let mut state = self.state.borrow_mut();
            if !state.class.unsaved
                || state.class.is_busy
                || state.keeping == app::Keeping::Blocked
            {
                return None;
            }
            app::call(&mut state, Ask::KeptClass).text?
        };
        let kept = self.store.keep_class(text);
        self.state.borrow_mut().class.unsaved = !matches!(kept, Kept::Done);
        match kept {
            Kept::Done => Some(Written::Done),
            Kept::Refused => Some(Written::Refused),
            Kept::Unseen(text) => {
                self.send(PlaceMsg::Class(ClassMsg::Elsewhere(text)).into());
                None
            }
        }
    }

    /// Another notebook is open now, or one was deleted: what is to become of its place.
    pub(super) fn put_away(
        &self,
        slot: u32,
        text: Option<String>,
    ) -> Result<(), JsValue> {
        {
            let put_away = &mut self.state.borrow_mut().desk.put_away;
            put_away.retain(|(known, _)| *known != slot);
            put_away.push((slot, text));
        }
        self.ask_to_keep(&self.keep_due)
    }

    /// Keeps the notebooks that were put away, and forgets those that were deleted.
    fn keep_put_away(self: &Rc<Self>) -> Vec<Written> {
        let (put_away, open) = {
            let state = &mut *self.state.borrow_mut();
            if state.keeping == app::Keeping::Blocked {
                return Vec::new();
            }
            (std::mem::take(&mut state.desk.put_away), state.desk.slot)
        };
        let mut written = Vec::new();
        for (slot, text) in put_away {
            match text {
                None => self.store.drop_notebook(slot),
                // It is open again, with whatever was written in it since.
                Some(_) if slot == open => {}
                Some(text) => {
                    let kept = self.store.keep_notebook(slot, text.clone());
                    if matches!(kept, Kept::Refused) {
                        let again = (slot, Some(text.clone()));
                        self.state.borrow_mut().desk.put_away.push(again);
                    }
                    written.extend(self.tell_kept(slot, text, kept));
                }
            }
        }
        written
    }

    fn tell_kept(
        self: &Rc<Self>,
        slot: u32,
        text: String,
        kept: Kept,
    ) -> Option<Written> {
        let (msg, written) = match kept {
            Kept::Done => (NotebookMsg::IsKept { slot, text }, Some(Written::Done)),
            Kept::Unseen(theirs) => {
                let mine = Some(text);
                (NotebookMsg::KeptElsewhere { slot, text: theirs, mine }, None)
            }
            Kept::Refused => return Some(Written::Refused),
        };
        self.send(Msg::Notebook(msg));
        written
    }

    /// The page is being left: there is no time for turns, and the address can no longer be
    /// changed.
    pub(super) fn keep_at_last(self: &Rc<Self>) {
        // Where another tab has written, the notebook moves, and is kept in its new place.
        for _ in 0..LAST_TRIES {
            self.keep_put_away();
            self.keep_notebook();
        }
        let state = self.state.borrow();
        if self.view_due.take() {
            self.store.keep_view(&state);
        }
        let is_due = self.keep_timer.is_waiting() || self.keep_due.get();
        if is_due && state.keeping.is_here() {
            // Not the address: what stands there is older.
            self.store.keep(&state.record());
        }
    }

    pub(super) fn keep_if_waiting(self: &Rc<Self>) {
        if self.keep_timer.is_waiting() {
            self.keep_now();
        }
    }

    /// Leaves the rocket where the script that loaded this module finds it, should the
    /// module ever stop.
    pub(super) fn note_for_crash(&self) -> Result<(), JsValue> {
        let hash = link::hash(&self.state.borrow().record());
        let link = format!("{}#{hash}", address::base(&self.window));
        self.screen.note_for_crash(&link)
    }

    /// Has the script that loaded this module delete everything, since it can do so where
    /// no module runs too.
    pub(super) fn delete_everything(&self) -> Result<(), JsValue> {
        self.keep_timer.stop();
        self.keep_due.set(false);
        self.view_due.set(false);
        self.document.dispatch_event(&Event::new("noseward-delete")?)?;
        Ok(())
    }

    /// Everything was deleted, but for so many entries.
    pub(super) fn deleted(self: &Rc<Self>, left: usize) {
        self.store.forget();
        address::clear(&self.window);
        self.send(Msg::Deleted { left });
    }
}
