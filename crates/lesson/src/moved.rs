//! What else moved, by computation, when a rocket was changed; and what readings say of it.

use noseward_stability::{UnitSystem, Units, minus, trimmed};

use crate::{Rocket, Trial};

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
/// use noseward_lesson::{Rocket, moved};
/// use noseward_stability::{Example, Units};
///
/// let puffin = Example::Puffin.design();
/// let mut other = puffin.clone();
/// other.weights[0].mass_g += 10.0;
/// let [puffin, other] = [puffin, other].map(Rocket::from);
/// let sentences = moved(&puffin, &other).expect("both are whole").sentences(Units::METRIC);
/// assert_eq!(sentences[0], "The centre of mass moved 14 mm forward.");
/// assert_eq!(sentences[1], "The centre of pressure (side-on) did not move.");
/// assert_eq!(sentences[3], "The rocket is 10 g heavier.");
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
    /// Four sentences: the two points, the separation, the mass. "Back" is towards the
    /// tail.
    #[must_use]
    pub fn sentences(&self, units: Units) -> Vec<String> {
        let place = |point: &str, mm: f64| {
            if mm.abs() < SAME_MM {
                return format!("The {point} did not move.");
            }
            let way = if mm > 0.0 { "back" } else { "forward" };
            format!("The {point} moved {} {way}.", units.reading(mm.abs()))
        };
        let g = self.mass_g.difference();
        let mass = if g.abs() < SAME_G {
            "The rocket weighs the same.".to_owned()
        } else {
            let written = match units.system {
                UnitSystem::Metric => format!("{} g", trimmed(g.abs(), 1)),
                UnitSystem::Inch => units.scale_reading(g.abs()),
            };
            let word = if g > 0.0 { "heavier" } else { "lighter" };
            format!("The rocket is {written} {word}.")
        };
        vec![
            place("centre of mass", self.centre_of_mass_mm.difference()),
            place(
                "centre of pressure (side-on)",
                self.centre_of_pressure_mm.difference(),
            ),
            format!(
                "The {}.",
                separation(self.separation_mm.before, self.separation_mm.after, |mm| {
                    units.reading(mm)
                })
            ),
            mass,
        ]
    }
}

/// What the readings of two trials say of their separation; `None` unless both points of both
/// were measured.
#[must_use]
pub fn measured_separation(
    before: &Trial,
    after: &Trial,
    units: Units,
) -> Option<String> {
    let of = |trial: &Trial| trial.measured.separation_mm(trial.design().length_mm());
    let moved = separation(of(before)?, of(after)?, |mm| units.length(mm));
    Some(format!("The measured {moved}."))
}

/// "separation grew from 12 mm to 46 mm", between two separations in millimetres, each
/// written in some way.
pub(crate) fn separation(
    before_mm: f64,
    after_mm: f64,
    written: impl Fn(f64) -> String,
) -> String {
    let [from, to] = [before_mm, after_mm].map(|mm| minus(&written(mm)));
    if from == to {
        return format!("separation stayed at {to}");
    }
    // Below zero "larger" would need a word more.
    let verb = if before_mm.min(after_mm) < -SAME_MM {
        "went"
    } else if after_mm > before_mm {
        "grew"
    } else {
        "shrank"
    };
    format!("separation {verb} from {from} to {to}")
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
        let sentences = moved.sentences(Units::METRIC);
        assert_eq!(sentences[3], "The rocket is 2 g heavier.");
        assert!(sentences[1].ends_with(" mm back."), "{sentences:?}");
        assert!(moved.sentences(Units::INCH)[1].ends_with(" in back."));
    }

    #[test]
    fn nothing_moves_between_equals_and_faults_leave_none() {
        let [tern, empty] = [Example::Tern.design(), Design::default()].map(Rocket::from);
        let same = moved(&tern, &tern).unwrap().sentences(Units::METRIC);
        assert_eq!(same[0], "The centre of mass did not move.");
        assert!(same[2].contains("stayed at"), "{same:?}");
        assert_eq!(same[3], "The rocket weighs the same.");
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
    fn the_separation_in_words() {
        for (before, after, words) in [
            (12.0, 46.4, "separation grew from 12 mm to 46 mm"),
            (46.0, 12.0, "separation shrank from 46 mm to 12 mm"),
            (-8.0, 12.0, "separation went from −8 mm to 12 mm"),
            (12.1, 12.2, "separation stayed at 12 mm"),
            (-0.5, 12.0, "separation grew from −1 mm to 12 mm"),
        ] {
            assert_eq!(separation(before, after, |mm| Units::METRIC.reading(mm)), words);
        }
    }
}
