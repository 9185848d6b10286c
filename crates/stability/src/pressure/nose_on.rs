//! The normal-force slope of each part and where it acts, for air from nearly nose-on.

use std::f64::consts::PI;

use super::model::{CarryOver, FinCentre, Model, Shoulder};
use crate::design::component::Component;
use crate::outline::Body;
use crate::outline::fin::Strips;
use crate::outline::profile::AreaMoments;

/// What one part contributes at small angles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Slope {
    pub(crate) part: Component,
    /// `C_Nα` on the body's largest cross-section, per radian.
    pub(crate) slope: f64,
    /// Where it acts, in metres from the nose tip.
    pub(crate) centre_m: f64,
}

/// The slopes of the body's sections.
///
/// Slender-body theory (Munk 1924, NACA Report 184; Barrowman & Barrowman 1966): a stretch
/// of body gives `C_Nα = 2 ∫dS / S_ref` at `∫x dS / ∫dS`. A sudden change of width belongs to
/// the section behind it.
pub(crate) fn body(body: &Body, model: Model) -> Vec<Slope> {
    let reference = reference_area_m2(body);
    let mut ahead_radius = 0.0;
    let mut slopes = Vec::with_capacity(body.stretches().len());
    for (i, stretch) in body.stretches().iter().enumerate() {
        let front = stretch.profile.front_radius_m();
        let step = PI * (front * front - ahead_radius * ahead_radius);
        let counts = if step >= 0.0 { 1.0 } else { model.shoulder.share(PI / 2.0) };
        let share = |angle: f64| model.shoulder.share(angle);
        let growth = stretch.profile.growth(&share, &Shoulder::bends_rad());
        let own = AreaMoments { area: growth.area + step * counts, first: growth.first };
        // A stretch that neither grows nor shrinks has no centre; any place will do.
        let offset = if own.area == 0.0 { 0.0 } else { own.first / own.area };
        slopes.push(Slope {
            part: Component::Section(i),
            slope: 2.0 * own.area / reference,
            centre_m: stretch.front_m + offset,
        });
        ahead_radius = stretch.profile.rear_radius_m();
    }
    slopes
}

/// π d²/4 of the largest body diameter.
pub(crate) fn reference_area_m2(body: &Body) -> f64 {
    let width = body.width_m();
    PI * width * width / 4.0
}

/// A fin set at small angles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct FinLift {
    /// `C_Nα` on the body's largest cross-section, per radian.
    pub(crate) slope: f64,
    /// Where it acts with air from ahead, behind the front of the root, in metres.
    pub(crate) forward_m: f64,
    /// Where it acts with air from behind: at three quarters of the chord.
    pub(crate) backward_m: f64,
}

/// Fins as so many equal panels flat to the crosswind as `panels` says: half the count for
/// three and more, whatever the roll; for two, what is seen of them.
///
/// Diederich's lift slope (NACA TN 2335, 1951) as Barrowman & Barrowman (1966) use it:
/// `C_Nα = K 8 p (s/d)² / (1 + √(1 + (2 l/(c_r + c_t))²))`, with p panels and the mid-chord
/// line l. Other outlines use their own area, mid-chord slope and mean chord. From memory.
/// `strips` is what lies outside the body: the rest pushes nothing. The front of the root is
/// at `start_m`.
pub(crate) fn fins(
    strips: &Strips,
    start_m: f64,
    body: &Body,
    panels: f64,
    model: Model,
) -> FinLift {
    let (s, r, d) = (strips.span, body.radius_at_m(start_m), body.width_m());
    let interference = 1.0 + r / (s + r);
    let k = match model.carry_over {
        CarryOver::FinsOnly => interference,
        CarryOver::WithBody => interference * interference,
    };
    let mid_chord = s * (1.0 + strips.middle_slope * strips.middle_slope).sqrt();
    let ratio = mid_chord * s / strips.area;
    let slope =
        k * 8.0 * panels * (s / d) * (s / d) / (1.0 + (1.0 + ratio * ratio).sqrt());
    let ahead = match model.fin_centre {
        FinCentre::QuarterChord => 0.0,
        FinCentre::Stubby => 0.25 - stubby_centre(2.0 * s * s / strips.area),
    };
    FinLift {
        slope,
        forward_m: strips.front + (0.25 - ahead) * strips.mean_chord,
        backward_m: strips.front + (0.75 + ahead) * strips.mean_chord,
    }
}

/// The aerodynamic centre of a rectangular wing behind its front edge, in chords, for its
/// aspect ratio: points of a vortex-lattice solution (computed for this project's
/// reference collection, good to 0.002), straight lines between them.
fn stubby_centre(aspect: f64) -> f64 {
    const POINTS: [(f64, f64); 11] = [
        (0.0, 0.0),
        (0.25, 0.062),
        (0.5, 0.110),
        (0.75, 0.144),
        (1.0, 0.167),
        (1.5, 0.194),
        (2.0, 0.209),
        (3.0, 0.225),
        (4.0, 0.232),
        (6.0, 0.239),
        (30.0, 0.25),
    ];
    super::crossflow::between(&POINTS, aspect)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outline::fin::Fin;
    use crate::{Design, Example, Planform};

    fn total(slopes: &[Slope]) -> (f64, f64) {
        let slope: f64 = slopes.iter().map(|s| s.slope).sum();
        (slope, slopes.iter().map(|s| s.slope * s.centre_m).sum::<f64>() / slope)
    }

    fn bodied(change: impl Fn(&mut Design)) -> Body {
        let mut design = Example::Gannet.design();
        change(&mut design);
        Body::new(&design).unwrap()
    }

    #[test]
    fn a_cone_and_a_tube() {
        let cone = bodied(|d| {
            d.sections[0].kind = crate::SectionKind::Cone;
            d.sections[0].length_mm = 60.0;
        });
        let slopes = body(&cone, Model::default());
        let (slope, centre) = total(&slopes);
        assert!((slope - 2.0).abs() < 1e-12);
        assert!((centre - 0.060 * 2.0 / 3.0).abs() < 1e-12);
        assert_eq!(slopes[1].slope, 0.0, "a tube adds nothing");
    }

    #[test]
    fn a_flat_front_is_a_sudden_growth_at_the_front() {
        let slopes = body(
            &bodied(|d| {
                d.sections.remove(0);
            }),
            Model::default(),
        );
        assert_eq!(total(&slopes), (2.0, 0.0));
    }

    /// Without separation, a body that closes again has a couple but no force (d'Alembert;
    /// Munk 1924).
    #[test]
    fn a_closed_slender_body_has_no_force() {
        let mut design = Example::Puffin.design();
        design.sections[2].diameter_mm = Some(1.0);
        design.sections[3].diameter_mm = Some(1.0);
        let model = Model { shoulder: Shoulder::InFull, ..Model::default() };
        let (slope, _) = total(&body(&Body::new(&design).unwrap(), model));
        assert!(slope.abs() < 1e-3, "{slope}");
    }

    #[test]
    fn a_steep_shoulder_counts_less_than_a_gentle_one() {
        let slope = |length_mm: f64, shoulder| {
            let mut design = Example::Puffin.design();
            design.sections[2].length_mm = length_mm;
            let model = Model { shoulder, ..Model::default() };
            body(&Body::new(&design).unwrap(), model)[2].slope
        };
        let full = 2.0 * (28.0_f64 * 28.0 / (65.0 * 65.0) - 1.0);
        assert!((slope(55.0, Shoulder::InFull) - full).abs() < 1e-9);
        assert!((slope(800.0, Shoulder::Fades) - full).abs() < 1e-9);
        assert_eq!(slope(55.0, Shoulder::NotAtAll), 0.0);
        let steep = slope(55.0, Shoulder::Fades);
        assert!(full < steep && steep < 0.0, "{steep}");
    }

    #[test]
    fn stubby_fins_lift_further_forward() {
        let fin = |span_mm: f64| {
            Fin::new(&Planform::FourSided {
                root_mm: 100.0,
                tip_mm: 100.0,
                span_mm,
                sweep_mm: 0.0,
            })
        };
        let body = bodied(|_| {});
        let stubby = Model { fin_centre: FinCentre::Stubby, ..Model::default() };
        let centre = |span, model: Model| {
            fins(&fin(span).strips().unwrap(), 0.1, &body, 2.0, model).forward_m
        };
        assert!((centre(50.0, Model::default()) - 0.025).abs() < 1e-12);
        // Aspect ratio 1 of the pair.
        assert!((centre(50.0, stubby) - 0.0167).abs() < 1e-9);
        assert!(centre(200.0, stubby) > centre(50.0, stubby));
    }
}
