//! What the rocket will do: where it comes to rest in the wind.

use std::f64::consts::PI;

use serde::Serialize;

use crate::pressure::air::Air;

/// An angle at which the air does not turn the rocket.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Rest {
    /// The angle between the nose and the oncoming air, in radians from 0 (nose into the
    /// wind) to π.
    pub angle_rad: f64,
    /// Whether the rocket comes back there when it is turned a little.
    pub holds: bool,
}

/// What the rocket does when the air hits it from any side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// From any angle it comes back nose-first.
    SelfRighting,
    /// It holds nose-first if it starts so, but can also come to rest otherwise.
    StraightStartOnly,
    /// It comes to rest at an angle, in radians; at the smallest if there are several.
    Broadside {
        /// That angle.
        angle_rad: f64,
    },
    /// It comes to rest tail-first only.
    SwapsEnds,
}

impl Outcome {
    /// The outcome of a list of resting angles, as [`resting_angles`] gives it.
    pub(crate) fn of(rests: &[Rest]) -> Self {
        let held = |rest: &&Rest| rest.holds;
        let nose_first = rests.first().is_some_and(|rest| rest.holds);
        let count = rests.iter().filter(held).count();
        if nose_first && count == 1 {
            return Self::SelfRighting;
        }
        if nose_first {
            return Self::StraightStartOnly;
        }
        match rests.iter().find(held) {
            Some(rest) if rest.angle_rad < PI => {
                Self::Broadside { angle_rad: rest.angle_rad }
            }
            _ => Self::SwapsEnds,
        }
    }

    /// How good it is: from 0, self-righting, in the order of the list to 3.
    #[must_use]
    pub fn rank(self) -> u8 {
        match self {
            Self::SelfRighting => 0,
            Self::StraightStartOnly => 1,
            Self::Broadside { .. } => 2,
            Self::SwapsEnds => 3,
        }
    }

    /// Whether it stays nose-first once it is.
    #[must_use]
    pub fn holds_nose_first(self) -> bool {
        self.rank() <= Self::StraightStartOnly.rank()
    }
}

/// Steps in which the angles are searched, from 0 to 180 degrees. The moment is a sum of
/// a few sines and cosines: it does not turn twice within one degree.
const STEPS: u32 = 180;
/// How closely a resting angle is found, in radians: far below what can be seen. The same
/// in seconds for a moment in time.
const CLOSE: f64 = 1e-10;

/// Every angle at which the moment about the centre of mass vanishes, from 0 to π; both
/// ends are always among them.
pub(crate) fn resting_angles(air: &Air, centre_of_mass_m: f64) -> Vec<Rest> {
    searched(air, centre_of_mass_m, STEPS)
}

/// The same for any moment, given divided by sin a: positive turns towards 0.
pub(crate) fn resting_angles_of(moment_by_sine: &dyn Fn(f64) -> f64) -> Vec<Rest> {
    searched_of(moment_by_sine, STEPS)
}

/// The outcome alone, from a search in steps of five degrees: for many draws.
pub(crate) fn quick_outcome(air: &Air, centre_of_mass_m: f64) -> Outcome {
    Outcome::of(&searched(air, centre_of_mass_m, STEPS / 5))
}

fn searched(air: &Air, centre_of_mass_m: f64, steps: u32) -> Vec<Rest> {
    searched_of(&|angle| air.moment_by_sine(angle, centre_of_mass_m), steps)
}

fn searched_of(moment: &dyn Fn(f64) -> f64, steps: u32) -> Vec<Rest> {
    let angle = |k: u32| PI * f64::from(k) / f64::from(steps);
    // Positive turns towards 0. At the nose end that holds; at the tail end a negative
    // moment does.
    let mut rests = vec![Rest { angle_rad: 0.0, holds: moment(0.0) > 0.0 }];
    let mut before = moment(0.0);
    for k in 1..=steps {
        let here = moment(angle(k));
        if before * here < 0.0 {
            let found = bisected(&mut |a| moment(a), angle(k - 1), angle(k));
            rests.push(Rest { angle_rad: found, holds: here > 0.0 });
        }
        if here != 0.0 {
            before = here;
        }
    }
    rests.push(Rest { angle_rad: PI, holds: moment(PI) < 0.0 });
    rests
}

/// The place of a change of sign between two angles or times.
pub(crate) fn bisected(
    f: &mut dyn FnMut(f64) -> f64,
    mut low: f64,
    mut high: f64,
) -> f64 {
    let rises = f(high) > 0.0;
    while high - low > CLOSE {
        let middle = f64::midpoint(low, high);
        if (f(middle) > 0.0) == rises { high = middle } else { low = middle }
    }
    f64::midpoint(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Design, Example, Model, evaluate};

    fn outcome(design: &Design, centre_of_mass_m: f64) -> Outcome {
        let air = Air::new(design, Model::default(), None).unwrap();
        Outcome::of(&resting_angles(&air, centre_of_mass_m))
    }

    #[test]
    fn the_outcome_follows_the_list() {
        let rest = |degrees: f64, holds| Rest { angle_rad: degrees.to_radians(), holds };
        let of = |list: &[(f64, bool)]| {
            let list: Vec<Rest> = list.iter().map(|&(d, h)| rest(d, h)).collect();
            Outcome::of(&list)
        };
        assert_eq!(of(&[(0.0, true), (180.0, false)]), Outcome::SelfRighting);
        assert_eq!(
            of(&[(0.0, true), (40.0, false), (80.0, true), (180.0, false)]),
            Outcome::StraightStartOnly
        );
        assert_eq!(
            of(&[(0.0, true), (120.0, false), (180.0, true)]),
            Outcome::StraightStartOnly
        );
        assert!(matches!(
            of(&[(0.0, false), (70.0, true), (180.0, false)]),
            Outcome::Broadside { .. }
        ));
        assert_eq!(of(&[(0.0, false), (180.0, true)]), Outcome::SwapsEnds);
    }

    /// The further back the centre of mass, the worse, from one end to the other.
    #[test]
    fn the_outcome_worsens_as_the_mass_moves_back() {
        for example in Example::ALL {
            let design = example.design();
            let length_m = evaluate(&design).figures.unwrap().length_m;
            assert_eq!(outcome(&design, 0.0), Outcome::SelfRighting);
            assert_eq!(outcome(&design, 1.2 * length_m), Outcome::SwapsEnds);
            let holds_nose_first =
                |k: u32| outcome(&design, length_m * f64::from(k) / 200.0).rank() <= 1;
            let mut held = true;
            for k in 0..200 {
                assert!(held || !holds_nose_first(k), "{example:?} at {k}");
                held = holds_nose_first(k);
            }
        }
    }

    #[test]
    fn stable_and_unstable_angles_take_turns() {
        for example in Example::ALL {
            let design = example.design();
            let air = Air::new(&design, Model::default(), None).unwrap();
            for k in 1..40 {
                let rests = resting_angles(&air, 0.01 * f64::from(k));
                for w in rests.windows(2) {
                    assert!(w[0].angle_rad < w[1].angle_rad);
                    assert_ne!(w[0].holds, w[1].holds, "{rests:?}");
                }
            }
        }
    }
}
