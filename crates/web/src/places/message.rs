//! What can happen in the places that load later: each has its own messages.

use super::class::ClassMsg;
use super::compare::CompareMsg;
use super::conclude::ConcludeMsg;
use super::hand_in::HandInMsg;
use super::join::JoinMsg;
use super::lead::LeadMsg;
use super::predict::PredictMsg;
use super::swing::SwingMsg;
use crate::part::Part;

/// Something that happens in a place.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum PlaceMsg {
    Predict(PredictMsg),
    Swing(SwingMsg),
    Compare(CompareMsg),
    Conclude(ConcludeMsg),
    HandIn(HandInMsg),
    Lead(LeadMsg),
    Join(JoinMsg),
    Class(ClassMsg),
    /// A control of a place that only whoever leads opens: what it means its part knows, so
    /// that pupils' computers need not.
    Led(Part, Control),
}

/// A button, as its markup names it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Control {
    pub(crate) action: Box<str>,
    pub(crate) target: Box<str>,
}

/// How the actions of the places that only whoever leads opens begin.
const LED: [(&str, Part); 3] =
    [("su-", Part::SetUp), ("cl-", Part::Class), ("pp-", Part::Paper)];

impl PlaceMsg {
    /// The message of a control, from its action and its target; `None` for one that means
    /// nothing.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        None.or_else(|| PredictMsg::parse(action, target).map(Self::Predict))
            .or_else(|| SwingMsg::parse(action, target).map(Self::Swing))
            .or_else(|| CompareMsg::parse(action, target).map(Self::Compare))
            .or_else(|| ConcludeMsg::parse(action, target).map(Self::Conclude))
            .or_else(|| HandInMsg::parse(action, target).map(Self::HandIn))
            .or_else(|| LeadMsg::parse(action).map(Self::Lead))
            .or_else(|| JoinMsg::parse(action, target).map(Self::Join))
            .or_else(|| {
                let (_, part) =
                    LED.into_iter().find(|(led, _)| action.starts_with(led))?;
                let control = Control { action: action.into(), target: target.into() };
                Some(Self::Led(part, control))
            })
    }
}
