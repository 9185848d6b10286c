//! The strip below the drawing: separation, outcome and both points.

use maud::{Markup, html};
use noseward_stability::{Design, Figures, Nearer, Units, fixed};

use super::link_to;
use crate::app::{Place, State};

const MM: f64 = 1000.0;

/// The last rocket that could be drawn, with its figures.
pub(crate) fn drawn(state: &State) -> Option<(&Design, &Figures)> {
    let (design, report) = &state.drawn;
    report.figures.as_ref().map(|figures| (design, figures))
}

pub(crate) fn apart(separation_m: f64, units: Units) -> String {
    units.reading(separation_m.abs() * MM)
}

/// Which point is nearer the nose, as a sentence.
pub(crate) fn nearer(separation_m: f64) -> &'static str {
    match Nearer::of(separation_m) {
        Nearer::CentreOfMass => "The centre of mass is nearer the nose.",
        Nearer::CentreOfPressure => {
            "The wrong way round: the centre of pressure is nearer the nose."
        }
        Nearer::Neither => "Both points are in the same place.",
    }
}

/// The strip below the drawing.
pub(crate) fn strip(state: &State) -> Markup {
    let units = state.units;
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let least_m = figures.least_separation_m;
    let (least, as_drawn) = (apart(least_m, units), apart(figures.separation_m, units));
    if !state.tells_points() {
        return html! {
            div class="strip__words" {
                p { strong { "Measure first. " } "What is worked out is told once you have measured it." }
                @if state.has_stale_readings() { (stale_readings()) }
            }
        };
    }
    html! {
        div class="strip__main" {
            p class="strip__separation" {
                span class="strip__number" { (least) }
                @if Nearer::of(least_m) == Nearer::CentreOfPressure { " the wrong way round" }
                @else { " apart" }
                @if least_m.is_sign_negative() != figures.separation_m.is_sign_negative()
                    || least != as_drawn {
                    " " span class="strip__view" {
                        span class="strip__rolls" { "as it rolls; " } "in this view " (as_drawn)
                    }
                }
            }
            p class="strip__body-widths" {
                (super::verdict::likely(state)) " · "
                (fixed((least_m / figures.body_width_m).abs(), 1)) " body widths"
            }
        }
        div class="strip__picture" { (super::verdict::resting_picture(state)) }
        div class="strip__words" { (verdict(state, figures)) }
        (points(state, figures))
    }
}

fn stale_readings() -> Markup {
    html! { span { "Your readings are of the rocket before you changed it." } }
}

/// What the strip says of the outcome.
fn verdict(state: &State, figures: &Figures) -> Markup {
    if state.is_stale() {
        return html! {
            p {
                strong { "This is the last rocket that could be drawn. " }
                "Put right what is marked."
            }
        };
    }
    html! {
        @if !state.tells_outcome() {
            p {
                strong { "Predict first. " } "What will it do on its string? "
                @if state.place != Place::Predict {
                    (link_to(Place::Predict, "strip-predict", &html! { "Predict" }))
                }
            }
        } @else {
            @let (name, meaning) = super::verdict::told(state, figures);
            p {
                strong { (name) " " }
                // What was measured needs the room.
                @if state.measured.is_empty() { span class="strip__meaning" { (meaning) } }
            }
        }
        @if Nearer::of(figures.least_separation_m) == Nearer::CentreOfPressure {
            p class="strip__meaning" { (nearer(figures.least_separation_m)) }
        }
    }
}

/// What the strip says of the two points: what was measured leads, and differences are said.
fn points(state: &State, figures: &Figures) -> Markup {
    let written = |m: f64| state.units.reading(m * MM);
    let points = [
        (
            "legend legend--mass",
            "centre of mass ",
            state.measured.centre_of_mass.as_ref(),
            figures.mass.centre_m,
            figures.computed_mass.centre_m,
        ),
        (
            "legend legend--wind",
            "centre of pressure (side-on) ",
            state.measured.centre_of_pressure.as_ref(),
            figures.centre_of_pressure_side_on_m,
            figures.computed_centre_of_pressure_side_on_m,
        ),
    ];
    html! {
        p class=(if state.measured.is_empty() { "strip__legend" } else { "strip__legend strip__legend--measured" }) {
            @for (class, name, measured, leads_m, computed_m) in points {
                span class=(class) {
                    (name)
                    @if let Some(measured) = measured {
                        strong { (written(leads_m)) } " measured"
                        @if measured.most_m() > measured.least_m() {
                            ", " (written(measured.least_m())) " to " (written(measured.most_m()))
                        }
                        "; " (written(computed_m)) " worked out"
                        @if state.differs(measured, computed_m) {
                            strong { ": they differ" }
                        }
                    } @else { (written(leads_m)) }
                }
                " "
            }
            @if state.has_stale_readings() {
                (stale_readings())
            }
        }
    }
}

/// One short sentence for the live region.
pub(crate) fn spoken(state: &State) -> String {
    let Some((_, figures)) = drawn(state) else { return String::new() };
    if state.is_stale() || !state.drafts.is_empty() {
        let first = state.faults().into_iter().next();
        return first.map(|(_, _, sentence)| sentence).unwrap_or_default();
    }
    if !state.tells_points() {
        return String::new();
    }
    let name = match super::verdict::told(state, figures) {
        (name, _) if state.tells_outcome() => format!(" {name}"),
        _ => String::new(),
    };
    let least_m = figures.least_separation_m;
    format!("Separation {}. {}{name}", apart(least_m, state.units), nearer(least_m))
}
