//! The rocket swung round on a string.
//!
//! It hangs at its centre of mass on a string of which the other end goes round, so that it
//! flies a circle of radius R (string plus arm) at the speed V = Ω R, and is free to turn
//! about the string. With `a` the angle between nose and path, and the string level:
//!
//! ```text
//! I_t a'' = −M_air(a) − D(a) a' − (I_t − I_a) Ω² sin a cos a
//! ```
//!
//! **The spin.** The rocket takes part in the turn Ω about the upright. Of that, Ω sin a is
//! about its own axis and Ω cos a across it, so its energy of turning is
//!
//! ```text
//! T = ½ I_t a'² + ½ Ω² (I_a sin² a + I_t cos² a)
//! ```
//!
//! and Lagrange's equation gives the last term. It pulls a long body along its path, either
//! way round: a rocket without any separation can look steered, and can fly tail-first.
//!
//! **The air.** `M_air` is the moment of [`Air`](crate::Air) on q = ρ V²/2. D is our
//! derivation from strips, as its levers suggest: at a lever ξ behind the centre of mass,
//! turning at a' changes the wind across the rocket from V sin a to V sin a + a' ξ. The
//! potential term is `½ ρ S_ref C V cos a g` times that wind, the crossflow term `½ ρ c A`
//! times its square. To first order in a', moments about the centre of mass:
//!
//! ```text
//! D = ½ ρ V S_ref [ Σ C_Nα,i cos a' g ξ_i² + 2 sin a' Σ c_i (A_i/S_ref) (ξ_i² + k_i²) ]
//! ```
//!
//! in N·m·s, with the nearer angle a', the share g and the centres of [`Air`](crate::Air),
//! and k² the spread of the side area. Nose-on it is `½ ρ V S_ref Σ C_Nα,i ξ_i²`, which the
//! literature on small rockets uses (Mandell, Caporaso & Bengen, Topics in Advanced Model
//! Rocketry, 1973; from memory). A narrowing stretch of body takes away from it; slender-body
//! theory, which also counts the air that is carried along, gives `ρ V S_base ξ_base²` for
//! a whole body, so the body's sum is not taken below nothing.
//!
//! **What is left out.** The string is taken as level (`SwingSetup::below_level_rad` says
//! how far it is not), the speed as steady whatever the rocket does, the air as still; the
//! rocket meets its own wake from the turn before. The string itself resists no turning, and
//! holds the rocket against turning any other way. The wind along the string that a long
//! rocket meets on a curved path, at most half its length by R of V, is left out. With two
//! fins, the air is that of the weaker plane and `I_t` the mean of both.

mod forces;
mod motion;
mod settling;
mod setup;
mod space;
mod when;

use serde::Serialize;

use crate::outcome::{Outcome, Rest, resting_angles_of};
use crate::pressure::air::Air;
use crate::report::Figures;
use forces::Forces;
use motion::{Motion, State};
use settling::Well;

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
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Turning {
    /// Time in seconds.
    pub time_s: f64,
    /// Angle between nose and path in radians: any number, for a rocket may turn over.
    pub angle_rad: f64,
    /// How fast it turns, in radians a second.
    pub rate_rad_per_s: f64,
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

/// Drag coefficient along the axis, on the body's largest cross-section. Our judgement,
/// between a hemisphere's 0.34 and a blunt cylinder's 0.85 to 0.99 along the flow (C.
/// Matthews, Aeronautical Engineer's Data Book, fig. 5.13).
const DRAG_ALONG: f64 = 0.5;

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
            forces,
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
        let wells = Well::all(&rests, &forces);
        Self { forces, rests, wells, ..self }
    }

    /// The same without the spin's own term: what the air alone would do.
    #[must_use]
    pub fn air_alone(&self) -> Self {
        self.clone().with(self.forces.without_spin())
    }

    /// The same as if nothing resisted the turning. It never settles.
    #[must_use]
    pub fn undamped(&self) -> Self {
        self.clone().with(self.forces.without_damping())
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
        self.forces.spin_n_m * sin * cos
    }

    /// What resists turning at an angle, in N·m·s: never negative.
    #[must_use]
    pub fn damping_n_m_s(&self, angle_rad: f64) -> f64 {
        self.forces.damping_n_m_s(angle_rad)
    }

    /// Energy of turning about the string plus the work against air and spin from
    /// nose-on, in joules. Damping only takes it away.
    #[must_use]
    pub fn energy_j(&self, angle_rad: f64, rate_rad_per_s: f64) -> f64 {
        self.forces.energy_j(angle_rad, rate_rad_per_s)
    }

    /// How fast it swings about nose-on at small angles, in radians a second, damping left
    /// out; `None` where nose-on does not hold:
    ///
    /// ```text
    /// √((q S_ref C_Nα (x_CP − x_CM) + (I_t − I_a) Ω²) / I_t)
    /// ```
    #[must_use]
    pub fn frequency_rad_per_s(&self) -> Option<f64> {
        let (air, spin) = self.forces.stiffness_n_m();
        let square = (air + spin) / self.forces.inertia_kg_m2;
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
        let start =
            State { angle_rad: start_angle_rad, rate_rad_per_s: start_rate_rad_per_s };
        let samples = match Motion::new(&self.forces, start) {
            Some(motion) if duration_s >= 0.0 => sampled(motion, start, duration_s),
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
fn sampled(mut motion: Motion<'_>, start: State, duration_s: f64) -> Vec<Turning> {
    let turning = |time_s, state: State| Turning {
        time_s,
        angle_rad: state.angle_rad,
        rate_rad_per_s: state.rate_rad_per_s,
    };
    let mut samples = vec![turning(0.0, start)];
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
