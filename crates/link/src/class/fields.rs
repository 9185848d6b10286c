//! The fields of a result, each once: the columns of a class's table. A new one goes to the end,
//! and none is moved or taken out.

use noseward_lesson::{
    CHANGED_CHARS, Entry, MOST_OUTCOMES, PointResult, REPEATS, ResultModel,
    ResultPrediction, RulesCode, SwingOutcome, Swings,
};
use noseward_stability::SwingSetup;

use super::rules::{rules_of_text, rules_text};
use crate::error::{LinkError, LinkErrorKind};
use crate::fields::{Slot, Visit, choose, front_of, outcomes, unpredictable};
use crate::payload::codes::OUTCOMES;

/// The fields of one result.
pub(super) fn entry(entry: &mut Entry, to: &mut dyn Visit) -> Result<(), LinkError> {
    let result = &mut entry.result;
    let mut trial = Some(result.trial).filter(|&trial| trial > 0);
    to.visit("trial", Slot::Count(&mut trial, 1, u16::MAX - 1))?;
    result.trial = trial.ok_or_else(|| to.fault("trial", LinkErrorKind::Empty))?;
    let compared_with = &mut result.compared_with;
    to.visit("compared_with", Slot::Count(compared_with, 1, u16::MAX - 1))?;
    to.visit("what_changed", Slot::Text(&mut result.what_changed, CHANGED_CHARS))?;
    let mut changes = result.changes.map(u16::from);
    to.visit("changes", Slot::Count(&mut changes, 0, u8::MAX.into()))?;
    result.changes = changes.and_then(|changes| u8::try_from(changes).ok());
    rules(&mut result.rules, to)?;
    result.model = model(result.model, to)?;
    result.mass = point("centre_of_mass", result.mass, to)?;
    result.pressure = point("centre_of_pressure", result.pressure, to)?;
    result.predicted = predicted(result.predicted, to)?;
    swings(&mut result.outcomes, to)?;
    to.visit("two_changes_allowed", Slot::Flag(&mut result.allows_two_changes))?;
    to.visit("swung_first", Slot::Flag(&mut result.swung_first))?;
    to.visit("altered", Slot::Flag(&mut result.altered))?;
    to.visit("example", Slot::Flag(&mut result.example))?;
    to.visit("hidden", Slot::Flag(&mut entry.hidden))?;
    to.visit("marked", Slot::Flag(&mut entry.marked))
}

/// The code of the rules.
pub(super) fn rules(
    rules: &mut Option<RulesCode>,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    const KEY: &str = "rules";
    let mut text = rules.map(rules_text).unwrap_or_default();
    to.visit(KEY, Slot::Text(&mut text, usize::MAX))?;
    *rules = rules_of_text(&text);
    if rules.is_none() && !text.trim().is_empty() {
        let found = front_of(text.trim());
        return Err(to.fault(KEY, LinkErrorKind::NotRules { found }));
    }
    Ok(())
}

/// All five figures, or none.
fn model(
    known: Option<ResultModel>,
    to: &mut dyn Visit,
) -> Result<Option<ResultModel>, LinkError> {
    const KEYS: [&str; 5] = [
        "rocket_length_mm",
        "body_width_mm",
        "mass_g",
        "computed_centre_of_mass_mm",
        "computed_centre_of_pressure_mm",
    ];
    let mut values = [None; KEYS.len()];
    if let Some(model) = known {
        values = [
            Some(model.length_mm),
            Some(model.body_width_mm),
            Some(model.mass_g),
            Some(model.mass_point_mm),
            Some(model.pressure_point_mm),
        ];
    }
    for (value, key) in values.iter_mut().zip(KEYS) {
        to.visit(key, Slot::Mm(value))?;
    }
    match values {
        [None, None, None, None, None] => Ok(None),
        [
            Some(length_mm),
            Some(body_width_mm),
            Some(mass_g),
            Some(mass_point_mm),
            Some(pressure_point_mm),
        ] => Ok(Some(ResultModel {
            length_mm,
            body_width_mm,
            mass_g,
            mass_point_mm,
            pressure_point_mm,
        })),
        _ => {
            let missing = values.iter().position(Option::is_none).unwrap_or(0);
            Err(to.fault(KEYS[missing], LinkErrorKind::Empty))
        }
    }
}

/// Readings of a point, or, where a code had no room for them, what they came to.
fn point(
    front: &str,
    known: Option<PointResult>,
    to: &mut dyn Visit,
) -> Result<Option<PointResult>, LinkError> {
    let mut readings_mm = known.map(|point| point.readings_mm).unwrap_or_default();
    for (reading, i) in readings_mm.iter_mut().zip(1..) {
        to.visit(&format!("{front}_reading_{i}_mm"), Slot::Mm(reading))?;
    }
    let mut middle_mm = known.map(|point| point.middle_mm);
    let mut range_mm = known.map(|point| point.range_mm);
    let mut count = known.map(|point| u16::from(point.count));
    let (middle_key, count_key) =
        (format!("{front}_middle_mm"), format!("{front}_readings"));
    to.visit(&middle_key, Slot::Mm(&mut middle_mm))?;
    to.visit(&format!("{front}_range_mm"), Slot::Mm(&mut range_mm))?;
    let most = u16::try_from(REPEATS).unwrap_or(u16::MAX);
    to.visit(&count_key, Slot::Count(&mut count, 1, most))?;
    if let Some(point) = PointResult::of(readings_mm) {
        return Ok(Some(point));
    }
    let Some(middle_mm) = middle_mm else {
        return match (range_mm, count) {
            (None, None) => Ok(None),
            _ => Err(to.fault(&middle_key, LinkErrorKind::Empty)),
        };
    };
    let count = count.and_then(|count| u8::try_from(count).ok()).unwrap_or(1);
    let range_mm = range_mm.unwrap_or(0.0);
    Ok(Some(PointResult { readings_mm, middle_mm, range_mm, count }))
}

fn predicted(
    known: Option<ResultPrediction>,
    to: &mut dyn Visit,
) -> Result<Option<ResultPrediction>, LinkError> {
    const KEY: &str = "prediction";
    let mut outcome = known.map(|predicted| predicted.outcome);
    let seen = known.map(|predicted| u16::from(predicted.swings_seen));
    let mut seen = seen.filter(|&seen| seen > 0);
    choose(KEY, &mut outcome, OUTCOMES, to)?;
    let most = u16::try_from(MOST_OUTCOMES).unwrap_or(u16::MAX);
    to.visit("prediction_swings_seen", Slot::Count(&mut seen, 0, most))?;
    let swings_seen = seen.and_then(|seen| u8::try_from(seen).ok());
    match outcome {
        Some(outcome) if outcome.can_be_predicted() => {
            let swings_seen = swings_seen.unwrap_or(0);
            Ok(Some(ResultPrediction { outcome, swings_seen }))
        }
        Some(outcome) => Err(to.fault(KEY, unpredictable(outcome))),
        None if swings_seen.is_none() => Ok(None),
        None => Err(to.fault(KEY, LinkErrorKind::Empty)),
    }
}

fn swings(seen: &mut Vec<SwingOutcome>, to: &mut dyn Visit) -> Result<(), LinkError> {
    outcomes("swing", seen, MOST_OUTCOMES, to)?;
    match Swings::new(SwingSetup::default(), seen.iter().copied()) {
        Ok(_) => Ok(()),
        Err(error) => Err(to.fault("swing_1", LinkErrorKind::Swings(error))),
    }
}
