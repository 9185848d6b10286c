//! What a message does to the notebook.

use noseward_lesson::{
    BalancePoint, Colour, End, Group, LeftOut, Level, NotebookError, REASON_CHARS,
    Record, Sentences, Statement, Support, Trial, same_build,
};
use noseward_link::{self as link, Format};
use noseward_stability::{Field, FinField, Quantity, capital, cleaned_lines};

use super::fields::Note;
use super::opening;
use crate::app::{Draft, Effect, NotebookMsg, Owner, Press, Said, State, read_number};

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
        NotebookMsg::Typed { field, text } => match Note::parse(field) {
            Some(note) => typed(state, note, text),
            None => Vec::new(),
        },
        NotebookMsg::Left { field } => match Note::parse(field) {
            Some(note) => {
                state.desk.look.typing.take_if(|(typing, _)| *typing == note.name());
                vec![Effect::SetNote(note.name(), note.text(state)), Effect::Redraw]
            }
            None => Vec::new(),
        },
        NotebookMsg::Copied { text, done } => {
            state.desk.look.by_hand = (!done).then(|| text.clone());
            say(
                state,
                !done,
                if *done {
                    "Copied."
                } else {
                    "Copying is blocked here. Select the text below and press Ctrl and C."
                },
            )
        }
        // The first part of the page looks after these.
        NotebookMsg::InView(_) | NotebookMsg::Loaded(_) | NotebookMsg::Again => {
            Vec::new()
        }
    }
}

/// What was written is to be kept.
pub(super) fn written(state: &mut State) -> Vec<Effect> {
    state.desk.unsaved = true;
    vec![Effect::Redraw, Effect::Keep]
}

/// The same where the forms have to be built anew.
pub(super) fn rebuilt(state: &mut State) -> Vec<Effect> {
    let mut effects = written(state);
    effects.insert(0, Effect::RebuildNotebook);
    effects
}

/// Puts a message at the top of the notebook.
pub(super) fn say(
    state: &mut State,
    alarming: bool,
    words: impl Into<String>,
) -> Vec<Effect> {
    state.desk.look.said = Some(Said { alarming, words: words.into() });
    vec![Effect::Redraw]
}

fn typed(state: &mut State, note: Note, text: &str) -> Vec<Effect> {
    state.desk.look.said.take_if(|said| !said.alarming);
    state.desk.look.typing = Some((note.name(), text.to_owned()));
    if note.is_length() {
        return length(state, note, text);
    }
    let notebook = &mut state.desk.notebook;
    match note {
        Note::Statement(statement) => {
            let text = cleaned_lines(text, noseward_lesson::BOX_CHARS);
            *notebook.conclusion.text_mut(statement) = text;
            return written(state);
        }
        Note::Plan => {
            state.desk.look.plan = text.to_owned();
            return Vec::new();
        }
        Note::Colour | Note::Number => {
            let group = notebook.group;
            let group = match note {
                Note::Colour => {
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
            let mut effects = rebuilt(state);
            if twice {
                let words = format!("Another notebook here is {group} too. Is it yours?");
                effects.extend(say(state, true, words));
            }
            return effects;
        }
        Note::Level => {
            let level = index(text).and_then(|i| Level::ALL.get(i).copied());
            notebook.level = level.unwrap_or(notebook.level);
            return rebuilt(state);
        }
        Note::Support => {
            let support = index(text).and_then(|i| Support::ALL.get(i).copied());
            notebook.support = support.unwrap_or(notebook.support);
            return rebuilt(state);
        }
        Note::Slot => {
            return match text.parse() {
                Ok(slot) => opening::switch(state, slot),
                Err(_) => Vec::new(),
            };
        }
        Note::Compared => {
            if let Some(id) = notebook.in_hand().map(Trial::id) {
                notebook.compare(id, text.parse().ok());
            }
            return rebuilt(state);
        }
        _ => {}
    }
    let Some(trial) = notebook.in_hand_mut() else { return Vec::new() };
    match note {
        Note::From(point) => {
            trial.measured.of_mut(point).from =
                if text == "tail" { End::Tail } else { End::Nose };
        }
        Note::LeftOut(point) => {
            let readings = trial.measured.of_mut(point);
            let reason =
                readings.left_out.take().map(|out| out.reason).unwrap_or_default();
            readings.left_out = index(text).map(|reading| LeftOut { reading, reason });
            return rebuilt(state);
        }
        Note::WhyLeftOut(point) => {
            if let Some(out) = &mut trial.measured.of_mut(point).left_out {
                out.reason = cleaned_lines(text, REASON_CHARS);
            }
        }
        Note::Because => {
            trial.draft.because = cleaned_lines(text, noseward_lesson::BECAUSE_CHARS);
        }
        Note::Words => trial.note = cleaned_lines(text, noseward_lesson::NOTE_CHARS),
        _ => {}
    }
    written(state)
}

fn index(text: &str) -> Option<usize> {
    text.parse().ok()
}

/// A length that was typed. A text that cannot be read stays in its field.
fn length(state: &mut State, note: Note, text: &str) -> Vec<Effect> {
    let name = note.name();
    state.desk.drafts.retain(|(known, _)| *known != name);
    let Some(trial) = state.desk.notebook.in_hand_mut() else { return Vec::new() };
    if let Note::Guess(point) = note
        && trial.measured.of(point).any()
    {
        // Once measured, a guess is no guess.
        return Vec::new();
    }
    let (value, is_wrong) = match read_number(text, Quantity::Length, state.units) {
        Ok(value) => (value, false),
        Err(why) => {
            state.desk.drafts.push((name, Draft { text: text.to_owned(), why }));
            // What stood there before is gone from the field, so it counts no more.
            (None, true)
        }
    };
    let before = asked(trial);
    note.set_length_mm(trial, value);
    // A reading that lies apart brings a question; a first one ends the guessing.
    let mut effects =
        if asked(trial) == before { written(state) } else { rebuilt(state) };
    effects.push(Effect::MarkNote { id: note.name(), is_wrong });
    effects
}

/// What the forms ask about the readings, as far as it follows from them.
fn asked(trial: &Trial) -> [(bool, bool); 2] {
    BalancePoint::ALL.map(|point| {
        let readings = trial.measured.of(point);
        (readings.any(), readings.outlier().is_some())
    })
}

/// Why a text in a field of the notebook is no length, and how to mend it.
pub(super) fn fault(state: &State, note: Note) -> Option<String> {
    let name = note.name();
    let (_, draft) = state.desk.drafts.iter().find(|(known, _)| *known == name)?;
    // Any length of a design is asked for in the same words.
    let why = draft.why.sentence(Field::Fins(0, FinField::Start), state.units);
    Some(match note {
        Note::Reading(_, i) => {
            format!("Reading {}: {why} Until then it does not count.", i + 1)
        }
        Note::Guess(_) => format!("Your guess: {why}"),
        Note::RocketLength => format!("Length of the rocket: {why}"),
        _ => format!("Length of the cut-out: {why}"),
    })
}

fn pressed(state: &mut State, press: Press) -> Vec<Effect> {
    (state.desk.look.said, state.desk.look.typing) = (None, None);
    match press {
        Press::Begin => {
            let begun = state.desk.notebook.begin(&state.record());
            begun_trial(state, begun)
        }
        Press::BeginPlan(plan) => {
            let record = state.record();
            let begun = state.desk.notebook.begin_plan(plan, &record);
            begun_trial(state, begun)
        }
        Press::Copy(id) => match state.desk.notebook.copy(id) {
            Ok(Some(copied)) => open_trial(state, copied),
            Ok(None) => Vec::new(),
            Err(full) => say(state, true, sentence(&full.to_string())),
        },
        Press::Open(id) => open_trial(state, id),
        Press::Delete(id) => delete(state, id),
        Press::Restore(id) => restore(state, id),
        Press::Shift { id, to_front } => shift(state, id, to_front),
        Press::Outcome(outcome) => {
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
            rebuilt(state)
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
        Press::ToSwing => vec![Effect::Show("swing-record")],
        Press::ToTrial => vec![Effect::Show("nb-trial")],
        Press::Dismiss => {
            state.desk.look.by_hand = None;
            vec![Effect::Redraw, Effect::Focus("notebook-title".into())]
        }
        Press::Save
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
            vec![Effect::RebuildNotebook, Effect::Redraw, Effect::Focus(next.into())]
        }
        Press::DeleteNow => opening::delete_open(state),
    }
}

/// A way out of this computer.
fn out(state: &mut State, press: Press) -> Vec<Effect> {
    match press {
        Press::Save => {
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
        Press::CopyTable(format) => {
            vec![Effect::CopyText(link::to_table(&state.desk.notebook, format))]
        }
        Press::CopyResult(id) => match super::views::result_code(state, id) {
            Some(code) => vec![Effect::CopyText(code)],
            None => Vec::new(),
        },
        _ => match opening::hash(state) {
            Some(hash) => vec![Effect::CopyText(state.link_to(&hash))],
            None => say(
                state,
                true,
                "This notebook does not fit into a link. Save it as a file.",
            ),
        },
    }
}

fn delete(state: &mut State, id: u16) -> Vec<Effect> {
    if !state.desk.notebook.delete(id) {
        return Vec::new();
    }
    let words = format!("Trial {id} is deleted. It can be brought back below.");
    let mut effects = say(state, false, words);
    effects.extend(rebuilt(state));
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
    effects.extend(rebuilt(state));
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
    let mut effects = rebuilt(state);
    effects.push(Effect::Focus(Note::Plan.name()));
    effects
}

fn remove_plan(state: &mut State, plan: usize) -> Vec<Effect> {
    if let Some(plan) = state.desk.notebook.remove_plan(plan) {
        // It stands in the field again, should that have been a slip.
        if state.desk.look.plan.is_empty() {
            state.desk.look.plan = plan;
        }
    }
    let mut effects = rebuilt(state);
    effects.push(Effect::Focus(Note::Plan.name()));
    effects
}

fn begun_trial(state: &mut State, begun: Result<u16, NotebookError>) -> Vec<Effect> {
    match begun {
        Ok(_) => {
            state.desk.drafts.clear();
            state.desk.look.nudged = false;
            state.swings_from_trial();
            let mut effects = rebuilt(state);
            effects.push(Effect::Show("nb-trial"));
            effects
        }
        Err(full) => say(state, true, sentence(&full.to_string())),
    }
}

/// A sentence of what an error says of itself.
pub(super) fn sentence(error: &str) -> String {
    let mut words = capital(error);
    if !words.ends_with(['.', '?', '!']) {
        words.push('.');
    }
    words
}

/// The rocket of a trial, with its swings, comes onto the page.
fn open_trial(state: &mut State, id: u16) -> Vec<Effect> {
    let owner = state.owner();
    let Some(record) = state.desk.notebook.take_in_hand(id).map(|t| t.record()) else {
        return Vec::new();
    };
    state.desk.drafts.clear();
    state.desk.look.nudged = false;
    let mut effects = onto_page(state, record, owner);
    effects.extend(rebuilt(state));
    effects.push(Effect::Show("nb-trial"));
    effects
}

/// Puts a rocket onto the page, if it is another one.
pub(super) fn onto_page(state: &mut State, record: Record, owner: Owner) -> Vec<Effect> {
    if record != state.record() {
        state.show_record(record, owner);
    }
    vec![Effect::RebuildSteps, Effect::ShowBench, Effect::Redraw, Effect::Keep]
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
            effects.push(Effect::Focus(Note::Because.name()));
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
    effects.extend(rebuilt(state));
    let next = if was_locked { "nb-lock" } else { "nb-to-swing" };
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
    let owner = state.owner();
    let mut effects = onto_page(state, record, owner);
    effects.extend(written(state));
    effects.push(Effect::Focus("nb-trial".into()));
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
    *state.desk.notebook.conclusion.text_mut(statement) = text.clone();
    let mut effects = vec![Effect::SetNote(Note::Statement(statement).name(), text)];
    effects.extend(written(state));
    effects.push(Effect::Focus(Note::Statement(statement).name()));
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
