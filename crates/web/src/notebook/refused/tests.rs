//! What is said of each fault.

use super::*;
use crate::places::labels::in_languages;
use noseward_lesson::SwingsError;

fn at(kind: Kind, at: At) -> String {
    said(&LinkError { kind, at })
}

/// One of each kind, but for those of tables.
fn kinds() -> Vec<Kind> {
    let detail = || "x".to_owned();
    vec![
        Kind::TooLarge { bytes: 300_000 },
        Kind::Nothing,
        Kind::Newer { version: 2 },
        Kind::Unknown { key: "fin_foil".into() },
        Kind::CutShort,
        Kind::Changed,
        Kind::EndsEarly { row: 5 },
        Kind::Character { row: 1, character: 'U' },
        Kind::Rows { rows: vec![3] },
        Kind::Rows { rows: vec![2, 4, 5] },
        Kind::TooFew { row: 2 },
        Kind::TooMany { row: 2 },
        Kind::MissingRow { row: 2 },
        Kind::RowTwice { row: 2 },
        Kind::Swapped { rows: (2, 3) },
        Kind::OtherNotebook,
        Kind::EndsInLine { line: 7 },
        Kind::Syntax { line: 7, column: 8, detail: detail() },
        Kind::Content { line: 7, column: 8, detail: detail() },
        Kind::Crowded { list: "weights", count: 6000, most: 13 },
        Kind::Notebook(NotebookError::TooManyTrials),
        Kind::Notebook(NotebookError::TooManyPlans),
        Kind::Notebook(NotebookError::Numbers),
    ]
}

fn table_kinds() -> Vec<Kind> {
    let found = || "x".to_owned();
    let error = || LinkError { kind: Kind::Nothing, at: At::File };
    vec![
        Kind::TooLarge { bytes: 3_000_000 },
        Kind::Nothing,
        Kind::CutShort,
        Kind::Newer { version: 2 },
        Kind::TwoColumns { column: found() },
        Kind::TooManyCells,
        Kind::TwoRows { kind: "notebook" },
        Kind::Choice { found: found(), choices: vec!["nose", "tail"] },
        Kind::NotANumber { found: found() },
        Kind::Ambiguous { found: found() },
        Kind::Count { found: found(), least: 1, most: 3 },
        Kind::TooLong { chars: 501, most: 500 },
        Kind::NotAGroup { found: found() },
        Kind::OtherGroup { found: found() },
        Kind::Taken { id: 3 },
        Kind::Empty,
        Kind::NotARocket { error: Box::new(error()) },
        Kind::NotAText { found: found() },
        Kind::NotASeal { found: found() },
        Kind::NotRules { found: found() },
        Kind::NotAClass { found: found() },
        Kind::NotANotebook { error: Box::new(error()) },
        Kind::Misplaced { found: found(), kind: "trial" },
        Kind::Swings(SwingsError),
        Kind::Notebook(NotebookError::TooManyTrials),
        Kind::Notebook(NotebookError::TooManyPlans),
        Kind::Notebook(NotebookError::Numbers),
    ]
}

#[test]
fn every_kind_has_words_of_its_own_in_every_language() {
    in_languages(&|| {
        let mut all: Vec<String> =
            kinds().into_iter().map(|kind| at(kind, At::Code)).collect();
        all.extend(table_kinds().into_iter().map(|kind| at(kind, At::Table)));
        for (i, said) in all.iter().enumerate() {
            assert!(said.ends_with('.') && !said.contains("  "), "{said}");
            assert!(!all[..i].contains(said), "{said}");
        }
    });
}

#[test]
fn the_words_say_where_to_look() {
    let code = |kind| at(kind, At::Code);
    let rows = |rows: &[usize]| Kind::Rows { rows: rows.to_vec() };
    assert_eq!(
        code(rows(&[3])),
        "Row 3 has a wrong character: compare it with the paper."
    );
    assert_eq!(
        code(rows(&[2, 4, 5])),
        "Rows 2, 4 and 5 are wrong: compare them with the paper."
    );
    assert_eq!(
        code(Kind::Character { row: 1, character: 'U' }),
        "Row 1 has “U”, which no code has: compare it with the paper."
    );
    let part = at(Kind::EndsEarly { row: 5 }, At::Part(Some(2)));
    assert_eq!(part, "Part 2: The code ends too early: row 5 is missing or short.");
    let unknown = at(Kind::Unknown { key: "fin_foil".into() }, At::Link);
    assert!(unknown.contains("does not know: “fin_foil”"), "{unknown}");
    let cell = at(Kind::Empty, At::Cell { row: 3, column: "note".into() });
    assert!(cell.starts_with("Row 3, column “note”: this is empty"), "{cell}");
    let row = at(Kind::TooManyCells, At::TableRow(8));
    assert!(row.starts_with("Row 8: there are more cells than columns"), "{row}");
    let entry = At::Entry { list: "trials", place: 2, key: "note".into() };
    let entry = at(Kind::NotAText { found: "7".into() }, entry);
    assert!(entry.starts_with("In “trials”, number 2, “note”: 7 is no text."), "{entry}");
    let cut = at(Kind::CutShort, At::Table);
    assert!(cut.contains("the line “--- end of noseward table ---” is missing"), "{cut}");
    let error = Box::new(LinkError { kind: Kind::CutShort, at: At::Link });
    let rocket =
        at(Kind::NotARocket { error }, At::Cell { row: 2, column: "rocket".into() });
    assert_eq!(
        rocket,
        "Row 2, column “rocket”: there is no rocket in this (This link was cut short on its \
         way). Copy the link of the rocket into it again."
    );
}

#[test]
fn the_words_are_those_of_what_was_opened() {
    use Kind::{
        Changed, Content, Crowded, Newer, Notebook, Nothing, OtherNotebook, TooLarge,
    };
    let large = || TooLarge { bytes: 3 << 20 };
    let content = || Content { line: 7, column: 8, detail: "x".into() };
    let crowded = |list| Crowded { list, count: 6000, most: 13 };
    let newer = || Newer { version: 2 };
    for (kind, place, words) in [
        (Changed, At::Link, "This link was changed on its way"),
        (Changed, At::File, "This link was changed on its way"),
        (Changed, At::Code, "its rows do not tell where"),
        (Changed, At::Result, "its rows do not tell where"),
        (Changed, At::Part(Some(2)), "Part 2: Something in this code is wrong"),
        (Changed, At::Part(None), "together they make no notebook"),
        (Nothing, At::Code, "A code begins with R1."),
        (Nothing, At::Part(None), "A part begins with N1."),
        (Nothing, At::Result, "begins with T1."),
        (Nothing, At::NotebookFile, "There is no notebook in this."),
        (Nothing, At::Table, "There is no table of a notebook in this."),
        (Nothing, At::File, "no rocket and no notebook in this."),
        (OtherNotebook, At::Part(Some(2)), "This part belongs to another notebook"),
        (newer(), At::Link, "This link was made by a newer version of this page."),
        (newer(), At::Part(None), "This code was made by a newer version of this page."),
        (newer(), At::File, "This file was made by a newer version of this page."),
        (newer(), At::Table, "This table was made by a newer version of this page."),
        (large(), At::File, "too large to be a rocket (3072 KB)"),
        (large(), At::NotebookFile, "too large to be a notebook (3072 KB)"),
        (large(), At::Table, "too large to be the table of a notebook (3072 KB)"),
        (large(), At::Link, "This link is longer than any"),
        (large(), At::Result, "This code is longer than any"),
        (
            content(),
            At::File,
            "in a rocket file at line 7, column 8, or just before it: x.",
        ),
        (content(), At::NotebookFile, "or save the notebook again."),
        (crowded("sections"), At::File, "has 6000 body sections,"),
        (crowded("fins"), At::File, "has 6000 sets of fins,"),
        (crowded("own_outline_mm"), At::File, "has 6000 corners in one fin,"),
        (crowded("weights"), At::File, "has 6000 weights,"),
        (
            Notebook(NotebookError::TooManyTrials),
            At::NotebookFile,
            "These trials make no notebook: a notebook has room for 40 trials, deleted ones \
             included. Save the notebook again.",
        ),
        (
            Notebook(NotebookError::TooManyPlans),
            At::Table,
            "These rows make no notebook: a notebook has room for 12 plans. Take rows out, or \
             save the table again.",
        ),
    ] {
        let said = at(kind, place);
        assert!(said.contains(words), "{words}: {said}");
        assert_eq!(said.contains("Part 2:"), words.contains("Part 2:"), "{said}");
    }
}
