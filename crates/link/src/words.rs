//! Why something cannot be opened, and a notebook in words. Nothing here is read again, but
//! for the table at the end of a text.

use csv::Terminator;
use noseward_lesson::{
    BalancePoint, COUNTED, Notebook, Prediction, REPEATS, Statement, SwingOutcome, Trial,
};
use noseward_stability::{Quantity, cleaned_lines, trimmed};

use crate::error::{At, LinkError, LinkErrorKind};
use crate::table::{self, BEGIN, END, Format, separation_mm};

impl LinkError {
    /// What is wrong and how to mend it, in words for a pupil; of tables, and of a value in a
    /// notebook file, only that they cannot be read: see [`table_sentence`].
    #[must_use]
    pub fn sentence(&self) -> String {
        let words = sentence(&self.kind, &self.at);
        match self.at {
            At::Part(Some(part)) if self.kind != LinkErrorKind::OtherNotebook => {
                format!("Part {part}: {words}")
            }
            _ => words,
        }
    }
}

/// Why a link cannot be opened.
fn link_sentence(kind: &LinkErrorKind) -> String {
    of_anything(kind, "link").unwrap_or_else(|| match kind {
        LinkErrorKind::CutShort => CUT_SHORT.into(),
        _ => {
            "This link was changed on its way, so its numbers cannot be trusted. Copy it again \
             from where it came from."
                .into()
        }
    })
}

const CUT_SHORT: &str =
    "This link was cut short on its way. Copy the whole link and open it again.";

/// What can be wrong with links, codes, files and tables alike.
fn of_anything(kind: &LinkErrorKind, noun: &str) -> Option<String> {
    use LinkErrorKind as Kind;
    Some(match kind {
        Kind::TooLarge { .. } => format!(
            "This {noun} is longer than any that this page makes. Copy it again from where \
             it came from."
        ),
        Kind::Newer { .. } => format!(
            "This {noun} was made by a newer version of this page. Reload the page, then \
             open it again."
        ),
        Kind::Unknown { key } => format!(
            "This {noun} has something that this version of the page does not know: \
             “{key}”. Reload the page, then open it again."
        ),
        _ => return None,
    })
}

fn too_large(what: &str, bytes: usize) -> String {
    format!(
        "This file is too large to be a {what} ({} KB). Choose a file that this page saved.",
        bytes / 1024
    )
}

fn sentence(kind: &LinkErrorKind, at: &At) -> String {
    use LinkErrorKind as Kind;
    let is_notebook = matches!(at, At::NotebookFile | At::Entry { .. });
    let noun = match at {
        At::Link => return link_sentence(kind),
        At::Code | At::Part(_) | At::Result => "code",
        At::File | At::NotebookFile | At::Entry { .. } => "file",
        At::Table | At::TableRow(_) | At::Cell { .. } => "table",
    };
    match kind {
        Kind::TooLarge { bytes } if noun == "file" => {
            too_large(if is_notebook { "notebook" } else { "rocket" }, *bytes)
        }
        Kind::Nothing => match at {
            At::Code => "There is no code in this. A code begins with R1.",
            At::Part(_) => {
                "There is no part of a notebook in this. A part begins with N1."
            }
            At::Result => {
                "There is no result in this. The code of a result begins with T1."
            }
            At::NotebookFile => {
                "There is no notebook in this. Choose a notebook file that this page saved."
            }
            _ => {
                "There is no rocket and no notebook in this. Choose a file that this page \
                 saved, or paste all of a link, a code or a text."
            }
        }
        .into(),
        Kind::CutShort => CUT_SHORT.into(),
        Kind::Changed => match at {
            At::Part(None) => {
                "All parts are here, and together they make no notebook. Read them anew."
            }
            At::Code | At::Part(_) | At::Result => {
                "Something in this code is wrong, and its rows do not tell where. Compare \
                 each row with the paper."
            }
            _ => return link_sentence(kind),
        }
        .into(),
        Kind::EndsInLine { line } => format!(
            "This file ends too early, in line {line}. Part of it is missing: copy or save \
             it again."
        ),
        Kind::Syntax { line, column, detail } => format!(
            "The file cannot be read at line {line}, column {column}. Look there for a \
             comma, quotation mark or bracket too many or too few ({detail})."
        ),
        Kind::Content { line, column, detail } => {
            let what = if is_notebook { "notebook" } else { "rocket" };
            format!(
                "Something does not belong in a {what} file at line {line}, column \
                 {column}, or just before it: {detail}. Mend it there, or save the {what} \
                 again."
            )
        }
        Kind::Crowded { list, count, .. } => {
            let what = match *list {
                "sections" => "body sections",
                "fins" => "sets of fins",
                "own_outline_mm" => "corners in one fin",
                other => other,
            };
            format!(
                "A rocket in this has {count} {what}, more than there can be. Take some \
                 out, then open it again."
            )
        }
        Kind::Notebook(error) => {
            format!("These trials make no notebook: {error}. Save the notebook again.")
        }
        kind => of_anything(kind, noun)
            .or_else(|| of_rows(kind))
            .unwrap_or_else(|| format!("This {noun} cannot be read.")),
    }
}

/// What the rows of a code tell.
fn of_rows(kind: &LinkErrorKind) -> Option<String> {
    use LinkErrorKind as Kind;
    Some(match kind {
        Kind::EndsEarly { row } => {
            format!("The code ends too early: row {row} is missing or short.")
        }
        Kind::Character { row, character } => format!(
            "Row {row} has “{character}”, which no code has: compare it with the paper."
        ),
        Kind::Rows { rows } => match rows.split_last() {
            Some((row, [])) => {
                format!("Row {row} has a wrong character: compare it with the paper.")
            }
            Some((last, before)) => {
                let before: Vec<String> =
                    before.iter().map(ToString::to_string).collect();
                format!(
                    "Rows {} and {last} are wrong: compare them with the paper.",
                    before.join(", ")
                )
            }
            None => return None,
        },
        Kind::TooFew { row } => {
            format!("Row {row} has a character too few: compare it with the paper.")
        }
        Kind::TooMany { row } => {
            format!("Row {row} has a character too many: compare it with the paper.")
        }
        Kind::MissingRow { row } => format!("Row {row} is missing."),
        Kind::RowTwice { row } => {
            format!("Row {row} is there twice. Take one of the two out.")
        }
        Kind::Swapped { rows: (one, other) } => {
            format!("Rows {one} and {other} have changed places.")
        }
        Kind::OtherNotebook => {
            "This part belongs to another notebook, or to the same one at \
                                another time. Finish this one, or begin anew."
                .into()
        }
        _ => return None,
    })
}

/// [`LinkError::sentence`], of tables and of the values in a notebook file too. Apart, so that
/// whoever opens none does without their words.
#[must_use]
pub fn table_sentence(error: &LinkError) -> String {
    let words = match &error.at {
        At::Table | At::TableRow(_) | At::Cell { .. } | At::Entry { .. } => {
            of_table(&error.kind)
        }
        _ => return error.sentence(),
    };
    let words = words.unwrap_or_else(|| error.sentence());
    match &error.at {
        At::TableRow(row) => format!("Row {row}: {words}"),
        At::Cell { row, column } => format!("Row {row}, column “{column}”: {words}"),
        At::Entry { list, place, key } => {
            format!("In “{list}”, number {place}, “{key}”: {words}")
        }
        _ => words,
    }
}

/// What is wrong with a table, one of its rows, or a cell.
fn of_table(kind: &LinkErrorKind) -> Option<String> {
    use LinkErrorKind as Kind;
    Some(match kind {
        Kind::TooLarge { bytes } => format!(
            "This is too large to be the table of a notebook ({} KB). Open a table that \
             this page saved.",
            bytes / 1024
        ),
        Kind::Nothing => {
            "There is no table of a notebook in this. Open a table that this \
                          page saved, or paste all of it, with its first row."
                .into()
        }
        Kind::CutShort => format!(
            "The table in this text ends too early: the line “{END}” is missing. Copy the \
             whole text again."
        ),
        Kind::TwoColumns { column } => format!(
            "Two columns are called “{column}”. Take one of them out, or call it something \
             else."
        ),
        Kind::TooManyCells => {
            "there are more cells than columns. Look there for a comma, a \
                               semicolon or a quotation mark too many, or save the table \
                               again."
                .into()
        }
        Kind::TwoRows { kind } => {
            format!("this is a second row “{kind}”. Keep one of the two.")
        }
        Kind::Choice { found, choices } => format!(
            "“{found}” is not known here. Write one of these: {}.",
            choices.join("; ")
        ),
        Kind::NotANumber { found } => format!(
            "“{found}” is not a number. Write, for example, 12.5 or 12,5. A spreadsheet \
             may have made a date of it."
        ),
        Kind::Ambiguous { found } => format!(
            "“{found}” can be read in two ways. Write it without a mark, or with fewer \
             digits behind the mark."
        ),
        Kind::Count { found, least, most } => {
            format!("“{found}” must be a whole number from {least} to {most}.")
        }
        Kind::TooLong { chars, most } => format!(
            "this text has {chars} characters. There is room for {most}: shorten it."
        ),
        Kind::NotAGroup { found } => {
            format!("“{found}” is no group. Write a colour and a number, such as blue 4.")
        }
        Kind::OtherGroup { found } => format!(
            "“{found}” is another group than in the rows before. A notebook is of one \
             group: keep the rows of one."
        ),
        Kind::Taken { id } => {
            format!("trial {id} stands there twice. Give each trial a number of its own.")
        }
        Kind::Empty => {
            "this is empty, and something else in the row needs it. Fill it in.".into()
        }
        Kind::NotARocket { error } => {
            let detail = error.sentence();
            let detail = detail.split(['.', ':']).next().unwrap_or_default();
            format!(
                "there is no rocket in this ({detail}). Copy the link of the rocket into \
                 it again."
            )
        }
        Kind::NotAText { found } => {
            format!("{found} is no text. Put quotation marks round it.")
        }
        Kind::NotASeal { found } => format!(
            "“{found}” is no seal. Put back what stood there; with an empty cell the trial \
             counts as altered."
        ),
        Kind::Misplaced { found, kind } => format!(
            "“{found}” does not belong into a row “{kind}”. Take it out, or move it to \
             another row."
        ),
        Kind::Swings(error) => format!("{error}. Take some out."),
        Kind::Notebook(error) => format!(
            "These rows make no notebook: {error}. Take rows out, or save the table again."
        ),
        _ => return None,
    })
}

/// The notebook in words: settings, each trial with what was predicted, measured and seen,
/// deleted ones, plans and the conclusion. At its end stands the notebook as a table, with
/// tabs, between two lines that say so: [`open_table`](crate::open_table) opens the text.
///
/// Lines end in LF; numbers have a point.
#[must_use]
pub fn to_plain_text(notebook: &Notebook) -> String {
    let mut words = Words::default();
    words.line(&format!("Notebook of group {}", notebook.group));
    words.gap();
    words.line(&format!("Level: {}.", notebook.level.label()));
    words.line(&format!("Help with the conclusion: {}.", notebook.support.label()));
    let two = if notebook.allows_two_changes { "allowed" } else { "not allowed" };
    words.line(&format!("Two changes at once: {two}."));
    words.line(&format!("What is told when: {}.", notebook.telling.label()));
    if notebook.is_altered() {
        words.line("Trials were taken out or put in by hand, outside of the page.");
    }
    if let Some(trial) = notebook.in_hand() {
        words.line(&format!("In hand: trial {}.", trial.id()));
    }
    for trial in notebook.trials() {
        words.gap();
        words.trial(trial, "");
    }
    for deleted in notebook.deleted() {
        words.gap();
        words.trial(&deleted.trial, " (deleted)");
    }
    if !notebook.plans().is_empty() {
        words.gap();
        words.line("Plans");
        for plan in notebook.plans() {
            words.said("-", plan);
        }
    }
    words.gap();
    words.line("Conclusion");
    for of in Statement::ALL {
        match notebook.conclusion.text(of) {
            "" => words.line(&format!("{}: nothing yet.", of.label())),
            text => words.said(&format!("{}:", of.label()), text),
        }
    }
    words.gap();
    words.line("Keep what follows: with it this page opens the notebook again.");
    let table = table::rows(notebook, Format::Tabs, Terminator::Any(b'\n'));
    format!("{}{BEGIN}\n{table}{END}\n", words.0)
}

/// A text that grows by lines.
#[derive(Default)]
struct Words(String);

impl Words {
    fn line(&mut self, line: &str) {
        self.0.push_str(line);
        self.0.push('\n');
    }

    fn gap(&mut self) {
        self.0.push('\n');
    }

    /// What somebody else wrote, behind a word; further lines are indented.
    fn said(&mut self, before: &str, text: &str) {
        let text = cleaned_lines(text, usize::MAX).replace('\n', "\n  ");
        self.line(&format!("{before} {text}"));
    }

    fn trial(&mut self, trial: &Trial, mark: &str) {
        let design = trial.design();
        let name = match design.name.as_str() {
            "" => "a rocket without a name",
            name => name,
        };
        self.line(&format!("Trial {}{mark}: {name}", trial.id()));
        match trial.compared_with() {
            Some(id) => self.line(&format!("Compared with trial {id}.")),
            None => self.line("Compared with no other trial."),
        }
        if !trial.plan.is_empty() {
            self.said("Plan:", &trial.plan);
        }
        self.predictions(trial);
        self.measured(trial);
        if let Some(mm) = separation_mm(trial.rocket()) {
            self.line(&format!("Computed separation: {}.", millimetres(mm)));
        }
        self.swings(trial);
        if !trial.note.is_empty() {
            self.said("Note:", &trial.note);
        }
        if trial.is_altered() {
            self.line("Some of this trial was changed by hand, outside of the page.");
        }
    }

    fn predictions(&mut self, trial: &Trial) {
        match trial.predictions().first() {
            None => self.line("Predicted: nothing yet."),
            Some(first) => self.prediction("Predicted", first),
        }
        for later in trial.predictions().later() {
            self.prediction("Later", later);
        }
        if !trial.draft.is_empty() {
            let outcome = trial.draft.outcome.map_or("no outcome", SwingOutcome::label);
            self.because(
                &format!("Written and not locked: {outcome}"),
                &trial.draft.because,
            );
        }
    }

    fn prediction(&mut self, word: &str, prediction: &Prediction) {
        let when = match prediction.swings_seen {
            0 => "before any swing".to_owned(),
            1 => "after 1 swing".to_owned(),
            swings => format!("after {swings} swings"),
        };
        let label = prediction.outcome.label();
        self.because(&format!("{word}, {when}: {label}"), &prediction.because);
    }

    fn because(&mut self, said: &str, because: &str) {
        match because {
            "" => self.line(&format!("{said}.")),
            _ => self.said(&format!("{said}. Because:"), because),
        }
    }

    fn measured(&mut self, trial: &Trial) {
        let measured = &trial.measured;
        for (what, mm) in [
            ("Length of the rocket", measured.rocket_length_mm),
            ("Length of the cut-out", measured.cutout_length_mm),
        ] {
            if let Some(mm) = mm {
                self.line(&format!("{what}: {}.", millimetres(mm)));
            }
        }
        for point in BalancePoint::ALL {
            self.point(trial, point);
        }
        let length_mm = trial.design().length_mm();
        if let Some(mm) = measured.separation_mm(length_mm) {
            let overlap = match measured.overlaps(length_mm) {
                Some(true) => "; the readings of the two points overlap",
                _ => "",
            };
            self.line(&format!("Measured separation: {}{overlap}.", millimetres(mm)));
        }
    }

    fn point(&mut self, trial: &Trial, point: BalancePoint) {
        let readings = trial.measured.of(point);
        let label = point.label();
        if let Some(mm) = readings.guess_mm {
            self.line(&format!(
                "Guess of the {label}: {} from the nose.",
                millimetres(mm)
            ));
        }
        if readings.any() {
            let all = readings.mm.map(|mm| mm.map_or("none".to_owned(), millimetres));
            let (all, end) = (all.join(", "), readings.from.word());
            self.line(&format!("Readings of the {label}, from the {end}: {all}."));
        }
        if let Some(out) = &readings.left_out {
            self.because(
                &format!("Reading {} is left out", out.reading + 1),
                &out.reason,
            );
        }
        let length_mm = trial.design().length_mm();
        for i in 0..REPEATS {
            if !trial.measured.counts(point, i, length_mm) {
                let reading = i + 1;
                self.line(&format!(
                    "Reading {reading} does not count: it cannot be true of this rocket."
                ));
            }
        }
        if let Some(middle) = trial.measured.middle(point, length_mm) {
            let (mm, range) =
                (millimetres(middle.middle_mm), millimetres(middle.range_mm()));
            self.line(&format!("Middle value: {mm} from the nose, range {range}."));
        }
    }

    fn swings(&mut self, trial: &Trial) {
        let swings = trial.swings();
        if !trial.taken_back().is_empty() {
            let seen = SwingOutcome::list(trial.taken_back());
            self.line(&format!("Taken back, as recorded by mistake: {seen}."));
        }
        if swings.outcomes().is_empty() {
            self.line("Swings: none yet.");
            return;
        }
        let seen = SwingOutcome::list(swings.outcomes());
        let counted = swings.counted().count();
        self.line(&format!("Swings, {counted} of {COUNTED}: {seen}."));
        self.line(&format!("All together: {}.", trial.overall().label()));
        let setup = swings.setup;
        self.line(&format!(
            "Swung on {} m of string with an arm of {} m, {} turns a second, in air of {} kg/m³.",
            trimmed(setup.string_m, 2),
            trimmed(setup.arm_m, 2),
            trimmed(setup.turns_per_s, 2),
            trimmed(setup.air_density_kg_m3, 3),
        ));
    }
}

/// A length in words, to 0.1 mm.
fn millimetres(mm: f64) -> String {
    format!("{} mm", trimmed(Quantity::Length.rounded(mm), 1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{NotebookError, SwingsError};

    /// One of each kind, but for those of tables.
    fn kinds() -> Vec<LinkErrorKind> {
        use LinkErrorKind as Kind;
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
        ]
    }

    fn table_kinds() -> Vec<LinkErrorKind> {
        use LinkErrorKind as Kind;
        let found = || "x".to_owned();
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
            Kind::NotARocket { error: Box::new(LinkErrorKind::Nothing.at(At::File)) },
            Kind::NotASeal { found: found() },
            Kind::Misplaced { found: found(), kind: "trial" },
            Kind::Swings(SwingsError),
            Kind::Notebook(NotebookError::TooManyTrials),
        ]
    }

    #[test]
    fn every_kind_has_words_of_its_own() {
        let mut all: Vec<String> =
            kinds().into_iter().map(|kind| kind.at(At::Code).sentence()).collect();
        all.extend(
            table_kinds().into_iter().map(|kind| table_sentence(&kind.at(At::Table))),
        );
        for (i, words) in all.iter().enumerate() {
            assert!(
                words.ends_with('.') && !words.contains("cannot be read."),
                "{words}"
            );
            assert!(!all[..i].contains(words), "{words}");
            assert!(!words.contains("  "), "{words}");
        }
    }

    #[test]
    fn the_words_say_where_to_look() {
        let code = |kind: LinkErrorKind| kind.at(At::Code).sentence();
        let rows = |rows: &[usize]| LinkErrorKind::Rows { rows: rows.to_vec() };
        assert_eq!(
            code(rows(&[3])),
            "Row 3 has a wrong character: compare it with the paper."
        );
        assert_eq!(
            code(rows(&[2, 4, 5])),
            "Rows 2, 4 and 5 are wrong: compare them with the paper."
        );
        assert_eq!(
            code(LinkErrorKind::Character { row: 1, character: 'U' }),
            "Row 1 has “U”, which no code has: compare it with the paper."
        );
        let part = LinkErrorKind::EndsEarly { row: 5 }.at(At::Part(Some(2))).sentence();
        assert_eq!(part, "Part 2: The code ends too early: row 5 is missing or short.");
        let unknown = LinkErrorKind::Unknown { key: "fin_foil".into() };
        assert!(unknown.at(At::Link).sentence().contains("does not know: “fin_foil”"));
        let cell = At::Cell { row: 3, column: "note".into() };
        let words = table_sentence(&LinkErrorKind::Empty.at(cell));
        assert!(words.starts_with("Row 3, column “note”: this is empty"), "{words}");
        let row = table_sentence(&LinkErrorKind::TooManyCells.at(At::TableRow(8)));
        assert!(row.starts_with("Row 8: there are more cells than columns"), "{row}");
        // Whoever does without the words of tables says that it is one.
        let short = LinkErrorKind::Empty.at(At::Table).sentence();
        assert_eq!(short, "This table cannot be read.");
    }

    #[test]
    fn the_words_are_those_of_what_was_opened() {
        use LinkErrorKind::{
            Changed, Content, Crowded, Nothing, OtherNotebook, TooLarge,
        };
        let large = || TooLarge { bytes: 3 << 20 };
        let content = || Content { line: 7, column: 8, detail: "x".into() };
        let crowded = |list| Crowded { list, count: 6000, most: 13 };
        for (kind, at, words) in [
            (Changed, At::Link, "This link was changed on its way"),
            (Changed, At::Code, "its rows do not tell where"),
            (Changed, At::Result, "its rows do not tell where"),
            (Changed, At::Part(Some(2)), "Part 2: Something in this code is wrong"),
            (Changed, At::Part(None), "together they make no notebook"),
            (Nothing, At::Code, "A code begins with R1."),
            (Nothing, At::Part(None), "A part begins with N1."),
            (Nothing, At::Result, "begins with T1."),
            (Nothing, At::NotebookFile, "There is no notebook in this."),
            (Nothing, At::File, "no rocket and no notebook in this."),
            (OtherNotebook, At::Part(Some(2)), "This part belongs to another notebook"),
            (large(), At::File, "too large to be a rocket (3072 KB)"),
            (large(), At::NotebookFile, "too large to be a notebook (3072 KB)"),
            (large(), At::Link, "This link is longer than any"),
            (content(), At::File, "in a rocket file at line 7, column 8"),
            (content(), At::NotebookFile, "in a notebook file at line 7, column 8"),
            (crowded("sections"), At::File, "has 6000 body sections,"),
            (crowded("fins"), At::File, "has 6000 sets of fins,"),
            (crowded("own_outline_mm"), At::File, "has 6000 corners in one fin,"),
            (crowded("weights"), At::File, "has 6000 weights,"),
        ] {
            let said = kind.at(at).sentence();
            assert!(said.contains(words), "{words}: {said}");
            assert_eq!(said.contains("Part 2:"), words.contains("Part 2:"), "{said}");
        }
    }
}
