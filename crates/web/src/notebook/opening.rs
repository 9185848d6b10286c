//! Notebooks that are kept on this computer, and those that come from elsewhere.
//!
//! Each has a place of its own. A notebook that comes in is put beside the others and
//! never in place of one, so that nothing is lost.

use noseward_lesson::{Group, Notebook, Record, SetUp};
use noseward_link::{
    self as link, Any, At, LinkErrorKind, NotebookFile, QrSegments, Text,
};
use noseward_words as words;

use super::trial::onto_page;
use super::update::{say, written};
use super::{refused, set_up};
use crate::app::{
    Effect, Keeping, NotebookView, Notice, Slot, State, changed, hash_changed,
};
use crate::places::hand_in::out::result_words;
use crate::places::labels;
use crate::places::sentence;

/// The file of the open notebook.
pub(crate) fn file(state: &State) -> String {
    link::to_notebook_file(&contents(state))
}

/// The open notebook as this computer keeps it.
pub(crate) fn kept(state: &State) -> String {
    link::notebook_text(&contents(state))
}

/// The open notebook as a link, after the sign #, where it is short enough.
pub(crate) fn hash(state: &State) -> Option<String> {
    link::notebook_hash(&contents(state))
}

/// The open notebook with the rocket on the page.
pub(crate) fn contents(state: &State) -> NotebookFile {
    NotebookFile { notebook: state.desk.notebook.clone(), rocket: Some(state.record()) }
}

/// What is kept on this computer, when the page opens.
pub(crate) fn open_kept(
    state: &mut State,
    kept: &[(u32, String)],
    open: u32,
    afresh: bool,
) -> Vec<Effect> {
    let found = state.desk.found.take().unwrap_or_else(|| state.record());
    state.desk.slots.clear();
    for (number, text) in kept {
        let slots = &mut state.desk.slots;
        let place = slots.partition_point(|slot| slot.number <= *number);
        slots.insert(place, slot_of(*number, text));
    }
    let readable = |slot: &&Slot| slot.group.is_some() && !afresh;
    let chosen = state
        .desk
        .slots
        .iter()
        .filter(readable)
        .find(|slot| slot.number == open)
        .or_else(|| state.desk.slots.iter().find(readable))
        .cloned();
    match chosen {
        Some(slot) => {
            state.desk.slot = slot.number;
            if let Some(file) = read(&slot.text) {
                state.put_on_desk(file.notebook, &found);
                state.go_on_swinging();
            }
        }
        None => state.desk.slot = free_slot(state),
    }
    let mut effects = vec![Effect::Redraw];
    if state.desk.unsaved {
        effects.push(Effect::Keep);
    }
    effects
}

/// The notebook in a text, if one is.
pub(super) fn read(text: &str) -> Option<NotebookFile> {
    link::open_notebook_hash(text)?.ok()
}

/// What tells a notebook from others with the same label: "3 trials, Puffin".
pub(super) fn holds(notebook: &Notebook) -> String {
    let count = notebook.trials().len().into();
    match notebook.trials().last().map(|trial| trial.design().name.as_str()) {
        None | Some("") => words::notebook_holds(count),
        Some(name) => words::notebook_holds_of(count, name),
    }
}

fn slot_of(number: u32, text: &str) -> Slot {
    slot_with(number, text, read(text).as_ref().map(|file| &file.notebook))
}

/// A place with a notebook whose text has been read already.
fn slot_with(number: u32, text: &str, notebook: Option<&Notebook>) -> Slot {
    let group = notebook.map(|notebook| notebook.group);
    let holds = notebook.map(holds).unwrap_or_default();
    Slot { number, text: text.to_owned(), group, holds }
}

/// A place where nothing is kept: after the last one, or else a gap.
pub(super) fn free_slot(state: &State) -> u32 {
    let numbers = || state.desk.slots.iter().map(|slot| slot.number);
    let open = state.desk.slot;
    let last = numbers().fold(open, u32::max);
    let is_free = |place: &u32| *place != open && numbers().all(|n| n != *place);
    (last..=u32::MAX).chain(1..last).find(is_free).unwrap_or(last)
}

/// The notebook in a place is kept: one that was put away is known already, the other is
/// the open one.
pub(crate) fn is_kept(state: &mut State, slot: u32, text: &str) {
    if state.desk.slots.iter().any(|known| known.number == slot && known.text == text) {
        return;
    }
    put_slot(state, slot_with(slot, text, Some(&state.desk.notebook)));
}

fn put_slot(state: &mut State, slot: Slot) {
    let slots = &mut state.desk.slots;
    match slots.iter_mut().find(|known| known.number == slot.number) {
        Some(known) => *known = slot,
        None => slots.push(slot),
    }
}

/// Another tab has written into a place, or has emptied it. Of the open notebook's place:
/// what is open here moves to a place of its own, so that both stay.
pub(crate) fn kept_elsewhere(
    state: &mut State,
    slot: u32,
    text: Option<&str>,
    mine: Option<&str>,
) -> Vec<Effect> {
    match text {
        Some(text) => put_slot(state, slot_of(slot, text)),
        None => state.desk.slots.retain(|known| known.number != slot),
    }
    if slot != state.desk.slot {
        let mut effects = vec![Effect::Redraw];
        if let Some(mine) = mine {
            // The notebook that was put away goes beside the other tab's.
            let slot = free_slot(state);
            put_slot(state, slot_of(slot, mine));
            effects.push(Effect::KeepNotebook { slot, text: mine.to_owned() });
        }
        return effects;
    }
    if text.is_some_and(|text| text == kept(state)) {
        state.desk.unsaved = false;
        return Vec::new();
    }
    // What could not be kept is nowhere but here.
    let has_news = state.desk.unsaved || mine.is_some();
    if text.is_none() && !has_news {
        // Deleted over there, and nothing new here.
        return vec![Effect::Redraw];
    }
    if !has_news && let Some(file) = text.and_then(read) {
        // Nothing was written here meanwhile: the other tab is simply ahead.
        let mut rocket = state.record();
        if state.is_predicted() {
            // The swings on the page are those of the trial.
            rocket.swings = rocket.swings.setup.into();
        }
        state.typing = None;
        state.put_on_desk(file.notebook, &rocket);
        return vec![Effect::Redraw];
    }
    state.desk.slot = free_slot(state);
    let mut effects = say(state, true, words::notebook_two_tabs());
    effects.extend(written(state));
    effects
}

/// Keeps the open notebook in its slot, in memory at least, before another is opened.
pub(super) fn put_away(state: &mut State) -> Vec<Effect> {
    if state.desk.notebook.is_blank() && !state.desk.unsaved {
        return Vec::new();
    }
    let (slot, text) = (state.desk.slot, kept(state));
    put_slot(state, slot_with(slot, &text, Some(&state.desk.notebook)));
    state.desk.unsaved = false;
    vec![Effect::KeepNotebook { slot, text }]
}

/// Opens the notebook of another group.
pub(crate) fn switch(state: &mut State, slot: u32) -> Vec<Effect> {
    if slot == state.desk.slot {
        return Vec::new();
    }
    let Some(known) = state.desk.slots.iter().find(|known| known.number == slot) else {
        return Vec::new();
    };
    let Some(file) = read(&known.text) else {
        return say(state, true, words::notebook_unreadable());
    };
    let mut effects = put_away(state);
    effects.extend(open(state, slot, file));
    effects
}

/// Puts a notebook onto the desk, and its rocket onto the page.
pub(super) fn open(state: &mut State, slot: u32, file: NotebookFile) -> Vec<Effect> {
    let NotebookFile { notebook, rocket } = file;
    let group = notebook.group;
    let label = labels::group(group);
    let mut said = words::notebook_is_open(&label, &holds(&notebook));
    let is_twin = |other: &Slot| other.number != slot && other.group == Some(group);
    if state.desk.slots.iter().any(is_twin) {
        said = format!("{said} {}", words::notebook_twin(&label));
    }
    // No trial is in hand while the rocket changes: it belongs to the other group.
    state.desk.drafts.clear();
    state.desk.look = NotebookView::default();
    // This one has not left the computer yet.
    state.handed_in = false;
    let record = rocket.or_else(|| notebook.in_hand().map(|trial| trial.record()));
    state.desk.notebook = Notebook::default();
    let mut effects = record.map_or_else(Vec::new, |record| onto_page(state, record));
    state.desk.slot = slot;
    let rocket = state.record();
    state.put_on_desk(notebook, &rocket);
    effects.extend(say(state, false, said));
    effects.extend(written(state));
    effects
}

/// Begins a notebook for another group, set up as the open one.
pub(crate) fn new_group(state: &mut State) -> Vec<Effect> {
    let mut effects = put_away(state);
    let group = free_group(state);
    let notebook = state.desk.notebook.set_up_as(group);
    let record = state.record();
    let rocket = record.design.into();
    let slot = free_slot(state);
    effects.extend(open(state, slot, NotebookFile { notebook, rocket: Some(rocket) }));
    effects.push(Effect::Focus("nb:colour".into()));
    effects
}

/// A label that no notebook here has.
fn free_group(state: &State) -> Group {
    let taken = |group: Group| {
        group == state.desk.notebook.group
            || state.desk.slots.iter().any(|slot| slot.group == Some(group))
    };
    let set_up = state.desk.notebook.set_up();
    let mut labels = set_up.into_iter().flat_map(SetUp::labels);
    let of_set_up = labels.find(|group| !taken(*group));
    let free = of_set_up.or_else(|| state.desk.groups().find(|group| !taken(*group)));
    free.unwrap_or_default()
}

/// Deletes the open notebook from this computer.
pub(crate) fn delete_open(state: &mut State) -> Vec<Effect> {
    let group = state.desk.notebook.group;
    let gone = state.desk.slot;
    state.desk.slots.retain(|slot| slot.number != gone);
    let next = state.desk.slots.iter().find(|slot| slot.group.is_some()).cloned();
    let file = next.as_ref().and_then(|slot| read(&slot.text));
    let mut effects = vec![Effect::DropNotebook(gone)];
    match (next, file) {
        (Some(slot), Some(file)) => effects.extend(open(state, slot.number, file)),
        _ => {
            state.desk.notebook = state.desk.notebook.set_up_as(group);
            state.desk.drafts.clear();
            state.desk.look = NotebookView::default();
            state.desk.unsaved = false;
            state.handed_in = false;
            effects.push(Effect::Redraw);
        }
    }
    let said = words::notebook_is_deleted(&labels::group(group));
    effects.extend(say(state, false, said));
    effects.push(Effect::Focus("place-title".into()));
    effects
}

/// Opens the notebook in the link with which the page was opened. The rocket that was kept
/// here waits until somebody decides.
pub(crate) fn open_link(state: &mut State, text: &str) -> Vec<Effect> {
    let is_more = link::looks_like_notebook(text)
        || link::looks_like_table(text)
        || link::pieces(text).len() > 1;
    if !is_more {
        return hash_changed(state, text);
    }
    let before = state.record();
    let effects = open_text(state, text);
    // A set-up looks after that itself.
    let is_set_up = link::open_set_up(text).is_ok();
    if !is_set_up
        && state.opened_kept
        && state.keeping.is_here()
        && before != state.record()
    {
        state.keeping = Keeping::Other(Box::new(before));
    }
    effects
}

/// Opens a text that is no rocket: a notebook in any spelling, some parts of one, or one
/// result. What cannot be read is told where it was typed, and stays there.
pub(crate) fn open_text(state: &mut State, text: &str) -> Vec<Effect> {
    let pieces = link::pieces(text);
    if pieces.len() > 1 && !link::looks_like_table(text) {
        return open_all(state, &pieces);
    }
    match opened(state, text) {
        Ok(mut effects) => {
            effects.push(Effect::CloseMenus);
            effects
        }
        Err(fault) => {
            state.notice = Some(Notice::FileFault(sentence(&fault)));
            vec![Effect::Redraw]
        }
    }
}

fn opened(state: &mut State, text: &str) -> Result<Vec<Effect>, String> {
    if link::looks_like_table(text) && !link::looks_like_notebook(text) {
        let notebook = link::open_table(text).map_err(|error| refused::said(&error))?;
        return Ok(come_in(state, NotebookFile { notebook, rocket: None }));
    }
    match link::open_any(text) {
        Ok(Any::Notebook(file)) => Ok(come_in(state, file)),
        Ok(Any::Parts(_)) => add_parts(state, text),
        Ok(Any::SetUp(link)) => Ok(set_up::open(state, *link, text)),
        Ok(Any::Result(result)) => Ok(say(state, false, result_words(state, &result))),
        Ok(Any::Rocket(text)) => {
            let (record, notice) = match text {
                Text::Record { record, .. } => (record, Notice::Opened),
                Text::Partial { design, missing } => {
                    (design.into(), Notice::LinkCut(missing))
                }
            };
            state.replace_all(record);
            state.notice = Some(notice);
            Ok(changed())
        }
        // The right ones of several parts are kept all the same.
        Err(error) if matches!(error.at, At::Part(_)) => {
            add_parts(state, text).and(Err(refused::said(&error)))
        }
        Err(error) => Err(refused::said(&error)),
    }
}

/// A class has handed in all at once. Notebooks each get a place, results are told, and of
/// the rockets the first comes onto the page where no notebook does; whatever is not opened
/// is named.
fn open_all(state: &mut State, pieces: &[&str]) -> Vec<Effect> {
    let (mut effects, mut told, mut wrong) = (Vec::new(), Vec::new(), false);
    let (mut seen, mut rockets) = (Vec::new(), Vec::new());
    for (piece, number) in pieces.iter().zip(1_usize..) {
        let any = link::open_any(piece);
        if seen.contains(&any) {
            continue;
        }
        seen.push(any.clone());
        match any {
            Ok(Any::Notebook(file)) => {
                told.push(words::notebook_is_here(&labels::group(file.notebook.group)));
                effects.extend(come_in(state, file));
            }
            Ok(Any::SetUp(link)) => effects.extend(set_up::open(state, *link, piece)),
            Ok(Any::Result(result)) => {
                told.push(result_words(state, &result));
            }
            Ok(Any::Rocket(Text::Record { record, .. })) => rockets.push(record),
            Ok(Any::Rocket(Text::Partial { design, .. })) => rockets.push(design.into()),
            Ok(Any::Parts(_)) => match add_parts(state, piece) {
                Ok(more) => effects.extend(more),
                Err(fault) => told.push(fault),
            },
            Err(error) => {
                wrong = true;
                let fault = sentence(&refused::said(&error));
                told.push(words::notebook_of_several(
                    number.into(),
                    pieces.len().into(),
                    &fault,
                ));
            }
        }
    }
    let is_rocket = |any: &_| matches!(any, Ok(Any::Rocket(_)) | Err(_));
    if seen.iter().all(is_rocket) && !rockets.is_empty() {
        state.replace_all(rockets.remove(0));
        state.notice = Some(Notice::Opened);
        effects.extend(changed());
    }
    if !rockets.is_empty() {
        let names: Vec<&str> = rockets.iter().map(name_of).collect();
        let names = names.join(", ");
        told.push(words::notebook_not_opened(&names));
    }
    effects.extend([Effect::CloseMenus, Effect::Redraw]);
    if !told.is_empty() {
        effects.extend(say(state, wrong, told.join("\n")));
    }
    effects
}

fn name_of(record: &Record) -> &str {
    match record.design.name.as_str() {
        "" => words::notebook_nameless().as_str(),
        name => name,
    }
}

/// Parts of a notebook: those that came before are kept until all are there.
fn add_parts(state: &mut State, text: &str) -> Result<Vec<Effect>, String> {
    let mut added = state.desk.look.parts.add(text);
    let is_other = |error: &link::LinkError| error.kind == LinkErrorKind::OtherNotebook;
    if added.as_ref().is_err_and(is_other) {
        // Of another notebook: those are collected from now on.
        state.desk.look.parts = QrSegments::default();
        added = state.desk.look.parts.add(text);
    }
    added.map_err(|error| refused::said(&error))?;
    match state.desk.look.parts.notebook() {
        Some(Ok(file)) => {
            state.desk.look.parts = QrSegments::default();
            Ok(come_in(state, file))
        }
        Some(Err(error)) => Err(refused::said(&error)),
        None => Ok(vec![Effect::Redraw]),
    }
}

/// A notebook that came from elsewhere gets a place of its own.
fn come_in(state: &mut State, file: NotebookFile) -> Vec<Effect> {
    let same = |slot: &&Slot| {
        read(&slot.text).is_some_and(|known| known.notebook == file.notebook)
    };
    if file.notebook == state.desk.notebook {
        return say(state, false, words::notebook_open_already());
    }
    if let Some(slot) = state.desk.slots.iter().find(same).map(|slot| slot.number) {
        return switch(state, slot);
    }
    let is_blank = state.desk.notebook.is_blank();
    let mut effects = put_away(state);
    let slot = if is_blank { state.desk.slot } else { free_slot(state) };
    effects.extend(open(state, slot, file));
    effects
}
