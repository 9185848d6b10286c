//! Version 2 of the payload: that of version 1, and behind it the swings. It stands for
//! ever, as version 1 does.

use noseward_lesson::{MOST_OUTCOMES, Record, SwingOutcome, Swings};
use noseward_stability::SwingSetup;
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use super::missing::Missing;
use super::{Damage, v1};

/// Outcomes, at most.
const OUTCOMES: usize = 6;

const _: () = assert!(
    OUTCOMES == MOST_OUTCOMES,
    "version 2 has room for six outcomes: write a version 3"
);

/// The order of the fields is the format. A [`Grid`] says what the numbers mean.
#[derive(Serialize, Deserialize)]
struct SwingsV2 {
    string: u16,
    arm: u8,
    turns: u8,
    air_density: u8,
    outcomes: u8,
}

/// How a value of the setup is stored: 0 when it is not a number, else 1 more than its
/// steps above `first`.
///
/// Each range is wider than the bounds of the setup, and a number beyond it becomes its
/// end: what was out of bounds stays so.
struct Grid {
    per_unit: f64,
    /// The least that is stored, in steps.
    first: i16,
    /// The most that is stored, in steps.
    last: i16,
}

const STRING: Grid = Grid { per_unit: 100.0, first: 25, last: 1000 };
const ARM: Grid = Grid { per_unit: 100.0, first: -10, last: 240 };
const TURNS: Grid = Grid { per_unit: 20.0, first: 0, last: 240 };
const AIR_DENSITY: Grid = Grid { per_unit: 200.0, first: 100, last: 340 };

impl Grid {
    fn write(&self, value: f64) -> u16 {
        if value.is_nan() {
            return 0;
        }
        let (first, last) = (f64::from(self.first), f64::from(self.last));
        let steps = (value * self.per_unit).round().clamp(first, last);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "whole, and from 1 to the length of the range"
        )]
        let stored = (steps - first + 1.0) as u16;
        stored
    }

    fn write_byte(&self, value: f64) -> u8 {
        u8::try_from(self.write(value)).expect("its range has at most 255 steps")
    }

    fn read(&self, stored: impl Into<i32>) -> Result<f64, Damage> {
        let stored = stored.into();
        if stored == 0 {
            return Ok(f64::NAN);
        }
        let steps = i32::from(self.first) + stored - 1;
        if steps > self.last.into() {
            return Err(Damage::Changed);
        }
        Ok(f64::from(steps) / self.per_unit)
    }
}

/// The payload for a record. Numbers come out on the grid of [`Record::rounded`].
pub(super) fn write(record: &Record) -> Vec<u8> {
    let mut bytes = v1::write(&record.design);
    bytes.extend(write_swings(&record.swings));
    bytes
}

/// The swings alone: at least one outcome.
pub(crate) fn write_swings(swings: &Swings) -> Vec<u8> {
    let SwingSetup { string_m, arm_m, turns_per_s, air_density_kg_m3 } = swings.setup;
    let outcomes = swings.outcomes();
    let head = SwingsV2 {
        string: STRING.write(string_m),
        arm: ARM.write_byte(arm_m),
        turns: TURNS.write_byte(turns_per_s),
        air_density: AIR_DENSITY.write_byte(air_density_kg_m3),
        outcomes: u8::try_from(outcomes.len()).expect("the outcomes are bounded"),
    };
    let mut bytes = postcard::to_allocvec(&head).expect("numbers can always be written");
    bytes.extend(outcomes.chunks(2).map(|pair| {
        let code = |i: usize| pair.get(i).map_or(0, |&outcome| outcome_code(outcome));
        code(0) | code(1) << 4
    }));
    bytes
}

/// Reads a payload as far as it goes. The swings arrive whole or not at all.
///
/// # Errors
///
/// As [`v1::read`].
pub(super) fn read(payload: &[u8]) -> Result<(v1::Read<'_>, Swings), Damage> {
    let mut read = v1::read(payload)?;
    let arrived = if read.missing.is_empty() { read_swings(read.rest)? } else { None };
    let Some((swings, rest)) = arrived else {
        read.missing.push(Missing::Swings);
        return Ok((read, Swings::default()));
    };
    read.rest = rest;
    Ok((read, swings))
}

/// The swings, and what follows them; `None` where the bytes end too early.
///
/// # Errors
///
/// [`Damage::Changed`] when a value is none that [`write_swings`] writes.
pub(crate) fn read_swings(bytes: &[u8]) -> Result<Option<(Swings, &[u8])>, Damage> {
    let (head, bytes) = match take_from_bytes::<SwingsV2>(bytes) {
        Ok(taken) => taken,
        Err(Error::DeserializeUnexpectedEnd) => return Ok(None),
        Err(_) => return Err(Damage::Changed),
    };
    let setup = SwingSetup {
        string_m: STRING.read(head.string)?,
        arm_m: ARM.read(head.arm)?,
        turns_per_s: TURNS.read(head.turns)?,
        air_density_kg_m3: AIR_DENSITY.read(head.air_density)?,
    };
    let count = usize::from(head.outcomes);
    if count == 0 || count > OUTCOMES {
        return Err(Damage::Changed);
    }
    let Some((packed, rest)) = bytes.split_at_checked(count.div_ceil(2)) else {
        return Ok(None);
    };
    let mut codes = packed.iter().flat_map(|byte| [byte & 0xf, byte >> 4]);
    let outcomes: Option<Vec<_>> = codes.by_ref().take(count).map(outcome).collect();
    if codes.any(|unused| unused != 0) {
        return Err(Damage::Changed);
    }
    let swings = Swings::new(setup, outcomes.ok_or(Damage::Changed)?);
    Ok(Some((swings.map_err(|_| Damage::Changed)?, rest)))
}

/// The number that stands for an outcome: never changed, or given to something else.
pub(crate) fn outcome_code(outcome: SwingOutcome) -> u8 {
    match outcome {
        SwingOutcome::Steady => 0,
        SwingOutcome::Wobbling => 1,
        SwingOutcome::Sideways => 2,
        SwingOutcome::TailFirst => 3,
        SwingOutcome::Slipped => 4,
        SwingOutcome::NotSure => 5,
    }
}

/// The outcome that a number stands for.
pub(crate) fn outcome(code: u8) -> Option<SwingOutcome> {
    SwingOutcome::ALL.into_iter().find(|&outcome| outcome_code(outcome) == code)
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
    use noseward_stability::{Example, SwingField};

    const GRIDS: [(SwingField, Grid); 4] = [
        (SwingField::String, STRING),
        (SwingField::Arm, ARM),
        (SwingField::Turns, TURNS),
        (SwingField::AirDensity, AIR_DENSITY),
    ];

    fn record(setup: SwingSetup, outcomes: &[SwingOutcome]) -> Record {
        let swings = Swings::new(setup, outcomes.iter().copied()).unwrap();
        Record { design: Example::Tern.design(), swings }
    }

    /// The bytes behind those of version 1.
    fn tail(record: &Record) -> Vec<u8> {
        write(record)[v1::write(&record.design).len()..].to_vec()
    }

    /// Written out by hand from the tables of `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        let usual = SwingSetup::default();
        assert_eq!(tail(&record(usual, &[TailFirst])), [126, 81, 21, 146, 1, 0x03]);
        let other = SwingSetup {
            string_m: 3.0,
            arm_m: 0.0,
            turns_per_s: 0.35,
            air_density_kg_m3: 0.8,
        };
        let outcomes = [Wobbling, Sideways, Slipped, Slipped, NotSure];
        let bytes = [0x94, 0x02, 11, 8, 61, 5, 0x21, 0x44, 0x05];
        let sent = record(other, &outcomes);
        assert_eq!(tail(&sent), bytes);
        assert!(write(&sent).starts_with(&v1::write(&sent.design)));

        let bytes = write(&sent);
        let (read, swings) = read(&bytes).unwrap();
        assert_eq!((read.missing, read.rest), (vec![], &[][..]));
        assert_eq!((read.design, swings), (sent.design, sent.swings));
    }

    #[test]
    fn every_number_is_pinned() {
        let names =
            ["steady", "wobbling", "sideways", "tail_first", "slipped", "not_sure"];
        for code in 0..=u8::MAX {
            let found = outcome(code).map(|found| serde_json::to_value(found).unwrap());
            let pinned = names.get(usize::from(code)).map(|&name| name.into());
            assert_eq!(found, pinned, "outcome {code}");
        }
    }

    #[test]
    fn every_value_of_the_grid_comes_back_as_it_is_rounded() {
        for (field, grid) in GRIDS {
            for stored in 1..=grid.last - grid.first + 1 {
                let value = grid.read(i32::from(stored)).unwrap();
                let mut setup = SwingSetup::default();
                field.set(&mut setup, value);
                let sent = record(setup, &[Steady]);
                let (_, swings) = read(&write(&sent)).unwrap();
                assert_eq!(swings, sent.swings.clone().rounded());
                assert_eq!(swings, sent.swings, "{field:?} {value}");
            }
            assert!(grid.read(i32::from(grid.last - grid.first) + 2).is_err());
        }
    }

    #[test]
    fn a_fault_stays_a_fault() {
        for (field, _) in GRIDS {
            let (least, most) = field.bounds();
            for wrong in [
                f64::NAN,
                f64::INFINITY,
                -f64::INFINITY,
                least - 0.05,
                most + 0.05,
                1e300,
            ] {
                let mut sent = record(SwingSetup::default(), &[Steady]);
                field.set(&mut sent.swings.setup, wrong);
                let (_, swings) = read(&write(&sent)).unwrap();
                assert_eq!(field.get(&swings.setup).is_nan(), wrong.is_nan());
                let faults = swings.setup.faults();
                assert_eq!(faults.len(), 1, "{field:?} {wrong}");
                assert_eq!(faults[0].field, field);
            }
        }
    }

    #[test]
    fn the_swings_come_whole_or_not_at_all() {
        let sent = record(SwingSetup::default(), &[Steady, Slipped, TailFirst]);
        let bytes = write(&sent);
        let rocket = v1::write(&sent.design).len();
        for end in rocket..bytes.len() {
            let (read, swings) = read(&bytes[..end]).unwrap();
            assert_eq!(read.design, sent.design);
            assert_eq!(read.missing, [Missing::Swings]);
            assert_eq!(swings, Swings::default());
        }
        let (read, _) = read(&bytes[..rocket - 1]).unwrap();
        assert_eq!(read.missing.last(), Some(&Missing::Swings));
        assert_eq!(read.missing.len(), 2);
    }

    #[test]
    fn what_is_never_written_is_refused() {
        let good = [126, 81, 21, 146, 3, 0x40, 0x03];
        assert!(read_swings(&good).unwrap().is_some());
        for bad in [
            &[126, 81, 21, 146, 0][..],                     // no outcome
            &[126, 81, 21, 146, 7, 0x44, 0x44, 0x44, 0x04], // seven
            &[126, 81, 21, 146, 255],                       // a great many
            &[126, 81, 21, 146, 1, 0x06],                   // an outcome that is none
            &[126, 81, 21, 146, 2, 0x60],                   // the same, above
            &[126, 81, 21, 146, 1, 0x10],                   // an unused half
            &[126, 81, 21, 146, 4, 0x00, 0x00],             // four that count
            &[126, 81, 21, 146, 4, 0x00, 0x40],             // one more than enough
            &[0xd1, 0x07, 81, 21, 146, 1, 0x03],            // 10.01 m of string
            &[0xff, 0xff, 0x07, 81, 21, 146, 1, 3],         // no sixteen bits
            &[126, 252, 21, 146, 1, 0x03],
            &[126, 81, 242, 146, 1, 0x03],
            &[126, 81, 21, 242, 1, 0x03],
        ] {
            assert_eq!(read_swings(bad), Err(Damage::Changed), "{bad:?}");
        }
    }
}
