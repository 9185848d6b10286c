//! A double click is one press.

/// A button pressed again within this is a double click. Common practice, no source: the
/// usual time of systems.
const AGAIN_MS: f64 = 500.0;

/// What would add, take away or confirm a second thing.
const ONCE: [&str; 14] = [
    "swung",
    "swung-wrong",
    "ask-to-delete",
    "delete-now",
    "nb-once-more",
    "nb-begin-plan",
    "nb-copy",
    "nb-new-group",
    "nb-lock",
    "nb-delete",
    "nb-ask-delete",
    "nb-delete-now",
    "nb-plan-add",
    "nb-plan-remove",
];

/// The last press of a button that counts once.
#[derive(Debug, Default)]
pub(crate) struct Presses {
    last: Option<(String, f64)>,
}

impl Presses {
    /// Whether a press of any button counts; `at_ms` is the time of the event.
    ///
    /// Engines count the clicks of two buttons as one double click, so the button decides.
    pub(crate) fn counts(&mut self, action: &str, target: &str, at_ms: f64) -> bool {
        if !ONCE.contains(&action) {
            self.last = None;
            return true;
        }
        // What comes to lie under the pointer by the first press is not pressed too: the
        // row after one that is deleted, the answer to a question.
        let button = match action {
            "nb-delete" => action.to_owned(),
            "delete-now" => "ask-to-delete:".to_owned(),
            "nb-delete-now" => "nb-ask-delete:".to_owned(),
            _ => format!("{action}:{target}"),
        };
        let again =
            |(last, then): &(String, f64)| *last == button && at_ms - then < AGAIN_MS;
        let counts = !self.last.as_ref().is_some_and(again);
        self.last = Some((button, at_ms));
        counts
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_double_click_is_one_press() {
        let mut presses = Presses::default();
        assert!(presses.counts("swung", "0", 0.0));
        assert!(!presses.counts("swung", "0", 180.0));
        assert!(presses.counts("swung", "0", 900.0), "the same was seen again");
        assert!(presses.counts("swung", "1", 1000.0), "another button");
        assert!(presses.counts("swung", "0", 1100.0));
    }

    #[test]
    fn many_presses_in_a_row_are_one() {
        let mut presses = Presses::default();
        let at = (0..60).map(|i| f64::from(i) * 33.0);
        assert_eq!(at.filter(|at| presses.counts("nb-lock", "", *at)).count(), 1);
    }

    #[test]
    fn a_question_is_not_answered_by_the_press_that_asks_it() {
        for (asks, answer) in
            [("ask-to-delete", "delete-now"), ("nb-ask-delete", "nb-delete-now")]
        {
            let mut presses = Presses::default();
            assert!(presses.counts(asks, "", 0.0));
            assert!(!presses.counts(answer, "", 180.0));
            assert!(presses.counts(answer, "", 1500.0));
            assert!(presses.counts("keep-all", "", 1600.0));
            assert!(presses.counts(asks, "", 1700.0), "it was taken back in between");
        }
    }

    #[test]
    fn a_row_that_moves_under_the_pointer_is_not_deleted_too() {
        let mut presses = Presses::default();
        assert!(presses.counts("nb-delete", "1", 0.0));
        assert!(!presses.counts("nb-delete", "2", 180.0));
        assert!(presses.counts("nb-delete", "2", 800.0));
    }

    #[test]
    fn what_goes_step_by_step_is_pressed_as_fast_as_one_likes() {
        let mut presses = Presses::default();
        assert!((0..9).all(|at| presses.counts("nb-up", "3", at.into())));
    }
}
