//! What a group reads off a ruler: the two points, three times each.

use noseward_stability::{MeasuredPoint, MeasuredPoints, Quantity};
use serde::{Deserialize, Serialize};

/// Readings of each point.
pub const REPEATS: usize = 3;
/// The most characters of a reason.
pub const REASON_CHARS: usize = 120;

/// A reading lies apart when it is at least so far from the other two, in millimetres, and
/// three times as far as they are from each other. Our judgement.
const APART_MM: f64 = 10.0;
const APART_TIMES: f64 = 3.0;
/// A ruler may show so much more than the length, in millimetres.
pub(crate) const RULER_MM: f64 = 1.0;
/// No point is so near an end as this share of the length. Our judgement, like the next two.
const NEAR_AN_END: f64 = 0.1;
/// A measured length counts where it is at most so many times that of the description, and
/// no less than the same part of it: a length in another unit is further off.
const MOST_OFF: f64 = 2.0;
/// A cut-out may be so many times as long as the rocket, or the same part of it.
const MOST_SCALED: f64 = 6.5;

/// The end from which a distance was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum End {
    /// The nose tip.
    #[default]
    Nose,
    /// The last point of the tail.
    Tail,
}

/// A point that a group measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BalancePoint {
    /// The centre of mass, where the rocket hangs level.
    Mass,
    /// The centre of pressure (side-on), where the card cut-out balances.
    Pressure,
}

impl BalancePoint {
    /// Both points.
    pub const ALL: [Self; 2] = [Self::Mass, Self::Pressure];
}

/// The readings of one point, as they were read: millimetres from [`End`], on the rocket
/// or on its cut-out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Readings {
    /// Where the ruler's zero was.
    pub from: End,
    /// Where the group thought that the point would be, in millimetres from the nose tip.
    pub guess_mm: Option<f64>,
    /// The readings, in the order in which they were taken.
    pub mm: [Option<f64>; REPEATS],
    /// The one that the group leaves out. It stays in the record.
    pub left_out: Option<LeftOut>,
}

/// A reading that is left out, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// Its place among the readings.
    pub reading: usize,
    /// The group's reason.
    pub reason: String,
}

/// What readings come to, in millimetres from the nose tip of the rocket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReadingStats {
    /// The middle value (the median); of two the mean.
    pub middle_mm: f64,
    /// The smallest.
    pub least_mm: f64,
    /// The largest.
    pub most_mm: f64,
    /// How many there are, at least one.
    pub count: usize,
}

impl ReadingStats {
    /// What these values come to; `None` without a value.
    #[must_use]
    pub fn of(values_mm: impl IntoIterator<Item = f64>) -> Option<Self> {
        let mut sorted: Vec<f64> = values_mm.into_iter().collect();
        sorted.sort_unstable_by(f64::total_cmp);
        let (&least_mm, &most_mm) = (sorted.first()?, sorted.last()?);
        let half = sorted.len() / 2;
        let middle_mm = if sorted.len() % 2 == 1 {
            sorted[half]
        } else {
            (sorted[half - 1] + sorted[half]) / 2.0
        };
        Some(Self { middle_mm, least_mm, most_mm, count: sorted.len() })
    }

    /// The largest less the smallest, in millimetres.
    #[must_use]
    pub fn range_mm(&self) -> f64 {
        self.most_mm - self.least_mm
    }
}

impl Readings {
    /// The place of a reading that lies apart from the other two, if one does. It is
    /// marked, and kept.
    #[must_use]
    pub fn outlier(&self) -> Option<usize> {
        let [Some(a), Some(b), Some(c)] = self.mm else { return None };
        let ReadingStats { middle_mm, least_mm, most_mm, .. } =
            ReadingStats::of([a, b, c])?;
        let (low, high) = (middle_mm - least_mm, most_mm - middle_mm);
        let (near, far, odd) =
            if low > high { (high, low, least_mm) } else { (low, high, most_mm) };
        let is_apart = far >= APART_MM && far > APART_TIMES * near;
        [a, b, c].iter().position(|mm| *mm == odd).filter(|_| is_apart)
    }

    /// Whether any reading is there.
    #[must_use]
    pub fn any(&self) -> bool {
        self.mm.iter().any(Option::is_some)
    }

    /// The same with every length on the grid of 0.1 mm; what is not finite is no reading.
    #[must_use]
    pub fn rounded(self) -> Self {
        Self { guess_mm: rounded(self.guess_mm), mm: self.mm.map(rounded), ..self }
    }
}

/// A length on the grid; `None` for one that is not finite.
fn rounded(mm: Option<f64>) -> Option<f64> {
    mm.filter(|mm| mm.is_finite()).map(|mm| Quantity::Length.rounded(mm))
}

/// A measured length where it can be true of something expected to be so long, which
/// stands for it otherwise. What is expected to have no length tells nothing.
fn likely(measured_mm: Option<f64>, expected_mm: f64, times: f64) -> f64 {
    match measured_mm {
        Some(mm)
            if mm > 0.0
                && mm < f64::INFINITY
                && (expected_mm <= 0.0
                    || mm * times >= expected_mm && mm <= expected_mm * times) =>
        {
            mm
        }
        _ => expected_mm,
    }
}

/// Whether a reading can be one of something so long. What has no length has no ends.
fn can_be(mm: f64, ruled_mm: f64) -> bool {
    let most_mm = ruled_mm + RULER_MM;
    mm > 0.0 && (ruled_mm <= 0.0 || mm > NEAR_AN_END * most_mm && mm <= most_mm)
}

/// A reading as a distance from the nose tip of the rocket.
fn on_rocket_mm(from: End, mm: f64, ruled_mm: f64, rocket_mm: f64) -> f64 {
    let from_nose = match from {
        End::Nose => mm,
        End::Tail => ruled_mm - mm,
    };
    if ruled_mm > 0.0 { from_nose * (rocket_mm / ruled_mm) } else { from_nose }
}

/// Readings so near each other, in millimetres, go together on something of a length.
pub(crate) fn near_mm(ruled_mm: f64) -> f64 {
    APART_MM.max(0.05 * ruled_mm)
}

/// Everything measured in one trial.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Measurements {
    /// The length of the rocket, in millimetres, if it was measured: that of the design
    /// counts otherwise.
    pub rocket_length_mm: Option<f64>,
    /// The length of the cut-out from nose to tail, in millimetres, if it was measured: it
    /// counts as true to size otherwise.
    pub cutout_length_mm: Option<f64>,
    /// Where the rocket hung level.
    pub mass: Readings,
    /// Where the cut-out balanced.
    pub pressure: Readings,
}

impl Measurements {
    /// The readings of a point.
    #[must_use]
    pub fn of(&self, point: BalancePoint) -> &Readings {
        match point {
            BalancePoint::Mass => &self.mass,
            BalancePoint::Pressure => &self.pressure,
        }
    }

    /// The readings of a point, to be changed.
    pub fn of_mut(&mut self, point: BalancePoint) -> &mut Readings {
        match point {
            BalancePoint::Mass => &mut self.mass,
            BalancePoint::Pressure => &mut self.pressure,
        }
    }

    /// The same with every length on the grid of 0.1 mm, as it is kept.
    #[must_use]
    pub fn rounded(self) -> Self {
        Self {
            rocket_length_mm: rounded(self.rocket_length_mm),
            cutout_length_mm: rounded(self.cutout_length_mm),
            mass: self.mass.rounded(),
            pressure: self.pressure.rounded(),
        }
    }

    /// The rocket's length that counts, in millimetres: as measured, but as described
    /// where nothing was measured, or what cannot be true of this rocket.
    #[must_use]
    pub fn rocket_mm(&self, design_length_mm: f64) -> f64 {
        likely(self.rocket_length_mm, design_length_mm, MOST_OFF)
    }

    /// The length that counts of what a point was read on, in millimetres: the rocket or
    /// its cut-out, which counts as true to size where its length was not measured or
    /// cannot be true.
    #[must_use]
    pub fn ruled_mm(&self, point: BalancePoint, design_length_mm: f64) -> f64 {
        let rocket_mm = self.rocket_mm(design_length_mm);
        match point {
            BalancePoint::Mass => rocket_mm,
            BalancePoint::Pressure => {
                likely(self.cutout_length_mm, rocket_mm, MOST_SCALED)
            }
        }
    }

    /// Whether a reading can be one of this rocket, and so counts. None counts that is no
    /// length, or lies beyond what it was read on, or in the tenth of that at the end where
    /// the ruler's zero was: there it was read in another unit. A reading that is absent
    /// counts.
    #[must_use]
    pub fn counts(&self, point: BalancePoint, at: usize, design_length_mm: f64) -> bool {
        let mm = self.of(point).mm.get(at).copied().flatten();
        mm.is_none_or(|mm| can_be(mm, self.ruled_mm(point, design_length_mm)))
    }

    /// The readings of a point that count, as distances from the nose tip.
    pub(crate) fn counted(&self, point: BalancePoint, design_length_mm: f64) -> Vec<f64> {
        let rocket_mm = self.rocket_mm(design_length_mm);
        let ruled_mm = self.ruled_mm(point, design_length_mm);
        let readings = self.of(point);
        let out = readings.left_out.as_ref().map(|left_out| left_out.reading);
        let mut counted = Vec::new();
        for (i, mm) in readings.mm.into_iter().enumerate() {
            if let Some(mm) = mm
                && out != Some(i)
                && can_be(mm, ruled_mm)
            {
                counted.push(on_rocket_mm(readings.from, mm, ruled_mm, rocket_mm));
            }
        }
        counted
    }

    /// What counts of the two points, for what follows from them.
    ///
    /// `design_length_mm` is the length of the design, for want of a measured one.
    #[must_use]
    pub fn points(&self, design_length_mm: f64) -> MeasuredPoints {
        let [centre_of_mass, centre_of_pressure] = BalancePoint::ALL.map(|point| {
            let mut readings = self.counted(point, design_length_mm);
            for value in &mut readings {
                *value /= 1000.0;
            }
            MeasuredPoint::new(&readings).ok()
        });
        MeasuredPoints { centre_of_mass, centre_of_pressure }
    }

    /// Whether anything was measured.
    #[must_use]
    pub fn any(&self) -> bool {
        BalancePoint::ALL.into_iter().any(|point| self.of(point).any())
    }

    /// A reading of a point as distances from the nose tip and from the tail, in
    /// millimetres on the rocket. A cut-out that was printed or drawn smaller is scaled by
    /// its own length, so that every uniform scale cancels.
    ///
    /// `design_length_mm` is the length of the design, for want of a measured one.
    #[must_use]
    pub fn both_ways_mm(
        &self,
        point: BalancePoint,
        reading_mm: f64,
        design_length_mm: f64,
    ) -> (f64, f64) {
        let rocket = self.rocket_mm(design_length_mm);
        let ruled = self.ruled_mm(point, design_length_mm);
        let from_nose = on_rocket_mm(self.of(point).from, reading_mm, ruled, rocket);
        (from_nose, rocket - from_nose)
    }

    /// What the readings of a point come to; `None` without one that counts.
    #[must_use]
    pub fn middle(
        &self,
        point: BalancePoint,
        design_length_mm: f64,
    ) -> Option<ReadingStats> {
        ReadingStats::of(self.counted(point, design_length_mm))
    }

    /// The measured separation, in millimetres, positive where the centre of mass is nearer
    /// the nose; `None` unless both points were measured.
    #[must_use]
    pub fn separation_mm(&self, design_length_mm: f64) -> Option<f64> {
        let middle = |point| self.middle(point, design_length_mm);
        let (mass, pressure) =
            (middle(BalancePoint::Mass)?, middle(BalancePoint::Pressure)?);
        Some(pressure.middle_mm - mass.middle_mm)
    }

    /// Whether the ranges of the two points overlap, so that these readings cannot tell
    /// which is nearer the nose; `None` unless both were measured.
    #[must_use]
    pub fn overlaps(&self, design_length_mm: f64) -> Option<bool> {
        let middle = |point| self.middle(point, design_length_mm);
        let (mass, pressure) =
            (middle(BalancePoint::Mass)?, middle(BalancePoint::Pressure)?);
        Some(mass.least_mm <= pressure.most_mm && pressure.least_mm <= mass.most_mm)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn readings(mm: [f64; 3]) -> Readings {
        Readings { mm: mm.map(Some), ..Readings::default() }
    }

    #[test]
    fn a_reading_apart_is_marked_and_stays() {
        let odd = readings([200.0, 203.0, 251.0]);
        assert_eq!(odd.outlier(), Some(2));
        let measured = Measurements { mass: odd, ..Measurements::default() };
        let middle = measured.middle(BalancePoint::Mass, 500.0).unwrap();
        assert_eq!((middle.middle_mm, middle.range_mm(), middle.count), (203.0, 51.0, 3));
        assert_eq!(readings([140.0, 201.0, 203.0]).outlier(), Some(0));
        assert_eq!(readings([201.0, 140.0, 203.0]).outlier(), Some(1));
        for close in [[200.0, 203.0, 212.0], [200.0, 200.0, 209.9], [200.0; 3]] {
            assert_eq!(readings(close).outlier(), None, "{close:?}");
        }
        // Twenty and thirty apart: they scatter, and none is odd.
        assert_eq!(readings([200.0, 220.0, 250.0]).outlier(), None);
        let two = Readings { mm: [Some(1.0), None, Some(90.0)], ..Readings::default() };
        assert_eq!(two.outlier(), None);
    }

    #[test]
    fn one_reading_of_either_point_is_a_measurement() {
        assert!(!Readings::default().any() && !Measurements::default().any());
        for point in BalancePoint::ALL {
            let mut measured =
                Measurements { rocket_length_mm: Some(400.0), ..Measurements::default() };
            measured.of_mut(point).guess_mm = Some(200.0);
            assert!(!measured.any(), "a guess is none");
            measured.of_mut(point).mm[2] = Some(203.0);
            assert!(measured.of(point).any() && measured.any());
        }
    }

    /// The same value, by the same rule, wherever it is used.
    #[test]
    fn what_leads_is_the_middle_value() {
        let mut measured = Measurements {
            rocket_length_mm: Some(400.0),
            mass: readings([180.0, 190.0, 183.0]),
            ..Measurements::default()
        };
        measured.mass.from = End::Tail;
        let points = measured.points(420.0);
        let mass = points.centre_of_mass.unwrap();
        let middle = measured.middle(BalancePoint::Mass, 420.0).unwrap();
        assert!((mass.value_m() * 1000.0 - middle.middle_mm).abs() < 1e-9);
        assert!((mass.least_m() - 0.210).abs() < 1e-12);
        assert!((mass.most_m() - 0.220).abs() < 1e-12);
        assert_eq!(points.centre_of_pressure, None);
    }

    #[test]
    fn what_is_left_out_does_not_count() {
        let mut measured = Measurements {
            mass: readings([200.0, 203.0, 251.0]),
            ..Measurements::default()
        };
        measured.mass.left_out =
            Some(LeftOut { reading: 2, reason: "The string had slipped.".into() });
        let middle = measured.middle(BalancePoint::Mass, 500.0).unwrap();
        assert_eq!((middle.middle_mm, middle.range_mm()), (201.5, 3.0));
        assert_eq!(measured.mass.mm[2], Some(251.0));
    }

    #[test]
    fn from_the_tail_is_the_same_point() {
        let mut measured = Measurements {
            rocket_length_mm: Some(400.0),
            mass: readings([180.0; 3]),
            ..Measurements::default()
        };
        measured.mass.from = End::Tail;
        assert_eq!(
            measured.both_ways_mm(BalancePoint::Mass, 180.0, 420.0),
            (220.0, 180.0)
        );
        assert_eq!(measured.middle(BalancePoint::Mass, 420.0).unwrap().middle_mm, 220.0);
    }

    /// A print at 94 % and one true to size, read from either end.
    #[test]
    fn the_scale_of_the_cut_out_cancels() {
        let (rocket, point) = (412.0, 268.0);
        for scale in [0.941, 0.973, 1.0, 0.5, 2.0] {
            for from in [End::Nose, End::Tail] {
                let read = match from {
                    End::Nose => point * scale,
                    End::Tail => (rocket - point) * scale,
                };
                let pressure = Readings { from, ..readings([read; 3]) };
                let measured = Measurements {
                    cutout_length_mm: Some(rocket * scale),
                    pressure,
                    ..Measurements::default()
                };
                let middle = measured.middle(BalancePoint::Pressure, rocket).unwrap();
                assert!((middle.middle_mm - point).abs() < 1e-9, "{scale} {from:?}");
                let (_, from_tail_mm) =
                    measured.both_ways_mm(BalancePoint::Pressure, read, rocket);
                assert!((from_tail_mm - (rocket - point)).abs() < 1e-9, "{scale}");
            }
        }
    }

    #[test]
    fn lengths_come_on_the_grid() {
        let mut measured = Measurements {
            rocket_length_mm: Some(400.04),
            cutout_length_mm: Some(f64::INFINITY),
            mass: readings([200.0, f64::NAN, -0.01]),
            ..Measurements::default()
        };
        measured.pressure.guess_mm = Some(251.26);
        let kept = measured.rounded();
        assert_eq!((kept.rocket_length_mm, kept.cutout_length_mm), (Some(400.0), None));
        assert_eq!(kept.mass.mm, [Some(200.0), None, Some(0.0)]);
        assert_eq!(kept.pressure.guess_mm, Some(251.3));
        assert_eq!(kept.clone().rounded(), kept);
    }

    #[test]
    fn ranges_that_touch_overlap() {
        let measured = |mass, pressure| Measurements {
            mass: readings(mass),
            pressure: readings(pressure),
            ..Measurements::default()
        };
        let apart = measured([200.0, 203.0, 201.0], [210.0, 212.0, 204.0]);
        assert_eq!(apart.overlaps(400.0), Some(false));
        assert_eq!(apart.separation_mm(400.0), Some(9.0));
        let touch = measured([200.0, 204.0, 201.0], [210.0, 212.0, 204.0]);
        assert_eq!(touch.overlaps(400.0), Some(true));
        let reversed = measured([210.0, 212.0, 204.0], [200.0, 204.0, 201.0]);
        assert_eq!(reversed.overlaps(400.0), Some(true));
        assert_eq!(Measurements::default().overlaps(400.0), None);
        assert_eq!(Measurements::default().separation_mm(400.0), None);
    }
}
