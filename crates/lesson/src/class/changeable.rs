//! What a class may change, how far, and what breaks that.

use serde::{Deserialize, Serialize};

use crate::changes::{ChangedPart, Difference};
use crate::{Change, ChangeKind};

/// Something of a rocket, or of how it is swung, that a class may change or must keep.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Changeable {
    /// The nose: its shape, length and width, or whether there is one.
    Nose,
    /// The rest of the body: bottle, tubes, tapers, neck.
    Body,
    /// What parts are made of, and so what they weigh.
    Materials,
    /// How many fins there are.
    FinNumber,
    /// The shape and the size of a fin.
    FinShape,
    /// Where the fins sit.
    FinPlace,
    /// How much mass is added.
    AddedMass,
    /// Where the added mass sits.
    MassPlace,
    /// How it is swung.
    Swinging,
}

impl Changeable {
    /// Each, in the order in which a list shows them.
    pub const ALL: [Self; 9] = [
        Self::Nose,
        Self::Body,
        Self::Materials,
        Self::FinNumber,
        Self::FinShape,
        Self::FinPlace,
        Self::AddedMass,
        Self::MassPlace,
        Self::Swinging,
    ];

    /// What a change is a change of.
    #[must_use]
    pub fn of(change: &Change) -> Self {
        use ChangeKind as Kind;
        match change.kind {
            Kind::SectionMass | Kind::FinMass => Self::Materials,
            Kind::SectionAdded
            | Kind::SectionRemoved
            | Kind::SectionShape
            | Kind::SectionLength
            | Kind::SectionWidth
            | Kind::ClosedFront => match change.difference() {
                Difference::Part(ChangedPart::Nose, _) => Self::Nose,
                _ => Self::Body,
            },
            Kind::FinsAdded | Kind::FinsRemoved | Kind::FinNumber => Self::FinNumber,
            Kind::FinShape => Self::FinShape,
            Kind::FinPlace => Self::FinPlace,
            Kind::WeightAdded | Kind::WeightRemoved | Kind::WeightMass => Self::AddedMass,
            Kind::WeightPlace => Self::MassPlace,
            Kind::Swing(_) => Self::Swinging,
        }
    }
}

/// Some of all there is to change.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Changeables(u16);

impl Changeables {
    /// All of them.
    pub const ALL: Self = Self((1 << Changeable::ALL.len()) - 1);

    /// Those that a number stands for, a bit each in the order of [`Changeable::ALL`];
    /// `None` where it has another bit.
    #[must_use]
    pub fn new(bits: u16) -> Option<Self> {
        (bits & !Self::ALL.0 == 0).then_some(Self(bits))
    }

    /// The number that stands for them.
    #[must_use]
    pub fn bits(self) -> u16 {
        self.0
    }

    /// Whether one is among them.
    #[must_use]
    pub fn has(self, one: Changeable) -> bool {
        self.0 & 1 << one as u16 != 0
    }

    /// The same with one more, or, where it was among them, with one less.
    #[must_use]
    pub fn toggled(self, one: Changeable) -> Self {
        Self(self.0 ^ 1 << one as u16)
    }
}

impl<const N: usize> From<[Changeable; N]> for Changeables {
    fn from(some: [Changeable; N]) -> Self {
        Self(some.into_iter().fold(0, |bits, one| bits | 1 << one as u16))
    }
}

/// How far things may go. Both numbers of the swing are always there, since a hall has an
/// end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RuleLimits {
    /// The most added mass of a rocket, in grams.
    pub added_g: Option<f64>,
    /// The longest string, in metres.
    pub string_m: f64,
    /// The most turns a second.
    pub turns_per_s: f64,
}

/// A rule that something would break.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BrokenRule {
    /// This is to stay as it is.
    Changed(Changeable),
    /// One change at a time; how many there are.
    SeveralChanges(usize),
    /// There is more added mass than this, in grams.
    AddedMass(f64),
    /// The string is longer than this, in metres.
    String(f64),
    /// It turns faster than so many times a second.
    Turns(f64),
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sets_are_bits_in_the_order_of_the_list() {
        for (one, place) in Changeable::ALL.into_iter().zip(0..) {
            let alone = Changeables::from([one]);
            assert_eq!(alone.bits(), 1 << place);
            assert!(alone.has(one) && Changeables::ALL.has(one));
            assert_eq!(alone.toggled(one), Changeables::default());
            assert_eq!(Changeables::new(alone.bits()), Some(alone));
        }
        assert_eq!(Changeables::new(1 << Changeable::ALL.len()), None);
    }
}
