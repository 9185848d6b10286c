//! What one trial came to, as a code short enough to be typed: numbers only.

use noseward_lesson::{
    PointResult, ResultModel, ResultPrediction, RulesCode, SwingOutcome, Swings,
    TrialResult,
};
use noseward_stability::SwingSetup;
use postcard::{from_bytes, to_allocvec};
use serde::{Deserialize, Serialize};

use crate::code::{self, symbols};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields;
use crate::frame::{CRC, VERSION};
use crate::payload::codes::{COLOURS, OUTCOMES, choice, code};
use crate::payload::numbers::{PER_MM, Steps};

/// `T`, in front of the version.
pub(crate) const KIND: u8 = 26;
/// Bytes of every result, the checksum not counted.
const BYTES: usize = 32;
const CHECKSUM: usize = 2;
/// Steps of a mass in one gram.
const PER_G: f64 = 10.0;
const NO_MASS: u16 = u16::MAX;
const NO_CHANGES: u8 = u8::MAX;
const NO_OUTCOME: u8 = 15;

/// Every field has its bytes, whatever it says: all codes are of one length. The order of
/// the fields is the format.
#[derive(Serialize, Deserialize)]
struct ResultBytes {
    /// The colour, and above it what of the rules has no room in `rules`.
    colour: u8,
    number: u8,
    rules: Two,
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
/// There are rules.
const RULES: u8 = 1 << 7;
/// By how many bits the upper part of the rules is shifted, there and beside the colour.
const UPPER_RULES: u32 = 16;
const BESIDE_COLOUR: u32 = 4;

/// A result as a code holds it: without readings and words. A point that lies
/// beyond 3.2 m is left out, and so are the figures of a rocket that is longer, or heavier
/// than 6.5 kg.
#[must_use]
pub fn in_code(result: &TrialResult) -> TrialResult {
    TrialResult {
        changes: result.changes.map(|changes| changes.min(NO_CHANGES - 1)),
        what_changed: String::new(),
        model: model_in_code(result.model),
        mass: point_in_code(result.mass),
        pressure: point_in_code(result.pressure),
        example: false,
        ..result.clone()
    }
}

/// What readings came to; `None` where some of it has no room in a code.
fn point_in_code(point: Option<PointResult>) -> Option<PointResult> {
    let point =
        point.filter(|point| has_room(point.middle_mm) && has_room(point.range_mm));
    point.map(|point| PointResult { readings_mm: Default::default(), ..point })
}

/// What the model says; `None` where some of it has no room in a code.
fn model_in_code(model: Option<ResultModel>) -> Option<ResultModel> {
    model.filter(|model| {
        has_room(model.length_mm)
            && has_room(model.body_width_mm)
            && has_room(model.mass_point_mm)
            && has_room(model.pressure_point_mm)
            && f64::from(mass_steps(model.mass_g)) / PER_G == model.mass_g
    })
}

/// Whether a code holds a length on the grid.
fn has_room(mm: f64) -> bool {
    Steps::new(mm, PER_MM).value(PER_MM) == mm
}

/// The code for a result: 60 capital letters and digits in groups of four and rows of five
/// groups, 74 characters with what stands between them.
#[must_use]
pub fn result_code(result: &TrialResult) -> String {
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
pub fn open_result_code(text: &str) -> Result<TrialResult, LinkError> {
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

/// The lower bits of the rules, and those above.
fn halves(rules: Option<RulesCode>) -> (u16, u8) {
    let [low, next, upper, _] = rules.map_or(0, RulesCode::value).to_le_bytes();
    (u16::from_le_bytes([low, next]), upper)
}

fn write(result: &TrialResult) -> Vec<u8> {
    let middles = [result.mass, result.pressure].map(point_in_code);
    let of_model = model_in_code(result.model);
    let (lower, upper) = halves(result.rules);
    let mut flags = 0;
    for (is, flag) in [
        (result.altered, ALTERED),
        (result.allows_two_changes, TWO_CHANGES),
        (result.swung_first, SWUNG_FIRST),
        (result.rules.is_some(), RULES),
    ] {
        flags |= if is { flag } else { 0 };
    }
    for (middle, shift) in middles.into_iter().zip(COUNTS) {
        flags |= middle.map_or(0, |middle| middle.count.min(3)) << shift;
    }
    let model = |value: fn(&ResultModel) -> f64| {
        Steps::optional(of_model.as_ref().map(value), PER_MM)
    };
    let steps = |mm| Steps::optional(mm, PER_MM);
    let predicted = result.predicted.map_or(0, |first| {
        code(OUTCOMES, &first.outcome) + 1 + (first.swings_seen.min(15) << 4)
    });
    let half =
        |i: usize| result.outcomes.get(i).map_or(NO_OUTCOME, |seen| code(OUTCOMES, seen));
    let bytes = to_allocvec(&ResultBytes {
        colour: code(COLOURS, &result.group.colour) | upper << BESIDE_COLOUR,
        number: result.group.number(),
        rules: Two(lower),
        trial: Two(result.trial),
        compared_with: Two(result.compared_with.unwrap_or(0)),
        changes: result.changes.map_or(NO_CHANGES, |changes| changes.min(NO_CHANGES - 1)),
        flags,
        length: model(|model| model.length_mm),
        body_width: model(|model| model.body_width_mm),
        mass: Two(of_model.map_or(NO_MASS, |model| mass_steps(model.mass_g))),
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
fn read(payload: &[u8]) -> Option<TrialResult> {
    let read: ResultBytes = from_bytes(payload).ok()?;
    let flag = |flag| read.flags & flag != 0;
    if read.trial.0 == 0 {
        return None;
    }
    let upper = u32::from(read.colour >> BESIDE_COLOUR);
    let rules = u32::from(read.rules.0) | upper << UPPER_RULES;
    if rules > 0 && !flag(RULES) {
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
    let group = fields::group(read.colour & 15, read.number)?;
    Some(TrialResult {
        rules: RulesCode::new(rules).filter(|_| flag(RULES)),
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
        ..TrialResult::empty(group, read.trial.0)
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

fn read_middle(steps: [Steps; 2], count: u8) -> Option<Option<PointResult>> {
    match steps.map(|steps| steps.optional_value(PER_MM)) {
        [None, None] if count == 0 => Some(None),
        [Some(middle_mm), Some(range_mm)]
            if count > 0 && middle_mm.is_finite() && range_mm.is_finite() =>
        {
            Some(Some(PointResult {
                readings_mm: Default::default(),
                middle_mm,
                range_mm,
                count,
            }))
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
    use noseward_lesson::{Colour, Group};

    fn result() -> TrialResult {
        TrialResult {
            rules: RulesCode::new(0x5_4321),
            compared_with: Some(1),
            changes: Some(1),
            model: Some(ResultModel {
                length_mm: 412.0,
                body_width_mm: 65.0,
                mass_g: 80.5,
                mass_point_mm: 201.3,
                pressure_point_mm: 268.0,
            }),
            mass: Some(PointResult {
                readings_mm: [None; 3],
                middle_mm: 203.0,
                range_mm: 5.1,
                count: 3,
            }),
            predicted: Some(ResultPrediction { outcome: Wobbling, swings_seen: 0 }),
            outcomes: vec![Steady, Slipped],
            allows_two_changes: true,
            ..TrialResult::empty(Group::new(Colour::Blue, 4).unwrap(), 3)
        }
    }

    /// Written out by hand from the tables of `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        #[rustfmt::skip]
        let bytes = [
            4 + (5 << 4), 4,  0x21, 0x43,  3, 0,  1, 0,  1,  2 + (3 << 3) + 128,
            0x18, 0x10,  0x8a, 0x02,  0x25, 0x03,  0xdd, 0x07,  0x78, 0x0a,
            0xee, 0x07, 0x33, 0x00,  0x01, 0x80, 0x01, 0x80,
            2,  0x40, 0xff, 0xff,
        ];
        assert_eq!(write(&result()), bytes);
        assert_eq!(read(&bytes), Some(result()));
        let bare = TrialResult {
            rules: None,
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
            4, 4,  0, 0,  3, 0,  0, 0,  255,  0,
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
            (4, 0),     // no number of a trial
            (9, 0x1a),  // rules, and no word of them
            (9, 0x82),  // no count, and a middle
            (9, 0xba),  // a count, and no middle
            (28, 0x10), // swings seen, and no prediction
            (28, 5),    // a slip was predicted
            (28, 7),    // no outcome
            (29, 0x4f), // one behind an empty place
        ] {
            let mut bad = good.clone();
            bad[place] = value;
            assert_eq!(read(&bad), None, "{place} {value}");
        }
        // Four that count.
        let mut bad = good.clone();
        bad[30] = 0;
        bad[29] = 0;
        assert_eq!(read(&bad), None);
        // One figure of the model without the others, and not a number.
        for number in [[0x01, 0x80], [0x00, 0x80]] {
            let mut bad = good.clone();
            bad[10..12].copy_from_slice(&number);
            assert_eq!(read(&bad), None);
        }
    }

    #[test]
    fn large_numbers_become_the_end_of_the_range() {
        for (mass_g, steps) in [(6553.4, 65_534), (1e9, 65_534), (-1.0, 0), (0.04, 0)] {
            assert_eq!(mass_steps(mass_g), steps);
        }
        let many = TrialResult { changes: Some(255), ..result() };
        assert_eq!(read(&write(&many)).unwrap().changes, Some(254));
    }
}
