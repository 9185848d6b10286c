//! Says a sentence in the language in use.

use std::borrow::Cow;

use crate::code::{
    CASE, CLOSE, CLOSE_ISOLATE, END, MOST_ARGUMENTS, NO_KEY, OPEN_ISOLATE, OTHERWISE,
    SELECT, TEXT,
};
use crate::marked::Marked;
use crate::number::Number;
use crate::table::{extra, in_use};

/// What a sentence is given: as large as a `&str`, so that it takes no more code to put one
/// there than `format!` takes.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Arg<'a> {
    /// Text from elsewhere.
    Text(&'a str),
    /// A number, or a choice by its place.
    Number(&'a Number),
}

/// A sentence as the code has it.
#[derive(Debug)]
pub(crate) struct Sentence {
    /// Its number: its place in every table.
    pub(crate) id: u16,
    /// What it says in English.
    pub(crate) english: &'static str,
}

/// A sentence without arguments: English, or what the table in use has in its place.
///
/// It takes and gives one pointer: for WebAssembly, two values to return are a place in
/// memory to return them in.
#[inline(never)]
pub(crate) fn plain(sentence: &'static Sentence) -> &'static &'static str {
    in_use(sentence.id).unwrap_or(&sentence.english)
}

/// A sentence with marks: [`say`].
#[inline(never)]
pub(crate) fn say_marked(sentence: &'static Sentence, args: &[Arg<'_>]) -> Marked {
    Marked(Cow::Owned(say(sentence, args)))
}

/// A sentence with arguments, in English or as the table in use has it.
///
/// Never fails: whatever a sentence asks for and is not there, is left out. Marks stay in
/// it as their codes; text from elsewhere brings none.
#[inline(never)]
pub(crate) fn say(sentence: &'static Sentence, args: &[Arg<'_>]) -> String {
    let pattern = plain(sentence).as_bytes();
    let mut out = Vec::new();
    let mut at = 0;
    while let Some(&byte) = pattern.get(at) {
        at += 1;
        match byte {
            SELECT => {
                let code = pattern.get(at).copied().unwrap_or_default();
                at = chosen(pattern, at + 1, keys(argument(args, code)));
            }
            // The text before it was the chosen one.
            CASE | OTHERWISE => at = end(pattern, at),
            CLOSE.. => out.push(byte),
            _ => match argument(args, byte) {
                Some(Arg::Text(text)) => from_elsewhere(text, &mut out),
                Some(Arg::Number(number)) => number.write(&mut out),
                None => {}
            },
        }
    }
    String::from_utf8(out).unwrap_or_default()
}

/// The argument of a code; `None` for any other.
fn argument<'s, 'a>(args: &'s [Arg<'a>], code: u8) -> Option<&'s Arg<'a>> {
    args.get(usize::from(code).wrapping_sub(1)).filter(|_| code <= MOST_ARGUMENTS)
}

/// The keys of the texts that fit an argument.
fn keys(arg: Option<&Arg<'_>>) -> [u8; 2] {
    match arg {
        Some(Arg::Number(number)) => number.keys(),
        Some(Arg::Text(_)) | None => [NO_KEY, NO_KEY],
    }
}

/// A text that stands by itself among others, such as a label of a drawing: where the language
/// in use goes right to left, between U+2068 and U+2069, so that each goes its own way.
#[must_use]
#[inline(never)]
pub fn isolated(text: &str) -> String {
    let mut out = Vec::new();
    from_elsewhere(text, &mut out);
    String::from_utf8(out).unwrap_or_default()
}

/// Writes a text that is no part of the sentence, without what would be read as a mark.
fn from_elsewhere(text: &str, out: &mut Vec<u8>) {
    push(out, extra(OPEN_ISOLATE));
    for byte in text.bytes() {
        if !(CLOSE..TEXT).contains(&byte) {
            out.push(byte);
        }
    }
    push(out, extra(CLOSE_ISOLATE));
}

/// Writes text. A function of its own, so that what makes room for it is there once.
#[inline(never)]
pub(crate) fn push(out: &mut Vec<u8>, text: &str) {
    out.extend_from_slice(text.as_bytes());
}

/// Where the text begins that one of the keys fits; `at` is where the first begins.
fn chosen(pattern: &[u8], mut at: usize, keys: [u8; 2]) -> usize {
    while pattern.get(at) == Some(&CASE) {
        match pattern.get(at + 1) {
            Some(&key) if key == keys[0] || key == keys[1] => return at + 2,
            _ => at = next(pattern, at + 1),
        }
    }
    at + 1
}

/// Where the choice ends whose texts `at` stands among.
fn end(pattern: &[u8], mut at: usize) -> usize {
    loop {
        at = next(pattern, at) + 1;
        // Behind the last text, or the last byte.
        if !matches!(pattern.get(at - 1), Some(&(CASE | OTHERWISE))) {
            return at;
        }
    }
}

/// Where the next text of this choice begins, or the choice ends; choices within its texts
/// are passed over.
fn next(pattern: &[u8], mut at: usize) -> usize {
    let mut depth = 0_usize;
    while let Some(&byte) = pattern.get(at) {
        match byte {
            CASE | OTHERWISE | END if depth == 0 => break,
            SELECT => depth += 1,
            END => depth -= 1,
            _ => {}
        }
        at += 1;
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Table;
    use crate::sentences::{MESSAGES, TABLES};
    use crate::{Kind, LANGUAGES, speak};
    use proptest::prelude::*;

    /// No sentence has this number, so that the given text is said with the plurals and
    /// digits of the language in use.
    const NONE: u16 = u16::MAX;
    const ARGUMENT: &str = "\u{1}";

    fn table(key: &str) -> Table {
        let (_, bytes) = TABLES.iter().find(|(table, _)| *table == key).unwrap();
        Table::load(bytes.to_vec()).unwrap()
    }

    fn said_as(pattern: &'static str, args: &[Arg<'_>]) -> String {
        say(Box::leak(Box::new(Sentence { id: NONE, english: pattern })), args)
    }

    fn number(value: f64, decimals: u8) -> String {
        said_as(ARGUMENT, &[Arg::Number(&Number::fixed(value, decimals))])
    }

    /// A text that names the plural category of its argument.
    const CATEGORY: &str = "\u{10}\u{1}\u{11} zero\u{11}!one\u{11}\"two\u{11}#few\u{11}$many\
                            \u{12}other\u{13}";

    fn category(value: f64, decimals: u8) -> String {
        said_as(CATEGORY, &[Arg::Number(&Number::fixed(value, decimals))])
    }

    #[test]
    fn an_argument_is_as_large_as_a_text() {
        assert_eq!(size_of::<Arg<'_>>(), size_of::<&str>());
    }

    #[test]
    fn english_and_german_know_one_and_others() {
        for language in [None, Some(table("en-US")), Some(table("de"))] {
            speak(language);
            for (value, decimals, expected) in [
                (1.0, 0, "one"),
                (-1.0, 0, "one"),
                (1.4, 0, "one"),
                (0.0, 0, "other"),
                (2.0, 0, "other"),
                (101.0, 0, "other"),
                (1.0, 1, "other"),
                (0.5, 1, "other"),
                (1e20, 0, "other"),
                (f64::NAN, 0, "other"),
            ] {
                assert_eq!(category(value, decimals), expected, "{value} {decimals}");
            }
        }
    }

    #[test]
    fn arabic_knows_six_plurals() {
        speak(Some(table("ar")));
        for (value, decimals, expected) in [
            (0.0, 0, "zero"),
            (1.0, 0, "one"),
            (2.0, 0, "two"),
            (3.0, 0, "few"),
            (10.0, 0, "few"),
            (11.0, 0, "many"),
            (99.0, 0, "many"),
            (100.0, 0, "other"),
            (102.0, 0, "other"),
            (103.0, 0, "few"),
            (1.0, 1, "one"),
            (1.5, 1, "other"),
            (3.0, 2, "few"),
            (3.25, 2, "other"),
        ] {
            assert_eq!(category(value, decimals), expected, "{value} {decimals}");
        }
    }

    #[test]
    fn a_number_itself_comes_before_its_plural() {
        let pattern = "\u{10}\u{1}\u{11}0none\u{11}!one\u{12}\u{1} more\u{13}.";
        let of = |value| said_as(pattern, &[Arg::Number(&Number::trimmed(value, 1))]);
        for (value, said) in
            [(0.0, "none."), (1.0, "one."), (0.5, "0.5 more."), (48.0, "48 more.")]
        {
            assert_eq!(of(value), said);
        }
        // Below zero, nothing is meant by a key.
        assert_eq!(of(-1.0), "one.");
        assert_eq!(said_as(pattern, &[Arg::Text("0")]), "0 more.");
        assert_eq!(said_as(pattern, &[]), " more.");
    }

    #[test]
    fn choices_stand_within_choices() {
        // [0: [up] u [else] d], [1: x], else y; then the rest.
        let inner = "\u{10}\u{2}\u{11}0u\u{12}d\u{13}";
        let pattern =
            format!("<\u{10}\u{1}\u{11}0{inner}!\u{11}1x\u{12}{inner}?\u{13}>").leak();
        let of = |a: u8, b: u8| {
            said_as(
                pattern,
                &[Arg::Number(&Number::from(a)), Arg::Number(&Number::from(b))],
            )
        };
        assert_eq!(of(0, 0), "<u!>");
        assert_eq!(of(0, 7), "<d!>");
        assert_eq!(of(1, 0), "<x>");
        assert_eq!(of(2, 0), "<u?>");
        assert_eq!(of(255, 255), "<d?>");
    }

    #[test]
    fn numbers_are_written_as_the_language_does() {
        let numbers = || [number(-1234.5, 1), number(0.0, 0), number(-0.04, 1)];
        speak(None);
        assert_eq!(numbers(), ["−1234.5", "0", "0.0"]);
        speak(Some(table("de")));
        assert_eq!(numbers(), ["−1234,5", "0", "0,0"]);
        let arabic = table("ar");
        speak(Some(arabic));
        assert_eq!(numbers(), ["\u{200E}−1234.5", "0", "0.0"]);
        speak(Some(arabic.with_own_digits(true)));
        assert_eq!(numbers(), ["\u{61C}−١٢٣٤٫٥", "٠", "٠٫٠"]);
        assert_eq!(number(67_890.0, 0), "٦٧٨٩٠");
        // A language that has no others keeps them.
        speak(Some(table("de").with_own_digits(true)));
        assert_eq!(numbers(), ["−1234,5", "0", "0,0"]);
    }

    #[test]
    fn numbers_of_every_size_are_written() {
        speak(None);
        for (value, decimals, text) in [
            (2.5, 0, "3"),
            (-2.5, 0, "−3"),
            (-0.05, 1, "−0.1"),
            (1.005, 3, "1.005"),
            (7.0, 9, "7.000"),
            (999.999_9, 3, "1000.000"),
            (123_456_789_012_345.0, 2, "123456789012345.00"),
            (1e15, 2, "1000000000000000"),
            (-2e20, 1, "−200000000000000000000"),
            (f64::NAN, 1, "NaN"),
        ] {
            assert_eq!(number(value, decimals), text);
        }
        assert_eq!(number(f64::INFINITY, 0).len(), 309);
        for (value, text) in [(12.50, "12.5"), (7.0, "7"), (-0.004, "0"), (100.0, "100")]
        {
            assert_eq!(Number::trimmed(value, 2).to_string(), text);
        }
    }

    /// But for halves, which the standard library rounds by what a binary number holds.
    #[test]
    fn numbers_are_what_the_standard_library_writes() {
        speak(None);
        for i in -20_000..20_000_i32 {
            let value = f64::from(i) * 0.013_7 + f64::from(i % 7) * 1e4;
            for (decimals, step) in [(0_u8, 1.0), (1, 0.1), (2, 0.01), (3, 0.001)] {
                if ((value / step).abs().fract() - 0.5).abs() < 1e-6 {
                    continue;
                }
                let std = format!("{value:.0$}", usize::from(decimals));
                let is_zero = !std.contains(|c: char| ('1'..='9').contains(&c));
                let std = std.replace('-', if is_zero { "" } else { "−" });
                assert_eq!(number(value, decimals), std);
            }
        }
    }

    #[test]
    fn text_from_elsewhere_brings_no_marks() {
        speak(None);
        let evil = "a\u{16}b\u{15}\u{1f}c\nd";
        let said = said_as("\u{16}\u{1}\u{15}!", &[Arg::Text(evil)]);
        assert_eq!(said, "\u{16}abc\nd\u{15}!");
    }

    #[test]
    fn right_to_left_what_comes_from_elsewhere_stands_apart() {
        speak(Some(table("ar")));
        assert_eq!(said_as("(\u{1})", &[Arg::Text("−5 mm")]), "(\u{2068}−5 mm\u{2069})");
        speak(Some(table("de")));
        assert_eq!(said_as("(\u{1})", &[Arg::Text("−5 mm")]), "(−5 mm)");
        assert_eq!(isolated("−5 mm"), "−5 mm");
        speak(Some(table("ar")));
        assert_eq!(isolated("−5 mm"), "\u{2068}−5 mm\u{2069}");
    }

    fn number_for_ever(number: Number) -> Arg<'static> {
        Arg::Number(Box::leak(Box::new(number)))
    }

    /// What each kind of argument can be.
    fn samples(kind: u8) -> Vec<Arg<'static>> {
        match kind {
            0 => vec![Arg::Text("sample"), Arg::Text("é")],
            1 => [0.0, 1.0, 2.0, 3.0, 11.0, 100.0, -1.0, 1.5]
                .map(|value| number_for_ever(Number::trimmed(value, 1)))
                .to_vec(),
            choices => (0..choices).map(|place| number_for_ever(place.into())).collect(),
        }
    }

    /// Every sentence of every language with every sample in place of each argument, the
    /// others being the first sample.
    fn said(language: Option<Table>, of: impl Fn(&str, &str)) {
        speak(language);
        for message in &MESSAGES {
            let kinds: Vec<_> =
                message.arguments.iter().map(|kind| samples(*kind)).collect();
            let first: Vec<_> = kinds.iter().map(|samples| samples[0]).collect();
            of(message.key, &say(&message.sentence, &first));
            for (place, samples) in kinds.iter().enumerate() {
                for sample in samples {
                    let mut args = first.clone();
                    args[place] = *sample;
                    of(message.key, &say(&message.sentence, &args));
                }
            }
        }
    }

    #[test]
    fn every_sentence_can_be_said_in_every_language() {
        let tables = TABLES.iter().map(|(key, _)| Some(table(key)));
        for language in [None].into_iter().chain(tables) {
            said(language, |key, sentence| {
                let marked = Marked(sentence.to_owned().into());
                let text = marked.text();
                let is_clean = !text.contains(char::is_control) && !text.contains("  ");
                assert!(is_clean && !text.is_empty(), "{language:?} {key}: {text:?}");
                assert_eq!(text, text.trim(), "{language:?} {key}");
            });
        }
    }

    #[test]
    fn every_language_says_every_sentence() {
        for language in &LANGUAGES[1..] {
            let table = table(language.key);
            assert_eq!(table.language(), language);
            for message in &MESSAGES {
                speak(Some(table));
                let sentence = in_use(message.sentence.id);
                let Some(sentence) = sentence else {
                    assert_eq!(language.kind, Kind::OverEnglish, "{}", message.key);
                    continue;
                };
                // The build lets nothing be left out of a full language but choices.
                for (place, kind) in message.arguments.iter().enumerate() {
                    let code = char::from(u8::try_from(place + 1).unwrap());
                    if *kind < 2 && language.kind != Kind::OverEnglish {
                        assert!(sentence.contains(code), "{language:?} {}", message.key);
                    }
                }
                let past = u8::try_from(message.arguments.len() + 1).unwrap();
                let is_past = |b: u8| (past..=MOST_ARGUMENTS).contains(&b);
                assert!(!sentence.bytes().any(is_past), "{language:?} {}", message.key);
            }
        }
    }

    #[test]
    fn the_pseudo_language_is_half_as_long_again() {
        let pseudo = table("en-XA");
        for message in &MESSAGES {
            let args: Vec<_> =
                message.arguments.iter().map(|kind| samples(*kind)[0]).collect();
            // Without what the arguments say themselves.
            let args: Vec<_> = args
                .into_iter()
                .map(|arg| if matches!(arg, Arg::Text(_)) { Arg::Text("") } else { arg })
                .collect();
            let length = |table| {
                speak(table);
                let said = Marked(say(&message.sentence, &args).into());
                said.text().chars().filter(|c| !c.is_numeric()).count()
            };
            let (english, long) = (length(None), length(Some(pseudo)));
            let is_long = 10 * long >= 14 * english;
            assert!(is_long, "{}: {long} for {english}", message.key);
        }
    }

    proptest! {
        #[test]
        fn any_pattern_can_be_said(
            pattern in "[\u{1}-\u{1F} -)a<]{0,60}",
            value in any::<f64>(),
            decimals in any::<u8>(),
            choice in any::<u8>(),
            text in ".{0,10}",
        ) {
            let number = Number::fixed(value, decimals);
            let args = [Arg::Number(&number), Arg::Text(&text), Arg::Number(&choice.into())];
            for table in [None, Some(table("ar"))] {
                speak(table);
                let said = said_as(pattern.clone().leak(), &args);
                // What was said is text again, and its runs are all of it.
                let marked = Marked(said.clone().into());
                let kept = said.replace(|c| ('\u{15}'..='\u{1F}').contains(&c), "");
                prop_assert_eq!(marked.text(), kept);
            }
        }
    }
}
