//! How sure the figures are, worked out in slices once typing pauses.

use noseward_stability::{Doubts, Influence, SeparationDraws};

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
                    let sure = verdict.map(|verdict| Uncertainty {
                        verdict,
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
