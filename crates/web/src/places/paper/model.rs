//! What the place Paper knows.

use std::borrow::Cow;

use noseward_drawing::Scene;
use noseward_drawing::paper::{Page, PaperSize};
use noseward_words as words;

use super::sheets::Sheet;
use crate::app::State;

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
    /// A PDF that is being made.
    pub(super) making: Option<Making>,
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

/// A PDF that is being made, a sheet after the other.
#[derive(Clone, Debug)]
pub(super) struct Making {
    /// What is still to be made, the last first.
    pub(super) todo: Vec<Sheet>,
    pub(super) pages: Vec<Page>,
    /// Whether it is opened once it is made, and not saved.
    pub(super) opens: bool,
    of: usize,
}

impl Making {
    pub(super) fn new(sheet: Sheet, opens: bool) -> Self {
        let mut todo = sheet.parts();
        todo.reverse();
        Self { of: todo.len(), todo, pages: Vec::new(), opens }
    }

    pub(super) fn done(&self) -> usize {
        self.of - self.todo.len()
    }

    pub(super) fn of(&self) -> usize {
        self.of
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

    /// Which of some pages is looked at.
    pub(super) fn page_of(&self, pages: &[Page]) -> usize {
        self.page.min(pages.len().saturating_sub(1))
    }

    /// Whether a PDF is being made.
    pub(crate) fn is_busy(&self) -> bool {
        self.making.is_some()
    }
}

impl State {
    /// What the place shows; before anybody did anything there, what it begins with.
    pub(super) fn paper_desk(&self) -> Cow<'_, PaperDesk> {
        match self.paper.as_deref() {
            Some(desk) => Cow::Borrowed(desk),
            None => Cow::Owned(PaperDesk::default()),
        }
    }
}
