//! The strip below the drawing: separation, outcome and both points.

use maud::{Markup, html};
use noseward_drawing::Written;
use noseward_stability::{Design, Figures, MeasuredPoint, Nearer, Units};
use noseward_words::{self as words, Differs, Mark, Number, OfPoints, Text};

use super::link_to;
use super::marked::{marked, said};
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
pub(crate) fn nearer(separation_m: f64) -> Text {
    match Nearer::of(separation_m) {
        Nearer::CentreOfMass => words::strip_mass_nearer(),
        Nearer::CentreOfPressure => words::strip_pressure_nearer(),
        Nearer::Neither => words::strip_same_place(),
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
                p { (said(words::strip_measure_first())) }
                @if state.has_stale_readings() { (stale_readings()) }
            }
        };
    }
    html! {
        div class="strip__main" {
            p class="strip__separation" {
                @let told = if Nearer::of(least_m) == Nearer::CentreOfPressure {
                    words::strip_wrong_way(&least)
                } else {
                    words::strip_apart(&least)
                };
                (marked(&told, &element))
                @if least_m.is_sign_negative() != figures.separation_m.is_sign_negative()
                    || least != as_drawn {
                    " " span class="strip__view" {
                        (marked(&words::strip_in_view(&as_drawn), &element))
                    }
                }
            }
            p class="strip__body-widths" {
                (super::verdict::likely(state)) " · "
                (words::strip_body_widths(Number::fixed((least_m / figures.body_width_m).abs(), 1)))
            }
        }
        div class="strip__picture" { (super::verdict::resting_picture(state)) }
        div class="strip__words" { (verdict(state, figures)) }
        (points(state, figures))
    }
}

/// The figure, and what a telephone does without.
fn element(mark: Mark, run: &str) -> Markup {
    let class = if mark == Mark::Value { "strip__number" } else { "strip__rolls" };
    html! { span class=(class) { (run) } }
}

fn stale_readings() -> Markup {
    html! { span { (words::strip_stale_readings()) } }
}

/// What the strip says of the outcome.
fn verdict(state: &State, figures: &Figures) -> Markup {
    if state.is_stale() {
        return html! {
            p { (said(words::strip_last_drawn())) }
        };
    }
    html! {
        @if !state.tells_outcome() {
            p {
                (said(words::strip_predict_first())) " "
                @if state.place != Place::Predict {
                    (link_to(Place::Predict, "strip-predict", &html! { (words::places_predict()) }))
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
            OfPoints::Mass,
            state.measured.centre_of_mass.as_ref(),
            figures.mass.centre_m,
            figures.computed_mass.centre_m,
        ),
        (
            "legend legend--wind",
            OfPoints::Pressure,
            state.measured.centre_of_pressure.as_ref(),
            figures.centre_of_pressure_side_on_m,
            figures.computed_centre_of_pressure_side_on_m,
        ),
    ];
    html! {
        p class=(if state.measured.is_empty() { "strip__legend" } else { "strip__legend strip__legend--measured" }) {
            @for (class, of, measured, leads_m, computed_m) in points {
                span class=(class) {
                    @match measured {
                        Some(measured) => (point(state, of, measured, leads_m, computed_m)),
                        None => (words::strip_point(of, &written(leads_m))),
                    }
                }
                " "
            }
            @if state.has_stale_readings() {
                (stale_readings())
            }
        }
    }
}

/// What the strip says of a point that was measured.
fn point(
    state: &State,
    of: OfPoints,
    measured: &MeasuredPoint,
    leads_m: f64,
    computed_m: f64,
) -> Markup {
    let written = |m: f64| state.units.reading(m * MM);
    let (leads, computed) = (written(leads_m), written(computed_m));
    let (least_m, most_m) = (measured.least_m(), measured.most_m());
    let differs = match state.differs(measured, computed_m) {
        true => Differs::Differs,
        false => Differs::Agrees,
    };
    said(if most_m > least_m {
        let (least, most) = (written(least_m), written(most_m));
        words::strip_point_range(of, differs, &leads, &least, &most, &computed)
    } else {
        words::strip_point_measured(of, differs, &leads, &computed)
    })
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
    let least_m = figures.least_separation_m;
    let mut spoken = words::strip_spoken(&apart(least_m, state.units));
    spoken.push(' ');
    spoken.push_str(&nearer(least_m));
    if state.tells_outcome() {
        spoken.push(' ');
        spoken.push_str(&super::verdict::told(state, figures).0);
    }
    spoken
}
