//! What the page has to do after a message. A place adds none of these.

use super::computer::Capability;
use super::message::Paper;
use crate::part::Part;

/// One thing for the browser to do.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Effect {
    /// Bring the page up to date in the next frame.
    Redraw,
    /// Another place is shown: its address and title, and the focus on its heading.
    Arrive {
        /// Whether it is a step in the browser's history.
        step: bool,
    },
    /// Load a part of the page.
    Load(Part),
    /// Keep this notebook in its place: another one is being opened.
    KeepNotebook { slot: u32, text: String },
    /// Forget what is kept in this place.
    DropNotebook(u32),
    /// Put a text on the clipboard; a link is told as one.
    Copy { text: String, is_link: bool },
    /// Draw the moving pictures of the swing test.
    DrawMotion,
    /// Tell the class what the clock says, a moment from now.
    Clock,
    /// Tell how much time has passed by the next frame.
    Animate,
    /// Move the focus to the element with this id.
    Focus(String),
    /// The page speaks another language: what stands in it from the start is to follow.
    Speak,
    /// Fetch the sentences of the language with this key.
    FetchTable(&'static str),
    /// Work out a little more as soon as there is time.
    Slice,
    /// Have a part look at something where the browser is.
    Look(Looking),
    /// Close every open menu.
    CloseMenus,
    /// Put the design into the address bar and, if allowed, keep it on this computer.
    Keep,
    /// Keep the units and the other choices of the view on this computer.
    KeepView,
    /// Delete everything of this page from this computer.
    DeleteAll,
    /// Find out whether this computer allows something.
    Try(Capability),
    /// Print.
    Print(Paper),
    /// Print the place as it is.
    PrintPlace,
    /// Give the person a file.
    Download {
        /// Its name.
        name: String,
        /// What it holds.
        text: String,
    },
    /// The same of what may be no text, or show it in a tab of its own.
    Hand {
        /// Its name.
        name: String,
        /// What it holds.
        bytes: Vec<u8>,
        /// Whether it is shown.
        opens: bool,
    },
}

/// What a part for whoever leads does where the browser is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Looking {
    /// Take the files that were chosen for a class; pictures are looked at one after the other.
    AtFiles,
    StartCamera,
    StopCamera,
    /// Paint what the place Paper shows, and save it as a picture.
    AtSheet,
}

impl Looking {
    /// The part that does it.
    pub(crate) fn part(self) -> Part {
        match self {
            Self::AtFiles | Self::StartCamera | Self::StopCamera => Part::Class,
            Self::AtSheet => Part::Paper,
        }
    }
}
