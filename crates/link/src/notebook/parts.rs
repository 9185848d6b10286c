//! A notebook as a sequence of symbols: each part is a code of its own.

use std::cell::Cell;

use super::NotebookFile;
use crate::code::{self, symbols};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::frame::{CRC, VERSION};
use crate::payload::notebook;

/// Bytes of the notebook in one part, at most: 300 characters without spaces.
const PART_BYTES: usize = 168;
/// Bytes of a text in which parts are looked for, at most: 256 KiB.
const TEXT_BYTES: usize = crate::file::FILE_BYTES;
/// `N`, in front of the version.
pub(crate) const KIND: u8 = 21;
/// Symbols of kind, version, number, how many, tie, length and check.
const HEAD: usize = 16;
/// Symbols in front of the check.
const BEFORE_CHECK: usize = 12;
const CHECK: usize = 4;
const TWENTY_BITS: u32 = (1 << 20) - 1;

/// How far a sequence has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// Parts that are there.
    pub have: u8,
    /// Parts that there are.
    pub of: u8,
    /// Those that the last text added.
    pub added: u8,
}

impl Progress {
    /// Whether every part is there.
    #[must_use]
    pub fn is_whole(self) -> bool {
        self.have == self.of
    }
}

/// The parts of one notebook, as they come in.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct QrSegments {
    tie: u32,
    parts: Vec<Option<Vec<u8>>>,
}

/// One part, read.
struct Part {
    head: Head,
    bytes: Vec<u8>,
}

#[derive(Clone, Copy)]
struct Head {
    number: u8,
    of: u8,
    tie: u32,
    length: usize,
    check: u32,
}

/// The codes for a notebook, each for a symbol of its own or to be typed: capital letters
/// and digits in groups of four and rows, as [`code`](crate::code()) gives them. Without
/// what stands between them, at most 300 characters; see [`compact`](crate::compact).
///
/// `None` where there would be more than 255, or where something in the notebook has no
/// room in the bytes: a file holds every notebook.
#[must_use]
pub fn notebook_parts(file: &NotebookFile) -> Option<Vec<String>> {
    spell(&notebook::encode(file)?)
}

fn spell(frame: &[u8]) -> Option<Vec<String>> {
    let size = frame.len().div_ceil(frame.len().div_ceil(PART_BYTES));
    let of = u8::try_from(frame.len().div_ceil(size)).ok()?;
    let tie = tie(frame);
    let parts = frame.chunks(size).zip(1..).map(|(bytes, number)| {
        let length = bytes.len();
        let mut data = vec![KIND, VERSION];
        for (value, symbols) in
            [(number, 2), (of.into(), 2), (tie, 4), (u32::try_from(length).ok()?, 2)]
        {
            push(&mut data, value, symbols);
        }
        let packed = symbols::pack(bytes);
        let check = check(&data, &packed);
        push(&mut data, check, CHECK);
        data.extend(packed);
        Some(code::rows(&data))
    });
    parts.collect()
}

/// What tells that parts belong together: bits of the checksum of the whole.
fn tie(frame: &[u8]) -> u32 {
    let low = frame.first_chunk().copied().unwrap_or_default();
    u32::from_le_bytes(low) & TWENTY_BITS
}

/// The check over the symbols of a part, but for its own.
fn check(front: &[u8], data: &[u8]) -> u32 {
    let mut digest = CRC.digest();
    digest.update(front);
    digest.update(data);
    digest.finalize() & TWENTY_BITS
}

/// A number as symbols, the most significant first.
fn push(data: &mut Vec<u8>, value: u32, symbols: usize) {
    let symbol = |i| u8::try_from(value >> (5 * i) & 31).unwrap_or_default();
    data.extend((0..symbols).rev().map(symbol));
}

fn number(symbols: &[u8]) -> u32 {
    symbols.iter().fold(0, |number, &symbol| number << 5 | u32::from(symbol))
}

impl Head {
    /// The head from the symbols behind kind and version.
    fn read(symbols: &[u8]) -> Result<Self, LinkErrorKind> {
        let value = |from: usize, count| number(&symbols[from..from + count]);
        let small = |value| u8::try_from(value).map_err(|_| LinkErrorKind::Changed);
        let (number, of) = (small(value(0, 2))?, small(value(2, 2))?);
        let length = usize::from(u16::try_from(value(8, 2)).unwrap_or(u16::MAX));
        if number == 0 || number > of || length == 0 {
            return Err(LinkErrorKind::Changed);
        }
        if length > PART_BYTES {
            return Err(LinkErrorKind::TooLarge { bytes: length });
        }
        Ok(Self { number, of, tie: value(4, 4), length, check: value(10, CHECK) })
    }

    /// Symbols of the part, check symbols of the rows not counted.
    fn symbols(self) -> usize {
        HEAD + symbols::count(self.length)
    }
}

/// The part at the start of a text.
fn read(text: &str) -> Result<Part, LinkError> {
    let head = Cell::new(None);
    let read = code::read(KIND, text, |front| {
        let read = Head::read(front)?;
        head.set(Some(read));
        Ok(read.symbols() - 2)
    });
    let part = head.get().map(|head: Head| head.number);
    let wrong = |kind: LinkErrorKind| kind.at(At::Part(part));
    let data = read.map_err(wrong)?;
    let head = head.get().ok_or_else(|| wrong(LinkErrorKind::Nothing))?;
    let (front, data) = data.split_at(HEAD - 2);
    let before_check: Vec<u8> =
        [KIND, VERSION].iter().chain(&front[..BEFORE_CHECK - 2]).copied().collect();
    if check(&before_check, data) != head.check {
        return Err(wrong(LinkErrorKind::Changed));
    }
    Ok(Part { head, bytes: symbols::unpack(data) })
}

impl QrSegments {
    /// Adds the parts that a text holds, in any order and with other words between them.
    /// A part that is there already does no harm.
    ///
    /// # Errors
    ///
    /// [`LinkError`], for the first part that cannot be read or is of another notebook.
    /// The right ones of the same text are kept all the same; see
    /// [`progress`](Self::progress).
    pub fn add(&mut self, text: &str) -> Result<Progress, LinkError> {
        if text.len() > TEXT_BYTES {
            return Err(LinkErrorKind::TooLarge { bytes: text.len() }.at(At::Part(None)));
        }
        let (mut rest, mut within) = (text, false);
        let (mut added, mut found, mut fault) = (0, false, None);
        while let Some(c) = rest.chars().next() {
            let mut next = &rest[c.len_utf8()..];
            let begins =
                !within && matches!(c, 'N' | 'n') && code::looks_like(KIND, rest);
            within = crate::any::is_within(c);
            if begins {
                found = true;
                match read(rest) {
                    Ok(part) => {
                        (next, within) = (code::behind(part.head.symbols(), rest), false);
                        match self.keep(part) {
                            Ok(is_new) => added += u8::from(is_new),
                            Err(wrong) => _ = fault.get_or_insert(wrong),
                        }
                    }
                    Err(wrong) => _ = fault.get_or_insert(wrong),
                }
            }
            rest = next;
        }
        match fault {
            Some(fault) => Err(fault),
            None if !found => Err(LinkErrorKind::Nothing.at(At::Part(None))),
            None => Ok(Progress { added, ..self.progress() }),
        }
    }

    /// Keeps a part; whether it is new.
    fn keep(&mut self, Part { head, bytes }: Part) -> Result<bool, LinkError> {
        if self.parts.is_empty() {
            self.tie = head.tie;
            self.parts = vec![None; head.of.into()];
        }
        let other = Err(LinkErrorKind::OtherNotebook.at(At::Part(Some(head.number))));
        if self.tie != head.tie || self.parts.len() != usize::from(head.of) {
            return other;
        }
        match &mut self.parts[usize::from(head.number) - 1] {
            Some(known) if *known == bytes => Ok(false),
            Some(_) => other,
            empty => {
                *empty = Some(bytes);
                Ok(true)
            }
        }
    }

    /// How many parts are there, and how many there are; 0 of 0 before the first.
    #[must_use]
    pub fn progress(&self) -> Progress {
        let count = |parts: usize| u8::try_from(parts).unwrap_or(u8::MAX);
        let have = count(self.parts.iter().flatten().count());
        Progress { have, of: count(self.parts.len()), added: 0 }
    }

    /// The numbers of the parts that are not there, in order; empty before the first part
    /// too, when nobody knows how many there are.
    #[must_use]
    pub fn missing(&self) -> Vec<u8> {
        let numbered = (1..=u8::MAX).zip(&self.parts);
        numbered.filter(|(_, part)| part.is_none()).map(|(number, _)| number).collect()
    }

    /// The notebook, once every part is there; `None` before.
    ///
    /// # Errors
    ///
    /// [`LinkErrorKind::Changed`] where the parts make no notebook, and what a newer
    /// version wrote.
    #[must_use]
    pub fn notebook(&self) -> Option<Result<NotebookFile, LinkError>> {
        let whole = !self.parts.is_empty() && self.progress().is_whole();
        let frame: Vec<u8> = self.parts.iter().flatten().flatten().copied().collect();
        let open = || match notebook::open(&frame) {
            Ok(file) if tie(&frame) == self.tie => Ok(file),
            Err(kind) if kind != LinkErrorKind::CutShort => Err(kind),
            _ => Err(LinkErrorKind::Changed),
        };
        whole.then(|| open().map_err(|kind| kind.at(At::Part(None))))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::compact;
    use crate::frame::framed;

    /// From the tables of `FORMATS.md`: three bytes, with a checksum of which only the
    /// lower bits matter here.
    #[test]
    fn the_symbols_are_those_of_the_tables() {
        let bytes = [0x78, 0x56, 0x34, 0x12, 0xff, 0x00];
        let [part] = &spell(&bytes).unwrap()[..] else { panic!("one part") };
        // Tie 0x45678; length 6; 0x78563412ff00 in tens of symbols.
        let front = [21, 1, 0, 1, 0, 1, 8, 21, 19, 24, 0, 6];
        let data = [15, 1, 11, 3, 8, 4, 23, 31, 0, 0];
        assert_eq!(tie(&bytes), 0x45678);
        let sum = check(&front, &data);
        let check = [15, 10, 5, 0].map(|shift| u8::try_from(sum >> shift & 31).unwrap());
        let symbols = [&front[..], &check, &data].concat();
        assert_eq!(*part, code::rows(&symbols));
        assert!(part.starts_with("N101 01"));
        let read = read(part).ok().unwrap();
        assert_eq!((read.head.number, read.head.of, read.bytes), (1, 1, bytes.to_vec()));
    }

    #[test]
    fn parts_are_alike_and_short() {
        for length in [10, 168, 169, 336, 337, 5000, 42_840] {
            let parts = spell(&vec![7; length]).unwrap();
            assert_eq!(parts.len(), length.div_ceil(PART_BYTES), "{length}");
            let sizes: Vec<usize> =
                parts.iter().map(|part| compact(part).len()).collect();
            assert!(sizes.iter().all(|&size| size <= 300), "{length}: {sizes:?}");
        }
        assert_eq!(compact(&spell(&[7; 168]).unwrap()[0]).len(), 300);
        assert_eq!(spell(&[7; 42_841]), None);
    }

    /// Each part is right, and their tie too, and the whole is not.
    #[test]
    fn what_agrees_in_parts_only_is_no_notebook() {
        let mut frame = framed(notebook::NOTEBOOK, &[1; 400]);
        let mut parts = QrSegments::default();
        assert_eq!(parts.notebook(), None);
        for part in spell(&frame).unwrap() {
            parts.add(&part).unwrap();
        }
        assert_eq!(
            parts.notebook(),
            Some(Err(LinkErrorKind::Changed.at(At::Part(None))))
        );
        frame[9] ^= 1;
        let mut parts = QrSegments::default();
        parts.add(&spell(&frame).unwrap().join("\n")).unwrap();
        assert_eq!(
            parts.notebook(),
            Some(Err(LinkErrorKind::Changed.at(At::Part(None))))
        );
    }

    #[test]
    fn what_is_told_when_comes_along() {
        let mut file = NotebookFile::default();
        for telling in noseward_lesson::Telling::ALL {
            file.notebook.telling = telling;
            let mut parts = QrSegments::default();
            assert!(
                parts.add(&notebook_parts(&file).unwrap().concat()).unwrap().is_whole()
            );
            assert_eq!(parts.notebook(), Some(Ok(file.clone())));
        }
    }

    /// Parts of a notebook whose prediction was changed, under checks that agree.
    #[test]
    fn a_changed_prediction_shows() {
        let mut notebook = noseward_lesson::Notebook::default();
        notebook.begin(&noseward_lesson::Record::default()).unwrap();
        let trial = notebook.trial_mut(1).unwrap();
        trial.draft.outcome = Some(noseward_lesson::SwingOutcome::Steady);
        trial.draft.because = "heavy nose".into();
        assert!(notebook.lock(1));
        let file = NotebookFile { notebook, rocket: None };
        let frame = notebook::encode(&file).unwrap();
        let collected = |payload: &[u8]| {
            let mut parts = QrSegments::default();
            for part in spell(&framed(notebook::NOTEBOOK, payload)).unwrap() {
                parts.add(&part).unwrap();
            }
            parts.notebook().unwrap().unwrap()
        };
        // Checksum and length, which is less than 128, stand in front.
        let payload = &frame[5..];
        assert_eq!(collected(payload), file);
        let at = payload.windows(5).position(|bytes| bytes == b"heavy").unwrap();
        let mut changed = payload.to_vec();
        changed[at..at + 5].copy_from_slice(b"light");
        let trial = collected(&changed).notebook.trial(1).unwrap().clone();
        assert!(trial.is_altered());
        assert_eq!(trial.predictions().first().unwrap().because, "light nose");
    }

    /// A head that says what is never said, under checks that agree.
    #[test]
    fn nonsense_under_good_checks_is_refused() {
        for (number, of, length) in
            [(0, 1, 9), (2, 1, 9), (1, 0, 9), (1, 256, 9), (1, 1, 0), (1, 1, 169)]
        {
            let mut data = vec![KIND, VERSION];
            for (value, symbols) in [(number, 2), (of, 2), (0, 4), (length, 2), (0, 4)] {
                push(&mut data, value, symbols);
            }
            data.extend([0; 40]);
            let fault = QrSegments::default().add(&code::rows(&data)).unwrap_err();
            assert!(fault.at == At::Part(None), "{fault:?}");
        }
        let mut data = vec![KIND, VERSION];
        for (value, symbols) in [(1, 2), (1, 2), (0, 4), (25, 2), (0, 4)] {
            push(&mut data, value, symbols);
        }
        data.extend([1; 40]);
        let fault = QrSegments::default().add(&code::rows(&data)).unwrap_err();
        assert_eq!(fault, LinkErrorKind::Changed.at(At::Part(Some(1))));
    }
}
