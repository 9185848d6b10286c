//! A set-up comes in: the notebook of a group begins, or the page asks which group it is.

use noseward_lesson::{Group, Notebook, SetUp};
use noseward_link::{SetUpLink, rules_text};
use noseward_stability::Units;
use noseward_words::{self as words, Choice};

use super::opening::{self, free_slot, holds, put_away, read};
use super::update::{say, written};
use crate::app::{Effect, Joining, Keeping, Place, State, go_to, speak_for_class};
use crate::places::join::JoinMsg;
use crate::places::labels;

/// Opens a link to a set-up. What stood on the page is put away first.
pub(super) fn open(state: &mut State, link: SetUpLink, text: &str) -> Vec<Effect> {
    let SetUpLink { set_up, group } = link;
    match group {
        Some(group) => begin(state, &set_up, group),
        None => {
            let mut effects = speak(state, &set_up);
            let text = text.to_owned();
            state.desk.look.joining = Some(Box::new(Joining { set_up, text }));
            effects.extend(go_to(state, Place::Join, state.place != Place::Join));
            effects
        }
    }
}

/// Somebody said which group they are.
pub(crate) fn join(state: &mut State, JoinMsg(place): JoinMsg) -> Vec<Effect> {
    let Some(joining) = state.desk.look.joining.take() else { return Vec::new() };
    match joining.set_up.labels().nth(place) {
        Some(group) => begin(state, &joining.set_up, group),
        None => Vec::new(),
    }
}

/// The labels of a set-up, each with what this computer holds of that group.
pub(crate) fn joins(state: &State, set_up: &SetUp) -> Vec<(Group, Option<String>)> {
    let held = |group| {
        let fits = |notebook: &Notebook| is_of(notebook, set_up, group);
        let open = Some(&state.desk.notebook).filter(|notebook| fits(notebook));
        let kept = || {
            let kept = state.desk.slots.iter().filter_map(|slot| read(&slot.text));
            kept.map(|file| file.notebook).find(|notebook| fits(notebook))
        };
        open.map(holds).or_else(|| kept().as_ref().map(holds))
    };
    set_up.labels().map(|group| (group, held(group))).collect()
}

/// Whether a notebook is a group's under the rules of a set-up.
fn is_of(notebook: &Notebook, set_up: &SetUp, group: Group) -> bool {
    notebook.group == group && notebook.rules() == Some(set_up.rules())
}

/// The notebook of a group for a set-up: the one that is here already, or a new one in a
/// place of its own, so that nobody undoes the set-up by undoing a step.
fn begin(state: &mut State, set_up: &SetUp, group: Group) -> Vec<Effect> {
    let before = state.record();
    let holds_rocket = !state.desk.notebook.is_blank();
    let was_used = state.opened_kept || state.can_undo();
    let mut effects = speak(state, set_up);
    state.units = Units { system: set_up.units };
    effects.push(Effect::KeepView);
    let is_it = |notebook: &Notebook| is_of(notebook, set_up, group);
    let kept = state.desk.slots.iter().find(|slot| {
        slot.number != state.desk.slot
            && read(&slot.text).is_some_and(|file| is_it(&file.notebook))
    });
    let kept = kept.map(|slot| slot.number);
    if is_it(&state.desk.notebook) {
        state.desk.notebook.set_up_again(set_up);
        effects.extend(written(state));
    } else {
        effects.extend(put_away(state));
        if let Some(slot) = kept {
            effects.extend(opening::switch(state, slot));
            state.desk.notebook.set_up_again(set_up);
        } else {
            let slot = free_slot(state);
            let notebook = Notebook::of_set_up(group, set_up);
            let rocket = set_up.rocket.clone().map(Into::into);
            let rocket = rocket.or(Some(before.design.clone().into()));
            let file = noseward_link::NotebookFile { notebook, rocket };
            effects.extend(opening::open(state, slot, file));
        }
    }
    state.desk.look.joining = None;
    if !holds_rocket && was_used && state.keeping.is_here() && before != state.record() {
        state.keeping = Keeping::Other(Box::new(before));
    }
    let rules = rules_text(set_up.rules());
    let mut said = words::rules_begun(&labels::group(group), &rules);
    if let Some(other) = other_language(state, set_up) {
        said = format!("{said}\n{}", words::rules_language_kept(other.name));
    }
    let first = Place::first(state);
    effects.extend(go_to(state, first, state.place != first));
    effects.extend(say(state, false, said));
    effects
}

/// The language of a set-up, where somebody chose another one here.
fn other_language(state: &State, set_up: &SetUp) -> Option<Choice> {
    let wanted = Choice::parse(&set_up.language)?;
    state.speech.own().filter(|own| *own != wanted).map(|_| wanted)
}

/// Speaks the language of a set-up, unless somebody chose another one here.
fn speak(state: &mut State, set_up: &SetUp) -> Vec<Effect> {
    match Choice::parse(&set_up.language) {
        Some(wanted)
            if other_language(state, set_up).is_none()
                && state.speech.own() != Some(wanted) =>
        {
            speak_for_class(state, wanted)
        }
        _ => Vec::new(),
    }
}
