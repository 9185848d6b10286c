//! The two points as a group read them on the finished rocket and its cut-out.

use crate::ToleranceError;
use crate::tolerance::input::Input;
use crate::tolerance::readings::Readings;

/// One point, read once or several times. Everything is in metres from the nose tip.
///
/// ```
/// use noseward_stability::MeasuredPoint;
///
/// let hung = MeasuredPoint::new(&[0.140, 0.143, 0.141])?;
/// assert_eq!(hung.value_m(), 0.141);
/// assert_eq!((hung.least_m(), hung.most_m()), (0.140, 0.143));
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredPoint {
    sorted_m: Vec<f64>,
}

impl MeasuredPoint {
    /// A point with these readings, in any order.
    ///
    /// # Errors
    ///
    /// When there is no reading, or one is not finite.
    pub fn new(readings_m: &[f64]) -> Result<Self, ToleranceError> {
        Readings::new(readings_m, 0.0)?;
        let mut sorted_m = readings_m.to_vec();
        sorted_m.sort_unstable_by(f64::total_cmp);
        Ok(Self { sorted_m })
    }

    /// The value that counts: the middle one (the median), of an even number of readings
    /// the mean of the two in the middle.
    #[must_use]
    pub fn value_m(&self) -> f64 {
        let half = self.sorted_m.len() / 2;
        let upper = self.sorted_m[half];
        if self.sorted_m.len() % 2 == 1 {
            upper
        } else {
            f64::midpoint(self.sorted_m[half - 1], upper)
        }
    }

    /// The smallest reading.
    #[must_use]
    pub fn least_m(&self) -> f64 {
        self.sorted_m[0]
    }

    /// The largest reading.
    #[must_use]
    pub fn most_m(&self) -> f64 {
        self.sorted_m[self.sorted_m.len() - 1]
    }

    /// What the readings leave open, as a quantity about [`value_m`](Self::value_m), for
    /// a ruler with this step: the spread of their mean (JCGM 101, 6.4.9) and the step.
    ///
    /// # Errors
    ///
    /// When the step is negative or not finite.
    pub fn input(&self, step_m: f64) -> Result<Input, ToleranceError> {
        let spread = Readings::new(&self.sorted_m, step_m)?.to_input();
        Input::new(self.value_m(), spread.distribution())
    }
}

/// Whatever was measured of the two points.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MeasuredPoints {
    /// Where the rocket hung level.
    pub centre_of_mass: Option<MeasuredPoint>,
    /// Where the cut-out balanced, in the view of the drawing.
    pub centre_of_pressure: Option<MeasuredPoint>,
}

impl MeasuredPoints {
    /// A rocket that hung level at this distance from the nose tip, read once.
    ///
    /// # Errors
    ///
    /// When it is not finite.
    pub fn hung_at(centre_m: f64) -> Result<Self, ToleranceError> {
        let centre_of_mass = Some(MeasuredPoint::new(&[centre_m])?);
        Ok(Self { centre_of_mass, centre_of_pressure: None })
    }

    /// Whether nothing was measured.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.centre_of_mass.is_none() && self.centre_of_pressure.is_none()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_middle_counts_and_the_range_is_kept() {
        let two = MeasuredPoint::new(&[0.3, 0.1]).unwrap();
        assert_eq!((two.value_m(), two.least_m(), two.most_m()), (0.2, 0.1, 0.3));
        assert!(MeasuredPoint::new(&[]).is_err());
        assert!(MeasuredPoint::new(&[f64::NAN]).is_err());
        assert!(MeasuredPoints::default().is_empty());
        assert!(!MeasuredPoints::hung_at(0.1).unwrap().is_empty());
    }

    /// Three readings: their mean scatters by s/√3, and the step adds h/√3.
    #[test]
    fn repeats_and_step_are_drawn_about_the_middle() {
        let input =
            MeasuredPoint::new(&[0.200, 0.203, 0.201]).unwrap().input(0.001).unwrap();
        assert_eq!(input.estimate(), 0.201);
        let spread = (7.0_f64 / 3.0).sqrt() / 3.0_f64.sqrt();
        let expected = libm::hypot(spread, 1.0 / 12.0_f64.sqrt()) * 1e-3;
        assert!((input.standard_uncertainty() - expected).abs() < 1e-12);
    }
}
