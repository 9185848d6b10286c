//! A notebook as a file: JSON that a person can read.

use noseward_lesson::{
    DeletedParts, Group, MOST_TRIALS, Notebook, NotebookError, NotebookParts, Record,
    TrialParts, key,
};
use serde::{Deserialize, Serialize};

use super::NotebookFile;
use super::entry::{Entry, Reader, Writer};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::fields;
use crate::file::{VERSION, check_version, parse, pretty};
use crate::payload::design::crowded;

/// Bytes of a text that is opened as a notebook file, at most: 1 MiB. The largest notebook
/// of rockets without faults takes less.
pub const NOTEBOOK_BYTES: usize = 1024 * 1024;

pub(crate) const MARK: &str = "notebook";

/// A notebook, taken apart, and the rocket beside it.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    noseward: String,
    version: u32,
    #[serde(default)]
    group: Option<String>,
    #[serde(default)]
    settings: Entry,
    #[serde(default)]
    trials: Vec<Entry>,
    #[serde(default)]
    deleted: Vec<Entry>,
    #[serde(default)]
    plans: Vec<String>,
    #[serde(default)]
    conclusion: Entry,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    rocket: Option<Record>,
}

/// As much of a file as tells what it is.
#[derive(Deserialize)]
struct Outline {
    noseward: Option<String>,
    version: Option<u32>,
}

/// The text of a file for a notebook, with [`NotebookFile::rounded`]: JSON that ends with
/// a new line.
///
/// JSON has no way to write a number that is not finite: in a rocket it becomes `null`,
/// and [`open_notebook_file`] will name its line.
#[must_use]
pub fn to_notebook_file(file: &NotebookFile) -> String {
    let NotebookFile { notebook, rocket } = file.clone().rounded();
    let mut parts = NotebookParts::from(notebook);
    let deleted = parts.deleted.iter_mut().map(|DeletedParts { place, trial }| {
        written(|to| {
            fields::trial(trial, to)?;
            fields::place(place, to)
        })
    });
    pretty::json(&File {
        noseward: MARK.into(),
        version: VERSION,
        deleted: deleted.collect(),
        trials: parts
            .trials
            .iter_mut()
            .map(|trial| written(|to| fields::trial(trial, to)))
            .collect(),
        group: Some(parts.group.key()),
        settings: written(|to| fields::settings(&mut parts, to)),
        conclusion: written(|to| fields::conclusion(&mut parts.conclusion, to)),
        plans: parts.plans,
        rocket,
    })
}

fn written(fields: impl FnOnce(&mut Writer) -> Result<(), LinkError>) -> Entry {
    let mut writer = Writer::default();
    fields::written(fields(&mut writer));
    writer.0
}

/// Opens a notebook file. It comes [rounded](NotebookFile::rounded). A trial in it that
/// does not agree with its seal [says so](noseward_lesson::Trial::is_altered), and so does
/// [the whole](Notebook::is_altered).
///
/// # Errors
///
/// [`LinkError`].
pub fn open_notebook_file(text: &str) -> Result<NotebookFile, LinkError> {
    let file = file(text).map_err(|kind| kind.at(At::NotebookFile))?;
    let refused = |error| LinkErrorKind::Notebook(error).at(At::NotebookFile);
    if file.trials.len() + file.deleted.len() > MOST_TRIALS {
        return Err(refused(NotebookError::TooManyTrials));
    }
    let mut parts = NotebookParts { plans: file.plans, ..NotebookParts::default() };
    if let Some(group) = file.group {
        parts.group = Group::from_key(&group).ok_or_else(|| {
            let place = At::Entry { list: MARK, place: 1, key: "group".into() };
            LinkErrorKind::NotAGroup { found: group }.at(place)
        })?;
    }
    read(file.settings, "settings", 1, |from| fields::settings(&mut parts, from))?;
    read(file.conclusion, "conclusion", 1, |from| {
        fields::conclusion(&mut parts.conclusion, from)
    })?;
    for (entry, place) in file.trials.into_iter().zip(1..) {
        let mut trial = TrialParts::default();
        read(entry, "trials", place, |from| fields::trial(&mut trial, from))?;
        parts.trials.push(trial);
    }
    for (entry, at) in file.deleted.into_iter().zip(1..) {
        let mut deleted =
            DeletedParts { place: usize::MAX, trial: TrialParts::default() };
        read(entry, "deleted", at, |from| {
            fields::trial(&mut deleted.trial, from)?;
            fields::place(&mut deleted.place, from)
        })?;
        parts.deleted.push(deleted);
    }
    let rocket = file.rocket;
    if let Some(kind) = rocket.as_ref().and_then(|rocket| crowded(&rocket.design)) {
        return Err(kind.at(At::NotebookFile));
    }
    let notebook = Notebook::try_from(parts).map_err(refused)?;
    Ok(NotebookFile { notebook, rocket }.rounded())
}

fn read(
    entry: Entry,
    list: &'static str,
    place: usize,
    fields: impl FnOnce(&mut Reader) -> Result<(), LinkError>,
) -> Result<(), LinkError> {
    let mut reader = Reader::new(entry, list, place);
    fields(&mut reader)?;
    reader.end()
}

fn file(text: &str) -> Result<File, LinkErrorKind> {
    if text.len() > NOTEBOOK_BYTES {
        return Err(LinkErrorKind::TooLarge { bytes: text.len() });
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if !text.trim_start().starts_with('{') {
        return Err(LinkErrorKind::Nothing);
    }
    let outline: Outline = parse(text)?;
    check_version(MARK, outline.noseward.as_deref(), outline.version)?;
    parse(text)
}

/// A name for the file of a notebook, such as `noseward-notebook-blue-4.json`.
#[must_use]
pub fn notebook_file_name(notebook: &Notebook) -> String {
    let group = notebook.group;
    format!("noseward-notebook-{}-{}.json", key(&group.colour), group.number())
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Colour, Draft, SwingOutcome, Swings, Telling};
    use noseward_stability::{Example, SwingSetup};
    use serde_json::Value;

    fn file() -> NotebookFile {
        let mut notebook = Notebook::default();
        for example in [Example::Tern, Example::Razorbill] {
            notebook.begin(&example.design().into()).unwrap();
        }
        NotebookFile { notebook, rocket: Some(Example::Razorbill.design().into()) }
    }

    #[test]
    fn what_is_saved_can_be_opened() {
        for file in [file(), NotebookFile { rocket: None, ..file() }] {
            let text = to_notebook_file(&file);
            assert_eq!(open_notebook_file(&text), Ok(file.clone()));
            let windows = format!("\u{feff}{}", text.replace('\n', "\r\n"));
            assert_eq!(open_notebook_file(&windows), Ok(file));
        }
    }

    #[test]
    fn what_is_told_when_stands_in_the_file() {
        let mut file = file();
        for telling in Telling::ALL {
            file.notebook.telling = telling;
            let text = to_notebook_file(&file);
            let line = format!(",\n    \"telling\": \"{}\"\n", key(&telling));
            // The usual one goes without saying.
            assert_eq!(text.contains(&line), telling != Telling::All, "{text}");
            assert_eq!(open_notebook_file(&text), Ok(file.clone()));
            let without = open_notebook_file(&text.replacen(&line, "\n", 1)).unwrap();
            assert_eq!(without.notebook.telling, Telling::All);
            assert!(!without.notebook.is_altered(), "a setting is not sealed");
        }
    }

    #[test]
    fn other_texts_are_no_notebook() {
        for text in [
            "",
            "hello",
            "[]",
            "{}",
            "{\"noseward\": \"rocket\", \"version\": 1}",
            "{\"noseward\": \"notebook\", \"version\": 0}",
        ] {
            let error = LinkErrorKind::Nothing.at(At::NotebookFile);
            assert_eq!(open_notebook_file(text), Err(error), "{text}");
        }
        let newer = "{\"noseward\": \"notebook\", \"version\": 2, \"pages\": 4}";
        let error = LinkErrorKind::Newer { version: 2 }.at(At::NotebookFile);
        assert_eq!(open_notebook_file(newer), Err(error));
    }

    #[test]
    fn what_is_wrong_is_named_with_its_place() {
        use LinkErrorKind as Kind;
        let text = to_notebook_file(&file());
        let fault = |text: &str| {
            let LinkError { kind, at } = open_notebook_file(text).unwrap_err();
            assert_eq!(at, At::NotebookFile);
            kind
        };
        let twice = text.replacen("\"trial\": 2", "\"trial\": 1", 1);
        assert_eq!(fault(&twice), Kind::Notebook(NotebookError::Numbers));
        let lines = text[..text.len() / 2].lines().count();
        assert_eq!(fault(&text[..text.len() / 2]), Kind::EndsInLine { line: lines });
        let comma = fault(&text.replacen("\"version\": 1,", "\"version\": 1", 1));
        assert!(matches!(comma, Kind::Syntax { line: 4, .. }), "{comma:?}");
        let field = fault(&text.replacen("\"plans\"", "\"plan\"", 1));
        let Kind::Content { detail, .. } = field else { panic!("{field:?}") };
        assert!(detail.starts_with("unknown field `plan`"), "{detail}");
        let number = text.replacen("\"length_mm\": 90", "\"length_mm\": \"90\"", 1);
        let number = fault(&number);
        assert!(matches!(number, Kind::Content { line: 19, .. }), "{number:?}");
        let bytes = NOTEBOOK_BYTES + 1;
        assert_eq!(fault(&" ".repeat(bytes)), Kind::TooLarge { bytes });
    }

    /// What a field must hold, and what is told where it does not.
    #[test]
    fn a_value_that_cannot_be_is_named_with_its_place() {
        use LinkErrorKind as Kind;
        let mut file = NotebookFile { rocket: None, ..file() };
        let trial = file.notebook.trial_mut(2).unwrap();
        trial.measured.mass.mm[0] = Some(141.5);
        trial.note = "Windy".into();
        trial.draft.outcome = Some(SwingOutcome::Steady);
        let text = to_notebook_file(&file);
        let count =
            |found: &str| Kind::Count { found: found.into(), least: 1, most: 65_534 };
        let outcomes = crate::payload::codes::OUTCOMES.to_vec();
        let long = format!("{:?}", "x".repeat(501));
        for (right, wrong, key, kind) in [
            (
                "141.5",
                "\"141\"",
                "centre_of_mass_reading_1_mm",
                Kind::NotANumber { found: "141".into() },
            ),
            ("\"trial\": 2", "\"trial\": 2.5", "trial", count("2.5")),
            ("\"trial\": 2", "\"trial\": 70000", "trial", count("70000")),
            (
                "\"steady\"",
                "\"stedy\"",
                "draft_outcome",
                Kind::Choice { found: "stedy".into(), choices: outcomes },
            ),
            ("\"Windy\"", "7", "note", Kind::NotAText { found: "7".into() }),
            ("\"Windy\"", &long, "note", Kind::TooLong { chars: 501, most: 500 }),
            ("\"note\"", "\"notes\"", "notes", Kind::Unknown { key: "notes".into() }),
            ("\"rocket\": {", "\"rockets\": {", "rocket", Kind::Empty),
        ] {
            let at = text.rfind(right).unwrap();
            let changed = format!("{}{wrong}{}", &text[..at], &text[at + right.len()..]);
            let place = At::Entry { list: "trials", place: 2, key: key.into() };
            assert_eq!(open_notebook_file(&changed), Err(kind.at(place)), "{wrong}");
        }
        let at = text.rfind("\"rocket\": {").unwrap();
        let twice = format!("{}\"note\": \"a\", {}", &text[..at], &text[at..]);
        let twice = open_notebook_file(&twice).unwrap_err();
        let Kind::Content { detail, .. } = twice.kind else { panic!("{twice:?}") };
        assert_eq!(detail, "duplicate field `note`");
        let group = text.replacen("\"blue 1\"", "\"pink 1\"", 1);
        let place = At::Entry { list: MARK, place: 1, key: "group".into() };
        let kind = Kind::NotAGroup { found: "pink 1".into() };
        assert_eq!(open_notebook_file(&group), Err(kind.at(place)));
    }

    /// One trial, predicted and swung twice.
    fn swung() -> NotebookFile {
        let mut notebook = Notebook::default();
        notebook.begin(&Example::Puffin.design().into()).unwrap();
        let trial = notebook.trial_mut(1).unwrap();
        let outcome = Some(SwingOutcome::Wobbling);
        trial.draft = Draft { outcome, because: "small fins".into() };
        assert!(notebook.lock(1));
        let seen = [SwingOutcome::Steady, SwingOutcome::Slipped];
        notebook.swing(&Swings::new(SwingSetup::default(), seen).unwrap());
        let trial = notebook.trial_mut(1).unwrap();
        trial.note = "Windy".into();
        trial.draft.because = "hmm".into();
        trial.measured.pressure.mm[1] = Some(200.0);
        NotebookFile { notebook, rocket: None }
    }

    /// What a group writes whenever it likes.
    const FREE: [&str; 6] = [
        "/compared_with",
        "/plan",
        "/note",
        "/draft_",
        "/centre_of_pressure_",
        "/centre_of_mass_",
    ];

    #[test]
    fn every_sealed_value_that_is_changed_by_hand_is_told() {
        let text = to_notebook_file(&swung());
        let json: Value = serde_json::from_str(&text).unwrap();
        let open = |json: &Value| open_notebook_file(&json.to_string());
        assert_eq!(open(&json), Ok(swung()));
        let mut tried = Vec::new();
        let trial = "/trials/0";
        for pointer in leaves(json.pointer(trial).unwrap(), String::new()) {
            let is_free = FREE.iter().any(|free| pointer.starts_with(free));
            for other in others(json.pointer(&format!("{trial}{pointer}")).unwrap()) {
                let mut json = json.clone();
                *json.pointer_mut(&format!("{trial}{pointer}")).unwrap() = other;
                let Ok(file) = open(&json) else { continue };
                let trial = &file.notebook.trials()[0];
                assert_eq!(trial.is_altered(), !is_free, "{pointer}");
                // Writing it anew does not make it good.
                let again = open_notebook_file(&to_notebook_file(&file)).unwrap();
                assert_eq!(again.notebook.trials()[0].is_altered(), !is_free);
                tried.push(pointer.clone());
            }
        }
        for pointer in [
            "/trial",
            "/rocket/name",
            "/rocket/sections/0/kind",
            "/rocket/sections/1/closed_front",
            "/rocket/sections/1/mass/weighed_g",
            "/rocket/fins/0/mass/material",
            "/rocket/fins/0/count",
            "/rocket/weights/0/label",
            "/prediction_1_outcome",
            "/prediction_1_because",
            "/string_m",
            "/air_density_g_m3",
            "/swing_1",
            "/swing_2",
            "/seal",
            "/note",
            "/centre_of_pressure_reading_2_mm",
        ] {
            assert!(tried.iter().any(|tried| tried == pointer), "{pointer}: {tried:?}");
        }
    }

    /// The places of all values that hold no others.
    fn leaves(json: &Value, at: String) -> Vec<String> {
        match json {
            Value::Array(list) => {
                let all = list.iter().enumerate();
                all.flat_map(|(i, value)| leaves(value, format!("{at}/{i}"))).collect()
            }
            Value::Object(map) => map
                .iter()
                .flat_map(|(key, value)| leaves(value, format!("{at}/{key}")))
                .collect(),
            _ => vec![at],
        }
    }

    /// Values that may stand in place of another: those that cannot are refused.
    fn others(value: &Value) -> Vec<Value> {
        match value {
            Value::Bool(is) => vec![(!is).into()],
            // Some are possible outcomes, kinds, materials or seals of something.
            Value::String(text) => {
                ["steady", "wobbling", "cone", "balsa3", "tail", "Blue", "00000007"]
                    .into_iter()
                    .filter(|other| text != other)
                    .map(Into::into)
                    .collect()
            }
            Value::Number(number) => {
                vec![(number.as_f64().unwrap_or(0.0) * 2.0 + 1.0).into()]
                    .into_iter()
                    .chain(number.as_u64().map(|whole| (whole * 2 + 1).into()))
                    .collect()
            }
            Value::Null => vec![7.into(), 9.5.into(), "00000007".into()],
            _ => Vec::new(),
        }
    }

    #[test]
    fn a_file_is_named_after_its_group() {
        let mut notebook = Notebook::default();
        notebook.group = Group::new(Colour::Blue, 4).unwrap();
        assert_eq!(notebook_file_name(&notebook), "noseward-notebook-blue-4.json");
    }

    /// Each trial, and each part of a rocket, would be work for everything that follows.
    #[test]
    fn a_crowd_is_refused_before_any_work() {
        let trial = r#"{"trial":1,"rocket":{"sections":[]}},"#;
        let notebook = |trials: &str| {
            let trials = trials.trim_end_matches(',');
            format!(r#"{{"noseward":"notebook","version":1,"trials":[{trials}]}}"#)
        };
        let many = open_notebook_file(&notebook(&trial.repeat(20_000)));
        let kind = LinkErrorKind::Notebook(NotebookError::TooManyTrials);
        assert_eq!(many, Err(kind.at(At::NotebookFile)));
        let weights = r#"{"mass_g":1,"position_mm":2},"#.repeat(30_000);
        let weights =
            format!(r#""weights":[{}],"sections""#, weights.trim_end_matches(','));
        let many =
            open_notebook_file(&notebook(&trial.replace("\"sections\"", &weights)));
        let kind = LinkErrorKind::Crowded { list: "weights", count: 30_000, most: 13 };
        assert_eq!(many, Err(kind.at(At::NotebookFile)));
    }
}
