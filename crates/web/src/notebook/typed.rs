//! What typing into a field of the notebook does.

use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, Colour, End, Group, LeftOut, Level, NOTE_CHARS,
    REASON_CHARS, Support, Telling, Trial,
};
use noseward_stability::{Field, FinField, Quantity, cleaned_lines};
use noseward_words::{self as words, RuleSetting};

use super::fields::NotebookField;
use super::opening;
use super::rules::fixed;
use super::trial::{begin_if_needed, full};
use super::update::{say, written};
use crate::app::{Draft, Effect, State, read_number};
use crate::places::labels;

/// What typing into a field does.
pub(super) fn typed(state: &mut State, field: NotebookField, text: &str) -> Vec<Effect> {
    state.notice.take_if(|notice| notice.is_passing());
    state.typing = Some((field.name(), text.to_owned()));
    let setting = match field {
        NotebookField::Level => Some(RuleSetting::Detail),
        NotebookField::Support => Some(RuleSetting::Help),
        NotebookField::Telling => Some(RuleSetting::Telling),
        _ => None,
    };
    if let Some(told) = setting.and_then(|setting| fixed(state, setting)) {
        return told;
    }
    if field.is_of_trial() && !begin_if_needed(state) {
        return full(state);
    }
    if field.is_length() {
        return length(state, field, text);
    }
    let notebook = &mut state.desk.notebook;
    match field {
        NotebookField::Statement(statement) => {
            let text = cleaned_lines(text, BOX_CHARS);
            *notebook.conclusion.text_mut(statement) = text;
            return written(state);
        }
        NotebookField::Plan => {
            state.desk.look.plan = text.to_owned();
            return vec![Effect::Redraw];
        }
        NotebookField::Colour | NotebookField::Number => {
            let group = notebook.group;
            let group = match field {
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
                let said = words::notebook_taken(&labels::group(group));
                effects.extend(say(state, true, said));
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
    match field {
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
            trial.draft.because = cleaned_lines(text, BECAUSE_CHARS);
        }
        NotebookField::Words => {
            trial.note = cleaned_lines(text, NOTE_CHARS);
        }
        _ => {}
    }
    written(state)
}

fn index(text: &str) -> Option<usize> {
    text.parse().ok()
}

/// A length that was typed. A text that cannot be read stays in its field.
fn length(state: &mut State, field: NotebookField, text: &str) -> Vec<Effect> {
    let name = field.name();
    state.desk.drafts.retain(|(known, _)| *known != name);
    let Some(trial) = state.desk.notebook.in_hand_mut() else { return Vec::new() };
    if let NotebookField::Guess(point) = field
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
    field.set_length_mm(trial, value);
    if let NotebookField::Reading(point, _) = field
        && trial.measured.of(point).any()
    {
        // It can't be guessed any more, and so not be mended either.
        let guess = NotebookField::Guess(point).name();
        state.desk.drafts.retain(|(known, _)| *known != guess);
    }
    written(state)
}

/// Why a text in a field of the notebook is no length, and how to mend it.
pub(crate) fn fault(state: &State, field: NotebookField) -> Option<String> {
    let name = field.name();
    let (_, draft) = state.desk.drafts.iter().find(|(known, _)| *known == name)?;
    // Any length of a design is asked for in the same words.
    let why = draft.why.sentence(Field::Fins(0, FinField::Start), state.units);
    Some(match field {
        NotebookField::Reading(_, i) => {
            words::notebook_reading_fault((i + 1).into(), &why)
        }
        NotebookField::Guess(_) => words::notebook_guess_fault(&why),
        NotebookField::RocketLength => words::notebook_rocket_fault(&why),
        _ => words::notebook_cutout_fault(&why),
    })
}
