//! Which part of the lesson gives evidence for which statement of a curriculum.
//!
//! Paraphrased, as of: England, national curriculum, science, September 2013 (in force from 2014);
//! of ages 11 to 16 from memory; a revised one is due for publication in spring 2027
//! (coverage of the Curriculum and Assessment Review). USA: Next Generation Science Standards, from
//! copies of schools and of NSTA; 3-PS2-2 and the practices from memory. Australia: Australian
//! Curriculum version 9, from copies; the codes I04 and I05 from memory.

use noseward_lesson::{Criterion, LessonPlace};
use noseward_words::{self as words, Text};

use super::lesson::columns;
use super::names;
use crate::names::listed;
use crate::paper::{Flow, Page, PaperSize, Table};
use Criterion::{
    FitsData, NamesNumbers, NamesPoints, NextStep, OneChange, PredictedFirst, Repeated,
    SaysHowSure, SaysWhichWay,
};
use LessonPlace::{Compare, Conclude, Measure, Predict, Rocket, Swing, Why};

type Say = fn() -> Text;

/// A statement, where its evidence is, and what to look for.
type Statement = (Say, &'static [LessonPlace], Criterion);

/// Curricula, each with its statements.
const CURRICULA: [(Say, &[Statement]); 3] = [
    (
        words::evidence_england,
        &[
            (words::evidence_ks2_lower, &[Measure, Swing], OneChange),
            (words::evidence_ks2_upper, &[Measure, Conclude], Repeated),
            (words::evidence_ks2_forces, &[Measure, Why], NamesPoints),
            (words::evidence_ks3, &[Predict, Compare], FitsData),
            (words::evidence_ks4, &[Why, Conclude], SaysWhichWay),
        ],
    ),
    (
        words::evidence_us,
        &[
            (words::evidence_ets_compare, &[Rocket, Compare], FitsData),
            (words::evidence_ets_fair, &[Swing, Compare], OneChange),
            (words::evidence_ps2, &[Swing, Why], SaysWhichWay),
            (words::evidence_ms_ets, &[Measure, Compare], NextStep),
            (words::evidence_ms_ps2, &[Swing, Compare], OneChange),
            (words::evidence_practices, &[Compare, Conclude], NamesNumbers),
        ],
    ),
    (
        words::evidence_australia,
        &[
            (words::evidence_ac_measure, &[Measure], Repeated),
            (words::evidence_ac_fair, &[Predict, Swing], OneChange),
            (words::evidence_ac_trends, &[Compare, Conclude], SaysHowSure),
            (words::evidence_ac_predict, &[Predict], PredictedFirst),
            (words::evidence_ac_forces, &[Swing, Why], SaysWhichWay),
            (words::evidence_ac_valid, &[Conclude], SaysHowSure),
        ],
    ),
];

pub(super) fn pages(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_evidence().as_str());
    flow.small(words::evidence_how().as_str());
    let [statement, place, what] =
        [words::evidence_statement(), words::evidence_where(), words::evidence_what()]
            .map(|head| head.as_str());
    for (curriculum, statements) in CURRICULA {
        let rows = statements.iter().map(|(statement, places, criterion)| {
            let places = places.iter().map(|place| names::place(*place).to_string());
            let found = names::criterion(*criterion);
            vec![statement().into(), listed(places), found.into()]
        });
        flow.table(&Table {
            caption: curriculum().into(),
            columns: columns([(statement, 0.51), (place, 0.17), (what, 0.32)]),
            rows: rows.collect(),
            row_mm: 0.0,
        });
    }
    flow.small(words::evidence_star().as_str());
    flow.pages()
}
