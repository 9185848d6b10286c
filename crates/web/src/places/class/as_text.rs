//! Reports as plain text, in the language in use. Nothing here is read again. Lines end in LF.

use noseward_lesson::{Class, Statement, TrialResult};
use noseward_link::rules_text;
use noseward_words::{self as words, Text};

use super::model::ClassDesk;
use super::pattern;
use super::report::{
    Subject, asked, found, found_in, holds, says, sorted, subjects, title,
};
use crate::app::State;
use crate::places::hand_in::out::result_words;
use crate::places::hand_in::plain_text::indented;
use crate::places::labels;

/// The class: what it came to, and each trial in a line.
pub(super) fn class(state: &State, desk: &ClassDesk) -> String {
    let class = &desk.class;
    let mut lines = vec![title(class)];
    lines.extend(invented(class.is_example()));
    lines.push(holds(class));
    lines.extend(class.rules.map(|rules| words::rules_under(&rules_text(rules))));
    lines.extend(says(state, desk));
    lines.extend(pattern::figures(state, desk));
    headed(&mut lines, words::report_found_in_all(), found_in(class));
    let trials = sorted(class).into_iter().map(|entry| trial(state, &entry.result));
    headed(&mut lines, words::report_trials(), trials);
    ended(&lines)
}

/// Every group, one behind the other.
pub(super) fn groups(state: &State, desk: &ClassDesk) -> String {
    let subjects = subjects(&desk.class);
    let texts = subjects.iter().map(|subject| group(state, &desk.class, subject));
    texts.collect::<Vec<_>>().join("\n\n")
}

/// One group: its trials, what it wrote, and what was found in it.
pub(super) fn group(state: &State, class: &Class, subject: &Subject<'_>) -> String {
    let mut lines = vec![words::report_of(&subject.name(class))];
    lines.extend(invented(subject.is_invented()));
    lines.extend(subject.work.into_iter().flat_map(asked));
    let results = subject.results();
    let trials = results.iter().map(|result| trial(state, result));
    headed(&mut lines, words::report_trials(), trials);
    if let Some(work) = subject.work {
        let notebook = &work.notebook;
        let written = Statement::ALL.map(|of| {
            let label = labels::statement(of);
            match notebook.conclusion.text(of) {
                "" => words::plain_no_statement(&label),
                said => words::plain_statement(&label, &indented(said)),
            }
        });
        headed(&mut lines, words::plain_conclusion(), written);
        headed(&mut lines, words::plain_plans(), notebook.plans().iter().cloned());
        headed(&mut lines, words::report_found(), found(work).map(String::from));
    } else {
        lines.extend([String::new(), words::report_only_numbers().into()]);
    }
    ended(&lines)
}

fn invented(is_invented: bool) -> Option<String> {
    is_invented.then(|| words::marking_invented().into())
}

/// A trial in a line, with what was changed in it.
fn trial(state: &State, result: &TrialResult) -> String {
    let said = result_words(state, result);
    match result.what_changed.as_str() {
        "" => said,
        what => format!("{said} {}", words::report_changed(&indented(what))),
    }
}

/// A heading and what stands below it, if there is anything.
fn headed(
    lines: &mut Vec<String>,
    heading: Text,
    below: impl IntoIterator<Item = String>,
) {
    let mut below = below.into_iter().peekable();
    if below.peek().is_some() {
        lines.extend([String::new(), heading.into()]);
        lines.extend(below.map(|line| format!("- {line}")));
    }
}

fn ended(lines: &[String]) -> String {
    lines.join("\n") + "\n"
}
