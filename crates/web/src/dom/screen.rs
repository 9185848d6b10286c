//! What is on the screen, and how it is brought up to date: only what differs is touched,
//! and nobody who is typing loses their place.

use std::cell::{Cell, RefCell};

use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    Document, Element, FocusOptions, HtmlDetailsElement, HtmlElement, HtmlInputElement,
    HtmlTextAreaElement, Node,
};

use crate::views::{Drawing, FaultSlot, Outputs};

/// The elements of the page and what was last put into them.
///
/// Touching an element may call back into the page, so no borrow is held meanwhile.
pub(super) struct Screen {
    document: Document,
    shown: RefCell<Vec<(String, String)>>,
    slots: RefCell<Vec<FaultSlot>>,
    lit: RefCell<Option<String>>,
    replacing: Cell<bool>,
}

impl Screen {
    pub(super) fn new(document: Document) -> Self {
        Self {
            document,
            shown: RefCell::default(),
            slots: RefCell::default(),
            lit: RefCell::default(),
            replacing: Cell::default(),
        }
    }

    /// Whether a part of the page is being replaced at this moment, so that a field loses
    /// the focus without being left.
    pub(super) fn is_replacing(&self) -> bool {
        self.replacing.get()
    }

    fn element(&self, id: &str) -> Result<Element, JsValue> {
        let missing = || JsValue::from_str(&format!("the page has no element #{id}"));
        self.document.get_element_by_id(id).ok_or_else(missing)
    }

    fn all(&self, css: &str) -> Result<Vec<Element>, JsValue> {
        let list = self.document.query_selector_all(css)?;
        Ok((0..list.length())
            .filter_map(|i| list.get(i))
            .filter_map(|node: Node| node.dyn_into().ok())
            .collect())
    }

    /// Notes that something is shown under a name. Returns whether it is new there.
    fn is_new(&self, name: &str, markup: &str) -> bool {
        let mut shown = self.shown.borrow_mut();
        let Some((_, old)) = shown.iter_mut().find(|(known, _)| known == name) else {
            shown.push((name.to_owned(), markup.to_owned()));
            return true;
        };
        let new = old != markup;
        if new {
            markup.clone_into(old);
        }
        new
    }

    /// Replaces what stands in a region, if it differs.
    pub(super) fn show(&self, id: &str, markup: &str) -> Result<(), JsValue> {
        if self.is_new(id, markup) {
            let region = self.element(id)?;
            let focused = self.document.active_element();
            let inside = focused
                .filter(|e| region.contains(Some(e.unchecked_ref::<Node>())))
                .map(|e| e.id());
            self.replace(&region, markup)?;
            if let Some(id) = inside {
                self.focus_quietly(&id)?;
            }
        }
        Ok(())
    }

    /// Replaces what stands in an element. What somebody has opened in it stays open.
    fn replace(&self, element: &Element, markup: &str) -> Result<(), JsValue> {
        let list = element.query_selector_all("details[id]")?;
        let details = (0..list.length()).filter_map(|i| list.get(i));
        let was: Vec<(String, bool)> = details
            .filter_map(|node| node.dyn_into::<HtmlDetailsElement>().ok())
            .map(|details| (details.id(), details.open()))
            .collect();
        // Whoever is typing does not leave the field: it is taken away and comes again.
        self.replacing.set(true);
        element.set_inner_html(markup);
        self.replacing.set(false);
        for (id, open) in was {
            let again = self.document.get_element_by_id(&id);
            if let Some(again) =
                again.and_then(|e| e.dyn_into::<HtmlDetailsElement>().ok())
            {
                again.set_open(open);
            }
        }
        Ok(())
    }

    /// Puts the focus back where it was, without moving the window.
    fn focus_quietly(&self, id: &str) -> Result<(), JsValue> {
        let Some(element) = self.document.get_element_by_id(id) else { return Ok(()) };
        let options = FocusOptions::new();
        options.set_prevent_scroll(true);
        element.unchecked_ref::<HtmlElement>().focus_with_options(&options)
    }

    /// Brings every output up to date.
    pub(super) fn draw(&self, outputs: Outputs) -> Result<(), JsValue> {
        if let Some(drawing) = &outputs.drawing {
            self.show_drawing("sheet", drawing)?;
            self.light_again()?;
        }
        for region in &outputs.regions {
            self.show(region.id, &region.markup)?;
        }
        self.show_faults(outputs.slots)?;
        for (id, on) in outputs.buttons {
            // A button that does nothing now stays where it is and can be reached.
            let disabled = if on { "false" } else { "true" };
            self.element(id)?.set_attribute("aria-disabled", disabled)?;
        }
        let told = if outputs.told { "true" } else { "false" };
        self.element("swing")?.set_attribute("data-told", told)?;
        let stale = if outputs.stale { "true" } else { "false" };
        self.element("sheet")?.set_attribute("data-stale", stale)
    }

    /// Brings a drawing up to date: its groups alone as long as its frame stays.
    pub(super) fn show_drawing(
        &self,
        id: &str,
        drawing: &Drawing,
    ) -> Result<(), JsValue> {
        let new_frame = self.is_new(&format!("frame:{id}"), &drawing.frame());
        if new_frame {
            self.element(id)?.set_inner_html(&drawing.document());
        }
        for (key, markup) in drawing.groups() {
            if new_frame {
                self.is_new(&format!("group:{id}:{key}"), &markup);
            } else {
                self.show_group(id, key, &markup)?;
            }
        }
        Ok(())
    }

    /// Brings one group of a drawing up to date.
    pub(super) fn show_group(
        &self,
        id: &str,
        key: &str,
        markup: &str,
    ) -> Result<(), JsValue> {
        if self.is_new(&format!("group:{id}:{key}"), markup) {
            let group = self
                .element(id)?
                .query_selector(&format!("[data-group={key}]"))?
                .ok_or_else(|| format!("the drawing #{id} has no group {key}"))?;
            group.set_inner_html(markup);
        }
        Ok(())
    }

    /// Puts the sentence at each field that has a fault and clears the others.
    fn show_faults(&self, slots: Vec<FaultSlot>) -> Result<(), JsValue> {
        let before = self.slots.replace(slots.clone());
        if before == slots {
            return Ok(());
        }
        for old in before {
            if slots.iter().all(|new| new.id != old.id) {
                self.fill(&FaultSlot { markup: String::new(), stops: false, ..old })?;
            }
        }
        for slot in &slots {
            self.fill(slot)?;
        }
        Ok(())
    }

    /// Fields that are not shown now have no place; the list of faults leads to them.
    fn fill(&self, slot: &FaultSlot) -> Result<(), JsValue> {
        if let Some(place) = self.document.get_element_by_id(&slot.id)
            && place.inner_html() != slot.markup
        {
            place.set_inner_html(&slot.markup);
        }
        slot.controls.iter().try_for_each(|id| self.mark(id, slot.stops))
    }

    /// Marks a control as one that cannot be read, or takes the mark away.
    pub(super) fn mark(&self, id: &str, is_wrong: bool) -> Result<(), JsValue> {
        match self.document.get_element_by_id(id) {
            Some(control) if is_wrong => control.set_attribute("aria-invalid", "true"),
            Some(control) => control.remove_attribute("aria-invalid"),
            None => Ok(()),
        }
    }

    /// Builds the steps anew.
    pub(super) fn rebuild_steps(&self, markup: &str) -> Result<(), JsValue> {
        self.slots.borrow_mut().clear();
        self.rebuild("steps", markup)?;
        self.light_again()
    }

    /// Builds a place with fields anew. Whoever was in a control is put back there; what is
    /// shown inside is to be shown again.
    pub(super) fn rebuild(&self, place: &str, markup: &str) -> Result<(), JsValue> {
        let active = self.document.active_element();
        let id = active.as_ref().map(Element::id).unwrap_or_default();
        let area = self.element(place)?;
        let was_inside = active
            .as_ref()
            .is_some_and(|e| area.contains(Some(e.unchecked_ref::<Node>())));
        let input = active.and_then(|e| e.dyn_into::<HtmlInputElement>().ok());
        let selection = input.map(|i| {
            (i.selection_start().ok().flatten(), i.selection_end().ok().flatten())
        });
        let shown = self.shown.borrow().clone();
        let inside = |id: &str| {
            let element = self.document.get_element_by_id(id);
            element.is_some_and(|e| area.contains(Some(e.unchecked_ref::<Node>())))
        };
        let outside = shown.into_iter().filter(|(id, _)| !inside(id)).collect();
        self.shown.replace(outside);
        self.replace(&area, markup)?;
        if id.is_empty() {
            return Ok(());
        }
        if let Some(element) = self.document.get_element_by_id(&id) {
            if self.document.active_element().is_some_and(|now| now.id() == id) {
                return Ok(());
            }
            element.unchecked_ref::<HtmlElement>().focus()?;
            if let (Some(input), Some((Some(from), Some(to)))) =
                (element.dyn_ref::<HtmlInputElement>(), selection)
            {
                input.set_selection_range(from, to)?;
            }
        } else if was_inside {
            area.unchecked_ref::<HtmlElement>().focus()?;
        }
        Ok(())
    }

    /// Puts a text into a field, if it differs.
    pub(super) fn set_value(&self, id: &str, text: &str) -> Result<(), JsValue> {
        let field = self.document.get_element_by_id(id);
        let Some(field) = field else { return Ok(()) };
        if let Some(input) = field.dyn_ref::<HtmlInputElement>() {
            if input.value() != text {
                input.set_value(text);
            }
        } else if let Some(area) = field.dyn_ref::<HtmlTextAreaElement>()
            && area.value() != text
        {
            area.set_value(text);
        }
        Ok(())
    }

    /// Moves the focus to an element or a choice with this id; to the steps as a whole if
    /// there is none.
    pub(super) fn focus(&self, id: &str) -> Result<(), JsValue> {
        let choice = format!("choice:{id}");
        let by_id = |id: &str| self.document.get_element_by_id(id);
        let found = by_id(id).or_else(|| by_id(&choice)).or_else(|| by_id("steps"));
        if let Some(element) = found {
            element.unchecked_ref::<HtmlElement>().focus()?;
        }
        Ok(())
    }

    /// Moves the focus to an element and the window to it.
    pub(super) fn show_place(&self, id: &str) -> Result<(), JsValue> {
        let element = self.element(id)?;
        element.unchecked_ref::<HtmlElement>().focus()?;
        element.scroll_into_view();
        Ok(())
    }

    /// Moves the focus to the first control of a part.
    pub(super) fn focus_part(&self, part: &str) -> Result<(), JsValue> {
        let css = format!("#steps [data-part=\"{part}\"] input");
        if let Some(input) = self.document.query_selector(&css)? {
            input.unchecked_ref::<HtmlElement>().focus()?;
        }
        Ok(())
    }

    /// Marks a part in the drawing and on the steps; `None` marks nothing.
    pub(super) fn light(&self, part: Option<String>) -> Result<(), JsValue> {
        if *self.lit.borrow() == part {
            return Ok(());
        }
        for element in self.all(".lit")? {
            element.class_list().remove_1("lit")?;
        }
        self.lit.replace(part);
        self.light_again()
    }

    /// Marks the part that is lit in what was drawn anew.
    fn light_again(&self) -> Result<(), JsValue> {
        let lit = self.lit.borrow().clone();
        if let Some(part) = lit {
            for element in self.all(&format!("[data-part=\"{part}\"]"))? {
                element.class_list().add_1("lit")?;
            }
        }
        Ok(())
    }

    /// Closes every open menu but the one that holds `except`. Returns the one that held
    /// the focus, if one did.
    pub(super) fn close_menus_but(
        &self,
        except: Option<&Element>,
    ) -> Result<Option<Element>, JsValue> {
        let active = self.document.active_element();
        let mut held = None;
        for menu in self.all("details.menu[open]")? {
            let contains = |e: Option<&Element>| {
                e.is_some_and(|e| menu.contains(Some(e.unchecked_ref::<Node>())))
            };
            if contains(except) {
                continue;
            }
            if contains(active.as_ref()) {
                held = menu.query_selector("summary")?;
            }
            menu.unchecked_ref::<HtmlDetailsElement>().set_open(false);
        }
        Ok(held)
    }

    /// Closes every open menu; the focus goes to the menu that held it.
    pub(super) fn close_menus(&self) -> Result<(), JsValue> {
        if let Some(summary) = self.close_menus_but(None)? {
            summary.unchecked_ref::<HtmlElement>().focus()?;
        }
        Ok(())
    }

    /// Whether the menu around an element is open.
    pub(super) fn is_open(&self, id: &str) -> bool {
        let menu = self.element(id).ok().and_then(|e| e.closest("details[open]").ok()?);
        menu.is_some()
    }

    /// Closes something that stands open until the page is ready.
    pub(super) fn fold(&self, id: &str) -> Result<(), JsValue> {
        self.element(id)?.remove_attribute("open")
    }

    /// Opens everything that was found, so that it is printed too.
    pub(super) fn open_readings(&self) -> Result<(), JsValue> {
        for part in self.all(".readings details.readings__part")? {
            part.unchecked_ref::<HtmlDetailsElement>().set_open(true);
        }
        Ok(())
    }

    /// Keeps a link to the present rocket in the message that stays hidden unless the
    /// module stops.
    pub(super) fn note_for_crash(&self, link: &str) -> Result<(), JsValue> {
        self.element("crash-link")?.set_attribute("href", link)?;
        self.element("crash-text")?.set_attribute("value", link)
    }

    /// Marks whether the measurements are in view: only then the reading stays with them on
    /// a narrow screen.
    pub(super) fn mark_typing(&self, in_view: bool) -> Result<(), JsValue> {
        let root = self.document.document_element().ok_or("the document is empty")?;
        root.set_attribute("data-typing", if in_view { "true" } else { "false" })
    }

    /// Marks what is to be printed; nothing afterwards.
    pub(super) fn mark_paper(&self, paper: Option<&str>) -> Result<(), JsValue> {
        let root = self.document.document_element().ok_or("the document is empty")?;
        match paper {
            Some(paper) => root.set_attribute("data-paper", paper),
            None => root.remove_attribute("data-paper"),
        }
    }

    /// Puts words into the live region, if they are new.
    pub(super) fn speak(&self, words: &str) -> Result<(), JsValue> {
        if self.is_new("said", words) {
            self.element("said")?.set_text_content(Some(words));
        }
        Ok(())
    }
}
