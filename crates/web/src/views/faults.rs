//! What needs mending: a list at the top, and a sentence at each field.

use maud::{Markup, html};
use noseward_stability::{Field, Severity};

use super::field::slot_id;
use super::{FaultSlot, part_name};
use crate::app::{State, Unreadable};

/// Faults that stop the drawing, each leading to its field; questions only stand at
/// theirs.
pub(super) fn list(state: &State) -> Markup {
    let faults = state.faults();
    let stops: Vec<_> =
        faults.iter().filter(|(_, severity, _)| *severity == Severity::Stop).collect();
    html! {
        @if !stops.is_empty() {
            div class="faults" {
                h3 class="faults__title" {
                    @if stops.len() == 1 { "One thing to mend" }
                    @else { (stops.len()) " things to mend" }
                }
                ul class="faults__list" {
                    @for (field, _, sentence) in stops {
                        li {
                            button type="button" class="faults__go"
                                id=(format!("go:{field}")) data-action="go"
                                data-target=(field) { (place(state, *field)) }
                            ": " (sentence)
                        }
                    }
                }
            }
        }
    }
}

/// Where a field is, in words.
fn place(state: &State, field: Field) -> String {
    match field.part() {
        Some(part) => part_name(state, part),
        None => match field {
            Field::Name => "Rocket’s name".into(),
            Field::FinSets => "Fins".into(),
            Field::Weights => "Weights".into(),
            Field::Measured(_) => "Measured".into(),
            _ => "Body".into(),
        },
    }
}

/// The sentence at each field that has one. Fields without keep an empty place.
pub(super) fn slots(state: &State) -> Vec<FaultSlot> {
    let faults = state.faults().into_iter();
    faults
        .map(|(field, severity, sentence)| {
            let markup = html! {
                p class={
                    "field__words"
                    @if severity == Severity::Ask { " field__words--ask" }
                } { (sentence) }
                @if let Some(Unreadable::Ambiguous { small, large }) =
                    state.draft(field).map(|draft| &draft.why) {
                    @for answer in [small, large] {
                        button type="button" class="button button--small"
                            id=(format!("take:{field}:{answer}")) data-action="take"
                            data-target=(format!("{field} {answer}")) { (answer) }
                    }
                }
            };
            FaultSlot {
                id: slot_id(field),
                controls: [field.to_string(), format!("choice:{field}")],
                markup: markup.into_string(),
                stops: severity == Severity::Stop,
            }
        })
        .collect()
}
