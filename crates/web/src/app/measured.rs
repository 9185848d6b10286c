//! What was measured of the two points of the rocket on the page: the readings of the trial
//! in hand are their one home.

use noseward_lesson::{AGREE_MM, Measurements, Trial, same_build};
use noseward_stability::{Design, MeasuredPoint, MeasuredPoints, evaluate_measured};

use super::{Certainty, State};

/// The rocket that readings were taken from.
#[derive(Debug)]
pub(crate) struct ReadOf {
    trial: u16,
    readings: Measurements,
    design: Design,
}

impl State {
    /// Works the report out anew where the readings of the trial in hand say something
    /// else than before. Says whether they do.
    pub(crate) fn take_readings(&mut self) -> bool {
        let points = self.readings_of_rocket().unwrap_or_default();
        if points == self.measured {
            return false;
        }
        self.measured = points;
        self.assess();
        self.forget_swing();
        true
    }

    /// Works out what is known about the rocket, with the readings that are of it.
    pub(super) fn assess(&mut self) {
        self.measured = self.readings_of_rocket().unwrap_or_default();
        self.certainty = Certainty::Unknown;
        let trial = self.desk.notebook.in_hand();
        let same = |trial: &&Trial| *trial.design() == self.design;
        self.report = match trial.filter(same) {
            Some(trial) if self.measured.is_empty() => trial.rocket().report().clone(),
            _ => evaluate_measured(&self.design, &self.measured),
        };
        if self.report.figures.is_some() {
            self.drawn = (self.design.clone(), self.report.clone());
        }
    }

    /// Whether a measured point lies further from the computed one than its own range, and
    /// further than such a point can be read.
    pub(crate) fn differs(&self, measured: &MeasuredPoint, computed_m: f64) -> bool {
        let range_m = measured.most_m() - measured.least_m();
        (measured.value_m() - computed_m).abs() > range_m.max(AGREE_MM / 1000.0)
    }

    /// Whether the trial in hand has readings of the rocket as it was before a change: they
    /// say nothing of the one on the page.
    pub(crate) fn has_stale_readings(&self) -> bool {
        let trial = self.desk.notebook.in_hand();
        let others = |read: &ReadOf| !same_build(&read.design, &self.design);
        trial.is_some_and(|trial| trial.measured.any())
            && self.desk.read_of.as_ref().is_some_and(others)
    }

    fn readings_of_rocket(&mut self) -> Option<MeasuredPoints> {
        let trial = self.desk.notebook.in_hand().filter(|trial| trial.measured.any())?;
        let known =
            |read: &ReadOf| read.trial == trial.id() && read.readings == trial.measured;
        if !self.desk.read_of.as_ref().is_some_and(known) {
            self.desk.read_of = Some(ReadOf {
                trial: trial.id(),
                readings: trial.measured.clone(),
                design: trial.design().clone(),
            });
        }
        let read = self.desk.read_of.as_ref()?;
        same_build(&read.design, &self.design)
            .then(|| trial.measured.points(self.design.length_mm()))
    }
}
