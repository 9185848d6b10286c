//! Numbers as people write them, without a float parser: that would cost the page twelve
//! kilobytes.

/// The number with these digits before and behind its mark; `None` for anything else, and
/// for more digits than a number holds exactly, which nobody reads off anything.
///
/// ```
/// use noseward_lesson::decimal;
///
/// assert_eq!(decimal("12", "5"), Some(12.5));
/// assert_eq!(decimal("", "07"), Some(0.07));
/// assert_eq!(decimal("1e5", ""), None);
/// ```
#[must_use]
pub fn decimal(whole: &str, part: &str) -> Option<f64> {
    let mut value = 0.0;
    for digit in whole.bytes().chain(part.bytes()) {
        if !digit.is_ascii_digit() {
            return None;
        }
        value = value * 10.0 + f64::from(digit - b'0');
    }
    let has_digits = (1..=15).contains(&(whole.len() + part.len()));
    // Both are exact, so that the quotient is the nearest number there is.
    let divisor = part.bytes().fold(1.0, |tens, _| tens * 10.0);
    has_digits.then_some(value / divisor)
}

/// Whether the mark between these digits could be one between thousands: in 1,234 it can,
/// in 0,125 it cannot.
#[must_use]
pub fn could_be_thousands(whole: &str, part: &str) -> bool {
    let all_digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    part.len() == 3
        && (1..=3).contains(&whole.len())
        && !whole.starts_with('0')
        && all_digits(whole)
        && all_digits(part)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_are_the_nearest_number() {
        for text in ["0.1", "12.3", "123456.789", "0.07", "99999999999999.9", "5.", ".5"]
        {
            let nearest: f64 = text.parse().unwrap();
            let (whole, part) = text.split_once('.').unwrap();
            assert_eq!(decimal(whole, part), Some(nearest), "{text}");
        }
        for (whole, part) in
            [("", ""), ("-1", ""), ("1", "é"), ("1 2", ""), ("1234567890123456", "")]
        {
            assert_eq!(decimal(whole, part), None, "{whole}.{part}");
        }
    }

    #[test]
    fn three_digits_behind_the_mark_may_be_thousands() {
        for (whole, part) in [("1", "234"), ("123", "000")] {
            assert!(could_be_thousands(whole, part), "{whole} {part}");
        }
        for (whole, part) in [("0", "125"), ("1234", "567"), ("1", "23"), ("", "123")] {
            assert!(!could_be_thousands(whole, part), "{whole} {part}");
        }
    }
}
