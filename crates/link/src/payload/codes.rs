//! The numbers that stand for choices: places in a list of keys.
//!
//! The lists are the format: a key is only ever added at the end, and none is changed,
//! moved or taken out.

use noseward_lesson::{from_key, key};
use serde::Serialize;
use serde::de::DeserializeOwned;

/// The keys of a choice. The number of a key is its place.
pub(crate) type Keys = &'static [&'static str];

pub(crate) const KINDS: Keys = &[
    "cone",
    "ogive",
    "ellipsoid",
    "paraboloid",
    "dome",
    "tube",
    "straight_taper",
    "rounded_taper",
    "neck",
];
pub(crate) const MATERIALS: Keys = &[
    "paper80",
    "card160",
    "card220",
    "card300",
    "corrugated_e",
    "corrugated_b",
    "corrugated_plastic",
    "polystyrene5",
    "balsa3",
    "bottle_wall",
];
pub(crate) const OUTCOMES: Keys =
    &["steady", "wobbling", "sideways", "tail_first", "slipped", "not_sure"];
pub(crate) const ENDS: Keys = &["nose", "tail"];
pub(crate) const COLOURS: Keys = &[
    "red", "orange", "yellow", "green", "blue", "purple", "brown", "black", "grey",
    "white", "silver", "gold",
];
pub(crate) const LEVELS: Keys = &["balance", "measure", "explain", "model"];
pub(crate) const SUPPORTS: Keys = &["sentences", "questions", "none"];
pub(crate) const TELLINGS: Keys = &["all", "verdict", "points"];

/// The number of a choice.
///
/// # Panics
///
/// Where its key is not in the list: a test goes through all.
pub(crate) fn code(keys: Keys, choice: &impl Serialize) -> u8 {
    let key = key(choice);
    let place = keys.iter().position(|known| *known == key);
    let code = place.and_then(|place| u8::try_from(place).ok());
    code.expect("every choice has a key in its list")
}

/// The choice that a number stands for.
pub(crate) fn choice<T: DeserializeOwned>(keys: Keys, code: u8) -> Option<T> {
    from_key(keys.get(usize::from(code))?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Colour, End, Level, Support, SwingOutcome, Telling};
    use noseward_stability::{Material, SectionKind};

    /// Every choice that there is has its number, and every number its choice.
    fn agree<T: Serialize + DeserializeOwned + PartialEq>(keys: Keys, all: &[T]) {
        assert_eq!(keys.len(), all.len(), "{keys:?}");
        for one in all {
            assert!(choice(keys, code(keys, one)).as_ref() == Some(one), "{}", key(one));
        }
        assert!(choice::<T>(keys, u8::try_from(keys.len()).unwrap()).is_none());
        assert!(choice::<T>(keys, u8::MAX).is_none());
    }

    #[test]
    fn every_choice_has_a_number() {
        agree(KINDS, &SectionKind::ALL);
        agree(MATERIALS, &Material::ALL);
        agree(OUTCOMES, &SwingOutcome::ALL);
        agree(ENDS, &[End::Nose, End::Tail]);
        agree(COLOURS, &Colour::ALL);
        agree(LEVELS, &Level::ALL);
        agree(SUPPORTS, &Support::ALL);
        agree(TELLINGS, &Telling::ALL);
    }

    /// By a checksum over all lists in their order, which no reordering leaves as it is.
    #[test]
    fn numbers_are_frozen() {
        let lists =
            [KINDS, MATERIALS, OUTCOMES, ENDS, COLOURS, LEVELS, SUPPORTS, TELLINGS];
        let all = lists.map(|keys| keys.join(",")).join(";");
        assert_eq!(crate::frame::CRC.checksum(all.as_bytes()), 3_183_076_848, "{all}");
    }
}
