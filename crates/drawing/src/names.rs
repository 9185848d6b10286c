//! What the parts of a rocket and its swings are called, in the language in use.

use noseward_lesson::SwingOutcome;
use noseward_stability::{Called, Component, Design, PartKind};
use noseward_words::{self as words, Text};

/// What a part is called, with its number where there are several; empty for a section that
/// the design has not.
#[must_use]
pub fn part_name(design: &Design, part: Component) -> String {
    let Some(Called { kind, label, number }) = part.called(design) else {
        return String::new();
    };
    let name = match kind {
        _ if !label.is_empty() => label,
        PartKind::Nose => words::part_nose().into(),
        PartKind::Tube => words::part_tube().into(),
        PartKind::Taper => words::part_taper().into(),
        PartKind::Neck => words::part_neck().into(),
        PartKind::Fins => words::part_fins().into(),
        PartKind::Weight => words::part_weight().into(),
    };
    match number {
        Some(number) => words::part_numbered(name, number.into()),
        None => name.into(),
    }
}

/// What a swing showed.
#[must_use]
pub fn outcome_name(outcome: SwingOutcome) -> Text {
    match outcome {
        SwingOutcome::Steady => words::lesson_steady(),
        SwingOutcome::Wobbling => words::lesson_wobbling(),
        SwingOutcome::Sideways => words::lesson_sideways(),
        SwingOutcome::TailFirst => words::lesson_tail_first(),
        SwingOutcome::Slipped => words::lesson_slipped(),
        SwingOutcome::NotSure => words::lesson_not_sure(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::Example;

    #[test]
    fn a_part_is_called_by_its_kind_or_its_label_and_its_number() {
        let mut design = Example::Puffin.design();
        let names = |design: &Design| -> Vec<String> {
            let sections = (0..5).map(Component::Section);
            let others = [Component::Fins(0), Component::Weight(0), Component::Weight(1)];
            sections.chain(others).map(|part| part_name(design, part)).collect()
        };
        let one = ["Nose", "Tube", "Taper", "Neck", "", "Fins", "clay", "Weight"];
        assert_eq!(names(&design), one);
        design.sections.push(design.sections[1].clone());
        design.fins.push(design.fins[0].clone());
        design.weights.push(design.weights[0].clone());
        let several =
            ["Nose", "Tube 1", "Taper", "Neck", "Tube 2", "Fins 1", "clay 1", "clay 2"];
        assert_eq!(names(&design), several);
    }
}
