//! The air from every side: what the rocket will do, and why.

use std::f64::consts::FRAC_PI_4;

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{AirSheet, air_graph, svg_document, turned_rocket};
use noseward_stability::{
    Confidence, Doubts, Figures, Outcome, Verdict, minus, separation_over_rolls,
};

use super::faults::place;
use super::readings::drawn;
use crate::app::{Certainty, State, Sure};

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
            format!("The air holds it tilted by {:.0}°.", angle_rad.to_degrees()),
        ),
        Outcome::SwapsEnds => {
            ("Swaps ends", "The air turns this rocket round to fly tail-first.".into())
        }
    }
}

/// How sure the outcome is: no more than probable until the readings have been tried.
fn confidence(state: &State, figures: &Figures) -> Confidence {
    let Some(sure) = known(state) else { return Confidence::Probably };
    sure.doubts.map_or(Confidence::Probably, |doubts| {
        doubts.confidence(figures.outcome, Some(&sure.verdict))
    })
}

/// What the strip says: the outcome with how sure it is, or that it is open.
pub(super) fn told(state: &State, figures: &Figures) -> (String, String) {
    let (name, meaning) = outcome(figures.outcome);
    match confidence(state, figures) {
        Confidence::Agreed => (name.into(), meaning),
        Confidence::Probably => {
            let doubted = known(state).is_some();
            let why = if doubted { " Not all published sums say so." } else { "" };
            (format!("Probably {}", name.to_ascii_lowercase()), format!("{meaning}{why}"))
        }
        Confidence::TooClose => {
            let shares = known(state).map(|sure| shares(&sure.verdict));
            let shares = shares.unwrap_or_default();
            (
                "Too close to call".into(),
                format!("With what is not known exactly: {shares}."),
            )
        }
    }
}

/// The rocket at rest in the wind, small, for the strip. Nothing while the outcome is
/// hidden or open.
pub(super) fn resting_picture(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let open = confidence(state, figures) == Confidence::TooClose;
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
pub(super) fn outcome_sentence(state: &State, figures: &Figures) -> String {
    let (name, meaning) = told(state, figures);
    let two = state.drawn.0.fins.iter().any(|set| set.count == 2);
    let plane = if two && figures.deciding_roll_deg != 0.0 {
        " Two fins steady it in one plane only; the other plane decides."
    } else {
        ""
    };
    format!("What the air will do: {}. {meaning}{plane}", name.to_ascii_lowercase())
}

fn known(state: &State) -> Option<&Sure> {
    match &state.certainty {
        Certainty::Known(sure) => sure.as_ref(),
        Certainty::Unknown | Certainty::Drawing(_) => None,
    }
}

/// How often each outcome came up, those that did.
fn shares(verdict: &Verdict) -> String {
    let told: Vec<String> = OUTCOMES
        .iter()
        .zip(verdict.shares)
        .filter(|(_, share)| *share >= 0.005)
        .map(|(name, share)| {
            let name = name.to_ascii_lowercase();
            if share >= 0.995 {
                format!("{name} in all tries")
            } else {
                format!("{name} in {:.0} of 100 tries", share * 100.0)
            }
        })
        .collect();
    told.join(", ")
}

/// Where the separation is likely to be, for the strip. Dots hold its place until it is
/// known.
pub(super) fn likely(state: &State) -> String {
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let interval = known(state).map(|sure| sure.verdict.separation_m);
    let told = interval.map(|i| format!("{} to {}", reading(i.low), reading(i.high)));
    minus(&format!("likely {}", told.as_deref().unwrap_or("…")))
}

/// How sure the figures are: what the readings leave open, which of them matter most, and
/// apart from that what the model itself leaves open.
pub(super) fn sure(state: &State) -> Markup {
    if drawn(state).is_none() || !state.tells_outcome() {
        return html! {};
    }
    let Some(sure) = known(state) else {
        return html! {
            p { strong { "How sure are your readings? " } "Being worked out." }
        };
    };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let interval = sure.verdict.separation_m;
    html! {
        p {
            strong { "How sure are your readings? " }
            "If only ruler and scales err, the separation is known to ± "
            (reading(sure.verdict.readings_alone_m))
            ". With all that nobody read (how heavy the card is, the bottle’s floor and \
             neck, glue), about 19 of 20 such rockets have one between "
            (reading(interval.low)) " and " (reading(interval.high))
            ". They come out " (shares(&sure.verdict)) "."
            @if !sure.influences.is_empty() {
                " The readings that matter most: "
                @for (i, influence) in sure.influences.iter().enumerate() {
                    @if i > 0 { "; " }
                    (place(state, influence.field))
                }
                "."
            }
        }
        @if let Some(doubts) = &sure.doubts { (model(state, doubts)) }
    }
}

/// What the model leaves open.
fn model(state: &State, doubts: &Doubts) -> Markup {
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let told = OUTCOMES.iter().zip(doubts.outcomes).filter(|&(_, told)| told);
    let told: Vec<String> = told.map(|(name, _)| name.to_ascii_lowercase()).collect();
    html! {
        p {
            strong { "How sure is our sum? " }
            "There are several published sums for this. They "
            @if let Some(band) = doubts.centre_of_pressure_nose_on_m {
                "put the centre of pressure (nose-on) between " (reading(band.least))
                " and " (reading(band.most)) ", and "
            }
            @if doubts.agree() { "all say: " } @else { "say: " }
            (told.join(", or ")) "."
        }
    }
}

/// Where each point lies nose-on and side-on, and what rolling does.
pub(super) fn words(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    if !state.tells_outcome() {
        return html! { (prediction(state)) };
    }
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side_m = figures.centre_of_pressure_side_on_m;
    let crosses = figures.resting_angles.len() > 2;
    html! {
        (prediction(state))
        p { (outcome_sentence(state, figures)) }
        @if let Some(over) = separation_over_rolls(design, figures) {
            @if reading(over.least) != reading(over.most) {
                p {
                    "A flying rocket rolls, and shows more or less of its fins: the two \
                     points are then " (reading(over.least)) " to " (reading(over.most))
                    " apart. The least counts. The drawing and the cut-out show one view, "
                    "in which they are " (reading(figures.separation_m)) " apart."
                }
            }
        }
        p {
            "A card cut-out stands for air from the side: its centre of pressure \
             (side-on) is at " (reading(side_m)) ". "
            @match figures.centre_of_pressure_nose_on_rolled_m {
                Some(nose_m) => {
                    "Flying straight, the air meets the nose: then the centre of pressure \
                     (nose-on) is at " (reading(nose_m.least))
                    @if reading(nose_m.least) != reading(nose_m.most) {
                        ", or as far back as " (reading(nose_m.most)) " in another roll"
                    }
                    ". The one nearer the nose is the more cautious of the two."
                }
                None => "Flying straight, the air hardly pushes this rocket sideways.",
            }
        }
        p {
            @if crosses {
                "Where the two lines cross, the air does not turn the rocket. Full dot: a \
                 nudge, and it comes back. Open dot: a nudge, and it turns away."
            } @else {
                "The two lines do not cross: but for the two ends, the air turns the rocket \
                 the same way at every angle. Full dot: a nudge, and it comes back. Open \
                 dot: a nudge, and it turns away."
            }
        }
    }
}

/// The names that a prediction can choose from, in the order of [`outcome`].
const OUTCOMES: [&str; 4] =
    [SELF_RIGHTING, "Straight start only", BROADSIDE, "Swaps ends"];
const SELF_RIGHTING: &str = "Self-righting";
const BROADSIDE: &str = "Broadside";

/// The switch for predicting first and, while it waits, the choice.
fn prediction(state: &State) -> Markup {
    html! {
        @if state.predict_first {
            @match state.prediction.and_then(|i| OUTCOMES.get(i)) {
                None => {
                    p { strong { "What will it do? " } "Choose, then see." }
                    p class="air__choices" {
                        @for (i, name) in OUTCOMES.iter().enumerate() {
                            button type="button" class="button" id=(format!("predict:{i}"))
                                data-action="predict" data-target=(i) { (name) }
                        }
                    }
                }
                Some(name) => p { "The prediction was: " strong { (name) } "." },
            }
        }
        button type="button" class="button button--small" id="predict-first"
            aria-pressed=(super::pressed(state.predict_first))
            data-action=(if state.predict_first { "tell-at-once" } else { "predict-first" }) {
            "Predict first"
        }
    }
}

/// The two graphs.
pub(super) fn graph(state: &State) -> Markup {
    if !state.tells_outcome() {
        return html! {};
    }
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let sheet = AirSheet {
        width_px: state.graph_px.clamp(280.0, 760.0),
        units: state.units,
        angle_rad: state.angle_deg.to_radians(),
    };
    let scene = air_graph(figures, &sheet);
    html! { (PreEscaped(svg_document(&scene, Some("air-words")))) }
}

/// The rocket turned to the angle that is looked at.
pub(super) fn turned(state: &State) -> Markup {
    if !state.tells_outcome() {
        return html! {};
    }
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let scene = turned_rocket(design, figures, state.angle_deg.to_radians());
    html! {
        @if let Some(scene) = scene {
            (PreEscaped(svg_document(&scene, Some("air-reading"))))
        }
    }
}

/// What the air does at that angle.
pub(super) fn reading(state: &State) -> Markup {
    if !state.tells_outcome() {
        return html! { "Hidden until the prediction is in." };
    }
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let angle_rad = state.angle_deg.to_radians();
    let moment = figures.air.turning_moment_m(angle_rad, figures.mass.centre_m);
    let centre = figures.air.centre_of_pressure_m(angle_rad);
    html! {
        (format!("{:.0}°: ", state.angle_deg))
        @if let Some(centre) = centre {
            "the air pushes " (state.units.reading(centre * 1000.0)) " from the nose, "
        }
        @if moment.abs() < 1e-9 { "and only a nudge lets it turn the rocket." }
        @else if moment > 0.0 { "and turns it back nose-first." }
        @else { "and turns it away from nose-first." }
    }
}
