//! The fields of a trial and of a notebook, each once: bytes, table and file, written and
//! read, follow these lists, and the page calls its fields by these keys.
//!
//! Keys are the columns of the table. In bytes a field is told by its place in its list: a
//! new one goes to the end, and none is moved or taken out.

use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, BalancePoint, Conclusion, Group, LeftOut, MOST_OUTCOMES,
    MOST_TAKEN_BACK, MOST_VERSIONS, NOTE_CHARS, NotebookParts, PLAN_CHARS, Prediction,
    Predictions, REASON_CHARS, REPEATS, Record, Seal, Statement, SwingOutcome, Swings,
    TrialParts, key,
};
use noseward_stability::{SwingField, SwingSetup};
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::class::set_up::{SET_UP_HASH_CHARS, open_link, set_up_text};
use crate::error::{LinkError, LinkErrorKind};
use crate::payload::codes::{
    ENDS, Keys, LEVELS, OUTCOMES, SUPPORTS, TELLINGS, choice, code,
};

/// Where the value of a field stands, and what kind of value it is.
pub(crate) enum Slot<'a> {
    /// A length in millimetres.
    Mm(&'a mut Option<f64>),
    /// A whole number, with the least and the most.
    Count(&'a mut Option<u16>, u16, u16),
    /// A choice, by its number in a list of keys.
    Choice(&'a mut Option<u8>, Keys),
    /// A text, with the most characters of it.
    Text(&'a mut String, usize),
    /// Yes or no.
    Flag(&'a mut bool),
    Seal(&'a mut Option<Seal>),
    /// A value of the setup of the swing.
    Setup(&'a mut Option<f64>, SwingField),
    /// The rocket. Its swings are fields of their own, and need not go along.
    Rocket(&'a mut Record),
}

impl Slot<'_> {
    /// Whether there is nothing to be written.
    pub(crate) fn is_empty(&self) -> bool {
        match self {
            Self::Mm(value) | Self::Setup(value, _) => value.is_none(),
            Self::Count(value, ..) => value.is_none(),
            Self::Choice(value, _) => value.is_none(),
            Self::Text(text, _) => text.is_empty(),
            Self::Flag(is) => !**is,
            Self::Seal(seal) => seal.is_none(),
            Self::Rocket(_) => false,
        }
    }
}

/// Something that goes through fields: it writes what is in each, or puts in what it reads.
pub(crate) trait Visit {
    /// The next field.
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError>;

    /// What is to be said where a field cannot be as it is.
    fn fault(&self, key: &str, kind: LinkErrorKind) -> LinkError;
}

/// What writing fields comes to: it fails nowhere. Not `expect`, which brings what shows an
/// error, several kilobytes of it.
pub(crate) fn written(done: Result<(), LinkError>) {
    let Ok(()) = done else { unreachable!("whatever is in a notebook can be written") };
}

/// The key of the place at which a deleted trial stood.
pub(crate) const PLACE: &str = "place";

/// Characters of a value that are shown with a fault.
const SHOWN_CHARS: usize = 40;

/// The front of what was found in place of a value, to show with a fault.
pub(crate) fn front_of(found: &str) -> String {
    let mut front: String = found.chars().take(SHOWN_CHARS).collect();
    if front.len() < found.len() {
        front.push('…');
    }
    front
}

/// The largest number of a trial.
const MOST_NUMBER: u16 = u16::MAX - 1;

/// The fields of a trial.
pub(crate) fn trial(parts: &mut TrialParts, to: &mut dyn Visit) -> Result<(), LinkError> {
    let mut id = Some(parts.id).filter(|&id| id > 0);
    to.visit("trial", Slot::Count(&mut id, 1, MOST_NUMBER))?;
    parts.id = id.ok_or_else(|| to.fault("trial", LinkErrorKind::Empty))?;
    to.visit("compared_with", Slot::Count(&mut parts.compared_with, 1, MOST_NUMBER))?;
    to.visit("plan", Slot::Text(&mut parts.plan, PLAN_CHARS))?;
    let mut record = Record {
        design: std::mem::take(&mut parts.design),
        swings: std::mem::take(&mut parts.swings),
    };
    let mut swung = Swung::of(&record.swings);
    to.visit("rocket", Slot::Rocket(&mut record))?;
    let measured = &mut parts.measured;
    to.visit("rocket_length_mm", Slot::Mm(&mut measured.rocket_length_mm))?;
    to.visit("cutout_length_mm", Slot::Mm(&mut measured.cutout_length_mm))?;
    for point in BalancePoint::ALL {
        readings(point, parts, to)?;
    }
    let mut versions = Versions::of(&parts.predictions);
    versions.visit(0, to)?;
    swung.visit(to)?;
    to.visit("note", Slot::Text(&mut parts.note, NOTE_CHARS))?;
    to.visit("seal", Slot::Seal(&mut parts.seal))?;
    let draft = &mut parts.draft;
    choose("draft_outcome", &mut draft.outcome, OUTCOMES, to)?;
    to.visit("draft_because", Slot::Text(&mut draft.because, BECAUSE_CHARS))?;
    for version in 1..MOST_VERSIONS {
        versions.visit(version, to)?;
    }
    to.visit("altered", Slot::Flag(&mut parts.altered))?;
    outcomes("taken_back", &mut parts.taken_back, MOST_TAKEN_BACK, to)?;
    parts.predictions = versions.predictions(to)?;
    // Those that came along with the rocket count where the columns say nothing.
    parts.swings = swung.swings(to)?.unwrap_or(record.swings);
    parts.design = record.design;
    Ok(())
}

/// The place at which a deleted trial stood, from 1 where somebody reads it.
pub(crate) fn place(place: &mut usize, to: &mut dyn Visit) -> Result<(), LinkError> {
    let mut at = u16::try_from(place.saturating_add(1)).ok();
    to.visit(PLACE, Slot::Count(&mut at, 1, u16::MAX))?;
    *place = at.map_or(*place, |at| usize::from(at).saturating_sub(1));
    Ok(())
}

/// The settings of a notebook.
pub(crate) fn settings(
    parts: &mut NotebookParts,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    choose_one("level", &mut parts.level, LEVELS, to)?;
    choose_one("help", &mut parts.support, SUPPORTS, to)?;
    to.visit("two_changes", Slot::Flag(&mut parts.allows_two_changes))?;
    to.visit("in_hand", Slot::Count(&mut parts.in_hand, 1, MOST_NUMBER))?;
    to.visit("seal", Slot::Seal(&mut parts.seal))?;
    to.visit("altered", Slot::Flag(&mut parts.altered))?;
    choose_unusual("telling", &mut parts.telling, TELLINGS, to)?;
    set_up(parts, to)
}

/// How the lesson is set up, as the text of its link.
fn set_up(parts: &mut NotebookParts, to: &mut dyn Visit) -> Result<(), LinkError> {
    let mut text = parts.set_up.take().map(|of| set_up_text(&of)).unwrap_or_default();
    to.visit("set_up", Slot::Text(&mut text, SET_UP_HASH_CHARS))?;
    if !text.is_empty() {
        let opened = open_link(&text).map_err(|kind| to.fault("set_up", kind))?;
        parts.set_up = Some(Box::new(opened.set_up.without_rocket()));
    }
    Ok(())
}

/// The four boxes of a conclusion.
pub(crate) fn conclusion(
    conclusion: &mut Conclusion,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    for of in Statement::ALL {
        to.visit(&key(&of), Slot::Text(conclusion.text_mut(of), BOX_CHARS))?;
    }
    Ok(())
}

/// What the keys of a point's fields begin with.
pub(crate) fn front(point: BalancePoint) -> &'static str {
    match point {
        BalancePoint::Mass => "centre_of_mass",
        BalancePoint::Pressure => "centre_of_pressure",
    }
}

fn readings(
    point: BalancePoint,
    parts: &mut TrialParts,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    let front = front(point);
    let readings = parts.measured.of_mut(point);
    choose_unusual(&format!("{front}_from"), &mut readings.from, ENDS, to)?;
    to.visit(&format!("{front}_guess_mm"), Slot::Mm(&mut readings.guess_mm))?;
    for (reading, i) in readings.mm.iter_mut().zip(1..) {
        to.visit(&format!("{front}_reading_{i}_mm"), Slot::Mm(reading))?;
    }
    let (mut place, mut reason) = match readings.left_out.take() {
        Some(LeftOut { reading, reason }) => {
            (u16::try_from(reading).ok().map(|reading| reading + 1), reason)
        }
        None => (None, String::new()),
    };
    let (left_out, most) = (format!("{front}_left_out"), u16::try_from(REPEATS));
    to.visit(&left_out, Slot::Count(&mut place, 1, most.unwrap_or(u16::MAX)))?;
    let reason_slot = Slot::Text(&mut reason, REASON_CHARS);
    to.visit(&format!("{front}_left_out_reason"), reason_slot)?;
    readings.left_out = match place {
        Some(place) => Some(LeftOut { reading: usize::from(place) - 1, reason }),
        None if reason.is_empty() => None,
        None => return Err(to.fault(&left_out, LinkErrorKind::Empty)),
    };
    Ok(())
}

/// One choice, which may be empty.
pub(crate) fn choose<T: Serialize + DeserializeOwned>(
    key: &str,
    chosen: &mut Option<T>,
    keys: Keys,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    let mut number = chosen.as_ref().map(|chosen| code(keys, chosen));
    to.visit(key, Slot::Choice(&mut number, keys))?;
    *chosen = number.and_then(|number| choice(keys, number));
    Ok(())
}

/// As many outcomes as there can be, each in a field of its own.
pub(crate) fn outcomes(
    front: &str,
    seen: &mut Vec<SwingOutcome>,
    most: usize,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    let known = std::mem::take(seen);
    for i in 0..most {
        let mut outcome = known.get(i).copied();
        choose(&format!("{front}_{}", i + 1), &mut outcome, OUTCOMES, to)?;
        if let Some(outcome) = outcome {
            seen.push(outcome);
        }
    }
    Ok(())
}

/// What is wrong with a prediction of what nobody can predict.
pub(crate) fn unpredictable(outcome: SwingOutcome) -> LinkErrorKind {
    let can = |code: &usize| {
        u8::try_from(*code)
            .ok()
            .and_then(|code| choice::<SwingOutcome>(OUTCOMES, code))
            .is_some_and(SwingOutcome::can_be_predicted)
    };
    let choices = (0..OUTCOMES.len()).filter(can).map(|code| OUTCOMES[code]);
    LinkErrorKind::Choice { found: key(&outcome), choices: choices.collect() }
}

/// One choice, which has a usual value.
fn choose_one<T: Serialize + DeserializeOwned + Default>(
    key: &str,
    chosen: &mut T,
    keys: Keys,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    let mut one = Some(std::mem::take(chosen));
    choose(key, &mut one, keys, to)?;
    *chosen = one.unwrap_or_default();
    Ok(())
}

/// One choice, which is not written at its usual value.
fn choose_unusual<T: Serialize + DeserializeOwned + Default + PartialEq>(
    key: &str,
    chosen: &mut T,
    keys: Keys,
    to: &mut dyn Visit,
) -> Result<(), LinkError> {
    let mut one = Some(std::mem::take(chosen)).filter(|one| *one != T::default());
    choose(key, &mut one, keys, to)?;
    *chosen = one.unwrap_or_default();
    Ok(())
}

/// As many versions of a prediction as there can be.
struct Versions([Version; MOST_VERSIONS]);

#[derive(Default)]
struct Version {
    outcome: Option<SwingOutcome>,
    because: String,
    swings_seen: Option<u16>,
}

impl Versions {
    fn of(predictions: &Predictions) -> Self {
        let mut versions = Self(Default::default());
        for (version, known) in versions.0.iter_mut().zip(predictions.versions()) {
            *version = Version {
                outcome: Some(known.outcome),
                because: known.because.clone(),
                swings_seen: Some(known.swings_seen.into()).filter(|&seen| seen > 0),
            };
        }
        versions
    }

    fn key(version: usize, what: &str) -> String {
        format!("prediction_{}_{what}", version + 1)
    }

    fn visit(&mut self, i: usize, to: &mut dyn Visit) -> Result<(), LinkError> {
        let version = &mut self.0[i];
        choose(&Self::key(i, "outcome"), &mut version.outcome, OUTCOMES, to)?;
        let because = Slot::Text(&mut version.because, BECAUSE_CHARS);
        to.visit(&Self::key(i, "because"), because)?;
        let seen = Slot::Count(&mut version.swings_seen, 0, u8::MAX.into());
        to.visit(&Self::key(i, "swings_seen"), seen)
    }

    fn predictions(self, to: &mut dyn Visit) -> Result<Predictions, LinkError> {
        let mut versions = Vec::new();
        for (version, i) in self.0.into_iter().zip(0..) {
            let Version { outcome, because, swings_seen } = version;
            let fault = |kind| to.fault(&Self::key(i, "outcome"), kind);
            match outcome {
                Some(outcome) if outcome.can_be_predicted() => {
                    let seen = swings_seen.unwrap_or(0);
                    let swings_seen = u8::try_from(seen).unwrap_or(u8::MAX);
                    versions.push(Prediction { outcome, because, swings_seen });
                }
                Some(outcome) => return Err(fault(unpredictable(outcome))),
                None if because.is_empty() && swings_seen.is_none() => {}
                None => return Err(fault(LinkErrorKind::Empty)),
            }
        }
        // No more than there can be, and none holds a slip.
        Ok(Predictions::try_from(versions).unwrap_or_default())
    }
}

/// As many swings as there can be, and how.
struct Swung {
    setup: [Option<f64>; SwingField::ALL.len()],
    outcomes: Vec<SwingOutcome>,
}

impl Swung {
    fn of(swings: &Swings) -> Self {
        let is_swung = !swings.outcomes().is_empty();
        let outcomes = swings.outcomes().to_vec();
        let setup =
            SwingField::ALL.map(|field| is_swung.then(|| field.get(&swings.setup)));
        Self { setup, outcomes }
    }

    fn visit(&mut self, to: &mut dyn Visit) -> Result<(), LinkError> {
        for (value, field) in self.setup.iter_mut().zip(SwingField::ALL) {
            let key = match field {
                SwingField::String => "string_m",
                SwingField::Arm => "arm_m",
                SwingField::Turns => "turns_per_s",
                SwingField::AirDensity => "air_density_g_m3",
            };
            to.visit(key, Slot::Setup(value, field))?;
        }
        outcomes("swing", &mut self.outcomes, MOST_OUTCOMES, to)
    }

    /// `None` without an outcome.
    fn swings(self, to: &mut dyn Visit) -> Result<Option<Swings>, LinkError> {
        if self.outcomes.is_empty() {
            return Ok(None);
        }
        let mut setup = SwingSetup::default();
        for (value, field) in self.setup.into_iter().zip(SwingField::ALL) {
            if let Some(value) = value {
                field.set(&mut setup, value);
            }
        }
        let swings = Swings::new(setup, self.outcomes);
        swings.map(Some).map_err(|e| to.fault("swing_1", LinkErrorKind::Swings(e)))
    }
}

/// The keys of some fields, in their order.
pub(crate) struct KeysOf(pub(crate) Vec<String>);

impl Visit for KeysOf {
    fn visit(&mut self, key: &str, _: Slot<'_>) -> Result<(), LinkError> {
        self.0.push(key.to_owned());
        Ok(())
    }

    fn fault(&self, _: &str, kind: LinkErrorKind) -> LinkError {
        kind.at(crate::At::Table)
    }
}

/// What stands for a group in bytes.
pub(crate) fn group(colour: u8, number: u8) -> Option<Group> {
    Group::new(choice(crate::payload::codes::COLOURS, colour)?, number)
}

/// How many grams a kilogram has.
const GRAMS: f64 = 1000.0;

/// A value of the setup as files and tables write it: the density of the air in whole grams,
/// since a number with three decimals could be taken for thousands.
pub(crate) fn setup_as_written(field: SwingField, value: f64) -> f64 {
    match field {
        SwingField::AirDensity => (value * GRAMS).round(),
        SwingField::String | SwingField::Arm | SwingField::Turns => value,
    }
}

/// The same the other way.
pub(crate) fn setup_as_read(field: SwingField, written: f64) -> f64 {
    match field {
        SwingField::AirDensity => written / GRAMS,
        SwingField::String | SwingField::Arm | SwingField::Turns => written,
    }
}
