//! From a design to everything that is known about it.

use serde::Serialize;

use crate::check::{Fault, Severity, check};
use crate::design::Design;
use crate::design::component::Component;
use crate::masses::{self, MassProperties};
use crate::measured::MeasuredPoints;
use crate::outcome::{Outcome, Rest, resting_angles};
use crate::outline::Body;
use crate::outline::fin::Fin;
use crate::outline::side_view::SideView;
use crate::pressure::air::{Air, Plane};
use crate::pressure::model::Model;
use crate::pressure::rolls::side_on_over_rolls_m;
use crate::pressure::side_on;

/// What [`evaluate`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Report {
    /// Every fault of the design, in the order of the design. Empty is good.
    pub faults: Vec<Fault>,
    /// The figures; `None` when a fault stops the computation.
    pub figures: Option<Figures>,
}

/// The figures of a rocket. Distances run from the nose tip towards the tail.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figures {
    /// Length of the body, in metres.
    pub length_m: f64,
    /// Largest width of the body, in metres: one calibre.
    pub body_width_m: f64,
    /// Area of the side view, in m².
    pub side_area_m2: f64,
    /// The centre of pressure side-on, in metres from the nose tip: measured on the
    /// cut-out if it was, else that of the side view of the drawing.
    pub centre_of_pressure_side_on_m: f64,
    /// The same as computed from the side view of the drawing.
    pub computed_centre_of_pressure_side_on_m: f64,
    /// The rocket as it is judged: computed, with whatever was measured put in its place.
    pub mass: MassProperties,
    /// The rocket as computed from its parts.
    pub computed_mass: MassProperties,
    /// Centre of pressure side-on less centre of mass, in metres, in the view of the
    /// drawing and of the cut-out: positive when the centre of mass is nearer the nose.
    pub separation_m: f64,
    /// The same in body widths.
    pub separation_body_widths: f64,
    /// The same in the least favourable roll, in metres: the separation of a rocket in
    /// flight, which rolls. See [`separation_over_rolls`].
    pub least_separation_m: f64,
    /// Which of the two is nearer the nose, in the view of the drawing.
    pub nearer_the_nose: Nearer,
    /// The centre of pressure nose-on, in metres from the nose tip, in the least favourable
    /// roll: where the air pushes while the rocket flies nearly straight. `None` where in
    /// some roll it pushes next to nothing.
    pub centre_of_pressure_nose_on_m: Option<f64>,
    /// The same as the rocket rolls; `None` likewise.
    pub centre_of_pressure_nose_on_rolled_m: Option<Span>,
    /// The normal-force slope at small angles, per radian, on the body's largest
    /// cross-section, in the roll that decides.
    pub normal_force_slope_per_rad: f64,
    /// What the rocket does when the air hits it from any side, in the roll that decides.
    pub outcome: Outcome,
    /// Every angle at which the air does not turn it, nose first to tail first, in the
    /// roll that decides.
    pub resting_angles: Vec<Rest>,
    /// By how much the rocket is turned about its axis, out of the view of the drawing, in
    /// the roll that decides, in degrees: that of the worst outcome, among equals the one
    /// in which the air turns it back the least.
    pub deciding_roll_deg: f64,
    /// The air from any side, in the roll that decides.
    #[serde(skip)]
    pub air: Air,
    /// Each part by itself: sections, fin sets, weights.
    pub parts: Vec<PartFigures>,
}

/// From the least to the most of something.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Span {
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

impl Span {
    /// The span of some values; `None` without one.
    pub(crate) fn of(values: impl IntoIterator<Item = f64>) -> Option<Self> {
        let one = |value| Self { least: value, most: value };
        values
            .into_iter()
            .map(one)
            .reduce(|a, b| Self { least: a.least.min(b.least), most: a.most.max(b.most) })
    }
}

/// Which point is nearer the nose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Nearer {
    /// The centre of mass.
    CentreOfMass,
    /// The centre of pressure side-on.
    CentreOfPressure,
    /// They are less than half a millimetre apart.
    Neither,
}

impl Nearer {
    /// Which it is with this separation, in metres. Everything that says which point is
    /// nearer the nose asks here.
    #[must_use]
    pub fn of(separation_m: f64) -> Self {
        if separation_m.abs() < SAME_PLACE_M {
            Self::Neither
        } else if separation_m > 0.0 {
            Self::CentreOfMass
        } else {
            Self::CentreOfPressure
        }
    }
}

/// The figures of one part.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PartFigures {
    /// Which part, as a JSON pointer into the design.
    pub part: Component,
    /// Its mass, centre and inertia.
    #[serde(flatten)]
    pub mass: MassProperties,
    /// Area of its own side view, in m²: a section from the side, one fin laid flat,
    /// nothing for a weight.
    pub area_m2: f64,
    /// Its normal-force slope at small angles, per radian, on the body's largest
    /// cross-section; zero for a weight.
    pub normal_force_slope_per_rad: f64,
    /// Where that acts, in metres from the nose tip. `None` where there is none.
    pub nose_on_centre_m: Option<f64>,
}

/// Less than this apart, neither point counts as nearer the nose: half of what a ruler
/// with millimetres can tell.
const SAME_PLACE_M: f64 = 0.5e-3;

/// Checks a design and works out its figures.
///
/// Faults that only ask ("did you mean 65 mm?") leave the figures standing; faults that
/// stop it leave none.
///
/// ```
/// use noseward_stability::{BottleSize, Field, evaluate};
///
/// let mut bottle = BottleSize::Ml500.design();
/// let report = evaluate(&bottle);
/// assert!(report.figures.is_some());
///
/// bottle.sections.clear();
/// let report = evaluate(&bottle);
/// assert!(report.figures.is_none());
/// assert_eq!(report.faults[0].field, Field::Sections);
/// ```
#[must_use]
pub fn evaluate(design: &Design) -> Report {
    evaluate_measured(design, &MeasuredPoints::default())
}

/// The same with the points that were read on the finished rocket and its cut-out in the
/// place of the computed ones, in everything that follows from them.
///
/// A measured centre of pressure says that the air pushes so much further forward or back
/// than described, so the air from every other side is moved along with it.
///
/// ```
/// use noseward_stability::{Example, MeasuredPoints, evaluate_measured};
///
/// let hung = MeasuredPoints::hung_at(0.150)?;
/// let figures = evaluate_measured(&Example::Puffin.design(), &hung).figures.unwrap();
/// assert_eq!(figures.mass.centre_m, 0.150);
/// assert_ne!(figures.computed_mass.centre_m, 0.150);
/// # Ok::<(), noseward_stability::ToleranceError>(())
/// ```
#[must_use]
pub fn evaluate_measured(design: &Design, measured: &MeasuredPoints) -> Report {
    #[cfg(feature = "count")]
    EVALUATIONS.set(EVALUATIONS.get() + 1);
    let mut faults = check(design);
    let stopped = faults.iter().any(|fault| fault.severity() == Severity::Stop);
    let figures = if stopped { None } else { figures(design, measured) };
    if let Some(figures) = &figures {
        let compared = crate::check::compare_with_measured(design, figures);
        let new = |fault: &Fault| faults.iter().all(|known| known.field != fault.field);
        let more: Vec<Fault> = compared.into_iter().filter(new).collect();
        faults.extend(more);
    }
    Report { faults, figures }
}

#[cfg(feature = "count")]
thread_local! {
    static EVALUATIONS: std::cell::Cell<usize> = const { std::cell::Cell::new(0) };
}

/// How many reports this thread has worked out: for tests of those who keep them.
#[cfg(feature = "count")]
#[must_use]
pub fn evaluations() -> usize {
    EVALUATIONS.get()
}

/// The figures of a design without faults that stop it.
fn figures(design: &Design, measured: &MeasuredPoints) -> Option<Figures> {
    let body = Body::new(design)?;
    let view = SideView::new(design, &body);
    let pressure = side_on::side_on(&view);
    let part_masses = masses::parts(design, &body);
    let computed_mass = masses::total(&part_masses);
    let mass = with_measured(computed_mass, design, measured);
    let centre_m =
        measured.centre_of_pressure.as_ref().map_or(pressure.centre_m, |p| p.value_m());
    let separation_m = centre_m - mass.centre_m;
    let body_width_m = body.width_m();
    let moved_m = centre_m - pressure.centre_m;
    let planes: Vec<Plane> = Air::in_planes(design, &body, view, Model::default())
        .into_iter()
        .map(|plane| plane.moved(moved_m))
        .collect();
    let least_m =
        planes.iter().map(|plane| plane.side_on_m).fold(f64::INFINITY, f64::min);
    let nose_on: Option<Vec<f64>> =
        planes.iter().map(|p| p.air.centre_of_pressure_m(0.0)).collect();
    let nose_on = nose_on.and_then(Span::of);
    let Decided { roll_deg, air, rests } = least_favourable(planes, mass.centre_m)?;
    let parts = part_masses
        .into_iter()
        .map(|p| {
            let push = air.parts().iter().find(|a| a.part == p.part);
            let push = push.filter(|a| a.slope_per_rad != 0.0);
            PartFigures {
                part: p.part,
                mass: p.properties,
                area_m2: match p.part {
                    Component::Section(i) => body.stretches()[i].profile.side().area,
                    Component::Fins(i) => Fin::new(&design.fins[i].planform).area_m2(),
                    Component::Weight(_) => 0.0,
                },
                normal_force_slope_per_rad: push.map_or(0.0, |a| a.slope_per_rad),
                nose_on_centre_m: push.map(|a| a.forward_centre_m),
            }
        })
        .collect();
    Some(Figures {
        length_m: body.length_m(),
        body_width_m,
        side_area_m2: pressure.area_m2,
        centre_of_pressure_side_on_m: centre_m,
        computed_centre_of_pressure_side_on_m: pressure.centre_m,
        mass,
        computed_mass,
        separation_m,
        separation_body_widths: separation_m / body_width_m,
        least_separation_m: least_m - mass.centre_m,
        nearer_the_nose: Nearer::of(separation_m),
        centre_of_pressure_nose_on_m: nose_on.map(|span| span.least),
        centre_of_pressure_nose_on_rolled_m: nose_on,
        normal_force_slope_per_rad: air.slope_per_rad(),
        outcome: Outcome::of(&rests),
        resting_angles: rests,
        deciding_roll_deg: roll_deg,
        air,
        parts,
    })
}

/// The separation of a design with these figures as it rolls, from the least favourable
/// view to the most favourable, in metres; the latter within half a millimetre on a
/// hand-sized rocket, since the rolls are searched in steps.
#[must_use]
pub fn separation_over_rolls(design: &Design, figures: &Figures) -> Option<Span> {
    let body = Body::new(design)?;
    let view = SideView::new(design, &body);
    let moved_m = figures.centre_of_pressure_side_on_m
        - figures.computed_centre_of_pressure_side_on_m;
    let side_on = side_on_over_rolls_m(design, &body, &view).into_iter();
    Span::of(side_on.map(|m| m + moved_m - figures.mass.centre_m))
}

/// The roll that decides what a rocket does.
struct Decided {
    roll_deg: f64,
    air: Air,
    rests: Vec<Rest>,
}

/// The plane with the worst outcome; among equals the one with the weaker moment, so that
/// nothing jumps from one plane to another while both come to the same.
fn least_favourable(planes: Vec<Plane>, centre_of_mass_m: f64) -> Option<Decided> {
    let judged = planes.into_iter().map(|plane| {
        let rests = resting_angles(&plane.air, centre_of_mass_m);
        let rank = Outcome::of(&rests).rank();
        let weakest = plane.air.weakest_moment_m(centre_of_mass_m);
        (rank, weakest, Decided { roll_deg: plane.roll_deg, air: plane.air, rests })
    });
    let worst = judged.reduce(|worst, next| {
        let worse = next.0 > worst.0 || (next.0 == worst.0 && next.1 < worst.1);
        if worse { next } else { worst }
    });
    worst.map(|(.., decided)| decided)
}

/// What was measured takes the place of what was computed; the inertia is rescaled to the
/// measured mass.
fn with_measured(
    computed: MassProperties,
    design: &Design,
    measured: &MeasuredPoints,
) -> MassProperties {
    let mass = match design.measured.total_mass_g {
        Some(g) => computed.scaled_to(g / 1000.0),
        None => computed,
    };
    let centre_m =
        measured.centre_of_mass.as_ref().map_or(mass.centre_m, |p| p.value_m());
    MassProperties { centre_m, ..mass }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    #[test]
    fn measured_values_replace_computed_ones() {
        let mut design = Example::Puffin.design();
        let before = evaluate(&design).figures.unwrap();
        design.measured.total_mass_g = Some(60.0);
        let hung = MeasuredPoints::hung_at(0.140).unwrap();
        let after = evaluate_measured(&design, &hung).figures.unwrap();
        assert_eq!(after.computed_mass, before.mass);
        assert!((after.mass.mass_kg - 0.060).abs() < 1e-15);
        assert!((after.mass.centre_m - 0.140).abs() < 1e-15);
        let scale = 0.060 / before.mass.mass_kg;
        let inertia = before.mass.transverse_inertia_kg_m2 * scale;
        assert!((after.mass.transverse_inertia_kg_m2 - inertia).abs() < 1e-15);
        assert_eq!(
            after.centre_of_pressure_side_on_m,
            before.centre_of_pressure_side_on_m
        );
    }

    #[test]
    fn separation_is_in_both_units_and_says_which_is_nearer() {
        let figures = evaluate(&Example::Razorbill.design()).figures.unwrap();
        assert_eq!(figures.nearer_the_nose, Nearer::CentreOfPressure);
        let calibres = figures.separation_m / 0.090;
        assert!((figures.separation_body_widths - calibres).abs() < 1e-12);
    }

    /// The report is what other programs read: its keys must not change unnoticed.
    #[test]
    fn the_keys_of_the_report() {
        let json = serde_json::to_value(evaluate(&Example::Puffin.design())).unwrap();
        let keys = |value: &serde_json::Value| -> Vec<String> {
            value.as_object().unwrap().keys().cloned().collect()
        };
        assert_eq!(keys(&json), ["faults", "figures"]);
        assert_eq!(
            keys(&json["figures"]),
            [
                "body_width_m",
                "centre_of_pressure_nose_on_m",
                "centre_of_pressure_nose_on_rolled_m",
                "centre_of_pressure_side_on_m",
                "computed_centre_of_pressure_side_on_m",
                "computed_mass",
                "deciding_roll_deg",
                "least_separation_m",
                "length_m",
                "mass",
                "nearer_the_nose",
                "normal_force_slope_per_rad",
                "outcome",
                "parts",
                "resting_angles",
                "separation_body_widths",
                "separation_m",
                "side_area_m2",
            ]
        );
        assert_eq!(
            keys(&json["figures"]["parts"][0]),
            [
                "area_m2",
                "axial_inertia_kg_m2",
                "centre_m",
                "mass_kg",
                "normal_force_slope_per_rad",
                "nose_on_centre_m",
                "part",
                "transverse_inertia_kg_m2",
            ]
        );
    }
}
