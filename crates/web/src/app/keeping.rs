//! What is kept on this computer, and who may write it.
//!
//! There is one place for one rocket. A tab writes there only while it knows what stands
//! there: what another tab, a newer version of the page or the person's own earlier work
//! has put there is never overwritten unseen. A browser that refuses a write is asked again,
//! and until it gives in the page says so.

use noseward_lesson::{Document, Record};
use noseward_link as link;

use super::{Effect, Notice, State, changed};

/// What stands in the place where a rocket is kept, as far as this tab knows.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Keeping {
    /// This rocket: every change is kept.
    Here,
    /// Another rocket: this one came with a link, or another tab kept its own.
    Other(Box<Record>),
    /// Something that this version of the page cannot read; its text.
    Unreadable(String),
    /// Nothing: everything was deleted by another tab.
    Emptied,
    /// There is no such place: the browser bars it.
    Blocked,
}

impl Keeping {
    /// Whether changes of the present rocket may be kept.
    pub(crate) fn is_here(&self) -> bool {
        *self == Self::Here
    }

    /// What follows from a text that stands in the place, seen by a tab that shows
    /// `shown`.
    pub(crate) fn of_text(text: String, shown: &Record) -> Self {
        match kept_record(&text) {
            Some(record) if record == *shown => Self::Here,
            Some(record) => Self::Other(Box::new(record)),
            None => Self::Unreadable(text),
        }
    }
}

/// The rocket in a text that was kept: as in a link, since what opens links is here at once
/// and what opens files is not.
pub(super) fn kept_record(text: &str) -> Option<Record> {
    match link::open_hash(text) {
        link::Opened::Record(record) => Some(record),
        _ => None,
    }
}

/// How the last write went that was due. A refused one is tried again, so only the first
/// refusal of several is news.
pub(super) fn wrote(state: &mut State, refused: bool) -> Vec<Effect> {
    if refused == state.refused || state.keeping == Keeping::Blocked {
        return Vec::new();
    }
    state.refused = refused;
    state.notice.take_if(|notice| *notice == Notice::NotKept);
    if refused {
        state.notice = Some(Notice::NotKept);
    }
    vec![Effect::Redraw]
}

/// Another tab has put this into the place, or has emptied it.
pub(super) fn changed_elsewhere(state: &mut State, text: Option<String>) -> Vec<Effect> {
    if state.keeping == Keeping::Blocked {
        return Vec::new();
    }
    state.keeping = match text {
        Some(text) => Keeping::of_text(text, &state.record()),
        None => Keeping::Emptied,
    };
    vec![Effect::Redraw]
}

/// This rocket takes the place of whatever is kept.
pub(super) fn keep_this(state: &mut State) -> Vec<Effect> {
    match std::mem::replace(&mut state.keeping, Keeping::Here) {
        // Undo brings it back.
        Keeping::Other(other) => {
            let notebook = state.desk.notebook.clone();
            state.history.put_before(Document { record: *other, notebook });
        }
        Keeping::Blocked => {
            state.keeping = Keeping::Blocked;
            return Vec::new();
        }
        Keeping::Here | Keeping::Unreadable(_) | Keeping::Emptied => {}
    }
    state.notice = Some(Notice::KeptThis);
    vec![Effect::Redraw, Effect::Keep, Effect::Focus("place-title".into())]
}

/// The kept rocket comes back.
pub(super) fn back_to_kept(state: &mut State) -> Vec<Effect> {
    let Keeping::Other(kept) = state.keeping.clone() else { return Vec::new() };
    state.keeping = Keeping::Here;
    state.replace_all(*kept);
    state.notice = None;
    let mut effects = changed();
    effects.push(Effect::Focus("place-title".into()));
    effects
}

/// Everything of this page was deleted from this computer; `left` could not be.
pub(super) fn deleted(state: &mut State, left: usize) -> Vec<Effect> {
    state.forget_everything();
    // The copy for use without a network went too.
    state.computer.offline = None;
    state.notice = Some(Notice::Deleted { left });
    vec![Effect::Redraw, Effect::Focus("dismiss".into())]
}
