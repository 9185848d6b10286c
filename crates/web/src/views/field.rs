//! One measurement: label, small picture, text field with its unit, place for a fault.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{Picture, picture, svg_document};
use noseward_stability::{Field, Quantity};

use crate::app::State;

/// What a field looks like.
#[derive(Clone, Copy)]
pub(super) struct Look<'a> {
    pub(super) label: &'a str,
    pub(super) picture: Option<Picture>,
    /// What an empty field stands for.
    pub(super) stand_in: Option<f64>,
}

impl<'a> Look<'a> {
    pub(super) fn new(label: &'a str, picture: Picture) -> Self {
        Self { label, picture: Some(picture), stand_in: None }
    }

    pub(super) fn plain(label: &'a str) -> Self {
        Self { label, picture: None, stand_in: None }
    }

    pub(super) fn standing_in(self, value: Option<f64>) -> Self {
        Self { stand_in: value, ..self }
    }
}

/// The id of the place for a field's fault.
pub(super) fn slot_id(field: Field) -> String {
    format!("fault:{field}")
}

/// A number's field. It is never rebuilt while somebody types in it.
pub(super) fn number(state: &State, field: Field, look: Look<'_>) -> Markup {
    let id = field.to_string();
    let quantity = field.quantity().unwrap_or(Quantity::Count);
    let unit = quantity.unit(state.units);
    let stand_in =
        look.stand_in.map(|value| format!("({})", quantity.number(value, state.units)));
    let keyboard = if quantity == Quantity::Count { "numeric" } else { "decimal" };
    html! {
        div class="field" data-part=[field.part()] {
            label class="field__label" for=(id) {
                @if let Some(what) = look.picture {
                    span class="field__picture" aria-hidden="true" {
                        (PreEscaped(svg_document(&picture(what), None)))
                    }
                }
                span {
                    (look.label)
                    @if !unit.is_empty() {
                        span class="visually-hidden" { " in " (spoken_unit(unit)) }
                    }
                }
            }
            span class="field__box" {
                input class="field__input" id=(id) type="text" inputmode=(keyboard)
                    autocomplete="off" spellcheck="false" maxlength="40"
                    data-field=(id) data-number="" value=(state.text_of(field))
                    placeholder=[stand_in] aria-describedby=(slot_id(field));
                @if !unit.is_empty() {
                    span class="field__unit" aria-hidden="true" { (unit) }
                }
            }
            (slot(field))
        }
    }
}

/// A name's field.
pub(super) fn words(state: &State, field: Field, label: &str) -> Markup {
    let id = field.to_string();
    html! {
        div class="field field--words" data-part=[field.part()] {
            label class="field__label" for=(id) { (label) }
            span class="field__box" {
                input class="field__input field__input--words" id=(id) type="text"
                    autocomplete="off" maxlength="60" data-field=(id)
                    value=(state.text_of(field)) aria-describedby=(slot_id(field));
            }
            (slot(field))
        }
    }
}

/// A list to choose from; each entry with whether it is chosen.
pub(super) fn choice(field: Field, label: &str, entries: &[(String, bool)]) -> Markup {
    let id = format!("choice:{field}");
    let options = entries.iter().enumerate();
    html! {
        div class="field field--choice" data-part=[field.part()] {
            label class="field__label" for=(id) { (label) }
            select class="field__select" id=(id) data-choice=(field)
                aria-describedby=(slot_id(field)) {
                @for (i, (name, chosen)) in options {
                    option value=(i) selected[*chosen] { (name) }
                }
            }
            (slot(field))
        }
    }
}

/// The place for a field's fault; empty while there is none.
pub(super) fn slot(field: Field) -> Markup {
    html! { div class="field__fault" id=(slot_id(field)) {} }
}

/// A unit as a screen reader should say it.
pub(crate) fn spoken_unit(unit: &str) -> &str {
    match unit {
        "mm" => "millimetres",
        "g" => "grams",
        "in" => "inches",
        "oz" => "ounces",
        "°" => "degrees",
        "g/m²" => "grams per square metre",
        other => other,
    }
}
