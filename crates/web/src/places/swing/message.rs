//! What can happen on the swing bench.

use noseward_lesson::SwingOutcome;

use super::model::{CARDS, SetupField};

/// Something that happens on the bench.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum SwingMsg {
    /// Text was typed into a field.
    Typed(SetupField, String),
    /// A field was left.
    Left(SetupField),
    /// The slider was moved, in degrees.
    Start(f64),
    Play(bool),
    /// One picture further.
    Step,
    /// Back to the start.
    Rewind,
    /// Another speed.
    Speed(f64),
    /// So many seconds have passed.
    Tick(f64),
    /// To a time on the graph, in seconds.
    At(f64),
    Card(usize),
    SpaceChecked(bool),
    /// What somebody saw.
    Swung(SwingOutcome),
    /// The last outcome was a slip.
    TakeBack,
    /// From now on the present rocket is the one to compare with.
    Compare,
}

impl SwingMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        Some(match action {
            "swing-play" => Self::Play(true),
            "swing-pause" => Self::Play(false),
            "swing-step" => Self::Step,
            "swing-rewind" => Self::Rewind,
            "swing-speed" => Self::Speed(target.parse::<u8>().ok().map(percent)?),
            "swing-card" => Self::Card(target.parse().ok().filter(|card| *card < CARDS)?),
            "space-checked" => Self::SpaceChecked(true),
            "space-open" => Self::SpaceChecked(false),
            "swung" => Self::Swung(
                SwingOutcome::ALL.get(target.parse::<usize>().ok()?).copied()?,
            ),
            "swung-wrong" => Self::TakeBack,
            "swing-compare" => Self::Compare,
            _ => return None,
        })
    }
}

fn percent(value: u8) -> f64 {
    f64::from(value) / 100.0
}
