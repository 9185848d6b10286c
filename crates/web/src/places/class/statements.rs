//! What can be found in a notebook, and what the group's own data say to it. The page finds nothing
//! by itself.

use noseward_drawing::names::lesson as names;
use noseward_lesson::{Criterion, Notebook, TrialResult};
use noseward_words::{self as words, Number};

use super::count;
use super::table::separation_mm;
use crate::app::State;
use crate::places::form::{measured, mm};
use crate::places::labels;

/// Trials that are told beside one statement, at most.
const TOLD: usize = 4;

/// What is known of it without reading a text.
pub(super) fn known(
    state: &State,
    notebook: &Notebook,
    results: &[TrialResult],
    criterion: Criterion,
) -> Vec<String> {
    let counted = |said: fn(Number, Number) -> String,
                   of: &dyn Fn(&TrialResult) -> Option<bool>| {
        let of: Vec<bool> = results.iter().filter_map(of).collect();
        let so = of.iter().filter(|so| **so).count();
        vec![said(count(so).into(), count(of.len()).into())]
    };
    match criterion {
        Criterion::Answers => vec![match notebook.set_up() {
            Some(set_up) => words::marking_question(&names::question(&set_up.question)),
            None => words::marking_no_question().into(),
        }],
        Criterion::FitsData => told(results, |result| followed(state, results, result)),
        Criterion::SaysWhichWay => told(results, turned),
        Criterion::NamesNumbers => counted(words::marking_measured, &|result| {
            Some(result.measured_separation_mm().is_some())
        }),
        Criterion::OneChange => counted(words::marking_changes, &|result| {
            result.compared_with?;
            result.is_fair()
        }),
        Criterion::PredictedFirst => counted(words::marking_before, &|result| {
            Some(result.predicted.is_some() && !result.swung_first)
        }),
        Criterion::Repeated => counted(words::marking_readings, &|result| {
            let points = [result.mass, result.pressure].into_iter();
            Some(points.flatten().filter(|point| point.count > 1).count() == 2)
        }),
        Criterion::NextStep => {
            vec![words::marking_plans(count(notebook.plans().len()).into())]
        }
        Criterion::NamesPoints | Criterion::SaysHowSure => Vec::new(),
    }
}

/// What there is to tell of the last trials.
fn told(
    results: &[TrialResult],
    of: impl Fn(&TrialResult) -> Option<String>,
) -> Vec<String> {
    let mut told: Vec<String> = results.iter().rev().filter_map(of).take(TOLD).collect();
    told.reverse();
    told
}

/// What followed from a change: separation and swings, before and after.
fn followed(
    state: &State,
    results: &[TrialResult],
    after: &TrialResult,
) -> Option<String> {
    let with = after.compared_with?;
    let before = results.iter().find(|result| result.trial == with)?;
    let [was, is] = [before, after].map(|result| labels::overall(result.overall()));
    Some(words::marking_followed(
        labels::number(with),
        labels::number(after.trial),
        &separation(state, before)?,
        &separation(state, after)?,
        &was,
        &is,
    ))
}

/// Which point was nearer the nose, and what was seen.
fn turned(result: &TrialResult) -> Option<String> {
    let mm = separation_mm(result)?;
    let nearer =
        if mm > 0.0 { words::BalancePoint::Mass } else { words::BalancePoint::Pressure };
    let seen = labels::overall(result.overall());
    Some(words::marking_turned(labels::number(result.trial), nearer, &seen))
}

/// The separation with its unit: measured where it was.
pub(super) fn separation(state: &State, result: &TrialResult) -> Option<String> {
    match result.measured_separation_mm() {
        Some(value) => Some(measured(state, value)),
        None => Some(mm(state, result.computed_separation_mm()?)),
    }
}
