//! The one message above the place.

use noseward_link::Missing;

impl Notice {
    /// What was done, in words.
    pub(crate) fn said(words: impl Into<String>) -> Self {
        Self::Said { alarming: false, words: words.into() }
    }

    /// Whether it only says what was done, so that the next change takes it away.
    pub(crate) fn is_passing(&self) -> bool {
        matches!(
            self,
            Self::Opened
                | Self::Started(_)
                | Self::Copied { .. }
                | Self::Said { alarming: false, .. }
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
    /// A link could not be trusted; why.
    LinkDamaged(String),
    /// A file or pasted text could not be read; why.
    FileFault(String),
    /// What happened, in words.
    Said { alarming: bool, words: String },
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
    /// The link is on the clipboard; whether it holds the notebook too.
    Copied { with_notebook: bool },
    /// The clipboard is blocked: the text, to copy by hand.
    CopyByHand(String),
    /// The file was handed over; its name.
    Saved(String),
}
