//! From a hall to a string: how a rocket can be swung in so much room.

use serde::Serialize;

use super::setup::{SwingFault, SwingField, SwingSetup};
use super::space::{SmallerSpace, SwingLimit, clear_m, pull_n};
use crate::check::Severity;
use crate::report::Figures;

/// Steps of a string in a metre, and of turns in one: what people set, and for turns what
/// links keep.
const STEPS: u8 = 20;
/// The last step of either.
const LAST: u8 = 3 * STEPS;

/// How a rocket can be swung in a hall: on steps of 0.05 m of string and 0.05 turns a
/// second within the bounds of their fields, not too fast, not pulling too hard, and with
/// the string off the ground. Worked out from string, arm and rocket: no permission.
///
/// One step more of string or turns than in any of these, and it no longer is so (but for
/// more turns with [`HallFit::same_turns`]).
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct HallFit {
    /// The longest string, with the most turns a second that it leaves.
    pub longest_string: SmallerSpace,
    /// The most turns a second, with the longest string that they leave.
    pub fastest_turns: SmallerSpace,
    /// The longest string at the turns that were asked about, if those leave one.
    pub same_turns: Option<SmallerSpace>,
}

/// Why a rocket cannot be swung in a hall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoHallFit {
    /// The arm or the air is out of bounds.
    Fault(SwingFault),
    /// It pulls too hard however it is swung, once the string is off the ground.
    PullsTooHard {
        /// The least pull, in newtons: more than [`SwingLimit::HARDEST_N`].
        least_n: f64,
    },
    /// The hall is too narrow.
    TooNarrow {
        /// The narrowest hall for it, in metres across.
        least_across_m: f64,
    },
}

impl HallFit {
    /// How a rocket can be swung in a hall of so many clear metres across, with this arm and
    /// air: where [`Space::clear_across_m`](super::Space::clear_across_m) is no more.
    ///
    /// # Errors
    ///
    /// [`NoHallFit`] says why it cannot.
    ///
    /// ```
    /// use noseward_stability::{Example, HallFit, NoHallFit, SwingSetup, evaluate};
    ///
    /// let figures = evaluate(&Example::Puffin.design()).figures.expect("no fault");
    /// let setup = SwingSetup::default();
    /// let fit = HallFit::new(&figures, &setup, 16.0).expect("a hall");
    /// let at_0_8 = fit.same_turns.expect("a string");
    /// assert!(at_0_8.setup.string_m < setup.string_m && at_0_8.clear_m == 8.0);
    /// let Err(NoHallFit::TooNarrow { least_across_m }) = HallFit::new(&figures, &setup, 5.0)
    /// else {
    ///     panic!("a corridor")
    /// };
    /// assert!(least_across_m > 5.0);
    /// ```
    pub fn new(
        figures: &Figures,
        setup: &SwingSetup,
        across_m: f64,
    ) -> Result<Self, NoHallFit> {
        let (mass_kg, length_m) = (figures.mass.mass_kg, figures.length_m);
        Hall { setup: *setup, mass_kg, length_m, across_m }.fit()
    }
}

struct Hall {
    setup: SwingSetup,
    mass_kg: f64,
    length_m: f64,
    across_m: f64,
}

impl Hall {
    fn fit(&self) -> Result<HallFit, NoHallFit> {
        let fault = self.setup.faults().into_iter().find(|fault| {
            matches!(fault.field, SwingField::Arm | SwingField::AirDensity)
                && fault.severity() == Severity::Stop
        });
        if let Some(fault) = fault {
            return Err(NoHallFit::Fault(fault));
        }
        let longest = |turns_per_s| {
            let with = |string_m| self.with(string_m, turns_per_s);
            self.fitting(steps(SwingField::String).map(with))
        };
        let fastest = |string_m| {
            let with = |turns_per_s| self.with(string_m, turns_per_s);
            self.fitting(steps(SwingField::Turns).map(with))
        };
        let fit = steps(SwingField::String).find_map(fastest);
        let Some((longest_string, fastest_turns)) =
            fit.zip(steps(SwingField::Turns).find_map(longest))
        else {
            return Err(self.unfit());
        };
        let same_turns = longest(self.setup.turns_per_s);
        Ok(HallFit { longest_string, fastest_turns, same_turns })
    }

    fn with(&self, string_m: f64, turns_per_s: f64) -> SwingSetup {
        SwingSetup { string_m, turns_per_s, ..self.setup }
    }

    /// The first that fits, if its string is off the ground: those after it have a shorter
    /// string or fewer turns, and hang lower still.
    fn fitting(
        &self,
        mut setups: impl Iterator<Item = SwingSetup>,
    ) -> Option<SmallerSpace> {
        let fits = |setup: &SwingSetup| {
            setup.limit(self.mass_kg).is_none()
                && 2.0 * clear_m(setup, self.length_m) <= self.across_m
        };
        let setup = setups.find(fits).filter(|setup| setup.faults().is_empty())?;
        Some(SmallerSpace { setup, clear_m: clear_m(&setup, self.length_m) })
    }

    /// Why nothing fits, from the slowest turns of every string that keep it off the ground:
    /// more of them only pull harder and need more room.
    fn unfit(&self) -> NoHallFit {
        let (mut least_n, mut least_across_m) = (f64::INFINITY, f64::INFINITY);
        for string_m in steps(SwingField::String) {
            let slowest = steps(SwingField::Turns)
                .map(|turns_per_s| self.with(string_m, turns_per_s))
                .take_while(|setup| setup.faults().is_empty())
                .last();
            let Some(setup) = slowest else { continue };
            least_n = pull_n(&setup, self.mass_kg).min(least_n);
            if setup.limit(self.mass_kg).is_none() {
                let across_m = 2.0 * clear_m(&setup, self.length_m);
                least_across_m = across_m.min(least_across_m);
            }
        }
        if least_n > SwingLimit::HARDEST_N {
            NoHallFit::PullsTooHard { least_n }
        } else {
            NoHallFit::TooNarrow { least_across_m }
        }
    }
}

/// The steps of a field, the largest first.
fn steps(field: SwingField) -> impl Iterator<Item = f64> {
    let (least, most) = field.bounds();
    let steps = (0..=LAST).rev().map(|step| f64::from(step) / f64::from(STEPS));
    steps.filter(move |&value| value >= least && value <= most)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::swing::Swing;
    use crate::{Example, evaluate};

    fn figures() -> Vec<Figures> {
        Example::ALL.map(|example| evaluate(&example.design()).figures.unwrap()).into()
    }

    /// Whether a swing can be in a hall, as the space says it.
    fn goes(figures: &Figures, setup: &SwingSetup, across_m: f64) -> bool {
        setup.faults().is_empty()
            && Swing::new(figures, setup)
                .is_some_and(|swing| swing.space().clear_across_m() <= across_m)
    }

    fn more(setup: &SwingSetup, field: SwingField) -> SwingSetup {
        let mut more = *setup;
        let next = libm::round(field.get(setup) * 20.0 + 1.0) / 20.0;
        field.set(&mut more, next);
        more
    }

    #[test]
    fn steps_are_those_of_the_fields() {
        for field in [SwingField::String, SwingField::Turns] {
            let all: Vec<_> = steps(field).collect();
            let ends = (all[all.len() - 1], all[0]);
            assert_eq!((ends, all.len()), (field.bounds(), 55));
        }
    }

    /// Through the space of the swing and back, for halls from a corridor to a field: what is
    /// told goes, and with one step more of string or turns it does not.
    #[test]
    fn what_fits_goes_and_a_step_more_does_not() {
        let (mut fits, mut narrow) = (0, 0);
        for (figures, arm_m) in figures().iter().zip([0.7, 0.0, 0.45, 1.0]) {
            let setup = SwingSetup { arm_m, ..SwingSetup::default() };
            for across_m in (4..80).map(|halves| f64::from(halves) / 2.0 + 0.1) {
                let fit = match HallFit::new(figures, &setup, across_m) {
                    Ok(fit) => fit,
                    Err(NoHallFit::TooNarrow { least_across_m }) => {
                        assert!(least_across_m > across_m);
                        let wide = HallFit::new(figures, &setup, least_across_m);
                        assert!(wide.is_ok(), "{across_m}");
                        narrow += 1;
                        continue;
                    }
                    Err(other) => panic!("{other:?}"),
                };
                fits += 1;
                let HallFit { longest_string, fastest_turns, same_turns } = fit;
                let told = [Some(longest_string), Some(fastest_turns), same_turns];
                for SmallerSpace { setup, clear_m } in told.into_iter().flatten() {
                    assert!(goes(figures, &setup, across_m), "{across_m}: {setup:?}");
                    let space = Swing::new(figures, &setup).unwrap().space();
                    assert_eq!(space.clear_m, clear_m);
                    let longer = more(&setup, SwingField::String);
                    assert!(!goes(figures, &longer, across_m), "{across_m}: {longer:?}");
                }
                for told in [longest_string, fastest_turns] {
                    let faster = more(&told.setup, SwingField::Turns);
                    assert!(!goes(figures, &faster, across_m), "{across_m}: {faster:?}");
                }
            }
        }
        assert!(fits > 100 && narrow > 10, "{fits} {narrow}");
    }

    /// No swing of the whole grid has a longer string, or more turns, or fits a narrower hall.
    #[test]
    fn nothing_on_the_grid_is_better() {
        let (figures, setup) = (&figures()[0], SwingSetup::default());
        let all = || {
            let turns = || steps(SwingField::Turns);
            steps(SwingField::String).flat_map(move |string_m| {
                turns().map(move |turns_per_s| SwingSetup {
                    string_m,
                    turns_per_s,
                    ..setup
                })
            })
        };
        // Of those that keep the string up, the room that each takes.
        let space = |setup: SwingSetup| {
            let goes =
                setup.faults().is_empty() && setup.limit(figures.mass.mass_kg).is_none();
            goes.then(|| (setup, 2.0 * clear_m(&setup, figures.length_m)))
        };
        let spaces: Vec<_> = all().filter_map(space).collect();
        for across_m in [9.0, 13.0, 16.0, 22.0, 60.0] {
            let fit = HallFit::new(figures, &setup, across_m);
            let fitting = || spaces.iter().filter(|(_, room)| *room <= across_m);
            let most = |of: fn(&SwingSetup) -> f64| {
                fitting().map(|(s, _)| of(s)).reduce(f64::max)
            };
            let longest = fit.ok().map(|fit| fit.longest_string.setup.string_m);
            assert_eq!(longest, most(|setup| setup.string_m), "{across_m}");
            let fastest = fit.ok().map(|fit| fit.fastest_turns.setup.turns_per_s);
            assert_eq!(fastest, most(|setup| setup.turns_per_s), "{across_m}");
        }
        let narrowest = spaces.iter().map(|(_, room)| *room).reduce(f64::min).unwrap();
        let refused = HallFit::new(figures, &setup, narrowest - 0.01);
        assert_eq!(refused, Err(NoHallFit::TooNarrow { least_across_m: narrowest }));
        let nowhere = HallFit::new(figures, &setup, f64::NAN);
        assert_eq!(nowhere, Err(NoHallFit::TooNarrow { least_across_m: narrowest }));
    }

    #[test]
    fn what_is_too_heavy_or_wrong_is_told() {
        let mut heavy = figures().remove(0);
        heavy.mass.mass_kg = 1.0;
        let setup = SwingSetup::default();
        let Err(NoHallFit::PullsTooHard { least_n }) = HallFit::new(&heavy, &setup, 40.0)
        else {
            panic!("a kilogram");
        };
        // By hand: at 30 degrees below level m Ω² R is g by tan 30°, with R where it rests;
        // drawn out level it is a little more, and the grid adds some.
        assert!(least_n > 9.807 / 0.577_4 && least_n < 20.0, "{least_n}");
        let (arm_m, turns_per_s) = (1.2, 9.0);
        let long_arm = SwingSetup { arm_m, turns_per_s, ..setup };
        let Err(NoHallFit::Fault(fault)) = HallFit::new(&heavy, &long_arm, 40.0) else {
            panic!("a long arm");
        };
        assert_eq!(fault.field, SwingField::Arm);
        // Turns that are wrong only leave nothing at those turns.
        let light = &figures()[0];
        let wrong = SwingSetup { turns_per_s, ..setup };
        assert_eq!(HallFit::new(light, &wrong, 40.0).unwrap().same_turns, None);
    }
}
