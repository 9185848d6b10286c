//! What the page has to do after a message.

use noseward_stability::Field;

use super::computer::Way;
use super::message::Paper;
use super::swing::BenchField;

/// One thing for the browser to do.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Effect {
    /// Redraw every output in the next frame.
    Redraw,
    /// Build the steps anew and keep the place of whoever is typing.
    RebuildSteps,
    /// Load the part that comes after the first drawing.
    LoadLater,
    /// Build the notebook's forms anew and keep the place of whoever is typing.
    RebuildNotebook,
    /// Put the text into a field of the notebook, if it differs.
    SetNote(String, String),
    /// Mark a field of the notebook as one that cannot be read, or take the mark away.
    MarkNote { id: String, is_wrong: bool },
    /// Keep this notebook in its place: another one is being opened.
    KeepNotebook { slot: u32, text: String },
    /// Forget what is kept in this place.
    DropNotebook(u32),
    /// Copy a text.
    CopyText(String),
    /// Put the text into a field, if it differs.
    SetValue(Field, String),
    /// Put the text into a field of the swing bench, if it differs.
    SetBench(BenchField, String),
    /// Put every value of the swing bench into its field.
    ShowBench,
    /// Draw the moving pictures of the swing bench.
    DrawMotion,
    /// Tell how much time has passed by the next frame.
    Animate,
    /// Move the focus to the element with this id.
    Focus(String),
    /// Bring the element with this id to the top of the window and move the focus there.
    Show(&'static str),
    /// Work out a little more as soon as there is time.
    Slice,
    /// Close every open menu.
    CloseMenus,
    /// Put the design into the address bar and, if allowed, keep it on this computer.
    Keep,
    /// Delete everything of this page from this computer.
    DeleteAll,
    /// Find out whether this computer allows something.
    Try(Way),
    /// Print.
    Print(Paper),
    /// Keep the units and the choice of measurements on this computer.
    KeepView,
    /// Copy the address with this after `#`.
    CopyLink(String),
    /// Give the person a file.
    Download {
        /// Its name.
        name: String,
        /// What it holds.
        text: String,
    },
}
