//! What is handed in to a class in files and before the camera: with the part of the class.

mod camera;
mod files;

use std::rc::Rc;

use js_sys::{Object, Uint8Array};
use wasm_bindgen::JsValue;

use super::by_name::{call, canvas, get, set};
use super::{Page, report};
use crate::app::Looking;
use crate::places::class::symbols::{Symbols, SymbolsNews, learn};

impl Page {
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
pub(super) fn perform(page: &Rc<Page>, looking: Looking) {
    match looking {
        Looking::AtFiles => files::take_chosen(page),
        Looking::StartCamera => camera::start(page),
        Looking::StopCamera => camera::stop(),
        Looking::AtSheet => {}
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

/// A size in pixels, by the names of its sides.
fn size(of: &JsValue, [width, height]: [&str; 2]) -> Result<(f64, f64), JsValue> {
    let side = |name| Ok::<_, JsValue>(get(of, name)?.as_f64().unwrap_or_default());
    Ok((side(width)?, side(height)?))
}
