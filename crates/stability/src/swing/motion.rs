//! A motion against time, step by step.
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

/// The rocket and its string at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct State {
    pub(super) angle_rad: f64,
    pub(super) rate_rad_per_s: f64,
    /// Of the string above level, and how fast it grows.
    pub(super) elevation_rad: f64,
    pub(super) rising_rad_per_s: f64,
}

/// Error allowed in one step, in radians and radians a second: so small that a thousand
/// steps stay well within the width of a drawn line.
pub(super) const STEP_ERROR: f64 = 1e-11;
/// The same where only what it comes to counts.
pub(super) const ROUGH_ERROR: f64 = 1e-8;
/// Longest step where no force acts, in seconds.
const LONGEST_STEP_S: f64 = 0.1;
/// Binary digits kept of a step's length, after the first.
const KEPT_DIGITS: u32 = 4;

type Method = ExplicitRungeKutta<Ordinary, DormandPrince, f64, [f64; 4], 5, 7, 7>;

/// A run of steps from a start, under any equation of four values.
pub(super) struct Steps<E> {
    equation: E,
    method: Method,
}

impl<E: ODE<f64, [f64; 4]>> Steps<E> {
    /// `None` where the start is not finite.
    pub(super) fn new(
        equation: E,
        start: [f64; 4],
        longest_s: f64,
        step_error: f64,
    ) -> Option<Self> {
        let mut method = Method::dopri5()
            .rtol(step_error)
            .atol(step_error)
            .h_max(longest_s.min(LONGEST_STEP_S))
            .max_steps(usize::MAX)
            .filter(cut);
        if !start.iter().all(|value| value.is_finite()) {
            return None;
        }
        method.init(&equation, 0.0, f64::MAX, &start).ok()?;
        Some(Self { equation, method })
    }

    /// One step on. `None` when there is none, which no finite force has shown.
    pub(super) fn step(&mut self) -> Option<()> {
        loop {
            self.method.step(&self.equation).ok()?;
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

    pub(super) fn values(&self) -> [f64; 4] {
        *self.method.y()
    }

    fn values_before(&self) -> [f64; 4] {
        *self.method.y_prev()
    }

    /// The values at a time within the last step; at its end for any other.
    pub(super) fn values_at(&mut self, time_s: f64) -> [f64; 4] {
        self.method.interpolate(time_s).unwrap_or_else(|_| self.values())
    }

    /// When `f` changes its sign, between two times within the last step.
    pub(super) fn when(
        &mut self,
        f: &dyn Fn([f64; 4]) -> f64,
        from_s: f64,
        to_s: f64,
    ) -> f64 {
        bisected(&mut |time_s| f(self.values_at(time_s)), from_s, to_s)
    }
}

/// The equations of a rocket on its string.
#[derive(Debug)]
pub(super) struct OnString<'a>(&'a Forces);

impl ODE<f64, [f64; 4]> for OnString<'_> {
    fn diff(&self, _t: f64, y: &[f64; 4], dydt: &mut [f64; 4]) {
        let (turning, rising) = self.0.accelerations(State::of(*y));
        *dydt = [y[1], turning, y[3], rising];
    }
}

/// A rocket on its string, from a start.
pub(super) type Motion<'a> = Steps<OnString<'a>>;

impl<'a> Motion<'a> {
    /// `None` where the start is not finite.
    pub(super) fn of(forces: &'a Forces, start: State) -> Option<Self> {
        Self::within(forces, start, STEP_ERROR)
    }

    /// The same with another error allowed in one step.
    pub(super) fn within(
        forces: &'a Forces,
        start: State,
        step_error: f64,
    ) -> Option<Self> {
        // No step passes over more than one turning point.
        let longest_s = 1.0 / forces.quickest_rad_per_s();
        Self::new(OnString(forces), start.values(), longest_s, step_error)
    }

    pub(super) fn forces(&self) -> &'a Forces {
        self.equation.0
    }

    pub(super) fn state(&self) -> State {
        State::of(self.values())
    }

    pub(super) fn state_before(&self) -> State {
        State::of(self.values_before())
    }

    /// The state at a time within the last step; at its end for any other.
    pub(super) fn at(&mut self, time_s: f64) -> State {
        State::of(self.values_at(time_s))
    }
}

impl State {
    pub(super) fn of(values: [f64; 4]) -> Self {
        let [angle_rad, rate_rad_per_s, elevation_rad, rising_rad_per_s] = values;
        Self { angle_rad, rate_rad_per_s, elevation_rad, rising_rad_per_s }
    }

    fn values(self) -> [f64; 4] {
        [self.angle_rad, self.rate_rad_per_s, self.elevation_rad, self.rising_rad_per_s]
    }
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
