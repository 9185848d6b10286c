//! Which part of a rocket is meant.

use std::fmt;
use std::str::FromStr;

use serde::{Serialize, Serializer};

/// One part of a rocket, by its place in the [`Design`](crate::Design).
///
/// Its text form is the JSON pointer (RFC 6901) of the part in the design, for example
/// `/fins/0`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Component {
    /// A section of the body.
    Section(usize),
    /// A set of fins.
    Fins(usize),
    /// A weight.
    Weight(usize),
}

impl fmt::Display for Component {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Section(i) => write!(f, "/sections/{i}"),
            Self::Fins(i) => write!(f, "/fins/{i}"),
            Self::Weight(i) => write!(f, "/weights/{i}"),
        }
    }
}

impl FromStr for Component {
    type Err = ();

    fn from_str(text: &str) -> Result<Self, ()> {
        let mut steps = text.split('/').skip(1);
        let list = steps.next().ok_or(())?;
        let index = steps.next().and_then(|i| i.parse().ok()).ok_or(())?;
        if steps.next().is_some() {
            return Err(());
        }
        match list {
            "sections" => Ok(Self::Section(index)),
            "fins" => Ok(Self::Fins(index)),
            "weights" => Ok(Self::Weight(index)),
            _ => Err(()),
        }
    }
}

impl Serialize for Component {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_form_round_trips() {
        for part in [Component::Section(3), Component::Fins(0), Component::Weight(11)] {
            assert_eq!(part.to_string().parse(), Ok(part));
        }
        for bad in ["", "/fins", "/fins/", "/fins/x", "/fins/0/count", "/wings/1"] {
            assert_eq!(bad.parse::<Component>(), Err(()));
        }
    }
}
