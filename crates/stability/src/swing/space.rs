//! The room that a swing takes, and what is too much for a pupil's arm.

use differential_equations::ode::ODE;
use serde::Serialize;

use super::motion::{STEP_ERROR, Steps};
use super::setup::{GRAVITY_M_S2, SwingSetup};

/// The room that a swing takes. Worked out from string, arm and rocket: no permission.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Space {
    /// How fast the rocket flies, in m/s.
    pub speed_m_per_s: f64,
    /// Pull in the string, m V²/R, in newtons. The rocket's weight is left out.
    pub pull_n: f64,
    /// Radius that rocket and string sweep, in metres: string, arm and half the rocket's
    /// length.
    pub swept_m: f64,
    /// How far the rocket flies if the string comes off, in metres: let go up to
    /// [`Space::STEEPEST_DEG`] upwards at [`Space::SHOULDER_M`], without drag.
    pub throw_m: f64,
    /// Radius within which nobody stands, in metres: both together, rounded up to half a
    /// metre. A simple and cautious sum: a rocket leaves along the tangent. Steeper, it
    /// flies further; then it slides or bounces.
    pub clear_m: f64,
    /// The same with the drag of this rocket, to be told as "about": see
    /// [`Swing::space`](super::Swing::space).
    pub about_m: f64,
}

impl Space {
    /// Height of the hand when the string comes off, in metres: that of an adult's
    /// shoulder. Our judgement.
    pub const SHOULDER_M: f64 = 1.5;
    /// The steepest let-go that the clear radius holds for, in degrees above level.
    pub const STEEPEST_DEG: f64 = 20.0;

    pub(super) fn new(
        setup: &SwingSetup,
        mass_kg: f64,
        length_m: f64,
        drag_m2: f64,
    ) -> Self {
        let speed_m_per_s = setup.speed_m_per_s();
        let (swept_m, throw_m) = swept_and_throw_m(setup, length_m);
        let slowing_per_m = 0.5 * setup.air_density_kg_m3 * drag_m2 / mass_kg;
        let dragged_m = dragged_throw_m(speed_m_per_s, Self::SHOULDER_M, slowing_per_m);
        Self {
            speed_m_per_s,
            pull_n: pull_n(setup, mass_kg),
            swept_m,
            throw_m,
            clear_m: clear_m(setup, length_m),
            about_m: halves_up(swept_m + dragged_m),
        }
    }

    /// The mass in kilograms that pulls as hard when it hangs on the string.
    #[must_use]
    pub fn hung_kg(&self) -> f64 {
        self.pull_n / GRAVITY_M_S2
    }

    /// How wide the clear circle is, in metres: twice its radius.
    #[must_use]
    pub fn clear_across_m(&self) -> f64 {
        2.0 * self.clear_m
    }

    /// The swept radius as it is told: in metres, rounded up to a tenth.
    #[must_use]
    pub fn swept_told_m(&self) -> f64 {
        up(self.swept_m, 10.0)
    }

    /// The throw as it is told, rounded up to a tenth.
    #[must_use]
    pub fn throw_told_m(&self) -> f64 {
        up(self.throw_m, 10.0)
    }
}

/// What makes a swing too much: there is no result for it, and nothing is recorded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SwingLimit {
    /// The rocket flies faster than [`SwingLimit::FASTEST_M_PER_S`].
    TooFast,
    /// It pulls harder than [`SwingLimit::HARDEST_N`].
    PullsTooHard,
}

impl SwingLimit {
    /// The fastest, in m/s. Our judgement.
    pub const FASTEST_M_PER_S: f64 = 15.0;
    /// The hardest pull in the string, in newtons. Our judgement.
    pub const HARDEST_N: f64 = 15.0;
}

impl SwingSetup {
    /// What makes swinging a rocket of this mass in kilograms too much, if anything does.
    ///
    /// ```
    /// use noseward_stability::{SwingLimit, SwingSetup};
    ///
    /// let usual = SwingSetup::default();
    /// assert_eq!(usual.limit(0.1), None);
    /// assert_eq!(usual.limit(0.5), Some(SwingLimit::PullsTooHard));
    /// let wild = SwingSetup { string_m: 3.0, turns_per_s: 3.0, ..usual };
    /// assert_eq!(wild.limit(0.1), Some(SwingLimit::TooFast));
    /// ```
    #[must_use]
    pub fn limit(&self, mass_kg: f64) -> Option<SwingLimit> {
        if self.speed_m_per_s() > SwingLimit::FASTEST_M_PER_S {
            Some(SwingLimit::TooFast)
        } else if pull_n(self, mass_kg) > SwingLimit::HARDEST_N {
            Some(SwingLimit::PullsTooHard)
        } else {
            None
        }
    }
}

/// A way to need less room.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SmallerSpace {
    /// How it is swung then.
    pub setup: SwingSetup,
    /// The clear radius then, in metres.
    pub clear_m: f64,
}

/// Lengths of string and paces that are offered, the largest first, in metres and in turns
/// a second.
const STRINGS_M: [f64; 6] = [2.0, 1.5, 1.2, 1.0, 0.8, 0.6];
const PACES: [f64; 6] = [1.5, 1.2, 1.0, 0.8, 0.7, 0.6];
/// Rows for either.
const ROWS_EACH: usize = 2;

/// How the clear radius shrinks: with a shorter string, with slower turns, then with both.
pub(super) fn smaller(
    setup: &SwingSetup,
    space: &dyn Fn(&SwingSetup) -> Space,
) -> Vec<SmallerSpace> {
    let below = |list: [f64; 6], now: f64| {
        list.into_iter().filter(move |&value| value < now - 1e-9).take(ROWS_EACH)
    };
    let shorter: Vec<_> = below(STRINGS_M, setup.string_m)
        .map(|string_m| SwingSetup { string_m, ..*setup })
        .collect();
    let slower: Vec<_> = below(PACES, setup.turns_per_s)
        .map(|turns_per_s| SwingSetup { turns_per_s, ..*setup })
        .collect();
    let both = shorter
        .first()
        .zip(slower.first())
        .map(|(a, b)| SwingSetup { turns_per_s: b.turns_per_s, ..*a });
    shorter
        .into_iter()
        .chain(slower)
        .chain(both)
        // A string that hangs down shows nothing.
        .filter(|setup| setup.faults().is_empty())
        .map(|setup| SmallerSpace { setup, clear_m: space(&setup).clear_m })
        .collect()
}

/// The radius that is swept, and how far the rocket flies from there.
fn swept_and_throw_m(setup: &SwingSetup, length_m: f64) -> (f64, f64) {
    let swept_m = setup.radius_m() + length_m / 2.0;
    (swept_m, farthest_throw_m(setup.speed_m_per_s(), Space::SHOULDER_M))
}

/// [`Space::clear_m`] of a rocket of a length.
pub(super) fn clear_m(setup: &SwingSetup, length_m: f64) -> f64 {
    let (swept_m, throw_m) = swept_and_throw_m(setup, length_m);
    halves_up(swept_m + throw_m)
}

pub(super) fn pull_n(setup: &SwingSetup, mass_kg: f64) -> f64 {
    let speed = setup.speed_m_per_s();
    mass_kg * speed * speed / setup.radius_m()
}

/// Rounded up to a whole, a half or a tenth, by how many make one; what is one but for its
/// last bits stays.
fn up(value: f64, parts: f64) -> f64 {
    libm::ceil(value * parts - 1e-9) / parts
}

fn halves_up(value: f64) -> f64 {
    up(value, 2.0)
}

/// The farthest that something flies without drag, let go at a height and up to
/// [`Space::STEEPEST_DEG`] upwards.
///
/// From level to that: `cos e (sin e + √(sin² e + 2 g h/V²)) V²/g`, which grows with e as
/// far as tan e = V/√(V² + 2 g h).
fn farthest_throw_m(speed: f64, height_m: f64) -> f64 {
    let (sin, cos) = libm::sincos(throw_angle_rad(speed, height_m));
    let up = speed * sin;
    let fallen = (up * up + 2.0 * GRAVITY_M_S2 * height_m).sqrt();
    speed * cos * (up + fallen) / GRAVITY_M_S2
}

fn throw_angle_rad(speed: f64, height_m: f64) -> f64 {
    let fallen = (speed * speed + 2.0 * GRAVITY_M_S2 * height_m).sqrt();
    libm::atan2(speed, fallen).min(Space::STEEPEST_DEG.to_radians())
}

/// Something thrown: its place and its speed, outwards and upwards.
struct Thrown {
    /// Drag takes so much times v² off the speed, in 1/m.
    slowing_per_m: f64,
}

impl ODE<f64, [f64; 4]> for Thrown {
    fn diff(&self, _t: f64, &[_, _, out, up]: &[f64; 4], dydt: &mut [f64; 4]) {
        let slowing = self.slowing_per_m * libm::hypot(out, up);
        *dydt = [out, up, -slowing * out, -GRAVITY_M_S2 - slowing * up];
    }
}

/// The same as [`farthest_throw_m`] with drag, in metres.
fn dragged_throw_m(speed: f64, height_m: f64, slowing_per_m: f64) -> f64 {
    let (sin, cos) = libm::sincos(throw_angle_rad(speed, height_m));
    let start = [0.0, height_m, speed * cos, speed * sin];
    let Some(mut flight) =
        Steps::new(Thrown { slowing_per_m }, start, f64::MAX, STEP_ERROR)
    else {
        return 0.0;
    };
    while flight.values()[1] > 0.0 && flight.step().is_some() {}
    let (from_s, to_s) = (flight.time_before_s(), flight.time_s());
    let landed_s = flight.when(&|[_, height_m, ..]| height_m, from_s, to_s);
    flight.values_at(landed_s)[0]
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Without drag both are the same, and level let-go is the free fall: by hand 8.55 m/s ·
    /// √(2 · 1.5/9.81) s.
    #[test]
    fn without_drag_both_throws_agree() {
        for speed in [0.5, 2.0, 8.55, 15.0] {
            for height_m in [0.5, Space::SHOULDER_M, 2.0] {
                let closed = farthest_throw_m(speed, height_m);
                let stepped = dragged_throw_m(speed, height_m, 0.0);
                assert!((closed - stepped).abs() < 1e-7, "{speed} {height_m}");
                let level = speed * (2.0 * height_m / GRAVITY_M_S2).sqrt();
                assert!(closed > level, "{speed} {height_m}");
                assert!(dragged_throw_m(speed, height_m, 0.1) < closed);
            }
        }
        // By hand, from 2 m with 13.82 m/s: 12.989 m/s for (4.728 + 7.847)/9.807 = 1.2823 s.
        assert!((farthest_throw_m(13.823, 2.0) - 16.656).abs() < 0.001);
    }

    /// Straight out without gravity it would be ln(1 + k v t)/k; over a short way gravity
    /// does not matter to it.
    #[test]
    fn drag_slows_as_its_closed_form() {
        let (speed, slowing) = (10.0, 0.4);
        let mut flight = Steps::new(
            Thrown { slowing_per_m: slowing },
            [0.0, 1.0, speed, 0.0],
            1.0,
            STEP_ERROR,
        )
        .unwrap();
        while flight.time_s() < 0.02 {
            flight.step().unwrap();
        }
        let [out, ..] = flight.values_at(0.02);
        let expected = libm::log1p(slowing * speed * 0.02) / slowing;
        assert!((out / expected - 1.0).abs() < 1e-4, "{out} {expected}");
    }

    /// No steeper let-go up to 20 degrees flies further.
    #[test]
    fn the_farthest_throw_is_the_farthest() {
        for speed in [0.8, 1.5, 4.0, 8.55, 14.0] {
            let farthest = farthest_throw_m(speed, Space::SHOULDER_M);
            for degrees in 0..=20 {
                let (sin, cos) = libm::sincos(f64::from(degrees).to_radians());
                let up = speed * sin;
                let fallen = (up * up + 2.0 * GRAVITY_M_S2 * Space::SHOULDER_M).sqrt();
                let flown = speed * cos * (up + fallen) / GRAVITY_M_S2;
                assert!(flown <= farthest + 1e-12, "{speed} at {degrees}");
            }
        }
    }

    #[test]
    fn rounding_is_upwards_and_keeps_what_is_round() {
        for (value, halves) in [(9.29, 9.5), (9.5, 9.5), (9.51, 10.0), (10.0, 10.0)] {
            assert_eq!(halves_up(value), halves);
        }
        assert_eq!(halves_up(0.1 + 0.4 + 1e-13), 0.5);
        assert_eq!(up(7.41, 10.0), 7.5);
    }

    /// Rows are shorter or slower than now, the radius shrinks down the list, and a string
    /// that hangs down is not among them.
    #[test]
    fn smaller_spaces_are_smaller() {
        let space = |setup: &SwingSetup| Space::new(setup, 0.06, 0.3, 0.002);
        let usual = SwingSetup::default();
        let rows = smaller(&usual, &space);
        assert!(rows.len() >= 3, "{rows:?}");
        for row in &rows {
            assert!(row.clear_m < space(&usual).clear_m);
            assert!(row.setup.faults().is_empty());
            assert!(row.setup.string_m <= 1.0 && row.setup.turns_per_s <= 0.8);
        }
        // By hand with 0.8 m: 7.54 m/s throw 6.20 m from 1.65 m swept.
        let shorter = rows.iter().find(|row| row.setup.string_m == 0.8).unwrap();
        assert_eq!((shorter.setup.turns_per_s, shorter.clear_m), (0.8, 8.0));
        let least = SwingSetup { string_m: 0.3, turns_per_s: 1.0, ..usual };
        let all = smaller(&least, &space);
        assert!(all.iter().all(|row| row.setup.string_m == 0.3), "{all:?}");
    }
}
