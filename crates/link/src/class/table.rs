//! A class as a table for a spreadsheet, and back: one row a trial in plain columns. The same
//! table with the notebooks in it is the file of a class, and what a computer keeps.

use std::io::Cursor;

use csv::{StringRecord, StringRecordsIntoIter, Terminator};
use noseward_lesson::{Class, ClassLabel, Entry, Group, TrialResult, Work};

use super::fields;
use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields::{KeysOf, Slot, Visit, front_of, written};
use crate::notebook::NotebookFile;
use crate::notebook::link::notebook_text;
use crate::table::{
    Cells, Format, GROUP, KIND, Row, VERSION_KEY, are_headings, has_key, head, known,
    mm_cell, overall_cell, rows_of, table_reader,
};
use crate::{Any, open_any};

/// The version of the table.
const VERSION: u16 = 1;
/// Of which class a row is; by this column the table is told from a notebook's.
const CLASS: &str = "class";
const DELETE_BY: &str = "delete_by";
const NOTEBOOK: &str = "notebook";
const STATEMENTS: &str = "statements";
const EXAMPLE: &str = "example";

/// Kinds of rows.
const RESULT: &str = "result";
const OLDER: &str = "older";
const WORK: &str = "notebook";

/// What one row of the table of a class holds.
#[derive(Clone, Debug, PartialEq)]
pub enum ClassRow {
    /// What is said of the whole class: nothing is gathered yet in it.
    Class(Class),
    /// A trial.
    Result(Entry),
    /// What stood under the same group and number before.
    Older(Entry),
    /// A notebook, whole.
    Work(Work),
}

/// The class as a table: a row with the headings, one for each trial, what was there before
/// it first, and one for the class. Where it is `whole`, that is the first, and there is one
/// for each notebook.
///
/// `called` has the words for a column, given its key; forms and cells are those of
/// [`to_table`](crate::to_table).
#[must_use]
pub fn class_to_table(
    class: &Class,
    format: Format,
    whole: bool,
    called: &dyn Fn(&str) -> String,
) -> String {
    let mark = format.mark();
    let of_class = class_row(class, mark);
    let mut rows = Vec::new();
    if whole {
        rows.push(of_class.clone());
    }
    for entry in class.entries() {
        for older in &entry.older {
            let mut older = Entry { result: older.clone(), ..entry.clone() };
            rows.push(result_row(OLDER, &mut older, mark));
        }
        rows.push(result_row(RESULT, &mut entry.clone(), mark));
    }
    if whole {
        rows.extend(class.works().iter().map(|work| work_row(work, mark)));
    } else {
        rows.push(of_class);
    }
    rows_of(&columns(), rows, format, Terminator::CRLF, called)
}

fn begin(kind: &str, class: &ClassLabel, mark: char) -> Cells {
    let mut row = Cells { cells: Vec::new(), mark };
    row.put(KIND, kind.to_owned());
    put_text(&mut row, CLASS, &mut class.as_str().to_owned());
    row
}

fn class_row(class: &Class, mark: char) -> Vec<(String, String)> {
    let mut row = begin(CLASS, &class.label, mark);
    row.put(VERSION_KEY, VERSION.to_string());
    written(fields::rules(&mut class.rules.clone(), &mut row));
    let day = |(y, m, d): (u16, u8, u8)| format!("{y:04}-{m:02}-{d:02}");
    let mut day = class.delete_by.map(day).unwrap_or_default();
    put_text(&mut row, DELETE_BY, &mut day);
    row.cells
}

fn put_text(row: &mut Cells, key: &str, text: &mut String) {
    written(row.visit(key, Slot::Text(text, usize::MAX)));
}

fn result_row(kind: &str, entry: &mut Entry, mark: char) -> Vec<(String, String)> {
    let mut row = begin(kind, &entry.class, mark);
    row.put(GROUP, entry.result.group.key());
    for (key, cell) in worked_out(&entry.result, mark) {
        row.put(key, cell);
    }
    written(fields::entry(entry, &mut row));
    row.cells
}

fn work_row(work: &Work, mark: char) -> Vec<(String, String)> {
    let mut row = begin(WORK, &work.class, mark);
    row.put(GROUP, work.notebook.group.key());
    let file = NotebookFile { notebook: work.notebook.clone(), rocket: None };
    row.put(NOTEBOOK, notebook_text(&file));
    row.put(STATEMENTS, work.statements.to_string());
    written(row.visit(EXAMPLE, Slot::Flag(&mut work.example.clone())));
    row.cells
}

/// What is worked out of a result for people, and not read.
fn worked_out(result: &TrialResult, mark: char) -> [(&'static str, String); 4] {
    let in_mm =
        |value: Option<f64>| value.map(|mm| mm_cell(mm, mark)).unwrap_or_default();
    let yes_or_no = |is| if is { "yes" } else { "no" }.to_owned();
    [
        ("measured_separation_mm", in_mm(result.measured_separation_mm())),
        ("computed_separation_mm", in_mm(result.computed_separation_mm())),
        ("all_swings", overall_cell(result.overall())),
        ("nose_first", result.nose_first().map(yes_or_no).unwrap_or_default()),
    ]
}

/// The columns that are worked out for people, and not read.
fn worked_out_keys() -> Vec<String> {
    let nothing = TrialResult::empty(Group::default(), 1);
    worked_out(&nothing, '.').map(|(key, _)| key.to_owned()).to_vec()
}

/// The keys of all columns, in the order in which a table has them.
fn columns() -> Vec<String> {
    let mut keys = KeysOf(vec![KIND.into(), CLASS.into(), GROUP.into()]);
    let nothing = TrialResult::empty(Group::default(), 1);
    written(fields::entry(&mut Entry::new(ClassLabel::default(), nothing), &mut keys));
    keys.0.extend(worked_out_keys());
    keys.0.extend([VERSION_KEY, DELETE_BY, NOTEBOOK, STATEMENTS].map(str::to_owned));
    keys.0
}

/// The rows of the table of a class, one after the other: so that a long one can be read in
/// slices.
#[expect(missing_debug_implementations, reason = "what reads cells has none")]
pub struct ClassRows {
    records: StringRecordsIntoIter<Cursor<Vec<u8>>>,
    columns: Vec<String>,
    worked_out: Vec<String>,
    /// The row that was read last; the headings are the first.
    number: usize,
}

impl ClassRows {
    /// Begins to read a text; `None` where it does not begin with the headings of the table of
    /// a class. A [`LinkError`] where two of them are of one column.
    #[must_use]
    pub fn open(text: &str) -> Option<Result<Self, LinkError>> {
        let text = text.trim_start_matches(['\u{feff}', ' ', '\n', '\r']);
        let (delimiter, headings) = head(text)?;
        let has = |column| headings.iter().any(|found| has_key(found, column));
        if !has(CLASS) || !has(KIND) {
            return None;
        }
        let columns = match known(&headings, &columns()) {
            Ok(columns) => columns,
            Err(error) => return Some(Err(error)),
        };
        let reader = table_reader(Cursor::new(text.as_bytes().to_vec()), delimiter);
        let mut records = reader.into_records();
        records.next();
        Some(Ok(Self { records, columns, worked_out: worked_out_keys(), number: 1 }))
    }

    /// A row as a table of its own, cells parted by tabs.
    fn alone(&self, record: &StringRecord) -> String {
        let cells = record.iter().map(str::to_owned);
        let row = self.columns.iter().cloned().zip(cells).collect();
        let end = Terminator::Any(b'\n');
        rows_of(&self.columns, vec![row], Format::Tabs, end, &|_| String::new())
    }

    fn row(&self, record: &StringRecord) -> Result<ClassRow, LinkError> {
        let mut row = Row::new(self.number, record, &self.columns);
        row.hold_cells()?;
        let kind = row.take(KIND).to_ascii_lowercase();
        let mut class = String::new();
        row.visit(CLASS, Slot::Text(&mut class, usize::MAX))?;
        let Some(class) = ClassLabel::new(&class) else {
            let found = front_of(&class);
            return Err(row.fault(CLASS, LinkErrorKind::NotAClass { found }));
        };
        let kinds = [RESULT, OLDER, WORK, CLASS];
        let Some(&kind) = kinds.iter().find(|known| **known == kind) else {
            let (found, choices) = (front_of(&kind), kinds.to_vec());
            return Err(row.fault(KIND, LinkErrorKind::Choice { found, choices }));
        };
        let read = match kind {
            CLASS => ClassRow::Class(class_of(&mut row, class)?),
            WORK => ClassRow::Work(work_of(&mut row, class)?),
            _ => {
                let result = TrialResult::empty(group_of(&mut row)?, 0);
                let mut entry = Entry::new(class, result);
                fields::entry(&mut entry, &mut row)?;
                if kind == OLDER {
                    ClassRow::Older(entry)
                } else {
                    ClassRow::Result(entry)
                }
            }
        };
        row.hold_to(kind, &self.worked_out)?;
        Ok(read)
    }
}

impl Iterator for ClassRows {
    /// The number of the row, the headings being the first, where it cannot be read its text
    /// as a table of its own, to be mended, and what it holds.
    type Item = (usize, String, Result<ClassRow, LinkError>);

    fn next(&mut self) -> Option<Self::Item> {
        loop {
            let record = self.records.next()?;
            self.number += 1;
            let Ok(record) = record else {
                let error = LinkErrorKind::Changed.at(At::TableRow(self.number));
                return Some((self.number, String::new(), Err(error)));
            };
            if record.iter().all(|cell| cell.trim().is_empty()) {
                continue;
            }
            // Files that were put one behind the other have headings in between.
            let read = if are_headings(&record) {
                match known(&record, &columns()) {
                    Ok(columns) => {
                        self.columns = columns;
                        continue;
                    }
                    Err(error) => Err(error),
                }
            } else {
                self.row(&record)
            };
            let text = if read.is_err() { self.alone(&record) } else { String::new() };
            return Some((self.number, text, read));
        }
    }
}

fn group_of(row: &mut Row<'_>) -> Result<Group, LinkError> {
    let cell = row.take(GROUP);
    let found = front_of(cell);
    Group::from_key(cell)
        .ok_or_else(|| row.fault(GROUP, LinkErrorKind::NotAGroup { found }))
}

fn class_of(row: &mut Row<'_>, label: ClassLabel) -> Result<Class, LinkError> {
    let mut version = None;
    row.visit(VERSION_KEY, Slot::Count(&mut version, 1, u16::MAX))?;
    if let Some(version) = version.filter(|&version| version > VERSION) {
        let version = version.into();
        return Err(LinkErrorKind::Newer { version }.at(At::Table));
    }
    let mut class = Class::default();
    class.label = label;
    fields::rules(&mut class.rules, row)?;
    let mut day = String::new();
    row.visit(DELETE_BY, Slot::Text(&mut day, usize::MAX))?;
    class.delete_by = day_of(&day);
    Ok(class)
}

/// A day as `2027-01-31`, as year, month and day; `None` for a day that is none.
#[must_use]
pub fn day_of(text: &str) -> Option<(u16, u8, u8)> {
    let mut parts = text.trim().split('-');
    let (year, month, day): (u16, u8, u8) = (
        parts.next()?.parse().ok()?,
        parts.next()?.parse().ok()?,
        parts.next()?.parse().ok()?,
    );
    let is_leap =
        year.is_multiple_of(4) && !year.is_multiple_of(100) || year.is_multiple_of(400);
    let days = match month {
        2 if is_leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => 0,
    };
    let is_day = parts.next().is_none()
        && (2000..=9999).contains(&year)
        && (1..=days).contains(&day);
    is_day.then_some((year, month, day))
}

fn work_of(row: &mut Row<'_>, class: ClassLabel) -> Result<Work, LinkError> {
    let group = group_of(row)?;
    let text = row.take(NOTEBOOK).to_owned();
    let mut statements = None;
    row.visit(STATEMENTS, Slot::Count(&mut statements, 0, u16::MAX))?;
    let mut example = false;
    row.visit(EXAMPLE, Slot::Flag(&mut example))?;
    match open_any(&text) {
        Ok(Any::Notebook(NotebookFile { notebook, .. })) if notebook.group == group => {
            let statements = statements.unwrap_or(0);
            Ok(Work { class, notebook, statements, example })
        }
        Ok(Any::Notebook(_)) => {
            let found = group.key();
            Err(row.fault(GROUP, LinkErrorKind::OtherGroup { found }))
        }
        Ok(_) => Err(row.fault(NOTEBOOK, LinkErrorKind::Empty)),
        Err(error) => {
            let error = Box::new(error);
            Err(row.fault(NOTEBOOK, LinkErrorKind::NotANotebook { error }))
        }
    }
}
