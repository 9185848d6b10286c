//! Which language somebody reads.

use crate::languages::{Kind, LANGUAGES, Language};

/// A language, with its own digits or without.
#[derive(Clone, Copy, Debug)]
pub struct Choice {
    /// How it is kept, and named in an address: a language's own key, or one with digits as in
    /// BCP 47 (Unicode Technical Standard 35, part 1, “Numbering System”).
    pub key: &'static str,
    /// Its own name for itself.
    pub name: &'static str,
    /// The language.
    pub language: &'static Language,
    /// Whether numbers are shown in its own digits.
    pub own_digits: bool,
}

impl Choice {
    /// The English that is built in.
    pub const ENGLISH: Self = Self::of(&LANGUAGES[0]);

    /// What there is to choose from. The last is for tests.
    pub const ALL: [Self; 7] = [
        Self::ENGLISH,
        Self::of(&LANGUAGES[1]),
        Self::of(&LANGUAGES[2]),
        Self::of(&LANGUAGES[3]),
        Self::of(&LANGUAGES[4]),
        Self {
            key: "ar-u-nu-arab",
            name: "العربية (١٢٣)",
            own_digits: true,
            ..Self::of(&LANGUAGES[4])
        },
        Self::of(&LANGUAGES[5]),
    ];

    const fn of(language: &'static Language) -> Self {
        let Language { key, name, .. } = *language;
        Self { key, name, language, own_digits: false }
    }

    /// What a key or a BCP 47 tag names.
    #[must_use]
    pub fn parse(key: &str) -> Option<Self> {
        let is_meant = |choice: &Self| choice.key == key || choice.language.tag == key;
        Self::ALL.into_iter().find(is_meant)
    }

    /// What fits a BCP 47 tag that a browser wishes for: what it names, or else the language
    /// without its variety. Nobody wishes for a pseudo-language.
    #[must_use]
    pub fn wished(tag: &str, is_there: impl Fn(Self) -> bool) -> Option<Self> {
        let name = tag.split('-').next().unwrap_or(tag);
        let fits =
            |choice: &Self| choice.language.kind != Kind::Pseudo && is_there(*choice);
        Self::parse(tag).filter(fits).or_else(|| Self::parse(name).filter(fits))
    }
}

impl PartialEq for Choice {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}

impl Eq for Choice {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_language_can_be_chosen_with_each_of_its_digits() {
        for language in &LANGUAGES {
            let of = |choice: &&Choice| choice.language == language;
            let choices: Vec<_> = Choice::ALL.iter().filter(of).collect();
            assert_eq!(choices.len(), 1 + usize::from(language.own_digits.is_some()));
            assert_eq!(choices[0].key, language.key);
            for with_digits in &choices[1..] {
                let digits = language.own_digits.unwrap();
                assert_eq!(with_digits.key, format!("{}-u-nu-{digits}", language.key));
                assert!(with_digits.own_digits);
            }
        }
        for choice in Choice::ALL {
            assert_eq!(Choice::parse(choice.key), Some(choice));
        }
        assert_eq!(Choice::parse("en-GB"), Some(Choice::ENGLISH));
        for unknown in ["", "fr", "e", "english", "-u-nu-arab", "de-AT", "de-u-nu-arab"] {
            assert_eq!(Choice::parse(unknown), None, "{unknown}");
        }
    }

    #[test]
    fn a_wish_is_met_by_another_variety_too() {
        let wished = |tag: &str, without: &str| {
            Choice::wished(tag, |choice| choice.key != without).map(|choice| choice.key)
        };
        assert_eq!(wished("de-AT", ""), Some("de"));
        assert_eq!(wished("ar-EG", ""), Some("ar"));
        assert_eq!(wished("en-US", ""), Some("en-US"));
        assert_eq!(wished("en-US", "en-US"), Some("en"));
        assert_eq!(wished("en-AU", ""), Some("en"));
        for unmet in ["fr", "", "de", "en-XB-x"] {
            assert_eq!(wished(unmet, "de"), unmet.starts_with("en").then_some("en"));
        }
        assert_eq!(wished("en-XA", ""), Some("en"));
    }
}
