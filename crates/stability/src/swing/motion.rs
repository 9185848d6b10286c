//! The turning against time, step by step.
//!
//! The steps are Dormand and Prince's method of order 5(4) with its dense output (Hairer,
//! Nørsett & Wanner, Solving Ordinary Differential Equations I, 1993), by the library
//! `differential-equations`. It chooses the length of a step with the standard library's
//! `powf`, whose last bit differs between machines. Each length is therefore cut to a few
//! binary digits, so that steps and results are the same everywhere: a machine could only
//! differ where the last bit decides a cut, once in some 10¹³ steps.

use differential_equations::interpolate::Interpolation;
use differential_equations::methods::{DormandPrince, ExplicitRungeKutta, Ordinary};
use differential_equations::ode::{ODE, OrdinaryNumericalMethod};
use differential_equations::status::Status;

use super::forces::Forces;
use crate::outcome::bisected;

/// The rocket about the string at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct State {
    pub(super) angle_rad: f64,
    pub(super) rate_rad_per_s: f64,
}

/// Error allowed in one step, in radians and radians a second: so small that a thousand
/// steps stay well within the width of a drawn line.
const STEP_ERROR: f64 = 1e-10;
/// Longest step where no force acts, in seconds.
const LONGEST_STEP_S: f64 = 0.1;
/// Binary digits kept of a step's length, after the first.
const KEPT_DIGITS: u32 = 4;

type Method = ExplicitRungeKutta<Ordinary, DormandPrince, f64, [f64; 2], 5, 7, 7>;

#[derive(Debug)]
struct Turning<'a>(&'a Forces);

impl ODE<f64, [f64; 2]> for Turning<'_> {
    fn diff(&self, _t: f64, y: &[f64; 2], dydt: &mut [f64; 2]) {
        *dydt = [y[1], self.0.acceleration(y[0], y[1])];
    }
}

/// A run of steps from a start.
pub(super) struct Motion<'a> {
    turning: Turning<'a>,
    method: Method,
}

impl<'a> Motion<'a> {
    /// `None` where the start is not finite.
    pub(super) fn new(forces: &'a Forces, start: State) -> Option<Self> {
        let turning = Turning(forces);
        // No step passes over more than one turning point.
        let longest_s = (1.0 / forces.quickest_rad_per_s()).min(LONGEST_STEP_S);
        let mut method = Method::dopri5()
            .rtol(STEP_ERROR)
            .atol(STEP_ERROR)
            .h_max(longest_s)
            .max_steps(usize::MAX)
            .filter(cut);
        let start = [start.angle_rad, start.rate_rad_per_s];
        if !start.iter().all(|value| value.is_finite()) {
            return None;
        }
        method.init(&turning, 0.0, f64::MAX, &start).ok()?;
        Some(Self { turning, method })
    }

    /// One step on. `None` when there is none, which no finite force has shown.
    pub(super) fn step(&mut self) -> Option<()> {
        loop {
            self.method.step(&self.turning).ok()?;
            match self.method.status() {
                Status::RejectedStep => {}
                _ => return Some(()),
            }
        }
    }

    /// Time in seconds after the last step, and before it.
    pub(super) fn time_s(&self) -> f64 {
        self.method.t()
    }

    pub(super) fn time_before_s(&self) -> f64 {
        self.method.t_prev()
    }

    pub(super) fn state(&self) -> State {
        of(*self.method.y())
    }

    pub(super) fn state_before(&self) -> State {
        of(*self.method.y_prev())
    }

    /// The state at a time within the last step; at its end for any other.
    pub(super) fn at(&mut self, time_s: f64) -> State {
        match self.method.interpolate(time_s) {
            Ok(y) => of(y),
            Err(_) => self.state(),
        }
    }

    /// When `f` changes its sign, between two times within the last step.
    pub(super) fn when(
        &mut self,
        f: &dyn Fn(State) -> f64,
        from_s: f64,
        to_s: f64,
    ) -> f64 {
        bisected(&mut |time_s| f(self.at(time_s)), from_s, to_s)
    }
}

fn of([angle_rad, rate_rad_per_s]: [f64; 2]) -> State {
    State { angle_rad, rate_rad_per_s }
}

/// The length of a step with a few binary digits only, never longer.
fn cut(step_s: f64) -> f64 {
    let dropped = f64::MANTISSA_DIGITS - 1 - KEPT_DIGITS;
    f64::from_bits(step_s.to_bits() >> dropped << dropped)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cut_step_is_a_little_shorter_and_forgets_last_bits() {
        for k in 1..2000 {
            let step = 1.37e-5 * f64::from(k);
            let short = cut(step);
            assert!(short <= step && short > step * (1.0 - 1.0 / 16.0));
            assert_eq!(cut(short), short);
            // Away from a cut, the neighbouring number gives the same step.
            if short != step {
                assert_eq!(cut(step.next_up()), short);
            }
        }
    }
}
