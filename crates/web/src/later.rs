//! What loads once the first drawing stands: every place but the first, what the notebook does,
//! and how sure the figures are. The first part of the page calls it through the functions
//! here only, one for each [`Part`].

use noseward_lesson::Document;
use wasm_bindgen::JsValue;

use crate::app::{Effect, NotebookMsg, Notice, Paper, Place, State, print};
use crate::dom::{self, Look};
use crate::js;
use crate::notebook;
use crate::part::Part;
use crate::places::class::ClassMsg;
use crate::places::hand_in::HandInMsg;
use crate::places::paper::PaperMsg;
use crate::places::set_up::SetUpMsg;
use crate::places::trial::done;
use crate::places::{self, PlaceMsg};
use crate::shell::{Region, crash};

/// What a part is asked.
#[derive(Debug)]
pub(crate) enum Ask {
    /// To let a message change the notebook.
    Update(NotebookMsg),
    /// For what stands in this place.
    Place(Place),
    /// For a sheet of paper.
    Paper(Paper),
    /// For the rocket in words: the drawing is described by them.
    InWords,
    /// To tell what undo or redo did to the document as it was.
    Told { forward: bool, before: Box<Document> },
    /// For the notebook as it is kept.
    Kept,
    /// For what is left of the open notebook should the module ever stop.
    Crash,
    /// To work out a little more of how sure the figures are; the answer is what is next.
    Uncertainty,
    /// To work out the motion on the string.
    Swing,
    /// To try a few starts more.
    Starts,
    /// To take in a little more of what is handed in to a class.
    Gather,
    /// To make one sheet more of a PDF.
    MakeSheets,
    /// For the class as it is kept.
    KeptClass,
    /// For what moves in the pictures of the swing test, and the time that they show.
    Moving,
}

impl Ask {
    /// The part that can answer; `None` for the first part's own place.
    pub(crate) fn part(&self) -> Option<Part> {
        Some(match self {
            Self::Update(msg) => of_message(msg),
            Self::Place(place) => return place.part(),
            Self::Swing | Self::Starts => Part::Motion,
            Self::Paper(Paper::Swing) | Self::Moving => Part::Swing,
            Self::Paper(Paper::Sheets) | Self::MakeSheets => Part::Paper,
            Self::Paper(Paper::Group | Paper::Groups | Paper::Class) => Part::Class,
            Self::Paper(_) => Part::Files,
            Self::Gather | Self::KeptClass => Part::Class,
            Self::InWords => Part::Why,
            Self::Told { .. } => Part::Trial,
            Self::Kept | Self::Crash => Part::Notebook,
            Self::Uncertainty => Part::Certainty,
        })
    }
}

/// The part that knows what a message does.
pub(crate) fn of_message(msg: &NotebookMsg) -> Part {
    match msg {
        NotebookMsg::Print(Paper::Swing) => Part::Motion,
        NotebookMsg::OpenText(_) | NotebookMsg::OpenLink(_) | NotebookMsg::Print(_) => {
            Part::Files
        }
        NotebookMsg::Place(PlaceMsg::HandIn(HandInMsg::Symbols)) => Part::HandIn,
        // A link is what is kept.
        NotebookMsg::Place(PlaceMsg::HandIn(HandInMsg::CopyLink)) => Part::Notebook,
        NotebookMsg::Place(PlaceMsg::HandIn(_)) => Part::Files,
        NotebookMsg::Place(PlaceMsg::Swing(_)) => Part::Swing,
        NotebookMsg::Place(PlaceMsg::Compare(_)) => Part::Compare,
        NotebookMsg::Place(PlaceMsg::Lead(_)) => Part::Lead,
        NotebookMsg::Place(PlaceMsg::Led(part, _)) => *part,
        NotebookMsg::Place(PlaceMsg::Class(_)) => Part::Class,
        NotebookMsg::Place(PlaceMsg::Join(_)) => Part::Files,
        NotebookMsg::Typed { field, .. } if field.starts_with(places::set_up::FIELD) => {
            Part::SetUp
        }
        NotebookMsg::Typed { field, .. } if field.starts_with(places::class::FIELD) => {
            Part::Class
        }
        NotebookMsg::Place(_) => Part::Trial,
        _ => Part::Notebook,
    }
}

/// A question, with room for its answer.
#[derive(Debug)]
pub(crate) struct Call {
    pub(crate) ask: Ask,
    /// What the browser has to do.
    pub(crate) effects: Vec<Effect>,
    /// What is to be shown.
    pub(crate) regions: Vec<Region>,
    /// A file, or a few words.
    pub(crate) text: Option<String>,
    /// Groups of pictures, each with the place of its picture.
    pub(crate) groups: Vec<(&'static str, &'static str, String)>,
}

impl Call {
    pub(crate) fn new(ask: Ask) -> Self {
        Self {
            ask,
            effects: Vec::new(),
            regions: Vec::new(),
            text: None,
            groups: Vec::new(),
        }
    }
}

/// What crosses into a part.
pub(crate) enum Question<'a> {
    /// Something of the page.
    Page { state: &'a mut State, call: &'a mut Call },
    /// A design of another program's, for its report.
    Evaluate { design: JsValue, report: &'a mut Result<JsValue, JsValue> },
    /// Symbols, which are read where the browser is, or a drawing, which is painted there.
    Look(Look<'a>),
}

/// What a part is asked that has nothing to do with it is no question: it stays unanswered.
pub(crate) fn notebook(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Update(NotebookMsg::Place(_)) => {
            call.effects = places::hand_in::copy_link(state);
        }
        Ask::Update(msg) => call.effects = notebook::update(state, msg),
        Ask::Kept => call.text = Some(notebook::kept(state)),
        Ask::Crash => call.regions = crash::for_crash(state),
        _ => {}
    }
}

pub(crate) fn certainty(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    if matches!(call.ask, Ask::Uncertainty) {
        call.effects = state.work_out_sure();
    }
}

pub(crate) fn measure(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    if matches!(call.ask, Ask::Place(_)) {
        call.regions = places::measure::regions(state);
    }
}

pub(crate) fn trial(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(Place::Predict) => call.regions = places::predict::regions(state),
        Ask::Place(Place::Conclude) => call.regions = places::conclude::regions(state),
        Ask::Update(NotebookMsg::Place(msg)) => {
            call.effects = match msg {
                PlaceMsg::Predict(msg) => places::predict::update(state, *msg),
                PlaceMsg::Conclude(msg) => places::conclude::update(state, *msg),
                _ => Vec::new(),
            };
        }
        Ask::Told { forward, before } => {
            let now = state.document();
            let (earlier, later) =
                if *forward { (&**before, &now) } else { (&now, &**before) };
            let words = done::told(earlier, later, *forward, state.units);
            state.notice = words.map(Notice::said);
        }
        _ => {}
    }
}

pub(crate) fn swing(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::swing::regions(state),
        Ask::Update(NotebookMsg::Place(PlaceMsg::Swing(msg))) => {
            call.effects = places::swing::update(state, msg.clone());
        }
        Ask::Paper(_) => {
            call.regions = places::sheet_of_paper(places::swing::paper(state));
        }
        Ask::Moving => {
            call.groups = places::swing::moving(state);
            call.text = Some(places::swing::time(state));
        }
        _ => {}
    }
}

pub(crate) fn motion(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Update(NotebookMsg::Print(paper)) => call.effects = print(*paper),
        Ask::Swing => state.work_out_swing(),
        Ask::Starts => call.effects = state.try_starts(),
        _ => {}
    }
}

pub(crate) fn compare(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::compare::regions(state),
        Ask::Update(NotebookMsg::Place(PlaceMsg::Compare(msg))) => {
            call.effects = places::compare::update(state, *msg);
        }
        _ => {}
    }
}

pub(crate) fn why(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::why::regions(state),
        Ask::InWords => call.regions = places::why::described(state),
        _ => {}
    }
}

pub(crate) fn hand_in(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::hand_in::regions(state),
        Ask::Update(_) => {
            call.effects = places::hand_in::show_symbols(state);
        }
        _ => {}
    }
}

pub(crate) fn lead(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::lead::regions(state),
        Ask::Update(NotebookMsg::Place(PlaceMsg::Lead(msg))) => {
            call.effects = places::lead::update(state, *msg);
        }
        _ => {}
    }
}

pub(crate) fn word_mat(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    if matches!(call.ask, Ask::Place(_)) {
        call.regions = places::word_mat::regions(state);
    }
}

pub(crate) fn set_up(question: &mut Question<'_>) {
    let Question::Page { state, call } = question else { return };
    match &call.ask {
        Ask::Place(_) => call.regions = places::set_up::regions(state),
        Ask::Update(NotebookMsg::Typed { field, text }) => {
            call.effects = places::set_up::typed(state, field, text);
        }
        Ask::Update(NotebookMsg::Place(PlaceMsg::Led(_, control))) => {
            if let Some(msg) = SetUpMsg::parse(control) {
                call.effects = places::set_up::update(state, msg);
            }
        }
        _ => {}
    }
}

pub(crate) fn class(question: &mut Question<'_>) {
    let (state, call) = match question {
        Question::Page { state, call } => (state, call),
        Question::Look(look) => return dom::look_at_symbols(look),
        Question::Evaluate { .. } => return,
    };
    call.effects = places::class::open(state);
    match &call.ask {
        Ask::Place(_) => call.regions = places::class::regions(state),
        Ask::Paper(paper) => call.regions = places::class::paper(state, *paper),
        Ask::Gather => call.effects.extend(places::class::gather(state)),
        Ask::KeptClass => call.text = Some(places::class::kept(state)),
        Ask::Update(NotebookMsg::Typed { field, text }) => {
            call.effects.extend(places::class::typed(state, field, text));
        }
        Ask::Update(NotebookMsg::Place(PlaceMsg::Class(msg))) => {
            call.effects.extend(places::class::update(state, msg.clone()));
        }
        Ask::Update(NotebookMsg::Place(PlaceMsg::Led(_, control))) => {
            if let Some(msg) = ClassMsg::parse(control) {
                call.effects.extend(places::class::update(state, msg));
            }
        }
        _ => {}
    }
}

pub(crate) fn paper(question: &mut Question<'_>) {
    let (state, call) = match question {
        Question::Page { state, call } => (state, call),
        Question::Look(look) => return dom::paint(look),
        Question::Evaluate { .. } => return,
    };
    call.effects = places::paper::open(state);
    match &call.ask {
        Ask::Place(_) => call.regions = places::paper::regions(state),
        Ask::Paper(_) => call.regions = places::paper::on_paper(state),
        Ask::MakeSheets => call.effects = places::paper::make(state),
        Ask::Update(NotebookMsg::Place(PlaceMsg::Led(_, control))) => {
            if let Some(msg) = PaperMsg::parse(control) {
                call.effects = places::paper::update(state, msg);
            }
        }
        _ => {}
    }
}

pub(crate) fn files(question: &mut Question<'_>) {
    let (state, call) = match question {
        Question::Page { state, call } => (state, call),
        Question::Evaluate { design, report } => {
            **report = js::report_of(design.clone());
            return;
        }
        Question::Look(_) => return,
    };
    match &call.ask {
        Ask::Paper(paper) => call.regions = places::paper(state, *paper),
        Ask::Place(_) => call.regions = places::join::regions(state),
        Ask::Update(NotebookMsg::Place(PlaceMsg::Join(msg))) => {
            call.effects = notebook::join(state, *msg);
        }
        Ask::Update(NotebookMsg::Print(paper)) => call.effects = print(*paper),
        Ask::Update(NotebookMsg::OpenText(text)) => {
            call.effects = notebook::open_text(state, text);
        }
        Ask::Update(NotebookMsg::OpenLink(text)) => {
            call.effects = notebook::open_link(state, text);
        }
        Ask::Update(NotebookMsg::Place(PlaceMsg::HandIn(msg))) => {
            call.effects = places::hand_in::update(state, *msg);
        }
        _ => {}
    }
}
