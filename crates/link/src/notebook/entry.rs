//! The fields that go together in a notebook file, as one JSON object: those of a trial, of
//! the settings, of a conclusion. Which there are, [`fields`](crate::fields) says.

use std::fmt;

use noseward_lesson::Seal;
use noseward_stability::{Design, Quantity, cleaned_lines};
use serde::de::{Error, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use serde_json::Value;

use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields::{self, Slot, Visit, front_of};
use crate::payload::design::crowded;

/// The key of the one value that is no number, text or truth.
const ROCKET: &str = "rocket";
/// An object of a file: what has a value, in the order of the fields.
#[derive(Default)]
pub(super) struct Entry(Vec<(String, Held)>);

/// What stands behind a key.
#[derive(Serialize)]
#[serde(untagged)]
enum Held {
    Value(Value),
    Rocket(Box<Design>),
}

impl Serialize for Entry {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(key, held)| (key, held)))
    }
}

impl<'de> Deserialize<'de> for Entry {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(OfFile)
    }
}

struct OfFile;

impl<'de> Visitor<'de> for OfFile {
    type Value = Entry;

    fn expecting(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Entry, A::Error> {
        let mut entry = Entry::default();
        while let Some(key) = map.next_key::<String>()? {
            if entry.0.iter().any(|(known, _)| *known == key) {
                return Err(A::Error::custom(format_args!("duplicate field `{key}`")));
            }
            // Here and not behind a `Value`, so that an error knows its line.
            let held = match key.as_str() {
                ROCKET => Held::Rocket(map.next_value()?),
                _ => Held::Value(map.next_value()?),
            };
            entry.0.push((key, held));
        }
        Ok(entry)
    }
}

/// Writes fields into an object.
#[derive(Default)]
pub(super) struct Writer(pub(super) Entry);

impl Visit for Writer {
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        if slot.is_empty() {
            return Ok(());
        }
        let value = match slot {
            Slot::Mm(value) => (*value).into(),
            Slot::Setup(value, field) => {
                value.map(|value| fields::setup_as_written(field, value)).into()
            }
            Slot::Count(count, ..) => (*count).into(),
            Slot::Choice(code, keys) => {
                let code = code.map_or(usize::MAX, usize::from);
                keys.get(code).copied().into()
            }
            Slot::Text(text, _) => text.as_str().into(),
            Slot::Flag(is) => (*is).into(),
            Slot::Seal(seal) => seal.map(|seal| seal.to_string()).into(),
            Slot::Rocket(record) => {
                let rocket = Held::Rocket(Box::new(record.design.clone()));
                self.0.0.push((key.to_owned(), rocket));
                return Ok(());
            }
        };
        self.0.0.push((key.to_owned(), Held::Value(value)));
        Ok(())
    }

    fn fault(&self, _: &str, kind: LinkErrorKind) -> LinkError {
        kind.at(At::NotebookFile)
    }
}

/// Reads fields from an object. Whoever is done asks [`end`](Self::end) whether anything is
/// left.
pub(super) struct Reader {
    entry: Entry,
    /// The list that it stands in, and its place there, from 1.
    list: &'static str,
    place: usize,
}

impl Reader {
    pub(super) fn new(entry: Entry, list: &'static str, place: usize) -> Self {
        Self { entry, list, place }
    }

    /// # Errors
    ///
    /// [`LinkErrorKind::Unknown`] for a value that no field took.
    pub(super) fn end(self) -> Result<(), LinkError> {
        match self.entry.0.first() {
            None => Ok(()),
            Some((key, _)) => {
                Err(self.fault(key, LinkErrorKind::Unknown { key: key.clone() }))
            }
        }
    }

    fn take(&mut self, key: &str) -> Option<Held> {
        let at = self.entry.0.iter().position(|(known, _)| known == key)?;
        Some(self.entry.0.remove(at).1)
    }

    fn number(&self, key: &str, value: &Value) -> Result<f64, LinkError> {
        let fault = || self.fault(key, LinkErrorKind::NotANumber { found: shown(value) });
        value.as_f64().ok_or_else(fault)
    }
}

impl Visit for Reader {
    fn visit(&mut self, key: &str, slot: Slot<'_>) -> Result<(), LinkError> {
        let value = match (self.take(key), &slot) {
            (Some(Held::Value(value)), _) if !value.is_null() => value,
            (Some(Held::Rocket(design)), Slot::Rocket(_)) => {
                return rocket(slot, *design);
            }
            (_, Slot::Rocket(_)) => return Err(self.fault(key, LinkErrorKind::Empty)),
            _ => return Ok(()),
        };
        let text = value.as_str();
        match slot {
            Slot::Mm(mm) => {
                *mm = Some(Quantity::Length.rounded(self.number(key, &value)?));
            }
            Slot::Setup(set, field) => {
                let read = self.number(key, &value)?;
                *set = Some(fields::setup_as_read(field, read));
            }
            Slot::Count(count, least, most) => {
                let read = value.as_u64().and_then(|read| u16::try_from(read).ok());
                let read = read.filter(|read| (least..=most).contains(read));
                *count = Some(read.ok_or_else(|| {
                    let found = shown(&value);
                    self.fault(key, LinkErrorKind::Count { found, least, most })
                })?);
            }
            Slot::Choice(code, keys) => {
                let at = keys.iter().position(|known| Some(*known) == text);
                let at = at.and_then(|at| u8::try_from(at).ok());
                *code = Some(at.ok_or_else(|| {
                    let (found, choices) = (shown(&value), keys.to_vec());
                    self.fault(key, LinkErrorKind::Choice { found, choices })
                })?);
            }
            Slot::Text(to, most) => {
                let text = text.ok_or_else(|| {
                    self.fault(key, LinkErrorKind::NotAText { found: shown(&value) })
                })?;
                *to = cleaned_lines(text, usize::MAX);
                let chars = to.chars().count();
                if chars > most {
                    return Err(self.fault(key, LinkErrorKind::TooLong { chars, most }));
                }
            }
            Slot::Flag(is) => {
                *is = value.as_bool().ok_or_else(|| {
                    let (found, choices) = (shown(&value), vec!["true", "false"]);
                    self.fault(key, LinkErrorKind::Choice { found, choices })
                })?;
            }
            Slot::Seal(seal) => {
                let read = text.and_then(|text| text.parse::<Seal>().ok());
                *seal = Some(read.ok_or_else(|| {
                    self.fault(key, LinkErrorKind::NotASeal { found: shown(&value) })
                })?);
            }
            Slot::Rocket(_) => {}
        }
        Ok(())
    }

    fn fault(&self, key: &str, kind: LinkErrorKind) -> LinkError {
        let (list, place) = (self.list, self.place);
        kind.at(At::Entry { list, place, key: key.to_owned() })
    }
}

/// Puts a rocket into its field.
fn rocket(slot: Slot<'_>, design: Design) -> Result<(), LinkError> {
    // Before any more work is done with it.
    match (crowded(&design), slot) {
        (Some(kind), _) => Err(kind.at(At::NotebookFile)),
        (None, Slot::Rocket(record)) => {
            *record = design.into();
            Ok(())
        }
        (None, _) => Ok(()),
    }
}

/// The front of a value.
fn shown(value: &Value) -> String {
    match value.as_str() {
        Some(text) => front_of(text),
        None => front_of(&value.to_string()),
    }
}
