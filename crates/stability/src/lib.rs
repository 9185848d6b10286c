//! The geometry, masses and stability of a drinks-bottle rocket.
//!
//! A [`Design`] is what a person measures with a ruler and kitchen scales, in
//! millimetres and grams. [`evaluate`] turns it into a [`Report`]: every fault with the
//! field it belongs to, and, where nothing stands in the way, the two points that decide
//! how the rocket flies. Inside and in the report everything is SI.
//!
//! The axis runs from the nose tip (0) towards the tail. Nothing here reads a clock, a
//! file or a random source, and all functions beyond `sqrt` come from `libm`, so that
//! the same design gives the same bits on every machine.
//!
//! ```
//! use noseward_stability::{Example, evaluate};
//!
//! let report = evaluate(&Example::Puffin.design());
//! let figures = report.figures.expect("the example has no fault that stops it");
//! assert!(figures.separation_m > 0.0, "its centre of mass is nearer the nose");
//! ```

#![forbid(unsafe_code)]

mod check;
mod design;
mod doubts;
mod masses;
mod measured;
mod outcome;
mod outline;
mod pressure;
mod report;
mod swing;
mod tolerance;

pub use check::{Fault, Problem, ProblemValues, Severity, check};
pub use design::bottles::BottleSize;
pub use design::common_weights::{COMMON_WEIGHTS, CommonWeight, WeightGroup, WeightKind};
pub use design::component::Component;
pub use design::examples::Example;
pub use design::field::{
    Axis, Field, FinField, ParseFieldError, Quantity, SectionField, WeightField,
};
pub use design::limits;
pub use design::materials::Material;
pub use design::names::{Called, PartKind};
pub use design::texts::{capital, cleaned_lines};
pub use design::units::{UnitSystem, Units, fixed, trimmed, within};
pub use design::{
    Design, FinSet, Mass, Measured, Planform, Section, SectionKind, Weight,
};
pub use doubts::{Confidence, Doubts};
pub use masses::{MassProperties, PartMass};
pub use measured::{MeasuredPoint, MeasuredPoints};
pub use outcome::{Outcome, Rest};
pub use outline::profile::Profile;
pub use outline::side_view::{ProjectedFin, SideView};
pub use outline::{Body, Stretch};
pub use pressure::air::{Air, AirPart};
pub use pressure::crossflow::Crossflow;
pub use pressure::model::{CarryOver, FinCentre, Model, Shoulder, Wake};
#[cfg(feature = "count")]
pub use report::evaluations;
pub use report::{
    Figures, Nearer, PartFigures, Report, Span, evaluate, evaluate_measured,
    separation_over_rolls,
};
pub use swing::{
    About, HallFit, NoHallFit, Settles, Settling, Shares, SmallerSpace, Space,
    StartRange, Starts, Swing, SwingDraws, SwingFault, SwingField, SwingLimit,
    SwingProblem, SwingSetup, SwingVerdict, Trajectory, Turning, When,
};
pub use tolerance::ToleranceError;
pub use tolerance::generator::Generator;
pub use tolerance::input::{Distribution, Input};
pub use tolerance::monte_carlo::{Draw, Interval, MonteCarlo, Summary};
pub use tolerance::propagation::{Budget, Contribution, propagate};
pub use tolerance::readings::Readings;
pub use tolerance::separation::{Influence, Resolution, SeparationDraws, Verdict};
