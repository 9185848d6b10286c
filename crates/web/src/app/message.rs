//! What can happen on the page, and how the markup names it.

use noseward_stability::{BottleSize, Component, Example, Field, Resolution, UnitSystem};
use noseward_words as words;

use super::computer::{Capability, CapabilityProbe};
use super::edits::{Addition, Choice};
use super::notebook_state::NotebookMsg;
use super::place::Place;
use crate::places::PlaceMsg;
use crate::places::swing::SwingMsg;

/// Something that happened.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Msg {
    /// Text was typed into a field.
    Typed {
        field: Field,
        text: String,
    },
    /// Nothing was typed for a while.
    Paused,
    /// A field was left.
    Left {
        field: Field,
    },
    /// Arrow keys in a number's field, in steps up.
    Stepped {
        field: Field,
        steps: f64,
    },
    /// An answer to a question about a field.
    Take {
        field: Field,
        value: String,
    },
    /// A part was dragged along the ruler from where it was.
    Dragged {
        part: Component,
        from_mm: f64,
        by_px: f64,
    },
    /// Something was chosen from a list.
    Chose {
        choice: Choice,
        value: String,
    },
    /// A part was asked for.
    Add(Addition),
    Copy(Component),
    Remove(Component),
    MoveUp(Component),
    MoveDown(Component),
    AddCorner(usize),
    RemoveCorner(usize, usize),
    /// Another rocket to start from.
    Start(Start),
    Undo,
    Redo,
    AllMeasurements(bool),
    Units(UnitSystem),
    /// To the field that a fault names.
    Go(Field),
    /// To a place of the page.
    To(Place),
    /// The browser went back or forward to a place.
    Back(Place),
    CopyLink,
    /// Whether a text could be copied.
    Copied {
        text: String,
        is_link: bool,
        done: bool,
    },
    /// Everything as a file.
    Save,
    /// The rocket alone.
    SaveRocket,
    /// A file's or a pasted text.
    OpenText(String),
    /// A file is too large to be read at all.
    FileTooLarge {
        bytes: f64,
    },
    /// The address bar holds something else.
    HashChanged(String),
    /// The rocket from the link takes the place of the kept one.
    KeepThis,
    /// The kept rocket comes back.
    BackToMine,
    Dismiss,
    /// Another tab has kept this, or has deleted what was kept.
    KeptElsewhere(Option<String>),
    /// What is kept and cannot be read, as a file.
    SaveKept,
    /// Whether to ask if everything is to be deleted.
    AskToDelete(bool),
    DeleteAll,
    /// Everything was deleted, but for so many entries.
    Deleted {
        left: usize,
    },
    /// To try whether this computer allows something.
    Try(Capability),
    /// How that went.
    Tried(Capability, CapabilityProbe),
    /// Whether the page starts without a network; `None` while that is open.
    Offline(Option<bool>),
    Print(Paper),
    /// The place as it is, on paper.
    PrintPlace,
    /// What was due was written, or the browser refused to.
    Wrote {
        refused: bool,
    },
    Resized {
        width_px: f64,
        height_px: f64,
        graph_px: f64,
        window_px: (u32, u32),
    },
    /// There is time to work out a little more of the uncertainty.
    Slice,
    /// What is still to be worked out is needed now.
    WorkOut,
    /// Other steps of ruler and scales.
    Resolution(Resolution),
    /// Another language.
    Speak(words::Choice),
    /// Another language beside that one, or none.
    Beside(Option<&'static words::Language>),
    /// The sentences of a language, or that they did not come.
    TableCame(Option<Vec<u8>>),
    /// Whether everything is half as large again, for a projector.
    Big(bool),
    /// A message that only says what was done has stood long enough.
    Passed,
    /// What is printed, as long as it is; `None` afterwards.
    Printing(Option<Paper>),
    /// The reader's system asks for stillness, or no longer.
    Still(bool),
    /// Something in the notebook.
    Notebook(NotebookMsg),
    /// Another angle of the air, in degrees.
    Angle(f64),
}

/// What a message is in the history of the document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Step {
    /// It never changes the document.
    None,
    /// Whatever it changes is one step.
    One,
    /// Typing in a field: one step until the field is left.
    Typing(String),
    /// It ends the step that goes on.
    Left,
    /// What it brings was not done here.
    FromElsewhere,
}

impl From<PlaceMsg> for Msg {
    fn from(msg: PlaceMsg) -> Self {
        Self::Notebook(NotebookMsg::Place(msg))
    }
}

impl From<SwingMsg> for Msg {
    fn from(msg: SwingMsg) -> Self {
        PlaceMsg::Swing(msg).into()
    }
}

impl Msg {
    /// What this message is in the history.
    pub(super) fn step(&self) -> Step {
        match self {
            Self::Typed { field, .. } | Self::Stepped { field, .. } => {
                Step::Typing(field.to_string())
            }
            Self::Dragged { part, .. } => Step::Typing(part.to_string()),
            Self::Notebook(NotebookMsg::Typed { field, .. }) => {
                Step::Typing(field.clone())
            }
            Self::Notebook(NotebookMsg::Place(PlaceMsg::Swing(SwingMsg::Typed(
                field,
                _,
            )))) => Step::Typing(field.id()),
            Self::Left { .. }
            | Self::Notebook(NotebookMsg::Left { .. })
            | Self::Notebook(NotebookMsg::Place(PlaceMsg::Swing(SwingMsg::Left(_)))) => {
                Step::Left
            }
            Self::Notebook(
                NotebookMsg::Kept { .. }
                | NotebookMsg::KeptElsewhere { .. }
                | NotebookMsg::IsKept { .. }
                | NotebookMsg::Loaded(..),
            ) => Step::FromElsewhere,
            Self::Notebook(
                NotebookMsg::Again
                | NotebookMsg::Print(_)
                | NotebookMsg::Place(PlaceMsg::Swing(
                    SwingMsg::Tick(_)
                    | SwingMsg::At(_)
                    | SwingMsg::Play(_)
                    | SwingMsg::Step
                    | SwingMsg::Rewind
                    | SwingMsg::Speed(_),
                )),
            )
            | Self::To(_)
            | Self::Back(_)
            | Self::Go(_)
            | Self::Offline(_)
            | Self::Try(_)
            | Self::Tried(..)
            | Self::Wrote { .. }
            | Self::Speak(_)
            | Self::Beside(_)
            | Self::TableCame(_)
            | Self::Big(_)
            | Self::Units(_)
            | Self::AllMeasurements(_)
            | Self::Print(_)
            | Self::PrintPlace
            | Self::Printing(_)
            | Self::Passed
            | Self::Dismiss
            | Self::Copied { .. }
            | Self::Still(_)
            | Self::Undo
            | Self::Redo
            | Self::Slice
            | Self::WorkOut
            | Self::Paused
            | Self::Resized { .. }
            | Self::Angle(_)
            | Self::KeepThis
            | Self::Deleted { .. } => Step::None,
            _ => Step::One,
        }
    }
}

/// What is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Paper {
    /// The rocket with all that was found.
    Rocket,
    /// The lesson, for groups without a computer.
    Lesson,
    /// The swing test.
    Swing,
    /// The open notebook.
    Notebook,
    /// The sheet that the place Paper shows.
    Sheets,
    /// The report of the group whose notebook is marked.
    Group,
    /// The report of every group.
    Groups,
    /// The report of the class.
    Class,
}

/// A rocket to start from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Start {
    Example(Example),
    Bottle(BottleSize),
}

impl Msg {
    /// The message of a control, from its `data-action` and `data-target`. `None` when
    /// the markup names something that is not there; a test walks all markup.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        let part = || target.parse::<Component>().ok();
        Some(match action {
            "add" => Self::Add(Addition::parse(target)?),
            "copy" => Self::Copy(part()?),
            "remove" => Self::Remove(part()?),
            "up" => Self::MoveUp(part()?),
            "down" => Self::MoveDown(part()?),
            "add-corner" => Self::AddCorner(target.parse().ok()?),
            "remove-corner" => {
                let (set, corner) = target.split_once(' ')?;
                Self::RemoveCorner(set.parse().ok()?, corner.parse().ok()?)
            }
            "take" => {
                let (field, value) = target.split_once(' ')?;
                Self::Take { field: field.parse().ok()?, value: value.to_owned() }
            }
            "start" => {
                Self::Start(super::starts().into_iter().nth(target.parse().ok()?)?)
            }
            "undo" => Self::Undo,
            "redo" => Self::Redo,
            "all" => Self::AllMeasurements(true),
            "few" => Self::AllMeasurements(false),
            "metric" => Self::Units(UnitSystem::Metric),
            "inch" => Self::Units(UnitSystem::Inch),
            "go" => Self::Go(target.parse().ok()?),
            "to" => Self::To(Place::parse(target)?),
            "big" => Self::Big(true),
            "usual" => Self::Big(false),
            "copy-link" => Self::CopyLink,
            "save" => Self::Save,
            "save-rocket" => Self::SaveRocket,
            "keep-this" => Self::KeepThis,
            "back-to-mine" => Self::BackToMine,
            "dismiss" => Self::Dismiss,
            "save-kept" => Self::SaveKept,
            "ask-to-delete" => Self::AskToDelete(true),
            "keep-all" => Self::AskToDelete(false),
            "delete-now" => Self::DeleteAll,
            "try" => Self::Try(Capability::parse(target)?),
            "works" => Self::Tried(Capability::parse(target)?, CapabilityProbe::Works),
            "barred" => Self::Tried(Capability::parse(target)?, CapabilityProbe::Barred),
            "print" => Self::Print(Paper::Rocket),
            "print-lesson" => Self::Print(Paper::Lesson),
            "print-notebook" => Self::Print(Paper::Notebook),
            "print-place" => Self::PrintPlace,
            "print-swing" => Self::Print(Paper::Swing),
            "nb-again" => Self::Notebook(NotebookMsg::Again),
            _ => PlaceMsg::parse(action, target)?.into(),
        })
    }
}
