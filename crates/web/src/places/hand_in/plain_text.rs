//! The notebook in words, in the language in use. Nothing here is read again, but for the table
//! at the end.

use noseward_lesson::{
    BalancePoint, COUNTED, End, Notebook, Prediction, REPEATS, Statement, Trial,
};
use noseward_link::{rules_text, table_in_text};
use noseward_stability::{Quantity, cleaned_lines};
use noseward_words::{self as words, Allowed, FromEnd, Number};

use super::columns::called;
use crate::places::labels::{self, number};

/// The notebook in words: settings, each trial with what was predicted, measured and seen,
/// deleted ones, plans and the conclusion. At its end stands the notebook as a table, by which
/// the page opens the text again. Lines end in LF.
pub(super) fn plain_text(notebook: &Notebook) -> String {
    let mut lines = Lines::default();
    lines.settings(notebook);
    for trial in notebook.trials() {
        lines.gap();
        lines.add(&words::plain_trial(number(trial.id()), name(trial)));
        lines.trial(trial);
    }
    for deleted in notebook.deleted() {
        let trial = &deleted.trial;
        lines.gap();
        lines.add(&words::plain_deleted(number(trial.id()), name(trial)));
        lines.trial(trial);
    }
    if !notebook.plans().is_empty() {
        lines.gap();
        lines.add(&words::plain_plans());
        for plan in notebook.plans() {
            lines.add(&format!("- {}", indented(plan)));
        }
    }
    lines.gap();
    lines.add(&words::plain_conclusion());
    for of in Statement::ALL {
        let label = labels::statement(of);
        lines.add(&match notebook.conclusion.text(of) {
            "" => words::plain_no_statement(&label),
            said => words::plain_statement(&label, &indented(said)),
        });
    }
    lines.gap();
    lines.add(&words::plain_table_follows());
    lines.0 + &table_in_text(notebook, &called)
}

fn name(trial: &Trial) -> &str {
    match trial.design().name.as_str() {
        "" => words::notebook_nameless().as_str(),
        name => name,
    }
}

/// What a group wrote, behind a word: further lines are indented, so that none is taken for
/// one of ours.
fn indented(text: &str) -> String {
    cleaned_lines(text, usize::MAX).replace('\n', "\n  ")
}

/// A length in millimetres, to 0.1 mm.
fn mm(mm: f64) -> Number {
    Number::trimmed(Quantity::Length.rounded(mm), 1)
}

/// A text that grows by lines.
#[derive(Default)]
struct Lines(String);

impl Lines {
    fn add(&mut self, line: &str) {
        self.0.push_str(line);
        self.gap();
    }

    fn gap(&mut self) {
        self.0.push('\n');
    }

    /// A sentence, and the reason if the group gave one.
    fn because(&mut self, mut said: String, because: &str) {
        if !because.is_empty() {
            said.push(' ');
            said.push_str(&words::plain_because(&indented(because)));
        }
        self.add(&said);
    }

    fn settings(&mut self, notebook: &Notebook) {
        self.add(&words::plain_notebook(&labels::group(notebook.group)));
        self.gap();
        self.add(&words::plain_level(&labels::level(notebook.level)));
        self.add(&words::plain_help(&labels::support(notebook.support)));
        let is_allowed = notebook.allows_two_changes;
        let allowed = if is_allowed { Allowed::Allowed } else { Allowed::NotAllowed };
        self.add(&words::plain_two_changes(allowed));
        self.add(&words::plain_telling(&labels::telling(notebook.telling)));
        if let Some(rules) = notebook.rules() {
            self.add(&words::rules_under(&rules_text(rules)));
        }
        if notebook.is_altered() {
            self.add(&words::plain_altered());
        }
        if let Some(trial) = notebook.in_hand() {
            self.add(&words::plain_in_hand(number(trial.id())));
        }
    }

    fn trial(&mut self, trial: &Trial) {
        match trial.compared_with() {
            Some(id) => self.add(&words::plain_compared(number(id))),
            None => self.add(&words::plain_compared_with_none()),
        }
        if !trial.plan.is_empty() {
            self.add(&words::plain_plan(&indented(&trial.plan)));
        }
        self.predictions(trial);
        self.measured(trial);
        if let Some(figures) = trial.rocket().figures() {
            self.add(&words::plain_computed_separation(
                mm(figures.separation_m * 1000.0),
            ));
        }
        self.swings(trial);
        if !trial.note.is_empty() {
            self.add(&words::plain_note(&indented(&trial.note)));
        }
        if trial.is_altered() {
            self.add(&words::plain_trial_altered());
        }
    }

    fn predictions(&mut self, trial: &Trial) {
        match trial.predictions().first() {
            Some(first) => self.prediction(words::plain_predicted, first),
            None => self.add(&words::plain_not_predicted()),
        }
        for later in trial.predictions().later() {
            self.prediction(words::plain_later, later);
        }
        if !trial.draft.is_empty() {
            let said = match trial.draft.outcome {
                Some(outcome) => words::plain_draft(&labels::outcome(outcome)),
                None => words::plain_draft_empty().into(),
            };
            self.because(said, &trial.draft.because);
        }
    }

    fn prediction(&mut self, said: fn(Number, &str) -> String, prediction: &Prediction) {
        let outcome = labels::outcome(prediction.outcome);
        let said = said(prediction.swings_seen.into(), &outcome);
        self.because(said, &prediction.because);
    }

    fn measured(&mut self, trial: &Trial) {
        let measured = &trial.measured;
        if let Some(length_mm) = measured.rocket_length_mm {
            self.add(&words::plain_rocket_length(mm(length_mm)));
        }
        if let Some(length_mm) = measured.cutout_length_mm {
            self.add(&words::plain_cutout_length(mm(length_mm)));
        }
        for point in BalancePoint::ALL {
            self.point(trial, point);
        }
        let length_mm = trial.design().length_mm();
        if let Some(separation_mm) = measured.separation_mm(length_mm) {
            self.add(&match measured.overlaps(length_mm) {
                Some(true) => words::plain_measured_overlap(mm(separation_mm)),
                _ => words::plain_measured_separation(mm(separation_mm)),
            });
        }
    }

    fn point(&mut self, trial: &Trial, point: BalancePoint) {
        let readings = trial.measured.of(point);
        let label = || labels::point_in(point);
        if let Some(guess_mm) = readings.guess_mm {
            self.add(&words::plain_guess(label(), mm(guess_mm)));
        }
        if readings.any() {
            let from = match readings.from {
                End::Nose => FromEnd::Nose,
                End::Tail => FromEnd::Tail,
            };
            let each = readings.mm.into_iter().map(|reading| match reading {
                Some(reading_mm) => words::plain_reading(mm(reading_mm)),
                None => words::plain_no_reading().into(),
            });
            let all = each.reduce(|said, next| words::lists_next(&said, &next));
            self.add(&words::plain_readings(label(), from, &all.unwrap_or_default()));
        }
        if let Some(out) = &readings.left_out {
            self.because(words::plain_left_out((out.reading + 1).into()), &out.reason);
        }
        let length_mm = trial.design().length_mm();
        for i in 0..REPEATS {
            if !trial.measured.counts(point, i, length_mm) {
                self.add(&words::plain_not_true((i + 1).into()));
            }
        }
        if let Some(middle) = trial.measured.middle(point, length_mm) {
            self.add(&words::plain_middle(mm(middle.middle_mm), mm(middle.range_mm())));
        }
    }

    fn swings(&mut self, trial: &Trial) {
        let swings = trial.swings();
        if !trial.taken_back().is_empty() {
            self.add(&words::plain_taken_back(&labels::outcomes(trial.taken_back())));
        }
        if swings.outcomes().is_empty() {
            self.add(&words::plain_not_swung());
            return;
        }
        let counted = swings.counted().count();
        let seen = labels::outcomes(swings.outcomes());
        self.add(&words::plain_swings(counted.into(), COUNTED.into(), &seen));
        self.add(&words::plain_together(&labels::overall(trial.overall())));
        let setup = swings.setup;
        self.add(&words::plain_swung(
            Number::trimmed(setup.string_m, 2),
            Number::trimmed(setup.arm_m, 2),
            Number::trimmed(setup.turns_per_s, 2),
            Number::trimmed(setup.air_density_kg_m3, 3),
        ));
    }
}

#[cfg(test)]
mod tests;
