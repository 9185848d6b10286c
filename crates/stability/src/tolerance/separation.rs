//! How sure the separation and the outcome are.
//!
//! Every length and weighed mass of a design was read with a ruler or scales of some
//! resolution: a rectangular distribution of half a step to either side (JCGM 100, 4.3.7).
//! A reading of zero (the tip of a triangle) is what was built, not what was read. What
//! nobody reads, such as the density of a sheet, has a stated spread (JCGM 100, 4.3). A point
//! that was measured on the finished rocket takes the place of all that, with the spread of
//! its own readings.

use super::input::{Distribution, Input};
use super::monte_carlo::Interval;
use super::propagation::propagate;
use super::ranked::{RankedDraws, is_sure};
use super::unread::{Unread, unread};
use crate::design::field::{Field, Quantity};
use crate::design::{Design, SectionKind};
use crate::masses::{self, MassProperties, Thickness};
use crate::measured::MeasuredPoints;
use crate::outcome::quick_outcome;
use crate::outline::side_view::SideView;
use crate::outline::{Body, width_mm};
use crate::pressure::air::{Air, Plane};
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
    /// 95 % of the draws' separations in the least favourable roll lie in it, as many below
    /// as above, in metres: everything that is not known exactly counts.
    pub separation_m: Interval,
    /// Half the width of that interval if only ruler and scales err, in metres: to first
    /// order.
    pub readings_alone_m: f64,
    /// Share of the draws in each outcome, by [`Outcome::rank`](crate::Outcome::rank).
    pub shares: [f64; 4],
}

/// Half of a 95 % interval in standard uncertainties, of a normal distribution.
const COVERAGE: f64 = 1.96;

impl Verdict {
    /// Whether next to all draws come to the outcome of this
    /// [rank](crate::Outcome::rank).
    pub(crate) fn settles(&self, rank: usize) -> bool {
        is_sure(self.shares[rank])
    }

    /// Whether the outcome changes within what is not known exactly.
    #[must_use]
    pub fn is_too_close(&self) -> bool {
        !self.shares.into_iter().any(is_sure)
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

/// Draws of all that is not known exactly about a rocket, made in slices.
///
/// ```
/// use noseward_stability::{Example, MeasuredPoints, Resolution, SeparationDraws};
///
/// let puffin = Example::Puffin.design();
/// let nothing = MeasuredPoints::default();
/// let mut draws = SeparationDraws::new(&puffin, &nothing, Resolution::default());
/// while !draws.is_done() {
///     draws.run(500);
/// }
/// let verdict = draws.verdict().expect("10,000 draws");
/// assert!(!verdict.is_too_close());
/// assert!(verdict.separation_m.high - verdict.separation_m.low > 0.002);
/// ```
#[derive(Clone, Debug)]
pub struct SeparationDraws {
    rocket: Rocket,
    draws: RankedDraws,
    readings_alone_m: f64,
}

/// Draws in all: they place each end of the interval to about 3 % of its half-width.
const DRAWS: usize = 10_000;
/// Same design, same draws.
const SEED: u64 = 20_100;

impl SeparationDraws {
    /// Ready for the first draw.
    #[must_use]
    pub fn new(
        design: &Design,
        measured: &MeasuredPoints,
        resolution: Resolution,
    ) -> Self {
        let (rocket, inputs) = Rocket::new(design, measured, resolution);
        let read = rocket.first_order(&inputs).into_iter();
        let read = read.filter(|(source, _)| !matches!(source, Source::Unread(_)));
        let variance: f64 = read.map(|(_, u)| u * u).sum();
        let draws = RankedDraws::new(inputs, SEED, DRAWS);
        Self { rocket, draws, readings_alone_m: COVERAGE * variance.sqrt() }
    }

    /// Makes so many draws more, up to 10,000 in all.
    pub fn run(&mut self, count: usize) {
        let rocket = &self.rocket;
        self.draws.run(count, |values| rocket.drawn(values).judged());
    }

    /// How many draws came to nothing. None may: each is a rocket that might be.
    #[must_use]
    pub fn lost(&self) -> usize {
        self.draws.lost()
    }

    /// Whether all draws are made.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.draws.is_done()
    }

    /// What they say. `None` before all are made, and when next to none had a result.
    pub fn verdict(&mut self) -> Option<Verdict> {
        Some(Verdict {
            separation_m: self.draws.interval()?,
            readings_alone_m: self.readings_alone_m,
            shares: self.draws.shares()?,
        })
    }
}

impl Influence {
    /// The readings of a design by what they add to the uncertainty of its separation,
    /// the largest first: to first order (JCGM 100, 5.1). What nobody reads is not among
    /// them, nor is a reading whose place a measured point takes.
    #[must_use]
    pub fn of(
        design: &Design,
        measured: &MeasuredPoints,
        resolution: Resolution,
    ) -> Vec<Self> {
        let (rocket, inputs) = Rocket::new(design, measured, resolution);
        let mut list: Vec<Self> = Vec::new();
        for (source, uncertainty_m) in rocket.first_order(&inputs) {
            if let Source::Reading(field) = source
                && uncertainty_m > 0.0
            {
                let place = list.partition_point(|i| i.uncertainty_m >= uncertainty_m);
                list.insert(place, Self { field, uncertainty_m });
            }
        }
        list
    }
}

/// Where a value that is not known exactly stands.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Source {
    Reading(Field),
    Unread(Unread),
    CentreOfMass,
    CentreOfPressure,
}

/// A rocket, and what about it is not known exactly.
#[derive(Clone, Debug)]
pub(crate) struct Rocket {
    design: Design,
    sources: Vec<Source>,
}

/// A rocket that might be.
#[derive(Clone, Debug)]
pub(crate) struct Drawn {
    pub(crate) design: Design,
    thickness: Thickness,
    centre_of_mass_m: Option<f64>,
    centre_of_pressure_m: Option<f64>,
}

impl Rocket {
    pub(crate) fn new(
        design: &Design,
        measured: &MeasuredPoints,
        resolution: Resolution,
    ) -> (Self, Vec<Input>) {
        let step_m = resolution.length_mm / 1000.0;
        let of = |point: &Option<crate::MeasuredPoint>, source| {
            point.as_ref().and_then(|p| Some((source, p.input(step_m).ok()?)))
        };
        let unread = match measured.centre_of_mass {
            // Where it hangs says all that these could.
            Some(_) => Vec::new(),
            None => unread(design),
        };
        let (sources, inputs) = readings(design, resolution)
            .into_iter()
            .map(|(field, input)| (Source::Reading(field), input))
            .chain(unread.into_iter().map(|(u, input)| (Source::Unread(u), input)))
            .chain(of(&measured.centre_of_mass, Source::CentreOfMass))
            .chain(of(&measured.centre_of_pressure, Source::CentreOfPressure))
            .unzip();
        (Self { design: design.clone(), sources }, inputs)
    }

    /// What each source adds to the standard uncertainty of the separation as drawn, in
    /// metres, to first order (JCGM 100, 5.1).
    fn first_order(&self, inputs: &[Input]) -> Vec<(Source, f64)> {
        let budget = propagate(inputs, &mut |values| {
            self.drawn(values).as_drawn_m().unwrap_or(f64::NAN)
        });
        let added = budget.contributions.iter().map(|c| c.signed.abs());
        self.sources.iter().copied().zip(added).collect()
    }

    /// The rocket with these values, in the order of the sources.
    pub(crate) fn drawn(&self, values: &[f64]) -> Drawn {
        let mut drawn = Drawn {
            design: self.design.clone(),
            thickness: Thickness::default(),
            centre_of_mass_m: None,
            centre_of_pressure_m: None,
        };
        for (source, &value) in self.sources.iter().zip(values) {
            match *source {
                Source::Reading(field) => {
                    field.set(&mut drawn.design, Some(value));
                }
                Source::Unread(unread) => {
                    unread.put(value, &mut drawn.design, &mut drawn.thickness);
                }
                Source::CentreOfMass => drawn.centre_of_mass_m = Some(value),
                Source::CentreOfPressure => drawn.centre_of_pressure_m = Some(value),
            }
        }
        hold_shapes(&mut drawn.design);
        drawn
    }
}

/// A reading at the edge of what its shape allows was read of a shape that exists: a dome
/// is at most half a ball, an ogive at least half as long as it is wide.
fn hold_shapes(design: &mut Design) {
    for i in 0..design.sections.len() {
        let Some(half_mm) = width_mm(design, i).map(|mm| mm / 2.0) else { continue };
        let section = &mut design.sections[i];
        match section.kind {
            SectionKind::Dome => section.length_mm = section.length_mm.min(half_mm),
            SectionKind::Ogive => section.length_mm = section.length_mm.max(half_mm),
            _ => {}
        }
    }
}

/// The readings of a design, each as an input.
fn readings(design: &Design, resolution: Resolution) -> Vec<(Field, Input)> {
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
        .collect()
}

impl Drawn {
    /// The body, its side view, and its mass.
    pub(crate) fn parts(&self) -> Option<(Body, SideView, MassProperties)> {
        let body = Body::new(&self.design)?;
        let view = SideView::new(&self.design, &body);
        let parts = masses::parts_with(&self.design, &body, self.thickness);
        let mass = masses::total(&parts);
        let mass = match self.design.measured.total_mass_g {
            Some(g) => mass.scaled_to(g / 1000.0),
            None => mass,
        };
        let centre_m = self.centre_of_mass_m.unwrap_or(mass.centre_m);
        Some((body, view, MassProperties { centre_m, ..mass }))
    }

    /// By how much a measured centre of pressure is behind that of the drawing, in metres.
    pub(crate) fn moved_m(&self, planes: &[Plane]) -> Option<f64> {
        let drawn_m = planes.first()?.side_on_m;
        Some(self.centre_of_pressure_m.map_or(0.0, |m| m - drawn_m))
    }

    /// The separation in the view of the drawing, in metres.
    fn as_drawn_m(&self) -> Option<f64> {
        let (_, view, mass) = self.parts()?;
        let pressure_m =
            self.centre_of_pressure_m.unwrap_or_else(|| view.area_and_centroid_m().1);
        Some(pressure_m - mass.centre_m)
    }

    /// The separation in the least favourable roll, in metres, and the rank of the worst
    /// outcome of any roll.
    fn judged(&self) -> Option<(f64, u8)> {
        let (body, view, mass) = self.parts()?;
        let mass_m = mass.centre_m;
        let planes = Air::in_planes(&self.design, &body, view, Model::default());
        let moved_m = self.moved_m(&planes)?;
        let mut least_m = f64::INFINITY;
        let mut rank = 0;
        for Plane { air, side_on_m, .. } in &planes {
            least_m = least_m.min(side_on_m + moved_m - mass_m);
            // Air that is moved back is a centre of mass that is moved forward.
            rank = rank.max(quick_outcome(air, mass_m - moved_m).rank());
        }
        Some((least_m, rank))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, MeasuredPoint, evaluate, evaluate_measured};

    fn drawn_with(
        design: &Design,
        measured: &MeasuredPoints,
        resolution: Resolution,
    ) -> Verdict {
        let mut draws = SeparationDraws::new(design, measured, resolution);
        while !draws.is_done() {
            draws.run(3000);
        }
        assert_eq!(draws.lost(), 0);
        draws.verdict().unwrap()
    }

    fn drawn(design: &Design, resolution: Resolution) -> Verdict {
        drawn_with(design, &MeasuredPoints::default(), resolution)
    }

    fn half(verdict: Verdict) -> f64 {
        (verdict.separation_m.high - verdict.separation_m.low) / 2.0
    }

    /// Two ways to one answer where a ruler alone errs: fins and body weighed, and the
    /// hanging point measured, so that nothing is left that nobody read.
    #[test]
    fn draws_agree_with_first_order() {
        for example in Example::ALL {
            let design = example.design();
            let hung = evaluate(&design).figures.unwrap().mass.centre_m;
            let hung = MeasuredPoints::hung_at(hung).unwrap();
            let verdict = drawn_with(&design, &hung, Resolution::default());
            let ratio = half(verdict) / verdict.readings_alone_m;
            // One rectangle has 95 % within 0.95 √3 = 1.65 standard uncertainties; many
            // add up to 1.96.
            assert!((0.8..1.1).contains(&ratio), "{example:?}: {ratio}");
        }
    }

    #[test]
    fn what_nobody_read_widens_the_interval() {
        for example in Example::ALL {
            let verdict = drawn(&example.design(), Resolution::default());
            assert!(half(verdict) > 1.1 * verdict.readings_alone_m, "{example:?}");
        }
    }

    /// Half a ball as long as its radius: half of all draws are of a shape that does not
    /// exist, unless they are held to it.
    #[test]
    fn no_draw_of_a_half_ball_is_lost() {
        let mut design = Example::Puffin.design();
        design.sections[0].kind = SectionKind::Dome;
        design.sections[0].length_mm = 32.5;
        design.fins[0].start_mm = 130.0;
        design.weights[0].position_mm = 20.0;
        drawn(&design, Resolution::default());
        design.sections[0].kind = SectionKind::Ogive;
        drawn(&design, Resolution::default());
    }

    #[test]
    fn the_outcome_of_most_draws_is_that_of_the_rocket() {
        for example in Example::ALL {
            let design = example.design();
            let verdict = drawn(&design, Resolution::default());
            let rank = evaluate(&design).figures.unwrap().outcome.rank();
            let share = verdict.shares[usize::from(rank)];
            assert!(share > 0.4, "{example:?}: {:?}", verdict.shares);
            let all: f64 = verdict.shares.iter().sum();
            assert!((all - 1.0).abs() < 1e-12);
        }
    }

    /// Between a rocket that rights itself and one that does not lies one that is too
    /// close to call.
    #[test]
    fn on_the_border_it_is_too_close_to_call() {
        let design = Example::Puffin.design();
        let hung = |m: f64| MeasuredPoints::hung_at(m).unwrap();
        let rank =
            |m: f64| evaluate_measured(&design, &hung(m)).figures.unwrap().outcome.rank();
        let (mut sure, mut lost) = (0.1, 0.3);
        assert_ne!(rank(sure), rank(lost));
        let at = |m: f64| drawn_with(&design, &hung(m), Resolution::default());
        assert!(!at(sure).is_too_close());
        while lost - sure > 0.05e-3 {
            let middle = f64::midpoint(sure, lost);
            if rank(middle) == 0 { sure = middle } else { lost = middle }
        }
        assert!(at(sure).is_too_close());
    }

    /// A point that was measured counts with its own repeats, and nothing else of it does.
    #[test]
    fn repeats_of_a_measured_point_decide_its_share() {
        let design = Example::Puffin.design();
        let hung = |readings: &[f64]| {
            let centre_of_mass = Some(MeasuredPoint::new(readings).unwrap());
            let measured = MeasuredPoints { centre_of_mass, centre_of_pressure: None };
            half(drawn_with(&design, &measured, Resolution::default()))
        };
        let (close, scattered) = (hung(&[0.141; 3]), hung(&[0.131, 0.141, 0.151]));
        assert!(close < half(drawn(&design, Resolution::default())));
        // s/√3 = 5.8 mm, and 3.18 of them to either side with the three degrees of freedom
        // that are drawn with.
        assert!((0.016..0.021).contains(&scattered), "{scattered}");
        let balanced = MeasuredPoints {
            centre_of_pressure: Some(MeasuredPoint::new(&[0.2; 3]).unwrap()),
            ..MeasuredPoints::hung_at(0.14).unwrap()
        };
        // As drawn 60 mm; in the least favourable roll as much less as computed.
        let figures = evaluate_measured(&design, &balanced).figures.unwrap();
        assert!((figures.separation_m - 0.060).abs() < 1e-12);
        let both = drawn_with(&design, &balanced, Resolution::default()).separation_m;
        let middle = f64::midpoint(both.low, both.high);
        assert!((middle - figures.least_separation_m).abs() < 0.5e-3);
        // A half millimetre to either side of both.
        assert!(both.high - both.low < 2.1e-3, "{both:?}");
    }

    #[test]
    fn coarser_tools_are_less_sure_and_the_same_draws_come_again() {
        let design = Example::Puffin.design();
        let fine = drawn(&design, Resolution::default());
        let coarse = drawn(&design, Resolution { length_mm: 5.0, mass_g: 5.0 });
        assert!(coarse.readings_alone_m > 3.0 * fine.readings_alone_m);
        assert!(half(coarse) > half(fine));
        assert_eq!(fine, drawn(&design, Resolution::default()));
        let mut slices = SeparationDraws::new(
            &design,
            &MeasuredPoints::default(),
            Resolution::default(),
        );
        while !slices.is_done() {
            slices.run(77);
        }
        assert_eq!(slices.verdict(), Some(fine));
    }

    #[test]
    fn what_matters_most_comes_first() {
        let nothing = MeasuredPoints::default();
        let design = Example::Puffin.design();
        let list = Influence::of(&design, &nothing, Resolution::default());
        assert!(list.windows(2).all(|w| w[0].uncertainty_m >= w[1].uncertainty_m));
        assert!(list.len() > 10);
    }
}
