//! What a button of the notebook asks for.

use noseward_lesson::{Statement, SwingOutcome};
use noseward_link::Format;

/// A press of one of the notebook's buttons. Trials are named by their numbers, plans,
/// changes and sentences by their places in their lists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Press {
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
    Outcome(SwingOutcome),
    Lock,
    UndoChange(usize),
    AllowTwoChanges,
    Pair(u16),
    AddPlan,
    RemovePlan(usize),
    /// A sentence that is offered for a box of the conclusion.
    Use(Statement, usize),
    /// All of it: the rocket alone where nothing is written.
    Save,
    SaveRocket,
    Spreadsheet(Format),
    PlainText,
    CopyTable(Format),
    CopyResult(u16),
    CopyLink,
    Symbols,
    NewGroup,
    AskToDelete(bool),
    DeleteNow,
}

impl Press {
    /// The press of a control, from its action and its target; `None` for one that means
    /// nothing.
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
            "nb-outcome" => {
                let outcome = SwingOutcome::ALL.get(place()?).copied();
                Self::Outcome(outcome.filter(|outcome| outcome.can_be_predicted())?)
            }
            "nb-lock" => Self::Lock,
            "nb-undo-change" => Self::UndoChange(place()?),
            "nb-allow" => Self::AllowTwoChanges,
            "nb-pair" => Self::Pair(id()?),
            "nb-plan-add" => Self::AddPlan,
            "nb-plan-remove" => Self::RemovePlan(place()?),
            "nb-use" => {
                let (of, sentence) = target.split_once(' ')?;
                let of = *Statement::ALL.get(of.parse::<usize>().ok()?)?;
                Self::Use(of, sentence.parse().ok()?)
            }
            "nb-save" => Self::Save,
            "nb-csv-point" => Self::Spreadsheet(Format::PointComma),
            "nb-csv-comma" => Self::Spreadsheet(Format::CommaSemicolon),
            "nb-text" => Self::PlainText,
            "nb-copy-table" => Self::CopyTable(Format::Tabs),
            "nb-copy-table-comma" => Self::CopyTable(Format::TabsComma),
            "nb-copy-result" => Self::CopyResult(id()?),
            "nb-copy-link" => Self::CopyLink,
            "nb-symbols" => Self::Symbols,
            "nb-new-group" => Self::NewGroup,
            "nb-ask-delete" => Self::AskToDelete(true),
            "nb-keep-it" => Self::AskToDelete(false),
            "nb-delete-now" => Self::DeleteNow,
            _ => return None,
        })
    }
}
