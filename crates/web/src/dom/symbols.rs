//! Reads symbols: what the first part of the page hears, and what a part of its own does.

mod camera;
mod pictures;

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Object, Reflect};
use noseward_link::{SymbolRead, symbols_in_picture};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CanvasRenderingContext2d, DragEvent, Event, File, FileList, HtmlCanvasElement,
    HtmlInputElement,
};

use super::{Page, report};
use crate::app::{Looking, Msg, NotebookMsg, SymbolsMsg};
use crate::later::Question;
use crate::part::{self, Part};
use camera::Stream;

/// What is being read.
#[derive(Default)]
pub(super) struct Reading {
    /// Pictures that were chosen.
    files: RefCell<Vec<File>>,
    stream: RefCell<Option<Stream>>,
}

/// Something for the part that reads symbols.
pub(crate) struct Look<'a> {
    page: &'a Rc<Page>,
    looking: Looking,
}

impl Page {
    /// Has the part look at something; without it nothing is there to be looked at.
    pub(super) fn look(self: &Rc<Self>, looking: Looking) {
        if self.state.borrow().parts.is_here(Part::Symbols) {
            let look = Look { page: self, looking };
            part::call(Part::Symbols, &mut Question::Look(look));
        }
    }

    /// Files were chosen, or dropped.
    fn took(self: &Rc<Self>, list: Option<FileList>) {
        let Some(list) = list else { return };
        let files = (0..list.length()).filter_map(|i| list.get(i));
        let before = self.reading.files.borrow().len();
        self.reading.files.borrow_mut().extend(files);
        let count = self.reading.files.borrow().len() - before;
        self.tell(SymbolsMsg::Chose(count));
    }

    fn tell(self: &Rc<Self>, msg: SymbolsMsg) {
        self.send(Msg::Notebook(NotebookMsg::Symbols(msg)));
    }

    /// A chooser of pictures has other files.
    pub(super) fn chose_pictures(self: &Rc<Self>, input: &HtmlInputElement) {
        self.took(input.files());
        // So that choosing the same file again is a change again.
        input.set_value("");
    }

    /// Whether the page is seen has changed: who does not see it gives the camera back.
    pub(super) fn hides_camera(self: &Rc<Self>) {
        if self.document.hidden() && self.state.borrow().symbols.camera.is_wanted() {
            self.tell(SymbolsMsg::StopCamera);
        }
    }

    /// Something is dragged, or dropped, where pictures may be.
    pub(super) fn drags_pictures(self: &Rc<Self>, event: &Event) {
        // Otherwise the browser shows the picture in place of the page.
        event.prevent_default();
        if let Some(event) = event.dyn_ref::<DragEvent>().filter(|e| e.type_() == "drop")
        {
            self.took(event.data_transfer().and_then(|carried| carried.files()));
        }
    }
}

/// What the part does.
pub(crate) fn perform(look: &Look<'_>) {
    match look.looking {
        Looking::AtPicture => pictures::look_at_next(look.page),
        Looking::StartCamera => camera::start(look.page),
        Looking::StopCamera => camera::stop(look.page),
    }
}

/// Pixels along the longer side of what is looked at.
#[derive(Clone, Copy)]
struct Longest(f64);

/// A canvas, to get at the pixels of a picture.
fn canvas(page: &Page) -> Result<HtmlCanvasElement, JsValue> {
    Ok(page.document.create_element("canvas")?.unchecked_into())
}

/// Every symbol in a picture of a size that draws itself into a context, as wide and as high as
/// it is told.
fn symbols(
    canvas: &HtmlCanvasElement,
    (width, height): (u32, u32),
    Longest(longest): Longest,
    draw: impl FnOnce(&CanvasRenderingContext2d, f64, f64) -> Result<(), JsValue>,
) -> Result<Vec<SymbolRead>, JsValue> {
    let (width, height) = (f64::from(width), f64::from(height));
    let by = (longest / width.max(height)).min(1.0);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "up to the longest"
    )]
    let (wide, high) = ((width * by) as u32, (height * by) as u32);
    if wide == 0 || high == 0 {
        return Ok(Vec::new());
    }
    canvas.set_width(wide);
    canvas.set_height(high);
    let options = Object::new();
    // Without it each reading comes back from a graphics card.
    Reflect::set(&options, &"willReadFrequently".into(), &true.into())?;
    let context = canvas
        .get_context_with_context_options("2d", &options)?
        .ok_or("there is no canvas")?
        .unchecked_into::<CanvasRenderingContext2d>();
    let (across, down) = (f64::from(wide), f64::from(high));
    // Behind what lets light through there is paper.
    context.set_fill_style_str("#fff");
    context.fill_rect(0.0, 0.0, across, down);
    draw(&context, across, down)?;
    let pixels = context.get_image_data(0.0, 0.0, across, down)?.data();
    let grey = |rgba: &[u8]| {
        let [r, g, b] = [rgba[0], rgba[1], rgba[2]].map(u32::from);
        // Rec. 601, in parts of 256.
        u8::try_from((77 * r + 150 * g + 29 * b) >> 8).unwrap_or(u8::MAX)
    };
    let luma: Vec<u8> = pixels.chunks_exact(4).map(grey).collect();
    Ok(symbols_in_picture(&luma, wide as usize, high as usize))
}
