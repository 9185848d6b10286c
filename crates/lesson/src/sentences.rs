//! Sentences with the group's own numbers, for its conclusion.

use noseward_stability::{Nearer, Units, minus};

use crate::moved::separation;
use crate::{
    BalancePoint, Change, Level, Notebook, Overall, ReadingStats, Statement, Summary,
    SwingOutcome, Trial, compare,
};

/// What the trials of a notebook say, for the boxes of its conclusion. They are looked
/// through once.
#[derive(Debug)]
pub struct Sentences<'a> {
    rows: Vec<Row<'a>>,
    units: Units,
}

impl<'a> Sentences<'a> {
    /// What this notebook says, in these units.
    #[must_use]
    pub fn of(notebook: &'a Notebook, units: Units) -> Self {
        Self { rows: rows(notebook, units), units }
    }

    /// Sentences for one box, ready to use: what the trials show. None of them says what
    /// the group should conclude.
    ///
    /// A sentence that ends in "…" is for the group to finish.
    #[must_use]
    pub fn offered(&self, of: Statement) -> Vec<String> {
        let mut said = Vec::new();
        for row in &self.rows {
            match of {
                Statement::Claim => row.claim(&mut said),
                Statement::Evidence => row.evidence(&mut said),
                Statement::Reason => row.reason(&mut said),
                Statement::Trust => row.trust(&mut said),
            }
        }
        if of == Statement::Reason && !self.rows.is_empty() {
            said.push("When the rocket turns sideways, the air pushes it at …".into());
            said.push("A longer way between the two points means that the air …".into());
        }
        said
    }

    /// One question for one box, about the group's own trials where there is something to
    /// ask.
    #[must_use]
    pub fn question(&self, of: Statement) -> String {
        let Self { rows, units } = self;
        let found = match of {
            Statement::Claim => rows.iter().rev().find_map(|row| {
                let change = row.only_change()?;
                Some(format!("What happened when you {}?", change.past_tense()))
            }),
            Statement::Evidence => rows.iter().rev().find_map(|row| {
                row.only_change()?;
                let (before, after) = (row.before.as_ref()?.id, row.summary.id);
                Some(format!("Which numbers of trials {before} and {after} show it?"))
            }),
            Statement::Reason => rows.iter().rev().find_map(|row| {
                let id = row.summary.id;
                match row.summary.overall {
                    Overall::Mostly(outcome) if says_something(outcome) => Some(format!(
                        "Why was the swing of trial {id} “{}”? Where did the air push?",
                        outcome.label()
                    )),
                    _ => None,
                }
            }),
            Statement::Trust => too_close(rows).or_else(|| widest(rows, *units)),
        };
        found.unwrap_or_else(|| {
            match of {
                Statement::Claim => "What did you change, and what happened?",
                Statement::Evidence => "Which numbers and which swings show it?",
                Statement::Reason => "Why did it happen? Where did the air push?",
                Statement::Trust => {
                    "How sure are you? Measure each point three times to find out."
                }
            }
            .to_owned()
        })
    }
}

/// "In trial 3 the ranges of the two points overlap."
fn too_close(rows: &[Row<'_>]) -> Option<String> {
    let row = rows.iter().find(|row| row.summary.too_close == Some(true))?;
    let id = row.summary.id;
    Some(format!(
        "In trial {id} the two ranges overlap. What can you still say, and what not?"
    ))
}

/// A question about the readings that differ most.
fn widest(rows: &[Row<'_>], units: Units) -> Option<String> {
    let ranges = rows.iter().flat_map(|row| {
        BalancePoint::ALL.into_iter().filter_map(|point| {
            let middle = row.middle(point).filter(|middle| middle.count > 1)?;
            Some((middle.range_mm(), point, row.summary.id))
        })
    });
    let (range_mm, point, id) = ranges.max_by(|a, b| a.0.total_cmp(&b.0))?;
    Some(format!(
        "Your readings of the {} in trial {id} differ by {}. What does that change?",
        point.label(),
        units.length(range_mm)
    ))
}

/// One trial with what it is compared with.
#[derive(Debug)]
struct Row<'a> {
    trial: &'a Trial,
    summary: Summary,
    changes: Vec<Change>,
    baseline: Option<&'a Trial>,
    before: Option<Summary>,
    level: Level,
    units: Units,
}

fn rows(notebook: &Notebook, units: Units) -> Vec<Row<'_>> {
    let row = |trial| {
        let baseline = notebook.baseline_of(trial);
        Row {
            trial,
            summary: notebook.summary(trial),
            changes: notebook.changes_of(trial),
            baseline,
            before: baseline.map(|baseline| notebook.summary(baseline)),
            level: notebook.level,
            units,
        }
    };
    notebook.trials().iter().map(row).collect()
}

impl Row<'_> {
    /// The change, if there is exactly one: what followed can be put down to it.
    fn only_change(&self) -> Option<&Change> {
        match &self.changes[..] {
            [change] => Some(change),
            _ => None,
        }
    }

    fn middle(&self, point: BalancePoint) -> Option<ReadingStats> {
        match point {
            BalancePoint::Mass => self.summary.measured_mass,
            BalancePoint::Pressure => self.summary.measured_pressure,
        }
    }

    /// Openers that follow from two trials with one change between them.
    fn claim(&self, said: &mut Vec<String>) {
        let (Some(change), Some(before)) = (self.only_change(), &self.before) else {
            return;
        };
        let (deed, now) = (change.past_tense(), &self.summary);
        let when = format!("When we {deed}, the");
        let both = |value: fn(&Summary) -> Option<f64>| value(before).zip(value(now));
        if now.too_close == Some(true) {
            said.push(format!("{when} two points were too close to call."));
        } else if let Some((from, to)) = both(|row| row.measured_separation_mm) {
            let written = |mm| self.units.length(mm);
            said.push(format!("{when} measured {}.", separation(from, to, written)));
        } else if let Some((from, to)) = both(Summary::computed_separation_mm) {
            let written = |mm| self.units.reading(mm);
            said.push(format!("{when} worked-out {}.", separation(from, to, written)));
        }
        if let (Overall::Mostly(from), Overall::Mostly(to)) =
            (before.overall, now.overall)
        {
            let (from, to) = (from.label(), to.label());
            said.push(if from == to {
                format!("{when} swing stayed “{to}”.")
            } else {
                format!("{when} swing went from “{from}” to “{to}”.")
            });
        }
    }

    /// What was found: separation, swings and prediction.
    fn evidence(&self, said: &mut Vec<String>) {
        let row = &self.summary;
        let mut words = Vec::new();
        if let Some(mm) = row.separation_mm() {
            words.push(self.separation(mm));
        }
        let count = row.swings;
        match row.overall {
            Overall::Nothing => {}
            Overall::Mixed => words.push(format!("different outcomes in {count} swings")),
            Overall::Mostly(outcome) => {
                let seen =
                    self.trial.swings().counted().filter(|o| *o == outcome).count();
                words.push(format!("{} in {seen} of {count} swings", outcome.label()));
            }
        }
        if words.is_empty() {
            return;
        }
        let title = self.title();
        // Words instead of a number need a sentence of their own.
        let between = if self.level == Level::Balance { ". Swings: " } else { ", " };
        let mut sentence = format!("{title}: {}.", words.join(between));
        if let Some(predicted) = row.predicted {
            let ending = match row.came_true() {
                Some(true) => ", and it came true",
                Some(false) => ", and it did not come true",
                None => "",
            };
            sentence
                .push_str(&format!(" We had predicted “{}”{ending}.", predicted.label()));
        }
        said.push(sentence);
    }

    /// "Trial 2 (fin shape)".
    fn title(&self) -> String {
        let id = self.summary.id;
        match (&self.changes[..], self.summary.compared_with) {
            ([], Some(other)) => format!("Trial {id} (the same as trial {other})"),
            ([], None) => format!("Trial {id}"),
            ([change], _) => format!("Trial {id} ({})", change.label()),
            (all, _) => format!("Trial {id} ({} changes)", all.len()),
        }
    }

    /// The separation, or at the first level which point is nearer the nose.
    fn separation(&self, mm: f64) -> String {
        let is_measured = self.summary.is_measured();
        if self.level == Level::Balance {
            let how = if is_measured { "" } else { "worked out: " };
            return match nearer_nose(&self.summary) {
                Some(point) => format!("{how}{} nearer the nose", point.label()),
                None => format!("{how}points too close to call"),
            };
        }
        let (how, written) = if is_measured {
            ("measured", self.units.length(mm))
        } else {
            ("worked-out", self.units.reading(mm))
        };
        format!("{how} separation {}", minus(&written))
    }

    /// How it turned, and where the two points were.
    fn reason(&self, said: &mut Vec<String>) {
        let Overall::Mostly(outcome) = self.summary.overall else { return };
        let id = self.summary.id;
        let point = nearer_nose(&self.summary);
        match (outcome, point) {
            (SwingOutcome::Steady | SwingOutcome::Wobbling, Some(BalancePoint::Mass)) => said
                .push(format!(
                    "In trial {id} the air pushed behind the centre of mass, so the nose …"
                )),
            (SwingOutcome::Sideways | SwingOutcome::TailFirst, Some(BalancePoint::Pressure)) => {
                said.push(format!(
                    "In trial {id} the air pushed ahead of the centre of mass, so the \
                     nose …"
                ));
            }
            (SwingOutcome::NotSure | SwingOutcome::Slipped, _) => {}
            (_, None) => said.push(format!(
                "In trial {id} the two points were close together, so the air …"
            )),
            (_, Some(point)) => said.push(format!(
                "In trial {id} the swing was “{}”. The {} was nearer the nose, and …",
                outcome.label(),
                point.label()
            )),
        }
    }

    /// What speaks for and against relying on it.
    fn trust(&self, said: &mut Vec<String>) {
        let (row, id) = (&self.summary, self.summary.id);
        for point in BalancePoint::ALL {
            let label = point.label();
            if let Some(middle) = self.middle(point) {
                let range = self.units.length(middle.range_mm());
                said.push(match middle.count {
                    1 => format!("In trial {id} one reading of the {label} counts."),
                    2 => format!(
                        "Our two readings of the {label} in trial {id} lie within {range}."
                    ),
                    _ => format!(
                        "Our three readings of the {label} in trial {id} lie within \
                         {range}."
                    ),
                });
            }
            self.left_out(point, said);
        }
        if row.too_close == Some(true) {
            said.push(format!(
                "The two ranges overlap in trial {id}: too close to call."
            ));
        }
        if !row.is_measured() && row.separation_mm().is_some() {
            said.push(format!(
                "The separation of trial {id} is worked out, not measured."
            ));
        }
        self.within_readings(said);
        if self.changes.len() > 1 {
            let labels: Vec<String> = self.changes.iter().map(Change::label).collect();
            let count = number_word(labels.len());
            let labels = labels.join(", ");
            said.push(format!("In trial {id} {count} things changed: {labels}."));
        }
        self.swings(said);
        if row.altered {
            said.push(format!("Trial {id} was changed outside the notebook."));
        }
    }

    fn left_out(&self, point: BalancePoint, said: &mut Vec<String>) {
        let readings = self.trial.measured.of(point);
        let Some(out) = &readings.left_out else { return };
        let Some(mm) = readings.mm.get(out.reading).copied().flatten() else { return };
        let id = self.summary.id;
        let reading = self.units.length(mm);
        let reason = out.reason.trim();
        let why = if reason.is_empty() {
            " without a reason.".to_owned()
        } else {
            // The group's own words may end as they like.
            format!(": {}.", reason.trim_end_matches('.'))
        };
        said.push(format!("In trial {id} we left out the reading {reading}{why}"));
    }

    /// Whether two measured separations differ by less than their readings leave open.
    fn within_readings(&self, said: &mut Vec<String>) {
        let open =
            |trial: &Trial| compare(trial.rocket(), &trial.measured)?.separation.measured;
        let Some((a, b)) = self.baseline.and_then(open).zip(open(self.trial)) else {
            return;
        };
        if a.least_mm <= b.most_mm && b.least_mm <= a.most_mm {
            let (before, now) = (self.summary.compared_with, self.summary.id);
            let before = before.unwrap_or_default();
            said.push(format!(
                "The separations of trials {before} and {now} are too close to tell apart."
            ));
        }
    }

    fn swings(&self, said: &mut Vec<String>) {
        let (row, id) = (&self.summary, self.summary.id);
        match row.swings {
            0 => said.push(format!("Trial {id} was not swung, or no swing counts.")),
            1 => said.push(format!("In trial {id} only one swing counts.")),
            2 => said.push(format!("In trial {id} only two swings count.")),
            _ => {}
        }
        if row.overall == Overall::Mixed {
            said.push(format!("The swings of trial {id} did not agree."));
        }
        if row.predicted.is_none() {
            said.push(format!("For trial {id} we predicted nothing."));
        } else if row.swung_first {
            said.push(format!("In trial {id} we predicted after the swing."));
        }
    }
}

/// Which point is nearer the nose; `None` where that is too close to call, or not known.
fn nearer_nose(row: &Summary) -> Option<BalancePoint> {
    match Nearer::of(row.separation_mm()? / 1000.0) {
        _ if row.too_close == Some(true) => None,
        Nearer::CentreOfMass => Some(BalancePoint::Mass),
        Nearer::CentreOfPressure => Some(BalancePoint::Pressure),
        // What rounds to zero tells nothing.
        Nearer::Neither => None,
    }
}

fn says_something(outcome: SwingOutcome) -> bool {
    outcome.counts() && outcome != SwingOutcome::NotSure
}

fn number_word(count: usize) -> String {
    match count {
        2 => "two".into(),
        3 => "three".into(),
        4 => "four".into(),
        5 => "five".into(),
        _ => count.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_small_number_is_a_word() {
        let words = ["2", "3", "4", "5", "6"].map(|n| number_word(n.parse().unwrap()));
        assert_eq!(words, ["two", "three", "four", "five", "6"]);
    }

    fn offered(notebook: &Notebook, of: Statement, units: Units) -> Vec<String> {
        Sentences::of(notebook, units).offered(of)
    }

    fn question(notebook: &Notebook, of: Statement, units: Units) -> String {
        Sentences::of(notebook, units).question(of)
    }

    use crate::{Draft, LeftOut, Record};
    use SwingOutcome::{NotSure, Sideways, Steady, TailFirst, Wobbling};
    use noseward_stability::{Design, Example, Planform};

    struct Tried {
        design: Design,
        mass: [Option<f64>; 3],
        pressure: [Option<f64>; 3],
        predicted: Option<SwingOutcome>,
        seen: Vec<SwingOutcome>,
    }

    impl Tried {
        fn add(self, notebook: &mut Notebook) -> u16 {
            let mut record = Record::from(self.design);
            let id = notebook.begin(&record).unwrap();
            let trial = notebook.trial_mut(id).unwrap();
            trial.measured.mass.mm = self.mass;
            trial.measured.pressure.mm = self.pressure;
            trial.draft = Draft { outcome: self.predicted, because: String::new() };
            notebook.lock(id);
            for outcome in self.seen {
                record.swings.add(outcome);
            }
            notebook.swing(&record.swings);
            id
        }
    }

    fn larger_fins(design: &mut Design) {
        design.fins[0].planform = Planform::FourSided {
            root_mm: 65.0,
            tip_mm: 40.0,
            span_mm: 60.0,
            sweep_mm: 25.0,
        };
    }

    /// Tern; then larger fins; then a fourth one and a heavier nose, read badly.
    fn notebook() -> Notebook {
        let mut notebook = Notebook::default();
        let mut design = Example::Tern.design();
        Tried {
            design: design.clone(),
            mass: [150.0, 152.0, 149.0].map(Some),
            pressure: [162.0, 161.0, 163.0].map(Some),
            predicted: Some(Sideways),
            seen: vec![Sideways, Sideways, TailFirst],
        }
        .add(&mut notebook);
        larger_fins(&mut design);
        Tried {
            design: design.clone(),
            mass: [158.0, 156.0, 160.0].map(Some),
            pressure: [204.0, 204.0, 206.0].map(Some),
            predicted: Some(Sideways),
            seen: vec![Steady, Steady, Steady],
        }
        .add(&mut notebook);
        design.fins[0].count = 4;
        design.sections[0].mass = noseward_stability::Mass::WeighedG(9.0);
        Tried {
            design,
            mass: [Some(150.0), Some(170.0), None],
            pressure: [Some(168.0), Some(172.0), Some(228.0)],
            predicted: None,
            seen: vec![Steady, TailFirst],
        }
        .add(&mut notebook);
        let third = notebook.trial_mut(3).unwrap();
        third.measured.pressure.left_out =
            Some(LeftOut { reading: 2, reason: "The card was bent.".into() });
        notebook
    }

    fn said(of: Statement) -> Vec<String> {
        offered(&notebook(), of, Units::METRIC)
    }

    #[test]
    fn claims_open_with_one_change_and_what_followed() {
        assert_eq!(
            said(Statement::Claim),
            [
                "When we made the fins larger, the measured separation grew from 12 mm to 46 mm.",
                "When we made the fins larger, the swing went from “sideways or \
                 tumbling” to “nose first, steady”.",
            ]
        );
    }

    #[test]
    fn evidence_is_one_piece_a_trial() {
        assert_eq!(
            said(Statement::Evidence),
            [
                "Trial 1: measured separation 12 mm, sideways or tumbling in 2 of 3 swings. We had \
                 predicted “sideways or tumbling”, and it came true.",
                "Trial 2 (fin shape): measured separation 46 mm, nose first, steady in 3 of 3 \
                 swings. We had predicted “sideways or tumbling”, and it did not come \
                 true.",
                "Trial 3 (2 changes): measured separation 10 mm, different outcomes in 2 swings.",
            ]
        );
        let mut first_level = notebook();
        first_level.level = Level::Balance;
        let said = offered(&first_level, Statement::Evidence, Units::METRIC);
        assert!(
            said[1].contains(": centre of mass nearer the nose. Swings: "),
            "{said:?}"
        );
        assert!(said[2].contains(": points too close to call. Swings: "), "{said:?}");
    }

    #[test]
    fn reasons_are_openers_about_the_push_of_the_air() {
        let said = said(Statement::Reason);
        assert!(said.iter().all(|sentence| sentence.ends_with('…')), "{said:?}");
        assert_eq!(
            said[0],
            "In trial 1 the swing was “sideways or tumbling”. The centre of mass was \
             nearer the nose, and …"
        );
        assert_eq!(
            said[1],
            "In trial 2 the air pushed behind the centre of mass, so the nose …"
        );
        assert_eq!(said.len(), 4, "{said:?}");
    }

    #[test]
    fn trust_has_the_real_ranges_and_what_was_amiss() {
        assert_eq!(
            said(Statement::Trust),
            [
                "Our three readings of the centre of mass in trial 1 lie within 3 mm.",
                "Our three readings of the centre of pressure (side-on) in trial 1 lie \
                 within 2 mm.",
                "Our three readings of the centre of mass in trial 2 lie within 4 mm.",
                "Our three readings of the centre of pressure (side-on) in trial 2 lie \
                 within 2 mm.",
                "Our two readings of the centre of mass in trial 3 lie within 20 mm.",
                "Our two readings of the centre of pressure (side-on) in trial 3 lie \
                 within 4 mm.",
                "In trial 3 we left out the reading 228 mm: The card was bent.",
                "The two ranges overlap in trial 3: too close to call.",
                "In trial 3 two things changed: nose mass, fin number.",
                "In trial 3 only two swings count.",
                "The swings of trial 3 did not agree.",
                "For trial 3 we predicted nothing.",
            ]
        );
    }

    #[test]
    fn what_else_speaks_against_it() {
        let mut notebook = Notebook::default();
        let design = Example::Tern.design();
        let record = Record::from(design.clone());
        let id = notebook.begin(&record).unwrap();
        let trust =
            |notebook: &Notebook| offered(notebook, Statement::Trust, Units::METRIC);
        assert_eq!(
            trust(&notebook),
            [
                "The separation of trial 1 is worked out, not measured.",
                "Trial 1 was not swung, or no swing counts.",
                "For trial 1 we predicted nothing.",
            ]
        );
        let mut swung = record;
        swung.swings.add(Wobbling);
        notebook.swing(&swung.swings);
        let trial = notebook.trial_mut(id).unwrap();
        trial.draft.outcome = Some(Wobbling);
        trial.measured.mass.mm[0] = Some(150.0);
        trial.measured.pressure.mm = [Some(160.0), Some(158.0), None];
        trial.measured.pressure.left_out =
            Some(LeftOut { reading: 1, reason: String::new() });
        notebook.lock(id);
        assert_eq!(
            trust(&notebook),
            [
                "In trial 1 one reading of the centre of mass counts.",
                "In trial 1 one reading of the centre of pressure (side-on) counts.",
                "In trial 1 we left out the reading 158 mm without a reason.",
                "In trial 1 only one swing counts.",
                "In trial 1 we predicted after the swing.",
            ]
        );
        // The same rocket again, read a little differently.
        let again = Tried {
            design,
            mass: [Some(151.0), Some(149.0), None],
            pressure: [Some(160.0), Some(163.0), None],
            predicted: Some(NotSure),
            seen: vec![Wobbling; 3],
        };
        again.add(&mut notebook);
        let said = trust(&notebook);
        let close = "The separations of trials 1 and 2 are too close to tell apart.";
        assert!(said.iter().any(|sentence| sentence == close), "{said:?}");
        let evidence = offered(&notebook, Statement::Evidence, Units::METRIC);
        assert!(
            evidence[1].starts_with("Trial 2 (the same as trial 1): "),
            "{evidence:?}"
        );
    }

    #[test]
    fn questions_are_about_the_groups_own_trials() {
        let ask = |notebook: &Notebook| {
            Statement::ALL.map(|of| question(notebook, of, Units::METRIC))
        };
        assert_eq!(
            ask(&notebook()),
            [
                "What happened when you made the fins larger?",
                "Which numbers of trials 1 and 2 show it?",
                "Why was the swing of trial 2 “nose first, steady”? Where did the air push?",
                "In trial 3 the two ranges overlap. What can you still say, and what not?",
            ]
        );
        let mut two = notebook();
        two.delete(3);
        assert_eq!(
            ask(&two)[3],
            "Your readings of the centre of mass in trial 2 differ by 4 mm. What does that \
             change?"
        );
        // Nobody can say why, where nobody is sure what it was.
        let mut unsure = Notebook::default();
        Tried {
            design: Example::Tern.design(),
            mass: [None; 3],
            pressure: [None; 3],
            predicted: Some(Steady),
            seen: vec![NotSure; 3],
        }
        .add(&mut unsure);
        assert_eq!(ask(&unsure)[2], "Why did it happen? Where did the air push?");
        let none = ask(&Notebook::default());
        assert!(none.iter().all(|question| question.ends_with(['?', '.'])), "{none:?}");
        for of in Statement::ALL {
            assert_eq!(offered(&Notebook::default(), of, Units::METRIC).len(), 0);
        }
    }

    /// Short enough for a child of nine, and none of the words that promise too much.
    #[test]
    fn sentences_are_short_and_promise_nothing() {
        let mut inches = notebook();
        inches.level = Level::Balance;
        for (notebook, units) in [(notebook(), Units::METRIC), (inches, Units::INCH)] {
            for of in Statement::ALL {
                let mut all = offered(&notebook, of, units);
                all.push(question(&notebook, of, units));
                for text in all {
                    for word in ["safe", "approved", "prove"] {
                        assert!(!text.contains(word), "{text}");
                    }
                    for sentence in text.replace(". ", ".\n").replace("? ", "?\n").lines()
                    {
                        let words = sentence.split_whitespace().count();
                        assert!(words <= 17, "{words} words: {sentence}");
                    }
                }
            }
        }
    }
}
