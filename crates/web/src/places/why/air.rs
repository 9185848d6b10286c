//! The air from every side: what the rocket will do, and why.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{AirSheet, air_graph, svg_document, turned_rocket};
use noseward_stability::{Doubts, fixed, minus, separation_over_rolls};

use crate::app::State;
use crate::shell::faults::place;
use crate::shell::magnification;
use crate::shell::strip::drawn;
use crate::shell::verdict::{OUTCOMES, known, outcome_sentence, shares};

/// How sure the figures are: what the readings leave open, which of them matter most, and
/// apart from that what the model itself leaves open.
pub(crate) fn sure(state: &State) -> Markup {
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

/// What the air does, and how the graphs tell it.
pub(crate) fn words(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let crosses = figures.resting_angles.len() > 2;
    html! {
        p { (outcome_sentence(state, figures)) }
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

/// Where the air pushes, in one line.
pub(crate) fn pushes(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let reading = |m: f64| minus(&state.units.reading(m * 1000.0));
    html! {
        "Air from the side pushes at " (reading(figures.centre_of_pressure_side_on_m))
        @if let Some(nose_m) = figures.centre_of_pressure_nose_on_rolled_m {
            ", air from the front at " (reading(nose_m.least))
        }
    }
}

/// Where each point lies nose-on and side-on, and what rolling does.
pub(crate) fn points(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side_m = figures.centre_of_pressure_side_on_m;
    html! {
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
    }
}

/// The two graphs.
pub(crate) fn graph(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let sheet = AirSheet {
        width_px: state.graph_px.clamp(280.0, 760.0) / magnification(state),
        units: state.units,
        angle_rad: state.angle_deg.to_radians(),
    };
    let scene = air_graph(figures, &sheet);
    html! { (PreEscaped(svg_document(&scene, Some("air-words")))) }
}

/// The rocket turned to the angle that is looked at.
pub(crate) fn turned(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let scene = turned_rocket(design, figures, state.angle_deg.to_radians());
    html! {
        @if let Some(scene) = scene {
            (PreEscaped(svg_document(&scene, Some("air-reading"))))
        }
    }
}

/// What the air does at that angle.
pub(crate) fn reading(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let angle_rad = state.angle_deg.to_radians();
    let moment = figures.air.turning_moment_m(angle_rad, figures.mass.centre_m);
    let centre = figures.air.centre_of_pressure_m(angle_rad);
    html! {
        (format!("{}°: ", fixed(state.angle_deg, 0)))
        @if let Some(centre) = centre {
            "the air pushes " (state.units.reading(centre * 1000.0)) " from the nose, "
        }
        @if moment.abs() < 1e-9 { "and only a nudge lets it turn the rocket." }
        @else if moment > 0.0 { "and turns it back nose-first." }
        @else { "and turns it away from nose-first." }
    }
}
