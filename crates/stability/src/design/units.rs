//! How lengths and masses are written for a reader. Nothing here changes a design.

/// The two systems a page can show.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum UnitSystem {
    /// Millimetres and grams.
    #[default]
    Metric,
    /// Inches and ounces.
    Inch,
}

/// Writes lengths and masses in one system.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Units {
    /// The system.
    pub system: UnitSystem,
}

/// Millimetres in one inch. Exact: international yard and pound agreement, 1959.
pub(crate) const MM_PER_INCH: f64 = 25.4;
/// Grams in one avoirdupois ounce. Exact: the same agreement.
pub(crate) const G_PER_OUNCE: f64 = 28.349_523_125;

impl Units {
    /// Millimetres and grams.
    pub const METRIC: Self = Self { system: UnitSystem::Metric };
    /// Inches and ounces.
    pub const INCH: Self = Self { system: UnitSystem::Inch };

    /// The short name of the length unit.
    #[must_use]
    pub fn length_unit(self) -> &'static str {
        match self.system {
            UnitSystem::Metric => "mm",
            UnitSystem::Inch => "in",
        }
    }

    /// The short name of the mass unit.
    #[must_use]
    pub fn mass_unit(self) -> &'static str {
        match self.system {
            UnitSystem::Metric => "g",
            UnitSystem::Inch => "oz",
        }
    }

    /// Millimetres in one unit of length.
    #[must_use]
    pub fn mm_per_unit(self) -> f64 {
        match self.system {
            UnitSystem::Metric => 1.0,
            UnitSystem::Inch => MM_PER_INCH,
        }
    }

    /// Grams in one unit of mass.
    #[must_use]
    pub fn g_per_unit(self) -> f64 {
        match self.system {
            UnitSystem::Metric => 1.0,
            UnitSystem::Inch => G_PER_OUNCE,
        }
    }

    /// A typed length without its unit: up to 0.1 mm, or 0.001 in.
    #[must_use]
    pub fn length_number(self, mm: f64) -> String {
        match self.system {
            UnitSystem::Metric => trimmed(mm, 1),
            UnitSystem::Inch => trimmed(mm / MM_PER_INCH, 3),
        }
    }

    /// A typed mass without its unit: up to 0.01 g, or 0.001 oz.
    #[must_use]
    pub fn mass_number(self, g: f64) -> String {
        match self.system {
            UnitSystem::Metric => trimmed(g, 2),
            UnitSystem::Inch => trimmed(g / G_PER_OUNCE, 3),
        }
    }

    /// A computed distance in millimetres, to the digits that a ruler can tell: 1 mm, or
    /// 0.01 in. Halves go away from zero.
    #[must_use]
    pub fn as_read(self, mm: f64) -> f64 {
        match self.system {
            UnitSystem::Metric => mm.round(),
            UnitSystem::Inch => (mm / MM_PER_INCH * 100.0).round() / 100.0 * MM_PER_INCH,
        }
    }
}

/// A number with at most `places` decimals, three at most, and no trailing zeros. Halves go
/// away from zero.
#[must_use]
pub fn trimmed(value: f64, places: usize) -> String {
    let mut text = fixed(value, places);
    if text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    text
}

/// The value itself, or the bound that it is beyond. What is not a number becomes the lower one.
///
/// `f64::clamp` can panic with both bounds in words, and so brings the 5 KB that
/// [`fixed`] does without.
#[must_use]
pub fn within(value: f64, (least, most): (f64, f64)) -> f64 {
    value.max(least).min(most)
}

/// A number with `places` decimals, three at most. Halves go away from zero, and nothing is
/// written as a negative zero. From 10^15 on, digits behind the fifteenth are zeros.
///
/// In whole numbers: what the standard library needs for floating ones would make a first
/// visit 5 KB larger.
#[must_use]
pub fn fixed(value: f64, places: usize) -> String {
    /// From here on not every whole number can be told from its neighbours.
    const MOST: f64 = 1e15;
    if value.is_nan() {
        return "NaN".into();
    }
    let (places, per_unit) = match places {
        0 => (0, 1_u64),
        1 => (1, 10),
        2 => (2, 100),
        _ => (3, 1000),
    };
    let (mut size, mut zeros) = (value.abs().min(f64::MAX), 0);
    while size >= MOST {
        size /= 10.0;
        zeros += 1;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "below 10^18, and not negative"
    )]
    let steps = (size * per_unit as f64).round() as u64;
    let sign = if value < 0.0 && steps > 0 { "-" } else { "" };
    let (whole, part) = (steps / per_unit, steps % per_unit);
    match (zeros, places) {
        (0, 0) => format!("{sign}{whole}"),
        (0, _) => format!("{sign}{whole}.{part:0places$}"),
        _ => format!("{sign}{whole}{}", "0".repeat(zeros)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_typed_without_trailing_zeros() {
        assert_eq!(Units::METRIC.length_number(12.50), "12.5");
        assert_eq!(Units::METRIC.mass_number(2.27), "2.27");
        assert_eq!(Units::INCH.length_number(82.55), "3.25");
        assert_eq!(Units::INCH.mass_number(28.349_523_125), "1");
    }

    #[test]
    fn halves_go_away_from_zero() {
        assert_eq!(Units::METRIC.as_read(-12.5), -13.0);
        assert_eq!(Units::METRIC.as_read(66.7), 67.0);
        assert_eq!(Units::INCH.as_read(25.4 * 2.504), 25.4 * 2.5);
    }

    /// But for halves, which the standard library rounds by what a binary number holds.
    #[test]
    fn fixed_writes_what_the_standard_library_writes() {
        for i in -40_000..40_000_i32 {
            let value = f64::from(i) * 0.013_7 + f64::from(i % 7) * 1e4;
            for (places, step) in [(0, 1.0), (1, 0.1), (2, 0.01), (3, 0.001)] {
                let text = fixed(value, places);
                let part = (value / step).abs().fract();
                if (part - 0.5).abs() > 1e-6 {
                    let std = format!("{value:.places$}");
                    let std = if text.starts_with('-') {
                        &std
                    } else {
                        std.trim_start_matches('-')
                    };
                    assert_eq!(text, std, "{value} to {places}");
                }
                let read: f64 = text.parse().unwrap();
                assert!((read - value).abs() <= step * 0.500_001, "{value}: {text}");
            }
        }
    }

    #[test]
    fn fixed_writes_numbers_of_every_size() {
        for (value, places, text) in [
            (0.0, 1, "0.0"),
            (-0.04, 1, "0.0"),
            (-0.05, 1, "-0.1"),
            (2.5, 0, "3"),
            (-2.5, 0, "-3"),
            (0.25, 1, "0.3"),
            (1.005, 3, "1.005"),
            (7.0, 9, "7.000"),
            (999.999_9, 3, "1000.000"),
            (123_456_789_012_345.0, 2, "123456789012345.00"),
            (1e15, 2, "1000000000000000"),
            (-2e20, 1, "-200000000000000000000"),
            (f64::NAN, 1, "NaN"),
        ] {
            assert_eq!(fixed(value, places), text);
        }
        assert_eq!(fixed(f64::INFINITY, 0).len(), 309);
    }
}
