//! What a message does to the notebook.

use noseward_lesson::{
    Colour, End, Group, LeftOut, Level, NotebookError, REASON_CHARS, Record, Sentences,
    Statement, Support, Telling, Trial, same_build,
};
use noseward_link::{self as link, Format};
use noseward_stability::{Field, FinField, Quantity, cleaned_lines};

use super::fields::NotebookField;
use super::opening;
use crate::app::{
    Draft, Effect, NotebookMsg, Notice, Place, Press, State, changed, go_to, read_number,
};
use crate::places::hand_in::out::result_code;
use crate::places::sentence;

/// What a message does.
pub(crate) fn update(state: &mut State, msg: &NotebookMsg) -> Vec<Effect> {
    match msg {
        NotebookMsg::Kept { slots, open, afresh } => {
            opening::open_kept(state, slots, *open, *afresh)
        }
        NotebookMsg::OpenLink(text) => opening::open_link(state, text),
        NotebookMsg::IsKept { slot, text } => {
            opening::is_kept(state, *slot, text);
            Vec::new()
        }
        NotebookMsg::KeptElsewhere { slot, text, mine } => {
            opening::kept_elsewhere(state, *slot, text.as_deref(), mine.as_deref())
        }
        NotebookMsg::OpenText(text) => opening::open_text(state, text),
        NotebookMsg::Pressed(press) => pressed(state, *press),
        NotebookMsg::Typed { field, text } => match NotebookField::parse(field) {
            Some(note) => typed(state, note, text),
            None => Vec::new(),
        },
        NotebookMsg::Left { field } => {
            state.typing.take_if(|(typing, _)| typing == field);
            vec![Effect::Redraw]
        }
        // The first part of the page looks after these.
        NotebookMsg::Loaded(_) | NotebookMsg::Again => Vec::new(),
    }
}

/// What was written is to be kept.
pub(crate) fn written(state: &mut State) -> Vec<Effect> {
    state.desk.unsaved = true;
    vec![Effect::Redraw, Effect::Keep]
}

/// Tells what happened.
pub(crate) fn say(
    state: &mut State,
    alarming: bool,
    words: impl Into<String>,
) -> Vec<Effect> {
    state.notice = Some(Notice::Said { alarming, words: words.into() });
    vec![Effect::Redraw]
}

fn typed(state: &mut State, note: NotebookField, text: &str) -> Vec<Effect> {
    state.notice.take_if(|notice| notice.is_passing());
    state.typing = Some((note.name(), text.to_owned()));
    if note.is_of_trial() && !begin_if_needed(state) {
        return full(state);
    }
    if note.is_length() {
        return length(state, note, text);
    }
    let notebook = &mut state.desk.notebook;
    match note {
        NotebookField::Statement(statement) => {
            let text = cleaned_lines(text, noseward_lesson::BOX_CHARS);
            *notebook.conclusion.text_mut(statement) = text;
            return written(state);
        }
        NotebookField::Plan => {
            state.desk.look.plan = text.to_owned();
            return vec![Effect::Redraw];
        }
        NotebookField::Colour | NotebookField::Number => {
            let group = notebook.group;
            let group = match note {
                NotebookField::Colour => {
                    let colour = index(text).and_then(|i| Colour::ALL.get(i).copied());
                    colour.and_then(|colour| Group::new(colour, group.number()))
                }
                _ => text.parse().ok().and_then(|n| Group::new(group.colour, n)),
            };
            let Some(group) = group else { return Vec::new() };
            notebook.group = group;
            let open = state.desk.slot;
            let mut others = state.desk.slots.iter().filter(|slot| slot.number != open);
            let twice = others.any(|slot| slot.group == Some(group));
            let mut effects = written(state);
            if twice {
                let words = format!("Another notebook here is {group} too. Is it yours?");
                effects.extend(say(state, true, words));
            }
            return effects;
        }
        NotebookField::Level => {
            let level = index(text).and_then(|i| Level::ALL.get(i).copied());
            notebook.level = level.unwrap_or(notebook.level);
            return written(state);
        }
        NotebookField::Support => {
            let support = index(text).and_then(|i| Support::ALL.get(i).copied());
            notebook.support = support.unwrap_or(notebook.support);
            return written(state);
        }
        NotebookField::Telling => {
            let telling = index(text).and_then(|i| Telling::ALL.get(i).copied());
            notebook.telling = telling.unwrap_or(notebook.telling);
            return written(state);
        }
        NotebookField::Slot => {
            return match text.parse() {
                Ok(slot) => opening::switch(state, slot),
                Err(_) => Vec::new(),
            };
        }
        NotebookField::Compared => {
            if let Some(id) = notebook.in_hand().map(Trial::id) {
                notebook.compare(id, text.parse().ok());
            }
            return written(state);
        }
        _ => {}
    }
    let Some(trial) = notebook.in_hand_mut() else { return Vec::new() };
    match note {
        NotebookField::From(point) => {
            trial.measured.of_mut(point).from =
                if text == "tail" { End::Tail } else { End::Nose };
        }
        NotebookField::LeftOut(point) => {
            let readings = trial.measured.of_mut(point);
            let reason =
                readings.left_out.take().map(|out| out.reason).unwrap_or_default();
            readings.left_out = index(text).map(|reading| LeftOut { reading, reason });
            return written(state);
        }
        NotebookField::WhyLeftOut(point) => {
            if let Some(out) = &mut trial.measured.of_mut(point).left_out {
                out.reason = cleaned_lines(text, REASON_CHARS);
            }
        }
        NotebookField::Because => {
            trial.draft.because = cleaned_lines(text, noseward_lesson::BECAUSE_CHARS);
        }
        NotebookField::Words => {
            trial.note = cleaned_lines(text, noseward_lesson::NOTE_CHARS);
        }
        _ => {}
    }
    written(state)
}

fn index(text: &str) -> Option<usize> {
    text.parse().ok()
}

/// A length that was typed. A text that cannot be read stays in its field.
fn length(state: &mut State, note: NotebookField, text: &str) -> Vec<Effect> {
    let name = note.name();
    state.desk.drafts.retain(|(known, _)| *known != name);
    let Some(trial) = state.desk.notebook.in_hand_mut() else { return Vec::new() };
    if let NotebookField::Guess(point) = note
        && trial.measured.of(point).any()
    {
        // Once measured, a guess is no guess.
        return Vec::new();
    }
    let value = match read_number(text, Quantity::Length, state.units) {
        Ok(value) => value,
        Err(why) => {
            state.desk.drafts.push((name, Draft { text: text.to_owned(), why }));
            // What stood there before is gone from the field, so it counts no more.
            None
        }
    };
    note.set_length_mm(trial, value);
    written(state)
}

/// Why a text in a field of the notebook is no length, and how to mend it.
pub(crate) fn fault(state: &State, note: NotebookField) -> Option<String> {
    let name = note.name();
    let (_, draft) = state.desk.drafts.iter().find(|(known, _)| *known == name)?;
    // Any length of a design is asked for in the same words.
    let why = draft.why.sentence(Field::Fins(0, FinField::Start), state.units);
    Some(match note {
        NotebookField::Reading(_, i) => {
            format!("Reading {}: {why} Until then it does not count.", i + 1)
        }
        NotebookField::Guess(_) => format!("Your guess: {why}"),
        NotebookField::RocketLength => format!("Length of the rocket: {why}"),
        _ => format!("Length of the cut-out: {why}"),
    })
}

fn pressed(state: &mut State, press: Press) -> Vec<Effect> {
    state.typing = None;
    state.notice.take_if(|notice| matches!(notice, Notice::Said { .. }));
    match press {
        Press::Again => again(state),
        Press::BeginPlan(plan) => {
            let record = state.record();
            let begun = state.desk.notebook.begin_plan(plan, &record);
            begun_trial(state, begun)
        }
        Press::Copy(id) => match state.desk.notebook.copy(id) {
            Ok(Some(copied)) => open_trial(state, copied),
            Ok(None) => Vec::new(),
            Err(_) => full(state),
        },
        Press::Open(id) => open_trial(state, id),
        Press::Delete(id) => delete(state, id),
        Press::Restore(id) => restore(state, id),
        Press::Shift { id, to_front } => shift(state, id, to_front),
        Press::Outcome(outcome) => {
            if !begin_if_needed(state) {
                return full(state);
            }
            if let Some(trial) = state.desk.notebook.in_hand_mut() {
                trial.draft.outcome = Some(outcome);
            }
            written(state)
        }
        Press::Lock => lock(state),
        Press::UndoChange(change) => undo_change(state, change),
        Press::AllowTwoChanges => {
            let notebook = &mut state.desk.notebook;
            notebook.allows_two_changes = !notebook.allows_two_changes;
            written(state)
        }
        Press::Pair(id) => {
            let trial = state.desk.notebook.trial(id);
            state.desk.look.pair = trial
                .and_then(|trial| Some((trial.compared_with()?, trial.id())))
                .filter(|pair| Some(*pair) != state.desk.look.pair);
            vec![Effect::Redraw]
        }
        Press::AddPlan => add_plan(state),
        Press::RemovePlan(plan) => remove_plan(state, plan),
        Press::Use(statement, place) => use_sentence(state, statement, place),
        Press::Save
        | Press::SaveRocket
        | Press::Spreadsheet(_)
        | Press::PlainText
        | Press::CopyTable(_)
        | Press::CopyResult(_)
        | Press::CopyLink => out(state, press),
        Press::Symbols => {
            state.desk.look.shows_symbols = !state.desk.look.shows_symbols;
            vec![Effect::Redraw]
        }
        Press::NewGroup => opening::new_group(state),
        Press::AskToDelete(asks) => {
            state.desk.look.asks_to_delete = asks;
            let next = if asks { "nb-delete-now" } else { "nb-ask-delete" };
            vec![Effect::Redraw, Effect::Focus(next.into())]
        }
        Press::DeleteNow => opening::delete_open(state),
    }
}

/// A way out of this computer.
fn out(state: &mut State, press: Press) -> Vec<Effect> {
    match press {
        Press::SaveRocket => save_rocket(state),
        Press::Save if state.desk.notebook.is_blank() => save_rocket(state),
        Press::Save => {
            state.handed_in = true;
            let name = link::notebook_file_name(&state.desk.notebook);
            download(state, name, opening::file)
        }
        Press::Spreadsheet(format) => {
            let ending = match format {
                Format::CommaSemicolon => "-semicolons.csv",
                _ => ".csv",
            };
            table(state, ending, format)
        }
        Press::PlainText => download(state, file_name(state, ".txt"), |state| {
            link::to_plain_text(&state.desk.notebook)
        }),
        Press::CopyTable(format) => copy(link::to_table(&state.desk.notebook, format)),
        Press::CopyResult(id) => match result_code(state, id) {
            Some(code) => copy(code),
            None => Vec::new(),
        },
        _ => match opening::hash(state) {
            Some(hash) => {
                vec![Effect::Copy { text: state.link_to(&hash), is_link: true }]
            }
            None => {
                let text = state.link_to(&link::hash(&state.record()));
                let mut effects = vec![Effect::Copy { text, is_link: true }];
                effects.extend(say(
                    state,
                    true,
                    "This notebook does not fit into a link. The link holds the rocket \
                     alone: save the notebook as a file.",
                ));
                effects
            }
        },
    }
}

fn save_rocket(state: &mut State) -> Vec<Effect> {
    let (name, text) = (link::file_name(&state.design), link::to_file(&state.record()));
    state.notice = Some(Notice::Saved(name.clone()));
    vec![Effect::Download { name, text }, Effect::Redraw]
}

fn copy(text: String) -> Vec<Effect> {
    vec![Effect::Copy { text, is_link: false }]
}

/// Measuring or predicting begins a trial, where the rocket on the page has none. Returns
/// whether there is one now.
fn begin_if_needed(state: &mut State) -> bool {
    if state.is_of_trial() {
        return true;
    }
    let begun = state.desk.notebook.begin(&state.record()).is_ok();
    if begun {
        state.desk.drafts.clear();
        state.desk.look.nudged = false;
        state.desk.unsaved = true;
        state.swings_from_trial();
    }
    begun
}

fn full(state: &mut State) -> Vec<Effect> {
    say(state, true, sentence(&NotebookError::TooManyTrials.to_string()))
}

/// Another trial of the same rocket, for three swings more.
fn again(state: &mut State) -> Vec<Effect> {
    let Some(id) = state.desk.notebook.in_hand().map(Trial::id) else {
        return Vec::new();
    };
    if state.desk.notebook.copy(id).is_err() {
        return full(state);
    }
    state.forget_space();
    state.desk.drafts.clear();
    state.desk.look.nudged = false;
    state.swings_from_trial();
    let mut effects = written(state);
    effects.extend(go_to(state, Place::Predict, true));
    effects
}

fn delete(state: &mut State, id: u16) -> Vec<Effect> {
    if !state.desk.notebook.delete(id) {
        return Vec::new();
    }
    let words = format!("Trial {id} is deleted. It can be brought back below.");
    let mut effects = say(state, false, words);
    effects.extend(written(state));
    effects.push(Effect::Focus(format!("nb-restore:{id}")));
    effects
}

fn restore(state: &mut State, id: u16) -> Vec<Effect> {
    if !state.desk.notebook.restore(id) {
        return Vec::new();
    }
    let record = state.record();
    let notebook = &mut state.desk.notebook;
    let is_here = |trial: &Trial| trial.record() == record;
    let words = if notebook.in_hand().is_none() && notebook.trial(id).is_some_and(is_here)
    {
        notebook.take_in_hand(id);
        format!("Trial {id} is back, and in hand.")
    } else {
        format!("Trial {id} is back. Open it to go on with it.")
    };
    let mut effects = say(state, false, words);
    effects.extend(written(state));
    effects.push(Effect::Focus(format!("nb-open:{id}")));
    effects
}

fn shift(state: &mut State, id: u16, to_front: bool) -> Vec<Effect> {
    let (end, button) = if to_front { ("first", "nb-up") } else { ("last", "nb-down") };
    if !state.desk.notebook.shift(id, to_front) {
        return say(state, false, format!("Trial {id} is the {end} one already."));
    }
    let mut effects = written(state);
    effects.push(Effect::Focus(format!("{button}:{id}")));
    effects
}

fn add_plan(state: &mut State) -> Vec<Effect> {
    let plan = state.desk.look.plan.clone();
    if !state.desk.notebook.add_plan(&plan) {
        return if plan.trim().is_empty() {
            say(state, true, "First write what you will try.")
        } else {
            say(state, true, sentence(&NotebookError::TooManyPlans.to_string()))
        };
    }
    state.desk.look.plan.clear();
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Plan.name()));
    effects
}

fn remove_plan(state: &mut State, plan: usize) -> Vec<Effect> {
    if let Some(plan) = state.desk.notebook.remove_plan(plan) {
        // It stands in the field again, should that have been a slip.
        if state.desk.look.plan.is_empty() {
            state.desk.look.plan = plan;
        }
    }
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Plan.name()));
    effects
}

fn begun_trial(state: &mut State, begun: Result<u16, NotebookError>) -> Vec<Effect> {
    match begun {
        Ok(_) => {
            state.desk.drafts.clear();
            state.desk.look.nudged = false;
            state.swings_from_trial();
            let mut effects = written(state);
            effects.extend(go_to(state, Place::Measure, true));
            effects
        }
        Err(_) => full(state),
    }
}

/// The rocket of a trial, with its swings, comes onto the page.
fn open_trial(state: &mut State, id: u16) -> Vec<Effect> {
    let Some(record) = state.desk.notebook.take_in_hand(id).map(|t| t.record()) else {
        return Vec::new();
    };
    state.desk.drafts.clear();
    state.desk.look.nudged = false;
    let mut effects = onto_page(state, record);
    effects.extend(written(state));
    effects.extend(go_to(state, Place::Measure, true));
    effects
}

/// Puts a rocket onto the page, if it is another one.
pub(crate) fn onto_page(state: &mut State, record: Record) -> Vec<Effect> {
    if record != state.record() {
        state.show_record(record);
    }
    changed()
}

fn lock(state: &mut State) -> Vec<Effect> {
    let Some(trial) = state.desk.notebook.in_hand() else { return Vec::new() };
    let (id, was_locked) = (trial.id(), trial.is_locked());
    if trial.draft.outcome.is_none() {
        return say(
            state,
            true,
            "First choose what the rocket will do. Then lock the prediction.",
        );
    }
    let wordless = trial.draft.because.trim().is_empty();
    let mut asks = Vec::new();
    if wordless {
        asks.push(
            "Why do you think so? Even a guess has a reason: write it down.".to_owned(),
        );
    }
    let notebook = &state.desk.notebook;
    if let Some(before) = notebook.baseline_of(trial).filter(|_| !was_locked) {
        match notebook.changes_of(trial).len() {
            0 => asks.push(format!("Nothing has changed since trial {}.", before.id())),
            1 => {}
            _ if notebook.allows_two_changes => {}
            _ => asks.push(format!(
                "More than one thing has changed since trial {}: afterwards nobody can \
                 tell which of them did it. Above you can take one back.",
                before.id()
            )),
        }
    }
    if !asks.is_empty() && !std::mem::replace(&mut state.desk.look.nudged, true) {
        asks.push("Or press again to lock it as it is.".to_owned());
        let mut effects = say(state, true, asks.join(" "));
        if wordless {
            effects.push(Effect::Focus(NotebookField::Because.name()));
        }
        return effects;
    }
    state.desk.look.nudged = false;
    if !was_locked {
        // The rocket as it is on the page now.
        state.desk.notebook.follow(&state.record());
    }
    if !state.desk.notebook.lock(id) {
        return say(state, false, "That is what you predicted already.");
    }
    let words = if was_locked {
        "Your new prediction stands beside the first one."
    } else {
        "Locked. Next: the cards, with the adult."
    };
    let mut effects = say(state, false, words);
    effects.extend(written(state));
    let next = if was_locked { "nb-lock" } else { "next" };
    effects.push(Effect::Focus(next.into()));
    effects
}

/// Takes one of the changes back, so that one is left.
fn undo_change(state: &mut State, place: usize) -> Vec<Effect> {
    let Some(trial) = state.desk.notebook.in_hand() else { return Vec::new() };
    if trial.is_locked() {
        return Vec::new();
    }
    let found = state.desk.notebook.changes_of(trial);
    let Some(change) = found.get(place) else { return Vec::new() };
    let mut record = change.undo(&trial.record());
    if !same_build(&record.design, trial.design()) {
        record.swings = record.swings.setup.into();
    }
    let mut effects = onto_page(state, record);
    effects.extend(written(state));
    effects.push(Effect::Focus("place-title".into()));
    effects
}

/// Puts an offered sentence behind what the group has written.
fn use_sentence(state: &mut State, statement: Statement, place: usize) -> Vec<Effect> {
    let notebook = &state.desk.notebook;
    let offered = Sentences::of(notebook, state.units).offered(statement);
    let Some(sentence) = offered.get(place) else { return Vec::new() };
    let text = notebook.conclusion.text(statement);
    if text.contains(sentence.as_str()) {
        return say(state, false, "That sentence is there already.");
    }
    if text.chars().count() + sentence.chars().count() >= noseward_lesson::BOX_CHARS {
        return say(
            state,
            true,
            "There is no room for that sentence: shorten the text first.",
        );
    }
    let gap = if text.is_empty() || text.ends_with(['\n', ' ']) { "" } else { "\n" };
    let text = format!("{text}{gap}{sentence}");
    let text = cleaned_lines(&text, noseward_lesson::BOX_CHARS);
    *state.desk.notebook.conclusion.text_mut(statement) = text;
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Statement(statement).name()));
    effects
}

fn file_name(state: &State, ending: &str) -> String {
    let name = link::notebook_file_name(&state.desk.notebook);
    let stem = name.strip_suffix(".json").unwrap_or(&name);
    format!("{stem}{ending}")
}

fn table(state: &mut State, ending: &str, format: Format) -> Vec<Effect> {
    download(state, file_name(state, ending), |state| {
        link::to_table(&state.desk.notebook, format)
    })
}

fn download(
    state: &mut State,
    name: String,
    text: impl Fn(&State) -> String,
) -> Vec<Effect> {
    let text = text(state);
    let mut effects = say(
        state,
        false,
        format!("Saved as {name}, if this computer allows downloads. Look in Downloads."),
    );
    effects.insert(0, Effect::Download { name, text });
    effects
}
