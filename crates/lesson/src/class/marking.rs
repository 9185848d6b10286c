//! What whoever marks a notebook can find in it.

use crate::Work;

/// A statement that holds for a notebook, or not. Whoever marks says so: nothing here judges a
/// text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Criterion {
    /// The claim answers the question of the lesson.
    Answers,
    /// The claim fits the group's own data.
    FitsData,
    /// The evidence names numbers of two trials at least.
    NamesNumbers,
    /// The reason names both points.
    NamesPoints,
    /// The reason says which way the air turns the rocket.
    SaysWhichWay,
    /// One thing was changed at a time.
    OneChange,
    /// Predictions were made before anything was swung.
    PredictedFirst,
    /// Readings were repeated.
    Repeated,
    /// It is said how sure the group is, and why.
    SaysHowSure,
    /// A next step is named.
    NextStep,
}

impl Criterion {
    /// All of them, in the order of their numbers, which is frozen: files keep them.
    pub const ALL: [Self; 10] = [
        Self::Answers,
        Self::FitsData,
        Self::NamesNumbers,
        Self::NamesPoints,
        Self::SaysWhichWay,
        Self::OneChange,
        Self::PredictedFirst,
        Self::Repeated,
        Self::SaysHowSure,
        Self::NextStep,
    ];

    fn bit(self) -> u16 {
        1 << self as u16
    }
}

impl Work {
    /// Whether a statement was found to hold for it.
    #[must_use]
    pub fn has(&self, criterion: Criterion) -> bool {
        self.statements & criterion.bit() != 0
    }

    /// Finds a statement to hold for it, or no longer.
    pub fn toggle(&mut self, criterion: Criterion) {
        self.statements ^= criterion.bit();
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use Criterion::{
        Answers, FitsData, NamesNumbers, NamesPoints, NextStep, OneChange,
        PredictedFirst, Repeated, SaysHowSure, SaysWhichWay,
    };

    #[test]
    fn the_numbers_of_statements_are_frozen() {
        let numbers = [
            (1, Answers),
            (2, FitsData),
            (4, NamesNumbers),
            (8, NamesPoints),
            (16, SaysWhichWay),
            (32, OneChange),
            (64, PredictedFirst),
            (128, Repeated),
            (256, SaysHowSure),
            (512, NextStep),
        ];
        for (statements, criterion) in numbers {
            let mut work = Work { statements, ..Work::default() };
            for other in Criterion::ALL {
                assert_eq!(work.has(other), other == criterion, "{other:?}");
            }
            work.toggle(criterion);
            assert_eq!(work, Work::default());
        }
        assert_eq!(Criterion::ALL, numbers.map(|(_, criterion)| criterion));
    }
}
