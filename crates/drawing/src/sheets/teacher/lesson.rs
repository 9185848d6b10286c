//! The lesson: its question and rules, its steps with their minutes, and on a page for whoever
//! brings it the kit.

use noseward_lesson::{Changeable, RuleLimits, TimedStep};
use noseward_words::{self as words, AtOnce, Number};

use super::{TeacherPack, names};
use crate::names::listed;
use crate::paper::{Column, Flow, Page, PaperSize, Table};
use crate::written::Written;

pub(super) fn pages(size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_lesson().as_str());
    flow.table(&question(of));
    flow.table(&timings(of));
    flow.paragraph(&each(of));
    flow.caution(&words::swing_caution().text());
    if let Some((line, holds)) = of.space() {
        flow.paragraph(&line);
        flow.small(&holds);
    }
    flow.next_page();
    flow.table(&kit(of));
    flow.caution(&words::rocket_scissors().text());
    flow.small(words::set_up_governing().as_str());
    flow.pages()
}

/// Columns with their shares.
pub(super) fn columns<const N: usize>(heads: [(&str, f64); N]) -> Vec<Column> {
    heads.map(|(head, share)| Column { head: head.to_owned(), share }).into()
}

/// The question, what is kept the same and expected, and the rules.
fn question(of: TeacherPack<'_>) -> Table {
    let question = &of.set_up.question;
    let name = names::question(question);
    let heads = [(words::set_up_question_card().as_str(), 0.2), (&name, 0.8)];
    let mut rows = Vec::new();
    if let Some(change) = names::question_change(question) {
        rows.push(vec![words::set_up_change().text(), change.into()]);
    }
    if let Some(expected) = question.expected() {
        let kept = question.kept().iter().map(|one| names::kept(*one).to_string());
        rows.push(vec![words::set_up_keep().text(), listed(kept)]);
        rows.push(vec![words::set_up_expect().text(), names::expected(expected)]);
    }
    rows.push(vec![words::set_up_rules_card().into(), rules(of)]);
    Table { columns: columns(heads), rows, ..Table::default() }
}

/// The rules, a sentence each.
fn rules(of: TeacherPack<'_>) -> String {
    let set_up = of.set_up;
    let allowed = Changeable::ALL.into_iter().filter(|one| set_up.changeable.has(*one));
    let allowed = listed(allowed.map(|one| names::changeable(one).to_string()));
    let RuleLimits { added_g, .. } = set_up.limits;
    let at_once = if set_up.allows_two_changes { AtOnce::Two } else { AtOnce::One };
    let added = added_g.map(|g| words::teacher_added(&of.units().mass(g)));
    let said = [
        Some(words::teacher_may_change(&allowed)).filter(|_| !allowed.is_empty()),
        Some(words::teacher_changes(at_once)),
        added,
        Some(words::teacher_limits(&of.string(), &of.turns())),
        Some(words::set_up_code_of_rules(of.rules).text()),
    ];
    said.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

fn number(count: u16) -> String {
    Number::from(u32::from(count)).to_string()
}

/// The steps with the minute at which each begins in its lesson, and the sum.
fn timings(of: TeacherPack<'_>) -> Table {
    let lessons = of.plan.lessons();
    let mut rows = Vec::new();
    for TimedStep { lesson, from, step, minutes } in of.plan.timed() {
        if lessons.len() > 1 && from == 0 {
            let lesson = words::plan_lesson(u32::from(lesson).into());
            rows.push(vec![lesson, String::new(), String::new()]);
        }
        rows.push(vec![number(from), number(minutes), names::plan_step(step).into()]);
    }
    let sum = number(lessons.iter().sum());
    rows.push(vec![words::plan_all().into(), sum, String::new()]);
    let [from, minutes, step] =
        [words::plan_from(), words::plan_minutes(), words::plan_step()]
            .map(|t| t.as_str());
    Table {
        caption: names::plan(of.plan).into(),
        columns: columns([(from, 0.14), (minutes, 0.11), (step, 0.75)]),
        rows,
        row_mm: 0.0,
    }
}

/// How long each group has to swing.
fn each(of: TeacherPack<'_>) -> String {
    let each = of.plan.swing_minutes(of.set_up.groups());
    let mut said = words::plan_each(Number::trimmed(each, 1));
    if each < 2.0 {
        said.push(' ');
        said.push_str(words::plan_short().as_str());
    }
    said
}

/// The kit list for the groups, with spares and swaps.
fn kit(of: TeacherPack<'_>) -> Table {
    let set_up = of.set_up;
    let rows = set_up.kit().into_iter().map(|row| {
        let (thing, swap) = names::kit(row.kit);
        vec![thing.into(), number(row.count), number(row.spares), swap.into()]
    });
    let [thing, count, spares, swap] =
        [words::kit_thing(), words::kit_count(), words::kit_spares(), words::kit_swap()]
            .map(|head| head.as_str());
    Table {
        caption: words::kit_title(set_up.groups().into(), set_up.pupils.into()),
        columns: columns([(thing, 0.38), (count, 0.12), (spares, 0.12), (swap, 0.38)]),
        rows: rows.collect(),
        row_mm: 8.0,
    }
}
