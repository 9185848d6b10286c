//! The sections of the body as thin shells.

use std::f64::consts::PI;

use super::MassProperties;
use crate::design::{Design, Mass, Section, SectionKind};
use crate::outline::{Body, Stretch};

/// How much thicker than its wall the floor and the neck of a drinks bottle are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Thickness {
    /// Of the floor. Our judgement, from bottles cut open; the floor is not flat either.
    pub(crate) floor: f64,
    /// Of the neck. Our judgement. With it, the neck of every blank start weighs about 5 g;
    /// published for the usual finish: 5.05 g (PCO 1810) and 3.74 g (PCO 1881), trade
    /// article citing ISBT.
    pub(crate) neck: f64,
}

impl Default for Thickness {
    fn default() -> Self {
        Self { floor: 2.5, neck: 7.0 }
    }
}

/// The mass properties of every section of the design.
///
/// A weighed piece and the sections joined to it share its mass by area, thicker places
/// counting more. Sections joined to a piece of sheet are of the same sheet.
pub(super) fn sections(
    design: &Design,
    body: &Body,
    thickness: Thickness,
) -> Vec<MassProperties> {
    let stretches = body.stretches();
    let mut found: Vec<MassProperties> = Vec::with_capacity(stretches.len());
    while found.len() < design.sections.len() {
        let from = found.len();
        let joined = design.sections[from + 1..]
            .iter()
            .take_while(|section| section.mass == Mass::Joined)
            .count();
        let piece = from..from + 1 + joined;
        let unscaled: Vec<MassProperties> = piece
            .clone()
            .map(|i| per_areal_density(&design.sections[i], &stretches[i], thickness))
            .collect();
        let weighed_area: f64 = unscaled.iter().map(|p| p.mass_kg).sum();
        let areal_density = match design.sections[from].mass {
            Mass::WeighedG(g) => g / 1000.0 / weighed_area,
            Mass::Material(material) => material.areal_density_kg_per_m2(),
            Mass::SheetGPerM2(density) => density / 1000.0,
            Mass::Joined => 0.0,
        };
        found
            .extend(unscaled.into_iter().map(|p| p.scaled_to(p.mass_kg * areal_density)));
    }
    found
}

/// A section as if its wall weighed one kilogram a square metre.
fn per_areal_density(
    section: &Section,
    stretch: &Stretch,
    thickness: Thickness,
) -> MassProperties {
    let Thickness { floor: of_floor, neck } = thickness;
    let thickness = if section.kind == SectionKind::Neck { neck } else { 1.0 };
    let shell = stretch.profile.shell();
    let centre = shell.first / shell.area;
    let wall = MassProperties {
        mass_kg: shell.area * thickness,
        centre_m: stretch.front_m + centre,
        axial_inertia_kg_m2: shell.polar * thickness,
        // Each ring: half its polar moment, and its distance from the centre.
        transverse_inertia_kg_m2: (shell.polar / 2.0 + shell.second
            - shell.area * centre * centre)
            * thickness,
    };
    if section.closed_front && section.kind == SectionKind::Tube {
        MassProperties::sum(&[wall, floor(stretch, of_floor)])
    } else {
        wall
    }
}

/// The floor of a bottle as a flat disc. Moments of a disc: r²/2 and r²/4 (Myers, NAVWEPS
/// Report 7827, 1962; citation from memory, both confirmed by integration with sympy).
fn floor(stretch: &Stretch, thickness: f64) -> MassProperties {
    let r = stretch.profile.front_radius_m();
    let mass_kg = PI * r * r * thickness;
    MassProperties {
        mass_kg,
        centre_m: stretch.front_m,
        axial_inertia_kg_m2: mass_kg * r * r / 2.0,
        transverse_inertia_kg_m2: mass_kg * r * r / 4.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{BottleSize, Material};

    #[test]
    fn a_weighed_bottle_keeps_its_mass_and_has_a_neck_of_about_five_grams() {
        for size in BottleSize::ALL {
            let design = size.design();
            let body = Body::new(&design).unwrap();
            let parts = sections(&design, &body, Thickness::default());
            let Mass::WeighedG(weighed) = design.sections[0].mass else { panic!() };
            let total: f64 = parts.iter().map(|p| p.mass_kg * 1000.0).sum();
            assert!((total - weighed).abs() < 1e-9);
            let neck = parts.last().unwrap().mass_kg * 1000.0;
            assert!((3.74..6.0).contains(&neck), "{size:?}: {neck}");
        }
    }

    #[test]
    fn joined_to_a_sheet_is_the_same_sheet() {
        let mut design = BottleSize::Ml500.design();
        design.sections[0].mass = Mass::Material(Material::BottleWall);
        let body = Body::new(&design).unwrap();
        let parts = sections(&design, &body, Thickness::default());
        let shoulder = body.stretches()[1].profile.shell().area * 0.370;
        assert!((parts[1].mass_kg - shoulder).abs() < 1e-12);
    }
}
