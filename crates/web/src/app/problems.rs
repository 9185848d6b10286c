//! What is wrong with a rocket, in words.

use noseward_drawing::Written;
use noseward_stability::{Fault, Problem as Is, Quantity, Units, limits};
use noseward_words::{self as words, Number};

/// What is wrong and how to mend it, in the language in use and in the units given.
pub(crate) fn sentence(fault: &Fault, units: Units) -> String {
    let long = |say, mm: f64| with_text(say, &units.length(mm));
    match fault.problem {
        Is::NotANumber => words::problem_not_a_number().into(),
        Is::OutOfBounds { least, most } => {
            let [least, most] = [least, most].map(|bound| typed(fault, bound, units));
            words::problem_out_of_bounds(&least, &most)
        }
        Is::NoSections => words::problem_no_sections().into(),
        Is::TooManySections => count(words::problem_too_many_sections, limits::SECTIONS),
        Is::TooManyFinSets => count(words::problem_too_many_fin_sets, limits::FIN_SETS),
        Is::TooManyWeights => count(words::problem_too_many_weights, limits::WEIGHTS),
        Is::NameTooLong => count(words::problem_name_too_long, limits::LABEL_CHARS),
        Is::TextTooLong => words::problem_text_too_long().into(),
        Is::NoseNotFirst => words::problem_nose_not_first().into(),
        Is::TaperFirst => words::problem_taper_first().into(),
        Is::WidthMissing => words::problem_width_missing().into(),
        Is::OgiveTooShort { least_mm } => long(words::problem_ogive_too_short, least_mm),
        Is::DomeTooLong { most_mm } => long(words::problem_dome_too_long, most_mm),
        Is::NeckTooWide { bottle_mm } => long(words::problem_neck_too_wide, bottle_mm),
        Is::BottleTooNarrow { neck_mm } => {
            long(words::problem_bottle_too_narrow, neck_mm)
        }
        Is::JoinedToNothing => words::problem_joined_to_nothing().into(),
        Is::FinJoined => words::problem_fin_joined().into(),
        Is::NothingWeighed => words::problem_nothing_weighed().into(),
        Is::FinOffBody { length_mm } => long(words::problem_fin_off_body, length_mm),
        Is::TooFewPoints => count(words::problem_too_few_points, limits::FIN_POINTS.0),
        Is::TooManyPoints => count(words::problem_too_many_points, limits::FIN_POINTS.1),
        Is::FinCrossesItself => words::problem_fin_crosses_itself().into(),
        Is::FinTouchesNothing => words::problem_fin_touches_nothing().into(),
        Is::WeightOutside { length_mm } => long(words::problem_weight_outside, length_mm),
        Is::CentimetresForMillimetres { typed_mm } => {
            let [typed, meant] = [typed_mm, typed_mm * 10.0].map(|mm| units.length(mm));
            words::problem_centimetres(&typed, &meant)
        }
        Is::KilogramsForGrams { typed_g } => {
            with_text(words::problem_kilograms, &units.scale_reading(typed_g))
        }
        Is::FinOverhangs { by_mm } => long(words::problem_fin_overhangs, by_mm),
        Is::TwoFins => words::problem_two_fins().into(),
        Is::ManyFins => words::problem_many_fins().into(),
        Is::SlenderFins => words::problem_slender_fins().into(),
        Is::SameFinsTwice => words::problem_same_fins_twice().into(),
        Is::FinsInWake => words::problem_fins_in_wake().into(),
        Is::MassDiffers { computed_g, measured_g } => {
            let [scales, parts] =
                [measured_g, computed_g].map(|g| units.scale_reading(g));
            words::problem_mass_differs(&scales, &parts)
        }
    }
}

/// One call for many sentences is less code.
#[inline(never)]
fn with_text(say: fn(&str) -> String, text: &str) -> String {
    say(text)
}

#[inline(never)]
fn count(say: fn(Number) -> String, count: usize) -> String {
    say(count.into())
}

/// A bound as somebody would type it, with its unit.
fn typed(fault: &Fault, bound: f64, units: Units) -> String {
    let quantity = fault.field.quantity().unwrap_or(Quantity::Count);
    let number = words::as_typed(&quantity.number(bound, units));
    format!("{number} {}", quantity.unit(units)).trim_end().into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Field, FinField, SectionField};

    fn said(field: Field, problem: Is, units: Units) -> String {
        sentence(&Fault { field, problem }, units)
    }

    /// Letter for letter, with the numbers in their places.
    #[test]
    fn numbers_stand_where_they_belong() {
        let length = Field::Section(0, SectionField::Length);
        let bounds = Is::OutOfBounds { least: 2.0, most: 2000.5 };
        for (field, problem, words) in [
            (length, bounds, "Use a number from 2 mm to 2000.5 mm."),
            (Field::TotalMass, bounds, "Use a number from 2 g to 2000.5 g."),
            (Field::Fins(0, FinField::Count), bounds, "Use a number from 2 to 2001."),
            (
                Field::Fins(0, FinField::Roll),
                Is::OutOfBounds { least: -180.0, most: 180.0 },
                "Use a number from -180 ° to 180 °.",
            ),
            (
                Field::Weights,
                Is::TooManyWeights,
                "That is more weights than fit. Keep 12 or fewer.",
            ),
            (
                length,
                Is::CentimetresForMillimetres { typed_mm: 6.5 },
                "Only 6.5 mm? If you measured in centimetres, type 65 mm.",
            ),
            (
                Field::TotalMass,
                Is::MassDiffers { computed_g: 60.2, measured_g: 100.4 },
                "The scales say 100 g, the parts add up to 60 g. Is a part missing, or wet?",
            ),
        ] {
            assert_eq!(said(field, problem, Units::METRIC), words);
        }
        let wide = Is::NeckTooWide { bottle_mm: 65.0 };
        assert_eq!(
            said(length, wide, Units::INCH),
            "A neck is narrower than its bottle, which is 2.559 in wide here."
        );
    }
}
