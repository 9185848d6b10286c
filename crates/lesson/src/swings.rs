//! The swings that were tried with one rocket.

use noseward_stability::{SwingField, SwingSetup};
use serde::{Deserialize, Serialize};

use crate::SwingOutcome;

/// Swings that count, of one rocket: as many as a class is asked for.
pub const COUNTED: usize = 3;
/// Outcomes kept at most: those that count, and some where the string slipped.
pub const MOST_OUTCOMES: usize = 6;

/// How a rocket was swung, and what was seen each time.
///
/// There are never more outcomes than [`MOST_OUTCOMES`], and none after the last of the
/// [`COUNTED`] that count. Whoever reads one with serde gets an error otherwise.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "Written")]
pub struct Swings {
    /// How it was swung, every time.
    pub setup: SwingSetup,
    outcomes: Vec<SwingOutcome>,
}

/// Outcomes that no record of swings holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error(
    "there are more swings than a rocket can have: {COUNTED} that count, {MOST_OUTCOMES} \
     in all"
)]
pub struct SwingsError;

/// Swings as somebody wrote them.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    #[serde(default)]
    setup: SwingSetup,
    outcomes: Vec<SwingOutcome>,
}

impl TryFrom<Written> for Swings {
    type Error = SwingsError;

    fn try_from(written: Written) -> Result<Self, SwingsError> {
        Self::new(written.setup, written.outcomes)
    }
}

impl From<SwingSetup> for Swings {
    /// No swings yet, in this way.
    fn from(setup: SwingSetup) -> Self {
        Self { setup, outcomes: Vec::new() }
    }
}

impl Swings {
    /// Swings with these outcomes, in the order in which they were seen.
    ///
    /// # Errors
    ///
    /// [`SwingsError`] when one of them could not have been [added](Self::add).
    pub fn new(
        setup: SwingSetup,
        outcomes: impl IntoIterator<Item = SwingOutcome>,
    ) -> Result<Self, SwingsError> {
        let mut swings = Self::from(setup);
        let all = outcomes.into_iter().all(|outcome| swings.add(outcome));
        all.then_some(swings).ok_or(SwingsError)
    }

    /// All outcomes in the order in which they were seen, slips included.
    #[must_use]
    pub fn outcomes(&self) -> &[SwingOutcome] {
        &self.outcomes
    }

    /// The outcomes that [count](SwingOutcome::counts), at most [`COUNTED`].
    pub fn counted(&self) -> impl Iterator<Item = SwingOutcome> {
        self.outcomes.iter().copied().filter(|outcome| outcome.counts())
    }

    /// Whether there is no room for another outcome, counted or not.
    #[must_use]
    pub fn is_full(&self) -> bool {
        self.outcomes.len() >= MOST_OUTCOMES
    }

    /// Whether all [`COUNTED`] swings are there.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.counted().count() >= COUNTED
    }

    /// Adds an outcome; `false`, and nothing changes, when it [is done](Self::is_done) or
    /// [full](Self::is_full).
    pub fn add(&mut self, outcome: SwingOutcome) -> bool {
        let has_room = !self.is_done() && !self.is_full();
        if has_room {
            self.outcomes.push(outcome);
        }
        has_room
    }

    /// Takes the last outcome away; `None` when there is none.
    pub fn remove_last(&mut self) -> Option<SwingOutcome> {
        self.outcomes.pop()
    }

    /// Whether another swing in this way would be one more of the same: always, as long as
    /// there is none.
    #[must_use]
    pub fn agrees_with(&self, setup: &SwingSetup) -> bool {
        let on_grid = |setup, field: SwingField| rounded(field, field.get(setup));
        self.outcomes.is_empty()
            || SwingField::ALL
                .into_iter()
                .all(|field| on_grid(&self.setup, field) == on_grid(setup, field))
    }

    /// The same swings on the grid that links store: string and arm to whole centimetres,
    /// turns to 0.05 a second, the density of the air to 0.005 kg/m³.
    ///
    /// A number that is out of bounds stays so, and one that is not finite stays as it
    /// is, for [`SwingSetup::faults`] to name. Without an outcome the setup becomes the
    /// default one: somebody chose another, and has not swung.
    #[must_use]
    pub fn rounded(mut self) -> Self {
        if self.outcomes.is_empty() {
            return Self::default();
        }
        for field in SwingField::ALL {
            let value = rounded(field, field.get(&self.setup));
            field.set(&mut self.setup, value);
        }
        self
    }
}

/// The nearest value on the grid. What is not finite, or beyond all measure, stays.
fn rounded(field: SwingField, value: f64) -> f64 {
    if value.is_nan() || value.abs() >= 1e12 {
        return value;
    }
    let steps_per_unit = match field {
        SwingField::String | SwingField::Arm => 100.0,
        SwingField::Turns => 20.0,
        SwingField::AirDensity => 200.0,
    };
    // Adding zero turns a negative zero into a plain one.
    (value * steps_per_unit).round() / steps_per_unit + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Slipped, Steady, TailFirst};
    use proptest::prelude::*;

    fn swings(outcomes: &[SwingOutcome]) -> Swings {
        Swings::new(SwingSetup::default(), outcomes.iter().copied()).unwrap()
    }

    #[test]
    fn three_that_count_are_enough() {
        let mut swings = swings(&[Steady, Slipped, NotSure]);
        assert!(!swings.is_done() && !swings.is_full());
        assert!(swings.add(TailFirst));
        assert!(swings.is_done() && !swings.is_full());
        assert!(!swings.add(Steady) && !swings.add(Slipped));
        assert_eq!(swings.outcomes(), [Steady, Slipped, NotSure, TailFirst]);
        assert!(swings.counted().eq([Steady, NotSure, TailFirst]));
        assert_eq!(swings.remove_last(), Some(TailFirst));
        assert!(swings.add(Slipped) && !swings.is_done());
    }

    #[test]
    fn six_are_the_most() {
        let mut swings = swings(&[Slipped; 6]);
        assert!(swings.is_full() && !swings.is_done());
        assert!(!swings.add(Steady));
        assert_eq!(swings.remove_last(), Some(Slipped));
        assert!(swings.add(Steady));
        let mut none = Swings::default();
        assert_eq!(none.remove_last(), None);
    }

    #[test]
    fn too_many_cannot_be_read() {
        let json = |outcomes: &[SwingOutcome]| {
            let outcomes = serde_json::to_string(outcomes).unwrap();
            serde_json::from_str::<Swings>(&format!("{{\"outcomes\": {outcomes}}}"))
        };
        assert_eq!(json(&[Slipped; 6]).unwrap(), swings(&[Slipped; 6]));
        for outcomes in
            [&[Slipped; 7][..], &[Steady; 4], &[Steady, Steady, Steady, Slipped]]
        {
            let error = json(outcomes).unwrap_err().to_string();
            assert!(error.contains("3 that count, 6 in all"), "{error}");
        }
        assert!(serde_json::from_str::<Swings>(r#"{"setup": {}}"#).is_err());
        assert!(serde_json::from_str::<Swings>(r#"{"outcomes": [], "x": 1}"#).is_err());
    }

    #[test]
    fn the_setup_comes_on_the_grid() {
        let mut off = swings(&[Steady]);
        off.setup = SwingSetup {
            string_m: 1.234,
            arm_m: 0.666,
            turns_per_s: 0.976,
            air_density_kg_m3: 1.1977,
        };
        let on = SwingSetup {
            string_m: 1.23,
            arm_m: 0.67,
            turns_per_s: 1.0,
            air_density_kg_m3: 1.2,
        };
        assert_eq!(off.clone().rounded().setup, on);
        let mut tiny = off.clone();
        tiny.setup.arm_m = -0.001;
        assert!(tiny.rounded().setup.arm_m.is_sign_positive(), "no zero has a sign");
        let not_swung = Swings { setup: off.setup, ..Swings::default() };
        assert_eq!(not_swung.rounded(), Swings::default());
    }

    #[test]
    fn more_of_the_same_is_swung_in_the_same_way() {
        let mut setup = SwingSetup { string_m: 1.002, ..SwingSetup::default() };
        assert!(swings(&[Steady]).agrees_with(&setup));
        setup.string_m = 1.1;
        assert!(!swings(&[Steady]).agrees_with(&setup));
        assert!(swings(&[]).agrees_with(&setup));
    }

    #[test]
    fn a_fault_stays_a_fault() {
        for field in SwingField::ALL {
            assert_eq!(rounded(field, f64::MAX), f64::MAX, "it stays a number");
            let (least, most) = field.bounds();
            for value in
                [f64::NAN, f64::INFINITY, -f64::INFINITY, least - 0.1, most + 0.1, 1e300]
            {
                let mut swings = swings(&[Steady]);
                field.set(&mut swings.setup, value);
                let faults = swings.rounded().setup.faults();
                assert_eq!(faults.len(), 1, "{field:?} {value}");
                assert_eq!(faults[0].field, field);
            }
            for value in [least, most, least - 0.002, most + 0.002] {
                let mut swings = swings(&[Steady]);
                field.set(&mut swings.setup, value);
                let kept = field.get(&swings.rounded().setup);
                assert!(kept == least || kept == most, "{field:?} {value} {kept}");
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig {
            failure_persistence: None,
            ..ProptestConfig::default()
        })]

        #[test]
        fn rounding_twice_is_rounding_once(
            string_m in any::<f64>().prop_filter("equal to itself", |v| !v.is_nan()),
            arm_m in -0.1..1.1,
            turns_per_s in 0.2..3.1,
            air_density_kg_m3 in 0.7..1.5,
        ) {
            let setup = SwingSetup { string_m, arm_m, turns_per_s, air_density_kg_m3 };
            let once = Swings::new(setup, [Steady]).unwrap().rounded();
            prop_assert!((once.setup.turns_per_s - turns_per_s).abs() < 0.025 + 1e-9);
            prop_assert_eq!(once.clone().rounded(), once);
        }
    }
}
