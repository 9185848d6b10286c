//! What the buttons of the place for whoever leads ask for.

/// Something that happens to a whole notebook.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum LeadMsg {
    /// Another group begins, with a notebook of its own.
    NewGroup,
    /// Whether to ask if the open notebook is to be deleted.
    AskToDelete(bool),
    DeleteNow,
    /// The open notebook is freed from its set-up.
    Lift,
}

impl LeadMsg {
    /// The message of a control, from its action.
    pub(crate) fn parse(action: &str) -> Option<Self> {
        Some(match action {
            "nb-new-group" => Self::NewGroup,
            "nb-ask-delete" => Self::AskToDelete(true),
            "nb-keep-it" => Self::AskToDelete(false),
            "nb-delete-now" => Self::DeleteNow,
            "nb-lift" => Self::Lift,
            _ => return None,
        })
    }
}
