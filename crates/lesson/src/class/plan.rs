//! Lessons with their steps, whose minutes add up.

use serde::{Deserialize, Serialize};

/// How long there is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Plan {
    /// One lesson of 60 minutes, with rockets that are built already.
    #[default]
    Hour,
    /// Two lessons of 60 minutes.
    TwoHours,
    /// Three hours.
    HalfDay,
}

/// A step of a lesson.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanStep {
    /// Whoever leads swings two rockets; everybody guesses why.
    Hook,
    /// Groups open the link and see the question.
    Open,
    /// Groups build.
    Build,
    /// Groups find both points.
    Measure,
    /// Groups predict, and lock that.
    Predict,
    /// One group after the other swings.
    Swing,
    /// A break.
    Break,
    /// One change; measured, predicted and swung again.
    Change,
    /// The class compares.
    Compare,
    /// Groups conclude and hand in.
    Conclude,
}

impl Plan {
    /// Every plan, the shortest first.
    pub const ALL: [Self; 3] = [Self::Hour, Self::TwoHours, Self::HalfDay];

    /// Minutes of each of its lessons.
    #[must_use]
    pub fn lessons(self) -> &'static [u16] {
        match self {
            Self::Hour => &[60],
            Self::TwoHours => &[60, 60],
            Self::HalfDay => &[180],
        }
    }

    /// Its steps with their minutes.
    #[must_use]
    pub fn steps(self) -> &'static [(PlanStep, u16)] {
        use PlanStep::{
            Break, Build, Change, Compare, Conclude, Hook, Measure, Open, Predict, Swing,
        };
        match self {
            Self::Hour => &[
                (Hook, 5),
                (Open, 3),
                (Measure, 12),
                (Predict, 3),
                (Swing, 10),
                (Change, 18),
                (Compare, 4),
                (Conclude, 5),
            ],
            Self::TwoHours => &[
                (Hook, 8),
                (Open, 4),
                (Build, 30),
                (Measure, 18),
                (Predict, 5),
                (Swing, 15),
                (Change, 25),
                (Compare, 7),
                (Conclude, 8),
            ],
            Self::HalfDay => &[
                (Hook, 10),
                (Open, 5),
                (Build, 45),
                (Measure, 25),
                (Predict, 5),
                (Swing, 25),
                (Break, 15),
                (Change, 30),
                (Compare, 10),
                (Conclude, 10),
            ],
        }
    }
}

/// A step in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TimedStep {
    /// In which lesson, from 1.
    pub lesson: u16,
    /// Minutes from the beginning of that lesson.
    pub from: u16,
    /// What happens.
    pub step: PlanStep,
    /// For how many minutes.
    pub minutes: u16,
}

impl Plan {
    /// Its steps, each with the minute at which it begins.
    #[must_use]
    pub fn timed(self) -> Vec<TimedStep> {
        let (mut lesson, mut from) = (1, 0);
        let mut timed = Vec::new();
        for &(step, minutes) in self.steps() {
            timed.push(TimedStep { lesson, from, step, minutes });
            from += minutes;
            if self.lessons().get(usize::from(lesson) - 1) == Some(&from) {
                (lesson, from) = (lesson + 1, 0);
            }
        }
        timed
    }

    /// How many minutes each group has to swing, the first time: one swings at a time.
    #[must_use]
    pub fn swing_minutes(self, groups: u8) -> f64 {
        let swing = self.steps().iter().find(|(step, _)| *step == PlanStep::Swing);
        swing.map_or(0.0, |(_, minutes)| f64::from(*minutes) / f64::from(groups))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Those of each lesson, and all together.
    #[test]
    fn the_minutes_add_up() {
        for plan in Plan::ALL {
            let timed = plan.timed();
            for (minutes, lesson) in plan.lessons().iter().zip(1..) {
                let of_lesson = timed.iter().filter(|step| step.lesson == lesson);
                assert_eq!(of_lesson.map(|step| step.minutes).sum::<u16>(), *minutes);
                let first = timed.iter().find(|step| step.lesson == lesson);
                assert_eq!(first.map(|step| step.from), Some(0), "{plan:?}");
            }
            let minutes: u16 = timed.iter().map(|step| step.minutes).sum();
            assert_eq!(minutes, plan.lessons().iter().sum::<u16>(), "{plan:?}");
        }
    }
}
