//! A notebook as rows of cells.

use csv::{Terminator, WriterBuilder};
use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, Deleted, End, Measurements, NOTE_CHARS, Notebook,
    PLAN_CHARS, Point, REASON_CHARS, Record, SwingOutcome, Trial,
};
use noseward_stability::{Design, Quantity, SwingField, cleaned_lines, evaluate};

use super::column::Column;
use super::kind::Kind;
use super::{Format, VERSION, cell, number};
use crate::{Opened, hash, open_hash};

/// Decimals of a length in millimetres: the grid of links.
const MM_PLACES: usize = 1;

/// One row.
#[derive(Clone, Copy)]
enum Row<'a> {
    Trial(&'a Trial),
    Deleted(&'a Deleted),
    Plan(&'a str),
    Conclusion,
    Notebook,
}

impl Row<'_> {
    fn kind(self) -> Kind {
        match self {
            Self::Trial(_) => Kind::Trial,
            Self::Deleted(_) => Kind::Deleted,
            Self::Plan(_) => Kind::Plan,
            Self::Conclusion => Kind::Conclusion,
            Self::Notebook => Kind::Notebook,
        }
    }
}

/// The rows of a notebook, headings first, with this end of line.
pub(super) fn write(notebook: &Notebook, format: Format, end: Terminator) -> String {
    let trials = notebook.trials().iter().map(Row::Trial);
    let deleted = notebook.deleted().iter().map(Row::Deleted);
    let plans = notebook.plans().iter().map(|plan| Row::Plan(plan));
    let rows = trials.chain(deleted).chain(plans).chain([Row::Conclusion, Row::Notebook]);

    let columns = Column::all();
    let mut table = WriterBuilder::new()
        .delimiter(format.delimiter())
        .terminator(end)
        .from_writer(Vec::new());
    let mut write = |cells: Vec<String>| {
        table.write_record(cells).expect("a row goes into memory, and all are as long");
    };
    write(columns.iter().map(|column| column.heading()).collect());
    for row in rows {
        let writer = Cells::new(notebook, row, format);
        write(columns.iter().map(|&column| writer.cell(column)).collect());
    }
    let bytes = table.into_inner().expect("memory has room");
    String::from_utf8(bytes).expect("cells are text")
}

/// The cells of one row.
struct Cells<'a> {
    notebook: &'a Notebook,
    row: Row<'a>,
    mark: char,
    /// The computed separation of the trial's rocket.
    separation_mm: Option<f64>,
}

impl<'a> Cells<'a> {
    fn new(notebook: &'a Notebook, row: Row<'a>, format: Format) -> Self {
        let separation_mm = match row {
            Row::Trial(trial) | Row::Deleted(Deleted { trial, .. }) => {
                separation_mm(trial.design())
            }
            Row::Plan(_) | Row::Conclusion | Row::Notebook => None,
        };
        Self { notebook, row, mark: format.mark(), separation_mm }
    }

    fn cell(&self, column: Column) -> String {
        if !column.is_in(self.row.kind()) {
            return String::new();
        }
        match (self.row, column) {
            (row, Column::Kind) => row.kind().label().into(),
            (_, Column::Group) => self.notebook.group.to_string(),
            (Row::Deleted(deleted), Column::Place) => count(deleted.place + 1),
            (Row::Trial(trial) | Row::Deleted(Deleted { trial, .. }), _) => {
                self.of_trial(trial, column)
            }
            (Row::Plan(plan), Column::Plan) => text(plan, PLAN_CHARS),
            (_, Column::Statement(of)) => {
                text(self.notebook.conclusion.text(of), BOX_CHARS)
            }
            (_, Column::Version) => count(VERSION),
            (_, Column::Level) => super::level_word(self.notebook.level).into(),
            (_, Column::Support) => self.notebook.support.label().into(),
            (_, Column::TwoChanges) => {
                super::yes_or_no(self.notebook.allows_two_changes).into()
            }
            (_, Column::InHand) => {
                self.notebook.in_hand().map(|trial| count(trial.id())).unwrap_or_default()
            }
            _ => String::new(),
        }
    }

    fn of_trial(&self, trial: &Trial, column: Column) -> String {
        let measured = &trial.measured;
        let length_mm = design_length_mm(trial.design());
        let has_setup = !trial.swings().outcomes().is_empty();
        let version = |i: usize| trial.predictions().versions().get(i);
        match column {
            Column::Trial => count(trial.id()),
            Column::ComparedWith => trial.compared_with().map(count).unwrap_or_default(),
            Column::Plan => text(&trial.plan, PLAN_CHARS),
            Column::Name => cell::written(&trial.design().name).into_owned(),
            Column::Rocket => rocket(trial.design()),
            Column::RocketLength => self.mm(measured.rocket_length_mm),
            Column::CutOutLength => self.mm(measured.cutout_length_mm),
            Column::From(point) => from(measured, point),
            Column::Guess(point) => self.mm(measured.of(point).guess_mm),
            Column::Reading(point, i) => self.mm(measured.of(point).mm[i]),
            Column::LeftOut(point) => {
                let left_out = measured.of(point).left_out.as_ref();
                left_out.map(|out| count(out.reading + 1)).unwrap_or_default()
            }
            Column::LeftOutReason(point) => {
                let left_out = measured.of(point).left_out.as_ref();
                left_out.map(|out| text(&out.reason, REASON_CHARS)).unwrap_or_default()
            }
            Column::Middle(point) => {
                self.mm(measured.middle(point, length_mm).map(|middle| middle.middle_mm))
            }
            Column::Range(point) => {
                self.mm(measured.middle(point, length_mm).map(|middle| middle.range_mm()))
            }
            Column::Separation => self.mm(measured.separation_mm(length_mm)),
            Column::ComputedSeparation => self.mm(self.separation_mm),
            Column::Overall => trial.overall().label().into(),
            Column::Outcome(i) => word(version(i).map(|version| version.outcome)),
            Column::Because(i) => {
                version(i).map(|v| text(&v.because, BECAUSE_CHARS)).unwrap_or_default()
            }
            Column::SwingsSeen(i) => {
                version(i).map(|version| count(version.swings_seen)).unwrap_or_default()
            }
            Column::DraftOutcome => word(trial.draft.outcome),
            Column::DraftBecause => text(&trial.draft.because, BECAUSE_CHARS),
            Column::Setup(field) if has_setup => {
                let value = field.get(&trial.swings().setup);
                match field {
                    SwingField::AirDensity => {
                        number::written(value * 1000.0, 0, self.mark)
                    }
                    _ => number::written(value, 2, self.mark),
                }
            }
            Column::Swing(i) => word(trial.swings().outcomes().get(i).copied()),
            Column::Note => text(&trial.note, NOTE_CHARS),
            // A letter in front: 12345678 and 1e234567 are numbers too.
            Column::Seal => {
                trial.seal().map(|seal| format!("s{seal}")).unwrap_or_default()
            }
            Column::Altered if trial.is_altered() => super::yes_or_no(true).into(),
            _ => String::new(),
        }
    }

    fn mm(&self, value: Option<f64>) -> String {
        value
            .map(|mm| number::written(Quantity::Length.rounded(mm), MM_PLACES, self.mark))
            .unwrap_or_default()
    }
}

/// A free text as it is kept, in a cell.
fn text(text: &str, most_chars: usize) -> String {
    cell::written(&cleaned_lines(text, most_chars)).into_owned()
}

fn count(count: impl ToString) -> String {
    count.to_string()
}

fn word(outcome: Option<SwingOutcome>) -> String {
    outcome.map(SwingOutcome::label).unwrap_or_default().into()
}

/// The end from which a point was measured; nothing where nothing was.
fn from(measured: &Measurements, point: Point) -> String {
    let readings = measured.of(point);
    match readings.from {
        End::Nose if !readings.any() => String::new(),
        from => from.word().into(),
    }
}

/// The rocket as a link, or as JSON where a link has no room for all of it.
fn rocket(design: &Design) -> String {
    let record = Record::from(design.clone());
    let link = hash(&record);
    let json = |design: &Design| serde_json::to_string(design).unwrap_or_default();
    let whole = json(design);
    // JSON has no way to write what is not a number; a link has.
    let all_finite = serde_json::from_str::<Design>(&whole).is_ok();
    match open_hash(&link) {
        Opened::Record(opened) if !all_finite || json(&opened.design) == whole => {
            format!("#{link}")
        }
        _ => whole,
    }
}

/// The length of a design, in millimetres.
pub(super) fn design_length_mm(design: &Design) -> f64 {
    design.sections.iter().map(|section| section.length_mm).sum()
}

/// The computed separation, in millimetres; `None` where a fault stands in its way.
pub(super) fn separation_mm(design: &Design) -> Option<f64> {
    evaluate(design).figures.map(|figures| figures.separation_m * 1000.0)
}
