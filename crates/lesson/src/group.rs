//! Which group of a class it is.

use serde::{Deserialize, Serialize};

use crate::{from_key, key};

/// A group's label: a colour and a number, such as "Blue 4". There is no room for a name,
/// so that nobody types one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Group {
    /// The colour.
    pub colour: Colour,
    number: u8,
}

/// The largest number of a group.
pub const MOST_GROUP_NUMBER: u8 = 40;

/// The colour in a group's label.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "a colour is a colour")]
pub enum Colour {
    Red,
    Orange,
    Yellow,
    Green,
    #[default]
    Blue,
    Purple,
    Brown,
    Black,
    Grey,
    White,
    Silver,
    Gold,
}

impl Colour {
    /// Every colour, in the order in which a list shows them.
    pub const ALL: [Self; 12] = [
        Self::Red,
        Self::Orange,
        Self::Yellow,
        Self::Green,
        Self::Blue,
        Self::Purple,
        Self::Brown,
        Self::Black,
        Self::Grey,
        Self::White,
        Self::Silver,
        Self::Gold,
    ];
}

impl Default for Group {
    fn default() -> Self {
        Self { colour: Colour::default(), number: 1 }
    }
}

impl Group {
    /// The group with this colour and number; `None` unless the number is from 1 to
    /// [`MOST_GROUP_NUMBER`].
    #[must_use]
    pub fn new(colour: Colour, number: u8) -> Option<Self> {
        (1..=MOST_GROUP_NUMBER).contains(&number).then_some(Self { colour, number })
    }

    /// Its number, from 1 to [`MOST_GROUP_NUMBER`].
    #[must_use]
    pub fn number(self) -> u8 {
        self.number
    }

    /// What stands for it in tables: the key of its colour and its number, such as
    /// `blue 4`.
    #[must_use]
    pub fn key(self) -> String {
        format!("{} {}", key(&self.colour), self.number)
    }

    /// The group with a [key](Self::key), in any case.
    #[must_use]
    pub fn from_key(text: &str) -> Option<Self> {
        let (colour, number) = text.trim().rsplit_once(' ')?;
        let colour = from_key(&colour.trim().to_ascii_lowercase())?;
        Self::new(colour, number.parse().ok()?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_group_is_a_colour_and_a_number() {
        for colour in Colour::ALL {
            for number in [1, 9, 40] {
                let group = Group::new(colour, number).unwrap();
                assert_eq!((group.colour, group.number()), (colour, number));
                assert_eq!(Group::from_key(&group.key()), Some(group));
            }
            assert_eq!(Group::new(colour, 0), None);
            assert_eq!(Group::new(colour, 41), None);
        }
        assert_eq!(Group::default().key(), "blue 1");
        assert_eq!(Group::from_key(" Grey 12 "), Group::new(Colour::Grey, 12));
        for bad in ["", "Blue", "4", "Pink 4", "Blue 0", "Blue 41", "Blue 4 5", "Blue x"]
        {
            assert_eq!(Group::from_key(bad), None, "{bad}");
        }
    }
}
