//! What a message does where a notebook is handed in.

use noseward_link::{self as link, Format};
use noseward_words as words;

use super::HandInMsg;
use super::columns::called;
use super::out::result_code;
use super::plain_text::plain_text;
use crate::app::{Effect, Notice, State};
use crate::notebook::{file, link_hash, say};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: HandInMsg) -> Vec<Effect> {
    match msg {
        HandInMsg::SaveRocket => save_rocket(state),
        HandInMsg::Save if state.desk.notebook.is_blank() => save_rocket(state),
        HandInMsg::Save => {
            state.handed_in = true;
            let name = link::notebook_file_name(&state.desk.notebook);
            download(state, name, file)
        }
        HandInMsg::Spreadsheet(format) => {
            let ending = match format {
                Format::CommaSemicolon => "-semicolons.csv",
                _ => ".csv",
            };
            table(state, ending, format)
        }
        HandInMsg::PlainText => download(state, file_name(state, ".txt"), |state| {
            plain_text(&state.desk.notebook)
        }),
        HandInMsg::CopyTable(format) => {
            copy(link::to_table(&state.desk.notebook, format, &called))
        }
        HandInMsg::CopyResult(id) => match result_code(state, id) {
            Some(code) => copy(code),
            None => Vec::new(),
        },
        // That needs no files.
        HandInMsg::Symbols => show_symbols(state),
        // Nor does that.
        HandInMsg::CopyLink => copy_link(state),
    }
}

/// The notebook as symbols, or no longer.
pub(crate) fn show_symbols(state: &mut State) -> Vec<Effect> {
    state.desk.look.shows_symbols = !state.desk.look.shows_symbols;
    vec![Effect::Redraw]
}

/// A link to the notebook, or, where it does not fit, to the rocket.
pub(crate) fn copy_link(state: &mut State) -> Vec<Effect> {
    match link_hash(state) {
        Some(hash) => {
            vec![Effect::Copy { text: state.link_to(&hash), is_link: true }]
        }
        None => {
            let text = state.link_to(&link::hash(&state.record()));
            let mut effects = vec![Effect::Copy { text, is_link: true }];
            effects.extend(say(state, true, words::hand_in_no_link()));
            effects
        }
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

fn file_name(state: &State, ending: &str) -> String {
    let name = link::notebook_file_name(&state.desk.notebook);
    let stem = name.strip_suffix(".json").unwrap_or(&name);
    format!("{stem}{ending}")
}

fn table(state: &mut State, ending: &str, format: Format) -> Vec<Effect> {
    download(state, file_name(state, ending), |state| {
        link::to_table(&state.desk.notebook, format, &called)
    })
}

fn download(
    state: &mut State,
    name: String,
    text: impl Fn(&State) -> String,
) -> Vec<Effect> {
    let text = text(state);
    let mut effects = say(state, false, words::hand_in_saved(&name));
    effects.insert(0, Effect::Download { name, text });
    effects
}
