//! Every sheet that the project makes.

use noseward_drawing::paper::{
    CHECK_BAR_MM, CHECK_BAR_WIDE_MM, Column, Flow, Mark, Page, PaperSize, Table,
    check_bars,
};
use noseward_drawing::sheets::teacher::{TeacherPack, TeacherSheet};
use noseward_drawing::sheets::{cue_cards, record, role_cards};
use noseward_drawing::{
    CutOut, LabelStyle, Point, Sheet as Drawn, Told, cut_out, pattern, rocket,
};
use noseward_lesson::{Level, Plan, SetUp};
use noseward_stability::{Example, SectionKind, Units, evaluate};

use crate::pupil;

/// A sheet that can be made.
#[derive(Clone, Copy, Debug)]
pub struct Sheet {
    /// Its name in files and failures.
    pub name: &'static str,
    /// Makes its pages in the language in use.
    pub make: fn(PaperSize) -> Vec<Page>,
}

/// All of them. A new sheet gets a line here, and with it the checks of all sheets.
pub const SHEETS: &[Sheet] = &[
    Sheet { name: "everything", make: everything },
    Sheet { name: "record-model", make: |size| record(size, Level::Model, Units::INCH) },
    Sheet { name: "cut-out", make: |size| cut_out_of(size, false, None) },
    Sheet { name: "cut-out-small", make: |size| cut_out_of(size, true, None) },
    Sheet {
        name: "cut-out-answers",
        make: |size| cut_out_of(size, true, Some((140.0, 202.0))),
    },
    Sheet {
        name: "parts-fins",
        make: |size| pattern::fin_pattern(size, &Example::Puffin.design(), 0),
    },
    Sheet {
        name: "parts-nose",
        make: |size| pattern::section_pattern(size, &Example::Razorbill.design(), 0),
    },
    Sheet { name: "parts-taper", make: |size| straight(size, 120.0, 2) },
    Sheet { name: "parts-large", make: |size| straight(size, 400.0, 0) },
    Sheet {
        name: "parts-strip",
        make: |size| pattern::strip_pattern(size, &Example::Puffin.design()),
    },
    Sheet { name: "parts-tools", make: pattern::tools_pattern },
    Sheet { name: "record", make: pupil::record },
    Sheet { name: "results", make: pupil::results },
    Sheet { name: "blank-charts", make: pupil::blank_charts },
    Sheet { name: "cue-cards", make: cue_cards },
    Sheet { name: "role-cards", make: role_cards },
    Sheet { name: "report", make: pupil::report },
    Sheet { name: "word-mat", make: pupil::word_mat },
    Sheet { name: "labels", make: pupil::labels },
    Sheet { name: "teacher-lesson", make: |size| teacher(size, TeacherSheet::Lesson) },
    Sheet { name: "teacher-idea", make: |size| teacher(size, TeacherSheet::Idea) },
    Sheet { name: "teacher-wrong", make: |size| teacher(size, TeacherSheet::WrongIdeas) },
    Sheet { name: "teacher-answers", make: |size| teacher(size, TeacherSheet::Answers) },
    Sheet {
        name: "teacher-show",
        make: |size| teacher(size, TeacherSheet::Demonstration),
    },
    Sheet { name: "teacher-hazards", make: |size| teacher(size, TeacherSheet::Hazards) },
    Sheet { name: "teacher-cover", make: |size| teacher(size, TeacherSheet::Cover) },
    Sheet { name: "teacher-home", make: |size| teacher(size, TeacherSheet::Home) },
    Sheet {
        name: "teacher-evidence",
        make: |size| teacher(size, TeacherSheet::Evidence),
    },
];

/// A part of a rocket with straight sides, the nose so long.
fn straight(size: PaperSize, nose_mm: f64, section: usize) -> Vec<Page> {
    let mut design = Example::Puffin.design();
    design.sections[0].kind = SectionKind::Cone;
    design.sections[0].length_mm = nose_mm;
    design.sections[2].kind = SectionKind::StraightTaper;
    pattern::section_pattern(size, &design, section)
}

/// A sheet of the teacher pack, of a lesson that begins with a rocket.
fn teacher(size: PaperSize, sheet: TeacherSheet) -> Vec<Page> {
    let rocket = Some(Example::Puffin.design());
    let set_up = &SetUp { rocket, ..SetUp::default() };
    let of = TeacherPack { set_up, plan: Plan::HalfDay, rules: "K7Q0", confidence: None };
    sheet.pages(size, of)
}

fn cut_out_of(
    size: PaperSize,
    on_one_sheet: bool,
    answers_mm: Option<(f64, f64)>,
) -> Vec<Page> {
    let wish = CutOut { size, on_one_sheet, units: Units::METRIC, answers_mm };
    cut_out(&Example::Razorbill.design(), &wish).unwrap_or_default()
}

/// One of each thing that a sheet may hold.
fn everything(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, "What we found: “Größe” − 3 × 5 → ½");
    flow.fields(&["Group", "Date", "Rocket"]);
    flow.paragraph(&"Hang the rocket from a string until it hangs level. ".repeat(5));
    flow.caution("Tug the string hard first. Everyone else stands outside the marked line, whatever happens, and stays there.");
    flow.heading(2, "What you need");
    flow.list(&["A bottle", &"Card, and more of it. ".repeat(9)], Mark::Box);
    flow.list(&["First", "Second"], Mark::Number);
    flow.list(&["This", "That"], Mark::Dot);
    flow.heading(3, "Where both points are");
    let design = Example::Puffin.design();
    let figures = evaluate(&design).figures;
    let sheet = Drawn {
        width_px: 600.0,
        height_px: 380.0,
        units: Units::METRIC,
        labels: LabelStyle::Full,
        told: Told::BOTH,
    };
    let scene = figures.and_then(|figures| rocket(&design, &figures, &sheet));
    flow.figure(&scene.unwrap_or_default(), (186.0, 120.0));
    let cells =
        |i: usize| vec![i.to_string(), String::new(), "it went round −30° → down".into()];
    flow.table(&Table {
        caption: "Readings".into(),
        columns: [("Trial", 1.0), ("mm", 2.0), ("What happened", 3.0)]
            .map(|(head, share)| Column { head: head.into(), share })
            .into(),
        rows: (1..30).map(cells).collect(),
        row_mm: 9.0,
    });
    flow.ruled("We think that", 4, 9.0);
    let bars =
        check_bars(Point { x: 20.0, y: 10.0 }, Point { x: 150.0, y: CHECK_BAR_WIDE_MM });
    flow.drawing("Bars", CHECK_BAR_WIDE_MM + CHECK_BAR_MM, bars);
    flow.small("In small print.");
    flow.pages()
}
