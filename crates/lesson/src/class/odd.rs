//! Readings that look odd, for whoever leads alone: to be asked about, never to be marked.
//!
//! What a group is asked about its single readings is in [`slips`](crate::slips) and
//! [`explanations`](crate::explanations). This looks at what a trial came to, as a result
//! code carries it, and at both points together.

use crate::readings::RULER_MM;
use crate::{AGREE_MM, BalancePoint, REPEATS, ReadingStats};

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

/// What the readings of one point came to, and what was computed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PointRead {
    /// The middle reading, in millimetres from the nose tip.
    pub middle_mm: f64,
    /// The largest reading less the smallest, in millimetres.
    pub range_mm: f64,
    /// How many readings there are.
    pub count: usize,
    /// What the description comes to, in millimetres from the nose tip, if it is known.
    pub computed_mm: Option<f64>,
}

impl PointRead {
    /// What readings in millimetres from the nose tip come to; `None` without one.
    #[must_use]
    pub fn of(readings_mm: &[f64], computed_mm: Option<f64>) -> Option<Self> {
        let stats = ReadingStats::of(readings_mm.iter().copied())?;
        let (middle_mm, range_mm) = (stats.middle_mm, stats.range_mm());
        Some(Self { middle_mm, range_mm, count: stats.count, computed_mm })
    }

    /// Measured less computed.
    fn off_mm(&self) -> Option<f64> {
        self.computed_mm.map(|computed_mm| self.middle_mm - computed_mm)
    }
}

/// What a trial came to, as far as it can look odd.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TrialRead {
    /// The length of the rocket, in millimetres.
    pub length_mm: f64,
    /// The centre of mass.
    pub mass: Option<PointRead>,
    /// The centre of pressure (side-on).
    pub pressure: Option<PointRead>,
    /// Whether it flew nose-first; `None` where the swings do not say.
    pub nose_first: Option<bool>,
}

impl TrialRead {
    fn of(&self, point: BalancePoint) -> Option<PointRead> {
        match point {
            BalancePoint::Mass => self.mass,
            BalancePoint::Pressure => self.pressure,
        }
    }
}

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

/// What looks odd about a trial, the most impossible first: of each point, then of both.
#[must_use]
pub fn odd(trial: &TrialRead) -> Vec<Odd> {
    let length_mm = trial.length_mm;
    let mut found = Vec::new();
    for point in BalancePoint::ALL {
        let Some(PointRead { middle_mm, range_mm, .. }) = trial.of(point) else {
            continue;
        };
        let inside = middle_mm >= 0.0 && middle_mm <= length_mm + RULER_MM;
        if !inside {
            found.push(Odd::Outside { point, middle_mm, length_mm });
        }
        if range_mm > WIDE_SHARE * length_mm {
            let share = range_mm / length_mm;
            found.push(Odd::WideRange { point, range_mm, share });
        }
    }
    if let (Some(mass), Some(pressure)) = (trial.mass, trial.pressure) {
        of_both(trial, mass, pressure, &mut found);
    }
    found
}

fn of_both(
    trial: &TrialRead,
    mass: PointRead,
    pressure: PointRead,
    found: &mut Vec<Odd>,
) {
    let length_mm = trial.length_mm;
    let separation_mm = pressure.middle_mm - mass.middle_mm;
    if separation_mm.abs() > length_mm {
        found.push(Odd::LongerThanRocket { separation_mm, length_mm });
    }
    if [mass, pressure].iter().all(|p| p.count >= REPEATS && p.range_mm < EQUAL_MM) {
        let (mass_mm, pressure_mm) = (mass.middle_mm, pressure.middle_mm);
        found.push(Odd::AllEqual { mass_mm, pressure_mm });
    }
    if let (Some(mass_mm), Some(pressure_mm)) = (mass.off_mm(), pressure.off_mm())
        && mass_mm.abs().min(pressure_mm.abs()) > SLIP_MM
        && (mass_mm - pressure_mm).abs() <= SAME_SLIP_MM
    {
        found.push(Odd::SameSlip { mass_mm, pressure_mm });
    }
    // Farther than the readings leave open, too.
    let open_mm = (mass.range_mm + pressure.range_mm).max(AGREE_MM);
    if let Some(nose_first) = trial.nose_first
        && separation_mm.abs() > open_mm.max(FAR_SHARE * length_mm)
        && nose_first != (separation_mm > 0.0)
    {
        found.push(Odd::OtherOutcome { separation_mm, nose_first });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use BalancePoint::{Mass, Pressure};

    fn read(readings_mm: [f64; 3], computed_mm: f64) -> Option<PointRead> {
        PointRead::of(&readings_mm, Some(computed_mm))
    }

    fn good() -> TrialRead {
        let mass = read([200.0, 202.0, 203.0], 201.0);
        let pressure = read([248.0, 252.0, 250.0], 251.0);
        TrialRead { length_mm: 400.0, mass, pressure, nose_first: Some(true) }
    }

    #[test]
    fn a_good_trial_is_not_odd() {
        assert_eq!(odd(&good()), []);
        assert_eq!(odd(&TrialRead::default()), []);
        let half = TrialRead { pressure: None, ..good() };
        assert_eq!(odd(&half), []);
    }

    #[test]
    fn equal_to_a_tenth_in_both_points() {
        let (mass, pressure) = (read([200.0; 3], 201.0), read([250.0; 3], 251.0));
        let equal = TrialRead { mass, pressure, ..good() };
        let all = Odd::AllEqual { mass_mm: 200.0, pressure_mm: 250.0 };
        assert_eq!(odd(&equal), [all]);
        assert_eq!(odd(&TrialRead { pressure: good().pressure, ..equal }), []);
        let tenth = read([250.0, 250.0, 250.1], 251.0);
        assert_eq!(odd(&TrialRead { pressure: tenth, ..equal }), []);
        let twice = PointRead::of(&[250.0, 250.0], None);
        assert_eq!(odd(&TrialRead { pressure: twice, ..equal }), []);
    }

    #[test]
    fn the_same_slip_the_same_way() {
        let slipped = |mass_off: f64, pressure_off: f64| {
            let off = |point: Option<PointRead>, off: f64| {
                let computed_mm = point.map(|point| point.middle_mm - off);
                point.map(|point| PointRead { computed_mm, ..point })
            };
            let mass = off(good().mass, mass_off);
            odd(&TrialRead {
                mass,
                pressure: off(good().pressure, pressure_off),
                ..good()
            })
        };
        for (mass_mm, pressure_mm) in [(9.0, 12.0), (-10.0, -8.5)] {
            let same = Odd::SameSlip { mass_mm, pressure_mm };
            assert_eq!(slipped(mass_mm, pressure_mm), [same]);
        }
        for (mass_mm, pressure_mm) in [(8.0, 10.0), (9.0, 12.5), (9.0, -9.0)] {
            assert_eq!(slipped(mass_mm, pressure_mm), [], "{mass_mm} {pressure_mm}");
        }
        let uncomputed = good().mass.map(|mass| PointRead { computed_mm: None, ..mass });
        assert_eq!(odd(&TrialRead { mass: uncomputed, ..good() }), []);
    }

    #[test]
    fn what_cannot_be_on_this_rocket() {
        let outside =
            |point, middle_mm| Odd::Outside { point, middle_mm, length_mm: 400.0 };
        let at = |mm: f64| PointRead::of(&[mm], None);
        let pressure = at(401.5);
        let beyond = TrialRead { pressure, nose_first: None, ..good() };
        assert_eq!(odd(&beyond), [outside(Pressure, 401.5)]);
        let on_edge = TrialRead { pressure: at(401.0), ..beyond };
        assert_eq!(odd(&on_edge), []);
        let both = TrialRead { mass: at(-4.0), pressure: at(400.0), ..beyond };
        let longer = Odd::LongerThanRocket { separation_mm: 404.0, length_mm: 400.0 };
        assert_eq!(odd(&both), [outside(Mass, -4.0), longer]);
        let nothing = odd(&TrialRead { mass: at(f64::NAN), ..beyond });
        assert!(matches!(nothing[0], Odd::Outside { point: Mass, .. }), "{nothing:?}");
    }

    #[test]
    fn a_range_of_more_than_a_seventh() {
        let wide = read([170.0, 201.0, 231.0], 201.0);
        let wide = TrialRead { mass: wide, nose_first: None, ..good() };
        let (range_mm, share) = (61.0, 61.0 / 400.0);
        assert_eq!(odd(&wide), [Odd::WideRange { point: Mass, range_mm, share }]);
        let narrower = read([171.0, 201.0, 231.0], 201.0);
        assert_eq!(odd(&TrialRead { mass: narrower, ..wide }), []);
    }

    #[test]
    fn it_flew_otherwise() {
        let sideways = TrialRead { nose_first: Some(false), ..good() };
        let (separation_mm, nose_first) = (48.0, false);
        assert_eq!(odd(&sideways), [Odd::OtherOutcome { separation_mm, nose_first }]);
        let behind = TrialRead { mass: good().pressure, pressure: good().mass, ..good() };
        let (separation_mm, nose_first) = (-48.0, true);
        assert_eq!(odd(&behind), [Odd::OtherOutcome { separation_mm, nose_first }]);
        // Not far from nothing, by the length or by the readings.
        assert_eq!(odd(&TrialRead { length_mm: 500.0, ..sideways }), []);
        let unsure = read([220.0, 250.0, 265.0], 250.0);
        assert_eq!(odd(&TrialRead { pressure: unsure, ..sideways }), []);
        assert_eq!(odd(&TrialRead { nose_first: None, ..sideways }), []);
    }
}
