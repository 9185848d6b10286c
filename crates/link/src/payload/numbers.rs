//! Numbers as whole steps of the grid.
//!
//! Each range is wider than the bounds of `check`, and a number beyond it becomes its
//! end: what was out of bounds stays so. "Not a number" has a place of its own.

use noseward_stability::within;
use serde::{Deserialize, Serialize};

/// Steps of a length in one millimetre.
pub(crate) const PER_MM: f64 = 10.0;

/// Steps of a length or an areal density: always two bytes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub(crate) struct Steps(#[serde(with = "postcard::fixint::le")] i16);

/// Steps of 0.01 g.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub(crate) struct MassSteps(i32);

/// Steps of one degree.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub(crate) struct Angle(i16);

/// The nearest whole number of steps, within ±`most`; `None` when it is not a number.
pub(super) fn steps(value: f64, per_unit: f64, most: i32) -> Option<i32> {
    let most = f64::from(most);
    let steps = within((value * per_unit).round(), (-most, most));
    #[expect(clippy::cast_possible_truncation, reason = "whole, and within ±most")]
    (!value.is_nan()).then_some(steps as i32)
}

impl Steps {
    const MOST: i16 = 32_766;
    const NOT_A_NUMBER: i16 = -32_768;
    const EMPTY: i16 = -32_767;

    pub(crate) fn new(value: f64, per_unit: f64) -> Self {
        let steps = steps(value, per_unit, Self::MOST.into());
        Self(steps.map_or(Self::NOT_A_NUMBER, |steps| {
            i16::try_from(steps).expect("within ±MOST")
        }))
    }

    pub(crate) fn optional(value: Option<f64>, per_unit: f64) -> Self {
        value.map_or(Self(Self::EMPTY), |value| Self::new(value, per_unit))
    }

    pub(crate) fn value(self, per_unit: f64) -> f64 {
        self.optional_value(per_unit).unwrap_or(f64::NAN)
    }

    pub(crate) fn optional_value(self, per_unit: f64) -> Option<f64> {
        match self.0 {
            Self::EMPTY => None,
            Self::NOT_A_NUMBER => Some(f64::NAN),
            steps => Some(f64::from(steps) / per_unit),
        }
    }
}

impl MassSteps {
    const MOST: i32 = 1_000_000;
    const PER_G: f64 = 100.0;

    pub(super) fn new(grams: f64) -> Self {
        Self(steps(grams, Self::PER_G, Self::MOST).unwrap_or(Self::MOST + 1))
    }

    pub(super) fn value(self) -> f64 {
        if self.0 > Self::MOST { f64::NAN } else { f64::from(self.0) / Self::PER_G }
    }
}

impl Angle {
    const MOST: i16 = 1000;

    pub(super) fn new(degrees: f64) -> Self {
        let steps = steps(degrees, 1.0, Self::MOST.into());
        Self(
            steps.map_or(Self::MOST + 1, |steps| {
                i16::try_from(steps).expect("within ±MOST")
            }),
        )
    }

    pub(super) fn value(self) -> f64 {
        if self.0 > Self::MOST { f64::NAN } else { f64::from(self.0) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Quantity, limits};

    #[test]
    fn every_value_of_the_grid_comes_back_bit_for_bit() {
        let same = |a: f64, b: f64| assert_eq!(a.to_bits(), b.to_bits(), "{a} {b}");
        for n in -20_000..=20_000 {
            let mm = Quantity::Length.rounded(f64::from(n) * 0.1);
            same(Steps::new(mm, 10.0).value(10.0), mm);
            let density = f64::from(n / 2) + 0.0;
            same(Steps::new(density, 1.0).value(1.0), density);
        }
        for n in 0..=500_000 {
            let g = Quantity::Mass.rounded(f64::from(n) * 0.01);
            same(MassSteps::new(g).value(), g);
        }
        for n in -360..=360 {
            same(Angle::new(f64::from(n)).value(), f64::from(n));
        }
        same(Steps::new(-0.01, 10.0).value(10.0), 0.0);
    }

    #[test]
    fn off_the_grid_is_rounded_as_a_design_is() {
        for value in [0.05, 0.15, 12.345, 0.045, -7.25, 1e-9, 99.949_999] {
            let mm = Steps::new(value, 10.0).value(10.0);
            assert_eq!(mm, Quantity::Length.rounded(value));
            assert_eq!(MassSteps::new(value).value(), Quantity::Mass.rounded(value));
            assert_eq!(Angle::new(value).value(), Quantity::Angle.rounded(value));
        }
    }

    #[test]
    fn ends_of_the_ranges_lie_beyond_the_limits() {
        assert_eq!(Steps::new(f64::INFINITY, 10.0).value(10.0), 3276.6);
        assert_eq!(Steps::new(-1e300, 10.0).value(10.0), -3276.6);
        const { assert!(3276.6 > limits::LENGTH_MM) };
        assert_eq!(Steps::new(1e9, 1.0).value(1.0), 32_766.0);
        const { assert!(32_766.0 > limits::SHEET_G_PER_M2.1) };
        assert_eq!(MassSteps::new(f64::MAX).value(), 10_000.0);
        const { assert!(10_000.0 > limits::MASS_G) };
        assert_eq!(Angle::new(f64::NEG_INFINITY).value(), -1000.0);
        assert!(Steps::new(f64::NAN, 10.0).value(10.0).is_nan());
        assert!(MassSteps::new(f64::NAN).value().is_nan());
        assert!(Angle::new(f64::NAN).value().is_nan());
        assert_eq!(Steps::optional(None, 10.0).optional_value(10.0), None);
    }
}
