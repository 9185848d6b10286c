//! English made longer and stranger, to see whether the page holds what other languages need.

use super::tree::Piece;

/// The same sentence, half as long again and in letters with accents.
pub(crate) fn stretched(pieces: &[Piece]) -> Vec<Piece> {
    let mut due = 0;
    let mut stretched = stretch(pieces, &mut due);
    // Where there were too few letters: half the characters, rounded up.
    stretched.push(Piece::Text("·".repeat(usize::div_ceil(due, 2))));
    stretched
}

/// `due` counts the characters that were not made up for, twice what is to be added.
fn stretch(pieces: &[Piece], due: &mut usize) -> Vec<Piece> {
    let mut out = Vec::new();
    for piece in pieces {
        out.push(match piece {
            Piece::Text(text) => {
                let mut long = String::new();
                for c in text.chars() {
                    *due += 1;
                    long.push(accented(c));
                    if *due >= 2 && c.is_ascii_alphabetic() {
                        long.push(accented(c.to_ascii_lowercase()));
                        *due -= 2;
                    }
                }
                Piece::Text(long)
            }
            Piece::Select { argument, cases, otherwise } => {
                let start = *due;
                let mut longest = start;
                let mut one = |pieces: &[Piece]| {
                    let mut due = start;
                    let long = stretch(pieces, &mut due);
                    longest = longest.max(due);
                    long
                };
                let cases = cases.iter().map(|(key, case)| (*key, one(case))).collect();
                let otherwise = one(otherwise);
                *due = longest;
                Piece::Select { argument: *argument, cases, otherwise }
            }
            Piece::Argument(_) | Piece::Open(_) | Piece::Close => piece.clone(),
        });
    }
    out
}

fn accented(c: char) -> char {
    const PLAIN: &str = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
    const ACCENTED: &str = "ÅƁÇÐÉƑĜĤÎĴĶĻṀÑÖÞǪŔŠŢÛṼŴẊÝŽåƀçðéƒĝĥîĵķļṁñöþǫŕšţûṽŵẋýž";
    let place = PLAIN.chars().position(|plain| plain == c);
    place.and_then(|place| ACCENTED.chars().nth(place)).unwrap_or(c)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn length(pieces: &[Piece]) -> usize {
        let of = |piece: &Piece| match piece {
            Piece::Text(text) => text.chars().count(),
            Piece::Select { otherwise, .. } => length(otherwise),
            _ => 0,
        };
        pieces.iter().map(of).sum()
    }

    #[test]
    fn a_sentence_is_half_as_long_again() {
        for text in ["Undo", "a", "One thing to mend", "3 + 4 = 7", ": "] {
            let plain = [Piece::Text(text.into())];
            let long = stretched(&plain);
            let (before, after) = (length(&plain), length(&long));
            assert!(2 * after >= 3 * before && after <= 2 * before, "{text}: {long:?}");
        }
    }

    #[test]
    fn every_letter_has_an_accent() {
        for c in ('a'..='z').chain('A'..='Z') {
            assert!(!accented(c).is_ascii(), "{c}");
        }
        assert_eq!(accented('…'), '…');
    }
}
