//! What the buttons of the place Predict ask for.

use noseward_lesson::SwingOutcome;

/// Something that happens where a group predicts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum PredictMsg {
    /// This is what the rocket will do.
    Outcome(SwingOutcome),
    Lock,
    /// One of the changes is taken back, by its place in their list.
    UndoChange(usize),
    /// Two changes at once are allowed, or no longer.
    AllowTwoChanges,
}

impl PredictMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        let place = || target.parse::<usize>().ok();
        Some(match action {
            "nb-outcome" => {
                let outcome = SwingOutcome::ALL.get(place()?).copied();
                Self::Outcome(outcome.filter(|outcome| outcome.can_be_predicted())?)
            }
            "nb-lock" => Self::Lock,
            "nb-undo-change" => Self::UndoChange(place()?),
            "nb-allow" => Self::AllowTwoChanges,
            _ => return None,
        })
    }
}
