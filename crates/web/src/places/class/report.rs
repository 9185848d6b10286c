//! What is given back, for each group and for the class: on paper, for a spreadsheet, as text.

use maud::{Markup, html};
use noseward_drawing::names::lesson as names;
use noseward_lesson::{
    Class, ClassLabel, Criterion, Entry, Group, TrialResult, Work, key,
};
use noseward_link::{Format, class_to_table, rules_text};
use noseward_words::{self as words, HowKnown, Text};

use super::columns::called;
use super::model::ClassDesk;
use super::pattern;
use super::take_in::results_of;
use super::{as_text, button, count, marking};
use crate::app::{Effect, Paper, State, print};
use crate::notebook::say;

/// Something that is given back: on paper, as a file, or to be pasted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Report {
    Print(Paper),
    /// The trials as a table: a file, or, with tabs, to be pasted.
    Table(Format),
    /// The class in words.
    ClassText,
    /// Each group in words.
    GroupsText,
    /// The group in words whose notebook is looked at.
    GroupText,
}

impl Report {
    /// All of them; the controls name them by their places.
    const ALL: [Self; 10] = [
        Self::Print(Paper::Groups),
        Self::Print(Paper::Class),
        Self::Print(Paper::Group),
        Self::Table(Format::PointComma),
        Self::Table(Format::CommaSemicolon),
        Self::Table(Format::Tabs),
        Self::Table(Format::TabsComma),
        Self::ClassText,
        Self::GroupsText,
        Self::GroupText,
    ];
}

/// The button for it.
pub(super) fn way(report: Report, small: bool, label: Text) -> Markup {
    let place = Report::ALL.iter().position(|known| *known == report).unwrap_or_default();
    button("cl-report", &place.to_string(), small, &html! { (label) })
}

/// Gives back what has this place.
pub(super) fn give(state: &mut State, place: usize) -> Vec<Effect> {
    let Some(desk) = &state.class.desk else { return Vec::new() };
    let Some(report) = Report::ALL.get(place) else { return Vec::new() };
    let (ending, text) = match *report {
        Report::Print(paper) => return print(paper),
        Report::Table(format) => {
            let text = class_to_table(&desk.class, format, false, &called);
            match format {
                Format::PointComma => ("-table.csv".to_owned(), text),
                Format::CommaSemicolon => ("-table-semicolons.csv".to_owned(), text),
                Format::Tabs | Format::TabsComma => {
                    return vec![Effect::Copy { text, is_link: false }];
                }
            }
        }
        Report::ClassText => ("-report.txt".to_owned(), as_text::class(state, desk)),
        Report::GroupsText => ("-groups.txt".to_owned(), as_text::groups(state, desk)),
        Report::GroupText => {
            let Some(subject) = in_hand(desk) else { return Vec::new() };
            let ending =
                format!("-{}-{}.txt", key(&subject.group.colour), subject.group.number());
            (ending, as_text::group(state, &desk.class, &subject))
        }
    };
    let name = file_name(&desk.class, &ending);
    let mut effects = say(state, false, words::report_saved(&name));
    effects.insert(0, Effect::Download { name, text });
    effects
}

/// The name of a file about a class.
pub(super) fn file_name(class: &Class, ending: &str) -> String {
    let label = class.label.as_str().to_ascii_lowercase();
    let hyphen = if label.is_empty() { "" } else { "-" };
    format!("noseward-class{hyphen}{label}{ending}")
}

/// Whose report it is: that of a notebook, or of a group of which only numbers came.
pub(super) struct Subject<'a> {
    pub(super) class: &'a ClassLabel,
    pub(super) group: Group,
    /// The notebook.
    pub(super) work: Option<&'a Work>,
    /// Without one, what came.
    entries: Vec<&'a Entry>,
}

impl<'a> Subject<'a> {
    fn of(work: &'a Work) -> Self {
        let (class, group) = (&work.class, work.notebook.group);
        Self { class, group, work: Some(work), entries: Vec::new() }
    }

    fn key(&self) -> (&'a ClassLabel, Group) {
        (self.class, self.group)
    }

    /// What it is called.
    pub(super) fn name(&self, class: &Class) -> String {
        match self.work {
            Some(work) => marking::name(class, work),
            None => marking::group_of(class, self.class, self.group),
        }
    }

    /// Whether it is invented.
    pub(super) fn is_invented(&self) -> bool {
        match self.work {
            Some(work) => work.example,
            None => self.entries.iter().any(|entry| entry.result.example),
        }
    }

    /// What its trials came to.
    pub(super) fn results(&self) -> Vec<TrialResult> {
        match self.work {
            Some(work) => results_of(&work.notebook),
            None => self.entries.iter().map(|entry| entry.result.clone()).collect(),
        }
    }
}

/// Everybody whose results count, in the order of the labels.
pub(super) fn subjects(class: &Class) -> Vec<Subject<'_>> {
    let mut subjects: Vec<_> = class.counting_works().map(Subject::of).collect();
    let works = subjects.len();
    let entries = sorted(class);
    for same in entries.chunk_by(|a, b| whose(a) == whose(b)) {
        let (label, group) = whose(same[0]);
        if !subjects[..works].iter().any(|known| known.key() == (label, group)) {
            let entries = same.to_vec();
            subjects.push(Subject { class: label, group, work: None, entries });
        }
    }
    subjects.sort_by(|a, b| a.key().cmp(&b.key()));
    subjects
}

/// What counts, in the order of the labels.
pub(super) fn sorted(class: &Class) -> Vec<&Entry> {
    let mut entries: Vec<_> = class.counting().map(|(_, entry)| entry).collect();
    let key = |entry: &&Entry| (entry.result.group, entry.result.trial);
    entries.sort_by(|a, b| a.class.cmp(&b.class).then_with(|| key(a).cmp(&key(b))));
    entries
}

fn whose(entry: &Entry) -> (&ClassLabel, Group) {
    (&entry.class, entry.result.group)
}

/// The one whose notebook is looked at.
pub(super) fn in_hand(desk: &ClassDesk) -> Option<Subject<'_>> {
    marking::looked_at(desk).map(Subject::of)
}

/// What was found in a notebook.
pub(super) fn found(work: &Work) -> impl Iterator<Item = Text> {
    let all = Criterion::ALL.into_iter();
    all.filter(|criterion| work.has(*criterion)).map(names::criterion)
}

/// Of each statement that was found anywhere, in how many notebooks.
pub(super) fn found_in(class: &Class) -> Vec<String> {
    let of = count(class.counting_works().count());
    let all = Criterion::ALL.into_iter().filter_map(|criterion| {
        let found = class.counting_works().filter(|work| work.has(criterion)).count();
        let statement = names::criterion(criterion).to_string();
        (found > 0)
            .then(|| words::report_found_in(&statement, count(found).into(), of.into()))
    });
    all.collect()
}

/// How many trials of how many groups count.
pub(super) fn holds(class: &Class) -> String {
    let groups = sorted(class).chunk_by(|a, b| whose(a) == whose(b)).count();
    let trials = count(class.counting().count());
    words::class_holds(trials.into(), count(groups).into())
}

/// What the chart of the class says, and by which separation.
pub(super) fn says(state: &State, desk: &ClassDesk) -> Vec<String> {
    let along = desk.pattern.along;
    let how = if along.computed { HowKnown::WorkedOut } else { HowKnown::Measured };
    let mut says = vec![words::report_along(how)];
    says.extend(pattern::says(state, along, &desk.worked_out().found));
    says
}

/// The title of the report of a class.
pub(super) fn title(class: &Class) -> String {
    match class.label.as_str() {
        "" => words::report_of_class().into(),
        label => words::report_of_class_called(label),
    }
}

/// The question that a notebook was to answer, and its rules.
pub(super) fn asked(work: &Work) -> Vec<String> {
    let Some(set_up) = work.notebook.set_up() else { return Vec::new() };
    vec![
        words::marking_question(&names::question(&set_up.question)),
        words::report_rules(&rules_text(set_up.rules())),
    ]
}

/// The ways out of this place.
pub(super) fn reports(desk: &ClassDesk) -> Markup {
    if desk.class.counting().next().is_none() && desk.class.works().is_empty() {
        return html! { p { (words::class_nothing_yet()) } };
    }
    html! {
        div class="reports" {
            section class="card card--place" aria-labelledby="report-paper" {
                h3 id="report-paper" { (words::report_paper()) }
                div class="nb__row" {
                    (way(Report::Print(Paper::Groups), false, words::report_print_groups()))
                    (way(Report::Print(Paper::Class), false, words::report_print_class()))
                }
                p class="nb__hint" { (words::report_paper_hint()) }
            }
            section class="card card--place" aria-labelledby="report-tables" {
                h3 id="report-tables" { (words::report_tables()) }
                div class="nb__row" {
                    (way(Report::Table(Format::PointComma), false, words::report_table_point()))
                    (way(Report::Table(Format::CommaSemicolon), false, words::report_table_comma()))
                    (way(Report::Table(Format::Tabs), false, words::report_copy_point()))
                    (way(Report::Table(Format::TabsComma), false, words::report_copy_comma()))
                }
                p class="nb__hint" { (words::report_tables_hint()) }
            }
            section class="card card--place" aria-labelledby="report-text" {
                h3 id="report-text" { (words::report_text()) }
                div class="nb__row" {
                    (way(Report::ClassText, false, words::report_text_class()))
                    (way(Report::GroupsText, false, words::report_text_groups()))
                }
            }
        }
    }
}
