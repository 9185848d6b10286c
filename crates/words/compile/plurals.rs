//! Which plural follows a number in a language: the rules of CLDR, as a table.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

use icu_decimal::input::Decimal;
use icu_locale_core::Locale;
use icu_plurals::{PluralCategory, PluralRules, PluralRulesOptions};

use crate::code::plural_slot;

/// How many places [`plural_slot`] tells.
const PLURAL_SLOTS: usize = 600;

/// The plural categories of CLDR.
pub(crate) const CATEGORIES: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

/// The plurals of a language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Plurals {
    /// The categories it has for numbers that are checked, by their places.
    pub(crate) categories: Vec<u8>,
    /// The category of each [`plural_slot`].
    pub(crate) table: Vec<u8>,
}

/// The plurals of a language, the table checked against the rules for each whole number up
/// to 100,000 and for each number from 0 to 20.999 and from 100 to 120.9 with up to three
/// and one decimals.
///
/// # Errors
///
/// A tag that is none, a language without rules, and rules that such a table cannot hold.
pub(crate) fn plurals(tag: &str) -> Result<Plurals, String> {
    /// What was worked out before: the check takes its time.
    static KNOWN: Mutex<BTreeMap<String, Plurals>> = Mutex::new(BTreeMap::new());
    let known = || KNOWN.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(plurals) = known().get(tag) {
        return Ok(plurals.clone());
    }
    let plurals = worked_out(tag)?;
    known().insert(tag.into(), plurals.clone());
    Ok(plurals)
}

fn worked_out(tag: &str) -> Result<Plurals, String> {
    let locale: Locale = tag.parse().map_err(|_| format!("{tag} is no BCP 47 tag"))?;
    let rules = PluralRules::try_new(locale.into(), PluralRulesOptions::default())
        .map_err(|error| format!("no plural rules for {tag}: {error}"))?;
    let of_text = |text: &str| -> Result<u8, String> {
        let number: Decimal = text.parse().map_err(|_| format!("{text} is no number"))?;
        Ok(place(rules.category_for(&number)))
    };
    let mut table = vec![0; PLURAL_SLOTS];
    for n in 0..200_u64 {
        table[plural_slot(n, false, 0)] = place(rules.category_for(n));
        table[plural_slot(n, true, 0)] = of_text(&format!("{n}.0"))?;
        table[plural_slot(n, true, 5)] = of_text(&format!("{n}.5"))?;
    }
    let unlike = |text: &str| {
        format!(
            "the plural of {text} in {tag} does not follow from its last two digits and \
             whether it has decimals; code::plural_slot must tell more"
        )
    };
    for n in 0..=100_000_u64 {
        if table[plural_slot(n, false, 0)] != place(rules.category_for(n)) {
            return Err(unlike(&n.to_string()));
        }
    }
    for (decimals, per_unit) in [(1_usize, 10_u64), (2, 100), (3, 1000)] {
        let large = if decimals == 1 { 100..=120 } else { 0..=0 };
        for whole in (0..=20).chain(large) {
            for part in 0..per_unit {
                let text = format!("{whole}.{part:0decimals$}");
                if table[plural_slot(whole, true, part)] != of_text(&text)? {
                    return Err(unlike(&text));
                }
            }
        }
    }
    let categories = (0..6).filter(|category| table.contains(category)).collect();
    Ok(Plurals { categories, table })
}

fn place(category: PluralCategory) -> u8 {
    match category {
        PluralCategory::Zero => 0,
        PluralCategory::One => 1,
        PluralCategory::Two => 2,
        PluralCategory::Few => 3,
        PluralCategory::Many => 4,
        PluralCategory::Other => 5,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(tag: &str) -> Vec<&'static str> {
        let categories = plurals(tag).unwrap().categories;
        categories.into_iter().map(|category| CATEGORIES[usize::from(category)]).collect()
    }

    #[test]
    fn languages_have_the_plurals_that_cldr_gives_them() {
        assert_eq!(names("en-GB-simple"), ["one", "other"]);
        assert_eq!(names("de"), ["one", "other"]);
        assert_eq!(names("ar"), CATEGORIES);
        assert_eq!(names("ja"), ["other"]);
        assert_eq!(names("pl"), ["one", "few", "many", "other"]);
        assert_eq!(names("cy"), CATEGORIES);
    }

    /// From the published rules: `few` is n % 100 = 3..10, `many` n % 100 = 11..99.
    #[test]
    fn arabic_counts_by_the_last_two_digits() {
        let plurals = plurals("ar").unwrap();
        for (n, word) in [
            (0, "zero"),
            (1, "one"),
            (2, "two"),
            (3, "few"),
            (10, "few"),
            (11, "many"),
            (99, "many"),
            (100, "other"),
            (102, "other"),
            (103, "few"),
            (1011, "many"),
        ] {
            let category = plurals.table[plural_slot(n, false, 0)];
            assert_eq!(CATEGORIES[usize::from(category)], word, "{n}");
        }
    }

    /// Latvian asks for the last digits of the decimals.
    #[test]
    fn what_the_table_cannot_hold_is_an_error() {
        let error = plurals("lv").unwrap_err();
        assert!(error.contains("does not follow"), "{error}");
        assert!(plurals("not a tag").is_err());
    }
}
