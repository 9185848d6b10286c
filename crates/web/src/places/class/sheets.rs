//! Reports on paper. What is invented says so on every page: the head of a report comes again
//! where it goes on.

use maud::{Markup, html};
use noseward_lesson::Class;
use noseward_link::rules_text;
use noseward_words as words;

use super::model::ClassDesk;
use super::report::{
    Subject, asked, found, found_in, holds, in_hand, says, sorted, subjects, title,
};
use super::table::{self, Shown};
use super::{chart, count, marking, pattern};
use crate::app::{Paper, State};
use crate::places::sheet_of_paper;
use crate::shell::Region;

/// Groups that are printed at once, at most.
const GROUPS: usize = 120;
/// A group with more trials than that has them in small letters, without their readings: so it
/// has two pages at most.
const LONG: usize = 12;
/// Rows of the table of a class, at most.
const ROWS: usize = 300;

/// A sheet.
pub(crate) fn paper(state: &State, paper: Paper) -> Vec<Region> {
    let Some(desk) = state.class.desk.as_deref() else { return Vec::new() };
    sheet_of_paper(match paper {
        Paper::Group => groups(state, &desk.class, in_hand(desk).into_iter().collect()),
        Paper::Groups => groups(state, &desk.class, subjects(&desk.class)),
        _ => class(state, desk),
    })
}

/// A report, whose head stands on each of its pages; in small letters, where it is long.
fn report(title: &str, is_invented: bool, is_long: bool, inside: &Markup) -> Markup {
    html! {
        section class={ "report" @if is_long { " report--long" } } {
            div class="report__head" {
                h2 { (title) }
                @if is_invented { p { strong { (words::marking_invented()) } } }
            }
            div class="report__body" {
                (inside)
                p { (words::report_no_permission()) }
            }
        }
    }
}

fn groups(state: &State, class: &Class, subjects: Vec<Subject<'_>>) -> Markup {
    html! {
        @for subject in subjects.iter().take(GROUPS) {
            (group(state, class, subject))
        }
        @if subjects.len() > GROUPS { p { (words::class_and_more(count(subjects.len() - GROUPS).into())) } }
    }
}

/// A group: its trials, what it wrote, and what was found in it.
fn group(state: &State, class: &Class, subject: &Subject<'_>) -> Markup {
    let results = subject.results();
    let rows: Vec<_> = results.iter().map(|result| (None, result)).collect();
    let is_long = rows.len() > LONG;
    let shown = if is_long { Shown::Short } else { Shown::Readings };
    let inside = html! {
        @for line in subject.work.into_iter().flat_map(asked) { p { (line) } }
        (table::plain(state, &rows, shown))
        @match subject.work {
            None => p { (words::report_only_numbers()) },
            Some(work) => {
                (marking::wrote(&work.notebook))
                @let found: Vec<_> = found(work).collect();
                @if !found.is_empty() {
                    div class="nb__written" {
                        h3 { (words::report_found()) }
                        ul class="list" { @for statement in found { li { (statement) } } }
                    }
                }
            },
        }
    };
    let title = words::report_of(&subject.name(class));
    report(&title, subject.is_invented(), is_long, &inside)
}

/// The class: what it came to, and each trial in a row.
fn class(state: &State, desk: &ClassDesk) -> Markup {
    let class = &desk.class;
    let entries = sorted(class);
    let rows: Vec<_> = entries
        .iter()
        .take(ROWS)
        .map(|entry| {
            let group = marking::group_of(class, &entry.class, entry.result.group);
            (Some(group), &entry.result)
        })
        .collect();
    let found = found_in(class);
    let inside = html! {
        p { (holds(class)) }
        @if let Some(rules) = class.rules { p { (words::report_rules(&rules_text(rules))) } }
        @for sentence in says(state, desk) { p { (sentence) } }
        div class="nb__chart" { (chart::chart(state, desk, &desk.worked_out())) }
        h3 { (words::class_also()) }
        ul class="list" { @for line in pattern::figures(state, desk) { li { (line) } } }
        @if !found.is_empty() {
            h3 { (words::report_found_in_all()) }
            ul class="list" { @for line in found { li { (line) } } }
        }
        h3 { (words::report_trials()) }
        (table::plain(state, &rows, Shown::Short))
        @if entries.len() > ROWS { p { (words::class_and_more(count(entries.len() - ROWS).into())) } }
    };
    report(&title(class), class.is_example(), false, &inside)
}
