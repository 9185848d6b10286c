//! One measurement: label, small picture, text field with its unit, place for a fault.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{Picture, picture, svg_document};
use noseward_lesson::Level;
use noseward_stability::{Field, Quantity, Severity};
use noseward_words::{self as words, CornerAxis, Text};

use crate::app::{State, Unreadable};
use crate::shell::spoken_unit;

/// What a field looks like.
#[derive(Clone, Copy)]
pub(crate) struct FieldLook {
    pub(crate) label: Label,
    /// What the trade calls it, for whoever learns that word; `None` where it is the label.
    pub(crate) trade: Option<Text>,
    pub(crate) picture: Option<Picture>,
    /// What an empty field stands for.
    pub(crate) stand_in: Option<f64>,
}

impl FieldLook {
    pub(crate) fn new(label: Text, picture: Picture) -> Self {
        Self { picture: Some(picture), ..Self::plain(label) }
    }

    pub(crate) fn plain(label: Text) -> Self {
        Self { label: Label::Text(label), trade: None, picture: None, stand_in: None }
    }

    pub(crate) fn called(self, trade: Option<Text>) -> Self {
        Self { trade, ..self }
    }

    pub(crate) fn standing_in(self, value: Option<f64>) -> Self {
        Self { stand_in: value, ..self }
    }
}

/// What a field is called.
#[derive(Clone, Copy)]
pub(crate) enum Label {
    Text(Text),
    /// A corner of a fin, by its place.
    Corner(CornerAxis, usize),
}

/// Whether the words of the trade stand beside the plain ones: root, span, ogive.
pub(crate) fn says_trade_words(state: &State) -> bool {
    state.all_measurements || state.desk.notebook.level >= Level::Explain
}

/// The id of the place for a field's fault.
pub(crate) fn slot_id(field: Field) -> String {
    format!("fault:{field}")
}

/// A number's field. It is never rebuilt while somebody types in it.
pub(crate) fn number(state: &State, field: Field, look: FieldLook) -> Markup {
    let id = field.to_string();
    let quantity = field.quantity().unwrap_or(Quantity::Count);
    let unit = quantity.unit(state.units);
    let typed = |value| words::as_typed(&quantity.number(value, state.units));
    let stand_in = look.stand_in.map(|value| format!("({})", typed(value)));
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
                    @match look.label {
                        Label::Text(label) => (label),
                        Label::Corner(axis, k) => {
                            (words::rocket_corner_field(axis, (k + 1).into()))
                        }
                    }
                    @if let Some(trade) = look.trade.filter(|_| says_trade_words(state)) {
                        " " small class="field__trade" { "(" (trade) ")" }
                    }
                    @if !unit.is_empty() {
                        span class="visually-hidden" { " " (words::rocket_in_unit(spoken_unit(unit))) }
                    }
                }
            }
            span class="field__box" {
                input class="field__input" id=(id) type="text" inputmode=(keyboard)
                    autocomplete="off" spellcheck="false" maxlength="40"
                    data-field=(id) data-number="" value=(state.text_of(field))
                    placeholder=[stand_in] aria-describedby=(slot_id(field))
                    aria-invalid=[invalid(state, field)];
                @if !unit.is_empty() {
                    span class="field__unit" aria-hidden="true" { (unit) }
                }
            }
            (slot(state, field))
        }
    }
}

/// A name's field.
pub(crate) fn words(state: &State, field: Field, label: Text) -> Markup {
    let id = field.to_string();
    html! {
        div class="field field--words" data-part=[field.part()] {
            label class="field__label" for=(id) { (label) }
            span class="field__box" {
                input class="field__input field__input--words" id=(id) type="text"
                    autocomplete="off" maxlength="60" data-field=(id)
                    value=(state.text_of(field)) aria-describedby=(slot_id(field))
                    aria-invalid=[invalid(state, field)];
            }
            (slot(state, field))
        }
    }
}

/// A list to choose from; each entry with whether it is chosen. Its value is its place in
/// the list.
pub(crate) fn choice(
    state: &State,
    field: Field,
    label: Text,
    entries: &[(String, bool)],
) -> Markup {
    let id = format!("choice:{field}");
    let options = entries.iter().enumerate();
    html! {
        div class="field field--choice" data-part=[field.part()] {
            label class="field__label" for=(id) { (label) }
            select class="field__select" id=(id) data-choice=(field)
                aria-describedby=(slot_id(field)) aria-invalid=[invalid(state, field)] {
                @for (i, (name, chosen)) in options {
                    option value=(i) selected[*chosen] { (name) }
                }
            }
            (slot(state, field))
        }
    }
}

/// What is wrong in a field; empty while nothing is.
pub(crate) fn slot(state: &State, field: Field) -> Markup {
    let asked = state.draft(field).map(|draft| &draft.why);
    html! {
        div class="field__fault" id=(slot_id(field)) {
            @for (severity, sentence) in state.faults_of(field) {
                p class={
                    "field__words"
                    @if severity == Severity::Ask { " field__words--ask" }
                } { (sentence) }
                @if let Some(Unreadable::Ambiguous { small, large }) = asked {
                    @for answer in [small, large] {
                        button type="button" class="button button--small"
                            id=(format!("take:{field}:{answer}")) data-action="take"
                            data-target=(format!("{field} {answer}")) { (answer) }
                    }
                }
            }
        }
    }
}

/// Whether the value of a field cannot stand, as `aria-invalid` has it.
fn invalid(state: &State, field: Field) -> Option<&'static str> {
    let stops = |(severity, _): &(Severity, String)| *severity == Severity::Stop;
    state.faults_of(field).iter().any(stops).then_some("true")
}
