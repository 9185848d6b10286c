//! What turns the rocket about the string: the air, the spin, and what resists.

use std::f64::consts::{FRAC_1_SQRT_2, FRAC_PI_2};

use super::SwingSetup;
use crate::design::part::Part;
use crate::masses::MassProperties;
use crate::pressure::air::Air;

/// All moments about the string, at any angle, as closed forms.
///
/// The sums of [`Air`] over its parts are taken once, about the centre of mass, so that one
/// evaluation costs one sine and one cosine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Forces {
    /// The potential terms with air from ahead and from behind.
    ahead: Potential,
    behind: Potential,
    /// The crossflow terms.
    cross: Term,
    /// `q S_ref`, in newtons.
    push_n: f64,
    /// `ρ V S_ref / 2`, in N·s/m.
    rate_n_s_per_m: f64,
    /// `(I_t − I_a) Ω²`, in N·m.
    pub(super) spin_n_m: f64,
    /// `I_t`, in kg·m².
    pub(super) inertia_kg_m2: f64,
}

/// A term of the air's moment: Σ C lever and Σ C lever².
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Term {
    first_m: f64,
    second_m2: f64,
}

#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Potential {
    body: Term,
    fins: Term,
}

impl Term {
    fn add(&mut self, slope: f64, lever_m: f64) {
        self.first_m += slope * lever_m;
        self.second_m2 += slope * lever_m * lever_m;
    }
}

/// Sine and cosine of an angle as the air sees it: `nearer` to the end it comes from.
struct Seen {
    sin: f64,
    cos: f64,
    nearer_sin: f64,
    nearer_cos: f64,
    /// The body's share, cos(a'/2).
    share: f64,
}

impl Seen {
    fn at(angle_rad: f64) -> Self {
        let (sin, cos) = libm::sincos(angle_rad);
        let nearer_cos = cos.abs();
        let share = (f64::midpoint(1.0, nearer_cos)).sqrt();
        Self { sin, cos, nearer_sin: sin.abs(), nearer_cos, share }
    }
}

impl Forces {
    /// `None` when nothing resists turning.
    pub(super) fn new(
        air: &Air,
        mass: &MassProperties,
        setup: &SwingSetup,
    ) -> Option<Self> {
        let inertia_kg_m2 = mass.transverse_inertia_kg_m2;
        if inertia_kg_m2.is_nan() || inertia_kg_m2 <= 0.0 {
            return None;
        }
        let (mut ahead, mut behind) = (Potential::default(), Potential::default());
        let mut cross = Term::default();
        let area_m2 = air.reference_area_m2();
        for part in air.parts() {
            let slope = part.slope_per_rad;
            let (front, back) = match part.part {
                Part::Fins(_) => (&mut ahead.fins, &mut behind.fins),
                Part::Section(_) | Part::Weight(_) => (&mut ahead.body, &mut behind.body),
            };
            front.add(slope, part.forward_centre_m - mass.centre_m);
            back.add(slope, part.backward_centre_m - mass.centre_m);
            let drag = part.side_drag * part.side_area_m2 / area_m2;
            cross.add(drag, part.side_centre_m - mass.centre_m);
            cross.second_m2 += drag * part.side_spread_m2;
        }
        for half in [&mut ahead, &mut behind] {
            half.body.second_m2 = half.body.second_m2.max(0.0);
        }
        let speed = setup.speed_m_per_s();
        let rate_n_s_per_m = 0.5 * setup.air_density_kg_m3 * speed * area_m2;
        let spin = setup.spin_rad_per_s();
        let spin_n_m = (inertia_kg_m2 - mass.axial_inertia_kg_m2) * spin * spin;
        let push_n = rate_n_s_per_m * speed;
        Some(Self {
            ahead,
            behind,
            cross,
            push_n,
            rate_n_s_per_m,
            spin_n_m,
            inertia_kg_m2,
        })
    }

    pub(super) fn without_spin(self) -> Self {
        Self { spin_n_m: 0.0, ..self }
    }

    pub(super) fn without_damping(self) -> Self {
        Self { rate_n_s_per_m: 0.0, ..self }
    }

    fn half(&self, seen: &Seen) -> &Potential {
        if seen.cos >= 0.0 { &self.ahead } else { &self.behind }
    }

    fn air_by_sine(&self, seen: &Seen) -> f64 {
        let half = self.half(seen);
        let potential = seen.share * half.body.first_m + half.fins.first_m;
        let cross = self.cross.first_m;
        self.push_n * (seen.nearer_cos * potential + seen.nearer_sin * cross)
    }

    /// The air's moment, in N·m: positive turns towards 0 from a positive angle.
    pub(super) fn air_n_m(&self, angle_rad: f64) -> f64 {
        let seen = Seen::at(angle_rad);
        self.air_by_sine(&seen) * seen.sin
    }

    /// Air and spin together, divided by sin a.
    pub(super) fn by_sine_n_m(&self, angle_rad: f64) -> f64 {
        let seen = Seen::at(angle_rad);
        self.air_by_sine(&seen) + self.spin_n_m * seen.cos
    }

    fn damping(&self, seen: &Seen) -> f64 {
        let half = self.half(seen);
        let potential = seen.share * half.body.second_m2 + half.fins.second_m2;
        let cross = 2.0 * self.cross.second_m2;
        self.rate_n_s_per_m * (seen.nearer_cos * potential + seen.nearer_sin * cross)
    }

    /// What resists turning, D in N·m·s. Never negative.
    pub(super) fn damping_n_m_s(&self, angle_rad: f64) -> f64 {
        self.damping(&Seen::at(angle_rad))
    }

    /// a'' in rad/s².
    pub(super) fn acceleration(&self, angle_rad: f64, rate_rad_per_s: f64) -> f64 {
        let seen = Seen::at(angle_rad);
        let back = (self.air_by_sine(&seen) + self.spin_n_m * seen.cos) * seen.sin;
        -(back + self.damping(&seen) * rate_rad_per_s) / self.inertia_kg_m2
    }

    /// Stiffness at nose-on: of the air and of the spin, in N·m per radian.
    pub(super) fn stiffness_n_m(&self) -> (f64, f64) {
        (self.air_by_sine(&Seen::at(0.0)), self.spin_n_m)
    }

    /// Work against the air from nose-on to an angle, in joules.
    pub(super) fn air_work_j(&self, angle_rad: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle_rad);
        let (sin, nearer_cos) = (sin.abs(), cos.abs());
        let nearer = libm::atan2(sin, nearer_cos);
        let c = f64::midpoint(1.0, nearer_cos).sqrt();
        // ∫ sin a cos a cos(a/2), ∫ sin a cos a, ∫ sin² a, each from 0.
        let body = |c: f64| 4.0 * (1.0 / 15.0 + c * c * c * (1.0 / 3.0 - 0.4 * c * c));
        let cross = self.cross.first_m;
        let to = |half: &Potential, a: f64, sin: f64, cos: f64, c: f64| {
            half.body.first_m * body(c)
                + half.fins.first_m * sin * sin / 2.0
                + cross * (a - sin * cos) / 2.0
        };
        let across = |half| to(half, FRAC_PI_2, 1.0, 0.0, FRAC_1_SQRT_2);
        let metres = if cos >= 0.0 {
            to(&self.ahead, nearer, sin, nearer_cos, c)
        } else {
            let behind = to(&self.behind, nearer, sin, nearer_cos, c);
            across(&self.ahead) + across(&self.behind) - behind
        };
        self.push_n * metres
    }

    /// Work against the spin from nose-on to an angle, in joules.
    pub(super) fn spin_work_j(&self, angle_rad: f64) -> f64 {
        let sin = libm::sin(angle_rad);
        self.spin_n_m * sin * sin / 2.0
    }

    /// Work against both, in joules: the valley that the rocket swings in.
    pub(super) fn work_j(&self, angle_rad: f64) -> f64 {
        self.air_work_j(angle_rad) + self.spin_work_j(angle_rad)
    }

    /// Work and the energy of turning together, in joules. Without damping it stays.
    pub(super) fn energy_j(&self, angle_rad: f64, rate_rad_per_s: f64) -> f64 {
        let turning = 0.5 * self.inertia_kg_m2 * rate_rad_per_s * rate_rad_per_s;
        turning + self.work_j(angle_rad)
    }

    /// No swing is quicker than this, in rad/s: the root of the steepest that the moment
    /// can rise, by the inertia.
    pub(super) fn quickest_rad_per_s(&self) -> f64 {
        let half = |half: &Potential| half.body.first_m.abs() + half.fins.first_m.abs();
        let air = half(&self.ahead).max(half(&self.behind)) + self.cross.first_m.abs();
        // d/da of sin a cos a and of sin² a is at most 1, of sin a cos a cos(a/2) too.
        ((self.push_n * air + self.spin_n_m.abs()) / self.inertia_kg_m2).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use super::*;
    use crate::{Design, Example, evaluate};

    fn designs() -> Vec<Design> {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        for count in [2, 3, 6] {
            let mut design = Example::Puffin.design();
            design.fins[0].count = count;
            designs.push(design);
        }
        let mut bare = Example::Tern.design();
        bare.fins.clear();
        designs.push(bare);
        designs
    }

    fn forces(design: &Design) -> Forces {
        let figures = evaluate(design).figures.unwrap();
        Forces::new(&figures.air, &figures.mass, &SwingSetup::default()).unwrap()
    }

    /// The sums about the centre of mass are the model of the air itself.
    #[test]
    fn the_moment_is_that_of_the_air() {
        for design in designs() {
            let figures = evaluate(&design).figures.unwrap();
            let setup = SwingSetup::default();
            let forces = Forces::new(&figures.air, &figures.mass, &setup).unwrap();
            let speed = setup.speed_m_per_s();
            let pressure = 0.5 * 1.225 * speed * speed;
            for k in 0..=90 {
                let angle = PI * f64::from(k) / 90.0;
                let coefficient =
                    figures.air.turning_moment_m(angle, figures.mass.centre_m);
                let expected = pressure * figures.air.reference_area_m2() * coefficient;
                let found = forces.air_n_m(angle);
                assert!((found - expected).abs() < 1e-13, "{} at {k}", design.name);
                // The other side mirrors it, and a whole turn changes nothing.
                assert!((forces.air_n_m(-angle) + expected).abs() < 1e-13);
                assert!((forces.air_n_m(angle + 2.0 * PI) - expected).abs() < 1e-13);
            }
        }
    }

    /// Work is the sum of the moment over small steps (midpoints).
    #[test]
    fn work_is_the_moment_added_up() {
        for design in designs() {
            let forces = forces(&design);
            let steps = 18_000;
            let step = PI / f64::from(steps);
            let mut sum = 0.0;
            for k in 0..steps {
                let angle = step * (f64::from(k) + 0.5);
                sum += step * forces.by_sine_n_m(angle) * libm::sin(angle);
                if k % 1000 == 999 {
                    let found = forces.work_j(angle + step / 2.0);
                    assert!((found - sum).abs() < 1e-8, "{} at {angle}", design.name);
                }
            }
        }
    }

    #[test]
    fn nothing_jumps_and_damping_is_never_negative() {
        for design in designs() {
            let forces = forces(&design);
            let mut last = forces.damping_n_m_s(0.0);
            for k in 0..=1800 {
                let angle = PI * f64::from(k) / 1800.0;
                let here = forces.damping_n_m_s(angle);
                assert!(here >= 0.0 && (here - last).abs() < 2e-5, "{here} at {k}");
                last = here;
            }
        }
    }

    #[test]
    fn no_moment_rises_faster_than_the_bound() {
        for design in designs() {
            let forces = forces(&design);
            let bound = forces.quickest_rad_per_s();
            for k in 0..360 {
                let angle = PI * f64::from(k) / 180.0;
                let rise = (forces.acceleration(angle + 1e-6, 0.0)
                    - forces.acceleration(angle, 0.0))
                    / 1e-6;
                assert!(rise.abs() < bound * bound * (1.0 + 1e-6));
            }
        }
    }
}
