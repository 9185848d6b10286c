//! What can happen in the places that load later: each has its own messages.

use super::class::ClassMsg;
use super::compare::CompareMsg;
use super::conclude::ConcludeMsg;
use super::hand_in::HandInMsg;
use super::join::JoinMsg;
use super::lead::LeadMsg;
use super::predict::PredictMsg;
use super::set_up::SetUpMsg;
use super::swing::SwingMsg;

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
    SetUp(SetUpMsg),
    Class(ClassMsg),
}

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
            .or_else(|| SetUpMsg::parse(action, target).map(Self::SetUp))
            .or_else(|| ClassMsg::parse(action, target).map(Self::Class))
    }
}
