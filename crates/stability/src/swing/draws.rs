//! How sure the outcome on the string is.
//!
//! What the readings of the rocket leave open is drawn as for the outcome in the air, and
//! with it what the swing itself leaves open: how long string and arm are, how fast the hand
//! turns, how hard the rocket is to turn, how hard the air pushes on what it crosses.

use super::forces::Forces;
use super::setup::SwingSetup;
use crate::design::Design;
use crate::masses::MassProperties;
use crate::measured::MeasuredPoints;
use crate::outcome::quick_outcome;
use crate::pressure::air::{Air, Plane};
use crate::pressure::model::Model;
use crate::tolerance::input::{Distribution, Input};
use crate::tolerance::ranked::{RankedDraws, is_sure};
use crate::tolerance::separation::{Resolution, Rocket};

/// What the draws say of the outcome on the string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SwingVerdict {
    /// Share of the draws in each outcome, by [`Outcome::rank`](crate::Outcome::rank).
    pub shares: [f64; 4],
}

impl SwingVerdict {
    /// Whether the outcome changes within what is not known exactly.
    #[must_use]
    pub fn is_too_close(&self) -> bool {
        !self.shares.into_iter().any(is_sure)
    }

    /// The outcome that most draws come to, by [`Outcome::rank`](crate::Outcome::rank).
    #[must_use]
    pub fn likeliest(&self) -> u8 {
        let likelier = |a: u8, b: u8| {
            let share = |rank: u8| self.shares[usize::from(rank)];
            if share(b) > share(a) { b } else { a }
        };
        (1..4).fold(0, likelier)
    }
}

/// Draws of all that is not known exactly about a rocket on its string, made in slices.
///
/// ```
/// use noseward_stability::{Example, MeasuredPoints, Resolution, SwingDraws, SwingSetup};
///
/// let puffin = Example::Puffin.design();
/// let nothing = MeasuredPoints::default();
/// let usual = SwingSetup::default();
/// let mut draws = SwingDraws::new(&puffin, &nothing, &usual, Resolution::default());
/// while !draws.is_done() {
///     draws.run(10);
/// }
/// let verdict = draws.verdict().expect("400 draws");
/// assert!(!verdict.is_too_close());
/// ```
#[derive(Clone, Debug)]
pub struct SwingDraws {
    rocket: Rocket,
    setup: SwingSetup,
    draws: RankedDraws,
}

/// Draws in all: near one half, a share is known to 0.05 (two standard errors), near 0.95 to
/// 0.02.
const DRAWS: usize = 400;
/// Same rocket, same swing, same draws.
const SEED: u64 = 20_101;

/// What a swing leaves open, each as a half-width; our judgement. In metres: where on the
/// hand the string begins, and how straight the arm is held.
const STRING_M: f64 = 0.02;
const ARM_M: f64 = 0.10;
/// As shares. Turns in ten seconds, counted; the air with the weather; the inertia of what
/// is spread within its parts in ways that nobody reads; drag square to the wind, of bodies
/// and of plates that are no cylinders and no squares.
const PACE: f64 = 0.10;
const DENSITY: f64 = 0.05;
const INERTIA: f64 = 0.10;
const BODY_DRAG: f64 = 0.15;
const FIN_DRAG: f64 = 0.15;
/// How many inputs these are.
const OPEN: usize = 7;

impl SwingDraws {
    /// Ready for the first draw.
    #[must_use]
    pub fn new(
        design: &Design,
        measured: &MeasuredPoints,
        setup: &SwingSetup,
        resolution: Resolution,
    ) -> Self {
        let (rocket, mut inputs) = Rocket::new(design, measured, resolution);
        // The first ones, so that `run` finds them whatever the rocket has.
        inputs.splice(0..0, open_inputs(setup));
        Self { rocket, setup: *setup, draws: RankedDraws::new(inputs, SEED, DRAWS) }
    }

    /// Makes so many draws more, up to 400 in all.
    pub fn run(&mut self, count: usize) {
        let (rocket, setup) = (&self.rocket, &self.setup);
        self.draws.run(count, |values| Some((0.0, rank(rocket, setup, values)?)));
    }

    /// Whether all draws are made.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.draws.is_done()
    }

    /// What they say. `None` before all are made, and when nothing can be swung.
    #[must_use]
    pub fn verdict(&self) -> Option<SwingVerdict> {
        Some(SwingVerdict { shares: self.draws.shares()? })
    }
}

/// What the swing leaves open, in the order in which [`rank`] takes it.
fn open_inputs(setup: &SwingSetup) -> Vec<Input> {
    let spreads: [(f64, f64); OPEN] = [
        (setup.string_m, STRING_M),
        (setup.arm_m, ARM_M.min(setup.arm_m)),
        (setup.turns_per_s, PACE * setup.turns_per_s),
        (setup.air_density_kg_m3, DENSITY * setup.air_density_kg_m3),
        (1.0, INERTIA),
        (1.0, BODY_DRAG),
        (1.0, FIN_DRAG),
    ];
    let input = |(value, half_width): (f64, f64)| {
        Input::new(value, Distribution::Rectangular { half_width }).ok()
    };
    spreads.into_iter().filter_map(input).collect()
}

/// The rank of the outcome on the string of a rocket that might be.
fn rank(rocket: &Rocket, setup: &SwingSetup, values: &[f64]) -> Option<u8> {
    if setup.is_stopped() {
        return None;
    }
    let (&[string_m, arm_m, turns_per_s, air_density_kg_m3, inertia, body, fins], read) =
        values.split_first_chunk::<OPEN>()?;
    let setup = SwingSetup { string_m, arm_m, turns_per_s, air_density_kg_m3 };
    let drawn = rocket.drawn(read);
    let (sizes, view, mass) = drawn.parts()?;
    let across = inertia * mass.transverse_inertia_kg_m2;
    let mass = MassProperties { transverse_inertia_kg_m2: across, ..mass };
    let planes = Air::in_planes(&drawn.design, &sizes, view, Model::default());
    let moved_m = drawn.moved_m(&planes)?;
    // Air that is moved back is a centre of mass that is moved forward.
    let mass = MassProperties { centre_m: mass.centre_m - moved_m, ..mass };
    let air = decides(planes, mass.centre_m)?;
    let forces = Forces::new(&air, &mass, &setup)?;
    Some(quick_rank(&forces.with_drag(body, fins)))
}

/// The air in the roll that decides what the rocket does without a string: it is the one
/// that [`Swing`](super::Swing) has.
fn decides(planes: Vec<Plane>, centre_m: f64) -> Option<Air> {
    let judged = planes.into_iter().map(|Plane { air, .. }| {
        (quick_outcome(&air, centre_m).rank(), air.weakest_moment_m(centre_m), air)
    });
    let worse =
        |a: &(u8, f64, Air), b: &(u8, f64, Air)| b.0 > a.0 || (b.0 == a.0 && b.1 < a.1);
    let worst = judged.reduce(|a, b| if worse(&a, &b) { b } else { a });
    worst.map(|(.., air)| air)
}

/// The rank of the outcome alone, from a search in steps of five degrees.
fn quick_rank(forces: &Forces) -> u8 {
    const STEPS: u32 = 36;
    let back = |k: u32| {
        forces.roughly_by_sine_n_m(std::f64::consts::PI * f64::from(k) / f64::from(STEPS))
    };
    let (nose, tail) = (back(0) > 0.0, back(STEPS) < 0.0);
    let mut across = 0;
    let mut turns_back = nose;
    for k in 1..=STEPS {
        let here = back(k) > 0.0;
        across += u32::from(here && !turns_back);
        turns_back = here;
    }
    match (nose, across, tail) {
        (true, 0, false) => 0,
        (true, ..) => 1,
        (false, 1.., _) => 2,
        (false, ..) => 3,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::swing::Swing;
    use crate::{Example, evaluate};

    fn quick() -> SwingSetup {
        SwingSetup { string_m: 1.5, turns_per_s: 1.0, ..SwingSetup::default() }
    }

    fn drawn_with(
        design: &Design,
        measured: &MeasuredPoints,
        setup: &SwingSetup,
    ) -> SwingVerdict {
        let mut draws = SwingDraws::new(design, measured, setup, Resolution::default());
        while !draws.is_done() {
            draws.run(77);
        }
        assert_eq!(draws.draws.lost(), 0);
        draws.verdict().unwrap()
    }

    fn drawn(design: &Design, setup: &SwingSetup) -> SwingVerdict {
        drawn_with(design, &MeasuredPoints::default(), setup)
    }

    #[test]
    fn clear_cases_are_sure_and_the_rocket_is_one_of_its_draws() {
        for example in [Example::Puffin, Example::Tern, Example::Gannet] {
            for setup in [SwingSetup::default(), quick()] {
                let design = example.design();
                let figures = evaluate(&design).figures.unwrap();
                let swing = Swing::new(&figures, &setup).unwrap();
                let verdict = drawn(&design, &setup);
                assert!(!verdict.is_too_close(), "{example:?}: {verdict:?}");
                assert_eq!(verdict.likeliest(), swing.outcome().rank());
                let all: f64 = verdict.shares.iter().sum();
                assert!((all - 1.0).abs() < 1e-12);
            }
        }
    }

    /// Two fins do nothing seen edge-on: that roll decides, not the one of the drawing.
    #[test]
    fn the_roll_that_decides_is_drawn() {
        let mut design = Example::Puffin.design();
        design.fins[0].count = 2;
        let setup = SwingSetup::default();
        let figures = evaluate(&design).figures.unwrap();
        let rank = Swing::new(&figures, &setup).unwrap().outcome().rank();
        let mut drawing = figures.clone();
        drawing.air = Air::new(&design, Model::default(), None).unwrap();
        let as_drawn = Swing::new(&drawing, &setup).unwrap().outcome().rank();
        assert!(rank > as_drawn, "{rank} {as_drawn}");
        let verdict = drawn(&design, &setup);
        assert_eq!(verdict.likeliest(), rank);
        assert!(verdict.shares[usize::from(as_drawn)] < 0.1, "{verdict:?}");
    }

    /// The quick search for many draws against the one that locates every resting angle.
    #[test]
    fn the_quick_rank_is_that_of_the_swing() {
        let mut seen = [0; 4];
        for example in Example::ALL {
            let figures = evaluate(&example.design()).figures.unwrap();
            for step in -8..25 {
                let mut figures = figures.clone();
                figures.mass.centre_m += 0.01 * f64::from(step);
                let setup = SwingSetup::default();
                let swing = Swing::hung(&figures, &setup).unwrap();
                let rank = swing.outcome().rank();
                assert_eq!(quick_rank(&swing.forces), rank, "{example:?} {step}");
                seen[usize::from(rank)] += 1;
            }
        }
        assert!(seen.iter().all(|&count| count > 0), "{seen:?}");
    }

    #[test]
    fn slices_do_not_matter() {
        let design = Example::Razorbill.design();
        let nothing = MeasuredPoints::default();
        let setup = SwingSetup::default();
        let mut whole = SwingDraws::new(&design, &nothing, &setup, Resolution::default());
        assert_eq!(whole.verdict(), None);
        whole.run(usize::MAX);
        assert!(whole.is_done());
        assert_eq!(whole.verdict(), Some(drawn(&design, &setup)));
    }

    /// Between a string that holds it and one that does not, it is too close to call.
    #[test]
    fn at_the_border_of_a_setup_it_is_too_close() {
        let design = Example::Razorbill.design();
        let at = |string_m| SwingSetup { string_m, ..SwingSetup::default() };
        let figures = evaluate(&design).figures.unwrap();
        let holds = |string_m| {
            let swing = Swing::new(&figures, &at(string_m)).unwrap();
            swing.outcome().holds_nose_first()
        };
        let (mut short, mut long) = (0.4, 2.0);
        assert!(holds(short) && !holds(long));
        while long - short > 0.01 {
            let middle = f64::midpoint(short, long);
            *(if holds(middle) { &mut short } else { &mut long }) = middle;
        }
        assert!(drawn(&design, &at(short)).is_too_close());
    }

    #[test]
    fn what_cannot_be_swung_has_no_verdict() {
        let long = SwingSetup { string_m: 30.0, ..SwingSetup::default() };
        let nothing = MeasuredPoints::default();
        let design = Example::Puffin.design();
        let mut draws = SwingDraws::new(&design, &nothing, &long, Resolution::default());
        draws.run(DRAWS);
        assert!(draws.is_done());
        assert_eq!(draws.verdict(), None);
    }
}
