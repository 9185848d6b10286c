//! What the rocket weighs, where it hangs level, and how it resists turning.

mod shells;

use serde::Serialize;

use crate::design::component::Component;
use crate::design::{Design, FinSet, Mass};
use crate::outline::Body;
use crate::outline::fin::Fin;
pub(crate) use shells::Thickness;

/// Mass, centre and moments of inertia of a thing on the axis.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct MassProperties {
    /// Mass in kilograms.
    pub mass_kg: f64,
    /// Distance of the centre of mass from the nose tip, in metres.
    pub centre_m: f64,
    /// Moment of inertia about the axis of the rocket, in kg·m².
    pub axial_inertia_kg_m2: f64,
    /// Moment of inertia about a line across the axis through the centre of mass, in
    /// kg·m². Where the two across differ (two fins), their mean.
    pub transverse_inertia_kg_m2: f64,
}

/// The mass properties of one part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartMass {
    /// Which part.
    pub part: Component,
    /// Its mass, centre and inertia.
    pub properties: MassProperties,
}

impl MassProperties {
    /// A point on the axis.
    fn point(mass_kg: f64, centre_m: f64) -> Self {
        Self { mass_kg, centre_m, ..Self::default() }
    }

    /// Several things as one, by the parallel-axis rule. Zero mass gives all zeros.
    fn sum(things: &[Self]) -> Self {
        let mass_kg: f64 = things.iter().map(|t| t.mass_kg).sum();
        if mass_kg <= 0.0 {
            return Self::default();
        }
        let centre_m =
            things.iter().map(|t| t.mass_kg * t.centre_m).sum::<f64>() / mass_kg;
        let transverse = |t: &Self| {
            let off = t.centre_m - centre_m;
            t.transverse_inertia_kg_m2 + t.mass_kg * off * off
        };
        Self {
            mass_kg,
            centre_m,
            axial_inertia_kg_m2: things.iter().map(|t| t.axial_inertia_kg_m2).sum(),
            transverse_inertia_kg_m2: things.iter().map(transverse).sum(),
        }
    }

    /// The same distribution with another mass: the inertia grows with it.
    pub(crate) fn scaled_to(self, mass_kg: f64) -> Self {
        let factor = if self.mass_kg > 0.0 { mass_kg / self.mass_kg } else { 0.0 };
        Self {
            mass_kg,
            centre_m: self.centre_m,
            axial_inertia_kg_m2: self.axial_inertia_kg_m2 * factor,
            transverse_inertia_kg_m2: self.transverse_inertia_kg_m2 * factor,
        }
    }
}

/// Every part's mass properties: sections, fin sets, weights, in that order.
pub(crate) fn parts(design: &Design, body: &Body) -> Vec<PartMass> {
    parts_with(design, body, Thickness::default())
}

/// The same with another bottle.
pub(crate) fn parts_with(
    design: &Design,
    body: &Body,
    thickness: Thickness,
) -> Vec<PartMass> {
    let sections = shells::sections(design, body, thickness).into_iter().enumerate();
    let sections = sections.map(|(i, p)| (Component::Section(i), p));
    let fins = design.fins.iter().enumerate();
    let fins = fins.map(|(i, set)| (Component::Fins(i), fin_set(set, body)));
    let weights = design.weights.iter().enumerate().map(|(i, w)| {
        let point = MassProperties::point(w.mass_g / 1000.0, w.position_mm / 1000.0);
        (Component::Weight(i), point)
    });
    sections
        .chain(fins)
        .chain(weights)
        .map(|(part, properties)| PartMass { part, properties })
        .collect()
}

/// The whole rocket from its parts.
pub(crate) fn total(parts: &[PartMass]) -> MassProperties {
    let all: Vec<MassProperties> = parts.iter().map(|p| p.properties).collect();
    MassProperties::sum(&all)
}

/// A set of equal flat fins, equally spaced, so that its centre lies on the axis.
fn fin_set(set: &FinSet, body: &Body) -> MassProperties {
    let fin = Fin::new(&set.planform);
    let area_m2 = fin.area_m2() * f64::from(set.count);
    let mass_kg = match set.mass {
        Mass::WeighedG(g) => g / 1000.0,
        Mass::Material(material) => material.areal_density_kg_per_m2() * area_m2,
        Mass::SheetGPerM2(density) => density / 1000.0 * area_m2,
        Mass::Joined => 0.0,
    };
    let start_m = set.start_mm / 1000.0;
    let root_m = body.radius_at_m(start_m);
    let (along, out) = fin.centroid_m();
    let second = fin.second_moments_m2();
    // Mean square distance from the axis; half of it counts about each line across.
    let off_axis2 = root_m * root_m + 2.0 * root_m * out + second.out2;
    let along_own2 = second.along2 - along * along;
    MassProperties {
        mass_kg,
        centre_m: start_m + along,
        axial_inertia_kg_m2: mass_kg * off_axis2,
        transverse_inertia_kg_m2: mass_kg * (along_own2 + off_axis2 / 2.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, Planform};

    /// Two points and the parallel-axis rule by hand.
    #[test]
    fn two_points() {
        let a = MassProperties::point(0.010, 0.1);
        let b = MassProperties::point(0.030, 0.3);
        let sum = MassProperties::sum(&[a, b]);
        assert!((sum.mass_kg - 0.040).abs() < 1e-15);
        assert!((sum.centre_m - 0.25).abs() < 1e-15);
        let by_hand = 0.010 * 0.15 * 0.15 + 0.030 * 0.05 * 0.05;
        assert!((sum.transverse_inertia_kg_m2 - by_hand).abs() < 1e-15);
        assert_eq!(MassProperties::sum(&[]), MassProperties::default());
    }

    /// A fin as many thin strips along the body against its second moments.
    #[test]
    fn fin_set_agrees_with_a_sum_of_strips() {
        let mut design = Example::Puffin.design();
        let set = &mut design.fins[0];
        set.count = 3;
        set.planform = Planform::FourSided {
            root_mm: 60.0,
            tip_mm: 60.0,
            span_mm: 40.0,
            sweep_mm: 20.0,
        };
        set.start_mm = 130.0;
        set.mass = Mass::WeighedG(9.0);
        let body = Body::new(&design).unwrap();
        let found = fin_set(&design.fins[0], &body);
        let (mut axial, mut centre, mut along2) = (0.0, 0.0, 0.0);
        let n = 4000;
        for i in 0..n {
            let out = 0.040 * (f64::from(i) + 0.5) / f64::from(n);
            let m = 0.009 / f64::from(n);
            let middle = 0.130 + 0.030 + 0.5 * out;
            axial += m * (0.0325 + out) * (0.0325 + out);
            centre += m * middle / 0.009;
            along2 += m * (middle * middle + 0.06 * 0.06 / 12.0);
        }
        let transverse = along2 - 0.009 * centre * centre + axial / 2.0;
        assert!((found.centre_m - centre).abs() < 1e-9);
        assert!((found.axial_inertia_kg_m2 - axial).abs() < 1e-6 * axial);
        assert!((found.transverse_inertia_kg_m2 - transverse).abs() < 1e-6 * transverse);
    }

    #[test]
    fn scaling_keeps_the_centre() {
        let design = Example::Puffin.design();
        let body = Body::new(&design).unwrap();
        let all = total(&parts(&design, &body));
        let double = all.scaled_to(all.mass_kg * 2.0);
        assert_eq!(double.centre_m, all.centre_m);
        let ratio = double.transverse_inertia_kg_m2 / all.transverse_inertia_kg_m2;
        assert!((ratio - 2.0).abs() < 1e-12);
    }
}
