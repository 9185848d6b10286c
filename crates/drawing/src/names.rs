//! What the parts of a rocket and its swings are called, in the language in use.

pub mod lesson;

use std::f64::consts::FRAC_PI_4;

use noseward_lesson::{BalancePoint, Colour, Group, Overall, Statement, SwingOutcome};
use noseward_stability::{Called, Component, Design, Outcome, PartKind};
use noseward_words::{self as words, ComesOut, Number, Text};

use crate::pictures::Picture;

/// What a part is called, with its number where there are several; empty for a section that
/// the design has not.
#[must_use]
pub fn part_name(design: &Design, part: Component) -> String {
    let Some(Called { kind, label, number }) = part.called(design) else {
        return String::new();
    };
    let name = match kind {
        _ if !label.is_empty() => label,
        PartKind::Nose => words::part_nose().into(),
        PartKind::Tube => words::part_tube().into(),
        PartKind::Taper => words::part_taper().into(),
        PartKind::Neck => words::part_neck().into(),
        PartKind::Fins => words::part_fins().into(),
        PartKind::Weight => words::part_weight().into(),
    };
    match number {
        Some(number) => words::part_numbered(name, number.into()),
        None => name.into(),
    }
}

/// What a swing showed.
#[must_use]
pub fn outcome_name(outcome: SwingOutcome) -> Text {
    match outcome {
        SwingOutcome::Steady => words::lesson_steady(),
        SwingOutcome::Wobbling => words::lesson_wobbling(),
        SwingOutcome::Sideways => words::lesson_sideways(),
        SwingOutcome::TailFirst => words::lesson_tail_first(),
        SwingOutcome::Slipped => words::lesson_slipped(),
        SwingOutcome::NotSure => words::lesson_not_sure(),
    }
}

/// Several outcomes in their order, in one line.
#[must_use]
pub fn outcome_names(seen: &[SwingOutcome]) -> String {
    let names = seen.iter().map(|one| String::from(outcome_name(*one)));
    names.reduce(|said, one| words::lesson_outcomes(&said, &one)).unwrap_or_default()
}

/// What the swings of a trial come to.
#[must_use]
pub fn overall_name(overall: Overall) -> Text {
    match overall {
        Overall::Nothing => words::lesson_not_swung(),
        Overall::Mostly(seen) => outcome_name(seen),
        Overall::Mixed => words::lesson_mixed(),
    }
}

/// One of the two points.
#[must_use]
pub fn point_name(point: BalancePoint) -> Text {
    match point {
        BalancePoint::Mass => words::lesson_mass(),
        BalancePoint::Pressure => words::lesson_pressure(),
    }
}

/// A point as an argument of a sentence.
#[must_use]
pub fn point_in(point: BalancePoint) -> words::BalancePoint {
    match point {
        BalancePoint::Mass => words::BalancePoint::Mass,
        BalancePoint::Pressure => words::BalancePoint::Pressure,
    }
}

/// How one of them is found: a heading, what is to be done, and a picture of it.
#[must_use]
pub fn how_found(point: BalancePoint) -> (Text, Text, Picture) {
    match point {
        BalancePoint::Mass => {
            (words::measure_mass(), words::measure_mass_how(), Picture::HangingPoint)
        }
        BalancePoint::Pressure => {
            (words::measure_pressure(), words::measure_pressure_how(), Picture::Balance)
        }
    }
}

/// A box of the conclusion.
#[must_use]
pub fn statement_name(statement: Statement) -> Text {
    match statement {
        Statement::Claim => words::lesson_claim(),
        Statement::Evidence => words::lesson_evidence(),
        Statement::Reason => words::lesson_reason(),
        Statement::Trust => words::lesson_trust(),
    }
}

/// The question that a box of the conclusion asks.
#[must_use]
pub fn statement_question(statement: Statement) -> Text {
    match statement {
        Statement::Claim => words::conclude_claim(),
        Statement::Evidence => words::conclude_evidence(),
        Statement::Reason => words::conclude_reason(),
        Statement::Trust => words::conclude_trust(),
    }
}

/// The colour of a label.
#[must_use]
pub fn colour_name(colour: Colour) -> Text {
    match colour {
        Colour::Red => words::lesson_red(),
        Colour::Orange => words::lesson_orange(),
        Colour::Yellow => words::lesson_yellow(),
        Colour::Green => words::lesson_green(),
        Colour::Blue => words::lesson_blue(),
        Colour::Purple => words::lesson_purple(),
        Colour::Brown => words::lesson_brown(),
        Colour::Black => words::lesson_black(),
        Colour::Grey => words::lesson_grey(),
        Colour::White => words::lesson_white(),
        Colour::Silver => words::lesson_silver(),
        Colour::Gold => words::lesson_gold(),
    }
}

/// The label of a group, such as “Blue 3”.
#[must_use]
pub fn group_name(group: Group) -> String {
    words::lesson_group(&colour_name(group.colour), group.number().into())
}

/// An outcome as sentences tell it.
#[must_use]
pub fn comes_out(outcome: Outcome) -> ComesOut {
    match outcome {
        Outcome::SelfRighting => ComesOut::SelfRighting,
        Outcome::StraightStartOnly => ComesOut::StraightStartOnly,
        Outcome::Broadside { angle_rad } if angle_rad < FRAC_PI_4 => ComesOut::AtAnAngle,
        Outcome::Broadside { .. } => ComesOut::Broadside,
        Outcome::SwapsEnds => ComesOut::SwapsEnds,
    }
}

/// What an outcome means, in a pupil’s words.
#[must_use]
pub fn outcome_meaning(outcome: Outcome) -> String {
    match outcome {
        Outcome::SelfRighting => words::verdict_means_self_righting(),
        Outcome::StraightStartOnly => words::verdict_means_straight_start_only(),
        Outcome::Broadside { angle_rad } => {
            return words::verdict_means_tilted(Number::fixed(angle_rad.to_degrees(), 0));
        }
        Outcome::SwapsEnds => words::verdict_means_swaps_ends(),
    }
    .into()
}

/// Things one behind the other, with commas.
#[must_use]
pub fn listed(things: impl Iterator<Item = String>) -> String {
    things.reduce(|before, next| words::lists_next(&before, &next)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::Example;

    #[test]
    fn a_part_is_called_by_its_kind_or_its_label_and_its_number() {
        let mut design = Example::Puffin.design();
        let names = |design: &Design| -> Vec<String> {
            let sections = (0..5).map(Component::Section);
            let others = [Component::Fins(0), Component::Weight(0), Component::Weight(1)];
            sections.chain(others).map(|part| part_name(design, part)).collect()
        };
        let one = ["Nose", "Tube", "Taper", "Neck", "", "Fins", "clay", "Weight"];
        assert_eq!(names(&design), one);
        design.sections.push(design.sections[1].clone());
        design.fins.push(design.fins[0].clone());
        design.weights.push(design.weights[0].clone());
        let several =
            ["Nose", "Tube 1", "Taper", "Neck", "Tube 2", "Fins 1", "clay 1", "clay 2"];
        assert_eq!(names(&design), several);
    }
}
