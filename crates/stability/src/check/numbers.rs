//! Counts, sizes and lengths of text against the hard bounds.

use super::{Findings, Problem};
use crate::design::field::{Field, FinField, WeightField};
use crate::design::{Design, FinSet, limits};

pub(super) fn check(design: &Design, found: &mut Findings) {
    counts(design, found);
    if is_too_large(design) {
        // What a thousand parts are each like is not worth a look.
        return;
    }
    texts(design, found);
    for field in Field::numbers(design) {
        let Some(value) = field.get(design) else { continue };
        let (least, most) = field.bounds();
        if !value.is_finite() {
            found.push(field, Problem::NotANumber);
        } else if value < least || value > most {
            found.push(field, Problem::OutOfBounds { least, most });
        }
    }
}

/// Whether there is more of something than a design may hold, so that all else would be
/// work for nothing.
pub(super) fn is_too_large(design: &Design) -> bool {
    design.sections.len() > limits::SECTIONS
        || design.fins.len() > limits::FIN_SETS
        || design.weights.len() > limits::WEIGHTS
        || design.fins.iter().any(has_too_many_corners)
}

fn has_too_many_corners(set: &FinSet) -> bool {
    set.planform.corner_count() > limits::FIN_POINTS.1
}

fn counts(design: &Design, found: &mut Findings) {
    let mut push = |wrong: bool, field, problem| {
        if wrong {
            found.push(field, problem);
        }
    };
    let sections = design.sections.len();
    push(sections == 0, Field::Sections, Problem::NoSections);
    push(sections > limits::SECTIONS, Field::Sections, Problem::TooManySections);
    let many_fins = design.fins.len() > limits::FIN_SETS;
    push(many_fins, Field::FinSets, Problem::TooManyFinSets);
    let many_weights = design.weights.len() > limits::WEIGHTS;
    push(many_weights, Field::Weights, Problem::TooManyWeights);
    for (i, set) in design.fins.iter().enumerate().take(limits::FIN_SETS) {
        let field = Field::Fins(i, FinField::Planform);
        push(has_too_many_corners(set), field, Problem::TooManyPoints);
    }
}

fn texts(design: &Design, found: &mut Findings) {
    let labels = design.weights.iter().enumerate();
    let labels = labels.map(|(i, w)| (Field::Weight(i, WeightField::Label), &w.label));
    let mut bytes = 0;
    for (field, text) in std::iter::once((Field::Name, &design.name)).chain(labels) {
        let within = bytes <= limits::TEXT_BYTES;
        bytes += text.len();
        if text.chars().count() > limits::LABEL_CHARS {
            found.push(field, Problem::NameTooLong);
        } else if within && bytes > limits::TEXT_BYTES {
            found.push(field, Problem::TextTooLong);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, Planform, Weight};

    fn problems(design: &Design) -> Vec<(String, Problem)> {
        let mut found = Findings::default();
        check(design, &mut found);
        found.0.iter().map(|f| (f.field.to_string(), f.problem)).collect()
    }

    /// A design far beyond its limits is refused by its size alone: each of its parts would
    /// take a look at all the others.
    #[test]
    fn a_design_that_is_far_too_large_is_refused_by_its_size() {
        let many = 300_000;
        let mut design = Example::Puffin.design();
        design.sections = vec![design.sections[1].clone(); many];
        design.weights = vec![Weight::default(); many];
        let set = &mut design.fins[0];
        set.planform = Planform::PointsMm(vec![[f64::NAN, 0.0]; many]);
        let faults = crate::evaluate(&design).faults;
        let fields: Vec<String> = faults.iter().map(|f| f.field.to_string()).collect();
        assert_eq!(fields, ["/sections", "/weights", "/fins/0/planform"]);
    }

    #[test]
    fn every_number_of_an_example_is_bounded_and_must_be_finite() {
        let design = Example::Puffin.design();
        assert_eq!(problems(&design), []);
        for field in Field::numbers(&design) {
            let (least, most) = field.bounds();
            let whole = field.quantity() == Some(crate::Quantity::Count);
            for value in [least - 1.0, most + 1.0, f64::NAN, f64::INFINITY] {
                if whole && !value.is_finite() {
                    continue;
                }
                let mut worse = design.clone();
                assert!(field.set(&mut worse, Some(value)), "{field}");
                assert!(
                    problems(&worse).iter().any(|(f, _)| *f == field.to_string()),
                    "{field} took {value}"
                );
            }
        }
    }

    #[test]
    fn counts_are_bounded() {
        let mut design = Example::Puffin.design();
        design.sections = vec![design.sections[1].clone(); limits::SECTIONS + 1];
        design.fins = vec![design.fins[0].clone(); limits::FIN_SETS + 1];
        design.weights = vec![Weight::default(); limits::WEIGHTS + 1];
        let found: Vec<_> = problems(&design).into_iter().map(|(f, _)| f).collect();
        assert_eq!(found, ["/sections", "/fins", "/weights"]);
    }

    #[test]
    fn text_is_bounded_singly_and_together() {
        let mut design = Example::Puffin.design();
        design.name = "x".repeat(limits::LABEL_CHARS + 1);
        assert_eq!(problems(&design), [("/name".into(), Problem::NameTooLong)]);
        assert!(
            crate::evaluate(&design).figures.is_some(),
            "it can be drawn all the same"
        );
        design.name = "ж".repeat(limits::LABEL_CHARS);
        design.weights = vec![
            Weight {
                label: "ж".repeat(limits::LABEL_CHARS),
                ..design.weights[0].clone()
            };
            3
        ];
        let found = problems(&design);
        assert_eq!(found, [("/weights/2/label".into(), Problem::TextTooLong)]);
    }
}
