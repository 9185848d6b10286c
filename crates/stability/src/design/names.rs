//! What parts and shapes are called, for a reader.

use super::component::Component;
use super::{Design, Section, SectionKind, Weight};

impl SectionKind {
    /// Its name in a list of shapes.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Cone => "nose: cone",
            Self::Ogive => "nose: arch (ogive)",
            Self::Ellipsoid => "nose: egg (ellipsoid)",
            Self::Paraboloid => "nose: paraboloid",
            Self::Dome => "nose: bottle base (dome)",
            Self::Tube => "tube",
            Self::StraightTaper => "taper, straight",
            Self::RoundedTaper => "taper, rounded (shoulder)",
            Self::Neck => "neck",
        }
    }

    /// What a section of this kind is called.
    #[must_use]
    pub fn group(self) -> &'static str {
        match self {
            Self::Tube => "Tube",
            Self::StraightTaper | Self::RoundedTaper => "Taper",
            Self::Neck => "Neck",
            Self::Cone
            | Self::Ogive
            | Self::Ellipsoid
            | Self::Paraboloid
            | Self::Dome => "Nose",
        }
    }
}

impl Component {
    /// What the part is called, with its number where there are several; empty for a
    /// section that the design has not.
    ///
    /// ```
    /// use noseward_stability::{Example, Component};
    ///
    /// let puffin = Example::Puffin.design();
    /// assert_eq!(Component::Section(0).name(&puffin), "Nose");
    /// assert_eq!(Component::Weight(0).name(&puffin), "clay");
    /// ```
    #[must_use]
    pub fn name(self, design: &Design) -> String {
        let numbered = |name: &str, i: usize, of: usize| {
            if of > 1 { format!("{name} {}", i + 1) } else { name.to_owned() }
        };
        match self {
            Self::Section(i) => {
                let Some(section) = design.sections.get(i) else { return String::new() };
                let name = section.kind.group();
                let same = |s: &&Section| s.kind.group() == name;
                let of = design.sections.iter().filter(same).count();
                let before = design.sections[..i].iter().filter(same).count();
                numbered(name, before, of)
            }
            Self::Fins(i) => numbered("Fins", i, design.fins.len()),
            Self::Weight(i) => {
                let weight = design.weights.get(i);
                match weight.map(|w| w.label.trim()) {
                    Some(label) if !label.is_empty() => {
                        let same = |w: &&Weight| w.label.trim() == label;
                        let of = design.weights.iter().filter(same).count();
                        let before = design.weights[..i].iter().filter(same).count();
                        numbered(label, before, of)
                    }
                    _ => numbered("Weight", i, design.weights.len()),
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    #[test]
    fn parts_are_numbered_where_there_are_several() {
        let mut design = Example::Puffin.design();
        assert_eq!(Component::Fins(0).name(&design), "Fins");
        design.fins.push(design.fins[0].clone());
        design.weights.push(design.weights[0].clone());
        design.weights.push(Weight { label: " ".into(), ..design.weights[0].clone() });
        design.sections.push(design.sections[1].clone());
        let names = [
            Component::Section(1),
            Component::Section(4),
            Component::Section(9),
            Component::Fins(1),
            Component::Weight(1),
            Component::Weight(2),
        ];
        assert_eq!(
            names.map(|part| part.name(&design)),
            ["Tube 1", "Tube 2", "", "Fins 2", "clay 2", "Weight 3"]
        );
    }
}
