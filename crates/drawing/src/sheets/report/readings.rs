//! What a group guessed and measured, a row a point of a trial.

use noseward_lesson::{BalancePoint, End, REPEATS, Trial};
use noseward_words as words;

use super::GroupReport;
use crate::names::point_name;
use crate::paper::{Column, Flow, Table};
use crate::written::Written;

pub(super) fn table(flow: &mut Flow, of: &GroupReport<'_>) {
    let trials = of.notebook.trials().iter();
    let points = trials.flat_map(|trial| BalancePoint::ALL.map(|point| (trial, point)));
    let rows: Vec<_> =
        points.filter_map(|(trial, point)| row(of, trial, point)).collect();
    if rows.is_empty() {
        return;
    }
    let column = |head: String, share| Column { head, share };
    let mut columns = vec![
        column(words::compare_head_trial().into(), 11.0),
        column(words::paper_head_point().into(), 46.0),
        column(words::paper_head_guess().into(), 15.0),
    ];
    columns.extend((1..=REPEATS).map(|i| column(i.to_string(), 15.0)));
    columns.push(column(words::paper_head_middle().into(), 15.0));
    columns.push(column(words::paper_head_range().into(), 15.0));
    flow.long_table(&Table {
        caption: words::paper_readings().into(),
        columns,
        rows,
        row_mm: 0.0,
    });
}

/// A row; `None` where nothing was guessed or read.
fn row(of: &GroupReport<'_>, trial: &Trial, point: BalancePoint) -> Option<Vec<String>> {
    let readings = trial.measured.of(point);
    if !readings.any() && readings.guess_mm.is_none() {
        return None;
    }
    let middle = trial.measured.middle(point, trial.design().length_mm());
    let length = |mm: Option<f64>| mm.map(|mm| of.units.length(mm)).unwrap_or_default();
    let mut row = vec![trial.id().to_string(), point_as_read(trial, point)];
    row.push(length(readings.guess_mm));
    row.extend(readings.mm.map(length));
    row.push(length(middle.as_ref().map(|middle| middle.middle_mm)));
    row.push(length(middle.as_ref().map(|middle| middle.range_mm())));
    Some(row)
}

/// A point, and what is to be known about its readings.
#[must_use]
pub fn point_as_read(trial: &Trial, point: BalancePoint) -> String {
    let readings = trial.measured.of(point);
    let mut known = String::from(point_name(point));
    if readings.from == End::Tail {
        known = words::paper_from_tail(&known);
    }
    if let Some(out) = &readings.left_out {
        let number = (out.reading + 1).into();
        known = match out.reason.as_str() {
            "" => words::paper_left_out(&known, number),
            reason => words::paper_left_out_because(&known, number, reason),
        };
    }
    let length_mm = trial.design().length_mm();
    for i in (0..REPEATS).filter(|i| !trial.measured.counts(point, *i, length_mm)) {
        known = words::paper_not_true(&known, (i + 1).into());
    }
    known
}
