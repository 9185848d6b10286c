//! Taking one change back.

use noseward_stability::{Component, Design, Quantity, SectionKind};

use super::{Along, Change, ChangeKind, Pair, Piece, SectionPiece};
use crate::Record;

impl Change {
    /// The record without this change and what followed it; all other changes stay.
    ///
    /// `after` is the record in which the change was found. Its numbers come on the grid of
    /// [`Design::rounded`]. The outcomes of its swings stay: they were seen with the rocket
    /// as it was, and whoever shows the other one knows what to do with them.
    #[must_use]
    pub fn undo(&self, after: &Record) -> Record {
        let mut record = after.clone();
        record.design = record.design.rounded();
        let (design, at) = (&mut record.design, self.at);
        match &self.piece {
            Piece::Section(pair) => self.undo_section(design, pair),
            Piece::Fins(pair) => match pair {
                Pair::Both(was, _) => {
                    let Some(set) = design.fins.get_mut(at) else { return record };
                    match self.kind {
                        ChangeKind::FinNumber => set.count = was.count,
                        ChangeKind::FinShape => {
                            set.planform = was.planform.clone();
                        }
                        ChangeKind::FinMass => set.mass = was.mass,
                        _ => {
                            set.start_mm = was.start_mm;
                            set.roll_deg = was.roll_deg;
                        }
                    }
                }
                Pair::Removed(was) => insert(&mut design.fins, at, was),
                Pair::Added(_) => remove(&mut design.fins, at),
            },
            Piece::Weight(pair) => match pair {
                Pair::Both(was, _) => {
                    let Some(weight) = design.weights.get_mut(at) else {
                        return record;
                    };
                    if self.kind == ChangeKind::WeightMass {
                        weight.mass_g = was.mass_g;
                    } else {
                        weight.position_mm = was.position_mm;
                    }
                }
                Pair::Removed(was) => insert(&mut design.weights, at, was),
                Pair::Added(_) => remove(&mut design.weights, at),
            },
            Piece::Swing(field, was, _) => field.set(&mut record.swings.setup, *was),
        }
        record
    }

    fn undo_section(&self, design: &mut Design, pair: &Pair<SectionPiece>) {
        match pair {
            Pair::Both(was, _) => {
                if let Some(section) = design.sections.get_mut(self.at) {
                    let was = &was.section;
                    match self.kind {
                        ChangeKind::SectionShape => {
                            let tubes = [section.kind, was.kind]
                                .map(|kind| kind == SectionKind::Tube);
                            if tubes != [true; 2] {
                                section.closed_front = was.closed_front;
                            }
                            section.kind = was.kind;
                        }
                        ChangeKind::SectionLength => section.length_mm = was.length_mm,
                        ChangeKind::SectionWidth => section.diameter_mm = was.diameter_mm,
                        ChangeKind::SectionMass => section.mass = was.mass,
                        _ => section.closed_front = was.closed_front,
                    }
                }
            }
            Pair::Removed(was) => {
                self.undo_passing(design);
                insert(&mut design.sections, self.at, &was.section);
            }
            Pair::Added(_) => {
                self.undo_passing(design);
                remove(&mut design.sections, self.at);
            }
        }
        for Along { part, by_mm, .. } in &self.along {
            let place = match *part {
                Component::Fins(i) => design.fins.get_mut(i).map(|set| &mut set.start_mm),
                Component::Weight(i) => {
                    design.weights.get_mut(i).map(|weight| &mut weight.position_mm)
                }
                Component::Section(_) => None,
            };
            if let Some(place) = place {
                *place = Quantity::Length.rounded(*place - by_mm);
            }
        }
    }

    fn undo_passing(&self, design: &mut Design) {
        if let Some((at, mass)) = self.passed
            && let Some(section) = design.sections.get_mut(at)
        {
            section.mass = mass;
        }
    }
}

fn insert<T: Clone>(list: &mut Vec<T>, at: usize, part: &T) {
    list.insert(at.min(list.len()), part.clone());
}

fn remove<T>(list: &mut Vec<T>, at: usize) {
    if at < list.len() {
        list.remove(at);
    }
}
