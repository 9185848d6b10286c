//! What the lesson's choices are called, in the language in use.

pub(crate) use noseward_drawing::{
    colour_name as colour, group_name as group, outcome_name as outcome,
    outcome_names as outcomes, overall_name as overall, point_in,
    statement_name as statement,
};
use noseward_lesson::{Level, MOST_PLANS, MOST_TRIALS, Statement, Support, Telling};
use noseward_words::{self as words, Number, Text};

/// The number of a trial, for a sentence.
pub(crate) fn number(id: u16) -> Number {
    u32::from(id).into()
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

/// A box of the conclusion as an argument of a sentence.
pub(crate) fn statement_in(statement: Statement) -> words::Statement {
    match statement {
        Statement::Claim => words::Statement::Claim,
        Statement::Evidence => words::Statement::Evidence,
        Statement::Reason => words::Statement::Reason,
        Statement::Trust => words::Statement::Trust,
    }
}

/// There is no room for another trial.
pub(crate) fn room_for_trials() -> String {
    words::lesson_room_trials(MOST_TRIALS.into())
}

/// There is no room for another plan.
pub(crate) fn room_for_plans() -> String {
    words::lesson_room_plans(MOST_PLANS.into())
}

/// Checks it in English, in German and in Arabic.
#[cfg(test)]
pub(crate) fn in_languages(check: &dyn Fn()) {
    for key in ["en", "de", "ar"] {
        words::speak(words::table_of(key));
        assert_eq!(words::language().key, key);
        check();
    }
    words::speak(None);
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_drawing::point_name;
    use noseward_lesson::{BalancePoint, Colour, Group, Overall, SwingOutcome};

    /// Two entries of one list that read alike are no choice.
    #[test]
    fn each_choice_has_words_of_its_own() {
        let overall = || {
            let outcomes = SwingOutcome::ALL.map(Overall::Mostly).into_iter();
            outcomes.chain([Overall::Nothing, Overall::Mixed])
        };
        in_languages(&|| {
            for labels in [
                BalancePoint::ALL.map(point_name).to_vec(),
                Level::ALL.map(level).to_vec(),
                Support::ALL.map(support).to_vec(),
                Telling::ALL.map(telling).to_vec(),
                Statement::ALL.map(statement).to_vec(),
                Colour::ALL.map(colour).to_vec(),
                overall().map(super::overall).collect(),
            ] {
                for (i, label) in labels.iter().enumerate() {
                    assert!(!labels[..i].contains(label), "{labels:?}");
                }
            }
        });
    }

    #[test]
    fn a_group_is_a_colour_and_a_number() {
        let blue = Group::new(Colour::Blue, 40).unwrap();
        assert_eq!(group(blue), "Blue 40");
        in_languages(&|| {
            let said = group(blue);
            let label = colour(Colour::Blue);
            assert!(said.contains(label.as_str()) && said.contains("40"), "{said}");
        });
    }

    #[test]
    fn outcomes_are_called_as_agreed() {
        let agreed = [
            "nose first, steady",
            "nose first after wobbling",
            "sideways or tumbling",
            "tail first",
            "string slipped, do again",
            "not sure",
        ];
        assert_eq!(SwingOutcome::ALL.map(outcome), agreed);
        assert_eq!(outcomes(&SwingOutcome::ALL), agreed.join("; "));
        assert_eq!(
            BalancePoint::ALL.map(point_name),
            ["centre of mass", "centre of pressure (side-on)"]
        );
        assert_eq!(
            Statement::ALL.map(statement),
            ["Claim", "Evidence", "Reason", "Trust"]
        );
    }
}
