//! The two points: three readings each, and what they come to beside what was worked out.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{Picture, picture, svg_document};
use noseward_lesson::{
    BalancePoint, End, Level, REASON_CHARS, REPEATS, ReadingField, ReadingStats, Trial,
    compare, explanations, slips,
};
use noseward_stability::{Nearer, fixed};

use super::form::{choice, faults, level, measured, mm, more, no_names, number, wide};
use crate::app::State;
use crate::notebook::NotebookField;
use crate::shell::{Region, region};

/// The place: a card for each point, the two lengths, and what both come to.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(trial) = state.trial() else { return super::full() };
    let trial = trial.as_ref();
    let slips = slips(&trial.measured, trial.design().length_mm(), state.units);
    let typing = state.typing.as_ref();
    let waits = |place| {
        let note = note_of(place).map(NotebookField::name);
        typing.is_some_and(|(name, _)| note.as_ref() == Some(name))
    };
    let told = |is_here: &dyn Fn(ReadingField) -> bool| -> Markup {
        html! {
            @for slip in slips.iter().filter(|slip| is_here(slip.place) && !waits(slip.place)) {
                p class="field__words" {
                    @if let ReadingField::Reading(_, i) = slip.place { "Reading " (i + 1) ": " }
                    (slip.sentence)
                }
            }
        }
    };
    let of = |point: BalancePoint| {
        html! {
            (faults(state, notes_of(point)))
            (told(&|place| match place {
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
                p class="place__lead" {
                    "Both points from the nose tip, along the body. The rocket is empty. Three \
                     readings of each: take the ruler away in between."
                }
            },
        ),
        point(BalancePoint::Mass, "measure-mass"),
        point(BalancePoint::Pressure, "measure-pressure"),
        region("measure-together", together(state, trial)),
        region(
            "measure-lengths",
            html! {
                details class="nb__lengths" id="nb-lengths" {
                    summary { "The cut-out is smaller or larger than the rocket" }
                    (number(state, NotebookField::RocketLength, "Length of the rocket", ""))
                    (number(state, NotebookField::CutoutLength, "Length of the cut-out", ""))
                    p class="nb__hint" { "Type both lengths." }
                }
                (faults(state, [NotebookField::RocketLength, NotebookField::CutoutLength]))
                (told(&|place| matches!(place, ReadingField::RocketLength | ReadingField::CutOutLength)))
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
    let (name, how, sketch) = match point {
        BalancePoint::Mass => (
            "Centre of mass",
            "Loop the string round the rocket until it hangs level. Read at the string.",
            Picture::HangingPoint,
        ),
        BalancePoint::Pressure => (
            "Centre of pressure (side-on)",
            "Balance the flat card cut-out on a ruler’s edge. Read at the edge.",
            Picture::Balance,
        ),
    };
    let counts = |at| trial.measured.counts(point, at, trial.design().length_mm());
    let ends = [End::Nose, End::Tail].map(|end| {
        (end.word().to_owned(), format!("the {}", end.word()), readings.from == end)
    });
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
                (choice(NotebookField::From(point), &html! { "Measured from" span class="visually-hidden" { ", " (point.label()) } }, &ends))
            }
            div class="nb__guess" {
                @if readings.any() {
                    @match readings.guess_mm {
                        Some(guess) => p { "Your guess was " (measured(state, guess)) " from the nose." },
                        None => p class="nb__hint" { "No guess was made." },
                    }
                } @else {
                    (number(state, NotebookField::Guess(point), "First a guess", &format!("of the {}, from the nose tip", point.label())))
                }
            }
            div class="nb__readings" {
                @for i in 0..REPEATS {
                    (number(state, NotebookField::Reading(point, i), &format!("Reading {}", i + 1), &format!("of the {}", point.label())))
                }
            }
            div id=(output_id(point)) { (comes_to) }
            @if readings.outlier().is_some_and(counts) || readings.left_out.is_some() {
                @let out = readings.left_out.as_ref().map(|out| out.reading);
                @let mut entries = vec![(String::new(), "keep all".to_owned(), out.is_none())];
                @let () = entries.extend((0..REPEATS).map(|i| (i.to_string(), format!("leave out reading {}", i + 1), out == Some(i))));
                (choice(NotebookField::LeftOut(point), &html! { "What do you do with it?" }, &entries))
                @if out.is_some() {
                    span class="nb__number" {
                        label class="field__label" for=(NotebookField::WhyLeftOut(point).name()) { "Why?" (no_names()) }
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
    html! {
        p {
            "Middle value: " strong { (measured(state, middle.middle_mm)) " from the nose" }
            @if converted { " (" (measured(state, from_tail)) " from the tail)" }
            ". " (range(state, &middle))
        }
    }
}

fn range(state: &State, middle: &ReadingStats) -> Markup {
    html! {
        @if middle.count < 2 { "One reading has no range." }
        @else if level(state) == Level::Balance {
            @if middle.range_mm() < 5.0 { "The readings are close together." }
            @else { "The readings are spread out: measure again?" }
        } @else {
            "Range: " (measured(state, middle.range_mm())) " (" (measured(state, middle.least_mm)) " to " (measured(state, middle.most_mm)) ")."
        }
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
                @if level(state) == Level::Balance {
                    (nearer(separation, overlaps))
                } @else {
                    "Measured separation: " strong { (measured(state, separation.abs())) } ". "
                    (nearer(separation, overlaps))
                    @if level(state) >= Level::Explain {
                        @if let Some(figures) = figures {
                            (format!(" That is {} body widths.", fixed(separation.abs() / (figures.body_width_m * 1000.0), 1)))
                        }
                    }
                }
            }
            @if overlaps == Some(true) {
                p { strong { "Too close to call. " } "The ranges of the two points overlap: these readings cannot tell which point is nearer the nose." }
            }
        }
        @if readings.any() && level(state) > Level::Balance {
            (more(
                "measure-beside",
                &html! { "Measured beside worked out" },
                &beside(state, trial),
            ))
        }
    }
}

/// Measured beside worked out, and what a difference may come from.
fn beside(state: &State, trial: &Trial) -> Markup {
    let Some(comparison) = compare(trial.rocket(), &trial.measured) else {
        return html! {};
    };
    let rows = [
        (BalancePoint::Mass.label(), comparison.mass),
        (BalancePoint::Pressure.label(), comparison.pressure),
        ("separation", comparison.separation),
    ];
    html! {
        (wide("Measured beside worked out", &html! { table class="table nb__beside" {
            caption { "From the nose tip: measured beside worked out" }
            thead { tr { th scope="col" { "what" } th scope="col" { "measured" } th scope="col" { "worked out" } th scope="col" { "difference" } } }
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
        @for words in explanations(trial.rocket(), &trial.measured, state.units) { p { (words) } }
    }
}

fn nearer(separation_mm: f64, overlaps: Option<bool>) -> &'static str {
    match Nearer::of(separation_mm / 1000.0) {
        _ if overlaps == Some(true) => "",
        Nearer::CentreOfMass => "The centre of mass is nearer the nose.",
        Nearer::CentreOfPressure => {
            "The centre of pressure (side-on) is nearer the nose."
        }
        Nearer::Neither => "Both points are in the same place.",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Readings that overlap cannot tell which point is nearer: then nothing is said.
    #[test]
    fn what_is_nearer_is_said_unless_the_readings_overlap() {
        for separation_mm in [-20.0, 0.0, 20.0] {
            assert_eq!(nearer(separation_mm, Some(true)), "");
            assert_eq!(nearer(separation_mm, Some(false)), nearer(separation_mm, None));
        }
        assert!(nearer(20.0, None).starts_with("The centre of mass"));
        assert!(nearer(-20.0, None).starts_with("The centre of pressure"));
        assert!(nearer(0.0, None).contains("same place"));
    }
}
