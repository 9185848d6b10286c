//! Uncertainty by trying: the model with many sets of inputs that might have been.

use super::generator::Generator;
use super::input::Input;

/// What the model gives for one set of inputs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Draw {
    /// The result. One that is not finite says that these inputs have no result.
    pub value: f64,
    /// Which kind of result it is: a small number of the caller's choosing.
    pub class: u8,
}

impl From<f64> for Draw {
    /// A result of class 0.
    fn from(value: f64) -> Self {
        Self { value, class: 0 }
    }
}

/// From a lower to an upper end, in the unit of the result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// The lower end.
    pub low: f64,
    /// The upper end.
    pub high: f64,
}

/// What the results look like, all in the unit of the result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summary {
    /// Their mean (JCGM 101, 7.6).
    pub mean: f64,
    /// Their standard deviation, which is the standard uncertainty (JCGM 101, 7.6).
    pub standard_uncertainty: f64,
    /// 95 % of them, with as many below as above (JCGM 101, 7.7.2).
    pub symmetric: Interval,
    /// 95 % of them in the least room (JCGM 101, 7.7.3 and 5.3.4). With several modes it
    /// may have gaps that it does not show.
    pub shortest: Interval,
}

/// Draws that have been made, and the means to make more.
///
/// Made in slices of any size, the draws are the same: a page can run a few hundred at a
/// time and stay quick to answer. 10,000 draws place each end of the 95 % interval of a
/// normal result to within 0.03 standard uncertainties (one standard error); JCGM 101, 7.2.2,
/// advises a million where two digits of the uncertainty are to be quoted.
///
/// ```
/// use noseward_stability::{Distribution, Draw, Generator, Input, MonteCarlo};
///
/// let mass = Input::new(94.0, Distribution::Rectangular { half_width: 0.5 })?;
/// let bottle = Input::new(25.0, Distribution::Normal { standard: 1.0 })?;
/// let mut draws = MonteCarlo::new(vec![mass, bottle], Generator::seeded(1));
/// for _slice in 0..10 {
///     draws.run(1000, &mut |x| Draw { value: x[0] + x[1], class: u8::from(x[1] > x[0]) });
/// }
/// let summary = draws.summary().expect("10,000 draws are enough");
/// assert!((summary.mean - 119.0).abs() < 0.05);
/// assert_eq!(draws.class_counts(), [10_000]);
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
#[derive(Clone, Debug)]
pub struct MonteCarlo {
    inputs: Vec<Input>,
    generator: Generator,
    values: Vec<f64>,
    class_counts: Vec<usize>,
    without_result: usize,
}

impl MonteCarlo {
    /// Ready for the first draw. The inputs are drawn independently of each other.
    #[must_use]
    pub fn new(inputs: Vec<Input>, generator: Generator) -> Self {
        Self {
            inputs,
            generator,
            values: Vec::new(),
            class_counts: Vec::new(),
            without_result: 0,
        }
    }

    /// Makes so many draws more. The model sees one value for each input, in their order.
    pub fn run(&mut self, draws: usize, model: &mut dyn FnMut(&[f64]) -> Draw) {
        let mut drawn = vec![0.0; self.inputs.len()];
        for _ in 0..draws {
            for (value, input) in drawn.iter_mut().zip(&self.inputs) {
                *value = input.draw(&mut self.generator);
            }
            let draw = model(&drawn);
            if !draw.value.is_finite() {
                self.without_result += 1;
                continue;
            }
            self.values.push(draw.value);
            let class = usize::from(draw.class);
            if class >= self.class_counts.len() {
                self.class_counts.resize(class + 1, 0);
            }
            self.class_counts[class] += 1;
        }
    }

    /// The results so far, in no order that means anything.
    #[must_use]
    pub fn values(&self) -> &[f64] {
        &self.values
    }

    /// How many results fell into each class, from class 0 to the highest that occurred.
    #[must_use]
    pub fn class_counts(&self) -> &[usize] {
        &self.class_counts
    }

    /// How many draws had no result. They are in no class and not in the summary, which
    /// therefore speaks of the others only.
    #[must_use]
    pub fn without_result(&self) -> usize {
        self.without_result
    }

    /// What the results look like. None with fewer than 11, which leave nothing outside
    /// 95 %.
    ///
    /// Sorts the results, so that it is the same however the draws were sliced.
    pub fn summary(&mut self) -> Option<Summary> {
        self.values.sort_unstable_by(f64::total_cmp);
        let values = &self.values;
        let count = values.len();
        // JCGM 101, 7.7.1: the whole number nearest to 0.95 M.
        let within = (19 * count + 10) / 20;
        let outside = count - within;
        if outside == 0 {
            return None;
        }
        let mean = values.iter().sum::<f64>() / count as f64;
        let squares: f64 = values.iter().map(|v| (v - mean) * (v - mean)).sum();
        // From the r-th smallest to the one `within` ranks above it.
        let from =
            |r: usize| Interval { low: values[r - 1], high: values[r - 1 + within] };
        let mut shortest = from(1);
        for r in 2..=outside {
            let next = from(r);
            if next.high - next.low < shortest.high - shortest.low {
                shortest = next;
            }
        }
        Some(Summary {
            mean,
            standard_uncertainty: (squares / (count - 1) as f64).sqrt(),
            symmetric: from(outside.div_ceil(2)),
            shortest,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tolerance::input::Distribution;

    fn uneven() -> MonteCarlo {
        let input = Input::new(1.0, Distribution::Normal { standard: 0.4 }).unwrap();
        let other = Input::new(0.0, Distribution::Arcsine { half_width: 0.2 }).unwrap();
        MonteCarlo::new(vec![input, other], Generator::seeded(5))
    }

    fn model(x: &[f64]) -> Draw {
        Draw { value: libm::exp(x[0] + x[1]), class: if x[0] > 1.0 { 3 } else { 1 } }
    }

    #[test]
    fn slices_do_not_matter() {
        let (mut whole, mut sliced) = (uneven(), uneven());
        whole.run(3000, &mut model);
        for draws in [1, 0, 999, 1500, 500] {
            sliced.run(draws, &mut model);
            sliced.summary();
        }
        assert_eq!(whole.summary(), sliced.summary());
        assert_eq!(whole.values(), sliced.values());
        assert_eq!(whole.class_counts(), sliced.class_counts());
    }

    #[test]
    fn classes_are_counted() {
        let mut draws = uneven();
        draws.run(2000, &mut model);
        let counts = draws.class_counts();
        assert_eq!(counts.len(), 4);
        assert_eq!((counts[0], counts[2]), (0, 0));
        assert_eq!(counts[1] + counts[3], 2000);
        // Half of them, within four standard errors, √(¼ · 2000).
        assert!(counts[1].abs_diff(1000) < 90, "{counts:?}");
    }

    #[test]
    fn draws_without_a_result_are_counted_apart() {
        let mut draws = uneven();
        draws.run(2000, &mut |x| (x[0] - 1.0).sqrt().into());
        assert_eq!(draws.without_result() + draws.values().len(), 2000);
        assert!(draws.without_result() > 900);
        assert_eq!(draws.class_counts(), [draws.values().len()]);
        assert!(draws.summary().unwrap().mean.is_finite());
    }

    /// Given values, by the rule of JCGM 101, 7.7: of 1 to 100, q = 95 and r = 3.
    #[test]
    fn ranks_of_a_hundred() {
        let mut draws = MonteCarlo::new(Vec::new(), Generator::seeded(0));
        let mut next = 100.0;
        draws.run(100, &mut |_| {
            next -= 1.0;
            Draw::from(if next < 2.0 { next - 10.0 } else { next + 1.0 })
        });
        // −10, −9, 3, 4, … 100.
        let summary = draws.summary().unwrap();
        assert_eq!(summary.symmetric, Interval { low: 3.0, high: 98.0 });
        assert_eq!(summary.shortest, Interval { low: 3.0, high: 98.0 });
        let mean = (5050.0 - 3.0 - 19.0) / 100.0;
        assert!((summary.mean - mean).abs() < 1e-12);
    }

    #[test]
    fn eleven_results_are_the_fewest() {
        let mut draws = uneven();
        draws.run(10, &mut model);
        assert_eq!(draws.summary(), None);
        draws.run(1, &mut model);
        let summary = draws.summary().unwrap();
        assert_eq!(summary.symmetric.low, draws.values()[0]);
        assert_eq!(summary.symmetric.high, draws.values()[10]);
    }
}
