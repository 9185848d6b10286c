//! One trial: a rocket as it was, what was predicted, measured and seen.

use noseward_stability::{Design, Report, Weight, cleaned_lines};

use crate::seal::{self, Seal};
use crate::{
    COUNTED, Measurements, Prediction, Predictions, Record, Rocket, SwingOutcome, Swings,
};

/// The most characters of a trial's note.
pub const NOTE_CHARS: usize = 500;
/// Swings of one trial that can be taken back, as slips of whoever recorded them.
pub const MOST_TAKEN_BACK: usize = 3;
/// The most characters of a plan.
pub const PLAN_CHARS: usize = 120;

/// One trial of a notebook.
///
/// Its rocket follows the one on the page until a prediction is locked; from then on it is
/// the rocket as it was.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    id: u16,
    rocket: Rocket,
    compared_with: Option<u16>,
    /// What the group had planned, if it had.
    pub plan: String,
    /// The two points as measured.
    pub measured: Measurements,
    /// A prediction that is being written and not yet locked.
    pub draft: Draft,
    predictions: Predictions,
    swings: Swings,
    taken_back: Vec<SwingOutcome>,
    /// Whatever else the group wrote.
    pub note: String,
    altered: bool,
}

/// A prediction that is being written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// The outcome, if one is chosen.
    pub outcome: Option<SwingOutcome>,
    /// The reason so far.
    pub because: String,
}

impl Draft {
    /// Whether nothing was written.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// What the swings of a trial come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Overall {
    /// Nothing that counts was seen.
    Nothing,
    /// This was seen more often than all else together.
    Mostly(SwingOutcome),
    /// No outcome was seen more often than all others together.
    Mixed,
}

impl Overall {
    /// What swings that count come to.
    #[must_use]
    pub fn of(seen: &[SwingOutcome]) -> Self {
        let most = SwingOutcome::ALL
            .into_iter()
            .map(|outcome| (seen.iter().filter(|&&o| o == outcome).count(), outcome))
            .find(|&(count, _)| 2 * count > seen.len());
        match most {
            _ if seen.is_empty() => Self::Nothing,
            Some((_, outcome)) => Self::Mostly(outcome),
            None => Self::Mixed,
        }
    }

    /// Whether a prediction came true. `None` where the swings do not say: none that
    /// counts, mixed, or "not sure" on either side.
    #[must_use]
    pub fn bears_out(self, predicted: SwingOutcome) -> Option<bool> {
        const UNSURE: SwingOutcome = SwingOutcome::NotSure;
        match self {
            Self::Mostly(seen) if seen != UNSURE && predicted != UNSURE => {
                Some(seen == predicted)
            }
            _ => None,
        }
    }
}

/// A trial taken apart: every field as it is written down, in files and elsewhere, and the
/// seal that stands there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TrialParts {
    /// See [`Trial::id`].
    pub id: u16,
    /// The rocket.
    pub design: Design,
    /// See [`Trial::compared_with`].
    pub compared_with: Option<u16>,
    /// What the group had planned.
    pub plan: String,
    /// The two points as measured.
    pub measured: Measurements,
    /// A prediction that is being written.
    pub draft: Draft,
    /// What was predicted.
    pub predictions: Predictions,
    /// How it was swung, and what was seen.
    pub swings: Swings,
    /// See [`Trial::taken_back`].
    pub taken_back: Vec<SwingOutcome>,
    /// Whatever else the group wrote.
    pub note: String,
    /// The seal that stands there; absent while nothing is sealed.
    pub seal: Option<Seal>,
    /// Whether it says of itself that it was altered.
    pub altered: bool,
}

impl From<Trial> for TrialParts {
    fn from(trial: Trial) -> Self {
        let seal = trial.seal();
        let Trial {
            id,
            rocket,
            compared_with,
            plan,
            measured,
            draft,
            predictions,
            swings,
            taken_back,
            note,
            altered,
        } = trial;
        Self {
            id,
            design: rocket.into(),
            compared_with,
            plan,
            measured,
            draft,
            predictions,
            swings,
            taken_back,
            note,
            seal,
            altered,
        }
    }
}

impl From<TrialParts> for Trial {
    /// The trial, [rounded](Trial::rounded). It [is altered](Trial::is_altered) where it
    /// says so itself, and where `seal` is not the one of these contents.
    fn from(parts: TrialParts) -> Self {
        let TrialParts {
            id,
            design,
            compared_with,
            plan,
            measured,
            draft,
            predictions,
            swings,
            taken_back,
            note,
            seal,
            altered,
        } = parts;
        let Record { design, swings } = Record { design, swings }.rounded();
        let mut trial = Self {
            id,
            rocket: design.into(),
            compared_with,
            plan,
            measured,
            draft,
            predictions,
            swings,
            taken_back,
            note,
            altered,
        }
        .rounded();
        trial.altered |= trial.seal() != seal;
        trial
    }
}

impl Trial {
    /// A new trial of a rocket, with the swings that it may have had already.
    pub(crate) fn new(id: u16, record: &Record, compared_with: Option<u16>) -> Self {
        let Record { design, swings } = record.clone().rounded();
        Self {
            id,
            rocket: design.into(),
            compared_with,
            plan: String::new(),
            measured: Measurements::default(),
            draft: Draft::default(),
            predictions: Predictions::default(),
            swings,
            taken_back: Vec::new(),
            note: String::new(),
            altered: false,
        }
    }

    /// The same trial, where the report of its rocket is known: it is not worked out again.
    #[must_use]
    pub fn knowing(mut self, report: &Report) -> Self {
        self.rocket = Rocket::known(self.design().clone(), report.clone());
        self
    }

    /// Its number, which no other trial of the notebook has or had.
    #[must_use]
    pub fn id(&self) -> u16 {
        self.id
    }

    /// The rocket as it was.
    #[must_use]
    pub fn rocket(&self) -> &Rocket {
        &self.rocket
    }

    /// How it was described.
    #[must_use]
    pub fn design(&self) -> &Design {
        self.rocket.design()
    }

    /// The number of the trial that it is compared with; `None` for a baseline.
    #[must_use]
    pub fn compared_with(&self) -> Option<u16> {
        self.compared_with
    }

    pub(crate) fn compare_with(&mut self, id: Option<u16>) {
        self.compared_with = id;
    }

    /// What was predicted.
    #[must_use]
    pub fn predictions(&self) -> &Predictions {
        &self.predictions
    }

    /// How it was swung, and what was seen.
    #[must_use]
    pub fn swings(&self) -> &Swings {
        &self.swings
    }

    /// The rocket with its swings, as the page takes it.
    #[must_use]
    pub fn record(&self) -> Record {
        Record { design: self.design().clone(), swings: self.swings.clone() }
    }

    /// Whether a prediction is locked.
    #[must_use]
    pub fn is_locked(&self) -> bool {
        self.predictions.is_locked()
    }

    /// Whether it was swung before anything was predicted.
    #[must_use]
    pub fn swung_first(&self) -> bool {
        match self.predictions.first() {
            Some(first) => first.swings_seen > 0,
            None => !self.swings.outcomes().is_empty(),
        }
    }

    /// Whether what is sealed was changed by hand: in a file, a table or a code. That cannot
    /// be taken back.
    #[must_use]
    pub fn is_altered(&self) -> bool {
        self.altered
    }

    /// The check over its number, its rocket, its predictions and its swings; `None` while
    /// nothing is locked and nothing was swung.
    ///
    /// It makes a change by hand visible. It is no secret: whoever writes a program can
    /// work it out.
    #[must_use]
    pub fn seal(&self) -> Option<Seal> {
        let has_something = self.is_locked() || !self.swings.outcomes().is_empty();
        has_something.then(|| seal::over_trial(self))
    }

    /// What the swings come to.
    #[must_use]
    pub fn overall(&self) -> Overall {
        let seen: Vec<_> = self.swings.counted().collect();
        Overall::of(&seen)
    }

    /// Whether it has all that a trial should have: a prediction, three swings that count.
    #[must_use]
    pub fn is_complete(&self) -> bool {
        self.is_locked() && self.swings.counted().count() >= COUNTED
    }

    /// Locks what is written as a prediction, or adds it as a later version; `false`
    /// without an outcome, or where it says nothing new.
    pub(crate) fn lock(&mut self) -> bool {
        let Some(outcome) = self.draft.outcome else { return false };
        let swings_seen = u8::try_from(self.swings.outcomes().len()).unwrap_or(u8::MAX);
        let because = self.draft.because.clone();
        let locked = self.predictions.add(Prediction { outcome, because, swings_seen });
        if locked {
            self.draft = Draft::default();
        }
        locked
    }

    /// This trial with what the group wrote in another state of it: readings, notes and what
    /// it is compared with. A prediction that was locked since is no draft any more.
    pub(crate) fn with_words_of(&self, then: &Self) -> Self {
        let is_same = self.predictions == then.predictions;
        Self {
            compared_with: then.compared_with,
            plan: then.plan.clone(),
            measured: then.measured.clone(),
            draft: if is_same { then.draft.clone() } else { self.draft.clone() },
            note: then.note.clone(),
            ..self.clone()
        }
    }

    /// Takes the rocket on the page, unless this trial's rocket is locked. Swings of another
    /// rocket are none of this one.
    pub(crate) fn follow(&mut self, record: &Record) {
        if self.is_locked() {
            return;
        }
        let design = record.design.clone().rounded();
        if !same_build(self.design(), &design) {
            self.swings = record.swings.clone().rounded();
        }
        self.rocket = design.into();
    }

    /// Takes other swings of the same rocket.
    /// Takes these swings. Where the last ones are gone, they were [taken
    /// back](Self::taken_back).
    pub(crate) fn swing(&mut self, swings: &Swings) {
        let (before, now) = (self.swings.outcomes(), swings.outcomes());
        if self.is_locked() && before.starts_with(now) {
            self.taken_back.extend(&before[now.len()..]);
        }
        self.swings = swings.clone().rounded();
    }

    /// Outcomes that were recorded by mistake and taken back, the first first. They are not
    /// counted, and stay on record.
    #[must_use]
    pub fn taken_back(&self) -> &[SwingOutcome] {
        &self.taken_back
    }

    /// Whether the last swing can be taken back.
    #[must_use]
    pub fn may_take_back(&self) -> bool {
        !self.swings.outcomes().is_empty() && self.taken_back.len() < MOST_TAKEN_BACK
    }

    /// The same trial as it is kept: lengths on the grid of 0.1 mm, texts without control
    /// characters and no longer than they may be. What is locked is so already.
    #[must_use]
    pub fn rounded(mut self) -> Self {
        use crate::readings::REASON_CHARS;
        self.measured = self.measured.rounded();
        self.taken_back.truncate(MOST_TAKEN_BACK);
        for (text, most) in [
            (&mut self.plan, PLAN_CHARS),
            (&mut self.note, NOTE_CHARS),
            (&mut self.draft.because, crate::prediction::BECAUSE_CHARS),
        ] {
            *text = cleaned_lines(text, most);
        }
        for point in crate::BalancePoint::ALL {
            let readings = self.measured.of_mut(point);
            readings.left_out =
                readings.left_out.take().filter(|out| out.reading < crate::REPEATS);
            if let Some(out) = &mut readings.left_out {
                out.reason = cleaned_lines(&out.reason, REASON_CHARS);
            }
        }
        self
    }
}

/// Whether two designs are the same rocket: words and measured values are not part of how
/// it is built.
#[must_use]
pub fn same_build(a: &Design, b: &Design) -> bool {
    let Design { name: _, sections, fins, weights, measured: _ } = a;
    let is_same = |(a, b): (&Weight, &Weight)| {
        let Weight { label: _, mass_g, position_mm } = a;
        (*mass_g, *position_mm) == (b.mass_g, b.position_mm)
    };
    *sections == b.sections
        && *fins == b.fins
        && weights.len() == b.weights.len()
        && weights.iter().zip(&b.weights).all(is_same)
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Slipped, Steady, TailFirst, Wobbling};
    use noseward_stability::{Example, SwingSetup};

    fn trial(outcomes: &[SwingOutcome]) -> Trial {
        let swings =
            Swings::new(SwingSetup::default(), outcomes.iter().copied()).unwrap();
        Trial::new(1, &Record { design: Example::Tern.design(), swings }, None)
    }

    fn predict(trial: &mut Trial, outcome: SwingOutcome, because: &str) -> bool {
        trial.draft = Draft { outcome: Some(outcome), because: because.into() };
        trial.lock()
    }

    #[test]
    fn what_most_swings_showed() {
        for (outcomes, overall) in [
            (&[][..], Overall::Nothing),
            (&[Slipped, Slipped], Overall::Nothing),
            (&[Steady], Overall::Mostly(Steady)),
            (&[Steady, Slipped, Wobbling], Overall::Mixed),
            (&[Wobbling, Steady, Wobbling], Overall::Mostly(Wobbling)),
            (&[Wobbling, Steady, NotSure], Overall::Mixed),
            (&[TailFirst; 3], Overall::Mostly(TailFirst)),
        ] {
            assert_eq!(trial(outcomes).overall(), overall, "{outcomes:?}");
        }
    }

    #[test]
    fn a_whole_trial_has_a_prediction_and_three_swings_that_count() {
        let mut three = trial(&[Steady, Slipped, Steady, NotSure]);
        assert!(!three.is_complete());
        predict(&mut three, Steady, "");
        assert!(three.is_complete());
        let mut two = trial(&[Steady, Slipped, Steady]);
        predict(&mut two, Steady, "");
        assert!(!two.is_complete());
    }

    #[test]
    fn the_rocket_follows_until_it_is_locked() {
        let mut trial = trial(&[]);
        let razorbill = Record::from(Example::Razorbill.design());
        trial.follow(&razorbill);
        assert_eq!(trial.design(), &razorbill.design);
        assert!(predict(&mut trial, Steady, "long nose"));
        trial.follow(&Example::Puffin.design().into());
        assert_eq!(trial.design(), &razorbill.design);
    }

    #[test]
    fn a_prediction_after_the_swing_says_so() {
        let mut early = trial(&[]);
        predict(&mut early, Steady, "");
        assert!(!early.swung_first());
        let mut late = trial(&[Steady]);
        assert!(late.swung_first());
        predict(&mut late, Steady, "");
        assert!(late.swung_first());
    }

    #[test]
    fn taken_apart_it_comes_back_whole() {
        let mut trial = trial(&[Steady, Slipped]);
        trial.note = "Windy.\nIndoors.".into();
        trial.measured.mass.mm[1] = Some(201.5);
        predict(&mut trial, Wobbling, "small fins");
        predict(&mut trial, Steady, "it did");
        trial.draft.because = "hmm".into();
        assert_eq!(Trial::from(TrialParts::from(trial.clone())), trial);
    }

    #[test]
    fn a_change_by_hand_leaves_a_trace_for_good() {
        let puffin = Example::Puffin.design();
        let swings = Swings::new(SwingSetup::default(), [Steady, Slipped]).unwrap();
        let mut trial = Trial::new(1, &Record { design: puffin, swings }, None);
        predict(&mut trial, Wobbling, "small fins");
        let parts = TrialParts::from(trial);
        assert!(!Trial::from(parts.clone()).is_altered());
        let changes: [fn(&mut TrialParts); 6] = [
            |parts| parts.predictions = Predictions::default(),
            |parts| parts.design.weights.clear(),
            |parts| parts.swings = parts.swings.setup.into(),
            |parts| parts.seal = None,
            |parts| parts.seal = Some(Seal(0)),
            |parts| parts.altered = true,
        ];
        for (change, i) in changes.into_iter().zip(0..) {
            let mut parts = parts.clone();
            change(&mut parts);
            let trial = Trial::from(parts);
            assert!(trial.is_altered(), "{i}");
            // Writing it anew does not make it good.
            assert!(Trial::from(TrialParts::from(trial)).is_altered(), "{i}");
        }
    }

    #[test]
    fn what_was_swung_is_sealed_without_a_prediction_too() {
        assert_eq!(trial(&[]).seal(), None);
        let mut parts = TrialParts::from(trial(&[Steady]));
        assert!(!Trial::from(parts.clone()).is_altered());
        parts.swings = parts.swings.setup.into();
        assert!(Trial::from(parts).is_altered());
    }

    #[test]
    fn a_swing_that_is_taken_back_leaves_a_trace() {
        let mut trial = trial(&[]);
        predict(&mut trial, Steady, "");
        let seen = |outcomes: &[SwingOutcome]| {
            Swings::new(SwingSetup::default(), outcomes.iter().copied()).unwrap()
        };
        trial.swing(&seen(&[Steady]));
        trial.swing(&seen(&[Steady, Slipped]));
        let sealed = trial.seal();
        trial.swing(&seen(&[Steady]));
        assert_eq!(
            (trial.taken_back(), trial.swings()),
            (&[Slipped][..], &seen(&[Steady]))
        );
        assert!(trial.may_take_back() && trial.seal() != sealed);
        trial.swing(&seen(&[]));
        assert!(!trial.may_take_back(), "nothing is left");
        trial.swing(&seen(&[Wobbling]));
        trial.swing(&seen(&[]));
        trial.swing(&seen(&[Steady]));
        assert_eq!(trial.taken_back(), [Slipped, Steady, Wobbling]);
        assert!(!trial.may_take_back(), "three are enough");
        let parts = TrialParts::from(trial.clone());
        assert_eq!(Trial::from(parts.clone()), trial);
        // Without it, or with another, it is not what was sealed.
        for taken_back in [vec![], vec![Slipped, Steady], vec![Slipped, Steady, Steady]] {
            let parts = TrialParts { taken_back, ..parts.clone() };
            assert!(Trial::from(parts).is_altered());
        }
    }

    #[test]
    fn words_and_measured_values_are_no_build() {
        let puffin = Example::Puffin.design();
        let mut same = puffin.clone();
        same.name = "Other".into();
        same.weights[0].label = "Clay".into();
        same.measured.total_mass_g = Some(200.0);
        assert!(same_build(&puffin, &same));
        let mut heavier = puffin.clone();
        heavier.weights[0].mass_g += 1.0;
        assert!(!same_build(&puffin, &heavier));
        heavier.weights.clear();
        assert!(!same_build(&puffin, &heavier));
        same.sections[0].length_mm += 1.0;
        assert!(!same_build(&puffin, &same));
    }
}
