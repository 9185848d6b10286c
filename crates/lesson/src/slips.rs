//! Readings that look like a slip of the ruler. These only ask: nothing is refused. What
//! cannot be true of the rocket does not count until it is changed ([`Measurements::counts`]).

use noseward_stability::{UnitSystem, Units};

use crate::readings::{RULER_MM, near_mm};
use crate::{BalancePoint, End, Measurements, REPEATS, ReadingStats};

/// Something that looks like a slip, or that is worth a word.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slip {
    /// The field that it belongs to.
    pub place: ReadingField,
    /// What looks odd, and what may have happened.
    pub kind: SlipKind,
    /// What is done about it until it is changed, if anything.
    pub until_changed: Option<UntilChanged>,
}

/// What is done about a value that cannot be true.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UntilChanged {
    /// A reading does not count.
    NotCounted,
    /// A length is not used.
    NotUsed,
}

/// What looks odd. All lengths are in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SlipKind {
    /// It is no number.
    NotANumber,
    /// It is less than a ruler shows.
    BelowZero,
    /// It is zero.
    Zero,
    /// It may be in another unit, or have a zero too many.
    OtherUnit {
        /// What was typed.
        typed_mm: f64,
        /// What that is if the cause is right.
        meant_mm: f64,
        /// How it may have happened.
        cause: SlipCause,
    },
    /// The rocket is not as long as described.
    RocketDiffers {
        /// Its length by the ruler.
        measured_mm: f64,
        /// Its length as described.
        described_mm: f64,
    },
    /// The cut-out is far too short or too long for its rocket.
    CutOutDiffers {
        /// The length of the cut-out.
        cutout_mm: f64,
        /// The length of the rocket.
        rocket_mm: f64,
    },
    /// The cut-out is to scale: nothing is wrong, its readings are scaled.
    Scaled {
        /// How long it is, the rocket being 100.
        percent: f64,
    },
    /// The guess lies outside the rocket.
    GuessOutside {
        /// The length of the rocket.
        rocket_mm: f64,
    },
    /// The reading lies beyond what it was read on.
    Beyond {
        /// The point that was read: of the rocket, or of its cut-out.
        point: BalancePoint,
        /// How long that is.
        length_mm: f64,
    },
    /// The reading is nearer an end than any point can be.
    NearEnd {
        /// The reading.
        reading_mm: f64,
        /// The point that was read: of the rocket, or of its cut-out.
        point: BalancePoint,
        /// How long that is.
        length_mm: f64,
    },
    /// It would agree with the others if it was read from the other end.
    OtherEnd {
        /// The end that it may have been read from.
        from: End,
        /// What it is from the end that is meant.
        meant_mm: f64,
    },
    /// The reading is left out, and nothing says why.
    LeftOut,
    /// The reading lies apart from the other two.
    Apart,
    /// There is one reading alone.
    OnlyOne,
}

/// Why a value may be too small or too large.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SlipCause {
    /// It was read in centimetres.
    Centimetres,
    /// It was read in inches.
    Inches,
    /// It was read in millimetres.
    Millimetres,
    /// It has a zero too many.
    ZeroTooMany,
}

impl SlipKind {
    /// Whether it asks; otherwise it only says what is done.
    #[must_use]
    pub fn asks(self) -> bool {
        !matches!(self, Self::Scaled { .. })
    }
}

/// A field among the readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReadingField {
    /// The measured length of the rocket.
    RocketLength,
    /// The measured length of the cut-out.
    CutOutLength,
    /// Where the group thought that a point would be.
    Guess(BalancePoint),
    /// One reading of a point, by its place among them.
    Reading(BalancePoint, usize),
    /// All readings of a point together.
    Readings(BalancePoint),
}

/// A rocket measured further off its design's length than this share is asked about. Our
/// judgement, like all that follow.
const LENGTH_OFF: f64 = 0.1;
/// A cut-out is said to be scaled from this share on: less is a ruler's slant.
const SCALED: f64 = 0.02;

/// The likely slips among ruler readings, in the order of the fields: lengths, then for
/// each point its guess and its readings.
///
/// `design_length_mm` is the length of the rocket as described.
///
/// ```
/// use noseward_lesson::{Measurements, SlipCause, SlipKind, UntilChanged, slips};
/// use noseward_stability::Units;
///
/// let mut measured = Measurements::default();
/// measured.mass.mm = [Some(245.0), Some(24.3), Some(247.0)];
/// let found = slips(&measured, 412.0, Units::METRIC);
/// let cause = SlipCause::Centimetres;
/// let kind = SlipKind::OtherUnit { typed_mm: 24.3, meant_mm: 243.0, cause };
/// assert_eq!(found[0].kind, kind);
/// assert_eq!(found[0].until_changed, Some(UntilChanged::NotCounted));
/// ```
#[must_use]
pub fn slips(measured: &Measurements, design_length_mm: f64, units: Units) -> Vec<Slip> {
    let mut looked = Looked { measured, design_length_mm, units, found: Vec::new() };
    looked.rocket();
    looked.cutout();
    for point in BalancePoint::ALL {
        looked.guess(point);
        for reading in 0..REPEATS {
            looked.reading(point, reading);
        }
        looked.together(point);
    }
    looked.found
}

struct Looked<'a> {
    measured: &'a Measurements,
    design_length_mm: f64,
    units: Units,
    found: Vec<Slip>,
}

impl Looked<'_> {
    fn ask(
        &mut self,
        place: ReadingField,
        kind: SlipKind,
        until_changed: Option<UntilChanged>,
    ) {
        self.found.push(Slip { place, kind, until_changed });
    }

    fn rocket(&mut self) {
        let (place, design_mm) = (ReadingField::RocketLength, self.design_length_mm);
        let Some(typed_mm) = self.measured.rocket_length_mm else { return };
        if self.is_impossible(place, typed_mm, UntilChanged::NotUsed) {
            return;
        }
        let allowed_mm = LENGTH_OFF * design_mm;
        if (typed_mm - design_mm).abs() <= allowed_mm {
            return;
        }
        let kind = self.other_unit(typed_mm, design_mm, allowed_mm).unwrap_or(
            SlipKind::RocketDiffers { measured_mm: typed_mm, described_mm: design_mm },
        );
        let is_used = self.measured.rocket_mm(design_mm) == typed_mm;
        self.ask(place, kind, (!is_used).then_some(UntilChanged::NotUsed));
    }

    fn cutout(&mut self) {
        let Some(typed_mm) = self.measured.cutout_length_mm else { return };
        let place = ReadingField::CutOutLength;
        if self.is_impossible(place, typed_mm, UntilChanged::NotUsed) {
            return;
        }
        let rocket_mm = self.measured.rocket_mm(self.design_length_mm);
        if self.ruled_mm(BalancePoint::Pressure) != typed_mm {
            // A print is rarely more than a third smaller or larger.
            let kind = self
                .other_unit(typed_mm, rocket_mm, rocket_mm / 3.0)
                .unwrap_or(SlipKind::CutOutDiffers { cutout_mm: typed_mm, rocket_mm });
            self.ask(place, kind, Some(UntilChanged::NotUsed));
            return;
        }
        let share = typed_mm / rocket_mm;
        if (share - 1.0).abs() > SCALED {
            self.ask(place, SlipKind::Scaled { percent: share * 100.0 }, None);
        }
    }

    fn ruled_mm(&self, point: BalancePoint) -> f64 {
        self.measured.ruled_mm(point, self.design_length_mm)
    }

    fn guess(&mut self, point: BalancePoint) {
        let rocket_mm = self.ruled_mm(BalancePoint::Mass);
        let place = ReadingField::Guess(point);
        let Some(guess_mm) = self.measured.of(point).guess_mm else { return };
        let inside = guess_mm >= 0.0 && guess_mm <= rocket_mm + RULER_MM;
        if !inside {
            self.ask(place, SlipKind::GuessOutside { rocket_mm }, None);
        }
    }

    fn reading(&mut self, point: BalancePoint, at: usize) {
        let readings = self.measured.of(point);
        let Some(mm) = readings.mm[at] else { return };
        let place = ReadingField::Reading(point, at);
        let out = readings.left_out.as_ref().filter(|out| out.reading == at);
        if out.is_some_and(|out| !out.reason.trim().is_empty()) {
            return;
        }
        if self.is_impossible(place, mm, UntilChanged::NotCounted) {
            return;
        }
        let ruled_mm = self.ruled_mm(point);
        let counts = |at| self.measured.counts(point, at, self.design_length_mm);
        // What the others say, as far as they could be true.
        let others =
            readings.mm.iter().enumerate().filter(|(i, _)| *i != at && counts(*i));
        let others = ReadingStats::of(others.filter_map(|(_, mm)| *mm));
        let near_mm = near_mm(ruled_mm);
        let agrees = |mm: f64, with: f64| (mm - with).abs() <= near_mm;
        if !counts(at) {
            let (middle_mm, allowed_mm) = match others {
                Some(others) => (others.middle_mm, near_mm),
                None => (ruled_mm / 2.0, ruled_mm / 2.0),
            };
            let otherwise = if mm > ruled_mm {
                SlipKind::Beyond { point, length_mm: ruled_mm }
            } else {
                SlipKind::NearEnd { reading_mm: mm, point, length_mm: ruled_mm }
            };
            let kind = self.other_unit(mm, middle_mm, allowed_mm).unwrap_or(otherwise);
            self.ask(place, kind, Some(UntilChanged::NotCounted));
            return;
        }
        let mirrored_mm = ruled_mm - mm;
        let agree = |mm| others.is_some_and(|others| agrees(mm, others.middle_mm));
        if !agree(mm) && agree(mirrored_mm) {
            let from = match readings.from {
                End::Nose => End::Tail,
                End::Tail => End::Nose,
            };
            self.ask(place, SlipKind::OtherEnd { from, meant_mm: mirrored_mm }, None);
            return;
        }
        self.outlier(point, at);
    }

    /// A reading that lies apart, or is left out: what is to be done about it.
    fn outlier(&mut self, point: BalancePoint, at: usize) {
        let readings = self.measured.of(point);
        let is_out = readings.left_out.as_ref().is_some_and(|out| out.reading == at);
        let kind = if is_out {
            SlipKind::LeftOut
        } else if readings.outlier() == Some(at) {
            SlipKind::Apart
        } else {
            return;
        };
        self.ask(ReadingField::Reading(point, at), kind, None);
    }

    fn together(&mut self, point: BalancePoint) {
        if self.measured.of(point).mm.iter().flatten().count() == 1 {
            self.ask(ReadingField::Readings(point), SlipKind::OnlyOne, None);
        }
    }

    /// Whether no ruler can show such a value, and says so.
    fn is_impossible(
        &mut self,
        place: ReadingField,
        mm: f64,
        until_changed: UntilChanged,
    ) -> bool {
        let kind = if !mm.is_finite() {
            SlipKind::NotANumber
        } else if mm < 0.0 {
            SlipKind::BelowZero
        } else if mm == 0.0 {
            SlipKind::Zero
        } else {
            return false;
        };
        self.ask(place, kind, Some(until_changed));
        true
    }

    /// What was typed may be in another unit, when it comes close to what is expected then.
    fn other_unit(
        &self,
        typed_mm: f64,
        expected_mm: f64,
        allowed_mm: f64,
    ) -> Option<SlipKind> {
        const MM_PER_INCH: f64 = 25.4;
        let factors = match self.units.system {
            UnitSystem::Metric => [
                (10.0, SlipCause::Centimetres),
                (MM_PER_INCH, SlipCause::Inches),
                (0.1, SlipCause::ZeroTooMany),
            ],
            UnitSystem::Inch => [
                (1.0 / MM_PER_INCH, SlipCause::Millimetres),
                (10.0 / MM_PER_INCH, SlipCause::Centimetres),
                (0.1, SlipCause::ZeroTooMany),
            ],
        };
        let off = |factor: f64| (typed_mm * factor - expected_mm).abs();
        // Too small a value is made larger, and too large a one smaller.
        let mends = |factor: f64| (factor > 1.0) == (typed_mm < expected_mm);
        let fits = factors
            .into_iter()
            .filter(|(factor, _)| mends(*factor) && off(*factor) <= allowed_mm);
        let (factor, cause) = fits.min_by(|a, b| off(a.0).total_cmp(&off(b.0)))?;
        Some(SlipKind::OtherUnit { typed_mm, meant_mm: typed_mm * factor, cause })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{LeftOut, Readings};
    use BalancePoint::{Mass, Pressure};
    use ReadingField::{CutOutLength, Guess, Reading, RocketLength};
    use noseward_stability::MeasuredPoints;

    /// A rocket of 412 mm, its cut-out true to size, well measured.
    fn good() -> Measurements {
        let readings = |mm: [f64; 3]| Readings {
            guess_mm: Some(200.0),
            mm: mm.map(Some),
            ..Readings::default()
        };
        Measurements {
            rocket_length_mm: Some(411.0),
            cutout_length_mm: Some(410.0),
            mass: readings([245.0, 243.0, 247.0]),
            pressure: readings([281.0, 284.0, 282.0]),
        }
    }

    fn found(measured: &Measurements) -> Vec<Slip> {
        slips(measured, 412.0, Units::METRIC)
    }

    /// What may be meant, to a tenth of a millimetre; not a number where nothing is proposed.
    fn meant(slip: &Slip) -> f64 {
        match slip.kind {
            SlipKind::OtherUnit { meant_mm, .. } => (meant_mm * 10.0).round() / 10.0,
            _ => f64::NAN,
        }
    }

    #[test]
    fn good_readings_are_not_asked_about() {
        assert_eq!(found(&Measurements::default()), []);
        assert_eq!(found(&good()), []);
        let mut same = good();
        same.mass.mm = [Some(245.0); 3];
        same.pressure.mm = [Some(281.0); 3];
        assert_eq!(found(&same), []);
        let mut from_tail = good();
        from_tail.mass.from = End::Tail;
        from_tail.mass.mm = [167.0, 169.0, 165.0].map(Some);
        assert_eq!(found(&from_tail), []);
        // The ruler may show a little more than the rocket is long.
        let mut at_the_tail = good();
        at_the_tail.mass.guess_mm = Some(412.0);
        assert_eq!(found(&at_the_tail), []);
        let mut inch = good();
        inch.mass.mm = [9.6, 9.7, 9.65].map(|inches| Some(inches * 25.4));
        assert_eq!(slips(&inch, 412.0, Units::INCH), []);
    }

    /// Slips as a class makes them, one in each set of readings.
    #[test]
    fn slips_are_flagged_with_their_cause_and_whether_they_count() {
        use SlipKind::{
            Apart, BelowZero, Beyond, CutOutDiffers, GuessOutside, OnlyOne, OtherEnd,
            RocketDiffers, Zero,
        };
        type Slipped = fn(&mut Measurements);
        let centimetres = |typed_mm, meant_mm| SlipKind::OtherUnit {
            typed_mm,
            meant_mm,
            cause: SlipCause::Centimetres,
        };
        let all: [(ReadingField, SlipKind, Slipped); 13] = [
            (Reading(Mass, 1), centimetres(24.3, 243.0), |m| m.mass.mm[1] = Some(24.3)),
            (Reading(Mass, 0), Beyond { point: Mass, length_mm: 411.0 }, |m| {
                m.mass.mm[0] = Some(545.0);
            }),
            (Reading(Pressure, 2), Beyond { point: Pressure, length_mm: 388.0 }, |m| {
                m.cutout_length_mm = Some(388.0);
                m.pressure.mm[2] = Some(401.0);
            }),
            (RocketLength, centimetres(41.1, 411.0), |m| {
                m.rocket_length_mm = Some(41.1);
            }),
            (
                RocketLength,
                RocketDiffers { measured_mm: 321.0, described_mm: 412.0 },
                |m| {
                    m.rocket_length_mm = Some(321.0);
                },
            ),
            (CutOutLength, centimetres(38.8, 388.0), |m| {
                m.cutout_length_mm = Some(38.8);
            }),
            (CutOutLength, CutOutDiffers { cutout_mm: 55.0, rocket_mm: 411.0 }, |m| {
                m.cutout_length_mm = Some(55.0);
            }),
            (Reading(Mass, 2), OtherEnd { from: End::Tail, meant_mm: 248.0 }, |m| {
                m.mass.mm[2] = Some(163.0);
            }),
            (Reading(Pressure, 0), Apart, |m| {
                m.pressure.mm[0] = Some(229.0);
            }),
            (Reading(Mass, 0), Zero, |m| m.mass.mm[0] = Some(0.0)),
            (Reading(Pressure, 1), BelowZero, |m| {
                m.pressure.mm[1] = Some(-284.0);
            }),
            (Guess(Mass), GuessOutside { rocket_mm: 411.0 }, |m| {
                m.mass.guess_mm = Some(500.0);
            }),
            (ReadingField::Readings(Pressure), OnlyOne, |m| {
                m.pressure.mm = [None, Some(281.0), None];
            }),
        ];
        for (place, cause, slip) in all {
            let mut measured = good();
            slip(&mut measured);
            let asked: Vec<_> =
                found(&measured).into_iter().filter(|slip| slip.kind.asks()).collect();
            assert_eq!(asked.len(), 1, "{cause:?}: {asked:?}");
            assert_eq!(asked[0].place, place);
            // A tenth of a millimetre is what somebody types.
            assert_eq!(format!("{:.1?}", asked[0].kind), format!("{cause:.1?}"));
            // Nothing is refused, and what cannot be true does not count, nor is it used.
            let out =
                usize::from(asked[0].until_changed == Some(UntilChanged::NotCounted));
            let all = BalancePoint::ALL.map(|point| {
                let counted = measured.middle(point, 412.0).unwrap().count;
                measured.of(point).mm.iter().flatten().count() - counted
            });
            assert_eq!(all.iter().sum::<usize>(), out, "{asked:?}");
            let used = (measured.rocket_mm(412.0), measured.ruled_mm(Pressure, 412.0));
            let typed = (measured.rocket_length_mm, measured.cutout_length_mm);
            let all_used = (Some(used.0), Some(used.1)) == typed;
            assert_eq!(
                all_used,
                asked[0].until_changed != Some(UntilChanged::NotUsed),
                "{asked:?}"
            );
        }
    }

    #[test]
    fn all_three_in_centimetres_are_asked_about() {
        let mut measured = good();
        measured.mass.mm = [24.5, 24.3, 24.7].map(Some);
        let found = found(&measured);
        assert_eq!(found.len(), 3);
        assert_eq!(found.iter().map(meant).collect::<Vec<_>>(), [245.0, 243.0, 247.0]);
        assert_eq!(measured.middle(Mass, 412.0), None);
        assert_eq!(measured.separation_mm(412.0), None);
    }

    /// A tenth of a rocket of 411 mm is no likely reading of a point, and tells nothing of
    /// another one.
    #[test]
    fn a_tenth_of_the_length_is_asked_about() {
        let mut measured = good();
        measured.mass.mm = [Some(24.3), Some(41.1), None];
        let found = found(&measured);
        assert_eq!(found.len(), 2, "{found:?}");
        assert_eq!(found.iter().map(meant).collect::<Vec<_>>(), [243.0, 411.0]);
        // As far as the ruler shows, with a point near the tail.
        measured.mass.mm = [Some(400.0), Some(402.0), Some(41.2)];
        let found = slips(&measured, 412.0, Units::METRIC);
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(meant(&found[0]), 412.0, "{found:?}");
    }

    #[test]
    fn other_units_and_a_zero_too_many() {
        let cause_of = |mm: f64, units| {
            let mut measured = good();
            measured.mass.mm[0] = Some(mm);
            let found = slips(&measured, 412.0, units);
            assert_eq!(found.len(), 1, "{found:?}");
            assert_eq!(found[0].until_changed, Some(UntilChanged::NotCounted));
            let SlipKind::OtherUnit { typed_mm, cause, .. } = found[0].kind else {
                panic!("{found:?}")
            };
            assert_eq!(typed_mm, mm);
            (meant(&found[0]), cause)
        };
        assert_eq!(cause_of(9.7, Units::METRIC), (246.4, SlipCause::Inches));
        assert_eq!(cause_of(2450.0, Units::METRIC), (245.0, SlipCause::ZeroTooMany));
        // 245 and 24.5 typed where inches are meant.
        let mm = cause_of(245.0 * 25.4, Units::INCH);
        assert_eq!(mm, (245.0, SlipCause::Millimetres));
        let cm = cause_of(24.5 * 25.4, Units::INCH);
        assert_eq!(cm, (245.0, SlipCause::Centimetres));
    }

    /// Whatever is proposed lies on the rocket, however wrong the lengths are.
    #[test]
    fn only_what_fits_on_the_rocket_is_proposed() {
        for at in 0..3 {
            let mut measured = Measurements::default();
            let wrong = [Some(9999.0), Some(9999.0), None];
            (measured.rocket_length_mm, measured.cutout_length_mm) =
                (wrong[at], wrong[(at + 1) % 3]);
            for mm in [23.6, -5.0, 0.3, 9999.0] {
                measured.mass.mm = [Some(mm), None, None];
                measured.pressure.mm = measured.mass.mm;
                for slip in found(&measured) {
                    let meant = meant(&slip);
                    assert!(meant.is_nan() || meant <= 412.0, "{slip:?}");
                }
                assert_eq!(measured.points(412.0), MeasuredPoints::default(), "{mm}");
            }
        }
    }

    /// Where no unit explains it, it is no less impossible.
    #[test]
    fn no_point_is_as_near_an_end_as_a_tenth() {
        let mut measured = good();
        measured.mass.mm = [Some(12.0), Some(245.0), Some(246.0)];
        assert_eq!(measured.middle(Mass, 412.0).unwrap().count, 2);
        let near_end =
            SlipKind::NearEnd { reading_mm: 12.0, point: Mass, length_mm: 411.0 };
        assert_eq!(found(&measured)[0].kind, near_end);
        measured.mass.mm = [Some(41.2), Some(41.3), None];
        assert_eq!(measured.middle(Mass, 412.0).unwrap().count, 1);
        // A rocket without a length has no ends.
        measured.rocket_length_mm = None;
        assert_eq!(measured.middle(Mass, 0.0).unwrap().count, 2);
    }

    #[test]
    fn a_scaled_cut_out_is_only_said() {
        let mut measured = good();
        measured.cutout_length_mm = Some(386.0);
        measured.pressure.mm = [264.0, 266.0, 265.0].map(Some);
        let found = found(&measured);
        assert_eq!(found.len(), 1);
        assert!(!found[0].kind.asks());
        assert_eq!(found[0].kind, SlipKind::Scaled { percent: 386.0 / 411.0 * 100.0 });
    }

    #[test]
    fn what_is_left_out_needs_a_reason() {
        let mut measured = good();
        measured.pressure.mm[0] = Some(229.0);
        measured.pressure.left_out = Some(LeftOut { reading: 0, reason: " ".into() });
        assert_eq!(found(&measured)[0].kind, SlipKind::LeftOut);
        let reason = "The card was bent.".to_owned();
        measured.pressure.left_out = Some(LeftOut { reading: 0, reason });
        assert_eq!(found(&measured), []);
    }

    #[test]
    fn what_is_no_number_is_said_and_hurts_nothing() {
        for value in [f64::NAN, f64::INFINITY, -f64::INFINITY] {
            let mut measured = good();
            measured.rocket_length_mm = Some(value);
            measured.cutout_length_mm = Some(value);
            measured.mass.mm = [Some(value); 3];
            let sentences = found(&measured);
            assert_eq!(sentences.len(), 5, "{sentences:?}");
        }
    }
}
