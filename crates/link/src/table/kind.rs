//! What a row of a table holds.

/// The kind of a row, named in its first column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    Trial,
    Deleted,
    Plan,
    Conclusion,
    Notebook,
}

impl Kind {
    pub(super) const ALL: [Self; 5] =
        [Self::Trial, Self::Deleted, Self::Plan, Self::Conclusion, Self::Notebook];

    /// What the first column of such a row holds.
    pub(super) fn key(self) -> &'static str {
        match self {
            Self::Trial => "trial",
            Self::Deleted => "deleted",
            Self::Plan => "plan",
            Self::Conclusion => "conclusion",
            Self::Notebook => "notebook",
        }
    }
}
