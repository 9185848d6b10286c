//! Hazards of each step, for whoever assesses the risk: with empty columns, and no judgement.
//!
//! The rows are those of the project's own table of triggers. Behind it, published guidance:
//! objects on a string leave along the tangent, and are tied on well (Institute of Physics);
//! goggles (a school's handbook of physics); people out of what the line sweeps (notes for those
//! who demonstrate water rockets); bottles inspected, and never cut, sanded, hot-glued or painted
//! (rules of the Science Olympiad); nobody leans over a rocket (University of Nebraska); nobody
//! goes near one that did not lift off (a hobby's safety code). That a long string or a heavy
//! rocket pulls harder is arithmetic. The rest is our judgement.

use noseward_words::{self as words, Text};

use super::lesson::columns;
use crate::paper::{Flow, Page, PaperSize, Table};

/// Rows for what a place adds.
const OWN_ROWS: usize = 2;

type Say = fn() -> Text;

/// Steps, each with its hazards.
const STEPS: [(Say, &[Say]); 8] = [
    (words::hazards_cutting, &[words::hazards_blade]),
    (words::hazards_building, &[words::hazards_nose, words::hazards_weakened]),
    (words::hazards_hanging, &[words::hazards_falls]),
    (
        words::hazards_swinging,
        &[
            words::hazards_circle,
            words::hazards_slips,
            words::hazards_eyes,
            words::hazards_heavy,
            words::hazards_grabs,
            words::hazards_full,
        ],
    ),
    (
        words::hazards_launching,
        &[
            words::hazards_employer,
            words::hazards_bottle,
            words::hazards_limit,
            words::hazards_pumping,
            words::hazards_stays,
            words::hazards_catches,
        ],
    ),
    (words::hazards_landing, &[words::hazards_lies]),
    (words::hazards_home, &[words::hazards_alone]),
    (words::hazards_cover, &[words::hazards_covered]),
];

/// The heads of [`hazard_rows`].
#[must_use]
pub fn hazard_heads() -> [String; 4] {
    [
        words::hazards_step(),
        words::hazards_what(),
        words::hazards_measure(),
        words::hazards_checked(),
    ]
    .map(Into::into)
}

/// Step, hazard, and two cells for whoever assesses, which are empty.
#[must_use]
pub fn hazard_rows() -> Vec<[String; 4]> {
    let row = |step: Say, hazard: &Say| {
        [step().into(), hazard().into(), String::new(), String::new()]
    };
    STEPS
        .iter()
        .flat_map(|(step, hazards)| hazards.iter().map(move |hazard| row(*step, hazard)))
        .collect()
}

pub(super) fn pages(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_hazards().as_str());
    flow.caution(words::set_up_governing().as_str());
    flow.small(words::hazards_how().as_str());
    let heads = hazard_heads();
    let [step, what, measure, checked] = heads.each_ref().map(String::as_str);
    let own = std::iter::repeat_n(<[String; 4]>::default(), OWN_ROWS);
    flow.table(&Table {
        columns: columns([(step, 0.13), (what, 0.44), (measure, 0.29), (checked, 0.14)]),
        rows: hazard_rows().into_iter().chain(own).map(Into::into).collect(),
        row_mm: 8.0,
        ..Table::default()
    });
    flow.pages()
}
