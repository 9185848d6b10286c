//! What a message does in the place Paper.

use noseward_drawing::paper::{DocumentInfo, pdf};
use noseward_drawing::sheets::teacher::{TeacherSheet, hazard_heads, hazard_rows};
use noseward_drawing::{Scene, Unit, svg_file};
use noseward_link::{Format, list_to_table};
use noseward_words as words;

use super::model::Picture;
use super::{PaperDesk, PaperMsg, Sheet};
use crate::app::{Effect, Looking, Paper, State, print};
use crate::notebook::say;

/// Points of colour along a millimetre of a page, 300 to the inch, and along a pixel of a drawing.
const POINTS_PER_MM: f64 = 300.0 / 25.4;
const POINTS_PER_PX: f64 = 3.0;

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
        PaperMsg::Svg => return save_svg(state),
        PaperMsg::Png => return save_png(state),
        PaperMsg::Outline => return save_outline(state),
        PaperMsg::Table => return save_table(state),
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

/// The page or the drawing that is looked at, and what its file is called.
fn shown(state: &State, ending: &str) -> Option<(Scene, String)> {
    let desk = state.paper.as_deref()?;
    let key = desk.sheet.key();
    if let Some(scene) = desk.sheet.drawing(state) {
        return Some((scene, format!("noseward-{key}.{ending}")));
    }
    let page = desk.pages().get(desk.at())?;
    Some((page.scene.clone(), format!("noseward-{key}-{}.{ending}", desk.at() + 1)))
}

fn save_svg(state: &mut State) -> Vec<Effect> {
    let Some((scene, name)) = shown(state, "svg") else { return Vec::new() };
    save(state, name, svg_file(&scene, true).into())
}

/// Has the browser paint it.
fn save_png(state: &mut State) -> Vec<Effect> {
    let Some((scene, name)) = shown(state, "png") else { return Vec::new() };
    let scale = match scene.unit {
        Unit::Mm => POINTS_PER_MM,
        Unit::Px => POINTS_PER_PX,
    };
    if let Some(desk) = &mut state.paper {
        desk.picture = Some(Picture { scene, scale, name });
    }
    vec![Effect::Look(Looking::AtSheet)]
}

/// Tells under which name a picture was saved, if the browser painted it.
pub(crate) fn painted(state: &mut State, name: Option<&str>) -> Vec<Effect> {
    match name {
        Some(name) => say(state, false, words::paper_place_saved(name)),
        None => say(state, true, words::paper_place_no_png()),
    }
}

fn save_outline(state: &mut State) -> Vec<Effect> {
    let Some(sheet) = state.paper.as_ref().map(|desk| desk.sheet) else {
        return Vec::new();
    };
    let Some(outline) = sheet.outline(state) else { return Vec::new() };
    let name = format!("noseward-{}-outline.svg", sheet.key());
    save(state, name, svg_file(&outline, false).into())
}

/// The hazards, as spreadsheets expect a table in the language in use.
fn save_table(state: &mut State) -> Vec<Effect> {
    let has_comma = words::as_typed("0.5").contains(',');
    let format = if has_comma { Format::CommaSemicolon } else { Format::PointComma };
    let rows = std::iter::once(hazard_heads()).chain(hazard_rows());
    let name = format!("noseward-{}.csv", Sheet::Teacher(TeacherSheet::Hazards).key());
    save(state, name, list_to_table(rows, format).into())
}
