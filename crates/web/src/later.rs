//! What loads once the first drawing stands: how sure the figures are, what stands below the
//! drawing, the swing bench, the notebook, the ways out of this computer, and what it allows. A part of its own, which the rest of the page calls through
//! [`answer`] only.

use crate::app::{Effect, NotebookMsg, State};
use crate::notebook;
use crate::views::{self, Drawing, Region};

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
    /// For what is left of the open notebook should the module ever stop.
    Crash,
    /// For link, code and symbol of the rocket.
    Share,
    /// For what this computer allows.
    Computer,
    /// To work out a little more of how sure the figures are; the answer is what is next.
    Sure,
    /// For what stands below the drawing.
    Below,
    /// To work out the motion on the string.
    Hang,
    /// To try a few starts more.
    Starts,
    /// For the swing bench, but for its moving pictures.
    Bench,
    /// For the pictures of the bench at their present time, and that time in words.
    Pictures,
    /// For what moves in them, likewise.
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
    /// Pictures, each with its place.
    pub(crate) pictures: Vec<(&'static str, Drawing)>,
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
            pictures: Vec::new(),
            groups: Vec::new(),
        }
    }
}

/// Answers a call.
pub(crate) fn answer(state: &mut State, call: &mut Call) {
    match &call.ask {
        Ask::Update(msg) => call.effects = notebook::update(state, msg),
        Ask::Forms => call.regions = notebook::forms(state),
        Ask::Notebook => call.regions = notebook::outputs(state),
        Ask::File => call.text = Some(notebook::file(state)),
        Ask::Crash => call.regions = notebook::for_crash(state),
        Ask::Share => call.regions = views::share(state),
        Ask::Computer => call.regions = views::computer(state),
        Ask::Sure => call.effects = state.work_out_sure(),
        Ask::Below => call.regions = views::later_regions(state),
        Ask::Hang => state.hang(),
        Ask::Starts => call.effects = state.try_starts(),
        Ask::Bench => call.regions = views::bench_regions(state),
        Ask::Pictures => {
            call.pictures = views::bench_pictures(state);
            call.text = Some(views::bench_time(state));
        }
        Ask::Moving => {
            call.groups = views::bench_moving(state);
            call.text = Some(views::bench_time(state));
        }
    }
}
