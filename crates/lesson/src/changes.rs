//! What differs between two rockets, found by the program.
//!
//! A change is one aspect of one part, or how the rocket is swung. What merely follows a
//! change, such as fins that keep their distance from the tail when a nose is added,
//! belongs to that change and is none of its own.

mod align;
mod body;
mod kinds;
mod parts;
#[cfg(test)]
mod tests;
mod undo;

use noseward_stability::{
    Component, Design, FinSet, Mass, Quantity, Section, SwingField, SwingSetup, Weight,
};

use crate::Record;
use align::{align, place_in_after};
use body::{Bodies, Displacement, near};
pub use kinds::{Amount, ChangedPart, Deed, Difference, PartDifference};
use parts::{DIFFERENCE, OTHER_PART, OTHER_WEIGHT, cost};

/// One change between two rockets. See [`changes`].
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Which aspect changed.
    pub kind: ChangeKind,
    /// The part: its place in the rocket after the change, or, where it was removed, in the
    /// one before. `None` for how the rocket is swung.
    pub part: Option<Component>,
    /// Its place after the change, or where it belongs there.
    at: usize,
    /// The part as it was and as it is.
    piece: Piece,
    /// What it took along.
    along: Vec<Along>,
    /// A section that took over the mass of a removed one, or gave it to an added one, and
    /// how it was weighed before.
    passed: Option<(usize, Mass)>,
}

/// Which aspect of a rocket changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it, and `PartDifference` with values")]
pub enum ChangeKind {
    SectionAdded,
    SectionRemoved,
    SectionShape,
    SectionLength,
    SectionWidth,
    SectionMass,
    /// Whether the front end is open or closed.
    ClosedFront,
    FinsAdded,
    FinsRemoved,
    FinNumber,
    /// Any of root, tip, span, sweep and corners.
    FinShape,
    /// Where they start, and how they are turned.
    FinPlace,
    FinMass,
    WeightAdded,
    WeightRemoved,
    WeightMass,
    WeightPlace,
    Swing(SwingField),
}

/// What changed.
#[derive(Clone, Debug, PartialEq)]
enum Piece {
    Section(Pair<SectionPiece>),
    Fins(Pair<FinSet>),
    Weight(Pair<Weight>),
    /// A value of the setup, before and after.
    Swing(SwingField, f64, f64),
}

/// A part before and after.
#[derive(Clone, Debug, PartialEq)]
enum Pair<T> {
    Added(T),
    Removed(T),
    Both(T, T),
}

/// A section, with the width that it has there.
#[derive(Clone, Debug, PartialEq)]
struct SectionPiece {
    section: Section,
    width_mm: Option<f64>,
    /// Whether others were weighed with it, so that its mass is that of a bottle.
    is_bottle: bool,
}

/// A part that a change of the body took along.
#[derive(Clone, Debug, PartialEq)]
struct Along {
    /// Its place after the change.
    part: Component,
    /// Towards the tail, in millimetres.
    by_mm: f64,
    /// Whether it was there before.
    was_there: bool,
}

/// Every change between two records, in the order of the design: sections, fins, weights,
/// then how the rocket is swung, where both were.
///
/// Words, the measured mass and the hanging point are no changes. Numbers are compared on
/// the grid of [`Record::rounded`]; a width or a fin outline that is written in another way
/// and comes to the same is the same.
///
/// ```
/// use noseward_lesson::{Difference, PartDifference, ChangedPart, Record, changes};
/// use noseward_stability::Example;
///
/// let tern = Record::from(Example::Tern.design());
/// let mut other = tern.clone();
/// other.design.fins[0].count = 4;
/// let found = changes(&tern, &other);
/// assert_eq!(found.len(), 1);
/// let number = Difference::Part(ChangedPart::Fins, PartDifference::Number(3, 4));
/// assert_eq!(found[0].difference(), number);
/// assert_eq!(found[0].undo(&other), tern);
/// ```
#[must_use]
pub fn changes(before: &Record, after: &Record) -> Vec<Change> {
    let swung = before.has_swings() && after.has_swings();
    let [before, after] = [before, after].map(|record| record.clone().rounded());
    let mut found = Found::new(&before.design, &after.design);
    found.fins();
    found.weights();
    found.sections();
    if swung {
        found.swings((before.swings.setup, after.swings.setup));
    }
    found.changes
}

/// Changes as they are found. Fins and weights come first, so that sections know what they
/// took along.
struct Found<'a> {
    before: &'a Design,
    after: &'a Design,
    bodies: Bodies<'a>,
    changes: Vec<Change>,
    /// What each step of the body took along.
    along: Vec<Vec<Along>>,
}

impl<'a> Found<'a> {
    fn new(before: &'a Design, after: &'a Design) -> Self {
        let bodies = Bodies::new(before, after);
        let along = vec![Vec::new(); bodies.steps.len()];
        Self { before, after, bodies, changes: Vec::new(), along }
    }

    fn push(
        &mut self,
        kind: ChangeKind,
        part: Option<Component>,
        at: usize,
        piece: Piece,
    ) {
        let along = Vec::new();
        self.changes.push(Change { kind, part, at, piece, along, passed: None });
    }

    /// Notes which steps of the body took a part along.
    fn note(&mut self, part: Component, by: &[bool], was_there: bool) {
        for (step, _) in by.iter().enumerate().filter(|(_, takes)| **takes) {
            let by_mm = self.bodies.longer_mm(step);
            self.along[step].push(Along { part, by_mm, was_there });
        }
    }

    fn fins(&mut self) {
        let (before, after) = (&self.before.fins, &self.after.fins);
        let gap = cost(OTHER_PART, 1);
        let steps = align((before.len(), after.len()), gap, |i, j| {
            let (a, b) = (&before[i], &after[j]);
            let differences = parts::of_fins(a, b).len();
            let carried = self.bodies.carried(a.start_mm, b.start_mm);
            let moved = !same_fin_place(&carried, a, b);
            each(differences + usize::from(moved))
        });
        for (k, step) in steps.iter().enumerate() {
            let at = place_in_after(&steps, k);
            match *step {
                (Some(i), Some(j)) => {
                    let (a, b) = (&before[i], &after[j]);
                    let part = Component::Fins(j);
                    let carried = self.bodies.carried(a.start_mm, b.start_mm);
                    self.note(part, &carried.by, true);
                    let mut kinds = parts::of_fins(a, b);
                    if !same_fin_place(&carried, a, b) {
                        kinds.push(ChangeKind::FinPlace);
                    }
                    for kind in kinds {
                        let was = FinSet { start_mm: carried.expected_mm, ..a.clone() };
                        let piece = Piece::Fins(Pair::Both(was, b.clone()));
                        self.push(kind, Some(part), j, piece);
                    }
                }
                (Some(i), None) => {
                    let start_mm = self.bodies.pushed(before[i].start_mm).expected_mm;
                    let was = FinSet { start_mm, ..before[i].clone() };
                    let piece = Piece::Fins(Pair::Removed(was));
                    self.push(
                        ChangeKind::FinsRemoved,
                        Some(Component::Fins(i)),
                        at,
                        piece,
                    );
                }
                (_, j) => {
                    let j = j.unwrap_or_default();
                    self.note(
                        Component::Fins(j),
                        &self.bodies.pushed_to(after[j].start_mm),
                        false,
                    );
                    let piece = Piece::Fins(Pair::Added(after[j].clone()));
                    self.push(ChangeKind::FinsAdded, Some(Component::Fins(j)), j, piece);
                }
            }
        }
    }

    fn weights(&mut self) {
        let (before, after) = (&self.before.weights, &self.after.weights);
        let gap = cost(OTHER_WEIGHT, 1);
        let carried = |bodies: &Bodies<'_>, a: &Weight, b: &Weight| {
            bodies.carried(a.position_mm, b.position_mm)
        };
        let steps = align((before.len(), after.len()), gap, |i, j| {
            let (a, b) = (&before[i], &after[j]);
            let place = carried(&self.bodies, a, b);
            let differences = usize::from(a.mass_g != b.mass_g)
                + usize::from(!near(place.expected_mm, b.position_mm));
            each(differences) + parts::label_cost(a, b)
        });
        for (k, step) in steps.iter().enumerate() {
            let at = place_in_after(&steps, k);
            match *step {
                (Some(i), Some(j)) => {
                    let (a, b) = (&before[i], &after[j]);
                    let part = Component::Weight(j);
                    let place = carried(&self.bodies, a, b);
                    self.note(part, &place.by, true);
                    let position_mm = place.expected_mm;
                    for (differs, kind) in [
                        (a.mass_g != b.mass_g, ChangeKind::WeightMass),
                        (!near(position_mm, b.position_mm), ChangeKind::WeightPlace),
                    ] {
                        if differs {
                            let was = Weight { position_mm, ..a.clone() };
                            let piece = Piece::Weight(Pair::Both(was, b.clone()));
                            self.push(kind, Some(part), j, piece);
                        }
                    }
                }
                (Some(i), None) => {
                    let position_mm =
                        self.bodies.pushed(before[i].position_mm).expected_mm;
                    let was = Weight { position_mm, ..before[i].clone() };
                    let piece = Piece::Weight(Pair::Removed(was));
                    self.push(
                        ChangeKind::WeightRemoved,
                        Some(Component::Weight(i)),
                        at,
                        piece,
                    );
                }
                (_, j) => {
                    let j = j.unwrap_or_default();
                    self.note(
                        Component::Weight(j),
                        &self.bodies.pushed_to(after[j].position_mm),
                        false,
                    );
                    let piece = Piece::Weight(Pair::Added(after[j].clone()));
                    self.push(
                        ChangeKind::WeightAdded,
                        Some(Component::Weight(j)),
                        j,
                        piece,
                    );
                }
            }
        }
    }

    /// Sections, in front of all that was found before.
    fn sections(&mut self) {
        let others = std::mem::take(&mut self.changes);
        let mut passed_to = None;
        for step in 0..self.bodies.steps.len() {
            let (i, j) = self.bodies.steps[step];
            let at = place_in_after(&self.bodies.steps, step);
            let old = |i| SectionPiece::of(self.before, i);
            let new = |j| SectionPiece::of(self.after, j);
            let (kinds, part, pair) = match (i, j) {
                (Some(i), Some(j)) => {
                    let differences =
                        parts::of_sections((self.before, i), (self.after, j));
                    (differences, Component::Section(j), Pair::Both(old(i), new(j)))
                }
                (Some(i), None) => (
                    vec![ChangeKind::SectionRemoved],
                    Component::Section(i),
                    Pair::Removed(old(i)),
                ),
                (_, j) => {
                    let j = j.unwrap_or_default();
                    let added = vec![ChangeKind::SectionAdded];
                    (added, Component::Section(j), Pair::Added(new(j)))
                }
            };
            let piece = Piece::Section(pair);
            for kind in kinds {
                let follows = kind == ChangeKind::SectionMass && j == passed_to;
                if follows {
                    continue;
                }
                self.push(kind, Some(part), at, piece.clone());
                let Some(change) = self.changes.last_mut() else { continue };
                if kind.moves_others() {
                    change.along = std::mem::take(&mut self.along[step]);
                }
                if i.is_none() || j.is_none() {
                    change.passed = self.bodies.mass_passed(step);
                    passed_to = change.passed.map(|(j, _)| j);
                }
            }
        }
        self.changes.extend(others);
    }

    fn swings(&mut self, (before, after): (SwingSetup, SwingSetup)) {
        for field in SwingField::ALL {
            let (from, to) = (field.get(&before), field.get(&after));
            if from != to {
                let piece = Piece::Swing(field, from, to);
                self.push(ChangeKind::Swing(field), None, 0, piece);
            }
        }
    }
}

impl ChangeKind {
    fn moves_others(self) -> bool {
        matches!(self, Self::SectionAdded | Self::SectionRemoved | Self::SectionLength)
    }
}

impl SectionPiece {
    fn of(design: &Design, i: usize) -> Self {
        let behind = design.sections.get(i + 1);
        Self {
            section: design.sections[i].clone(),
            width_mm: design.width_mm(i),
            is_bottle: behind.is_some_and(|section| section.mass == Mass::Joined),
        }
    }
}

/// The cost of so many changes to one part.
fn each(changes: usize) -> u32 {
    cost(DIFFERENCE, 1) * u32::try_from(changes).unwrap_or(u32::MAX)
}

fn same_fin_place(carried: &Displacement, a: &FinSet, b: &FinSet) -> bool {
    near(carried.expected_mm, b.start_mm)
        && Quantity::Angle.rounded(a.roll_deg) == Quantity::Angle.rounded(b.roll_deg)
}
