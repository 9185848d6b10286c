//! A lesson without swinging or launching, for whoever covers: the numbers of an invented club.

use noseward_lesson::{Overall, Seen, TrialResult, example_class, odd, turning_point};
use noseward_words as words;

use super::TeacherPack;
use super::lesson::columns;
use crate::names::{group_name, overall_name};
use crate::paper::{Flow, Mark, Page, PaperSize, Table};
use crate::written::Written;

/// Rockets in the table: the words say so too.
pub(super) const ROCKETS: usize = 12;
/// Of these, so many fly nose-first at most.
const MOST_AHEAD: usize = 7;

pub(super) fn pages(size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
    let mut flow = Flow::new(size, words::cover_title().as_str());
    flow.caution(words::teacher_cover_never().as_str());
    flow.small(words::teacher_cover_for().as_str());
    flow.paragraph(words::teacher_cover_start().as_str());
    flow.paragraph(words::cover_lead().as_str());
    flow.table(&table(of));
    flow.list(
        &[
            words::cover_work_out(),
            words::cover_guess(),
            words::cover_plot(),
            words::cover_pattern(),
            words::cover_because(),
        ]
        .map(|task| task.as_str()),
        Mark::Number,
    );
    flow.paragraph(words::cover_spare().as_str());
    flow.caution(&words::rocket_scissors().text());
    flow.paragraph(words::cover_back().as_str());
    flow.pages()
}

/// First trials of the invented class: measured, swung with one outcome, without a slip, with the
/// centre of mass nearer the nose so that nobody has to work below zero, and not all nose-first.
pub(super) fn trials() -> Vec<TrialResult> {
    let first = example_class().into_iter().filter_map(|notebook| {
        TrialResult::of(&notebook, notebook.trials().first()?.id())
    });
    let is_plain = |result: &TrialResult| {
        result.overall() != Overall::Mixed
            && odd(result).is_empty()
            && result.measured_separation_mm() > Some(0.0)
    };
    let mut left = MOST_AHEAD;
    let is_wanted = move |result: &TrialResult| match result.nose_first() {
        Some(true) => {
            let is_wanted = left > 0;
            left = left.saturating_sub(1);
            is_wanted
        }
        seen => seen.is_some(),
    };
    first.filter(is_plain).filter(is_wanted).take(ROCKETS).collect()
}

/// The separation at which half of them fly nose-first, in millimetres.
pub(super) fn turning_point_mm() -> Option<f64> {
    let seen = trials().into_iter().filter_map(|result| {
        Some(Seen::from((result.measured_separation_mm()?, result.nose_first()?)))
    });
    Some(turning_point(&seen.collect::<Vec<_>>()).ok()?.at)
}

fn table(of: TeacherPack<'_>) -> Table {
    let reading = |mm: f64| of.units().reading(mm);
    let rows = trials().into_iter().filter_map(|result| {
        let group = group_name(result.group);
        let points = [result.mass?.middle_mm, result.pressure?.middle_mm].map(reading);
        let [mass, pressure] = points;
        let saw = overall_name(result.overall()).into();
        Some(vec![group, mass, pressure, String::new(), saw])
    });
    let [group, mass, pressure, apart, saw] = [
        words::cover_group(),
        words::term_mass(),
        words::term_side_on(),
        words::cover_apart(),
        words::cover_saw(),
    ]
    .map(|head| head.as_str());
    Table {
        caption: words::cover_table().into(),
        columns: columns([
            (group, 0.14),
            (mass, 0.16),
            (pressure, 0.2),
            (apart, 0.2),
            (saw, 0.3),
        ]),
        rows: rows.collect(),
        row_mm: 6.6,
    }
}
