//! A notebook in words, with its table at the end.

use csv::Terminator;
use noseward_lesson::{
    COUNTED, Notebook, Point, Prediction, Statement, SwingOutcome, Trial,
};
use noseward_stability::{Quantity, cleaned_lines, trimmed};

use super::error::TableError;
use super::{Format, mail, read, write};

/// The line before the table in a text.
pub(super) const BEGIN: &str = "--- table: keep this to open the notebook again ---";
/// The line behind it.
pub(super) const END: &str = "--- end of table ---";

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
    let table = write::write(notebook, Format::Tabs, Terminator::Any(b'\n'));
    format!("{}{BEGIN}\n{table}{END}\n", words.0)
}

/// The table in a text: all of it where it begins with headings, or what stands between
/// the two lines.
pub(super) fn table_in(text: &str) -> Result<&str, TableError> {
    let text = text.trim_start_matches(['\u{feff}', ' ', '\n', '\r']);
    // The words above a table are indented where somebody else wrote them, so that the
    // first such line is the true one. Cells are not: of the second line the last counts.
    let begin = line_starts(text, BEGIN).next();
    let Some(begin) = begin.filter(|_| read::delimiter(text).is_none()) else {
        let begins = read::delimiter(text).is_some();
        return Ok(if begins { text } else { mail::from_headings(text) });
    };
    let table = &text[begin + BEGIN.len()..];
    let end = line_starts(table, END).last().ok_or(TableError::CutShort)?;
    Ok(table[..end].trim_start())
}

/// Where a line begins so.
fn line_starts<'a>(text: &'a str, line: &'a str) -> impl Iterator<Item = usize> + 'a {
    let is_start = |at: usize| at == 0 || text.as_bytes().get(at - 1) == Some(&b'\n');
    text.match_indices(line).map(|(at, _)| at).filter(move |&at| is_start(at))
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
        if let Some(mm) = write::separation_mm(design) {
            self.line(&format!("Computed separation: {}.", millimetres(mm)));
        }
        self.swings(trial);
        if !trial.note.is_empty() {
            self.said("Note:", &trial.note);
        }
        if trial.is_altered() {
            self.line("What was locked has been changed outside of the notebook.");
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
        for point in Point::ALL {
            self.point(trial, point);
        }
        let length_mm = write::design_length_mm(trial.design());
        if let Some(mm) = measured.separation_mm(length_mm) {
            let overlap = match measured.overlaps(length_mm) {
                Some(true) => "; the readings of the two points overlap",
                _ => "",
            };
            self.line(&format!("Measured separation: {}{overlap}.", millimetres(mm)));
        }
    }

    fn point(&mut self, trial: &Trial, point: Point) {
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
        let length_mm = write::design_length_mm(trial.design());
        if let Some(middle) = trial.measured.middle(point, length_mm) {
            let (mm, range) =
                (millimetres(middle.middle_mm), millimetres(middle.range_mm()));
            self.line(&format!("Middle value: {mm} from the nose, range {range}."));
        }
    }

    fn swings(&mut self, trial: &Trial) {
        let swings = trial.swings();
        if swings.outcomes().is_empty() {
            self.line("Swings: none yet.");
            return;
        }
        let seen: Vec<_> = swings.outcomes().iter().map(|seen| seen.label()).collect();
        let counted = swings.counted().count();
        self.line(&format!("Swings, {counted} of {COUNTED}: {}.", seen.join("; ")));
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
