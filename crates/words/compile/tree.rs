//! A sentence as the build sees it: what is left once terms and references are put in.

use std::collections::BTreeSet;

use crate::mark::Mark;

/// The marks as files write them, in the order of [`Mark::ALL`].
pub(crate) const MARKS: [&str; Mark::ALL.len()] =
    ["b", "link", "link2", "button", "key", "value", "aside"];

/// A piece of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Piece {
    /// Text.
    Text(String),
    /// An argument, by its place.
    Argument(usize),
    /// Texts of which one is said.
    Select {
        /// The argument that decides, by its place.
        argument: usize,
        /// The texts with their keys.
        cases: Vec<(Key, Vec<Self>)>,
        /// The text for everything else.
        otherwise: Vec<Self>,
    },
    /// A marked run begins.
    Open(Mark),
    /// It ends.
    Close,
}

/// When a text is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Key {
    /// For this number itself.
    Exact(u8),
    /// For a plural category, by its place in zero, one, two, few, many, other.
    Category(u8),
    /// For a choice, by its place.
    Choice(u8),
}

/// Which marks stand in a sentence.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct MarksUsed {
    /// Whatever its arguments are.
    pub(crate) always: BTreeSet<Mark>,
    /// For some arguments at least.
    pub(crate) ever: BTreeSet<Mark>,
}

impl MarksUsed {
    /// The marks in these pieces.
    pub(crate) fn of(pieces: &[Piece]) -> Self {
        let mut used = Self::default();
        for piece in pieces {
            match piece {
                Piece::Open(mark) => {
                    used.always.insert(*mark);
                    used.ever.insert(*mark);
                }
                Piece::Select { cases, otherwise, .. } => {
                    let mut always = Self::of(otherwise).always;
                    used.ever.extend(Self::of(otherwise).ever);
                    for (_, pieces) in cases {
                        let case = Self::of(pieces);
                        always.retain(|mark| case.always.contains(mark));
                        used.ever.extend(case.ever);
                    }
                    used.always.extend(always);
                }
                Piece::Text(_) | Piece::Argument(_) | Piece::Close => {}
            }
        }
        used
    }
}

/// The arguments that stand in these pieces, by their places.
pub(crate) fn arguments(pieces: &[Piece]) -> BTreeSet<usize> {
    let mut found = BTreeSet::new();
    for piece in pieces {
        match piece {
            Piece::Argument(argument) => {
                found.insert(*argument);
            }
            Piece::Select { argument, cases, otherwise } => {
                found.insert(*argument);
                found.extend(arguments(otherwise));
                for (_, pieces) in cases {
                    found.extend(arguments(pieces));
                }
            }
            Piece::Text(_) | Piece::Open(_) | Piece::Close => {}
        }
    }
    found
}
