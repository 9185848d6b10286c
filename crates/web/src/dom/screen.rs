//! What is on the screen, and how it is brought up to date: only what differs is touched,
//! and nobody who is typing loses their place.

use std::cell::{Cell, RefCell};

use maud::html;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, FocusOptions, HtmlDetailsElement, HtmlElement, Node};

use super::morph::morph;
use crate::shell::{Drawing, Region};

/// The elements of the page and what was last put into them.
///
/// Touching an element may call back into the page, so no borrow is held meanwhile.
pub(super) struct Screen {
    document: Document,
    shown: RefCell<Vec<(String, String)>>,
    lit: RefCell<Option<String>>,
    replacing: Cell<bool>,
}

impl Screen {
    pub(super) fn new(document: Document) -> Self {
        Self {
            document,
            shown: RefCell::default(),
            lit: RefCell::default(),
            replacing: Cell::default(),
        }
    }

    /// Whether a part of the page is being brought up to date at this moment, so that a
    /// field may lose the focus without being left.
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

    /// Brings what stands in an element up to date, if it differs from what was last shown.
    pub(super) fn show(&self, id: &str, markup: &str) -> Result<(), JsValue> {
        if !self.is_new(id, markup) {
            return Ok(());
        }
        let element = self.element(id)?;
        let focused = self.document.active_element();
        // Whoever is typing does not leave the field, should it have to move.
        self.replacing.set(true);
        let done = morph(&element, markup);
        self.replacing.set(false);
        done?;
        if let Some(focused) =
            focused.filter(|e| self.document.active_element().as_ref() != Some(e))
        {
            self.focus_quietly(&focused)?;
        }
        self.light_again()
    }

    /// Brings a place up to date: its regions in this order and no others, each compared
    /// alone, so that a keystroke does not have the whole place looked through.
    pub(super) fn show_regions(
        &self,
        id: &str,
        regions: &[Region],
    ) -> Result<(), JsValue> {
        let places = html! {
            @for region in regions { div class="region" id=(region.id) {} }
        };
        if self.is_new(id, &places.clone().into_string()) {
            let parent = self.element(id)?;
            let is_here = |known: &str| regions.iter().any(|region| region.id == known);
            let mut before = parent.first_child();
            for region in regions {
                let element = match self.document.get_element_by_id(&region.id) {
                    Some(element) => element,
                    None => {
                        let element = self.document.create_element("div")?;
                        element.set_id(&region.id);
                        element.set_class_name("region");
                        self.shown.borrow_mut().retain(|(known, _)| *known != *region.id);
                        element
                    }
                };
                while let Some(old) = before.clone().filter(|old| {
                    old.dyn_ref::<Element>().is_none_or(|old| !is_here(&old.id()))
                }) {
                    before = old.next_sibling();
                    parent.remove_child(&old)?;
                }
                if before.as_ref() == Some(element.as_ref()) {
                    before = element.next_sibling();
                } else {
                    parent.insert_before(&element, before.as_ref())?;
                }
            }
            while let Some(old) = before {
                before = old.next_sibling();
                parent.remove_child(&old)?;
            }
        }
        regions.iter().try_for_each(|region| self.show(&region.id, &region.markup))
    }

    /// Puts the focus back where it was, without moving the window; to an element of the
    /// same name, where it went.
    fn focus_quietly(&self, element: &Element) -> Result<(), JsValue> {
        let again = if element.is_connected() {
            Some(element.clone())
        } else {
            self.document.get_element_by_id(&element.id())
        };
        let Some(again) = again else { return Ok(()) };
        let options = FocusOptions::new();
        options.set_prevent_scroll(true);
        again.unchecked_ref::<HtmlElement>().focus_with_options(&options)
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
        self.light_again()
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
            // Whatever holds the drawing is to be compared anew.
            self.forget_around(&group);
        }
        Ok(())
    }

    /// Moves the focus to an element or a choice with this id; to the heading of the place
    /// if there is none.
    pub(super) fn focus(&self, id: &str) -> Result<(), JsValue> {
        let choice = format!("choice:{id}");
        let by_id = |id: &str| self.document.get_element_by_id(id);
        let found = by_id(id).or_else(|| by_id(&choice)).or_else(|| by_id("place-title"));
        if let Some(element) = found {
            element.unchecked_ref::<HtmlElement>().focus()?;
        }
        Ok(())
    }

    /// Moves the focus to the first control of a part.
    pub(super) fn focus_part(&self, part: &str) -> Result<(), JsValue> {
        let css = format!("#place [data-part=\"{part}\"] input");
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

    /// What was last shown in the elements around this one is no longer what stands there.
    fn forget_around(&self, inner: &Element) {
        let holds = |id: &str| {
            let element = self.document.get_element_by_id(id);
            element.is_some_and(|e| e.contains(Some(inner.unchecked_ref::<Node>())))
        };
        self.shown
            .borrow_mut()
            .retain(|(id, _)| id.bytes().any(|b| b == b':') || !holds(id));
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

    /// Keeps a link to the present rocket in the message that stays hidden unless the
    /// module stops.
    pub(super) fn note_for_crash(&self, link: &str) -> Result<(), JsValue> {
        self.element("crash-link")?.set_attribute("href", link)?;
        self.element("crash-text")?.set_attribute("value", link)
    }

    /// Sets an attribute of the document, for the style sheets.
    pub(super) fn mark(&self, name: &str, value: &str) -> Result<(), JsValue> {
        let root = self.document.document_element().ok_or("the document is empty")?;
        root.set_attribute(name, value)
    }

    /// Takes such an attribute away.
    pub(super) fn unmark(&self, name: &str) -> Result<(), JsValue> {
        let root = self.document.document_element().ok_or("the document is empty")?;
        root.remove_attribute(name)
    }

    /// Closes what is told on demand, if it is there.
    pub(super) fn fold(&self, id: &str) -> Result<(), JsValue> {
        self.element(id).map_or(Ok(()), |details| details.remove_attribute("open"))
    }

    /// Puts a few words into an element, if it is there.
    pub(super) fn say(&self, id: &str, words: &str) -> Result<(), JsValue> {
        if let Ok(element) = self.element(id) {
            self.forget_around(&element);
            element.set_text_content(Some(words));
        }
        Ok(())
    }

    /// Puts words into the live region, if they are new.
    pub(super) fn speak(&self, words: &str) -> Result<(), JsValue> {
        if self.is_new("said", words) {
            self.element("said")?.set_text_content(Some(words));
        }
        Ok(())
    }
}
