//! What loads once the first drawing stands: every place but the first, what the notebook does,
//! and how sure the figures are. A part of its own, which the rest of the page calls through
//! [`answer`] only.

use noseward_lesson::Document;
use wasm_bindgen::JsValue;

use crate::app::{Effect, NotebookMsg, Notice, Paper, State};
use crate::js;
use crate::notebook;
use crate::places;
use crate::shell::{Region, crash};

/// What this part is asked.
#[derive(Debug)]
pub(crate) enum Ask {
    /// To let a message change the notebook.
    Update(NotebookMsg),
    /// For what stands in the present place.
    Place,
    /// For a sheet of paper.
    Paper(Paper),
    /// For the rocket in words: the drawing is described by them.
    InWords,
    /// To tell what undo or redo did to the document as it was.
    Told { forward: bool, before: Box<Document> },
    /// For the notebook as it is kept.
    File,
    /// For what is left of the open notebook should the module ever stop.
    Crash,
    /// To work out a little more of how sure the figures are; the answer is what is next.
    Uncertainty,
    /// To work out the motion on the string.
    Swing,
    /// To try a few starts more.
    Starts,
    /// For what moves in the pictures of the swing test, and the time that they show.
    Moving,
}

/// A question, with room for its answer.
#[derive(Debug)]
pub(crate) struct Call {
    ask: Ask,
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

/// What crosses into this part.
#[derive(Debug)]
pub(crate) enum Question<'a> {
    /// Something of the page.
    Page { state: &'a mut State, call: &'a mut Call },
    /// A design of another program's, for its report.
    Evaluate { design: JsValue, report: &'a mut Result<JsValue, JsValue> },
}

/// Answers a question.
pub(crate) fn answer(question: &mut Question<'_>) {
    match question {
        Question::Page { state, call } => of_page(state, call),
        Question::Evaluate { design, report } => **report = js::report_of(design.clone()),
    }
}

fn of_page(state: &mut State, call: &mut Call) {
    match &call.ask {
        Ask::Update(msg) => call.effects = notebook::update(state, msg),
        Ask::Place => call.regions = places::regions(state),
        Ask::Paper(paper) => call.regions = places::paper(state, *paper),
        Ask::InWords => call.regions = places::why::described(state),
        Ask::Told { forward, before } => {
            let now = state.document();
            let (how, what) = if *forward {
                ("Done again", now.done_since(before, state.units))
            } else {
                ("Undone", before.done_since(&now, state.units))
            };
            state.notice = what.map(|what| Notice::said(format!("{how}: {what}.")));
        }
        Ask::File => call.text = Some(notebook::file(state)),
        Ask::Crash => call.regions = crash::for_crash(state),
        Ask::Uncertainty => call.effects = state.work_out_sure(),
        Ask::Swing => state.work_out_swing(),
        Ask::Starts => call.effects = state.try_starts(),
        Ask::Moving => {
            call.groups = places::swing::moving(state);
            call.text = Some(places::swing::time(state));
        }
    }
}
