//! What a group makes, as one value: the rocket on the page and the notebook.

use crate::{Notebook, Record, Trial, same_build};

/// The rocket on the page, with how it is swung, and the notebook with its trials, readings
/// and conclusion.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Document {
    /// The rocket on the page.
    pub record: Record,
    /// The notebook.
    pub notebook: Notebook,
}

impl Document {
    /// The document to show when somebody goes from this one to an earlier (or, for redo,
    /// a later) one of the same notebook.
    ///
    /// Facts stay as they are now: a locked prediction, the rocket that it was made for, and
    /// swings that were recorded. Whatever else the group wrote is as it was then.
    #[must_use]
    pub fn back_to(&self, then: &Self) -> Self {
        let mut notebook = then.notebook.with_facts_of(&self.notebook);
        // An unlocked trial follows the rocket in hand; one that was swung must not.
        let is_other = |trial: &Trial| !same_build(trial.design(), &then.record.design);
        if notebook
            .in_hand()
            .is_some_and(|t| t.has_facts() && !t.is_locked() && is_other(t))
        {
            notebook.put_down();
        }
        let mut record = then.record.clone();
        let swung = notebook.in_hand().filter(|trial| {
            same_build(trial.design(), &record.design)
                && trial.swings().agrees_with(&record.swings.setup)
        });
        match swung {
            Some(trial) if trial.has_facts() => record.swings = trial.swings().clone(),
            _ => record = notebook.without_known_swings(&record),
        }
        Self { record, notebook }
    }
}

impl Trial {
    /// Whether something in it can only be corrected, and not undone.
    pub(crate) fn has_facts(&self) -> bool {
        self.is_locked() || !self.swings().outcomes().is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SwingOutcome::{Steady, TailFirst};
    use noseward_stability::Example;

    fn document() -> Document {
        let record = Record::from(Example::Puffin.design()).rounded();
        Document { record, notebook: Notebook::default() }
    }

    fn begun(mut document: Document) -> Document {
        document.notebook.begin(&document.record).unwrap();
        document
    }

    fn locked(mut document: Document) -> Document {
        let trial = document.notebook.in_hand_mut().unwrap();
        let id = trial.id();
        trial.draft.outcome = Some(Steady);
        assert!(document.notebook.lock(id));
        document
    }

    fn swung(mut document: Document) -> Document {
        assert!(document.record.swings.add(TailFirst));
        document.notebook.swing(&document.record.swings);
        document
    }

    #[test]
    fn what_is_no_fact_goes() {
        let empty = document();
        let mut later = begun(empty.clone());
        later.record.design.fins[0].start_mm += 5.0;
        later.notebook.follow(&later.record);
        assert_eq!(later.back_to(&empty), empty);
        assert_eq!(empty.back_to(&later), later);
    }

    #[test]
    fn a_locked_prediction_and_its_swings_stay() {
        let empty = document();
        let trial = begun(empty.clone());
        let now = swung(locked(trial.clone()));
        for then in [&empty, &trial, &locked(trial.clone())] {
            let shown = now.back_to(then);
            let kept = shown.notebook.trial(1).expect("it is there");
            assert_eq!(kept.predictions(), now.notebook.trial(1).unwrap().predictions());
            assert_eq!(kept.swings().outcomes(), [TailFirst]);
            assert!(!shown.notebook.is_altered() && !kept.is_altered());
        }
        // In hand it shows its swings, and else the rocket has none.
        assert_eq!(now.back_to(&trial).record.swings.outcomes(), [TailFirst]);
        assert!(!now.back_to(&empty).record.has_swings());
        // Nor has another rocket, while the trial is in hand.
        let mut other = locked(trial);
        other.record.design.fins[0].start_mm += 5.0;
        assert!(!now.back_to(&other).record.has_swings());
    }

    #[test]
    fn what_is_written_in_a_locked_trial_goes_back() {
        let before = locked(begun(document()));
        let mut after = before.clone();
        let trial = after.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm[0] = Some(140.0);
        trial.note = "it wobbled".into();
        trial.plan = "longer fins".into();
        trial.draft.because = "on second thoughts".into();
        assert_eq!(after.back_to(&before), before);
        // A reason that was locked does not come back as one that is being written.
        let mut writing = begun(document());
        writing.notebook.in_hand_mut().unwrap().draft.because = "clay".into();
        let shown = locked(writing.clone()).back_to(&writing);
        assert!(shown.notebook.trial(1).unwrap().draft.is_empty());
    }

    /// Swings may come with a rocket from elsewhere, before anything is predicted.
    #[test]
    fn a_trial_that_was_swung_first_keeps_its_rocket() {
        let mut before = document();
        before.notebook.begin(&before.record).unwrap();
        let mut now = before.clone();
        now.record.design.fins[0].start_mm += 5.0;
        now.record.swings.add(TailFirst);
        now.notebook.follow(&now.record);
        assert_eq!(now.notebook.trial(1).unwrap().swings().outcomes(), [TailFirst]);
        let shown = now.back_to(&before);
        assert_eq!(shown.record.design, before.record.design);
        assert!(shown.notebook.in_hand().is_none());
        assert_eq!(shown.notebook.trial(1), now.notebook.trial(1));
    }

    #[test]
    fn a_locked_trial_that_was_deleted_comes_back_once() {
        let before = locked(begun(document()));
        let mut after = before.clone();
        assert!(after.notebook.delete(1));
        assert_eq!(after.back_to(&before), before);
        assert_eq!(before.back_to(&after), after);
    }
}
