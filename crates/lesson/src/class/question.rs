//! The questions that a class can ask of its rockets, each about one thing.

use super::{Changeable, Changeables};
use crate::{Amount, End};

/// Characters of a question of one's own, at most.
pub const OWN_CHARS: usize = 80;

/// A question about one thing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum ClassQuestion {
    /// More mass in the nose.
    NoseMass,
    /// The same mass further back.
    MassPlace,
    /// Larger fins.
    #[default]
    FinSize,
    /// One fin more.
    FinNumber,
    /// Fins of another shape and the same area, swept back.
    FinShape,
    /// Fins further forward.
    FinPlace,
    /// A longer body.
    BodyLength,
    /// A longer nose.
    NoseLength,
    /// More mass at the tail.
    TailMass,
    /// A longer string.
    StringLength,
    /// One of one's own.
    Own(String),
}

/// What is expected of the change, seen from the nose tip: which way each point moves, and
/// whether the separation grows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Expected {
    /// Where the centre of mass goes; `None` where it hardly moves.
    pub mass: Option<End>,
    /// Where the centre of pressure goes.
    pub pressure: Option<End>,
    /// What becomes of the separation; `None` where it hardly changes.
    pub separation: Option<Amount>,
}

/// Something that is kept the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "each is what it is called")]
pub enum Kept {
    Bottle,
    Nose,
    Fins,
    AddedMass,
    MassPlace,
    StringAndTurns,
    WhoSwings,
    WayOfLettingGo,
}

impl ClassQuestion {
    /// Those of the menu.
    pub const MENU: [Self; 10] = [
        Self::NoseMass,
        Self::MassPlace,
        Self::FinSize,
        Self::FinNumber,
        Self::FinShape,
        Self::FinPlace,
        Self::BodyLength,
        Self::NoseLength,
        Self::TailMass,
        Self::StringLength,
    ];

    /// What stands for it in bytes, from 1 in the order of [`MENU`](Self::MENU), which is
    /// frozen; 0 for one's own.
    #[must_use]
    pub fn number(&self) -> u8 {
        match self {
            Self::Own(_) => 0,
            Self::NoseMass => 1,
            Self::MassPlace => 2,
            Self::FinSize => 3,
            Self::FinNumber => 4,
            Self::FinShape => 5,
            Self::FinPlace => 6,
            Self::BodyLength => 7,
            Self::NoseLength => 8,
            Self::TailMass => 9,
            Self::StringLength => 10,
        }
    }

    /// The question of the menu with a number.
    #[must_use]
    pub fn with_number(number: u8) -> Option<Self> {
        Self::MENU.get(usize::from(number).checked_sub(1)?).cloned()
    }

    /// What may be changed for it; everything for one's own.
    #[must_use]
    pub fn changeable(&self) -> Changeables {
        match self {
            Self::NoseMass | Self::TailMass => [Changeable::AddedMass].into(),
            Self::MassPlace => [Changeable::MassPlace].into(),
            Self::FinSize | Self::FinShape => [Changeable::FinShape].into(),
            Self::FinNumber => [Changeable::FinNumber].into(),
            Self::FinPlace => [Changeable::FinPlace].into(),
            Self::BodyLength => [Changeable::Body].into(),
            Self::NoseLength => [Changeable::Nose].into(),
            Self::StringLength => [Changeable::Swinging].into(),
            Self::Own(_) => Changeables::ALL,
        }
    }

    /// What is kept the same; at least four things of each question of the menu.
    #[must_use]
    pub fn kept(&self) -> &'static [Kept] {
        use Kept::{
            AddedMass, Bottle, Fins, MassPlace, Nose, StringAndTurns, WayOfLettingGo,
            WhoSwings,
        };
        match self {
            Self::NoseMass | Self::TailMass => {
                &[Bottle, Nose, Fins, StringAndTurns, WayOfLettingGo]
            }
            Self::MassPlace => &[Bottle, Nose, Fins, AddedMass, StringAndTurns],
            Self::FinSize | Self::FinNumber | Self::FinShape | Self::FinPlace => {
                &[Bottle, Nose, AddedMass, MassPlace, StringAndTurns]
            }
            Self::BodyLength => &[Nose, Fins, AddedMass, StringAndTurns, WayOfLettingGo],
            Self::NoseLength => {
                &[Bottle, Fins, AddedMass, StringAndTurns, WayOfLettingGo]
            }
            Self::StringLength => &[Bottle, Nose, Fins, AddedMass, WhoSwings],
            Self::Own(_) => &[],
        }
    }

    /// What is expected; `None` of one's own question.
    #[must_use]
    pub fn expected(&self) -> Option<Expected> {
        use Amount::{Less, More};
        use End::{Nose, Tail};
        let (mass, pressure, separation) = match self {
            Self::NoseMass => (Some(Nose), None, Some(More)),
            Self::MassPlace | Self::TailMass => (Some(Tail), None, Some(Less)),
            Self::FinSize | Self::FinNumber | Self::FinShape => {
                (Some(Tail), Some(Tail), Some(More))
            }
            Self::FinPlace => (Some(Nose), Some(Nose), Some(Less)),
            Self::BodyLength => (Some(Tail), Some(Tail), Some(More)),
            Self::NoseLength => (Some(Tail), Some(Tail), Some(Less)),
            Self::StringLength => (None, None, None),
            Self::Own(_) => return None,
        };
        Some(Expected { mass, pressure, separation })
    }

    /// Minutes that it takes a group to make the change, to measure both points again, to
    /// predict and to swing; 0 for one's own.
    #[must_use]
    pub fn minutes(&self) -> u16 {
        match self {
            Self::StringLength => 10,
            Self::NoseMass | Self::MassPlace | Self::TailMass => 15,
            Self::FinPlace | Self::NoseLength => 20,
            Self::FinSize | Self::FinNumber | Self::FinShape | Self::BodyLength => 25,
            Self::Own(_) => 0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Record, changes};
    use noseward_stability::{Design, Example, Planform, Weight, evaluate};

    /// The worked example; with three fins where a fourth is asked about.
    fn start(question: &ClassQuestion) -> Design {
        let mut design = Example::Puffin.design();
        if *question == ClassQuestion::FinNumber {
            design.fins[0].count = 3;
        }
        design
    }

    /// Each change as a group makes it.
    fn changed(question: &ClassQuestion) -> Design {
        let mut design = start(question);
        let length_mm = design.length_mm();
        match question {
            ClassQuestion::NoseMass => design.weights[0].mass_g += 20.0,
            ClassQuestion::MassPlace => design.weights[0].position_mm += 60.0,
            ClassQuestion::TailMass => design.weights.push(Weight {
                label: String::new(),
                mass_g: 20.0,
                position_mm: length_mm - 20.0,
            }),
            ClassQuestion::FinNumber => design.fins[0].count += 1,
            ClassQuestion::FinPlace => design.fins[0].start_mm -= 40.0,
            ClassQuestion::BodyLength => {
                let body = 1;
                design.sections[body].length_mm += 60.0;
                design.fins[0].start_mm += 60.0;
            }
            ClassQuestion::NoseLength => {
                design.sections[0].length_mm += 30.0;
                design.fins[0].start_mm += 30.0;
                design.weights[0].position_mm += 30.0;
            }
            ClassQuestion::FinSize | ClassQuestion::FinShape => {
                let Planform::FourSided { span_mm, sweep_mm, .. } =
                    &mut design.fins[0].planform
                else {
                    panic!("the example has fins with four sides")
                };
                if *question == ClassQuestion::FinSize {
                    *span_mm += 25.0;
                } else {
                    *sweep_mm += 25.0;
                }
            }
            ClassQuestion::StringLength | ClassQuestion::Own(_) => {}
        }
        design
    }

    /// What is told to be expected is what the physics gives; a millimetre is nothing.
    #[test]
    fn what_is_expected_comes_about() {
        let points = |design: &Design| {
            let figures = evaluate(design).figures.expect("it can be worked out");
            let mm = |m: f64| m * 1000.0;
            let (mass, pressure) =
                (figures.mass.centre_m, figures.centre_of_pressure_side_on_m);
            (mm(mass), mm(pressure))
        };
        for question in ClassQuestion::MENU {
            let (mass, pressure) = points(&start(&question));
            let design = changed(&question);
            let (new_mass, new_pressure) = points(&design);
            let towards = |by: f64| match by {
                ..-1.0 => Some(End::Nose),
                1.0.. => Some(End::Tail),
                _ => None,
            };
            let by = (new_pressure - new_mass) - (pressure - mass);
            let found = Expected {
                mass: towards(new_mass - mass),
                pressure: towards(new_pressure - pressure),
                separation: match by {
                    ..-1.0 => Some(Amount::Less),
                    1.0.. => Some(Amount::More),
                    _ => None,
                },
            };
            assert_eq!(
                question.expected(),
                Some(found),
                "{question:?}: {} {} {by}",
                new_mass - mass,
                new_pressure - pressure
            );
        }
    }

    /// Whoever asks a question of the menu breaks no rule by its change.
    #[test]
    fn each_question_allows_its_own_change_and_keeps_four_things() {
        for (question, number) in ClassQuestion::MENU.into_iter().zip(1..) {
            assert_eq!(question.number(), number);
            assert_eq!(ClassQuestion::with_number(number).as_ref(), Some(&question));
            let before = Record::from(start(&question));
            let allowed = question.changeable();
            let found = changes(&before, &changed(&question).into());
            for change in &found {
                assert!(allowed.has(Changeable::of(change)), "{question:?} {change:?}");
            }
            assert_eq!(found.len(), usize::from(question != ClassQuestion::StringLength));
            assert!(question.kept().len() >= 4, "{question:?}");
            assert!(question.minutes() > 0);
        }
        let own = ClassQuestion::Own("Does it?".into());
        assert_eq!(own.changeable(), Changeables::ALL);
        assert_eq!((own.expected(), own.minutes()), (None, 0));
    }
}
