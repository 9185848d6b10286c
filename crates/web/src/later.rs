//! What loads once the first drawing stands: the notebook, the ways out of this computer,
//! and what it allows. A part of its own, which the rest of the page calls through
//! [`answer`] only.

use crate::app::{Effect, NotebookMsg, State};
use crate::notebook;
use crate::views::{self, Region};

/// What this part is asked.
#[derive(Debug)]
pub(crate) enum Ask {
    /// To let a message change the notebook.
    Update(NotebookMsg),
    /// For the notebook's forms, which are only built anew when their structure changes.
    Forms,
    /// For what is redrawn of the notebook after each change.
    Notebook,
    /// For the notebook as it is kept.
    File,
    /// For link, code and symbol of the rocket.
    Share,
    /// For what this computer allows.
    Computer,
}

/// A question, with room for its answer.
#[derive(Debug)]
pub(crate) struct Call {
    ask: Ask,
    /// What the browser has to do.
    pub(crate) effects: Vec<Effect>,
    /// What is to be shown.
    pub(crate) regions: Vec<Region>,
    /// A file.
    pub(crate) text: Option<String>,
}

impl Call {
    pub(crate) fn new(ask: Ask) -> Self {
        Self { ask, effects: Vec::new(), regions: Vec::new(), text: None }
    }
}

/// Answers a call.
pub(crate) fn answer(state: &mut State, call: &mut Call) {
    match &call.ask {
        Ask::Update(msg) => call.effects = notebook::update(state, msg),
        Ask::Forms => call.regions = notebook::forms(state),
        Ask::Notebook => call.regions = notebook::outputs(state),
        Ask::File => call.text = Some(notebook::file(state)),
        Ask::Share => call.regions = views::share(state),
        Ask::Computer => call.regions = views::computer(state),
    }
}
