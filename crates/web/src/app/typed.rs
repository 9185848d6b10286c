//! Reading a number as people type it: `12.5`, `12,5`, `12 cm`, `3 1/4 in`.

use noseward_lesson::{could_be_thousands, decimal as digits};
use noseward_stability::{Field, Quantity, UnitSystem, Units};
use noseward_words::{self as words, Text};

/// Why a text is not a value.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Unreadable {
    /// Nothing was typed.
    Empty,
    /// It is not a number.
    NotANumber,
    /// It must be a whole number.
    NotWhole,
    /// `1,234` could be either; both as texts that can be read.
    Ambiguous { small: String, large: String },
    /// The unit does not measure this.
    WrongUnit,
}

impl Unreadable {
    /// What is wrong and how to mend it.
    pub(crate) fn sentence(&self, field: Field, units: Units) -> String {
        let quantity = field.quantity();
        let example = match (quantity, units.system) {
            (Some(Quantity::Length), UnitSystem::Metric) => words::typed_as_length(),
            (Some(Quantity::Length), UnitSystem::Inch) => words::typed_as_inches(),
            (Some(Quantity::Mass), UnitSystem::Metric) => words::typed_as_mass(),
            (Some(Quantity::Mass), UnitSystem::Inch) => words::typed_as_ounces(),
            (Some(Quantity::Count), _) => words::typed_as_count(),
            _ => words::typed_as_angle(),
        };
        match self {
            Self::Empty => words::typed_empty(&example),
            Self::NotANumber => words::typed_unreadable(&example),
            Self::NotWhole => words::typed_not_whole().into(),
            Self::Ambiguous { small, large } => words::typed_ambiguous(small, large),
            Self::WrongUnit => match quantity {
                Some(Quantity::Length) => words::typed_no_length().into(),
                Some(Quantity::Mass) => words::typed_no_mass().into(),
                _ => words::typed_without_unit(&example),
            },
        }
    }
}

/// The value of a text in millimetres, grams, degrees, grams per square metre or as a
/// count. `None` for an empty text. A number without a unit is in the page's units.
pub(crate) fn read(
    text: &str,
    quantity: Quantity,
    units: Units,
) -> Result<Option<f64>, Unreadable> {
    let text = plain(text);
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let split = text.find(|c| !is_of_number(c)).unwrap_or(text.len());
    let (number, unit) = text.split_at(split);
    let factor = factor(unit.trim(), quantity, units)?;
    let value = decimal(number.trim()).map_err(|why| match why {
        Unreadable::Ambiguous { small, large } => {
            let tail = if unit.is_empty() { String::new() } else { format!(" {unit}") };
            Unreadable::Ambiguous {
                small: format!("{small}{tail}"),
                large: format!("{large}{tail}"),
            }
        }
        other => other,
    })?;
    Ok(Some(value * factor))
}

/// Whether a text says in which unit its number is.
pub(crate) fn has_unit(text: &str) -> bool {
    plain(text).chars().any(|c| !is_of_number(c))
}

fn is_of_number(c: char) -> bool {
    matches!(c, '0'..='9' | '.' | ',' | '-' | '/') || c.is_ascii_whitespace()
}

/// Digits of other scripts and full-width characters as plain ones, lower case; the decimal mark
/// of the language in use as `.`.
fn plain(text: &str) -> String {
    let has_comma = words::decimal_mark() == ",";
    text.chars()
        .map(|c| match c {
            ',' if has_comma => '.',
            '.' if has_comma => ',',
            '\u{ff10}'..='\u{ff19}' => digit(c, '\u{ff10}'),
            '\u{0660}'..='\u{0669}' => digit(c, '\u{0660}'),
            '\u{06f0}'..='\u{06f9}' => digit(c, '\u{06f0}'),
            '\u{ff0e}' | '\u{066b}' => '.',
            '\u{ff0c}' => ',',
            '\u{2212}' | '\u{2013}' => '-',
            '\u{00a0}' | '\u{2009}' | '\u{202f}' => ' ',
            other => other.to_ascii_lowercase(),
        })
        .collect()
}

fn digit(c: char, zero: char) -> char {
    char::from_digit(u32::from(c) - u32::from(zero), 10).unwrap_or(c)
}

/// What one of the unit is in the stored unit.
fn factor(unit: &str, quantity: Quantity, units: Units) -> Result<f64, Unreadable> {
    let lengths = [
        ("mm", words::typed_units_mm(), 1.0),
        ("cm", words::typed_units_cm(), 10.0),
        ("m", words::typed_units_m(), 1000.0),
        ("in", words::typed_units_in(), 25.4),
    ];
    let masses = [
        ("g", words::typed_units_g(), 1.0),
        ("kg", words::typed_units_kg(), 1000.0),
        ("oz", words::typed_units_oz(), 28.349_523_125),
        ("mg", words::typed_units_mg(), 0.001),
    ];
    let is_one_of = |words: &str| words.split(' ').any(|word| word == unit);
    let is_known = |table: &[(&str, Text, f64)]| {
        let mut table = table.iter();
        let found = table.find(|(symbol, words, _)| *symbol == unit || is_one_of(words));
        found.map(|(.., factor)| *factor)
    };
    match quantity {
        Quantity::Length if unit.is_empty() => Some(units.mm_per_unit()),
        Quantity::Mass if unit.is_empty() => Some(units.g_per_unit()),
        _ if unit.is_empty() => Some(1.0),
        Quantity::Length => is_known(&lengths),
        Quantity::Mass => is_known(&masses),
        Quantity::Angle => {
            (unit == "°" || is_one_of(&words::typed_units_degrees())).then_some(1.0)
        }
        Quantity::ArealDensity => matches!(unit, "g/m²" | "g/m2" | "gsm").then_some(1.0),
        Quantity::Count => is_one_of(&words::typed_units_fins()).then_some(1.0),
    }
    .ok_or_else(|| {
        if is_known(&lengths).or(is_known(&masses)).is_some() {
            Unreadable::WrongUnit
        } else {
            Unreadable::NotANumber
        }
    })
}

fn decimal(text: &str) -> Result<f64, Unreadable> {
    if let Some(value) = fraction(text) {
        return Ok(value);
    }
    if let Some((whole, rest)) = text.split_once(',')
        && could_be_thousands(whole.strip_prefix('-').unwrap_or(whole), rest)
    {
        return Err(Unreadable::Ambiguous {
            small: words::as_typed(&format!("{whole}.{rest}")),
            large: words::as_typed(&format!("{whole}{rest}")),
        });
    }
    let (sign, unsigned) = match text.strip_prefix('-') {
        Some(rest) => (-1.0, rest),
        None => (1.0, text),
    };
    let (whole, part) = unsigned.split_once(['.', ',']).unwrap_or((unsigned, ""));
    let value = digits(whole, part).ok_or(Unreadable::NotANumber)?;
    Ok(sign * value)
}

/// `1/4` or `3 1/4`.
fn fraction(text: &str) -> Option<f64> {
    let (front, bottom) = text.split_once('/')?;
    let (whole, top) = front.rsplit_once(' ').unwrap_or(("0", front));
    let number = |s: &str| s.trim().parse::<u32>().ok().map(f64::from);
    let bottom = number(bottom).filter(|&b| b > 0.0)?;
    Some(number(whole)? + number(top)? / bottom)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(text: &str) -> Result<Option<f64>, Unreadable> {
        read(text, Quantity::Length, Units::METRIC)
    }

    fn near(text: &str, value: f64) {
        let read = mm(text).unwrap().unwrap();
        assert!((read - value).abs() < 1e-9, "{text}: {read}");
    }

    #[test]
    fn both_decimal_marks_and_units() {
        for (text, value) in [
            ("12.5", 12.5),
            ("12,5", 12.5),
            (" 12 cm ", 120.0),
            ("12cm", 120.0),
            ("0,12 m", 120.0),
            ("1 in", 25.4),
            ("3 1/4 in", 82.55),
            ("1/2\"", 12.7),
            ("-4", -4.0),
            ("−4", -4.0),
            (".5", 0.5),
            ("١٢٫٥", 12.5),
            ("１２．５", 12.5),
            ("0,125", 0.125),
            ("1234", 1234.0),
            ("12,50", 12.5),
        ] {
            near(text, value);
        }
        assert_eq!(mm("  "), Ok(None));
    }

    #[test]
    fn decimals_are_the_nearest_number() {
        for text in ["0.1", "12.3", "123456.789", "0.07", "99999999999999.9", "5."] {
            let nearest: f64 = text.parse().unwrap();
            assert_eq!(decimal(text), Ok(nearest), "{text}");
        }
    }

    #[test]
    fn a_bare_number_is_in_the_units_of_the_page() {
        let inch = |text| read(text, Quantity::Length, Units::INCH);
        assert_eq!(inch("2"), Ok(Some(50.8)));
        assert_eq!(inch("2 mm"), Ok(Some(2.0)));
        assert_eq!(read("2", Quantity::Angle, Units::INCH), Ok(Some(2.0)));
        assert_eq!(read("1 kg", Quantity::Mass, Units::INCH), Ok(Some(1000.0)));
    }

    #[test]
    fn each_language_has_its_decimal_mark_its_digits_and_its_units() {
        let speak = |key: &str| {
            let table = words::table_of(key);
            words::speak(table.map(|table| table.with_own_digits(key == "ar")));
        };
        speak("de");
        for (text, value) in [
            ("12,5", 12.5),
            ("12.5", 12.5),
            ("1,234", 1.234),
            ("12 Zentimeter", 120.0),
            ("3 Zoll", 76.2),
            ("7 mm", 7.0),
        ] {
            near(text, value);
        }
        let asked = Unreadable::Ambiguous { small: "1,234".into(), large: "1234".into() };
        assert_eq!(mm("1.234"), Err(asked));
        assert_eq!(read("3 Flossen", Quantity::Count, Units::METRIC), Ok(Some(3.0)));
        speak("ar");
        for (text, value) in
            [("١٢٫٥ سم", 125.0), ("12.5 مم", 12.5), ("٣ بوصات", 76.2), ("٤", 4.0)]
        {
            near(text, value);
        }
        assert_eq!(read("٢٠ غرامًا", Quantity::Mass, Units::METRIC), Ok(Some(20.0)));
        assert_eq!(words::as_typed("-12.5"), "-١٢٫٥");
        assert_eq!(mm(&words::as_typed("-12.5")), Ok(Some(-12.5)));
        words::speak(None);
    }

    #[test]
    fn what_could_be_two_numbers_is_asked_about() {
        let asked = |small: &str, large: &str| {
            Err(Unreadable::Ambiguous { small: small.into(), large: large.into() })
        };
        assert_eq!(mm("1,234"), asked("1.234", "1234"));
        assert_eq!(mm("12,000 cm"), asked("12.000 cm", "12000 cm"));
        for answer in ["1.234", "1234", "12.000 cm"] {
            assert!(mm(answer).is_ok(), "{answer}");
        }
    }

    #[test]
    fn nonsense_is_refused_with_a_reason() {
        for text in [
            "abc",
            "12 12",
            "1e5",
            "--4",
            "1,2,3",
            "inf",
            "NaN",
            "12 parsecs",
            "1/0",
            "💥",
            "4-",
            "mm",
        ] {
            assert_eq!(mm(text), Err(Unreadable::NotANumber), "{text}");
        }
        assert_eq!(mm("12 g"), Err(Unreadable::WrongUnit));
        assert_eq!(
            read("3 mm", Quantity::Count, Units::METRIC),
            Err(Unreadable::WrongUnit)
        );
    }
}
