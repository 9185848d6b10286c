//! Numbers in a sentence: how many decimals, and how they are written.

use crate::code::{FIRST_CATEGORY, FIRST_EXACT, MOST_EXACT, NO_KEY, OTHER};
use crate::say::push;
use crate::table::{category, symbol};

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
    #[inline(always)]
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
    #[inline(always)]
    pub const fn trimmed(value: f64, decimals: u8) -> Self {
        Self { trims: true, ..Self::fixed(value, decimals) }
    }

    /// What of it is shown.
    #[inline(never)]
    fn shown(self) -> Shown {
        /// From here on not every whole number can be told from its neighbours.
        const MOST: f64 = 1e15;
        let (mut size, mut zeros) = (self.value.abs().min(f64::MAX), 0);
        while size >= MOST {
            size /= 10.0;
            zeros += 1;
        }
        let mut per_unit = 1_u64;
        if zeros == 0 {
            for _ in 0..self.decimals {
                per_unit *= 10;
            }
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "below 10^18, and not negative"
        )]
        let mut steps = (size * per_unit as f64).round() as u64;
        while self.trims && per_unit > 1 && steps.is_multiple_of(10) {
            steps /= 10;
            per_unit /= 10;
        }
        Shown { is_negative: self.value < 0.0 && steps > 0, steps, per_unit, zeros }
    }

    /// Writes it behind `out` as the language does.
    pub(crate) fn write(self, out: &mut Vec<u8>) {
        if self.value.is_nan() {
            push(out, "NaN");
            return;
        }
        let Shown { is_negative, steps, per_unit, zeros } = self.shown();
        if is_negative {
            push(out, symbol(0));
        }
        let zero = symbol(2);
        // The unit of the digit that is written.
        let mut unit = 1_u64;
        while unit < per_unit || steps.checked_div(unit) >= Some(10) {
            unit = unit.wrapping_mul(10);
        }
        while let Some(to_here) = steps.checked_div(unit) {
            push(out, zero);
            // The ten digits of a script differ in their last byte: the build checks it.
            if let Some(last) = out.last_mut() {
                *last = last.wrapping_add((to_here % 10) as u8);
            }
            if unit == per_unit && unit > 1 {
                push(out, symbol(1));
            }
            unit /= 10;
        }
        for _ in 0..zeros {
            push(out, zero);
        }
    }

    /// The keys of the texts that fit it: that of the number itself, where it is shown as a
    /// small whole number, and that of its plural.
    pub(crate) fn keys(self) -> [u8; 2] {
        let Shown { is_negative, steps, per_unit, zeros } = self.shown();
        if zeros > 0 {
            return [NO_KEY, FIRST_CATEGORY + OTHER];
        }
        let is_exact = steps <= u64::from(MOST_EXACT) && per_unit == 1 && !is_negative;
        let exact = if is_exact { FIRST_EXACT + (steps % 0x7F) as u8 } else { NO_KEY };
        let whole = steps.checked_div(per_unit).unwrap_or(0);
        let part = steps.checked_rem(per_unit).unwrap_or(0);
        [exact, FIRST_CATEGORY + category(whole, per_unit > 1, part)]
    }
}

/// A plain decimal, such as `-12.5`, as somebody types it in the language in use: with its
/// decimal mark and its digits.
///
/// ```
/// assert_eq!(noseward_words::as_typed("-12.5 mm"), "-12.5 mm");
/// ```
#[must_use]
pub fn as_typed(plain: &str) -> String {
    let zero = symbol(2).chars().next().unwrap_or('0');
    let mut typed = String::new();
    for c in plain.chars() {
        match c.to_digit(10) {
            Some(digit) => typed.extend(char::from_u32(u32::from(zero) + digit)),
            None if c == '.' => typed.push_str(decimal_mark()),
            None => typed.push(c),
        }
    }
    typed
}

/// What stands between the whole of a number and its decimals in the language in use.
#[must_use]
pub fn decimal_mark() -> &'static str {
    symbol(1)
}

/// A number as it is shown: this many steps, of which so many make one, with zeros behind.
struct Shown {
    is_negative: bool,
    steps: u64,
    per_unit: u64,
    zeros: u16,
}

/// As the language in use writes it.
impl std::fmt::Display for Number {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let mut out = Vec::new();
        self.write(&mut out);
        f.write_str(std::str::from_utf8(&out).unwrap_or_default())
    }
}

impl From<usize> for Number {
    /// A count. Exact up to 2^53.
    #[inline(always)]
    fn from(count: usize) -> Self {
        Self::fixed(count as f64, 0)
    }
}

impl From<u32> for Number {
    #[inline(always)]
    fn from(count: u32) -> Self {
        Self::fixed(f64::from(count), 0)
    }
}

impl From<u8> for Number {
    #[inline(always)]
    fn from(count: u8) -> Self {
        Self::fixed(f64::from(count), 0)
    }
}
