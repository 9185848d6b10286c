//! One trial in one row, as tables, charts and codes need it.

use crate::{
    BalancePoint, Change, Notebook, Overall, ReadingStats, SwingOutcome, Trial, changes,
};

/// What one trial comes to. Places are millimetres from the nose tip; computed ones are
/// those of the parts, and `None` when the figures cannot be worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Summary {
    /// The trial's number.
    pub id: u16,
    /// The number of the trial that it is compared with; `None` for a baseline.
    pub compared_with: Option<u16>,
    /// What was changed since that one. Empty for a baseline.
    pub changes: Vec<Change>,
    /// The mass of the rocket in grams: weighed if it was, else that of its parts.
    pub mass_g: Option<f64>,
    /// The rocket's length in millimetres: measured if it was and can be true,
    /// else that of the design.
    pub rocket_length_mm: f64,
    /// The largest width of the body, in millimetres.
    pub body_width_mm: Option<f64>,
    /// The computed centre of mass.
    pub computed_mass_mm: Option<f64>,
    /// The computed centre of pressure side-on.
    pub computed_pressure_mm: Option<f64>,
    /// The measured centre of mass.
    pub measured_mass: Option<ReadingStats>,
    /// The measured centre of pressure side-on.
    pub measured_pressure: Option<ReadingStats>,
    /// The measured separation, in millimetres.
    pub measured_separation_mm: Option<f64>,
    /// Whether the measured ranges overlap, too close to call; `None` unless both points
    /// were measured.
    pub too_close: Option<bool>,
    /// What was predicted first.
    pub predicted: Option<SwingOutcome>,
    /// What the swings come to.
    pub overall: Overall,
    /// How many swings count.
    pub swings: usize,
    /// Whether it was swung before anything was predicted.
    pub swung_first: bool,
    /// Whether what is sealed was changed by hand, outside of the page.
    pub altered: bool,
}

impl Summary {
    /// The computed separation, in millimetres, positive where the centre of mass is
    /// nearer the nose.
    #[must_use]
    pub fn computed_separation_mm(&self) -> Option<f64> {
        Some(self.computed_pressure_mm? - self.computed_mass_mm?)
    }

    /// The separation, in millimetres: measured if both points were, else computed.
    #[must_use]
    pub fn separation_mm(&self) -> Option<f64> {
        self.measured_separation_mm.or_else(|| self.computed_separation_mm())
    }

    /// Whether the separation is a measured one.
    #[must_use]
    pub fn is_measured(&self) -> bool {
        self.measured_separation_mm.is_some()
    }

    /// The separation in body widths.
    #[must_use]
    pub fn calibres(&self) -> Option<f64> {
        Some(self.separation_mm()? / self.body_width_mm?)
    }

    /// Whether the first prediction came true. `None` where nothing was predicted, or the
    /// swings do not say: none that counts, mixed, or "not sure" on either side.
    #[must_use]
    pub fn came_true(&self) -> Option<bool> {
        self.overall.bears_out(self.predicted?)
    }
}

impl Notebook {
    /// Every trial in one row, in the order in which they are shown.
    #[must_use]
    pub fn summaries(&self) -> Vec<Summary> {
        self.trials().iter().map(|trial| self.summary(trial)).collect()
    }

    /// What was changed since the trial that this one is compared with; empty for a
    /// baseline.
    #[must_use]
    pub fn changes_of(&self, trial: &Trial) -> Vec<Change> {
        let baseline = self.baseline_of(trial);
        baseline.map_or_else(Vec::new, |old| changes(&old.record(), &trial.record()))
    }

    /// One trial in one row.
    #[must_use]
    pub fn summary(&self, trial: &Trial) -> Summary {
        let design = trial.design();
        let measured = &trial.measured;
        let length_mm = design.length_mm();
        let figures = trial.rocket().figures();
        let figure = |value: &dyn Fn(&noseward_stability::Figures) -> f64| {
            figures.map(|figures| value(figures) * 1000.0)
        };
        Summary {
            id: trial.id(),
            compared_with: trial.compared_with(),
            changes: self.changes_of(trial),
            mass_g: design.measured.total_mass_g.or(figure(&|f| f.computed_mass.mass_kg)),
            rocket_length_mm: measured.rocket_mm(length_mm),
            body_width_mm: figure(&|f| f.body_width_m),
            computed_mass_mm: figure(&|f| f.computed_mass.centre_m),
            computed_pressure_mm: figure(&|f| f.centre_of_pressure_side_on_m),
            measured_mass: measured.middle(BalancePoint::Mass, length_mm),
            measured_pressure: measured.middle(BalancePoint::Pressure, length_mm),
            measured_separation_mm: measured.separation_mm(length_mm),
            too_close: measured.overlaps(length_mm),
            predicted: trial.predictions().first().map(|first| first.outcome),
            overall: trial.overall(),
            swings: trial.swings().counted().count(),
            swung_first: trial.swung_first(),
            altered: trial.is_altered(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Amount, Deed, Draft, Record};
    use SwingOutcome::{NotSure, Sideways, Steady, Wobbling};
    use noseward_stability::{Design, Example, evaluate};

    /// Tern, then Tern with a fourth fin, measured, predicted and swung.
    fn notebook(predicted: SwingOutcome, seen: &[SwingOutcome]) -> Notebook {
        let mut notebook = Notebook::default();
        let mut record = Record::from(Example::Tern.design());
        notebook.begin(&record).unwrap();
        record.design.fins[0].count = 4;
        let id = notebook.begin(&record).unwrap();
        let trial = notebook.trial_mut(id).unwrap();
        trial.draft = Draft { outcome: Some(predicted), because: String::new() };
        trial.measured.mass.mm = [150.0, 153.0, 151.0].map(Some);
        trial.measured.pressure.mm = [171.0, 169.0, 170.0].map(Some);
        notebook.lock(id);
        for outcome in seen {
            record.swings.add(*outcome);
        }
        notebook.swing(&record.swings);
        notebook
    }

    #[test]
    fn a_trial_in_one_row() {
        let rows = notebook(Steady, &[Steady, Steady, Wobbling]).summaries();
        let [first, second] = &rows[..] else { panic!("{rows:?}") };
        assert_eq!((first.id, first.compared_with, first.changes.len()), (1, None, 0));
        assert!(!first.is_measured() && first.overall == Overall::Nothing);
        assert_eq!(first.came_true(), None);
        let figures = evaluate(&Example::Tern.design()).figures.unwrap();
        let separation = first.separation_mm().unwrap();
        assert!((separation - figures.separation_m * 1000.0).abs() < 1e-9);
        assert!(
            (first.calibres().unwrap() - figures.separation_body_widths).abs() < 1e-9
        );
        assert!((first.mass_g.unwrap() - figures.mass.mass_kg * 1000.0).abs() < 1e-9);
        assert_eq!(second.compared_with, Some(1));
        let deeds: Vec<_> = second.changes.iter().map(Change::deed).collect();
        assert_eq!(deeds, [Deed::FinNumber(Amount::More)]);
        assert_eq!((second.separation_mm(), second.is_measured()), (Some(19.0), true));
        assert_eq!(second.calibres(), Some(19.0 / 65.0));
        assert_eq!((second.too_close, second.swings), (Some(false), 3));
        assert_eq!(second.measured_mass.unwrap().range_mm(), 3.0);
        assert_eq!((second.came_true(), second.swung_first), (Some(true), false));
        assert!(!second.altered);
    }

    #[test]
    fn a_prediction_comes_true_or_not_or_nobody_knows() {
        for (predicted, seen, came_true) in [
            (Steady, &[Steady, Steady][..], Some(true)),
            (Sideways, &[Steady, Steady], Some(false)),
            (Steady, &[Steady, Wobbling], None),
            (Steady, &[], None),
            (NotSure, &[Steady], None),
            (Steady, &[NotSure, NotSure], None),
        ] {
            let rows = notebook(predicted, seen).summaries();
            assert_eq!(rows[1].came_true(), came_true, "{predicted:?} {seen:?}");
        }
    }

    #[test]
    fn scales_and_rulers_go_before_descriptions() {
        let mut record = Record::from(Example::Tern.design());
        record.design.measured.total_mass_g = Some(41.0);
        let mut notebook = Notebook::default();
        let id = notebook.begin(&record).unwrap();
        notebook.trial_mut(id).unwrap().measured.rocket_length_mm = Some(288.0);
        let row = &notebook.summaries()[0];
        assert_eq!((row.mass_g, row.rocket_length_mm), (Some(41.0), 288.0));
    }

    #[test]
    fn a_rocket_without_figures_still_has_a_row() {
        let mut notebook = Notebook::default();
        notebook.begin(&Design::default().into()).unwrap();
        let row = &notebook.summaries()[0];
        assert_eq!((row.separation_mm(), row.calibres(), row.mass_g), (None, None, None));
        assert_eq!(row.rocket_length_mm, 0.0);
    }
}
