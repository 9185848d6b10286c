//! The table for the results of a class, with the columns of the rows that a teacher types in.

use noseward_lesson::SwingOutcome;
use noseward_stability::Units;
use noseward_words as words;

use crate::names::outcome_name;
use crate::paper::{Column, Flow, Mark, Page, PaperSize, Table};

/// How many trials there is room for, and how high each row is, in millimetres.
const ROWS: usize = 20;
const ROW_MM: f64 = 9.0;

/// A table for the results of a class: a row a trial, to be typed in as it stands. One page.
#[must_use]
pub fn results(size: PaperSize, units: Units) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_results());
    flow.paragraph(&words::pupil_results_how(units.length_unit()));
    flow.paragraph(&words::pupil_results_key());
    let outcomes = SwingOutcome::ALL.map(outcome_name);
    flow.beside(&[1.0, 1.0, 1.0], 4.0, &mut |flow, i| {
        flow.list(&outcomes[2 * i..][..2], Mark::NumberFrom(2 * i + 1));
    });
    let columns = columns();
    flow.table(&Table {
        rows: vec![vec![String::new(); columns.len()]; ROWS],
        row_mm: ROW_MM,
        columns,
        ..Table::default()
    });
    flow.pages()
}

/// The columns, in the order of the fields of the place Class.
fn columns() -> Vec<Column> {
    let column = |head: &str, share| Column { head: head.to_owned(), share };
    let mut columns = vec![
        column(&words::class_group(), 14.0),
        column(&words::class_number(), 9.5),
        column(&words::class_trial(), 13.5),
        column(&words::lesson_mass(), 27.3),
        column(&words::lesson_pressure(), 27.3),
        column(&words::class_predicted(), 21.0),
    ];
    columns.extend((1..=3_u8).map(|i| column(&words::class_swing(i.into()), 14.5)));
    columns.push(column(&words::class_changed(), 29.0));
    columns
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::paper::inside::{says_in_order, sheet_is_sound, words_of};

    #[test]
    fn the_table_takes_one_page() {
        for units in [Units::METRIC, Units::INCH] {
            sheet_is_sound(1, &|size| results(size, units));
        }
    }

    /// The numbers on paper are the places in the lists of the page.
    #[test]
    fn columns_are_those_of_the_fields_of_a_row() {
        let pages = results(PaperSize::A4, Units::METRIC);
        let mut all: Vec<String> = Vec::new();
        for (outcome, i) in SwingOutcome::ALL.into_iter().zip(1..) {
            all.extend([format!("{i}."), outcome_name(outcome).into()]);
        }
        all.extend(
            [words::class_group(), words::class_number(), words::class_trial()]
                .map(String::from),
        );
        all.extend(
            [words::lesson_mass(), words::lesson_pressure(), words::class_predicted()]
                .map(String::from),
        );
        all.extend((1..=3_u8).map(|i| words::class_swing(i.into())));
        all.push(words::class_changed().into());
        says_in_order(&pages, &all);
        assert!(words_of(&pages).contains("in mm"));
    }
}
