//! The state of the page and what each message does to it. Knows no browser.

mod computer;
mod edits;
mod effect;
mod keeping;
mod loading;
mod measured;
mod message;
mod notebook_state;
mod notice;
mod place;
mod presses;
mod problems;
mod speech;
mod sure;
mod typed;

use noseward_drawing::Told;
use noseward_lesson::{Document, History, Record, Swings};
use noseward_link as link;
use noseward_stability::{
    BottleSize, Component, Confidence, Design, Doubts, Example, Field, Influence,
    MeasuredPoints, Quantity, Report, Resolution, SeparationDraws, Severity, UnitSystem,
    Units, Verdict, WeightField, evaluate, within,
};
use noseward_words::{self as words, Number, Text};

pub(crate) use computer::{Capability, CapabilityProbe, Computer};
pub(crate) use edits::{
    Addition, Choice, MassChoice, PlanformChoice, example as example_design, place_field,
    stand_in,
};
pub(crate) use effect::{Effect, Looking};
pub(crate) use keeping::Keeping;
pub(crate) use loading::{Code, Loading};
pub(crate) use measured::ReadOf;
use message::Step;
pub(crate) use message::{Msg, Paper, Start};
pub(crate) use notebook_state::{
    Joining, NotebookMsg, NotebookState, NotebookView, Slot, call,
};
pub(crate) use notice::Notice;
pub(crate) use place::Place;
pub(crate) use presses::Presses;
pub(crate) use problems::sentence as problem_sentence;
pub(crate) use speech::{Speech, failed as language_failed, led as speak_for_class};
pub(crate) use typed::{Unreadable, has_unit, read as read_number};

use crate::later::Ask;
use crate::places::PlaceMsg;
use crate::places::class::ClassState;
use crate::places::hand_in::HandInMsg;
use crate::places::paper::PaperDesk;
use crate::places::set_up::SetUpState;
use crate::places::swing::{self, SwingState};
use crate::shell::unopened;

/// Everything the page knows.
#[derive(Debug)]
pub(crate) struct State {
    /// The rocket as typed so far.
    pub(crate) design: Design,
    /// What is known about it.
    pub(crate) report: Report,
    /// What was measured of its two points.
    pub(crate) measured: MeasuredPoints,
    /// What it did on its string.
    pub(crate) swings: Swings,
    /// The swing test.
    pub(crate) swing: SwingState,
    /// The notebook.
    pub(crate) desk: NotebookState,
    /// Which parts of the page are here.
    pub(crate) parts: Loading,
    /// The last rocket that could be drawn, with its report; without figures there was none.
    pub(crate) drawn: (Design, Report),
    /// Text that could not be read as a value; the design keeps the value before it.
    pub(crate) drafts: Vec<(Field, Draft)>,
    pub(crate) units: Units,
    /// The language it speaks.
    pub(crate) speech: Speech,
    /// Whether every measurement is shown, or only those that matter most.
    pub(crate) all_measurements: bool,
    /// Size of the sheet in pixels.
    pub(crate) sheet_px: (f64, f64),
    /// The place of the page that is shown.
    pub(crate) place: Place,
    /// The field in which somebody types, by its id, and what stands there: a half-typed
    /// number stays as it is typed.
    pub(crate) typing: Option<(String, String)>,
    /// Whether everything is half as large again, for a projector.
    pub(crate) big: bool,
    /// Whether somebody who leads uses this computer.
    pub(crate) leads: bool,
    /// What is being printed.
    pub(crate) printing: Option<Paper>,
    /// Whether the notebook left this computer in this visit.
    pub(crate) handed_in: bool,
    /// Width of the graphs in pixels.
    pub(crate) graph_px: f64,
    /// The steps that ruler and scales can tell apart.
    pub(crate) resolution: Resolution,
    /// How sure the figures are, as far as it has been worked out for this design.
    pub(crate) certainty: Certainty,
    /// The angle of the air that is looked at, in degrees.
    pub(crate) angle_deg: f64,
    pub(crate) notice: Option<Notice>,
    /// What is kept on this computer.
    pub(crate) keeping: Keeping,
    /// Whether the browser refused to keep what was to be kept last.
    pub(crate) refused: bool,
    /// Whether the page opened with the rocket that was kept.
    pub(crate) opened_kept: bool,
    /// What this computer allows.
    pub(crate) computer: Computer,
    /// The page's address without what stands after `#`, if others can open it.
    pub(crate) address: Option<String>,
    /// The form in which whoever leads sets a lesson up.
    pub(crate) set_up: SetUpState,
    /// What the groups of a class found, together.
    pub(crate) class: ClassState,
    /// What the place Paper shows, once somebody did something there.
    pub(crate) paper: Option<Box<PaperDesk>>,
    /// Whether the page asks if everything is to be deleted.
    pub(crate) asks_to_delete: bool,
    history: History,
    /// The place of the notebook that the history is of.
    history_slot: u32,
    /// While somebody types: the fields whose faults were told before. New ones wait for a
    /// pause, since a half-typed number is no fault.
    announced_faults: Option<Vec<Field>>,
}

/// Text in a field that could not be read.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Draft {
    pub(crate) text: String,
    pub(crate) why: Unreadable,
}

/// How far the uncertainty of the present design has been worked out. It takes a moment,
/// so it is done in slices once typing pauses.
#[derive(Debug)]
pub(crate) enum Certainty {
    /// Not begun.
    Unknown,
    /// Under way.
    Drawing(Box<SeparationDraws>),
    /// Done, unless nothing could be drawn.
    Known(Option<Uncertainty>),
}

/// What is known about the uncertainty of a design.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Uncertainty {
    pub(crate) verdict: Verdict,
    /// How sure the outcome is, and why it is no more than probable where it is.
    pub(crate) confidence: Confidence,
    pub(crate) why: Text,
    /// What the model of the air leaves open.
    pub(crate) doubts: Option<Doubts>,
    /// The readings that matter most, the first the most.
    pub(crate) influences: Vec<Influence>,
}

/// What the page finds when it opens.
#[derive(Debug, Default)]
pub(crate) struct Opening {
    /// The address after `#`.
    pub(crate) hash: String,
    /// Whether this page itself put that into the address: a reload, not a link.
    pub(crate) own_hash: bool,
    /// The file that was kept on this computer.
    pub(crate) kept: Option<String>,
    /// The set-up that was kept on this computer.
    pub(crate) set_up: Option<String>,
    /// The class that was kept on this computer.
    pub(crate) class: Option<String>,
    /// The day, as year, month and day.
    pub(crate) today: (u16, u8, u8),
    /// Whether this browser has a place where the page may keep anything.
    pub(crate) can_keep: bool,
    /// Whether there is a place, but the browser refuses to write there.
    pub(crate) refused: bool,
    /// Whether the person asked for a fresh start: nothing is opened, nothing is lost.
    pub(crate) afresh: bool,
    /// The page's address without what stands after `#`, if others can open it.
    pub(crate) address: Option<String>,
    pub(crate) computer: Computer,
    /// Whether the reader's system asks for as little motion as possible.
    pub(crate) still: bool,
    pub(crate) units: UnitSystem,
    pub(crate) speech: Speech,
    pub(crate) all_measurements: bool,
    pub(crate) big: bool,
    /// Whether a part that only whoever leads uses was opened on this computer.
    pub(crate) leads: bool,
    /// The place that the address names.
    pub(crate) place: Place,
    /// From 0 to 1, by chance: where the search for a label of a new group begins.
    pub(crate) lot: f64,
}

impl State {
    /// A link comes first, then what was kept, then the worked example.
    pub(crate) fn new(opening: &Opening) -> Self {
        let kept = opening.kept.as_deref().and_then(keeping::kept_record);
        let mut notice = match opening {
            Opening { can_keep: false, .. } => Some(Notice::KeepsNothing),
            Opening { refused: true, .. } => Some(Notice::NotKept),
            _ => None,
        };
        // After a reload, what was kept may be newer than what the address still says.
        let passed_over = (opening.own_hash && kept.is_some())
            || opening.afresh
            || link::may_be_more(&opening.hash);
        let hash = if passed_over { "" } else { &opening.hash };
        let from_link = match link::open_hash(hash) {
            link::Opened::Nothing => None,
            link::Opened::Record(record) => Some(record),
            link::Opened::Partial { design, missing } => {
                notice = Some(Notice::LinkCut(missing));
                Some(design.into())
            }
            link::Opened::Damaged(fault) => {
                notice = Some(Notice::LinkDamaged(unopened::link(&fault.kind)));
                None
            }
        };
        let record = from_link
            .or(kept.filter(|_| !opening.afresh))
            .unwrap_or_else(|| edits::example(Example::Puffin).rounded().into());
        let keeping = match &opening.kept {
            _ if !opening.can_keep => Keeping::Blocked,
            Some(text) => Keeping::of_text(text.clone(), &record),
            None => Keeping::Here,
        };
        let Record { design, swings } = record;
        let report = evaluate(&design);
        // Without figures nothing is drawn, and not another rocket either.
        let drawn = (design.clone(), report.clone());
        let mut state = Self {
            design,
            report,
            measured: MeasuredPoints::default(),
            swings,
            swing: SwingState::new(opening.still),
            desk: NotebookState::new(opening.lot),
            parts: Loading::default(),
            drawn,
            drafts: Vec::new(),
            units: Units { system: opening.units },
            speech: opening.speech.clone(),
            all_measurements: opening.all_measurements,
            sheet_px: (640.0, 420.0),
            place: opening.place,
            typing: None,
            big: opening.big,
            leads: opening.leads,
            printing: None,
            handed_in: false,
            graph_px: 640.0,
            resolution: Resolution::default(),
            certainty: Certainty::Unknown,
            angle_deg: 30.0,
            notice,
            opened_kept: opening.kept.is_some() && keeping.is_here(),
            keeping,
            refused: opening.refused,
            computer: opening.computer.clone(),
            address: opening.address.clone(),
            set_up: SetUpState { text: opening.set_up.clone(), ..SetUpState::default() },
            class: ClassState::new(opening),
            paper: None,
            asks_to_delete: false,
            history: History::new(Document::default()),
            history_slot: 0,
            announced_faults: None,
        };
        state.history = History::new(state.document());
        state
    }

    /// Whether what is drawn is older than what is typed, because of a fault that has
    /// been told.
    pub(crate) fn is_stale(&self) -> bool {
        self.faults().iter().any(|(_, severity, _)| *severity == Severity::Stop)
    }

    pub(crate) fn can_undo(&self) -> bool {
        self.history.undone().is_some()
    }

    pub(crate) fn can_redo(&self) -> bool {
        self.history.redone().is_some()
    }

    /// The faults to tell now, those of the typed text included, stops first.
    pub(crate) fn faults(&self) -> Vec<(Field, Severity, String)> {
        self.faults_in(|_| true)
    }

    /// The faults of one field.
    pub(crate) fn faults_of(&self, field: Field) -> Vec<(Severity, String)> {
        let all = self.faults_in(|of| of == field).into_iter();
        all.map(|(_, severity, words)| (severity, words)).collect()
    }

    /// The faults of some fields: only those are put into words.
    fn faults_in(
        &self,
        is_wanted: impl Fn(Field) -> bool,
    ) -> Vec<(Field, Severity, String)> {
        let is_told = |field: Field| {
            is_wanted(field)
                && self.announced_faults.as_ref().is_none_or(|told| told.contains(&field))
        };
        let drafts = self.drafts.iter().filter(|(field, _)| is_told(*field));
        let drafts = drafts.map(|(field, draft)| {
            (*field, Severity::Stop, draft.why.sentence(*field, self.units))
        });
        let faults = self.report.faults.iter();
        let faults = faults
            .filter(|fault| is_told(fault.field) && self.draft(fault.field).is_none())
            .map(|fault| {
                (fault.field, fault.severity(), problems::sentence(fault, self.units))
            });
        let (mut all, questions): (Vec<_>, Vec<_>) = drafts
            .chain(faults)
            .partition(|(_, severity, _)| *severity == Severity::Stop);
        all.extend(questions);
        all
    }

    /// The text of a field that could not be read, if it is so now.
    pub(crate) fn draft(&self, field: Field) -> Option<&Draft> {
        self.drafts.iter().find(|(drafted, _)| *drafted == field).map(|(_, draft)| draft)
    }

    /// What somebody is typing into the field with this id.
    pub(crate) fn typed_text(&self, id: &str) -> Option<&str> {
        self.typing
            .as_ref()
            .filter(|(typing, _)| typing == id)
            .map(|(_, text)| text.as_str())
    }

    /// What stands in a number's field: what is being typed, the text that could not be
    /// read, or the value.
    pub(crate) fn text_of(&self, field: Field) -> String {
        if let Some(text) = self.typed_text(&field.to_string()) {
            return text.to_owned();
        }
        if let Some(draft) = self.draft(field) {
            return draft.text.clone();
        }
        self.value_text(field)
    }

    fn value_text(&self, field: Field) -> String {
        match field {
            Field::Name => self.design.name.clone(),
            Field::Weight(i, WeightField::Label) => {
                self.design.weights.get(i).map(|w| w.label.clone()).unwrap_or_default()
            }
            _ => match (field.get(&self.design), field.quantity()) {
                (Some(value), Some(quantity)) => {
                    words::as_typed(&quantity.number(value, self.units))
                }
                _ => String::new(),
            },
        }
    }

    /// Whether the outcome may be told: always, or once it has been predicted.
    pub(crate) fn tells_outcome(&self) -> bool {
        self.desk.notebook.telling.tells_verdict(self.is_predicted())
            && self.tells_points()
    }

    /// Which of the two points may be told: what was measured always.
    pub(crate) fn points_told(&self) -> Told {
        let telling = self.desk.notebook.telling;
        let measured = &self.measured;
        Told {
            mass: telling.tells_point(measured.centre_of_mass.is_some()),
            pressure: telling.tells_point(measured.centre_of_pressure.is_some()),
        }
    }

    /// Whether both points may be told, and with them everything that follows from them.
    pub(crate) fn tells_points(&self) -> bool {
        self.points_told() == Told::BOTH
    }

    /// Whether the drawing is shown: beside a place, or on the rocket's own sheet of paper.
    pub(crate) fn has_drawing(&self) -> bool {
        self.place.has_drawing() || self.printing == Some(Paper::Rocket)
    }

    /// Whether the swing test is shown, so that its motion is worked out.
    pub(crate) fn shows_swing(&self) -> bool {
        self.place == Place::Swing || self.printing == Some(Paper::Swing)
    }

    /// A button of a place was pressed: what was typed before, and what was said, is past.
    pub(crate) fn take_away_words(&mut self) {
        self.typing = None;
        self.notice.take_if(|notice| matches!(notice, Notice::Said { .. }));
    }

    /// Works everything out again after the design changed. A prediction, and a message
    /// about what was done, were about the rocket as it was.
    fn refresh(&mut self) {
        self.notice.take_if(|notice| notice.is_passing());
        self.hold_to_trial();
        self.assess();
        self.forget_swing();
    }

    /// Starts again with the worked example, as if the page had never been used here.
    fn forget_everything(&mut self) {
        let (desk, parts) = (NotebookState::new(self.desk.lot), self.parts.clone());
        let opening = Opening {
            can_keep: self.keeping != Keeping::Blocked,
            computer: self.computer.clone(),
            address: self.address.clone(),
            still: self.swing.still,
            big: self.big,
            speech: self.speech.clone().forgotten(),
            place: self.place,
            ..Opening::default()
        };
        let (sheet_px, graph_px) = (self.sheet_px, self.graph_px);
        *self = Self { sheet_px, graph_px, desk, parts, ..Self::new(&opening) };
    }

    /// The rocket and what it did: what links, codes and files hold.
    pub(crate) fn record(&self) -> Record {
        Record { design: self.design.clone(), swings: self.swings.clone() }.rounded()
    }

    /// Puts an edited design in place of the present one; undo brings it back.
    fn replace(&mut self, design: Design) {
        let before = std::mem::replace(&mut self.design, design.rounded());
        self.leave_behind(&before, self.swings.setup);
        self.drafts.clear();
        (self.announced_faults, self.typing) = (None, None);
        self.refresh();
    }

    /// Puts another rocket and its swings in place of the present ones; undo brings them
    /// back.
    pub(crate) fn replace_all(&mut self, record: Record) {
        self.release_trial(&record);
        self.show_record(record);
    }

    /// The same for the rocket of a trial that has just been taken in hand.
    pub(crate) fn show_record(&mut self, record: Record) {
        self.forget_space();
        self.take(record.rounded());
    }

    /// The link to something that is spelled so after `#`. The address of a file means
    /// nothing on another computer; what stands after `#` opens in every copy of the page.
    pub(crate) fn link_to(&self, hash: &str) -> String {
        let search = self.address.as_ref().map_or(String::new(), |_| self.place.search());
        format!("{}{search}#{hash}", self.address.as_deref().unwrap_or_default())
    }

    /// What the group has made so far.
    pub(crate) fn document(&self) -> Document {
        Document { record: self.record(), notebook: self.desk.notebook.clone() }
    }

    /// Whatever was done is one step of the history; typing in one field is one until it is
    /// left.
    fn follow_history(&mut self, key: Option<&str>) {
        let now = self.document();
        if let Some(history) = self.history_of(&now) {
            history.follow(&now, key);
        }
    }

    /// What came from elsewhere is no step of anybody's.
    pub(crate) fn rebase_history(&mut self) {
        let now = self.document();
        if let Some(history) = self.history_of(&now) {
            history.rebase(now);
        }
    }

    /// The history of the open notebook. Another notebook has one of its own, which begins
    /// with what is there now; then there is nothing to add to it.
    fn history_of(&mut self, now: &Document) -> Option<&mut History> {
        if self.history_slot == self.desk.slot {
            return Some(&mut self.history);
        }
        self.history = History::new(now.clone());
        self.history_slot = self.desk.slot;
        None
    }

    /// Shows the document that undo or redo gave.
    fn show_document(&mut self, shown: Document) {
        let Document { record, notebook } = shown;
        (self.design, self.swings) = (record.design, record.swings);
        self.desk.unsaved |= self.desk.notebook != notebook;
        self.desk.notebook = notebook;
        self.desk.begin_anew();
        self.drafts.clear();
        (self.announced_faults, self.typing) = (None, None);
        self.refresh();
    }

    fn take(&mut self, record: Record) {
        let has_swings = record.has_swings();
        let setup = self.swings.setup;
        (self.design, self.swings) = (record.design, record.swings);
        if !has_swings {
            // Then the record does not say how this rocket is swung.
            self.swings.setup = setup;
        }
        self.drafts.clear();
        (self.announced_faults, self.typing) = (None, None);
        self.refresh();
    }
}

/// What a message does. The only writer of the state. Whatever differs afterwards can be
/// undone.
pub(crate) fn update(state: &mut State, msg: Msg) -> Vec<Effect> {
    let step = msg.step();
    let mut effects = perform(state, msg);
    if !state.place.is_shown(state) {
        let first = Place::first(state);
        effects.extend(go_to(state, first, false));
    }
    match step {
        Step::None => {}
        Step::One => state.follow_history(None),
        Step::Typing(id) => state.follow_history(Some(&id)),
        Step::Left => state.history.seal(),
        Step::FromElsewhere => state.rebase_history(),
    }
    effects
}

fn perform(state: &mut State, msg: Msg) -> Vec<Effect> {
    match msg {
        Msg::Typed { field, text } => typed_into(state, field, &text),
        Msg::Left { field } => left(state, field),
        Msg::Paused => match state.announced_faults.take() {
            Some(_) => vec![Effect::Redraw],
            None => Vec::new(),
        },
        Msg::Stepped { field, steps } => stepped(state, field, steps),
        Msg::Take { field, value } => {
            let mut effects = typed_into(state, field, &value);
            state.typing = None;
            effects.push(Effect::Focus(field.to_string()));
            effects
        }
        Msg::Dragged { part, from_mm, by_px } => dragged(state, part, from_mm, by_px),
        Msg::Chose { choice, value } => {
            let mut design = state.design.clone();
            if !edits::choose(&mut design, &state.report, choice, &value) {
                return Vec::new();
            }
            state.replace(design);
            changed()
        }
        Msg::Add(addition) => {
            let mut design = state.design.clone();
            let part = edits::add(&mut design, addition);
            state.replace(design);
            let mut effects = changed();
            effects.push(Effect::Focus(format!("part:{part}")));
            effects
        }
        Msg::Copy(part) => edited(state, edits::copy, part),
        Msg::Remove(part) => edited(state, edits::remove, part),
        Msg::MoveUp(part) => edited(state, |d, p| edits::swap(d, p, false), part),
        Msg::MoveDown(part) => edited(state, |d, p| edits::swap(d, p, true), part),
        Msg::AddCorner(set) => edited_in_place(state, |d| edits::add_corner(d, set)),
        Msg::RemoveCorner(set, corner) => {
            edited_in_place(state, |d| edits::remove_corner(d, set, corner))
        }
        Msg::Start(start) => {
            let (design, name) = match start {
                Start::Example(example) => {
                    let design = edits::example(example);
                    let name = design.name.clone();
                    (design, name)
                }
                Start::Bottle(size) => (
                    size.design(),
                    words::menus_empty_bottle(Number::trimmed(size.litres(), 2)),
                ),
            };
            state.replace_all(design.into());
            state.swing.previous = None;
            state.notice = Some(Notice::Started(name));
            let mut effects = changed();
            effects.push(Effect::CloseMenus);
            effects
        }
        Msg::Undo => travelled(state, false),
        Msg::Redo => travelled(state, true),
        Msg::AllMeasurements(all) => {
            state.all_measurements = all;
            vec![Effect::Redraw, Effect::KeepView]
        }
        Msg::Units(system) => {
            state.units = Units { system };
            state.typing = None;
            vec![Effect::Redraw, Effect::KeepView]
        }
        Msg::Go(field) => go(state, field),
        Msg::To(place) => go_to(state, place, place != state.place),
        Msg::Back(place) => go_to(state, place, false),
        Msg::Speak(choice) => speech::chose(state, choice),
        Msg::Beside(choice) => speech::chose_beside(state, choice),
        Msg::TableCame(table) => speech::came(state, table),
        Msg::Big(big) => {
            state.big = big;
            vec![Effect::Redraw, Effect::KeepView]
        }
        // What is written in the notebook goes along.
        Msg::CopyLink if state.has_notebook() => {
            in_place(state, PlaceMsg::HandIn(HandInMsg::CopyLink))
        }
        Msg::CopyLink => {
            let text = state.link_to(&link::hash(&state.record()));
            vec![Effect::Copy { text, is_link: true }]
        }
        Msg::Copied { text, is_link, done } => copied(state, text, is_link, done),
        Msg::Save => in_place(state, PlaceMsg::HandIn(HandInMsg::Save)),
        Msg::SaveRocket => in_place(state, PlaceMsg::HandIn(HandInMsg::SaveRocket)),
        Msg::OpenText(text) => {
            state.notice = None;
            notebook_state::update(state, NotebookMsg::OpenText(text))
        }
        Msg::FileTooLarge { bytes } => {
            // Saturates, which is large enough.
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "saturates"
            )]
            let bytes = bytes as usize;
            state.notice = Some(Notice::FileFault(unopened::file_too_large(bytes)));
            vec![Effect::Redraw]
        }
        Msg::HashChanged(hash) if link::may_be_more(&hash) => {
            notebook_state::update(state, NotebookMsg::OpenText(hash))
        }
        Msg::HashChanged(hash) => hash_changed(state, &hash),
        Msg::KeepThis => keeping::keep_this(state),
        Msg::BackToMine => keeping::back_to_kept(state),
        Msg::KeptElsewhere(text) => keeping::changed_elsewhere(state, text),
        Msg::SaveKept => match &state.keeping {
            Keeping::Unreadable(text) => vec![Effect::Download {
                name: "noseward-kept.json".into(),
                text: text.clone(),
            }],
            _ => Vec::new(),
        },
        Msg::AskToDelete(asks) => {
            state.asks_to_delete = asks;
            let next = if asks { "delete-now" } else { "ask-to-delete" };
            vec![Effect::Redraw, Effect::Focus(next.into())]
        }
        Msg::DeleteAll => vec![Effect::DeleteAll],
        Msg::Deleted { left } => keeping::deleted(state, left),
        Msg::Try(way) => {
            state.computer.tried(way, CapabilityProbe::Asking);
            vec![Effect::Try(way), Effect::Redraw]
        }
        Msg::Tried(way, trial) => {
            state.computer.tried(way, trial);
            vec![Effect::Redraw]
        }
        Msg::Offline(ready) => {
            state.computer.offline = ready;
            vec![Effect::Redraw]
        }
        // The lesson stands in the page; any other sheet waits for its part.
        Msg::Print(Paper::Lesson) => print(Paper::Lesson),
        Msg::Print(paper) => notebook_state::update(state, NotebookMsg::Print(paper)),
        Msg::PrintPlace => vec![Effect::PrintPlace],
        Msg::Dismiss => {
            state.notice = None;
            vec![Effect::Redraw, Effect::Focus("place-title".into())]
        }
        Msg::Passed => {
            state.notice.take_if(|notice| notice.is_passing());
            vec![Effect::Redraw]
        }
        Msg::Wrote { refused } => keeping::wrote(state, refused),
        Msg::Resized { width_px, height_px, graph_px, window_px } => {
            state.computer.window_px = window_px;
            state.sheet_px = (width_px, height_px);
            state.graph_px = graph_px;
            vec![Effect::Redraw]
        }
        Msg::Angle(degrees) => {
            state.angle_deg = degrees.clamp(0.0, 180.0);
            vec![Effect::Redraw]
        }
        Msg::Slice => {
            if state.class.is_busy {
                return call(state, Ask::Gather).effects;
            }
            if state.paper.as_ref().is_some_and(|desk| desk.is_busy()) {
                return call(state, Ask::MakeSheets).effects;
            }
            let mut effects = call(state, Ask::Uncertainty).effects;
            if effects.is_empty() && state.announced_faults.is_none() {
                effects = swing::slice(state);
            }
            effects
        }
        Msg::Notebook(msg) => notebook_state::update(state, msg),
        Msg::Still(still) => {
            state.swing.still = still;
            state.swing.motion.playing &= !still;
            vec![Effect::Redraw]
        }
        Msg::WorkOut => {
            state.announced_faults = None;
            while call(state, Ask::Uncertainty).effects.contains(&Effect::Slice) {}
            while !swing::slice(state).is_empty() {}
            vec![Effect::Redraw]
        }
        Msg::Printing(paper) => {
            state.printing = paper;
            if paper.is_some() {
                perform(state, Msg::WorkOut)
            } else {
                vec![Effect::Redraw]
            }
        }
        Msg::Resolution(resolution) => {
            state.resolution = resolution;
            state.certainty = Certainty::Unknown;
            vec![Effect::Redraw]
        }
    }
}

/// What printing a sheet takes, once its part is here.
pub(crate) fn print(paper: Paper) -> Vec<Effect> {
    vec![Effect::CloseMenus, Effect::Print(paper)]
}

/// What a message of a place does, once its part is here.
fn in_place(state: &mut State, msg: PlaceMsg) -> Vec<Effect> {
    notebook_state::update(state, NotebookMsg::Place(msg))
}

/// How putting a text on the clipboard went.
fn copied(state: &mut State, text: String, is_link: bool, done: bool) -> Vec<Effect> {
    state.computer.tried(
        Capability::Copy,
        if done { CapabilityProbe::Works } else { CapabilityProbe::Barred },
    );
    let with_notebook =
        is_link && link::may_be_more(text.split('#').nth(1).unwrap_or(""));
    state.handed_in |= done && with_notebook;
    state.notice = Some(match (done, is_link) {
        (false, _) => Notice::CopyByHand(text),
        (true, true) => Notice::Copied { with_notebook },
        (true, false) => Notice::said(words::app_copied()),
    });
    vec![Effect::Redraw]
}

/// What follows a change of the design.
pub(crate) fn changed() -> Vec<Effect> {
    vec![Effect::Redraw, Effect::Keep]
}

/// Another place is shown. `step` says whether the browser's history gets one.
pub(crate) fn go_to(state: &mut State, place: Place, step: bool) -> Vec<Effect> {
    state.place = place;
    state.typing = None;
    state.asks_to_delete = false;
    state.swing.motion.playing = false;
    state.notice.take_if(|notice| notice.is_passing());
    let mut effects = vec![Effect::CloseMenus, Effect::Arrive { step }, Effect::Redraw];
    if place == Place::Swing {
        effects.extend(swing::arrive(state));
    }
    effects.extend(notebook_state::ask_for(state, place.part()));
    effects
}

fn typed_into(state: &mut State, field: Field, text: &str) -> Vec<Effect> {
    state.announced_faults =
        Some(state.faults().into_iter().map(|(told, ..)| told).collect());
    state.typing = Some((field.to_string(), text.to_owned()));
    let mut design = state.design.clone();
    let read = match field {
        Field::Name => {
            text.clone_into(&mut design.name);
            Ok(())
        }
        Field::Weight(i, WeightField::Label) => match design.weights.get_mut(i) {
            Some(weight) => {
                text.clone_into(&mut weight.label);
                Ok(())
            }
            None => return Vec::new(),
        },
        _ => {
            let Some(quantity) = field.quantity() else { return Vec::new() };
            typed::read(text, quantity, state.units).and_then(|value| {
                let whole = quantity != Quantity::Count || value.is_none_or(is_whole);
                if !whole {
                    return Err(Unreadable::NotWhole);
                }
                let value = value.map(|v| quantity.rounded(v));
                if field.set(&mut design, value) {
                    Ok(())
                } else if value.is_none() {
                    Err(Unreadable::Empty)
                } else {
                    Err(Unreadable::NotWhole)
                }
            })
        }
    };
    state.drafts.retain(|(drafted, _)| *drafted != field);
    match read {
        Ok(()) => {
            if design != state.design {
                let before = std::mem::replace(&mut state.design, design);
                state.leave_behind(&before, state.swings.setup);
                state.refresh();
            }
        }
        Err(why) => {
            state.drafts.push((field, Draft { text: text.to_owned(), why }));
        }
    }
    changed()
}

fn is_whole(value: f64) -> bool {
    value.fract() == 0.0
}

/// A field that is left shows its value as it is stored; text that could not be read
/// stays.
fn left(state: &mut State, field: Field) -> Vec<Effect> {
    state.announced_faults = None;
    state.typing.take_if(|(typing, _)| *typing == field.to_string());
    vec![Effect::Redraw]
}

fn stepped(state: &mut State, field: Field, steps: f64) -> Vec<Effect> {
    let Some(quantity) = field.quantity() else { return Vec::new() };
    let bounds = field.bounds();
    let now = field
        .get(&state.design)
        .or_else(|| stand_in(&state.design, &state.report, field));
    let step = quantity.key_step(state.units);
    let value = within(now.unwrap_or(bounds.0) + steps * step, bounds);
    let text = words::as_typed(&quantity.number(quantity.rounded(value), state.units));
    typed_into(state, field, &text)
}

fn dragged(state: &mut State, part: Component, from_mm: f64, by_px: f64) -> Vec<Effect> {
    let Some(field) = place_field(part) else { return Vec::new() };
    let sheet = crate::shell::sheet(state);
    let Some(scale) = noseward_drawing::mm_per_px(&state.drawn.0, &sheet) else {
        return Vec::new();
    };
    // Whole millimetres: a hand on a mouse is no finer.
    let by_px = by_px / crate::shell::magnification(state);
    let value = within((from_mm + by_px * scale).round(), field.bounds());
    let text = words::as_typed(&Quantity::Length.number(value, state.units));
    let effects = typed_into(state, field, &text);
    state.typing = None;
    effects
}

fn edited(
    state: &mut State,
    edit: impl Fn(&mut Design, Component) -> Option<Component>,
    part: Component,
) -> Vec<Effect> {
    let mut design = state.design.clone();
    let Some(next) = edit(&mut design, part) else { return Vec::new() };
    state.replace(design);
    let mut effects = changed();
    effects.push(Effect::Focus(format!("part:{next}")));
    effects
}

fn edited_in_place(state: &mut State, edit: impl Fn(&mut Design) -> bool) -> Vec<Effect> {
    let mut design = state.design.clone();
    if !edit(&mut design) {
        return Vec::new();
    }
    state.replace(design);
    changed()
}

/// Undo, or redo, with a word of what it was.
fn travelled(state: &mut State, forward: bool) -> Vec<Effect> {
    let before = state.document();
    let history = &mut state.history;
    if !forward && history.pass_over_facts() {
        state.notice =
            Some(Notice::Said { alarming: true, words: words::app_facts().into() });
        return vec![Effect::Redraw];
    }
    let shown = if forward { history.redo() } else { history.undo() };
    let Some(shown) = shown else { return Vec::new() };
    state.show_document(shown);
    state.rebase_history();
    let mut effects =
        call(state, Ask::Told { forward, before: Box::new(before) }).effects;
    effects.extend(changed());
    effects
}

/// To a field that a fault names; all measurements are shown if it is not among the few.
fn go(state: &mut State, field: Field) -> Vec<Effect> {
    let id = crate::shell::target_of(field);
    let mut effects = vec![Effect::Redraw];
    if state.place != Place::Rocket {
        effects = go_to(state, Place::Rocket, true);
    }
    if !crate::places::rocket::is_shown(state, field) {
        state.all_measurements = true;
        effects.push(Effect::KeepView);
    }
    effects.push(Effect::Focus(id));
    effects
}

/// Somebody put another link into the address bar.
pub(crate) fn hash_changed(state: &mut State, hash: &str) -> Vec<Effect> {
    match link::open_hash(hash) {
        link::Opened::Nothing => Vec::new(),
        link::Opened::Record(record) if record == state.record() => Vec::new(),
        link::Opened::Record(record) => {
            state.replace_all(record);
            state.notice = Some(Notice::Opened);
            changed()
        }
        link::Opened::Partial { design, missing } => {
            state.replace_all(design.into());
            state.notice = Some(Notice::LinkCut(missing));
            changed()
        }
        link::Opened::Damaged(fault) => {
            state.notice = Some(Notice::LinkDamaged(unopened::link(&fault.kind)));
            vec![Effect::Redraw]
        }
    }
}

/// Every example and bottle, as the menu offers them.
pub(crate) fn starts() -> Vec<Start> {
    let examples = Example::ALL.into_iter().map(Start::Example);
    examples.chain(BottleSize::ALL.into_iter().map(Start::Bottle)).collect()
}

#[cfg(test)]
mod tests;
