//! The room that a swing takes, and what is too much for a pupil's arm.

use serde::Serialize;

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
        let radius_m = setup.radius_m();
        let speed_m_per_s = setup.speed_m_per_s();
        let swept_m = radius_m + length_m / 2.0;
        let throw_m = farthest_throw_m(speed_m_per_s, Self::SHOULDER_M);
        let slowing_per_m = 0.5 * setup.air_density_kg_m3 * drag_m2 / mass_kg;
        let dragged_m = dragged_throw_m(speed_m_per_s, Self::SHOULDER_M, slowing_per_m);
        Self {
            speed_m_per_s,
            pull_n: pull_n(setup, mass_kg),
            swept_m,
            throw_m,
            clear_m: halves_up(swept_m + throw_m),
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

    /// What to do, in a pupil's words.
    #[must_use]
    pub fn sentence(self) -> &'static str {
        "Do not swing this. Shorter string, fewer turns, lighter rocket: ask the adult."
    }
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

fn pull_n(setup: &SwingSetup, mass_kg: f64) -> f64 {
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

/// The same with drag that takes `k v²` off the speed, in metres.
fn dragged_throw_m(speed: f64, height_m: f64, slowing_per_m: f64) -> f64 {
    // A plain fourth-order rule in even steps: the flight is smooth and a second long.
    const STEP_S: f64 = 0.01;
    let pull = |[_, _, u, w]: [f64; 4]| {
        let k = slowing_per_m * libm::hypot(u, w);
        [u, w, -k * u, -GRAVITY_M_S2 - k * w]
    };
    let on = |y: [f64; 4], d: [f64; 4], h: f64| {
        [y[0] + h * d[0], y[1] + h * d[1], y[2] + h * d[2], y[3] + h * d[3]]
    };
    let (sin, cos) = libm::sincos(throw_angle_rad(speed, height_m));
    let mut y = [0.0, height_m, speed * cos, speed * sin];
    loop {
        let a = pull(y);
        let b = pull(on(y, a, STEP_S / 2.0));
        let c = pull(on(y, b, STEP_S / 2.0));
        let d = pull(on(y, c, STEP_S));
        let mut mean = [0.0; 4];
        for (i, mean) in mean.iter_mut().enumerate() {
            *mean = (a[i] + 2.0 * (b[i] + c[i]) + d[i]) / 6.0;
        }
        let next = on(y, mean, STEP_S);
        if next[1] > 0.0 {
            y = next;
        } else {
            let share = y[1] / (y[1] - next[1]);
            return y[0] + share * (next[0] - y[0]);
        }
    }
}
