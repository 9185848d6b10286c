//! Every sheet: what it is called, and how it is made.

use maud::{Markup, html};
use noseward_drawing::paper::{Page, PaperSize};
use noseward_drawing::{CutOut, cut_out, sheets};
use noseward_words::{self as words, Text};

use super::model::PaperDesk;
use crate::app::State;
use crate::places::form::plain_button;

/// What sheets are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Group {
    Cutting,
    Pupils,
}

impl Group {
    pub(super) const ALL: [Self; 2] = [Self::Cutting, Self::Pupils];

    pub(super) fn name(self) -> Text {
        match self {
            Self::Cutting => words::paper_place_for_cutting(),
            Self::Pupils => words::paper_place_for_pupils(),
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
    PupilPack,
    Record,
    Results,
    CueCards,
    RoleCards,
}

/// What a sheet is made from; `None` where there is no rocket to draw.
type Make = fn(&State, PaperSize) -> Option<Vec<Page>>;

/// What is known of a sheet.
struct Row {
    sheet: Sheet,
    group: Group,
    name: Text,
    /// What its file is called.
    key: &'static str,
    make: Make,
}

const SHEETS: [Row; 8] = [
    Row {
        sheet: Sheet::CutOut,
        group: Group::Cutting,
        name: words::paper_place_cut_out(),
        key: "cut-out",
        make: |state, size| cut(state, size, false),
    },
    Row {
        sheet: Sheet::CutOutSmall,
        group: Group::Cutting,
        name: words::paper_place_cut_out_small(),
        key: "cut-out-small",
        make: |state, size| cut(state, size, true),
    },
    Row {
        sheet: Sheet::Answers,
        group: Group::Cutting,
        name: words::paper_place_answers(),
        key: "answers",
        make: answers,
    },
    Row {
        sheet: Sheet::PupilPack,
        group: Group::Pupils,
        name: words::paper_place_pupil_pack(),
        key: "pupils",
        make: |state, size| all_of(Sheet::PupilPack, state, size),
    },
    Row {
        sheet: Sheet::Record,
        group: Group::Pupils,
        name: words::pupil_record(),
        key: "record",
        make: |state, size| {
            Some(sheets::record(size, state.desk.notebook.level, state.units))
        },
    },
    Row {
        sheet: Sheet::Results,
        group: Group::Pupils,
        name: words::pupil_results(),
        key: "results",
        make: |state, size| Some(sheets::results(size, state.units)),
    },
    Row {
        sheet: Sheet::CueCards,
        group: Group::Pupils,
        name: words::pupil_cards(),
        key: "cue-cards",
        make: |_, size| Some(sheets::cue_cards(size)),
    },
    Row {
        sheet: Sheet::RoleCards,
        group: Group::Pupils,
        name: words::pupil_roles(),
        key: "role-cards",
        make: |_, size| Some(sheets::role_cards(size)),
    },
];

impl Sheet {
    /// Every sheet, in the order of the list.
    pub(crate) fn all() -> impl Iterator<Item = Self> {
        SHEETS.iter().map(|row| row.sheet)
    }

    fn row(self) -> &'static Row {
        SHEETS.iter().find(|row| row.sheet == self).unwrap_or(&SHEETS[0])
    }

    pub(super) fn group(self) -> Group {
        self.row().group
    }

    pub(super) fn name(self) -> Text {
        self.row().name
    }

    pub(super) fn key(self) -> &'static str {
        self.row().key
    }

    /// The sheets that it consists of.
    pub(super) fn parts(self) -> Vec<Self> {
        let group = match self {
            Self::PupilPack => Group::Pupils,
            _ => return vec![self],
        };
        let is_part = |sheet: &Self| *sheet != self && sheet.group() == group;
        Self::all().filter(is_part).collect()
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
        (self.row().make)(state, size)
    }
}

fn all_of(pack: Sheet, state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let pages = pack.parts().into_iter().filter_map(|sheet| sheet.pages(state, size));
    Some(pages.flatten().collect())
}

fn cut(state: &State, size: PaperSize, on_one_sheet: bool) -> Option<Vec<Page>> {
    let units = state.units;
    cut_out(&state.design, &CutOut { size, on_one_sheet, units, answers_mm: None })
}

fn answers(state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let figures = state.report.figures.as_ref()?;
    let mass_m = figures.computed_mass.centre_m;
    let pressure_m = figures.computed_centre_of_pressure_side_on_m;
    let answers_mm = Some((mass_m * 1000.0, pressure_m * 1000.0));
    let units = state.units;
    cut_out(&state.design, &CutOut { size, on_one_sheet: false, units, answers_mm })
}
