//! The page and DuckDB make the same of the files of many schools.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use noseward_lesson::{Band, Seen, TurningPoint, turning_point};
use noseward_link::Format;
use noseward_many_schools_tests::{
    Counts, FILES_IN_REGION, Known, Merged, Page, RULES, Schools, every_cell, points,
    schools,
};

/// Files of a day with many schools.
const FILES: usize = 400;
/// How often the day's 10,000 rows stand in those of a whole country.
const COPIES: usize = 100;

/// An empty folder of this name.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    folder
}

fn write(folder: &Path, files: &[(String, String)]) {
    for (name, text) in files {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
}

fn counts(known: &Known) -> Counts {
    Counts {
        rows: known.rows,
        results: known.results,
        older: known.older,
        doubled: known.doubled,
        refused: known.refused.values().sum(),
    }
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

fn hold_same(a: &[Seen], b: &[Seen]) {
    let [a, b] =
        [a, b].map(|seen| turning_point(seen).expect("neither parted nor one-sided"));
    let ends = |found: &TurningPoint| match found.band {
        Band::Between { least, most } => [found.at, least, most],
        Band::Unbounded => panic!("{found:?}"),
    };
    for (a, b) in ends(&a).into_iter().zip(ends(&b)) {
        assert!((a - b).abs() < 1e-9, "{a} {b}");
    }
}

/// The same, but for who sorted it.
fn sorted<T: Ord>(mut rows: Vec<T>) -> Vec<T> {
    rows.sort();
    rows
}

#[test]
fn ten_thousand_rows_are_merged_as_the_page_merges_them() {
    let Schools { files, known } = schools(FILES);
    let page = Page::gather(&files, Some(RULES));
    assert_eq!(page.counts, counts(&known));
    assert_eq!(page.counts.rows, 10_000);
    let mut reasons = BTreeMap::new();
    for refused in &page.refused {
        *reasons.entry(refused.reason.clone()).or_default() += 1;
    }
    assert_eq!(reasons, known.refused);
    let hidden = page.class.entries().iter().filter(|entry| entry.hidden);
    assert_eq!(hidden.count(), known.hidden);

    let folder = folder("ten-thousand");
    write(&folder, &files);
    let merge = |pattern: &str, name: &str| {
        Merged::of(&folder, pattern, Some(RULES), &folder.join(name)).unwrap()
    };
    let merged = merge("*/*.csv", "all");
    assert_eq!(merged.counts().unwrap(), page.counts);
    assert_eq!(merged.refused(&folder).unwrap(), page.refused);
    assert_eq!(sorted(merged.odd().unwrap()), sorted(page.odd()));
    let seen = points(&page.class);
    assert_eq!(by_separation(&merged.points().unwrap()), by_separation(&seen));
    hold_same(&merged.points().unwrap(), &seen);
    hold_class(&merged, &page);

    // Part by part, as on several machines.
    let (mut rows, mut together) = (0, Vec::new());
    for region in 0..FILES / FILES_IN_REGION {
        let part = merge(&format!("region={region}/*.csv"), &format!("part-{region}"));
        rows += part.counts().unwrap().rows;
        together.extend(part.points().unwrap());
    }
    assert_eq!(rows, 10_000);
    assert_eq!(by_separation(&together), by_separation(&seen));
}

/// The table of a class that DuckDB wrote holds, for the page, what the page has gathered.
fn hold_class(merged: &Merged, page: &Page) {
    let table = merged.class_table().unwrap();
    let back = Page::gather(&[(String::new(), table)], None);
    assert_eq!(back.refused.len(), 0, "{:?}", back.refused);
    assert_eq!(back.class.entries().len(), page.class.entries().len());
    for (back, entry) in back.class.entries().iter().zip(page.class.entries()) {
        assert_eq!(back, entry);
    }
}

#[test]
fn every_cell_is_read_as_the_page_reads_it() {
    let formats = [("points", Format::PointComma), ("commas", Format::CommaSemicolon)];
    for (name, format) in formats {
        let folder = folder(name);
        let files = [("cells.csv".to_owned(), every_cell(format))];
        write(&folder, &files);
        for rules in [None, Some(RULES)] {
            let page = Page::gather(&files, rules);
            assert!(page.counts.refused > 1000, "{:?}", page.counts);
            let merged =
                Merged::of(&folder, "cells.csv", rules, &folder.join("out")).unwrap();
            let refused = merged.refused(&folder).unwrap();
            let apart: Vec<_> = refused.symmetric_difference(&page.refused).collect();
            assert!(apart.is_empty(), "{apart:#?}");
            assert_eq!(merged.counts().unwrap(), page.counts);
            assert_eq!(sorted(merged.odd().unwrap()), sorted(page.odd()));
            hold_class(&merged, &page);
        }
    }
}

#[test]
fn a_million_rows_come_to_what_was_put_in() {
    let Schools { files, known } = schools(FILES);
    let folder = folder("million");
    for (name, text) in &files {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        write_copies(&path, text);
    }
    let merged =
        Merged::of(&folder, "*/*.csv", Some(RULES), &folder.join("all")).unwrap();
    let once = counts(&known);
    let found = merged.counts().unwrap();
    assert_eq!(found.rows, 1_000_000);
    for (found, once) in [
        (found.results, once.results),
        (found.older, once.older),
        (found.doubled, once.doubled),
        (found.refused, once.refused),
    ] {
        assert_eq!(found, COPIES * once);
    }
    let mut seen = points(&Page::gather(&files, Some(RULES)).class);
    for seen in &mut seen {
        seen.nose_first *= 100;
        seen.otherwise *= 100;
    }
    let points = merged.points().unwrap();
    assert_eq!(by_separation(&points), by_separation(&seen));
    hold_same(&points, &seen);
    fs::remove_dir_all(folder).unwrap();
}

/// The rows of a file many times, each time of other classes.
fn write_copies(path: &Path, text: &str) {
    let (headings, rows) = text.split_once("\r\n").unwrap();
    let mut file = BufWriter::new(File::create(path).unwrap());
    write!(file, "{headings}\r\n").unwrap();
    for copy in 0..COPIES {
        file.write_all(rows.replace("'C", &format!("'{copy}-C")).as_bytes()).unwrap();
    }
    file.flush().unwrap();
}
