//! How the rocket is swung.

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use crate::check::Severity;
use crate::outcome::bisected;

/// How the rocket is swung: what a person measures or counts.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct SwingSetup {
    /// From the hand to the rocket, in metres.
    pub string_m: f64,
    /// From the middle of the circle to the hand, in metres.
    pub arm_m: f64,
    /// Turns of the circle a second.
    pub turns_per_s: f64,
    /// Density of the air, in kg/m³.
    pub air_density_kg_m3: f64,
}

impl Default for SwingSetup {
    /// 1 m of string, an arm of 0.7 m and 0.8 turns a second, which take a clear radius of
    /// some 9.5 m and so fit into a hall, in the standard atmosphere at sea level (ISO 2533:
    /// 1.225 kg/m³).
    fn default() -> Self {
        Self { string_m: 1.0, arm_m: 0.7, turns_per_s: 0.8, air_density_kg_m3: 1.225 }
    }
}

/// One value of a [`SwingSetup`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SwingField {
    /// Length of the string.
    String,
    /// Length of the arm.
    Arm,
    /// Turns a second.
    Turns,
    /// Density of the air.
    AirDensity,
}

impl SwingField {
    /// Every field, in the order in which a list shows them.
    pub const ALL: [Self; 4] = [Self::String, Self::Arm, Self::Turns, Self::AirDensity];

    /// Least and most, in the unit of the setup. Ours: what a person can swing, and air
    /// from a high plateau on a hot day to a cold day by the sea.
    #[must_use]
    pub fn bounds(self) -> (f64, f64) {
        match self {
            Self::String | Self::Turns => (0.3, 3.0),
            Self::Arm => (0.0, 1.0),
            Self::AirDensity => (0.8, 1.4),
        }
    }

    /// Its value in a setup.
    #[must_use]
    pub fn get(self, setup: &SwingSetup) -> f64 {
        match self {
            Self::String => setup.string_m,
            Self::Arm => setup.arm_m,
            Self::Turns => setup.turns_per_s,
            Self::AirDensity => setup.air_density_kg_m3,
        }
    }

    /// Puts a value into a setup, whatever it is; [`SwingSetup::faults`] judges it.
    pub fn set(self, setup: &mut SwingSetup, value: f64) {
        *match self {
            Self::String => &mut setup.string_m,
            Self::Arm => &mut setup.arm_m,
            Self::Turns => &mut setup.turns_per_s,
            Self::AirDensity => &mut setup.air_density_kg_m3,
        } = value;
    }
}

/// One fault of a setup.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SwingFault {
    /// The field that has to change.
    pub field: SwingField,
    /// What is wrong.
    pub problem: SwingProblem,
}

/// What is wrong with a value of a setup.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SwingProblem {
    /// It is no number.
    NotANumber,
    /// It is smaller or larger than the bounds of its field.
    OutOfBounds {
        /// The smallest it can be, in the unit of the setup.
        least: f64,
        /// The largest.
        most: f64,
    },
    /// So slow that the string hangs down: the figures are a rough guide.
    HangsDown,
    /// So slow that the string hangs nearly straight down: nothing is worked out.
    TooSlow,
}

impl SwingFault {
    /// Whether it stops the computation.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self.problem {
            SwingProblem::HangsDown => Severity::Ask,
            SwingProblem::NotANumber
            | SwingProblem::OutOfBounds { .. }
            | SwingProblem::TooSlow => Severity::Stop,
        }
    }
}

/// Standard acceleration of free fall, in m/s² (3rd CGPM, 1901).
pub(super) const GRAVITY_M_S2: f64 = 9.806_65;
/// The angle below level from which the string is said to hang down, and from which nothing
/// is worked out: 30 and 60 degrees. Our judgement.
const HANGS_DOWN_RAD: f64 = PI / 6.0;
const TOO_SLOW_RAD: f64 = PI / 3.0;

impl SwingSetup {
    /// Every fault, in the order of [`SwingField::ALL`]. Empty is good.
    ///
    /// ```
    /// use noseward_stability::{SwingField, SwingProblem, SwingSetup};
    ///
    /// let setup = SwingSetup { string_m: 15.0, ..SwingSetup::default() };
    /// let faults = setup.faults();
    /// assert_eq!(faults[0].field, SwingField::String);
    /// assert_eq!(faults[0].problem, SwingProblem::OutOfBounds { least: 0.3, most: 3.0 });
    /// ```
    #[must_use]
    pub fn faults(&self) -> Vec<SwingFault> {
        let mut faults = Vec::new();
        for field in SwingField::ALL {
            let value = field.get(self);
            let (least, most) = field.bounds();
            if !value.is_finite() {
                faults.push(SwingFault { field, problem: SwingProblem::NotANumber });
            } else if value < least || value > most {
                let problem = SwingProblem::OutOfBounds { least, most };
                faults.push(SwingFault { field, problem });
            }
        }
        if faults.is_empty() && self.below_level_rad() > HANGS_DOWN_RAD {
            let problem = if self.below_level_rad() > TOO_SLOW_RAD {
                SwingProblem::TooSlow
            } else {
                SwingProblem::HangsDown
            };
            faults.push(SwingFault { field: SwingField::Turns, problem });
        }
        faults
    }

    /// Whether nothing can be worked out with it.
    pub(super) fn is_stopped(&self) -> bool {
        self.faults().iter().any(|fault| fault.severity() == Severity::Stop)
    }

    /// Radius of the rocket's circle, string plus arm, in metres.
    #[must_use]
    pub fn radius_m(&self) -> f64 {
        self.string_m + self.arm_m
    }

    /// How fast the string goes round, in radians a second.
    #[must_use]
    pub fn spin_rad_per_s(&self) -> f64 {
        2.0 * PI * self.turns_per_s
    }

    /// How fast the rocket flies, in m/s.
    #[must_use]
    pub fn speed_m_per_s(&self) -> f64 {
        self.spin_rad_per_s() * self.radius_m()
    }

    /// How far the string hangs below level without lift, in radians: a conical pendulum
    /// behind a level arm, tan = g/(Ω² R) with R = arm + string cos. A quarter turn where
    /// the swing is too slow to lift it.
    #[must_use]
    pub fn below_level_rad(&self) -> f64 {
        let spin = self.spin_rad_per_s();
        let falls = |below_rad: f64| {
            let (sin, cos) = libm::sincos(below_rad);
            GRAVITY_M_S2 * cos - spin * spin * (self.arm_m + self.string_m * cos) * sin
        };
        const STRAIGHT_DOWN_RAD: f64 = PI / 2.0;
        // Without an arm it may not leave it at all.
        if falls(STRAIGHT_DOWN_RAD - 1e-6) >= 0.0 {
            return STRAIGHT_DOWN_RAD;
        }
        bisected(&mut |below_rad| falls(below_rad), 0.0, STRAIGHT_DOWN_RAD)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_value_is_bounded_and_must_be_finite() {
        let good = SwingSetup::default();
        assert_eq!(good.faults(), []);
        for field in SwingField::ALL {
            let (least, most) = field.bounds();
            for value in [least - 0.01, most + 0.01, f64::NAN, f64::INFINITY] {
                let mut worse = good;
                field.set(&mut worse, value);
                let faults = worse.faults();
                assert_eq!(faults.len(), 1, "{field:?} took {value}");
                assert_eq!(faults[0].field, field);
                assert_eq!(faults[0].severity(), Severity::Stop);
                assert!(worse.is_stopped());
            }
            for value in [least, most] {
                let mut edge = good;
                field.set(&mut edge, value);
                let found = edge.faults();
                let bounded = |fault: &SwingFault| fault.problem != SwingProblem::TooSlow;
                assert!(
                    !found.iter().any(|f| f.severity() == Severity::Stop && bounded(f))
                );
                assert_eq!(field.get(&edge), value);
            }
        }
    }

    #[test]
    fn a_slow_swing_is_asked_about() {
        let slow = SwingSetup { turns_per_s: 0.5, ..SwingSetup::default() };
        let faults = slow.faults();
        assert_eq!(faults[0].problem, SwingProblem::HangsDown);
        assert_eq!(faults[0].severity(), Severity::Ask);
        assert!(!slow.is_stopped());
        // By hand at the default: R = 0.7 + cos 13.05° = 1.674 m, tan 13.05° = 0.2318 =
        // 9.807/(5.027² · 1.674).
        let found = SwingSetup::default().below_level_rad();
        assert!((found.to_degrees() - 13.05).abs() < 0.01, "{}", found.to_degrees());
        // Too slow to lift it at all.
        let slowest =
            SwingSetup { turns_per_s: 0.3, arm_m: 0.0, ..SwingSetup::default() };
        assert_eq!(slowest.below_level_rad(), PI / 2.0);
        assert_eq!(slowest.faults()[0].problem, SwingProblem::TooSlow);
        assert!(slowest.is_stopped());
    }
}
