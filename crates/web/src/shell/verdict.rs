//! What the air will do, in words and as a small picture, with how sure that is.

use std::f64::consts::FRAC_PI_4;

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{svg_document, turned_rocket};
use noseward_stability::{Confidence, Figures, Outcome, Verdict, fixed, minus};

use super::strip::drawn;
use crate::app::{Certainty, Code, State, Uncertainty};
use crate::part::Part;

/// The names of the outcomes, in the order in which they are counted.
pub(crate) const OUTCOMES: [&str; 4] =
    [SELF_RIGHTING, "Straight start only", BROADSIDE, "Swaps ends"];
const SELF_RIGHTING: &str = "Self-righting";
const BROADSIDE: &str = "Broadside";

/// An outcome's name and what it means, in a pupil's words.
fn outcome(outcome: Outcome) -> (&'static str, String) {
    match outcome {
        Outcome::SelfRighting => (
            SELF_RIGHTING,
            "The air turns this rocket back nose-first, whichever way it points.".into(),
        ),
        Outcome::StraightStartOnly => (
            "Straight start only",
            "It flies nose-first if it starts so, but can also settle otherwise.".into(),
        ),
        Outcome::Broadside { angle_rad } => (
            if angle_rad < FRAC_PI_4 { "At an angle" } else { BROADSIDE },
            format!("The air holds it tilted by {}°.", fixed(angle_rad.to_degrees(), 0)),
        ),
        Outcome::SwapsEnds => {
            ("Swaps ends", "The air turns this rocket round to fly tail-first.".into())
        }
    }
}

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
    let (name, meaning) = outcome(figures.outcome);
    match confidence(state) {
        None => (format!("{name}?"), "How sure that is is being worked out.".into()),
        Some(Confidence::Agreed) => (format!("{name}."), meaning),
        Some(Confidence::Probably) => {
            let why = known(state).map_or("", |sure| sure.why);
            (
                format!("Probably {}.", name.to_ascii_lowercase()),
                format!("{meaning}{why}"),
            )
        }
        Some(Confidence::TooClose) => {
            ("Too close to call.".into(), "What is not known exactly decides.".into())
        }
    }
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
            @let () = scene.name = "The rocket at rest, with the wind from the left".into();
            (PreEscaped(svg_document(&scene, None)))
        }
    }
}

/// The outcome as sentences that stand by themselves, and what rolling has to do with it.
pub(crate) fn outcome_sentence(state: &State, figures: &Figures) -> String {
    let (name, meaning) = told(state, figures);
    let two = state.drawn.0.fins.iter().any(|set| set.count == 2);
    let plane = if two && figures.deciding_roll_deg != 0.0 {
        " Two fins steady it in one plane only; the other plane decides."
    } else {
        ""
    };
    format!("What the air will do: {} {meaning}{plane}", name.to_ascii_lowercase())
}

pub(crate) fn known(state: &State) -> Option<&Uncertainty> {
    match &state.certainty {
        Certainty::Known(sure) => sure.as_ref(),
        Certainty::Unknown | Certainty::Drawing(_) => None,
    }
}

/// How often each outcome came up, those that did.
pub(crate) fn shares(verdict: &Verdict) -> String {
    let told: Vec<String> = OUTCOMES
        .iter()
        .zip(verdict.shares)
        .filter(|(_, share)| *share >= 0.005)
        .map(|(name, share)| {
            let name = name.to_ascii_lowercase();
            if share >= 0.995 {
                format!("{name} in all tries")
            } else {
                format!("{name} in {} of 100 tries", fixed(share * 100.0, 0))
            }
        })
        .collect();
    told.join(", ")
}

/// Where the separation is likely to be, for the strip. Dots hold its place until it is
/// known.
pub(crate) fn likely(state: &State) -> String {
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let interval = known(state).map(|sure| sure.verdict.separation_m);
    let told = interval.map(|i| format!("{} to {}", reading(i.low), reading(i.high)));
    minus(&format!("likely {}", told.as_deref().unwrap_or("…")))
}
