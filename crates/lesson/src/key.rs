//! The stable key of a choice: what stands for it in files, tables and seals.
//!
//! A key is the name that serde gives the value. Labels are for people and may be reworded
//! or translated; a key never changes.

use std::fmt::{self, Display};

use serde::Serialize;
use serde::de::value::{Error, StrDeserializer};
use serde::de::{DeserializeOwned, IntoDeserializer};

/// A value, shown as its key.
struct Keyed<'a, T>(&'a T);

impl<T: Serialize> Display for Keyed<'_, T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.serialize(f)
    }
}

/// The key of a choice, an enum without values.
///
/// ```
/// use noseward_lesson::{SwingOutcome, from_key, key};
///
/// assert_eq!(key(&SwingOutcome::TailFirst), "tail_first");
/// assert_eq!(from_key("tail_first"), Some(SwingOutcome::TailFirst));
/// assert_eq!(from_key::<SwingOutcome>("tail first"), None);
/// ```
#[must_use]
pub fn key<T: Serialize>(choice: &T) -> String {
    Keyed(choice).to_string()
}

/// The choice with this key.
#[must_use]
pub fn from_key<T: DeserializeOwned>(key: &str) -> Option<T> {
    let key: StrDeserializer<'_, Error> = key.into_deserializer();
    T::deserialize(key).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        BalancePoint, Changeable, Colour, End, LessonPlace, Level, Statement, Support,
        SwingOutcome, Telling,
    };

    fn keys<T: Serialize + DeserializeOwned + Copy + PartialEq + fmt::Debug>(
        all: &[T],
    ) -> Vec<String> {
        let keys: Vec<String> = all.iter().map(key).collect();
        for (&choice, key) in all.iter().zip(&keys) {
            assert_eq!(from_key(key), Some(choice));
        }
        keys
    }

    /// They stand in files, tables, codes and seals: none is ever changed.
    #[test]
    fn keys_are_frozen() {
        assert_eq!(
            keys(&SwingOutcome::ALL),
            ["steady", "wobbling", "sideways", "tail_first", "slipped", "not_sure"]
        );
        assert_eq!(keys(&[End::Nose, End::Tail]), ["nose", "tail"]);
        assert_eq!(keys(&BalancePoint::ALL), ["mass", "pressure"]);
        assert_eq!(keys(&Support::ALL), ["sentences", "questions", "none"]);
        assert_eq!(keys(&Telling::ALL), ["all", "verdict", "points"]);
        assert_eq!(keys(&Level::ALL), ["balance", "measure", "explain", "model"]);
        assert_eq!(keys(&Statement::ALL), ["claim", "evidence", "reason", "trust"]);
        assert_eq!(
            keys(&Colour::ALL),
            [
                "red", "orange", "yellow", "green", "blue", "purple", "brown", "black",
                "grey", "white", "silver", "gold"
            ]
        );
        assert_eq!(
            keys(&Changeable::ALL),
            [
                "nose",
                "body",
                "materials",
                "fin_number",
                "fin_shape",
                "fin_place",
                "added_mass",
                "mass_place",
                "swinging"
            ]
        );
        assert_eq!(
            keys(&LessonPlace::ALL),
            [
                "rocket", "measure", "predict", "swing", "compare", "conclude",
                "hand_in", "why", "words"
            ]
        );
        for label in ["Red", "tail first", "nose first, steady", ""] {
            assert_eq!(from_key::<SwingOutcome>(label), None, "{label}");
            assert_eq!(from_key::<Colour>(label), None, "{label}");
        }
    }
}
