//! Takes in what is handed in, a little at a time. What is refused is told, and stays until
//! somebody mends it or lets it go.

use noseward_lesson::{
    Added, Class, ClassLabel, Entry, Notebook, Refusal, TrialResult, Work,
};
use noseward_link::{ClassRow, Format, Found, Gathering, HandedIn, class_to_table};
use noseward_words as words;

use super::model::{ClassDesk, Refused, Where, Why};
use crate::places::labels;
use crate::places::trial::changed::label;

/// What is taken in at once: some milliseconds on a slow machine.
const IN_SLICE: usize = 150;
/// Between the class and each refused text in what is kept. A control character for this very
/// use, which no table holds.
const BETWEEN: char = '\u{1e}';
/// Between the name of a file and a text of it.
const BEHIND_NAME: char = '\u{1f}';

/// Puts texts with the names of their files behind what waits.
pub(super) fn begin(desk: &mut ClassDesk, texts: Vec<(String, String)>) {
    desk.tally.files.1 += texts.len();
    for text in texts {
        desk.queue.insert(0, text);
    }
}

/// Gives up what was not taken in yet.
pub(super) fn stop(desk: &mut ClassDesk) {
    desk.queue.clear();
    desk.running = None;
    desk.tally.stopped = true;
}

/// Takes in a little more; whether there is more.
pub(super) fn step(desk: &mut ClassDesk) -> bool {
    for _ in 0..IN_SLICE {
        let Some(running) = &mut desk.running else {
            let Some((source, text)) = desk.queue.pop() else { return false };
            desk.running = Some(Gathering::new(&source, &text));
            continue;
        };
        match running.next() {
            Some(found) => take_found(desk, found),
            None => {
                desk.running = None;
                desk.is_opening = false;
                desk.tally.files.0 += 1;
            }
        }
    }
    true
}

/// Something that was not taken in.
pub(super) fn refused(source: String, line: usize, what: String, why: Why) -> Refused {
    Refused { at: Where { source, line, what }, why }
}

fn take_found(desk: &mut ClassDesk, found: Found) {
    let Found { source, line, text, what } = found;
    let own = desk.class.label.clone();
    let at = (source.as_str(), line, text.as_str());
    let why = match what {
        Ok(HandedIn::Result(result)) => return add(desk, at, Entry::new(own, *result)),
        Ok(HandedIn::Row(row)) => return add_row(desk, at, *row),
        Ok(HandedIn::Notebook(notebook)) => {
            let work = Work { class: own, notebook: *notebook, ..Work::default() };
            return add_work(desk, at, work, true);
        }
        Ok(HandedIn::Words) => {
            desk.tally.words.push(Where { source, line, what: text });
            return;
        }
        Ok(HandedIn::Rocket) => Why::Rocket,
        Ok(HandedIn::SetUp) => Why::SetUp,
        Ok(HandedIn::Part { here, of }) => Why::Part { here, of },
        Err(error) => Why::Unread(error),
    };
    desk.refused.push(refused(source, line, text, why));
}

fn add_row(desk: &mut ClassDesk, at: (&str, usize, &str), row: ClassRow) {
    match row {
        ClassRow::Class(said) => {
            let class = &mut desk.class;
            // The file of a whole class, alone, where nothing is: it is that class again.
            let fits = class.rules.is_none() || class.rules == said.rules;
            desk.is_opening |= class.is_empty() && fits && desk.tally.files.1 == 1;
            if class.label == ClassLabel::default() {
                class.label = said.label;
            }
            if desk.is_opening {
                class.rules = said.rules;
            }
            class.delete_by = class.delete_by.or(said.delete_by);
        }
        ClassRow::Result(entry) | ClassRow::Older(entry) => add(desk, at, entry),
        ClassRow::Work(work) => add_work(desk, at, work, false),
    }
}

/// Takes a result in. What this computer kept was taken once already.
fn add(desk: &mut ClassDesk, at: (&str, usize, &str), entry: Entry) {
    match put(&mut desk.class, &entry, desk.is_opening) {
        Ok(Added::New) => desk.tally.new += 1,
        Ok(Added::Doubled) => desk.tally.doubled.push(whose(at, &entry)),
        Ok(Added::Newer) => desk.tally.newer.push(whose(at, &entry)),
        Err(refusal) => {
            let (source, line, text) = at;
            let why = Why::NotTaken(Box::new(entry), refusal);
            desk.refused.push(refused(source.into(), line, text.into(), why));
        }
    }
}

/// Puts an entry with its marks into the class; where somebody says so, without asking for its
/// rules, or for all of its swings.
pub(super) fn put(
    class: &mut Class,
    entry: &Entry,
    anyway: bool,
) -> Result<Added, Refusal> {
    let rules = if anyway { class.rules.take() } else { None };
    let added = class.add(&entry.class, entry.result.clone(), anyway);
    class.rules = class.rules.or(rules);
    let result = &entry.result;
    if let Some(known) = class.find_mut(&entry.class, result.group, result.trial)
        && added.is_ok()
    {
        known.hidden |= entry.hidden;
        known.marked |= entry.marked;
    }
    added
}

/// Takes in a notebook, and, where they come with it, the result of each of its trials.
fn add_work(desk: &mut ClassDesk, at: (&str, usize, &str), work: Work, results: bool) {
    let Work { class, notebook, example, .. } = work.clone();
    match desk.class.add_work(work) {
        Ok(Added::Doubled) => {}
        Ok(_) => desk.tally.notebooks += 1,
        Err(_) => {
            let (source, line, text) = at;
            let why = Why::NotebooksFull;
            desk.refused.push(refused(source.into(), line, text.into(), why));
        }
    }
    if results {
        for result in results_of(&notebook) {
            let result = TrialResult { example, ..result };
            add(desk, at, Entry::new(class.clone(), result));
        }
    }
}

/// What each trial of a notebook came to, with what was changed in words.
pub(super) fn results_of(notebook: &Notebook) -> Vec<TrialResult> {
    let of = |trial: &noseward_lesson::Trial| {
        let result = TrialResult::of(notebook, trial.id())?;
        let changes = notebook.changes_of(trial);
        let what: Vec<_> = changes.iter().map(label).collect();
        Some(TrialResult { what_changed: what.join("; "), ..result })
    };
    notebook.trials().iter().filter_map(of).collect()
}

fn whose((source, line, _): (&str, usize, &str), entry: &Entry) -> Where {
    let what = name_of(entry);
    Where { source: source.into(), line, what }
}

/// The group and the trial of a result.
pub(super) fn name_of(entry: &Entry) -> String {
    let result = &entry.result;
    words::class_trial_of(&labels::group(result.group), labels::number(result.trial))
}

/// Takes a refused result in all the same.
pub(super) fn take(desk: &mut ClassDesk, i: usize) {
    let can_be = desk.refused.get(i).is_some_and(|refused| refused.why.can_be_taken());
    if !can_be {
        return;
    }
    let Refused { at, why } = desk.refused.remove(i);
    if let Why::NotTaken(entry, _) = why {
        match put(&mut desk.class, &entry, true) {
            Ok(Added::New) => desk.tally.new += 1,
            Ok(Added::Doubled) => desk.tally.doubled.push(at),
            Ok(Added::Newer) => desk.tally.newer.push(at),
            Err(refusal) => {
                desk.refused.push(Refused { at, why: Why::NotTaken(entry, refusal) });
            }
        }
    }
}

/// Takes in the notebooks of the invented class.
pub(super) fn example(desk: &mut ClassDesk, notebooks: Vec<Notebook>) {
    for notebook in notebooks {
        let class = desk.class.label.clone();
        let work = Work { class, notebook, example: true, ..Work::default() };
        add_work(desk, ("", 0, ""), work, true);
    }
}

/// What is kept: the class, and behind it what was refused. Nothing where there is nothing.
pub(super) fn kept(desk: &ClassDesk) -> String {
    let class = &desk.class;
    let is_blank = class.is_empty()
        && class.label == ClassLabel::default()
        && class.delete_by.is_none()
        && desk.refused.is_empty();
    if is_blank {
        return String::new();
    }
    let unnamed = |_: &str| String::new();
    let mut text = class_to_table(class, Format::PointComma, true, &unnamed);
    for Refused { at, why } in &desk.refused {
        text.push(BETWEEN);
        text.push_str(&at.source);
        text.push(BEHIND_NAME);
        if let Why::NotTaken(entry, _) = why {
            let mut alone = Class::default();
            let _ = put(&mut alone, entry, true);
            text.push_str(&class_to_table(&alone, Format::PointComma, false, &unnamed));
        } else {
            text.push_str(&at.what);
        }
    }
    text
}

/// The texts in what was kept, with the names of their files.
pub(super) fn texts_of_kept(text: &str) -> Vec<(String, String)> {
    let named = |part: &str| match part.split_once(BEHIND_NAME) {
        Some((name, text)) => (name.to_owned(), text.to_owned()),
        None => (String::new(), part.to_owned()),
    };
    text.split(BETWEEN).map(named).collect()
}
