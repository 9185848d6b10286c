//! What the buttons of the place Class ask for.

use super::model::View;
use crate::places::message::Control;

/// Something that happens to what is gathered of a class.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ClassMsg {
    /// Another tab has put this where the class is kept, or has emptied it.
    Elsewhere(Option<String>),
    /// Files were chosen: they wait in their field.
    Chosen,
    /// Files with their names; without a text where one is too large or cannot be read.
    Files(Vec<(String, Option<String>)>),
    /// Whether somebody wants the camera.
    Camera(bool),
    /// To one of the views.
    Show(View),
    /// To take in what was pasted.
    Gather,
    /// To stop taking in; what came so far stays.
    Stop,
    /// The class as it was before the last gathering.
    Undo,
    /// To read a refused text again, as it was mended.
    Again(usize),
    /// To take a refused result all the same.
    Take(usize),
    /// To take every one that is refused for other rules, or for being unfinished.
    TakeAll,
    /// To let go of a refused text.
    LeaveOut(usize),
    /// To hold to the rules of the set-up in the form, or to none.
    HoldToRules(bool),
    /// To take in the row of numbers from paper.
    AddRow,
    /// To leave an entry out of charts and figures, or no longer.
    Hide(usize),
    /// To mark one, to come back to it.
    Mark(usize),
    /// To delete one.
    Remove(usize),
    /// Which separation stands along the chart: whether worked out, or in body widths.
    Computed(bool),
    InWidths(bool),
    /// Groups shown or hidden.
    Names,
    /// The big screen, or no longer.
    Board,
    /// A timer of so many minutes, by its place in the list; none.
    Timer(Option<usize>),
    /// What the clock says, in seconds, while the timer runs.
    Clock(f64),
    /// To show more rows of the table.
    More,
    /// To another notebook, to mark it.
    Step(usize),
    /// A statement is found in it, or no longer.
    Find(usize),
    /// To give something back.
    Report(usize),
    /// The invented class.
    Example,
    /// To let go of it.
    DropExample,
    /// All of it as a file.
    Save,
    /// Whether to ask if all of it is to be deleted.
    AskToDelete(bool),
    Delete,
}

impl ClassMsg {
    /// What a control means; `None` for one that means nothing.
    pub(crate) fn parse(control: &Control) -> Option<Self> {
        let Control { action, target } = control;
        let place = || target.parse::<usize>().ok();
        Some(match action.strip_prefix("cl-")? {
            "camera" => Self::Camera(true),
            "camera-off" => Self::Camera(false),
            "show" => Self::Show(*View::ALL.get(place()?)?),
            "gather" => Self::Gather,
            "stop" => Self::Stop,
            "undo" => Self::Undo,
            "again" => Self::Again(place()?),
            "take" => Self::Take(place()?),
            "take-all" => Self::TakeAll,
            "leave-out" => Self::LeaveOut(place()?),
            "hold" => Self::HoldToRules(true),
            "hold-none" => Self::HoldToRules(false),
            "add-row" => Self::AddRow,
            "hide" => Self::Hide(place()?),
            "mark" => Self::Mark(place()?),
            "remove" => Self::Remove(place()?),
            "measured" => Self::Computed(false),
            "computed" => Self::Computed(true),
            "lengths" => Self::InWidths(false),
            "widths" => Self::InWidths(true),
            "names" => Self::Names,
            "board" => Self::Board,
            "timer" => Self::Timer(Some(place()?)),
            "timer-stop" => Self::Timer(None),
            "more" => Self::More,
            "example" => Self::Example,
            "drop-example" => Self::DropExample,
            "save" => Self::Save,
            "ask-delete" => Self::AskToDelete(true),
            "keep" => Self::AskToDelete(false),
            "delete" => Self::Delete,
            "step" => Self::Step(place()?),
            "find" => Self::Find(place()?),
            "report" => Self::Report(place()?),
            _ => return None,
        })
    }
}
