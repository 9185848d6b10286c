//! The files of many classes, and what is known of them because it was put in.

use std::collections::BTreeMap;

use noseward_lesson::{Class, ClassLabel, SwingOutcome, TrialResult};
use noseward_link::{Format, class_to_table, rules_of_text};

use crate::page::Counts;
use crate::table::Table;
use crate::trials::{as_code, trial, with_one_changed};

/// The rules that all should keep to.
pub const RULES: &str = "K7Q0";
/// So many files are of one region, and no class is in two.
pub const FILES_IN_REGION: usize = 100;
/// Rows of results in each file.
const ROWS: u16 = 25;

/// Files as they come from many schools.
#[derive(Debug)]
pub struct Schools {
    /// The name of each, behind the folder of its region, and its text.
    pub files: Vec<(String, String)>,
    /// What is in them.
    pub known: Known,
}

/// How often what was put in.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Known {
    /// Rows of results.
    pub rows: usize,
    /// Trials.
    pub results: usize,
    /// Rows that another one came after.
    pub older: usize,
    /// Rows that were there already.
    pub doubled: usize,
    /// Rows that are not taken in, by why.
    pub refused: BTreeMap<String, usize>,
    /// Trials that somebody hid.
    pub hidden: usize,
}

/// What is the matter with a row.
#[derive(Clone, Copy)]
enum Fate {
    New,
    /// Of the class before, once more: by its code, or by the notebook.
    Doubled,
    /// Of the class before, swung anew.
    Newer,
    /// Two rows: a trial, and the same with one value changed.
    Twice,
    /// What was there before the newer one came, once more.
    DoubledOlder,
    OtherRules,
    Unfinished,
    NoNumber,
    Damaged,
}

/// Cells that stand in place of others, and what of the row cannot be read then. One without a
/// column stands behind the last.
const DAMAGED: [(&str, &str, &str); 13] = [
    ("class", "7 B!", "class"),
    ("kind_of_row", "resu", "kind_of_row"),
    ("group", "pink 1", "group"),
    ("trial", "x", "trial"),
    ("rules", "28U5", "rules"),
    ("body_width_mm", "", "model"),
    ("centre_of_mass_reading_1_mm", "1.205", "centre_of_mass"),
    ("centre_of_pressure_reading_1_mm", "3.5.", "centre_of_pressure"),
    ("prediction", "slipped", "prediction"),
    ("swing_2", "upwards", "swings"),
    ("altered", "perhaps", "flags"),
    ("statements", "5", "misplaced"),
    ("", "beyond", "cells"),
];
/// Cells that hold no number of a rocket.
const NO_NUMBER: [(&str, &str); 3] = [
    ("centre_of_mass_reading_2_mm", "?"),
    ("mass_g", "12000"),
    ("rocket_length_mm", "?"),
];
/// The row that is damaged, and that without a number.
const DAMAGED_ROW: u16 = 22;
const NO_NUMBER_ROW: u16 = 21;
/// The row that came by its code.
const CODE_ROW: u16 = 11;

fn fate(in_region: usize, row: u16) -> Fate {
    match row {
        14 if in_region > 0 => Fate::Doubled,
        15 if in_region > 0 => Fate::Newer,
        16 => Fate::Twice,
        18 if in_region > 1 => Fate::DoubledOlder,
        19 => Fate::OtherRules,
        20 => Fate::Unfinished,
        NO_NUMBER_ROW => Fate::NoNumber,
        DAMAGED_ROW => Fate::Damaged,
        _ => Fate::New,
    }
}

impl Known {
    /// What should become of the rows.
    #[must_use]
    pub fn counts(&self) -> Counts {
        let Self { rows, results, older, doubled, .. } = *self;
        Counts { rows, results, older, doubled, refused: self.refused.values().sum() }
    }

    fn count(&mut self, fate: Fate, file: usize) {
        self.rows += 1;
        let mut refuse = |why: String| *self.refused.entry(why).or_default() += 1;
        match fate {
            Fate::New => self.results += 1,
            Fate::Doubled | Fate::DoubledOlder => self.doubled += 1,
            Fate::Newer => self.older += 1,
            Fate::Twice => {
                self.rows += 1;
                self.results += 1;
                self.older += 1;
            }
            Fate::OtherRules => refuse("other rules".into()),
            Fate::Unfinished => refuse("unfinished".into()),
            Fate::NoNumber => refuse("no number of a rocket".into()),
            Fate::Damaged => {
                refuse(format!("unreadable: {}", DAMAGED[file % DAMAGED.len()].2));
            }
        }
    }
}

/// So many files of made-up classes, each with 25 rows of results.
#[must_use]
pub fn schools(files: usize) -> Schools {
    let mut made = Schools { files: Vec::new(), known: Known::default() };
    for file in 0..files {
        let region = file / FILES_IN_REGION;
        let class = class(file, &mut made.known);
        made.files
            .push((format!("region={region}/{file:03}.csv"), written(file, &class)));
    }
    made
}

fn label(file: usize) -> ClassLabel {
    ClassLabel::new(&format!("C{file:03}")).unwrap_or_default()
}

/// The trial as a notebook has it; the first row has number 1.
fn whole(file: usize, row: u16) -> TrialResult {
    let example = row == 23;
    TrialResult { rules: rules_of_text(RULES), example, ..trial(file, row + 1) }
}

/// The trial as it was handed in first: one by its code.
fn first(file: usize, row: u16) -> TrialResult {
    if row == CODE_ROW { as_code(&whole(file, row)) } else { whole(file, row) }
}

/// The same swung anew.
fn anew(result: TrialResult) -> TrialResult {
    use SwingOutcome::{Steady, TailFirst};
    TrialResult { outcomes: vec![Steady, Steady, TailFirst], ..result }
}

/// What one file holds: a class, and trials of those before it.
fn class(file: usize, known: &mut Known) -> Class {
    let mut class = Class::default();
    class.label = label(file);
    // Row 17 is the second of row 16.
    for row in (0..ROWS).filter(|&row| row != 17) {
        let (result, fate) = (first(file, row), fate(file % FILES_IN_REGION, row));
        known.count(fate, file);
        let mut put = |of: usize, result: TrialResult| {
            let added = class.add(&label(of), result, true);
            assert!(added.is_ok(), "{added:?}");
        };
        match fate {
            Fate::Doubled if file.is_multiple_of(2) => {
                put(file - 1, as_code(&whole(file - 1, 0)));
            }
            Fate::Doubled => put(file - 1, whole(file - 1, CODE_ROW)),
            Fate::Newer => put(file - 1, anew(first(file - 1, 1))),
            Fate::DoubledOlder => put(file - 2, first(file - 2, 1)),
            Fate::Twice => {
                let result = as_code(&result);
                put(file, result.clone());
                put(file, with_one_changed(result, file));
            }
            Fate::OtherRules => {
                let rules = rules_of_text("28T5").filter(|_| file.is_multiple_of(2));
                put(file, TrialResult { rules, ..result });
            }
            Fate::Unfinished => {
                let outcomes = vec![SwingOutcome::Slipped, SwingOutcome::Steady];
                put(file, TrialResult { outcomes, ..result });
            }
            Fate::New | Fate::NoNumber | Fate::Damaged => put(file, result),
        }
        // Some hide what the class before did not.
        let hides = match fate {
            Fate::Doubled => file.is_multiple_of(7),
            Fate::DoubledOlder => file.is_multiple_of(5),
            _ => row == ROWS - 1,
        };
        let last = class.entries().len() - 1;
        if hides && let Some(entry) = class.entry_mut(last) {
            entry.hidden = true;
            known.hidden += 1;
        }
    }
    class
}

/// The table of the class as pages in different languages write it, and as people change it.
fn written(file: usize, class: &Class) -> String {
    let (format, words): (_, &dyn Fn(&str) -> String) = match file % 3 {
        0 => (Format::PointComma, &|_| String::new()),
        1 => (Format::PointComma, &|key| match key {
            "kind_of_row" => "Kind of row".into(),
            _ => format!("The \"{key}\", in mm"),
        }),
        _ => (Format::CommaSemicolon, &|key| format!("Wörter; „{key}“")),
    };
    let mut table = Table::of(&class_to_table(class, format, false, words));
    let (column, cell, _) = DAMAGED[file % DAMAGED.len()];
    table.put(DAMAGED_ROW, column, cell);
    let (column, cell) = NO_NUMBER[file % NO_NUMBER.len()];
    table.put(NO_NUMBER_ROW, column, cell);
    match file % 10 {
        // Two tables, one behind the other.
        1 => table.rows.insert(13, table.rows[0].clone()),
        2 => table.rows.insert(4, vec![String::new(); table.rows[0].len()]),
        // Without empty cells at the ends of rows.
        3 => table.rows.iter_mut().skip(1).for_each(|row| {
            let used = row.iter().rposition(|cell| !cell.is_empty());
            row.truncate(used.map_or(0, |used| used + 1));
        }),
        _ => {}
    }
    table.text()
}
