//! What the chart shows, in words.

use noseward_stability::Units;

use super::{ChartTrial, ROWS, median_mm, shown};
use crate::axis::{reading, reading_number};

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
        let dots = if count == 1 { "dot" } else { "dots" };
        let told = match (measured, count - measured) {
            (_, 0) => "measured".to_owned(),
            (0, _) => "computed".to_owned(),
            (measured, computed) => format!("{measured} measured, {computed} computed"),
        };
        sentences.push(format!(
            "{} {dots} in the row {}, {}: {told}.",
            number(count),
            outcome.label(),
            stretch(&separations, units),
        ));
    }
    if sentences.is_empty() {
        sentences.push("No swing yet.".to_owned());
    }
    if let Some(mm) = median_mm(&trials) {
        let from_to = stretch(&[mm, 2.0 * mm], units);
        sentences.push(format!("Common practice, 1 to 2 body widths, goes {from_to}."));
    }
    sentences.join(" ")
}

/// From the least to the most of some lengths, or where all of them are.
fn stretch(lengths_mm: &[f64], units: Units) -> String {
    let least = lengths_mm.iter().copied().fold(f64::INFINITY, f64::min);
    let most = lengths_mm.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (from, to) = (reading_number(units, least), reading(units, most));
    if reading(units, least) == to {
        format!("at {to}")
    } else {
        format!("from {from} to {to}")
    }
}

/// A number at the beginning of a sentence.
fn number(count: usize) -> String {
    const WORDS: [&str; 12] = [
        "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten",
        "Eleven", "Twelve",
    ];
    let word = count.checked_sub(1).and_then(|i| WORDS.get(i));
    word.map_or_else(|| count.to_string(), |&word| word.to_owned())
}
