//! The air from every side: what the rocket will do, and why.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{AirSheet, air_graph, svg_document, turned_rocket};
use noseward_stability::{Air, Crossflow, Figures, Model, Outcome, Verdict};

use super::faults::place;
use super::readings::drawn;
use crate::app::{Certainty, State, Sure};

/// The outcome's name and what it means, in a pupil's words.
pub(super) fn outcome(figures: &Figures) -> (&'static str, String) {
    match figures.outcome {
        Outcome::SelfRighting => (
            "Self-righting",
            "From any angle the air turns this rocket back nose-first.".into(),
        ),
        Outcome::StraightStartOnly => (
            "Straight start only",
            "It flies nose-first if it starts so, but can also settle otherwise.".into(),
        ),
        Outcome::Broadside { angle_rad } => (
            "Broadside",
            format!(
                "The air holds it turned {:.0}° away from nose-first.",
                angle_rad.to_degrees()
            ),
        ),
        Outcome::SwapsEnds => {
            ("Swaps ends", "The air turns this rocket round to fly tail-first.".into())
        }
    }
}

/// What the strip says: the outcome, or that the readings do not settle it.
pub(super) fn told(state: &State, figures: &Figures) -> (&'static str, String) {
    match known(state) {
        Some(sure) if sure.verdict.is_too_close() => {
            let shares = shares(&sure.verdict);
            ("Too close to call", format!("The readings leave it open: {shares}."))
        }
        _ => outcome(figures),
    }
}

/// The rocket at rest in the wind, small, for the strip. Nothing while the outcome is
/// hidden or open.
pub(super) fn resting_picture(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let open = known(state).is_some_and(|sure| sure.verdict.is_too_close());
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

/// The outcome as sentences that stand by themselves.
pub(super) fn outcome_sentence(state: &State, figures: &Figures) -> String {
    let (name, meaning) = told(state, figures);
    let plane = if figures.deciding_roll_deg != 0.0 {
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
            format!("{} {:.0} %", name.to_ascii_lowercase(), share * 100.0)
        })
        .collect();
    told.join(", ")
}

/// Half the width of the interval of the separation, for the strip. Dots hold its place
/// until it is known.
pub(super) fn plus_minus(state: &State) -> String {
    let half = known(state).map(|sure| {
        let interval = sure.verdict.separation_m;
        state.units.reading((interval.high - interval.low) / 2.0 * 1000.0)
    });
    format!("± {}", half.as_deref().unwrap_or("…"))
}

/// How sure the figures are: what the readings leave open, which of them matter most, and
/// apart from that what the model itself leaves open.
pub(super) fn sure(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    if !state.tells_outcome() {
        return html! {};
    }
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let mass_m = figures.mass.centre_m;
    let others: Vec<Air> = Model::with_doubts()
        .into_iter()
        .filter_map(|model| Air::new(design, model, None))
        .collect();
    let (low, high) = others
        .iter()
        .filter_map(|air| air.centre_of_pressure_m(0.0))
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), m| (l.min(m), h.max(m)));
    // The cut-out's own idea, that the air pushes equally everywhere, is a doubt too.
    let equal = Air::new(design, Model::default(), Some(Crossflow::common()));
    let told: Vec<&str> = others
        .iter()
        .chain(&equal)
        .map(|air| OUTCOMES[usize::from(air.outcome(mass_m).rank())])
        .collect();
    let outcomes: Vec<String> = OUTCOMES
        .into_iter()
        .filter(|name| told.contains(name))
        .map(str::to_ascii_lowercase)
        .collect();
    html! {
        @match known(state) {
            Some(sure) => {
                p {
                    strong { "What the readings leave open: " }
                    "19 of 20 times the separation is between "
                    (reading(sure.verdict.separation_m.low)) " and "
                    (reading(sure.verdict.separation_m.high)) ". Outcome: "
                    (shares(&sure.verdict)) "."
                    @if !sure.influences.is_empty() {
                        " The readings that matter most: "
                        @for (i, influence) in sure.influences.iter().enumerate() {
                            @if i > 0 { "; " }
                            (place(state, influence.field))
                        }
                        "."
                    }
                }
            }
            None => p {
                strong { "What the readings leave open: " } "being worked out."
            }
        }
        @if low <= high && figures.centre_of_pressure_nose_on_m.is_some() {
            p {
                strong { "What the model leaves open: " }
                "published ways to count fins, shoulders and the air from the side put the \
                 nose-on centre of pressure between " (reading(low)) " and " (reading(high))
                ". They give: " (outcomes.join(", or ")) "."
            }
        }
    }
}

/// Where each point lies nose-on and side-on, and what the card cut-out stands for.
pub(super) fn words(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    if !state.tells_outcome() {
        return html! { (prediction(state)) };
    }
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side_m = figures.centre_of_pressure_side_on_m;
    html! {
        (prediction(state))
        p { (outcome_sentence(state, figures)) }
        p {
            "A card cut-out stands for air from the side: its centre of pressure is at "
            (reading(side_m)) ". "
            @match figures.centre_of_pressure_nose_on_m {
                Some(nose_m) => {
                    "A rocket that flies nearly straight meets the air nose-on, and fins \
                     count for more then: at " (reading(nose_m)) ". For this rocket the "
                    @if side_m <= nose_m { "cut-out" } @else { "nose-on point" }
                    " is the more cautious of the two."
                }
                None => "Nose-on, the air pushes this rocket next to nothing to the side.",
            }
        }
        p {
            "The rocket rests where the curve meets the line of the centre of mass: at a \
             full dot it comes back when it is turned a little, at an open one it goes on."
        }
    }
}

/// The names that a prediction can choose from, in the order of [`outcome`].
const OUTCOMES: [&str; 4] =
    ["Self-righting", "Straight start only", "Broadside", "Swaps ends"];

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
            "centre of pressure " (state.units.reading(centre * 1000.0)) " from nose, "
        }
        @if moment.abs() < 1e-9 { "the air does not turn it." }
        @else if moment > 0.0 { "the air turns it back nose-first." }
        @else { "the air turns it away from nose-first." }
    }
}
