//! Why something was not taken in, and how to mend it, in the language in use.

use noseward_lesson::{COUNTED, MOST_RESULTS, MOST_WORKS, Refusal};
use noseward_link::rules_text;
use noseward_words as words;

use super::model::{CLASS_BYTES, Why};
use super::{count, take_in};
use crate::notebook::said_of;

pub(super) fn said(why: &Why) -> String {
    match why {
        Why::Unread(error) => said_of(error),
        Why::NotTaken(entry, refusal) => {
            let whose = take_in::name_of(entry);
            match refusal {
                Refusal::OtherRules { found: Some(found), expected } => {
                    words::class_other_rules(
                        &whose,
                        &rules_text(*found),
                        &rules_text(*expected),
                    )
                }
                Refusal::OtherRules { found: None, expected } => {
                    words::class_no_rules(&whose, &rules_text(*expected))
                }
                Refusal::Unfinished { swings } => words::class_unfinished(
                    &whose,
                    count(*swings).into(),
                    count(COUNTED).into(),
                ),
                Refusal::NoNumber => words::class_no_number(&whose),
                Refusal::Full => words::class_full(&whose, count(MOST_RESULTS).into()),
            }
        }
        Why::NotebooksFull => words::class_notebooks_full(count(MOST_WORKS).into()),
        Why::Rocket => words::class_rocket().into(),
        Why::SetUp => words::class_set_up().into(),
        Why::Part { here, of } => {
            words::class_part(count(*here).into(), count(*of).into())
        }
        Why::File => {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "sixteen"
            )]
            let most = (CLASS_BYTES / 1024.0 / 1024.0) as u32;
            words::class_file(most.into())
        }
    }
}

/// Whether another text could help.
pub(super) fn can_be_mended(why: &Why) -> bool {
    matches!(why, Why::Unread(_) | Why::Part { .. } | Why::Rocket | Why::SetUp)
}
