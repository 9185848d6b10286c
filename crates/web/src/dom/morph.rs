//! Bringing a part of the page up to date: the new markup is compared with what stands there,
//! and only what differs is touched. So focus, caret, scroll positions and what somebody has
//! opened stay, and no view distinguishes between forms and what is only read.

use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement, Node};

/// An element with this attribute keeps what somebody typed into it: no view knows it.
const OWN_TEXT: &str = "data-own-text";

/// Makes what stands in an element that of the markup.
///
/// Elements with an id are told by it, the others by their order.
pub(super) fn morph(element: &Element, markup: &str) -> Result<(), JsValue> {
    let fresh: Element = element.clone_node()?.unchecked_into();
    fresh.set_inner_html(markup);
    bring_children(element, &fresh)
}

fn bring_children(old: &Node, new: &Node) -> Result<(), JsValue> {
    let mut at = old.first_child();
    let mut next = new.first_child();
    while let Some(wanted) = next {
        next = wanted.next_sibling();
        let Some(found) = counterpart(at.as_ref(), &wanted) else {
            old.insert_before(&wanted, at.as_ref())?;
            continue;
        };
        // What stands in between and is not wanted any more goes, so that the one that is
        // found, where the focus may be, need not move.
        while let Some(between) = at.clone().filter(|between| *between != found) {
            if is_wanted(&between, next.as_ref()) {
                break;
            }
            at = between.next_sibling();
            old.remove_child(&between)?;
        }
        if at.as_ref() == Some(&found) {
            at = found.next_sibling();
        } else {
            old.insert_before(&found, at.as_ref())?;
        }
        bring(&found, &wanted)?;
    }
    while let Some(left) = at {
        at = left.next_sibling();
        old.remove_child(&left)?;
    }
    Ok(())
}

/// The id of a node, where it has one.
fn id(node: &Node) -> Option<String> {
    let id = node.dyn_ref::<Element>()?.id();
    (!id.is_empty()).then_some(id)
}

/// The node, from `at` on, that is to become `wanted`.
fn counterpart(at: Option<&Node>, wanted: &Node) -> Option<Node> {
    let same_kind =
        |node: &Node| node.node_name() == wanted.node_name() && id(node) == id(wanted);
    if id(wanted).is_none() {
        return at.filter(|at| same_kind(at)).cloned();
    }
    let mut candidate = at.cloned();
    while let Some(node) = candidate {
        if same_kind(&node) {
            return Some(node);
        }
        candidate = node.next_sibling();
    }
    None
}

/// Whether a node that is passed over is still to come, among `next` and what follows it.
fn is_wanted(node: &Node, next: Option<&Node>) -> bool {
    let Some(known) = id(node) else { return false };
    let mut wanted = next.cloned();
    while let Some(node) = wanted {
        if id(&node).as_ref() == Some(&known) {
            return true;
        }
        wanted = node.next_sibling();
    }
    false
}

fn bring(old: &Node, new: &Node) -> Result<(), JsValue> {
    let (Some(element), Some(wanted)) =
        (old.dyn_ref::<Element>(), new.dyn_ref::<Element>())
    else {
        if old.node_value() != new.node_value() {
            old.set_node_value(new.node_value().as_deref());
        }
        return Ok(());
    };
    bring_attributes(element, wanted)?;
    if element.has_attribute(OWN_TEXT) {
        return Ok(());
    }
    if let (Some(area), Some(wanted)) = (
        element.dyn_ref::<HtmlTextAreaElement>(),
        wanted.dyn_ref::<HtmlTextAreaElement>(),
    ) {
        if area.value() != wanted.value() {
            area.set_value(&wanted.value());
        }
        return Ok(());
    }
    bring_children(old, new)?;
    if let (Some(input), Some(value)) =
        (element.dyn_ref::<HtmlInputElement>(), wanted.get_attribute("value"))
        && input.value() != value
    {
        input.set_value(&value);
    }
    if let (Some(list), Some(wanted)) =
        (element.dyn_ref::<HtmlSelectElement>(), wanted.dyn_ref::<HtmlSelectElement>())
        && list.value() != wanted.value()
    {
        list.set_value(&wanted.value());
    }
    Ok(())
}

fn bring_attributes(old: &Element, new: &Element) -> Result<(), JsValue> {
    // What somebody has opened stays open, and what was closed stays closed.
    let is_theirs = |name: &str| name == "open";
    for name in names(old) {
        if !new.has_attribute(&name) && !is_theirs(&name) {
            old.remove_attribute(&name)?;
        }
    }
    for name in names(new) {
        let value = new.get_attribute(&name);
        if old.get_attribute(&name) != value && !is_theirs(&name) {
            old.set_attribute(&name, value.as_deref().unwrap_or_default())?;
        }
    }
    Ok(())
}

fn names(element: &Element) -> Vec<String> {
    element.get_attribute_names().iter().filter_map(|name| name.as_string()).collect()
}
