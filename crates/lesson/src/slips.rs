//! Readings that look like a slip of the ruler. These only ask: nothing is refused. What
//! cannot be true of the rocket does not count until it is changed ([`Measurements::counts`]).

use noseward_stability::{UnitSystem, Units, fixed};

use crate::readings::{RULER_MM, near_mm};
use crate::{BalancePoint, End, Measurements, REPEATS, ReadingStats};

/// Something that looks like a slip, or that is worth a word.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// The field that it belongs to.
    pub place: ReadingField,
    /// What looks odd, and what may have happened.
    pub sentence: String,
    /// Whether it asks; otherwise it only says what is done.
    pub asks: bool,
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
/// What is said of a reading, and of a length, that cannot be true.
const NOT_COUNTED: &str = " It does not count until it is changed.";
const NOT_USED: &str = " It is not used until it is changed.";

/// The likely slips among ruler readings, in the order of the fields: lengths, then for
/// each point its guess and its readings.
///
/// `design_length_mm` is the length of the rocket as described.
///
/// ```
/// use noseward_lesson::{Measurements, slips};
/// use noseward_stability::Units;
///
/// let mut measured = Measurements::default();
/// measured.mass.mm = [Some(245.0), Some(24.3), Some(247.0)];
/// let found = slips(&measured, 412.0, Units::METRIC);
/// assert_eq!(
///     found[0].sentence,
///     "Only 24.3 mm: read in centimetres? Did you mean 243 mm? It does not count until it is \
///      changed."
/// );
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
    fn ask(&mut self, place: ReadingField, sentence: String) {
        self.found.push(Slip { place, sentence, asks: true });
    }

    fn length(&self, mm: f64) -> String {
        self.units.length(mm)
    }

    fn rocket(&mut self) {
        let (place, design_mm) = (ReadingField::RocketLength, self.design_length_mm);
        let Some(typed_mm) = self.measured.rocket_length_mm else { return };
        if self.is_impossible(place, typed_mm, NOT_USED) {
            return;
        }
        let allowed_mm = LENGTH_OFF * design_mm;
        if (typed_mm - design_mm).abs() <= allowed_mm {
            return;
        }
        let mut sentence =
            self.other_unit(typed_mm, design_mm, allowed_mm).unwrap_or_else(|| {
                format!(
                    "The ruler says {}, the description {}. Measure again, or change the \
                     description.",
                    self.length(typed_mm),
                    self.length(design_mm)
                )
            });
        if self.measured.rocket_mm(design_mm) != typed_mm {
            sentence += NOT_USED;
        }
        self.ask(place, sentence);
    }

    fn cutout(&mut self) {
        let Some(typed_mm) = self.measured.cutout_length_mm else { return };
        let place = ReadingField::CutOutLength;
        if self.is_impossible(place, typed_mm, NOT_USED) {
            return;
        }
        let rocket_mm = self.measured.rocket_mm(self.design_length_mm);
        if self.ruled_mm(BalancePoint::Pressure) != typed_mm {
            // A print is rarely more than a third smaller or larger.
            let sentence = self
                .other_unit(typed_mm, rocket_mm, rocket_mm / 3.0)
                .unwrap_or_else(|| {
                    format!(
                        "A cut-out of {} for a rocket of {}? Measure it again.",
                        self.length(typed_mm),
                        self.length(rocket_mm)
                    )
                });
            self.ask(place, sentence + NOT_USED);
            return;
        }
        let share = typed_mm / rocket_mm;
        if (share - 1.0).abs() > SCALED {
            let sentence = format!(
                "The cut-out is {} % as long as the rocket. Its readings are scaled to \
                 the rocket.",
                fixed(share * 100.0, 0)
            );
            self.found.push(Slip { place, sentence, asks: false });
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
            let length = self.length(rocket_mm);
            let sentence =
                format!("This guess lies outside the rocket, which is {length} long.");
            self.ask(place, sentence);
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
        if self.is_impossible(place, mm, NOT_COUNTED) {
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
            let beyond = mm > ruled_mm;
            let sentence =
                self.other_unit(mm, middle_mm, allowed_mm).unwrap_or_else(|| {
                    let whole = match point {
                        BalancePoint::Mass => "rocket",
                        BalancePoint::Pressure => "cut-out",
                    };
                    let (mm, ruled) = (self.length(mm), self.length(ruled_mm));
                    if beyond {
                        format!("This lies beyond the {whole}, which is {ruled} long.")
                    } else {
                        format!(
                            "Only {mm}: no point is so near an end of a {whole} of \
                             {ruled}. Measure again."
                        )
                    }
                });
            self.ask(place, sentence + NOT_COUNTED);
            return;
        }
        let mirrored_mm = ruled_mm - mm;
        let agree = |mm| others.is_some_and(|others| agrees(mm, others.middle_mm));
        if !agree(mm) && agree(mirrored_mm) {
            let (read, meant) = match readings.from {
                End::Nose => ("the tail", "the nose"),
                End::Tail => ("the nose", "the tail"),
            };
            let sentence = format!(
                "Was this read from {read}? Then it is {} from {meant}.",
                self.length(mirrored_mm)
            );
            self.ask(place, sentence);
            return;
        }
        self.outlier(point, at);
    }

    /// A reading that lies apart, or is left out: what is to be done about it.
    fn outlier(&mut self, point: BalancePoint, at: usize) {
        let readings = self.measured.of(point);
        let is_out = readings.left_out.as_ref().is_some_and(|out| out.reading == at);
        let sentence = if is_out {
            "You leave this reading out. Say why."
        } else if readings.outlier() == Some(at) {
            "This reading lies apart from the other two. It stays in the record. Choose \
             whether to leave it out, and say why."
        } else {
            return;
        };
        self.ask(ReadingField::Reading(point, at), sentence.into());
    }

    fn together(&mut self, point: BalancePoint) {
        if self.measured.of(point).mm.iter().flatten().count() == 1 {
            let sentence =
                "One reading cannot show how far readings differ. Take two more.";
            self.ask(ReadingField::Readings(point), sentence.into());
        }
    }

    /// Whether no ruler can show such a value, and says so.
    fn is_impossible(&mut self, place: ReadingField, mm: f64, consequence: &str) -> bool {
        let sentence = if !mm.is_finite() {
            "This needs a number."
        } else if mm < 0.0 {
            "A ruler shows nothing below zero. Is there a sign too many?"
        } else if mm == 0.0 {
            "This is zero. Leave it empty if nothing was measured."
        } else {
            return false;
        };
        self.ask(place, format!("{sentence}{consequence}"));
        true
    }

    /// What was typed may be in another unit, when it comes close to what is expected then.
    fn other_unit(
        &self,
        typed_mm: f64,
        expected_mm: f64,
        allowed_mm: f64,
    ) -> Option<String> {
        const MM_PER_INCH: f64 = 25.4;
        let factors = match self.units.system {
            UnitSystem::Metric => [
                (10.0, "read in centimetres"),
                (MM_PER_INCH, "read in inches"),
                (0.1, "one zero too many"),
            ],
            UnitSystem::Inch => [
                (1.0 / MM_PER_INCH, "read in millimetres"),
                (10.0 / MM_PER_INCH, "read in centimetres"),
                (0.1, "one zero too many"),
            ],
        };
        let off = |factor: f64| (typed_mm * factor - expected_mm).abs();
        // Too small a value is made larger, and too large a one smaller.
        let mends = |factor: f64| (factor > 1.0) == (typed_mm < expected_mm);
        let fits = factors
            .into_iter()
            .filter(|(factor, _)| mends(*factor) && off(*factor) <= allowed_mm);
        let (factor, cause) = fits.min_by(|a, b| off(a.0).total_cmp(&off(b.0)))?;
        let typed = self.length(typed_mm);
        let meant = self.units.reading(typed_mm * factor);
        let only = if factor > 1.0 { "Only " } else { "" };
        Some(format!("{only}{typed}: {cause}? Did you mean {meant}?"))
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
        type Slipped = fn(&mut Measurements);
        let all: [(ReadingField, &str, Slipped); 13] = [
            (Reading(Mass, 1), "Did you mean 243 mm?", |m| m.mass.mm[1] = Some(24.3)),
            (
                Reading(Mass, 0),
                "beyond the rocket, which is 411 mm long. It does not",
                |m| {
                    m.mass.mm[0] = Some(545.0);
                },
            ),
            (Reading(Pressure, 2), "beyond the cut-out, which is 388 mm long", |m| {
                m.cutout_length_mm = Some(388.0);
                m.pressure.mm[2] = Some(401.0);
            }),
            (RocketLength, "read in centimetres? Did you mean 411 mm?", |m| {
                m.rocket_length_mm = Some(41.1);
            }),
            (RocketLength, "The ruler says 321 mm, the description 412 mm", |m| {
                m.rocket_length_mm = Some(321.0);
            }),
            (CutOutLength, "read in centimetres? Did you mean 388 mm?", |m| {
                m.cutout_length_mm = Some(38.8);
            }),
            (CutOutLength, "of 55 mm for a rocket of 411 mm? Measure it again.", |m| {
                m.cutout_length_mm = Some(55.0);
            }),
            (Reading(Mass, 2), "Was this read from the tail? Then it is 248 mm", |m| {
                m.mass.mm[2] = Some(163.0);
            }),
            (Reading(Pressure, 0), "lies apart from the other two. It stays", |m| {
                m.pressure.mm[0] = Some(229.0);
            }),
            (Reading(Mass, 0), "This is zero", |m| m.mass.mm[0] = Some(0.0)),
            (Reading(Pressure, 1), "nothing below zero", |m| {
                m.pressure.mm[1] = Some(-284.0);
            }),
            (Guess(Mass), "outside the rocket, which is 411 mm long", |m| {
                m.mass.guess_mm = Some(500.0);
            }),
            (ReadingField::Readings(Pressure), "Take two more", |m| {
                m.pressure.mm = [None, Some(281.0), None];
            }),
        ];
        for (place, cause, slip) in all {
            let mut measured = good();
            slip(&mut measured);
            let asked: Vec<_> =
                found(&measured).into_iter().filter(|slip| slip.asks).collect();
            assert_eq!(asked.len(), 1, "{cause}: {asked:?}");
            assert_eq!(asked[0].place, place);
            assert!(asked[0].sentence.contains(cause), "{cause}: {asked:?}");
            // Nothing is refused, and what cannot be true does not count, nor is it used.
            let out = usize::from(asked[0].sentence.ends_with(NOT_COUNTED));
            let all = BalancePoint::ALL.map(|point| {
                let counted = measured.middle(point, 412.0).unwrap().count;
                measured.of(point).mm.iter().flatten().count() - counted
            });
            assert_eq!(all.iter().sum::<usize>(), out, "{asked:?}");
            let used = (measured.rocket_mm(412.0), measured.ruled_mm(Pressure, 412.0));
            let typed = (measured.rocket_length_mm, measured.cutout_length_mm);
            let all_used = (Some(used.0), Some(used.1)) == typed;
            assert_eq!(all_used, !asked[0].sentence.ends_with(NOT_USED), "{asked:?}");
        }
    }

    #[test]
    fn all_three_in_centimetres_are_asked_about() {
        let mut measured = good();
        measured.mass.mm = [24.5, 24.3, 24.7].map(Some);
        let found = found(&measured);
        assert_eq!(found.len(), 3);
        for (slip, meant) in found.iter().zip(["245 mm?", "243 mm?", "247 mm?"]) {
            assert!(slip.sentence.contains(meant), "{slip:?}");
        }
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
        for (slip, meant) in found.iter().zip(["243 mm?", "411 mm?"]) {
            assert!(slip.sentence.contains(meant), "{slip:?}");
        }
        // As far as the ruler shows, with a point near the tail.
        measured.mass.mm = [Some(400.0), Some(402.0), Some(41.2)];
        let found = slips(&measured, 412.0, Units::METRIC);
        assert_eq!(found.len(), 1, "{found:?}");
        assert!(found[0].sentence.contains("Did you mean 412 mm?"), "{found:?}");
    }

    #[test]
    fn other_units_and_a_zero_too_many() {
        let sentence = |mm: f64, units| {
            let mut measured = good();
            measured.mass.mm[0] = Some(mm);
            let found = slips(&measured, 412.0, units);
            assert_eq!(found.len(), 1, "{found:?}");
            found[0].sentence.clone()
        };
        let inches = sentence(9.7, Units::METRIC);
        assert!(inches.contains("read in inches? Did you mean 246 mm?"), "{inches}");
        let zero = sentence(2450.0, Units::METRIC);
        assert_eq!(
            zero,
            format!("2450 mm: one zero too many? Did you mean 245 mm?{NOT_COUNTED}")
        );
        // 245 and 24.5 typed where inches are meant.
        let mm = sentence(245.0 * 25.4, Units::INCH);
        assert!(mm.contains("read in millimetres? Did you mean 9.65 in?"), "{mm}");
        let cm = sentence(24.5 * 25.4, Units::INCH);
        assert!(cm.contains("read in centimetres? Did you mean 9.65 in?"), "{cm}");
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
                    let meant = slip.sentence.split("mean ").nth(1);
                    let meant = meant.map(|meant| meant.split(' ').next().unwrap());
                    let meant = meant.map(|meant| meant.parse::<f64>().unwrap());
                    assert!(meant.is_none_or(|mm| mm <= 412.0), "{slip:?}");
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
        assert!(found(&measured)[0].sentence.starts_with("Only 12 mm: no point"));
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
        assert!(!found[0].asks);
        assert_eq!(
            found[0].sentence,
            "The cut-out is 94 % as long as the rocket. Its readings are scaled to the rocket."
        );
    }

    #[test]
    fn what_is_left_out_needs_a_reason() {
        let mut measured = good();
        measured.pressure.mm[0] = Some(229.0);
        measured.pressure.left_out = Some(LeftOut { reading: 0, reason: " ".into() });
        assert_eq!(found(&measured)[0].sentence, "You leave this reading out. Say why.");
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
