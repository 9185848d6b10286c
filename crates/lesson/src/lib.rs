//! What a class does with a rocket, beyond describing it.
//!
//! Pure: no clock, files, browser or randomness. It holds the swing test, how the rocket
//! was swung and what was seen, and the notebook: trials with what was predicted,
//! measured and seen, one change at a time, and what a group concludes; and what the trials
//! of a class come to.
//!
//! ```
//! use noseward_lesson::{Record, SwingOutcome};
//! use noseward_stability::Example;
//!
//! let mut record = Record::from(Example::Puffin.design());
//! assert!(record.swings.add(SwingOutcome::Steady));
//! assert_eq!(record.swings.counted().count(), 1);
//! ```

#![forbid(unsafe_code)]

mod changes;
mod class;
mod compare;
mod conclusion;
mod difference;
mod document;
mod group;
mod history;
mod key;
mod moved;
mod notebook;
mod number;
mod outcome;
mod prediction;
mod readings;
mod record;
mod rocket;
mod seal;
mod sentences;
mod slips;
mod summary;
mod support;
mod swings;
mod telling;
mod trial;

pub use changes::{
    Amount, Change, ChangeKind, ChangedPart, Deed, Difference, PartDifference, changes,
};
pub use class::{
    Added, Agreement, Band, BrokenRule, CHANGED_CHARS, Changeable, Changeables, Class,
    ClassLabel, ClassQuestion, Criterion, Curve, EXAMPLE_GROUPS, Entry, Expected,
    FAR_SHARE, Gap, Kept, Kit, KitRow, LABEL_CHARS, LEAST_TRIALS, Labels, LessonPlace,
    LessonPlaces, Limits, MOST_ADDED_G, MOST_GROUPS, MOST_HALL_M, MOST_IN_GROUP,
    MOST_RESULTS, MOST_WORKS, NextTrial, NoTurningPoint, NoseFirst, OWN_CHARS, Odd, Plan,
    PlanStep, PointResult, PredictionCounts, RULES_BITS, Reach, Refusal, ResultModel,
    ResultPrediction, RuleLimits, RulesCode, SLIP_MM, Score, Seen, SetUp, TimedStep,
    TrialResult, TurningPoint, WIDE_SHARE, WhyThere, Work, agreement, count_predictions,
    empty_region, example_class, next_trial, next_trial_after, odd, turning_point,
};
pub use compare::{AGREE_MM, Beside, Comparison, Explanation, compare, explanations};
pub use conclusion::{BOX_CHARS, Conclusion, Statement};
pub use difference::{Done, InTrial, TrialDeed};
pub use document::Document;
pub use group::{Colour, Group, MOST_GROUP_NUMBER};
pub use history::History;
pub use key::{from_key, key};
pub use moved::{Became, BeforeAfter, Moved, measured_separation, moved};
pub use notebook::{
    Deleted, DeletedParts, MOST_PLANS, MOST_TRIALS, Notebook, NotebookError,
    NotebookParts,
};
pub use number::{could_be_thousands, decimal};
pub use outcome::SwingOutcome;
pub use prediction::{
    BECAUSE_CHARS, MOST_VERSIONS, Prediction, Predictions, PredictionsError,
};
pub use readings::{
    BalancePoint, End, LeftOut, Measurements, REASON_CHARS, REPEATS, ReadingStats,
    Readings,
};
pub use record::Record;
pub use rocket::Rocket;
pub use seal::Seal;
pub use sentences::{
    Apart, Followed, Found, Question, Sentence, Sentences, Trust, Turned,
};
pub use slips::{ReadingField, Slip, SlipCause, SlipKind, UntilChanged, slips};
pub use summary::Summary;
pub use support::{Level, Support};
pub use swings::{COUNTED, MOST_OUTCOMES, Swings, SwingsError};
pub use telling::Telling;
pub use trial::{
    Draft, MOST_TAKEN_BACK, NOTE_CHARS, Overall, PLAN_CHARS, Trial, TrialParts,
    same_build,
};
