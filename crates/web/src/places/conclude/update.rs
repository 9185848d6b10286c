//! What a message does where a group concludes.

use noseward_lesson::{BOX_CHARS, Sentences, Statement};
use noseward_stability::cleaned_lines;
use noseward_words as words;

use super::{ConcludeMsg, offered};
use crate::app::{Effect, State};
use crate::notebook::{NotebookField, say, written};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: ConcludeMsg) -> Vec<Effect> {
    match msg {
        ConcludeMsg::Use(statement, place) => use_sentence(state, statement, place),
    }
}

/// Puts an offered sentence behind what the group has written.
fn use_sentence(state: &mut State, statement: Statement, place: usize) -> Vec<Effect> {
    let notebook = &state.desk.notebook;
    let sentences = Sentences::of(notebook);
    let all = sentences.offered(statement);
    let Some(sentence) = all.get(place) else { return Vec::new() };
    let sentence = offered::sentence(sentence, state.units);
    let text = notebook.conclusion.text(statement);
    if text.contains(sentence.as_str()) {
        return say(state, false, words::conclude_there_already());
    }
    if text.chars().count() + sentence.chars().count() >= BOX_CHARS {
        return say(state, true, words::conclude_no_room());
    }
    let gap = if text.is_empty() || text.ends_with(['\n', ' ']) { "" } else { "\n" };
    let text = format!("{text}{gap}{sentence}");
    let text = cleaned_lines(&text, BOX_CHARS);
    *state.desk.notebook.conclusion.text_mut(statement) = text;
    let mut effects = written(state);
    effects.push(Effect::Focus(NotebookField::Statement(statement).name()));
    effects
}
