//! Numbers in a sentence: how many decimals, and how they are written.

use crate::code::{self, OTHER};
use crate::table::Table;

/// A number in a sentence, with the decimals it is shown with: which plural follows it
/// depends on them, in English too (“1 mm”, but “1.0 mm” is no singular).
///
/// Written with the decimal mark and the digits of the language, U+2212 for the minus sign
/// and no marks between thousands. Halves go away from zero, and nothing is written as a
/// negative zero. From 10^15 on, digits behind the fifteenth are zeros; what is not a number
/// is written “NaN”.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    value: f64,
    decimals: u8,
    trims: bool,
}

impl Number {
    /// The number with this many decimals, three at most.
    ///
    /// ```
    /// use noseward_words::Number;
    ///
    /// assert_eq!(Number::fixed(2.04, 1).to_string(), "2.0");
    /// assert_eq!(Number::fixed(-12.5, 0).to_string(), "−13");
    /// ```
    #[must_use]
    pub const fn fixed(value: f64, decimals: u8) -> Self {
        let decimals = if decimals > 3 { 3 } else { decimals };
        Self { value, decimals, trims: false }
    }

    /// The number with this many decimals at most, and no zeros at their end. Three at most.
    ///
    /// ```
    /// use noseward_words::Number;
    ///
    /// assert_eq!(Number::trimmed(12.50, 2).to_string(), "12.5");
    /// ```
    #[must_use]
    pub const fn trimmed(value: f64, decimals: u8) -> Self {
        Self { trims: true, ..Self::fixed(value, decimals) }
    }

    /// What of it is shown.
    fn shown(self) -> Shown {
        /// From here on not every whole number can be told from its neighbours.
        const MOST: f64 = 1e15;
        let (mut size, mut zeros) = (self.value.abs().min(f64::MAX), 0);
        while size >= MOST {
            size /= 10.0;
            zeros += 1;
        }
        let mut decimals = if zeros > 0 { 0 } else { self.decimals };
        let per_unit = match decimals {
            0 => 1.0,
            1 => 10.0,
            2 => 100.0,
            _ => 1000.0,
        };
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "below 10^18, and not negative"
        )]
        let mut steps = (size * per_unit).round() as u64;
        while self.trims && decimals > 0 && steps.is_multiple_of(10) {
            steps /= 10;
            decimals -= 1;
        }
        Shown { is_negative: self.value < 0.0 && steps > 0, steps, decimals, zeros }
    }

    /// Writes it behind `out` as the language does.
    pub(crate) fn write(self, table: Option<Table>, out: &mut Vec<u8>) {
        if self.value.is_nan() {
            out.extend_from_slice(b"NaN");
            return;
        }
        let [minus, mark, zero] =
            table.map_or(["−", ".", "0"], |table| table.number_symbols());
        let Shown { is_negative, steps, decimals, zeros } = self.shown();
        if is_negative {
            out.extend_from_slice(minus.as_bytes());
        }
        // The unit of the digit that is written, and how many are left behind it.
        let (mut unit, mut left) = (1_u64, 0);
        let of = |unit| steps.checked_div(unit).unwrap_or(0);
        while left < decimals || of(unit) >= 10 {
            unit = unit.wrapping_mul(10);
            left += 1;
        }
        let digit = |out: &mut Vec<u8>, digit: u8| {
            out.extend_from_slice(zero.as_bytes());
            // The ten digits of a script differ in their last byte: the build checks it.
            if let Some(last) = out.last_mut() {
                *last = last.wrapping_add(digit);
            }
        };
        loop {
            digit(out, (of(unit) % 10) as u8);
            if left == 0 {
                break;
            }
            if left == decimals {
                out.extend_from_slice(mark.as_bytes());
            }
            left -= 1;
            unit /= 10;
        }
        for _ in 0..zeros {
            digit(out, 0);
        }
    }

    /// Its plural category in the language, by its place in zero, one, two, few, many, other.
    pub(crate) fn category(self, table: Option<Table>) -> u8 {
        if self.value.is_nan() {
            return OTHER;
        }
        let Shown { steps, decimals, .. } = self.shown();
        match table {
            None if steps == 1 && decimals == 0 => code::ONE,
            None => OTHER,
            Some(table) => {
                let per_unit = match decimals {
                    0 => 1,
                    1 => 10,
                    2 => 100,
                    _ => 1000,
                };
                let (whole, part) = (steps / per_unit, steps % per_unit);
                table.category(code::plural_slot(whole, decimals > 0, part))
            }
        }
    }

    /// The number itself, where it is shown as a small whole number: 0 to
    /// [`MOST_EXACT`](code::MOST_EXACT).
    pub(crate) fn exact(self) -> Option<u8> {
        let Shown { is_negative, steps, decimals, zeros } = self.shown();
        let exact = u8::try_from(steps).ok().filter(|exact| *exact <= code::MOST_EXACT);
        let is_whole = decimals == 0 && zeros == 0 && !is_negative;
        exact.filter(|_| is_whole && !self.value.is_nan())
    }
}

/// A number as it is shown: this many steps of its last decimal, with zeros behind them.
struct Shown {
    is_negative: bool,
    steps: u64,
    decimals: u8,
    zeros: u16,
}

/// As the language in use writes it.
impl std::fmt::Display for Number {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let mut out = Vec::new();
        self.write(crate::table::spoken(), &mut out);
        f.write_str(std::str::from_utf8(&out).unwrap_or_default())
    }
}

impl From<usize> for Number {
    /// A count. Exact up to 2^53.
    fn from(count: usize) -> Self {
        Self::fixed(count as f64, 0)
    }
}

impl From<u32> for Number {
    fn from(count: u32) -> Self {
        Self::fixed(f64::from(count), 0)
    }
}

impl From<u8> for Number {
    fn from(count: u8) -> Self {
        Self::fixed(f64::from(count), 0)
    }
}
