//! A notebook as a file: JSON that a person can read.

use noseward_lesson::{Notebook, Record};
use serde::{Deserialize, Serialize};

use super::NotebookFile;
use crate::file::{FileError, parse, pretty};

/// Bytes of a text that is opened as a notebook file, at most: 1 MiB. The largest notebook
/// of rockets without faults takes less.
pub const NOTEBOOK_BYTES: usize = 1024 * 1024;

pub(crate) const MARK: &str = "notebook";
/// The newest version that is known here.
const NEWEST: u32 = 1;

/// Why a text cannot be opened as a notebook file. Its own text is for a pupil, and says
/// how to mend it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum NotebookFileError {
    /// It is larger than [`NOTEBOOK_BYTES`].
    #[error(
        "This file is too large to be a notebook ({} KB). Choose a file that this page \
         saved.",
        bytes / 1024
    )]
    TooLarge {
        /// Its size.
        bytes: usize,
    },
    /// It is no notebook file.
    #[error("There is no notebook in this. Choose a notebook file that this page saved.")]
    NotANotebook,
    /// It has a version that is not known here.
    #[error(
        "This notebook was saved by a newer version of this page. Reload the page, then \
         open the file again."
    )]
    Newer {
        /// The version it names.
        version: u32,
    },
    /// It stops in the middle, or is not JSON: [`FileError::EndsEarly`] or
    /// [`FileError::Syntax`].
    #[error(transparent)]
    Json(FileError),
    /// It is JSON, but not of a notebook.
    #[error(
        "Something does not belong in a notebook file at line {line}, column {column}, \
         or just before it: {detail}. Mend it there, or save the notebook again."
    )]
    Content {
        /// Where reading stopped, from 1.
        line: usize,
        /// Where reading stopped, from 1.
        column: usize,
        /// What was found, and what was expected.
        detail: String,
    },
}

/// Version 1.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct FileV1 {
    noseward: String,
    version: u32,
    notebook: Notebook,
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
    pretty::json(&FileV1 { noseward: MARK.into(), version: NEWEST, notebook, rocket })
}

/// Opens a notebook file. It comes [rounded](NotebookFile::rounded). A trial in it whose
/// locked part does not agree with its seal [says so](noseward_lesson::Trial::is_altered).
///
/// # Errors
///
/// Each way in which it can fail is a variant of [`NotebookFileError`].
pub fn open_notebook_file(text: &str) -> Result<NotebookFile, NotebookFileError> {
    if text.len() > NOTEBOOK_BYTES {
        return Err(NotebookFileError::TooLarge { bytes: text.len() });
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if !text.trim_start().starts_with('{') {
        return Err(NotebookFileError::NotANotebook);
    }
    let outline: Outline = parse(text).map_err(said)?;
    match (outline.noseward.as_deref(), outline.version) {
        (Some(MARK), Some(version)) if version > NEWEST => {
            return Err(NotebookFileError::Newer { version });
        }
        (Some(MARK), version) if version != Some(0) => {}
        _ => return Err(NotebookFileError::NotANotebook),
    }
    let FileV1 { notebook, rocket, .. } = parse(text).map_err(said)?;
    Ok(NotebookFile { notebook, rocket }.rounded())
}

/// The same in words for a notebook.
fn said(error: FileError) -> NotebookFileError {
    match error {
        FileError::Content { line, column, detail } => {
            NotebookFileError::Content { line, column, detail }
        }
        other => NotebookFileError::Json(other),
    }
}

/// A name for the file of a notebook, such as `noseward-notebook-blue-4.json`.
#[must_use]
pub fn notebook_file_name(notebook: &Notebook) -> String {
    let group = notebook.group;
    let colour = group.colour.label().to_ascii_lowercase();
    format!("noseward-notebook-{colour}-{}.json", group.number())
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Colour, Group};
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
    fn other_texts_are_no_notebook() {
        for text in [
            "",
            "hello",
            "[]",
            "{}",
            "{\"noseward\": \"rocket\", \"version\": 1}",
            "{\"noseward\": \"notebook\", \"version\": 0}",
        ] {
            let error = NotebookFileError::NotANotebook;
            assert_eq!(open_notebook_file(text), Err(error), "{text}");
        }
        let newer = "{\"noseward\": \"notebook\", \"version\": 2, \"pages\": 4}";
        let error = NotebookFileError::Newer { version: 2 };
        assert_eq!(open_notebook_file(newer), Err(error));
    }

    #[test]
    fn the_words_say_what_is_wrong() {
        let text = to_notebook_file(&file());
        let say = |text: &str| open_notebook_file(text).unwrap_err().to_string();
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
}
