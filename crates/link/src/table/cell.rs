//! A free text in a cell, so that a spreadsheet leaves it as it is.

use std::borrow::Cow;

use crate::cells::escape_formula;

/// Words of letters in a date, a time or a sum of money, at most: day, month, and one
/// more, as in "25 de noviembre de 2026". Our judgement.
const MOST_WORDS: usize = 3;

/// What spreadsheets in several languages take for a truth value.
const TRUTHS: [&str; 14] = [
    "true",
    "false",
    "wahr",
    "falsch",
    "vrai",
    "faux",
    "vero",
    "falso",
    "verdadero",
    "verdadeiro",
    "waar",
    "onwaar",
    "sant",
    "sann",
];

/// The text as it stands in a cell: with an apostrophe in front where a spreadsheet would
/// make a formula, a number, a date or the like of it. A text that begins with an
/// apostrophe gets one more. [`read`] takes exactly that away again.
pub(super) fn written(text: &str) -> Cow<'_, str> {
    if text.starts_with('\'') || is_converted(text) {
        Cow::Owned(format!("'{text}"))
    } else {
        Cow::Borrowed(text)
    }
}

/// The text that stands in a cell as [`written`]. Where a program has taken the apostrophe
/// away already, the text is what is left.
pub(super) fn read(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(text) if text.starts_with('\'') || is_converted(text) => text,
        _ => cell,
    }
}

/// Whether some spreadsheet would take the text for something else. An apostrophe too many
/// does no harm: in doubt it is yes.
fn is_converted(text: &str) -> bool {
    let first = text.trim_start().chars().next();
    // An error such as #N/A; a quotation mark is one of the table's.
    matches!(first, Some('#' | '"'))
        || matches!(escape_formula(text), Cow::Owned(_))
        || looks_like_a_number(text)
        || TRUTHS.iter().any(|truth| text.trim().eq_ignore_ascii_case(truth))
}

/// Whether it has digits and next to no words: a number, a date, a time, a fraction, a sum
/// of money in any language.
fn looks_like_a_number(text: &str) -> bool {
    let is_letter = |c: char| c.is_ascii_alphabetic() || !c.is_ascii() && !is_digit(c);
    // One letter alone is no word: `1e5`, `3 h`.
    let is_word = |run: &&str| run.chars().nth(1).is_some();
    text.contains(is_digit)
        && text.split(|c| !is_letter(c)).filter(is_word).count() <= MOST_WORDS
}

/// Digits that programs read: plain, Arabic, Persian, Devanagari, Bengali, Thai, full-width.
fn is_digit(c: char) -> bool {
    let zeros = ['0', '\u{660}', '\u{6f0}', '\u{966}', '\u{9e6}', '\u{e50}', '\u{ff10}'];
    zeros.iter().any(|&zero| (u32::from(zero)..u32::from(zero) + 10).contains(&c.into()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_a_spreadsheet_would_convert_is_kept_from_it() {
        for text in [
            "=1+1",
            "+A1",
            "-",
            "-3",
            "@x",
            " =1",
            "1-2",
            "3/4",
            "00123",
            "1e5",
            "1e234567",
            "12345678",
            "5. März",
            "5 March 2026",
            "Wednesday, 25 November 2026",
            "12:30",
            "25 de noviembre de 2026",
            "2024年3月5日",
            "TRUE",
            " wahr",
            "#N/A",
            "50 %",
            "€ 5",
            "١٢",
            "１２",
            "'",
            "'x",
            "''",
            "'=1",
            "\"quoted\" word",
            "1\n2",
        ] {
            assert_eq!(written(text), format!("'{text}"));
            assert_eq!(read(&written(text)), text);
        }
    }

    #[test]
    fn sentences_stay() {
        for text in [
            "",
            "small fins",
            "Because it is 4 mm longer than before",
            "it isn't steady",
            "true north",
            "صاروخ",
            "a = b",
            "line\nline",
            "🚀",
        ] {
            assert_eq!(written(text), text);
            assert_eq!(read(text), text);
        }
    }

    #[test]
    fn an_apostrophe_that_a_program_took_away_is_not_missed() {
        for text in ["=1+1", "3/4", "'tis so", "00123"] {
            let swallowed = written(text)[1..].to_owned();
            assert_eq!(read(&swallowed), text);
        }
        // Somebody's own, typed in the spreadsheet.
        assert_eq!(read("'small' fins"), "'small' fins");
    }

    proptest! {
        #![proptest_config(ProptestConfig {
            failure_persistence: None,
            ..ProptestConfig::default()
        })]

        #[test]
        fn every_text_comes_back(text in "['=+@#\"0-9a-c \n-]{0,6}|\\PC{0,12}") {
            let cell = written(&text).into_owned();
            prop_assert_eq!(read(&cell), text);
        }
    }
}
