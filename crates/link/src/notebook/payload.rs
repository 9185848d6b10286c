//! Version 1 of a notebook, and of one trial, in bytes. It stands for ever: what is here
//! is never changed, only mended where it cannot read what it wrote.
//!
//! The structs mirror the tables of `FORMATS.md`; the order of their fields is the format.

mod codes;

use noseward_lesson::{
    Conclusion, Deleted, Draft, End, Group, LeftOut, Measurements, Notebook, Point,
    Prediction, Predictions, REPEATS, Record, Seal, Trial, TrialParts,
};
use postcard::take_from_bytes;
use serde::{Deserialize, Serialize};

use super::{NotebookFile, SharedTrial};
use crate::link::v1::{self, PER_MM, Steps};
use crate::link::{Damage, frame, v2};

/// Kind and version, as the checksum covers them.
pub(super) const NOTEBOOK: [u8; 2] = [b'n', 1];
/// The same for one trial.
pub(super) const TRIAL: [u8; 2] = [b't', 1];

#[derive(Serialize, Deserialize)]
struct HeadN1<'a> {
    group: GroupN1,
    level: u8,
    support: u8,
    /// [`TWO_CHANGES`], [`ROCKET`].
    flags: u8,
    in_hand: Option<u16>,
    trials: u8,
    deleted: u8,
    plans: u8,
    claim: &'a str,
    evidence: &'a str,
    reason: &'a str,
    trust: &'a str,
}

const TWO_CHANGES: u8 = 1;
const ROCKET: u8 = 2;

#[derive(Serialize, Deserialize)]
pub(crate) struct GroupN1 {
    colour: u8,
    number: u8,
}

#[derive(Serialize, Deserialize)]
struct TrialN1<'a> {
    id: u16,
    compared_with: Option<u16>,
    altered: bool,
    seal: Option<SealN1>,
    plan: &'a str,
    note: &'a str,
    draft_outcome: Option<u8>,
    draft_because: &'a str,
    predictions: u8,
    measured: u16,
}

/// As it is written in the trial: it is not worked out anew.
#[derive(Serialize, Deserialize)]
struct SealN1(#[serde(with = "postcard::fixint::le")] u32);

#[derive(Serialize, Deserialize)]
struct PredictionN1<'a> {
    outcome: u8,
    swings_seen: u8,
    because: &'a str,
}

#[derive(Serialize, Deserialize)]
struct LeftOutN1<'a> {
    reading: u8,
    reason: &'a str,
}

/// A rocket, as what differs from the one before it: its payload of version 1 begins and
/// ends as that one's does.
#[derive(Serialize, Deserialize)]
struct RocketN1<'a> {
    has_swings: bool,
    front: u16,
    back: u16,
    between: &'a [u8],
}

// The bits of `TrialN1::measured`; the lower ten say which numbers follow.
const NUMBERS: u16 = 10;
const FROM_TAIL: [u16; 2] = [1 << 10, 1 << 11];
const LEFT_OUT: [u16; 2] = [1 << 12, 1 << 13];
const KNOWN_BITS: u16 = (1 << 14) - 1;

/// The bytes of a notebook, framed; `None` where they could not hold all of it.
pub(super) fn seal_notebook(file: &NotebookFile) -> Option<Vec<u8>> {
    let file = file.clone().rounded();
    let payload = write_notebook(&file);
    let holds_all = read_notebook(&payload).is_ok_and(|read| read == file);
    holds_all.then(|| framed(NOTEBOOK, &payload)).flatten()
}

/// The bytes of one trial, framed; `None` where they could not hold all of it.
pub(super) fn seal_trial(shared: &SharedTrial) -> Option<Vec<u8>> {
    let shared =
        SharedTrial { trial: shared.trial.clone().rounded(), group: shared.group };
    let payload = write_trial(&shared);
    let holds_all = read_trial(&payload).is_ok_and(|read| read == shared);
    holds_all.then(|| framed(TRIAL, &payload)).flatten()
}

fn framed(mark: [u8; 2], payload: &[u8]) -> Option<Vec<u8>> {
    let length = u16::try_from(payload.len()).ok()?;
    Some(frame::framed(&mark, length, payload))
}

/// The notebook of a frame.
///
/// # Errors
///
/// [`Damage::CutShort`] and [`Damage::Changed`].
pub(super) fn open_notebook(bytes: &[u8]) -> Result<NotebookFile, Damage> {
    read_notebook(frame::unframed(&NOTEBOOK, bytes)?)
}

fn write_notebook(file: &NotebookFile) -> Vec<u8> {
    let NotebookFile { notebook, rocket } = file;
    let Conclusion { claim, evidence, reason, trust } = &notebook.conclusion;
    let flag = |is: bool, flag| if is { flag } else { 0 };
    let mut writer = Writer::default();
    writer.put(&HeadN1 {
        group: GroupN1::of(notebook.group),
        level: codes::level_code(notebook.level),
        support: codes::support_code(notebook.support),
        flags: flag(notebook.allows_two_changes, TWO_CHANGES)
            | flag(rocket.is_some(), ROCKET),
        in_hand: notebook.in_hand().map(Trial::id),
        trials: byte(notebook.trials().len()),
        deleted: byte(notebook.deleted().len()),
        plans: byte(notebook.plans().len()),
        claim,
        evidence,
        reason,
        trust,
    });
    for plan in notebook.plans() {
        writer.put(plan);
    }
    if let Some(rocket) = rocket {
        writer.rocket(rocket);
    }
    for trial in notebook.trials() {
        writer.trial(trial);
    }
    for Deleted { place, trial } in notebook.deleted() {
        writer.put(&byte(*place));
        writer.trial(trial);
    }
    writer.bytes
}

fn write_trial(shared: &SharedTrial) -> Vec<u8> {
    let mut writer = Writer::default();
    writer.put(&GroupN1::of(shared.group));
    writer.trial(&shared.trial);
    writer.bytes
}

/// The notebook of a payload.
///
/// # Errors
///
/// [`Damage::Changed`] where it holds what is never written.
pub(super) fn read_notebook(payload: &[u8]) -> Result<NotebookFile, Damage> {
    let mut reader = Reader { rest: payload, before: Vec::new() };
    let head: HeadN1<'_> = reader.take()?;
    if head.flags & !(TWO_CHANGES | ROCKET) != 0 {
        return Err(Damage::Changed);
    }
    let mut notebook = Notebook::default();
    notebook.group = head.group.group()?;
    notebook.level = codes::level(head.level).ok_or(Damage::Changed)?;
    notebook.support = codes::support(head.support).ok_or(Damage::Changed)?;
    notebook.allows_two_changes = head.flags & TWO_CHANGES != 0;
    notebook.conclusion = Conclusion {
        claim: head.claim.into(),
        evidence: head.evidence.into(),
        reason: head.reason.into(),
        trust: head.trust.into(),
    };
    for _ in 0..head.plans {
        let added = notebook.add_plan(reader.take()?);
        added.then_some(()).ok_or(Damage::Changed)?;
    }
    let has_rocket = head.flags & ROCKET != 0;
    let rocket = if has_rocket { Some(reader.rocket()?) } else { None };
    let trials: Result<Vec<_>, _> = (0..head.trials).map(|_| reader.trial()).collect();
    let deleted: Result<Vec<_>, _> = (0..head.deleted)
        .map(|_| {
            let place: u8 = reader.take()?;
            Ok(Deleted { place: place.into(), trial: reader.trial()? })
        })
        .collect();
    let notebook = notebook.with_trials(trials?, deleted?, head.in_hand);
    let notebook = notebook.map_err(|_| Damage::Changed)?;
    reader.end(NotebookFile { notebook, rocket }.rounded())
}

/// The trial of a payload.
///
/// # Errors
///
/// [`Damage::Changed`] where it holds what is never written.
pub(super) fn read_trial(payload: &[u8]) -> Result<SharedTrial, Damage> {
    let mut reader = Reader { rest: payload, before: Vec::new() };
    let group = reader.take::<GroupN1>()?.group()?;
    let trial = reader.trial()?.rounded();
    reader.end(SharedTrial { group, trial })
}

impl GroupN1 {
    pub(crate) fn of(group: Group) -> Self {
        Self { colour: codes::colour_code(group.colour), number: group.number() }
    }

    pub(crate) fn group(&self) -> Result<Group, Damage> {
        let colour = codes::colour(self.colour).ok_or(Damage::Changed)?;
        Group::new(colour, self.number).ok_or(Damage::Changed)
    }
}

#[derive(Default)]
struct Writer {
    bytes: Vec<u8>,
    /// The rocket before, as version 1 of a link writes it.
    before: Vec<u8>,
}

impl Writer {
    fn put(&mut self, value: &impl Serialize) {
        let more = postcard::to_allocvec(value).expect("every field can be written");
        self.bytes.extend_from_slice(&more);
    }

    fn rocket(&mut self, record: &Record) {
        let design = v1::write(&record.design);
        let alike = |pairs: &mut dyn Iterator<Item = (&u8, &u8)>| {
            pairs.take_while(|(a, b)| a == b).count()
        };
        let front = alike(&mut design.iter().zip(&self.before));
        let (rest, rest_before) = (&design[front..], &self.before[front..]);
        let back = alike(&mut rest.iter().rev().zip(rest_before.iter().rev()));
        let has_swings = record.has_swings();
        self.put(&RocketN1 {
            has_swings,
            front: u16::try_from(front).expect("a rocket takes a few thousand bytes"),
            back: u16::try_from(back).expect("a rocket takes a few thousand bytes"),
            between: &rest[..rest.len() - back],
        });
        if has_swings {
            self.bytes.extend(v2::write_swings(&record.swings));
        }
        self.before = design;
    }

    fn trial(&mut self, trial: &Trial) {
        let measured = &trial.measured;
        let numbers = numbers(measured);
        let mut bits = 0;
        for (i, number) in numbers.iter().enumerate() {
            bits |= u16::from(number.is_some()) << i;
        }
        for (i, point) in Point::ALL.into_iter().enumerate() {
            let readings = measured.of(point);
            if readings.from == End::Tail {
                bits |= FROM_TAIL[i];
            }
            if readings.left_out.is_some() {
                bits |= LEFT_OUT[i];
            }
        }
        let versions = trial.predictions().versions();
        self.put(&TrialN1 {
            id: trial.id(),
            compared_with: trial.compared_with(),
            altered: trial.is_altered(),
            seal: trial.seal().map(|seal| SealN1(seal.0)),
            plan: &trial.plan,
            note: &trial.note,
            draft_outcome: trial.draft.outcome.map(v2::outcome_code),
            draft_because: &trial.draft.because,
            predictions: byte(versions.len()),
            measured: bits,
        });
        for &number in numbers.iter().flatten() {
            self.put(&Steps::new(number, PER_MM));
        }
        for point in Point::ALL {
            if let Some(LeftOut { reading, reason }) = &measured.of(point).left_out {
                self.put(&LeftOutN1 { reading: byte(*reading), reason });
            }
        }
        for version in versions {
            self.put(&PredictionN1 {
                outcome: v2::outcome_code(version.outcome),
                swings_seen: version.swings_seen,
                because: &version.because,
            });
        }
        self.rocket(&trial.record());
    }
}

/// The ten numbers of a trial, in the order of their bits.
fn numbers(measured: &Measurements) -> [Option<f64>; NUMBERS as usize] {
    let Measurements { rocket_length_mm, cutout_length_mm, mass, pressure } = measured;
    let [m1, m2, m3] = mass.mm;
    let [p1, p2, p3] = pressure.mm;
    [
        *rocket_length_mm,
        *cutout_length_mm,
        mass.guess_mm,
        m1,
        m2,
        m3,
        pressure.guess_mm,
        p1,
        p2,
        p3,
    ]
}

/// Where the ten numbers go.
fn numbers_mut(measured: &mut Measurements) -> impl Iterator<Item = &mut Option<f64>> {
    let Measurements { rocket_length_mm, cutout_length_mm, mass, pressure } = measured;
    [rocket_length_mm, cutout_length_mm, &mut mass.guess_mm]
        .into_iter()
        .chain(&mut mass.mm)
        .chain([&mut pressure.guess_mm])
        .chain(&mut pressure.mm)
}

struct Reader<'a> {
    rest: &'a [u8],
    before: Vec<u8>,
}

impl<'a> Reader<'a> {
    fn take<T: Deserialize<'a>>(&mut self) -> Result<T, Damage> {
        let (value, rest) = take_from_bytes(self.rest).map_err(|_| Damage::Changed)?;
        self.rest = rest;
        Ok(value)
    }

    /// What was read, unless something follows it.
    fn end<T>(self, read: T) -> Result<T, Damage> {
        if self.rest.is_empty() { Ok(read) } else { Err(Damage::Changed) }
    }

    fn rocket(&mut self) -> Result<Record, Damage> {
        let RocketN1 { has_swings, front, back, between } = self.take()?;
        let (front, back) = (usize::from(front), usize::from(back));
        let from = self.before.len().checked_sub(back).ok_or(Damage::Changed)?;
        let front = self.before.get(..front).ok_or(Damage::Changed)?;
        let design = [front, between, &self.before[from..]].concat();
        let read = v1::read(&design)?;
        if !read.missing.is_empty() || !read.rest.is_empty() {
            return Err(Damage::Changed);
        }
        let mut record = Record::from(read.design.cleaned());
        if has_swings {
            let swings = v2::read_swings(self.rest)?;
            (record.swings, self.rest) = swings.ok_or(Damage::Changed)?;
        }
        self.before = design;
        Ok(record)
    }

    fn trial(&mut self) -> Result<Trial, Damage> {
        let head: TrialN1<'_> = self.take()?;
        let bits = head.measured;
        if bits & !KNOWN_BITS != 0 {
            return Err(Damage::Changed);
        }
        let mut measured = Measurements::default();
        for (i, number) in numbers_mut(&mut measured).enumerate() {
            if bits & 1 << i != 0 {
                let number_of_steps: Steps = self.take()?;
                *number = number_of_steps.optional_value(PER_MM);
            }
        }
        for (i, point) in Point::ALL.into_iter().enumerate() {
            let readings = measured.of_mut(point);
            if bits & FROM_TAIL[i] != 0 {
                readings.from = End::Tail;
            }
            if bits & LEFT_OUT[i] != 0 {
                let LeftOutN1 { reading, reason } = self.take()?;
                let reading = usize::from(reading);
                if reading >= REPEATS {
                    return Err(Damage::Changed);
                }
                readings.left_out = Some(LeftOut { reading, reason: reason.into() });
            }
        }
        let outcome = |code| v2::outcome(code).ok_or(Damage::Changed);
        let versions: Result<Vec<_>, Damage> = (0..head.predictions)
            .map(|_| {
                let version: PredictionN1<'_> = self.take()?;
                Ok(Prediction {
                    outcome: outcome(version.outcome)?,
                    because: version.because.into(),
                    swings_seen: version.swings_seen,
                })
            })
            .collect();
        let predictions = Predictions::try_from(versions?);
        let mut trial = Trial::from_parts(TrialParts {
            id: head.id,
            record: self.rocket()?,
            compared_with: head.compared_with,
            predictions: predictions.map_err(|_| Damage::Changed)?,
            seal: head.seal.map(|seal| Seal(seal.0)),
            altered: head.altered,
        });
        trial.plan = head.plan.into();
        trial.note = head.note.into();
        trial.draft = Draft {
            outcome: head.draft_outcome.map(outcome).transpose()?,
            because: head.draft_because.into(),
        };
        trial.measured = measured;
        Ok(trial)
    }
}

/// A count that is bounded well below 256.
fn byte(count: usize) -> u8 {
    u8::try_from(count).unwrap_or(u8::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{Steady, TailFirst, Wobbling};
    use noseward_lesson::{Colour, SwingOutcome, Swings};
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
        let seen = Swings::new(SwingSetup::default(), [TailFirst]).unwrap();
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
        #[rustfmt::skip]
        let bytes = [
            &[4, 4,  1, 0, 3,  1, 1,  1, 0, 1,  1, b'C', 0, 0, 0][..],
            &[4, b'f', b'i', b'n', b's'],
            &[0, 0, 0, 7,  0, 0, 0, 0, 0, 0x01, 0x80],
            &[1, 0, 0,  1], &seal, &[0,  2, 0xc3, 0xa9,  1, 1, 0,  1, 0x91, 0x30],
            &[0xa0, 0x0f, 0xdf, 0x07,  1, 1, b'x',  0, 0, 1, b'a'],
            &[1, 7, 0, 0,  126, 81, 21, 146, 1, 0x03],
        ];
        let bytes = bytes.concat();
        assert_eq!(write_notebook(&file), bytes);
        assert_eq!(read_notebook(&bytes), Ok(file.clone()));

        let trial = file.notebook.trial(1).unwrap().clone();
        let shared = SharedTrial { group: file.notebook.group, trial };
        let bytes = write_trial(&shared);
        assert_eq!(bytes[..7], [4, 4, 1, 0, 0, 1, seal[0]]);
        assert_eq!(read_trial(&bytes), Ok(shared));
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
            writer.rocket(&design.clone().into());
            writer.bytes.len() - before
        });
        let alone = v1::write(&designs[0]).len() + 4;
        assert_eq!((sizes[0], sizes[2]), (alone, 4));
        assert!(sizes[1] <= 4 + 2, "{sizes:?}");
        let mut reader = Reader { rest: &writer.bytes, before: Vec::new() };
        for design in designs {
            assert_eq!(reader.rocket(), Ok(design.into()));
        }
        assert_eq!(reader.end(()), Ok(()));
    }

    #[test]
    fn what_is_never_written_is_refused() {
        let good = write_notebook(&small());
        for end in 0..good.len() {
            assert_eq!(read_notebook(&good[..end]), Err(Damage::Changed), "{end}");
        }
        // A colour, a number, a level, a kind of help and a flag that are none, a number
        // of a trial that is there already, an unknown bit, too many plans.
        for (place, value) in
            [(0, 12), (1, 41), (2, 4), (3, 3), (4, 4), (7, 2), (8, 1), (9, 2)]
        {
            let mut bad = good.clone();
            bad[place] = value;
            assert_eq!(read_notebook(&bad), Err(Damage::Changed), "{place}");
        }
        let more = [&good[..], &[0]].concat();
        assert_eq!(read_notebook(&more), Err(Damage::Changed));
        // A rocket that is longer at its ends than the one before.
        let mut reader = Reader { rest: &[0, 1, 0, 0], before: Vec::new() };
        assert_eq!(reader.rocket(), Err(Damage::Changed));
    }

    #[test]
    fn what_has_no_room_is_not_written() {
        let mut file = small();
        assert!(seal_notebook(&file).is_some());
        let trial = file.notebook.trial_mut(1).unwrap();
        trial.measured.rocket_length_mm = Some(4000.0);
        assert_eq!(seal_notebook(&file), None);
        let mut many = small();
        let mut record = Record::from(Example::Razorbill.design());
        record.design.weights = vec![record.design.weights[0].clone(); 40];
        many.rocket = Some(record);
        assert_eq!(seal_notebook(&many), None);
    }

    /// The seal travels as it is written: with another prediction it does not agree.
    #[test]
    fn a_changed_prediction_shows() {
        let file = small();
        let good = write_notebook(&file);
        let trial = |bytes: &[u8]| {
            read_notebook(bytes).unwrap().notebook.trial(1).unwrap().clone()
        };
        assert!(!trial(&good).is_altered());
        let seal = file.notebook.trial(1).unwrap().seal().unwrap().0.to_le_bytes();
        let at = good.windows(4).position(|four| four == seal).unwrap();
        let because = good.iter().rposition(|&byte| byte == b'a').unwrap();
        let [number, outcome, seen] = [at - 4, because - 3, because - 2];
        for (place, value) in
            [(because, b'b'), (outcome, 3), (seen, 1), (at, !seal[0]), (number, 7)]
        {
            let mut bad = good.clone();
            bad[place] = value;
            let read = read_notebook(&bad).unwrap().notebook;
            assert!(read.trials()[0].is_altered(), "{place}");
            // Written anew, it still says so.
            let file = NotebookFile { notebook: read, rocket: None };
            let again = read_notebook(&write_notebook(&file)).unwrap();
            assert_eq!(again, file);
        }
        // Without its seal, and without its prediction.
        let mut no_seal = good.clone();
        no_seal.splice(at - 1..at + 4, [0]);
        assert!(trial(&no_seal).is_altered());
        let mut no_prediction = good;
        no_prediction.drain(because - 3..=because);
        let count = at + 4 + 1 + 3 + 3;
        no_prediction[count] = 0;
        assert!(trial(&no_prediction).is_altered());
    }
}
