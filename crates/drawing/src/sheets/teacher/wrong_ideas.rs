//! Ten likely wrong ideas, each with what lets a pupil find out.
//!
//! That balance is taken for the middle, or for equal weight on both sides, is found by Liby and
//! others (Journal of STEM Education) and at the University of Washington; that one reading is
//! taken for the true one by the handbook on measurement uncertainty of the Humboldt-Universität;
//! that rockets are thought to push on air or ground is a common report of teaching, not checked.
//! The others are general knowledge of teachers, without a source.

use noseward_words::{self as words, Text};

use super::lesson::columns;
use crate::paper::{Flow, Page, PaperSize, Table};

/// An idea, what to ask, and what is found then.
const IDEAS: [[fn() -> Text; 3]; 10] = [
    [words::wrong_middle, words::wrong_middle_ask, words::wrong_middle_find],
    [words::wrong_halves, words::wrong_halves_ask, words::wrong_halves_find],
    [words::wrong_same, words::wrong_same_ask, words::wrong_same_find],
    [words::wrong_heavy, words::wrong_heavy_ask, words::wrong_heavy_find],
    [words::wrong_fins, words::wrong_fins_ask, words::wrong_fins_find],
    [words::wrong_push, words::wrong_push_ask, words::wrong_push_find],
    [words::wrong_still, words::wrong_still_ask, words::wrong_still_find],
    [words::wrong_pressure, words::wrong_pressure_ask, words::wrong_pressure_find],
    [words::wrong_fair, words::wrong_fair_ask, words::wrong_fair_find],
    [words::wrong_once, words::wrong_once_ask, words::wrong_once_find],
];

pub(super) fn pages(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_wrong().as_str());
    flow.paragraph(words::wrong_lead().as_str());
    let rows = IDEAS.map(|idea| idea.map(|say| say().into()).into());
    let [idea, ask, find] =
        [words::wrong_idea(), words::wrong_ask(), words::wrong_find()]
            .map(|head| head.as_str());
    flow.table(&Table {
        columns: columns([(idea, 0.27), (ask, 0.42), (find, 0.31)]),
        rows: rows.into(),
        row_mm: 16.0,
        ..Table::default()
    });
    flow.pages()
}
