//! What moves the rocket on its string: the air, the spin, gravity, and what resists.

use std::f64::consts::{FRAC_1_SQRT_2, FRAC_PI_2};

use super::SwingSetup;
use super::motion::State;
use super::setup::GRAVITY_M_S2;
use crate::design::component::Component;
use crate::masses::MassProperties;
use crate::outcome::bisected;
use crate::pressure::air::Air;

/// Drag coefficient along the axis, on the body's largest cross-section. Our judgement,
/// between a hemisphere's 0.34 and a blunt cylinder's 0.85 to 0.99 along the flow (C.
/// Matthews, Aeronautical Engineer's Data Book, fig. 5.13).
pub(super) const DRAG_ALONG: f64 = 0.5;

/// The forces on a rocket that turns about its string while it rises and falls.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Forces {
    /// The potential terms with air from ahead and from behind.
    ahead: Potential,
    behind: Potential,
    /// The crossflow terms, strip by strip.
    strips: Vec<Strip>,
    /// Drag along the axis, as an area.
    along_m2: f64,
    /// `ρ/2`, in kg/m³.
    half_density_kg_m3: f64,
    pub(super) mass_kg: f64,
    /// `I_t` and `I_a`, in kg·m².
    pub(super) across_kg_m2: f64,
    along_kg_m2: f64,
    /// Ω, in radians a second.
    spin_rad_per_s: f64,
    arm_m: f64,
    string_m: f64,
    gravity_m_s2: f64,
    /// Whether the rocket may rise and fall; else the string stays level.
    rises: bool,
    /// Whether anything resists the turning.
    is_damped: bool,
}

/// A term of the air: Σ C S, Σ C S lever and Σ C S lever².
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Term {
    area_m2: f64,
    first_m3: f64,
    second_m4: f64,
}

#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Potential {
    body: Term,
    fins: Term,
}

/// A stretch of side area that the air crosses, as an even strip of the same centroid and
/// the same spread.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Strip {
    is_fin: bool,
    /// Drag coefficient times area.
    drag_m2: f64,
    /// Its centroid behind the centre of mass.
    lever_m: f64,
    /// How far it reaches to either side.
    half_m: f64,
}

/// What the air does: its force across the rocket, and its moment, positive where it turns
/// the nose down.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Push {
    force_n: f64,
    moment_n_m: f64,
}

impl Term {
    fn add(&mut self, area_m2: f64, lever_m: f64) {
        self.area_m2 += area_m2;
        self.first_m3 += area_m2 * lever_m;
        self.second_m4 += area_m2 * lever_m * lever_m;
    }

    /// Force and moment in a crosswind, of a rocket that turns.
    fn in_wind(&self, across: f64, rate: f64) -> Push {
        Push {
            force_n: self.area_m2 * across + self.first_m3 * rate,
            moment_n_m: self.first_m3 * across + self.second_m4 * rate,
        }
    }
}

impl Strip {
    fn second_m4(&self) -> f64 {
        self.drag_m2 * (self.lever_m * self.lever_m + self.half_m * self.half_m / 3.0)
    }

    /// `∫ w |w| dξ` and `∫ ξ w |w| dξ` of the local crosswind `w = across + rate ξ`, by the
    /// strip's length.
    fn in_wind(&self, across: f64, rate: f64) -> Push {
        let Self { drag_m2, lever_m: x, half_m: h, .. } = *self;
        let (least, most) = (across + rate * (x - h), across + rate * (x + h));
        // As if w² kept the sign that it has at the far end.
        let (p, r, k2) = (across, rate, h * h / 3.0);
        let x2 = x * x + k2;
        let mut force = p * p + 2.0 * p * r * x + r * r * x2;
        let mut moment = p * p * x + 2.0 * p * r * x2 + r * r * x * (x * x + 3.0 * k2);
        if least * most < 0.0 {
            // Up to where the wind turns, the sign is the other one.
            let turn = -p / r;
            let before = turn - (x - h);
            let square = r * r * before * before * before / (2.0 * h);
            force -= 2.0 * square / 3.0;
            moment -= 2.0 * square * (turn / 3.0 - before / 4.0);
        }
        let push = drag_m2.copysign(if least * most < 0.0 { most } else { least + most });
        Push { force_n: push * force, moment_n_m: push * moment }
    }
}

impl Forces {
    /// `None` when nothing resists turning.
    pub(super) fn new(
        air: &Air,
        mass: &MassProperties,
        setup: &SwingSetup,
    ) -> Option<Self> {
        let across_kg_m2 = mass.transverse_inertia_kg_m2;
        let real = |value: f64| value.is_finite() && value > 0.0;
        if !real(across_kg_m2) || !real(mass.mass_kg) {
            return None;
        }
        let (mut ahead, mut behind) = (Potential::default(), Potential::default());
        let mut strips = Vec::new();
        for part in air.parts() {
            let area_m2 = part.slope_per_rad * air.reference_area_m2();
            let (front, back) = match part.part {
                Component::Fins(_) => (&mut ahead.fins, &mut behind.fins),
                Component::Section(_) | Component::Weight(_) => {
                    (&mut ahead.body, &mut behind.body)
                }
            };
            front.add(area_m2, part.forward_centre_m - mass.centre_m);
            back.add(area_m2, part.backward_centre_m - mass.centre_m);
            strips.push(Strip {
                is_fin: matches!(part.part, Component::Fins(_)),
                drag_m2: part.side_drag * part.side_area_m2,
                lever_m: part.side_centre_m - mass.centre_m,
                half_m: (3.0 * part.side_spread_m2).sqrt(),
            });
        }
        strips.retain(|strip| strip.drag_m2 > 0.0);
        for half in [&mut ahead, &mut behind] {
            half.body.second_m4 = half.body.second_m4.max(0.0);
        }
        Some(Self {
            ahead,
            behind,
            strips,
            along_m2: DRAG_ALONG * air.reference_area_m2(),
            half_density_kg_m3: 0.5 * setup.air_density_kg_m3,
            mass_kg: mass.mass_kg,
            across_kg_m2,
            along_kg_m2: mass.axial_inertia_kg_m2,
            spin_rad_per_s: setup.spin_rad_per_s(),
            arm_m: setup.arm_m,
            string_m: setup.string_m,
            gravity_m_s2: GRAVITY_M_S2,
            rises: true,
            is_damped: true,
        })
    }

    /// With the drag square to the wind of body and fins so many times as much.
    pub(super) fn with_drag(mut self, body: f64, fins: f64) -> Self {
        for strip in &mut self.strips {
            strip.drag_m2 *= if strip.is_fin { fins } else { body };
        }
        self
    }

    /// As if the spin had no pull of its own: as on a body that resists turning the same
    /// about every axis.
    pub(super) fn without_spin(self) -> Self {
        Self { along_kg_m2: self.across_kg_m2, ..self }
    }

    pub(super) fn without_damping(self) -> Self {
        Self { is_damped: false, ..self }
    }

    /// As if the string stayed level whatever the rocket does.
    pub(super) fn held_level(self) -> Self {
        Self { rises: false, ..self }
    }

    /// Radius of the circle with the string at this elevation, in metres.
    fn radius_m(&self, elevation_rad: f64) -> f64 {
        self.arm_m + self.string_m * libm::cos(elevation_rad)
    }

    /// The angle between nose and path, in radians: above it where positive. The path
    /// climbs and falls with the rocket.
    pub(super) fn off_path_rad(&self, state: State) -> f64 {
        let ahead = self.spin_rad_per_s * self.radius_m(state.elevation_rad);
        state.angle_rad - libm::atan2(self.string_m * state.rising_rad_per_s, ahead)
    }

    /// What the air does to a rocket that meets it `along` and `across` its axis, in m/s,
    /// and turns, its nose upwards, in radians a second.
    fn push(&self, along: f64, across: f64, rate: f64) -> Push {
        let rate = if self.is_damped { rate } else { 0.0 };
        let speed = (along * along + across * across).sqrt();
        // The body's share, cos(a'/2) of the angle a' to the nearer end.
        let cos = if speed > 0.0 { along.abs() / speed } else { 1.0 };
        let share = f64::midpoint(1.0, cos).sqrt();
        let half = if along >= 0.0 { &self.ahead } else { &self.behind };
        let body = half.body.in_wind(across, rate);
        let fins = half.fins.in_wind(across, rate);
        let along = along.abs();
        let mut push = Push {
            force_n: along * (share * body.force_n + fins.force_n),
            moment_n_m: along * (share * body.moment_n_m + fins.moment_n_m),
        };
        for strip in &self.strips {
            let more = strip.in_wind(across, rate);
            push.force_n += more.force_n;
            push.moment_n_m += more.moment_n_m;
        }
        Push {
            force_n: self.half_density_kg_m3 * push.force_n,
            moment_n_m: self.half_density_kg_m3 * push.moment_n_m,
        }
    }

    /// The air on a rocket at an angle on a level circle with the string at this elevation.
    fn steady(&self, angle_rad: f64, elevation_rad: f64, rate: f64) -> Push {
        let speed = self.spin_rad_per_s * self.radius_m(elevation_rad);
        let (sin, cos) = libm::sincos(angle_rad);
        self.push(speed * cos, speed * sin, rate)
    }

    /// The air's moment with the string level, in N·m: positive turns towards 0 from a
    /// positive angle.
    pub(super) fn air_n_m(&self, angle_rad: f64) -> f64 {
        self.steady(angle_rad, 0.0, 0.0).moment_n_m
    }

    /// The same of a rocket that turns.
    pub(super) fn air_turning_n_m(&self, angle_rad: f64, rate_rad_per_s: f64) -> f64 {
        self.steady(angle_rad, 0.0, rate_rad_per_s).moment_n_m
    }

    /// `(I_t − I_a) Ω²`, in N·m.
    pub(super) fn spin_n_m(&self) -> f64 {
        let spin = self.spin_rad_per_s;
        (self.across_kg_m2 - self.along_kg_m2) * spin * spin
    }

    /// `a''` and `b''`, in rad/s².
    pub(super) fn accelerations(&self, state: State) -> (f64, f64) {
        let State { angle_rad, rate_rad_per_s: rate, elevation_rad, .. } = state;
        let (sin, cos) = libm::sincos(angle_rad);
        let (up, level) = libm::sincos(elevation_rad);
        let (spin, rising) = (self.spin_rad_per_s, state.rising_rad_per_s);
        let (across, along) = (self.across_kg_m2, self.along_kg_m2);
        let radius = self.arm_m + self.string_m * level;
        // The wind along the path and downwards on the rocket, then along and across it.
        let (ahead, down) = (spin * radius, self.string_m * rising);
        let (along_wind, across_wind) =
            (ahead * cos + down * sin, ahead * sin - down * cos);
        let push = self.push(along_wind, across_wind, rate);
        // The body's own turning, but for that about the string.
        let about_axis = spin * level * sin - rising * cos;
        let about_side = spin * level * cos + rising * sin;
        let turning = -(push.moment_n_m + (across - along) * about_axis * about_side)
            / across
            - spin * level * rising;
        if !self.rises {
            return (turning, 0.0);
        }
        let mass = self.mass_kg;
        let drag_n =
            self.half_density_kg_m3 * self.along_m2 * along_wind * along_wind.abs();
        let lift = self.string_m
            * (push.force_n * cos
                - drag_n * sin
                - mass * (self.gravity_m_s2 * level + spin * spin * radius * up));
        let more = across - along;
        let wobble = spin * level * (spin * up * more * sin * sin)
            + spin * level * rate * (across - more * (cos * cos - sin * sin))
            - 2.0 * more * sin * cos * rate * rising;
        let inertia =
            mass * self.string_m * self.string_m + along * cos * cos + across * sin * sin;
        (turning, (lift + wobble) / inertia)
    }

    /// Where the string comes to rest with the rocket held at an angle, in radians above
    /// level.
    pub(super) fn elevation_rad(&self, angle_rad: f64) -> f64 {
        if !self.rises {
            return 0.0;
        }
        let still = |elevation_rad| State::of([angle_rad, 0.0, elevation_rad, 0.0]);
        // It falls from straight up and, if it leaves it at all, rises from straight down.
        let mut rises = |elevation_rad| self.accelerations(still(elevation_rad)).1;
        if rises(0.0) == 0.0 {
            return 0.0;
        }
        bisected(&mut rises, -FRAC_PI_2, FRAC_PI_2)
    }

    /// Air and spin together, divided by sin a, with the string where it then rests.
    pub(super) fn by_sine_n_m(&self, angle_rad: f64) -> f64 {
        self.by_sine_at_n_m(angle_rad, self.elevation_rad(angle_rad))
    }

    /// The same with the string within a thousandth of a radian of there: for many draws.
    pub(super) fn roughly_by_sine_n_m(&self, angle_rad: f64) -> f64 {
        let (mut low, mut high) = (-FRAC_PI_2, FRAC_PI_2);
        for _ in 0..12 {
            let middle = f64::midpoint(low, high);
            let still = State::of([angle_rad, 0.0, middle, 0.0]);
            let rises = self.accelerations(still).1 > 0.0;
            *(if rises { &mut low } else { &mut high }) = middle;
        }
        self.by_sine_at_n_m(angle_rad, f64::midpoint(low, high))
    }

    fn by_sine_at_n_m(&self, angle_rad: f64, elevation_rad: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle_rad);
        let level = libm::cos(elevation_rad);
        // At the ends, what it tends to.
        const NEAR: f64 = 1e-9;
        let by_sine = if sin.abs() < NEAR {
            let speed = self.spin_rad_per_s * self.radius_m(elevation_rad);
            let half = if cos >= 0.0 { &self.ahead } else { &self.behind };
            let first = half.body.first_m3 + half.fins.first_m3;
            self.half_density_kg_m3 * speed * speed * first
        } else {
            self.steady(angle_rad, elevation_rad, 0.0).moment_n_m / sin
        };
        by_sine + self.spin_n_m() * level * level * cos
    }

    /// What resists slow turning with the string level, D in N·m·s. Never negative.
    pub(super) fn damping_n_m_s(&self, angle_rad: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle_rad);
        let (sin, nearer) = (sin.abs(), cos.abs());
        let share = f64::midpoint(1.0, nearer).sqrt();
        let half = if cos >= 0.0 { &self.ahead } else { &self.behind };
        let potential = share * half.body.second_m4 + half.fins.second_m4;
        let cross: f64 = self.strips.iter().map(Strip::second_m4).sum();
        let speed = self.spin_rad_per_s * self.radius_m(0.0);
        self.half_density_kg_m3 * speed * (nearer * potential + 2.0 * sin * cross)
    }

    /// Stiffness at nose-on with the string level: of the air and of the spin, in N·m per
    /// radian.
    pub(super) fn stiffness_n_m(&self) -> (f64, f64) {
        let first = self.ahead.body.first_m3 + self.ahead.fins.first_m3;
        (self.pressure_pa() * first, self.spin_n_m())
    }

    /// Dynamic pressure on the level circle, in pascals.
    fn pressure_pa(&self) -> f64 {
        let speed = self.spin_rad_per_s * self.radius_m(0.0);
        self.half_density_kg_m3 * speed * speed
    }

    /// Work against the air from nose-on to an angle with the string level, in joules.
    pub(super) fn air_work_j(&self, angle_rad: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle_rad);
        let (sin, nearer_cos) = (sin.abs(), cos.abs());
        let nearer = libm::atan2(sin, nearer_cos);
        let c = f64::midpoint(1.0, nearer_cos).sqrt();
        // ∫ sin a cos a cos(a/2), ∫ sin a cos a, ∫ sin² a, each from 0.
        let body = |c: f64| 4.0 * (1.0 / 15.0 + c * c * c * (1.0 / 3.0 - 0.4 * c * c));
        let cross: f64 = self.strips.iter().map(|s| s.drag_m2 * s.lever_m).sum();
        let to = |half: &Potential, a: f64, sin: f64, cos: f64, c: f64| {
            half.body.first_m3 * body(c)
                + half.fins.first_m3 * sin * sin / 2.0
                + cross * (a - sin * cos) / 2.0
        };
        let across = |half| to(half, FRAC_PI_2, 1.0, 0.0, FRAC_1_SQRT_2);
        let volume = if cos >= 0.0 {
            to(&self.ahead, nearer, sin, nearer_cos, c)
        } else {
            let behind = to(&self.behind, nearer, sin, nearer_cos, c);
            across(&self.ahead) + across(&self.behind) - behind
        };
        self.pressure_pa() * volume
    }

    /// Work against the spin from nose-on to an angle with the string level, in joules.
    pub(super) fn spin_work_j(&self, angle_rad: f64) -> f64 {
        let sin = libm::sin(angle_rad);
        self.spin_n_m() * sin * sin / 2.0
    }

    /// Energy in the turning frame, in joules: what neither spin nor gravity changes. The
    /// air is not in it.
    #[cfg(test)]
    pub(super) fn energy_j(&self, state: State) -> f64 {
        let (sin, cos) = libm::sincos(state.angle_rad);
        let (up, level) = libm::sincos(state.elevation_rad);
        let (across, along) = (self.across_kg_m2, self.along_kg_m2);
        let (rate, rising) = (state.rate_rad_per_s, state.rising_rad_per_s);
        let (mass, spin) = (self.mass_kg, self.spin_rad_per_s);
        let radius = self.radius_m(state.elevation_rad);
        let inertia =
            mass * self.string_m * self.string_m + along * cos * cos + across * sin * sin;
        let about_upright = mass * radius * radius
            + level * level * (along * sin * sin + across * cos * cos)
            + across * up * up;
        0.5 * (inertia * rising * rising + across * rate * rate
            - spin * spin * about_upright)
            + mass * self.gravity_m_s2 * self.string_m * up
    }

    #[cfg(test)]
    pub(super) fn in_no_air(self) -> Self {
        Self { half_density_kg_m3: 0.0, ..self }
    }

    /// So many times as heavy, and no harder to turn.
    #[cfg(test)]
    pub(super) fn heavier(self, times: f64) -> Self {
        Self { mass_kg: self.mass_kg * times, ..self }
    }

    #[cfg(test)]
    pub(super) fn without_gravity(self) -> Self {
        Self { gravity_m_s2: 0.0, ..self }
    }

    /// No swing is quicker than this, in rad/s: the root of the steepest that the moment on
    /// the level circle can rise, by the inertia.
    pub(super) fn quickest_rad_per_s(&self) -> f64 {
        let half = |half: &Potential| half.body.first_m3.abs() + half.fins.first_m3.abs();
        let cross: f64 = self.strips.iter().map(|s| s.drag_m2 * s.lever_m).sum();
        let air = half(&self.ahead).max(half(&self.behind)) + cross.abs();
        // d/da of sin a cos a and of sin² a is at most 1, of sin a cos a cos(a/2) too.
        let steepest = self.pressure_pa() * air + self.spin_n_m().abs();
        (steepest / self.across_kg_m2).sqrt()
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
    fn moment_and_lift_are_those_of_the_air() {
        for design in designs() {
            let figures = evaluate(&design).figures.unwrap();
            let setup = SwingSetup::default();
            let forces = Forces::new(&figures.air, &figures.mass, &setup).unwrap();
            let speed = setup.speed_m_per_s();
            let push = 0.5 * 1.225 * speed * speed * figures.air.reference_area_m2();
            for k in 0..=90 {
                let angle = PI * f64::from(k) / 90.0;
                let coefficient =
                    figures.air.turning_moment_m(angle, figures.mass.centre_m);
                let expected = push * coefficient;
                let found = forces.air_n_m(angle);
                assert!((found - expected).abs() < 1e-13, "{} at {k}", design.name);
                let lift = forces.steady(angle, 0.0, 0.0).force_n;
                let expected_n = push * figures.air.normal_force(angle);
                assert!((lift - expected_n).abs() < 1e-12, "{} at {k}", design.name);
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
            let forces = forces(&design).held_level();
            let steps = 18_000;
            let step = PI / f64::from(steps);
            let mut sum = 0.0;
            for k in 0..steps {
                let angle = step * (f64::from(k) + 0.5);
                sum += step * forces.by_sine_n_m(angle) * libm::sin(angle);
                if k % 1000 == 999 {
                    let end = angle + step / 2.0;
                    let found = forces.air_work_j(end) + forces.spin_work_j(end);
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

    /// Slow turning is resisted by D a'.
    #[test]
    fn slow_turning_is_resisted_in_proportion() {
        for design in designs() {
            let forces = forces(&design);
            for k in 1..18 {
                let angle = PI * f64::from(k) / 18.0;
                let moment = |rate| forces.air_turning_n_m(angle, rate);
                let slope = (moment(1e-4) - moment(-1e-4)) / 2e-4;
                let expected = forces.damping_n_m_s(angle);
                assert!((slope / expected - 1.0).abs() < 1e-7, "{}: {k}", design.name);
            }
        }
    }

    /// Turned fast in no wind along it, a strip is resisted by the square of the rate: by
    /// hand for one about its own middle, `c A ρ/2 · 2 ∫₀ʰ r² ξ³ dξ / 2h = c A ρ/2 · r² h³/4`.
    #[test]
    fn fast_turning_is_resisted_by_its_square() {
        let strip = Strip { drag_m2: 0.7, half_m: 0.2, ..Strip::default() };
        let by_hand = 0.7 * 9.0 * 0.008 / 4.0;
        assert!((strip.in_wind(0.0, 3.0).moment_n_m - by_hand).abs() < 1e-15);
        assert!((strip.in_wind(0.0, -3.0).moment_n_m + by_hand).abs() < 1e-15);
        for design in designs() {
            let forces = forces(&design);
            let moment = |rate| forces.push(0.0, 0.0, rate).moment_n_m;
            assert!((moment(20.0) / moment(10.0) - 4.0).abs() < 1e-9, "{}", design.name);
        }
    }

    /// Strips against sums of many short ones, whichever way the wind turns along them.
    #[test]
    fn a_strip_is_its_pieces_added_up() {
        for lever_m in [-0.15, 0.0, 0.08, 0.4] {
            for across in [-6.0, -0.7, 0.0, 0.4, 9.0] {
                for rate in [-40.0, -3.0, 0.0, 2.0, 25.0] {
                    let strip =
                        Strip { drag_m2: 0.02, lever_m, half_m: 0.1, is_fin: true };
                    let found = strip.in_wind(across, rate);
                    let pieces = 20_000;
                    let (mut force, mut moment) = (0.0, 0.0);
                    for k in 0..pieces {
                        let share = (f64::from(k) + 0.5) / f64::from(pieces);
                        let at = lever_m - 0.1 + 0.2 * share;
                        let wind: f64 = across + rate * at;
                        let piece = 0.02 * wind * wind.abs() / f64::from(pieces);
                        force += piece;
                        moment += piece * at;
                    }
                    let off = (found.force_n - force).abs();
                    assert!(off < 1e-8, "{lever_m} {across} {rate}: {off:e}");
                    let off = (found.moment_n_m - moment).abs();
                    assert!(off < 1e-8, "{lever_m} {across} {rate}: {off:e}");
                }
            }
        }
        // Where the wind just stops at one end.
        let strip = Strip { drag_m2: 1.0, half_m: 1.0, ..Strip::default() };
        assert!(strip.in_wind(-2.0, 2.0).force_n < 0.0);
        assert!(strip.in_wind(2.0, -2.0).force_n > 0.0);
    }

    #[test]
    fn no_moment_rises_faster_than_the_bound() {
        for design in designs() {
            let forces = forces(&design).held_level();
            let bound = forces.quickest_rad_per_s();
            let acceleration = |angle_rad| {
                let still = State::of([angle_rad, 0.0, 0.0, 0.0]);
                forces.accelerations(still).0
            };
            for k in 0..360 {
                let angle = PI * f64::from(k) / 180.0;
                let rise = (acceleration(angle + 1e-6) - acceleration(angle)) / 1e-6;
                assert!(rise.abs() < bound * bound * (1.0 + 1e-6));
            }
        }
    }
}
