//! Worked examples: the rockets of an after-school club by a harbour, named after sea
//! birds. Invented for this project.

use super::bottles::bottle;
use super::common_weights::WeightKind;
use super::{Design, FinSet, Mass, Material, Measured, Planform};
use super::{Section, SectionKind, Weight};

/// One of the four worked examples.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Example {
    /// Turns nose-first from any side.
    Puffin,
    /// Small fins and a light nose: its two points lie close together.
    Tern,
    /// Fins so heavy that they pull the centre of mass back with them.
    Razorbill,
    /// A paper tube with a paper nose.
    Gannet,
}

impl Example {
    /// Every example, in the order in which a list shows them.
    pub const ALL: [Self; 4] = [Self::Puffin, Self::Tern, Self::Razorbill, Self::Gannet];

    /// What its weight is; `None` without one. Its label says so in English.
    #[must_use]
    pub fn weight(self) -> Option<WeightKind> {
        match self {
            Self::Puffin | Self::Gannet => Some(WeightKind::Clay),
            Self::Tern => None,
            Self::Razorbill => Some(WeightKind::StickyTape),
        }
    }

    /// The rocket.
    #[must_use]
    pub fn design(self) -> Design {
        match self {
            Self::Puffin => Design {
                name: "Puffin".into(),
                sections: with_nose(
                    nose(SectionKind::Ellipsoid, 120.0, Mass::WeighedG(8.0)),
                    bottle(65.0, 125.0, 55.0, 22.0),
                ),
                fins: vec![fins(4, 215.0, [110.0, 60.0, 55.0, 50.0], Material::Card300)],
                weights: vec![weight("clay", 20.0, 45.0)],
                measured: Measured::default(),
            },
            Self::Tern => Design {
                name: "Tern".into(),
                sections: with_nose(
                    nose(SectionKind::Ellipsoid, 90.0, Mass::WeighedG(7.0)),
                    bottle(65.0, 125.0, 55.0, 22.0),
                ),
                fins: vec![fins(3, 225.0, [45.0, 25.0, 25.0, 20.0], Material::Card300)],
                weights: vec![],
                measured: Measured::default(),
            },
            Self::Razorbill => Design {
                name: "Razorbill".into(),
                sections: with_nose(
                    nose(SectionKind::Ellipsoid, 80.0, Mass::WeighedG(5.0)),
                    bottle(90.0, 195.0, 90.0, 39.9),
                ),
                fins: vec![fins(
                    4,
                    235.0,
                    [150.0, 120.0, 110.0, 60.0],
                    Material::CorrugatedPlastic,
                )],
                weights: vec![weight("sticky tape", 9.0, 330.0)],
                measured: Measured::default(),
            },
            Self::Gannet => Design {
                name: "Gannet".into(),
                sections: vec![
                    Section {
                        diameter_mm: None,
                        ..nose(
                            SectionKind::Paraboloid,
                            40.0,
                            Mass::Material(Material::Paper80),
                        )
                    },
                    Section {
                        kind: SectionKind::Tube,
                        length_mm: 240.0,
                        diameter_mm: Some(24.0),
                        closed_front: false,
                        mass: Mass::Material(Material::Paper80),
                    },
                ],
                fins: vec![fins(3, 245.0, [55.0, 30.0, 35.0, 25.0], Material::Card160)],
                weights: vec![weight("clay", 1.5, 35.0)],
                measured: Measured::default(),
            },
        }
    }
}

fn with_nose(nose: Section, bottle: Vec<Section>) -> Vec<Section> {
    std::iter::once(nose).chain(bottle).collect()
}

fn nose(kind: SectionKind, length_mm: f64, mass: Mass) -> Section {
    Section { kind, length_mm, diameter_mm: None, closed_front: false, mass }
}

/// Four-sided fins with root, tip, span and sweep in millimetres.
fn fins(count: u32, start_mm: f64, sides_mm: [f64; 4], material: Material) -> FinSet {
    let [root_mm, tip_mm, span_mm, sweep_mm] = sides_mm;
    FinSet {
        count,
        start_mm,
        roll_deg: 0.0,
        planform: Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm },
        mass: Mass::Material(material),
    }
}

fn weight(label: &str, mass_g: f64, position_mm: f64) -> Weight {
    Weight { label: label.into(), mass_g, position_mm }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::evaluate;

    #[test]
    fn the_examples_show_what_they_are_for() {
        let separation_mm = |example: Example| {
            let report = evaluate(&example.design());
            assert_eq!(report.faults, [], "{example:?}");
            report.figures.unwrap().separation_m * 1000.0
        };
        let puffin = separation_mm(Example::Puffin);
        assert!(puffin > 40.0, "{puffin}");
        let tern = separation_mm(Example::Tern);
        assert!(tern.abs() < 10.0, "{tern}");
        let razorbill = separation_mm(Example::Razorbill);
        assert!(razorbill < 0.0, "{razorbill}");
        let gannet = separation_mm(Example::Gannet);
        assert!(gannet > 24.0, "{gannet}");
    }
}
