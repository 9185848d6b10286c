//! How sure the figures are, worked out in slices once typing pauses.

use noseward_stability::{
    Confidence, Doubts, Influence, MeasuredPoints, SeparationDraws,
};

use noseward_words::{self as words, Text};

use super::{Certainty, Effect, State, Uncertainty};

/// Draws of one slice: some milliseconds on a slow machine.
const DRAWS_IN_SLICE: usize = 100;

impl State {
    /// Works out a little more. Nothing while somebody types, or when all is known.
    pub(crate) fn work_out_sure(&mut self) -> Vec<Effect> {
        if self.announced_faults.is_some() || self.report.figures.is_none() {
            return Vec::new();
        }
        match &mut self.certainty {
            Certainty::Known(_) => return Vec::new(),
            Certainty::Unknown => {
                let draws =
                    SeparationDraws::new(&self.design, &self.measured, self.resolution);
                self.certainty = Certainty::Drawing(Box::new(draws));
            }
            Certainty::Drawing(draws) => {
                draws.run(DRAWS_IN_SLICE);
                if draws.is_done() {
                    let verdict = draws.verdict();
                    let mut influences =
                        Influence::of(&self.design, &self.measured, self.resolution);
                    influences.truncate(3);
                    let figures = self.report.figures.as_ref();
                    let doubts = figures.and_then(|f| Doubts::of(&self.design, f));
                    let says = doubts.as_ref().zip(figures).map(|(doubts, figures)| {
                        doubts.confidence(figures.outcome, verdict.as_ref())
                    });
                    let (confidence, why) = confidence(says, overlap(&self.measured));
                    let sure = verdict.map(|verdict| Uncertainty {
                        verdict,
                        confidence,
                        why,
                        doubts,
                        influences,
                    });
                    self.certainty = Certainty::Known(sure);
                    // The bench comes after the draws.
                    return vec![Effect::Redraw, Effect::Slice];
                }
            }
        }
        vec![Effect::Slice]
    }
}

/// How sure an outcome is, and why it is probable if it is: readings that overlap leave none
/// more than probable.
fn confidence(says: Option<Confidence>, overlap: bool) -> (Confidence, Text) {
    let why = words::verdict_not_all_sums();
    match says.unwrap_or(Confidence::Probably) {
        Confidence::Agreed | Confidence::Probably if overlap => {
            (Confidence::Probably, words::verdict_overlap())
        }
        says => (says, why),
    }
}

/// Whether the readings of the two points overlap: they cannot tell which is nearer the
/// nose.
fn overlap(measured: &MeasuredPoints) -> bool {
    let MeasuredPoints { centre_of_mass, centre_of_pressure } = measured;
    centre_of_mass.as_ref().zip(centre_of_pressure.as_ref()).is_some_and(
        |(mass, pressure)| {
            mass.least_m() <= pressure.most_m() && pressure.least_m() <= mass.most_m()
        },
    )
}
