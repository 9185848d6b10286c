//! How sure the separation and the outcome are, from the readings of a design.
//!
//! Every length and weighed mass of a design was read with a ruler or scales of some
//! resolution: a rectangular distribution of half a step to either side (JCGM 100, 4.3.7).
//! A reading of zero (the tip of a triangle) is what was built, not what was read.

use super::generator::Generator;
use super::input::{Distribution, Input};
use super::monte_carlo::{Draw, Interval, MonteCarlo};
use super::propagation::propagate;
use crate::design::Design;
use crate::design::field::{Field, Quantity};
use crate::masses;
use crate::outcome::quick_outcome;
use crate::outline::Body;
use crate::outline::side_view::SideView;
use crate::pressure::air::Air;
use crate::pressure::model::Model;

/// The smallest steps that ruler and scales can tell apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Resolution {
    /// Of the ruler, in millimetres.
    pub length_mm: f64,
    /// Of the scales, in grams.
    pub mass_g: f64,
}

impl Default for Resolution {
    /// A ruler with millimetres and kitchen scales with whole grams.
    fn default() -> Self {
        Self { length_mm: 1.0, mass_g: 1.0 }
    }
}

/// What the draws say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// 95 % of the draws' separations lie in it, as many below as above, in metres.
    pub separation_m: Interval,
    /// Share of the draws in each outcome, by [`Outcome::rank`](crate::Outcome::rank).
    pub shares: [f64; 4],
}

/// Less than this share in one outcome is too close to call.
const SURE: f64 = 0.95;

impl Verdict {
    /// Whether the outcome changes within what the readings leave open.
    #[must_use]
    pub fn is_too_close(&self) -> bool {
        self.shares.iter().all(|&share| share < SURE)
    }
}

/// How much one reading matters.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Influence {
    /// The reading.
    pub field: Field,
    /// What it adds to the standard uncertainty of the separation, in metres.
    pub uncertainty_m: f64,
}

/// Draws of a design's readings, made in slices.
///
/// ```
/// use noseward_stability::{Example, Resolution, SeparationDraws};
///
/// let puffin = Example::Puffin.design();
/// let mut draws = SeparationDraws::new(&puffin, Resolution::default());
/// while !draws.is_done() {
///     draws.run(500);
/// }
/// let verdict = draws.verdict().expect("10,000 draws");
/// assert!(!verdict.is_too_close());
/// assert!(verdict.separation_m.low > 0.060 && verdict.separation_m.high < 0.075);
/// ```
#[derive(Clone, Debug)]
pub struct SeparationDraws {
    design: Design,
    fields: Vec<Field>,
    draws: MonteCarlo,
    made: usize,
}

/// Draws in all: they place each end of the interval to about 3 % of its half-width.
const DRAWS: usize = 10_000;
/// Same design, same draws.
const SEED: u64 = 20_100;

impl SeparationDraws {
    /// Ready for the first draw.
    #[must_use]
    pub fn new(design: &Design, resolution: Resolution) -> Self {
        let (fields, inputs) = readings(design, resolution);
        let draws = MonteCarlo::new(inputs, Generator::seeded(SEED));
        Self { design: design.clone(), fields, draws, made: 0 }
    }

    /// Makes so many draws more, up to 10,000 in all.
    pub fn run(&mut self, count: usize) {
        let count = count.min(DRAWS - self.made);
        self.made += count;
        let (design, fields) = (&mut self.design, &self.fields);
        self.draws.run(count, &mut |values| {
            put(design, fields, values);
            match separation_and_rank(design) {
                Some((value, class)) => Draw { value, class },
                None => Draw { value: f64::NAN, class: 0 },
            }
        });
    }

    /// Whether all draws are made.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.made >= DRAWS
    }

    /// What they say. `None` before all are made, and when next to none had a result.
    pub fn verdict(&mut self) -> Option<Verdict> {
        let summary = self.is_done().then(|| self.draws.summary())??;
        let counts = self.draws.class_counts();
        #[expect(clippy::cast_precision_loss, reason = "at most 10,000")]
        let share = |rank: usize| {
            counts.get(rank).copied().unwrap_or(0) as f64
                / self.draws.values().len() as f64
        };
        Some(Verdict {
            separation_m: summary.symmetric,
            shares: [share(0), share(1), share(2), share(3)],
        })
    }
}

impl Influence {
    /// The readings of a design by what they add to the uncertainty of its separation,
    /// the largest first: to first order (JCGM 100, 5.1).
    #[must_use]
    pub fn of(design: &Design, resolution: Resolution) -> Vec<Self> {
        let (fields, inputs) = readings(design, resolution);
        let mut tried = design.clone();
        let budget = propagate(&inputs, &mut |values| {
            put(&mut tried, &fields, values);
            separation(&tried).map_or(f64::NAN, |(separation_m, ..)| separation_m)
        });
        let mut list: Vec<Self> = Vec::new();
        for (&field, contribution) in fields.iter().zip(&budget.contributions) {
            let uncertainty_m = contribution.signed.abs();
            if uncertainty_m > 0.0 {
                let place = list.partition_point(|i| i.uncertainty_m >= uncertainty_m);
                list.insert(place, Self { field, uncertainty_m });
            }
        }
        list
    }
}

/// The readings of a design, each as an input.
fn readings(design: &Design, resolution: Resolution) -> (Vec<Field>, Vec<Input>) {
    Field::numbers(design)
        .into_iter()
        .filter_map(|field| {
            let step = match field.quantity()? {
                Quantity::Length => resolution.length_mm,
                Quantity::Mass => resolution.mass_g,
                Quantity::Count | Quantity::Angle | Quantity::ArealDensity => {
                    return None;
                }
            };
            let value = field.get(design).filter(|&value| value != 0.0)?;
            // No reading is drawn beyond zero.
            let half_width = (step / 2.0).min(value.abs());
            let input = Input::new(value, Distribution::Rectangular { half_width });
            Some((field, input.ok()?))
        })
        .unzip()
}

fn put(design: &mut Design, fields: &[Field], values: &[f64]) {
    for (field, &value) in fields.iter().zip(values) {
        field.set(design, Some(value));
    }
}

/// Separation side-on in metres, with what the outcome is worked out from.
fn separation(design: &Design) -> Option<(f64, Body, SideView, f64)> {
    let body = Body::new(design)?;
    let view = SideView::new(design, &body);
    let (_, pressure_m) = view.area_and_centroid_m();
    let mass_m = match design.measured.hanging_point_mm {
        Some(mm) => mm / 1000.0,
        None => masses::total(&masses::parts(design, &body)).centre_m,
    };
    Some((pressure_m - mass_m, body, view, mass_m))
}

/// Separation in metres and the rank of the worst outcome of any plane.
fn separation_and_rank(design: &Design) -> Option<(f64, u8)> {
    let (separation_m, body, view, mass_m) = separation(design)?;
    let planes = Air::in_planes(design, &body, &view, Model::default());
    let ranks = planes.iter().map(|air| quick_outcome(air, mass_m).rank());
    Some((separation_m, ranks.max()?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, evaluate};

    fn drawn(design: &Design, resolution: Resolution) -> Verdict {
        let mut draws = SeparationDraws::new(design, resolution);
        while !draws.is_done() {
            draws.run(3000);
        }
        draws.verdict().unwrap()
    }

    /// Two ways to one answer: the spread of the draws and the law of propagation. Half the
    /// 95 % interval is 0.95 √3 = 1.65 standard uncertainties where one rectangle rules
    /// (the Gannet's clay), and 1.96 where many add up to a normal distribution.
    #[test]
    fn draws_agree_with_first_order() {
        for example in Example::ALL {
            let design = example.design();
            let resolution = Resolution::default();
            let verdict = drawn(&design, resolution);
            let squares = Influence::of(&design, resolution);
            let u =
                squares.iter().map(|i| i.uncertainty_m * i.uncertainty_m).sum::<f64>();
            let half = (verdict.separation_m.high - verdict.separation_m.low) / 2.0;
            let ratio = half / u.sqrt();
            assert!((1.62..2.0).contains(&ratio), "{example:?}: {ratio}");
            let middle =
                f64::midpoint(verdict.separation_m.high, verdict.separation_m.low);
            let separation = evaluate(&design).figures.unwrap().separation_m;
            assert!((middle - separation).abs() < 0.2 * half, "{example:?}");
        }
    }

    #[test]
    fn the_outcome_of_most_draws_is_that_of_the_rocket() {
        for example in Example::ALL {
            let design = example.design();
            let verdict = drawn(&design, Resolution::default());
            let rank = evaluate(&design).figures.unwrap().outcome.rank();
            let share = verdict.shares[usize::from(rank)];
            assert!(share > 0.5, "{example:?}: {:?}", verdict.shares);
            let all: f64 = verdict.shares.iter().sum();
            assert!((all - 1.0).abs() < 1e-12);
        }
    }

    /// Between a rocket that rights itself and one that does not lies one that is too
    /// close to call.
    #[test]
    fn on_the_border_it_is_too_close_to_call() {
        let mut design = Example::Puffin.design();
        assert!(!drawn(&design, Resolution::default()).is_too_close());
        let rank = |mm: f64| {
            let mut design = design.clone();
            design.measured.hanging_point_mm = Some(mm);
            evaluate(&design).figures.unwrap().outcome.rank()
        };
        let (mut sure, mut lost) = (141.0, 300.0);
        assert_ne!(rank(sure), rank(lost));
        while lost - sure > 0.05 {
            let middle = f64::midpoint(sure, lost);
            if rank(middle) == 0 { sure = middle } else { lost = middle }
        }
        design.measured.hanging_point_mm = Some(sure);
        assert!(drawn(&design, Resolution::default()).is_too_close());
    }

    #[test]
    fn coarser_tools_are_less_sure_and_the_same_draws_come_again() {
        let design = Example::Puffin.design();
        let width =
            |verdict: Verdict| verdict.separation_m.high - verdict.separation_m.low;
        let fine = drawn(&design, Resolution::default());
        let coarse = drawn(&design, Resolution { length_mm: 5.0, mass_g: 5.0 });
        assert!(width(coarse) > 3.0 * width(fine));
        assert_eq!(fine, drawn(&design, Resolution::default()));
        let mut slices = SeparationDraws::new(&design, Resolution::default());
        while !slices.is_done() {
            slices.run(77);
        }
        assert_eq!(slices.verdict(), Some(fine));
    }

    #[test]
    fn what_matters_most_comes_first() {
        let list = Influence::of(&Example::Puffin.design(), Resolution::default());
        assert!(list.windows(2).all(|w| w[0].uncertainty_m >= w[1].uncertainty_m));
        assert!(list.len() > 10);
    }
}
