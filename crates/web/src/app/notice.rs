//! The one message above the steps.

use noseward_lesson::NotebookError;
use noseward_link::{LinkError, Missing};

impl Notice {
    /// Whether it only says what was done, so that the next change takes it away.
    pub(crate) fn is_passing(&self) -> bool {
        matches!(
            self,
            Self::Opened
                | Self::Started(_)
                | Self::Copied
                | Self::Saved(_)
                | Self::KeptThis
                | Self::Deleted { left: 0 }
        )
    }
}

/// What the message is about.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Notice {
    /// A link ended too early.
    LinkCut(Vec<Missing>),
    /// A link could not be trusted.
    LinkDamaged(LinkError),
    /// A file or pasted text could not be read; why.
    FileFault(String),
    /// The notebook has no room for another trial.
    NoRoom(NotebookError),
    /// This browser keeps nothing.
    KeepsNothing,
    /// This browser refused to keep the last changes.
    NotKept,
    /// Everything was deleted from this computer, but for so many entries.
    Deleted { left: usize },
    /// The rocket from the link is kept in place of the person's own.
    KeptThis,
    /// Another rocket was opened in place of the present one.
    Opened,
    /// A new rocket was started; its name.
    Started(String),
    /// The link is on the clipboard.
    Copied,
    /// The clipboard is blocked: the link, to copy by hand.
    CopyByHand(String),
    /// The file was handed over; its name.
    Saved(String),
}
