//! What was found, in sentences and as a table.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{push_bars, svg_document};
use noseward_link::escape_formula;
use noseward_stability::{Design, Figures, MeasuredPoint, Units, fixed, minus};

use crate::app::State;
use crate::shell::strip::{apart, drawn, nearer};
use crate::shell::verdict::outcome_sentence;

const MM: f64 = 1000.0;
const GRAMS: f64 = 1000.0;

/// What the drawing shows, in sentences.
pub(crate) fn in_words(state: &State) -> Markup {
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
        @if !state.tells_points() { (untold()) } @else {
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
        @if state.tells_outcome() { p { (outcome_sentence(state, figures)) } }
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

/// In place of what is told later.
fn untold() -> Markup {
    html! { p { "Where its two points are is told once you have measured them." } }
}

fn difference(by: f64, write: impl Fn(f64) -> String) -> String {
    let side = if by < 0.0 { "more" } else { "less" };
    if by.abs() < 0.5 { "the same".into() } else { format!("{} {side}", write(by.abs())) }
}

/// The same as a table, with every part.
pub(crate) fn as_table(state: &State) -> Markup {
    let units = state.units;
    let Some((design, figures)) = drawn(state) else { return html! {} };
    if !state.tells_points() {
        return untold();
    }
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
            minus(&fixed(figures.least_separation_m / figures.body_width_m, 2)),
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
        details {
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
                        td { (minus(&fixed(part.normal_force_slope_per_rad + 0.0, 2))) }
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
