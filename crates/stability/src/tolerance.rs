//! How well a figure is known, from how well the readings behind it are.
//!
//! Two ways to the same answer, so that each checks the other:
//!
//! - first order ([`propagate`]): one slope for each reading. Cheap, and it says which
//!   reading matters most; wrong where the model bends within the uncertainty.
//! - draws ([`MonteCarlo`]): the model itself, many times, with readings that might have
//!   been. Slow, right for bends and steps, and it can count outcomes.
//!
//! Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), and
//! JCGM 101:2008, its Supplement 1 on propagation by a Monte Carlo method. Clauses are named
//! where they are used. Nothing here has units of its own: an uncertainty is in the unit of
//! its reading.
//!
//! [`propagate`]: propagation::propagate
//! [`MonteCarlo`]: monte_carlo::MonteCarlo

pub(crate) mod generator;
pub(crate) mod input;
pub(crate) mod monte_carlo;
pub(crate) mod propagation;
pub(crate) mod ranked;
pub(crate) mod readings;
pub(crate) mod separation;
pub(crate) mod unread;

/// What a quantity, or a set of readings, cannot be.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ToleranceError {
    /// A number that is infinite or not a number.
    #[error("{0} is not a finite number")]
    NotFinite(f64),
    /// A standard uncertainty, a half-width or a step below zero.
    #[error("an uncertainty of {0} is less than nothing")]
    Negative(f64),
    /// Degrees of freedom that are zero, negative or not a number.
    #[error("{0} degrees of freedom are too few")]
    TooFewDegreesOfFreedom(f64),
    /// No reading at all.
    #[error("there is no reading")]
    NoReading,
    /// A correlation coefficient outside −1 to 1.
    #[error("a correlation of {0} is not between -1 and 1")]
    Correlation(f64),
    /// A correlation of an input with itself, or with one that does not exist.
    #[error("inputs {0} and {1} are not a pair")]
    NoSuchPair(usize, usize),
}

/// The number itself, if it is finite.
fn finite(value: f64) -> Result<f64, ToleranceError> {
    if value.is_finite() { Ok(value) } else { Err(ToleranceError::NotFinite(value)) }
}

/// The number itself, if it is finite and not negative.
fn width(value: f64) -> Result<f64, ToleranceError> {
    if finite(value)? < 0.0 { Err(ToleranceError::Negative(value)) } else { Ok(value) }
}

/// The number itself, if it is more than zero; it may be infinite.
fn degrees(value: f64) -> Result<f64, ToleranceError> {
    let some = value > 0.0;
    if some { Ok(value) } else { Err(ToleranceError::TooFewDegreesOfFreedom(value)) }
}
