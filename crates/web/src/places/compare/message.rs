//! What the buttons of the place Compare ask for.

/// Something that happens where trials are compared. Trials are named by their numbers, plans
/// by their places in their list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum CompareMsg {
    /// Another trial of the same rocket.
    Again,
    BeginPlan(usize),
    Copy(u16),
    Open(u16),
    Delete(u16),
    Restore(u16),
    /// Towards the first or the last trial.
    Shift {
        id: u16,
        to_front: bool,
    },
    /// Beside the one that it is compared with.
    Pair(u16),
    AddPlan,
    RemovePlan(usize),
}

impl CompareMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        let id = || target.parse().ok();
        let place = || target.parse().ok();
        Some(match action {
            "nb-once-more" => Self::Again,
            "nb-begin-plan" => Self::BeginPlan(place()?),
            "nb-copy" => Self::Copy(id()?),
            "nb-open" => Self::Open(id()?),
            "nb-delete" => Self::Delete(id()?),
            "nb-restore" => Self::Restore(id()?),
            "nb-up" => Self::Shift { id: id()?, to_front: true },
            "nb-down" => Self::Shift { id: id()?, to_front: false },
            "nb-pair" => Self::Pair(id()?),
            "nb-plan-add" => Self::AddPlan,
            "nb-plan-remove" => Self::RemovePlan(place()?),
            _ => return None,
        })
    }
}
