//! Sheet materials and their areal density.

use serde::{Deserialize, Serialize};

/// A sheet that sections and fins are cut from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Material {
    /// Printer paper.
    Paper80,
    /// Thin card.
    Card160,
    /// Postcard card.
    Card220,
    /// Thick card.
    Card300,
    /// Thin corrugated card (E flute).
    CorrugatedE,
    /// Packing-box corrugated card (B flute).
    CorrugatedB,
    /// Corrugated plastic, 4 mm.
    CorrugatedPlastic,
    /// Expanded polystyrene, 5 mm.
    Polystyrene5,
    /// Balsa, 3 mm.
    Balsa3,
    /// Bottle wall (PET).
    BottleWall,
}

impl Material {
    /// Every material, in the order in which a list shows them.
    pub const ALL: [Self; 10] = [
        Self::Paper80,
        Self::Card160,
        Self::Card220,
        Self::Card300,
        Self::CorrugatedE,
        Self::CorrugatedB,
        Self::CorrugatedPlastic,
        Self::Polystyrene5,
        Self::Balsa3,
        Self::BottleWall,
    ];

    /// Mass of one square metre, in kilograms.
    #[must_use]
    pub fn areal_density_kg_per_m2(self) -> f64 {
        match self {
            // The sheet's own grammage (ISO 536: mass of one square metre).
            Self::Paper80 => 0.080,
            Self::Card160 => 0.160,
            Self::Card220 => 0.220,
            Self::Card300 => 0.300,
            // From memory: two facings of about 125 g/m² and a fluted medium.
            Self::CorrugatedE => 0.400,
            Self::CorrugatedB => 0.450,
            // From memory: makers' figure for 4 mm sheet.
            Self::CorrugatedPlastic => 0.700,
            // 20 kg/m³ (moulded beads, ASHRAE Handbook table) · 5 mm
            Self::Polystyrene5 => 0.100,
            // 160 kg/m³ (specific gravity 0.16, USDA Wood Handbook, from memory) · 3 mm
            Self::Balsa3 => 0.480,
            // 1370 kg/m³ · 0.27 mm, from memory: PET of 1360 to 1380 kg/m³.
            Self::BottleWall => 0.370,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO 216 gives A4 as 210 mm by 297 mm; ISO 536 defines grammage as mass by area.
    #[test]
    fn a4_sheets_weigh_what_their_grammage_says() {
        let a4_m2 = 0.210 * 0.297;
        for (material, grams) in [
            (Material::Paper80, 4.990),
            (Material::Card160, 9.979),
            (Material::Card220, 13.721),
            (Material::Card300, 18.711),
        ] {
            let computed = material.areal_density_kg_per_m2() * a4_m2 * 1000.0;
            assert!((computed - grams).abs() < 5e-4, "{material:?}: {computed}");
        }
    }

    #[test]
    fn every_material_is_listed_once() {
        let mut all = Material::ALL.to_vec();
        all.sort();
        all.dedup();
        assert_eq!(all.len(), Material::ALL.len());
    }
}
