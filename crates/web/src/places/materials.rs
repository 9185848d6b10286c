//! What materials and weights are called, in the language in use.

use noseward_stability::{Material, WeightGroup, WeightKind};
use noseward_words::{self as words, Text};

pub(crate) fn material(material: Material) -> Text {
    match material {
        Material::Paper80 => words::material_paper(),
        Material::Card160 => words::material_thin_card(),
        Material::Card220 => words::material_card(),
        Material::Card300 => words::material_thick_card(),
        Material::CorrugatedE => words::material_thin_corrugated(),
        Material::CorrugatedB => words::material_box_card(),
        Material::CorrugatedPlastic => words::material_corrugated_plastic(),
        Material::Polystyrene5 => words::material_polystyrene(),
        Material::Balsa3 => words::material_balsa(),
        Material::BottleWall => words::material_bottle_wall(),
    }
}

pub(crate) fn weight_group(group: WeightGroup) -> Text {
    match group {
        WeightGroup::UkCoins => words::weights_uk_coins(),
        WeightGroup::EuroCoins => words::weights_euro_coins(),
        WeightGroup::UsCoins => words::weights_us_coins(),
        WeightGroup::AustralianCoins => words::weights_australian_coins(),
        WeightGroup::OtherThings => words::weights_other_things(),
    }
}

/// What a weight is: also the label that it gets.
pub(crate) fn weight(kind: WeightKind) -> String {
    let text = match kind {
        WeightKind::Pence(value) => return words::weight_pence(value.into()),
        WeightKind::Pounds(value) => return words::weight_pounds(value.into()),
        WeightKind::EuroCents(value) => return words::weight_euro_cents(value.into()),
        WeightKind::Euros(value) => return words::weight_euros(value.into()),
        WeightKind::UsCent => words::weight_us_cent(),
        WeightKind::UsNickel => words::weight_us_nickel(),
        WeightKind::UsDime => words::weight_us_dime(),
        WeightKind::UsQuarter => words::weight_us_quarter(),
        WeightKind::UsHalfDollar => words::weight_us_half_dollar(),
        WeightKind::UsDollar => words::weight_us_dollar(),
        WeightKind::AustralianCents(value) => {
            return words::weight_australian_cents(value.into());
        }
        WeightKind::AustralianDollars(value) => {
            return words::weight_australian_dollars(value.into());
        }
        WeightKind::Clay => words::weight_clay(),
        WeightKind::StickyTape => words::weight_sticky_tape(),
        WeightKind::SmallPaperClip => words::weight_small_paper_clip(),
        WeightKind::LargePaperClip => words::weight_large_paper_clip(),
        WeightKind::MetalWasher => words::weight_metal_washer(),
        WeightKind::Other => words::weight_other(),
    };
    text.into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{COMMON_WEIGHTS, Example, limits};

    /// In every language but the stretched one: the label tells what a weight is.
    #[test]
    fn every_weight_has_a_label_of_its_own_that_fits() {
        for language in words::LANGUAGES.iter().filter(|language| language.key != "en-XA")
        {
            words::speak(words::table_of(language.key));
            assert_eq!(words::language(), language);
            let mut labels: Vec<_> =
                COMMON_WEIGHTS.iter().map(|common| weight(common.kind)).collect();
            for label in &labels {
                assert!(label.chars().count() <= limits::LABEL_CHARS, "{label}");
            }
            labels.sort_unstable();
            labels.dedup();
            assert_eq!(labels.len(), COMMON_WEIGHTS.len());
        }
        words::speak(None);
    }

    /// Letter for letter: designs that were kept have these labels.
    #[test]
    fn in_english_a_weight_has_the_label_it_always_had() {
        for (kind, label) in [
            (WeightKind::Pence(50), "50p coin"),
            (WeightKind::Pounds(1), "1 pound coin"),
            (WeightKind::EuroCents(2), "2 cent coin"),
            (WeightKind::Euros(2), "2 euro coin"),
            (WeightKind::AustralianCents(20), "20c coin"),
            (WeightKind::AustralianDollars(1), "1 dollar coin"),
            (WeightKind::UsHalfDollar, "US half dollar"),
            (WeightKind::LargePaperClip, "paper clip (large)"),
            (WeightKind::Other, "other"),
        ] {
            assert_eq!(weight(kind), label);
        }
        for example in Example::ALL {
            for of in example.design().weights {
                assert_eq!(example.weight().map(weight), Some(of.label), "{example:?}");
            }
        }
    }
}
