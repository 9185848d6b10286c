//! What needs mending: a list over the drawing.

use maud::{Markup, html};
use noseward_stability::{
    Component, Field, FinField, SectionField, Severity, WeightField,
};

use crate::app::{Place, State};
use crate::places::rocket::{fin_words, is_bottle, is_shown};

/// Faults that stop the drawing, each leading to its field.
pub(crate) fn list(state: &State) -> Markup {
    let faults = state.faults();
    // A question stands at its field, unless that is not shown now.
    let stops: Vec<_> = faults
        .iter()
        .filter(|(field, severity, _)| {
            *severity == Severity::Stop
                || state.place != Place::Rocket
                || !is_shown(state, *field)
        })
        .collect();
    html! {
        @if !stops.is_empty() {
            div class="faults" {
                h3 class="faults__title" {
                    @if stops.len() == 1 { "One thing to mend" }
                    @else { (stops.len()) " things to mend" span class="narrow" { ", scroll here" } }
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

/// Where a field is, in words: the card it stands on and its label there.
pub(crate) fn place(state: &State, field: Field) -> String {
    let within = |what: &str| match field.part() {
        Some(part) => format!("{}, {what}", card_name(state, part)),
        None => what.to_owned(),
    };
    match field {
        Field::Name => "Rocket’s name".into(),
        Field::Sections => "Body".into(),
        Field::FinSets => "Fins".into(),
        Field::Weights => "Weights".into(),
        Field::TotalMass => "Measured".into(),
        Field::Section(_, field) => within(match field {
            SectionField::Kind => "shape",
            SectionField::Length => "length",
            SectionField::Diameter => "width",
            SectionField::ClosedFront => "front end",
            SectionField::Mass
            | SectionField::WeighedMass
            | SectionField::SheetDensity => "mass",
        }),
        Field::Fins(_, field) => within(match field {
            FinField::Count => "how many",
            FinField::Start => "start",
            FinField::Roll => "turned by",
            side
            @ (FinField::Root | FinField::Tip | FinField::Span | FinField::Sweep) => {
                fin_words(side).0
            }
            FinField::Planform | FinField::Point(..) => "outline",
            FinField::Mass | FinField::WeighedMass | FinField::SheetDensity => "mass",
        }),
        Field::Weight(_, field) => within(match field {
            WeightField::Label => "name",
            WeightField::Mass => "mass",
            WeightField::Position => "place",
        }),
    }
}

/// What the card of a part is called as the steps show it now.
fn card_name(state: &State, part: Component) -> String {
    match part {
        Component::Section(i)
            if !state.all_measurements && is_bottle(&state.design, i) =>
        {
            "Bottle".into()
        }
        _ => part.name(&state.design),
    }
}
