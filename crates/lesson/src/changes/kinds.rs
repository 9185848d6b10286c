//! What changed, as kinds with values.

use noseward_stability::{
    Component, FinSet, Mass, Planform, Section, SectionKind, SwingField, Weight,
};

use super::{Change, ChangeKind, Pair, Piece, SectionPiece};
use crate::End;

/// Areas that differ by less than this share are equal: another shape, no larger fin.
const SAME_AREA: f64 = 0.02;

/// What a part is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChangedPart {
    /// A section of the body that is a nose.
    Nose,
    /// A tube.
    Body,
    /// A section that becomes narrower.
    Taper,
    /// A neck.
    Neck,
    /// A tube with what was weighed together with it.
    Bottle,
    /// A set of fins.
    Fins,
    /// A weight.
    Weight,
}

/// What differs, with its values before and after.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Difference<'a> {
    /// Of a part.
    Part(ChangedPart, PartDifference<'a>),
    /// How the rocket is swung.
    Swing(SwingField, f64, f64),
}

/// What differs of a part, with its values before and after.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PartDifference<'a> {
    /// There is a section more, or one less.
    Section {
        /// The section.
        section: &'a Section,
        /// Whether it is new.
        is_new: bool,
    },
    /// There is a set of fins more, or one less.
    Fins {
        /// The set.
        set: &'a FinSet,
        /// Whether it is new.
        is_new: bool,
    },
    /// There is a weight more, or one less.
    Weight {
        /// The weight.
        weight: &'a Weight,
        /// Whether it is new.
        is_new: bool,
    },
    /// The shape of a section.
    Shape(SectionKind, SectionKind),
    /// The length of a section, in millimetres.
    Length(f64, f64),
    /// The width of a section, in millimetres; `None` where nothing tells it.
    Width(Option<f64>, Option<f64>),
    /// The mass.
    Mass(Mass, Mass),
    /// Whether a tube is closed in front.
    ClosedFront(bool, bool),
    /// The number of fins.
    Number(u32, u32),
    /// The shape of a fin.
    Planform(&'a Planform, &'a Planform),
    /// Where fins start, and how they are turned: one set after the other.
    Place(&'a FinSet, &'a FinSet),
    /// Where the middle of a weight is, in millimetres from the nose tip.
    Middle(f64, f64),
}

/// More of something or less of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// More than before.
    More,
    /// Less than before.
    Less,
}

/// What a group did, without the values.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Deed {
    /// It added a part.
    Added(ChangedPart),
    /// It took a part off.
    Removed(ChangedPart),
    /// It made a part longer or shorter.
    Length(ChangedPart, Amount),
    /// It made a part wider or narrower.
    Width(ChangedPart, Amount),
    /// It made a part heavier or lighter.
    Weight(ChangedPart, Amount),
    /// It changed the mass of a part that was not weighed both times.
    Mass(ChangedPart),
    /// It changed the shape of a part.
    Shape(ChangedPart),
    /// It opened or closed the front end.
    ClosedFront(ChangedPart),
    /// It moved a part towards an end.
    Moved(ChangedPart, End),
    /// It put on more or fewer fins.
    FinNumber(Amount),
    /// It made the fins larger or smaller.
    FinSize(Amount),
    /// It turned the fins round the body.
    FinsTurned,
    /// It swung in another way, with more or less of this.
    Swing(SwingField, Amount),
}

impl Change {
    /// What differs, with its values before and after.
    #[must_use]
    pub fn difference(&self) -> Difference<'_> {
        use PartDifference as Of;
        match &self.piece {
            Piece::Section(pair) => {
                let of = match pair {
                    Pair::Added(is) => Of::Section { section: &is.section, is_new: true },
                    Pair::Removed(was) => {
                        Of::Section { section: &was.section, is_new: false }
                    }
                    Pair::Both(a, b) => of_section(self.kind, a, b),
                };
                Difference::Part(section_kind(self.kind, pair), of)
            }
            Piece::Fins(pair) => Difference::Part(
                ChangedPart::Fins,
                match pair {
                    Pair::Added(set) => Of::Fins { set, is_new: true },
                    Pair::Removed(set) => Of::Fins { set, is_new: false },
                    Pair::Both(a, b) => match self.kind {
                        ChangeKind::FinNumber => Of::Number(a.count, b.count),
                        ChangeKind::FinShape => Of::Planform(&a.planform, &b.planform),
                        ChangeKind::FinMass => Of::Mass(a.mass, b.mass),
                        _ => Of::Place(a, b),
                    },
                },
            ),
            Piece::Weight(pair) => Difference::Part(
                ChangedPart::Weight,
                match pair {
                    Pair::Added(weight) => Of::Weight { weight, is_new: true },
                    Pair::Removed(weight) => Of::Weight { weight, is_new: false },
                    Pair::Both(a, b) if self.kind == ChangeKind::WeightMass => {
                        Of::Mass(Mass::WeighedG(a.mass_g), Mass::WeighedG(b.mass_g))
                    }
                    Pair::Both(a, b) => Of::Middle(a.position_mm, b.position_mm),
                },
            ),
            &Piece::Swing(field, from, to) => Difference::Swing(field, from, to),
        }
    }

    /// What a group did, without the values.
    #[must_use]
    pub fn deed(&self) -> Deed {
        use PartDifference as Of;
        let (of, what) = match self.difference() {
            Difference::Swing(field, from, to) => {
                return Deed::Swing(field, amount(from, to));
            }
            Difference::Part(of, what) => (of, what),
        };
        match what {
            Of::Section { is_new, .. }
            | Of::Fins { is_new, .. }
            | Of::Weight { is_new, .. } => {
                if is_new {
                    Deed::Added(of)
                } else {
                    Deed::Removed(of)
                }
            }
            Of::Shape(..) => Deed::Shape(of),
            Of::Length(a, b) => Deed::Length(of, amount(a, b)),
            // What nothing tells is less than any width.
            Of::Width(a, b) => {
                Deed::Width(of, amount(a.unwrap_or_default(), b.unwrap_or_default()))
            }
            Of::Mass(Mass::WeighedG(a), Mass::WeighedG(b)) => {
                Deed::Weight(of, amount(a, b))
            }
            Of::Mass(..) => Deed::Mass(of),
            Of::ClosedFront(..) => Deed::ClosedFront(of),
            Of::Number(a, b) => Deed::FinNumber(amount(a.into(), b.into())),
            Of::Planform(a, b) => {
                let [old, new] = [a, b].map(area_mm2);
                if (new - old).abs() < SAME_AREA * old {
                    Deed::Shape(of)
                } else {
                    Deed::FinSize(amount(old, new))
                }
            }
            Of::Place(a, b) if a.start_mm == b.start_mm => Deed::FinsTurned,
            Of::Place(a, b) => Deed::Moved(of, towards(a.start_mm, b.start_mm)),
            Of::Middle(a, b) => Deed::Moved(of, towards(a, b)),
        }
    }

    /// Whether [its part](Self::part) was taken off: then it is one of the rocket before.
    #[must_use]
    pub fn is_removed(&self) -> bool {
        matches!(
            self.kind,
            ChangeKind::SectionRemoved
                | ChangeKind::FinsRemoved
                | ChangeKind::WeightRemoved
        )
    }

    /// What merely moved with it, by its place in the rocket after the change.
    pub fn moved_with_it(&self) -> impl Iterator<Item = Component> {
        let moved =
            self.along.iter().filter(|along| along.was_there && along.by_mm != 0.0);
        moved.map(|along| along.part)
    }
}

fn of_section(
    kind: ChangeKind,
    a: &SectionPiece,
    b: &SectionPiece,
) -> PartDifference<'static> {
    let (was, is) = (&a.section, &b.section);
    match kind {
        ChangeKind::SectionLength => PartDifference::Length(was.length_mm, is.length_mm),
        ChangeKind::SectionWidth => PartDifference::Width(a.width_mm, b.width_mm),
        ChangeKind::SectionMass => PartDifference::Mass(was.mass, is.mass),
        ChangeKind::ClosedFront => {
            PartDifference::ClosedFront(was.closed_front, is.closed_front)
        }
        _ => PartDifference::Shape(was.kind, is.kind),
    }
}

/// What a section is, after the change if it is there. A tube is a bottle where that is what
/// was weighed.
fn section_kind(kind: ChangeKind, pair: &Pair<SectionPiece>) -> ChangedPart {
    let (Pair::Added(piece) | Pair::Removed(piece) | Pair::Both(_, piece)) = pair;
    match piece.section.kind {
        SectionKind::Tube if kind == ChangeKind::SectionMass && piece.is_bottle => {
            ChangedPart::Bottle
        }
        SectionKind::Tube => ChangedPart::Body,
        SectionKind::StraightTaper | SectionKind::RoundedTaper => ChangedPart::Taper,
        SectionKind::Neck => ChangedPart::Neck,
        SectionKind::Cone
        | SectionKind::Ogive
        | SectionKind::Ellipsoid
        | SectionKind::Paraboloid
        | SectionKind::Dome => ChangedPart::Nose,
    }
}

fn amount(before: f64, after: f64) -> Amount {
    if after > before { Amount::More } else { Amount::Less }
}

fn towards(before_mm: f64, after_mm: f64) -> End {
    if after_mm > before_mm { End::Tail } else { End::Nose }
}

/// The area of one fin, in mm².
fn area_mm2(planform: &Planform) -> f64 {
    let corners = planform.corners_mm();
    let next = corners.iter().cycle().skip(1);
    let twice: f64 =
        corners.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum();
    twice.abs() / 2.0
}
