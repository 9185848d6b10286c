//! How a language writes numbers, from CLDR.

use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;

/// Minus sign, decimal mark and zero of a language in a numbering system of CLDR.
///
/// The minus sign is U+2212, with whatever marks of direction the language has beside its
/// own: the page writes no hyphens for it.
///
/// # Errors
///
/// A tag that is none, and numbers that are written in any other way than digits with a mark
/// between them and a sign before them. The digits of a system must stand beside one another
/// and differ in the last byte of UTF-8.
pub(crate) fn symbols(tag: &str, system: &str) -> Result<[String; 3], String> {
    let locale: Locale = format!("{tag}-u-nu-{system}").parse().map_err(|_| {
        format!("{tag} is no BCP 47 tag, or {system} no numbering system")
    })?;
    let mut options = DecimalFormatterOptions::default();
    options.grouping_strategy = Some(GroupingStrategy::Never);
    let formatter = DecimalFormatter::try_new(locale.into(), options)
        .map_err(|error| format!("no numbers for {tag}: {error}"))?;
    let written = |text: &str| -> Result<String, String> {
        let number: Decimal = text.parse().map_err(|_| format!("{text} is no number"))?;
        Ok(formatter.format(&number).to_string())
    };
    let zero = written("0")?;
    let last = *zero.as_bytes().last().ok_or("an empty zero")?;
    let mut digits = Vec::new();
    for i in 0..10_u8 {
        let mut expected = zero.clone().into_bytes();
        expected.pop();
        expected.push(last + i);
        let digit = written(&i.to_string())?;
        if digit.as_bytes() != expected {
            return Err(format!("the digits of {system} do not follow one another"));
        }
        digits.push(digit);
    }
    if !formatter_uses(system, &zero) {
        return Err(format!("{tag} does not write numbers in {system}: {zero}"));
    }
    if written("1234567")? != digits[1..=7].concat() {
        return Err(format!("{tag} writes marks between thousands all the same"));
    }
    let text = written("-1.5")?;
    let unlike = || format!("{tag} writes -1.5 as {text}, which this does not know");
    let (minus, rest) = text.split_once(&digits[1]).ok_or_else(unlike)?;
    let mark = rest.strip_suffix(&digits[5]).ok_or_else(unlike)?;
    let minus = minus.replace('-', "−");
    if minus.matches('−').count() != 1 || mark.is_empty() {
        return Err(unlike());
    }
    Ok([minus, mark.to_owned(), zero])
}

/// Whether this zero is that of the system: what CLDR does not know, it writes as usual.
fn formatter_uses(system: &str, zero: &str) -> bool {
    (system == "latn") == (zero == "0")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_as_cldr_says() {
        assert_eq!(symbols("en-GB", "latn").unwrap(), ["−", ".", "0"]);
        assert_eq!(symbols("de", "latn").unwrap(), ["−", ",", "0"]);
        // The marks of direction keep the sign before its number.
        assert_eq!(symbols("ar", "latn").unwrap(), ["\u{200E}−", ".", "0"]);
        assert_eq!(symbols("ar", "arab").unwrap(), ["\u{61C}−", "٫", "٠"]);
    }

    #[test]
    fn what_is_not_known_is_an_error() {
        for (tag, system) in [("de", "nosuch"), ("no tag", "latn"), ("zh", "hanidec")] {
            assert!(symbols(tag, system).is_err(), "{tag} {system}");
        }
    }
}
