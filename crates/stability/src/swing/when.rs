//! A time or a number of turns that is told as "about".
//!
//! What the air does to a rocket on a string is known to some tens of a hundred, so no time
//! is told to the tenth of a second, and none is told as nothing.

use std::fmt;
use std::num::NonZeroU32;

use serde::{Serialize, Serializer};

use crate::design::units::trimmed;

/// A number of seconds or of turns as it is told: in halves up to 5, whole from there on,
/// and never less than one half.
///
/// ```
/// use noseward_stability::About;
///
/// assert_eq!(About::of(1.37).to_string(), "1.5");
/// assert_eq!(About::of(0.0).to_string(), "0.5");
/// assert_eq!(About::of(8.4).to_string(), "8");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct About {
    halves: NonZeroU32,
}

/// From here on whole numbers are fine enough.
const WHOLE_FROM: f64 = 5.0;

impl About {
    /// Rounds. What is not a number is told as the least.
    #[must_use]
    pub fn of(value: f64) -> Self {
        let halves = if value < WHOLE_FROM {
            libm::round(value * 2.0)
        } else {
            libm::round(value) * 2.0
        };
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "what is out of range becomes its end, no number becomes 0"
        )]
        let halves = NonZeroU32::new(halves as u32).unwrap_or(NonZeroU32::MIN);
        Self { halves }
    }

    /// The rounded number: at least one half.
    #[must_use]
    pub fn value(self) -> f64 {
        f64::from(self.halves.get()) / 2.0
    }

    /// Whether it takes the singular: "1 turn".
    #[must_use]
    pub fn is_one(self) -> bool {
        self.halves.get() == 2
    }
}

impl fmt::Display for About {
    /// The number alone, such as `1.5`: the words about it belong to the page.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&trimmed(self.value(), 1))
    }
}

impl Serialize for About {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_f64(self.value())
    }
}

/// When something happens on the string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct When {
    exact_s: f64,
    turns_per_s: f64,
}

impl When {
    pub(super) fn new(exact_s: f64, turns_per_s: f64) -> Self {
        Self { exact_s, turns_per_s }
    }

    /// In seconds, as it is told.
    #[must_use]
    pub fn seconds(self) -> About {
        About::of(self.exact_s)
    }

    /// In turns of the circle, as it is told.
    #[must_use]
    pub fn turns(self) -> About {
        About::of(self.exact_s * self.turns_per_s)
    }

    /// Whether it is so from the start: there is no time to tell.
    #[must_use]
    pub fn is_from_the_start(self) -> bool {
        self.exact_s <= 0.0
    }

    /// Its place on an axis of time, in seconds: to draw with and to compute with, not to
    /// be told.
    #[must_use]
    pub fn on_axis_s(self) -> f64 {
        self.exact_s
    }
}

impl Serialize for When {
    /// In seconds, as it is told.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.seconds().serialize(serializer)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_told_as_nothing() {
        let odd = [0.0, -0.0, 0.04, 0.2, -3.0, f64::NAN, f64::MIN_POSITIVE];
        for value in odd {
            assert_eq!(About::of(value).to_string(), "0.5", "{value}");
            assert_eq!(When::new(value, 0.8).seconds().value(), 0.5, "{value}");
            assert_eq!(When::new(value, 0.8).turns().value(), 0.5, "{value}");
        }
        let json = serde_json::to_string(&When::new(0.0, 1.0)).unwrap();
        assert_eq!(json, "0.5");
    }

    #[test]
    fn halves_below_five_and_whole_from_there() {
        for (value, told) in [
            (0.74, "0.5"),
            (0.76, "1"),
            (2.3, "2.5"),
            (4.8, "5"),
            (5.4, "5"),
            (5.6, "6"),
            (19.9, "20"),
        ] {
            assert_eq!(About::of(value).to_string(), told, "{value}");
        }
        assert!(About::of(1.1).is_one() && !About::of(1.4).is_one());
        assert!(About::of(f64::INFINITY).value() > 1e6);
    }

    #[test]
    fn turns_are_seconds_times_the_pace() {
        let when = When::new(3.0, 0.8);
        assert_eq!((when.seconds().value(), when.turns().value()), (3.0, 2.5));
        assert_eq!(when.on_axis_s(), 3.0);
        assert!(!when.is_from_the_start() && When::new(0.0, 1.0).is_from_the_start());
    }
}
