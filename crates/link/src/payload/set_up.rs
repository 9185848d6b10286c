//! A set-up in bytes.

use noseward_lesson::{
    Changeables, ClassQuestion, Labels, LessonPlaces, RuleLimits, SetUp,
};
use noseward_stability::{SwingField, UnitSystem};
use serde::{Deserialize, Serialize};

use super::codes::{COLOURS, LEVELS, SUPPORTS, TELLINGS, choice, code};
use super::notebook::GroupBytes;
use super::swings::grid;
use super::{TAIL, VERSION, behind_tail, design, flags, put, take};
use crate::class::SetUpLink;
use crate::error::LinkErrorKind;

/// A group stands in it.
const GROUP: u8 = 1 << 4;
/// A rocket goes along.
const ROCKET: u8 = 1 << 5;

/// Two changes at once are allowed.
const TWO_CHANGES: u8 = 1;
/// Inches and ounces.
const INCH: u8 = 2;
/// Steps of added mass in a gram, and of a hall in a metre.
const PER_UNIT: f64 = 10.0;
/// Bytes of the key of a language, at most.
const LANGUAGE_BYTES: usize = 24;

/// The order of the fields is the format.
#[derive(Serialize, Deserialize)]
struct SetUpBytes<'a> {
    pupils: u8,
    group_size: u8,
    /// 0 for a colour each, or else one more than the number of a colour.
    labels: u8,
    level: u8,
    support: u8,
    telling: u8,
    flags: u8,
    changeable: u16,
    places: u16,
    string: u16,
    turns: u8,
    /// 0 for none, or else one more than the steps.
    added: u16,
    hall: u16,
    /// 0 for one's own, or else one more than the number of a question.
    question: u8,
    own: &'a str,
    language: &'a str,
}

/// One more than the steps of a value, so that none is 0.
fn steps(value: Option<f64>) -> u16 {
    let steps = value.map(|value| (value * PER_UNIT).round() + 1.0);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "saturates"
    )]
    let steps = steps.unwrap_or(0.0) as u16;
    steps
}

fn of_steps(steps: u16) -> Option<f64> {
    steps.checked_sub(1).map(|steps| f64::from(steps) / PER_UNIT)
}

/// The payload of a set-up, for a group or for all.
pub(crate) fn write(link: &SetUpLink) -> Vec<u8> {
    let SetUpLink { set_up, group } = link;
    let mut bytes = Vec::new();
    let form = VERSION
        | if group.is_some() { GROUP } else { 0 }
        | if set_up.rocket.is_some() { ROCKET } else { 0 };
    put(&mut bytes, &form);
    if let Some(group) = group {
        put(&mut bytes, &GroupBytes::of(*group));
    }
    let own = match &set_up.question {
        ClassQuestion::Own(text) => text.as_str(),
        _ => "",
    };
    let RuleLimits { added_g, string_m, turns_per_s } = set_up.limits;
    let turns = grid(SwingField::Turns).write(turns_per_s);
    put(
        &mut bytes,
        &SetUpBytes {
            pupils: set_up.pupils,
            group_size: set_up.group_size,
            labels: match set_up.labels {
                Labels::Colours => 0,
                Labels::Numbers(colour) => code(COLOURS, &colour) + 1,
            },
            level: code(LEVELS, &set_up.level),
            support: code(SUPPORTS, &set_up.support),
            telling: code(TELLINGS, &set_up.telling),
            flags: if set_up.allows_two_changes { TWO_CHANGES } else { 0 }
                | if set_up.units == UnitSystem::Inch { INCH } else { 0 },
            changeable: set_up.changeable.bits(),
            places: set_up.places.bits(),
            string: grid(SwingField::String).write(string_m),
            turns: u8::try_from(turns).unwrap_or_default(),
            added: steps(added_g),
            hall: steps(set_up.hall_m),
            question: set_up.question.number(),
            own,
            language: &set_up.language,
        },
    );
    if let Some(rocket) = &set_up.rocket {
        bytes.extend(design::write(rocket));
    }
    bytes
}

/// The set-up of a payload, [rounded](SetUp::rounded).
///
/// # Errors
///
/// [`LinkErrorKind::Newer`] and [`LinkErrorKind::Unknown`] for what another version wrote,
/// [`LinkErrorKind::Changed`] where it holds what is never written.
pub(crate) fn read(payload: &[u8]) -> Result<SetUpLink, LinkErrorKind> {
    read_all(payload).map_err(|kind| match kind {
        // Its checksum agrees: nothing was cut.
        LinkErrorKind::CutShort => LinkErrorKind::Changed,
        kind => kind,
    })
}

fn read_all(payload: &[u8]) -> Result<SetUpLink, LinkErrorKind> {
    let (form, mut rest) = take::<u8>(payload)?;
    let has = flags(form, GROUP | ROCKET)?;
    let mut group = None;
    if has & GROUP != 0 {
        let (bytes, behind) = take::<GroupBytes>(rest)?;
        group = Some(bytes.group()?);
        rest = behind;
    }
    let (bytes, mut rest) = take::<SetUpBytes<'_>>(rest)?;
    let mut set_up = of_bytes(&bytes)?;
    if has & ROCKET != 0 {
        let read = design::read(rest)?;
        if !read.missing.is_empty() || read.record.has_swings() {
            return Err(LinkErrorKind::Changed);
        }
        set_up.rocket = Some(read.record.design);
        rest = read.rest;
    }
    if has & TAIL != 0 {
        rest = behind_tail(rest)?;
    }
    rest.is_empty().then_some(SetUpLink { set_up, group }).ok_or(LinkErrorKind::Changed)
}

fn of_bytes(bytes: &SetUpBytes<'_>) -> Result<SetUp, LinkErrorKind> {
    // What is beyond a list was added to it later.
    const NEWER: LinkErrorKind = LinkErrorKind::Newer { version: 2 };
    let is_key = |b: u8| b.is_ascii_alphanumeric() || b == b'-';
    let language = bytes.language;
    if language.len() > LANGUAGE_BYTES || !language.bytes().all(is_key) {
        return Err(LinkErrorKind::Changed);
    }
    let question = match bytes.question {
        0 => ClassQuestion::Own(bytes.own.to_owned()),
        number => ClassQuestion::with_number(number).ok_or(NEWER)?,
    };
    let labels = match bytes.labels.checked_sub(1) {
        None => Labels::Colours,
        Some(colour) => Labels::Numbers(choice(COLOURS, colour).ok_or(NEWER)?),
    };
    if bytes.flags & !(TWO_CHANGES | INCH) != 0 {
        return Err(NEWER);
    }
    let is_inch = bytes.flags & INCH != 0;
    Ok(SetUp {
        pupils: bytes.pupils,
        group_size: bytes.group_size,
        labels,
        language: language.to_owned(),
        level: choice(LEVELS, bytes.level).ok_or(NEWER)?,
        units: if is_inch { UnitSystem::Inch } else { UnitSystem::Metric },
        question,
        changeable: Changeables::new(bytes.changeable).ok_or(NEWER)?,
        limits: RuleLimits {
            added_g: of_steps(bytes.added),
            string_m: grid(SwingField::String).read(bytes.string)?,
            turns_per_s: grid(SwingField::Turns).read(bytes.turns)?,
        },
        allows_two_changes: bytes.flags & TWO_CHANGES != 0,
        telling: choice(TELLINGS, bytes.telling).ok_or(NEWER)?,
        support: choice(SUPPORTS, bytes.support).ok_or(NEWER)?,
        places: LessonPlaces::new(bytes.places).ok_or(NEWER)?,
        hall_m: of_steps(bytes.hall),
        rocket: None,
    }
    .rounded())
}
