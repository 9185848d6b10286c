//! Every sheet: what it is called, and how it is made.

use std::iter;

use maud::{Markup, html};
use noseward_drawing::paper::{Page, PaperSize};
use noseward_drawing::sheets::teacher::{TeacherPack, TeacherSheet};
use noseward_drawing::sheets::{self, GroupReport};
use noseward_drawing::{CutOut, Scene, below, cut_out, cut_out_outline, pattern};
use noseward_lesson::TrialResult;
use noseward_link::{SetUpLink, result_code, rules_text, set_up_code};
use noseward_stability::{Design, Mass, Material, Space, Swing, SwingSetup};
use noseward_words::{self as words, Text};

use super::drawings::Drawing;
use super::model::PaperDesk;
use crate::app::State;
use crate::places::form::plain_button;
use crate::places::trial::changed::label;
use crate::places::{set_up, word_mat};

/// Between parts that a cutter has in one file, in millimetres.
const APART_MM: f64 = 5.0;

/// What sheets are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Group {
    Cutting,
    Pupils,
    Leaders,
    Drawings,
}

impl Group {
    pub(super) const ALL: [Self; 4] =
        [Self::Cutting, Self::Pupils, Self::Leaders, Self::Drawings];

    pub(super) fn name(self) -> Text {
        match self {
            Self::Cutting => words::paper_place_for_cutting(),
            Self::Pupils => words::paper_place_for_pupils(),
            Self::Leaders => words::paper_place_for_leaders(),
            Self::Drawings => words::paper_place_drawings(),
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
    Fins,
    Nose,
    Strip,
    Tools,
    PupilPack,
    Record,
    CueCards,
    RoleCards,
    Charts,
    WordMat,
    Report,
    TeacherPack,
    Teacher(TeacherSheet),
    Results,
    Labels,
    Drawing(Drawing),
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

const SHEETS: [Row; 31] = [
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
        sheet: Sheet::Fins,
        group: Group::Cutting,
        name: words::paper_place_fins(),
        key: "fins",
        make: |state, size| {
            let sets = 0..state.design.fins.len();
            some(sets.flat_map(|set| pattern::fin_pattern(size, &state.design, set)))
        },
    },
    Row {
        sheet: Sheet::Nose,
        group: Group::Cutting,
        name: words::paper_place_nose(),
        key: "nose-and-tapers",
        make: nose,
    },
    Row {
        sheet: Sheet::Strip,
        group: Group::Cutting,
        name: words::paper_place_strip(),
        key: "strip",
        make: |state, size| some(pattern::strip_pattern(size, &state.design).into_iter()),
    },
    Row {
        sheet: Sheet::Tools,
        group: Group::Cutting,
        name: words::paper_place_tools(),
        key: "ruler-and-stand",
        make: |_, size| Some(pattern::tools_pattern(size)),
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
        sheet: Sheet::CueCards,
        group: Group::Pupils,
        name: words::pupil_cards(),
        key: "cue-cards",
        make: |state, size| Some(sheets::cue_cards_with_room(size, room(state))),
    },
    Row {
        sheet: Sheet::RoleCards,
        group: Group::Pupils,
        name: words::pupil_roles(),
        key: "role-cards",
        make: |_, size| Some(sheets::role_cards(size)),
    },
    Row {
        sheet: Sheet::Charts,
        group: Group::Pupils,
        name: words::pupil_charts(),
        key: "charts",
        make: |state, size| Some(sheets::blank_charts(size, state.units)),
    },
    Row {
        sheet: Sheet::WordMat,
        group: Group::Pupils,
        name: words::places_words(),
        key: "words",
        make: |_, size| Some(sheets::word_mat(size, &word_mat::terms())),
    },
    Row {
        sheet: Sheet::Report,
        group: Group::Pupils,
        name: words::paper_place_report(),
        key: "report",
        make: report,
    },
    Row {
        sheet: Sheet::TeacherPack,
        group: Group::Leaders,
        name: words::paper_place_teacher_pack(),
        key: "pack",
        make: |state, size| all_of(Sheet::TeacherPack, state, size),
    },
    teacher(TeacherSheet::Lesson, "lesson", |state, size| {
        of_pack(TeacherSheet::Lesson, state, size)
    }),
    teacher(TeacherSheet::Idea, "idea", |state, size| {
        of_pack(TeacherSheet::Idea, state, size)
    }),
    teacher(TeacherSheet::WrongIdeas, "wrong-ideas", |state, size| {
        of_pack(TeacherSheet::WrongIdeas, state, size)
    }),
    teacher(TeacherSheet::Answers, "lesson-answers", |state, size| {
        of_pack(TeacherSheet::Answers, state, size)
    }),
    teacher(TeacherSheet::Demonstration, "demonstration", |state, size| {
        of_pack(TeacherSheet::Demonstration, state, size)
    }),
    teacher(TeacherSheet::Hazards, "hazards", |state, size| {
        of_pack(TeacherSheet::Hazards, state, size)
    }),
    teacher(TeacherSheet::Cover, "cover-lesson", |state, size| {
        of_pack(TeacherSheet::Cover, state, size)
    }),
    teacher(TeacherSheet::Home, "take-home", |state, size| {
        of_pack(TeacherSheet::Home, state, size)
    }),
    teacher(TeacherSheet::Evidence, "evidence", |state, size| {
        of_pack(TeacherSheet::Evidence, state, size)
    }),
    Row {
        sheet: Sheet::Results,
        group: Group::Leaders,
        name: words::pupil_results(),
        key: "results",
        make: |state, size| Some(sheets::results(size, state.units)),
    },
    Row {
        sheet: Sheet::Labels,
        group: Group::Leaders,
        name: words::paper_place_labels(),
        key: "labels",
        make: labels,
    },
    drawing(Drawing::Rocket, "rocket", |state, size| Drawing::Rocket.pages(state, size)),
    drawing(Drawing::Outline, "outline", |state, size| {
        Drawing::Outline.pages(state, size)
    }),
    drawing(Drawing::Chart, "chart", |state, size| Drawing::Chart.pages(state, size)),
    drawing(Drawing::Series, "series", |state, size| Drawing::Series.pages(state, size)),
    drawing(Drawing::Air, "air", |state, size| Drawing::Air.pages(state, size)),
];

/// A drawing, on a page.
const fn drawing(drawing: Drawing, key: &'static str, make: Make) -> Row {
    Row {
        sheet: Sheet::Drawing(drawing),
        group: Group::Drawings,
        name: drawing.name(),
        key,
        make,
    }
}

/// A sheet of the teacher pack.
const fn teacher(sheet: TeacherSheet, key: &'static str, make: Make) -> Row {
    Row {
        sheet: Sheet::Teacher(sheet),
        group: Group::Leaders,
        name: sheet.name(),
        key,
        make,
    }
}

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
        let is_part: fn(&Self) -> bool = match self {
            Self::PupilPack => |sheet| {
                matches!(
                    sheet,
                    Self::Record | Self::CueCards | Self::RoleCards | Self::Charts
                )
            },
            Self::TeacherPack => |sheet| matches!(sheet, Self::Teacher(_)),
            _ => return vec![self],
        };
        Self::all().filter(is_part).collect()
    }

    /// What is cut out of it and nothing else, at true size, for a cutter.
    pub(super) fn outline(self, state: &State) -> Option<Scene> {
        let design = &state.design;
        let sets = 0..design.fins.len();
        let pieces: Vec<Scene> = match self {
            Self::CutOut | Self::CutOutSmall => return cut_out_outline(design),
            Self::Fins => {
                let one = |set: usize| {
                    let count = design.fins[set].count as usize;
                    let piece = pattern::fin_piece(design, set).into_iter();
                    piece.flat_map(move |piece| iter::repeat_n(piece, count))
                };
                sets.flat_map(one).collect()
            }
            Self::Nose => {
                card(design).flat_map(|i| pattern::section_pieces(design, i)).collect()
            }
            Self::Strip => {
                sets.filter_map(|set| pattern::strip_piece(design, set)).collect()
            }
            Self::Tools => vec![pattern::ruler_piece(), pattern::stand_piece()],
            _ => return None,
        };
        below(self.name().as_str(), pieces, APART_MM)
    }

    /// Whether whoever assesses a risk may go on with it in a spreadsheet.
    pub(super) fn has_table(self) -> bool {
        self == Self::Teacher(TeacherSheet::Hazards)
    }

    /// Whether it is a drawing and no sheet.
    pub(super) fn is_drawing(self) -> bool {
        matches!(self, Self::Drawing(_))
    }

    /// The drawing that it is, if there is something to draw.
    pub(super) fn drawing(self, state: &State) -> Option<Scene> {
        match self {
            Self::Drawing(drawing) => drawing.scene(state),
            _ => None,
        }
    }

    /// What has to be asked before it is shown.
    pub(super) fn waits_for(self, state: &State, desk: &PaperDesk) -> Option<Markup> {
        let is_measured = state.measured.centre_of_mass.is_some()
            && state.measured.centre_of_pressure.is_some();
        let tells = match self {
            Self::Answers | Self::TeacherPack | Self::Drawing(Drawing::Air) => true,
            Self::Teacher(sheet) => sheet.tells_answers(),
            _ => false,
        };
        let asks = tells && !is_measured && !desk.anyway;
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
    cut_out(&state.design, &CutOut { size, on_one_sheet: true, units, answers_mm })
}

/// The pages, if there are some.
fn some(pages: impl Iterator<Item = Page>) -> Option<Vec<Page>> {
    let pages: Vec<Page> = pages.collect();
    (!pages.is_empty()).then_some(pages)
}

/// Every section that is made of card, or of nothing that is known.
fn card(design: &Design) -> impl Iterator<Item = usize> {
    let is_bottle = |i: usize| match design.sections[i].mass {
        Mass::Material(material) => material == Material::BottleWall,
        Mass::Joined => true,
        Mass::WeighedG(_) | Mass::SheetGPerM2(_) => !design.sections[i].kind.is_nose(),
    };
    (0..design.sections.len()).filter(move |i| !is_bottle(*i))
}

fn nose(state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let design = &state.design;
    some(card(design).flat_map(|i| pattern::section_pattern(size, design, i)))
}

/// The room that a swing of the rocket on the page takes, with the set-up's string and turns.
fn room(state: &State) -> Option<Space> {
    let (set_up, _) = set_up::of_form(state);
    let setup = SwingSetup {
        string_m: set_up.limits.string_m,
        turns_per_s: set_up.limits.turns_per_s,
        ..SwingSetup::default()
    };
    Some(Swing::new(state.report.figures.as_ref()?, &setup)?.space())
}

fn report(state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let notebook = &state.desk.notebook;
    let last = notebook.in_hand().or(notebook.trials().last())?;
    let code = TrialResult::of(notebook, last.id()).map(|result| result_code(&result));
    let rules = notebook.rules().map(rules_text);
    let of = GroupReport {
        notebook,
        units: state.units,
        address: state.address.as_deref(),
        rules: rules.as_deref(),
        code: code.as_deref(),
        changed: label,
    };
    Some(sheets::report(size, &of))
}

fn of_pack(sheet: TeacherSheet, state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let (set_up, plan) = set_up::of_form(state);
    let rules = rules_text(set_up.rules());
    let of = TeacherPack { set_up: &set_up, plan, rules: &rules, confidence: None };
    Some(sheet.pages(size, of))
}

fn labels(state: &State, size: PaperSize) -> Option<Vec<Page>> {
    let (set_up, _) = set_up::of_form(state);
    let rules = rules_text(set_up.rules());
    let code =
        |group| set_up_code(&SetUpLink { set_up: set_up.clone(), group: Some(group) });
    Some(sheets::labels(size, &set_up, state.address.as_deref(), &rules, &code))
}
