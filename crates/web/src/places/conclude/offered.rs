//! Sentences with the group's own numbers, and questions about its own trials.

use noseward_drawing::{Written, listed};
use noseward_lesson::{
    Apart, Followed, Found, Overall, Question, Sentence, Trust, Turned,
};
use noseward_stability::Units;
use noseward_words::{self as words, CameTrue, HowKnown, HowMany};

use super::deeds;
use crate::places::labels::{self, number, point_in, statement_in};
use crate::places::trial::{changed, moved};

/// A sentence for one of the boxes.
pub(super) fn sentence(offered: &Sentence<'_>, units: Units) -> String {
    match *offered {
        Sentence::Followed(deed, what) => {
            format!("{} {}", deeds::sentence(deed), followed(what, units))
        }
        Sentence::Found(ref what) => found(what, units),
        Sentence::Turned(trial, how) => turned(trial, how),
        Sentence::Sideways => words::offered_sideways().into(),
        Sentence::LongerWay => words::offered_longer().into(),
        Sentence::Trust(trial, what) => trust(trial, what, units),
    }
}

/// A question for one of the boxes.
pub(super) fn question(asked: Question, units: Units) -> String {
    match asked {
        Question::WhatHappened(deed) => {
            format!("{} {}", deeds::sentence(deed), words::asked_happened())
        }
        Question::WhichNumbers(before, after) => {
            words::asked_numbers(number(before), number(after))
        }
        Question::WhySwing(trial, seen) => {
            words::asked_why(number(trial), &labels::outcome(seen))
        }
        Question::Overlap(trial) => words::asked_overlap(number(trial)),
        Question::Differ { trial, point, range_mm } => {
            let range = units.length(range_mm);
            words::asked_differ(number(trial), point_in(point), &range)
        }
        Question::General(of) => words::asked_always(statement_in(of)),
    }
}

fn followed(what: Followed, units: Units) -> String {
    match what {
        Followed::TooClose => words::offered_too_close().into(),
        Followed::Measured(mm) => moved::measured(mm, units),
        Followed::WorkedOut(mm) => moved::separation(
            mm,
            |mm| units.reading(mm),
            words::offered_worked_out,
            words::offered_worked_out_stayed,
        ),
        Followed::Swing(from, to) => {
            let [before, after] = [from, to].map(labels::outcome);
            if from == to {
                words::offered_swing_stayed(&after)
            } else {
                words::offered_swing_went(&before, &after)
            }
        }
    }
}

fn found(found: &Found<'_>, units: Units) -> String {
    let how = if found.is_measured { HowKnown::Measured } else { HowKnown::WorkedOut };
    let apart = found.apart.map(|apart| match apart {
        Apart::By(mm) if found.is_measured => {
            words::offered_separation(how, &units.length(mm))
        }
        Apart::By(mm) => words::offered_separation(how, &units.reading(mm)),
        Apart::Nearer(Some(point)) => words::offered_nearer(how, point_in(point)),
        Apart::Nearer(None) => words::offered_neither_nearer(how),
    });
    let swings = found.swings.into();
    let mut seen = match found.overall {
        Overall::Nothing => None,
        Overall::Mixed => Some(words::offered_mixed(swings)),
        Overall::Mostly(outcome) => {
            let outcome = labels::outcome(outcome);
            Some(words::offered_seen(&outcome, found.seen.into(), swings))
        }
    };
    // Words instead of a number need a sentence of their own.
    let is_in_words = matches!(found.apart, Some(Apart::Nearer(_)));
    let behind = if is_in_words { seen.take() } else { None };
    let mut said = of_trial(found, &listed(apart.into_iter().chain(seen)));
    if let Some(seen) = behind {
        said = format!("{said} {}", words::offered_swings(&seen));
    }
    if let Some(predicted) = found.predicted {
        let came_true = match found.came_true {
            Some(true) => CameTrue::Yes,
            Some(false) => CameTrue::No,
            None => CameTrue::Open,
        };
        let predicted = words::offered_predicted(&labels::outcome(predicted), came_true);
        said = format!("{said} {predicted}");
    }
    said
}

/// What was found, under the number of its trial and what was changed for it.
fn of_trial(found: &Found<'_>, what: &str) -> String {
    let trial = number(found.trial);
    match (found.changes, found.compared_with) {
        ([], Some(other)) => words::offered_trial_same(trial, number(other), what),
        ([], None) => words::offered_trial(trial, what),
        ([change], _) => {
            words::offered_trial_change(trial, &changed::label(change), what)
        }
        (all, _) => words::offered_trial_changes(trial, all.len().into(), what),
    }
}

fn turned(trial: u16, how: Turned) -> String {
    let trial = number(trial);
    match how {
        Turned::PushedBehind => words::offered_behind(trial),
        Turned::PushedAhead => words::offered_ahead(trial),
        Turned::CloseTogether => words::offered_close(trial),
        Turned::Although(seen, point) => {
            words::offered_although(trial, &labels::outcome(seen), point_in(point))
        }
    }
}

fn trust(trial: u16, what: Trust<'_>, units: Units) -> String {
    let trial = number(trial);
    match what {
        Trust::OneReading(point) => words::offered_one_reading(trial, point_in(point)),
        Trust::Within { point, count, range_mm } => {
            let how_many = if count == 2 { HowMany::Two } else { HowMany::Three };
            let range = units.length(range_mm);
            words::offered_within(trial, point_in(point), how_many, &range)
        }
        Trust::LeftOut { mm, reason: "" } => {
            words::offered_left_out(trial, &units.length(mm))
        }
        Trust::LeftOut { mm, reason } => {
            words::offered_left_out_because(trial, &units.length(mm), reason)
        }
        Trust::Overlap => words::offered_overlap(trial),
        Trust::NotMeasured => words::offered_not_measured(trial),
        Trust::Alike(other) => words::offered_alike(number(other), trial),
        Trust::Changes(all) => {
            let labels = listed(all.iter().map(changed::label));
            words::offered_changes(trial, all.len().into(), &labels)
        }
        Trust::FewSwings(count) => words::offered_few_swings(trial, count.into()),
        Trust::Mixed => words::offered_disagree(trial),
        Trust::NotPredicted => words::offered_not_predicted(trial),
        Trust::PredictedLate => words::offered_predicted_late(trial),
        Trust::Altered => words::offered_altered(trial),
    }
}

#[cfg(test)]
mod tests;
