//! The letters of the fonts that every reader of PDF has: Helvetica, and Symbol for what it lacks.

use super::widths::{BOLD, PLAIN};
use crate::width::takes_room;

/// What the Windows encoding has from 0x80 to 0x9F (ISO 32000-1, annex D); a blank where it has
/// nothing.
const WINDOWS: &str = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";
/// Signs of the font Symbol with their bytes there and their widths.
const SIGNS: [(char, u8, u16); 9] = [
    ('−', 45, 549),
    ('←', 172, 987),
    ('↑', 173, 603),
    ('→', 174, 987),
    ('↓', 175, 603),
    ('↔', 171, 1042),
    ('≤', 163, 549),
    ('≥', 179, 549),
    ('≈', 187, 549),
];

/// How a letter is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Letter {
    /// In Helvetica, by its byte in the Windows encoding.
    Helvetica(u8),
    /// In Symbol, with its width.
    Symbol(u8, u16),
    /// Not at all: marks for the direction of writing.
    Nothing,
}

impl Letter {
    /// `None` for what neither font has.
    pub(super) fn of(letter: char) -> Option<Self> {
        let byte = match letter {
            '\u{ad}' | '\u{200e}' | '\u{200f}' => return Some(Self::Nothing),
            ' '..='~' | '\u{a1}'..='\u{ff}' => u8::try_from(u32::from(letter)).ok()?,
            '\u{a0}' | '\u{2009}' | '\u{202f}' => b' ',
            '\u{2010}' | '\u{2011}' => b'-',
            _ if !takes_room(letter) => return Some(Self::Nothing),
            _ => {
                let sign = SIGNS.iter().find(|(sign, ..)| *sign == letter);
                if let Some(&(_, byte, width)) = sign {
                    return Some(Self::Symbol(byte, width));
                }
                let place = WINDOWS.chars().position(|known| known == letter)?;
                0x80 + u8::try_from(place).ok()?
            }
        };
        Some(Self::Helvetica(byte))
    }

    /// Its width in thousandths of its size.
    pub(super) fn advance(self, bold: bool) -> u16 {
        match self {
            Self::Helvetica(byte) => {
                let widths = if bold { &BOLD } else { &PLAIN };
                widths.get(usize::from(byte - b' ')).copied().unwrap_or(0)
            }
            Self::Symbol(_, width) => width,
            Self::Nothing => 0,
        }
    }
}

/// The width of words in Helvetica, in the unit of their size. A letter that it lacks counts as
/// wide as a digit.
#[must_use]
pub(crate) fn width(words: &str, size: f64, bold: bool) -> f64 {
    let advance = |letter| Letter::of(letter).map_or(556, |letter| letter.advance(bold));
    let all: u32 = words.chars().map(|letter| u32::from(advance(letter))).sum();
    f64::from(all) * size / 1000.0
}

/// Whether the fonts have every letter of these words.
#[must_use]
pub(super) fn has_all(words: &str) -> bool {
    words.chars().all(|letter| Letter::of(letter).is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Adobe's Font Metrics: "H" 722, "i" 222 (bold 278), "−" of Symbol 549, "ü" 556, "€" 556.
    #[test]
    fn words_are_as_wide_as_their_letters() {
        assert!((width("Hi", 10.0, false) - 9.44).abs() < 1e-9);
        assert!((width("Hi", 10.0, true) - 10.0).abs() < 1e-9);
        assert!((width("−ü€", 1000.0, false) - 1661.0).abs() < 1e-9);
        assert!(width("\u{2068}\u{200e}", 10.0, false).abs() < 1e-9);
    }

    #[test]
    fn every_letter_of_the_windows_encoding_has_its_byte() {
        assert_eq!(Letter::of('Ÿ'), Some(Letter::Helvetica(0x9f)));
        assert_eq!(Letter::of('‘'), Some(Letter::Helvetica(0x91)));
        assert_eq!(Letter::of('•'), Some(Letter::Helvetica(0x95)));
        assert_eq!(Letter::of('→'), Some(Letter::Symbol(174, 987)));
        assert_eq!(Letter::of('م'), None);
        assert!(has_all("5 × 4 °, “ß” – −3 → 4…") && !has_all("صاروخ"));
    }
}
