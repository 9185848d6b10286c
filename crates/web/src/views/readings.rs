//! What was found, as the strip, in words and as a table.

use maud::{Markup, html};
use noseward_link::escape_formula;
use noseward_stability::{Design, Figures, Nearer, Units};

use crate::app::{State, Waits};

const MM: f64 = 1000.0;
const GRAMS: f64 = 1000.0;

/// The last rocket that could be drawn, with its figures.
pub(super) fn drawn(state: &State) -> Option<(&Design, &Figures)> {
    let (design, report) = &state.drawn;
    report.figures.as_ref().map(|figures| (design, figures))
}

/// Body widths to one decimal, without a sign.
fn calibres(figures: &Figures) -> String {
    format!("{:.1}", figures.separation_body_widths.abs())
}

fn apart(figures: &Figures, units: Units) -> String {
    units.reading(figures.separation_m.abs() * MM)
}

/// Which point is nearer the nose, as a sentence.
fn nearer(figures: &Figures) -> &'static str {
    match figures.nearer_the_nose {
        Nearer::CentreOfMass => "The centre of mass is nearer the nose.",
        Nearer::CentreOfPressure => {
            "The centre of pressure (side-on) is nearer the nose."
        }
        Nearer::Neither => "Both points are in the same place.",
    }
}

/// The strip below the drawing.
pub(super) fn strip(state: &State) -> Markup {
    let units = state.units;
    let Some((_, figures)) = drawn(state) else { return html! {} };
    html! {
        div class="strip__main" {
            p class="strip__separation" {
                span class="strip__number" { (apart(figures, units)) } " apart"
            }
            p class="strip__body-widths" {
                (super::air::plus_minus(state)) " · " (calibres(figures)) " body widths"
            }
        }
        div class="strip__picture" { (super::air::resting_picture(state)) }
        div class="strip__words" {
            @if state.is_stale() {
                p {
                    strong { "This is the last rocket that could be drawn. " }
                    "Mend what is marked on the steps."
                }
            } @else {
                @let (name, meaning) = super::air::told(state, figures);
                @if let Some(waits) = state.waits() {
                    p {
                        strong { "Predict first" } ", in the notebook: "
                        @match waits {
                            Waits::ForTrial => "begin a trial with this rocket.",
                            Waits::ForPrediction => "what will it do on its string?",
                        }
                    }
                } @else if !state.tells_outcome() {
                    p { strong { "Predict first. " } "What will it do in the wind?" }
                } @else { p { strong { (name) ". " } span class="strip__meaning" { (meaning) } } }
            }
            p class="strip__legend" {
                span class="legend legend--mass" {
                    "centre of mass " (units.reading(figures.mass.centre_m * MM))
                    @if state.measured.centre_of_mass.is_some() { " (measured)" }
                }
                " "
                span class="legend legend--wind" {
                    "centre of pressure "
                    (units.reading(figures.centre_of_pressure_side_on_m * MM))
                }
            }
        }
        button type="button" class="button strip__why" id="go-why" data-action="why" {
            "Why?"
        }
    }
}

/// What the drawing shows, in sentences.
pub(super) fn in_words(state: &State) -> Markup {
    let units = state.units;
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let name = if design.name.is_empty() { "The rocket" } else { &design.name };
    let measured = design.measured;
    let computed = figures.computed_mass;
    html! {
        @if state.is_stale() {
            p { "This is the last rocket that could be drawn." }
        }
        p {
            (name) " is " (units.reading(figures.length_m * MM)) " long and "
            (units.reading(figures.body_width_m * MM)) " wide. It weighs "
            (units.scale_reading(figures.mass.mass_kg * GRAMS)) "."
        }
        p {
            "The centre of mass is " (units.reading(figures.mass.centre_m * MM))
            " from the nose tip. The centre of pressure (side-on), which a card cut-out \
             finds, is "
            (units.reading(figures.centre_of_pressure_side_on_m * MM))
            " from the nose tip."
        }
        p {
            "They are " (apart(figures, units)) " apart: " (calibres(figures))
            " body widths. " (nearer(figures))
        }
        @if state.tells_outcome() { p { (super::air::outcome_sentence(state, figures)) } }
        @if let Some(mm) = state.measured.centre_of_mass.as_ref().map(|p| p.value_m() * MM) {
            p {
                "The hanging point was measured, at " (units.length(mm))
                ". The parts say " (units.reading(computed.centre_m * MM)) ", "
                (difference(mm - computed.centre_m * MM, |d| units.reading(d))) "."
            }
        }
        @if let Some(g) = measured.total_mass_g {
            p {
                "The whole rocket was weighed: " (units.mass(g)) ". The parts add up to "
                (units.scale_reading(computed.mass_kg * GRAMS)) ", "
                (difference(g - computed.mass_kg * GRAMS, |d| units.scale_reading(d))) "."
            }
        }
    }
}

fn difference(by: f64, write: impl Fn(f64) -> String) -> String {
    let side = if by < 0.0 { "more" } else { "less" };
    if by.abs() < 0.5 { "the same".into() } else { format!("{} {side}", write(by.abs())) }
}

/// The same as a table, with every part.
pub(super) fn as_table(state: &State) -> Markup {
    let units = state.units;
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let length = |m: f64| units.reading(m * MM);
    let rows = [
        ("Length", length(figures.length_m)),
        ("Width of the body", length(figures.body_width_m)),
        ("Mass", units.scale_reading(figures.mass.mass_kg * GRAMS)),
        ("Centre of mass, from the nose tip", length(figures.mass.centre_m)),
        (
            "Centre of pressure (side-on), from the nose tip",
            length(figures.centre_of_pressure_side_on_m),
        ),
        (
            "Centre of pressure (nose-on), from the nose tip",
            figures.centre_of_pressure_nose_on_m.map_or("none".into(), length),
        ),
        (
            "Centre of pressure (side-on), with each part’s own drag",
            figures
                .air
                .centre_of_pressure_m(std::f64::consts::FRAC_PI_2)
                .map_or("none".into(), length),
        ),
        ("Separation", length(figures.separation_m)),
        ("Separation in body widths", format!("{:.2}", figures.separation_body_widths)),
    ];
    html! {
        table class="table" {
            caption { "The rocket" }
            tbody {
                @for (name, value) in rows {
                    tr { th scope="row" { (name) } td { (value) } }
                }
            }
        }
        p class="card__note" {
            "All distances are from the nose tip. Push is the normal-force slope for each \
             radian, on the body’s largest cross-section. Separation counts as positive when the centre of mass is nearer the nose."
        }
        table class="table" {
            caption { "Its parts" }
            thead {
                tr {
                    th scope="col" { "Part" }
                    th scope="col" { "Mass" }
                    th scope="col" { "Its middle" }
                    th scope="col" { "Push of the air, nose-on" }
                    th scope="col" { "Where it pushes" }
                }
            }
            tbody {
                @for part in &figures.parts {
                    tr {
                        // The table may be copied into a spreadsheet.
                        th scope="row" { (escape_formula(&part.part.name(design))) }
                        td { (units.mass(rounded_mass(part.mass.mass_kg * GRAMS))) }
                        td { (length(part.mass.centre_m)) }
                        td { (format!("{:.2}", part.normal_force_slope_per_rad + 0.0)) }
                        td { (part.nose_on_centre_m.map_or("–".into(), length)) }
                    }
                }
            }
        }
    }
}

/// A part's mass to a tenth of a gram: finer is not known.
fn rounded_mass(g: f64) -> f64 {
    (g * 10.0).round() / 10.0
}

/// One short sentence for the live region.
pub(super) fn spoken(state: &State) -> String {
    let Some((_, figures)) = drawn(state) else { return String::new() };
    if state.is_stale() || !state.drafts.is_empty() {
        let first = state.faults().into_iter().next();
        return first.map(|(_, _, sentence)| sentence).unwrap_or_default();
    }
    let name = match super::air::told(state, figures) {
        (name, _) if state.tells_outcome() => format!(" {name}."),
        _ => String::new(),
    };
    format!("Separation {}. {}{name}", apart(figures, state.units), nearer(figures))
}
