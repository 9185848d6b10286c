//! Reports as plain text, in the language in use. Nothing here is read again. Lines end in LF.

use noseward_lesson::{Class, Statement, TrialResult};
use noseward_link::rules_text;
use noseward_words::{self as words, Text};

use super::model::ClassDesk;
use super::pattern;
use super::report::{
    Subject, asked, found, found_in, holds, says, sorted, subjects, title,
};
use super::take_in::name_of;
use crate::app::State;
use crate::places::form::{measured, mm};
use crate::places::labels;

/// The class: what it came to, and each trial in a line.
pub(super) fn class(state: &State, desk: &ClassDesk) -> String {
    let class = &desk.class;
    let mut lines = vec![title(class)];
    lines.extend(invented(class.is_example()));
    lines.push(holds(class));
    lines.extend(class.rules.map(|rules| words::report_rules(&rules_text(rules))));
    lines.extend(says(state, desk));
    lines.extend(pattern::figures(state, desk));
    headed(&mut lines, words::report_found_in_all(), found_in(class));
    let trials = sorted(class).into_iter().map(|entry| {
        trial(state, words::report_trial_of(&name_of(entry)), &entry.result)
    });
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
    let trials = results.iter().map(|result| {
        trial(state, words::report_trial(labels::number(result.trial)), result)
    });
    headed(&mut lines, words::report_trials(), trials);
    if let Some(work) = subject.work {
        let notebook = &work.notebook;
        let written = Statement::ALL.map(|of| {
            let label = labels::statement(of);
            match notebook.conclusion.text(of) {
                "" => words::report_wrote(&label, &words::marking_nothing()),
                said => words::report_wrote(&label, &indented(said)),
            }
        });
        headed(&mut lines, words::report_conclusion(), written);
        headed(&mut lines, words::report_plans(), notebook.plans().iter().cloned());
        headed(&mut lines, words::report_found(), found(work).map(String::from));
    } else {
        lines.extend([String::new(), words::report_only_numbers().into()]);
    }
    ended(&lines)
}

fn invented(is_invented: bool) -> Option<String> {
    is_invented.then(|| words::marking_invented().into())
}

/// A trial in a line.
fn trial(state: &State, whose: String, result: &TrialResult) -> String {
    let mut said = vec![whose];
    if !result.what_changed.is_empty() {
        said.push(words::report_changed(&result.what_changed));
    }
    if let Some(value) = result.measured_separation_mm() {
        said.push(words::report_measured(&measured(state, value)));
    }
    if let Some(value) = result.computed_separation_mm() {
        said.push(words::report_worked_out(&mm(state, value)));
    }
    if let Some(predicted) = result.predicted {
        said.push(words::report_predicted(&labels::outcome(predicted.outcome)));
    }
    said.push(words::report_seen(&labels::overall(result.overall())));
    said.join(" ")
}

/// What a group wrote: further lines are indented, so that none is taken for one of ours.
fn indented(text: &str) -> String {
    text.lines().map(String::from).collect::<Vec<_>>().join("\n  ")
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
