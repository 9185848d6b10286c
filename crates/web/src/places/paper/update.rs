//! What a message does in the place Paper.

use noseward_drawing::paper::{DocumentInfo, pdf};
use noseward_drawing::sheets::teacher::{hazard_heads, hazard_rows};
use noseward_drawing::{Scene, Unit, svg_file};
use noseward_link::{Format, list_to_table};
use noseward_words as words;

use super::model::{Making, Picture};
use super::{PaperDesk, PaperMsg};
use crate::app::{Effect, Looking, Paper, State, print};
use crate::notebook::say;

/// Points of colour along a millimetre of a page, 300 to the inch, and along a pixel of a drawing.
const POINTS_PER_MM: f64 = 300.0 / 25.4;
const POINTS_PER_PX: f64 = 3.0;

/// What a message does.
pub(crate) fn update(state: &mut State, msg: PaperMsg) -> Vec<Effect> {
    let desk = state.paper.get_or_insert_default();
    match msg {
        PaperMsg::Choose(sheet) => {
            **desk = PaperDesk { sheet, page: 0, making: None, ..(**desk).clone() };
        }
        PaperMsg::Size(size) => desk.chosen = Some(size),
        PaperMsg::Leaf(behind) => return leaf(state, behind),
        PaperMsg::Anyway => desk.anyway = true,
        PaperMsg::Pdf { opens } => {
            desk.making = Some(Making::new(desk.sheet, opens));
            return vec![Effect::Redraw, Effect::Slice];
        }
        PaperMsg::Stop => desk.making = None,
        PaperMsg::Print => return print(Paper::Sheets),
        PaperMsg::Svg => return save_svg(state),
        PaperMsg::Png => return save_png(state),
        PaperMsg::Outline => return save_outline(state),
        PaperMsg::Table => return save_table(state),
    }
    vec![Effect::Redraw]
}

/// Makes one sheet more of a PDF, or the PDF.
pub(crate) fn make(state: &mut State) -> Vec<Effect> {
    let Some(mut desk) = state.paper.take() else { return Vec::new() };
    let size = desk.size();
    let effects = match desk.making.as_mut().map(|making| making.todo.pop()) {
        None => Vec::new(),
        Some(Some(sheet)) => {
            let pages = sheet.pages(state, size).unwrap_or_default();
            if let Some(making) = &mut desk.making {
                making.pages.extend(pages);
            }
            vec![Effect::Redraw, Effect::Slice]
        }
        Some(None) => {
            let Some(Making { pages, opens, .. }) = desk.making.take() else {
                return Vec::new();
            };
            let title = desk.sheet.name().as_str();
            let language = words::language().tag;
            let bytes = pdf(&pages, &DocumentInfo { title, language });
            let name = format!("noseward-{}.pdf", desk.sheet.key());
            if opens {
                vec![Effect::Hand { name, bytes, opens }, Effect::Redraw]
            } else {
                save(state, name, bytes)
            }
        }
    };
    state.paper = Some(desk);
    effects
}

/// To another page, as far as there are some.
fn leaf(state: &mut State, behind: bool) -> Vec<Effect> {
    let desk = state.paper_desk().into_owned();
    let pages = desk.sheet.pages(state, desk.size()).unwrap_or_default();
    let at = desk.page_of(&pages);
    if let Some(desk) = &mut state.paper {
        desk.page = if behind { at + 1 } else { at.saturating_sub(1) };
        desk.page = desk.page_of(&pages);
    }
    vec![Effect::Redraw]
}

fn save(state: &mut State, name: String, bytes: Vec<u8>) -> Vec<Effect> {
    let mut effects = say(state, false, words::paper_place_saved(&name));
    effects.insert(0, Effect::Hand { name, bytes, opens: false });
    effects
}

/// The page or the drawing that is looked at, and what its file is called.
fn shown(state: &State, ending: &str) -> Option<(Scene, String)> {
    let desk = state.paper_desk();
    let key = desk.sheet.key();
    if let Some(scene) = desk.sheet.drawing(state) {
        return Some((scene, format!("noseward-{key}.{ending}")));
    }
    let pages = desk.sheet.pages(state, desk.size())?;
    let at = desk.page_of(&pages);
    let page = pages.into_iter().nth(at)?;
    Some((page.scene, format!("noseward-{key}-{}.{ending}", at + 1)))
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
    let sheet = state.paper_desk().sheet;
    let Some(outline) = sheet.outline(state) else { return Vec::new() };
    let name = format!("noseward-{}-outline.svg", sheet.key());
    save(state, name, svg_file(&outline, false).into())
}

/// The hazards, as spreadsheets expect a table in the language in use.
fn save_table(state: &mut State) -> Vec<Effect> {
    let has_comma = words::as_typed("0.5").contains(',');
    let format = if has_comma { Format::CommaSemicolon } else { Format::PointComma };
    let rows = std::iter::once(hazard_heads()).chain(hazard_rows());
    let name = format!("noseward-{}.csv", state.paper_desk().sheet.key());
    save(state, name, list_to_table(rows, format).into())
}
