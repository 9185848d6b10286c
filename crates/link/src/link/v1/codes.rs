//! The numbers that stand for kinds and materials. They are the format: none is ever
//! changed, or given to something else.

use noseward_stability::{Material, SectionKind};

pub(super) fn kind_code(kind: SectionKind) -> u8 {
    match kind {
        SectionKind::Cone => 0,
        SectionKind::Ogive => 1,
        SectionKind::Ellipsoid => 2,
        SectionKind::Paraboloid => 3,
        SectionKind::Dome => 4,
        SectionKind::Tube => 5,
        SectionKind::StraightTaper => 6,
        SectionKind::RoundedTaper => 7,
        SectionKind::Neck => 8,
    }
}

pub(super) fn kind(code: u8) -> Option<SectionKind> {
    SectionKind::ALL.into_iter().find(|&kind| kind_code(kind) == code)
}

pub(super) fn material_code(material: Material) -> u8 {
    match material {
        Material::Paper80 => 0,
        Material::Card160 => 1,
        Material::Card220 => 2,
        Material::Card300 => 3,
        Material::CorrugatedE => 4,
        Material::CorrugatedB => 5,
        Material::CorrugatedPlastic => 6,
        Material::Polystyrene5 => 7,
        Material::Balsa3 => 8,
        Material::BottleWall => 9,
    }
}

pub(super) fn material(code: u8) -> Option<Material> {
    Material::ALL.into_iter().find(|&material| material_code(material) == code)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By the names in files, which no reordering in another crate can touch.
    #[test]
    fn every_number_is_pinned() {
        let kinds = [
            "cone",
            "ogive",
            "ellipsoid",
            "paraboloid",
            "dome",
            "tube",
            "straight_taper",
            "rounded_taper",
            "neck",
        ];
        for code in 0..=u8::MAX {
            let found = kind(code).map(|kind| serde_json::to_value(kind).unwrap());
            let pinned = kinds.get(usize::from(code)).map(|&name| name.into());
            assert_eq!(found, pinned, "kind {code}");
        }
        let materials = [
            "paper80",
            "card160",
            "card220",
            "card300",
            "corrugated_e",
            "corrugated_b",
            "corrugated_plastic",
            "polystyrene5",
            "balsa3",
            "bottle_wall",
        ];
        for code in 0..=u8::MAX {
            let found = material(code).map(|m| serde_json::to_value(m).unwrap());
            let pinned = materials.get(usize::from(code)).map(|&name| name.into());
            assert_eq!(found, pinned, "material {code}");
        }
    }
}
