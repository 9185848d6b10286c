//! The page and DuckDB make the same of the files of many schools.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use noseward_lesson::{
    Band, Class, ClassLabel, Seen, TrialResult, TurningPoint, example_class,
    turning_point,
};
use noseward_link::{Format, class_to_table};
use noseward_many_schools_tests::{
    Along, Counts, FILES_IN_REGION, Merged, Page, RULES, Refused, Schools, every_cell,
    points, schools,
};

/// Files of a day with many schools.
const FILES: usize = 400;
/// How often the day's 10,000 rows stand in those of a whole country.
const COPIES: u32 = 100;

/// A folder of this name, with these files in it. Their rows stand there once for each front,
/// which comes before the labels of their classes.
fn folder(name: &str, files: &[(String, String)], fronts: &[String]) -> Result<PathBuf> {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    for (name, text) in files {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().context("it is in a folder")?)?;
        let (headings, rows) = text.split_once("\r\n").context("it has rows")?;
        let mut file = BufWriter::new(File::create(path)?);
        write!(file, "{headings}\r\n")?;
        for front in fronts {
            file.write_all(rows.replace("'C", &format!("'{front}C")).as_bytes())?;
        }
        file.flush()?;
    }
    Ok(folder)
}

/// How many rows are refused, by why.
fn reasons(refused: &BTreeSet<Refused>) -> BTreeMap<String, usize> {
    let mut reasons = BTreeMap::new();
    for refused in refused {
        *reasons.entry(refused.reason.clone()).or_default() += 1;
    }
    reasons
}

/// Trials by separation, and how many of them flew nose-first, and how many did not.
fn by_separation(seen: &[Seen]) -> BTreeMap<String, (u32, u32)> {
    let mut all = BTreeMap::new();
    for Seen { separation, nose_first, otherwise } in seen {
        // Every digit: the same number to the last bit.
        let (nose, other) = all.entry(format!("{separation:?}")).or_default();
        *nose += nose_first;
        *other += otherwise;
    }
    all
}

fn sorted<T: Ord>(mut rows: Vec<T>) -> Vec<T> {
    rows.sort();
    rows
}

/// Both are the same points, and so the same turning point comes of them.
fn hold_points(found: &[Seen], expected: &[Seen]) {
    assert_eq!(by_separation(found), by_separation(expected));
    let ends = |seen: &[Seen]| match turning_point(seen) {
        Ok(TurningPoint { at, band: Band::Between { least, most }, .. }) => {
            [at, least, most]
        }
        other => panic!("{other:?}"),
    };
    for (found, expected) in ends(found).into_iter().zip(ends(expected)) {
        assert!((found - expected).abs() < 1e-9, "{found} {expected}");
    }
}

/// The cells with texts, as a spreadsheet meets them.
fn texts(table: &str) -> Result<Vec<[String; 3]>> {
    let mut reader =
        csv::Reader::from_reader(table.trim_start_matches('\u{feff}').as_bytes());
    let headings = reader.headers()?.clone();
    let columns = ["class", "what_changed", "rules"]
        .map(|key| headings.iter().position(|heading| heading == key));
    let mut texts = Vec::new();
    for row in reader.records() {
        let row = row?;
        if matches!(&row[0], "result" | "older") {
            texts.push(columns.map(|column| row[column.unwrap_or(0)].to_owned()));
        }
    }
    Ok(sorted(texts))
}

/// DuckDB has made the same of the files in a folder as the page has.
fn hold(merged: &Merged, folder: &Path, page: &Page) -> Result<()> {
    let refused = merged.refused(folder)?;
    let apart: Vec<_> = refused.symmetric_difference(&page.refused).collect();
    assert!(apart.is_empty(), "{apart:#?}");
    assert_eq!(merged.counts()?, page.counts);
    assert_eq!(sorted(merged.odd()?), sorted(page.odd()));
    // The table that it wrote, opened by the page, and as it stands beside that of the page.
    let table = merged.class_table()?;
    let own = class_to_table(&page.class, Format::PointComma, false, &|_| String::new());
    assert_eq!(texts(&table)?, texts(&own)?);
    let back = Page::gather(&[(String::new(), table)], None);
    assert_eq!(back.refused, BTreeSet::new());
    assert_eq!(back.class.entries().len(), page.class.entries().len());
    for (back, entry) in back.class.entries().iter().zip(page.class.entries()) {
        assert_eq!(back, entry);
    }
    Ok(())
}

#[test]
fn ten_thousand_rows_are_merged_as_the_page_merges_them() -> Result<()> {
    let Schools { files, known } = schools(FILES);
    let page = Page::gather(&files, Some(RULES));
    assert_eq!(page.counts, Counts { rows: 10_000, ..known.counts() });
    assert_eq!(reasons(&page.refused), known.refused);
    let hidden = page.class.entries().iter().filter(|entry| entry.hidden);
    assert_eq!(hidden.count(), known.hidden);

    let folder = folder("ten-thousand", &files, &[String::new()])?;
    let merge = |pattern: &str, name: &str| {
        Merged::of(&folder, pattern, Some(RULES), &folder.join(name))
    };
    let merged = merge("*/*.csv", "all")?;
    hold(&merged, &folder, &page)?;
    for along in Along::ALL {
        hold_points(&merged.points(along)?, &points(&page.class, along));
    }

    // Part by part, as on several machines.
    let (mut rows, mut together) = (0, Vec::new());
    for region in 0..FILES / FILES_IN_REGION {
        let pattern = format!("region={region}/*.csv");
        let part = merge(&pattern, &format!("part-{region}"))?;
        rows += part.counts()?.rows;
        together.extend(part.points(Along::ALL[0])?);
    }
    assert_eq!(rows, 10_000);
    hold_points(&together, &points(&page.class, Along::ALL[0]));
    Ok(())
}

#[test]
fn every_cell_is_read_as_the_page_reads_it() -> Result<()> {
    let formats = [("points", Format::PointComma), ("commas", Format::CommaSemicolon)];
    for (name, format) in formats {
        let files = [("cells.csv".to_owned(), every_cell(format))];
        let folder = folder(name, &files, &[String::new()])?;
        for rules in [None, Some(RULES)] {
            let page = Page::gather(&files, rules);
            assert!(page.counts.refused > 1000, "{:?}", page.counts);
            let merged = Merged::of(&folder, "cells.csv", rules, &folder.join("out"))?;
            hold(&merged, &folder, &page)?;
        }
    }
    Ok(())
}

#[test]
fn a_million_rows_come_to_what_was_put_in() -> Result<()> {
    let Schools { files, known } = schools(FILES);
    let fronts: Vec<_> = (0..COPIES).map(|copy| format!("{copy}-")).collect();
    let folder = folder("million", &files, &fronts)?;
    let merged = Merged::of(&folder, "*/*.csv", Some(RULES), &folder.join("all"))?;
    let (once, copies) = (known.counts(), fronts.len());
    let expected = Counts {
        rows: 1_000_000,
        results: copies * once.results,
        older: copies * once.older,
        doubled: copies * once.doubled,
        refused: copies * once.refused,
    };
    assert_eq!(merged.counts()?, expected);
    let mut refused = known.refused;
    refused.values_mut().for_each(|count| *count *= copies);
    assert_eq!(reasons(&merged.refused(&folder)?), refused);

    let page = Page::gather(&files, Some(RULES));
    assert_eq!(merged.odd()?.len(), copies * page.odd().len());
    for along in Along::ALL {
        let mut seen = points(&page.class, along);
        for Seen { nose_first, otherwise, .. } in &mut seen {
            *nose_first *= COPIES;
            *otherwise *= COPIES;
        }
        hold_points(&merged.points(along)?, &seen);
    }
    // 400 MB.
    fs::remove_dir_all(folder)?;
    Ok(())
}

#[test]
fn what_has_no_headings_is_refused_row_by_row() -> Result<()> {
    let Schools { files, .. } = schools(1);
    let (_, text) = files.first().context("there is one")?;
    let (headings, rows) = text.split_once("\r\n").context("it has rows")?;
    let with = |headings: &str| format!("{headings}\r\n{rows}");
    let files = [
        ("another.csv".to_owned(), with(&headings.replace("class", "team"))),
        ("twice.csv".to_owned(), with(&headings.replace("marked", "hidden"))),
        ("none.csv".to_owned(), rows.to_owned()),
        ("words.csv".to_owned(), "We had\r\na good day.\r\n".to_owned()),
    ];
    let folder = folder("headings", &files, &[String::new()])?;
    let merged = Merged::of(&folder, "*.csv", None, &folder.join("out"))?;
    // A row for the class stands in each, and the headings themselves in two.
    assert_eq!(merged.counts()?, Counts { rows: 82, refused: 82, ..Counts::default() });
    let reason = "unreadable: headings".to_owned();
    assert_eq!(reasons(&merged.refused(&folder)?), BTreeMap::from([(reason, 82)]));
    Ok(())
}

#[test]
fn invented_results_count_where_there_are_no_others() -> Result<()> {
    let mut class = Class::default();
    for notebook in example_class() {
        for trial in notebook.trials() {
            let result = TrialResult::of(&notebook, trial.id()).context("it is there")?;
            let result = TrialResult { example: true, ..result };
            class.add(&ClassLabel::default(), result, true).ok().context("it fits")?;
        }
    }
    let text = class_to_table(&class, Format::PointComma, false, &|_| String::new());
    let files = [("invented.csv".to_owned(), text)];
    let page = Page::gather(&files, Some(RULES));
    let folder = folder("invented", &files, &[String::new()])?;
    let merged = Merged::of(&folder, "*.csv", Some(RULES), &folder.join("out"))?;
    hold(&merged, &folder, &page)?;
    let along = Along::ALL[0];
    hold_points(&merged.points(along)?, &points(&page.class, along));
    Ok(())
}
