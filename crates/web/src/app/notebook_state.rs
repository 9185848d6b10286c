//! The notebook as the first part of the page knows it: where its data lies, and what the
//! rocket on the page has to do with it.
//!
//! Everything else about it is in `crate::notebook`, which loads later.

use noseward_lesson::{Colour, Group, MOST_GROUP_NUMBER, Notebook, Record, SetUp, Trial};
use noseward_link::QrSegments;
use noseward_words as words;

use std::borrow::Cow;

use super::loading::{Code, load, note_use, prefetch};
use super::{Draft, Effect, Notice, Paper, ReadOf, State};
use crate::later::{self, Ask, Call, Question};
use crate::part::{self, Part};
use crate::places::PlaceMsg;
use crate::places::class::ClassMsg;

/// Notebooks on this computer, and the one that is open.
#[derive(Debug, Default)]
pub(crate) struct NotebookState {
    /// The open one.
    pub(crate) notebook: Notebook,
    /// The place where the open one is kept.
    pub(crate) slot: u32,
    /// All places, that of the open one included once it is kept.
    pub(crate) slots: Vec<Slot>,
    /// Whether the open one has changed since it was last kept.
    pub(crate) unsaved: bool,
    /// The places of others that are still to be written: what was put away, `None` for what
    /// was deleted.
    pub(crate) put_away: Vec<(u32, Option<String>)>,
    /// The rocket that the readings of the trial in hand were taken from.
    pub(crate) read_of: Option<ReadOf>,
    /// Text in its fields that could not be read.
    pub(crate) drafts: Vec<(String, Draft)>,
    /// From 0 to 1, by chance: where the search for a label of a new group begins.
    pub(crate) lot: f64,
    /// What is looked at, beyond what is written.
    pub(crate) look: NotebookView,
    /// What happened before the code was here.
    pub(super) waiting: Vec<NotebookMsg>,
    /// The rocket with which the page opened, until the notebooks are here or another one
    /// has taken its place.
    pub(crate) found: Option<Record>,
}

/// A place where a notebook is kept.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Slot {
    pub(crate) number: u32,
    /// The file that was kept there.
    pub(crate) text: String,
    /// Whose it is; `None` where this page cannot read it.
    pub(crate) group: Option<Group>,
    /// How many trials are in it, and of what.
    pub(crate) holds: String,
}

impl Slot {
    /// In front of the number of a place, in the key under which a notebook is kept.
    pub(crate) const KEY: &str = "noseward/notebook/";

    /// The key under which the notebook of a place is kept.
    pub(crate) fn key(number: u32) -> String {
        format!("{}{number}", Self::KEY)
    }

    /// The number of a place in the name of its key. No two names are of one place.
    pub(crate) fn number_of(name: &str) -> Option<u32> {
        name.parse().ok().filter(|number: &u32| number.to_string() == name)
    }
}

impl NotebookState {
    /// An empty notebook, with a label that no other group is likely to have.
    pub(crate) fn new(lot: f64) -> Self {
        let mut desk = Self { lot, ..Self::default() };
        let group = desk.groups().next();
        desk.notebook.group = group.unwrap_or_default();
        desk
    }

    /// Another trial is in hand: what was half typed, or asked, was about the one before.
    pub(crate) fn begin_anew(&mut self) {
        self.drafts.clear();
        self.look.nudge = None;
    }

    /// Every label of a group, in an order that differs from computer to computer.
    pub(crate) fn groups(&self) -> impl Iterator<Item = Group> {
        let all = Colour::ALL.into_iter().flat_map(|colour| {
            (1..=MOST_GROUP_NUMBER).filter_map(move |n| Group::new(colour, n))
        });
        let count = Colour::ALL.len() * usize::from(MOST_GROUP_NUMBER);
        // Saturates.
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "from 0 to 480"
        )]
        let first = (self.lot.clamp(0.0, 1.0) * count as f64) as usize;
        all.cycle().skip(first).take(count)
    }

    /// Whether a text is to be opened once the code is here.
    pub(crate) fn is_to_open(&self, text: &str) -> bool {
        self.waiting.iter().any(|msg| match msg {
            NotebookMsg::OpenLink(waits) | NotebookMsg::OpenText(waits) => waits == text,
            _ => false,
        }) || self.look.joining.as_ref().is_some_and(|joining| joining.text == text)
    }
}

/// What somebody looks at in the notebook.
#[derive(Debug, Default)]
pub(crate) struct NotebookView {
    /// What somebody was asked before a prediction is locked as it is.
    pub(crate) nudge: Option<String>,
    /// A plan that is being typed.
    pub(crate) plan: String,
    /// Two trials side by side.
    pub(crate) pair: Option<(u16, u16)>,
    /// Parts of a notebook that were pasted so far.
    pub(crate) parts: QrSegments,
    /// Whether the whole notebook is shown as symbols.
    pub(crate) shows_symbols: bool,
    /// Whether to ask if this notebook is to be deleted.
    pub(crate) asks_to_delete: bool,
    /// A set-up that waits for somebody to say which group they are.
    pub(crate) joining: Option<Box<Joining>>,
}

/// A link to a set-up that hands out labels.
#[derive(Debug)]
pub(crate) struct Joining {
    pub(crate) set_up: SetUp,
    /// The link.
    pub(crate) text: String,
}

/// Something that happens to the notebook.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum NotebookMsg {
    /// What is kept on this computer, and which place was open last.
    Kept {
        slots: Vec<(u32, String)>,
        open: u32,
        /// Whether somebody asked for a fresh start: none of them is opened.
        afresh: bool,
    },
    /// A part of the page has arrived, or could not be loaded.
    Loaded(Part, bool),
    /// To try loading it again.
    Again,
    /// Another tab has put this into a place, or has emptied it.
    KeptElsewhere {
        slot: u32,
        text: Option<String>,
        /// What this tab wanted to put there, if it did.
        mine: Option<String>,
    },
    /// It is kept: this stands in the place now.
    IsKept { slot: u32, text: String },
    /// To print a sheet.
    Print(Paper),
    /// Something that happens in one of the places that load later.
    Place(PlaceMsg),
    /// Text was typed, or chosen from a list.
    Typed { field: String, text: String },
    /// A field was left.
    Left { field: String },
    /// A text was opened that is not a rocket.
    OpenText(String),
    /// The page was opened with a link to a notebook.
    OpenLink(String),
}

/// What a message does.
pub(super) fn update(state: &mut State, msg: NotebookMsg) -> Vec<Effect> {
    match msg {
        // What is kept of a class is opened where somebody looks at it.
        NotebookMsg::Place(PlaceMsg::Class(ClassMsg::Elsewhere(text)))
            if state.class.desk.is_none() =>
        {
            state.class.text = text;
            Vec::new()
        }
        NotebookMsg::Loaded(part, done) => loaded(state, part, done),
        NotebookMsg::Again => ask_for(state, state.place.part()),
        msg => {
            let part = later::of_message(&msg);
            if is_ready(state, part) {
                return asked(state, msg);
            }
            let is_opening = matches!(msg, NotebookMsg::Kept { .. });
            if is_opening {
                state.desk.found = Some(state.record());
            }
            // Asked for twice, it is done once.
            if !state.desk.waiting.contains(&msg) {
                state.desk.waiting.push(msg);
            }
            let mut effects = ask_for(state, Some(part));
            if is_opening {
                // With the place that a link names.
                effects.extend(ask_for(state, state.place.part()));
            }
            effects
        }
    }
}

/// Whether a part may be asked.
fn is_ready(state: &State, part: Part) -> bool {
    part.needed().iter().all(|part| state.parts.is_here(*part))
}

/// Has a part loaded, with what it needs.
pub(super) fn ask_for(state: &mut State, part: Option<Part>) -> Vec<Effect> {
    let mut effects = Vec::new();
    for part in part.unwrap_or(Part::Notebook).needed() {
        effects.extend(load(state, part));
        effects.extend(note_use(state, part));
    }
    effects
}

fn loaded(state: &mut State, part: Part, done: bool) -> Vec<Effect> {
    state.parts.set(part, if done { Code::Here } else { Code::Failed });
    let mut effects = vec![Effect::Redraw];
    if !done {
        let waits = |msg: &NotebookMsg| {
            later::of_message(msg) == part && !matches!(msg, NotebookMsg::Kept { .. })
        };
        if state.desk.waiting.iter().any(waits) {
            state.notice =
                Some(Notice::Said { alarming: true, words: words::app_waits().into() });
        }
        return effects;
    }
    for msg in std::mem::take(&mut state.desk.waiting) {
        if is_ready(state, later::of_message(&msg)) {
            effects.extend(asked(state, msg));
        } else {
            state.desk.waiting.push(msg);
        }
    }
    if matches!(part, Part::Motion | Part::Certainty) {
        state.forget_swing();
        effects.push(Effect::Slice);
    }
    effects.extend(prefetch(state));
    effects
}

/// Lets a message change the notebook, whose code is here; what was measured leads.
fn asked(state: &mut State, msg: NotebookMsg) -> Vec<Effect> {
    if matches!(&msg, NotebookMsg::Place(place) if !matches!(place, PlaceMsg::Swing(_))) {
        state.take_away_words();
    }
    let mut effects = call(state, Ask::Update(msg)).effects;
    if state.take_readings() {
        effects.extend([Effect::Redraw, Effect::Slice]);
    }
    effects
}

/// Asks the part that knows for something; without an answer where that is not here.
pub(crate) fn call(state: &mut State, ask: Ask) -> Call {
    let part = ask.part();
    let mut call = Call::new(ask);
    if let Some(part) = part.filter(|part| is_ready(state, *part)) {
        part::call(part, &mut Question::Page { state, call: &mut call });
    }
    call
}

impl State {
    /// Whether the rocket on the page is that of a trial whose prediction is locked: only
    /// then a swing can be recorded.
    pub(crate) fn is_predicted(&self) -> bool {
        self.trial_in_hand().is_some_and(Trial::is_locked)
    }

    /// The trial in hand, where the rocket on the page is still its own.
    pub(crate) fn trial_in_hand(&self) -> Option<&Trial> {
        self.desk.notebook.in_hand().filter(|_| self.is_of_trial())
    }

    /// Whether anything stands in the notebook.
    pub(crate) fn has_notebook(&self) -> bool {
        self.parts.is_here(Part::Notebook) && !self.desk.notebook.is_blank()
    }

    /// The trial of the rocket on the page: the one in hand, or else the one that begins as
    /// soon as something is written. `None` where a notebook has no room for another.
    pub(crate) fn trial(&self) -> Option<Cow<'_, Trial>> {
        if let Some(trial) = self.trial_in_hand() {
            return Some(Cow::Borrowed(trial));
        }
        let next = self.desk.notebook.next_trial(&self.record()).ok()?;
        let is_report_of_it = self.measured.is_empty() && *next.design() == self.design;
        Some(Cow::Owned(if is_report_of_it { next.knowing(&self.report) } else { next }))
    }

    /// Whether the rocket on the page, swung as it is set up, is that of the trial in hand.
    pub(crate) fn is_of_trial(&self) -> bool {
        self.desk.notebook.is_in_hand(&self.design, &self.swings.setup)
    }

    /// The rocket has changed: the trial in hand takes it, or, where its own is locked and
    /// the same, gives its swings back.
    pub(crate) fn hold_to_trial(&mut self) {
        let Some(trial) = self.desk.notebook.in_hand() else { return };
        let record = self.record();
        if !trial.is_locked() && *trial.design() != record.design {
            self.desk.notebook.follow(&record);
            self.desk.unsaved = true;
        }
        if self.is_of_trial() {
            self.swings_from_trial();
        }
    }

    /// The swings on the page become those of the trial in hand; without one the way of
    /// swinging stays.
    pub(crate) fn swings_from_trial(&mut self) {
        let Some(trial) = self.desk.notebook.in_hand() else { return };
        let setup = self.swings.setup;
        self.swings = trial.swings().clone();
        if self.swings.outcomes().is_empty() {
            self.swings.setup = setup;
        }
    }

    /// A notebook comes onto the desk: its trial in hand is only in hand where its rocket is
    /// this one, which is the one on the page or was so before somebody changed it.
    ///
    /// What this page does not show may still be in hand in another tab, so it is not kept.
    pub(crate) fn put_on_desk(&mut self, notebook: Notebook, rocket: &Record) {
        self.desk.notebook = notebook;
        self.desk.notebook.release(rocket);
        self.hold_to_trial();
    }

    /// Another rocket comes onto the page: a trial that it does not belong to is released,
    /// and not in hand again after a reload.
    pub(super) fn release_trial(&mut self, record: &Record) {
        let was_in_hand = self.desk.notebook.in_hand().is_some();
        self.desk.notebook.release(record);
        self.desk.unsaved |= was_in_hand && self.desk.notebook.in_hand().is_none();
        self.desk.found = None;
    }

    /// The rocket was swung, or a swing was taken back.
    pub(crate) fn swings_into_trial(&mut self) {
        if self.is_of_trial() {
            self.desk.notebook.swing(&self.swings);
            self.desk.unsaved = true;
        }
    }
}
