//! Things that a class uses as weights, from `data/common_weights.csv`.

/// One thing that can serve as a weight. Where its figures come from stands in the file.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CommonWeight {
    /// The heading it is listed under.
    pub group: WeightGroup,
    /// What it is.
    pub kind: WeightKind,
    /// Its mass in grams, where there is a usual one. `None`: weigh it.
    pub mass_g: Option<f64>,
    /// Its diameter in millimetres, for coins.
    pub diameter_mm: Option<f64>,
}

/// A heading of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum WeightGroup {
    UkCoins,
    EuroCoins,
    UsCoins,
    AustralianCoins,
    OtherThings,
}

/// What a thing is; a coin with its value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum WeightKind {
    Pence(u8),
    Pounds(u8),
    EuroCents(u8),
    Euros(u8),
    UsCent,
    UsNickel,
    UsDime,
    UsQuarter,
    UsHalfDollar,
    UsDollar,
    AustralianCents(u8),
    AustralianDollars(u8),
    /// Modelling clay.
    Clay,
    StickyTape,
    SmallPaperClip,
    LargePaperClip,
    MetalWasher,
    /// Something else, which gets a name of its own.
    Other,
}

/// The whole list, in the order of the file; groups stand together.
pub const COMMON_WEIGHTS: &[CommonWeight] =
    include!(concat!(env!("OUT_DIR"), "/common_weights.rs"));

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_usable_as_a_weight() {
        assert!(COMMON_WEIGHTS.len() > 30);
        for row in COMMON_WEIGHTS {
            assert!(row.mass_g.is_none_or(|g| g > 0.0 && g < 50.0), "{row:?}");
            assert!(row.diameter_mm.is_none_or(|mm| mm > 10.0 && mm < 40.0), "{row:?}");
        }
    }

    #[test]
    fn kinds_are_unique_and_groups_stand_together() {
        for (i, row) in COMMON_WEIGHTS.iter().enumerate() {
            let before = &COMMON_WEIGHTS[..i];
            assert!(before.iter().all(|other| other.kind != row.kind), "{row:?}");
            let known = before.iter().any(|other| other.group == row.group);
            let follows = before.last().is_some_and(|last| last.group == row.group);
            assert_eq!(known, follows, "{row:?}");
        }
    }

    /// US Mint, Coin Specifications: the quarter weighs 5.670 g, the dime 2.268 g.
    #[test]
    fn official_masses_survive_the_build_step() {
        let mass = |kind| COMMON_WEIGHTS.iter().find(|w| w.kind == kind).unwrap().mass_g;
        assert_eq!(mass(WeightKind::UsQuarter), Some(5.67));
        assert_eq!(mass(WeightKind::UsDime), Some(2.268));
        assert_eq!(mass(WeightKind::Clay), None);
    }
}
