//! What was found, as the strip, in words and as a table.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{push_bars, svg_document};
use noseward_link::escape_formula;
use noseward_stability::{Design, Figures, MeasuredPoint, Nearer, Units, minus};

use crate::app::{State, Waits};

const MM: f64 = 1000.0;
const GRAMS: f64 = 1000.0;

/// The last rocket that could be drawn, with its figures.
pub(super) fn drawn(state: &State) -> Option<(&Design, &Figures)> {
    let (design, report) = &state.drawn;
    report.figures.as_ref().map(|figures| (design, figures))
}

fn apart(separation_m: f64, units: Units) -> String {
    units.reading(separation_m.abs() * MM)
}

/// Which point is nearer the nose, as a sentence.
fn nearer(separation_m: f64) -> &'static str {
    match Nearer::of(separation_m) {
        Nearer::CentreOfMass => "The centre of mass is nearer the nose.",
        Nearer::CentreOfPressure => {
            "The wrong way round: the centre of pressure is nearer the nose."
        }
        Nearer::Neither => "Both points are in the same place.",
    }
}

/// The strip below the drawing.
pub(super) fn strip(state: &State) -> Markup {
    let units = state.units;
    let Some((_, figures)) = drawn(state) else { return html! {} };
    let least_m = figures.least_separation_m;
    let (least, as_drawn) = (apart(least_m, units), apart(figures.separation_m, units));
    html! {
        div class="strip__main" {
            p class="strip__separation" {
                span class="strip__number" { (least) } " apart"
            }
            p class="strip__body-widths" {
                (super::air::likely(state)) " · "
                (format!("{:.1}", (least_m / figures.body_width_m).abs())) " body widths"
            }
            @if least != as_drawn {
                p class="strip__body-widths" {
                    "as it rolls; in this view " (as_drawn)
                }
            }
        }
        div class="strip__picture" { (super::air::resting_picture(state)) }
        div class="strip__words" { (verdict(state, figures)) (points(state, figures)) }
        button type="button" class="button strip__why" id="go-why" data-action="why" {
            "Why?"
        }
    }
}

/// What the strip says of the outcome.
fn verdict(state: &State, figures: &Figures) -> Markup {
    if state.is_stale() {
        return html! {
            p {
                strong { "This is the last rocket that could be drawn. " }
                "Put right what is marked in the cards."
            }
        };
    }
    html! {
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
        } @else {
            @let (name, meaning) = super::air::told(state, figures);
            p { strong { (name) ". " } span class="strip__meaning" { (meaning) } }
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
                    (name) (written(leads_m))
                    @if let Some(measured) = measured {
                        ", measured"
                        @if measured.most_m() > measured.least_m() {
                            " (" (written(measured.least_m())) " to " (written(measured.most_m())) ")"
                        }
                        "; worked out " (written(computed_m))
                        @if state.differs(measured, computed_m) {
                            strong { ": they differ" }
                        }
                    }
                }
                " "
            }
            @if state.has_stale_readings() {
                span { "Your readings are of the rocket before you changed it." }
            }
        }
    }
}

/// What the drawing shows, in sentences.
pub(super) fn in_words(state: &State) -> Markup {
    let units = state.units;
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let name = if design.name.is_empty() { "The rocket" } else { &design.name };
    let measured = &state.measured;
    let computed = figures.computed_mass;
    let by_hand =
        |point: &Option<MeasuredPoint>| if point.is_some() { "measured, " } else { "" };
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
            "The centre of mass is " (by_hand(&measured.centre_of_mass))
            (units.reading(figures.mass.centre_m * MM))
            " from the nose tip. The centre of pressure (side-on), which a card cut-out \
             finds, is " (by_hand(&measured.centre_of_pressure))
            (units.reading(figures.centre_of_pressure_side_on_m * MM))
            " from the nose tip."
        }
        p {
            "In this view they are " (apart(figures.separation_m, units)) " apart, "
            "and " (apart(figures.least_separation_m, units))
            " in the least favourable roll. " (nearer(figures.least_separation_m))
        }
        @if state.tells_outcome() { p { (super::air::outcome_sentence(state, figures)) } }
        @for (name, point, computed_m) in [
            ("The centre of mass", &measured.centre_of_mass, computed.centre_m),
            (
                "The centre of pressure (side-on)",
                &measured.centre_of_pressure,
                figures.computed_centre_of_pressure_side_on_m,
            ),
        ] {
            @if let Some(point) = point {
                p {
                    (name) " was measured, at " (units.reading(point.value_m() * MM))
                    ". Worked out: " (units.reading(computed_m * MM)) ", "
                    (difference((point.value_m() - computed_m) * MM, |d| units.reading(d))) "."
                }
            }
        }
        @if let Some(g) = design.measured.total_mass_g {
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
            "Where the air pushes at 90°, each part with its own drag",
            figures
                .air
                .centre_of_pressure_m(std::f64::consts::FRAC_PI_2)
                .map_or("none".into(), length),
        ),
        ("Separation in this view", length(figures.separation_m)),
        ("Separation in the least favourable roll", length(figures.least_separation_m)),
        (
            "The same in body widths",
            minus(&format!("{:.2}", figures.least_separation_m / figures.body_width_m)),
        ),
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
            "All distances are from the nose tip. Separation counts as positive when the \
             centre of mass is nearer the nose."
        }
        @let bars = state.tells_outcome().then(|| push_bars(design, figures, units));
        @if let Some(scene) = bars.flatten() {
            figure class="air__graph" {
                figcaption { strong { "Flying straight: how the air’s push is shared" } }
                (PreEscaped(svg_document(&scene, None)))
            }
        }
        details id="parts-in-numbers" {
            summary { "The parts in numbers" }
            (parts_in_numbers(design, figures, units))
        }
    }
}

fn parts_in_numbers(design: &Design, figures: &Figures, units: Units) -> Markup {
    html! {
        table class="table" {
            thead {
                tr {
                    th scope="col" { "Part" }
                    th scope="col" { "Weighs" }
                    th scope="col" { "Hangs at" }
                    th scope="col" { "Pushed (for experts: force slope for each radian)" }
                    th scope="col" { "at" }
                }
            }
            tbody {
                @for part in &figures.parts {
                    tr {
                        // The table may be copied into a spreadsheet.
                        th scope="row" { (escape_formula(&part.part.name(design))) }
                        td { (units.mass(rounded_mass(part.mass.mass_kg * GRAMS))) }
                        td { (units.reading(part.mass.centre_m * MM)) }
                        td { (minus(&format!("{:.2}", part.normal_force_slope_per_rad + 0.0))) }
                        td {
                            (part.nose_on_centre_m.map_or("–".into(), |m| units.reading(m * MM)))
                        }
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
    let least_m = figures.least_separation_m;
    format!("Separation {}. {}{name}", apart(least_m, state.units), nearer(least_m))
}
