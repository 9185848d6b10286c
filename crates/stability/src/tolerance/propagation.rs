//! Uncertainty by one slope for each input: the law of propagation.

use super::ToleranceError;
use super::input::Input;

/// What one input adds to the uncertainty of the result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contribution {
    /// Change of the result by change of the input; zero where the input is exact, since
    /// then nothing is tried.
    pub sensitivity: f64,
    /// Sensitivity times the input's standard uncertainty, with its sign, in the unit of
    /// the result.
    pub signed: f64,
    /// Degrees of freedom of the input's standard uncertainty.
    pub degrees_of_freedom: f64,
}

/// A result with its uncertainty, and where that comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Budget {
    /// The model at the estimates.
    pub estimate: f64,
    /// One for each input, in their order.
    pub contributions: Vec<Contribution>,
    correlations: Vec<(usize, usize, f64)>,
}

/// The uncertainty of a result to first order, its inputs independent.
///
/// The slopes are central differences over one standard uncertainty to either side
/// (JCGM 100, 5.1.3, note 2), so a model with a bend is taken as its chord. The model is
/// called 1 + 2 n times for n inputs. Where it gives a number that is not finite, so is the
/// uncertainty.
///
/// ```
/// use noseward_stability::{Distribution, Input, propagate};
///
/// let side = |mm| Input::new(mm, Distribution::Normal { standard: 0.5 });
/// let area = propagate(&[side(30.0)?, side(40.0)?], &mut |x| x[0] * x[1]);
/// assert_eq!(area.estimate, 1200.0);
/// // 40 × 0.5 and 30 × 0.5, added as squares.
/// assert!((area.standard_uncertainty() - 25.0).abs() < 1e-9);
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
pub fn propagate(inputs: &[Input], model: &mut dyn FnMut(&[f64]) -> f64) -> Budget {
    let mut at: Vec<f64> = inputs.iter().map(Input::estimate).collect();
    let estimate = model(&at);
    let contributions = inputs.iter().enumerate().map(|(i, input)| {
        let x = input.estimate();
        let u = input.standard_uncertainty();
        let mut signed = 0.0;
        if u > 0.0 {
            at[i] = x + u;
            let above = model(&at);
            at[i] = x - u;
            signed = (above - model(&at)) / 2.0;
            at[i] = x;
        }
        Contribution {
            sensitivity: if u > 0.0 { signed / u } else { 0.0 },
            signed,
            degrees_of_freedom: input.degrees_of_freedom(),
        }
    });
    let contributions = contributions.collect();
    Budget { estimate, contributions, correlations: Vec::new() }
}

impl Budget {
    /// The same with the two inputs of these indices correlated (JCGM 100, 5.2.2). A pair
    /// that was given before is given anew.
    ///
    /// Coefficients that cannot hold together are not noticed, unless the variance comes
    /// out negative: then it counts as zero.
    ///
    /// # Errors
    ///
    /// When the coefficient is not between −1 and 1, an index is that of no input, or both
    /// are the same.
    pub fn with_correlation(
        mut self,
        first: usize,
        second: usize,
        coefficient: f64,
    ) -> Result<Self, ToleranceError> {
        if !(-1.0..=1.0).contains(&coefficient) {
            return Err(ToleranceError::Correlation(coefficient));
        }
        let (i, j) = (first.min(second), first.max(second));
        if i == j || j >= self.contributions.len() {
            return Err(ToleranceError::NoSuchPair(first, second));
        }
        self.correlations.retain(|&(a, b, _)| (a, b) != (i, j));
        self.correlations.push((i, j, coefficient));
        Ok(self)
    }

    /// The combined standard uncertainty of the estimate (JCGM 100, 5.1.2 and 5.2.2).
    #[must_use]
    pub fn standard_uncertainty(&self) -> f64 {
        let signed = |i: usize| self.contributions[i].signed;
        let own: f64 = self.contributions.iter().map(|c| c.signed * c.signed).sum();
        let joint = self.correlations.iter();
        let joint: f64 = joint.map(|&(i, j, r)| 2.0 * r * signed(i) * signed(j)).sum();
        let variance = own + joint;
        // Not `max`, which would turn a NaN into a zero.
        if variance < 0.0 { 0.0 } else { variance.sqrt() }
    }

    /// How well the combined uncertainty itself is known, by Welch and Satterthwaite
    /// (JCGM 100, G.4.1, equation G.2b); infinite where no input's is in doubt.
    ///
    /// None where inputs are correlated, which the formula does not cover, and where the
    /// uncertainty is zero or not finite. Use it rounded down.
    #[must_use]
    pub fn effective_degrees_of_freedom(&self) -> Option<f64> {
        let fourth = |x: f64| x * x * x * x;
        let u = self.standard_uncertainty();
        let correlated = self.correlations.iter().any(|&(_, _, r)| r != 0.0);
        if correlated || !u.is_finite() || u <= 0.0 {
            return None;
        }
        // As shares of u, lest a fourth power come out as zero.
        let doubts = self.contributions.iter();
        let doubt: f64 =
            doubts.map(|c| fourth(c.signed / u) / c.degrees_of_freedom).sum();
        Some(1.0 / doubt)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tolerance::input::Distribution;

    fn normal(estimate: f64, standard: f64) -> Input {
        Input::new(estimate, Distribution::Normal { standard }).unwrap()
    }

    fn difference(x: &[f64]) -> f64 {
        x[0] - x[1]
    }

    #[test]
    fn a_common_error_cancels_in_a_difference() {
        let inputs = [normal(5.0, 0.3), normal(4.0, 0.3)];
        let alone = propagate(&inputs, &mut difference);
        assert!((alone.standard_uncertainty() - 0.3 * 2.0_f64.sqrt()).abs() < 1e-12);
        let common = alone.clone().with_correlation(1, 0, 1.0).unwrap();
        assert!(common.standard_uncertainty() < 1e-7);
        // Given anew, the earlier coefficient is gone.
        let opposed = common.with_correlation(0, 1, -1.0).unwrap();
        assert!((opposed.standard_uncertainty() - 0.6).abs() < 1e-12);
        assert_eq!(opposed.effective_degrees_of_freedom(), None);
        let none = opposed.with_correlation(0, 1, 0.0).unwrap();
        assert_eq!(none.effective_degrees_of_freedom(), Some(f64::INFINITY));
        assert_eq!(none.standard_uncertainty(), alone.standard_uncertainty());
    }

    #[test]
    fn pairs_that_do_not_exist() {
        let budget = propagate(&[normal(1.0, 0.1), normal(1.0, 0.1)], &mut difference);
        let pair = |i, j, r| budget.clone().with_correlation(i, j, r).unwrap_err();
        assert_eq!(pair(0, 2, 0.5), ToleranceError::NoSuchPair(0, 2));
        assert_eq!(pair(1, 1, 0.5), ToleranceError::NoSuchPair(1, 1));
        assert_eq!(pair(0, 1, 1.5), ToleranceError::Correlation(1.5));
        assert!(matches!(pair(0, 1, f64::NAN), ToleranceError::Correlation(_)));
    }

    /// Two equal contributions with v degrees of freedom each have 2 v together.
    #[test]
    fn equal_contributions_add_their_degrees_of_freedom() {
        let input = normal(1.0, 1e-90).with_degrees_of_freedom(7.0).unwrap();
        let inputs = [input, input];
        let budget = propagate(&inputs, &mut |x| (x[0] - 1.0) + (x[1] - 1.0));
        // So small a step is lost beside 1: nothing moves.
        assert_eq!(budget.effective_degrees_of_freedom(), None);
        let input = normal(0.0, 1e-90).with_degrees_of_freedom(7.0).unwrap();
        let budget = propagate(&[input, input], &mut |x| x[0] + x[1]);
        let found = budget.effective_degrees_of_freedom().unwrap();
        assert!((found - 14.0).abs() < 1e-9, "{found}");
    }

    #[test]
    fn an_impossible_result_is_not_hidden() {
        let budget = propagate(&[normal(0.5, 1.0)], &mut |x| x[0].sqrt());
        assert!(budget.standard_uncertainty().is_nan());
        assert_eq!(budget.effective_degrees_of_freedom(), None);
    }

    #[test]
    fn exact_inputs_are_not_tried() {
        let mut calls = 0;
        let budget = propagate(&[normal(2.0, 0.0), normal(3.0, 0.1)], &mut |x| {
            calls += 1;
            x[0] * x[1]
        });
        assert_eq!(budget.contributions[0].signed.to_bits(), 0);
        assert_eq!(calls, 3);
    }
}
