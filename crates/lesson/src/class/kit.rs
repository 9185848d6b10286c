//! What a class needs, counted.

use super::SetUp;

/// A thing of the kit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "each is what it is called")]
pub enum Kit {
    Bottle,
    Card,
    Tape,
    Clay,
    String,
    Ruler,
    Scissors,
    Computer,
    Scales,
    HolePunch,
    Markers,
    EyeProtection,
    Stopwatch,
}

/// How many of a thing there are to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KitRow {
    /// What.
    pub kit: Kit,
    /// How many are used.
    pub count: u16,
    /// And how many more should lie ready.
    pub spares: u16,
}

/// Whom a thing is for.
enum For {
    /// So many for each group.
    Group(u16),
    /// One for so many groups.
    Groups(u16),
    /// So many for the class.
    Class(u16),
}

impl Kit {
    /// Every thing, those of each group first.
    pub const ALL: [Self; 13] = [
        Self::Bottle,
        Self::Card,
        Self::Tape,
        Self::Clay,
        Self::String,
        Self::Ruler,
        Self::Scissors,
        Self::Computer,
        Self::Scales,
        Self::HolePunch,
        Self::Markers,
        Self::EyeProtection,
        Self::Stopwatch,
    ];

    /// Whether each group has its own.
    #[must_use]
    pub fn is_of_group(self) -> bool {
        matches!(self.whom(), For::Group(_))
    }

    fn whom(self) -> For {
        match self {
            Self::Card => For::Group(3),
            Self::Bottle
            | Self::Tape
            | Self::Clay
            | Self::String
            | Self::Ruler
            | Self::Scissors
            | Self::Computer => For::Group(1),
            Self::Scales => For::Groups(5),
            Self::HolePunch | Self::Stopwatch => For::Class(1),
            Self::EyeProtection => For::Class(2),
            Self::Markers => For::Class(8),
        }
    }

    /// One spare for every five in use, rounded up, of what gets lost or spoilt.
    fn spares(self, count: u16) -> u16 {
        match self {
            Self::Bottle | Self::Card | Self::Clay | Self::String => count.div_ceil(5),
            Self::Tape | Self::Ruler | Self::Scissors | Self::Computer => {
                count.div_ceil(10)
            }
            Self::Scales | Self::EyeProtection | Self::Stopwatch => 1,
            Self::HolePunch | Self::Markers => 0,
        }
    }
}

impl SetUp {
    /// The kit list for its groups.
    #[must_use]
    pub fn kit(&self) -> Vec<KitRow> {
        let groups = u16::from(self.groups());
        let row = |kit: Kit| {
            let count = match kit.whom() {
                For::Group(each) => each * groups,
                For::Groups(share) => groups.div_ceil(share),
                For::Class(count) => count,
            };
            KitRow { kit, count, spares: kit.spares(count) }
        };
        Kit::ALL.map(row).to_vec()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thirty_pupils_in_threes_get_ten_of_each_and_spares() {
        let set_up = SetUp { pupils: 30, group_size: 3, ..SetUp::default() };
        assert_eq!(set_up.groups(), 10);
        let kit = set_up.kit();
        assert_eq!(kit.len(), Kit::ALL.len());
        for row in &kit {
            if row.kit.is_of_group() && row.kit != Kit::Card {
                assert_eq!(row.count, 10, "{:?}", row.kit);
                assert!(row.spares >= 1, "{:?}", row.kit);
            }
        }
        let of = |kit| kit_of(&set_up, kit);
        assert_eq!(of(Kit::Card), (30, 6));
        assert_eq!(of(Kit::Bottle), (10, 2));
        assert_eq!(of(Kit::Scales), (2, 1));
        assert_eq!(of(Kit::Markers), (8, 0));
        let one = SetUp { pupils: 1, ..set_up };
        assert_eq!(kit_of(&one, Kit::Scales), (1, 1));
        assert_eq!(kit_of(&one, Kit::Bottle), (1, 1));
    }

    fn kit_of(set_up: &SetUp, kit: Kit) -> (u16, u16) {
        let row = set_up.kit().into_iter().find(|row| row.kit == kit).unwrap();
        (row.count, row.spares)
    }
}
