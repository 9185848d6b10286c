//! What a link that was cut short did not bring.

/// What was announced and did not arrive whole; each number is 1 or more.
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
