//! Air from any side: one model with the nose-on and the side-on centre as its limits.
//!
//! Each part carries a potential term and a crossflow term (Allen & Perkins 1951, NACA
//! Report 1048; Jorgensen 1973, NASA TN D-6996; both from memory. A general
//! aircraft-analysis library has the same crossflow term after Jorgensen, TR R-474, and the
//! same slender body at small angles; nothing we could read confirms g). With a' the angle
//! to the nearer end, the normal force on `q S_ref` is
//!
//! ```text
//! N_i = C_Nα,i sin a' cos a' g + c_i (A_i / S_ref) sin² a',   g = cos(a'/2) for the body
//!                                                             g = 1 for the fins
//! ```
//!
//! The first acts at the nose-on centre of the part, the second at the centroid of the
//! side area `A_i`. With air from behind (a > 90°) the body's first term acts at the mirror
//! image of its centre in the middle of the body, which is Jorgensen's second branch for a
//! body with a flat base, and that of the fins at three quarters of their chord.

use std::f64::consts::{FRAC_PI_2, PI};

use super::crossflow::Crossflow;
use super::fin_sets::{Crowd, crowds};
use super::model::{Model, Wake};
use super::nose_on;
use super::rolls::Turned;
use crate::design::Design;
use crate::design::component::Component;
use crate::outcome::{Outcome, Rest, resting_angles};
use crate::outline::Body;
use crate::outline::fin::{Fin, Strips};
use crate::outline::side_view::SideView;

/// The air's push on one part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirPart {
    /// Which part.
    pub part: Component,
    /// Normal-force slope `C_Nα` on the body's largest cross-section, per radian.
    pub slope_per_rad: f64,
    /// Where that acts with air from ahead, in metres from the nose tip.
    pub forward_centre_m: f64,
    /// Where it acts with air from behind.
    pub backward_centre_m: f64,
    /// Area seen from the side that no other part covers, in m².
    pub side_area_m2: f64,
    /// Its centroid, in metres from the nose tip.
    pub side_centre_m: f64,
    /// How far it spreads along the axis: mean square distance from its centroid, in m².
    /// For fins that of one fin, whole.
    pub side_spread_m2: f64,
    /// Drag coefficient square to the wind, on that area.
    pub side_drag: f64,
}

/// The air's push on a rocket from any side, in one plane.
#[derive(Clone, Debug, PartialEq)]
pub struct Air {
    parts: Vec<AirPart>,
    reference_area_m2: f64,
    sums: Sums,
}

/// The parts added up, so that a search over many angles asks each part once.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Sums {
    body_ahead: Load,
    body_behind: Load,
    fins_ahead: Load,
    fins_behind: Load,
    across: Load,
}

impl Sums {
    fn of(parts: &[AirPart], reference_area_m2: f64) -> Self {
        let mut sums = Self::default();
        for part in parts {
            let slope = part.slope_per_rad;
            let (ahead, behind) = match part.part {
                Component::Fins(_) => (&mut sums.fins_ahead, &mut sums.fins_behind),
                Component::Section(_) | Component::Weight(_) => {
                    (&mut sums.body_ahead, &mut sums.body_behind)
                }
            };
            ahead.add(slope, part.forward_centre_m);
            behind.add(slope, part.backward_centre_m);
            let drag = part.side_drag * part.side_area_m2 / reference_area_m2;
            sums.across.add(drag, part.side_centre_m);
        }
        sums
    }
}

impl Load {
    fn add(&mut self, force: f64, at_m: f64) {
        self.force += force;
        self.first += force * at_m;
    }
}

/// The air on a rocket that is turned about its axis in some way.
#[derive(Clone, Debug)]
pub(crate) struct Plane {
    /// By how much it is turned out of the view of the drawing, in degrees.
    pub(crate) roll_deg: f64,
    /// The air in that plane.
    pub(crate) air: Air,
    /// The centre of pressure side-on: the centroid of the side view.
    pub(crate) side_on_m: f64,
}

impl Plane {
    /// The same with all of the air so much further back.
    pub(crate) fn moved(self, by_m: f64) -> Self {
        let (air, side_on_m) = (self.air.moved(by_m), self.side_on_m + by_m);
        Self { air, side_on_m, ..self }
    }
}

/// A force and its first moment about the nose tip, both on `q S_ref` sin a.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Load {
    force: f64,
    first: f64,
}

/// What is the same in every roll: the air on the body alone, and each set's fins.
#[derive(Clone, Debug)]
pub(crate) struct Unrolled {
    body: Vec<AirPart>,
    fins: Vec<UnrolledFins>,
    model: Model,
    drag: Crossflow,
    reference_area_m2: f64,
}

/// One fin of a set, and how crowded the set is.
#[derive(Clone, Copy, Debug)]
struct UnrolledFins {
    start_m: f64,
    count: u32,
    /// What lies outside the body.
    strips: Option<Strips>,
    /// Its centroid, behind the front of the root.
    along_m: f64,
    spread_m2: f64,
    crowd: Crowd,
}

impl UnrolledFins {
    /// Of every set, on a body with `chain_m` as one side of its outline.
    fn all(design: &Design, body: &Body, chain_m: &[(f64, f64)]) -> Vec<Self> {
        let sets = design.fins.iter().zip(crowds(design));
        sets.map(|(set, crowd)| {
            let start_m = set.start_mm / 1000.0;
            let fin = Fin::new(&set.planform);
            let along_m = fin.centroid_m().0;
            Self {
                start_m,
                count: set.count,
                strips: fin.strips_outside(body, chain_m, start_m),
                along_m,
                spread_m2: fin.second_moments_m2().along2 - along_m * along_m,
                crowd,
            }
        })
        .collect()
    }
}

impl Unrolled {
    /// Of a design with this body, which any view of it has.
    pub(crate) fn new(
        design: &Design,
        body: &Body,
        view: &SideView,
        model: Model,
        crossflow: Option<Crossflow>,
    ) -> Self {
        let length_m = body.length_m();
        let drag =
            crossflow.unwrap_or_else(|| Crossflow::of_parts(length_m / body.width_m()));
        let parts = nose_on::body(body, model)
            .into_iter()
            .zip(body.stretches())
            .map(|(slope, stretch)| {
                let side = stretch.profile.side();
                AirPart {
                    part: slope.part,
                    slope_per_rad: slope.slope,
                    forward_centre_m: slope.centre_m,
                    backward_centre_m: length_m - slope.centre_m,
                    side_area_m2: side.area,
                    side_centre_m: stretch.front_m + side.first / side.area,
                    side_spread_m2: stretch.profile.side_spread_m2(),
                    side_drag: drag.body,
                }
            })
            .collect();
        Self {
            body: parts,
            fins: UnrolledFins::all(design, body, view.body_chain_m()),
            model,
            drag,
            reference_area_m2: nose_on::reference_area_m2(body),
        }
    }

    /// The air on the whole rocket, its fins as they are seen in a side view.
    pub(crate) fn seen_in(&self, view: &SideView, body: &Body) -> Air {
        let mut parts = self.body.clone();
        for (i, fins) in self.fins.iter().enumerate() {
            let &UnrolledFins { start_m, crowd, .. } = fins;
            let flat = if fins.count == 2 {
                let seen = view.fins().iter().filter(|fin| fin.set == i);
                seen.map(|fin| fin.turned * fin.turned).sum()
            } else {
                f64::from(fins.count) / 2.0
            };
            let in_wake = match self.model.wake {
                Wake::InFull => 0.0,
                Wake::NoLift => crowd.in_wake,
            };
            let panels = flat * crowd.share * (1.0 - in_wake);
            let lift = fins
                .strips
                .as_ref()
                .map(|strips| nose_on::fins(strips, start_m, body, panels, self.model));
            let added = view.added_by_set(i);
            let side_centre_m = if added.area > 0.0 {
                added.first / added.area
            } else {
                start_m + fins.along_m
            };
            parts.push(AirPart {
                part: Component::Fins(i),
                slope_per_rad: lift.map_or(0.0, |l| l.slope),
                forward_centre_m: start_m + lift.map_or(0.0, |l| l.forward_m),
                backward_centre_m: start_m + lift.map_or(0.0, |l| l.backward_m),
                side_area_m2: added.area,
                side_centre_m,
                side_spread_m2: fins.spread_m2,
                side_drag: self.drag.fins,
            });
        }
        let reference_area_m2 = self.reference_area_m2;
        let sums = Sums::of(&parts, reference_area_m2);
        Air { parts, reference_area_m2, sums }
    }
}

impl Air {
    /// The air in the plane of the drawing. `None` when the design has no body.
    #[must_use]
    pub fn new(
        design: &Design,
        model: Model,
        crossflow: Option<Crossflow>,
    ) -> Option<Self> {
        let body = Body::new(design)?;
        let view = SideView::new(design, &body);
        Some(Self::with(design, &body, &view, model, crossflow))
    }

    pub(crate) fn with(
        design: &Design,
        body: &Body,
        view: &SideView,
        model: Model,
        crossflow: Option<Crossflow>,
    ) -> Self {
        Unrolled::new(design, body, view, model, crossflow).seen_in(view, body)
    }

    /// The air in each plane that may be the least favourable, that of the drawing first,
    /// with the angle in degrees by which the rocket is turned for it, and the centre of
    /// pressure side-on there.
    pub(crate) fn in_planes(
        design: &Design,
        body: &Body,
        view: SideView,
        model: Model,
    ) -> Vec<Plane> {
        let unrolled = Unrolled::new(design, body, &view, model, None);
        let plane = |turned: Turned| Plane {
            roll_deg: turned.roll_deg,
            air: unrolled.seen_in(&turned.view, body),
            side_on_m: turned.view.area_and_centroid_m().1,
        };
        Turned::all(design, body, view).into_iter().map(plane).collect()
    }

    /// The same air, with each of its centres so much further back.
    pub(crate) fn moved(mut self, by_m: f64) -> Self {
        for part in &mut self.parts {
            part.forward_centre_m += by_m;
            part.backward_centre_m += by_m;
            part.side_centre_m += by_m;
        }
        self.sums = Sums::of(&self.parts, self.reference_area_m2);
        self
    }

    /// The area that the coefficients stand on: the body's largest cross-section, in m².
    #[must_use]
    pub fn reference_area_m2(&self) -> f64 {
        self.reference_area_m2
    }

    /// Each part by itself: sections, then fin sets.
    #[must_use]
    pub fn parts(&self) -> &[AirPart] {
        &self.parts
    }

    /// The normal-force slope `C_Nα` of the whole rocket at small angles, per radian, on the
    /// body's largest cross-section.
    #[must_use]
    pub fn slope_per_rad(&self) -> f64 {
        self.parts.iter().map(|p| p.slope_per_rad).sum()
    }

    /// Normal-force coefficient on the body's largest cross-section; `angle_rad` from 0
    /// (air on the nose) to π (air on the tail).
    #[must_use]
    pub fn normal_force(&self, angle_rad: f64) -> f64 {
        self.load(angle_rad).force * libm::sin(angle_rad)
    }

    /// Centre of pressure, in metres from the nose tip, with its exact limits at 0 (the
    /// nose-on centre), 90 and 180 degrees. It may lie off the rocket; `None` where there
    /// is next to no force.
    #[must_use]
    pub fn centre_of_pressure_m(&self, angle_rad: f64) -> Option<f64> {
        const NO_FORCE: f64 = 1e-6;
        let load = self.load(angle_rad);
        (load.force > NO_FORCE).then(|| load.first / load.force)
    }

    /// Turning moment about the centre of mass, as a coefficient on q, `S_ref` and one
    /// metre: positive where the air turns the nose back into the wind.
    #[must_use]
    pub fn turning_moment_m(&self, angle_rad: f64, centre_of_mass_m: f64) -> f64 {
        self.moment_by_sine(angle_rad, centre_of_mass_m) * libm::sin(angle_rad)
    }

    /// The same divided by sin a, which has the sign of the moment and does not vanish at
    /// the ends.
    pub(crate) fn moment_by_sine(&self, angle_rad: f64, centre_of_mass_m: f64) -> f64 {
        let load = self.load(angle_rad);
        load.first - load.force * centre_of_mass_m
    }

    /// The least of all the turning moments over the sine of the angle, in steps of ten
    /// degrees: how weakly the air turns the rocket back where it does so the least.
    pub(crate) fn weakest_moment_m(&self, centre_of_mass_m: f64) -> f64 {
        let moment =
            |k: u32| self.moment_by_sine(PI * f64::from(k) / 18.0, centre_of_mass_m);
        (0..=18).map(moment).fold(f64::INFINITY, f64::min)
    }

    /// Every angle at which the air does not turn the rocket with its centre of mass there,
    /// from 0 to π; both ends are always among them.
    #[must_use]
    pub fn resting_angles(&self, centre_of_mass_m: f64) -> Vec<Rest> {
        resting_angles(self, centre_of_mass_m)
    }

    /// What the rocket does in this plane with its centre of mass there.
    #[must_use]
    pub fn outcome(&self, centre_of_mass_m: f64) -> Outcome {
        Outcome::of(&resting_angles(self, centre_of_mass_m))
    }

    /// Force and first moment on `q S_ref` sin a.
    fn load(&self, angle_rad: f64) -> Load {
        let from_ahead = angle_rad <= FRAC_PI_2;
        let nearer = if from_ahead { angle_rad } else { PI - angle_rad };
        let (sin, cos) = libm::sincos(nearer);
        let body_share = libm::cos(nearer / 2.0);
        let Sums { across, .. } = self.sums;
        let (body, fins) = if from_ahead {
            (self.sums.body_ahead, self.sums.fins_ahead)
        } else {
            (self.sums.body_behind, self.sums.fins_behind)
        };
        let sum = |body: f64, fins: f64, across: f64| {
            cos * (body_share * body + fins) + sin * across
        };
        Load {
            force: sum(body.force, fins.force, across.force),
            first: sum(body.first, fins.first, across.first),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    fn air(design: &Design, crossflow: Option<Crossflow>) -> Air {
        Air::new(design, Model::default(), crossflow).unwrap()
    }

    fn designs() -> Vec<Design> {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        for (count, roll_deg) in [(2, 0.0), (2, 90.0), (3, 20.0), (4, 30.0), (6, 5.0)] {
            let mut design = Example::Puffin.design();
            design.fins[0].count = count;
            design.fins[0].roll_deg = roll_deg;
            designs.push(design);
        }
        let mut double = Example::Razorbill.design();
        double.fins.push(Example::Puffin.design().fins[0].clone());
        designs.push(double);
        designs
    }

    /// With the same drag everywhere, air square from the side gives the cut-out's
    /// centroid.
    #[test]
    fn the_limit_at_ninety_degrees_is_the_cut_out() {
        for design in designs() {
            let body = Body::new(&design).unwrap();
            let (_, centroid) = SideView::new(&design, &body).area_and_centroid_m();
            let air = air(&design, Some(Crossflow::common()));
            let found = air.centre_of_pressure_m(FRAC_PI_2).unwrap();
            assert!((found - centroid).abs() < 1e-12, "{}", design.name);
        }
    }

    #[test]
    fn the_limit_at_zero_is_the_sum_of_the_parts() {
        for design in designs() {
            let air = air(&design, None);
            let first: f64 =
                air.parts().iter().map(|p| p.slope_per_rad * p.forward_centre_m).sum();
            let expected = first / air.slope_per_rad();
            let found = air.centre_of_pressure_m(0.0).unwrap();
            assert!((found - expected).abs() < 1e-15);
            // And it is reached without a jump.
            let near = air.centre_of_pressure_m(1e-7).unwrap();
            assert!((near - expected).abs() < 1e-6);
            let slope = air.normal_force(1e-6) / 1e-6;
            assert!((slope - air.slope_per_rad()).abs() < 1e-4 * slope);
        }
    }

    #[test]
    fn the_limit_at_the_tail_mirrors_the_body() {
        let mut design = Example::Gannet.design();
        design.fins.clear();
        let air = air(&design, None);
        let found = air.centre_of_pressure_m(PI).unwrap();
        // V / A_b of a cone and a tube.
        assert!((found - (0.060 / 3.0 + 0.240)).abs() < 1e-12);
    }

    #[test]
    fn nothing_jumps_anywhere() {
        for design in designs() {
            let air = air(&design, None);
            let mut last = air.normal_force(0.0);
            for k in 1..=1800 {
                let angle = PI * f64::from(k) / 1800.0;
                let force = air.normal_force(angle);
                assert!((force - last).abs() < 0.3, "{} at {angle}", design.name);
                last = force;
            }
            assert!(last.abs() < 1e-9);
        }
    }

    #[test]
    fn a_pair_of_fins_does_nothing_in_its_weaker_plane() {
        let mut design = Example::Puffin.design();
        design.fins[0].count = 2;
        for roll_deg in [0.0, 30.0, 90.0] {
            design.fins[0].roll_deg = roll_deg;
            let body = Body::new(&design).unwrap();
            let view = SideView::new(&design, &body);
            let planes = Air::in_planes(&design, &body, view, Model::default());
            let edge_on = |plane: &Plane| {
                let fins = plane.air.parts().last().unwrap();
                fins.slope_per_rad.abs() < 1e-12 && fins.side_area_m2 < 1e-12
            };
            assert_eq!(planes.iter().filter(|plane| edge_on(plane)).count(), 1);
        }
    }

    /// Three fins and four push alike at every roll while the angle is small.
    #[test]
    fn roll_does_not_matter_at_small_angles() {
        let slope = |count, roll_deg| {
            let mut design = Example::Puffin.design();
            design.fins[0].count = count;
            design.fins[0].roll_deg = roll_deg;
            air(&design, None).slope_per_rad()
        };
        for count in [3, 4] {
            assert_eq!(slope(count, 0.0), slope(count, 17.0));
        }
        assert_eq!(slope(5, 0.0), slope(4, 0.0), "more than four shade one another");
        assert!((slope(2, 0.0) - slope(4, 0.0)).abs() < 1e-9);
        let body_only = slope(2, 90.0);
        assert!(body_only < slope(2, 45.0) && slope(2, 45.0) < slope(2, 0.0));
    }
}
