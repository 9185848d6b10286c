//! The rocket swung round on a string.
//!
//! It hangs at its centre of mass on a string of length l, of which the other end goes round
//! on an arm `R_a`. The string holds it along itself only: about the string it turns, and
//! across the string it rises and falls. With `a` the angle of the nose above the level path,
//! `b` that of the string above level and Ω the turning of the hand about the upright:
//!
//! ```text
//! R = R_a + l cos b                       radius of the circle
//! V² = (Ω R)² + (l b')²,  tan g = l b'/(Ω R)      speed, and climb of the path
//! a − g                                   the angle to the air, and what an eye sees
//! ```
//!
//! **The energies.** The hand turns the rocket by Ω about the upright, rising turns it by b'
//! about the path backwards, and a' is about the string. Along its own axis, across it, and
//! along the string that is, with the body held square to the string,
//!
//! ```text
//! w_1 = Ω cos b sin a − b' cos a,   w_2 = Ω cos b cos a + b' sin a,   w_3 = a' + Ω sin b
//! T = ½ m V² + ½ I_a w_1² + ½ I_t (w_2² + w_3²),   U = m g₀ l sin b
//! ```
//!
//! **The motion.** Lagrange's equations of these two, with the air's moment M, its force N
//! across the rocket and its drag A along it:
//!
//! ```text
//! I_t a'' = −M − (I_t − I_a) w_1 w_2 − I_t Ω b' cos b
//!
//! (m l² + I_a cos² a + I_t sin² a) b'' =
//!     l (N cos a − A sin a − m g₀ cos b − m Ω² R sin b)
//!   + Ω² (I_t − I_a) sin b cos b sin² a
//!   + Ω a' cos b (I_t − (I_t − I_a) cos 2a) − 2 (I_t − I_a) a' b' sin a cos a
//! ```
//!
//! The first line of the second equation is what counts; the rest is the body's own turning,
//! some hundredths of it. With the string held level the first equation is `I_t a'' = −M −
//! (I_t − I_a) Ω² sin a cos a`, as it is for a rocket too heavy to be lifted.
//!
//! **The spin.** `(I_t − I_a) w_1 w_2` pulls a long body along its path, either way round: a
//! rocket without any separation can look steered, and can fly tail-first.
//!
//! **The air.** `M` and `N` are those of [`Air`], strip by strip: a strip at a
//! lever ξ behind the centre of mass meets `w = V sin(a − g) + a' ξ` across it. The potential
//! terms are `½ ρ S_ref C V |cos(a − g)| g' w` with the body's share g'; the crossflow terms
//! `½ ρ c A w |w|`, so that where turning is quick, what resists it goes with its square.
//! Each side area is taken as an even strip of the same centroid and spread k². To first
//! order in a', on a level string, moments about the centre of mass resist with D a':
//!
//! ```text
//! D = ½ ρ V S_ref [ Σ C_Nα,i cos n g' ξ_i² + 2 sin n Σ c_i (A_i/S_ref) (ξ_i² + k_i²) ]
//! ```
//!
//! in N·m·s, with the angle n to the nearer end. Nose-on it is `½ ρ V S_ref Σ C_Nα,i ξ_i²`, which the
//! literature on small rockets uses (Mandell, Caporaso & Bengen, Topics in Advanced Model
//! Rocketry, 1973; from memory). A narrowing stretch of body takes away from it; slender-body
//! theory, which also counts the air that is carried along, gives `ρ V S_base ξ_base²` for
//! a whole body, so the body's sum is not taken below nothing. A is `½ ρ S_ref V² cos²(a − g)`
//! times a coefficient of one half: little, but all that calms the rising and falling of a
//! rocket which points along its path.
//!
//! **Flutter.** A light rocket on a short string can swing up and down more and more: its
//! nose follows the climbing path late and then too far, so that the lift pushes the way it
//! already goes. It then never settles, though it points along its path.
//!
//! **What is left out.** The hand goes round steadily and level, the speed is steady whatever
//! the rocket does, the air is still; the rocket meets its own wake from the turn before. The
//! string weighs nothing, resists no turning and no wind, never goes slack, and holds the
//! rocket against turning any other way. The curve of the path, which turns the wind along a
//! long rocket by at most half its length by R, is left out. The air is that of the roll
//! that decides, and `I_t` the mean of all rolls.

mod draws;
mod forces;
mod hall;
mod motion;
mod settling;
mod setup;
mod space;
mod when;

use serde::Serialize;

use crate::outcome::{Outcome, Rest, resting_angles_of};
use crate::pressure::air::Air;
use crate::report::Figures;
use forces::{DRAG_ALONG, Forces};
use motion::{Motion, State};
use settling::Well;

pub use draws::{SwingDraws, SwingVerdict};
pub use hall::{HallFit, NoHallFit};
pub use settling::{Settles, Settling, StartRange, Starts};
pub use setup::{SwingFault, SwingField, SwingProblem, SwingSetup};
pub use space::{SmallerSpace, Space, SwingLimit};
pub use when::{About, When};

/// A rocket on its string.
///
/// ```
/// use noseward_stability::{Example, Settles, Swing, SwingSetup, evaluate};
///
/// let figures = evaluate(&Example::Puffin.design()).figures.expect("no fault");
/// let swing = Swing::new(&figures, &SwingSetup::default()).expect("it can be swung");
/// let from_the_side = swing.settling(90_f64.to_radians());
/// assert_eq!(from_the_side.comes_to, Settles::NoseFirst);
/// let when = from_the_side.when.expect("it settles");
/// assert!(when.turns().value() < 5.0);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Swing {
    setup: SwingSetup,
    mass_kg: f64,
    length_m: f64,
    /// Drag area of the flight when the string comes off, in m².
    drag_m2: f64,
    forces: Forces,
    rests: Vec<Rest>,
    wells: Vec<Well>,
    outcome_in_air: Outcome,
}

/// What turns the rocket back towards nose-first.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Shares {
    /// How strongly the air turns it back at small angles, in N·m per radian. Negative
    /// where it turns it away.
    pub air_stiffness_n_m: f64,
    /// The same of the spin.
    pub spin_stiffness_n_m: f64,
    /// The work that the air does while it turns the rocket back from 90 degrees to 0, in
    /// joules.
    pub air_work_j: f64,
    /// The same of the spin.
    pub spin_work_j: f64,
    /// Share of the spin in what turns back at small angles, from 0 to 1; what turns away
    /// does not count. `None` where neither turns back.
    pub spin_share_at_small_angles: Option<f64>,
    /// Share of the spin in the work.
    pub spin_share_of_work: Option<f64>,
    /// Whether the spin does more than half at small angles.
    pub spin_does_most: bool,
    /// Whether nose-first holds on the string and would not in the air alone.
    pub spin_alone_holds: bool,
    /// Whether the string shows a better rocket than the air alone would: its outcome on
    /// the string is nearer to self-righting.
    pub string_flatters: bool,
}

/// The rocket about the string at one time.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Turning {
    /// Time in seconds.
    pub time_s: f64,
    /// Angle between nose and path in radians, positive with the nose above it: any number,
    /// for a rocket may turn over.
    pub angle_rad: f64,
    /// How fast it turns about the string, in radians a second.
    pub rate_rad_per_s: f64,
    /// How far the string is above level, in radians: the rocket rises and falls.
    pub elevation_rad: f64,
    /// How steeply the path climbs then, in radians.
    pub climb_rad: f64,
}

/// The turning against time, for drawing.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Trajectory {
    /// Samples from time 0 on, [`Trajectory::STEP_S`] apart.
    pub samples: Vec<Turning>,
    /// Half turns about the string from the first sample to the last: how often it has
    /// passed square across its path, less how often it has come back. Negative the other
    /// way round.
    pub half_turns: i32,
}

impl Trajectory {
    /// Seconds between two samples.
    pub const STEP_S: f64 = 0.01;
    /// The longest trajectory, in seconds; a longer one is cut.
    pub const LONGEST_S: f64 = 120.0;
}

impl Swing {
    /// Hangs a rocket on a string. `None` when the setup has a fault that stops it, when it
    /// is [too much](SwingSetup::limit) for this rocket, or nothing of the rocket resists
    /// turning.
    #[must_use]
    pub fn new(figures: &Figures, setup: &SwingSetup) -> Option<Self> {
        if setup.is_stopped() || setup.limit(figures.mass.mass_kg).is_some() {
            return None;
        }
        Self::hung(figures, setup)
    }

    /// The same, however fast and however hard it pulls.
    fn hung(figures: &Figures, setup: &SwingSetup) -> Option<Self> {
        let forces = Forces::new(&figures.air, &figures.mass, setup)?;
        let hung = Self {
            setup: *setup,
            mass_kg: figures.mass.mass_kg,
            length_m: figures.length_m,
            drag_m2: 0.0,
            forces: forces.clone(),
            rests: Vec::new(),
            wells: Vec::new(),
            outcome_in_air: figures.outcome,
        };
        let hung = hung.with(forces);
        let drag_m2 = least_drag_m2(&figures.air, &hung.rests);
        Some(Self { drag_m2, ..hung })
    }

    /// The same rocket under other forces.
    fn with(self, forces: Forces) -> Self {
        let rests = resting_angles_of(&|angle| forces.by_sine_n_m(angle));
        let below = resting_angles_of(&|angle| forces.by_sine_n_m(-angle));
        let wells = Well::all(&rests, &below);
        Self { forces, rests, wells, ..self }
    }

    /// The same without the spin's own pull and with the string level: what the air alone
    /// would do.
    #[must_use]
    pub fn air_alone(&self) -> Self {
        self.clone().with(self.forces.clone().held_level().without_spin())
    }

    /// The same as if turning met no more air than standing still does.
    #[must_use]
    pub fn undamped(&self) -> Self {
        self.clone().with(self.forces.clone().without_damping())
    }

    /// The same as if the string stayed level, whatever the rocket does.
    #[must_use]
    pub fn held_level(&self) -> Self {
        self.clone().with(self.forces.clone().held_level())
    }

    /// How it is swung.
    #[must_use]
    pub fn setup(&self) -> &SwingSetup {
        &self.setup
    }

    /// The air's moment at an angle, in N·m: positive turns a positive angle back to 0.
    #[must_use]
    pub fn air_moment_n_m(&self, angle_rad: f64) -> f64 {
        self.forces.air_n_m(angle_rad)
    }

    /// The spin's moment, counted the same way, in N·m.
    #[must_use]
    pub fn spin_moment_n_m(&self, angle_rad: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle_rad);
        self.forces.spin_n_m() * sin * cos
    }

    /// What resists slow turning at an angle with the string level, in N·m·s: never
    /// negative.
    #[must_use]
    pub fn damping_n_m_s(&self, angle_rad: f64) -> f64 {
        self.forces.damping_n_m_s(angle_rad)
    }

    /// The air's moment on a rocket that turns at so many radians a second, with the
    /// string level, in N·m.
    #[must_use]
    pub fn air_moment_turning_n_m(&self, angle_rad: f64, rate_rad_per_s: f64) -> f64 {
        self.forces.air_turning_n_m(angle_rad, rate_rad_per_s)
    }

    /// How far above level the string rests with the rocket held at an angle, in radians:
    /// below it where nothing lifts.
    #[must_use]
    pub fn elevation_rad(&self, angle_rad: f64) -> f64 {
        self.forces.elevation_rad(angle_rad)
    }

    /// How fast it swings about nose-on at small angles with the string level, in radians a
    /// second, damping left out; `None` where nose-on does not hold:
    ///
    /// ```text
    /// √((q S_ref C_Nα (x_CP − x_CM) + (I_t − I_a) Ω²) / I_t)
    /// ```
    #[must_use]
    pub fn frequency_rad_per_s(&self) -> Option<f64> {
        let (air, spin) = self.forces.stiffness_n_m();
        let square = (air + spin) / self.forces.across_kg_m2;
        (square > 0.0).then(|| square.sqrt())
    }

    /// Every angle at which nothing turns it on the string, air and spin together, nose
    /// first to tail first; both ends are always among them.
    #[must_use]
    pub fn resting_angles(&self) -> &[Rest] {
        &self.rests
    }

    /// What the resting angles on the string come to, in the words for the air alone.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        Outcome::of(&self.rests)
    }

    /// The room that the swing takes.
    ///
    /// [`Space::about_m`] is of the rocket lying along its path as it rests on the string,
    /// in the position that holds with the least drag.
    #[must_use]
    pub fn space(&self) -> Space {
        self.space_in(&self.setup)
    }

    fn space_in(&self, setup: &SwingSetup) -> Space {
        Space::new(setup, self.mass_kg, self.length_m, self.drag_m2)
    }

    /// A few ways to need less room, as they are told: with a shorter string, with slower
    /// turns, with both. Empty where there is none that keeps the string off the ground.
    #[must_use]
    pub fn smaller_spaces(&self) -> Vec<SmallerSpace> {
        space::smaller(&self.setup, &|setup| self.space_in(setup))
    }

    /// What turns it back towards nose-first: the air or the spin.
    #[must_use]
    pub fn shares(&self) -> Shares {
        let (air_stiffness_n_m, spin_stiffness_n_m) = self.forces.stiffness_n_m();
        let square = std::f64::consts::FRAC_PI_2;
        let air_work_j = self.forces.air_work_j(square);
        let spin_work_j = self.forces.spin_work_j(square);
        let at_small_angles = spin_share(air_stiffness_n_m, spin_stiffness_n_m);
        Shares {
            air_stiffness_n_m,
            spin_stiffness_n_m,
            air_work_j,
            spin_work_j,
            spin_share_at_small_angles: at_small_angles,
            spin_share_of_work: spin_share(air_work_j, spin_work_j),
            spin_does_most: at_small_angles.is_some_and(|share| share > 0.5),
            spin_alone_holds: self.outcome().holds_nose_first()
                && !self.outcome_in_air.holds_nose_first(),
            string_flatters: self.outcome().rank() < self.outcome_in_air.rank(),
        }
    }

    /// The turning against time, let go at an angle without turning; from an angle that
    /// does not hold, a tenth of a degree beside it.
    ///
    /// Not more than [`Trajectory::LONGEST_S`]; empty where a number is not finite or the
    /// duration is negative.
    #[must_use]
    pub fn trajectory(&self, start_angle_rad: f64, duration_s: f64) -> Trajectory {
        self.trajectory_from(self.let_go(start_angle_rad), 0.0, duration_s)
    }

    /// The same for a rocket that already turns, in radians a second.
    #[must_use]
    pub fn trajectory_from(
        &self,
        start_angle_rad: f64,
        start_rate_rad_per_s: f64,
        duration_s: f64,
    ) -> Trajectory {
        let start = self.start(start_angle_rad, start_rate_rad_per_s);
        let samples = match Motion::of(&self.forces, start) {
            Some(motion) if duration_s >= 0.0 => sampled(motion, duration_s),
            _ => Vec::new(),
        };
        // A half turn is done where the rocket lies square across its path.
        let half = |sample: Option<&Turning>| {
            sample.map_or(0.0, |s| libm::round(s.angle_rad / std::f64::consts::PI))
        };
        #[expect(clippy::cast_possible_truncation, reason = "no rocket turns that often")]
        let half_turns = (half(samples.last()) - half(samples.first())) as i32;
        Trajectory { samples, half_turns }
    }
}

/// The drag of a rocket that flies on as it rests on the string, as an area: drag by
/// dynamic pressure. Of the positions that hold, that with the least.
fn least_drag_m2(air: &Air, rests: &[Rest]) -> f64 {
    let drag = |angle_rad: f64| {
        let (sin, cos) = libm::sincos(angle_rad);
        DRAG_ALONG * cos * cos + air.normal_force(angle_rad) * sin
    };
    let held = rests.iter().filter(|rest| rest.holds).map(|rest| drag(rest.angle_rad));
    air.reference_area_m2() * held.reduce(f64::min).unwrap_or(DRAG_ALONG)
}

/// Samples of a motion at even times.
fn sampled(mut motion: Motion<'_>, duration_s: f64) -> Vec<Turning> {
    let forces = motion.forces();
    let turning = |time_s, state: State| {
        let angle_rad = forces.off_path_rad(state);
        Turning {
            time_s,
            angle_rad,
            rate_rad_per_s: state.rate_rad_per_s,
            elevation_rad: state.elevation_rad,
            climb_rad: state.angle_rad - angle_rad,
        }
    };
    let mut samples = vec![turning(0.0, motion.state())];
    // A rounding of the last bits must not lose the last sample.
    let end_s = duration_s.min(Trajectory::LONGEST_S) + 1e-9;
    for k in 1_u32.. {
        let time_s = f64::from(k) * Trajectory::STEP_S;
        if time_s > end_s {
            break;
        }
        while motion.time_s() < time_s {
            if motion.step().is_none() {
                return samples;
            }
        }
        samples.push(turning(time_s, motion.at(time_s)));
    }
    samples
}

/// Share of the spin in what turns back.
fn spin_share(air: f64, spin: f64) -> Option<f64> {
    let (air, spin) = (air.max(0.0), spin.max(0.0));
    (air + spin > 0.0).then(|| spin / (air + spin))
}

#[cfg(test)]
mod tests;
