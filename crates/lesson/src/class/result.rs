//! What one trial of one group came to: what travels to whoever gathers a class.

use crate::{
    BalancePoint, COUNTED, Group, MOST_OUTCOMES, Notebook, Overall, REPEATS,
    ReadingStats, RulesCode, SwingOutcome, Trial,
};
use noseward_stability::Quantity;

/// Characters of [`TrialResult::what_changed`], at most.
pub const CHANGED_CHARS: usize = 300;

/// What one trial came to. Lengths are in millimetres from the nose tip, masses in grams, all
/// on the grid of 0.1 on which codes and tables keep them: so a trial stays the same on every
/// way here.
#[derive(Clone, Debug, PartialEq)]
pub struct TrialResult {
    /// The rules it was made under, where a set-up gave any.
    pub rules: Option<RulesCode>,
    /// Whose it is.
    pub group: Group,
    /// The number of the trial, from 1.
    pub trial: u16,
    /// The number of the trial that it is compared with.
    pub compared_with: Option<u16>,
    /// How many things differ from that one; `None` where it is not said.
    pub changes: Option<u8>,
    /// The same in words, in the language of whoever wrote it down; empty where it is not
    /// said. At most [`CHANGED_CHARS`].
    pub what_changed: String,
    /// What the model says of the rocket; `None` where a fault of the design stops it, or
    /// nobody described it.
    pub model: Option<ResultModel>,
    /// The measured centre of mass.
    pub mass: Option<PointResult>,
    /// The measured centre of pressure, side-on.
    pub pressure: Option<PointResult>,
    /// The first prediction.
    pub predicted: Option<ResultPrediction>,
    /// What was seen, in order, slips included. No more than [`MOST_OUTCOMES`].
    pub outcomes: Vec<SwingOutcome>,
    /// Whether what is sealed, of the trial or of its notebook, was changed by hand.
    pub altered: bool,
    /// Whether two changes at once were allowed.
    pub allows_two_changes: bool,
    /// Whether it was swung before anything was predicted.
    pub swung_first: bool,
    /// Whether it is invented, for practice.
    pub example: bool,
}

/// What the model says of a rocket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResultModel {
    /// Length of the body, in millimetres.
    pub length_mm: f64,
    /// Largest width of the body, in millimetres.
    pub body_width_mm: f64,
    /// Mass of the whole, in grams, weighed where the group weighed it.
    pub mass_g: f64,
    /// The centre of mass as computed from the parts, in millimetres from the nose tip.
    pub mass_point_mm: f64,
    /// The centre of pressure side-on, in millimetres from the nose tip.
    pub pressure_point_mm: f64,
}

/// What the readings of a point came to, in millimetres from the nose tip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PointResult {
    /// The readings that counted, where they came along: a code has no room for them.
    pub readings_mm: [Option<f64>; REPEATS],
    /// The middle value.
    pub middle_mm: f64,
    /// The largest reading less the smallest.
    pub range_mm: f64,
    /// How many readings counted, from 1 to [`REPEATS`].
    pub count: u8,
}

/// The first prediction, without its words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ResultPrediction {
    /// What was predicted.
    pub outcome: SwingOutcome,
    /// How many swings were on record then, up to [`MOST_OUTCOMES`].
    pub swings_seen: u8,
}

impl PointResult {
    /// What readings from the nose tip come to, on the grid of 0.1 mm; `None` without any.
    #[must_use]
    pub fn of(readings_mm: [Option<f64>; REPEATS]) -> Option<Self> {
        let readings_mm = readings_mm.map(|mm| mm.map(tenths));
        let stats = ReadingStats::of(readings_mm.into_iter().flatten())?;
        Some(Self {
            readings_mm,
            middle_mm: tenths(stats.middle_mm),
            range_mm: tenths(stats.range_mm()),
            count: u8::try_from(stats.count).unwrap_or(u8::MAX),
        })
    }

    /// The same without its readings, as a code has it.
    fn without_readings(self) -> Self {
        Self { readings_mm: Default::default(), ..self }
    }
}

impl TrialResult {
    /// A trial of a group of which nothing is known yet.
    #[must_use]
    pub fn empty(group: Group, trial: u16) -> Self {
        Self {
            rules: None,
            group,
            trial,
            compared_with: None,
            changes: None,
            what_changed: String::new(),
            model: None,
            mass: None,
            pressure: None,
            predicted: None,
            outcomes: Vec::new(),
            altered: false,
            allows_two_changes: false,
            swung_first: false,
            example: false,
        }
    }

    /// What a trial came to; `None` without a trial of that number that stands.
    ///
    /// What was changed is for whoever has the words: here it stays empty.
    #[must_use]
    pub fn of(notebook: &Notebook, id: u16) -> Option<Self> {
        let trial = notebook.trial(id)?;
        let most = u8::try_from(MOST_OUTCOMES).unwrap_or(u8::MAX);
        let predicted = trial.predictions().first().map(|first| ResultPrediction {
            outcome: first.outcome,
            swings_seen: first.swings_seen.min(most),
        });
        let [mass, pressure] = BalancePoint::ALL.map(|point| point_of(trial, point));
        let compared_with = trial.compared_with().filter(|&with| with > 0);
        let changes = notebook.changes_of(trial).len();
        Some(Self {
            compared_with,
            changes: compared_with.map(|_| u8::try_from(changes).unwrap_or(u8::MAX)),
            model: model_of(trial),
            mass,
            pressure,
            predicted,
            outcomes: trial.swings().outcomes().to_vec(),
            altered: trial.is_altered() || notebook.is_altered(),
            allows_two_changes: notebook.allows_two_changes,
            swung_first: trial.swung_first(),
            rules: notebook.rules(),
            ..Self::empty(notebook.group, id)
        })
    }

    /// The measured separation, in millimetres, positive where the centre of mass is nearer
    /// the nose; `None` unless both points were measured.
    #[must_use]
    pub fn measured_separation_mm(&self) -> Option<f64> {
        Some(self.pressure?.middle_mm - self.mass?.middle_mm)
    }

    /// The computed separation, in millimetres.
    #[must_use]
    pub fn computed_separation_mm(&self) -> Option<f64> {
        self.model.map(|model| model.pressure_point_mm - model.mass_point_mm)
    }

    /// What the swings come to.
    #[must_use]
    pub fn overall(&self) -> Overall {
        Overall::of(&self.counted())
    }

    /// Whether it flew nose-first in more than half of the swings that count; `None` where they
    /// do not say.
    #[must_use]
    pub fn nose_first(&self) -> Option<bool> {
        use SwingOutcome::{Sideways, Steady, TailFirst, Wobbling};
        let counted = self.counted();
        let most = |outcomes: [SwingOutcome; 2]| {
            let seen = counted.iter().filter(|seen| outcomes.contains(seen));
            2 * seen.count() > counted.len()
        };
        if most([Steady, Wobbling]) {
            Some(true)
        } else {
            most([Sideways, TailFirst]).then_some(false)
        }
    }

    /// The swings that count.
    #[must_use]
    pub fn counted(&self) -> Vec<SwingOutcome> {
        self.outcomes.iter().copied().filter(|outcome| outcome.counts()).collect()
    }

    /// Whether it has all the swings that a trial should have.
    #[must_use]
    pub fn is_finished(&self) -> bool {
        self.counted().len() >= COUNTED
    }

    /// Whether it is a fair test: one thing changed, or none, as of a baseline; `None` where
    /// it is not said.
    #[must_use]
    pub fn is_fair(&self) -> Option<bool> {
        match (self.compared_with, self.changes) {
            (None, None) => Some(true),
            (_, changes) => changes.map(|changes| changes <= 1),
        }
    }

    /// Whether it tells of the same deed as another: all that a code has room for is the same.
    #[must_use]
    pub fn is_same_as(&self, other: &Self) -> bool {
        self.essence() == other.essence()
    }

    /// The richer of two that [are the same](Self::is_same_as).
    #[must_use]
    pub fn completed_by(mut self, other: &Self) -> Self {
        if self.what_changed.is_empty() {
            self.what_changed.clone_from(&other.what_changed);
        }
        for (mine, theirs) in
            [(&mut self.mass, other.mass), (&mut self.pressure, other.pressure)]
        {
            let has_none = |point: &PointResult| point.readings_mm == [None; REPEATS];
            if mine.as_ref().is_some_and(has_none) {
                *mine = theirs;
            }
        }
        self
    }

    fn essence(&self) -> Self {
        Self {
            what_changed: String::new(),
            mass: self.mass.map(PointResult::without_readings),
            pressure: self.pressure.map(PointResult::without_readings),
            ..self.clone()
        }
    }
}

/// What the model says; `None` where a fault stops it.
fn model_of(trial: &Trial) -> Option<ResultModel> {
    let figures = trial.rocket().figures()?;
    Some(ResultModel {
        length_mm: tenths(figures.length_m * 1000.0),
        body_width_mm: tenths(figures.body_width_m * 1000.0),
        mass_g: tenths(figures.mass.mass_kg * 1000.0),
        mass_point_mm: tenths(figures.computed_mass.centre_m * 1000.0),
        pressure_point_mm: tenths(figures.centre_of_pressure_side_on_m * 1000.0),
    })
}

/// A length in millimetres or a mass in grams on the grid of 0.1.
fn tenths(value: f64) -> f64 {
    Quantity::Length.rounded(value)
}

/// The readings of a point that count, from the nose tip.
fn point_of(trial: &Trial, point: BalancePoint) -> Option<PointResult> {
    let length_mm =
        trial.rocket().figures().map_or(0.0, |figures| figures.length_m * 1000.0);
    let counted = trial.measured.counted(point, length_mm);
    let mut readings_mm = [None; REPEATS];
    for (reading, mm) in readings_mm.iter_mut().zip(counted) {
        *reading = Some(mm);
    }
    PointResult::of(readings_mm)
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};

    fn result(outcomes: &[SwingOutcome]) -> TrialResult {
        TrialResult {
            outcomes: outcomes.to_vec(),
            ..TrialResult::empty(Group::default(), 1)
        }
    }

    #[test]
    fn the_swings_say_whether_it_flew_nose_first() {
        for (outcomes, says) in [
            (&[Steady, Wobbling, Steady][..], Some(true)),
            (&[Sideways, Slipped, Sideways], Some(false)),
            (&[TailFirst], Some(false)),
            (&[Steady, Wobbling, TailFirst], Some(true)),
            (&[Sideways, Steady, TailFirst], Some(false)),
            (&[Steady, TailFirst], None),
            (&[NotSure, NotSure, Steady], None),
            (&[Slipped], None),
            (&[], None),
        ] {
            assert_eq!(result(outcomes).nose_first(), says, "{outcomes:?}");
        }
        assert!(result(&[Steady, Slipped, Steady, NotSure]).is_finished());
        assert!(!result(&[Steady, Slipped, Steady]).is_finished());
    }

    #[test]
    fn a_code_and_a_notebook_tell_of_the_same_trial() {
        let readings_mm = [Some(201.0), Some(203.5), None];
        let rich = TrialResult {
            mass: PointResult::of(readings_mm),
            what_changed: "10 g more in the nose".into(),
            ..result(&[Steady])
        };
        let mut mass = rich.mass;
        mass.as_mut().unwrap().readings_mm = [None; REPEATS];
        let code = TrialResult { mass, ..result(&[Steady]) };
        assert!(code.is_same_as(&rich) && rich.is_same_as(&code));
        assert_ne!(code, rich);
        assert_eq!(code.completed_by(&rich), rich);
        let other = TrialResult { swung_first: true, ..rich.clone() };
        assert!(!other.is_same_as(&rich));
    }

    #[test]
    fn a_baseline_is_fair_and_two_changes_are_not() {
        let with = |compared_with, changes| {
            TrialResult { compared_with, changes, ..result(&[]) }.is_fair()
        };
        assert_eq!(with(None, None), Some(true));
        assert_eq!(with(Some(1), Some(1)), Some(true));
        assert_eq!(with(Some(1), Some(2)), Some(false));
        assert_eq!(with(Some(1), None), None);
    }
}
