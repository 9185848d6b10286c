//! A set number of draws, each with the rank of its outcome, made in slices.

use super::generator::Generator;
use super::input::Input;
use super::monte_carlo::{Draw, Interval, MonteCarlo};

/// Draws that each come to the rank of an outcome and a value that goes with it.
#[derive(Clone, Debug)]
pub(crate) struct RankedDraws {
    draws: MonteCarlo,
    all: usize,
}

/// Less than this share in one outcome is too close to call.
const SURE: f64 = 0.95;

/// Whether one outcome has next to all of the draws.
pub(crate) fn is_sure(share: f64) -> bool {
    share >= SURE
}

impl RankedDraws {
    /// Ready for the first of so many draws. The same seed gives the same ones.
    pub(crate) fn new(inputs: Vec<Input>, seed: u64, all: usize) -> Self {
        Self { draws: MonteCarlo::new(inputs, Generator::seeded(seed)), all }
    }

    /// Makes so many more, up to all of them. The model gives value and rank.
    pub(crate) fn run(
        &mut self,
        count: usize,
        model: impl Fn(&[f64]) -> Option<(f64, u8)>,
    ) {
        let count = count.min(self.all - self.made());
        self.draws.run(count, &mut |values| match model(values) {
            Some((value, class)) => Draw { value, class },
            None => Draw { value: f64::NAN, class: 0 },
        });
    }

    fn made(&self) -> usize {
        self.draws.values().len() + self.lost()
    }

    /// How many came to nothing.
    pub(crate) fn lost(&self) -> usize {
        self.draws.without_result()
    }

    /// Whether all are made.
    pub(crate) fn is_done(&self) -> bool {
        self.made() >= self.all
    }

    /// The share of each rank. `None` before all are made, and when all came to nothing.
    #[expect(clippy::cast_precision_loss, reason = "some thousands at most")]
    pub(crate) fn shares(&self) -> Option<[f64; 4]> {
        let count = self.draws.values().len();
        let counts = self.draws.class_counts();
        let share = |rank: usize| match counts.get(rank) {
            Some(&of_rank) => of_rank as f64 / count as f64,
            None => 0.0,
        };
        (self.is_done() && count > 0).then(|| [0, 1, 2, 3].map(share))
    }

    /// 95 % of the values lie in it, as many below as above. `None` before all are made,
    /// and when next to none came to something.
    pub(crate) fn interval(&mut self) -> Option<Interval> {
        let summary = self.is_done().then(|| self.draws.summary())??;
        Some(summary.symmetric)
    }
}
