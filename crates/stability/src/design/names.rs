//! What a part is called, as a kind with values. The words are not here.

use super::component::Component;
use super::{Design, Section, SectionKind, Weight};

/// What kind of part it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum PartKind {
    Nose,
    Tube,
    Taper,
    Neck,
    /// A set of fins.
    Fins,
    Weight,
}

/// What a part is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Called<'a> {
    /// Its kind, by which it is called unless it has a label.
    pub kind: PartKind,
    /// The label of a weight; empty for all else.
    pub label: &'a str,
    /// Its number, from 1 on, where several are called the same.
    pub number: Option<usize>,
}

impl SectionKind {
    /// What kind of part a section of this kind is.
    #[must_use]
    pub fn part(self) -> PartKind {
        match self {
            Self::Tube => PartKind::Tube,
            Self::StraightTaper | Self::RoundedTaper => PartKind::Taper,
            Self::Neck => PartKind::Neck,
            Self::Cone
            | Self::Ogive
            | Self::Ellipsoid
            | Self::Paraboloid
            | Self::Dome => PartKind::Nose,
        }
    }
}

impl Component {
    /// What the part is called; `None` for a section that the design has not.
    ///
    /// ```
    /// use noseward_stability::{Component, Example, PartKind};
    ///
    /// let puffin = Example::Puffin.design();
    /// let nose = Component::Section(0).called(&puffin).unwrap();
    /// assert_eq!((nose.kind, nose.number), (PartKind::Nose, None));
    /// assert_eq!(Component::Weight(0).called(&puffin).unwrap().label, "clay");
    /// ```
    #[must_use]
    pub fn called(self, design: &Design) -> Option<Called<'_>> {
        let numbered = |kind, label, before: usize, of: usize| Called {
            kind,
            label,
            number: (of > 1).then_some(before + 1),
        };
        Some(match self {
            Self::Section(i) => {
                let kind = design.sections.get(i)?.kind.part();
                let same = |s: &&Section| s.kind.part() == kind;
                let of = design.sections.iter().filter(same).count();
                numbered(kind, "", design.sections[..i].iter().filter(same).count(), of)
            }
            Self::Fins(i) => numbered(PartKind::Fins, "", i, design.fins.len()),
            Self::Weight(i) => {
                let label = design.weights.get(i).map_or("", |w| w.label.trim());
                if label.is_empty() {
                    numbered(PartKind::Weight, "", i, design.weights.len())
                } else {
                    let same = |w: &&Weight| w.label.trim() == label;
                    let of = design.weights.iter().filter(same).count();
                    let before = design.weights[..i].iter().filter(same).count();
                    numbered(PartKind::Weight, label, before, of)
                }
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    #[test]
    fn parts_are_numbered_where_there_are_several() {
        let mut design = Example::Puffin.design();
        let fins = Called { kind: PartKind::Fins, label: "", number: None };
        assert_eq!(Component::Fins(0).called(&design), Some(fins));
        design.fins.push(design.fins[0].clone());
        design.weights.push(design.weights[0].clone());
        design.weights.push(Weight { label: " ".into(), ..design.weights[0].clone() });
        design.sections.push(design.sections[1].clone());
        for (part, kind, label, number) in [
            (Component::Section(1), PartKind::Tube, "", 1),
            (Component::Section(4), PartKind::Tube, "", 2),
            (Component::Fins(1), PartKind::Fins, "", 2),
            (Component::Weight(1), PartKind::Weight, "clay", 2),
            (Component::Weight(2), PartKind::Weight, "", 3),
        ] {
            let called = Called { kind, label, number: Some(number) };
            assert_eq!(part.called(&design), Some(called));
        }
        assert_eq!(Component::Section(9).called(&design), None);
    }
}
