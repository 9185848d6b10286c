//! What the buttons of the place Set up ask for.

use noseward_lesson::{Changeable, LessonPlace};

use crate::places::message::Control;

/// Something that happens to the set-up in the form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum SetUpMsg {
    /// Whether this may be changed.
    May(Changeable),
    /// Whether this place is shown.
    Shows(LessonPlace),
    TwoChanges,
    /// To begin with the rocket on the page.
    TakeRocket,
    /// String and turns that fit into the hall: which of those that are offered.
    TakeRoom(usize),
    CopyLink,
    Save,
    /// The set-up before another one was opened here.
    Back,
}

impl SetUpMsg {
    /// What a control means; `None` for one that means nothing.
    pub(crate) fn parse(control: &Control) -> Option<Self> {
        let Control { action, target } = control;
        let number = || target.parse::<usize>().ok();
        Some(match &**action {
            "su-may" => Self::May(*Changeable::ALL.get(number()?)?),
            "su-shows" => Self::Shows(*LessonPlace::ALL.get(number()?)?),
            "su-two" => Self::TwoChanges,
            "su-rocket" => Self::TakeRocket,
            "su-room" => Self::TakeRoom(number()?),
            "su-copy" => Self::CopyLink,
            "su-save" => Self::Save,
            "su-back" => Self::Back,
            _ => return None,
        })
    }
}
