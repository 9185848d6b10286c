//! Swings in bytes.

use noseward_lesson::{MOST_OUTCOMES, Swings};
use noseward_stability::{SwingField, SwingSetup, within};
use serde::{Deserialize, Serialize};

use super::codes::{OUTCOMES, choice, code};
use super::take;
use crate::error::LinkErrorKind;

/// The order of the fields is the format. A [`Grid`] says what the numbers mean.
#[derive(Serialize, Deserialize)]
struct SwingsBytes {
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
pub(crate) struct Grid {
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

/// How a value of the setup is stored.
pub(crate) fn grid(field: SwingField) -> &'static Grid {
    match field {
        SwingField::String => &STRING,
        SwingField::Arm => &ARM,
        SwingField::Turns => &TURNS,
        SwingField::AirDensity => &AIR_DENSITY,
    }
}

impl Grid {
    pub(crate) fn write(&self, value: f64) -> u16 {
        if value.is_nan() {
            return 0;
        }
        let (first, last) = (f64::from(self.first), f64::from(self.last));
        let steps = within((value * self.per_unit).round(), (first, last));
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

    /// Whether a byte has room for every value.
    pub(crate) fn is_byte(&self) -> bool {
        self.last - self.first < i16::from(u8::MAX)
    }

    pub(crate) fn read<T: Into<i32>>(&self, stored: T) -> Result<f64, LinkErrorKind> {
        let stored = stored.into();
        if stored == 0 {
            return Ok(f64::NAN);
        }
        let steps = i32::from(self.first) + stored - 1;
        if steps > self.last.into() {
            return Err(LinkErrorKind::Changed);
        }
        Ok(f64::from(steps) / self.per_unit)
    }
}

/// The bytes of swings: at least one outcome.
pub(super) fn write(swings: &Swings) -> Vec<u8> {
    let SwingSetup { string_m, arm_m, turns_per_s, air_density_kg_m3 } = swings.setup;
    let outcomes = swings.outcomes();
    let head = SwingsBytes {
        string: STRING.write(string_m),
        arm: ARM.write_byte(arm_m),
        turns: TURNS.write_byte(turns_per_s),
        air_density: AIR_DENSITY.write_byte(air_density_kg_m3),
        outcomes: u8::try_from(outcomes.len()).expect("the outcomes are bounded"),
    };
    let mut bytes = postcard::to_allocvec(&head).expect("numbers can always be written");
    bytes.extend(outcomes.chunks(2).map(|pair| {
        let half = |i: usize| pair.get(i).map_or(0, |outcome| code(OUTCOMES, outcome));
        half(0) | half(1) << 4
    }));
    bytes
}

/// The swings, and what follows them; `None` where the bytes end too early.
///
/// # Errors
///
/// [`LinkErrorKind::Changed`] when a value is none that [`write()`] writes.
pub(super) fn read(bytes: &[u8]) -> Result<Option<(Swings, &[u8])>, LinkErrorKind> {
    let (head, bytes) = match take::<SwingsBytes>(bytes) {
        Ok(taken) => taken,
        Err(LinkErrorKind::CutShort) => return Ok(None),
        Err(kind) => return Err(kind),
    };
    let setup = SwingSetup {
        string_m: STRING.read(head.string)?,
        arm_m: ARM.read(head.arm)?,
        turns_per_s: TURNS.read(head.turns)?,
        air_density_kg_m3: AIR_DENSITY.read(head.air_density)?,
    };
    let count = usize::from(head.outcomes);
    if count == 0 || count > MOST_OUTCOMES {
        return Err(LinkErrorKind::Changed);
    }
    let Some((packed, rest)) = bytes.split_at_checked(count.div_ceil(2)) else {
        return Ok(None);
    };
    let mut codes = packed.iter().flat_map(|byte| [byte & 0xf, byte >> 4]);
    let outcomes: Option<Vec<_>> =
        codes.by_ref().take(count).map(|code| choice(OUTCOMES, code)).collect();
    if codes.any(|unused| unused != 0) {
        return Err(LinkErrorKind::Changed);
    }
    let swings = Swings::new(setup, outcomes.ok_or(LinkErrorKind::Changed)?);
    Ok(Some((swings.map_err(|_| LinkErrorKind::Changed)?, rest)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
    use noseward_lesson::SwingOutcome;

    fn swings(setup: SwingSetup, outcomes: &[SwingOutcome]) -> Swings {
        Swings::new(setup, outcomes.iter().copied()).unwrap()
    }

    fn back(sent: &Swings) -> Swings {
        let bytes = write(sent);
        let (swings, rest) = read(&bytes).unwrap().unwrap();
        assert!(rest.is_empty());
        swings
    }

    /// Zero stands for "nothing", so that 255 steps fill a byte.
    #[test]
    fn a_byte_has_room_for_255_steps() {
        let grid = |last| Grid { per_unit: 1.0, first: 0, last };
        assert!(grid(254).is_byte() && !grid(255).is_byte());
        assert_eq!(grid(254).write_byte(254.0), u8::MAX);
    }

    /// Written out by hand from the tables of `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        let usual = SwingSetup {
            string_m: 1.5,
            arm_m: 0.7,
            turns_per_s: 1.0,
            air_density_kg_m3: 1.225,
        };
        assert_eq!(write(&swings(usual, &[TailFirst])), [126, 81, 21, 146, 1, 0x03]);
        let other = SwingSetup {
            string_m: 3.0,
            arm_m: 0.0,
            turns_per_s: 0.35,
            air_density_kg_m3: 0.8,
        };
        let outcomes = [Wobbling, Sideways, Slipped, Slipped, NotSure];
        let bytes = [0x94, 0x02, 11, 8, 61, 5, 0x21, 0x44, 0x05];
        let sent = swings(other, &outcomes);
        assert_eq!(write(&sent), bytes);
        assert_eq!(back(&sent), sent);
    }

    #[test]
    fn every_value_of_the_grid_comes_back_as_it_is_rounded() {
        for field in SwingField::ALL {
            let grid = grid(field);
            for stored in 1..=grid.last - grid.first + 1 {
                let value = grid.read(i32::from(stored)).unwrap();
                let mut setup = SwingSetup::default();
                field.set(&mut setup, value);
                let sent = swings(setup, &[Steady]);
                assert_eq!(back(&sent), sent.clone().rounded());
                assert_eq!(back(&sent), sent, "{field:?} {value}");
            }
            assert!(grid.read(i32::from(grid.last - grid.first) + 2).is_err());
        }
    }

    #[test]
    fn a_fault_stays_a_fault() {
        for field in SwingField::ALL {
            let (least, most) = field.bounds();
            for wrong in [
                f64::NAN,
                f64::INFINITY,
                -f64::INFINITY,
                least - 0.05,
                most + 0.05,
                1e300,
            ] {
                let mut sent = swings(SwingSetup::default(), &[Steady]);
                field.set(&mut sent.setup, wrong);
                let swings = back(&sent);
                assert_eq!(field.get(&swings.setup).is_nan(), wrong.is_nan());
                let faults = swings.setup.faults();
                assert_eq!(faults.len(), 1, "{field:?} {wrong}");
                assert_eq!(faults[0].field, field);
            }
        }
    }

    #[test]
    fn they_come_whole_or_not_at_all() {
        let bytes = write(&swings(SwingSetup::default(), &[Steady, Slipped, TailFirst]));
        for end in 0..bytes.len() {
            assert_eq!(read(&bytes[..end]), Ok(None));
        }
    }

    #[test]
    fn what_is_never_written_is_refused() {
        let good = [126, 81, 21, 146, 3, 0x40, 0x03];
        assert!(read(&good).unwrap().is_some());
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
            assert_eq!(read(bad), Err(LinkErrorKind::Changed), "{bad:?}");
        }
    }
}
