//! A notebook from rows of cells.

use csv::{ReaderBuilder, StringRecord};
use noseward_lesson::{
    Conclusion, DeletedParts, Group, MOST_PLANS, MOST_TRIALS, Notebook, NotebookError,
    NotebookParts, PLAN_CHARS, TrialParts,
};
use noseward_stability::{Quantity, cleaned_lines};

use super::heading::has_key;
use super::kind::Kind;
use super::number::Unread;
use super::write::{columns, worked_out_keys};
use super::{
    BEGIN, DELIMITERS, GROUP, KIND, PLAN, TABLE_END, TRIAL, VERSION_KEY, cell, mail,
    number,
};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields::{self, Slot, Visit, front_of};
use crate::frame::VERSION;
use crate::open_file;

/// The table in a text: all of it where it begins with headings, or what stands between
/// the two lines.
pub(super) fn table_in(text: &str) -> Result<&str, LinkError> {
    let text = text.trim_start_matches(['\u{feff}', ' ', '\n', '\r']);
    // The words above a table are indented where somebody else wrote them, so that the
    // first such line is the true one. Cells are not: of the second line the last counts.
    let begin = line_starts(text, BEGIN).next();
    if head(text).is_some() {
        return Ok(text);
    }
    let Some(begin) = begin else { return Ok(mail::from_headings(text)) };
    let table = &text[begin + BEGIN.len()..];
    let end = line_starts(table, TABLE_END)
        .last()
        .ok_or(LinkErrorKind::CutShort.at(At::Table))?;
    Ok(table[..end].trim_start())
}

/// Where a line begins so.
fn line_starts<'a>(text: &'a str, line: &'a str) -> impl Iterator<Item = usize> + 'a {
    let is_start = |at: usize| at == 0 || text.as_bytes().get(at - 1) == Some(&b'\n');
    text.match_indices(line).map(|(at, _)| at).filter(move |&at| is_start(at))
}

/// What stands between the cells of a text, and its headings, by which that is told; `None` for
/// what is no table.
pub(crate) fn head(text: &str) -> Option<(u8, StringRecord)> {
    let text = text.as_bytes();
    let mut headings = StringRecord::new();
    // A reader takes longer to make than to use.
    let delimiter = DELIMITERS.into_iter().find(|&delimiter| {
        text.contains(&delimiter)
            && reader(text, delimiter).read_record(&mut headings).unwrap_or(false)
            && are_headings(&headings)
    })?;
    Some((delimiter, headings))
}

/// Whether the cells of a row are the headings of a table.
pub(crate) fn are_headings(row: &StringRecord) -> bool {
    let has = |key: &str| row.iter().any(|found| has_key(found, key));
    has(KIND) && (has(TRIAL) || has(GROUP))
}

/// Reads cells of a text from anywhere.
pub(crate) fn reader<R: std::io::Read>(text: R, delimiter: u8) -> csv::Reader<R> {
    ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .flexible(true)
        .from_reader(text)
}

/// Whether a cell holds a key, in any case.
fn is_key(cell: &str, key: &str) -> bool {
    cell.trim().eq_ignore_ascii_case(key)
}

/// The notebook in a table that begins with its headings.
pub(super) fn read(text: &str) -> Result<Notebook, LinkError> {
    let no_table = || LinkErrorKind::Nothing.at(At::Table);
    let (delimiter, headings) = head(text).ok_or_else(no_table)?;
    let columns = known(&headings, &columns())?;
    let records = reader(text.as_bytes(), delimiter).into_records().skip(1);
    let worked_out = worked_out_keys();
    let mut pages = Pages::default();
    for (record, number) in records.zip(2..) {
        let record = record.map_err(|_| no_table())?;
        let row = Row::new(number, &record, &columns);
        if record.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        row.hold_cells()?;
        pages.add(row, &worked_out)?;
    }
    pages.bound()
}

/// The key of each column; empty for one that is not known here.
pub(crate) fn known(
    found: &StringRecord,
    known: &[String],
) -> Result<Vec<String>, LinkError> {
    let mut columns: Vec<String> = Vec::new();
    for found in found {
        let column = known.iter().find(|key| has_key(found, key));
        let column = column.cloned().unwrap_or_default();
        if !column.is_empty() && columns.contains(&column) {
            return Err(LinkErrorKind::TwoColumns { column }.at(At::Table));
        }
        columns.push(column);
    }
    let used =
        found.iter().zip(1..).filter(|(heading, _)| !heading.trim().is_empty()).last();
    columns.truncate(used.map_or(0, |(_, count)| count));
    Ok(columns)
}

/// What the rows so far come to.
#[derive(Default)]
struct Pages {
    notebook: NotebookParts,
    group: Option<Group>,
    ids: Vec<u16>,
    has_notebook: bool,
    has_conclusion: bool,
}

impl Pages {
    fn add(&mut self, mut row: Row<'_>, worked_out: &[String]) -> Result<(), LinkError> {
        let kind = row.take(KIND);
        if kind.is_empty() {
            return Err(row.fault(KIND, LinkErrorKind::Empty));
        }
        let found = Kind::ALL.into_iter().find(|known| is_key(kind, known.key()));
        let Some(kind) = found else {
            let choices = Kind::ALL.map(Kind::key).to_vec();
            let found = front_of(kind);
            return Err(row.fault(KIND, LinkErrorKind::Choice { found, choices }));
        };
        self.take_group(&mut row)?;
        match kind {
            Kind::Trial => {
                let trial = self.trial(&mut row)?;
                self.notebook.trials.push(trial);
            }
            Kind::Deleted => {
                let trial = self.trial(&mut row)?;
                let mut place = self.notebook.trials.len();
                fields::place(&mut place, &mut row)?;
                self.notebook.deleted.push(DeletedParts { place, trial });
            }
            Kind::Plan => {
                let mut plan = String::new();
                row.visit(PLAN, Slot::Text(&mut plan, PLAN_CHARS))?;
                if self.notebook.plans.len() == MOST_PLANS {
                    let error = NotebookError::TooManyPlans;
                    return Err(LinkErrorKind::Notebook(error).at(At::Table));
                }
                if !plan.trim().is_empty() {
                    self.notebook.plans.push(plan);
                }
            }
            Kind::Conclusion => {
                only_one(row.number, &mut self.has_conclusion, kind)?;
                let mut conclusion = Conclusion::default();
                fields::conclusion(&mut conclusion, &mut row)?;
                self.notebook.conclusion = conclusion;
            }
            Kind::Notebook => {
                only_one(row.number, &mut self.has_notebook, kind)?;
                let mut version = None;
                row.visit(VERSION_KEY, Slot::Count(&mut version, 1, u16::MAX))?;
                if let Some(version) = version.filter(|&v| v > VERSION.into()) {
                    let version = version.into();
                    return Err(LinkErrorKind::Newer { version }.at(At::Table));
                }
                fields::settings(&mut self.notebook, &mut row)?;
            }
        }
        row.hold_to(kind.key(), worked_out)
    }

    fn take_group(&mut self, row: &mut Row<'_>) -> Result<(), LinkError> {
        let cell = row.take(GROUP);
        if cell.is_empty() {
            return Ok(());
        }
        let found = front_of(cell);
        let Some(group) = Group::from_key(cell) else {
            return Err(row.fault(GROUP, LinkErrorKind::NotAGroup { found }));
        };
        if *self.group.get_or_insert(group) != group {
            return Err(row.fault(GROUP, LinkErrorKind::OtherGroup { found }));
        }
        Ok(())
    }

    fn trial(&mut self, row: &mut Row<'_>) -> Result<TrialParts, LinkError> {
        // Before any more work is done with it.
        if self.ids.len() == MOST_TRIALS {
            let error = NotebookError::TooManyTrials;
            return Err(LinkErrorKind::Notebook(error).at(At::Table));
        }
        let mut trial = TrialParts::default();
        fields::trial(&mut trial, row)?;
        let id = trial.id;
        if self.ids.contains(&id) {
            return Err(row.fault(TRIAL, LinkErrorKind::Taken { id }));
        }
        self.ids.push(id);
        Ok(trial)
    }

    fn bound(mut self) -> Result<Notebook, LinkError> {
        self.notebook.group = self.group.unwrap_or_default();
        Notebook::try_from(self.notebook)
            .map_err(|error| LinkErrorKind::Notebook(error).at(At::Table))
    }
}

fn only_one(row: usize, has_one: &mut bool, kind: Kind) -> Result<(), LinkError> {
    if std::mem::replace(has_one, true) {
        return Err(LinkErrorKind::TwoRows { kind: kind.key() }.at(At::TableRow(row)));
    }
    Ok(())
}

/// One row and what its columns hold.
pub(crate) struct Row<'a> {
    number: usize,
    record: &'a StringRecord,
    columns: &'a [String],
    /// Which columns were read.
    used: Vec<bool>,
    /// Behind the one that was read last: columns come in the order in which they are written.
    next: usize,
}

impl<'a> Row<'a> {
    pub(crate) fn new(
        number: usize,
        record: &'a StringRecord,
        columns: &'a [String],
    ) -> Self {
        Self { number, record, columns, used: vec![false; columns.len()], next: 0 }
    }

    /// No cell may stand beyond the columns.
    pub(crate) fn hold_cells(&self) -> Result<(), LinkError> {
        let mut beyond = self.record.iter().skip(self.columns.len());
        if beyond.any(|cell| !cell.trim().is_empty()) {
            return Err(LinkErrorKind::TooManyCells.at(At::TableRow(self.number)));
        }
        Ok(())
    }

    /// The cell as it stands; empty where the column is missing.
    fn raw(&mut self, key: &str) -> &'a str {
        let is_it = |found: &String| found == key;
        let (front, behind) = self.columns.split_at(self.next);
        let at = behind.iter().position(is_it).map(|at| at + self.next);
        let Some(at) = at.or_else(|| front.iter().position(is_it)) else { return "" };
        self.used[at] = true;
        self.next = at;
        self.record.get(at).unwrap_or_default()
    }

    /// The cell of a key or a number, which is read.
    pub(crate) fn take(&mut self, key: &str) -> &'a str {
        self.raw(key).trim()
    }

    fn number(&self, key: &str, cell: &str) -> Result<f64, LinkError> {
        number::read(cell).map_err(|unread| {
            let found = front_of(cell);
            let kind = match unread {
                Unread::NotANumber => LinkErrorKind::NotANumber { found },
                Unread::Ambiguous => LinkErrorKind::Ambiguous { found },
            };
            self.fault(key, kind)
        })
    }

    /// A whole number within bounds.
    fn count(
        &self,
        key: &str,
        cell: &str,
        least: u16,
        most: u16,
    ) -> Result<u16, LinkError> {
        let value = self.number(key, cell)?;
        let fits = (f64::from(least)..=f64::from(most)).contains(&value);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "what does not fit is refused"
        )]
        let count = value as u16;
        if fits && f64::from(count) == value {
            return Ok(count);
        }
        let found = front_of(cell);
        Err(self.fault(key, LinkErrorKind::Count { found, least, most }))
    }

    /// Nothing may stand where it would not be read.
    pub(crate) fn hold_to(
        &self,
        kind: &'static str,
        worked_out: &[String],
    ) -> Result<(), LinkError> {
        for ((column, cell), is_used) in
            self.columns.iter().zip(self.record).zip(&self.used)
        {
            let is_read = *is_used || column.is_empty() || cell.trim().is_empty();
            if !is_read && !worked_out.contains(column) {
                let found = front_of(cell.trim());
                return Err(self.fault(column, LinkErrorKind::Misplaced { found, kind }));
            }
        }
        Ok(())
    }
}

impl Visit for Row<'_> {
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        let cell = self.take(key);
        if let Slot::Text(text, most) = slot {
            *text = cleaned_lines(cell::read(self.raw(key)), usize::MAX);
            let chars = text.chars().count();
            if chars > most {
                return Err(self.fault(key, LinkErrorKind::TooLong { chars, most }));
            }
            return Ok(());
        }
        if cell.is_empty() {
            return match slot {
                Slot::Rocket(_) => Err(self.fault(key, LinkErrorKind::Empty)),
                _ => Ok(()),
            };
        }
        // Whoever types a key may write a blank in it.
        let typed = cell.replace(' ', "_");
        let choice = |choices: &[&'static str]| {
            let found = choices.iter().position(|known| is_key(&typed, known));
            found.ok_or_else(|| {
                let (found, choices) = (front_of(cell), choices.to_vec());
                self.fault(key, LinkErrorKind::Choice { found, choices })
            })
        };
        match slot {
            Slot::Mm(mm) => *mm = Some(Quantity::Length.rounded(self.number(key, cell)?)),
            Slot::Count(count, least, most) => {
                *count = Some(self.count(key, cell, least, most)?);
            }
            Slot::Choice(code, keys) => *code = u8::try_from(choice(keys)?).ok(),
            Slot::Flag(is) => *is = choice(&["no", "yes"])? == 1,
            Slot::Seal(seal) => {
                let digits = cell.strip_prefix(['s', 'S']);
                let read = digits.and_then(|digits| digits.parse().ok());
                *seal = Some(read.ok_or_else(|| {
                    self.fault(key, LinkErrorKind::NotASeal { found: front_of(cell) })
                })?);
            }
            Slot::Setup(value, field) => {
                let read = self.number(key, cell)?;
                *value = Some(fields::setup_as_read(field, read));
            }
            Slot::Rocket(record) => {
                *record = open_file(cell).map_err(|error| {
                    let error = Box::new(error);
                    self.fault(key, LinkErrorKind::NotARocket { error })
                })?;
            }
            Slot::Text(..) => {}
        }
        Ok(())
    }

    fn fault(&self, key: &str, kind: LinkErrorKind) -> LinkError {
        kind.at(At::Cell { row: self.number, column: key.to_owned() })
    }
}
