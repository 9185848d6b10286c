//! A notebook as a file: JSON that a person can read.

use noseward_lesson::{Notebook, NotebookParts, Record, key};
use serde::{Deserialize, Serialize};

use super::NotebookFile;
use crate::error::{At, LinkError, LinkErrorKind};
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
    notebook: NotebookParts,
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
    let notebook = notebook.into();
    pretty::json(&File { noseward: MARK.into(), version: VERSION, notebook, rocket })
}

/// Opens a notebook file. It comes [rounded](NotebookFile::rounded). A trial in it that
/// does not agree with its seal [says so](noseward_lesson::Trial::is_altered), and so does
/// [the whole](Notebook::is_altered).
///
/// # Errors
///
/// [`LinkError`].
pub fn open_notebook_file(text: &str) -> Result<NotebookFile, LinkError> {
    open(text).map_err(|kind| kind.at(At::NotebookFile))
}

fn open(text: &str) -> Result<NotebookFile, LinkErrorKind> {
    if text.len() > NOTEBOOK_BYTES {
        return Err(LinkErrorKind::TooLarge { bytes: text.len() });
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if !text.trim_start().starts_with('{') {
        return Err(LinkErrorKind::Nothing);
    }
    let outline: Outline = parse(text)?;
    check_version(MARK, outline.noseward.as_deref(), outline.version)?;
    let File { notebook, rocket, .. } = parse(text)?;
    // Before any more work is done with them.
    let rockets = rocket.iter().map(|rocket| &rocket.design);
    let trials = notebook.trials.iter().map(|trial| &trial.design);
    let deleted = notebook.deleted.iter().map(|deleted| &deleted.trial.design);
    if let Some(kind) = rockets.chain(trials).chain(deleted).find_map(crowded) {
        return Err(kind);
    }
    let notebook = Notebook::try_from(notebook).map_err(LinkErrorKind::Notebook)?;
    Ok(NotebookFile { notebook, rocket }.rounded())
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
    use noseward_lesson::{Colour, Group, NotebookError, Telling};
    use noseward_stability::Example;

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
            let line = format!("\n    \"telling\": \"{}\",\n", key(&telling));
            assert!(text.contains(&line), "{line}");
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
    fn the_words_say_what_is_wrong() {
        let text = to_notebook_file(&file());
        let say = |text: &str| open_notebook_file(text).unwrap_err().sentence();
        let twice = text.replacen("\"id\": 2", "\"id\": 1", 1);
        assert!(say(&twice).contains("two trials have the same number"));
        let cut = say(&text[..text.len() / 2]);
        assert!(cut.starts_with("This file ends too early, in line "), "{cut}");
        let comma = say(&text.replacen("\"version\": 1,", "\"version\": 1", 1));
        assert!(comma.contains("line 4, column"), "{comma}");
        let field = say(&text.replacen("\"plans\"", "\"plan\"", 1));
        assert!(field.starts_with("Something does not belong in a notebook file"));
        let large = say(&" ".repeat(NOTEBOOK_BYTES + 1));
        assert!(large.contains("too large") && large.contains("1024 KB"), "{large}");
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
        let trial = r#"{"id":1,"design":{"sections":[]}},"#;
        let notebook = |trials: &str| {
            let trials = trials.trim_end_matches(',');
            format!(
                r#"{{"noseward":"notebook","version":1,"notebook":{{"trials":[{trials}]}}}}"#
            )
        };
        let many = open_notebook_file(&notebook(&trial.repeat(30_000)));
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
