//! The notebook's fields: their names in the markup and the way to what they hold.

use noseward_lesson::{BalancePoint, REPEATS, Statement, Trial};
use noseward_stability::Quantity;

use crate::app::State;

/// A field of the notebook.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Note {
    RocketLength,
    CutoutLength,
    /// From which end a point is measured (a choice).
    From(BalancePoint),
    Guess(BalancePoint),
    Reading(BalancePoint, usize),
    /// Which reading is left out (a choice).
    LeftOut(BalancePoint),
    WhyLeftOut(BalancePoint),
    Because,
    Words,
    Plan,
    Statement(Statement),
    Colour,
    Number,
    Level,
    Support,
    /// What is told when (a choice).
    Telling,
    /// The notebook that is open (a choice).
    Slot,
    /// The trial that the one in hand is compared with (a choice).
    Compared,
}

const POINTS: [(BalancePoint, &str); 2] =
    [(BalancePoint::Mass, "mass"), (BalancePoint::Pressure, "pressure")];
const STATEMENTS: [(Statement, &str); 4] = [
    (Statement::Claim, "claim"),
    (Statement::Evidence, "evidence"),
    (Statement::Reason, "reason"),
    (Statement::Trust, "trust"),
];

fn word<T: PartialEq + Copy>(of: T, words: &[(T, &'static str)]) -> &'static str {
    words.iter().find(|(known, _)| *known == of).map_or("", |(_, word)| word)
}

fn named<T: Copy>(name: &str, words: &[(T, &str)]) -> Option<T> {
    words.iter().find(|(_, word)| *word == name).map(|(of, _)| *of)
}

impl Note {
    /// Its name in the markup, which is the element's id too.
    pub(crate) fn name(self) -> String {
        let of = |what: &str, point: BalancePoint| {
            format!("nb:{what}:{}", word(point, &POINTS))
        };
        match self {
            Self::RocketLength => "nb:rocket-length".into(),
            Self::CutoutLength => "nb:cutout-length".into(),
            Self::From(point) => of("from", point),
            Self::Guess(point) => of("guess", point),
            Self::Reading(point, i) => format!("{}:{i}", of("reading", point)),
            Self::LeftOut(point) => of("left-out", point),
            Self::WhyLeftOut(point) => of("why-left-out", point),
            Self::Because => "nb:because".into(),
            Self::Words => "nb:note".into(),
            Self::Plan => "nb:plan".into(),
            Self::Statement(statement) => format!("nb:{}", word(statement, &STATEMENTS)),
            Self::Colour => "nb:colour".into(),
            Self::Number => "nb:number".into(),
            Self::Level => "nb:level".into(),
            Self::Support => "nb:support".into(),
            Self::Telling => "nb:telling".into(),
            Self::Slot => "nb:slot".into(),
            Self::Compared => "nb:compared".into(),
        }
    }

    /// The field with a name.
    pub(crate) fn parse(name: &str) -> Option<Self> {
        let mut steps = name.strip_prefix("nb:")?.split(':');
        let what = steps.next()?;
        let point = steps.next().map(|point| named(point, &POINTS));
        let index = steps.next().and_then(|i| i.parse::<usize>().ok());
        if let Some(statement) = named(what, &STATEMENTS) {
            return Some(Self::Statement(statement));
        }
        Some(match (what, point) {
            ("rocket-length", None) => Self::RocketLength,
            ("cutout-length", None) => Self::CutoutLength,
            ("from", Some(point)) => Self::From(point?),
            ("guess", Some(point)) => Self::Guess(point?),
            ("reading", Some(point)) => {
                Self::Reading(point?, index.filter(|i| *i < REPEATS)?)
            }
            ("left-out", Some(point)) => Self::LeftOut(point?),
            ("why-left-out", Some(point)) => Self::WhyLeftOut(point?),
            ("because", None) => Self::Because,
            ("note", None) => Self::Words,
            ("plan", None) => Self::Plan,
            ("colour", None) => Self::Colour,
            ("number", None) => Self::Number,
            ("level", None) => Self::Level,
            ("support", None) => Self::Support,
            ("telling", None) => Self::Telling,
            ("slot", None) => Self::Slot,
            ("compared", None) => Self::Compared,
            _ => return None,
        })
    }

    /// Whether it belongs to a trial, so that writing in it begins one.
    pub(crate) fn is_of_trial(self) -> bool {
        match self {
            Self::RocketLength
            | Self::CutoutLength
            | Self::From(_)
            | Self::Guess(_)
            | Self::Reading(..)
            | Self::LeftOut(_)
            | Self::WhyLeftOut(_)
            | Self::Because
            | Self::Compared => true,
            Self::Words
            | Self::Plan
            | Self::Statement(_)
            | Self::Colour
            | Self::Number
            | Self::Level
            | Self::Support
            | Self::Telling
            | Self::Slot => false,
        }
    }

    /// Whether a length stands in it.
    pub(crate) fn is_length(self) -> bool {
        matches!(
            self,
            Self::RocketLength | Self::CutoutLength | Self::Guess(_) | Self::Reading(..)
        )
    }

    /// The length in it, in millimetres.
    pub(crate) fn length_mm(self, trial: &Trial) -> Option<f64> {
        let measured = &trial.measured;
        match self {
            Self::RocketLength => measured.rocket_length_mm,
            Self::CutoutLength => measured.cutout_length_mm,
            Self::Guess(point) => measured.of(point).guess_mm,
            Self::Reading(point, i) => measured.of(point).mm.get(i).copied().flatten(),
            _ => None,
        }
    }

    /// Puts a length into it, on the grid on which lengths are kept.
    pub(crate) fn set_length_mm(self, trial: &mut Trial, value: Option<f64>) {
        let value = value.map(|mm| Quantity::Length.rounded(mm));
        let measured = &mut trial.measured;
        match self {
            Self::RocketLength => measured.rocket_length_mm = value,
            Self::CutoutLength => measured.cutout_length_mm = value,
            Self::Guess(point) => measured.of_mut(point).guess_mm = value,
            Self::Reading(point, i) => {
                if let Some(reading) = measured.of_mut(point).mm.get_mut(i) {
                    *reading = value;
                }
            }
            _ => {}
        }
    }

    /// What stands in it: what is being typed, the text that could not be read, or the value.
    pub(crate) fn text(self, state: &State) -> String {
        let name = self.name();
        let desk = &state.desk;
        if let Some(typed) = state.typed_text(&name) {
            return typed.to_owned();
        }
        if let Some((_, draft)) = desk.drafts.iter().find(|(known, _)| *known == name) {
            return draft.text.clone();
        }
        let notebook = &desk.notebook;
        match self {
            Self::Plan => desk.look.plan.clone(),
            Self::Statement(statement) => notebook.conclusion.text(statement).to_owned(),
            _ => {
                let Some(trial) = notebook.in_hand() else { return String::new() };
                match self {
                    Self::Because => trial.draft.because.clone(),
                    Self::Words => trial.note.clone(),
                    Self::WhyLeftOut(point) => {
                        let out = trial.measured.of(point).left_out.as_ref();
                        out.map(|out| out.reason.clone()).unwrap_or_default()
                    }
                    _ => self.length_mm(trial).map_or_else(String::new, |mm| {
                        Quantity::Length.number(mm, state.units)
                    }),
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_lead_back_to_their_fields() {
        let mut all = vec![
            Note::RocketLength,
            Note::CutoutLength,
            Note::Because,
            Note::Words,
            Note::Plan,
            Note::Colour,
            Note::Number,
            Note::Level,
            Note::Support,
            Note::Telling,
            Note::Slot,
            Note::Compared,
        ];
        for point in BalancePoint::ALL {
            all.extend([
                Note::From(point),
                Note::Guess(point),
                Note::LeftOut(point),
                Note::WhyLeftOut(point),
            ]);
            all.extend((0..REPEATS).map(|i| Note::Reading(point, i)));
        }
        all.extend(Statement::ALL.map(Note::Statement));
        for note in all {
            assert_eq!(Note::parse(&note.name()), Some(note));
        }
        for bad in ["", "nb:", "nb:from", "nb:from:x", "nb:reading:mass:3", "claim"] {
            assert_eq!(Note::parse(bad), None, "{bad}");
        }
    }
}
