//! What the page makes of files.

use std::collections::BTreeSet;

use noseward_lesson::{
    Added, BalancePoint, Class, Entry, Odd, Refusal, Seen, TrialResult, odd,
};
use noseward_link::{
    At, ClassRow, Found, Gathering, HandedIn, LinkError, LinkErrorKind, rules_of_text,
};

/// What became of rows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// How many there were.
    pub rows: usize,
    /// Trials.
    pub results: usize,
    /// Rows that another one came after.
    pub older: usize,
    /// Rows that were there already.
    pub doubled: usize,
    /// Rows that were not taken in.
    pub refused: usize,
}

/// A row that was not taken in.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Refused {
    /// The name of the file.
    pub file: String,
    /// Its row, the headings being 1.
    pub line: usize,
    /// Why.
    pub reason: String,
}

/// The class that a page has gathered.
#[derive(Debug, Default)]
pub struct Page {
    /// The class.
    pub class: Class,
    /// What became of the rows.
    pub counts: Counts,
    /// Those that were not taken in.
    pub refused: BTreeSet<Refused>,
}

impl Page {
    /// A page that takes in these files, which were made under these rules.
    #[must_use]
    pub fn gather(files: &[(String, String)], rules: Option<&str>) -> Self {
        let mut page = Self::default();
        page.class.rules = rules.and_then(rules_of_text);
        for (name, text) in files {
            for found in Gathering::new(name, text) {
                page.take(found);
            }
        }
        page
    }

    fn take(&mut self, found: Found) {
        let reason = match found.what {
            Ok(HandedIn::Row(row)) => match *row {
                ClassRow::Class(_) => return,
                ClassRow::Result(entry) | ClassRow::Older(entry) => match self.add(entry)
                {
                    Ok(()) => return,
                    Err(refusal) => refused(refusal).to_owned(),
                },
                ClassRow::Work(_) => "a notebook".to_owned(),
            },
            Ok(other) => format!("{other:?}"),
            Err(error) => format!("unreadable: {}", unreadable(&error)),
        };
        self.counts.rows += 1;
        self.counts.refused += 1;
        self.refused.insert(Refused { file: found.source, line: found.line, reason });
    }

    fn add(&mut self, entry: Entry) -> Result<(), Refusal> {
        let Entry { class, result, hidden, marked, .. } = entry;
        let (group, trial) = (result.group, result.trial);
        let added = self.class.add(&class, result, false)?;
        self.counts.rows += 1;
        *match added {
            Added::New => &mut self.counts.results,
            Added::Doubled => &mut self.counts.doubled,
            Added::Newer => &mut self.counts.older,
        } += 1;
        if let Some(known) = self.class.find_mut(&class, group, trial) {
            known.hidden |= hidden;
            known.marked |= marked;
        }
        Ok(())
    }

    /// What looks odd, by class, group and trial, in the words of `merge.sql`.
    #[must_use]
    pub fn odd(&self) -> Vec<[String; 4]> {
        let of = |(_, Entry { class, result, .. }): (usize, &Entry)| {
            let name =
                [class.as_str().to_owned(), result.group.key(), result.trial.to_string()];
            let found = odd(result);
            found.into_iter().map(move |odd| {
                let [class, group, trial] = name.clone();
                [class, group, trial, odd_name(odd)]
            })
        };
        self.class.counting().flat_map(of).collect()
    }
}

/// Which separation stands along the chart of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Along {
    /// Whether the one that was worked out, and not the measured one.
    pub computed: bool,
    /// Whether in body widths, and not in millimetres.
    pub in_widths: bool,
}

impl Along {
    /// All four.
    pub const ALL: [Self; 4] = [
        Self { computed: false, in_widths: false },
        Self { computed: true, in_widths: false },
        Self { computed: false, in_widths: true },
        Self { computed: true, in_widths: true },
    ];

    /// What `merge.sql` calls it.
    pub(crate) fn name(self) -> &'static str {
        match (self.computed, self.in_widths) {
            (false, false) => "measured, in mm",
            (true, false) => "computed, in mm",
            (false, true) => "measured, in widths",
            (true, true) => "computed, in widths",
        }
    }

    fn separation(self, result: &TrialResult) -> Option<f64> {
        let mm = if self.computed {
            result.computed_separation_mm()
        } else {
            result.measured_separation_mm()
        }?;
        if !self.in_widths {
            return Some(mm);
        }
        let width_mm = result.model?.body_width_mm;
        (width_mm > 0.0).then(|| mm / width_mm)
    }
}

/// What the turning point of a class is worked out of.
#[must_use]
pub fn points(class: &Class, along: Along) -> Vec<Seen> {
    let of = |(_, entry): (usize, &Entry)| {
        Some((along.separation(&entry.result)?, entry.result.nose_first()?).into())
    };
    class.counting().filter_map(of).collect()
}

fn refused(refusal: Refusal) -> &'static str {
    match refusal {
        Refusal::OtherRules { .. } => "other rules",
        Refusal::Unfinished { .. } => "unfinished",
        Refusal::NoNumber => "no number of a rocket",
        Refusal::Full => "full",
    }
}

/// What of a row cannot be read.
fn unreadable(error: &LinkError) -> String {
    let column = match (&error.kind, &error.at) {
        (LinkErrorKind::Misplaced { .. }, _) => "misplaced",
        (LinkErrorKind::TooManyCells, _) => "cells",
        (LinkErrorKind::Newer { .. }, _) => "version",
        (_, At::Cell { column, .. }) => column,
        _ => return format!("{error:?}"),
    };
    let front = |front: &str| column.starts_with(front);
    let kind = match column {
        "rocket_length_mm" | "body_width_mm" | "mass_g" => "model",
        "two_changes_allowed"
        | "swung_first"
        | "altered"
        | "example"
        | "hidden"
        | "marked" => "flags",
        _ if front("computed_") => "model",
        _ if front("centre_of_mass") => "centre_of_mass",
        _ if front("centre_of_pressure") => "centre_of_pressure",
        _ if front("prediction") => "prediction",
        _ if front("swing_") => "swings",
        other => other,
    };
    kind.to_owned()
}

fn odd_name(odd: Odd) -> String {
    let name = |point| match point {
        BalancePoint::Mass => "centre of mass",
        BalancePoint::Pressure => "centre of pressure",
    };
    match odd {
        Odd::Outside { point, .. } => format!("{} outside", name(point)),
        Odd::WideRange { point, .. } => format!("{}: wide range", name(point)),
        Odd::LongerThanRocket { .. } => "longer than the rocket".into(),
        Odd::AllEqual { .. } => "all readings equal".into(),
        Odd::SameSlip { .. } => "same slip in both points".into(),
        Odd::OtherOutcome { .. } => "other outcome than expected".into(),
    }
}
