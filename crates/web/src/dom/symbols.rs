//! What is handed in to a class in files and before the camera: with the part of the class.

mod camera;
mod files;

use std::rc::Rc;

use js_sys::{Array, Function, Object, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};

use super::{Page, report};
use crate::later::Question;
use crate::part::{self, Part};
use crate::places::class::symbols::{Looking, Symbols, SymbolsNews, learn};

/// Something for the part that reads symbols.
pub(crate) struct Look<'a> {
    page: &'a Rc<Page>,
    looking: Looking,
}

impl Page {
    /// Has the part look at something: it asks for that itself, so it is here.
    pub(super) fn look(self: &Rc<Self>, looking: Looking) {
        let look = Look { page: self, looking };
        part::call(Part::Class, &mut Question::Look(look));
    }

    /// What the state knows of symbols.
    fn of_symbols<T>(&self, ask: impl FnOnce(&Symbols) -> T) -> Option<T> {
        self.state.borrow().class.desk.as_ref().map(|desk| ask(&desk.symbols))
    }

    /// Tells the state what is found out, and performs what follows.
    fn learn(self: &Rc<Self>, news: SymbolsNews) {
        let effects = learn(&mut self.state.borrow_mut(), news);
        for effect in effects {
            report(self.perform(effect));
        }
    }
}

/// What the part does.
pub(crate) fn perform(look: &Look<'_>) {
    match look.looking {
        Looking::AtFiles => files::take_chosen(look.page),
        Looking::StartCamera => camera::start(look.page),
        Looking::StopCamera => camera::stop(),
    }
}

/// Grey values, row by row.
struct Grey {
    luma: Vec<u8>,
    width: usize,
    height: usize,
}

/// Rows of pixels that come from the browser at a time: all of a photograph would be 17 MB.
const ROWS: usize = 64;

/// The grey values of something of a size in pixels that can be drawn, no longer than so many
/// pixels.
fn grey(
    canvas: &JsValue,
    source: &JsValue,
    (width, height): (f64, f64),
    longest: f64,
) -> Result<Grey, JsValue> {
    let by = (longest / width.max(height)).min(1.0);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "up to the longest"
    )]
    let (width, height) = ((width * by) as usize, (height * by) as usize);
    let (across, down) = (JsValue::from(width as f64), JsValue::from(height as f64));
    set(canvas, "width", &across)?;
    set(canvas, "height", &down)?;
    let options = Object::new();
    // Without it each reading comes back from a graphics card.
    set(&options, "willReadFrequently", &true.into())?;
    let context = call(canvas, "getContext", &["2d".into(), options.into()])?;
    set(&context, "imageSmoothingQuality", &"high".into())?;
    // Behind what lets light through there is paper.
    set(&context, "fillStyle", &"#fff".into())?;
    let nought = JsValue::from(0.0);
    let all = [nought.clone(), nought.clone(), across.clone(), down];
    call(&context, "fillRect", &all)?;
    let [x, y, across, down] = all;
    call(&context, "drawImage", &[source.clone(), x, y, across.clone(), down])?;
    let mut luma = Vec::with_capacity(width * height);
    for from in (0..height).step_by(ROWS) {
        let rows = ROWS.min(height - from) as f64;
        let part = [nought.clone(), (from as f64).into(), across.clone(), rows.into()];
        let image = call(&context, "getImageData", &part)?;
        let pixels = Uint8Array::new(&get(&image, "data")?).to_vec();
        luma.extend(pixels.chunks_exact(4).map(grey_of));
    }
    Ok(Grey { luma, width, height })
}

/// The grey of a pixel (Rec. 601, in parts of 256).
fn grey_of(rgba: &[u8]) -> u8 {
    let [r, g, b] = [rgba[0], rgba[1], rgba[2]].map(u32::from);
    u8::try_from((77 * r + 150 * g + 29 * b) >> 8).unwrap_or(u8::MAX)
}

fn canvas(page: &Page) -> Result<JsValue, JsValue> {
    Ok(page.document.create_element("canvas")?.into())
}

// What the browser has for pictures and cameras is called by its name: each function of web_sys
// is some bytes of the script that every first visit loads.

fn get(of: &JsValue, name: &str) -> Result<JsValue, JsValue> {
    Reflect::get(of, &name.into())
}

fn set(of: &JsValue, name: &str, value: &JsValue) -> Result<bool, JsValue> {
    Reflect::set(of, &name.into(), value)
}

fn call(of: &JsValue, name: &str, with: &[JsValue]) -> Result<JsValue, JsValue> {
    let function: Function = get(of, name)?.dyn_into()?;
    Reflect::apply(&function, of, &with.iter().collect::<Array>())
}

/// A size in pixels, by the names of its sides.
fn size(of: &JsValue, [width, height]: [&str; 2]) -> Result<(f64, f64), JsValue> {
    let side = |name| Ok::<_, JsValue>(get(of, name)?.as_f64().unwrap_or_default());
    Ok((side(width)?, side(height)?))
}
