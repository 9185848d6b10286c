//! A group's notebook: its trials in order, and what it concludes.

use noseward_stability::{Design, SwingSetup, cleaned_lines};

use crate::seal::{self, Seal};
use crate::trial::{PLAN_CHARS, same_build};
use crate::{
    BrokenRule, Conclusion, Group, Level, Record, RulesCode, SetUp, Support, Swings,
    Telling, Trial, TrialParts,
};

/// The most trials of one notebook, deleted ones included.
pub const MOST_TRIALS: usize = 40;
/// The most plans for trials to come.
pub const MOST_PLANS: usize = 12;

/// The notebook of one group.
///
/// No two trials have one number, a number is never given again, and what was deleted can
/// be brought back.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Notebook {
    /// Whose it is.
    pub group: Group,
    /// How much it shows.
    pub level: Level,
    /// How much help the conclusion gets.
    pub support: Support,
    /// Whether whoever leads allows two changes at once.
    pub allows_two_changes: bool,
    /// What is told when.
    pub telling: Telling,
    set_up: Option<Box<SetUp>>,
    trials: Vec<Trial>,
    deleted: Vec<Deleted>,
    plans: Vec<String>,
    in_hand: Option<u16>,
    /// What the group concludes.
    pub conclusion: Conclusion,
    altered: bool,
}

/// A trial that was deleted.
#[derive(Clone, Debug, PartialEq)]
pub struct Deleted {
    /// Where it stood.
    pub place: usize,
    /// The trial.
    pub trial: Trial,
}

/// A notebook taken apart: every field as it is written down, in files and elsewhere, and
/// the seals that stand there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NotebookParts {
    /// Whose it is.
    pub group: Group,
    /// How much it shows.
    pub level: Level,
    /// How much help the conclusion gets.
    pub support: Support,
    /// Whether whoever leads allows two changes at once.
    pub allows_two_changes: bool,
    /// What is told when.
    pub telling: Telling,
    /// How the lesson is set up, without the rocket to begin with.
    pub set_up: Option<Box<SetUp>>,
    /// The trials, in the order in which they are shown.
    pub trials: Vec<TrialParts>,
    /// What was deleted, the latest last.
    pub deleted: Vec<DeletedParts>,
    /// Plans for trials to come.
    pub plans: Vec<String>,
    /// The number of the trial in hand.
    pub in_hand: Option<u16>,
    /// What the group concludes.
    pub conclusion: Conclusion,
    /// The seal that stands there; absent while there is no trial.
    pub seal: Option<Seal>,
    /// Whether it says of itself that it was altered.
    pub altered: bool,
}

/// A [`Deleted`] trial taken apart.
#[derive(Clone, Debug, PartialEq)]
pub struct DeletedParts {
    /// Where it stood.
    pub place: usize,
    /// The trial.
    pub trial: TrialParts,
}

impl From<Notebook> for NotebookParts {
    fn from(notebook: Notebook) -> Self {
        let seal = notebook.seal();
        let Notebook {
            group,
            level,
            support,
            allows_two_changes,
            telling,
            set_up,
            trials,
            deleted,
            plans,
            in_hand,
            conclusion,
            altered,
        } = notebook;
        let take_apart =
            |Deleted { place, trial }| DeletedParts { place, trial: trial.into() };
        Self {
            group,
            level,
            support,
            allows_two_changes,
            telling,
            set_up,
            trials: trials.into_iter().map(Into::into).collect(),
            deleted: deleted.into_iter().map(take_apart).collect(),
            plans,
            in_hand,
            conclusion,
            seal,
            altered,
        }
    }
}

impl TryFrom<NotebookParts> for Notebook {
    type Error = NotebookError;

    /// The notebook, [rounded](Notebook::rounded). It [is altered](Notebook::is_altered)
    /// where it says so itself, and where `seal` is not the one over these trials.
    fn try_from(parts: NotebookParts) -> Result<Self, NotebookError> {
        let NotebookParts {
            group,
            level,
            support,
            allows_two_changes,
            telling,
            set_up,
            trials,
            deleted,
            plans,
            in_hand,
            conclusion,
            seal,
            altered,
        } = parts;
        if trials.len() + deleted.len() > MOST_TRIALS {
            return Err(NotebookError::TooManyTrials);
        }
        let rules = set_up.as_ref().map(|set_up| set_up.rules());
        let mut entries: Vec<_> =
            trials.iter().map(|trial| (trial.id, false, trial.seal)).collect();
        entries.extend(deleted.iter().map(|one| (one.trial.id, true, one.trial.seal)));
        let expected =
            (!entries.is_empty()).then(|| seal::over_notebook(altered, rules, entries));
        let put_together =
            |DeletedParts { place, trial }| Deleted { place, trial: trial.into() };
        Self {
            group,
            level,
            support,
            allows_two_changes,
            telling,
            set_up,
            trials: trials.into_iter().map(Into::into).collect(),
            deleted: deleted.into_iter().map(put_together).collect(),
            plans,
            in_hand,
            conclusion,
            altered: altered || seal != expected,
        }
        .ruled()
        .checked()
    }
}

/// Why trials make no notebook, or one more has no room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotebookError {
    /// See [`MOST_TRIALS`].
    TooManyTrials,
    /// See [`MOST_PLANS`].
    TooManyPlans,
    /// Numbers of trials are from 1 on, each once.
    Numbers,
}

impl Notebook {
    /// An empty notebook of a group, set up as another one.
    #[must_use]
    pub fn set_up_as(&self, group: Group) -> Self {
        Self {
            group,
            level: self.level,
            support: self.support,
            allows_two_changes: self.allows_two_changes,
            telling: self.telling,
            set_up: self.set_up.clone(),
            ..Self::default()
        }
    }

    /// An empty notebook of a group, for a lesson that was set up.
    #[must_use]
    pub fn of_set_up(group: Group, set_up: &SetUp) -> Self {
        Self { group, set_up: Some(Box::new(set_up.without_rocket())), ..Self::default() }
            .ruled()
    }

    /// The same notebook with the settings that its set-up fixes.
    fn ruled(mut self) -> Self {
        if let Some(set_up) = &self.set_up {
            self.level = set_up.level;
            self.support = set_up.support;
            self.allows_two_changes = set_up.allows_two_changes;
            self.telling = set_up.telling;
        }
        self
    }

    /// How the lesson is set up, if somebody did.
    #[must_use]
    pub fn set_up(&self) -> Option<&SetUp> {
        self.set_up.as_deref()
    }

    /// Takes a set-up with the same rules in place of its own: what was corrected since.
    pub fn set_up_again(&mut self, set_up: &SetUp) {
        if self.rules() == Some(set_up.rules()) {
            self.set_up = Some(Box::new(set_up.without_rocket()));
            *self = std::mem::take(self).ruled();
        }
    }

    /// Frees it from its set-up: its settings stay as they are, and it has no rules.
    pub fn lift_set_up(&mut self) {
        self.set_up = None;
    }

    /// The code of the rules that its trials are made under; `None` without a set-up.
    #[must_use]
    pub fn rules(&self) -> Option<RulesCode> {
        self.set_up().map(SetUp::rules)
    }

    /// The rule that locking the prediction of a trial would break.
    #[must_use]
    pub fn broken_by(&self, trial: &Trial) -> Option<BrokenRule> {
        self.set_up.as_ref()?.broken_by(trial, &self.changes_of(trial))
    }

    /// The rule that swinging a trial in some way would break.
    #[must_use]
    pub fn broken_by_swing(
        &self,
        trial: &Trial,
        setup: &SwingSetup,
    ) -> Option<BrokenRule> {
        let before = self.baseline_of(trial).map(Trial::swings);
        let before = before.filter(|swings| !swings.outcomes().is_empty());
        self.set_up.as_ref()?.broken_by_swing(setup, before.map(|swings| &swings.setup))
    }

    /// The same notebook if it is one: its numbers differ, there is room for all of it,
    /// and its texts are as they are kept.
    fn checked(mut self) -> Result<Self, NotebookError> {
        if self.plans.len() > MOST_PLANS {
            return Err(NotebookError::TooManyPlans);
        }
        // A few dozen at most; sorting them would take more code than comparing.
        let ids: Vec<u16> = self.all().map(Trial::id).collect();
        let is_twice = ids.iter().zip(0..).any(|(id, i)| ids[..i].contains(id));
        if is_twice || ids.contains(&0) {
            return Err(NotebookError::Numbers);
        }
        // Room for as many more as a notebook holds.
        let last = ids.iter().max();
        if last.is_some_and(|last| usize::from(u16::MAX - last) < MOST_TRIALS) {
            return Err(NotebookError::Numbers);
        }
        // None that was deleted is in hand.
        self.in_hand = self.in_hand().map(Trial::id);
        for deleted in &mut self.deleted {
            deleted.place = deleted.place.min(MOST_TRIALS);
        }
        for plan in std::mem::take(&mut self.plans) {
            self.add_plan(&plan);
        }
        self.conclusion = self.conclusion.cleaned();
        Ok(self)
    }

    /// The same notebook as it is kept: see [`Trial::rounded`], and texts without control
    /// characters and no longer than they may be.
    #[must_use]
    pub fn rounded(self) -> Self {
        let deleted = self.deleted.into_iter();
        Self {
            trials: self.trials.into_iter().map(Trial::rounded).collect(),
            deleted: deleted
                .map(|one| Deleted { trial: one.trial.rounded(), ..one })
                .collect(),
            conclusion: self.conclusion.cleaned(),
            ..self
        }
    }

    /// Whether trials, or their seals, were taken out or put in by hand: in a file, a table
    /// or a code. That cannot be taken back. What was changed within a trial is for
    /// [`Trial::is_altered`] to say.
    #[must_use]
    pub fn is_altered(&self) -> bool {
        self.altered
    }

    /// The check over the numbers and the seals of its trials, deleted ones included;
    /// `None` while there is none.
    #[must_use]
    pub fn seal(&self) -> Option<Seal> {
        let entry = |deleted| move |trial: &Trial| (trial.id(), deleted, trial.seal());
        let mut entries: Vec<_> = self.trials.iter().map(entry(false)).collect();
        entries.extend(self.deleted.iter().map(|one| entry(true)(&one.trial)));
        let rules = self.rules();
        (!entries.is_empty()).then(|| seal::over_notebook(self.altered, rules, entries))
    }

    /// The trials, in the order in which they are shown.
    #[must_use]
    pub fn trials(&self) -> &[Trial] {
        &self.trials
    }

    /// What was deleted, the latest last.
    #[must_use]
    pub fn deleted(&self) -> &[Deleted] {
        &self.deleted
    }

    /// What the group plans to try, the next first.
    #[must_use]
    pub fn plans(&self) -> &[String] {
        &self.plans
    }

    /// Whether nothing has been written.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.count() == 0
            && self.plans.is_empty()
            && self.conclusion == Conclusion::default()
    }

    /// The trial with a number, unless it was deleted.
    #[must_use]
    pub fn trial(&self, id: u16) -> Option<&Trial> {
        self.trials.iter().find(|trial| trial.id() == id)
    }

    /// The trial with a number, to write into it.
    pub fn trial_mut(&mut self, id: u16) -> Option<&mut Trial> {
        self.trials.iter_mut().find(|trial| trial.id() == id)
    }

    /// The trial with a number, deleted or not.
    #[must_use]
    pub fn trial_or_deleted(&self, id: u16) -> Option<&Trial> {
        self.all().find(|trial| trial.id() == id)
    }

    /// The trial that a trial is compared with, deleted or not.
    #[must_use]
    pub fn baseline_of(&self, trial: &Trial) -> Option<&Trial> {
        self.trial_or_deleted(trial.compared_with()?)
    }

    /// The trial whose rocket is on the page, if it is one's.
    #[must_use]
    pub fn in_hand(&self) -> Option<&Trial> {
        self.trial(self.in_hand?)
    }

    /// The trial in hand, to write into it.
    pub fn in_hand_mut(&mut self) -> Option<&mut Trial> {
        self.trial_mut(self.in_hand?)
    }

    /// Whether a rocket is the one of the trial in hand, and swinging it in this way would
    /// be one swing more of that trial.
    #[must_use]
    pub fn is_in_hand(&self, design: &Design, setup: &SwingSetup) -> bool {
        self.in_hand().is_some_and(|trial| {
            same_build(trial.design(), design) && trial.swings().agrees_with(setup)
        })
    }

    /// Begins a trial with the rocket on the page, after the trial in hand, which it is
    /// compared with. Gives its number.
    ///
    /// # Errors
    ///
    /// [`NotebookError::TooManyTrials`].
    pub fn begin(&mut self, record: &Record) -> Result<u16, NotebookError> {
        let trial = self.next_trial(record)?;
        self.insert(self.trials.len(), |_| trial)
    }

    /// The trial that [`begin`](Self::begin) would begin with a rocket.
    ///
    /// # Errors
    ///
    /// When there are [`MOST_TRIALS`] already.
    pub fn next_trial(&self, record: &Record) -> Result<Trial, NotebookError> {
        if self.count() >= MOST_TRIALS {
            return Err(NotebookError::TooManyTrials);
        }
        let compared_with = self.in_hand().or(self.trials.last()).map(Trial::id);
        let record = self.without_known_swings(record);
        Ok(Trial::new(self.next_number(), &record, compared_with))
    }

    /// The number that the next trial will have.
    #[must_use]
    pub fn next_number(&self) -> u16 {
        self.all().map(Trial::id).max().unwrap_or(0) + 1
    }

    /// Begins a trial with a plan, which it takes along.
    ///
    /// # Errors
    ///
    /// [`NotebookError::TooManyTrials`].
    pub fn begin_plan(
        &mut self,
        plan: usize,
        record: &Record,
    ) -> Result<u16, NotebookError> {
        let id = self.begin(record)?;
        if plan < self.plans.len() {
            let plan = self.plans.remove(plan);
            if let Some(trial) = self.trial_mut(id) {
                trial.plan = plan;
            }
        }
        Ok(id)
    }

    /// A trial of the same rocket, right behind it: nothing predicted, measured or seen.
    ///
    /// # Errors
    ///
    /// [`NotebookError::TooManyTrials`].
    pub fn copy(&mut self, id: u16) -> Result<Option<u16>, NotebookError> {
        let Some(place) = self.place(id) else { return Ok(None) };
        let trial = &self.trials[place];
        let record = Record {
            design: trial.design().clone(),
            swings: trial.swings().setup.into(),
        };
        let copied = self.insert(place + 1, |new| Trial::new(new, &record, Some(id)))?;
        Ok(Some(copied))
    }

    /// Takes a trial in hand; its rocket is for the page to show.
    pub fn take_in_hand(&mut self, id: u16) -> Option<&Trial> {
        self.trial(id)?;
        self.in_hand = Some(id);
        self.in_hand()
    }

    /// Another rocket is on the page. A trial whose rocket still follows the page keeps its
    /// own and is no longer in hand. Nor is one that is locked, where its swings would take
    /// the place of others that are on record with no trial.
    pub fn release(&mut self, record: &Record) {
        let Some(trial) = self.in_hand() else { return };
        let stays = if trial.is_locked() {
            !record.has_swings()
                || !self.is_in_hand(&record.design, &record.swings.setup)
                || self.knows_swings(record)
        } else {
            trial.record() == *record
        };
        if !stays {
            self.in_hand = None;
        }
    }

    /// Whether the swings of a record are those of a trial, deleted or not, or the first of
    /// them.
    fn knows_swings(&self, record: &Record) -> bool {
        self.all().any(|trial| {
            trial.swings().agrees_with(&record.swings.setup)
                && trial.swings().outcomes().starts_with(record.swings.outcomes())
                && same_build(trial.design(), &record.design)
        })
    }

    /// A record without swings that are on record with a trial: they are no other one's.
    pub(crate) fn without_known_swings(&self, record: &Record) -> Record {
        let mut record = record.clone();
        if self.knows_swings(&record) {
            record.swings = record.swings.setup.into();
        }
        record
    }

    /// Compares a trial with another one, or with none.
    pub fn compare(&mut self, id: u16, with: Option<u16>) {
        if with == Some(id) || with.is_some_and(|with| self.trial(with).is_none()) {
            return;
        }
        if let Some(trial) = self.trial_mut(id) {
            trial.compare_with(with);
        }
    }

    /// Locks what is written as the prediction of a trial; whether that said anything new.
    pub fn lock(&mut self, id: u16) -> bool {
        self.trial_mut(id).is_some_and(Trial::lock)
    }

    /// The rocket on the page has changed: the trial in hand takes it, with swings that are
    /// on record with no trial, unless its own is locked.
    pub fn follow(&mut self, record: &Record) {
        let record = self.without_known_swings(record);
        if let Some(trial) = self.in_hand_mut() {
            trial.follow(&record);
        }
    }

    /// The rocket of the trial in hand has been swung, or a swing was taken back.
    pub fn swing(&mut self, swings: &Swings) {
        if let Some(trial) = self.in_hand_mut() {
            trial.swing(swings);
        }
    }

    /// Deletes a trial; [`restore`](Self::restore) brings it back. Whether it was there.
    pub fn delete(&mut self, id: u16) -> bool {
        let Some(place) = self.place(id) else { return false };
        let trial = self.trials.remove(place);
        self.deleted.push(Deleted { place, trial });
        self.in_hand.take_if(|in_hand| *in_hand == id);
        true
    }

    /// Brings a deleted trial back to where it stood. Whether it was there.
    pub fn restore(&mut self, id: u16) -> bool {
        let found = self.deleted.iter().position(|deleted| deleted.trial.id() == id);
        let Some(found) = found else { return false };
        let Deleted { place, trial } = self.deleted.remove(found);
        self.trials.insert(place.min(self.trials.len()), trial);
        true
    }

    /// Moves a trial one place towards the front, or towards the end. Whether it moved.
    pub fn shift(&mut self, id: u16, to_front: bool) -> bool {
        let Some(place) = self.place(id) else { return false };
        let other = if to_front { place.checked_sub(1) } else { Some(place + 1) };
        let Some(other) = other.filter(|other| *other < self.trials.len()) else {
            return false;
        };
        self.trials.swap(place, other);
        true
    }

    /// Adds a plan for a trial to come; whether there was room and something to add.
    pub fn add_plan(&mut self, plan: &str) -> bool {
        let plan = cleaned_lines(plan, PLAN_CHARS).replace('\n', " ");
        let plan = plan.trim();
        let adds = !plan.is_empty() && self.plans.len() < MOST_PLANS;
        if adds {
            self.plans.push(plan.to_owned());
        }
        adds
    }

    /// Takes a plan away.
    pub fn remove_plan(&mut self, plan: usize) -> Option<String> {
        (plan < self.plans.len()).then(|| self.plans.remove(plan))
    }

    /// This notebook with the facts of another state of it: what was locked or swung there
    /// is here as it is there, and nothing of that is undone.
    pub(crate) fn with_facts_of(&self, now: &Self) -> Self {
        let mut kept = self.clone();
        kept.altered |= now.altered;
        let places =
            now.trials.iter().enumerate().map(|(place, trial)| (place, false, trial));
        let deleted = now.deleted.iter().map(|one| (one.place, true, &one.trial));
        for (place, is_deleted, trial) in places.chain(deleted) {
            if !trial.has_facts() {
                continue;
            }
            if let Some(old) = kept.any_mut(trial.id()) {
                *old = trial.with_words_of(old);
            } else if is_deleted {
                kept.deleted.push(Deleted { place, trial: trial.clone() });
            } else {
                kept.trials.insert(place.min(kept.trials.len()), trial.clone());
            }
        }
        // One that is not there any more is nobody's baseline: its number may come again.
        let ids: Vec<u16> = kept.all().map(Trial::id).collect();
        for trial in &mut kept.trials {
            if trial.compared_with().is_some_and(|id| !ids.contains(&id)) {
                trial.compare_with(None);
            }
        }
        kept
    }

    /// No trial is in hand any more.
    pub(crate) fn put_down(&mut self) {
        self.in_hand = None;
    }

    fn any_mut(&mut self, id: u16) -> Option<&mut Trial> {
        let deleted = self.deleted.iter_mut().map(|deleted| &mut deleted.trial);
        self.trials.iter_mut().chain(deleted).find(|trial| trial.id() == id)
    }

    fn insert(
        &mut self,
        place: usize,
        trial: impl FnOnce(u16) -> Trial,
    ) -> Result<u16, NotebookError> {
        if self.count() >= MOST_TRIALS {
            return Err(NotebookError::TooManyTrials);
        }
        let id = self.next_number();
        self.trials.insert(place, trial(id));
        self.in_hand = Some(id);
        Ok(id)
    }

    fn place(&self, id: u16) -> Option<usize> {
        self.trials.iter().position(|trial| trial.id() == id)
    }

    fn all(&self) -> impl Iterator<Item = &Trial> {
        self.trials.iter().chain(self.deleted.iter().map(|deleted| &deleted.trial))
    }

    fn count(&self) -> usize {
        self.trials.len() + self.deleted.len()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Colour, Draft, Predictions, SwingOutcome};
    use noseward_stability::Example;

    fn record(example: Example) -> Record {
        example.design().into()
    }

    fn three() -> Notebook {
        let mut notebook = Notebook::default();
        for example in [Example::Tern, Example::Razorbill, Example::Puffin] {
            notebook.begin(&record(example)).unwrap();
        }
        notebook
    }

    fn ids(notebook: &Notebook) -> Vec<u16> {
        notebook.trials().iter().map(Trial::id).collect()
    }

    #[test]
    fn each_trial_is_compared_with_the_one_in_hand() {
        let mut notebook = three();
        assert_eq!(ids(&notebook), [1, 2, 3]);
        let compared: Vec<_> =
            notebook.trials().iter().map(Trial::compared_with).collect();
        assert_eq!(compared, [None, Some(1), Some(2)]);
        notebook.take_in_hand(1).unwrap();
        notebook.begin(&record(Example::Gannet)).unwrap();
        assert_eq!(notebook.trial(4).unwrap().compared_with(), Some(1));
        notebook.compare(4, Some(3));
        let fourth = notebook.trial(4).unwrap();
        assert_eq!(notebook.baseline_of(fourth).unwrap().id(), 3);
        notebook.compare(4, Some(4));
        notebook.compare(4, Some(9));
        assert_eq!(notebook.trial(4).unwrap().compared_with(), Some(3));
    }

    #[test]
    fn what_is_deleted_comes_back_to_its_place() {
        let mut notebook = three();
        let before = notebook.clone();
        assert!(notebook.delete(2) && !notebook.delete(2));
        assert_eq!(ids(&notebook), [1, 3]);
        assert_eq!(notebook.deleted().len(), 1);
        // What was compared with it still is, and its number is not given again.
        let third = notebook.trial(3).unwrap();
        assert_eq!(notebook.baseline_of(third).unwrap().id(), 2);
        assert!(notebook.restore(2) && !notebook.restore(2));
        assert_eq!(notebook, before);
        notebook.delete(3);
        assert_eq!(notebook.in_hand(), None);
        assert!(notebook.restore(3));
        assert_eq!(notebook.in_hand(), None, "the page may show another rocket by now");
        assert_eq!(notebook.begin(&record(Example::Tern)).unwrap(), 4);
    }

    #[test]
    fn trials_change_places() {
        let mut notebook = three();
        assert!(notebook.shift(3, true));
        assert_eq!(ids(&notebook), [1, 3, 2]);
        assert!(notebook.shift(1, false));
        assert_eq!(ids(&notebook), [3, 1, 2]);
        assert!(!notebook.shift(3, true) && !notebook.shift(2, false));
    }

    #[test]
    fn a_copy_is_a_trial_of_its_own() {
        let mut notebook = three();
        notebook.trial_mut(1).unwrap().draft =
            Draft { outcome: Some(SwingOutcome::Steady), because: "long".into() };
        assert!(notebook.lock(1) && !notebook.lock(1));
        assert_eq!(notebook.copy(1), Ok(Some(4)));
        assert_eq!(ids(&notebook), [1, 4, 2, 3]);
        let copy = notebook.in_hand().unwrap();
        assert!(!copy.is_locked() && copy.compared_with() == Some(1));
        assert_eq!(copy.design(), notebook.trial(1).unwrap().design());
        assert_eq!(notebook.copy(9), Ok(None));
    }

    #[test]
    fn a_notebook_has_room_for_so_many() {
        let mut notebook = Notebook::default();
        for _ in 0..MOST_TRIALS {
            notebook.begin(&record(Example::Tern)).unwrap();
        }
        let full = Err(NotebookError::TooManyTrials);
        assert_eq!(notebook.begin(&record(Example::Tern)), full);
        notebook.delete(1);
        assert_eq!(notebook.begin(&record(Example::Tern)), full);
        assert_eq!(by_hand(&notebook, |_| {}), notebook);
        for i in 0..MOST_PLANS {
            assert!(notebook.add_plan(&format!("plan {i}")));
        }
        assert!(!notebook.add_plan("one more"));
        assert_eq!(by_hand(&notebook, |_| {}), notebook);
        let mut parts = NotebookParts::from(notebook);
        let mut one_more = parts.trials[0].clone();
        one_more.id = 41;
        parts.trials.push(one_more);
        assert_eq!(Notebook::try_from(parts), Err(NotebookError::TooManyTrials));
    }

    #[test]
    fn the_largest_number_leaves_room_for_a_notebook_more() {
        let parts = NotebookParts::from(three());
        let numbered = |id| {
            let mut parts = parts.clone();
            parts.trials[1].id = id;
            Notebook::try_from(parts).map(|notebook| ids(&notebook)[1])
        };
        assert_eq!(numbered(u16::MAX - 40), Ok(u16::MAX - 40));
        for id in [u16::MAX - 39, u16::MAX] {
            assert_eq!(numbered(id), Err(NotebookError::Numbers));
        }
    }

    #[test]
    fn the_page_and_the_trial_in_hand() {
        let mut notebook = three();
        let mut page = record(Example::Gannet);
        let is_on_page = |notebook: &Notebook, page: &Record| {
            notebook.is_in_hand(&page.design, &page.swings.setup)
        };
        assert!(!is_on_page(&notebook, &page));
        notebook.follow(&page);
        assert!(is_on_page(&notebook, &page));
        page.swings.setup.string_m = 2.0;
        assert!(is_on_page(&notebook, &page), "not swung: any way will do");
        notebook.trial_mut(3).unwrap().draft.outcome = Some(SwingOutcome::Steady);
        assert!(notebook.lock(3));
        page.swings.add(SwingOutcome::Steady);
        notebook.swing(&page.swings);
        assert!(is_on_page(&notebook, &page));
        let mut other = page.clone();
        other.swings.setup.string_m = 1.5;
        assert!(!is_on_page(&notebook, &other), "swung in another way");
        assert_eq!(notebook.in_hand().unwrap().swings(), &page.swings);
        page.design.sections[0].length_mm += 5.0;
        notebook.follow(&page);
        assert!(!is_on_page(&notebook, &page));
        assert_eq!(notebook.trial(3).unwrap().design(), &Example::Gannet.design());
    }

    #[test]
    fn another_rocket_does_not_take_a_trial_over() {
        let mut notebook = three();
        notebook.release(&record(Example::Puffin));
        assert_eq!(notebook.in_hand().unwrap().id(), 3);
        notebook.release(&record(Example::Tern));
        assert_eq!(notebook.in_hand(), None);
        notebook.take_in_hand(3);
        notebook.trial_mut(3).unwrap().draft.outcome = Some(SwingOutcome::Steady);
        notebook.lock(3);
        let mut swung = record(Example::Tern);
        notebook.release(&swung);
        assert_eq!(notebook.in_hand().unwrap().id(), 3);
        swung.swings.add(SwingOutcome::Steady);
        notebook.release(&swung);
        assert_eq!(notebook.in_hand().unwrap().id(), 3, "these are another rocket's");
        // Swings that no trial knows would be lost under those of the trial.
        let mut swung = record(Example::Puffin);
        swung.swings.add(SwingOutcome::Steady);
        notebook.swing(&swung.swings);
        notebook.release(&swung);
        assert_eq!(notebook.in_hand().unwrap().id(), 3);
        swung.swings.add(SwingOutcome::TailFirst);
        notebook.release(&swung);
        assert_eq!(notebook.in_hand(), None);
    }

    #[test]
    fn swings_belong_to_one_trial() {
        let mut notebook = Notebook::default();
        let mut page = record(Example::Tern);
        page.swings.add(SwingOutcome::Steady);
        notebook.begin(&page).unwrap();
        assert!(notebook.in_hand().unwrap().swung_first(), "swung without a notebook");
        notebook.begin(&page).unwrap();
        assert!(notebook.in_hand().unwrap().swings().outcomes().is_empty());
        // Another rocket leaves them behind.
        notebook.take_in_hand(1);
        notebook.follow(&record(Example::Razorbill));
        assert!(notebook.in_hand().unwrap().swings().outcomes().is_empty());
        // They come back with it, unless they are another trial's.
        notebook.follow(&page);
        assert_eq!(notebook.in_hand().unwrap().swings(), &page.swings);
        notebook.take_in_hand(2);
        notebook.follow(&record(Example::Razorbill));
        notebook.follow(&page);
        assert!(notebook.in_hand().unwrap().swings().outcomes().is_empty());
    }

    #[test]
    fn plans_become_trials() {
        let mut notebook = Notebook::default();
        assert!(!notebook.add_plan("  "));
        assert!(notebook.add_plan("bigger fins") && notebook.add_plan("more\nballast"));
        let id = notebook.begin_plan(1, &record(Example::Tern)).unwrap();
        assert_eq!(notebook.trial(id).unwrap().plan, "more ballast");
        assert_eq!(notebook.plans(), ["bigger fins"]);
        // A plan that is not there any more leaves a trial without one.
        let id = notebook.begin_plan(1, &record(Example::Tern)).unwrap();
        assert_eq!(notebook.trial(id).unwrap().plan, "");
        assert_eq!(notebook.remove_plan(0).as_deref(), Some("bigger fins"));
        assert_eq!(notebook.remove_plan(0), None);
    }

    #[test]
    fn what_is_kept_comes_back_the_same() {
        let mut notebook = three();
        let trial = notebook.trial_mut(2).unwrap();
        trial.note = "a\tb\r\nc\u{202e}".into();
        trial.measured.mass.mm[0] = Some(201.26);
        notebook.conclusion.claim = "x".repeat(900);
        notebook.delete(2);
        let kept = notebook.clone().rounded();
        assert_ne!(kept, notebook);
        let deleted = &kept.deleted()[0].trial;
        assert_eq!(deleted.note, "a b\nc");
        assert_eq!(deleted.measured.mass.mm[0], Some(201.3));
        assert_eq!(kept.conclusion.claim.len(), crate::BOX_CHARS);
        let parts = NotebookParts::from(notebook);
        assert_eq!(Notebook::try_from(parts), Ok(kept.clone()));
        assert_eq!(kept.clone().rounded(), kept);
    }

    #[test]
    fn taken_apart_it_comes_back_and_what_is_no_notebook_is_refused() {
        let mut notebook = three();
        notebook.delete(2);
        notebook.add_plan("bigger fins");
        notebook.conclusion.claim = "Fins help.".into();
        let parts = NotebookParts::from(notebook.clone());
        assert_eq!(Notebook::try_from(parts.clone()), Ok(notebook.clone()));
        for (place, id) in [(1, 1), (0, 2), (0, 0)] {
            let mut bad = parts.clone();
            bad.trials[place].id = id;
            let error = Notebook::try_from(bad).unwrap_err();
            assert_eq!(error, NotebookError::Numbers);
        }
        let mut many = parts.clone();
        many.plans = vec!["x".into(); 13];
        assert_eq!(Notebook::try_from(many), Err(NotebookError::TooManyPlans));
        // One that was deleted is not in hand, and stood at some place.
        let mut odd = parts;
        odd.in_hand = Some(2);
        odd.deleted[0].place = usize::MAX;
        let mut odd = Notebook::try_from(odd).unwrap();
        assert!(odd.restore(2) && odd.in_hand().is_none());
        assert_eq!(ids(&odd), [1, 3, 2]);
        // Set up alike, with nothing written.
        notebook.level = Level::Explain;
        notebook.support = Support::Questions;
        notebook.allows_two_changes = !notebook.allows_two_changes;
        notebook.telling = Telling::Points;
        let group = Group::new(Colour::Grey, 12).unwrap();
        let other = notebook.set_up_as(group);
        assert!(other.is_blank() && !notebook.is_blank());
        let set_up = |n: &Notebook| (n.level, n.support, n.allows_two_changes, n.telling);
        assert_eq!((other.group, set_up(&other)), (group, set_up(&notebook)));
    }

    /// Two trials, each predicted and swung.
    fn swung() -> Notebook {
        let mut notebook = Notebook::default();
        for example in [Example::Tern, Example::Puffin] {
            let id = notebook.begin(&record(example)).unwrap();
            predict(&mut notebook, id, SwingOutcome::Steady);
            notebook.swing(
                &Swings::new(SwingSetup::default(), [SwingOutcome::TailFirst]).unwrap(),
            );
        }
        notebook
    }

    fn predict(notebook: &mut Notebook, id: u16, outcome: SwingOutcome) {
        let because = format!("we think {outcome:?}");
        notebook.trial_mut(id).unwrap().draft = Draft { outcome: Some(outcome), because };
        assert!(notebook.lock(id));
    }

    fn by_hand(notebook: &Notebook, change: impl FnOnce(&mut NotebookParts)) -> Notebook {
        let mut parts = NotebookParts::from(notebook.clone());
        change(&mut parts);
        Notebook::try_from(parts).unwrap()
    }

    #[test]
    fn a_prediction_taken_out_with_its_seal_and_made_anew_leaves_a_trace() {
        let mut again = by_hand(&swung(), |parts| {
            let trial = &mut parts.trials[1];
            trial.predictions = Predictions::default();
            trial.swings = trial.swings.setup.into();
            trial.seal = None;
        });
        assert!(!again.trials()[1].is_altered() && again.is_altered());
        predict(&mut again, 2, SwingOutcome::TailFirst);
        // For good, also where the mark itself is taken out.
        let again = by_hand(&again, |_| {});
        assert!(again.is_altered());
        assert!(by_hand(&again, |parts| parts.altered = false).is_altered());
        let unsealed = by_hand(&swung(), |parts| parts.seal = None);
        assert!(unsealed.is_altered());
    }

    #[test]
    fn a_trial_that_is_taken_out_or_put_in_leaves_a_trace() {
        let notebook = swung();
        assert!(!by_hand(&notebook, |_| {}).is_altered());
        let without = by_hand(&notebook, |parts| parts.trials.truncate(1));
        assert!(without.is_altered());
        let none = by_hand(&notebook, |parts| parts.trials.clear());
        assert!(none.is_altered() && none.trials().is_empty());
        let twice = by_hand(&notebook, |parts| parts.trials[1].id = 3);
        assert!(twice.is_altered() && twice.trials()[1].is_altered());
        // One that was deleted, on the page or by hand.
        let mut deleted = notebook.clone();
        deleted.delete(1);
        assert!(!by_hand(&deleted, |_| {}).is_altered());
        let purged = by_hand(&deleted, |parts| parts.deleted.clear());
        assert!(purged.is_altered());
        // Trials may be sorted; what is changed within one is told there.
        let sorted = by_hand(&notebook, |parts| parts.trials.reverse());
        assert!(!sorted.is_altered());
        let renamed =
            by_hand(&notebook, |parts| parts.trials[0].design.name = "Auk".into());
        assert!(!renamed.is_altered() && renamed.trials()[0].is_altered());
    }

    /// The limit of a check that stands in the file itself: nothing tells an earlier copy
    /// from the latest one.
    #[test]
    fn an_earlier_copy_is_as_right_as_the_latest() {
        let mut notebook = Notebook::default();
        notebook.begin(&record(Example::Tern)).unwrap();
        let mut earlier = by_hand(&notebook, |_| {});
        predict(&mut notebook, 1, SwingOutcome::Steady);
        predict(&mut earlier, 1, SwingOutcome::TailFirst);
        assert!(!by_hand(&earlier, |_| {}).is_altered());
    }
}
