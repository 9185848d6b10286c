//! What the place Paper knows.

use noseward_drawing::Scene;
use noseward_drawing::paper::{Page, PaperSize};
use noseward_lesson::{Notebook, Plan, SetUp};
use noseward_stability::{Design, Units};
use noseward_words as words;

use super::sheets::Sheet;
use crate::app::State;
use crate::places::set_up;

/// Which sheet is looked at, and how.
#[derive(Clone, Debug, Default)]
pub(crate) struct PaperDesk {
    pub(super) sheet: Sheet,
    /// The paper that somebody chose.
    pub(super) chosen: Option<PaperSize>,
    /// The page that is looked at.
    pub(super) page: usize,
    /// Whether answers are shown though nothing was measured.
    pub(super) anyway: bool,
    /// What was made of it.
    pub(super) made: Option<Made>,
    /// What the browser is to paint.
    pub(crate) picture: Option<Picture>,
}

/// A picture that is to be painted.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Picture {
    pub(crate) scene: Scene,
    /// How many of its points lie along a unit of the drawing.
    pub(crate) scale: f64,
    /// What its file is called.
    pub(crate) name: String,
}

/// Pages that are made, a sheet after the other.
#[derive(Clone, Debug)]
pub(super) struct Made {
    from: From,
    /// What is still to be made, the last first.
    todo: Vec<Sheet>,
    pub(super) pages: Vec<Page>,
    pub(super) of: usize,
}

/// What pages are made from: where that changes, they are made anew.
#[derive(Clone, Debug, PartialEq)]
struct From {
    sheet: Sheet,
    size: PaperSize,
    design: Design,
    notebook: Notebook,
    set_up: (SetUp, Plan),
    units: Units,
    language: &'static str,
}

impl Made {
    /// Nothing yet of what the place shows.
    fn new(state: &State, desk: &PaperDesk) -> Self {
        let mut todo = desk.sheet.parts();
        todo.reverse();
        Self { from: From::now(state, desk), of: todo.len(), todo, pages: Vec::new() }
    }

    /// Makes one sheet more; whether there was one.
    pub(super) fn go_on(&mut self, state: &State) -> bool {
        let Some(sheet) = self.todo.pop() else { return false };
        self.pages.extend(sheet.pages(state, self.from.size).unwrap_or_default());
        true
    }

    pub(super) fn done(&self) -> usize {
        self.of - self.todo.len()
    }

    pub(super) fn is_whole(&self) -> bool {
        self.todo.is_empty()
    }
}

impl From {
    fn now(state: &State, desk: &PaperDesk) -> Self {
        Self {
            sheet: desk.sheet,
            size: desk.size(),
            design: state.design.clone(),
            notebook: state.desk.notebook.clone(),
            set_up: set_up::of_form(state),
            units: state.units,
            language: words::language().key,
        }
    }
}

impl PaperDesk {
    /// The paper: by itself that of the United States where their English is spoken.
    pub(super) fn size(&self) -> PaperSize {
        self.chosen.unwrap_or_else(|| match words::language().key {
            "en-US" => PaperSize::Letter,
            _ => PaperSize::A4,
        })
    }

    /// The pages that are made so far.
    pub(super) fn pages(&self) -> &[Page] {
        self.made.as_ref().map_or(&[], |made| &made.pages)
    }

    /// Which of them is looked at.
    pub(super) fn at(&self) -> usize {
        self.page.min(self.pages().len().saturating_sub(1))
    }

    /// Whether there is more to be made.
    pub(crate) fn is_busy(&self) -> bool {
        self.made.as_ref().is_some_and(|made| !made.is_whole())
    }

    /// Begins anew where what is made is of something else, and makes the first sheet.
    pub(super) fn follow(&mut self, state: &State) {
        let now = From::now(state, self);
        if self.made.as_ref().is_none_or(|made| made.from != now) {
            let mut made = Made::new(state, self);
            made.go_on(state);
            self.made = Some(made);
        }
    }
}
