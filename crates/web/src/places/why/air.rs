//! The air from every side: what the rocket will do, and why.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::Written;
use noseward_drawing::{AirSheet, air_graph, svg_document, turned_rocket};
use noseward_stability::{Doubts, separation_over_rolls};
use noseward_words::{self as words, Agreement, Marked, Number, SumSays, Turning};

use crate::app::State;
use crate::shell::faults::place;
use crate::shell::magnification;
use crate::shell::marked::said;
use crate::shell::strip::drawn;
use crate::shell::verdict::{known, outcome_sentence, shares};

/// How sure the figures are: what the readings leave open, which of them matter most, and
/// apart from that what the model itself leaves open.
pub(crate) fn sure(state: &State) -> Markup {
    if drawn(state).is_none() || !state.tells_outcome() {
        return html! {};
    }
    let Some(sure) = known(state) else {
        return html! { p { (said(words::why_sure_wait())) } };
    };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let interval = sure.verdict.separation_m;
    let matter_most = sure
        .influences
        .iter()
        .map(|influence| place(state, influence.field))
        .reduce(|before, more| words::why_more_readings(&before, &more));
    html! {
        p {
            (said(words::why_sure_readings(
                &reading(sure.verdict.readings_alone_m),
                &reading(interval.low),
                &reading(interval.high),
                &shares(&sure.verdict),
            )))
            @if let Some(readings) = matter_most { " " (words::why_matter_most(&readings)) }
        }
        @if let Some(doubts) = &sure.doubts { p { (said(model(state, doubts))) } }
    }
}

/// What the model leaves open.
fn model(state: &State, doubts: &Doubts) -> Marked {
    const OUTCOMES: [SumSays; 4] = [
        SumSays::SelfRighting,
        SumSays::StraightStartOnly,
        SumSays::Broadside,
        SumSays::SwapsEnds,
    ];
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let told = OUTCOMES.into_iter().zip(doubts.outcomes).filter(|&(_, told)| told);
    let told = told
        .map(|(outcome, _)| words::why_outcome(outcome))
        .reduce(|before, more| words::why_more_outcomes(&before, &more))
        .unwrap_or_default();
    let agreement = if doubts.agree() { Agreement::Agree } else { Agreement::Differ };
    match doubts.centre_of_pressure_nose_on_m {
        Some(band) => words::why_sums_band(
            agreement,
            &reading(band.least),
            &reading(band.most),
            &told,
        ),
        None => words::why_sums(agreement, &told),
    }
}

/// What the air does, and how the graphs tell it.
pub(crate) fn words(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let crosses = figures.resting_angles.len() > 2;
    html! {
        p { (outcome_sentence(state, figures)) }
        p {
            @if crosses { (words::why_lines_cross()) } @else { (words::why_lines_apart()) }
        }
    }
}

/// Where the air pushes, in one line.
pub(crate) fn pushes(state: &State) -> Markup {
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side = reading(figures.centre_of_pressure_side_on_m);
    let told = match figures.centre_of_pressure_nose_on_rolled_m {
        Some(nose_m) => words::why_pushes(&side, &reading(nose_m.least)),
        None => words::why_pushes_side(&side),
    };
    html! { (told) }
}

/// Where each point lies nose-on and side-on, and what rolling does.
pub(crate) fn points(state: &State) -> Markup {
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let reading = |m: f64| state.units.reading(m * 1000.0);
    let side = reading(figures.centre_of_pressure_side_on_m);
    let nose_on = match figures.centre_of_pressure_nose_on_rolled_m {
        Some(nose_m) => {
            let (front, rear) = (reading(nose_m.least), reading(nose_m.most));
            if front == rear {
                words::why_nose_on(&front)
            } else {
                words::why_nose_on_rolls(&front, &rear)
            }
        }
        None => words::why_nose_on_hardly().into(),
    };
    html! {
        @if let Some(over) = separation_over_rolls(design, figures) {
            @let (least, most) = (reading(over.least), reading(over.most));
            @if least != most {
                p { (words::why_rolls(&least, &most, &reading(figures.separation_m))) }
            }
        }
        p { (words::why_cut_out(&side)) " " (nose_on) }
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
    let angle = Number::fixed(state.angle_deg, 0);
    let turning = if moment.abs() < 1e-9 {
        Turning::OnlyNudged
    } else if moment > 0.0 {
        Turning::Back
    } else {
        Turning::Away
    };
    let told = match centre {
        Some(m) => words::why_at_angle(angle, &state.units.reading(m * 1000.0), turning),
        None => words::why_at_angle_hardly(angle, turning),
    };
    html! { (told) }
}
