//! What one trial came to, as a code short enough to be typed: numbers only.

use noseward_lesson::{
    BalancePoint, Group, MOST_OUTCOMES, Notebook, ReadingStats, SwingOutcome, Swings,
};
use noseward_stability::{Figures, Quantity, SwingSetup};
use postcard::{from_bytes, to_allocvec};
use serde::{Deserialize, Serialize};

use crate::code::{self, symbols};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::frame::{CRC, VERSION};
use crate::payload::codes::{OUTCOMES, choice, code};
use crate::payload::notebook::GroupBytes;
use crate::payload::numbers::{PER_MM, Steps};

/// `T`, in front of the version.
pub(crate) const KIND: u8 = 26;
/// Bytes of every result, the checksum not counted.
const BYTES: usize = 30;
const CHECKSUM: usize = 2;
/// Steps of a mass in one gram.
const PER_G: f64 = 10.0;
const NO_MASS: u16 = u16::MAX;
const NO_CHANGES: u8 = u8::MAX;
const NO_OUTCOME: u8 = 15;

/// What one trial came to. No words of anybody are in it.
///
/// Lengths are in millimetres on the grid of 0.1 mm, from the nose tip; masses in grams to
/// 0.1 g.
#[derive(Clone, Debug, PartialEq)]
pub struct ResultCode {
    /// Whose it is.
    pub group: Group,
    /// The number of the trial, from 1.
    pub trial: u16,
    /// The number of the trial that it is compared with.
    pub compared_with: Option<u16>,
    /// How many things differ from that one, up to 254; `None` where it is not said.
    pub changes: Option<u8>,
    /// What the model says of the rocket; `None` where a fault of the design stops it, or a
    /// figure has no room.
    pub model: Option<ResultModel>,
    /// The measured centre of mass.
    pub mass: Option<ResultMiddle>,
    /// The measured centre of pressure, side-on.
    pub pressure: Option<ResultMiddle>,
    /// The first prediction.
    pub predicted: Option<ResultPrediction>,
    /// What was seen, in order, slips included.
    pub outcomes: Vec<SwingOutcome>,
    /// Whether what is sealed, of the trial or of its notebook, was changed by hand.
    pub altered: bool,
    /// Whether two changes at once were allowed.
    pub allows_two_changes: bool,
    /// Whether it was swung before anything was predicted.
    pub swung_first: bool,
}

/// What the model says of a rocket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResultModel {
    /// Length of the body, in millimetres.
    pub length_mm: f64,
    /// Largest width of the body, in millimetres.
    pub body_width_mm: f64,
    /// Mass of the whole, in grams, weighed where the group weighed it.
    pub mass_g: f64,
    /// The centre of mass as computed from the parts, in millimetres from the nose tip.
    pub mass_point_mm: f64,
    /// The centre of pressure side-on, in millimetres from the nose tip.
    pub pressure_point_mm: f64,
}

/// What the readings of a point came to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResultMiddle {
    /// The middle value, in millimetres from the nose tip.
    pub middle_mm: f64,
    /// The largest reading less the smallest, in millimetres.
    pub range_mm: f64,
    /// How many readings counted, from 1 to 3.
    pub count: u8,
}

/// The first prediction, without its words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ResultPrediction {
    /// What was predicted.
    pub outcome: SwingOutcome,
    /// How many swings were on record then, up to 6.
    pub swings_seen: u8,
}

/// Every field has its bytes, whatever it says: all codes are of one length. The order of
/// the fields is the format.
#[derive(Serialize, Deserialize)]
struct ResultBytes {
    group: GroupBytes,
    trial: Two,
    compared_with: Two,
    changes: u8,
    flags: u8,
    length: Steps,
    body_width: Steps,
    mass: Two,
    points: [Steps; 2],
    middles: [[Steps; 2]; 2],
    predicted: u8,
    outcomes: [u8; 3],
}

/// A number in two bytes.
#[derive(Clone, Copy, Serialize, Deserialize)]
struct Two(#[serde(with = "postcard::fixint::le")] u16);

const ALTERED: u8 = 1;
const TWO_CHANGES: u8 = 2;
const SWUNG_FIRST: u8 = 4;
/// By how many bits the counts of readings are shifted; two bits each.
const COUNTS: [u8; 2] = [3, 5];
const FREE_BIT: u8 = 1 << 7;

/// What a trial came to; `None` without a trial of that number that stands.
///
/// `changes` is how many things differ from the trial that it is compared with. A point
/// that was read beyond 3.2 m is left out, and so are the figures of a rocket that is
/// longer, or heavier than 6.5 kg.
#[must_use]
pub fn result_of(
    notebook: &Notebook,
    id: u16,
    changes: Option<u8>,
) -> Option<ResultCode> {
    let trial = notebook.trial(id)?;
    let figures = trial.rocket().figures();
    let length_mm = figures.map_or(0.0, |figures| figures.length_m * 1000.0);
    let [mass, pressure] = BalancePoint::ALL.map(|point| {
        let middle: ReadingStats = trial.measured.middle(point, length_mm)?;
        Some(ResultMiddle {
            middle_mm: kept(middle.middle_mm)?,
            range_mm: kept(middle.range_mm())?,
            count: u8::try_from(middle.count).unwrap_or(u8::MAX),
        })
    });
    let most = u8::try_from(MOST_OUTCOMES).unwrap_or(u8::MAX);
    let predicted = trial.predictions().first().map(|first| ResultPrediction {
        outcome: first.outcome,
        swings_seen: first.swings_seen.min(most),
    });
    Some(ResultCode {
        group: notebook.group,
        trial: id,
        compared_with: trial.compared_with().filter(|&with| with > 0),
        changes: changes.map(|changes| changes.min(NO_CHANGES - 1)),
        model: figures.and_then(model_of),
        mass,
        pressure,
        predicted,
        outcomes: trial.swings().outcomes().to_vec(),
        altered: trial.is_altered() || notebook.is_altered(),
        allows_two_changes: notebook.allows_two_changes,
        swung_first: trial.swung_first(),
    })
}

/// What the model says; `None` where some of it has no room in a result.
fn model_of(figures: &Figures) -> Option<ResultModel> {
    let mass_g = (figures.mass.mass_kg * 1000.0 * PER_G).round() / PER_G;
    let model = ResultModel {
        length_mm: kept(figures.length_m * 1000.0)?,
        body_width_mm: kept(figures.body_width_m * 1000.0)?,
        mass_g,
        mass_point_mm: kept(figures.computed_mass.centre_m * 1000.0)?,
        pressure_point_mm: kept(figures.centre_of_pressure_side_on_m * 1000.0)?,
    };
    (f64::from(mass_steps(mass_g)) / PER_G == mass_g).then_some(model)
}

/// A length on the grid; `None` for one that has no room in a result.
fn kept(mm: f64) -> Option<f64> {
    let mm = Quantity::Length.rounded(mm);
    (Steps::new(mm, PER_MM).value(PER_MM) == mm).then_some(mm)
}

/// The code for a result: 57 capital letters and digits in groups of four and rows of five
/// groups, 71 characters with what stands between them.
#[must_use]
pub fn result_code(result: &ResultCode) -> String {
    let payload = write(result);
    let mut bytes = payload.clone();
    bytes.extend(checksum(&payload));
    let mut data = vec![KIND, VERSION];
    data.extend(symbols::pack(&bytes));
    code::rows(&data)
}

/// Reads the code of a result, typed as [`open_code`](crate::open_code) tells.
///
/// # Errors
///
/// [`LinkError`], most with the row. No wrong character is guessed.
pub fn open_result_code(text: &str) -> Result<ResultCode, LinkError> {
    let open = || {
        let data = code::read(KIND, text, |_| Ok(symbols::count(BYTES + CHECKSUM)))?;
        let bytes = symbols::unpack(&data);
        let payload = bytes.split_at_checked(BYTES);
        let payload = payload.filter(|(payload, sum)| checksum(payload) == **sum);
        let result = payload.and_then(|(payload, _)| read(payload));
        result.ok_or(LinkErrorKind::Changed)
    };
    open().map_err(|kind| kind.at(At::Result))
}

/// Kind and version are covered too.
fn checksum(payload: &[u8]) -> [u8; CHECKSUM] {
    let mut digest = CRC.digest();
    digest.update(&[KIND, VERSION]);
    digest.update(payload);
    let [low, next, ..] = digest.finalize().to_le_bytes();
    [low, next]
}

fn write(result: &ResultCode) -> Vec<u8> {
    let middles = [result.mass, result.pressure];
    let mut flags = 0;
    for (is, flag) in [
        (result.altered, ALTERED),
        (result.allows_two_changes, TWO_CHANGES),
        (result.swung_first, SWUNG_FIRST),
    ] {
        flags |= if is { flag } else { 0 };
    }
    for (middle, shift) in middles.into_iter().zip(COUNTS) {
        flags |= middle.map_or(0, |middle| middle.count.min(3)) << shift;
    }
    let model = |value: fn(&ResultModel) -> f64| {
        Steps::optional(result.model.as_ref().map(value), PER_MM)
    };
    let steps = |mm| Steps::optional(mm, PER_MM);
    let predicted = result.predicted.map_or(0, |first| {
        code(OUTCOMES, &first.outcome) + 1 + (first.swings_seen.min(15) << 4)
    });
    let half =
        |i: usize| result.outcomes.get(i).map_or(NO_OUTCOME, |seen| code(OUTCOMES, seen));
    let bytes = to_allocvec(&ResultBytes {
        group: GroupBytes::of(result.group),
        trial: Two(result.trial),
        compared_with: Two(result.compared_with.unwrap_or(0)),
        changes: result.changes.map_or(NO_CHANGES, |changes| changes.min(NO_CHANGES - 1)),
        flags,
        length: model(|model| model.length_mm),
        body_width: model(|model| model.body_width_mm),
        mass: Two(result.model.map_or(NO_MASS, |model| mass_steps(model.mass_g))),
        points: [
            model(|model| model.mass_point_mm),
            model(|model| model.pressure_point_mm),
        ],
        middles: middles.map(|middle| {
            [steps(middle.map(|m| m.middle_mm)), steps(middle.map(|m| m.range_mm))]
        }),
        predicted,
        outcomes: [0, 2, 4].map(|i| half(i) | half(i + 1) << 4),
    });
    bytes.expect("numbers can always be written")
}

/// Steps of a mass, up to the last that stands for one.
fn mass_steps(mass_g: f64) -> u16 {
    let steps = (mass_g * PER_G).round().clamp(0.0, f64::from(NO_MASS - 1));
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, and within the range; not a number becomes 0"
    )]
    let stored = steps as u16;
    stored
}

/// `None` where it holds what is never written.
fn read(payload: &[u8]) -> Option<ResultCode> {
    let read: ResultBytes = from_bytes(payload).ok()?;
    let flag = |flag| read.flags & flag != 0;
    if flag(FREE_BIT) || read.trial.0 == 0 {
        return None;
    }
    let [mass, pressure] =
        [0, 1].map(|i| read_middle(read.middles[i], read.flags >> COUNTS[i] & 3));
    let predicted = match (read.predicted & 15, read.predicted >> 4) {
        (0, 0) => None,
        (0, _) => return None,
        (code, swings_seen) => {
            let outcome: SwingOutcome = choice(OUTCOMES, code - 1)?;
            if !outcome.can_be_predicted() {
                return None;
            }
            Some(ResultPrediction { outcome, swings_seen })
        }
    };
    Some(ResultCode {
        group: read.group.group().ok()?,
        trial: read.trial.0,
        compared_with: Some(read.compared_with.0).filter(|&id| id > 0),
        changes: Some(read.changes).filter(|&changes| changes != NO_CHANGES),
        model: read_model(&read)?,
        mass: mass?,
        pressure: pressure?,
        predicted,
        outcomes: read_outcomes(read.outcomes)?,
        altered: flag(ALTERED),
        allows_two_changes: flag(TWO_CHANGES),
        swung_first: flag(SWUNG_FIRST),
    })
}

/// All figures of the model, or none of them; `None` for anything else.
fn read_model(read: &ResultBytes) -> Option<Option<ResultModel>> {
    let lengths = [read.length, read.body_width, read.points[0], read.points[1]]
        .map(|steps| steps.optional_value(PER_MM));
    let has_mass = read.mass.0 != NO_MASS;
    match lengths {
        [None, None, None, None] if !has_mass => Some(None),
        [
            Some(length_mm),
            Some(body_width_mm),
            Some(mass_point_mm),
            Some(pressure_point_mm),
        ] if has_mass && lengths.iter().flatten().all(|mm| mm.is_finite()) => {
            Some(Some(ResultModel {
                length_mm,
                body_width_mm,
                mass_g: f64::from(read.mass.0) / PER_G,
                mass_point_mm,
                pressure_point_mm,
            }))
        }
        _ => None,
    }
}

fn read_middle(steps: [Steps; 2], count: u8) -> Option<Option<ResultMiddle>> {
    match steps.map(|steps| steps.optional_value(PER_MM)) {
        [None, None] if count == 0 => Some(None),
        [Some(middle_mm), Some(range_mm)]
            if count > 0 && middle_mm.is_finite() && range_mm.is_finite() =>
        {
            Some(Some(ResultMiddle { middle_mm, range_mm, count }))
        }
        _ => None,
    }
}

/// The outcomes in front; nothing may stand behind the first place that is empty.
fn read_outcomes(packed: [u8; 3]) -> Option<Vec<SwingOutcome>> {
    let codes = packed.map(|byte| [byte & 15, byte >> 4]);
    let codes = codes.as_flattened();
    let count = codes.iter().position(|&code| code == NO_OUTCOME).unwrap_or(codes.len());
    let (seen, empty) = codes.split_at(count);
    if empty.iter().any(|&code| code != NO_OUTCOME) {
        return None;
    }
    let outcomes: Vec<SwingOutcome> =
        seen.iter().map(|&code| choice(OUTCOMES, code)).collect::<Option<_>>()?;
    Swings::new(SwingSetup::default(), outcomes.iter().copied()).ok()?;
    Some(outcomes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{Slipped, Steady, Wobbling};
    use noseward_lesson::Colour;

    fn result() -> ResultCode {
        ResultCode {
            group: Group::new(Colour::Blue, 4).unwrap(),
            trial: 3,
            compared_with: Some(1),
            changes: Some(1),
            model: Some(ResultModel {
                length_mm: 412.0,
                body_width_mm: 65.0,
                mass_g: 80.5,
                mass_point_mm: 201.3,
                pressure_point_mm: 268.0,
            }),
            mass: Some(ResultMiddle { middle_mm: 203.0, range_mm: 5.1, count: 3 }),
            pressure: None,
            predicted: Some(ResultPrediction { outcome: Wobbling, swings_seen: 0 }),
            outcomes: vec![Steady, Slipped],
            altered: false,
            allows_two_changes: true,
            swung_first: false,
        }
    }

    /// Written out by hand from the tables of `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        #[rustfmt::skip]
        let bytes = [
            4, 4,  3, 0,  1, 0,  1,  2 + (3 << 3),
            0x18, 0x10,  0x8a, 0x02,  0x25, 0x03,  0xdd, 0x07,  0x78, 0x0a,
            0xee, 0x07, 0x33, 0x00,  0x01, 0x80, 0x01, 0x80,
            2,  0x40, 0xff, 0xff,
        ];
        assert_eq!(write(&result()), bytes);
        assert_eq!(read(&bytes), Some(result()));
        let bare = ResultCode {
            compared_with: None,
            changes: None,
            model: None,
            mass: None,
            predicted: None,
            outcomes: vec![],
            allows_two_changes: false,
            ..result()
        };
        #[rustfmt::skip]
        let bytes = [
            4, 4,  3, 0,  0, 0,  255,  0,
            0x01, 0x80,  0x01, 0x80,  0xff, 0xff,  0x01, 0x80,  0x01, 0x80,
            0x01, 0x80, 0x01, 0x80,  0x01, 0x80, 0x01, 0x80,
            0,  0xff, 0xff, 0xff,
        ];
        assert_eq!(write(&bare), bytes);
        assert_eq!(read(&bytes), Some(bare));
    }

    #[test]
    fn what_is_never_written_is_refused() {
        let good = write(&result());
        for (place, value) in [
            (0, 12),    // no colour
            (1, 0),     // no number of a group
            (2, 0),     // no number of a trial
            (7, 0x9a),  // the free bit
            (7, 0x02),  // no count, and a middle
            (7, 0x3a),  // a count, and no middle
            (26, 0x10), // swings seen, and no prediction
            (26, 5),    // a slip was predicted
            (26, 7),    // no outcome
            (27, 0x4f), // one behind an empty place
        ] {
            let mut bad = good.clone();
            bad[place] = value;
            assert_eq!(read(&bad), None, "{place} {value}");
        }
        // Four that count.
        let mut bad = good.clone();
        bad[28] = 0;
        bad[27] = 0;
        assert_eq!(read(&bad), None);
        // One figure of the model without the others, and not a number.
        for number in [[0x01, 0x80], [0x00, 0x80]] {
            let mut bad = good.clone();
            bad[8..10].copy_from_slice(&number);
            assert_eq!(read(&bad), None);
        }
    }

    #[test]
    fn large_numbers_become_the_end_of_the_range() {
        for (mass_g, steps) in [(6553.4, 65_534), (1e9, 65_534), (-1.0, 0), (0.04, 0)] {
            assert_eq!(mass_steps(mass_g), steps);
        }
        let many = ResultCode { changes: Some(255), ..result() };
        assert_eq!(read(&write(&many)).unwrap().changes, Some(254));
    }
}
