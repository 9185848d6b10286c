//! The two points: three readings each, and what they come to beside what was worked out.

mod beside;
mod slips;

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{how_found, picture, svg_document};
use noseward_lesson::{
    BalancePoint, End, Level, REASON_CHARS, REPEATS, ReadingField, ReadingStats, Trial,
    compare, explanations,
};
use noseward_stability::Nearer;
use noseward_words::{self as words, Number, Text};

use super::form::{
    choice, faults, heads, level, measured, mm, more, no_names, number, told, wide,
};
use super::labels;
use crate::app::State;
use crate::notebook::NotebookField;
use crate::shell::{Region, region, spoken_unit};

/// The place: a card for each point, the two lengths, and what both come to.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(trial) = state.trial() else { return super::full() };
    let trial = trial.as_ref();
    let unit = spoken_unit(state.units.length_unit());
    let found =
        noseward_lesson::slips(&trial.measured, trial.design().length_mm(), state.units);
    let typing = state.typing.as_ref();
    let waits = |place| {
        let note = note_of(place).map(NotebookField::name);
        typing.is_some_and(|(name, _)| note.as_ref() == Some(name))
    };
    let asked = |is_here: &dyn Fn(ReadingField) -> bool| -> Markup {
        html! {
            @for slip in found.iter().filter(|slip| is_here(slip.place) && !waits(slip.place)) {
                @let sentence = slips::sentence(slip, state.units);
                p class="field__words" {
                    @if let ReadingField::Reading(_, i) = slip.place {
                        (words::measure_slip((i + 1).into(), &sentence))
                    } @else { (sentence) }
                }
            }
        }
    };
    let of = |point: BalancePoint| {
        html! {
            (faults(state, notes_of(point)))
            (asked(&|place| match place {
                ReadingField::Reading(p, _) | ReadingField::Guess(p) | ReadingField::Readings(p) => p == point,
                ReadingField::RocketLength | ReadingField::CutOutLength => false,
            }))
            (middle(state, trial, point))
        }
    };
    let point = |point: BalancePoint, id: &'static str| {
        region(id, point_form(state, trial, point, &of(point)))
    };
    vec![
        region(
            "measure-how",
            html! {
                p class="place__lead" { (words::measure_lead()) }
            },
        ),
        point(BalancePoint::Mass, "measure-mass"),
        point(BalancePoint::Pressure, "measure-pressure"),
        region("measure-together", together(state, trial)),
        region(
            "measure-lengths",
            html! {
                details class="nb__lengths" id="nb-lengths" {
                    summary { (words::measure_other_scale()) }
                    (number(state, NotebookField::RocketLength, words::measure_rocket_length(unit)))
                    (number(state, NotebookField::CutoutLength, words::measure_cutout_length(unit)))
                    p class="nb__hint" { (words::measure_type_both()) }
                }
                (faults(state, [NotebookField::RocketLength, NotebookField::CutoutLength]))
                (asked(&|place| matches!(place, ReadingField::RocketLength | ReadingField::CutOutLength)))
            },
        ),
    ]
}

/// The notes of a point, in their order.
fn notes_of(point: BalancePoint) -> Vec<NotebookField> {
    let mut notes = vec![NotebookField::Guess(point)];
    notes.extend((0..REPEATS).map(|i| NotebookField::Reading(point, i)));
    notes
}

fn point_form(
    state: &State,
    trial: &Trial,
    point: BalancePoint,
    comes_to: &Markup,
) -> Markup {
    let readings = trial.measured.of(point);
    let (name, how, sketch) = how_found(point);
    let counts = |at| trial.measured.counts(point, at, trial.design().length_mm());
    let ends = [
        ("nose", words::measure_from_nose(), End::Nose),
        ("tail", words::measure_from_tail(), End::Tail),
    ]
    .map(|(value, label, end)| (value.into(), label.into(), readings.from == end));
    let (of, unit) = (labels::point_in(point), spoken_unit(state.units.length_unit()));
    html! {
        @let class = match point {
            BalancePoint::Mass => "legend legend--mass",
            BalancePoint::Pressure => "legend legend--wind",
        };
        fieldset class="nb__point" {
            legend { span class=(class) { (name) } }
            div class="nb__how" {
                span aria-hidden="true" { (PreEscaped(svg_document(&picture(sketch), None))) }
                span { (how) }
            }
            @if level(state) > Level::Balance || readings.from == End::Tail {
                (choice(NotebookField::From(point), &told(words::measure_from(of)), &ends))
            }
            div class="nb__guess" {
                @if readings.any() {
                    @match readings.guess_mm {
                        Some(guess) => p { (words::measure_guessed(&measured(state, guess))) },
                        None => p class="nb__hint" { (words::measure_no_guess()) },
                    }
                } @else {
                    (number(state, NotebookField::Guess(point), words::measure_guess(of, unit)))
                }
            }
            div class="nb__readings" {
                @for i in 0..REPEATS {
                    (number(state, NotebookField::Reading(point, i), words::measure_reading((i + 1).into(), of, unit)))
                }
            }
            div id=(output_id(point)) { (comes_to) }
            @if readings.outlier().is_some_and(counts) || readings.left_out.is_some() {
                @let out = readings.left_out.as_ref().map(|out| out.reading);
                @let mut entries = vec![(String::new(), words::measure_keep_all().into(), out.is_none())];
                @let () = entries.extend((0..REPEATS).map(|i| (i.to_string(), words::measure_leave_out((i + 1).into()), out == Some(i))));
                (choice(NotebookField::LeftOut(point), &html! { (words::measure_apart()) }, &entries))
                @if out.is_some() {
                    span class="nb__number" {
                        label class="field__label" for=(NotebookField::WhyLeftOut(point).name()) { (words::measure_why()) (no_names()) }
                        span class="field__box" {
                            input class="field__input field__input--words" id=(NotebookField::WhyLeftOut(point).name()) type="text"
                                data-note=(NotebookField::WhyLeftOut(point).name()) maxlength=(REASON_CHARS) autocomplete="off"
                                value=(NotebookField::WhyLeftOut(point).text(state));
                        }
                    }
                }
            }
        }
    }
}

pub(crate) fn output_id(point: BalancePoint) -> &'static str {
    match point {
        BalancePoint::Mass => "nb-mass",
        BalancePoint::Pressure => "nb-pressure",
    }
}

/// The field that a slip belongs to.
fn note_of(place: ReadingField) -> Option<NotebookField> {
    Some(match place {
        ReadingField::RocketLength => NotebookField::RocketLength,
        ReadingField::CutOutLength => NotebookField::CutoutLength,
        ReadingField::Guess(point) => NotebookField::Guess(point),
        ReadingField::Reading(point, i) => NotebookField::Reading(point, i),
        ReadingField::Readings(_) => return None,
    })
}

/// What the readings of a point come to.
fn middle(state: &State, trial: &Trial, point: BalancePoint) -> Markup {
    let length = trial.design().length_mm();
    let readings = trial.measured.of(point);
    let Some(middle) = trial.measured.middle(point, length) else { return html! {} };
    let from_tail = trial.measured.rocket_mm(length) - middle.middle_mm;
    let converted =
        readings.from == End::Tail || trial.measured.cutout_length_mm.is_some();
    let value = measured(state, middle.middle_mm);
    let sentence = if converted {
        words::measure_middle_both(&value, &measured(state, from_tail))
    } else {
        words::measure_middle(&value)
    };
    html! { p { (told(sentence)) " " (range(state, &middle)) } }
}

fn range(state: &State, middle: &ReadingStats) -> String {
    if middle.count < 2 {
        words::measure_range_none().into()
    } else if level(state) == Level::Balance {
        if middle.range_mm() < 5.0 {
            words::measure_range_close().into()
        } else {
            words::measure_range_spread().into()
        }
    } else {
        words::measure_range(
            &measured(state, middle.range_mm()),
            &measured(state, middle.least_mm),
            &measured(state, middle.most_mm),
        )
    }
}

/// Both points together, beside what was worked out.
fn together(state: &State, trial: &Trial) -> Markup {
    let length = trial.design().length_mm();
    let readings = &trial.measured;
    let overlaps = readings.overlaps(length);
    let figures = trial.rocket().figures();
    html! {
        @if let Some(separation) = readings.separation_mm(length) {
            p class="nb__found" {
                @if level(state) > Level::Balance {
                    (told(words::measure_separation(&measured(state, separation.abs())))) " "
                }
                @if let Some(nearer) = nearer(separation, overlaps) { (nearer) }
                @if level(state) >= Level::Explain {
                    @if let Some(figures) = figures {
                        @let widths = separation.abs() / (figures.body_width_m * 1000.0);
                        " " (words::measure_widths(Number::fixed(widths, 1)))
                    }
                }
            }
            @if overlaps == Some(true) {
                p { (told(words::measure_too_close())) }
            }
        }
        @if readings.any() && level(state) > Level::Balance {
            (more(
                "measure-beside",
                &html! { (words::measure_beside()) },
                &beside(state, trial),
            ))
        }
    }
}

/// Measured beside worked out, and what a difference may come from.
fn beside(state: &State, trial: &Trial) -> Markup {
    const HEADS: [Text; 4] = [
        words::measure_head_what(),
        words::measure_head_measured(),
        words::measure_head_worked_out(),
        words::measure_head_difference(),
    ];
    let Some(comparison) = compare(trial.rocket(), &trial.measured) else {
        return html! {};
    };
    let rows = [
        (words::lesson_mass(), comparison.mass),
        (words::lesson_pressure(), comparison.pressure),
        (words::measure_row_separation(), comparison.separation),
    ];
    html! {
        (wide(&words::measure_beside(), &html! { table class="table nb__beside" {
            caption { (words::measure_beside_caption()) }
            thead { tr {
                (heads(&HEADS))
            } }
            tbody {
                @for (label, beside) in rows {
                    tr {
                        th scope="row" { (label) }
                        td { @if let Some(middle) = beside.measured { (measured(state, middle.middle_mm)) } }
                        td { (mm(state, beside.computed_mm)) }
                        td { @if let Some(value) = beside.difference_as_read_mm(state.units) { (measured(state, value)) } }
                    }
                }
            }
        } }))
        @for explanation in explanations(trial.rocket(), &trial.measured, state.units) {
            p { (beside::sentence(explanation, state.units)) }
        }
    }
}

fn nearer(separation_mm: f64, overlaps: Option<bool>) -> Option<Text> {
    if overlaps == Some(true) {
        return None;
    }
    Some(match Nearer::of(separation_mm / 1000.0) {
        Nearer::CentreOfMass => words::measure_mass_nearer(),
        Nearer::CentreOfPressure => words::measure_pressure_nearer(),
        Nearer::Neither => words::measure_neither_nearer(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Readings that overlap cannot tell which point is nearer: then nothing is said.
    #[test]
    fn what_is_nearer_is_said_unless_the_readings_overlap() {
        for separation_mm in [-20.0, 0.0, 20.0] {
            assert_eq!(nearer(separation_mm, Some(true)), None);
            assert_eq!(nearer(separation_mm, Some(false)), nearer(separation_mm, None));
        }
        let said = |separation_mm| nearer(separation_mm, None).unwrap();
        assert!(said(20.0).starts_with("The centre of mass"));
        assert!(said(-20.0).starts_with("The centre of pressure"));
        assert!(said(0.0).contains("same place"));
    }
}
