//! Every sheet: what it is called, and how it is made.

use maud::{Markup, html};
use noseward_drawing::paper::{Page, PaperSize};
use noseward_drawing::{CutOut, cut_out};
use noseward_words::{self as words, Text};

use super::model::PaperDesk;
use crate::app::State;
use crate::places::form::plain_button;

/// What sheets are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Group {
    Cutting,
}

impl Group {
    pub(super) const ALL: [Self; 1] = [Self::Cutting];

    pub(super) fn name(self) -> Text {
        match self {
            Self::Cutting => words::paper_place_for_cutting(),
        }
    }
}

/// A sheet, or several that belong together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Sheet {
    #[default]
    CutOut,
    CutOutSmall,
    Answers,
}

impl Sheet {
    pub(crate) const ALL: [Self; 3] = [Self::CutOut, Self::CutOutSmall, Self::Answers];

    pub(super) fn group(self) -> Group {
        match self {
            Self::CutOut | Self::CutOutSmall | Self::Answers => Group::Cutting,
        }
    }

    pub(super) fn name(self) -> Text {
        match self {
            Self::CutOut => words::paper_place_cut_out(),
            Self::CutOutSmall => words::paper_place_cut_out_small(),
            Self::Answers => words::paper_place_answers(),
        }
    }

    /// What its file is called.
    pub(super) fn key(self) -> &'static str {
        match self {
            Self::CutOut | Self::CutOutSmall => "cut-out",
            Self::Answers => "answers",
        }
    }

    /// The sheets that it consists of.
    pub(super) fn parts(self) -> Vec<Self> {
        vec![self]
    }

    /// Whether there is a line to cut along that a cutter may have alone.
    pub(super) fn has_outline(self) -> bool {
        matches!(self, Self::CutOut | Self::CutOutSmall)
    }

    /// What has to be asked before it is shown.
    pub(super) fn waits_for(self, state: &State, desk: &PaperDesk) -> Option<Markup> {
        let is_measured = state.measured.centre_of_mass.is_some()
            && state.measured.centre_of_pressure.is_some();
        let asks = self == Self::Answers && !is_measured && !desk.anyway;
        asks.then(|| {
            html! {
                p { (words::paper_place_not_measured()) }
                p { (plain_button("pp-anyway", false, words::paper_place_anyway())) }
            }
        })
    }

    /// Its pages; `None` where there is no rocket to draw.
    pub(super) fn pages(self, state: &State, size: PaperSize) -> Option<Vec<Page>> {
        let cut = |on_one_sheet, answers_mm| {
            let wish = CutOut { size, on_one_sheet, units: state.units, answers_mm };
            cut_out(&state.design, &wish)
        };
        match self {
            Self::CutOut => cut(false, None),
            Self::CutOutSmall => cut(true, None),
            Self::Answers => {
                let figures = state.report.figures.as_ref()?;
                let mass_m = figures.computed_mass.centre_m;
                let pressure_m = figures.computed_centre_of_pressure_side_on_m;
                cut(false, Some((mass_m * 1000.0, pressure_m * 1000.0)))
            }
        }
    }
}
