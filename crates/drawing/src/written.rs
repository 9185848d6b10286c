//! Lengths and masses with their units, as the language in use writes numbers.

use noseward_stability::{UnitSystem, Units};
use noseward_words::Number;

/// Grams in one avoirdupois ounce. Exact: international yard and pound agreement, 1959.
const G_PER_OUNCE: f64 = 28.349_523_125;

/// How a length or a mass is written: drawings, charts and the page agree.
pub trait Written {
    /// A typed length with its unit: up to 0.1 mm, or 0.001 in.
    #[must_use]
    fn length(self, mm: f64) -> String;

    /// The same without its unit.
    #[must_use]
    fn length_alone(self, mm: f64) -> String;

    /// A typed mass with its unit: up to 0.01 g, or 0.001 oz.
    #[must_use]
    fn mass(self, g: f64) -> String;

    /// A computed distance with its unit, to the digits that a ruler can tell: 1 mm, or
    /// 0.05 in written to 0.01.
    #[must_use]
    fn reading(self, mm: f64) -> String;

    /// The same without its unit.
    #[must_use]
    fn reading_alone(self, mm: f64) -> String;

    /// A computed mass with its unit, to the digits that kitchen scales can tell.
    #[must_use]
    fn scale_reading(self, g: f64) -> String;
}

impl Written for Units {
    fn length(self, mm: f64) -> String {
        with_unit(length(self, mm), self.length_unit())
    }

    fn length_alone(self, mm: f64) -> String {
        length(self, mm).to_string()
    }

    fn mass(self, g: f64) -> String {
        let mass = match self.system {
            UnitSystem::Metric => Number::trimmed(g, 2),
            UnitSystem::Inch => Number::trimmed(g / G_PER_OUNCE, 3),
        };
        with_unit(mass, self.mass_unit())
    }

    fn reading(self, mm: f64) -> String {
        with_unit(reading(self, mm), self.length_unit())
    }

    fn reading_alone(self, mm: f64) -> String {
        reading(self, mm).to_string()
    }

    fn scale_reading(self, g: f64) -> String {
        let mass = match self.system {
            UnitSystem::Metric => Number::trimmed(g, 0),
            UnitSystem::Inch => Number::fixed(g / G_PER_OUNCE, 2),
        };
        with_unit(mass, self.mass_unit())
    }
}

fn length(units: Units, mm: f64) -> Number {
    match units.system {
        UnitSystem::Metric => Number::trimmed(mm, 1),
        UnitSystem::Inch => Number::trimmed(mm / units.mm_per_unit(), 3),
    }
}

fn reading(units: Units, mm: f64) -> Number {
    let mm = units.as_read(mm);
    match units.system {
        UnitSystem::Metric => Number::trimmed(mm, 0),
        UnitSystem::Inch => Number::fixed(mm / units.mm_per_unit(), 2),
    }
}

#[inline(never)]
fn with_unit(number: Number, unit: &str) -> String {
    format!("{number} {unit}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_words::{speak, table_of};

    #[test]
    fn numbers_are_written_without_trailing_zeros() {
        assert_eq!(Units::METRIC.length(120.0), "120 mm");
        assert_eq!(Units::METRIC.length(12.5), "12.5 mm");
        assert_eq!(Units::METRIC.mass(2.27), "2.27 g");
        assert_eq!(Units::INCH.length(82.55), "3.25 in");
        assert_eq!(Units::INCH.mass(G_PER_OUNCE), "1 oz");
    }

    #[test]
    fn no_negative_zero_is_written_and_the_minus_sign_is_one() {
        assert_eq!(Units::METRIC.reading(-0.2), "0 mm");
        assert_eq!(Units::INCH.reading(-0.01), "0.00 in");
        assert_eq!(Units::METRIC.reading(-38.4), "−38 mm");
    }

    #[test]
    fn halves_go_away_from_zero() {
        for (mm, text) in [(32.5, "33 mm"), (161.5, "162 mm"), (-12.5, "−13 mm")] {
            assert_eq!(Units::METRIC.reading(mm), text);
        }
    }

    #[test]
    fn each_language_has_its_decimal_mark_and_digits() {
        speak(table_of("de"));
        assert_eq!(Units::METRIC.length(12.5), "12,5 mm");
        speak(table_of("ar").map(|table| table.with_own_digits(true)));
        assert_eq!(Units::METRIC.length(12.5), "١٢٫٥ mm");
        assert_eq!(Units::INCH.reading_alone(25.4), "١٫٠٠");
        speak(None);
    }
}
