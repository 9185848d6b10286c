//! The text in the data of a symbol (ISO/IEC 18004, 7.4).

/// The letters of the kind that has 45.
const LETTERS: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// Bits, the highest of each byte first.
struct Bits<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl Bits<'_> {
    fn left(&self) -> usize {
        8 * self.bytes.len() - self.at
    }

    /// The next bits as a number; `None` where there are not so many.
    fn take(&mut self, count: usize) -> Option<usize> {
        if self.left() < count {
            return None;
        }
        let bit = |at: usize| usize::from(self.bytes[at / 8] >> (7 - at % 8) & 1);
        let number =
            (self.at..self.at + count).fold(0, |number, at| number << 1 | bit(at));
        self.at += count;
        Some(number)
    }
}

/// The text; `None` where it is something else, or spelled in another way than UTF-8.
pub(super) fn text(data: &[u8], version: usize) -> Option<String> {
    let mut bits = Bits { bytes: data, at: 0 };
    let mut text = Vec::new();
    // How long the number of letters is.
    let long = |of: [usize; 3]| of[usize::from(version > 9) + usize::from(version > 26)];
    while bits.left() >= 4 {
        match bits.take(4)? {
            0 => break,
            1 => {
                let count = bits.take(long([10, 12, 14]))?;
                letters(&mut bits, &mut text, count, 10, &[4, 7, 10])?;
            }
            2 => {
                let count = bits.take(long([9, 11, 13]))?;
                letters(&mut bits, &mut text, count, 45, &[6, 11])?;
            }
            4 => {
                for _ in 0..bits.take(long([8, 16, 16]))? {
                    text.push(byte(bits.take(8)?));
                }
            }
            // Says how the bytes are spelled; whether they are UTF-8 is seen.
            7 => {
                let more = match bits.take(8)? {
                    0..0x80 => 0,
                    0x80..0xc0 => 8,
                    _ => 16,
                };
                bits.take(more)?;
            }
            _ => return None,
        }
    }
    String::from_utf8(text).ok()
}

/// Letters of a kind that has `kinds`, several in a number; `widths` are the bits of one, of
/// two, and so on.
fn letters(
    bits: &mut Bits<'_>,
    text: &mut Vec<u8>,
    mut count: usize,
    kinds: usize,
    widths: &[usize],
) -> Option<()> {
    while count > 0 {
        let together = count.min(widths.len());
        let mut number = bits.take(widths[together - 1])?;
        let start = text.len();
        for _ in 0..together {
            text.push(LETTERS[number % kinds]);
            number /= kinds;
        }
        text[start..].reverse();
        count -= together;
    }
    Some(())
}

/// Eight bits.
fn byte(number: usize) -> u8 {
    u8::try_from(number).unwrap_or(u8::MAX)
}
