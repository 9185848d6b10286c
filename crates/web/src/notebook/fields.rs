//! The notebook's fields: their names in the markup and the way to what they hold.

use noseward_lesson::{BalancePoint, REPEATS, Statement, Trial};
use noseward_stability::Quantity;
use noseward_words as words;

use crate::app::State;

/// A field of the notebook.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NotebookField {
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

impl NotebookField {
    /// Every field.
    pub(crate) fn all() -> impl Iterator<Item = Self> {
        let of_points = BalancePoint::ALL.into_iter().flat_map(|point| {
            let readings = (0..REPEATS).map(move |i| Self::Reading(point, i));
            [Self::From, Self::Guess, Self::LeftOut, Self::WhyLeftOut]
                .map(|of| of(point))
                .into_iter()
                .chain(readings)
        });
        let others = [
            Self::RocketLength,
            Self::CutoutLength,
            Self::Because,
            Self::Words,
            Self::Plan,
            Self::Colour,
            Self::Number,
            Self::Level,
            Self::Support,
            Self::Telling,
            Self::Slot,
            Self::Compared,
        ];
        others.into_iter().chain(of_points).chain(Statement::ALL.map(Self::Statement))
    }

    /// Its name in the markup, which is the element's id too: its key in files and tables,
    /// where it is written down.
    pub(crate) fn name(self) -> String {
        let of = |point: BalancePoint, what: &str| {
            let point = match point {
                BalancePoint::Mass => "mass",
                BalancePoint::Pressure => "pressure",
            };
            format!("centre_of_{point}_{what}")
        };
        let key = match self {
            Self::RocketLength => "rocket_length_mm".into(),
            Self::CutoutLength => "cutout_length_mm".into(),
            Self::From(point) => of(point, "from"),
            Self::Guess(point) => of(point, "guess_mm"),
            Self::Reading(point, i) => of(point, &format!("reading_{}_mm", i + 1)),
            Self::LeftOut(point) => of(point, "left_out"),
            Self::WhyLeftOut(point) => of(point, "left_out_reason"),
            Self::Because => "draft_because".into(),
            Self::Words => "note".into(),
            Self::Plan => "plan".into(),
            Self::Statement(statement) => noseward_lesson::key(&statement),
            Self::Colour => "colour".into(),
            Self::Number => "number".into(),
            Self::Level => "level".into(),
            Self::Support => "help".into(),
            Self::Telling => "telling".into(),
            Self::Slot => "slot".into(),
            Self::Compared => "compared_with".into(),
        };
        format!("nb:{key}")
    }

    /// The field with a name.
    pub(crate) fn parse(name: &str) -> Option<Self> {
        Self::all().find(|field| field.name() == name)
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
                        words::as_typed(&Quantity::Length.number(mm, state.units))
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
        assert_eq!(NotebookField::all().count(), 30);
        for field in NotebookField::all() {
            assert_eq!(NotebookField::parse(&field.name()), Some(field));
        }
        for bad in ["", "nb:", "nb:from", "nb:centre_of_mass_reading_4_mm", "claim"] {
            assert_eq!(NotebookField::parse(bad), None, "{bad}");
        }
    }

    /// What is written down has the same name wherever it is.
    #[test]
    fn names_are_the_keys_of_files_and_tables() {
        use NotebookField::{Colour, Number, Slot};
        let table = noseward_link::to_table(
            &noseward_lesson::Notebook::default(),
            noseward_link::Format::Tabs,
            &|_| String::new(),
        );
        let keys: Vec<&str> = table.lines().next().unwrap().split('\t').collect();
        for field in NotebookField::all() {
            // A group is one value of two fields, and a place is none of the notebook.
            let is_key = !matches!(field, Colour | Number | Slot);
            let name = field.name();
            let key = name.strip_prefix("nb:").unwrap();
            assert_eq!(keys.contains(&key), is_key, "{key}");
        }
    }
}
