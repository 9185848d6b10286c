//! A notebook as rows of cells.

use csv::{Terminator, WriterBuilder};
use noseward_lesson::{
    BalancePoint, Conclusion, Deleted, Notebook, NotebookParts, Overall, Record, Rocket,
    Seal, Trial, TrialParts, key,
};
use noseward_stability::{Design, Quantity, cleaned_lines};

use super::kind::Kind;
use super::{Format, GROUP, KIND, PLAN, VERSION_KEY, cell, heading, number};
use crate::error::{LinkError, LinkErrorKind};
use crate::fields::{self, KeysOf, Slot, Visit};
use crate::frame::VERSION;
use crate::{At, Opened, hash, open_hash};

/// Decimals of a length in millimetres: the grid of links.
const MM_PLACES: usize = 1;

/// The keys of all columns, in the order in which a table has them.
pub(super) fn columns() -> Vec<String> {
    let mut keys = KeysOf(vec![KIND.into(), GROUP.into()]);
    let mut parts = TrialParts { id: 1, ..TrialParts::default() };
    let mut notebook = NotebookParts::default();
    fields::written(fields::trial(&mut parts, &mut keys));
    keys.0.extend(worked_out_keys());
    keys.0.extend([fields::PLACE.into(), VERSION_KEY.into()]);
    let shared = keys.0.len();
    fields::written(fields::settings(&mut notebook, &mut keys));
    let conclusion = &mut Conclusion::default();
    fields::written(fields::conclusion(conclusion, &mut keys));
    let (trial, others) = keys.0.split_at(shared);
    // A trial and the notebook share a column where their fields have one key.
    let more = others.iter().filter(|key| !trial.contains(key));
    trial.iter().chain(more).cloned().collect()
}

/// The columns that are worked out for people, and not read.
pub(super) fn worked_out_keys() -> Vec<String> {
    let nothing = Trial::from(TrialParts { id: 1, ..TrialParts::default() });
    worked_out(&nothing, '.').into_iter().map(|(key, _)| key).collect()
}

/// What is worked out of a trial for people.
fn worked_out(trial: &Trial, mark: char) -> Vec<(String, String)> {
    let design = trial.design();
    let length_mm = design.length_mm();
    let in_mm =
        |value: Option<f64>| value.map(|mm| mm_cell(mm, mark)).unwrap_or_default();
    let mut cells =
        vec![("rocket_name".to_owned(), cell::written(&design.name).into_owned())];
    for point in BalancePoint::ALL {
        let front = fields::front(point);
        let stats = trial.measured.middle(point, length_mm);
        cells.push((format!("{front}_middle_mm"), in_mm(stats.map(|s| s.middle_mm))));
        cells.push((format!("{front}_range_mm"), in_mm(stats.map(|s| s.range_mm()))));
    }
    cells.extend([
        ("measured_separation_mm".into(), in_mm(trial.measured.separation_mm(length_mm))),
        ("computed_separation_mm".into(), in_mm(separation_mm(trial.rocket()))),
        ("all_swings".into(), overall_cell(trial.overall())),
    ]);
    cells
}

/// What swings come to, in a cell.
pub(crate) fn overall_cell(overall: Overall) -> String {
    match overall {
        Overall::Nothing => String::new(),
        Overall::Mostly(outcome) => key(&outcome),
        Overall::Mixed => "mixed".into(),
    }
}

/// The rows of a notebook, the headings first, with this end of line.
pub(super) fn rows(
    notebook: &Notebook,
    format: Format,
    end: Terminator,
    called: &dyn Fn(&str) -> String,
) -> String {
    rows_of(&columns(), cells_of(notebook, format.mark()), format, end, called)
}

/// Rows of cells with their keys below the headings of columns, with a byte order mark where
/// it is a file.
pub(crate) fn rows_of(
    columns: &[String],
    rows: Vec<Vec<(String, String)>>,
    format: Format,
    end: Terminator,
    called: &dyn Fn(&str) -> String,
) -> String {
    let mut table = WriterBuilder::new()
        .delimiter(format.delimiter())
        .terminator(end)
        .from_writer(Vec::new());
    let mut write = |cells: Vec<&str>| {
        let Ok(()) = table.write_record(cells) else { unreachable!("memory has room") };
    };
    let headings: Vec<String> =
        columns.iter().map(|key| heading::written(key, &called(key))).collect();
    write(headings.iter().map(String::as_str).collect());
    for row in rows {
        // Nearly all come in the order of the columns: a class has many thousand.
        let mut next = 0;
        let mut cell = |column: &String| {
            let behind = row.iter().skip(next).chain(row.iter().take(next));
            let (skipped, (_, cell)) =
                behind.enumerate().find(|(_, (key, _))| key == column)?;
            next = (next + skipped + 1) % row.len();
            Some(cell.as_str())
        };
        write(columns.iter().map(|column| cell(column).unwrap_or_default()).collect());
    }
    let Ok(bytes) = table.into_inner() else { unreachable!("memory has room") };
    let Ok(text) = String::from_utf8(bytes) else { unreachable!("cells are text") };
    // Spreadsheets know UTF-8 by it.
    let is_file = format.is_file() && matches!(end, Terminator::CRLF);
    if is_file { format!("\u{feff}{text}") } else { text }
}

/// The cells of each row, with their keys.
fn cells_of(notebook: &Notebook, mark: char) -> Vec<Vec<(String, String)>> {
    let mut parts = NotebookParts::from(notebook.clone());
    let group = notebook.group.key();
    let begin = |kind: Kind| {
        let cells = vec![
            (KIND.to_owned(), kind.key().to_owned()),
            (GROUP.to_owned(), group.clone()),
        ];
        Cells { cells, mark }
    };
    let of_trial = |kind, trial: &Trial, parts: &mut TrialParts| {
        let mut row = begin(kind);
        fields::written(fields::trial(parts, &mut row));
        row.cells.extend(worked_out(trial, mark));
        row
    };
    let mut rows = Vec::new();
    for (trial, parts) in notebook.trials().iter().zip(&mut parts.trials) {
        rows.push(of_trial(Kind::Trial, trial, parts));
    }
    for (Deleted { trial, .. }, parts) in
        notebook.deleted().iter().zip(&mut parts.deleted)
    {
        let mut row = of_trial(Kind::Deleted, trial, &mut parts.trial);
        fields::written(fields::place(&mut parts.place, &mut row));
        rows.push(row);
    }
    for plan in notebook.plans() {
        let mut row = begin(Kind::Plan);
        row.put(PLAN, cell::written(plan).into_owned());
        rows.push(row);
    }
    let mut row = begin(Kind::Conclusion);
    fields::written(fields::conclusion(&mut parts.conclusion, &mut row));
    rows.push(row);
    let mut row = begin(Kind::Notebook);
    row.put(VERSION_KEY, VERSION.to_string());
    fields::written(fields::settings(&mut parts, &mut row));
    rows.push(row);
    rows.into_iter().map(|row| row.cells).collect()
}

/// The cells of one row.
pub(crate) struct Cells {
    pub(crate) cells: Vec<(String, String)>,
    /// What stands before decimals.
    pub(crate) mark: char,
}

impl Cells {
    pub(crate) fn put(&mut self, key: &str, cell: String) {
        self.cells.push((key.to_owned(), cell));
    }
}

impl Visit for Cells {
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        if slot.is_empty() {
            return Ok(());
        }
        let cell = match slot {
            Slot::Mm(mm) => mm_cell(mm.unwrap_or(f64::NAN), self.mark),
            Slot::Count(count, ..) => count.unwrap_or_default().to_string(),
            Slot::Choice(code, keys) => {
                keys[usize::from(code.unwrap_or_default())].to_owned()
            }
            Slot::Text(text, most) => {
                cell::written(&cleaned_lines(text, most)).into_owned()
            }
            Slot::Flag(_) => "yes".into(),
            // A letter in front: 12345678 and 1e234567 are numbers too.
            Slot::Seal(seal) => format!("s{}", seal.unwrap_or(Seal(0))),
            Slot::Setup(value, field) => {
                let value = fields::setup_as_written(field, value.unwrap_or(f64::NAN));
                number::written(value, 2, self.mark)
            }
            Slot::Rocket(record) => rocket(&record.design),
        };
        self.put(key, cell);
        Ok(())
    }

    fn fault(&self, _: &str, kind: LinkErrorKind) -> LinkError {
        kind.at(At::Table)
    }
}

pub(crate) fn mm_cell(mm: f64, mark: char) -> String {
    number::written(Quantity::Length.rounded(mm), MM_PLACES, mark)
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

/// The computed separation, in millimetres; `None` where a fault stands in its way.
fn separation_mm(rocket: &Rocket) -> Option<f64> {
    rocket.figures().map(|figures| figures.separation_m * 1000.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The columns stand in tables: none is ever renamed.
    #[test]
    fn columns_are_frozen() {
        let columns = columns();
        for (i, key) in columns.iter().enumerate() {
            let plain = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_';
            assert!(key.bytes().all(plain), "{key}");
            assert!(!columns[..i].contains(key), "{key}");
        }
        let point = |front: &str| {
            [
                "from",
                "guess_mm",
                "reading_1_mm",
                "reading_2_mm",
                "reading_3_mm",
                "left_out",
                "left_out_reason",
            ]
            .map(|key| format!("{front}_{key}"))
            .join(" ")
        };
        let prediction = |i: usize| {
            let keys = ["outcome", "because", "swings_seen"];
            keys.map(|key| format!("prediction_{i}_{key}")).join(" ")
        };
        let frozen = [
            "kind_of_row group trial compared_with plan rocket",
            "rocket_length_mm cutout_length_mm",
            &point("centre_of_mass"),
            &point("centre_of_pressure"),
            &prediction(1),
            "string_m arm_m turns_per_s air_density_g_m3",
            "swing_1 swing_2 swing_3 swing_4 swing_5 swing_6",
            "note seal draft_outcome draft_because",
            &[2, 3, 4, 5, 6].map(prediction).join(" "),
            "altered taken_back_1 taken_back_2 taken_back_3 rocket_name",
            "centre_of_mass_middle_mm centre_of_mass_range_mm",
            "centre_of_pressure_middle_mm centre_of_pressure_range_mm",
            "measured_separation_mm computed_separation_mm all_swings",
            "place version level help two_changes in_hand telling set_up",
            "claim evidence reason trust",
        ];
        assert_eq!(columns.join(" "), frozen.join(" "));
    }
}
