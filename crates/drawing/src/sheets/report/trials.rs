//! All trials as a table, with the columns of the notebook's level.

use noseward_lesson::{Level, Overall, Prediction, Summary, SwingOutcome, Trial};
use noseward_stability::Nearer;
use noseward_words::{self as words, Number, Text};

use super::{GroupReport, is_told};
use crate::names::{group_name, outcome_name, outcome_names, overall_name};
use crate::paper::{Column, Flow, Table};
use crate::sheets::said::printed;
use crate::written::Written;

/// A column: its heading, its share of the width, and what stands in it.
type Cells = fn(&GroupReport<'_>, &Trial, &Summary) -> String;
const TRIAL: (Text, f64, Cells) =
    (words::compare_head_trial(), 10.0, |_, _, found| found.id.to_string());
const CHANGED: (Text, f64, Cells) = (words::compare_head_changed(), 25.0, changed);
const PREDICTED: (Text, f64, Cells) = (words::compare_head_predicted(), 36.0, predicted);
const SAW: (Text, f64, Cells) = (words::compare_we_saw(), 38.0, saw);
const NEARER: (Text, f64, Cells) = (words::compare_head_nearer(), 18.0, nearer);
const SEPARATION: (Text, f64, Cells) =
    (words::compare_head_separation(), 27.0, separation);
const WIDTHS: (Text, f64, Cells) = (words::compare_head_widths(), 15.0, widths);
const MASS: (Text, f64, Cells) = (words::compare_head_mass(), 12.0, mass);

pub(super) fn table(flow: &mut Flow, of: &GroupReport<'_>, summaries: &[Summary]) {
    let notebook = of.notebook;
    if notebook.trials().is_empty() {
        return;
    }
    let columns: &[(Text, f64, Cells)] = match notebook.level {
        Level::Balance => &[TRIAL, CHANGED, NEARER, PREDICTED, SAW],
        Level::Measure => &[TRIAL, CHANGED, SEPARATION, PREDICTED, SAW],
        Level::Explain => &[TRIAL, CHANGED, SEPARATION, WIDTHS, PREDICTED, SAW],
        Level::Model => &[TRIAL, CHANGED, SEPARATION, WIDTHS, MASS, PREDICTED, SAW],
    };
    let row = |(trial, found): (&Trial, &Summary)| {
        columns.iter().map(|(.., cell)| cell(of, trial, found)).collect()
    };
    let column = |(head, share, _): &(Text, f64, Cells)| Column {
        head: (*head).into(),
        share: *share,
    };
    flow.long_table(&Table {
        caption: words::compare_trials_of(&group_name(notebook.group)),
        columns: columns.iter().map(column).collect(),
        rows: notebook.trials().iter().zip(summaries).map(row).collect(),
        row_mm: 0.0,
    });
}

/// What changed since the trial that it is compared with.
fn changed(of: &GroupReport<'_>, trial: &Trial, found: &Summary) -> String {
    let notebook = of.notebook;
    let Some(baseline) = notebook.baseline_of(trial) else {
        return words::compare_baseline().into();
    };
    let mut lines: Vec<String> = found.changes.iter().map(of.changed).collect();
    match lines.len() {
        0 => lines.push(words::compare_nothing_changed().into()),
        1 => {}
        count if notebook.allows_two_changes => {
            lines.push(words::compare_changes_allowed(count.into()));
        }
        count => lines.push(words::compare_changes(count.into())),
    }
    lines.push(words::compare_since(u32::from(baseline.id()).into()));
    lines.join("\n")
}

fn nearer(of: &GroupReport<'_>, _: &Trial, found: &Summary) -> String {
    if !is_told(of, found) {
        return String::new();
    }
    match found.separation_mm().map(|mm| Nearer::of(mm / 1000.0)) {
        _ if found.too_close == Some(true) => words::compare_too_close().into(),
        Some(Nearer::CentreOfMass) => words::compare_mass().into(),
        Some(Nearer::CentreOfPressure) => words::compare_pressure().into(),
        Some(Nearer::Neither) => words::compare_one_place().into(),
        None => String::new(),
    }
}

fn separation(of: &GroupReport<'_>, _: &Trial, found: &Summary) -> String {
    let mut lines = Vec::new();
    if let Some(mm) = found.measured_separation_mm {
        lines.push(words::compare_measured(&of.units.length(mm)));
        if found.too_close == Some(true) {
            lines.push(words::compare_too_close().into());
        }
    }
    if let Some(mm) = found.computed_separation_mm().filter(|_| is_told(of, found)) {
        lines.push(words::compare_worked_out(&of.units.reading(mm)));
    }
    lines.join("\n")
}

fn widths(of: &GroupReport<'_>, _: &Trial, found: &Summary) -> String {
    let widths = found.calibres().filter(|_| is_told(of, found));
    widths.map(|widths| Number::fixed(widths, 1).to_string()).unwrap_or_default()
}

fn mass(of: &GroupReport<'_>, _: &Trial, found: &Summary) -> String {
    found.mass_g.map(|g| of.units.scale_reading(g)).unwrap_or_default()
}

/// The first prediction, those that came later, and whether it was one.
fn predicted(_: &GroupReport<'_>, trial: &Trial, _: &Summary) -> String {
    let predictions = trial.predictions();
    let mut lines = match predictions.first() {
        Some(first) => vec![thought(first)],
        None => vec![words::compare_nothing_yet().into()],
    };
    let later = predictions.later();
    lines.extend(
        later.iter().flat_map(|one| [words::compare_later().into(), thought(one)]),
    );
    if trial.swung_first() {
        lines.push(words::compare_swung_first().into());
    }
    if trial.is_altered() {
        lines.push(words::compare_altered().into());
    }
    lines.join("\n")
}

/// What a group predicted, with its reason.
fn thought(prediction: &Prediction) -> String {
    let outcome = outcome_name(prediction.outcome);
    match prediction.because.as_str() {
        "" => outcome.into(),
        because => printed(&words::trial_because(&outcome, because)),
    }
}

/// How many of the swings that count went in each way, and those that do not; where they differ,
/// which ones.
fn saw(_: &GroupReport<'_>, trial: &Trial, _: &Summary) -> String {
    let seen = trial.swings().outcomes();
    let counted = trial.swings().counted().count();
    let mut lines = Vec::new();
    if let Overall::Nothing | Overall::Mixed = trial.overall() {
        lines.push(overall_name(trial.overall()).into());
    }
    for outcome in SwingOutcome::ALL {
        let which: Vec<String> = seen
            .iter()
            .zip(1_u32..)
            .filter(|(one, _)| **one == outcome)
            .map(|(_, number)| Number::from(number).to_string())
            .collect();
        if which.is_empty() {
            continue;
        }
        let (name, times) = (outcome_name(outcome), which.len());
        let line = if outcome.counts() {
            words::compare_seen(&name, times.into(), counted.into()).text()
        } else {
            words::compare_not_counted(&name)
        };
        let differ = times < seen.len();
        lines.push(if differ {
            words::paper_which_swings(&line, &which.join(", "))
        } else {
            line
        });
    }
    if !trial.taken_back().is_empty() {
        lines.push(words::compare_taken_back(&outcome_names(trial.taken_back())));
    }
    lines.join("\n")
}
