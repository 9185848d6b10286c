//! What a message does in the place Paper.

use noseward_drawing::paper::{DocumentInfo, pdf};
use noseward_drawing::{cut_out_outline, svg_document};
use noseward_words as words;

use super::{PaperDesk, PaperMsg};
use crate::app::{Effect, Paper, State, print};
use crate::notebook::say;

/// Has the place show what it would now: pages are made anew where something has changed.
pub(crate) fn open(state: &mut State) -> Vec<Effect> {
    let mut desk = state.paper.take().unwrap_or_default();
    desk.follow(state);
    let effects = if desk.is_busy() { vec![Effect::Slice] } else { Vec::new() };
    state.paper = Some(desk);
    effects
}

/// Makes one sheet more.
pub(crate) fn make(state: &mut State) -> Vec<Effect> {
    let Some(mut desk) = state.paper.take() else { return Vec::new() };
    let is_more = desk.made.as_mut().is_some_and(|made| made.go_on(state));
    state.paper = Some(desk);
    if is_more { vec![Effect::Redraw, Effect::Slice] } else { Vec::new() }
}

/// What a message does.
pub(crate) fn update(state: &mut State, msg: PaperMsg) -> Vec<Effect> {
    let desk = state.paper.get_or_insert_default();
    match msg {
        PaperMsg::Choose(sheet) => {
            **desk = PaperDesk { sheet, page: 0, made: None, ..(**desk).clone() };
        }
        PaperMsg::Size(size) => desk.chosen = Some(size),
        PaperMsg::Leaf(true) => desk.page = desk.at() + 1,
        PaperMsg::Leaf(false) => desk.page = desk.at().saturating_sub(1),
        PaperMsg::Anyway => desk.anyway = true,
        PaperMsg::Pdf { opens } => return save_pdf(state, opens),
        PaperMsg::Print => return print(Paper::Sheets),
        PaperMsg::Svg => return save_page(state),
        PaperMsg::Outline => return save_outline(state),
    }
    let mut effects = open(state);
    if let Some(desk) = &mut state.paper {
        desk.page = desk.at();
    }
    effects.push(Effect::Redraw);
    effects
}

fn save_pdf(state: &mut State, opens: bool) -> Vec<Effect> {
    let Some(desk) = &state.paper else { return Vec::new() };
    let title = desk.sheet.name().as_str();
    let language = words::language().tag;
    let bytes = pdf(desk.pages(), &DocumentInfo { title, language });
    let name = format!("noseward-{}.pdf", desk.sheet.key());
    if opens {
        return vec![Effect::Hand { name, bytes, opens }];
    }
    save(state, name, bytes)
}

fn save(state: &mut State, name: String, bytes: Vec<u8>) -> Vec<Effect> {
    let mut effects = say(state, false, words::paper_place_saved(&name));
    effects.insert(0, Effect::Hand { name, bytes, opens: false });
    effects
}

fn save_page(state: &mut State) -> Vec<Effect> {
    let Some(desk) = &state.paper else { return Vec::new() };
    let Some(page) = desk.pages().get(desk.at()) else { return Vec::new() };
    let svg = svg_document(&page.scene, None);
    let name = format!("noseward-{}-{}.svg", desk.sheet.key(), desk.at() + 1);
    save(state, name, svg.into())
}

fn save_outline(state: &mut State) -> Vec<Effect> {
    let Some(outline) = cut_out_outline(&state.design) else { return Vec::new() };
    save(state, "noseward-outline.svg".to_owned(), svg_document(&outline, None).into())
}
