//! The air from every side: what the rocket will do, and why.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{AirSheet, air_graph, svg_document, turned_rocket};
use noseward_stability::{Figures, Outcome};

use super::readings::drawn;
use crate::app::State;

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

/// The outcome as sentences that stand by themselves.
pub(super) fn outcome_sentence(figures: &Figures) -> String {
    let (name, meaning) = outcome(figures);
    let plane = if figures.weaker_plane_decides {
        " Two fins steady it in one plane only; the other plane decides."
    } else {
        ""
    };
    format!("What the air will do: {}. {meaning}{plane}", name.to_lowercase())
}

/// Where each point lies nose-on and side-on, and what the card cut-out stands for.
pub(super) fn words(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side_m = figures.centre_of_pressure_side_on_m;
    html! {
        p { (outcome_sentence(figures)) }
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

/// The two graphs.
pub(super) fn graph(state: &State) -> Markup {
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
