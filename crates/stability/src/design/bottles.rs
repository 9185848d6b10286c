//! Blank starts by the size of a drinks bottle.

use super::{Design, Mass, Section, SectionKind};

/// A usual size of a fizzy-drink bottle.
///
/// The measurements are typical, from memory, for a first drawing: every maker's bottle
/// differs, so measure yours. The masses of the three largest agree with the preforms
/// that they are blown from (product tables: 39.9 g up to 1.5 litres, 48.0 g for 2
/// litres, 30.5 g up to 1 litre); the others are from memory.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BottleSize {
    /// Half a litre.
    Ml500,
    /// 0.6 litres.
    Ml600,
    /// One litre.
    Ml1000,
    /// 1.25 litres.
    Ml1250,
    /// 1.5 litres.
    Ml1500,
    /// Two litres.
    Ml2000,
}

impl BottleSize {
    /// Every size, smallest first.
    pub const ALL: [Self; 6] = [
        Self::Ml500,
        Self::Ml600,
        Self::Ml1000,
        Self::Ml1250,
        Self::Ml1500,
        Self::Ml2000,
    ];

    /// What it holds, in litres.
    #[must_use]
    pub fn litres(self) -> f64 {
        match self {
            Self::Ml500 => 0.5,
            Self::Ml600 => 0.6,
            Self::Ml1000 => 1.0,
            Self::Ml1250 => 1.25,
            Self::Ml1500 => 1.5,
            Self::Ml2000 => 2.0,
        }
    }

    /// An upturned bottle, weighed whole, with nothing on it.
    #[must_use]
    pub fn design(self) -> Design {
        let (width_mm, straight_mm, shoulder_mm, mass_g) = match self {
            Self::Ml500 => (65.0, 125.0, 55.0, 22.0),
            Self::Ml600 => (68.0, 135.0, 60.0, 25.0),
            Self::Ml1000 => (80.0, 165.0, 75.0, 30.5),
            Self::Ml1250 => (90.0, 160.0, 85.0, 36.0),
            Self::Ml1500 => (90.0, 195.0, 90.0, 39.9),
            Self::Ml2000 => (108.0, 175.0, 95.0, 48.0),
        };
        Design {
            sections: bottle(width_mm, straight_mm, shoulder_mm, mass_g),
            ..Design::default()
        }
    }
}

/// An upturned bottle: wall, shoulder and a 28 mm neck of 21 mm (the usual finish for
/// fizzy drinks; neck height: PCO 1810, trade article citing ISBT).
pub(crate) fn bottle(
    width_mm: f64,
    straight_mm: f64,
    shoulder_mm: f64,
    mass_g: f64,
) -> Vec<Section> {
    let section = |kind, length_mm, diameter_mm, mass| Section {
        kind,
        length_mm,
        diameter_mm: Some(diameter_mm),
        closed_front: kind == SectionKind::Tube,
        mass,
    };
    vec![
        section(SectionKind::Tube, straight_mm, width_mm, Mass::WeighedG(mass_g)),
        section(SectionKind::RoundedTaper, shoulder_mm, 28.0, Mass::Joined),
        section(SectionKind::Neck, 21.0, 28.0, Mass::Joined),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Body, check};

    /// A bottle's own label says what it holds; a typical outline should hold about that.
    #[test]
    fn typical_bottles_hold_what_their_label_says() {
        for size in BottleSize::ALL {
            let design = size.design();
            assert_eq!(check(&design), []);
            let litres = Body::new(&design).unwrap().volume_m3() * 1000.0;
            let ratio = litres / size.litres();
            assert!((0.97..1.06).contains(&ratio), "{size:?} holds {litres:.3} litres");
        }
    }
}
