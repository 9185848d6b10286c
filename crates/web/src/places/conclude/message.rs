//! What the buttons of the place Conclude ask for.

use noseward_lesson::Statement;

/// Something that happens where a group concludes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum ConcludeMsg {
    /// A sentence that is offered for a box, by its place in their list.
    Use(Statement, usize),
}

impl ConcludeMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        match action {
            "nb-use" => {
                let (of, sentence) = target.split_once(' ')?;
                let of = *Statement::ALL.get(of.parse::<usize>().ok()?)?;
                Some(Self::Use(of, sentence.parse().ok()?))
            }
            _ => None,
        }
    }
}
