//! A record as a file: JSON that a person can read.

pub(crate) mod name;
pub(crate) mod pretty;

use noseward_lesson::{Record, Swings};
use noseward_stability::Design;
use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};
use serde_json::error::Category;

use crate::code::CodeFault;
use crate::link::Damage;
use crate::text::{Text, open_text};

/// Bytes of a text that is opened as a file, at most: 256 KiB.
pub const FILE_BYTES: usize = 256 * 1024;

const MARK: &str = "rocket";
/// The newest version that is known here.
const NEWEST: u32 = 2;

/// Why a text cannot be opened. Its own text is for a pupil, and says how to mend it.
///
/// Lines and columns count from 1.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum FileError {
    /// It is larger than [`FILE_BYTES`].
    #[error(
        "This file is too large to be a rocket ({} KB). Choose a file that this page \
         saved.",
        bytes / 1024
    )]
    TooLarge {
        /// Its size.
        bytes: usize,
    },
    /// It is neither a rocket file, nor a design, nor does it hold a link or a code.
    #[error(
        "There is no rocket and no notebook in this. Choose a file that this page saved, or \
         paste all of a link, a code or a text."
    )]
    NotARocket,
    /// It has a version that is not known here.
    #[error(
        "This file was saved by a newer version of this page. Reload the page, then open \
         the file again."
    )]
    Newer {
        /// The version it names.
        version: u32,
    },
    /// It stops in the middle.
    #[error(
        "This file ends too early, in line {line}. Part of it is missing: copy or save \
         it again."
    )]
    EndsEarly {
        /// Its last line.
        line: usize,
    },
    /// It is not JSON.
    #[error(
        "The file cannot be read at line {line}, column {column}. Look there for a comma, \
         quotation mark or bracket too many or too few ({detail})."
    )]
    Syntax {
        /// Where reading stopped.
        line: usize,
        /// Where reading stopped.
        column: usize,
        /// What a programmer would want to know.
        detail: String,
    },
    /// It is JSON, but not of a design.
    #[error(
        "Something does not belong in a rocket file at line {line}, column {column}, or \
         just before it: {detail}. Mend it there, or save the rocket again."
    )]
    Content {
        /// Where reading stopped.
        line: usize,
        /// Where reading stopped.
        column: usize,
        /// What was found, and what was expected.
        detail: String,
    },
    /// It holds a link that cannot be opened whole.
    #[error(transparent)]
    Link(Damage),
    /// It holds a code that cannot be read.
    #[error(transparent)]
    Code(CodeFault),
}

/// A design: version 1, which is written where there are no swings.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct FileV1 {
    noseward: String,
    version: u32,
    design: Design,
}

/// A design and its swings: version 2.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct FileV2 {
    noseward: String,
    version: u32,
    design: Design,
    swings: Swings,
}

/// As much of a file as tells what it is.
#[derive(Deserialize)]
struct Outline {
    noseward: Option<String>,
    version: Option<u32>,
    sections: Option<IgnoredAny>,
}

/// The text of a file for the record, with [`Record::rounded`]: JSON that ends with a
/// new line. A setup of the swing without an outcome is not kept.
///
/// JSON has no way to write a number that is not finite: it becomes `null`, and
/// [`open_file`] will name its line. [`check`](noseward_stability::check()) stops at such
/// a number too.
#[must_use]
pub fn to_file(record: &Record) -> String {
    let noseward = MARK.into();
    let has_swings = record.has_swings();
    let Record { design, swings } = record.clone().rounded();
    if has_swings {
        pretty::json(&FileV2 { noseward, version: 2, design, swings })
    } else {
        pretty::json(&FileV1 { noseward, version: 1, design })
    }
}

/// Opens a text as [`open_text`] does, where only a whole record will do.
///
/// The record comes [rounded](Record::rounded); whether it makes sense is for
/// [`check`](noseward_stability::check()) to say.
///
/// # Errors
///
/// Each way in which it can fail is a variant of [`FileError`]. A link that was cut short
/// is [`Damage::CutShort`] here; [`open_text`] shows what arrived of it.
pub fn open_file(text: &str) -> Result<Record, FileError> {
    match open_text(text)? {
        Text::Record { record, .. } => Ok(record),
        Text::Partial { .. } => Err(FileError::Link(Damage::CutShort)),
    }
}

/// Opens JSON: a rocket file or a bare design.
pub(crate) fn open_json(text: &str) -> Result<Record, FileError> {
    let outline: Outline = parse(text)?;
    let record = match (outline.noseward.as_deref(), outline.version) {
        (Some(MARK), Some(version)) if version > NEWEST => {
            return Err(FileError::Newer { version });
        }
        (Some(MARK), Some(0)) => return Err(FileError::NotARocket),
        (Some(MARK), Some(2)) => {
            let FileV2 { design, swings, .. } = parse(text)?;
            Record { design, swings }
        }
        (Some(MARK), _) => parse::<FileV1>(text)?.design.into(),
        (Some(_), _) => return Err(FileError::NotARocket),
        (None, _) if outline.sections.is_none() => return Err(FileError::NotARocket),
        (None, _) => parse::<Design>(text)?.into(),
    };
    Ok(record.rounded())
}

/// Reads JSON.
///
/// # Errors
///
/// [`FileError::EndsEarly`], [`FileError::Syntax`] and [`FileError::Content`].
pub(crate) fn parse<'a, T: Deserialize<'a>>(text: &'a str) -> Result<T, FileError> {
    serde_json::from_str(text).map_err(|error| {
        let (line, column) = (error.line(), error.column());
        let place = format!(" at line {line} column {column}");
        let detail = error.to_string();
        let detail = detail.strip_suffix(&place).unwrap_or(&detail).to_owned();
        match error.classify() {
            Category::Eof => FileError::EndsEarly { line },
            Category::Data => FileError::Content { line, column, detail },
            Category::Syntax | Category::Io => FileError::Syntax { line, column, detail },
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hash;
    use noseward_lesson::SwingOutcome;
    use noseward_stability::{BottleSize, Example, check};

    #[test]
    fn what_is_saved_can_be_opened() {
        let examples = Example::ALL.map(Example::design);
        let bottles = BottleSize::ALL.map(BottleSize::design);
        for design in examples.into_iter().chain(bottles) {
            let mut record = Record::from(design);
            let bare = serde_json::to_string(&record.design).unwrap();
            assert_eq!(open_file(&bare), Ok(record.clone()));
            for version in 1..=2 {
                let text = to_file(&record);
                assert!(text.contains(&format!("\"version\": {version},")), "{text}");
                assert_eq!(open_file(&text), Ok(record.clone()), "{text}");
                let windows = format!("\u{feff}{}", text.replace('\n', "\r\n"));
                assert_eq!(open_file(&windows), Ok(record.clone()));
                record.swings.add(SwingOutcome::Sideways);
            }
        }
    }

    #[test]
    fn numbers_are_put_on_the_grid() {
        let tern = Record::from(Example::Tern.design());
        let mut record = tern.clone();
        record.design.sections[0].length_mm = 90.04;
        let bare = serde_json::to_string(&record.design).unwrap();
        assert_eq!(open_file(&bare), Ok(tern.clone()));
        assert_eq!(to_file(&record), to_file(&tern));
    }

    #[test]
    fn a_text_that_holds_a_link_will_do() {
        let record = Record::from(Example::Gannet.design());
        let link = hash(&record);
        for text in [
            link.clone(),
            format!("#{link}\n"),
            format!("Our rocket #1, from class 8#b:\nhttps://x.test/#{link}. Good?\n"),
            format!("(https://x.test/?a=b#{link})"),
        ] {
            assert_eq!(open_file(&text), Ok(record.clone()), "{text}");
        }
        let cut = format!("https://x.test/#{}", &link[..link.len() - 9]);
        assert_eq!(open_file(&cut), Err(FileError::Link(Damage::CutShort)));
        let newer = FileError::Link(Damage::Newer { version: 7 });
        assert_eq!(open_file("see #r7.AAAA"), Err(newer));
    }

    #[test]
    fn what_is_no_rocket_is_said_to_be_none() {
        for text in [
            "",
            "\n",
            "hello #there",
            "[1, 2]",
            "{}",
            "{\"name\": \"Tern\"}",
            "{\"noseward\": \"boat\", \"version\": 1, \"design\": {}}",
            "{\"noseward\": \"rocket\", \"version\": 0}",
        ] {
            assert_eq!(open_file(text), Err(FileError::NotARocket), "{text}");
        }
    }

    #[test]
    fn a_newer_file_is_refused_whatever_it_holds() {
        let text = r#"{"noseward": "rocket", "version": 3, "stages": [{"motor": 1}]}"#;
        assert_eq!(open_file(text), Err(FileError::Newer { version: 3 }));
        let both = r#"{"noseward": "rocket", "version": 4, "design": {"sections": 4}}"#;
        assert_eq!(open_file(both), Err(FileError::Newer { version: 4 }));
    }

    #[test]
    fn the_place_of_a_mistake_is_named() {
        let text = to_file(&Example::Puffin.design().into());
        let line_of = |needle: &str| {
            1 + text.lines().position(|line| line.contains(needle)).unwrap()
        };

        let comma = text.replacen("\"version\": 1,", "\"version\": 1", 1);
        let error = open_file(&comma).unwrap_err();
        assert!(matches!(error, FileError::Syntax { line: 4, .. }), "{error:?}");
        assert!(error.to_string().contains("line 4, column"), "{error}");

        let kind = text.replacen("\"ogive\"", "\"ogre\"", 1);
        let error = open_file(&kind).unwrap_err();
        let FileError::Content { line, detail, .. } = &error else { panic!("{error:?}") };
        assert_eq!(*line, line_of("ogive"));
        assert!(detail.contains("ogre") && detail.contains("ogive"), "{detail}");
        assert!(!detail.contains("line"), "the place is said once: {detail}");

        let field = text.replacen("\"start_mm\"", "\"start_cm\"", 1);
        let error = open_file(&field).unwrap_err();
        let FileError::Content { line, .. } = error else { panic!("{error:?}") };
        assert_eq!(line, line_of("start_mm"));

        let error = open_file(&text[..text.len() / 2]).unwrap_err();
        assert!(matches!(error, FileError::EndsEarly { .. }), "{error:?}");
    }

    #[test]
    fn a_missing_number_is_named_not_guessed() {
        let mut design = Example::Puffin.design();
        design.weights[0].mass_g = f64::NAN;
        let text = to_file(&design.into());
        let error = open_file(&text).unwrap_err();
        let FileError::Content { line, .. } = error else { panic!("{error:?}") };
        assert!(text.lines().nth(line - 1).unwrap().contains("\"mass_g\": null"));
    }

    /// Found by fuzzing: such a number may lose its last digit on the way, and must stay
    /// a fault.
    #[test]
    fn a_number_beyond_all_bounds_stays_beyond_them() {
        let text = to_file(&Example::Tern.design().into()).replacen(
            "\"length_mm\": 90",
            "\"length_mm\": 44444444444444444444444125",
            1,
        );
        let record = open_file(&text).unwrap();
        let faults = check(&record.design);
        assert!(!faults.is_empty());
        assert_eq!(check(&open_file(&to_file(&record)).unwrap().design), faults);
    }

    #[test]
    fn each_version_holds_what_it_holds() {
        let mut record = Record::from(Example::Puffin.design());
        record.swings.setup.string_m = 2.0;
        let plain = to_file(&record);
        assert_eq!(plain, to_file(&Example::Puffin.design().into()));
        for outcome in [SwingOutcome::Slipped, SwingOutcome::Steady] {
            record.swings.add(outcome);
        }
        let text = to_file(&record);
        assert_eq!(open_file(&text), Ok(record));
        let refused = |text: &str, words: &str| match open_file(text) {
            Err(FileError::Content { detail, .. }) => {
                assert!(detail.contains(words), "{detail}");
            }
            other => panic!("{other:?} instead of {words}"),
        };
        // Swings in version 1, none in version 2, and more than there can be.
        refused(&text.replace("\"version\": 2", "\"version\": 1"), "swings");
        refused(&plain.replace("\"version\": 1", "\"version\": 2"), "swings");
        let many = "\"slipped\",".repeat(6);
        refused(&text.replacen("\"slipped\",", &many, 1), "3 that count, 6 in all");
        refused(&text.replace("\"slipped\"", "\"fell\""), "tail_first");
        // Whoever takes all of them out by hand has not swung.
        let none = text.replace("\"slipped\",", "").replace("\"steady\"", "");
        assert_eq!(open_file(&none), Ok(Example::Puffin.design().into()));
    }

    #[test]
    fn size_and_depth_are_bounded() {
        let large = " ".repeat(FILE_BYTES + 1);
        let error = open_file(&large).unwrap_err();
        assert_eq!(error, FileError::TooLarge { bytes: FILE_BYTES + 1 });
        assert!(error.to_string().contains("256 KB"));
        let deep = format!("{{\"a\": {}", "[".repeat(100_000));
        assert!(open_file(&deep).is_err());
        let links = "#r1.".repeat(60_000);
        assert!(open_file(&links).is_err());
        let hashes = "#".repeat(FILE_BYTES);
        assert_eq!(open_file(&hashes), Err(FileError::NotARocket));
    }
}
