//! In which ways two parts differ.

use noseward_stability::{Design, FinSet, SectionKind, Weight};

use super::ChangeKind;

/// What one difference costs where parts are paired, and what a part costs that only one
/// rocket has: two differences make another part of none of them. Our judgement.
pub(super) const DIFFERENCE: u32 = 4;
pub(super) const OTHER_PART: u32 = 9;
/// Weights have two values only: with another label and two other values it is another.
pub(super) const OTHER_WEIGHT: u32 = 5;
const OTHER_LABEL: u32 = 3;

/// A cost that prefers fewer changes between equals.
pub(super) fn cost(of: u32, changes: usize) -> u32 {
    of * 16 + u32::try_from(changes).unwrap_or(u32::MAX)
}

/// How two sections differ.
pub(super) fn of_sections(
    (before, i): (&Design, usize),
    (after, j): (&Design, usize),
) -> Vec<ChangeKind> {
    let (a, b) = (&before.sections[i], &after.sections[j]);
    let tubes = [a, b].map(|s| s.kind == SectionKind::Tube) == [true; 2];
    let widths = (before.width_mm(i), after.width_mm(j));
    // A width that follows a neighbour, typed as what it was, is the same width.
    let same_width =
        a.diameter_mm == b.diameter_mm || (widths.0.is_some() && widths.0 == widths.1);
    only(&[
        (a.kind != b.kind, ChangeKind::SectionShape),
        (a.length_mm != b.length_mm, ChangeKind::SectionLength),
        (!same_width, ChangeKind::SectionWidth),
        (a.mass != b.mass, ChangeKind::SectionMass),
        (tubes && a.closed_front != b.closed_front, ChangeKind::ClosedFront),
    ])
}

/// How two sets of fins differ, apart from where they start.
pub(super) fn of_fins(a: &FinSet, b: &FinSet) -> Vec<ChangeKind> {
    let same_shape =
        a.planform == b.planform || a.planform.corners_mm() == b.planform.corners_mm();
    only(&[
        (a.count != b.count, ChangeKind::FinNumber),
        (!same_shape, ChangeKind::FinShape),
        (a.mass != b.mass, ChangeKind::FinMass),
    ])
}

/// What it costs to pair two weights that are called differently.
pub(super) fn label_cost(a: &Weight, b: &Weight) -> u32 {
    if a.label.trim() == b.label.trim() { 0 } else { cost(OTHER_LABEL, 0) }
}

fn only(all: &[(bool, ChangeKind)]) -> Vec<ChangeKind> {
    all.iter().filter(|(differs, _)| *differs).map(|(_, kind)| *kind).collect()
}
