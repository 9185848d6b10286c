//! What nobody reads off a ruler or scales, and yet is not known exactly (JCGM 100, 4.3:
//! type B). Every spread here is our judgement.

use super::input::{Distribution, Input};
use crate::design::materials::Material;
use crate::design::{Design, Mass, SectionKind, Weight};
use crate::masses::Thickness;
use crate::outline::fin::Fin;

/// The areal density of a sheet of the table may be this share more or less: makers quote
/// a few per cent, and damp, paint and overlaps add to it.
const TABLE_SHEET: f64 = 0.10;
/// That of a sheet whose density was typed, from its packet or from a weighed piece.
const TYPED_SHEET: f64 = 0.05;
/// Thickness of a bottle's floor, in that of its wall, more or less.
const FLOOR: f64 = 1.0;
/// Thickness of its neck, likewise: the published necks weigh 3.7 to 5.1 g.
const NECK: f64 = 2.0;
/// Glue or tape along the root of a fin that was not weighed: from nothing to this, in
/// grams for each millimetre.
const GLUE_G_PER_MM: f64 = 0.01;

/// One such thing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Unread {
    /// The areal density of a material, as a factor.
    Sheet(Material),
    /// The typed areal density of a section's sheet, as a factor.
    SectionSheet(usize),
    /// The typed areal density of a fin set's sheet, as a factor.
    FinSheet(usize),
    /// The thickness of a bottle's floor.
    Floor,
    /// The thickness of its neck.
    Neck,
    /// The glue of a fin set, as a share of the most; below nothing counts as much above.
    Glue(usize),
}

/// Everything of that kind in a design, each as an input.
pub(crate) fn unread(design: &Design) -> Vec<(Unread, Input)> {
    let mut found: Vec<(Unread, f64, f64)> = Vec::new();
    let mut sheet = |mass: Mass, typed: Unread| {
        let (which, spread) = match mass {
            Mass::Material(material) => (Unread::Sheet(material), TABLE_SHEET),
            Mass::SheetGPerM2(_) => (typed, TYPED_SHEET),
            Mass::WeighedG(_) | Mass::Joined => return,
        };
        if found.iter().all(|&(known, ..)| known != which) {
            found.push((which, 1.0, spread));
        }
    };
    for (i, section) in design.sections.iter().enumerate() {
        sheet(section.mass, Unread::SectionSheet(i));
    }
    for (i, set) in design.fins.iter().enumerate() {
        sheet(set.mass, Unread::FinSheet(i));
    }
    let usual = Thickness::default();
    if design.sections.iter().any(|s| s.closed_front && s.kind == SectionKind::Tube) {
        found.push((Unread::Floor, usual.floor, FLOOR));
    }
    if design.sections.iter().any(|s| s.kind == SectionKind::Neck) {
        found.push((Unread::Neck, usual.neck, NECK));
    }
    for (i, set) in design.fins.iter().enumerate() {
        if !matches!(set.mass, Mass::WeighedG(_)) {
            found.push((Unread::Glue(i), 0.0, 1.0));
        }
    }
    let input = |(which, estimate, half_width)| {
        let made = Input::new(estimate, Distribution::Rectangular { half_width });
        Some((which, made.ok()?))
    };
    found.into_iter().filter_map(input).collect()
}

impl Unread {
    /// Puts a drawn value into a design, or into the thickness of its bottle.
    pub(crate) fn put(self, value: f64, design: &mut Design, thickness: &mut Thickness) {
        let scale = |mass: &mut Mass| match *mass {
            Mass::Material(material) => {
                let g_per_m2 = material.areal_density_kg_per_m2() * 1000.0;
                *mass = Mass::SheetGPerM2(g_per_m2 * value);
            }
            Mass::SheetGPerM2(g_per_m2) => *mass = Mass::SheetGPerM2(g_per_m2 * value),
            Mass::WeighedG(_) | Mass::Joined => {}
        };
        match self {
            Self::Sheet(material) => {
                let sections = design.sections.iter_mut().map(|s| &mut s.mass);
                let all = sections.chain(design.fins.iter_mut().map(|f| &mut f.mass));
                all.filter(|mass| **mass == Mass::Material(material)).for_each(scale);
            }
            Self::SectionSheet(i) => scale(&mut design.sections[i].mass),
            Self::FinSheet(i) => scale(&mut design.fins[i].mass),
            Self::Floor => thickness.floor = value,
            Self::Neck => thickness.neck = value,
            Self::Glue(i) => {
                let set = &design.fins[i];
                let root_mm = Fin::new(&set.planform).root_m() * 1000.0;
                let most_g = GLUE_G_PER_MM * root_mm * f64::from(set.count);
                design.weights.push(Weight {
                    label: String::new(),
                    mass_g: most_g * value.abs(),
                    position_mm: set.start_mm + root_mm / 2.0,
                });
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    #[test]
    fn what_nobody_read_is_drawn_once_for_each_sheet() {
        let which = |design: &Design| -> Vec<Unread> {
            unread(design).into_iter().map(|(which, _)| which).collect()
        };
        let puffin = Example::Puffin.design();
        assert_eq!(
            which(&puffin),
            [
                Unread::Sheet(Material::Card300),
                Unread::Floor,
                Unread::Neck,
                Unread::Glue(0)
            ]
        );
        let mut weighed = puffin;
        weighed.fins[0].mass = Mass::WeighedG(8.0);
        assert_eq!(which(&weighed), [Unread::Floor, Unread::Neck]);
        weighed.fins[0].mass = Mass::SheetGPerM2(300.0);
        assert_eq!(
            which(&weighed),
            [Unread::FinSheet(0), Unread::Floor, Unread::Neck, Unread::Glue(0)]
        );
    }

    #[test]
    fn a_drawn_value_changes_what_it_stands_for() {
        let mut design = Example::Puffin.design();
        let mut thickness = Thickness::default();
        let sheet = Unread::Sheet(Material::Card300);
        sheet.put(1.1, &mut design, &mut thickness);
        assert_eq!(design.fins[0].mass, Mass::SheetGPerM2(330.0));
        Unread::Floor.put(3.0, &mut design, &mut thickness);
        Unread::Neck.put(6.0, &mut design, &mut thickness);
        assert_eq!(thickness, Thickness { floor: 3.0, neck: 6.0 });
        // Four roots of 110 mm.
        Unread::Glue(0).put(-0.5, &mut design, &mut thickness);
        let glue = design.weights.last().unwrap();
        assert!((glue.mass_g - 2.2).abs() < 1e-12 && glue.position_mm == 270.0);
    }
}
