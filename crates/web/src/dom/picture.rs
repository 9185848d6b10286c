//! A drawing as a picture in points of colour: the browser paints it from what it is made of. The
//! page lets in no pictures from elsewhere, so there is no way through the drawing's SVG.

use std::rc::Rc;

use js_sys::Array;
use noseward_drawing::{Anchor, Colour, Item, Path, Point, Scene, Style, TEXT_PX};
use noseward_words::isolated;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::Event;

use super::by_name::{call, canvas, set};
use super::{Page, report};
use crate::places::paper::{Picture, painted};

/// Letters are painted from this size: some browsers do small ones poorly.
const LETTERS_PX: f64 = 100.0;
const BOLD: &str = "bold 100px Arial, Helvetica, Liberation Sans, sans-serif";
const PLAIN: &str = "100px Arial, Helvetica, Liberation Sans, sans-serif";
/// How much of what lies behind an area that one sees through is covered; as in SVG.
const CLEAR: f64 = 0.6;

/// Paints what the place Paper has put ready, and gives it to the person.
pub(super) fn save(page: &Rc<Page>) {
    let picture = {
        let mut state = page.state.borrow_mut();
        state.paper.as_mut().and_then(|desk| desk.picture.take())
    };
    if picture.is_some_and(|picture| begin(page, picture).is_err()) {
        tell(page, None);
    }
}

/// Tells the state under which name it was saved, if it was.
fn tell(page: &Rc<Page>, name: Option<&str>) {
    let effects = painted(&mut page.state.borrow_mut(), name);
    for effect in effects {
        report(page.perform(effect));
    }
}

fn begin(page: &Rc<Page>, picture: Picture) -> Result<(), JsValue> {
    let Picture { scene, scale, name } = picture;
    let canvas = canvas(page)?;
    let [width, height] = [scene.width, scene.height].map(|side| (side * scale).round());
    set(&canvas, "width", &width.into())?;
    set(&canvas, "height", &height.into())?;
    let brush = Brush(call(&canvas, "getContext", &["2d".into()])?);
    brush.set("fillStyle", "#fff")?;
    brush.does("fillRect", [0.0, 0.0, width, height])?;
    brush.does("scale", [scale, scale])?;
    // Sharp corners as SVG has them.
    set(&brush.0, "miterLimit", &4.0.into())?;
    brush.scene(&scene)?;
    let page = Rc::clone(page);
    // What comes is the picture, or nothing. Only for events is there a way in already.
    let made = Closure::<dyn Fn(Event)>::new(move |made: Event| {
        let made = JsValue::from(made);
        let is_saved = !made.is_null() && page.hand(&name, &made, false).is_ok();
        tell(&page, is_saved.then_some(&*name));
    });
    let call = call(&canvas, "toBlob", &[made.as_ref().clone()]);
    // The browser calls it later.
    made.forget();
    call.map(|_| ())
}

/// What paints on a canvas.
struct Brush(JsValue);

impl Brush {
    fn set(&self, name: &str, words: &str) -> Result<bool, JsValue> {
        set(&self.0, name, &words.into())
    }

    fn does<const N: usize>(&self, name: &str, with: [f64; N]) -> Result<(), JsValue> {
        call(&self.0, name, &with.map(JsValue::from)).map(|_| ())
    }

    fn scene(&self, scene: &Scene) -> Result<(), JsValue> {
        scene.groups.iter().try_for_each(|group| self.items(&group.items, scene.width))
    }

    fn items(&self, items: &[Item], width: f64) -> Result<(), JsValue> {
        items.iter().try_for_each(|item| self.item(item, width))
    }

    fn item(&self, item: &Item, width: f64) -> Result<(), JsValue> {
        match item {
            Item::Path { path, style } => {
                self.trace(path)?;
                self.paint(style)
            }
            Item::Dot { centre: Point { x, y }, radius, style } => {
                self.does("beginPath", [])?;
                self.does("arc", [*x, *y, *radius, 0.0, std::f64::consts::TAU])?;
                self.paint(style)
            }
            Item::Text { .. } => self.within(|| self.text(item, width)),
            Item::Placed { at, scale, turned_deg, scene } => self.within(|| {
                self.does("translate", [at.x, at.y])?;
                self.does("rotate", [turned_deg.to_radians()])?;
                self.does("scale", [*scale, *scale])?;
                self.scene(scene)
            }),
            Item::Part { items, .. } => self.items(items, width),
            // Nobody takes hold of a picture.
            Item::Grip { .. } => Ok(()),
        }
    }

    /// Paints something, and then everything is measured as before.
    fn within(&self, paint: impl FnOnce() -> Result<(), JsValue>) -> Result<(), JsValue> {
        self.does("save", [])?;
        paint()?;
        self.does("restore", [])
    }

    fn trace(&self, path: &Path) -> Result<(), JsValue> {
        self.does("beginPath", [])?;
        for (points, is_closed) in &path.runs {
            let mut pen = "moveTo";
            for point in points {
                self.does(pen, [point.x, point.y])?;
                pen = "lineTo";
            }
            if *is_closed {
                self.does("closePath", [])?;
            }
        }
        Ok(())
    }

    fn paint(&self, style: &Style) -> Result<(), JsValue> {
        if let Some(fill) = style.fill {
            let covers = if style.clear { CLEAR } else { 1.0 };
            set(&self.0, "globalAlpha", &covers.into())?;
            self.set("fillStyle", fill.paper_css())?;
            self.does("fill", [])?;
            set(&self.0, "globalAlpha", &1.0.into())?;
        }
        if let Some(stroke) = style.stroke {
            self.set("strokeStyle", stroke.paper_css())?;
            set(&self.0, "lineWidth", &style.width.into())?;
            let dashes: Array =
                style.dashes.iter().map(|&dash| JsValue::from(dash)).collect();
            call(&self.0, "setLineDash", &[dashes.into()])?;
            self.does("stroke", [])?;
        }
        Ok(())
    }

    /// One line of words, in a picture of some width: those that would cross its edge are squeezed.
    fn text(&self, item: &Item, width: f64) -> Result<(), JsValue> {
        let Item::Text { at, anchor, words, colour, bold, size } = item else {
            return Ok(());
        };
        let (align, room) = match anchor {
            Anchor::Start => ("left", width - at.x),
            Anchor::Middle => ("center", 2.0 * at.x.min(width - at.x)),
            Anchor::End => ("right", at.x),
        };
        let by = size / LETTERS_PX;
        self.does("translate", [at.x, at.y])?;
        self.does("scale", [by, by])?;
        self.set("font", if *bold { BOLD } else { PLAIN })?;
        self.set("fillStyle", Colour::paper_css(*colour))?;
        self.set("textAlign", align)?;
        let mut with: Vec<JsValue> = vec![isolated(words).into(), 0.0.into(), 0.0.into()];
        if *size == TEXT_PX {
            with.push((room.max(0.0) / by).into());
        }
        call(&self.0, "fillText", &with).map(|_| ())
    }
}
