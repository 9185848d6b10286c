//! A record as a file: JSON that a person can read.

pub(crate) mod name;
pub(crate) mod pretty;

use noseward_lesson::{Record, Swings};
use noseward_stability::Design;
use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};
use serde_json::error::Category;

use crate::error::{At, LinkError, LinkErrorKind};
use crate::payload::design::crowded;
use crate::text::{Text, open_text};

/// Bytes of a text that is opened as a file, at most: 256 KiB.
pub const FILE_BYTES: usize = 256 * 1024;

const MARK: &str = "rocket";
/// The version of every file.
pub(crate) const VERSION: u32 = 1;

/// A design, and its swings if there are any.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    noseward: String,
    version: u32,
    design: Design,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    swings: Option<Swings>,
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
    let swings = record.has_swings().then(|| record.swings.clone().rounded());
    let design = record.design.clone().rounded();
    pretty::json(&File { noseward: MARK.into(), version: VERSION, design, swings })
}

/// Opens a text as [`open_text`] does, where only a whole record will do.
///
/// The record comes [rounded](Record::rounded); whether it makes sense is for
/// [`check`](noseward_stability::check()) to say.
///
/// # Errors
///
/// [`LinkError`]. A link that was cut short is [`LinkErrorKind::CutShort`] here;
/// [`open_text`] shows what arrived of it.
pub fn open_file(text: &str) -> Result<Record, LinkError> {
    match open_text(text)? {
        Text::Record { record, .. } => Ok(record),
        Text::Partial { .. } => Err(LinkErrorKind::CutShort.at(At::Link)),
    }
}

/// Opens JSON: a rocket file or a bare design.
pub(crate) fn open_json(text: &str) -> Result<Record, LinkError> {
    let read = || -> Result<Record, LinkErrorKind> {
        let outline: Outline = parse(text)?;
        if outline.noseward.is_none() && outline.sections.is_some() {
            return Ok(parse::<Design>(text)?.into());
        }
        check_version(MARK, outline.noseward.as_deref(), outline.version)?;
        let File { design, swings, .. } = parse(text)?;
        Ok(Record { design, swings: swings.unwrap_or_default() })
    };
    let record = read().map_err(|kind| kind.at(At::File))?;
    // Before any more work is done with it.
    match crowded(&record.design) {
        Some(kind) => Err(kind.at(At::File)),
        None => Ok(record.rounded()),
    }
}

/// The design that another program wrote as JSON, as it is.
///
/// # Errors
///
/// What is not as the schema says, in the words of the library that reads JSON: for whoever
/// wrote that program.
pub fn design_of_json(text: &str) -> Result<Design, String> {
    parse(text).map_err(|kind| match kind {
        LinkErrorKind::Syntax { detail, .. } | LinkErrorKind::Content { detail, .. } => {
            detail
        }
        _ => "it is no object".into(),
    })
}

/// Whether a file is one of the kind `mark`, in a version that is known here.
///
/// # Errors
///
/// [`LinkErrorKind::Nothing`] and [`LinkErrorKind::Newer`].
pub(crate) fn check_version(
    mark: &str,
    found: Option<&str>,
    version: Option<u32>,
) -> Result<(), LinkErrorKind> {
    match version.unwrap_or(VERSION) {
        _ if found != Some(mark) => Err(LinkErrorKind::Nothing),
        0 => Err(LinkErrorKind::Nothing),
        VERSION => Ok(()),
        version => Err(LinkErrorKind::Newer { version }),
    }
}

/// Reads JSON.
///
/// # Errors
///
/// [`LinkErrorKind::EndsInLine`], [`LinkErrorKind::Syntax`] and
/// [`LinkErrorKind::Content`].
pub(crate) fn parse<'a, T: Deserialize<'a>>(text: &'a str) -> Result<T, LinkErrorKind> {
    serde_json::from_str(text).map_err(|error| {
        let (line, column) = (error.line(), error.column());
        let place = format!(" at line {line} column {column}");
        let detail = error.to_string();
        let detail = detail.strip_suffix(&place).unwrap_or(&detail).to_owned();
        match error.classify() {
            Category::Eof => LinkErrorKind::EndsInLine { line },
            Category::Data => LinkErrorKind::Content { line, column, detail },
            Category::Syntax | Category::Io => {
                LinkErrorKind::Syntax { line, column, detail }
            }
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
            for _ in 0..2 {
                let text = to_file(&record);
                assert!(text.contains("\"version\": 1,"), "{text}");
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
        assert_eq!(open_file(&cut), Err(LinkErrorKind::CutShort.at(At::Link)));
        let newer = LinkErrorKind::Newer { version: 7 }.at(At::Link);
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
            assert_eq!(
                open_file(text),
                Err(LinkErrorKind::Nothing.at(At::File)),
                "{text}"
            );
        }
    }

    #[test]
    fn a_newer_file_is_refused_whatever_it_holds() {
        let newer = |version| Err(LinkErrorKind::Newer { version }.at(At::File));
        let text = r#"{"noseward": "rocket", "version": 2, "stages": [{"motor": 1}]}"#;
        assert_eq!(open_file(text), newer(2));
        let both = r#"{"noseward": "rocket", "version": 4, "design": {"sections": 4}}"#;
        assert_eq!(open_file(both), newer(4));
    }

    #[test]
    fn the_place_of_a_mistake_is_named() {
        let text = to_file(&Example::Puffin.design().into());
        let line_of = |needle: &str| {
            1 + text.lines().position(|line| line.contains(needle)).unwrap()
        };

        let comma = text.replacen("\"version\": 1,", "\"version\": 1", 1);
        let error = open_file(&comma).unwrap_err();
        assert!(matches!(error.kind, LinkErrorKind::Syntax { line: 4, .. }), "{error:?}");

        let kind = text.replacen("\"tube\"", "\"tub\"", 1);
        let error = open_file(&kind).unwrap_err().kind;
        let LinkErrorKind::Content { line, detail, .. } = &error else {
            panic!("{error:?}")
        };
        assert_eq!(*line, line_of("\"tube\""));
        assert!(detail.contains("`tub`") && detail.contains("`tube`"), "{detail}");
        assert!(!detail.contains("line"), "the place is said once: {detail}");

        let field = text.replacen("\"start_mm\"", "\"start_cm\"", 1);
        let error = open_file(&field).unwrap_err().kind;
        let LinkErrorKind::Content { line, .. } = error else { panic!("{error:?}") };
        assert_eq!(line, line_of("start_mm"));

        let error = open_file(&text[..text.len() / 2]).unwrap_err().kind;
        assert!(matches!(error, LinkErrorKind::EndsInLine { .. }), "{error:?}");
    }

    #[test]
    fn a_missing_number_is_named_not_guessed() {
        let mut design = Example::Puffin.design();
        design.weights[0].mass_g = f64::NAN;
        let text = to_file(&design.into());
        let error = open_file(&text).unwrap_err().kind;
        let LinkErrorKind::Content { line, .. } = error else { panic!("{error:?}") };
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
    fn swings_go_along_where_there_are_any() {
        let mut record = Record::from(Example::Puffin.design());
        record.swings.setup.string_m = 2.0;
        let plain = to_file(&record);
        assert_eq!(plain, to_file(&Example::Puffin.design().into()));
        assert!(!plain.contains("swings"));
        for outcome in [SwingOutcome::Slipped, SwingOutcome::Steady] {
            record.swings.add(outcome);
        }
        let text = to_file(&record);
        assert_eq!(open_file(&text), Ok(record));
        let refused = |text: &str, words: &str| match open_file(text).map_err(|e| e.kind)
        {
            Err(LinkErrorKind::Content { detail, .. }) => {
                assert!(detail.contains(words), "{detail}");
            }
            other => panic!("{other:?} instead of {words}"),
        };
        // More than there can be, and none that there is.
        let many = "\"slipped\",".repeat(6);
        refused(&text.replacen("\"slipped\",", &many, 1), "3 that count, 6 in all");
        refused(&text.replace("\"slipped\"", "\"fell\""), "tail_first");
        // Whoever takes all of them out by hand has not swung.
        let none = text.replace("\"slipped\",", "").replace("\"steady\"", "");
        assert_eq!(open_file(&none), Ok(Example::Puffin.design().into()));
    }

    /// Each part more would be work for everything that follows.
    #[test]
    fn a_crowd_of_parts_is_refused() {
        let weight = r#"{"label":"x","mass_g":1,"position_mm":2},"#;
        let json = |weights: usize| {
            let weights = weight.repeat(weights);
            let bare = serde_json::to_string(&Example::Tern.design()).unwrap();
            let list = format!("\"weights\":[{}]", weights.trim_end_matches(','));
            bare.replace("\"weights\":[]", &list)
        };
        // One too many is still a fault that `check` names.
        let record = open_file(&json(13)).unwrap();
        assert!(!check(&record.design).is_empty());
        assert_eq!(open_file(&to_file(&record)), Ok(record));
        for weights in [14, 6000] {
            let kind =
                LinkErrorKind::Crowded { list: "weights", count: weights, most: 13 };
            assert_eq!(open_file(&json(weights)), Err(kind.at(At::File)));
        }
    }

    #[test]
    fn size_and_depth_are_bounded() {
        let large = " ".repeat(FILE_BYTES + 1);
        let error = open_file(&large).unwrap_err();
        let too_large = LinkErrorKind::TooLarge { bytes: FILE_BYTES + 1 };
        assert_eq!(error, too_large.at(At::File));
        let deep = format!("{{\"a\": {}", "[".repeat(100_000));
        assert!(open_file(&deep).is_err());
        let links = "#r1.".repeat(60_000);
        assert!(open_file(&links).is_err());
        let hashes = "#".repeat(FILE_BYTES);
        assert_eq!(open_file(&hashes), Err(LinkErrorKind::Nothing.at(At::File)));
    }
}
