//! Things that a class uses as weights, from `data/common_weights.csv`.

/// One thing that can serve as a weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CommonWeight {
    /// The heading it is listed under.
    pub group: &'static str,
    /// What it is called; also the label that a weight gets.
    pub name: &'static str,
    /// Its mass in grams, where there is a usual one. `None`: weigh it.
    pub mass_g: Option<f64>,
    /// Its diameter in millimetres, for coins.
    pub diameter_mm: Option<f64>,
    /// Where the figures come from.
    pub source: &'static str,
}

/// The whole list, in the order of the file; groups stand together.
pub const COMMON_WEIGHTS: &[CommonWeight] =
    include!(concat!(env!("OUT_DIR"), "/common_weights.rs"));

#[cfg(test)]
mod tests {
    use super::*;
    use crate::limits;

    #[test]
    fn every_row_is_usable_as_a_weight() {
        assert!(COMMON_WEIGHTS.len() > 30);
        for row in COMMON_WEIGHTS {
            assert!(!row.source.is_empty(), "{}", row.name);
            assert!(row.name.chars().count() <= limits::LABEL_CHARS, "{}", row.name);
            assert!(row.mass_g.is_none_or(|g| g > 0.0 && g < 50.0), "{}", row.name);
        }
    }

    #[test]
    fn names_are_unique_and_groups_stand_together() {
        let mut names: Vec<_> = COMMON_WEIGHTS.iter().map(|w| w.name).collect();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), COMMON_WEIGHTS.len());
        let mut groups: Vec<_> = COMMON_WEIGHTS.iter().map(|w| w.group).collect();
        groups.dedup();
        let runs = groups.len();
        groups.sort_unstable();
        groups.dedup();
        assert_eq!(groups.len(), runs);
    }

    /// US Mint, Coin Specifications: the quarter weighs 5.670 g, the dime 2.268 g.
    #[test]
    fn official_masses_survive_the_build_step() {
        let mass = |name| COMMON_WEIGHTS.iter().find(|w| w.name == name).unwrap().mass_g;
        assert_eq!(mass("US quarter"), Some(5.67));
        assert_eq!(mass("US dime"), Some(2.268));
        assert_eq!(mass("clay"), None);
    }
}
