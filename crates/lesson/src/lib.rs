//! What a class does with a rocket, beyond describing it.
//!
//! Pure: no clock, files, browser or randomness. So far it holds the swing test: how the
//! rocket was swung, and what was seen.
//!
//! ```
//! use noseward_lesson::{Record, SwingOutcome};
//! use noseward_stability::Example;
//!
//! let mut record = Record::from(Example::Puffin.design());
//! assert!(record.swings.add(SwingOutcome::Steady));
//! assert_eq!(record.swings.summary(), "1 of 3: nose first, steady");
//! ```

mod outcome;
mod record;
mod swings;

pub use outcome::SwingOutcome;
pub use record::Record;
pub use swings::{COUNTED, MOST_OUTCOMES, Swings, SwingsError};
