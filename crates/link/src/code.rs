//! A record as text that a person reads off paper and types.

mod fault;
mod row;
mod symbols;

use noseward_lesson::Record;

use crate::link::frame::{self, Version};
use crate::link::{self, HASH_CHARS, Opened, is_link};
pub use fault::CodeFault;
use row::{ROW, check_symbol, is_right};
use symbols::{Slot, symbol};

/// Bytes that a code stands for, at most: as many as a link holds.
const MOST_BYTES: usize = HASH_CHARS / 4 * 3;
/// `R`, in front of the version.
const KIND: u8 = 24;
/// Symbols of kind and version.
const MARK: usize = 2;
/// Characters that are looked at to tell a code from other texts.
const LOOK: usize = 64;

/// The code for a record: capital letters and digits in groups of four, five groups a
/// row, the last of them shorter.
///
/// It holds what the [link](crate::hash) holds.
#[must_use]
pub fn code(record: &Record) -> String {
    let (version, bytes) = frame::seal(record);
    let mut data = vec![KIND, version.byte()];
    data.extend(symbols::pack(&bytes));
    let rows = data.chunks(ROW - 1).enumerate().map(|(i, data)| {
        let check = check_symbol(i + 1, data);
        let row: Vec<char> =
            data.iter().chain([&check]).map(|&value| symbols::letter(value)).collect();
        let groups: Vec<String> =
            row.chunks(4).map(|group| group.iter().collect()).collect();
        groups.join(" ")
    });
    rows.collect::<Vec<_>>().join("\n")
}

/// Whether a text begins as a code does, rather than as a link, a file or a sentence.
///
/// White space and `#` in front do not count. A code with wrong characters still looks
/// like one, except that words such as "River", whose second letter could be meant for a
/// 1, must go on as a right row does.
#[must_use]
pub fn looks_like_code(text: &str) -> bool {
    let Some(body) = body(text) else { return false };
    let start: Vec<char> = body.chars().take(LOOK).collect();
    let word = start.iter().take_while(|c| !c.is_whitespace());
    let row: Vec<Slot> = start.iter().filter_map(|&c| symbol(c)).take(ROW).collect();
    word.filter_map(|&c| symbol(c)).count() >= 4
        && row.len() >= 8
        // A hand makes slips; a picture read as text has hardly a character that is right.
        && row.iter().filter(|slot| slot.is_err()).count() <= row.len() / 5
        && (start[1].is_ascii_digit() || row.len() == ROW && is_right(1, &row))
}

/// Reads a code. Capital or small letters, spaces, dashes, full stops and line breaks are
/// all the same; `O` is 0, `I` and `L` are 1. What follows the end that the code itself
/// announces is ignored, as with a link.
///
/// Takes any text, of any length; the work is bounded.
///
/// # Errors
///
/// Each way in which it can fail is a variant of [`CodeFault`]; most name the row. No
/// wrong character is guessed.
pub fn open_code(text: &str) -> Result<Record, CodeFault> {
    let mut slots = body(text).ok_or(CodeFault::NotACode)?.chars().filter_map(symbol);
    let mut taken: Vec<Slot> = slots.by_ref().take(ROW).collect();
    let Some(&Ok(number @ 1..=9)) = taken.get(1) else {
        return Err(CodeFault::NotACode);
    };
    let Some(version) = Version::known(number.into()) else {
        return Err(CodeFault::Newer { version: number.into() });
    };
    if taken.len() < ROW {
        return Err(CodeFault::EndsEarly { row: 1 });
    }
    if !is_right(1, &taken) {
        return Err(fault::in_row(1, &taken));
    }
    let bytes = frame::announced(&symbols::unpack(&data(&taken)[MARK..]))
        .ok_or(CodeFault::Changed)?;
    if bytes > MOST_BYTES {
        return Err(CodeFault::TooLong);
    }
    let count = MARK + symbols::count(bytes);
    let whole = count + count.div_ceil(ROW - 1);
    if whole < ROW {
        // Too short for any design: another first row that happens to be right.
        return Err(CodeFault::Changed);
    }
    // One row more shows whether a row stands there twice.
    taken.extend(slots.take(whole));
    if let Some(fault) = fault::find(&taken, whole) {
        return Err(fault);
    }
    let bytes = symbols::unpack(&data(&taken[..whole])[MARK..]);
    match frame::open(version, &bytes) {
        Ok(Opened::Record(record)) => Ok(record),
        _ => Err(CodeFault::Changed),
    }
}

/// The text from `R` on, if it begins with `R` and a digit, and not as a link does.
fn body(text: &str) -> Option<&str> {
    let text = link::body(text);
    let mut front = text.chars();
    let is_mark = front.next().and_then(symbol) == Some(Ok(KIND))
        && matches!(front.next().and_then(symbol), Some(Ok(1..=9)));
    (is_mark && !is_link(text)).then_some(text)
}

/// The symbols of right rows, without their check symbols.
fn data(slots: &[Slot]) -> Vec<u8> {
    let rows = slots.chunks(ROW).map(|row| &row[..row.len() - 1]);
    rows.flatten().filter_map(|slot| slot.ok()).collect()
}
