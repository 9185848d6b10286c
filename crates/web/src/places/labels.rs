//! What the lesson's choices are called, in the language in use.

pub(crate) use noseward_drawing::outcome_name as outcome;
use noseward_lesson::{
    BalancePoint, Colour, Group, Level, MOST_PLANS, MOST_TRIALS, Overall, Statement,
    Support, SwingOutcome, Telling,
};
use noseward_words::{self as words, Number, Text};

/// Several outcomes in their order, in one line.
pub(crate) fn outcomes(seen: &[SwingOutcome]) -> String {
    let labels = seen.iter().map(|one| String::from(outcome(*one)));
    labels.reduce(|said, one| words::lesson_outcomes(&said, &one)).unwrap_or_default()
}

/// The number of a trial, for a sentence.
pub(crate) fn number(id: u16) -> Number {
    u32::from(id).into()
}

/// What the swings of a trial come to.
pub(crate) fn overall(overall: Overall) -> Text {
    match overall {
        Overall::Nothing => words::lesson_not_swung(),
        Overall::Mostly(seen) => outcome(seen),
        Overall::Mixed => words::lesson_mixed(),
    }
}

pub(crate) fn point(point: BalancePoint) -> Text {
    match point {
        BalancePoint::Mass => words::lesson_mass(),
        BalancePoint::Pressure => words::lesson_pressure(),
    }
}

/// A point as an argument of a sentence.
pub(crate) fn point_in(point: BalancePoint) -> words::BalancePoint {
    match point {
        BalancePoint::Mass => words::BalancePoint::Mass,
        BalancePoint::Pressure => words::BalancePoint::Pressure,
    }
}

pub(crate) fn level(level: Level) -> Text {
    match level {
        Level::Balance => words::lesson_level_balance(),
        Level::Measure => words::lesson_level_measure(),
        Level::Explain => words::lesson_level_explain(),
        Level::Model => words::lesson_level_model(),
    }
}

pub(crate) fn support(support: Support) -> Text {
    match support {
        Support::Sentences => words::lesson_help_sentences(),
        Support::Questions => words::lesson_help_questions(),
        Support::None => words::lesson_help_none(),
    }
}

pub(crate) fn telling(telling: Telling) -> Text {
    match telling {
        Telling::All => words::lesson_telling_all(),
        Telling::Verdict => words::lesson_telling_verdict(),
        Telling::Points => words::lesson_telling_points(),
    }
}

/// A box of the conclusion.
pub(crate) fn statement(statement: Statement) -> Text {
    match statement {
        Statement::Claim => words::lesson_claim(),
        Statement::Evidence => words::lesson_evidence(),
        Statement::Reason => words::lesson_reason(),
        Statement::Trust => words::lesson_trust(),
    }
}

pub(crate) fn colour(colour: Colour) -> Text {
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
pub(crate) fn group(group: Group) -> String {
    words::lesson_group(&colour(group.colour), group.number().into())
}

/// There is no room for another trial.
pub(crate) fn room_for_trials() -> String {
    words::lesson_room_trials(MOST_TRIALS.into())
}

/// There is no room for another plan.
pub(crate) fn room_for_plans() -> String {
    words::lesson_room_plans(MOST_PLANS.into())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Files and tables have the labels of the lesson: in English they are the same.
    #[test]
    fn in_english_they_are_what_files_and_tables_have() {
        for one in SwingOutcome::ALL {
            assert_eq!(outcome(one), one.label());
            assert_eq!(overall(Overall::Mostly(one)), one.label());
        }
        assert_eq!(outcomes(&SwingOutcome::ALL), SwingOutcome::list(&SwingOutcome::ALL));
        for one in [Overall::Nothing, Overall::Mixed] {
            assert_eq!(overall(one), one.label());
        }
        for one in BalancePoint::ALL {
            assert_eq!(point(one), one.label());
        }
        for one in Level::ALL {
            assert_eq!(level(one), one.label());
        }
        for one in Support::ALL {
            assert_eq!(support(one), one.label());
        }
        for one in Telling::ALL {
            assert_eq!(telling(one), one.label());
        }
        for one in Statement::ALL {
            assert_eq!(statement(one), one.label());
        }
        for one in Colour::ALL {
            assert_eq!(colour(one), one.label());
            let of = Group::new(one, 40).unwrap();
            assert_eq!(group(of), of.to_string());
        }
    }
}
