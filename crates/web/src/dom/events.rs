//! From browser events to messages: one listener for each kind of event, on the document.

use std::rc::Rc;

use noseward_link as link;
use noseward_stability::{Component, Field, Quantity, Resolution, Units};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    CustomEvent, Element, Event, EventTarget, HtmlInputElement, HtmlSelectElement,
    HtmlTextAreaElement, KeyboardEvent, MouseEvent, PointerEvent, StorageEvent,
};

use super::keeping::Heard;
use super::listener::Listener;
use super::{Page, address, animation, computer, report};
use crate::app::{Choice, Msg, NotebookMsg, Notice, Place, place_field, read_number};
use crate::part::Part;
use crate::places::PlaceMsg;
use crate::places::class::{CLASS_FILES, ClassMsg};
use crate::places::swing::{SetupField, SwingMsg};

/// A part being dragged along the ruler.
#[derive(Clone, Copy, Debug)]
pub(super) struct Drag {
    /// The hand, or the finger, that drags.
    pointer: i32,
    part: Component,
    field: Field,
    from_mm: f64,
    from_x: i32,
    from_y: i32,
    /// Whether it has moved far enough to be more than a click.
    moving: bool,
}

/// A press that moves less than this is a click.
const CLICK_PX: i32 = 4;

/// Starts listening, for as long as the listeners live.
pub(super) fn listen(page: &Rc<Page>) -> Result<Vec<Listener>, JsValue> {
    type Heard = fn(&Rc<Page>, &Event);
    let on_document: [(&'static str, Heard); 15] = [
        ("noseward-offline", |page, _| {
            page.send(Msg::Offline(computer::offline(&page.document)));
        }),
        ("noseward-deleted", |page, event| page.deleted(number_in(event))),
        ("noseward-keep-now", |page, _| page.keep_in_turn()),
        ("noseward-keep-last", |page, _| page.keep_at_last()),
        ("input", input),
        ("change", change),
        ("focusin", |page, event| {
            report(page.screen.close_menus_but(target(event).as_ref()));
            light(page, event);
        }),
        ("focusout", left),
        ("click", click),
        ("keydown", key),
        ("pointerover", |page, event| light(page, event)),
        ("pointerdown", press),
        ("pointermove", drag),
        ("pointerup", release),
        ("pointercancel", release),
    ];
    let on_window: [(&'static str, Heard); 5] = [
        ("storage", kept_elsewhere),
        ("afterprint", |page, _| page.printed()),
        ("beforeprint", |page, _| page.browser_prints()),
        ("popstate", |page, _| went(page)),
        ("hashchange", |page, _| {
            page.send(Msg::HashChanged(address::hash(&page.window)));
        }),
    ];
    let document: &EventTarget = page.document.as_ref();
    let window: &EventTarget = page.window.as_ref();
    let on_document =
        on_document.into_iter().map(|(kind, heard)| (document, kind, heard));
    let on_window = on_window.into_iter().map(|(kind, heard)| (window, kind, heard));
    let stillness = animation::stillness(&page.window);
    let on_query = stillness.iter().map(|query| {
        let heard: Heard = |page, _| {
            let still = animation::is_unwanted(&page.window);
            page.send(Msg::Still(still));
        };
        (query.unchecked_ref::<EventTarget>(), "change", heard)
    });
    // Some browsers heed no touch-action in a drawing. What a finger has taken hold of at
    // its pointerdown, which comes first, it does not scroll. Nor does it click then.
    let sheet = page.document.get_element_by_id("sheet");
    let on_sheet = sheet.iter().map(|sheet| {
        let heard: Heard = |page, event| {
            if page.drag.get().is_some() {
                event.prevent_default();
            }
        };
        (sheet.unchecked_ref::<EventTarget>(), "touchstart", heard)
    });
    on_document
        .chain(on_window)
        .chain(on_query)
        .chain(on_sheet)
        .map(|(target, kind, heard)| {
            let page = Rc::clone(page);
            Listener::new(target, kind, move |event| heard(&page, &event))
        })
        .collect()
}

/// The whole number that an event of our own scripts brings.
fn number_in(event: &Event) -> usize {
    let detail = event.dyn_ref::<CustomEvent>().map(CustomEvent::detail);
    let number = detail.and_then(|detail| detail.as_f64()).unwrap_or(0.0);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "saturates"
    )]
    let number = number as usize;
    number
}

fn target(event: &Event) -> Option<Element> {
    event.target()?.dyn_into().ok()
}

/// The nearest element around the target that has an attribute, with its value.
fn around(event: &Event, attribute: &str) -> Option<(Element, String)> {
    let element = target(event)?.closest(&format!("[{attribute}]")).ok()??;
    let value = element.get_attribute(attribute)?;
    Some((element, value))
}

fn field(event: &Event) -> Option<(HtmlInputElement, Field)> {
    let (element, value) = around(event, "data-field")?;
    Some((element.dyn_into().ok()?, value.parse().ok()?))
}

fn setup_field(event: &Event) -> Option<(HtmlInputElement, SetupField)> {
    let (element, value) = around(event, "data-swing")?;
    Some((element.dyn_into().ok()?, SetupField::parse(&value)?))
}

/// The field of the notebook that an event is about, and what stands in it.
fn note(event: &Event) -> Option<(String, String)> {
    let (element, field) = around(event, "data-note")?;
    let text = if let Some(input) = element.dyn_ref::<HtmlInputElement>() {
        input.value()
    } else if let Some(area) = element.dyn_ref::<HtmlTextAreaElement>() {
        area.value()
    } else {
        element.dyn_ref::<HtmlSelectElement>()?.value()
    };
    Some((field, text))
}

/// Another tab of this page has written into, or emptied, what both share.
fn kept_elsewhere(page: &Rc<Page>, event: &Event) {
    if let Some(event) = event.dyn_ref::<StorageEvent>()
        && let Some(heard) = page.store.heard(event)
    {
        let (rocket, notebook) = match heard {
            Heard::Class(text) => {
                page.send(PlaceMsg::Class(ClassMsg::Elsewhere(text)).into());
                return;
            }
            Heard::Rocket(text) => (Some(text), None),
            Heard::Notebook { slot, text, mine } => (None, Some((slot, text, mine))),
            Heard::Cleared => {
                let slot = page.state.borrow().desk.slot;
                (Some(None), Some((slot, None, None)))
            }
        };
        if let Some(text) = rocket {
            page.send(Msg::KeptElsewhere(text));
        }
        if let Some((slot, text, mine)) = notebook {
            page.send(Msg::Notebook(NotebookMsg::KeptElsewhere { slot, text, mine }));
        }
    }
}

/// The browser went back or forward. To an address of ours: then the rocket stays as it is,
/// whatever it was when that address was new.
fn went(page: &Rc<Page>) {
    let (place, here) = (address::place(&page.window), page.state.borrow().place);
    // An address with another place was left from here too, as one whose link was damaged.
    if address::is_ours(&page.window) || place != here {
        page.send(Msg::Back(place));
    }
}

fn input(page: &Rc<Page>, event: &Event) {
    if let Some((input, field)) = field(event) {
        page.send(Msg::Typed { field, text: input.value() });
    } else if let Some((input, field)) = setup_field(event) {
        page.send(SwingMsg::Typed(field, input.value()).into());
    } else if let Some((field, text)) = note(event) {
        page.send(Msg::Notebook(NotebookMsg::Typed { field, text }));
    } else if let Some(slider) = target(event).filter(|e| e.id() == "swing-slider") {
        let degrees = slider.unchecked_ref::<HtmlInputElement>().value_as_number();
        page.send(SwingMsg::Start(degrees).into());
    } else if let Some(slider) = target(event).filter(|e| e.id() == "angle") {
        let degrees = slider.unchecked_ref::<HtmlInputElement>().value_as_number();
        page.send(Msg::Angle(degrees));
    }
}

fn change(page: &Rc<Page>, event: &Event) {
    if let Some((element, value)) = around(event, "data-choice") {
        let choice = value.parse().ok().and_then(Choice::from_field);
        let select: Option<HtmlSelectElement> = element.dyn_into().ok();
        if let (Some(choice), Some(select)) = (choice, select) {
            page.send(Msg::Chose { choice, value: select.value() });
        }
    } else if let Some(list) =
        target(event).filter(|e| ["language", "beside"].contains(&e.id().as_str()))
    {
        let choice = list.unchecked_ref::<HtmlSelectElement>().value();
        let choice = noseward_words::Choice::parse(&choice);
        if list.id() == "beside" {
            page.send(Msg::Beside(choice.map(|choice| choice.language)));
        } else if let Some(choice) = choice {
            page.send(Msg::Speak(choice));
        }
    } else if around(event, "data-resolution").is_some() {
        page.send(Msg::Resolution(resolution(page)));
    } else if let Some(element) = target(event).filter(|e| e.id() == "open-file") {
        open_file(page, element.unchecked_ref());
    } else if target(event).is_some_and(|e| e.id() == CLASS_FILES) {
        page.send(PlaceMsg::Class(ClassMsg::Chosen).into());
    }
    page.keep_if_waiting();
}

/// The steps that ruler and scales are set to.
fn resolution(page: &Rc<Page>) -> Resolution {
    let chosen = |id: &str, otherwise: f64| {
        let element = page.document.get_element_by_id(id);
        let select = element.and_then(|e| e.dyn_into::<HtmlSelectElement>().ok());
        // Read like what somebody types: the standard way would bring a table of 10 KB.
        let read = |list: HtmlSelectElement| {
            read_number(&list.value(), Quantity::Length, Units::METRIC).ok().flatten()
        };
        select.and_then(read).unwrap_or(otherwise)
    };
    let usual = Resolution::default();
    Resolution {
        length_mm: chosen("ruler-step", usual.length_mm),
        mass_g: chosen("scales-step", usual.mass_g),
    }
}

fn open_file(page: &Rc<Page>, input: &HtmlInputElement) {
    let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
    if file.size() > link::NOTEBOOK_BYTES as f64 {
        input.set_value("");
        page.send(Msg::FileTooLarge { bytes: file.size() });
        return;
    }
    // So that choosing the same file again is a change again.
    let page = Rc::clone(page);
    let input = input.clone();
    spawn_local(async move {
        let text = JsFuture::from(file.text()).await.ok().and_then(|t| t.as_string());
        input.set_value("");
        page.send(Msg::OpenText(text.unwrap_or_default()));
    });
}

fn left(page: &Rc<Page>, event: &Event) {
    if page.screen.is_replacing() {
        return;
    }
    // A number is tidied on the spot, and not with the next frame: whoever goes on reads it.
    if let Some((input, field)) = field(event) {
        page.send(Msg::Left { field });
        input.set_value(&page.state.borrow().text_of(field));
    } else if let Some((input, field)) = setup_field(event) {
        page.send(SwingMsg::Left(field).into());
        input.set_value(&page.state.borrow().setup_text(field));
    } else if let Some((field, _)) = note(event) {
        page.send(Msg::Notebook(NotebookMsg::Left { field }));
    }
}

fn click(page: &Rc<Page>, event: &Event) {
    select_number(page, event);
    report(page.screen.close_menus_but(target(event).as_ref()));
    if let Some((element, action)) = around(event, "data-action") {
        if action == "open-pasted" {
            open_pasted(page);
            return;
        }
        if element.has_attribute("href") {
            if leads_elsewhere(event) {
                return;
            }
            event.prevent_default();
        }
        if element.class_list().contains("menu__item") {
            report(page.screen.close_menus());
        }
        let target = element.get_attribute("data-target").unwrap_or_default();
        let counts =
            page.presses.borrow_mut().counts(&action, &target, event.time_stamp());
        if let Some(msg) = Msg::parse(&action, &target).filter(|_| counts) {
            page.send(msg);
        }
        return;
    }
    // A click on a part of the drawing leads to its measurements.
    let in_drawing = target(event).and_then(|e| e.closest("#sheet").ok().flatten());
    if let (Some(_), Some((_, part))) = (in_drawing, around(event, "data-part")) {
        report(page.screen.focus_part(&part));
    }
}

/// Whether a click on a link opens it in another tab or window.
fn leads_elsewhere(event: &Event) -> bool {
    event.dyn_ref::<MouseEvent>().is_some_and(|mouse| {
        mouse.ctrl_key() || mouse.meta_key() || mouse.shift_key() || mouse.alt_key()
    })
}

fn open_pasted(page: &Rc<Page>) {
    let area = page.document.get_element_by_id("open-text");
    if let Some(area) = area.and_then(|e| e.dyn_into::<HtmlTextAreaElement>().ok()) {
        page.send(Msg::OpenText(area.value()));
        // What could not be opened stays, to be mended.
        let opened = {
            let state = page.state.borrow();
            state.parts.is_here(Part::Files)
                && !matches!(state.notice, Some(Notice::FileFault(_)))
        };
        if opened {
            area.set_value("");
        }
    }
}

fn key(page: &Rc<Page>, event: &Event) {
    let Some(key) = event.dyn_ref::<KeyboardEvent>() else { return };
    let name = key.key();
    let command = (key.ctrl_key() || key.meta_key()) && !key.alt_key();
    // There the browser's own undo is at work.
    let in_other_text =
        target(event).is_some_and(|e| e.id() == "open-text") || note(event).is_some();
    if command && !in_other_text {
        let msg = match (name.to_ascii_lowercase().as_str(), key.shift_key()) {
            ("z", false) => Some(Msg::Undo),
            ("z", true) | ("y", false) => Some(Msg::Redo),
            _ => None,
        };
        if let Some(msg) = msg {
            event.prevent_default();
            page.send(msg);
            return;
        }
    }
    let on_enter = around(event, "data-enter").map(|(_, action)| action);
    let presses = on_enter.is_some() || around(event, "data-action").is_some();
    if name == "Enter" && presses && key.repeat() {
        // The press may have brought the focus to another button.
        event.prevent_default();
        return;
    }
    if let Some(action) = on_enter.filter(|_| name == "Enter") {
        event.prevent_default();
        if let Some(msg) = Msg::parse(&action, "") {
            page.send(msg);
        }
        return;
    }
    if name == "Escape" {
        report(page.screen.close_menus());
        return;
    }
    let direction = match name.as_str() {
        "ArrowUp" => 1.0,
        "ArrowDown" => -1.0,
        _ => return,
    };
    if command || key.alt_key() {
        return;
    }
    let Some((input, field)) = field(event) else { return };
    let Some(quantity) = field.quantity() else { return };
    event.prevent_default();
    let ten = key.shift_key() && quantity != Quantity::Count;
    let steps = if ten { 10.0 * direction } else { direction };
    page.send(Msg::Stepped { field, steps });
    input.set_value(&page.state.borrow().text_of(field));
}

/// What the pointer or the focus is on lights up on both sides of the page. What is being
/// dragged stays lit, wherever the pointer is by then.
fn light(page: &Rc<Page>, event: &Event) {
    if page.drag.get().is_some_and(|drag| drag.moving) {
        return;
    }
    let part = around(event, "data-part").map(|(_, part)| part);
    report(page.screen.light(part));
}

/// The number field that an event is about.
fn number(event: &Event) -> Option<HtmlInputElement> {
    let input = target(event)?.dyn_into::<HtmlInputElement>().ok()?;
    input.has_attribute("inputmode").then_some(input)
}

/// A click that enters a number selects it, so that what is typed takes its place. A
/// second click sets the caret, and a stretch that was selected stays.
fn select_number(page: &Rc<Page>, event: &Event) {
    let Some(input) = number(event).filter(|_| page.enters.get()) else { return };
    let ends = (input.selection_start().ok(), input.selection_end().ok());
    if ends.0 == ends.1 {
        input.select();
    }
}

fn press(page: &Rc<Page>, event: &Event) {
    let active = page.document.active_element();
    page.enters.set(number(event).is_some_and(|input| active != Some(input.into())));
    over_graph(page, event);
    on_swing_graph(page, event);
    let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
    let Some(element) = target(event) else { return };
    let in_drawing = element.closest("#sheet").ok().flatten();
    // A second finger is no second hand.
    let is_dragging = page.drag.get().is_some_and(|drag| drag.moving);
    if in_drawing.is_none() || pointer.button() != 0 || is_dragging {
        return;
    }
    let part = around(event, "data-part").and_then(|(_, part)| part.parse().ok());
    let Some(part) = part else { return };
    let Some(field) = place_field(part) else { return };
    let state = page.state.borrow();
    // A finger scrolls, but where it takes hold of something beside its fields.
    let is_grip =
        matches!(part, Component::Weight(_)) || element.class_list().contains("grip");
    let may_drag = is_grip && state.place == Place::Rocket;
    if pointer.pointer_type() == "touch" && !may_drag {
        return;
    }
    if let Some(from_mm) = field.get(&state.design) {
        let (from_x, from_y) = (pointer.client_x(), pointer.client_y());
        let pointer = pointer.pointer_id();
        page.drag.set(Some(Drag {
            pointer,
            part,
            field,
            from_mm,
            from_x,
            from_y,
            moving: false,
        }));
    }
}

fn drag(page: &Rc<Page>, event: &Event) {
    over_graph(page, event);
    on_swing_graph(page, event);
    let Some(mut drag) = page.drag.get() else { return };
    let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
    if pointer.pointer_id() != drag.pointer {
        return;
    }
    let by_px = pointer.client_y() - drag.from_y;
    // Whoever pulls sideways has not tapped either.
    let sideways_px = pointer.client_x() - drag.from_x;
    if !drag.moving && by_px.abs().max(sideways_px.abs()) >= CLICK_PX {
        drag.moving = true;
        page.drag.set(Some(drag));
        hold(page, drag.pointer);
    }
    if drag.moving {
        event.prevent_default();
        let Drag { part, from_mm, .. } = drag;
        page.send(Msg::Dragged { part, from_mm, by_px: f64::from(by_px) });
    }
}

/// The sheet hears what the pointer does from now on, wherever that goes: what is dragged is
/// drawn anew at each step, and with it goes what the pointer was on.
fn hold(page: &Page, pointer: i32) {
    if let Some(sheet) = page.document.get_element_by_id("sheet") {
        report(sheet.set_pointer_capture(pointer));
    }
    report(page.screen.mark("data-dragging", ""));
}

/// A press on the graph of the swing leads the pictures to that time.
fn on_swing_graph(page: &Rc<Page>, event: &Event) {
    let graph = target(event).and_then(|e| e.closest("#swing-graph svg").ok().flatten());
    let (Some(graph), Some(pointer)) = (graph, event.dyn_ref::<PointerEvent>()) else {
        return;
    };
    if pointer.buttons() != 1 {
        return;
    }
    let bounds = graph.get_bounding_client_rect();
    let x_px = f64::from(pointer.client_x()) - bounds.left();
    let msg = page.state.borrow().swing.time_at(x_px, bounds.width());
    page.send(SwingMsg::At(msg).into());
}

/// The pointer over the graphs marks an angle, to the nearest five degrees.
fn over_graph(page: &Rc<Page>, event: &Event) {
    let graph = target(event).and_then(|e| e.closest("#air-graph svg").ok().flatten());
    let (Some(graph), Some(pointer)) = (graph, event.dyn_ref::<PointerEvent>()) else {
        return;
    };
    let bounds = graph.get_bounding_client_rect();
    let x_px = f64::from(pointer.client_x()) - bounds.left();
    let degrees = noseward_drawing::air_graph_angle_deg(x_px, bounds.width());
    let degrees = (degrees / 5.0).round() * 5.0;
    if degrees != page.state.borrow().angle_deg {
        page.send(Msg::Angle(degrees));
    }
}

fn release(page: &Rc<Page>, event: &Event) {
    let Some(drag) = page.drag.get() else { return };
    let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
    if pointer.pointer_id() != drag.pointer {
        return;
    }
    page.drag.set(None);
    if drag.moving {
        report(page.screen.unmark("data-dragging"));
        page.send(Msg::Left { field: drag.field });
    } else if pointer.pointer_type() == "touch" {
        report(page.screen.focus_part(&drag.part.to_string()));
    }
}
