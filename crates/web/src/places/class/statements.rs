//! What can be found in a notebook, and what the group's own data say to it. The page finds nothing
//! by itself.

use noseward_lesson::{
    ClassQuestion, Criterion, Sentence, Sentences, Statement, TrialResult, Work,
};
use noseward_words::{self as words, Text};

use super::count;
use crate::app::State;
use crate::places::conclude::offered;
use crate::places::set_up::questions;

/// Sentences from the data beside one statement, at most.
const SAID: usize = 4;

/// The statement in words.
pub(super) fn name(criterion: Criterion) -> Text {
    match criterion {
        Criterion::Answers => words::marking_answers(),
        Criterion::FitsData => words::marking_fits(),
        Criterion::NamesNumbers => words::marking_numbers(),
        Criterion::NamesPoints => words::marking_points(),
        Criterion::SaysWhichWay => words::marking_which_way(),
        Criterion::OneChange => words::marking_one_change(),
        Criterion::PredictedFirst => words::marking_predicted(),
        Criterion::Repeated => words::marking_repeated(),
        Criterion::SaysHowSure => words::marking_how_sure(),
        Criterion::NextStep => words::marking_next_step(),
    }
}

/// What is known of it without reading a text.
pub(super) fn known(
    state: &State,
    work: &Work,
    results: &[TrialResult],
    criterion: Criterion,
) -> Vec<String> {
    let notebook = &work.notebook;
    let counted = |said: fn(words::Number, words::Number) -> String,
                   of: &dyn Fn(&TrialResult) -> Option<bool>| {
        let of: Vec<bool> = results.iter().filter_map(of).collect();
        let so = of.iter().filter(|so| **so).count();
        vec![said(count(so).into(), count(of.len()).into())]
    };
    match criterion {
        Criterion::Answers => vec![match notebook.set_up() {
            Some(set_up) => words::marking_question(&question(&set_up.question)),
            None => words::marking_no_question().into(),
        }],
        Criterion::FitsData => from_data(state, work, Statement::Claim),
        Criterion::SaysWhichWay => from_data(state, work, Statement::Reason),
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

/// A question in words.
pub(super) fn question(question: &ClassQuestion) -> String {
    match question {
        ClassQuestion::Own(own) => own.clone(),
        question => questions::name(question).into(),
    }
}

/// What the trials say for a box of the conclusion, as the group was offered it.
fn from_data(state: &State, work: &Work, of: Statement) -> Vec<String> {
    let sentences = Sentences::of(&work.notebook);
    let said = sentences.offered(of).into_iter();
    said.filter(|said| !matches!(said, Sentence::Sideways | Sentence::LongerWay))
        .take(SAID)
        .map(|said| offered::sentence(&said, state.units))
        .collect()
}
