//! A row of numbers from paper: typed by keyboard alone, taken in with Enter.

use maud::{Markup, html};
use noseward_lesson::{
    Added, CHANGED_CHARS, Colour, Entry, Group, MOST_GROUP_NUMBER, PointResult, REPEATS,
    ResultPrediction, SwingOutcome, TrialResult,
};
use noseward_stability::{Quantity, Units};
use noseward_words as words;

use super::model::{ClassDesk, ClassField, PaperRow, Why};
use super::{count, take_in, update};
use crate::app::{Effect, State, read_number};
use crate::places::labels;

/// The largest number of a trial.
const MOST_TRIAL: u16 = 999;
/// What Enter does in each of its fields.
const ON_ENTER: &str = "cl-add-row";

pub(super) fn typed(row: &mut PaperRow, field: ClassField, text: &str) {
    let at = text.parse::<usize>().ok();
    let outcome = at.and_then(|at| SwingOutcome::ALL.get(at).copied());
    match field {
        ClassField::Colour => row.colour = at.unwrap_or(0),
        ClassField::Number => text.clone_into(&mut row.number),
        ClassField::Trial => text.clone_into(&mut row.trial),
        ClassField::Point(i) => text.clone_into(&mut row.points[i]),
        ClassField::Predicted => row.predicted = outcome,
        ClassField::Swing(i) => row.swings[i] = outcome,
        ClassField::Changed => text.clone_into(&mut row.changed),
        _ => {}
    }
}

/// The fields of a row, in the order of the pupils' sheet.
pub(super) fn grid(state: &State, desk: &ClassDesk) -> Markup {
    let row = &desk.row;
    let colours: Vec<_> =
        Colour::ALL.into_iter().map(|c| labels::colour(c).into()).collect();
    let outcomes: Vec<String> =
        SwingOutcome::ALL.into_iter().map(|one| labels::outcome(one).into()).collect();
    let chosen = |one: Option<SwingOutcome>| {
        one.and_then(|one| SwingOutcome::ALL.iter().position(|known| *known == one))
    };
    let unit = state.units.length_unit();
    html! {
        p class="nb__hint" { (words::class_grid_how(unit)) }
        div class="class__row" {
            (list(ClassField::Colour, words::class_group().as_str(), &colours, Some(row.colour), false))
            (text(ClassField::Number, words::class_number().as_str(), &row.number, 2))
            (text(ClassField::Trial, words::class_trial().as_str(), &row.trial, 3))
            (text(ClassField::Point(0), words::lesson_mass().as_str(), &row.points[0], 24))
            (text(ClassField::Point(1), words::lesson_pressure().as_str(), &row.points[1], 24))
            (list(ClassField::Predicted, words::class_predicted().as_str(), &outcomes, chosen(row.predicted), true))
            @for (swing, i) in row.swings.into_iter().zip(0..) {
                (list(ClassField::Swing(i), &words::class_swing(count(i + 1).into()), &outcomes, chosen(swing), true))
            }
            (text(ClassField::Changed, words::class_changed().as_str(), &row.changed, CHANGED_CHARS))
            button type="button" class="button button--main" id=(ON_ENTER) data-action=(ON_ENTER) { (words::class_add_row()) }
        }
        div role="status" {
            @if let Some(fault) = &desk.row_fault { p class="field__words" { (fault) } }
            @else if let Some(words) = &desk.row_said { p { (words) } }
        }
    }
}

fn text(field: ClassField, label: &str, value: &str, most: usize) -> Markup {
    let name = field.name();
    html! {
        span {
            label for=(name) { (label) }
            span class="field__box" {
                input class="field__input" id=(name) type="text" data-note=(name) data-enter=(ON_ENTER)
                    autocomplete="off" spellcheck="false" maxlength=(most) value=(value);
            }
        }
    }
}

fn list(
    field: ClassField,
    label: &str,
    all: &[String],
    chosen: Option<usize>,
    empty: bool,
) -> Markup {
    let name = field.name();
    html! {
        span {
            label for=(name) { (label) }
            select class="field__select" id=(name) data-note=(name) data-enter=(ON_ENTER) {
                @if empty { option value="" selected[chosen.is_none()] { "–" } }
                @for (one, i) in all.iter().zip(0_usize..) {
                    option value=(i) selected[chosen == Some(i)] { (one) }
                }
            }
        }
    }
}

/// Takes the row in, and makes room for the next trial of that group.
pub(super) fn add(state: &mut State) -> Vec<Effect> {
    let units = state.units;
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    (desk.row_fault, desk.row_said) = (None, None);
    let result = match read(&desk.row, units) {
        Ok(result) => result,
        Err((field, fault)) => {
            desk.row_fault = Some(fault);
            return vec![Effect::Redraw, Effect::Focus(field.name())];
        }
    };
    desk.before = Some(Box::new(desk.class.clone()));
    let trial = result.trial;
    // Nobody writes the code of the rules on paper.
    let result = TrialResult { rules: desk.class.rules, ..result };
    let entry = Entry::new(desk.class.label.clone(), result);
    desk.tally = Default::default();
    match take_in::put(&mut desk.class, &entry, true) {
        Ok(added) => {
            let whose = take_in::name_of(&entry);
            desk.row_said = Some(match added {
                Added::New => words::class_row_new(&whose),
                Added::Doubled => words::class_row_doubled(&whose),
                Added::Newer => words::class_row_newer(&whose),
            });
            let row = &mut desk.row;
            let (colour, number) = (row.colour, std::mem::take(&mut row.number));
            *row = PaperRow {
                colour,
                number,
                trial: (trial + 1).to_string(),
                ..PaperRow::default()
            };
        }
        Err(refusal) => {
            let why = Why::NotTaken(Box::new(entry), refusal);
            desk.row_fault = Some(super::why_not::said(&why));
        }
    }
    let mut effects = update::changed(state);
    effects.push(Effect::Focus(ClassField::Colour.name()));
    effects
}

type Fault = (ClassField, String);

/// The result that stands in a row.
fn read(row: &PaperRow, units: Units) -> Result<TrialResult, Fault> {
    let colour = Colour::ALL.get(row.colour).copied().unwrap_or_default();
    let group = whole(&row.number, MOST_GROUP_NUMBER.into())
        .and_then(|number| Group::new(colour, u8::try_from(number).ok()?))
        .ok_or_else(|| {
            (
                ClassField::Number,
                words::class_bad_number(u32::from(MOST_GROUP_NUMBER).into()),
            )
        })?;
    let trial = whole(&row.trial, MOST_TRIAL).ok_or_else(|| {
        (ClassField::Trial, words::class_bad_trial(u32::from(MOST_TRIAL).into()))
    })?;
    let point = |i: usize| {
        readings(&row.points[i], units).map(PointResult::of).map_err(|bad| {
            (ClassField::Point(i), words::class_bad_reading(&bad, count(REPEATS).into()))
        })
    };
    let (mass, pressure) = (point(0)?, point(1)?);
    let outcomes: Vec<_> = row.swings.into_iter().flatten().collect();
    if mass.is_none() && pressure.is_none() && outcomes.is_empty() {
        return Err((ClassField::Point(0), words::class_empty_row().into()));
    }
    let predicted =
        row.predicted.map(|outcome| ResultPrediction { outcome, swings_seen: 0 });
    let what_changed = row.changed.trim().chars().take(CHANGED_CHARS).collect();
    Ok(TrialResult {
        what_changed,
        mass,
        pressure,
        predicted,
        outcomes,
        ..TrialResult::empty(group, trial)
    })
}

/// A whole number from 1 to the most.
fn whole(text: &str, most: u16) -> Option<u16> {
    let value = read_number(text, Quantity::Count, Units::METRIC).ok()??;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "within its bounds"
    )]
    let number = (1.0..=f64::from(most)).contains(&value).then_some(value as u16)?;
    (f64::from(number) == value).then_some(number)
}

/// Up to three readings, parted by spaces, in millimetres; else the one that is none.
fn readings(text: &str, units: Units) -> Result<[Option<f64>; REPEATS], String> {
    let mut readings = [None; REPEATS];
    for (i, one) in text.split_whitespace().enumerate() {
        let read = read_number(one, Quantity::Length, units).ok().flatten();
        match (readings.get_mut(i), read) {
            (Some(place), Some(mm)) => *place = Some(mm),
            _ => return Err(one.to_owned()),
        }
    }
    Ok(readings)
}
