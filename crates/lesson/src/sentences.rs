//! What the trials say for the group's conclusion, as kinds with the group's own numbers.

use noseward_stability::Nearer;

use crate::{
    BalancePoint, BeforeAfter, COUNTED, Change, Deed, Level, Notebook, Overall,
    ReadingStats, Statement, Summary, SwingOutcome, Trial, compare,
};

/// What the trials of a notebook say, for the boxes of its conclusion. They are looked
/// through once.
#[derive(Debug)]
pub struct Sentences<'a> {
    rows: Vec<Row<'a>>,
}

/// A sentence for a box of the conclusion. The number is that of its trial.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Sentence<'a> {
    /// One thing was changed, and this followed.
    Followed(Deed, Followed),
    /// What was found in a trial.
    Found(Found<'a>),
    /// How the rocket turned, and where the two points were: for the group to finish.
    Turned(u16, Turned),
    /// What the air does when the rocket turns sideways: for the group to finish.
    Sideways,
    /// What a longer way between the two points means: for the group to finish.
    LongerWay,
    /// What speaks for or against relying on a trial.
    Trust(u16, Trust<'a>),
}

/// What followed a change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Followed {
    /// The two points were too close to call.
    TooClose,
    /// What became of the measured separation, in millimetres.
    Measured(BeforeAfter),
    /// What became of the separation that was worked out, in millimetres.
    WorkedOut(BeforeAfter),
    /// What the swings came to, before and after.
    Swing(SwingOutcome, SwingOutcome),
}

/// What was found in a trial: something of its points or of its swings at least.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Found<'a> {
    /// The number of the trial.
    pub trial: u16,
    /// That of the trial it is compared with.
    pub compared_with: Option<u16>,
    /// What was changed since that one.
    pub changes: &'a [Change],
    /// Where its two points are.
    pub apart: Option<Apart>,
    /// Whether that was measured, and not worked out.
    pub is_measured: bool,
    /// What its swings came to.
    pub overall: Overall,
    /// How many swings came to it.
    pub seen: usize,
    /// How many swings count.
    pub swings: usize,
    /// What was predicted.
    pub predicted: Option<SwingOutcome>,
    /// Whether it came true; `None` where the swings do not say.
    pub came_true: Option<bool>,
}

/// Where the two points of a trial are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Apart {
    /// The separation, in millimetres.
    By(f64),
    /// At the first level: which is nearer the nose; `None` where that is too close to call.
    Nearer(Option<BalancePoint>),
}

/// How a rocket turned, and where its two points were.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turned {
    /// Nose first: the air pushed behind the centre of mass.
    PushedBehind,
    /// Tail first or sideways: the air pushed ahead of the centre of mass.
    PushedAhead,
    /// The points were close together.
    CloseTogether,
    /// It did something else than these points suggest: this one was nearer the nose.
    Although(SwingOutcome, BalancePoint),
}

/// What speaks for or against relying on a trial.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Trust<'a> {
    /// One reading of a point counts.
    OneReading(BalancePoint),
    /// Several readings of a point lie within a range.
    Within {
        /// The point.
        point: BalancePoint,
        /// How many readings.
        count: usize,
        /// The range, in millimetres.
        range_mm: f64,
    },
    /// A reading was left out.
    LeftOut {
        /// The reading, in millimetres.
        mm: f64,
        /// The group's reason without a full stop; empty where it gave none.
        reason: &'a str,
    },
    /// The ranges of the two points overlap.
    Overlap,
    /// The separation is worked out, not measured.
    NotMeasured,
    /// The readings cannot tell its separation from that of this other trial.
    Alike(u16),
    /// Several things changed.
    Changes(&'a [Change]),
    /// Fewer swings count than a class is asked for: so many.
    FewSwings(usize),
    /// The swings did not agree.
    Mixed,
    /// Nothing was predicted.
    NotPredicted,
    /// It was predicted after the swing.
    PredictedLate,
    /// It was changed outside of the notebook.
    Altered,
}

/// A question for a box of the conclusion.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Question {
    /// What happened after this was done?
    WhatHappened(Deed),
    /// Which numbers of these two trials show it?
    WhichNumbers(u16, u16),
    /// Why did the swing of a trial come to this?
    WhySwing(u16, SwingOutcome),
    /// In a trial the ranges overlap: what can still be said?
    Overlap(u16),
    /// The readings of a point differ: what does that change?
    Differ {
        /// The number of the trial.
        trial: u16,
        /// The point.
        point: BalancePoint,
        /// By how much, in millimetres.
        range_mm: f64,
    },
    /// What can always be asked.
    General(Statement),
}

impl<'a> Sentences<'a> {
    /// What this notebook says.
    #[must_use]
    pub fn of(notebook: &'a Notebook) -> Self {
        Self { rows: rows(notebook) }
    }

    /// Sentences for one box, ready to use: what the trials show. None of them says what
    /// the group should conclude.
    #[must_use]
    pub fn offered(&self, of: Statement) -> Vec<Sentence<'_>> {
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
            said.extend([Sentence::Sideways, Sentence::LongerWay]);
        }
        said
    }

    /// One question for one box, about the group's own trials where there is something to
    /// ask.
    #[must_use]
    pub fn question(&self, of: Statement) -> Question {
        let Self { rows } = self;
        let mut latest = rows.iter().rev();
        let found = match of {
            Statement::Claim => {
                latest.find_map(|row| Some(Question::WhatHappened(row.only_deed()?)))
            }
            Statement::Evidence => latest.find_map(|row| {
                row.only_deed()?;
                let (before, after) = (row.before.as_ref()?.id, row.summary.id);
                Some(Question::WhichNumbers(before, after))
            }),
            Statement::Reason => latest.find_map(|row| match row.summary.overall {
                Overall::Mostly(outcome) if says_something(outcome) => {
                    Some(Question::WhySwing(row.summary.id, outcome))
                }
                _ => None,
            }),
            Statement::Trust => too_close(rows).or_else(|| widest(rows)),
        };
        found.unwrap_or(Question::General(of))
    }
}

fn too_close(rows: &[Row<'_>]) -> Option<Question> {
    let row = rows.iter().find(|row| row.summary.too_close == Some(true))?;
    Some(Question::Overlap(row.summary.id))
}

/// A question about the readings that differ most.
fn widest(rows: &[Row<'_>]) -> Option<Question> {
    let ranges = rows.iter().flat_map(|row| {
        BalancePoint::ALL.into_iter().filter_map(|point| {
            let middle = row.middle(point).filter(|middle| middle.count > 1)?;
            Some((middle.range_mm(), point, row.summary.id))
        })
    });
    let (range_mm, point, trial) = ranges.max_by(|a, b| a.0.total_cmp(&b.0))?;
    Some(Question::Differ { trial, point, range_mm })
}

/// One trial with what it is compared with.
#[derive(Debug)]
struct Row<'a> {
    trial: &'a Trial,
    summary: Summary,
    baseline: Option<&'a Trial>,
    before: Option<Summary>,
    level: Level,
}

fn rows(notebook: &Notebook) -> Vec<Row<'_>> {
    let row = |trial| {
        let baseline = notebook.baseline_of(trial);
        Row {
            trial,
            summary: notebook.summary(trial),
            baseline,
            before: baseline.map(|baseline| notebook.summary(baseline)),
            level: notebook.level,
        }
    };
    notebook.trials().iter().map(row).collect()
}

impl Row<'_> {
    /// What was done, if it was exactly one thing: what followed can be put down to it.
    fn only_deed(&self) -> Option<Deed> {
        match &self.summary.changes[..] {
            [change] => Some(change.deed()),
            _ => None,
        }
    }

    fn middle(&self, point: BalancePoint) -> Option<ReadingStats> {
        match point {
            BalancePoint::Mass => self.summary.measured_mass,
            BalancePoint::Pressure => self.summary.measured_pressure,
        }
    }

    /// What followed from two trials with one change between them.
    fn claim(&self, said: &mut Vec<Sentence<'_>>) {
        let (Some(deed), Some(before)) = (self.only_deed(), &self.before) else {
            return;
        };
        let now = &self.summary;
        let mut follow = |what| said.push(Sentence::Followed(deed, what));
        let both = |value: fn(&Summary) -> Option<f64>| {
            Some(BeforeAfter { before: value(before)?, after: value(now)? })
        };
        if now.too_close == Some(true) {
            follow(Followed::TooClose);
        } else if let Some(mm) = both(|row| row.measured_separation_mm) {
            follow(Followed::Measured(mm));
        } else if let Some(mm) = both(Summary::computed_separation_mm) {
            follow(Followed::WorkedOut(mm));
        }
        if let (Overall::Mostly(from), Overall::Mostly(to)) =
            (before.overall, now.overall)
        {
            follow(Followed::Swing(from, to));
        }
    }

    /// What was found: separation, swings and prediction.
    fn evidence<'b>(&'b self, said: &mut Vec<Sentence<'b>>) {
        let row = &self.summary;
        if row.separation_mm().is_none() && row.overall == Overall::Nothing {
            return;
        }
        let so = |outcome: &SwingOutcome| row.overall == Overall::Mostly(*outcome);
        said.push(Sentence::Found(Found {
            trial: row.id,
            compared_with: row.compared_with,
            changes: &row.changes,
            apart: row.separation_mm().map(|mm| match self.level {
                Level::Balance => Apart::Nearer(nearer_nose(row)),
                Level::Measure | Level::Explain | Level::Model => Apart::By(mm),
            }),
            is_measured: row.is_measured(),
            overall: row.overall,
            seen: self.trial.swings().counted().filter(so).count(),
            swings: row.swings,
            predicted: row.predicted,
            came_true: row.came_true(),
        }));
    }

    /// How it turned, and where the two points were.
    fn reason(&self, said: &mut Vec<Sentence<'_>>) {
        use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
        let Overall::Mostly(outcome) = self.summary.overall else { return };
        let turned = match (outcome, nearer_nose(&self.summary)) {
            (NotSure | Slipped, _) => return,
            (Steady | Wobbling, Some(BalancePoint::Mass)) => Turned::PushedBehind,
            (Sideways | TailFirst, Some(BalancePoint::Pressure)) => Turned::PushedAhead,
            (_, None) => Turned::CloseTogether,
            (_, Some(point)) => Turned::Although(outcome, point),
        };
        said.push(Sentence::Turned(self.summary.id, turned));
    }

    /// What speaks for and against relying on it.
    fn trust<'b>(&'b self, said: &mut Vec<Sentence<'b>>) {
        let row = &self.summary;
        let mut say = |what| said.push(Sentence::Trust(row.id, what));
        for point in BalancePoint::ALL {
            if let Some(middle) = self.middle(point) {
                let (count, range_mm) = (middle.count, middle.range_mm());
                say(match count {
                    1 => Trust::OneReading(point),
                    _ => Trust::Within { point, count, range_mm },
                });
            }
            if let Some(left_out) = self.left_out(point) {
                say(left_out);
            }
        }
        if row.too_close == Some(true) {
            say(Trust::Overlap);
        }
        if !row.is_measured() && row.separation_mm().is_some() {
            say(Trust::NotMeasured);
        }
        if let Some(other) = self.alike() {
            say(Trust::Alike(other));
        }
        if row.changes.len() > 1 {
            say(Trust::Changes(&row.changes));
        }
        if row.swings < COUNTED {
            say(Trust::FewSwings(row.swings));
        }
        if row.overall == Overall::Mixed {
            say(Trust::Mixed);
        }
        if row.predicted.is_none() {
            say(Trust::NotPredicted);
        } else if row.swung_first {
            say(Trust::PredictedLate);
        }
        if row.altered {
            say(Trust::Altered);
        }
    }

    fn left_out(&self, point: BalancePoint) -> Option<Trust<'_>> {
        let readings = self.trial.measured.of(point);
        let out = readings.left_out.as_ref()?;
        let mm = readings.mm.get(out.reading).copied().flatten()?;
        // The group's own words may end as they like.
        Some(Trust::LeftOut { mm, reason: out.reason.trim().trim_end_matches('.') })
    }

    /// The trial it is compared with, if two measured separations differ by less than their
    /// readings leave open.
    fn alike(&self) -> Option<u16> {
        let open =
            |trial: &Trial| compare(trial.rocket(), &trial.measured)?.separation.measured;
        let (a, b) = (self.baseline.and_then(open)?, open(self.trial)?);
        let alike = a.least_mm <= b.most_mm && b.least_mm <= a.most_mm;
        self.summary.compared_with.filter(|_| alike)
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

#[cfg(test)]
mod tests {
    use super::*;

    use crate::{Amount, ChangedPart, Draft, LeftOut, Record};
    use SwingOutcome::{NotSure, Sideways, Steady, TailFirst, Wobbling};
    use noseward_stability::{Design, Example, Mass, Planform};

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
        design.sections[0].mass = Mass::WeighedG(9.0);
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

    fn within(point: BalancePoint, count: usize, range_mm: f64) -> Trust<'static> {
        Trust::Within { point, count, range_mm }
    }

    #[test]
    fn claims_open_with_one_change_and_what_followed() {
        let larger = Deed::FinSize(Amount::More);
        let grew = BeforeAfter { before: 12.0, after: 46.0 };
        assert_eq!(
            Sentences::of(&notebook()).offered(Statement::Claim),
            [
                Sentence::Followed(larger, Followed::Measured(grew)),
                Sentence::Followed(larger, Followed::Swing(Sideways, Steady)),
            ]
        );
    }

    #[test]
    fn without_readings_a_claim_is_about_what_is_worked_out() {
        let mut notebook = notebook();
        for id in [1, 2] {
            notebook.trial_mut(id).unwrap().measured = crate::Measurements::default();
        }
        let sentences = Sentences::of(&notebook);
        let claims = sentences.offered(Statement::Claim);
        let Sentence::Followed(_, Followed::WorkedOut(mm)) = claims[0] else {
            panic!("{claims:?}")
        };
        let of = |id| notebook.summary(notebook.trial(id).unwrap());
        assert_eq!(Some(mm.before), of(1).computed_separation_mm());
        assert_eq!(Some(mm.after), of(2).computed_separation_mm());
        // Where the readings overlap, there is nothing to tell of the separation.
        let second = notebook.trial_mut(2).unwrap();
        second.measured.mass.mm = [150.0, 170.0, 160.0].map(Some);
        second.measured.pressure.mm = [168.0; 3].map(Some);
        let sentences = Sentences::of(&notebook);
        let first = sentences.offered(Statement::Claim)[0];
        assert!(matches!(first, Sentence::Followed(_, Followed::TooClose)), "{first:?}");
    }

    #[test]
    fn evidence_is_one_piece_a_trial() {
        let all = notebook();
        let sentences = Sentences::of(&all);
        let found: Vec<Found<'_>> = sentences
            .offered(Statement::Evidence)
            .into_iter()
            .map(|said| match said {
                Sentence::Found(found) => found,
                other => panic!("{other:?}"),
            })
            .collect();
        let apart: Vec<_> = found.iter().map(|found| found.apart).collect();
        assert_eq!(apart, [12.0, 46.0, 10.0].map(|mm| Some(Apart::By(mm))));
        let deeds: Vec<Vec<Deed>> = found
            .iter()
            .map(|found| found.changes.iter().map(Change::deed).collect())
            .collect();
        let [larger, more] = [Deed::FinSize(Amount::More), Deed::FinNumber(Amount::More)];
        let heavier = Deed::Weight(ChangedPart::Nose, Amount::More);
        assert_eq!(deeds, [vec![], vec![larger], vec![heavier, more]]);
        let swings: Vec<_> =
            found.iter().map(|found| (found.overall, found.seen, found.swings)).collect();
        assert_eq!(
            swings,
            [
                (Overall::Mostly(Sideways), 2, 3),
                (Overall::Mostly(Steady), 3, 3),
                (Overall::Mixed, 0, 2),
            ]
        );
        let came_true: Vec<_> =
            found.iter().map(|found| (found.predicted, found.came_true)).collect();
        let predicted = Some(Sideways);
        assert_eq!(
            came_true,
            [(predicted, Some(true)), (predicted, Some(false)), (None, None)]
        );
        assert!(found.iter().all(|found| found.is_measured));
        assert_eq!(found[2].compared_with, Some(2));
    }

    #[test]
    fn at_the_first_level_evidence_is_which_point_is_nearer() {
        let mut first_level = notebook();
        first_level.level = Level::Balance;
        let sentences = Sentences::of(&first_level);
        let apart: Vec<_> = sentences
            .offered(Statement::Evidence)
            .into_iter()
            .map(|said| match said {
                Sentence::Found(found) => found.apart,
                other => panic!("{other:?}"),
            })
            .collect();
        let mass = Some(Apart::Nearer(Some(BalancePoint::Mass)));
        assert_eq!(apart, [mass, mass, Some(Apart::Nearer(None))]);
    }

    #[test]
    fn reasons_are_openers_about_the_push_of_the_air() {
        let although = Turned::Although(Sideways, BalancePoint::Mass);
        assert_eq!(
            Sentences::of(&notebook()).offered(Statement::Reason),
            [
                Sentence::Turned(1, although),
                Sentence::Turned(2, Turned::PushedBehind),
                Sentence::Sideways,
                Sentence::LongerWay,
            ]
        );
    }

    #[test]
    fn trust_has_the_real_ranges_and_what_was_amiss() {
        let (mass, pressure) = (BalancePoint::Mass, BalancePoint::Pressure);
        let notebook = notebook();
        let sentences = Sentences::of(&notebook);
        let third = notebook.summary(notebook.trial(3).unwrap());
        assert_eq!(
            sentences.offered(Statement::Trust),
            [
                (1, within(mass, 3, 3.0)),
                (1, within(pressure, 3, 2.0)),
                (2, within(mass, 3, 4.0)),
                (2, within(pressure, 3, 2.0)),
                (3, within(mass, 2, 20.0)),
                (3, within(pressure, 2, 4.0)),
                (3, Trust::LeftOut { mm: 228.0, reason: "The card was bent" }),
                (3, Trust::Overlap),
                (3, Trust::Changes(&third.changes)),
                (3, Trust::FewSwings(2)),
                (3, Trust::Mixed),
                (3, Trust::NotPredicted),
            ]
            .map(|(trial, what)| Sentence::Trust(trial, what))
        );
    }

    #[test]
    fn what_else_speaks_against_it() {
        let mut notebook = Notebook::default();
        let design = Example::Tern.design();
        let record = Record::from(design.clone());
        let id = notebook.begin(&record).unwrap();
        let trust = |notebook: &Notebook, expected: &[Trust<'_>]| {
            let sentences = Sentences::of(notebook);
            let said = sentences.offered(Statement::Trust);
            let expected: Vec<_> =
                expected.iter().map(|what| Sentence::Trust(1, *what)).collect();
            assert_eq!(said, expected);
        };
        trust(&notebook, &[Trust::NotMeasured, Trust::FewSwings(0), Trust::NotPredicted]);
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
        trust(
            &notebook,
            &[
                Trust::OneReading(BalancePoint::Mass),
                Trust::OneReading(BalancePoint::Pressure),
                Trust::LeftOut { mm: 158.0, reason: "" },
                Trust::FewSwings(1),
                Trust::PredictedLate,
            ],
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
        let sentences = Sentences::of(&notebook);
        let said = sentences.offered(Statement::Trust);
        assert!(said.contains(&Sentence::Trust(2, Trust::Alike(1))), "{said:?}");
    }

    #[test]
    fn questions_are_about_the_groups_own_trials() {
        let ask = |notebook: &Notebook| {
            let sentences = Sentences::of(notebook);
            Statement::ALL.map(|of| sentences.question(of))
        };
        assert_eq!(
            ask(&notebook()),
            [
                Question::WhatHappened(Deed::FinSize(Amount::More)),
                Question::WhichNumbers(1, 2),
                Question::WhySwing(2, Steady),
                Question::Overlap(3),
            ]
        );
        let mut two = notebook();
        two.delete(3);
        let (trial, point) = (2, BalancePoint::Mass);
        assert_eq!(ask(&two)[3], Question::Differ { trial, point, range_mm: 4.0 });
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
        assert_eq!(ask(&unsure)[2], Question::General(Statement::Reason));
        let none = Notebook::default();
        assert_eq!(ask(&none), Statement::ALL.map(Question::General));
        for of in Statement::ALL {
            assert_eq!(Sentences::of(&none).offered(of), []);
        }
    }
}
