//! The hard bounds on every count and size.
//!
//! They are ours: wide enough for anything that a class builds from drinks bottles, card
//! and tape, and narrow enough for the largest design to fit in a link of 1,000
//! characters.

/// Sections of a body, at most.
pub const SECTIONS: usize = 12;
/// Fin sets, at most.
pub const FIN_SETS: usize = 4;
/// Weights, at most.
pub const WEIGHTS: usize = 12;
/// Fins in a set, fewest and most.
pub const FIN_COUNT: (u32, u32) = (2, 8);
/// Corners of a fin of an own outline, fewest and most.
pub const FIN_POINTS: (usize, usize) = (3, 24);
/// Characters in a name or label, at most.
pub const LABEL_CHARS: usize = 24;
/// Bytes (UTF-8) of all names and labels of a design together, at most.
pub const TEXT_BYTES: usize = 160;
/// Length of one section or one fin edge, and any distance from the nose tip, at most.
pub const LENGTH_MM: f64 = 2000.0;
/// Width of a section, narrowest and widest.
pub const DIAMETER_MM: (f64, f64) = (1.0, 500.0);
/// How far a fin reaches along or out from the front of its root, at most.
pub const FIN_REACH_MM: f64 = 800.0;
/// Mass of one part or of the whole rocket, at most.
pub const MASS_G: f64 = 5000.0;
/// Areal density of a sheet, lightest and heaviest.
pub const SHEET_G_PER_M2: (f64, f64) = (10.0, 10_000.0);
