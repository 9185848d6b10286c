//! The sentences of a language as bytes, and the language in use.

use std::cell::Cell;
use std::fmt;

use crate::code::{
    END_OF_STRING, EXTRAS, HEADER, MAGIC, ONE, OTHER, PLURALS, SYMBOLS, TAG, plural_slot,
    sum,
};
use crate::languages::{LANGUAGES, Language};
use crate::sentences::{COUNT, SENTENCES};

/// A language other than the English that is built in: the bytes the build made, checked.
///
/// It stays in memory until the program ends, so that a sentence without arguments is a
/// `&'static str` in every language. Keep it, and load no language twice.
#[derive(Clone, Copy)]
pub struct Table {
    strings: &'static Strings,
    own_digits: bool,
}

/// The strings of a language: its sentences in the order of their numbers, and what
/// [`code`](crate::code) lists behind them.
struct Strings {
    /// `None` is the first: what speaks English need not carry the names of the others.
    language: Option<&'static Language>,
    sentences: &'static [&'static str],
    extras: [&'static str; EXTRAS],
}

impl Strings {
    fn language(&self) -> &'static Language {
        self.language.unwrap_or(&LANGUAGES[0])
    }
}

/// English has its sentences where they are said, and its plurals in [`category`].
static ENGLISH: Strings = Strings {
    language: None,
    sentences: &[],
    extras: ["en", "", "", "", "−", ".", "0", "−", ".", "0"],
};

/// Why bytes are no table for this page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableError {
    /// They do not begin as a table of this version does.
    NotATable,
    /// Its sentences are not those of this page: it is of another edition.
    OtherEdition,
    /// What follows is not what was written.
    Spoilt,
    /// The table is of a language that this page does not know.
    UnknownLanguage,
}

impl fmt::Display for TableError {
    /// For whoever looks into the console: pupils are told by the page in its own words.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotATable => "these bytes are no table of sentences",
            Self::OtherEdition => "this table belongs to another edition of the page",
            Self::Spoilt => "this table is damaged",
            Self::UnknownLanguage => "this table is of a language the page does not know",
        })
    }
}

impl std::error::Error for TableError {}

impl Table {
    /// The table that the build wrote as these bytes.
    ///
    /// # Errors
    ///
    /// Bytes of another edition of the page, damaged ones, and any others. No bytes make it,
    /// or a sentence, panic.
    pub fn load(bytes: Vec<u8>) -> Result<Self, TableError> {
        let header = |at: usize| bytes.get(at..at + 4);
        if header(0) != Some(&MAGIC) {
            return Err(TableError::NotATable);
        }
        if header(4) != Some(&SENTENCES.to_le_bytes()) {
            return Err(TableError::OtherEdition);
        }
        let body = bytes.get(HEADER..).ok_or(TableError::NotATable)?;
        if header(8) != Some(&sum(body).to_le_bytes()) {
            return Err(TableError::Spoilt);
        }
        let body = bytes.leak().get(HEADER..).unwrap_or_default();
        let body = std::str::from_utf8(body).map_err(|_| TableError::Spoilt)?;
        let mut all: Vec<&'static str> = Vec::with_capacity(COUNT + EXTRAS);
        let mut start = 0;
        for (end, byte) in body.bytes().enumerate() {
            if byte == END_OF_STRING {
                all.extend(body.get(start..end));
                start = end + 1;
            }
        }
        let (sentences, extras) =
            all.leak().split_at_checked(COUNT).ok_or(TableError::Spoilt)?;
        let extras = <[&str; EXTRAS]>::try_from(extras);
        let extras = extras.map_err(|_| TableError::Spoilt)?;
        if start != body.len() {
            return Err(TableError::Spoilt);
        }
        let language = LANGUAGES
            .iter()
            .find(|language| language.key == extras[TAG])
            .ok_or(TableError::UnknownLanguage)?;
        let strings =
            Box::leak(Box::new(Strings { language: Some(language), sentences, extras }));
        Ok(Self { strings, own_digits: false })
    }

    /// The same language with its own digits, where it has any, in place of 0 to 9.
    #[must_use]
    pub fn with_own_digits(self, own_digits: bool) -> Self {
        Self { own_digits, ..self }
    }

    /// Its language.
    #[must_use]
    pub fn language(self) -> &'static Language {
        self.strings.language()
    }
}

impl fmt::Debug for Table {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Table({})", self.language().key)
    }
}

thread_local! {
    /// The language in use. One for each thread, so that tests that run beside each other
    /// may speak differently.
    static SPOKEN: Cell<&'static Strings> = const { Cell::new(&ENGLISH) };
    /// Whether it is written with its own digits.
    static OWN_DIGITS: Cell<bool> = const { Cell::new(false) };
}

/// From now on this thread speaks the language of the table; `None` is English.
///
/// The language is no argument of the sentences: they are said in some thousand places, most
/// of which know nothing of a state, and each argument is bytes at every one of them. Nothing
/// that was said changes: whoever calls this draws the page anew.
pub fn speak(table: Option<Table>) {
    let english = Table { strings: &ENGLISH, own_digits: false };
    let Table { strings, own_digits } = table.unwrap_or(english);
    SPOKEN.with(|spoken| spoken.set(strings));
    OWN_DIGITS.with(|own| own.set(own_digits));
}

/// The language this thread speaks.
#[must_use]
pub fn language() -> &'static Language {
    spoken().language()
}

fn spoken() -> &'static Strings {
    SPOKEN.with(Cell::get)
}

/// The sentence of this number in the language in use; `None` where English is said.
pub(crate) fn in_use(id: u16) -> Option<&'static &'static str> {
    spoken().sentences.get(usize::from(id)).filter(|sentence| !sentence.is_empty())
}

/// One of the strings of the language in use that [`code`](crate::code) lists.
#[inline(never)]
pub(crate) fn extra(which: usize) -> &'static str {
    spoken().extras.get(which).copied().unwrap_or_default()
}

/// Minus sign, decimal mark or zero of the language in use, as 0, 1 or 2.
pub(crate) fn symbol(which: usize) -> &'static str {
    extra(SYMBOLS + which + if OWN_DIGITS.with(Cell::get) { 3 } else { 0 })
}

/// The plural category of a number that shows these decimals.
pub(crate) fn category(whole: u64, has_decimals: bool, part: u64) -> u8 {
    match extra(PLURALS).as_bytes().get(plural_slot(whole, has_decimals, part)) {
        Some(digit) => digit.wrapping_sub(b'0').min(OTHER),
        None if whole == 1 && !has_decimals => ONE,
        None => OTHER,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sentences::TABLES;
    use crate::{Number, faults_body, faults_to_mend};
    use proptest::prelude::*;

    fn bytes(key: &str) -> Vec<u8> {
        TABLES.iter().find(|(table, _)| *table == key).unwrap().1.to_vec()
    }

    /// Makes the sum right again, so that what follows it is looked at.
    fn stamped(mut bytes: Vec<u8>) -> Vec<u8> {
        if let Some(body) = bytes.get(HEADER..) {
            let sum = sum(body).to_le_bytes();
            bytes[8..HEADER].copy_from_slice(&sum);
        }
        bytes
    }

    #[test]
    fn a_table_takes_the_place_of_english_until_it_is_put_away() {
        assert_eq!(language().key, "en");
        assert_eq!(faults_body(), "Body");
        let german = Table::load(bytes("de")).unwrap();
        speak(Some(german));
        assert_eq!(language().tag, "de");
        assert_eq!(faults_body(), "Rumpf");
        assert_eq!(faults_to_mend(2_u8.into()), "2 Angaben sind zu berichtigen");
        assert_eq!(format!("{german:?}"), "Table(de)");
        speak(None);
        assert_eq!(faults_body(), "Body");
    }

    #[test]
    fn what_a_register_does_not_say_english_says() {
        speak(Some(Table::load(bytes("en-plain")).unwrap()));
        assert_eq!(faults_to_mend(1_u8.into()), "Put one thing right");
        assert_eq!(faults_body(), "Body");
    }

    #[test]
    fn each_thread_speaks_for_itself() {
        let german = Table::load(bytes("de")).unwrap();
        speak(Some(german));
        let other = std::thread::spawn(|| {
            let before = faults_body().as_str();
            speak(Some(Table::load(bytes("ar")).unwrap()));
            (before, faults_body().as_str())
        });
        assert_eq!(other.join().unwrap(), ("Body", "الجسم"));
        assert_eq!(faults_body(), "Rumpf");
    }

    #[test]
    fn what_is_no_table_of_this_page_is_refused() {
        let table = bytes("de");
        let error = |bytes: Vec<u8>| Table::load(bytes).unwrap_err();
        assert_eq!(error(Vec::new()), TableError::NotATable);
        assert_eq!(error(b"<!doctype html>".to_vec()), TableError::NotATable);
        let mut version = table.clone();
        version[3] += 1;
        assert_eq!(error(version), TableError::NotATable);
        let mut edition = table.clone();
        edition[4] ^= 1;
        assert_eq!(error(edition), TableError::OtherEdition);
        // Each takes the sum of all before it.
        let ends = (HEADER..table.len()).step_by(17);
        for length in ends.chain(table.len() - 50..table.len()) {
            assert_eq!(error(table[..length].to_vec()), TableError::Spoilt);
            // Even where the sum is right, a string is missing.
            assert_eq!(error(stamped(table[..length].to_vec())), TableError::Spoilt);
        }
        assert!(matches!(
            error(table[..HEADER - 1].to_vec()),
            TableError::Spoilt | TableError::NotATable
        ));
        for at in (HEADER..table.len()).step_by(7) {
            let mut spoilt = table.clone();
            spoilt[at] ^= 4;
            assert_eq!(error(spoilt), TableError::Spoilt);
        }
        let mut too_many = table.clone();
        too_many.push(END_OF_STRING);
        assert_eq!(error(stamped(too_many)), TableError::Spoilt);
        let mut no_text = table.clone();
        no_text[HEADER] = 0xFF;
        assert_eq!(error(stamped(no_text)), TableError::Spoilt);
        let tag = table.windows(4).position(|four| four == b"\0de\0").unwrap();
        let mut unknown = table;
        unknown[tag + 1] = b'x';
        assert_eq!(error(stamped(unknown)), TableError::UnknownLanguage);
    }

    proptest! {
        #[test]
        fn hostile_bytes_never_panic(bytes in prop::collection::vec(any::<u8>(), 0..64)) {
            let _ = Table::load(bytes);
        }

        #[test]
        fn a_hostile_table_says_something(
            changes in prop::collection::vec((any::<prop::sample::Index>(), 0..0x80_u8), 1..40),
            value in any::<f64>(),
        ) {
            let mut table = bytes("ar");
            for (at, byte) in changes {
                let at = HEADER + at.index(table.len() - HEADER);
                // Strings stay as many as they are, and text: the rest is refused.
                if table[at] != END_OF_STRING && table[at] < 0x80 && byte != END_OF_STRING {
                    table[at] = byte;
                }
            }
            let Ok(table) = Table::load(stamped(table)) else {
                return Ok(());
            };
            for digits in [false, true] {
                speak(Some(table.with_own_digits(digits)));
                let number = Number::fixed(value, 1);
                let _ = (faults_to_mend(number), faults_body(), number.to_string());
            }
        }
    }
}
