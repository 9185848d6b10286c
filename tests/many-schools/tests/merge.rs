//! The page and DuckDB make the same of the files of many schools.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use noseward_lesson::{Band, Seen, TurningPoint, turning_point};
use noseward_link::Format;
use noseward_many_schools_tests::{
    Counts, FILES_IN_REGION, Merged, Page, RULES, Refused, Schools, every_cell, points,
    schools,
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

/// DuckDB has made the same of the files in a folder as the page has.
fn hold(merged: &Merged, folder: &Path, page: &Page) -> Result<()> {
    let refused = merged.refused(folder)?;
    let apart: Vec<_> = refused.symmetric_difference(&page.refused).collect();
    assert!(apart.is_empty(), "{apart:#?}");
    assert_eq!(merged.counts()?, page.counts);
    assert_eq!(sorted(merged.odd()?), sorted(page.odd()));
    // The table that it wrote, opened by the page.
    let back = Page::gather(&[(String::new(), merged.class_table()?)], None);
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
    let seen = points(&page.class);
    hold_points(&merged.points()?, &seen);

    // Part by part, as on several machines.
    let (mut rows, mut together) = (0, Vec::new());
    for region in 0..FILES / FILES_IN_REGION {
        let pattern = format!("region={region}/*.csv");
        let part = merge(&pattern, &format!("part-{region}"))?;
        rows += part.counts()?.rows;
        together.extend(part.points()?);
    }
    assert_eq!(rows, 10_000);
    hold_points(&together, &seen);
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
    let mut seen = points(&page.class);
    for Seen { nose_first, otherwise, .. } in &mut seen {
        *nose_first *= COPIES;
        *otherwise *= COPIES;
    }
    hold_points(&merged.points()?, &seen);
    // 400 MB.
    fs::remove_dir_all(folder)?;
    Ok(())
}
