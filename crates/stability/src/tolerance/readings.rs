//! One length or mass, read once or several times.

use super::input::{Distribution, Input};
use super::{ToleranceError, finite, width};

/// Readings of one quantity on one scale.
///
/// ```
/// use noseward_stability::Readings;
///
/// // Three times on scales that show whole grams.
/// let mass = Readings::new(&[94.0, 95.0, 94.0], 1.0)?;
/// assert!((mass.mean() - 94.333).abs() < 1e-3);
/// assert_eq!(mass.range(), 1.0);
/// // 0.333 g from the spread of the mean, 0.289 g from the step.
/// assert!((mass.standard_uncertainty() - 0.441).abs() < 1e-3);
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Readings {
    count: usize,
    mean: f64,
    least: f64,
    most: f64,
    /// Sum of the squared distances from the mean.
    squares: f64,
    step: f64,
}

/// Fewest degrees of freedom that are drawn with. With one or two (two or three readings)
/// Student's t has no standard deviation, and every tenth draw would lie further off than
/// 6 or 3 standard uncertainties. Our judgement: a pupil's third reading is not worth that.
const FEWEST_DRAWN: f64 = 3.0;

impl Readings {
    /// These readings, on a scale with this step (zero for none) between its marks.
    ///
    /// # Errors
    ///
    /// When there is no reading, one is not finite, they are too far apart for the square of
    /// that to be a number, or the step is negative or not finite.
    pub fn new(values: &[f64], step: f64) -> Result<Self, ToleranceError> {
        width(step)?;
        let (mut least, mut most, mut sum) = (f64::INFINITY, f64::NEG_INFINITY, 0.0);
        for &value in values {
            finite(value)?;
            least = least.min(value);
            most = most.max(value);
            sum += value;
        }
        if values.is_empty() {
            return Err(ToleranceError::NoReading);
        }
        let mean = finite(sum / values.len() as f64)?;
        let squares = values.iter().map(|value| (value - mean) * (value - mean)).sum();
        finite(squares)?;
        Ok(Self { count: values.len(), mean, least, most, squares, step })
    }

    /// How many there are; at least one.
    #[must_use]
    pub fn count(&self) -> usize {
        self.count
    }

    /// Their mean (JCGM 100, 4.2.1).
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.mean
    }

    /// The largest less the smallest.
    #[must_use]
    pub fn range(&self) -> f64 {
        self.most - self.least
    }

    /// The experimental standard deviation of one reading (JCGM 100, 4.2.2); none with one
    /// reading.
    #[must_use]
    pub fn standard_deviation(&self) -> Option<f64> {
        (self.count > 1).then(|| (self.squares / (self.count - 1) as f64).sqrt())
    }

    /// The standard uncertainty of the mean from the spread alone (JCGM 100, 4.2.3); none
    /// with one reading.
    #[must_use]
    pub fn standard_uncertainty_of_mean(&self) -> Option<f64> {
        self.standard_deviation().map(|s| s / (self.count as f64).sqrt())
    }

    /// The standard uncertainty from the step alone: half of it, as a rectangular
    /// distribution (JCGM 100, F.2.2.1). More readings do not lessen it, for they are
    /// rounded alike.
    #[must_use]
    pub fn resolution_uncertainty(&self) -> f64 {
        self.step / 12.0_f64.sqrt()
    }

    /// The standard uncertainty of the mean from spread and step together.
    ///
    /// Where readings scatter over several steps their spread holds the rounding already,
    /// and this is a little too large.
    #[must_use]
    pub fn standard_uncertainty(&self) -> f64 {
        let spread = self.standard_uncertainty_of_mean().unwrap_or(0.0);
        libm::hypot(spread, self.resolution_uncertainty())
    }

    /// The mean as an input quantity: a rectangular distribution from one reading or from
    /// equal ones; otherwise Student's t (JCGM 101, 6.4.9) and the rectangular one added.
    ///
    /// Draws are made with three degrees of freedom or more, so from two or three readings
    /// they scatter less than JCGM 101 has it. [`Input::degrees_of_freedom`] is not
    /// touched by that.
    #[must_use]
    pub fn to_input(&self) -> Input {
        let half_width = self.step / 2.0;
        let standard = self.standard_uncertainty_of_mean().unwrap_or(0.0);
        let made = if standard > 0.0 {
            let v = (self.count - 1) as f64;
            let repeated = |degrees_of_freedom| {
                let distribution =
                    Distribution::Repeated { standard, degrees_of_freedom, half_width };
                Input::new(self.mean, distribution)
            };
            repeated(v).and_then(|true_to_count| {
                repeated(v.max(FEWEST_DRAWN))?
                    .with_degrees_of_freedom(true_to_count.degrees_of_freedom())
            })
        } else {
            Input::new(self.mean, Distribution::Rectangular { half_width })
        };
        // Not `expect`: what shows the numbers of an error weighs 9 KB.
        let Ok(made) = made else { unreachable!("mean, spread and step are finite") };
        made
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(found: f64, expected: f64) {
        assert!((found - expected).abs() < 1e-12, "{found} {expected}");
    }

    #[test]
    fn one_reading_is_as_good_as_its_step() {
        let one = Readings::new(&[250.0], 1.0).unwrap();
        assert_eq!(one.standard_deviation(), None);
        close(one.standard_uncertainty(), 1.0 / 12.0_f64.sqrt());
        let input = one.to_input();
        assert_eq!(input.distribution(), Distribution::Rectangular { half_width: 0.5 });
        assert_eq!(input.degrees_of_freedom(), f64::INFINITY);
    }

    #[test]
    fn equal_readings_are_no_better_than_one() {
        let same = Readings::new(&[250.0; 5], 1.0).unwrap();
        let one = Readings::new(&[250.0], 1.0).unwrap();
        assert_eq!(same.to_input(), one.to_input());
    }

    /// 1, 2, 3, 4: mean 2.5, s² = 5/3, of the mean 5/12; with a step of 1 another 1/12.
    #[test]
    fn four_readings() {
        let four = Readings::new(&[1.0, 2.0, 3.0, 4.0], 1.0).unwrap();
        close(four.mean(), 2.5);
        close(four.range(), 3.0);
        close(four.standard_deviation().unwrap(), (5.0_f64 / 3.0).sqrt());
        close(four.standard_uncertainty_of_mean().unwrap(), (5.0_f64 / 12.0).sqrt());
        close(four.standard_uncertainty(), 0.5_f64.sqrt());
        let input = four.to_input();
        close(input.standard_uncertainty(), 0.5_f64.sqrt());
        // 3 × (0.5 / (5/12))².
        close(input.degrees_of_freedom(), 3.0 * 1.2 * 1.2);
    }

    #[test]
    fn two_readings_keep_their_one_degree_of_freedom() {
        let two = Readings::new(&[10.0, 12.0], 0.0).unwrap();
        let input = two.to_input();
        close(input.degrees_of_freedom(), 1.0);
        let drawn = Distribution::Repeated {
            standard: 1.0,
            degrees_of_freedom: 3.0,
            half_width: 0.0,
        };
        assert_eq!(input.distribution(), drawn);
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(Readings::new(&[], 1.0), Err(ToleranceError::NoReading));
        assert!(Readings::new(&[1.0, f64::NAN], 1.0).is_err());
        assert!(Readings::new(&[f64::MAX, f64::MAX], 1.0).is_err());
        assert!(Readings::new(&[1e200, -1e200], 1.0).is_err());
        assert!(Readings::new(&[1.0], -1.0).is_err());
    }

    #[test]
    fn spreads_at_the_edge_of_numbers() {
        for size in [1e-160, 1e-100, 1e100, 1e153] {
            for step in [0.0, 1e-300, 1.0, 1e300] {
                let input = Readings::new(&[0.0, size], step).unwrap().to_input();
                assert!(input.degrees_of_freedom() >= 0.999, "{size} {step}");
            }
        }
        // Here the square of the standard uncertainty of the mean would be zero.
        let tiny = Readings::new(&[0.0, 0.0, 0.0, 4.5e-162], 0.0).unwrap();
        assert_eq!(tiny.to_input().degrees_of_freedom().round(), 3.0);
    }
}
