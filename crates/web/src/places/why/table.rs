//! What was found, in sentences and as a table.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::Written;
use noseward_drawing::{part_name, push_bars, svg_document};
use noseward_link::escape_formula;
use noseward_stability::{Design, Figures, MeasuredPoint, Units};
use noseward_words::{self as words, Compared, Found, Number, WhichPoint};

use crate::app::State;
use crate::shell::strip::{apart, drawn, nearer};
use crate::shell::verdict::outcome_sentence;

const MM: f64 = 1000.0;
const GRAMS: f64 = 1000.0;

/// What the drawing shows, in sentences.
pub(crate) fn in_words(state: &State) -> Markup {
    let units = state.units;
    let Some((design, figures)) = drawn(state) else { return html! {} };
    let measured = &state.measured;
    let computed = figures.computed_mass;
    let at = |m: f64| units.reading(m * MM);
    let found = |point: &Option<MeasuredPoint>| {
        if point.is_some() { Found::ByHand } else { Found::BySum }
    };
    let (length, width) = (at(figures.length_m), at(figures.body_width_m));
    let mass = units.scale_reading(figures.mass.mass_kg * GRAMS);
    let rocket = match design.name.as_str() {
        "" => words::why_is_nameless(&length, &width, &mass),
        name => words::why_is(name, &length, &width, &mass),
    };
    html! {
        @if state.is_stale() { p { (words::why_last_drawn()) } }
        p { (rocket) }
        @if !state.tells_points() { (untold()) } @else {
        p {
            (words::why_mass_at(found(&measured.centre_of_mass), &at(figures.mass.centre_m)))
            " "
            (words::why_pressure_at(
                found(&measured.centre_of_pressure),
                &at(figures.centre_of_pressure_side_on_m),
            ))
        }
        p {
            (words::why_apart(
                &apart(figures.separation_m, units),
                &apart(figures.least_separation_m, units),
            ))
            " " (nearer(figures.least_separation_m))
        }
        @if state.tells_outcome() { p { (outcome_sentence(state, figures)) } }
        @for (which, point, computed_m) in [
            (WhichPoint::Mass, &measured.centre_of_mass, computed.centre_m),
            (
                WhichPoint::Pressure,
                &measured.centre_of_pressure,
                figures.computed_centre_of_pressure_side_on_m,
            ),
        ] {
            @if let Some(point) = point {
                @let (compared, by) = compared((point.value_m() - computed_m) * MM);
                p {
                    (words::why_point_measured(
                        which,
                        &at(point.value_m()),
                        &at(computed_m),
                        &units.reading(by),
                        compared,
                    ))
                }
            }
        }
        }
        @if let Some(g) = design.measured.total_mass_g {
            @let (compared, by) = compared(g - computed.mass_kg * GRAMS);
            p {
                (words::why_weighed(
                    &units.mass(g),
                    &units.scale_reading(computed.mass_kg * GRAMS),
                    &units.scale_reading(by),
                    compared,
                ))
            }
        }
    }
}

/// In place of what is told later.
fn untold() -> Markup {
    html! { p { (words::why_untold()) } }
}

/// How what was worked out compares with a measured value that is larger by this, in
/// millimetres or grams, and the size of the difference.
fn compared(by: f64) -> (Compared, f64) {
    let compared = if by.abs() < 0.5 {
        Compared::TheSame
    } else if by < 0.0 {
        Compared::More
    } else {
        Compared::Less
    };
    (compared, by.abs())
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
        (words::why_row_length(), length(figures.length_m)),
        (words::why_row_width(), length(figures.body_width_m)),
        (words::why_row_mass(), units.scale_reading(figures.mass.mass_kg * GRAMS)),
        (words::why_row_mass_at(), length(figures.mass.centre_m)),
        (words::why_row_side_on(), length(figures.centre_of_pressure_side_on_m)),
        (
            words::why_row_nose_on(),
            figures
                .centre_of_pressure_nose_on_m
                .map_or_else(|| words::why_none().into(), length),
        ),
        (
            words::why_row_across(),
            figures
                .air
                .centre_of_pressure_m(std::f64::consts::FRAC_PI_2)
                .map_or_else(|| words::why_none().into(), length),
        ),
        (words::why_row_apart(), length(figures.separation_m)),
        (words::why_row_least_apart(), length(figures.least_separation_m)),
        (
            words::why_row_body_widths(),
            Number::fixed(figures.least_separation_m / figures.body_width_m, 2)
                .to_string(),
        ),
    ];
    html! {
        table class="table" {
            caption { (words::why_table_title()) }
            tbody {
                @for (name, value) in rows {
                    tr { th scope="row" { (name) } td { (value) } }
                }
            }
        }
        p class="card__note" { (words::why_table_note()) }
        @let bars = state.tells_outcome().then(|| push_bars(design, figures, units));
        @if let Some(scene) = bars.flatten() {
            figure class="air__graph" {
                figcaption { strong { (words::why_push_bars()) } }
                (PreEscaped(svg_document(&scene, None)))
            }
        }
        details {
            summary { (words::why_parts()) }
            (parts_in_numbers(design, figures, units))
        }
    }
}

fn parts_in_numbers(design: &Design, figures: &Figures, units: Units) -> Markup {
    html! {
        table class="table" {
            thead {
                tr {
                    th scope="col" { (words::why_part()) }
                    th scope="col" { (words::why_weighs()) }
                    th scope="col" { (words::why_hangs_at()) }
                    th scope="col" { (words::why_pushed()) }
                    th scope="col" { (words::why_pushed_at()) }
                }
            }
            tbody {
                @for part in &figures.parts {
                    tr {
                        // The table may be copied into a spreadsheet.
                        th scope="row" { (escape_formula(&part_name(design, part.part))) }
                        td { (units.mass(rounded_mass(part.mass.mass_kg * GRAMS))) }
                        td { (units.reading(part.mass.centre_m * MM)) }
                        td { (Number::fixed(part.normal_force_slope_per_rad, 2).to_string()) }
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_worked_out_is_more_less_or_the_same() {
        assert_eq!(compared(2.0), (Compared::Less, 2.0));
        assert_eq!(compared(-2.0), (Compared::More, 2.0));
        assert_eq!(compared(0.49), (Compared::TheSame, 0.49));
        assert_eq!(compared(-0.49), (Compared::TheSame, 0.49));
    }
}
