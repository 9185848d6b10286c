//! What the chart shows, in words.

use noseward_stability::Units;
use noseward_words::{self as texts, Number, Origin, Spread};

use super::{ChartTrial, ROWS, median_mm, shown};
use crate::axis::{reading, reading_number};
use crate::names::outcome_name;

/// What [`trial_chart`](super::trial_chart) shows, in sentences: for every row with dots
/// how many there are, from where to where, and how many of them were measured; then the
/// band. Empty for no trial that the chart can show.
#[must_use]
pub fn trial_chart_words(trials: &[ChartTrial<'_>], units: Units) -> String {
    let trials = shown(trials);
    if trials.is_empty() {
        return String::new();
    }
    let mut sentences = Vec::new();
    for outcome in ROWS {
        let mut separations = Vec::new();
        let mut measured = 0;
        for trial in &trials {
            let swings = trial.outcomes.iter().filter(|&&seen| seen == outcome).count();
            separations.extend(std::iter::repeat_n(trial.separation_mm, swings));
            measured += if trial.measured { swings } else { 0 };
        }
        let count = separations.len();
        if count == 0 {
            continue;
        }
        let origin = match (measured, count - measured) {
            (_, 0) => Origin::AllMeasured,
            (0, _) => Origin::AllComputed,
            _ => Origin::Both,
        };
        let [dots, of_measured, of_computed] =
            [count, measured, count - measured].map(Number::from);
        let (spread, from, to) = stretch(&separations, units);
        let row = outcome_name(outcome);
        sentences.push(texts::drawing_row(dots, &row, spread, &from, &to));
        sentences.push(texts::drawing_row_origin(origin, of_measured, of_computed));
    }
    if sentences.is_empty() {
        sentences.push(texts::drawing_no_swing().into());
    }
    if let Some(mm) = median_mm(&trials) {
        let (spread, from, to) = stretch(&[mm, 2.0 * mm], units);
        sentences.push(texts::drawing_practice(spread, &from, &to));
    }
    sentences.join(" ")
}

/// From the least, without its unit, to the most of some lengths, or where all of them are.
fn stretch(lengths_mm: &[f64], units: Units) -> (Spread, String, String) {
    let least = lengths_mm.iter().copied().fold(f64::INFINITY, f64::min);
    let most = lengths_mm.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (from, to) = (reading_number(units, least), reading(units, most));
    let is_one = reading(units, least) == to;
    (if is_one { Spread::InOnePlace } else { Spread::Apart }, from, to)
}
