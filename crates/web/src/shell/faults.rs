//! What needs mending: a list over the drawing.

use maud::{Markup, html};
use noseward_drawing::part_name;
use noseward_stability::{
    Component, Field, FinField, SectionField, Severity, WeightField,
};
use noseward_words::{self as words, Measure};

use super::marked::marked;
use crate::app::{Place, State};
use crate::places::rocket::{is_bottle, is_shown};

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
                    (words::faults_to_mend(stops.len().into()))
                    @if stops.len() > 1 { span class="narrow" { " " (words::faults_scroll()) } }
                }
                ul class="faults__list" {
                    @for (field, _, sentence) in stops {
                        li {
                            (marked(
                                &words::faults_line(&place(state, *field), sentence),
                                &|_, run| html! {
                                    button type="button" class="faults__go"
                                        id=(format!("go:{field}")) data-action="go"
                                        data-target=(field) { (run) }
                                },
                            ))
                        }
                    }
                }
            }
        }
    }
}

/// Where a field is, in words: the card it stands on and its label there.
pub(crate) fn place(state: &State, field: Field) -> String {
    let measure = match field {
        Field::Name => return words::faults_rocket_name().into(),
        Field::Sections => return words::faults_body().into(),
        Field::FinSets => return words::faults_fins().into(),
        Field::Weights => return words::faults_weights().into(),
        Field::TotalMass => return words::faults_measured().into(),
        Field::Section(_, field) => match field {
            SectionField::Kind => Measure::Shape,
            SectionField::Length => Measure::Length,
            SectionField::Diameter => Measure::Width,
            SectionField::ClosedFront => Measure::FrontEnd,
            SectionField::Mass
            | SectionField::WeighedMass
            | SectionField::SheetDensity => Measure::Mass,
        },
        Field::Fins(_, field) => match field {
            FinField::Count => Measure::HowMany,
            FinField::Start => Measure::Start,
            FinField::Roll => Measure::TurnedBy,
            FinField::Root => Measure::AlongTheBody,
            FinField::Tip => Measure::OuterEdge,
            FinField::Span => Measure::OutFromTheBody,
            FinField::Sweep => Measure::SlantsBackBy,
            FinField::Planform | FinField::Point(..) => Measure::Outline,
            FinField::Mass | FinField::WeighedMass | FinField::SheetDensity => {
                Measure::Mass
            }
        },
        Field::Weight(_, field) => match field {
            WeightField::Label => Measure::Name,
            WeightField::Mass => Measure::Mass,
            WeightField::Position => Measure::Place,
        },
    };
    let card = field.part().map(|part| card_name(state, part));
    words::faults_field(&card.unwrap_or_default(), measure)
}

/// What the card of a part is called as the steps show it now.
fn card_name(state: &State, part: Component) -> String {
    match part {
        Component::Section(i)
            if !state.all_measurements && is_bottle(&state.design, i) =>
        {
            words::faults_bottle().into()
        }
        _ => part_name(&state.design, part),
    }
}
