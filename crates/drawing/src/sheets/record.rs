//! What a group writes about a trial, with the fields of the places from Measure to Conclude, in
//! their order: side one before the swing, side two from the swing on.

use noseward_lesson::{BalancePoint, Level, REPEATS, Statement, SwingOutcome};
use noseward_stability::Units;
use noseward_words::{self as words, Text};

use super::said::printed;
use crate::names::{how_found, outcome_name, point_in, statement_question};
use crate::paper::{Column, Flow, Mark, Page, PaperSize, TO_TICK, Table};
use crate::pictures::picture;

/// From one line to write on to the next, in millimetres.
const LINE_MM: f64 = 8.4;
/// How high a cell is in which a number is written, and one with a box to tick.
const NUMBER_MM: f64 = 11.0;
const TICK_MM: f64 = 6.2;

/// The record of one trial, on two sides: as much of it as the level shows.
#[must_use]
pub fn record(size: PaperSize, level: Level, units: Units) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_record());
    whose(&mut flow);
    flow.fields(&[words::places_rocket(), words::compare_head_changed()]);
    let asks = [words::predict_fair(), words::conclude_no_names()];
    flow.beside(&[1.0, 1.0], 4.0, &mut |flow, i| flow.small(&asks[i]));
    measure(&mut flow, level, units);
    predict(&mut flow);
    flow.next_page();
    whose(&mut flow);
    swing(&mut flow);
    compare(&mut flow);
    conclude(&mut flow, level);
    flow.pages()
}

/// Sides are printed on sheets of their own too.
fn whose(flow: &mut Flow) {
    flow.fields(&[words::class_group(), words::class_number(), words::class_trial()]);
}

fn measure(flow: &mut Flow, level: Level, units: Units) {
    flow.heading(2, &words::places_measure_heading());
    flow.paragraph(&words::measure_lead());
    flow.paragraph(&words::pupil_all_in(units.length_unit()));
    flow.caution(&words::pupil_hang());
    flow.beside(&[1.0, 1.0], 6.0, &mut |flow, i| {
        point(flow, BalancePoint::ALL[i], level, units);
    });
    if level > Level::Balance {
        flow.fields(&[words::measure_row_separation()]);
    }
    let nearer = [
        words::measure_mass_nearer(),
        words::measure_pressure_nearer(),
        words::measure_neither_nearer(),
    ];
    flow.ticks("", &nearer);
    let unit = units.length_unit();
    let lengths =
        [words::measure_rocket_length(unit), words::measure_cutout_length(unit)];
    flow.fields(&lengths.map(|length| printed(&length)));
}

/// A guess, three readings from one end, and what they come to.
fn point(flow: &mut Flow, point: BalancePoint, level: Level, units: Units) {
    let (name, how, sketch) = how_found(point);
    let (of, unit) = (point_in(point), units.length_unit());
    flow.heading(3, &name);
    flow.beside(&[1.0, 4.0], 2.0, &mut |flow, i| match i {
        0 => flow.figure(&picture(sketch), (13.0, 13.0)),
        _ => flow.paragraph(&how),
    });
    if level > Level::Balance {
        let ends = [words::measure_from_nose(), words::measure_from_tail()];
        flow.ticks(&printed(&words::measure_from(of)), &ends);
    }
    let mut heads = vec![printed(&words::measure_guess(of, unit))];
    let reading = |i: usize| printed(&words::measure_reading((i + 1).into(), of, unit));
    heads.extend((0..REPEATS).map(reading));
    flow.table(&to_write(&heads, 1, NUMBER_MM));
    let mut keep = vec![String::from(words::measure_keep_all())];
    keep.extend((1..=REPEATS).map(|i| words::measure_leave_out(i.into())));
    flow.ticks("", &keep);
    flow.fields(&[words::measure_why()]);
    flow.fields(&[words::paper_head_middle(), words::paper_head_range()]);
}

/// A table with nothing in it.
fn to_write(heads: &[String], rows: usize, row_mm: f64) -> Table {
    let column = |head: &String| Column { head: head.clone(), share: 1.0 };
    Table {
        columns: heads.iter().map(column).collect(),
        rows: vec![vec![String::new(); heads.len()]; rows],
        row_mm,
        ..Table::default()
    }
}

fn predict(flow: &mut Flow) {
    flow.heading(2, &words::places_predict_heading());
    let outcomes = SwingOutcome::ALL.into_iter().filter(|one| one.can_be_predicted());
    let outcomes: Vec<Text> = outcomes.map(outcome_name).collect();
    flow.ticks(&words::predict_outcomes(), &outcomes);
    flow.ruled(&words::predict_because(), 2, LINE_MM);
}

fn swing(flow: &mut Flow) {
    flow.heading(2, &words::places_swing_heading());
    flow.caution(&printed(&words::swing_caution()));
    flow.list(&[words::swing_initials()], Mark::Box);
    flow.fields(&[words::pupil_string(), words::pupil_turns()]);
    let outcomes = SwingOutcome::ALL.map(|one| String::from(outcome_name(one)));
    let mut columns = vec![Column { head: String::new(), share: 1.1 }];
    columns.extend(outcomes.map(|head| Column { head, share: 1.0 }));
    let row = |swing: u32| {
        let mut row = vec![words::swing_number(swing.into())];
        row.resize(columns.len(), TO_TICK.to_owned());
        row
    };
    flow.table(&Table {
        caption: words::swing_what().into(),
        rows: (1..=3).map(row).collect(),
        row_mm: TICK_MM,
        columns: columns.clone(),
    });
}

fn compare(flow: &mut Flow) {
    flow.heading(2, &words::places_compare_heading());
    let heads = [
        words::pupil_moved(),
        words::pupil_moved_nose(),
        words::pupil_moved_tail(),
        words::pupil_moved_not(),
        words::pupil_moved_far(),
    ];
    let share = |i: usize| if i == 0 { 2.4 } else { 1.0 };
    let column = |(i, head): (usize, Text)| Column { head: head.into(), share: share(i) };
    let row = |point: Text| {
        let mut row = vec![String::from(point)];
        row.resize(heads.len() - 1, TO_TICK.to_owned());
        row.push(String::new());
        row
    };
    flow.table(&Table {
        columns: heads.into_iter().enumerate().map(column).collect(),
        rows: [words::lesson_mass(), words::lesson_pressure()].map(row).into(),
        row_mm: TICK_MM,
        ..Table::default()
    });
    flow.ruled(&words::compare_note(), 1, LINE_MM);
}

fn conclude(flow: &mut Flow, level: Level) {
    flow.heading(2, &words::places_conclude_heading());
    let boxes: &[Statement] = match level {
        Level::Balance => &[Statement::Claim, Statement::Reason],
        Level::Measure | Level::Explain | Level::Model => &Statement::ALL,
    };
    for of in boxes {
        match of {
            Statement::Trust => flow.fields(&[statement_question(*of)]),
            _ => flow.ruled(&statement_question(*of), 2, LINE_MM),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use crate::paper::inside::{says_in_order, sheet_is_sound, words_of};

    #[test]
    fn a_record_takes_two_sides() {
        for level in Level::ALL {
            for units in [Units::METRIC, Units::INCH] {
                sheet_is_sound(2, &|size| record(size, level, units));
            }
        }
    }

    /// What the places from Measure to Conclude ask for, by the functions that they use.
    fn has_the_fields_of_the_places() {
        let mass = words::BalancePoint::Mass;
        let guess = printed(&words::measure_guess(mass, "mm"));
        let third = printed(&words::measure_reading(3_u8.into(), mass, "mm"));
        let length = printed(&words::measure_rocket_length("mm"));
        let caution = printed(&words::swing_caution());
        let swing = words::swing_number(3_u8.into());
        let all: [&[&str]; 8] = [
            &[words::class_group(), words::class_number(), words::class_trial()]
                .map(Text::as_str),
            &[words::places_rocket(), words::compare_head_changed(), words::pupil_hang()]
                .map(Text::as_str),
            &[
                words::measure_mass(),
                words::measure_from_nose(),
                words::measure_from_tail(),
            ]
            .map(Text::as_str),
            &[&guess, &third, &words::measure_keep_all(), &words::paper_head_middle()],
            &[
                &words::measure_pressure(),
                &third,
                &words::measure_row_separation(),
                &length,
            ],
            &[
                words::places_predict_heading(),
                words::lesson_steady(),
                words::predict_because(),
            ]
            .map(Text::as_str),
            &[
                &caution,
                &words::swing_initials(),
                &words::pupil_string(),
                &words::pupil_turns(),
                &words::swing_what(),
                &swing,
            ],
            &[
                words::pupil_moved(),
                words::compare_note(),
                words::places_conclude_heading(),
            ]
            .map(Text::as_str),
        ];
        let asked = Statement::ALL.map(|of| statement_question(of).as_str());
        let all = [all.concat().as_slice(), &asked].concat();
        says_in_order(&record(PaperSize::A4, Level::Measure, Units::METRIC), &all);
    }

    #[test]
    fn fields_are_those_of_the_places_in_their_order() {
        has_the_fields_of_the_places();
        in_languages(&has_the_fields_of_the_places);
    }

    /// The youngest are asked for less, as on the page.
    #[test]
    fn the_youngest_write_less() {
        let said = |level| words_of(&record(PaperSize::A4, level, Units::METRIC));
        let (less, more) = (said(Level::Balance), said(Level::Measure));
        for words in [words::measure_row_separation(), words::conclude_evidence()] {
            assert!(
                more.contains(words.as_str()) && !less.contains(words.as_str()),
                "{words}"
            );
        }
    }
}
