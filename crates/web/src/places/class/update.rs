//! What a message does where a class is gathered.

use noseward_lesson::{Class, ClassLabel};
use noseward_link::{Format, class_to_table, open_set_up};
use noseward_words as words;

use super::model::{ClassDesk, ClassField, Filter, Refused, Sort, TableView, Tally, Why};
use super::timer::{self, Timer};
use super::{ClassMsg, columns, example, grid, marking, report, take_in};
use crate::app::{Effect, Looking, State};
use crate::notebook::say;

/// Characters of what is kept that are read at once: some 100 results.
const AT_ONCE: usize = 40_000;
/// Slices after which it is told how far that is.
const SLICES_A_DRAWING: u8 = 8;

/// Opens what this computer keeps of the class, once. Much of it is read in slices.
pub(crate) fn open(state: &mut State) -> Vec<Effect> {
    if state.class.desk.is_some() {
        return Vec::new();
    }
    let kept = state.class.text.take();
    let mut desk = ClassDesk::default();
    // What is gathered first is held to the set-up in the form.
    desk.class.rules = state
        .set_up
        .text
        .as_ref()
        .filter(|_| kept.is_none())
        .and_then(|text| Some(open_set_up(text).ok()?.set_up.rules()));
    state.class.desk = Some(Box::new(desk));
    kept.map_or_else(Vec::new, |text| read_kept(state, text))
}

/// Takes in a text that was kept, as it is.
fn read_kept(state: &mut State, text: String) -> Vec<Effect> {
    let is_short = text.len() <= AT_ONCE;
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    (desk.is_opening, desk.is_quiet) = (true, true);
    take_in::begin(desk, take_in::texts_of_kept(&text));
    state.class.is_busy = true;
    if is_short {
        while state.class.is_busy {
            gather(state);
        }
        return Vec::new();
    }
    vec![Effect::Slice]
}

/// The class as it is kept; nothing where there is nothing to keep.
pub(crate) fn kept(state: &State) -> String {
    state.class.desk.as_deref().map(take_in::kept).unwrap_or_default()
}

/// Takes in a little more.
pub(crate) fn gather(state: &mut State) -> Vec<Effect> {
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    if take_in::step(desk) {
        // Telling how far it is takes as long as a slice.
        desk.slices = (desk.slices + 1) % SLICES_A_DRAWING;
        let mut effects = vec![Effect::Slice];
        effects.extend((desk.slices == 0).then_some(Effect::Redraw));
        return effects;
    }
    state.class.is_busy = false;
    desk.forget();
    if std::mem::take(&mut desk.is_quiet) {
        desk.tally = Tally::default();
        if !state.class.unsaved {
            return vec![Effect::Redraw, Effect::Slice];
        }
    }
    state.class.unsaved = true;
    vec![Effect::Redraw, Effect::Keep, Effect::Slice]
}

/// What typing into a field does.
pub(crate) fn typed(state: &mut State, name: &str, text: &str) -> Vec<Effect> {
    let Some(field) = ClassField::parse(name) else { return Vec::new() };
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    state.notice.take_if(|notice| notice.is_passing());
    let at = text.parse::<usize>().ok();
    match field {
        ClassField::Label | ClassField::DeleteBy => {
            desk.drafts.retain(|(known, _)| *known != key(field));
            if !said_of_class(&mut desk.class, field, text) {
                desk.drafts.push((key(field), text.to_owned()));
                return vec![Effect::Redraw];
            }
            return changed(state);
        }
        ClassField::Pasted => text.clone_into(&mut desk.pasted),
        ClassField::Mend(i) => {
            if let Some(refused) = desk.refused.get_mut(i) {
                text.clone_into(&mut refused.at.what);
            }
        }
        ClassField::Sort => {
            desk.table.sort =
                at.and_then(|i| Sort::ALL.get(i).copied()).unwrap_or_default();
        }
        ClassField::Marked => marking::choose(desk, at.unwrap_or(0)),
        ClassField::Filter => {
            let filter = at.and_then(|i| Filter::ALL.get(i).copied()).unwrap_or_default();
            desk.table = TableView { filter, more: 0, ..desk.table };
        }
        _ => grid::typed(&mut desk.row, field, text),
    }
    vec![Effect::Redraw]
}

/// What stands for a field among those that could not be read.
pub(super) fn key(field: ClassField) -> &'static str {
    if field == ClassField::Label { "label" } else { "day" }
}

/// Puts the label of the class, or the day until which it is kept, into it; whether the text is
/// one.
fn said_of_class(class: &mut Class, field: ClassField, text: &str) -> bool {
    if field == ClassField::Label {
        let Some(label) = ClassLabel::new(text) else { return false };
        class.relabel(label);
        return true;
    }
    let day = noseward_link::day_of(text);
    class.delete_by = day;
    day.is_some() || text.trim().is_empty()
}

/// Something of the class has changed: it is to be kept.
pub(super) fn changed(state: &mut State) -> Vec<Effect> {
    state.class.unsaved = true;
    if let Some(desk) = &state.class.desk {
        desk.forget();
    }
    vec![Effect::Redraw, Effect::Keep]
}

/// What a message does.
pub(crate) fn update(state: &mut State, msg: ClassMsg) -> Vec<Effect> {
    let notebooks =
        if msg == ClassMsg::Example { example::notebooks(state) } else { Vec::new() };
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    match msg {
        ClassMsg::Example => take_in::example(desk, notebooks),
        ClassMsg::Elsewhere(text) => return elsewhere(state, text),
        ClassMsg::Files(files) => return read_files(state, files),
        ClassMsg::Chosen => return vec![Effect::Look(Looking::AtFiles)],
        ClassMsg::Camera(wanted) => return desk.symbols.camera(wanted),
        ClassMsg::Show(view) => {
            desk.view = view;
            return vec![Effect::Redraw];
        }
        ClassMsg::Computed(_)
        | ClassMsg::InWidths(_)
        | ClassMsg::Names
        | ClassMsg::Board
        | ClassMsg::Timer(_)
        | ClassMsg::Clock(_) => return looked_at(desk, &msg),
        ClassMsg::Step(way) => return marking::step(desk, way),
        ClassMsg::Find(statement) => marking::find(desk, statement),
        ClassMsg::Report(place) => return report::give(state, place),
        ClassMsg::More => {
            desk.table.more += 1;
            return vec![Effect::Redraw];
        }
        ClassMsg::AskToDelete(asks) => {
            desk.asks_to_delete = asks;
            return vec![Effect::Redraw];
        }
        ClassMsg::Gather => {
            if desk.pasted.trim().is_empty() {
                return vec![Effect::Focus(ClassField::Pasted.name())];
            }
            let text = std::mem::take(&mut desk.pasted);
            return read(state, vec![(String::new(), text)]);
        }
        ClassMsg::Stop => take_in::stop(desk),
        ClassMsg::Undo => {
            if let Some(before) = desk.before.take() {
                desk.class = *before;
                desk.tally = Tally::default();
            }
        }
        ClassMsg::Again(i) => {
            if i < desk.refused.len() {
                let Refused { at, .. } = desk.refused.remove(i);
                return read(state, vec![(at.source, at.what)]);
            }
        }
        ClassMsg::Take(i) => take_in::take(desk, i),
        ClassMsg::TakeAll => {
            for i in (0..desk.refused.len()).rev() {
                take_in::take(desk, i);
            }
        }
        ClassMsg::LeaveOut(i) => {
            if i < desk.refused.len() {
                desk.refused.remove(i);
            }
        }
        ClassMsg::HoldToRules(holds) => {
            let text = state.set_up.text.as_ref().filter(|_| holds);
            let rules =
                text.and_then(|text| Some(open_set_up(text).ok()?.set_up.rules()));
            desk.class.rules = rules;
        }
        ClassMsg::AddRow => return grid::add(state),
        ClassMsg::Hide(i) => {
            if let Some(entry) = desk.class.entry_mut(i) {
                entry.hidden = !entry.hidden;
            }
        }
        ClassMsg::Mark(i) => {
            if let Some(entry) = desk.class.entry_mut(i) {
                entry.marked = !entry.marked;
            }
        }
        ClassMsg::Remove(i) => {
            desk.before = Some(Box::new(desk.class.clone()));
            desk.class.remove(i);
        }
        ClassMsg::DropExample => desk.class.drop_examples(),
        ClassMsg::Save => return save(state),
        ClassMsg::Delete => {
            **desk = ClassDesk::default();
            state.class.is_busy = false;
            let mut effects = changed(state);
            effects.extend(say(state, false, words::class_deleted()));
            effects.push(Effect::Focus("place-title".into()));
            return effects;
        }
    }
    changed(state)
}

/// What changes nothing but what is looked at.
fn looked_at(desk: &mut ClassDesk, msg: &ClassMsg) -> Vec<Effect> {
    let view = &mut desk.pattern;
    match *msg {
        ClassMsg::Computed(computed) => view.along.computed = computed,
        ClassMsg::InWidths(in_widths) => view.along.in_widths = in_widths,
        ClassMsg::Names => view.names = !view.names,
        ClassMsg::Board => view.board = !view.board,
        ClassMsg::Timer(place) => {
            let minutes = place.and_then(|place| timer::MINUTES.get(place));
            desk.timer = minutes.map(|minutes| Timer::new(*minutes));
            return vec![Effect::Redraw, Effect::Clock];
        }
        ClassMsg::Clock(now_s) => return timer::tick(desk, now_s),
        _ => {}
    }
    vec![Effect::Redraw]
}

/// Begins to take in texts with the names of their files.
pub(super) fn read(state: &mut State, texts: Vec<(String, String)>) -> Vec<Effect> {
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    if !state.class.is_busy {
        desk.tally = Tally::default();
        desk.before = Some(Box::new(desk.class.clone()));
    }
    take_in::begin(desk, texts);
    state.class.is_busy = true;
    vec![Effect::Redraw, Effect::Slice]
}

fn read_files(state: &mut State, files: Vec<(String, Option<String>)>) -> Vec<Effect> {
    let mut texts = Vec::new();
    let mut bad = Vec::new();
    for (name, text) in files {
        match text {
            Some(text) => texts.push((name, text)),
            None => bad.push(take_in::refused(name, 1, String::new(), Why::File)),
        }
    }
    let effects = read(state, texts);
    if let Some(desk) = &mut state.class.desk {
        desk.refused.extend(bad);
    }
    effects
}

/// Another tab has put this where the class is kept. What this one has not kept yet stays, and
/// both come together.
fn elsewhere(state: &mut State, text: Option<String>) -> Vec<Effect> {
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    if !state.class.unsaved {
        let view = desk.view;
        **desk = ClassDesk {
            view,
            pasted: std::mem::take(&mut desk.pasted),
            symbols: std::mem::take(&mut desk.symbols),
            ..ClassDesk::default()
        };
        state.class.is_busy = false;
    }
    let mut effects = text.map_or_else(Vec::new, |text| read_kept(state, text));
    effects.push(Effect::Redraw);
    if state.class.unsaved {
        effects.push(Effect::Keep);
    }
    effects
}

/// The whole class as a file, which opens again.
fn save(state: &mut State) -> Vec<Effect> {
    let Some(desk) = &state.class.desk else { return Vec::new() };
    let name = report::file_name(&desk.class, ".csv");
    let text = class_to_table(&desk.class, Format::PointComma, true, &columns::called);
    let mut effects = say(state, false, words::class_saved(&name));
    effects.insert(0, Effect::Download { name, text });
    effects
}
