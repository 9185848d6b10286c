//! Numbers in cells.

use noseward_lesson::{could_be_thousands, decimal};
use noseward_stability::trimmed;

/// What stands for a number that is none.
const NOT_A_NUMBER: &str = "?";

/// Why a cell holds no number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Unread {
    NotANumber,
    /// `1,234` could be either.
    Ambiguous,
}

/// A number with at most `places` decimals, three at most, behind `mark`.
pub(super) fn written(value: f64, places: usize, mark: char) -> String {
    if !value.is_finite() {
        return NOT_A_NUMBER.into();
    }
    let text = trimmed(value, places);
    if mark == '.' { text } else { text.replace('.', ",") }
}

/// The number in a cell, with a point or a comma as its mark, and with marks between the
/// thousands where another mark stands behind them.
pub(super) fn read(cell: &str) -> Result<f64, Unread> {
    if cell == NOT_A_NUMBER {
        return Ok(f64::NAN);
    }
    let (sign, unsigned) = match cell.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (-1.0, rest),
        None => (1.0, cell.strip_prefix('+').unwrap_or(cell)),
    };
    let unsigned = unsigned.trim_start();
    let mark = if unsigned.rfind(',') > unsigned.rfind('.') { ',' } else { '.' };
    let (whole, part) = unsigned.rsplit_once(mark).unwrap_or((unsigned, ""));
    let digits = match whole.find(['.', ',']) {
        Some(_) => thousands(whole, mark).ok_or(Unread::NotANumber)?,
        None => whole.to_owned(),
    };
    let value = decimal(&digits, part).ok_or(Unread::NotANumber)?;
    if could_be_thousands(whole, part) {
        return Err(Unread::Ambiguous);
    }
    Ok(sign * value + 0.0)
}

/// The digits of a number in groups of three, with the other mark between them.
fn thousands(text: &str, mark: char) -> Option<String> {
    let mut groups = text.split(if mark == '.' { ',' } else { '.' });
    let first = groups.next().filter(|first| (1..=3).contains(&first.len()))?;
    let mut digits = first.to_owned();
    for group in groups {
        if group.len() != 3 {
            return None;
        }
        digits.push_str(group);
    }
    Some(digits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_marks_are_read() {
        for (cell, value) in [
            ("12.5", 12.5),
            ("12,5", 12.5),
            ("12", 12.0),
            ("-3,5", -3.5),
            ("\u{2212}3.5", -3.5),
            ("+3", 3.0),
            ("0,125", 0.125),
            ("1225", 1225.0),
            (".5", 0.5),
            ("5.", 5.0),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("1,234,567.25", 1_234_567.25),
            ("-0", 0.0),
            ("203.10", 203.1),
        ] {
            assert_eq!(read(cell), Ok(value), "{cell}");
        }
        assert!(read("?").unwrap().is_nan());
    }

    #[test]
    fn what_is_no_number_is_refused() {
        for cell in [
            "",
            "abc",
            "12 mm",
            "1e5",
            "12.05.2026",
            "12,34,5",
            "--3",
            "1/2",
            "12:30",
            "+",
            "-",
            ".",
            "1234567890123456",
            "1..5",
            "1.234.567",
            "#N/A",
            "inf",
        ] {
            assert_eq!(read(cell), Err(Unread::NotANumber), "{cell}");
        }
        for cell in ["1,234", "1.225", "-12.000"] {
            assert_eq!(read(cell), Err(Unread::Ambiguous), "{cell}");
        }
    }

    #[test]
    fn what_is_written_is_read() {
        for tenths in -40_000..40_000 {
            let value = f64::from(tenths) / 10.0;
            for mark in ['.', ','] {
                assert_eq!(read(&written(value, 1, mark)), Ok(value));
            }
        }
        assert_eq!(written(12.5, 1, ','), "12,5");
        assert_eq!(written(-0.04, 1, '.'), "0");
        assert_eq!(written(f64::NAN, 1, '.'), "?");
    }
}
