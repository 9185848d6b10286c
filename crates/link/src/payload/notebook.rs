//! A notebook in bytes.
//!
//! Fields are those of [`fields`], in their order: which of them there are, as bits, and
//! then those. A rocket is what differs from the one before.

use noseward_lesson::{
    DeletedParts, Group, Notebook, NotebookParts, Record, Seal, TrialParts,
};
use serde::{Deserialize, Serialize};

use super::codes::{COLOURS, code};
use super::numbers::{PER_MM, Steps};
use super::{TAIL, VERSION, behind_tail, design, flags, put, swings, take};
use crate::NotebookFile;
use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields::{self, Slot, Visit};
use crate::frame;

/// Kind and version, as the checksum covers them.
pub(crate) const NOTEBOOK: [u8; 2] = [b'n', frame::VERSION];

/// The rocket that was on the page goes along.
const ROCKET: u8 = 1 << 4;
/// It was swung.
const SWUNG: u8 = 1 << 5;

/// Whose a notebook or a result is.
#[derive(Serialize, Deserialize)]
pub(crate) struct GroupBytes {
    colour: u8,
    number: u8,
}

impl GroupBytes {
    pub(crate) fn of(group: Group) -> Self {
        Self { colour: code(COLOURS, &group.colour), number: group.number() }
    }

    pub(crate) fn group(&self) -> Result<Group, LinkErrorKind> {
        fields::group(self.colour, self.number).ok_or(LinkErrorKind::Changed)
    }
}

/// A number in four bytes.
#[derive(Serialize, Deserialize)]
struct Four(#[serde(with = "postcard::fixint::le")] u32);

/// A rocket, as what differs from the one before it: its payload begins and ends as that
/// one's does.
#[derive(Serialize, Deserialize)]
struct RocketBytes<'a> {
    front: u16,
    back: u16,
    between: &'a [u8],
}

/// The bytes of a notebook, framed; `None` where they could not hold all of it.
pub(crate) fn encode(file: &NotebookFile) -> Option<Vec<u8>> {
    let file = file.clone().rounded();
    let payload = write(&file);
    let holds_all = read(&payload).is_ok_and(|read| read == file);
    holds_all.then(|| frame::framed(NOTEBOOK, &payload))
}

/// The bytes of a notebook, framed, with rockets as a [link](crate::hash()) holds them: what is
/// beyond the range of a number becomes its end.
pub(crate) fn encode_within_range(file: &NotebookFile) -> Vec<u8> {
    frame::framed(NOTEBOOK, &write(&file.clone().rounded()))
}

/// The notebook of a frame.
///
/// # Errors
///
/// As [`read`], and [`LinkErrorKind::CutShort`].
pub(crate) fn open(bytes: &[u8]) -> Result<NotebookFile, LinkErrorKind> {
    read(frame::unframed(NOTEBOOK, bytes)?)
}

fn write(file: &NotebookFile) -> Vec<u8> {
    let mut parts = NotebookParts::from(file.notebook.clone());
    let mut writer = Writer::default();
    let form = match &file.rocket {
        None => VERSION,
        Some(rocket) if rocket.has_swings() => VERSION | ROCKET | SWUNG,
        Some(_) => VERSION | ROCKET,
    };
    put(&mut writer.bytes, &form);
    put(&mut writer.bytes, &GroupBytes::of(parts.group));
    writer.record(|record| fields::settings(&mut parts, record));
    writer.record(|record| fields::conclusion(&mut parts.conclusion, record));
    put(&mut writer.bytes, &parts.plans);
    if let Some(rocket) = &file.rocket {
        let bytes = writer.rocket(rocket);
        writer.bytes.extend(bytes);
        if rocket.has_swings() {
            writer.bytes.extend(swings::write(&rocket.swings));
        }
    }
    put(&mut writer.bytes, &byte(parts.trials.len()));
    for trial in &mut parts.trials {
        writer.record(|record| fields::trial(trial, record));
    }
    put(&mut writer.bytes, &byte(parts.deleted.len()));
    for DeletedParts { place, trial } in &mut parts.deleted {
        put(&mut writer.bytes, &byte(*place));
        writer.record(|record| fields::trial(trial, record));
    }
    writer.bytes
}

/// The notebook of a payload.
///
/// # Errors
///
/// [`LinkErrorKind::Newer`] and [`LinkErrorKind::Unknown`] for what another version wrote,
/// [`LinkErrorKind::Changed`] where it holds what is never written.
pub(crate) fn read(payload: &[u8]) -> Result<NotebookFile, LinkErrorKind> {
    let mut reader = Reader { rest: payload, before: Vec::new() };
    let read = reader.notebook().map_err(|kind| match kind {
        // Its checksum agrees: nothing was cut.
        LinkErrorKind::CutShort => LinkErrorKind::Changed,
        kind => kind,
    })?;
    if !reader.rest.is_empty() {
        return Err(LinkErrorKind::Changed);
    }
    Ok(read)
}

#[derive(Default)]
struct Writer {
    bytes: Vec<u8>,
    /// The payload of the rocket before.
    before: Vec<u8>,
}

impl Writer {
    /// Fields that go together: which of them there are, and then those.
    fn record(
        &mut self,
        fields: impl FnOnce(&mut RecordWriter<'_>) -> Result<(), LinkError>,
    ) {
        let mut record =
            RecordWriter { writer: self, field: 0, present: 0, values: Vec::new() };
        fields::written(fields(&mut record));
        let RecordWriter { present, values, .. } = record;
        put(&mut self.bytes, &present);
        self.bytes.extend(values);
    }

    fn rocket(&mut self, record: &Record) -> Vec<u8> {
        let design = design::write(&record.design);
        let alike = |pairs: &mut dyn Iterator<Item = (&u8, &u8)>| {
            pairs.take_while(|(a, b)| a == b).count()
        };
        let front = alike(&mut design.iter().zip(&self.before));
        let (rest, rest_before) = (&design[front..], &self.before[front..]);
        let back = alike(&mut rest.iter().rev().zip(rest_before.iter().rev()));
        let mut bytes = Vec::new();
        put(
            &mut bytes,
            &RocketBytes {
                front: u16::try_from(front).expect("a rocket takes a few thousand bytes"),
                back: u16::try_from(back).expect("a rocket takes a few thousand bytes"),
                between: &rest[..rest.len() - back],
            },
        );
        self.before = design;
        bytes
    }
}

/// A length as steps, or, where their range ends, as that of an empty one and the number
/// itself.
fn put_length(to: &mut Vec<u8>, mm: f64) {
    let steps = Steps::new(mm, PER_MM);
    if mm.is_nan() || steps.value(PER_MM).to_bits() == mm.to_bits() {
        put(to, &steps);
    } else {
        put(to, &(Steps::optional(None, PER_MM), mm));
    }
}

/// Writes the fields of one record.
struct RecordWriter<'a> {
    writer: &'a mut Writer,
    /// The place of the next field.
    field: u32,
    present: u64,
    values: Vec<u8>,
}

impl Visit for RecordWriter<'_> {
    fn visit(&mut self, _: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        let bit = 1 << self.field;
        self.field += 1;
        if slot.is_empty() {
            return Ok(());
        }
        self.present |= bit;
        let to = &mut self.values;
        match slot {
            Slot::Mm(mm) => put_length(to, mm.unwrap_or(f64::NAN)),
            Slot::Count(count, ..) => put(to, &count.unwrap_or_default()),
            Slot::Choice(code, _) => put(to, &code.unwrap_or_default()),
            Slot::Text(text, _) => put(to, &text.as_str()),
            Slot::Flag(_) => {}
            Slot::Seal(seal) => put(to, &Four(seal.map_or(0, |Seal(seal)| seal))),
            Slot::Setup(value, field) => {
                let grid = swings::grid(field);
                let stored = grid.write(value.unwrap_or(f64::NAN));
                match u8::try_from(stored) {
                    Ok(stored) if grid.is_byte() => put(to, &stored),
                    _ => put(to, &stored),
                }
            }
            Slot::Rocket(record) => to.extend(self.writer.rocket(record)),
        }
        Ok(())
    }

    fn fault(&self, _: &str, kind: LinkErrorKind) -> LinkError {
        kind.at(At::Link)
    }
}

struct Reader<'a> {
    rest: &'a [u8],
    /// The payload of the rocket before.
    before: Vec<u8>,
}

impl<'a> Reader<'a> {
    fn take<T: Deserialize<'a>>(&mut self) -> Result<T, LinkErrorKind> {
        let (value, rest) = take(self.rest)?;
        self.rest = rest;
        Ok(value)
    }

    fn notebook(&mut self) -> Result<NotebookFile, LinkErrorKind> {
        let form: u8 = self.take()?;
        let flags = flags(form, ROCKET | SWUNG)?;
        let group: GroupBytes = self.take()?;
        let mut parts =
            NotebookParts { group: group.group()?, ..NotebookParts::default() };
        self.record(|record| fields::settings(&mut parts, record))?;
        self.record(|record| fields::conclusion(&mut parts.conclusion, record))?;
        parts.plans = self.take()?;
        let mut rocket = None;
        if flags & ROCKET != 0 {
            let mut record = Record::from(self.rocket()?);
            if flags & SWUNG != 0 {
                let read = swings::read(self.rest)?.ok_or(LinkErrorKind::Changed)?;
                (record.swings, self.rest) = read;
            }
            rocket = Some(record);
        } else if flags & SWUNG != 0 {
            return Err(LinkErrorKind::Changed);
        }
        for _ in 0..self.take::<u8>()? {
            parts.trials.push(self.trial()?);
        }
        for _ in 0..self.take::<u8>()? {
            let place = usize::from(self.take::<u8>()?);
            parts.deleted.push(DeletedParts { place, trial: self.trial()? });
        }
        if flags & TAIL != 0 {
            self.rest = behind_tail(self.rest)?;
        }
        let notebook = Notebook::try_from(parts);
        let notebook = notebook.map_err(|_| LinkErrorKind::Changed)?;
        Ok(NotebookFile { notebook, rocket }.rounded())
    }

    fn trial(&mut self) -> Result<TrialParts, LinkErrorKind> {
        let mut parts = TrialParts::default();
        self.record(|record| fields::trial(&mut parts, record))?;
        Ok(parts)
    }

    /// Fields that go together.
    fn record(
        &mut self,
        fields: impl FnOnce(&mut RecordReader<'a, '_>) -> Result<(), LinkError>,
    ) -> Result<(), LinkErrorKind> {
        let present = self.take()?;
        let mut record = RecordReader { reader: self, field: 0, present };
        fields(&mut record).map_err(|error| error.kind)?;
        // A field that is not known here.
        match record.present >> record.field {
            0 => Ok(()),
            _ => Err(LinkErrorKind::Newer { version: 2 }),
        }
    }

    fn rocket(&mut self) -> Result<noseward_stability::Design, LinkErrorKind> {
        let RocketBytes { front, back, between } = self.take()?;
        let (front, back) = (usize::from(front), usize::from(back));
        let from = self.before.len().checked_sub(back).ok_or(LinkErrorKind::Changed)?;
        let front = self.before.get(..front).ok_or(LinkErrorKind::Changed)?;
        let payload = [front, between, &self.before[from..]].concat();
        let read = design::read(&payload)?;
        let is_alone = !read.record.has_swings();
        if !read.missing.is_empty() || !read.rest.is_empty() || !is_alone {
            return Err(LinkErrorKind::Changed);
        }
        let design = read.record.design;
        self.before = payload;
        Ok(design)
    }
}

/// Reads the fields of one record.
struct RecordReader<'a, 'b> {
    reader: &'b mut Reader<'a>,
    /// The place of the next field.
    field: u32,
    present: u64,
}

impl RecordReader<'_, '_> {
    fn read(&mut self, slot: Slot<'_>) -> Result<(), LinkErrorKind> {
        let reader = &mut *self.reader;
        match slot {
            Slot::Mm(mm) => {
                *mm = Some(match reader.take::<Steps>()?.optional_value(PER_MM) {
                    Some(mm) => mm,
                    None => reader.take()?,
                });
            }
            Slot::Count(count, least, most) => {
                let read = reader.take()?;
                if !(least..=most).contains(&read) {
                    return Err(LinkErrorKind::Changed);
                }
                *count = Some(read);
            }
            Slot::Choice(code, keys) => {
                let read: u8 = reader.take()?;
                if usize::from(read) >= keys.len() {
                    return Err(LinkErrorKind::Changed);
                }
                *code = Some(read);
            }
            Slot::Text(text, _) => *text = reader.take()?,
            Slot::Flag(is) => *is = true,
            Slot::Seal(seal) => *seal = Some(Seal(reader.take::<Four>()?.0)),
            Slot::Setup(value, field) => {
                let grid = swings::grid(field);
                let is_byte = grid.is_byte();
                let stored =
                    if is_byte { reader.take::<u8>()?.into() } else { reader.take()? };
                *value = Some(grid.read::<u16>(stored)?);
            }
            Slot::Rocket(record) => *record = reader.rocket()?.into(),
        }
        Ok(())
    }
}

impl Visit for RecordReader<'_, '_> {
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        let is_there = self.present >> self.field & 1 == 1;
        self.field += 1;
        if !is_there {
            return match slot {
                Slot::Rocket(_) => Err(self.fault(key, LinkErrorKind::Changed)),
                _ => Ok(()),
            };
        }
        self.read(slot).map_err(|kind| kind.at(At::Link))
    }

    /// What was never written cannot be told more of.
    fn fault(&self, _: &str, _: LinkErrorKind) -> LinkError {
        LinkErrorKind::Changed.at(At::Link)
    }
}

/// A count that is bounded well below 256.
fn byte(count: usize) -> u8 {
    u8::try_from(count).unwrap_or(u8::MAX)
}

#[cfg(test)]
mod tests {
    use super::super::tail;
    use super::*;
    use SwingOutcome::{Steady, TailFirst, Wobbling};
    use noseward_lesson::{Colour, Draft, End, LeftOut, SwingOutcome, Swings, Telling};
    use noseward_stability::{Design, Example, SwingSetup};

    fn small() -> NotebookFile {
        let mut notebook = Notebook::default();
        notebook.group = Group::new(Colour::Blue, 4).unwrap();
        notebook.allows_two_changes = true;
        notebook.conclusion.claim = "C".into();
        assert!(notebook.add_plan("fins"));
        notebook.begin(&Record::default()).unwrap();
        let trial = notebook.trial_mut(1).unwrap();
        trial.draft = Draft { outcome: Some(Steady), because: "a".into() };
        assert!(notebook.lock(1));
        let setup = SwingSetup {
            string_m: 1.5,
            arm_m: 0.7,
            turns_per_s: 1.0,
            air_density_kg_m3: 1.225,
        };
        let seen = Swings::new(setup, [TailFirst]).unwrap();
        notebook.swing(&seen);
        let trial = notebook.trial_mut(1).unwrap();
        trial.note = "é".into();
        trial.draft.outcome = Some(Wobbling);
        trial.measured.rocket_length_mm = Some(400.0);
        trial.measured.mass.mm[1] = Some(201.5);
        trial.measured.mass.left_out = Some(LeftOut { reading: 1, reason: "x".into() });
        trial.measured.pressure.from = End::Tail;
        NotebookFile { notebook, rocket: Some(Record::default()) }
    }

    /// Written out by hand from the tables of `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        let file = small();
        let seal = file.notebook.trial(1).unwrap().seal().unwrap().0.to_le_bytes();
        let all = file.notebook.seal().unwrap().0.to_le_bytes();
        #[rustfmt::skip]
        let bytes = [
            // Settings and conclusion, each with the bits of the fields that are there.
            &[0x11,  4, 4,  31, 1, 0, 1][..], &all, &[1, 1, b'C'],
            &[1,  4, b'f', b'i', b'n', b's'],
            &[0, 0, 4, 1, 0, 0, 0],
            // Bits 0, 3, 4, 9, 11 to 13, 20, 21, 23 to 27 and 33 to 35.
            &[1,  0x99, 0xf4, 0xc0, 0xfd, 0xe0, 0x01],
            &[1,  4, 0, 0,  0xa0, 0x0f,  0xdf, 0x07,  2,  1, b'x',  1,  0,  1, b'a'],
            &[126, 81, 21, 146,  3,  2, 0xc3, 0xa9], &seal, &[1],
            &[0],
        ];
        let bytes = bytes.concat();
        assert_eq!(write(&file), bytes);
        assert_eq!(read(&bytes), Ok(file));
    }

    /// Only what is not told at once takes a byte.
    #[test]
    fn what_is_told_when_stands_behind_the_seal() {
        let mut file = small();
        let usual = write(&file);
        for (telling, code) in [(Telling::Verdict, 1), (Telling::Points, 2)] {
            file.notebook.telling = telling;
            let mut bytes = usual.clone();
            bytes[3] |= 64;
            bytes.insert(11, code);
            assert_eq!(write(&file), bytes);
            assert_eq!(read(&bytes), Ok(file.clone()));
            bytes[11] = 3;
            assert_eq!(read(&bytes), Err(LinkErrorKind::Changed));
        }
    }

    /// Rockets one after the other that differ in one thing, in all, and in nothing.
    #[test]
    fn a_rocket_is_what_differs_from_the_one_before() {
        let mut shorter = Example::Razorbill.design();
        shorter.sections[1].length_mm -= 10.0;
        let designs = [
            Example::Razorbill.design(),
            shorter.clone(),
            shorter,
            Design::default(),
            Example::Tern.design(),
        ];
        let mut writer = Writer::default();
        let sizes = designs.each_ref().map(|design| {
            let before = writer.bytes.len();
            let bytes = writer.rocket(&design.clone().into());
            writer.bytes.extend(bytes);
            writer.bytes.len() - before
        });
        let alone = design::write(&designs[0]).len() + 3;
        assert_eq!((sizes[0], sizes[2]), (alone, 3));
        assert!(sizes[1] <= 3 + 2, "{sizes:?}");
        let mut reader = Reader { rest: &writer.bytes, before: Vec::new() };
        for design in designs {
            assert_eq!(reader.rocket(), Ok(design));
        }
        assert!(reader.rest.is_empty());
    }

    #[test]
    fn what_is_never_written_is_refused() {
        let good = write(&small());
        for end in 0..good.len() {
            assert_eq!(read(&good[..end]), Err(LinkErrorKind::Changed), "{end}");
        }
        // A colour, a number, a level and a kind of help that are none; no number in hand;
        // swings without a rocket, and too many plans.
        let plans = 3 + 8 + 3;
        for (place, value) in
            [(1, 12), (2, 41), (4, 4), (5, 3), (6, 0), (0, 0x21), (plans, 13)]
        {
            let mut bad = good.clone();
            bad[place] = value;
            assert_eq!(read(&bad), Err(LinkErrorKind::Changed), "{place}");
        }
        let more = [&good[..], &[0]].concat();
        assert_eq!(read(&more), Err(LinkErrorKind::Changed));
        // A rocket that is longer at its ends than the one before.
        let mut reader = Reader { rest: &[1, 0, 0], before: Vec::new() };
        assert_eq!(reader.rocket(), Err(LinkErrorKind::Changed));
    }

    #[test]
    fn what_comes_later_is_passed_over_or_refused() {
        let good = write(&small());
        let with = |values: &[(bool, &str, &[u8])]| {
            let mut bytes = [&good[..], &tail(values)].concat();
            bytes[0] |= TAIL;
            read(&bytes)
        };
        assert_eq!(with(&[(false, "weather", b"windy")]), Ok(small()));
        let unknown = LinkErrorKind::Unknown { key: "teams".into() };
        assert_eq!(with(&[(true, "teams", b"2")]), Err(unknown));
        // A version, a bit of the first byte, and a field that are not known here.
        // The settings' bits fill the first byte of their varint.
        for (place, bytes) in [(0, &[0x12][..]), (0, &[0x91]), (3, &[0x80 | 31, 2])] {
            let mut newer = good.clone();
            newer.splice(place..=place, bytes.iter().copied());
            let error = LinkErrorKind::Newer { version: 2 };
            assert_eq!(read(&newer), Err(error), "{place}");
        }
    }

    #[test]
    fn what_has_no_room_is_not_written() {
        let mut file = small();
        assert!(encode(&file).is_some());
        for mm in [4000.0, -3276.7, 1e300] {
            let trial = file.notebook.trial_mut(1).unwrap();
            trial.measured.rocket_length_mm = Some(mm);
            assert_eq!(open(&encode(&file).unwrap()), Ok(file.clone()));
        }
        let mut many = small();
        let mut record = Record::from(Example::Razorbill.design());
        record.design.weights = vec![record.design.weights[0].clone(); 40];
        many.rocket = Some(record);
        assert_eq!(encode(&many), None);
        let kept = open(&encode_within_range(&many)).unwrap();
        assert_eq!(kept.notebook, many.notebook);
        assert!(
            kept.rocket.unwrap().design.weights.len()
                > noseward_stability::limits::WEIGHTS
        );
    }

    /// The seal travels as it is written: with another prediction it does not agree.
    #[test]
    fn a_changed_prediction_shows() {
        let file = small();
        let good = write(&file);
        let seal = file.notebook.trial(1).unwrap().seal().unwrap().0.to_le_bytes();
        let at = good.windows(4).position(|four| four == seal).unwrap();
        // "a", the outcome in front of its length, an outcome that was seen, the note, and
        // the number, behind six bytes that tell which fields there are.
        let because = at - 3 - 1 - 4 - 1;
        let [outcome, seen, note] = [because - 2, at - 4, at - 1];
        assert_eq!((good[because], good[outcome], good[seen]), (b'a', 0, 3));
        for (place, value) in [(because, b'b'), (outcome, 3), (seen, 0), (at, !seal[0])] {
            let mut bad = good.clone();
            bad[place] = value;
            let read_bad = read(&bad).unwrap().notebook;
            assert!(read_bad.trials()[0].is_altered(), "{place}");
            // The seal itself is what the notebook's is over.
            assert_eq!(read_bad.is_altered(), place == at, "{place}");
            // Written anew, it still says so.
            let file = NotebookFile { notebook: read_bad, rocket: None };
            let again = read(&write(&file)).unwrap();
            assert_eq!(again, file);
        }
        // What is not sealed may be changed.
        let mut noted = good.clone();
        noted[note] = 0xa8;
        let noted = read(&noted).unwrap().notebook;
        assert!(!noted.trials()[0].is_altered() && !noted.is_altered());
        // Without the trial.
        let mut gone = good[..good.len() - 1].to_vec();
        let start = good.windows(2).position(|two| two == [1, 0x99]).unwrap();
        gone.truncate(start);
        gone.extend([0, 0]);
        gone[3] &= !8;
        gone.remove(6);
        assert!(read(&gone).unwrap().notebook.is_altered());
    }
}
