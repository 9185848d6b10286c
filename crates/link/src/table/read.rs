//! A notebook from rows of cells.

use csv::{ReaderBuilder, StringRecord};
use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, Deleted, End, Group, LeftOut, Level, MOST_OUTCOMES,
    MOST_PLANS, MOST_VERSIONS, NOTE_CHARS, Notebook, NotebookError, PLAN_CHARS, Point,
    Prediction, Predictions, REASON_CHARS, REPEATS, Record, Seal, Statement, Support,
    SwingOutcome, Swings, Trial, TrialParts,
};
use noseward_stability::{Quantity, SwingField, SwingSetup, cleaned_lines};

use super::column::Column;
use super::error::{CellFault, TableError};
use super::kind::Kind;
use super::number::Unread;
use super::{DELIMITERS, VERSION, cell, number};
use crate::open_file;

/// Characters of a cell that are shown with a fault.
const SHOWN_CHARS: usize = 40;

/// What parts the cells of a text, told by its headings; `None` for what is no table.
pub(super) fn delimiter(text: &str) -> Option<u8> {
    DELIMITERS.into_iter().find(|&delimiter| {
        let mut headings = StringRecord::new();
        let mut reader = reader(text, delimiter);
        let is_read = reader.read_record(&mut headings).unwrap_or(false);
        let has = |column: Column| {
            let heading = column.heading();
            headings.iter().any(|found| found.trim().eq_ignore_ascii_case(&heading))
        };
        is_read && has(Column::Kind) && (has(Column::Trial) || has(Column::Group))
    })
}

fn reader(text: &str, delimiter: u8) -> csv::Reader<&[u8]> {
    ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes())
}

/// The notebook in a table that begins with its headings.
pub(super) fn read(text: &str) -> Result<Notebook, TableError> {
    let delimiter = delimiter(text).ok_or(TableError::NotATable)?;
    let mut records = reader(text, delimiter).into_records();
    let headings = match records.next() {
        Some(Ok(headings)) => headings,
        _ => return Err(TableError::NotATable),
    };
    let columns = columns(&headings)?;
    let mut pages = Pages::default();
    for (record, number) in records.zip(2..) {
        let record = record.map_err(|_| TableError::NotATable)?;
        let row = Row { number, record: &record, columns: &columns };
        if record.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        if record.iter().skip(columns.len()).any(|cell| !cell.trim().is_empty()) {
            return Err(TableError::TooManyCells { row: number });
        }
        pages.add(row)?;
    }
    pages.bound()
}

/// What each column holds; `None` for one that is not known here.
fn columns(headings: &StringRecord) -> Result<Vec<Option<Column>>, TableError> {
    let known: Vec<(String, Column)> =
        Column::all().into_iter().map(|column| (column.heading(), column)).collect();
    let mut columns = Vec::new();
    for found in headings {
        let is_it =
            |(heading, _): &&(String, Column)| found.trim().eq_ignore_ascii_case(heading);
        let column = known.iter().find(is_it).map(|&(_, column)| column);
        if let Some(column) = column.filter(|column| columns.contains(&Some(*column))) {
            return Err(TableError::TwoColumns { heading: column.heading() });
        }
        columns.push(column);
    }
    let is_used = |heading: &str| !heading.trim().is_empty();
    let used = headings.iter().zip(1..).filter(|(heading, _)| is_used(heading)).last();
    columns.truncate(used.map_or(0, |(_, count)| count));
    Ok(columns)
}

/// What the rows so far come to.
#[derive(Default)]
struct Pages {
    notebook: Notebook,
    group: Option<Group>,
    trials: Vec<Trial>,
    deleted: Vec<Deleted>,
    in_hand: Option<u16>,
    ids: Vec<u16>,
    has_notebook: bool,
    has_conclusion: bool,
}

impl Pages {
    fn add(&mut self, row: Row<'_>) -> Result<(), TableError> {
        let kinds = Kind::ALL.map(|kind| (kind.label(), kind));
        let kind = row.choice(Column::Kind, &kinds)?;
        let kind = kind.ok_or_else(|| row.fault(Column::Kind, CellFault::Empty))?;
        row.hold_to(kind)?;
        self.take_group(row)?;
        match kind {
            Kind::Trial => {
                let trial = row.trial()?;
                self.take_id(row, &trial)?;
                self.trials.push(trial);
            }
            Kind::Deleted => {
                let trial = row.trial()?;
                self.take_id(row, &trial)?;
                let place = row.count(Column::Place, 1, u16::MAX)?;
                let place =
                    place.map_or(self.trials.len(), |place| usize::from(place) - 1);
                self.deleted.push(Deleted { place, trial });
            }
            Kind::Plan => {
                let plan = row.text(Column::Plan, PLAN_CHARS)?;
                if !self.notebook.add_plan(&plan)
                    && self.notebook.plans().len() == MOST_PLANS
                {
                    return Err(TableError::Notebook(NotebookError::TooManyPlans));
                }
            }
            Kind::Conclusion => {
                row.only_one(&mut self.has_conclusion, kind)?;
                for of in Statement::ALL {
                    let text = row.text(Column::Statement(of), BOX_CHARS)?;
                    *self.notebook.conclusion.text_mut(of) = text;
                }
            }
            Kind::Notebook => {
                row.only_one(&mut self.has_notebook, kind)?;
                self.take_settings(row)?;
            }
        }
        Ok(())
    }

    fn take_group(&mut self, row: Row<'_>) -> Result<(), TableError> {
        let cell = row.plain(Column::Group);
        if cell.is_empty() {
            return Ok(());
        }
        let found = shown(cell);
        let Some(group) = Group::parse(cell) else {
            return Err(row.fault(Column::Group, CellFault::Group { found }));
        };
        if *self.group.get_or_insert(group) != group {
            return Err(row.fault(Column::Group, CellFault::OtherGroup { found }));
        }
        Ok(())
    }

    fn take_id(&mut self, row: Row<'_>, trial: &Trial) -> Result<(), TableError> {
        let id = trial.id();
        if self.ids.contains(&id) {
            return Err(row.fault(Column::Trial, CellFault::Taken { id }));
        }
        self.ids.push(id);
        Ok(())
    }

    fn take_settings(&mut self, row: Row<'_>) -> Result<(), TableError> {
        let version = row.count(Column::Version, 1, u16::MAX)?.unwrap_or(VERSION);
        if version > VERSION {
            return Err(TableError::Newer { version: version.into() });
        }
        let levels = Level::ALL.map(|level| (super::level_word(level), level));
        let kinds = Support::ALL.map(|support| (support.label(), support));
        self.notebook.level = row.choice(Column::Level, &levels)?.unwrap_or_default();
        self.notebook.support = row.choice(Column::Support, &kinds)?.unwrap_or_default();
        self.notebook.allows_two_changes = row.is_yes(Column::TwoChanges)?;
        self.in_hand = row.id(Column::InHand)?;
        Ok(())
    }

    fn bound(mut self) -> Result<Notebook, TableError> {
        self.notebook.group = self.group.unwrap_or_default();
        // What was deleted is in nobody's hand.
        let is_there = |id: &u16| self.trials.iter().any(|trial| trial.id() == *id);
        let in_hand = self.in_hand.filter(is_there);
        self.notebook
            .with_trials(self.trials, self.deleted, in_hand)
            .map_err(TableError::Notebook)
    }
}

/// One row and what its columns hold.
#[derive(Clone, Copy)]
struct Row<'a> {
    number: usize,
    record: &'a StringRecord,
    columns: &'a [Option<Column>],
}

impl<'a> Row<'a> {
    fn fault(self, column: Column, fault: CellFault) -> TableError {
        TableError::Cell { row: self.number, heading: column.heading(), fault }
    }

    /// The cell as it stands; empty where the column is missing.
    fn raw(self, column: Column) -> &'a str {
        let at = self.columns.iter().position(|found| *found == Some(column));
        at.and_then(|at| self.record.get(at)).unwrap_or_default()
    }

    /// The cell of a word or a number.
    fn plain(self, column: Column) -> &'a str {
        self.raw(column).trim()
    }

    fn text(self, column: Column, most: usize) -> Result<String, TableError> {
        let text = cleaned_lines(cell::read(self.raw(column)), usize::MAX);
        let chars = text.chars().count();
        if chars > most {
            return Err(self.fault(column, CellFault::TooLong { chars, most }));
        }
        Ok(text)
    }

    fn number(self, column: Column) -> Result<Option<f64>, TableError> {
        let cell = self.plain(column);
        if cell.is_empty() {
            return Ok(None);
        }
        number::read(cell).map(Some).map_err(|unread| {
            let found = shown(cell);
            self.fault(
                column,
                match unread {
                    Unread::NotANumber => CellFault::Number { found },
                    Unread::Ambiguous => CellFault::Ambiguous { found },
                },
            )
        })
    }

    fn mm(self, column: Column) -> Result<Option<f64>, TableError> {
        Ok(self.number(column)?.map(|mm| Quantity::Length.rounded(mm)))
    }

    /// A whole number within bounds.
    fn count(
        self,
        column: Column,
        least: u16,
        most: u16,
    ) -> Result<Option<u16>, TableError> {
        let Some(value) = self.number(column)? else { return Ok(None) };
        let fits = (f64::from(least)..=f64::from(most)).contains(&value);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "what does not fit is refused"
        )]
        let count = value as u16;
        if fits && f64::from(count) == value {
            return Ok(Some(count));
        }
        let found = shown(self.plain(column));
        Err(self.fault(column, CellFault::Count { found, least, most }))
    }

    /// The number of a trial.
    fn id(self, column: Column) -> Result<Option<u16>, TableError> {
        self.count(column, 1, u16::MAX - 1)
    }

    /// One of some words, in any case.
    fn choice<T: Copy>(
        self,
        column: Column,
        choices: &[(&'static str, T)],
    ) -> Result<Option<T>, TableError> {
        let cell = self.plain(column);
        if cell.is_empty() {
            return Ok(None);
        }
        let found = choices.iter().find(|(word, _)| word.eq_ignore_ascii_case(cell));
        found.map(|&(_, choice)| Some(choice)).ok_or_else(|| {
            let choices = choices.iter().map(|&(word, _)| word).collect();
            self.fault(column, CellFault::Choice { found: shown(cell), choices })
        })
    }

    fn is_yes(self, column: Column) -> Result<bool, TableError> {
        let choices = [true, false].map(|yes| (super::yes_or_no(yes), yes));
        Ok(self.choice(column, &choices)?.unwrap_or(false))
    }

    fn outcome(self, column: Column) -> Result<Option<SwingOutcome>, TableError> {
        let is_seen = matches!(column, Column::Swing(_) | Column::DraftOutcome);
        let choices: Vec<_> = SwingOutcome::ALL
            .into_iter()
            .filter(|outcome| is_seen || outcome.can_be_predicted())
            .map(|outcome| (outcome.label(), outcome))
            .collect();
        self.choice(column, &choices)
    }

    /// Nothing may stand where it would not be read.
    fn hold_to(self, kind: Kind) -> Result<(), TableError> {
        for column in self.columns.iter().flatten() {
            let cell = self.plain(*column);
            if !column.is_in(kind) && !column.is_worked_out() && !cell.is_empty() {
                let (found, kind) = (shown(cell), kind.label());
                return Err(self.fault(*column, CellFault::Misplaced { found, kind }));
            }
        }
        Ok(())
    }

    fn only_one(self, has_one: &mut bool, kind: Kind) -> Result<(), TableError> {
        if std::mem::replace(has_one, true) {
            return Err(TableError::TwoRows { row: self.number, kind: kind.label() });
        }
        Ok(())
    }

    fn trial(self) -> Result<Trial, TableError> {
        let empty = |column| self.fault(column, CellFault::Empty);
        let id = self.id(Column::Trial)?.ok_or_else(|| empty(Column::Trial))?;
        let mut trial = Trial::from_parts(TrialParts {
            id,
            record: self.record()?,
            compared_with: self.id(Column::ComparedWith)?,
            predictions: self.predictions()?,
            seal: self.seal()?,
            altered: self.is_yes(Column::Altered)?,
        });
        trial.plan = self.text(Column::Plan, PLAN_CHARS)?;
        trial.note = self.text(Column::Note, NOTE_CHARS)?;
        trial.draft.outcome = self.outcome(Column::DraftOutcome)?;
        trial.draft.because = self.text(Column::DraftBecause, BECAUSE_CHARS)?;
        trial.measured.rocket_length_mm = self.mm(Column::RocketLength)?;
        trial.measured.cutout_length_mm = self.mm(Column::CutOutLength)?;
        for point in Point::ALL {
            let readings = trial.measured.of_mut(point);
            let ends = [End::Nose, End::Tail].map(|end| (end.word(), end));
            readings.from = self.choice(Column::From(point), &ends)?.unwrap_or_default();
            readings.guess_mm = self.mm(Column::Guess(point))?;
            for (i, reading) in readings.mm.iter_mut().enumerate() {
                *reading = self.mm(Column::Reading(point, i))?;
            }
            readings.left_out = self.left_out(point)?;
        }
        Ok(trial)
    }

    fn left_out(self, point: Point) -> Result<Option<LeftOut>, TableError> {
        let most = u16::try_from(REPEATS).unwrap_or(u16::MAX);
        let reason = self.text(Column::LeftOutReason(point), REASON_CHARS)?;
        match self.count(Column::LeftOut(point), 1, most)? {
            Some(reading) => {
                Ok(Some(LeftOut { reading: usize::from(reading) - 1, reason }))
            }
            None if reason.is_empty() => Ok(None),
            None => Err(self.fault(Column::LeftOut(point), CellFault::Empty)),
        }
    }

    /// The rocket and its swings: those in the columns, or, where they say nothing, those
    /// that came with a link.
    fn record(self) -> Result<Record, TableError> {
        let cell = self.plain(Column::Rocket);
        if cell.is_empty() {
            return Err(self.fault(Column::Rocket, CellFault::Empty));
        }
        let record = open_file(cell).map_err(|error| {
            let detail = error.to_string();
            let detail = detail.split(['.', ':']).next().unwrap_or_default().into();
            self.fault(Column::Rocket, CellFault::Rocket { detail })
        })?;
        let mut setup = SwingSetup::default();
        for field in SwingField::ALL {
            if let Some(value) = self.number(Column::Setup(field))? {
                let is_grams = field == SwingField::AirDensity;
                field.set(&mut setup, if is_grams { value / 1000.0 } else { value });
            }
        }
        let mut outcomes = Vec::new();
        for i in 0..MOST_OUTCOMES {
            outcomes.extend(self.outcome(Column::Swing(i))?);
        }
        if outcomes.is_empty() {
            return Ok(record);
        }
        let swings = Swings::new(setup, outcomes)
            .map_err(|error| self.fault(Column::Swing(0), CellFault::Swings(error)))?;
        Ok(Record { swings, ..record })
    }

    fn predictions(self) -> Result<Predictions, TableError> {
        let mut versions = Vec::new();
        for i in 0..MOST_VERSIONS {
            let because = self.text(Column::Because(i), BECAUSE_CHARS)?;
            let seen = self.count(Column::SwingsSeen(i), 0, u8::MAX.into())?;
            match self.outcome(Column::Outcome(i))? {
                Some(outcome) => {
                    let swings_seen = u8::try_from(seen.unwrap_or(0)).unwrap_or(u8::MAX);
                    versions.push(Prediction { outcome, because, swings_seen });
                }
                None if because.is_empty() && seen.is_none() => {}
                None => return Err(self.fault(Column::Outcome(i), CellFault::Empty)),
            }
        }
        // There are no more columns than versions, and none of them holds a slip.
        Ok(Predictions::try_from(versions).unwrap_or_default())
    }

    fn seal(self) -> Result<Option<Seal>, TableError> {
        let cell = self.plain(Column::Seal);
        if cell.is_empty() {
            return Ok(None);
        }
        let digits = cell.strip_prefix(['s', 'S']).and_then(|digits| digits.parse().ok());
        digits.map(Some).ok_or_else(|| {
            self.fault(Column::Seal, CellFault::Seal { found: shown(cell) })
        })
    }
}

/// The front of what a cell holds.
fn shown(cell: &str) -> String {
    let mut front: String = cell.chars().take(SHOWN_CHARS).collect();
    if front.len() < cell.len() {
        front.push('…');
    }
    front
}
