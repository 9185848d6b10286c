//! What else moved, by computation, when a rocket was changed; and what readings say of it.

use crate::{BalancePoint, Rocket, Trial};

/// A value of two rockets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BeforeAfter {
    /// Of the one before.
    pub before: f64,
    /// Of the one after.
    pub after: f64,
}

/// What two rockets come to, as computed from their parts. Places are from the nose tip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moved {
    /// The whole mass, in grams.
    pub mass_g: BeforeAfter,
    /// The centre of mass, in millimetres.
    pub centre_of_mass_mm: BeforeAfter,
    /// The centre of pressure side-on, in millimetres.
    pub centre_of_pressure_mm: BeforeAfter,
    /// The separation, in millimetres, positive where the centre of mass is nearer the
    /// nose.
    pub separation_mm: BeforeAfter,
}

/// Less than this is no difference: half of what a ruler and scales tell, in millimetres
/// and in grams.
const SAME_MM: f64 = 0.5;
const SAME_G: f64 = 0.05;

impl BeforeAfter {
    /// The value after less the one before.
    #[must_use]
    pub fn difference(&self) -> f64 {
        self.after - self.before
    }
}

/// What else moved between two rockets; `None` when the figures of one of them cannot be
/// worked out.
///
/// ```
/// use noseward_lesson::{BalancePoint, Rocket, moved};
/// use noseward_stability::Example;
///
/// let puffin = Example::Puffin.design();
/// let mut other = puffin.clone();
/// other.weights[0].mass_g += 10.0;
/// let [puffin, other] = [puffin, other].map(Rocket::from);
/// let moved = moved(&puffin, &other).expect("both are whole");
/// assert_eq!(moved.point_mm(BalancePoint::Mass).map(f64::round), Some(-14.0));
/// assert_eq!(moved.point_mm(BalancePoint::Pressure), None);
/// assert_eq!(moved.heavier_g().map(f64::round), Some(10.0));
/// ```
#[must_use]
pub fn moved(before: &Rocket, after: &Rocket) -> Option<Moved> {
    let (a, b) = (before.figures()?, after.figures()?);
    let pair = |value: &dyn Fn(&noseward_stability::Figures) -> f64| BeforeAfter {
        before: value(a) * 1000.0,
        after: value(b) * 1000.0,
    };
    Some(Moved {
        mass_g: pair(&|f| f.computed_mass.mass_kg),
        centre_of_mass_mm: pair(&|f| f.computed_mass.centre_m),
        centre_of_pressure_mm: pair(&|f| f.centre_of_pressure_side_on_m),
        separation_mm: pair(&|f| {
            f.centre_of_pressure_side_on_m - f.computed_mass.centre_m
        }),
    })
}

impl Moved {
    /// How far a point moved, in millimetres towards the tail; `None` where that is less
    /// than a ruler tells.
    #[must_use]
    pub fn point_mm(&self, point: BalancePoint) -> Option<f64> {
        let moved_mm = match point {
            BalancePoint::Mass => self.centre_of_mass_mm.difference(),
            BalancePoint::Pressure => self.centre_of_pressure_mm.difference(),
        };
        (moved_mm.abs() >= SAME_MM).then_some(moved_mm)
    }

    /// How much heavier the rocket is, in grams; `None` where that is less than scales tell.
    #[must_use]
    pub fn heavier_g(&self) -> Option<f64> {
        let g = self.mass_g.difference();
        (g.abs() >= SAME_G).then_some(g)
    }
}

/// What the readings of two trials say of their separation, in millimetres; `None` unless
/// both points of both were measured.
#[must_use]
pub fn measured_separation(before: &Trial, after: &Trial) -> Option<BeforeAfter> {
    let of = |trial: &Trial| trial.measured.separation_mm(trial.design().length_mm());
    Some(BeforeAfter { before: of(before)?, after: of(after)? })
}

/// What became of a separation that is not what it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Became {
    /// It is more than before.
    Grew,
    /// It is less than before.
    Shrank,
    /// One of the two is below zero, where "larger" would need a word more.
    Went,
}

impl BeforeAfter {
    /// What became of a separation in millimetres.
    #[must_use]
    pub fn became(&self) -> Became {
        if self.before.min(self.after) < -SAME_MM {
            Became::Went
        } else if self.after > self.before {
            Became::Grew
        } else {
            Became::Shrank
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Design, Example, Planform};

    #[test]
    fn longer_fins_move_both_points_back() {
        let puffin = Example::Puffin.design();
        let mut other = puffin.clone();
        other.fins[0].planform = Planform::FourSided {
            root_mm: 110.0,
            tip_mm: 60.0,
            span_mm: 75.0,
            sweep_mm: 50.0,
        };
        let moved = moved(&puffin.into(), &other.into()).unwrap();
        // Four times 20 mm by 85 mm of card of 300 g/m².
        assert!((moved.mass_g.difference() - 2.04).abs() < 1e-9, "{moved:?}");
        assert!(moved.centre_of_mass_mm.difference() > 0.0);
        assert!(
            moved.centre_of_pressure_mm.difference()
                > moved.centre_of_mass_mm.difference()
        );
        let between = moved.centre_of_pressure_mm.after - moved.centre_of_mass_mm.after;
        assert!((moved.separation_mm.after - between).abs() < 1e-9, "{moved:?}");
        assert_eq!(moved.heavier_g(), Some(moved.mass_g.difference()));
        let back = moved.centre_of_pressure_mm.difference();
        assert_eq!(moved.point_mm(BalancePoint::Pressure), Some(back));
    }

    #[test]
    fn nothing_moves_between_equals_and_faults_leave_none() {
        let [tern, empty] = [Example::Tern.design(), Design::default()].map(Rocket::from);
        let same = moved(&tern, &tern).unwrap();
        assert_eq!(BalancePoint::ALL.map(|point| same.point_mm(point)), [None; 2]);
        assert_eq!(same.separation_mm.difference(), 0.0);
        assert_eq!(same.heavier_g(), None);
        assert_eq!(moved(&tern, &empty), None);
        assert_eq!(moved(&empty, &tern), None);
    }

    #[test]
    fn what_was_measured_is_no_computation() {
        let tern = Example::Tern.design();
        let mut hung = tern.clone();
        hung.measured.total_mass_g = Some(150.0);
        let [tern, hung] = [tern, hung].map(Rocket::from);
        assert_eq!(moved(&tern, &hung), moved(&tern, &tern));
    }

    #[test]
    fn what_becomes_of_a_separation() {
        for (before, after, became) in [
            (12.0, 46.4, Became::Grew),
            (46.0, 12.0, Became::Shrank),
            (-8.0, 12.0, Became::Went),
            (12.0, -8.0, Became::Went),
            (-0.5, 12.0, Became::Grew),
        ] {
            assert_eq!(BeforeAfter { before, after }.became(), became);
        }
    }
}
