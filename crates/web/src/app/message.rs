//! What can happen on the page, and how the markup names it.

use noseward_stability::{BottleSize, Example, Field, Part, Resolution, UnitSystem};

use super::computer::{Trial, Way};
use super::desk::NotebookMsg;
use super::edits::{Addition, Choice};
use super::press::Press;
use super::swing::BenchMsg;

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
        part: Part,
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
    Copy(Part),
    Remove(Part),
    MoveUp(Part),
    MoveDown(Part),
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
    /// To the reasons for the outcome.
    Why,
    /// To the notebook.
    ToNotebook,
    CopyLink,
    /// Whether the link could be copied.
    Copied {
        link: String,
        done: bool,
    },
    Save,
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
    Try(Way),
    /// How that went.
    Tried(Way, Trial),
    /// Whether the page starts without a network; `None` while that is open.
    Offline(Option<bool>),
    Print(Paper),
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
    /// Whether the outcome stays hidden until it is predicted.
    PredictFirst(bool),
    /// What somebody predicts, as a place in the list of outcomes.
    Predicted(usize),
    /// The graphs have come into view, or left it.
    GraphsInView(bool),
    /// Something on the swing bench.
    Bench(BenchMsg),
    /// Something in the notebook.
    Notebook(NotebookMsg),
    /// Another angle of the air, in degrees.
    Angle(f64),
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
        let part = || target.parse::<Part>().ok();
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
            "why" => Self::Why,
            "to-notebook" => Self::ToNotebook,
            "predict-first" => Self::PredictFirst(true),
            "tell-at-once" => Self::PredictFirst(false),
            "predict" => Self::Predicted(target.parse().ok()?),
            "copy-link" => Self::CopyLink,
            "save" => Self::Save,
            "keep-this" => Self::KeepThis,
            "back-to-mine" => Self::BackToMine,
            "dismiss" => Self::Dismiss,
            "save-kept" => Self::SaveKept,
            "ask-to-delete" => Self::AskToDelete(true),
            "keep-all" => Self::AskToDelete(false),
            "delete-now" => Self::DeleteAll,
            "try" => Self::Try(Way::parse(target)?),
            "works" => Self::Tried(Way::parse(target)?, Trial::Works),
            "barred" => Self::Tried(Way::parse(target)?, Trial::Barred),
            "print" => Self::Print(Paper::Rocket),
            "print-lesson" => Self::Print(Paper::Lesson),
            "print-notebook" => Self::Print(Paper::Notebook),
            "print-swing" => Self::Print(Paper::Swing),
            "nb-again" => Self::Notebook(NotebookMsg::Again),
            _ if action.starts_with("nb-") => {
                Self::Notebook(NotebookMsg::Pressed(Press::parse(action, target)?))
            }
            _ => Self::Bench(BenchMsg::parse(action, target)?),
        })
    }
}
