//! A whole class: how it is set up, what its groups hand in, and what all that comes to.
//!
//! For what it comes to, a trial is no more than its separation and whether the rocket flew
//! nose-first: [`Seen`]. Kinds with values come out; web has the words.

mod agreement;
mod changeable;
mod curve;
mod example;
mod gathered;
mod kit;
mod marking;
mod next_trial;
mod odd;
mod plan;
mod predictions;
mod question;
mod result;
mod rules;
mod set_up;
mod shown;
mod turning_point;

pub use agreement::{Agreement, Limits, agreement};
pub use changeable::{BrokenRule, Changeable, Changeables, RuleLimits};
pub use curve::Curve;
pub use example::{EXAMPLE_GROUPS, example_class};
pub use gathered::{
    Added, Class, ClassLabel, Entry, LABEL_CHARS, MOST_RESULTS, MOST_WORKS, Refusal, Work,
};
pub use kit::{Kit, KitRow};
pub use marking::Criterion;
pub use next_trial::{
    NextTrial, Reach, WhyThere, empty_region, next_trial, next_trial_after,
};
pub use odd::{FAR_SHARE, Odd, SLIP_MM, WIDE_SHARE, odd};
pub use plan::{Plan, PlanStep, TimedStep};
pub use predictions::{PredictionCounts, Score, count_predictions};
pub use question::{ClassQuestion, Expected, Kept, OWN_CHARS};
pub use result::{
    CHANGED_CHARS, PointResult, ResultModel, ResultPrediction, TrialResult,
};
pub use rules::{RULES_BITS, RulesCode};
pub use set_up::{Labels, MOST_ADDED_G, MOST_GROUPS, MOST_HALL_M, MOST_IN_GROUP, SetUp};
pub use shown::{LessonPlace, LessonPlaces};
pub use turning_point::{
    Band, Gap, LEAST_TRIALS, NoTurningPoint, TurningPoint, turning_point,
};

/// Trials at one separation: one, or several that are counted together.
///
/// The three swings of one rocket are one trial, not three: they share its separation, its
/// slips of the ruler and whoever swung it, and as three they would make a class look surer
/// than it is.
///
/// ```
/// use noseward_lesson::Seen;
///
/// let one = Seen { separation: 31.0, nose_first: 1, otherwise: 0 };
/// assert_eq!(Seen::from((31.0, true)), one);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen {
    /// From the centre of mass to the centre of pressure, in millimetres or in body widths,
    /// the same for all: positive with the centre of mass nearer the nose. One that is not
    /// finite counts nowhere.
    pub separation: f64,
    /// How many flew nose-first.
    pub nose_first: u32,
    /// How many did not.
    pub otherwise: u32,
}

impl From<(f64, bool)> for Seen {
    /// One trial: its separation, and whether the rocket flew nose-first.
    fn from((separation, nose_first): (f64, bool)) -> Self {
        let nose = u32::from(nose_first);
        Self { separation, nose_first: nose, otherwise: 1 - nose }
    }
}

impl Seen {
    fn counts(self) -> bool {
        self.separation.is_finite() && (self.nose_first > 0 || self.otherwise > 0)
    }
}

/// The side of the turning point on which rockets fly nose-first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoseFirst {
    /// Those with the larger separations, as theory has it.
    Above,
    /// Those with the smaller ones: the wrong way round, which a class looks into.
    Below,
}
