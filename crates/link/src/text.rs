//! A text of any origin: a link, a code, or a file.

use std::iter;

use noseward_lesson::Record;
use noseward_stability::Design;

use crate::code::{looks_like_code, open_code};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::file::{FILE_BYTES, open_json};
use crate::link::{Opened, is_link, open_hash};
use crate::missing::Missing;

/// What a record was spelled as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spelling {
    /// A link, alone or somewhere in the text.
    Link,
    /// A typed code, after `#` or at the start of a line.
    Code,
    /// A file, or a bare design in JSON.
    File,
}

/// What a text holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Text {
    /// A whole record, [rounded](Record::rounded).
    Record {
        /// The record.
        record: Record,
        /// How it was spelled.
        spelling: Spelling,
    },
    /// A link that was cut short, as [`Opened::Partial`].
    Partial {
        /// What arrived.
        design: Design,
        /// What did not; never empty.
        missing: Vec<Missing>,
    },
}

/// Opens a text: a rocket file, a bare design as the JavaScript call takes it, a typed
/// code, or any text that holds a link or a code, of which the first counts, links first.
///
/// Whether the design makes sense is for [`check`](noseward_stability::check()) to say.
///
/// # Errors
///
/// [`LinkError`], of what the text turned out to hold; of a file where that is nothing.
pub fn open_text(text: &str) -> Result<Text, LinkError> {
    let no_rocket = || LinkErrorKind::Nothing.at(At::File);
    if text.len() > FILE_BYTES {
        return Err(LinkErrorKind::TooLarge { bytes: text.len() }.at(At::File));
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.trim_start().starts_with('{') {
        let record = open_json(text)?;
        return Ok(Text::Record { record, spelling: Spelling::File });
    }
    let marked = || text.match_indices('#').map(|(i, _)| &text[i..]);
    if let Some(link) = iter::once(text).chain(marked()).find(|text| is_link(text)) {
        return match open_hash(link) {
            Opened::Record(record) => {
                Ok(Text::Record { record, spelling: Spelling::Link })
            }
            Opened::Partial { design, missing } => Ok(Text::Partial { design, missing }),
            Opened::Damaged(error) => Err(error),
            Opened::Nothing => Err(no_rocket()),
        };
    }
    let opened = match marked().chain(lines(text)).find(|text| looks_like_code(text)) {
        Some(code) => open_code(code),
        None => {
            let unnumbered = without_row_numbers(text);
            let code = lines(&unnumbered).find(|text| looks_like_code(text));
            open_code(code.ok_or_else(no_rocket)?)
        }
    };
    opened.map(|record| Text::Record { record, spelling: Spelling::Code })
}

/// The text without the numbers of its rows, `1.` or `1)` and so on, which a hand may copy
/// from the screen. They count only where `1.` stands in front of an `R` and the others
/// follow in order: a short last group before a full stop looks the same.
fn without_row_numbers(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut next = 1;
    let mut words = text.split_whitespace().peekable();
    while let Some(word) = words.next() {
        let digits = word.strip_suffix(['.', ')']);
        let is_next = digits.is_some_and(|digits| digits == next.to_string());
        let begins = |word: &&str| word.starts_with(['R', 'r']);
        if is_next && (next > 1 || words.peek().is_some_and(begins)) {
            next += 1;
            kept.push('\n');
        } else {
            kept.push_str(word);
            kept.push(' ');
        }
    }
    kept
}

/// The text from the first letter of each line on.
fn lines(text: &str) -> impl Iterator<Item = &str> {
    let mut start = 0;
    text.split_inclusive(['\n', '\r']).filter_map(move |line| {
        let indent = line.len() - line.trim_start().len();
        let rest = &text[start + indent..];
        start += line.len();
        (indent < line.len()).then_some(rest)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{code, compact, hash, to_file};
    use noseward_lesson::SwingOutcome;
    use noseward_stability::Example;

    fn nothing() -> LinkError {
        LinkErrorKind::Nothing.at(At::File)
    }

    #[test]
    fn each_spelling_is_told_from_the_others() {
        let mut record = Record::from(Example::Razorbill.design());
        tell(&record);
        record.swings.add(SwingOutcome::NotSure);
        tell(&record);
    }

    fn tell(record: &Record) {
        let whole = |spelling| Ok(Text::Record { record: record.clone(), spelling });
        let (link, code, file) = (hash(record), code(record), to_file(record));
        let dense = compact(&code);
        for (text, spelling) in [
            (link.clone(), Spelling::Link),
            (format!("River rocket, group 7:\n#{link}"), Spelling::Link),
            (format!("R1AB CDEF GHJK\n#{link}"), Spelling::Link),
            (format!("Right:\n{code}"), Spelling::Code),
            (code.replacen("R1", "RI", 1), Spelling::Code),
            (code.replacen("R1", "rl", 1), Spelling::Code),
            (format!("R1 is our rocket:\nhttps://x.test/#{link}."), Spelling::Link),
            (code.clone(), Spelling::Code),
            (format!("\u{feff}  {code}\n"), Spelling::Code),
            (format!("R1, class 8b:\r\n\r\n  {code}\nBye"), Spelling::Code),
            (code.to_lowercase(), Spelling::Code),
            (format!("https://x.test/page#{dense}"), Spelling::Code),
            (dense, Spelling::Code),
            (file, Spelling::File),
        ] {
            assert_eq!(open_text(&text), whole(spelling), "{text}");
        }
    }

    #[test]
    fn the_numbers_of_the_rows_may_be_typed_too() {
        let record = Record::from(Example::Gannet.design());
        let numbered = |mark: &str, between: &str| {
            let code = code(&record);
            let rows = code.lines().zip(1..).map(|(row, i)| format!("{i}{mark} {row}"));
            rows.collect::<Vec<_>>().join(between)
        };
        for (mark, between) in [(".", "\n"), (")", "\r\n"), (".", " ")] {
            let text = numbered(mark, between);
            let opened = open_text(&text);
            assert!(
                matches!(&opened, Ok(Text::Record { record: r, .. }) if *r == record),
                "{text}: {opened:?}"
            );
        }
    }

    #[test]
    fn what_is_no_text_at_all_is_no_code_of_a_newer_version() {
        // A picture read as text: some line begins with R and a digit.
        let picture =
            "\u{fffd}PNG\r\n\u{1a}\nIHDR\nR7\u{fffd}\u{fffd}aZ0k9\u{fffd}q\u{3}Q";
        assert_eq!(open_text(picture), Err(nothing()));
    }

    #[test]
    fn what_is_wrong_is_said_of_what_it_was() {
        let design = Example::Razorbill.design();
        let code = code(&design.clone().into());
        let wrong = code.replacen("R1", "R1*", 1);
        let fault = LinkErrorKind::Character { row: 1, character: '*' }.at(At::Code);
        for text in [wrong.clone(), format!("Hello,\n{wrong}"), format!("x#{wrong}")] {
            assert_eq!(open_text(&text), Err(fault.clone()));
        }
        let link = hash(&design.clone().into());
        let cut = format!("see #{}", &link[..link.len() - 9]);
        let Ok(Text::Partial { design: front, missing }) = open_text(&cut) else {
            panic!("a cut link");
        };
        assert_eq!(front.sections, design.sections);
        assert_eq!(missing, [Missing::Weights(1)]);
        let newer = LinkErrorKind::Newer { version: 3 }.at(At::Code);
        assert_eq!(open_text("R3AB CDEF GHJK"), Err(newer));
    }

    #[test]
    fn sentences_are_no_codes() {
        for text in [
            "R1 was our best rocket today.",
            "Rocket 1 was our best rocket.",
            "R1",
            "R1: AB",
            "#R1",
            "R12",
            "Rings and fins, glued on by four pupils",
            "RIVERSIDE ROCKETS",
            "RI\nLOOK AT THIS",
        ] {
            assert_eq!(open_text(text), Err(nothing()), "{text}");
        }
    }

    #[test]
    fn many_beginnings_are_little_work() {
        for piece in [
            "\n",
            " \n",
            "#",
            "\nR1 ",
            "#R1",
            "\nR1A",
            "#r1.",
            "R1A\n----",
            "#RI--",
            "\nRiver--",
        ] {
            let text = piece.repeat(FILE_BYTES / piece.len());
            assert!(open_text(&text).is_err());
        }
    }
}
