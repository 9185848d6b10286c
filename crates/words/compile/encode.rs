//! Writes sentences and tables as [`code`](crate::code) says.

use super::check::Sentence;
use super::numbers::symbols;
use super::plurals::plurals;
use super::signature::ArgumentKind;
use super::tree::{Key, Piece};
use crate::code::{
    CASE, CLOSE, END, END_OF_STRING, FIRST_CATEGORY, FIRST_EXACT, FIRST_MARK, MAGIC,
    OTHERWISE, SELECT, sum,
};
use crate::languages::Language;

/// The text of a sentence with its codes.
pub(crate) fn text(pieces: &[Piece]) -> String {
    let mut out = String::new();
    write(pieces, &mut out);
    out
}

fn write(pieces: &[Piece], out: &mut String) {
    for piece in pieces {
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Argument(place) => out.push(argument(*place)),
            Piece::Open(mark) => out.push(char::from(FIRST_MARK + *mark as u8)),
            Piece::Close => out.push(char::from(CLOSE)),
            Piece::Select { argument: place, cases, otherwise } => {
                out.push(char::from(SELECT));
                out.push(argument(*place));
                for (key, case) in cases {
                    let key = match key {
                        Key::Exact(key) | Key::Choice(key) => FIRST_EXACT + key,
                        Key::Category(key) => FIRST_CATEGORY + key,
                    };
                    out.push(char::from(CASE));
                    out.push(char::from(key));
                    write(case, out);
                }
                out.push(char::from(OTHERWISE));
                write(otherwise, out);
                out.push(char::from(END));
            }
        }
    }
}

fn argument(place: usize) -> char {
    // The signature has allowed no more than there are codes.
    u8::try_from(place + 1).map(char::from).unwrap_or_default()
}

/// A sum over what a table must agree on with the page: the names of the sentences, their
/// order, their arguments and whether they are marked.
pub(crate) fn sentences_sum(sentences: &[Sentence]) -> u32 {
    let mut all = String::new();
    for sentence in sentences {
        all.push_str(&sentence.id);
        for argument in &sentence.arguments {
            all.push_str(&format!("\u{1}{}\u{2}{:?}", argument.name, argument.kind));
        }
        all.push_str(&format!("\u{3}{:?}\n", sentence.marks));
    }
    sum(all.as_bytes())
}

/// The table of a language.
///
/// # Errors
///
/// What is not known of the language: its plurals, its numbers.
pub(crate) fn table(
    language: &Language,
    sentences: &[Sentence],
    translated: &[Option<Vec<Piece>>],
) -> Result<Vec<u8>, String> {
    let mut strings: Vec<String> = translated
        .iter()
        .map(|pieces| pieces.as_deref().map(text).unwrap_or_default())
        .collect();
    strings.push(language.key.into());
    let plurals = plurals(language.tag)?.table;
    strings.push(plurals.iter().map(|category| char::from(b'0' + category)).collect());
    // Right to left, what comes from elsewhere could turn the words round it about.
    let [open, close] =
        if language.dir == "rtl" { ["\u{2068}", "\u{2069}"] } else { ["", ""] };
    strings.extend([open.to_owned(), close.to_owned()]);
    strings.extend(symbols(language.tag, "latn")?);
    strings.extend(symbols(language.tag, language.own_digits.unwrap_or("latn"))?);
    let mut body = Vec::new();
    for string in strings {
        body.extend_from_slice(string.as_bytes());
        body.push(END_OF_STRING);
    }
    let mut bytes = MAGIC.to_vec();
    bytes.extend_from_slice(&sentences_sum(sentences).to_le_bytes());
    bytes.extend_from_slice(&sum(&body).to_le_bytes());
    bytes.extend_from_slice(&body);
    Ok(bytes)
}

/// What an argument can be, as one byte: see `sentences::Message`.
pub(crate) fn kind_code(kind: &ArgumentKind) -> u8 {
    match kind {
        ArgumentKind::Text => 0,
        ArgumentKind::Number => 1,
        ArgumentKind::Choice(choices) => u8::try_from(choices.len()).unwrap_or(u8::MAX),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mark::Mark;

    #[test]
    fn a_sentence_is_its_text_with_codes_between() {
        let said = |word: &str| vec![Piece::Text(word.into())];
        let pieces = [
            Piece::Open(Mark::Strong),
            Piece::Argument(0),
            Piece::Close,
            Piece::Text(" goes ".into()),
            Piece::Select {
                argument: 1,
                cases: vec![(Key::Choice(1), said("up"))],
                otherwise: said("down"),
            },
        ];
        let expected = "\u{16}\u{1}\u{15} goes \u{10}\u{2}\u{11}1up\u{12}down\u{13}";
        assert_eq!(text(&pieces), expected);
    }
}
