//! Which places of the page a class sees.

use serde::{Deserialize, Serialize};

/// A place of the page that a set-up may hide.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "they are called as they are on the page")]
pub enum LessonPlace {
    Rocket,
    Measure,
    Predict,
    Swing,
    Compare,
    Conclude,
    HandIn,
    Why,
    Words,
}

impl LessonPlace {
    /// Each, in the order of the lesson.
    pub const ALL: [Self; 9] = [
        Self::Rocket,
        Self::Measure,
        Self::Predict,
        Self::Swing,
        Self::Compare,
        Self::Conclude,
        Self::HandIn,
        Self::Why,
        Self::Words,
    ];
    /// Those of the path.
    const PATH: u16 = (1 << Self::Why as u16) - 1;
}

/// The places that are shown: never none of the path.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LessonPlaces(u16);

impl Default for LessonPlaces {
    /// All of them.
    fn default() -> Self {
        Self((1 << LessonPlace::ALL.len()) - 1)
    }
}

impl LessonPlaces {
    /// Those that a number stands for, a bit each in the order of [`LessonPlace::ALL`];
    /// `None` where it has another bit, or where nothing of the path is shown.
    #[must_use]
    pub fn new(bits: u16) -> Option<Self> {
        let is_known = bits & !Self::default().0 == 0;
        (is_known && bits & LessonPlace::PATH != 0).then_some(Self(bits))
    }

    /// The number that stands for them.
    #[must_use]
    pub fn bits(self) -> u16 {
        self.0
    }

    /// Whether a place is shown. Predict always is where Swing is, since no swing is recorded
    /// before it was predicted.
    #[must_use]
    pub fn has(self, place: LessonPlace) -> bool {
        let has = |place| self.0 & 1 << place as u16 != 0;
        has(place) || place == LessonPlace::Predict && has(LessonPlace::Swing)
    }

    /// The same with one more, or with one less; the last of the path stays.
    #[must_use]
    pub fn toggled(self, place: LessonPlace) -> Self {
        Self::new(self.0 ^ 1 << place as u16).unwrap_or(self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn something_of_the_path_is_always_shown() {
        let mut shown = LessonPlaces::default();
        for place in LessonPlace::ALL {
            assert!(shown.has(place));
            shown = shown.toggled(place);
        }
        // Conclude went, and Hand in, as the last, stayed.
        let left: Vec<_> =
            LessonPlace::ALL.into_iter().filter(|p| shown.has(*p)).collect();
        assert_eq!(left, [LessonPlace::HandIn]);
        assert_eq!(LessonPlaces::new(0), None);
        assert_eq!(LessonPlaces::new(1 << LessonPlace::Why as u16), None);
        assert_eq!(LessonPlaces::new(1 << 9), None);
    }

    #[test]
    fn whoever_swings_predicts() {
        let shown = LessonPlaces::default().toggled(LessonPlace::Predict);
        assert!(shown.has(LessonPlace::Predict));
        assert!(!shown.toggled(LessonPlace::Swing).has(LessonPlace::Predict));
    }
}
