//! What the air will do, in words and as a small picture, with how sure that is.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{
    Written, comes_out, listed, outcome_meaning, svg_document, turned_rocket,
};
use noseward_stability::{Confidence, Figures, Outcome, Verdict};
use noseward_words::{self as words, ComesOut, Number};

use super::strip::drawn;
use crate::app::{Certainty, Code, State, Uncertainty};
use crate::part::Part;

/// The outcomes in the order in which they are counted.
const COUNTED: [ComesOut; 4] = [
    ComesOut::SelfRighting,
    ComesOut::StraightStartOnly,
    ComesOut::Broadside,
    ComesOut::SwapsEnds,
];

/// How sure the outcome is; `None` until the readings have been tried: what is said before
/// would be taken back.
fn confidence(state: &State) -> Option<Confidence> {
    let comes = state.parts.of(Part::Certainty) != Code::Failed;
    match &state.certainty {
        Certainty::Known(Some(sure)) => Some(sure.confidence),
        Certainty::Unknown | Certainty::Drawing(_) if comes => None,
        _ => Some(Confidence::Probably),
    }
}

/// What the strip says: the outcome with how sure it is, or that it is open.
pub(crate) fn told(state: &State, figures: &Figures) -> (String, String) {
    let comes_out = comes_out(figures.outcome);
    let name = match confidence(state) {
        None => words::verdict_open(comes_out),
        Some(Confidence::Agreed) => words::verdict_agreed(comes_out),
        Some(Confidence::Probably) => words::verdict_probably(comes_out),
        Some(Confidence::TooClose) => words::verdict_too_close().into(),
    };
    (name, means(state, figures))
}

/// What stands behind the outcome: what it means, and what makes it less than sure.
fn means(state: &State, figures: &Figures) -> String {
    let confidence = confidence(state);
    match confidence {
        None => return words::verdict_means_open().into(),
        Some(Confidence::TooClose) => return words::verdict_means_too_close().into(),
        Some(Confidence::Agreed | Confidence::Probably) => {}
    }
    let mut means = outcome_meaning(figures.outcome);
    if let Some(sure) = known(state).filter(|_| confidence == Some(Confidence::Probably))
    {
        means.push(' ');
        means.push_str(&sure.why);
    }
    means
}

/// The rocket at rest in the wind, small, for the strip. Nothing while the outcome is
/// hidden or open.
pub(crate) fn resting_picture(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let open = confidence(state) == Some(Confidence::TooClose);
    if !state.tells_outcome() || open {
        return html! {};
    }
    let angle_rad = match figures.outcome {
        Outcome::SelfRighting | Outcome::StraightStartOnly => 0.0,
        Outcome::Broadside { angle_rad } => angle_rad,
        Outcome::SwapsEnds => std::f64::consts::PI,
    };
    html! {
        @if let Some(mut scene) = turned_rocket(design, figures, angle_rad) {
            @let () = scene.name = words::verdict_picture().into();
            (PreEscaped(svg_document(&scene, None)))
        }
    }
}

/// The outcome as sentences that stand by themselves, and what rolling has to do with it.
pub(crate) fn outcome_sentence(state: &State, figures: &Figures) -> String {
    let comes_out = comes_out(figures.outcome);
    let mut told = match confidence(state) {
        None => words::verdict_will_open(comes_out),
        Some(Confidence::Agreed) => words::verdict_will_agreed(comes_out),
        Some(Confidence::Probably) => words::verdict_will_probably(comes_out),
        Some(Confidence::TooClose) => words::verdict_will_too_close().into(),
    };
    told.push(' ');
    told.push_str(&means(state, figures));
    let two = state.drawn.0.fins.iter().any(|set| set.count == 2);
    if two && figures.deciding_roll_deg != 0.0 {
        told.push(' ');
        told.push_str(&words::verdict_two_fins());
    }
    told
}

pub(crate) fn known(state: &State) -> Option<&Uncertainty> {
    match &state.certainty {
        Certainty::Known(sure) => sure.as_ref(),
        Certainty::Unknown | Certainty::Drawing(_) => None,
    }
}

/// How often each outcome came up, those that did.
pub(crate) fn shares(verdict: &Verdict) -> String {
    let came_out = COUNTED.into_iter().zip(verdict.shares);
    listed(came_out.filter(|(_, share)| *share >= 0.005).map(|(comes_out, share)| {
        if share >= 0.995 {
            words::verdict_in_all_tries(comes_out)
        } else {
            words::verdict_in_tries(comes_out, Number::fixed(share * 100.0, 0))
        }
    }))
}

/// Where the separation is likely to be, for the strip. Dots hold its place until it is
/// known.
pub(crate) fn likely(state: &State) -> String {
    let reading = |m: f64| state.units.reading(m * 1000.0);
    match known(state).map(|sure| sure.verdict.separation_m) {
        Some(told) => words::strip_likely(&reading(told.low), &reading(told.high)),
        None => words::strip_likely_open().into(),
    }
}
