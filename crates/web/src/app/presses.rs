//! A double click is one press, and so is a key that is held down.

/// A button pressed again within this is a double click. Common practice, no source: the
/// usual time of systems.
const AGAIN_MS: f64 = 500.0;

/// What would add, take away or confirm a second thing.
const ONCE: [&str; 8] = [
    "swung",
    "swing-anew",
    "nb-begin",
    "nb-begin-plan",
    "nb-copy",
    "nb-new-group",
    "nb-lock",
    "nb-delete",
];

/// The last press of a button that counts once.
#[derive(Debug, Default)]
pub(crate) struct Presses {
    last: Option<(String, f64)>,
}

impl Presses {
    /// Whether a press counts; `at_ms` is the time of the event.
    ///
    /// Engines count the clicks of two buttons as one double click, so the button decides.
    pub(crate) fn counts(&mut self, action: &str, target: &str, at_ms: f64) -> bool {
        if !ONCE.contains(&action) {
            return true;
        }
        // When a row is deleted the next one comes to lie under the pointer.
        let button = if action == "nb-delete" { "" } else { target };
        let button = format!("{action}:{button}");
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
    fn a_key_that_is_held_is_one_press() {
        let mut presses = Presses::default();
        let at = (0..60).map(|i| f64::from(i) * 33.0);
        assert_eq!(at.filter(|at| presses.counts("nb-lock", "", *at)).count(), 1);
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
