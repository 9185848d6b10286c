//! The one thing that a group changed, as a sentence.

use noseward_lesson::{Amount, Deed, End};
use noseward_stability::SwingField;
use noseward_words::{self as words, HowMuch, MovedWay};

use crate::places::trial::changed::changed_part;

pub(super) fn sentence(deed: Deed) -> String {
    let how_much = |amount| match amount {
        Amount::More => HowMuch::More,
        Amount::Less => HowMuch::Less,
    };
    match deed {
        Deed::Added(of) => words::deed_added(changed_part(of)),
        Deed::Removed(of) => words::deed_removed(changed_part(of)),
        Deed::Length(of, amount) => {
            words::deed_length(changed_part(of), how_much(amount))
        }
        Deed::Width(of, amount) => words::deed_width(changed_part(of), how_much(amount)),
        Deed::Weight(of, amount) => {
            words::deed_weight(changed_part(of), how_much(amount))
        }
        Deed::Mass(of) => words::deed_mass(changed_part(of)),
        Deed::Shape(of) => words::deed_shape(changed_part(of)),
        Deed::ClosedFront(of) => words::deed_front(changed_part(of)),
        Deed::Moved(of, end) => {
            let way = match end {
                End::Tail => MovedWay::Back,
                End::Nose => MovedWay::Forward,
            };
            words::deed_moved(changed_part(of), way)
        }
        Deed::FinNumber(amount) => words::deed_fin_number(how_much(amount)),
        Deed::FinSize(amount) => words::deed_fin_size(how_much(amount)),
        Deed::FinsTurned => words::deed_fins_turned().into(),
        Deed::Swing(SwingField::String, amount) => words::deed_string(how_much(amount)),
        Deed::Swing(SwingField::Turns, amount) => words::deed_turns(how_much(amount)),
        Deed::Swing(SwingField::Arm, _) => words::deed_arm().into(),
        Deed::Swing(SwingField::AirDensity, _) => words::deed_density().into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Amount::{Less, More};
    use noseward_lesson::ChangedPart::{Body, Bottle, Fins, Neck, Nose, Taper, Weight};

    #[test]
    fn each_deed_is_a_sentence() {
        for (deed, words) in [
            (Deed::Added(Nose), "A nose was added."),
            (Deed::Added(Fins), "Fins were added."),
            (Deed::Removed(Neck), "The neck was taken off."),
            (Deed::Removed(Weight), "A weight was taken off."),
            (Deed::Length(Taper, More), "The taper was made longer."),
            (Deed::Length(Body, Less), "The body was made shorter."),
            (Deed::Width(Nose, Less), "The nose was made narrower."),
            (Deed::Width(Body, More), "The body was made wider."),
            (Deed::Weight(Bottle, More), "The bottle was made heavier."),
            (Deed::Weight(Fins, Less), "The fins were made lighter."),
            (Deed::Mass(Fins), "The mass of the fins was changed."),
            (Deed::Shape(Neck), "The shape of the neck was changed."),
            (Deed::ClosedFront(Body), "The front end of the body was changed."),
            (Deed::Moved(Fins, End::Nose), "The fins were moved forward."),
            (Deed::Moved(Weight, End::Tail), "A weight was moved back."),
            (Deed::FinNumber(Less), "Fewer fins were put on."),
            (Deed::FinNumber(More), "More fins were put on."),
            (Deed::FinSize(More), "The fins were made larger."),
            (Deed::FinSize(Less), "The fins were made smaller."),
            (Deed::FinsTurned, "The fins were turned round the body."),
            (Deed::Swing(SwingField::String, Less), "The string was made shorter."),
            (Deed::Swing(SwingField::Turns, More), "The rocket was swung faster."),
            (Deed::Swing(SwingField::Arm, More), "The arm length was changed."),
            (
                Deed::Swing(SwingField::AirDensity, Less),
                "The density of the air was changed.",
            ),
        ] {
            assert_eq!(sentence(deed), words);
        }
    }
}
