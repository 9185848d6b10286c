//! A record as text that a person reads off paper and types.

mod find;
mod row;
pub(crate) mod symbols;

use noseward_lesson::Record;

use crate::error::{At, LinkError, LinkErrorKind};
use crate::frame::{self, VERSION};
use crate::link::{self, HASH_CHARS, Opened, is_link_of};
pub(crate) use row::ROW;
use row::{check_symbol, is_right};
use symbols::{Slot, symbol};

/// Bytes that a code stands for, at most: as many as a link holds.
const MOST_BYTES: usize = HASH_CHARS / 4 * 3;
/// `R`, in front of the version.
pub(crate) const KIND: u8 = 24;
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
    let mut data = vec![KIND, VERSION];
    data.extend(symbols::pack(&frame::encode(record)));
    // The first row tells how long the code is, so it is always a whole one.
    data.resize(data.len().max(ROW - 1), 0);
    rows(&data)
}

/// Symbols of any kind of code, kind and version in front, in rows with their check
/// symbols.
pub(crate) fn rows(data: &[u8]) -> String {
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

/// A code without what stands between its characters, as a QR symbol holds it: capital
/// letters and digits only, which takes the least room there.
#[must_use]
pub fn compact(code: &str) -> String {
    code.chars().filter(char::is_ascii_alphanumeric).collect()
}

/// Whether a text begins as a code does, rather than as a link, a file or a sentence.
///
/// White space and `#` in front do not count. A code with wrong characters still looks
/// like one, except that words such as "River", whose second letter could be meant for a
/// 1, must go on as a right row does.
#[must_use]
pub fn looks_like_code(text: &str) -> bool {
    looks_like(KIND, text)
}

/// [`looks_like_code`] for any kind of code.
pub(crate) fn looks_like(kind: u8, text: &str) -> bool {
    let Some(body) = body(kind, text) else { return false };
    let (mut row, mut word, mut wrong) = (Vec::new(), None, 0);
    for c in body.chars().take(LOOK) {
        if c.is_whitespace() {
            word.get_or_insert(row.len());
        } else if let Some(slot) = symbol(c) {
            row.push(slot);
            wrong += usize::from(slot.is_err());
        }
        // A hand makes slips; a picture read as text has hardly a character that is right.
        if wrong > ROW / 5 || word.is_some_and(|word| word < 4) {
            return false;
        }
        if row.len() == ROW {
            break;
        }
    }
    let is_typed_1 = body.chars().nth(1).is_some_and(|c| c.is_ascii_digit());
    word.unwrap_or(row.len()) >= 4
        && row.len() >= 8
        && wrong <= row.len() / 5
        && (is_typed_1 || row.len() == ROW && is_right(1, &row))
}

/// Reads a code. Capital or small letters, spaces, dashes, full stops and line breaks are
/// all the same; `O` is 0, `I` and `L` are 1. What follows the end that the code itself
/// announces is ignored, as with a link.
///
/// Takes any text, of any length; the work is bounded.
///
/// # Errors
///
/// [`LinkError`]; most name the row. No wrong character is guessed.
pub fn open_code(text: &str) -> Result<Record, LinkError> {
    open(text).map_err(|kind| kind.at(At::Code))
}

fn open(text: &str) -> Result<Record, LinkErrorKind> {
    let data = read(KIND, text, |front| {
        let bytes =
            frame::announced(&symbols::unpack(front)).ok_or(LinkErrorKind::Changed)?;
        if bytes > MOST_BYTES {
            return Err(LinkErrorKind::TooLarge { bytes });
        }
        Ok(symbols::count(bytes))
    })?;
    match frame::open(&symbols::unpack(&data))? {
        Opened::Record(record) => Ok(record),
        _ => Err(LinkErrorKind::Changed),
    }
}

/// Reads a code of some kind: the symbols behind kind and version, of right rows.
///
/// `announced` tells from the symbols of the first row, which is right, how many there are
/// in all.
///
/// # Errors
///
/// [`LinkErrorKind`]: those of `announced`, and what the rows tell.
pub(crate) fn read(
    kind: u8,
    text: &str,
    announced: impl Fn(&[u8]) -> Result<usize, LinkErrorKind>,
) -> Result<Vec<u8>, LinkErrorKind> {
    let body = body(kind, text).ok_or(LinkErrorKind::Nothing)?;
    let mut slots = body.chars().filter_map(symbol);
    let mut taken: Vec<Slot> = slots.by_ref().take(ROW).collect();
    match taken.get(1) {
        Some(&Ok(VERSION)) => {}
        Some(&Ok(version @ 1..=9)) => {
            return Err(LinkErrorKind::Newer { version: version.into() });
        }
        _ => return Err(LinkErrorKind::Nothing),
    }
    if taken.len() < ROW {
        return Err(LinkErrorKind::EndsEarly { row: 1 });
    }
    if !is_right(1, &taken) {
        return Err(find::in_row(1, &taken));
    }
    let count = MARK + announced(&data(&taken)[MARK..])?;
    let whole = slots_of(count).max(ROW);
    // One row more shows whether a row stands there twice.
    taken.extend(slots.take(whole));
    if let Some(fault) = find::find(&taken, whole) {
        return Err(fault);
    }
    Ok(data(&taken[..whole]).split_off(MARK))
}

/// Slots of so many symbols, check symbols included.
fn slots_of(count: usize) -> usize {
    count + count.div_ceil(ROW - 1)
}

/// What follows a code whose kind, version and other symbols are so many.
pub(crate) fn behind(count: usize, text: &str) -> &str {
    let mut slots = text.char_indices().filter(|&(_, c)| symbol(c).is_some());
    let last = slots.nth(slots_of(count) - 1);
    last.map_or("", |(i, c)| &text[i + c.len_utf8()..])
}

/// The text from the kind on, if it begins with that and a digit, and not as a link does.
fn body(kind: u8, text: &str) -> Option<&str> {
    let text = link::body(text);
    let mut front = text.chars();
    let is_mark = front.next().and_then(symbol) == Some(Ok(kind))
        && matches!(front.next().and_then(symbol), Some(Ok(1..=9)));
    (is_mark && !is_link_of(symbols::small_letter(kind), text)).then_some(text)
}

/// Whether a text begins with the first row of a kind of code, without a slip.
pub(crate) fn begins_with_right_row(kind: u8, text: &str) -> bool {
    let chars = text.chars().filter(|c| !c.is_whitespace());
    let row: Vec<Slot> = chars.map_while(symbol).take(ROW).collect();
    let is_mark = row.first() == Some(&Ok(kind)) && matches!(row.get(1), Some(Ok(1..=9)));
    is_mark && is_right(1, &row)
}

/// The symbols of right rows, without their check symbols.
fn data(slots: &[Slot]) -> Vec<u8> {
    let rows = slots.chunks(ROW).map(|row| &row[..row.len() - 1]);
    rows.flatten().filter_map(|slot| slot.ok()).collect()
}
