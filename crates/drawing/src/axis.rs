//! Round steps along an axis of lengths, and the numbers at them.

use crate::written::Written;
use noseward_stability::{UnitSystem, Units};
use noseward_words::{self as words, WrittenIn};

/// Lengths that a chart shows, in millimetres: what lies beyond is not drawn.
pub(crate) const MOST_MM: f64 = 100_000.0;

/// Whether a chart can show a length.
pub(crate) fn is_shown(mm: f64) -> bool {
    mm.abs() <= MOST_MM
}

/// From where to where an axis goes, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Reach {
    pub(crate) least_mm: f64,
    pub(crate) most_mm: f64,
}

impl Reach {
    /// The least reach that is worth drawing.
    const LEAST_MM: f64 = 20.0;

    /// All the lengths and zero.
    pub(crate) fn of(lengths_mm: impl IntoIterator<Item = f64>) -> Self {
        let start = Self { least_mm: 0.0, most_mm: 0.0 };
        let mut reach = lengths_mm.into_iter().fold(start, |reach, mm| Self {
            least_mm: reach.least_mm.min(mm),
            most_mm: reach.most_mm.max(mm),
        });
        let missing_mm = Self::LEAST_MM - (reach.most_mm - reach.least_mm);
        if missing_mm > 0.0 {
            reach.least_mm -= missing_mm / 2.0;
            reach.most_mm += missing_mm / 2.0;
        }
        reach
    }

    /// The least that holds it and begins and ends with a whole step.
    fn whole(self, step_mm: f64) -> Self {
        // A rounding of the last bits must not add a step.
        Self {
            least_mm: (self.least_mm / step_mm + 1e-6).floor() * step_mm,
            most_mm: (self.most_mm / step_mm - 1e-6).ceil() * step_mm,
        }
    }

    /// The same with whole steps at both ends, so that steps drawn within `room_px` stand
    /// at least `apart_px` apart, and that step.
    pub(crate) fn in_steps(
        self,
        units: Units,
        room_px: f64,
        apart_px: f64,
    ) -> (Self, f64) {
        let step_mm = round_step_mm(units, |step_mm| {
            let whole = self.whole(step_mm);
            step_mm / (whole.most_mm - whole.least_mm) * room_px >= apart_px
        });
        (self.whole(step_mm), step_mm)
    }

    /// Every multiple of a step within it.
    pub(crate) fn multiples_mm(self, step_mm: f64) -> impl Iterator<Item = f64> {
        let first = (self.least_mm / step_mm - 1e-6).ceil();
        (0_u32..)
            .map(move |k| (first + f64::from(k)) * step_mm)
            .take_while(move |&mm| mm <= self.most_mm + step_mm * 1e-6)
    }
}

/// The least of the round steps (1, 2, 5 and so on by tens, from 1 mm or 0.05 in) for which
/// `fits` holds. One of them does: lengths are at most [`MOST_MM`].
pub(crate) fn round_step_mm(units: Units, fits: impl Fn(f64) -> bool) -> f64 {
    let unit_mm = units.mm_per_unit();
    let mut decade_mm = match units.system {
        UnitSystem::Metric => unit_mm,
        UnitSystem::Inch => 0.01 * unit_mm,
    };
    let least_mm = match units.system {
        UnitSystem::Metric => 1.0,
        UnitSystem::Inch => 0.05 * unit_mm - 1e-9,
    };
    loop {
        for part in [1.0, 2.0, 5.0] {
            let step_mm = part * decade_mm;
            let last = step_mm > 20.0 * MOST_MM;
            if last || (step_mm >= least_mm && fits(step_mm)) {
                return step_mm;
            }
        }
        decade_mm *= 10.0;
    }
}

/// The number at a place of an axis, without its unit.
pub(crate) fn axis_number(units: Units, mm: f64) -> String {
    words::Number::trimmed(mm / units.mm_per_unit(), 2).to_string()
}

/// A distance as a ruler tells it, with its unit and with a real minus sign.
pub(crate) fn reading(units: Units, mm: f64) -> String {
    units.reading(mm)
}

/// The same without its unit.
pub(crate) fn reading_number(units: Units, mm: f64) -> String {
    units.reading_alone(mm)
}

/// A measured distance, to the digits that were typed, with a real minus sign.
pub(crate) fn measured(units: Units, mm: f64) -> String {
    units.length(mm)
}

/// The same without its unit.
pub(crate) fn measured_number(units: Units, mm: f64) -> String {
    units.length_alone(mm)
}

/// What an axis of separations is.
pub(crate) fn separation_in(units: Units) -> String {
    words::drawing_separation_in(match units.system {
        UnitSystem::Metric => WrittenIn::Millimetres,
        UnitSystem::Inch => WrittenIn::Inches,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_are_round_and_as_small_as_fits() {
        for (units, px_per_mm, step_mm) in [
            (Units::METRIC, 100.0, 1.0),
            (Units::METRIC, 4.0, 10.0),
            (Units::METRIC, 2.1, 20.0),
            (Units::METRIC, 0.01, 5_000.0),
            (Units::INCH, 40.0, 0.05 * 25.4),
            (Units::INCH, 4.0, 0.5 * 25.4),
            (Units::INCH, 1.0, 2.0 * 25.4),
        ] {
            let found = round_step_mm(units, |step_mm| step_mm * px_per_mm >= 40.0);
            assert!((found - step_mm).abs() < 1e-9, "{found} for {px_per_mm}");
        }
        // Where nothing fits, it ends.
        assert!(round_step_mm(Units::METRIC, |_| false) > MOST_MM);
    }

    #[test]
    fn a_reach_holds_zero_and_whole_steps() {
        let reach = Reach::of([12.0, 46.0]);
        assert_eq!(reach, Reach { least_mm: 0.0, most_mm: 46.0 });
        let (whole, step_mm) = reach.in_steps(Units::METRIC, 200.0, 30.0);
        assert_eq!((whole, step_mm), (Reach { least_mm: 0.0, most_mm: 50.0 }, 10.0));
        assert!(whole.multiples_mm(10.0).eq([0.0, 10.0, 20.0, 30.0, 40.0, 50.0]));
        let negative = Reach::of([-31.0, 12.0]);
        assert!(negative.multiples_mm(20.0).eq([-20.0, 0.0]));
        assert_eq!(Reach::of([]), Reach { least_mm: -10.0, most_mm: 10.0 });
    }

    #[test]
    fn numbers_have_a_minus_sign_and_no_negative_zero() {
        assert_eq!(axis_number(Units::METRIC, -20.0), "−20");
        assert_eq!(axis_number(Units::INCH, 3.0 * 2.54), "0.3");
        assert_eq!(axis_number(Units::METRIC, -1e-12), "0");
        assert_eq!(reading(Units::METRIC, -12.4), "−12 mm");
        assert_eq!(reading_number(Units::INCH, -25.4), "−1.00");
        assert_eq!(reading_number(Units::METRIC, 46.2), "46");
    }
}
