//! One quantity that is not known exactly.

use super::generator::Generator;
use super::{ToleranceError, degrees, finite, width};

/// How the values that a quantity might have lie about its estimate. All are symmetrical.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Distribution {
    /// Normal: an uncertainty quoted as one standard deviation.
    Normal {
        /// Standard deviation.
        standard: f64,
    },
    /// Everything within the limits equally likely: the step of a scale, a tolerance.
    Rectangular {
        /// From the estimate to either limit.
        half_width: f64,
    },
    /// Most often near the limits: something that swings to and fro.
    Arcsine {
        /// From the estimate to either limit.
        half_width: f64,
    },
    /// Student's t, scaled: the mean of a few normal readings (JCGM 101, 6.4.9).
    StudentT {
        /// Experimental standard deviation of the mean. The values drawn spread by
        /// √(v/(v−2)) more, and without limit when v is 2 or less.
        standard: f64,
        /// Degrees of freedom v: readings less one. More than zero.
        degrees_of_freedom: f64,
    },
    /// The sum of a Student's t and a rectangular one: the mean of a few readings on a
    /// scale with steps.
    Repeated {
        /// Experimental standard deviation of the mean.
        standard: f64,
        /// Degrees of freedom of that: readings less one. More than zero.
        degrees_of_freedom: f64,
        /// Half the step of the scale.
        half_width: f64,
    },
}

impl Distribution {
    /// The standard uncertainty: one standard deviation, and for the mean of readings the
    /// experimental one (JCGM 100, 4.2.3, 4.3.7 and, for the arcsine, H.1.3.4).
    #[must_use]
    pub fn standard_uncertainty(self) -> f64 {
        match self {
            Self::Normal { standard } | Self::StudentT { standard, .. } => standard,
            Self::Rectangular { half_width } => half_width / 3.0_f64.sqrt(),
            Self::Arcsine { half_width } => half_width / 2.0_f64.sqrt(),
            Self::Repeated { standard, half_width, .. } => {
                libm::hypot(standard, half_width / 3.0_f64.sqrt())
            }
        }
    }

    /// How well the standard uncertainty itself is known, as degrees of freedom; infinite
    /// where it is not in doubt. For a sum by Welch and Satterthwaite (JCGM 100, G.4.1).
    fn degrees_of_freedom(self) -> f64 {
        match self {
            Self::Normal { .. } | Self::Rectangular { .. } | Self::Arcsine { .. } => {
                f64::INFINITY
            }
            Self::StudentT { degrees_of_freedom, .. } => degrees_of_freedom,
            Self::Repeated { standard, degrees_of_freedom, .. } => {
                let ratio = self.standard_uncertainty() / standard;
                // Without spread there is nothing to be in doubt about.
                if standard > 0.0 {
                    degrees_of_freedom * ratio * ratio * ratio * ratio
                } else {
                    f64::INFINITY
                }
            }
        }
    }

    /// One draw about zero.
    fn draw(self, generator: &mut Generator) -> f64 {
        match self {
            Self::Normal { standard } => standard * generator.normal(),
            Self::Rectangular { half_width } => half_width * generator.rectangular(),
            Self::Arcsine { half_width } => half_width * generator.arcsine(),
            Self::StudentT { standard, degrees_of_freedom } => {
                standard * generator.student_t(degrees_of_freedom)
            }
            Self::Repeated { standard, degrees_of_freedom, half_width } => {
                standard * generator.student_t(degrees_of_freedom)
                    + half_width * generator.rectangular()
            }
        }
    }

    fn check(self) -> Result<(), ToleranceError> {
        match self {
            Self::Normal { standard } => width(standard)?,
            Self::Rectangular { half_width } | Self::Arcsine { half_width } => {
                width(half_width)?
            }
            Self::StudentT { standard, degrees_of_freedom } => {
                degrees(degrees_of_freedom)?;
                width(standard)?
            }
            Self::Repeated { standard, degrees_of_freedom, half_width } => {
                degrees(degrees_of_freedom)?;
                width(standard)?;
                width(half_width)?
            }
        };
        Ok(())
    }
}

/// An input quantity: its estimate and what else it might be.
///
/// ```
/// use noseward_stability::{Distribution, Input};
///
/// // 27 mm on a ruler with millimetre marks.
/// let width = Input::new(27.0, Distribution::Rectangular { half_width: 0.5 })?;
/// assert!((width.standard_uncertainty() - 0.2887).abs() < 1e-4);
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Input {
    estimate: f64,
    distribution: Distribution,
    degrees_of_freedom: f64,
}

impl Input {
    /// A quantity with this estimate. A width of zero makes it exact.
    ///
    /// # Errors
    ///
    /// When the estimate or a width is not finite, a width is negative, or degrees of
    /// freedom are not more than zero.
    pub fn new(
        estimate: f64,
        distribution: Distribution,
    ) -> Result<Self, ToleranceError> {
        finite(estimate)?;
        distribution.check()?;
        let degrees_of_freedom = distribution.degrees_of_freedom();
        Ok(Self { estimate, distribution, degrees_of_freedom })
    }

    /// The same with another judgement of how well its standard uncertainty is known: with
    /// a relative doubt of `d`, that is 1/(2 d²) degrees of freedom (JCGM 100, G.4.2).
    /// Counts in the effective degrees of freedom only; draws are as before.
    ///
    /// # Errors
    ///
    /// When they are not more than zero.
    pub fn with_degrees_of_freedom(
        self,
        degrees_of_freedom: f64,
    ) -> Result<Self, ToleranceError> {
        degrees(degrees_of_freedom)?;
        Ok(Self { degrees_of_freedom, ..self })
    }

    /// The best estimate.
    #[must_use]
    pub fn estimate(&self) -> f64 {
        self.estimate
    }

    /// What else it might be.
    #[must_use]
    pub fn distribution(&self) -> Distribution {
        self.distribution
    }

    /// The standard uncertainty of the estimate, in its unit.
    #[must_use]
    pub fn standard_uncertainty(&self) -> f64 {
        self.distribution.standard_uncertainty()
    }

    /// How well that uncertainty is known; infinite where it is not in doubt.
    #[must_use]
    pub fn degrees_of_freedom(&self) -> f64 {
        self.degrees_of_freedom
    }

    /// A value that it might have.
    pub(super) fn draw(&self, generator: &mut Generator) -> f64 {
        self.estimate + self.distribution.draw(generator)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The spread of 200,000 draws against the stated standard uncertainty. Four standard
    /// errors of a standard deviation, s √((k−1)/(4n)), with the kurtosis k of each: 3 of
    /// the normal, 1.8, 1.5, and 3 + 6/(v−4) of Student's t.
    #[test]
    fn draws_spread_as_stated() {
        let t = Distribution::StudentT { standard: 2.0, degrees_of_freedom: 12.0 };
        let both = Distribution::Repeated {
            standard: 2.0,
            degrees_of_freedom: 12.0,
            half_width: 3.0,
        };
        let t_variance = 4.0 * 12.0 / 10.0;
        let cases = [
            (Distribution::Normal { standard: 2.0 }, 4.0, 3.0),
            (Distribution::Rectangular { half_width: 2.0 }, 4.0 / 3.0, 1.8),
            (Distribution::Arcsine { half_width: 2.0 }, 2.0, 1.5),
            (t, t_variance, 3.75),
            // A sum with something flatter is no more peaked.
            (both, t_variance + 3.0, 3.75),
        ];
        for (distribution, variance, kurtosis) in cases {
            let input = Input::new(10.0, distribution).unwrap();
            let mut generator = Generator::seeded(11);
            let n = 200_000.0;
            let mut squares = 0.0;
            for _ in 0..200_000 {
                let off = input.draw(&mut generator) - 10.0;
                squares += off * off;
            }
            let (found, stated) = ((squares / n).sqrt(), f64::sqrt(variance));
            let tolerance = 4.0 * stated * f64::sqrt((kurtosis - 1.0) / (4.0 * n));
            assert!((found - stated).abs() < tolerance, "{distribution:?}: {found}");
        }
    }

    #[test]
    fn nonsense_is_refused() {
        let normal = |standard| Distribution::Normal { standard };
        assert_eq!(Input::new(0.0, normal(-1.0)), Err(ToleranceError::Negative(-1.0)));
        assert!(Input::new(0.0, normal(f64::NAN)).is_err());
        assert!(Input::new(f64::INFINITY, normal(1.0)).is_err());
        let t = Distribution::StudentT { standard: 1.0, degrees_of_freedom: 0.0 };
        assert_eq!(Input::new(0.0, t), Err(ToleranceError::TooFewDegreesOfFreedom(0.0)));
        let exact = Input::new(4.0, normal(0.0)).unwrap();
        assert_eq!(exact.draw(&mut Generator::seeded(0)).to_bits(), 4.0_f64.to_bits());
        assert!(exact.with_degrees_of_freedom(f64::NAN).is_err());
    }

    #[test]
    fn no_spread_is_not_in_doubt() {
        let none = Distribution::Repeated {
            standard: 0.0,
            degrees_of_freedom: 2.0,
            half_width: 0.0,
        };
        assert_eq!(Input::new(1.0, none).unwrap().degrees_of_freedom(), f64::INFINITY);
    }
}
