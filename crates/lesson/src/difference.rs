//! What one step in a document did, for undo and redo.

use crate::changes::changes;
use crate::{BalancePoint, Change, Document, Notebook, REPEATS, Statement, Trial};

/// More changes than this at once are another rocket.
const MOST_CHANGES: usize = 3;

/// What one step did, as the first thing that differs.
#[derive(Clone, Debug, PartialEq)]
pub enum Done {
    /// The rocket's name.
    Name,
    /// What the whole rocket weighs, or a name of a part.
    WeighedOrNamed,
    /// The rocket: this, and one or two things more.
    Changed(Box<Change>),
    /// Another rocket.
    AnotherRocket,
    /// How the rocket is swung.
    Swung,
    /// A trial, by its number.
    Trial(u16, TrialDeed),
    /// Something within a trial; its number where there are several.
    Within(Option<u16>, InTrial),
    /// A box of the conclusion.
    Written(Statement),
    /// The order of the trials.
    Order,
    /// The plans.
    Plans,
    /// The group's label.
    Group,
    /// Which trial is in hand.
    InHand,
    /// The settings.
    Settings,
}

/// What was done with a whole trial.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TrialDeed {
    /// It was begun.
    Begun,
    /// It was deleted, and is back.
    BroughtBack,
    /// It was deleted.
    Deleted,
    /// It is there no more, and not as a deleted one.
    TakenBack,
}

/// Something within a trial.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum InTrial {
    /// A reading of a point, by its place.
    Reading(BalancePoint, usize),
    /// The guess of a point.
    Guess(BalancePoint),
    /// How a point was read.
    HowRead(BalancePoint),
    /// The measured lengths.
    Lengths,
    /// The outcome that is chosen for a prediction.
    Choice,
    /// The reason for it.
    Reason,
    /// The note.
    Note,
    /// What it is compared with.
    Compared,
    /// Anything else.
    Other,
}

impl Document {
    /// What was done from an earlier document to this one, as the first thing that differs.
    /// `None` where nothing differs.
    #[must_use]
    pub fn done_since(&self, before: &Self) -> Option<Done> {
        of_rocket(before, self)
            .or_else(|| of_notebook(&before.notebook, &self.notebook))
            .or_else(|| (before.record != self.record).then_some(Done::Swung))
    }
}

fn of_rocket(before: &Document, now: &Document) -> Option<Done> {
    let (old, new) = (&before.record.design, &now.record.design);
    if old == new {
        return None;
    }
    let mut found = changes(&before.record, &now.record);
    Some(match found.len() {
        0 if old.name != new.name => Done::Name,
        0 => Done::WeighedOrNamed,
        1..=MOST_CHANGES => Done::Changed(Box::new(found.swap_remove(0))),
        _ => Done::AnotherRocket,
    })
}

fn of_notebook(before: &Notebook, now: &Notebook) -> Option<Done> {
    if before == now {
        return None;
    }
    let ids = |notebook: &Notebook| -> Vec<u16> {
        notebook.trials().iter().map(Trial::id).collect()
    };
    let (old, new) = (ids(before), ids(now));
    let is_deleted = |notebook: &Notebook, id: u16| {
        notebook.deleted().iter().any(|one| one.trial.id() == id)
    };
    if let Some(&id) = new.iter().find(|id| !old.contains(id)) {
        let back = is_deleted(before, id);
        let deed = if back { TrialDeed::BroughtBack } else { TrialDeed::Begun };
        return Some(Done::Trial(id, deed));
    }
    if let Some(&id) = old.iter().find(|id| !new.contains(id)) {
        let deleted = is_deleted(now, id);
        let deed = if deleted { TrialDeed::Deleted } else { TrialDeed::TakenBack };
        return Some(Done::Trial(id, deed));
    }
    let within = now.trials().iter().find_map(|trial| {
        let what = of_trial(before.trial(trial.id())?, trial)?;
        Some(Done::Within((new.len() > 1).then_some(trial.id()), what))
    });
    let written = || {
        let conclusions = (&before.conclusion, &now.conclusion);
        let differs = |of: &Statement| conclusions.0.text(*of) != conclusions.1.text(*of);
        Statement::ALL.into_iter().find(differs).map(Done::Written)
    };
    Some(within.or_else(written).unwrap_or(match () {
        () if old != new => Done::Order,
        () if before.plans() != now.plans() => Done::Plans,
        () if before.group != now.group => Done::Group,
        () if before.in_hand().map(Trial::id) != now.in_hand().map(Trial::id) => {
            Done::InHand
        }
        () => Done::Settings,
    }))
}

fn of_trial(before: &Trial, now: &Trial) -> Option<InTrial> {
    if before == now {
        return None;
    }
    for point in BalancePoint::ALL {
        let (old, new) = (before.measured.of(point), now.measured.of(point));
        if let Some(i) = (0..REPEATS).find(|i| old.mm[*i] != new.mm[*i]) {
            return Some(InTrial::Reading(point, i));
        }
        if old.guess_mm != new.guess_mm {
            return Some(InTrial::Guess(point));
        }
        if old != new {
            return Some(InTrial::HowRead(point));
        }
    }
    Some(match () {
        () if before.measured != now.measured => InTrial::Lengths,
        () if before.draft.outcome != now.draft.outcome => InTrial::Choice,
        () if before.draft != now.draft => InTrial::Reason,
        () if before.note != now.note => InTrial::Note,
        () if before.compared_with() != now.compared_with() => InTrial::Compared,
        () => InTrial::Other,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{ChangedPart, Deed, End, Group, Record, SwingOutcome};
    use noseward_stability::Example;

    #[test]
    fn each_thing_that_is_done_is_told() {
        type Edit = fn(&mut Document);
        let reading = InTrial::Reading(BalancePoint::Mass, 1);
        let guess = InTrial::Guess(BalancePoint::Pressure);
        let edits: [(Edit, Done); 12] = [
            (|d| d.record.design.name = "Kittiwake".into(), Done::Name),
            (|d| d.record = Example::Gannet.design().into(), Done::AnotherRocket),
            (|d| d.record.swings.setup.string_m = 1.5, Done::Swung),
            (
                |d| assert!(d.notebook.begin(&d.record).is_ok()),
                Done::Trial(2, TrialDeed::Begun),
            ),
            (|d| assert!(d.notebook.delete(1)), Done::Trial(1, TrialDeed::Deleted)),
            (
                |d| d.notebook.in_hand_mut().unwrap().measured.mass.mm[1] = Some(140.0),
                Done::Within(None, reading),
            ),
            (
                |d| {
                    let trial = d.notebook.in_hand_mut().unwrap();
                    trial.measured.pressure.guess_mm = Some(200.0);
                },
                Done::Within(None, guess),
            ),
            (
                |d| {
                    let trial = d.notebook.in_hand_mut().unwrap();
                    trial.draft.outcome = Some(SwingOutcome::Steady);
                },
                Done::Within(None, InTrial::Choice),
            ),
            (
                |d| d.notebook.in_hand_mut().unwrap().note = "it shook".into(),
                Done::Within(None, InTrial::Note),
            ),
            (
                |d| *d.notebook.conclusion.text_mut(Statement::Claim) = "so".into(),
                Done::Written(Statement::Claim),
            ),
            (|d| assert!(d.notebook.add_plan("more fins")), Done::Plans),
            (
                |d| d.notebook.group = Group::new(d.notebook.group.colour, 9).unwrap(),
                Done::Group,
            ),
        ];
        let before = document();
        assert_eq!(before.notebook.in_hand().unwrap().id(), 1);
        assert_eq!(before.done_since(&before), None);
        for (edit, done) in edits {
            let mut after = before.clone();
            edit(&mut after);
            assert_eq!(after.done_since(&before), Some(done.clone()));
            assert!(before.done_since(&after).is_some(), "and back: {done:?}");
        }
    }

    fn document() -> Document {
        let record = Record::from(Example::Puffin.design()).rounded();
        let mut document = Document { record, notebook: Notebook::default() };
        document.notebook.begin(&document.record).unwrap();
        document
    }

    /// Among three trials, of which the second is in hand and the third is deleted.
    #[test]
    fn there_and_back_it_is_told_in_which_trial() {
        use TrialDeed::{Begun, BroughtBack, Deleted, TakenBack};
        type Edit = fn(&mut Notebook);
        fn same(edit: Edit, done: Done) -> (Edit, Done, Done) {
            (edit, done.clone(), done)
        }
        let within = |what| Done::Within(Some(2), what);
        let edits: [(Edit, Done, Done); 11] = [
            (
                |n| assert!(n.delete(1)),
                Done::Trial(1, Deleted),
                Done::Trial(1, BroughtBack),
            ),
            (
                |n| assert!(n.restore(3)),
                Done::Trial(3, BroughtBack),
                Done::Trial(3, Deleted),
            ),
            (
                |n| assert!(n.begin(&Record::default()).is_ok()),
                Done::Trial(4, Begun),
                Done::Trial(4, TakenBack),
            ),
            same(|n| assert!(n.shift(1, false)), Done::Order),
            same(|n| assert!(n.take_in_hand(1).is_some()), Done::InHand),
            same(|n| n.allows_two_changes = true, Done::Settings),
            same(|n| n.compare(2, None), within(InTrial::Compared)),
            same(
                |n| n.in_hand_mut().unwrap().plan = "long fins".into(),
                within(InTrial::Other),
            ),
            same(
                |n| n.in_hand_mut().unwrap().draft.because = "long fins".into(),
                within(InTrial::Reason),
            ),
            same(
                |n| n.in_hand_mut().unwrap().measured.mass.from = End::Tail,
                within(InTrial::HowRead(BalancePoint::Mass)),
            ),
            same(
                |n| n.in_hand_mut().unwrap().measured.rocket_length_mm = Some(400.0),
                within(InTrial::Lengths),
            ),
        ];
        let mut before = Document::default();
        for _ in 0..3 {
            before.notebook.begin(&before.record).unwrap();
        }
        assert!(before.notebook.delete(3));
        before.notebook.take_in_hand(2);
        for (edit, there, back) in edits {
            let mut after = before.clone();
            edit(&mut after.notebook);
            let told = (after.done_since(&before), before.done_since(&after));
            assert_eq!(told, (Some(there), Some(back)));
        }
    }

    #[test]
    fn more_than_three_changes_are_another_rocket() {
        let before = document();
        let mut after = before.clone();
        let told = |after: &Document| after.done_since(&before).unwrap();
        after.record.design.measured.total_mass_g = Some(300.0);
        assert_eq!(told(&after), Done::WeighedOrNamed);
        let design = &mut after.record.design;
        design.fins[0].start_mm += 5.0;
        design.weights[0].mass_g += 1.0;
        design.weights[0].position_mm += 1.0;
        let Done::Changed(first) = told(&after) else { panic!("{:?}", told(&after)) };
        assert_eq!(first.deed(), Deed::Moved(ChangedPart::Fins, End::Tail));
        after.record.design.fins[0].count = 3;
        assert_eq!(told(&after), Done::AnotherRocket);
    }
}
