//! The only code that touches the browser: listens, performs effects, keeps.

mod address;
mod animation;
mod computer;
mod events;
mod keeping;
mod listener;
mod measure;
mod screen;
mod timer;
mod writing;

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsError, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, BlobPropertyBag, Document, HtmlAnchorElement, HtmlElement, Url, Window,
};

use crate::app::{
    self, BenchField, BenchMsg, Effect, Msg, NotebookMsg, Opening, Paper, Presses, State,
    Trial, Way,
};
use crate::later::{Ask, Call};
use crate::part;
use animation::Animation;
use events::Drag;
use keeping::Store;
use listener::Listener;
use measure::{SizeWatch, ViewWatch};
use screen::Screen;
use timer::{Frame, Timer};

/// How long after the last input the design is kept and put into the address bar.
/// Browsers bar pages that write the address too often.
const KEEP_AFTER_MS: i32 = 300;
/// How long after the last input typing counts as paused: faults are told, and the
/// result is spoken.
const PAUSE_MS: i32 = 700;

thread_local! {
    /// The page lives as long as its document.
    static PAGE: RefCell<Option<Rc<Page>>> = const { RefCell::new(None) };
}

/// The running page.
struct Page {
    window: Window,
    document: Document,
    state: RefCell<State>,
    store: Store,
    screen: Screen,
    drag: Cell<Option<Drag>>,
    /// Whether the pointer is pressed on a number field that has no focus yet.
    enters: Cell<bool>,
    presses: RefCell<Presses>,
    frame: Frame,
    animation: Animation,
    keep_timer: Timer,
    /// Whether something is to be kept as soon as it is this tab's turn.
    keep_due: Cell<bool>,
    /// The same of the units and the other choices of the view.
    view_due: Cell<bool>,
    pause_timer: Timer,
    slice_timer: Timer,
    later_timer: Timer,
    listeners: RefCell<Vec<Listener>>,
    watches: RefCell<Option<(SizeWatch, [ViewWatch; 4])>>,
}

/// Starts the page. Called once, by the script that loaded the module.
///
/// # Errors
///
/// Throws an `Error` when the document is not the page that belongs to this module.
#[wasm_bindgen]
pub fn start() -> Result<(), JsError> {
    console_error_panic_hook::set_once();
    let page = Page::open()
        .map_err(|error| JsError::new(&format!("the page could not start: {error:?}")))?;
    PAGE.with(|slot| slot.replace(Some(page)));
    Ok(())
}

/// A failure that the person can do nothing about goes to the console, for developers.
fn report<T>(result: Result<T, JsValue>) {
    if let Err(error) = result {
        web_sys::console::error_1(&error);
    }
}

impl Page {
    fn open() -> Result<Rc<Self>, JsValue> {
        let window = web_sys::window().ok_or("there is no window")?;
        let document = window.document().ok_or("there is no document")?;
        let store = Store::new(window.clone());
        let state = State::new(&store.opening(Opening {
            hash: address::hash(&window),
            afresh: address::asks_afresh(&window),
            address: address::is_served(&window).then(|| address::base(&window)),
            computer: computer::look(&window),
            still: animation::is_unwanted(&window),
            ..Opening::default()
        }));
        let page = Rc::new_cyclic(|weak: &std::rc::Weak<Self>| {
            let call = |does: fn(&Rc<Self>)| {
                let weak = weak.clone();
                move || {
                    if let Some(page) = weak.upgrade() {
                        does(&page);
                    }
                }
            };
            Self {
                screen: Screen::new(document.clone()),
                state: RefCell::new(state),
                store,
                drag: Cell::new(None),
                enters: Cell::default(),
                presses: RefCell::default(),
                frame: Frame::new(window.clone(), call(Self::draw)),
                animation: Animation::new(window.clone(), call(Self::tick)),
                keep_due: Cell::new(false),
                view_due: Cell::new(false),
                keep_timer: Timer::new(window.clone(), call(Self::keep_now)),
                pause_timer: Timer::new(window.clone(), call(Self::pause)),
                later_timer: Timer::new(window.clone(), call(Self::draw_later)),
                slice_timer: Timer::new(
                    window.clone(),
                    call(|page| page.send(Msg::Slice)),
                ),
                listeners: RefCell::default(),
                watches: RefCell::default(),
                window,
                document,
            }
        });
        let hash = address::hash(&page.window);
        let afresh = address::asks_afresh(&page.window);
        let is_notebook = app::is_for_notebook(&hash);
        page.measure();
        page.screen.show("start-menu", &crate::views::start_menu().into_string())?;
        page.rebuild_steps()?;
        page.draw();
        page.draw_later();
        page.show_bench()?;
        let listeners = events::listen(&page)?;
        page.listeners.replace(listeners);
        let sizes = SizeWatch::new(&page, ["sheet", "air"])?;
        let views = [
            ViewWatch::new(&page, "air", |page, seen| {
                page.send(Msg::GraphsInView(seen));
            })?,
            ViewWatch::new(&page, "swing", |page, seen| {
                page.send(Msg::Bench(BenchMsg::InView(seen)));
            })?,
            ViewWatch::new(&page, "notebook", |page, seen| {
                page.send(Msg::Notebook(NotebookMsg::InView(seen)));
            })?,
            ViewWatch::new(&page, "steps", |page, seen| {
                report(page.screen.mark_typing(seen));
            })?,
        ];
        page.watches.replace(Some((sizes, views)));
        if !is_notebook {
            page.put_into_address_unless_damaged();
        }
        page.screen.fold("paper")?;
        let (slots, open) = page.store.notebooks();
        page.send(Msg::Notebook(NotebookMsg::Kept { slots, open, afresh }));
        if is_notebook && !afresh {
            page.send(Msg::Notebook(NotebookMsg::OpenLink(hash)));
        }
        page.document
            .document_element()
            .ok_or("the document is empty")?
            .set_attribute("data-state", "ready")?;
        if let Some(performance) = page.window.performance() {
            // A mark is for measuring only: the page does not need it.
            let _ = performance.mark("ready");
        }
        Ok(page)
    }

    /// Lets a message change the state, then performs what follows. No borrow is held
    /// while the browser is told anything, since it may call back.
    fn send(self: &Rc<Self>, msg: Msg) {
        let effects = app::update(&mut self.state.borrow_mut(), msg);
        for effect in effects {
            report(self.perform(effect));
        }
    }

    fn perform(self: &Rc<Self>, effect: Effect) -> Result<(), JsValue> {
        match effect {
            Effect::Redraw => self.frame.request(),
            Effect::RebuildSteps => self.rebuild_steps()?,
            Effect::LoadLater => {
                let page = Rc::clone(self);
                part::load_later(move |done| {
                    page.send(Msg::Notebook(NotebookMsg::Loaded(done)));
                });
            }
            Effect::RebuildNotebook => self.rebuild_notebook()?,
            Effect::SetNote(id, text) => self.screen.set_value(&id, &text)?,
            Effect::MarkNote { id, is_wrong } => self.screen.mark(&id, is_wrong)?,
            Effect::KeepNotebook { slot, text } => {
                self.put_away(slot, Some(text))?;
            }
            Effect::DropNotebook(slot) => self.put_away(slot, None)?,
            Effect::CopyText(text) => self.copy(text.clone(), move |done| {
                Msg::Notebook(NotebookMsg::Copied { text, done })
            }),
            Effect::SetValue(field, text) => {
                self.screen.set_value(&field.to_string(), &text)?;
            }
            Effect::SetBench(field, text) => {
                self.screen.set_value(&format!("swing:{}", field.name()), &text)?;
            }
            Effect::ShowBench => self.show_bench()?,
            Effect::DrawMotion => self.draw_moving()?,
            Effect::Animate => self.animation.request(),
            Effect::Focus(id) => {
                // The outputs may hold the element, so they are brought up to date first.
                self.draw();
                self.draw_later();
                self.screen.focus(&id)?;
            }
            Effect::Show(id) => self.screen.show_place(id)?,
            Effect::Slice => self.slice_timer.restart(0),
            Effect::CloseMenus => self.screen.close_menus()?,
            Effect::Keep => self.keep_timer.restart(KEEP_AFTER_MS),
            Effect::KeepView => self.ask_to_keep(&self.view_due)?,
            Effect::DeleteAll => self.delete_everything()?,
            Effect::Try(way) => computer::try_out(self, way)?,
            Effect::Print(paper) => self.print(paper)?,
            Effect::CopyLink(hash) => self.copy_link(&hash),
            Effect::Download { name, text } => self.download(&name, &text)?,
        }
        Ok(())
    }

    /// What stands in the fields of the swing bench.
    fn show_bench(&self) -> Result<(), JsValue> {
        for field in BenchField::ALL {
            let text = self.state.borrow().bench_text(field);
            self.screen.set_value(&format!("swing:{}", field.name()), &text)?;
        }
        let start_deg = self.state.borrow().bench.start_deg;
        self.screen.set_value("swing-slider", &format!("{start_deg:.0}"))
    }

    /// The pictures of the swing bench.
    fn draw_pictures(&self) -> Result<(), JsValue> {
        let call = app::call(&mut self.state.borrow_mut(), Ask::Pictures);
        for (id, picture) in &call.pictures {
            self.screen.show_drawing(id, picture)?;
        }
        self.show_bench_time(&call)
    }

    /// What moves in them, and nothing else: this happens in every frame of the motion.
    fn draw_moving(&self) -> Result<(), JsValue> {
        let call = app::call(&mut self.state.borrow_mut(), Ask::Moving);
        for (id, key, markup) in &call.groups {
            self.screen.show_group(id, key, markup)?;
        }
        self.show_bench_time(&call)
    }

    fn show_bench_time(&self, call: &Call) -> Result<(), JsValue> {
        self.screen.show("swing-time", call.text.as_deref().unwrap_or_default())
    }

    fn tick(self: &Rc<Self>) {
        let passed_s = self.animation.passed_s();
        self.send(Msg::Bench(BenchMsg::Tick(passed_s)));
        self.animation.rest_unless_asked();
    }

    fn rebuild_steps(&self) -> Result<(), JsValue> {
        let markup = crate::views::steps(&self.state.borrow()).into_string();
        self.screen.rebuild_steps(&markup)
    }

    fn rebuild_notebook(&self) -> Result<(), JsValue> {
        let call = app::call(&mut self.state.borrow_mut(), Ask::Forms);
        for form in call.regions {
            self.screen.rebuild(form.id, &form.markup)?;
        }
        if self.state.borrow().desk.in_view {
            self.draw_notebook();
        }
        Ok(())
    }

    fn draw_notebook(&self) {
        self.show_later(Ask::Notebook);
    }

    fn draw(self: &Rc<Self>) {
        let outputs = crate::views::outputs(&self.state.borrow());
        report(self.screen.draw(outputs));
        self.later_timer.restart(0);
        self.pause_timer.restart(PAUSE_MS);
    }

    /// What stands further down the page, once the frame is on the screen.
    fn draw_later(self: &Rc<Self>) {
        self.later_timer.stop();
        report(self.note_for_crash());
        self.show_later(Ask::Crash);
        let has_bench = self.state.borrow().bench.in_view;
        for ask in [Ask::Below, Ask::Bench] {
            self.show_later(ask);
        }
        for region in crate::views::soon(&self.state.borrow()) {
            report(self.screen.show(region.id, &region.markup));
        }
        if has_bench {
            report(self.draw_pictures());
        }
        if self.state.borrow().desk.in_view {
            self.draw_notebook();
        }
        self.show_later(Ask::Computer);
    }

    /// What the later part has to show of something.
    fn show_later(&self, ask: Ask) {
        let call = app::call(&mut self.state.borrow_mut(), ask);
        for region in call.regions {
            report(self.screen.show(region.id, &region.markup));
        }
    }

    /// Code and symbol of the present rocket.
    fn draw_share(self: &Rc<Self>) {
        let call = app::call(&mut self.state.borrow_mut(), Ask::Share);
        let regions = if call.regions.is_empty() {
            crate::views::share_waits(&self.state.borrow())
        } else {
            call.regions
        };
        for region in regions {
            report(self.screen.show(region.id, &region.markup));
        }
    }

    /// What is printed is all in view.
    fn prepare_print(self: &Rc<Self>) {
        report(self.screen.open_readings());
        self.send(Msg::GraphsInView(true));
        self.send(Msg::WorkOut);
        self.draw();
        self.draw_later();
        self.draw_share();
        self.draw_notebook();
    }

    fn pause(self: &Rc<Self>) {
        self.send(Msg::Paused);
        self.send(Msg::Slice);
        if self.screen.is_open("share") {
            self.draw_share();
        }
        let words = crate::views::spoken(&self.state.borrow());
        report(self.screen.speak(&words));
    }

    /// Tells the state how large the sheet and the graphs are now, if that has changed.
    fn measure(self: &Rc<Self>) {
        let size = |id: &str| {
            let element = self.document.get_element_by_id(id);
            let (width, height) =
                element.map_or((0, 0), |e| (e.client_width(), e.client_height()));
            (f64::from(width), f64::from(height))
        };
        let (sheet_px, (graph_px, _)) = (size("sheet"), size("air"));
        let known = {
            let state = self.state.borrow();
            (state.sheet_px, state.graph_px)
        };
        if known != (sheet_px, graph_px) {
            let (width_px, height_px) = sheet_px;
            let window_px = computer::window_px(&self.window);
            self.send(Msg::Resized { width_px, height_px, graph_px, window_px });
        }
    }

    /// Prints the rocket or the lesson. Either is marked on the document for the style
    /// sheet.
    fn print(self: &Rc<Self>, paper: Paper) -> Result<(), JsValue> {
        self.screen.mark_paper(match paper {
            Paper::Rocket => None,
            Paper::Lesson => Some("lesson"),
            Paper::Swing => Some("swing"),
            Paper::Notebook => Some("notebook"),
        })?;
        self.window.print()
    }

    fn copy_link(self: &Rc<Self>, hash: &str) {
        let link = self.state.borrow().link_to(hash);
        self.copy(link.clone(), move |done| Msg::Copied { link, done });
    }

    fn try_copying(self: &Rc<Self>) {
        self.copy("Noseward".to_owned(), |done| {
            Msg::Tried(Way::Copy, if done { Trial::Works } else { Trial::Barred })
        });
    }

    /// Puts a text on the clipboard and tells how that went.
    fn copy(self: &Rc<Self>, text: String, told: impl FnOnce(bool) -> Msg + 'static) {
        let navigator = self.window.navigator();
        // Absent on pages that are not served securely, whatever the types say.
        let absent = js_sys::Reflect::get(&navigator, &"clipboard".into())
            .map_or(true, |clipboard| clipboard.is_undefined());
        if absent {
            self.send(told(false));
            return;
        }
        let written = navigator.clipboard().write_text(&text);
        let page = Rc::clone(self);
        spawn_local(async move {
            let done = JsFuture::from(written).await.is_ok();
            page.send(told(done));
        });
    }

    fn download(&self, name: &str, text: &str) -> Result<(), JsValue> {
        let options = BlobPropertyBag::new();
        options.set_type("application/json");
        let parts = js_sys::Array::of1(&text.into());
        let blob = Blob::new_with_str_sequence_and_options(&parts, &options)?;
        let address = Url::create_object_url_with_blob(&blob)?;
        let anchor: HtmlAnchorElement =
            self.document.create_element("a")?.unchecked_into();
        anchor.set_href(&address);
        anchor.set_download(name);
        anchor.unchecked_ref::<HtmlElement>().click();
        Url::revoke_object_url(&address)
    }
}
