//! What a link that was cut short did not bring.

use std::fmt;

/// What was announced and did not arrive whole; each number is 1 or more.
///
/// Its text is for a pupil: "2 body sections", "the swings".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// The last so many sections of the body.
    Sections(usize),
    /// The last so many sets of fins.
    FinSets(usize),
    /// The last so many weights.
    Weights(usize),
    /// How the rocket was swung, and what was seen: all of it.
    Swings,
}

impl fmt::Display for Missing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (count, one, many) = match *self {
            Self::Sections(n) => (n, "body section", "body sections"),
            Self::FinSets(n) => (n, "set of fins", "sets of fins"),
            Self::Weights(n) => (n, "weight", "weights"),
            Self::Swings => return f.write_str("the swings"),
        };
        write!(f, "{count} {}", if count == 1 { one } else { many })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_and_many_are_told_apart() {
        assert_eq!(Missing::FinSets(1).to_string(), "1 set of fins");
        assert_eq!(Missing::Sections(2).to_string(), "2 body sections");
        assert_eq!(Missing::Weights(1).to_string(), "1 weight");
        assert_eq!(Missing::Swings.to_string(), "the swings");
    }
}
