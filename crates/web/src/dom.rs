//! The only code that touches the browser: listens, performs effects, keeps.

mod address;
mod animation;
mod by_name;
mod computer;
mod events;
mod keeping;
mod language;
mod listener;
mod look;
mod measure;
mod morph;
mod picture;
mod screen;
mod symbols;
mod timer;
mod words_width;
mod writing;

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use noseward_link as link;
use noseward_words::{self as words, Choice};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, BlobPropertyBag, Document, Event, HtmlAnchorElement, HtmlElement, Url, Window,
};

use crate::app::{
    self, Capability, CapabilityProbe, Effect, Msg, NotebookMsg, Opening, Paper, Place,
    Presses, State,
};
use crate::later::Ask;
use crate::part::{self, Part};
use crate::places::class::ClassMsg;
use crate::places::swing::SwingMsg;
use crate::places::{PlaceMsg, rocket};
use crate::shell::{self, marked::said};
use animation::Animation;
use events::Drag;
use keeping::Store;
use listener::Listener;
pub(crate) use look::{Look, look_at_symbols, paint};
use measure::SizeWatch;
use screen::Screen;
use timer::{Frame, Timer};

/// How long after the last input the design is kept and put into the address bar.
/// Browsers bar pages that write the address too often.
const KEEP_AFTER_MS: i32 = 300;
/// How long after the last input typing counts as paused: faults are told, and the
/// result is spoken.
const PAUSE_MS: i32 = 700;
/// How often a timer looks at the clock.
const CLOCK_MS: i32 = 250;
/// How long a message stands that only says what was done.
const PASSING_MS: i32 = 8000;

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
    /// Whether something has another size than when it was measured.
    measure_due: Cell<bool>,
    /// Whether something is to be kept as soon as it is this tab's turn.
    keep_due: Cell<bool>,
    /// The same of the units and the other choices of the view.
    view_due: Cell<bool>,
    pause_timer: Timer,
    slice_timer: Timer,
    clock_timer: Timer,
    later_timer: Timer,
    /// Takes a message away that only says what was done.
    passing_timer: Timer,
    passing: RefCell<Option<app::Notice>>,
    listeners: RefCell<Vec<Listener>>,
    sizes: RefCell<Option<SizeWatch>>,
}

/// Whether the page is to speak another language than English, whose sentences are to be
/// fetched before it starts. Which one, the attribute `data-table` of the document says.
///
/// # Errors
///
/// Throws what the browser says when there is no document.
#[wasm_bindgen]
pub fn wish() -> Result<bool, JsValue> {
    console_error_panic_hook::set_once();
    let (window, document) = surroundings()?;
    let speech = language::opening(&window, &document, &Store::new(window.clone()));
    let awaited = speech.awaited();
    awaited.map_or(Ok(false), |key| language::want(&document, key).map(|()| true))
}

/// Starts the page, with the sentences that [`wish`] wanted if they came. Called once, by the
/// script that loaded the module.
///
/// # Errors
///
/// Throws what the browser says when the document is not the page that belongs to this module.
#[wasm_bindgen]
pub fn start(table: Option<Vec<u8>>) -> Result<(), JsValue> {
    console_error_panic_hook::set_once();
    words_width::measure_words();
    // As it comes: what shows a value of the browser's is a kilobyte of script.
    let page = Page::open(table)?;
    PAGE.with(|slot| slot.replace(Some(page)));
    Ok(())
}

/// Takes the sentences that the page asked for while it runs; none where they did not come.
#[wasm_bindgen(js_name = tableCame)]
pub fn table_came(table: Option<Vec<u8>>) {
    let page = PAGE.with(|slot| slot.borrow().clone());
    if let Some(page) = page {
        page.send(Msg::TableCame(table));
    }
}

/// The markup of a sentence that stands in the page from the start, by its number; none where
/// that is to be English.
#[wasm_bindgen]
#[must_use]
pub fn written(id: u16) -> Option<String> {
    words::written(id).map(|words| said(words).into_string())
}

fn surroundings() -> Result<(Window, Document), JsValue> {
    let window = web_sys::window().ok_or("there is no window")?;
    let document = window.document().ok_or("there is no document")?;
    Ok((window, document))
}

/// A failure that the person can do nothing about goes to the console, for developers.
fn report<T>(result: Result<T, JsValue>) {
    if let Err(error) = result {
        web_sys::console::error_1(&error);
    }
}

/// What the browser's tab says.
fn title(place: Place) -> String {
    format!("{} · Noseward", place.heading())
}

impl Page {
    fn open(table: Option<Vec<u8>>) -> Result<Rc<Self>, JsValue> {
        let (window, document) = surroundings()?;
        let store = Store::new(window.clone());
        let mut speech = language::opening(&window, &document, &store);
        let unspoken = speech.take(table).err();
        let mut state = State::new(&store.opening(Opening {
            hash: address::hash(&window),
            afresh: address::asks_afresh(&window),
            address: address::is_served(&window).then(|| address::base(&window)),
            computer: computer::look(&window),
            still: animation::is_unwanted(&window),
            place: address::place(&window),
            lot: js_sys::Math::random(),
            today: computer::today(),
            speech,
            ..Opening::default()
        }));
        state.notice = state.notice.or(unspoken.map(app::language_failed));
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
                measure_due: Cell::new(false),
                keep_due: Cell::new(false),
                view_due: Cell::new(false),
                keep_timer: Timer::new(window.clone(), call(Self::keep_now)),
                pause_timer: Timer::new(window.clone(), call(Self::pause)),
                passing: RefCell::default(),
                passing_timer: Timer::new(
                    window.clone(),
                    call(|page| page.send(Msg::Passed)),
                ),
                later_timer: Timer::new(window.clone(), call(Self::draw_later)),
                slice_timer: Timer::new(
                    window.clone(),
                    call(|page| page.send(Msg::Slice)),
                ),
                clock_timer: Timer::new(
                    window.clone(),
                    call(|page| {
                        let now_s = js_sys::Date::now() / 1000.0;
                        page.send(PlaceMsg::Class(ClassMsg::Clock(now_s)).into());
                    }),
                ),
                listeners: RefCell::default(),
                sizes: RefCell::default(),
                window,
                document,
            }
        });
        let hash = address::hash(&page.window);
        let afresh = address::asks_afresh(&page.window);
        let is_notebook = link::may_be_more(&hash);
        if page.state.borrow().speech.spoken() != Choice::ENGLISH {
            page.speak()?;
        }
        page.measure();
        page.draw();
        page.draw_later();
        let listeners = events::listen(&page)?;
        page.listeners.replace(listeners);
        page.sizes.replace(Some(SizeWatch::new(&page, ["sheet", "place"])?));
        let place = page.state.borrow().place;
        if place != Place::Rocket {
            page.document.set_title(&title(place));
        }
        if !is_notebook {
            page.put_into_address_unless_damaged();
        }
        report(page.ask_to_keep(&page.view_due));
        let (slots, open) = page.store.notebooks();
        page.send(Msg::Notebook(NotebookMsg::Kept { slots, open, afresh }));
        if is_notebook && !afresh {
            page.send(Msg::Notebook(NotebookMsg::OpenLink(hash)));
        }
        // The lesson on paper stands open for whoever never gets here.
        page.screen.fold("paper")?;
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
            Effect::Arrive { step } => self.arrive(step)?,
            Effect::Load(part) => {
                let page = Rc::clone(self);
                part::load(part, move |done| {
                    page.send(Msg::Notebook(NotebookMsg::Loaded(part, done)));
                    let state = page.state.borrow();
                    if state.has_all_parts() {
                        // The script that keeps the page for later waits for that.
                        let whose = if state.leads { "leaders" } else { "pupils" };
                        report(page.screen.mark("data-parts", whose));
                    }
                });
            }
            Effect::KeepNotebook { slot, text } => {
                self.put_away(slot, Some(text))?;
            }
            Effect::DropNotebook(slot) => self.put_away(slot, None)?,
            Effect::Copy { text, is_link } => {
                self.copy(text.clone(), move |done| Msg::Copied { text, is_link, done });
            }
            Effect::DrawMotion => self.draw_moving()?,
            Effect::Animate => self.animation.request(),
            Effect::Clock => self.clock_timer.restart(CLOCK_MS),
            Effect::Focus(id) => {
                // The outputs may hold the element, so they are brought up to date first.
                self.draw();
                self.draw_later();
                self.screen.focus(&id)?;
            }
            Effect::Speak => {
                self.speak()?;
                address::rename_language(
                    &self.window,
                    self.state.borrow().speech.spoken().key,
                );
            }
            Effect::FetchTable(key) => language::fetch(&self.document, key)?,
            Effect::Look(looking) => self.look(looking),
            Effect::Slice => self.slice_timer.restart(0),
            Effect::CloseMenus => self.screen.close_menus()?,
            Effect::Keep => self.keep_timer.restart(KEEP_AFTER_MS),
            Effect::KeepView => self.ask_to_keep(&self.view_due)?,
            Effect::DeleteAll => self.delete_everything()?,
            Effect::Try(way) => computer::try_out(self, way)?,
            Effect::Print(paper) => self.print(paper)?,
            Effect::PrintPlace => self.window.print()?,
            Effect::Download { name, text } => self.hand(&name, &text.into(), false)?,
            Effect::Hand { name, bytes, opens } => {
                self.hand(&name, &js_sys::Uint8Array::from(&bytes[..]).into(), opens)?;
            }
        }
        Ok(())
    }

    /// What stands in the page from the start follows the language, and so does its title.
    fn speak(&self) -> Result<(), JsValue> {
        let (choice, place) = {
            let state = self.state.borrow();
            (state.speech.spoken(), state.place)
        };
        self.document.set_title(&title(place));
        self.screen.mark("lang", choice.language.tag)?;
        self.screen.mark("dir", choice.language.dir)?;
        // What stands in the page from the start is put into it by the script that loaded
        // this module, which asks for each sentence by its number.
        self.document.dispatch_event(&Event::new("noseward-speak")?)?;
        Ok(())
    }

    /// What moves in the pictures of the swing test, and nothing else: this happens in every
    /// frame of the motion.
    fn draw_moving(&self) -> Result<(), JsValue> {
        let call = app::call(&mut self.state.borrow_mut(), Ask::Moving);
        for (id, key, markup) in &call.groups {
            self.screen.show_group(id, key, markup)?;
        }
        match call.text {
            Some(time) if !call.groups.is_empty() => self.screen.say("swing-time", &time),
            _ => Ok(()),
        }
    }

    fn tick(self: &Rc<Self>) {
        let passed_s = self.animation.passed_s();
        self.send(SwingMsg::Tick(passed_s).into());
        self.animation.rest_unless_asked();
    }

    /// What a keystroke brings up to date: the drawing and what is told beside it.
    fn draw(self: &Rc<Self>) {
        if self.measure_due.take() {
            self.measure();
        }
        report(self.draw_first());
        self.later_timer.restart(0);
        self.pause_timer.restart(PAUSE_MS);
    }

    fn draw_first(&self) -> Result<(), JsValue> {
        let (place, has_drawing, big, stale, drawing, regions, passes) = {
            let state = self.state.borrow();
            let has_drawing = state.has_drawing();
            let drawing = has_drawing.then(|| shell::drawing(&state));
            let passes = state.notice.clone().filter(app::Notice::is_passing);
            let regions = shell::first(&state);
            (
                state.place,
                has_drawing,
                state.big,
                state.is_stale(),
                drawing.flatten(),
                regions,
                passes,
            )
        };
        self.screen.mark("data-place", place.key())?;
        self.screen.mark("data-drawing", shell::pressed(has_drawing))?;
        self.screen.mark("data-big", shell::pressed(big))?;
        self.screen.mark("data-stale", shell::pressed(stale))?;
        if let Some(drawing) = drawing {
            self.screen.show_drawing("sheet", &drawing)?;
        } else if has_drawing {
            self.screen.show("sheet", &shell::nothing_drawn().into_string())?;
        }
        if self.passing.replace(passes.clone()) != passes && passes.is_some() {
            self.passing_timer.restart(PASSING_MS);
        }
        regions.iter().try_for_each(|region| self.screen.show(&region.id, &region.markup))
    }

    /// The place and what leads from it, once the frame is on the screen.
    fn draw_later(self: &Rc<Self>) {
        self.later_timer.stop();
        report(self.note_for_crash());
        self.show_later(Ask::Crash);
        let (regions, place) = {
            let state = self.state.borrow();
            (shell::then(&state), state.place)
        };
        for region in regions {
            report(self.screen.show(&region.id, &region.markup));
        }
        let regions = match place {
            Place::Rocket => rocket::regions(&self.state.borrow()),
            _ => {
                let call = app::call(&mut self.state.borrow_mut(), Ask::Place(place));
                for effect in call.effects {
                    report(self.perform(effect));
                }
                if call.regions.is_empty() {
                    shell::waiting(&self.state.borrow())
                } else {
                    call.regions
                }
            }
        };
        report(self.screen.show_regions("place-regions", &regions));
        self.show_later(Ask::InWords);
    }

    /// What the later part has to show of something.
    fn show_later(&self, ask: Ask) {
        let call = app::call(&mut self.state.borrow_mut(), ask);
        for region in call.regions {
            report(self.screen.show(&region.id, &region.markup));
        }
    }

    /// Another place is on the screen: in the address, in the title, with the focus on its
    /// heading and the window at its top.
    fn arrive(self: &Rc<Self>, step: bool) -> Result<(), JsValue> {
        let (place, hash) = {
            let state = self.state.borrow();
            let there = address::hash(&self.window);
            // A link that is still to be opened stays in the address until then.
            let hash = if state.desk.is_to_open(&there) {
                there.trim_start_matches('#').to_owned()
            } else {
                link::hash(&state.record())
            };
            (state.place, hash)
        };
        address::go(&self.window, place, &hash, step);
        self.document.set_title(&title(place));
        self.draw();
        self.draw_later();
        self.window.scroll_to_with_x_and_y(0.0, 0.0);
        self.screen.focus("place-title")
    }

    /// Fills the sheet of paper that is printed; all that is on it is worked out first.
    fn prepare_print(self: &Rc<Self>, paper: Paper) {
        self.send(Msg::Printing(Some(paper)));
        self.draw();
        self.draw_later();
        self.show_later(Ask::Paper(paper));
        report(self.screen.mark(
            "data-paper",
            match paper {
                Paper::Rocket => "rocket",
                Paper::Lesson => "lesson",
                Paper::Swing => "swing",
                Paper::Notebook => "notebook",
                Paper::Sheets => "sheets",
                Paper::Group | Paper::Groups | Paper::Class => "report",
            },
        ));
    }

    /// The browser prints by itself: the rocket, or the place as it is.
    fn browser_prints(self: &Rc<Self>) {
        let (is_asked, is_rocket) = {
            let state = self.state.borrow();
            // Before its sheet can be filled, the place is printed as it is.
            let is_here = state.parts.is_here(Part::Files);
            (state.printing.is_some(), state.place == Place::Rocket && is_here)
        };
        if is_rocket && !is_asked {
            self.prepare_print(Paper::Rocket);
        }
    }

    fn printed(self: &Rc<Self>) {
        self.send(Msg::Printing(None));
        report(self.screen.unmark("data-paper"));
        report(self.screen.show("sheet-of-paper", ""));
    }

    fn pause(self: &Rc<Self>) {
        self.send(Msg::Paused);
        self.send(Msg::Slice);
        let words = shell::spoken(&self.state.borrow());
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
        let known = {
            let state = self.state.borrow();
            (state.sheet_px, state.graph_px)
        };
        let (sheet_px, (graph_px, _)) = (size("sheet"), size("place"));
        // Beside a place without a drawing there is no sheet.
        let sheet_px = if sheet_px.0 > 0.0 { sheet_px } else { known.0 };
        if known != (sheet_px, graph_px) {
            let (width_px, height_px) = sheet_px;
            let window_px = computer::window_px(&self.window);
            self.send(Msg::Resized { width_px, height_px, graph_px, window_px });
        }
    }

    /// Prints a sheet.
    fn print(self: &Rc<Self>, paper: Paper) -> Result<(), JsValue> {
        self.prepare_print(paper);
        self.window.print()
    }

    fn try_copying(self: &Rc<Self>) {
        self.copy("Noseward".to_owned(), |done| {
            Msg::Tried(
                Capability::Copy,
                if done { CapabilityProbe::Works } else { CapabilityProbe::Barred },
            )
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

    /// Gives the person a file, or shows it in a tab of its own.
    fn hand(&self, name: &str, content: &JsValue, opens: bool) -> Result<(), JsValue> {
        let options = BlobPropertyBag::new();
        options.set_type(match name.rsplit('.').next() {
            Some("csv") => "text/csv",
            Some("txt") => "text/plain",
            Some("pdf") => "application/pdf",
            Some("svg") => "image/svg+xml",
            Some("png") => "image/png",
            _ => "application/json",
        });
        let parts = js_sys::Array::of1(content);
        let blob = Blob::new_with_str_sequence_and_options(&parts, &options)?;
        let address = Url::create_object_url_with_blob(&blob)?;
        let anchor: HtmlAnchorElement =
            self.document.create_element("a")?.unchecked_into();
        anchor.set_href(&address);
        if opens {
            anchor.set_attribute("target", "_blank")?;
        } else {
            anchor.set_download(name);
        }
        anchor.unchecked_ref::<HtmlElement>().click();
        // A tab reads it later.
        if opens { Ok(()) } else { Url::revoke_object_url(&address) }
    }
}
