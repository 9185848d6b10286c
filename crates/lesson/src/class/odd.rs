//! Readings that look odd, for whoever leads alone: to be asked about, never to be marked.
//!
//! What a group is asked about its single readings is in [`slips`](crate::slips) and
//! [`explanations`](crate::explanations). This looks at what a trial came to, as a result
//! code carries it, and at both points together.

use crate::readings::RULER_MM;
use crate::{AGREE_MM, BalancePoint, PointResult, REPEATS, ResultModel, TrialResult};

/// Both points off by more than this, in millimetres, may be the same slip. Our judgement,
/// like all that follow: more than a string is wide, and less than a thumb.
pub const SLIP_MM: f64 = 8.0;
/// Slips within this of each other, in millimetres, are about the same.
const SAME_SLIP_MM: f64 = 3.0;
/// Readings that differ by less than this, in millimetres, are equal: half of a tenth.
const EQUAL_MM: f64 = 0.05;
/// A range of more than this share of the rocket's length is wide.
pub const WIDE_SHARE: f64 = 0.15;
/// A separation of more than this share of the rocket's length is far from nothing.
pub const FAR_SHARE: f64 = 0.1;

/// What looks odd. All lengths are in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Odd {
    /// The point lies outside of the rocket.
    Outside {
        /// The point.
        point: BalancePoint,
        /// Where it was read, from the nose tip.
        middle_mm: f64,
        /// How long the rocket is.
        length_mm: f64,
    },
    /// The readings of the point lie far apart.
    WideRange {
        /// The point.
        point: BalancePoint,
        /// The largest less the smallest.
        range_mm: f64,
        /// The same as a share of the rocket's length.
        share: f64,
    },
    /// The two points are farther apart than the rocket is long.
    LongerThanRocket {
        /// The measured separation.
        separation_mm: f64,
        /// How long the rocket is.
        length_mm: f64,
    },
    /// All readings of both points are equal: they may have been read once and written
    /// three times.
    AllEqual {
        /// Every reading of the centre of mass.
        mass_mm: f64,
        /// Every reading of the centre of pressure.
        pressure_mm: f64,
    },
    /// Both points lie off what was computed by about the same, the same way: the ruler's
    /// zero may not have been at the nose tip. The separation does not suffer.
    SameSlip {
        /// Measured less computed, of the centre of mass: positive towards the tail.
        mass_mm: f64,
        /// The same of the centre of pressure.
        pressure_mm: f64,
    },
    /// The rocket flew otherwise than a separation far from nothing lets expect. It may be
    /// a discovery, two readings that changed places, or a string that took it.
    OtherOutcome {
        /// The measured separation.
        separation_mm: f64,
        /// Whether it flew nose-first.
        nose_first: bool,
    },
}

/// What looks odd about a trial: of each point, then of both.
/// Without a description nothing tells how long the rocket is, and much goes unnoticed.
#[must_use]
pub fn odd(trial: &TrialResult) -> Vec<Odd> {
    let mut found = Vec::new();
    if let Some(ResultModel { length_mm, .. }) = trial.model {
        let points = [trial.mass, trial.pressure];
        for (point, read) in BalancePoint::ALL.into_iter().zip(points) {
            if let Some(PointResult { middle_mm, range_mm, .. }) = read {
                let inside = middle_mm >= 0.0 && middle_mm <= length_mm + RULER_MM;
                if !inside {
                    found.push(Odd::Outside { point, middle_mm, length_mm });
                }
                if range_mm > WIDE_SHARE * length_mm {
                    let share = range_mm / length_mm;
                    found.push(Odd::WideRange { point, range_mm, share });
                }
            }
        }
    }
    if let (Some(mass), Some(pressure)) = (trial.mass, trial.pressure) {
        of_both(trial, mass, pressure, &mut found);
    }
    found
}

fn of_both(
    trial: &TrialResult,
    mass: PointResult,
    pressure: PointResult,
    found: &mut Vec<Odd>,
) {
    let (mass_mm, pressure_mm) = (mass.middle_mm, pressure.middle_mm);
    let separation_mm = pressure_mm - mass_mm;
    let is_equal = |read: &PointResult| {
        usize::from(read.count) >= REPEATS && read.range_mm < EQUAL_MM
    };
    if is_equal(&mass) && is_equal(&pressure) {
        found.push(Odd::AllEqual { mass_mm, pressure_mm });
    }
    let Some(ResultModel { length_mm, mass_point_mm, pressure_point_mm, .. }) =
        trial.model
    else {
        return;
    };
    if separation_mm.abs() > length_mm {
        found.push(Odd::LongerThanRocket { separation_mm, length_mm });
    }
    let mass_mm = mass_mm - mass_point_mm;
    let pressure_mm = pressure_mm - pressure_point_mm;
    if mass_mm.abs().min(pressure_mm.abs()) > SLIP_MM
        && (mass_mm - pressure_mm).abs() <= SAME_SLIP_MM
    {
        found.push(Odd::SameSlip { mass_mm, pressure_mm });
    }
    // Farther than the readings leave open, too.
    let open_mm = (mass.range_mm + pressure.range_mm).max(AGREE_MM);
    if let Some(nose_first) = trial.nose_first()
        && separation_mm.abs() > open_mm.max(FAR_SHARE * length_mm)
        && nose_first != (separation_mm > 0.0)
    {
        found.push(Odd::OtherOutcome { separation_mm, nose_first });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Group, SwingOutcome};
    use BalancePoint::{Mass, Pressure};

    fn read(readings_mm: [f64; 3]) -> Option<PointResult> {
        PointResult::of(readings_mm.map(Some))
    }

    fn once(mm: f64) -> Option<PointResult> {
        PointResult::of([Some(mm), None, None])
    }

    fn good() -> TrialResult {
        TrialResult {
            model: Some(ResultModel {
                length_mm: 400.0,
                body_width_mm: 60.0,
                mass_g: 100.0,
                mass_point_mm: 201.0,
                pressure_point_mm: 251.0,
            }),
            mass: read([200.0, 202.0, 203.0]),
            pressure: read([248.0, 252.0, 250.0]),
            outcomes: vec![SwingOutcome::Steady; 3],
            ..TrialResult::empty(Group::default(), 1)
        }
    }

    fn unswung() -> TrialResult {
        TrialResult { outcomes: Vec::new(), ..good() }
    }

    #[test]
    fn a_good_trial_is_not_odd() {
        assert_eq!(odd(&good()), []);
        assert_eq!(odd(&TrialResult::empty(Group::default(), 1)), []);
        assert_eq!(odd(&TrialResult { pressure: None, ..good() }), []);
    }

    #[test]
    fn equal_to_a_tenth_in_both_points() {
        let equal =
            TrialResult { mass: read([200.0; 3]), pressure: read([250.0; 3]), ..good() };
        let all = Odd::AllEqual { mass_mm: 200.0, pressure_mm: 250.0 };
        assert_eq!(odd(&equal), [all]);
        assert_eq!(odd(&TrialResult { model: None, ..equal.clone() }), [all]);
        for other in [
            good().pressure,
            read([250.0, 250.0, 250.1]),
            PointResult::of([Some(250.0), Some(250.0), None]),
        ] {
            assert_eq!(odd(&TrialResult { pressure: other, ..equal.clone() }), []);
        }
    }

    #[test]
    fn the_same_slip_the_same_way() {
        let slipped = |mass_mm: f64, pressure_mm: f64| {
            let model = good().model.map(|model| ResultModel {
                mass_point_mm: 202.0 - mass_mm,
                pressure_point_mm: 250.0 - pressure_mm,
                ..model
            });
            odd(&TrialResult { model, ..good() })
        };
        for (mass_mm, pressure_mm) in [(9.0, 12.0), (-10.0, -8.5)] {
            let same = Odd::SameSlip { mass_mm, pressure_mm };
            assert_eq!(slipped(mass_mm, pressure_mm), [same]);
        }
        for (mass_mm, pressure_mm) in [(8.0, 10.0), (9.0, 12.5), (9.0, -9.0)] {
            assert_eq!(slipped(mass_mm, pressure_mm), [], "{mass_mm} {pressure_mm}");
        }
    }

    #[test]
    fn what_cannot_be_on_this_rocket() {
        let outside =
            |point, middle_mm| Odd::Outside { point, middle_mm, length_mm: 400.0 };
        let with = |mass, pressure| odd(&TrialResult { mass, pressure, ..unswung() });
        assert_eq!(with(good().mass, once(401.5)), [outside(Pressure, 401.5)]);
        assert_eq!(with(good().mass, once(401.0)), []);
        let longer = Odd::LongerThanRocket { separation_mm: 404.0, length_mm: 400.0 };
        assert_eq!(with(once(-4.0), once(400.0)), [outside(Mass, -4.0), longer]);
        let nothing = with(once(f64::NAN), None);
        assert!(matches!(nothing[0], Odd::Outside { point: Mass, .. }), "{nothing:?}");
    }

    #[test]
    fn a_range_of_more_than_a_seventh() {
        let of = |mass| odd(&TrialResult { mass, ..unswung() });
        let (range_mm, share) = (61.0, 61.0 / 400.0);
        let wide = Odd::WideRange { point: Mass, range_mm, share };
        assert_eq!(of(read([170.0, 201.0, 231.0])), [wide]);
        assert_eq!(of(read([171.0, 201.0, 231.0])), []);
    }

    #[test]
    fn it_flew_otherwise() {
        let sideways = TrialResult { outcomes: vec![SwingOutcome::Sideways], ..good() };
        let (separation_mm, nose_first) = (48.0, false);
        assert_eq!(odd(&sideways), [Odd::OtherOutcome { separation_mm, nose_first }]);
        let behind =
            TrialResult { mass: good().pressure, pressure: good().mass, ..good() };
        let (separation_mm, nose_first) = (-48.0, true);
        assert_eq!(odd(&behind), [Odd::OtherOutcome { separation_mm, nose_first }]);
        // Not far from nothing, by the length or by the readings; or nothing was seen.
        let longer = good().model.map(|model| ResultModel { length_mm: 500.0, ..model });
        let unsure = read([220.0, 250.0, 265.0]);
        for trial in [
            TrialResult { model: longer, ..sideways.clone() },
            TrialResult { pressure: unsure, ..sideways },
            unswung(),
        ] {
            assert_eq!(odd(&trial), []);
        }
    }
}
