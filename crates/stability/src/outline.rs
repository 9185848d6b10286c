//! The shape of the rocket in metres.

mod contour;
pub(crate) mod fin;
pub(crate) mod profile;
pub(crate) mod side_view;

use crate::design::{Design, SectionKind};
use profile::Profile;

/// Places this close are the same: sums of lengths miss by the last bit.
const SAME_PLACE_M: f64 = 1e-9;

/// The body as stretches laid end to end, in metres.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    stretches: Vec<Stretch>,
}

/// One section at its place on the axis, in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Distance of its front end from the nose tip.
    pub front_m: f64,
    /// Its shape.
    pub profile: Profile,
}

impl Stretch {
    /// Distance of its rear end from the nose tip.
    #[must_use]
    pub fn rear_m(&self) -> f64 {
        self.front_m + self.profile.length_m()
    }

    /// One side of its outline as points `(x, radius)` in metres, front to rear, no
    /// further than `tolerance_m` from the curve.
    #[must_use]
    pub fn outline_m(&self, tolerance_m: f64) -> Vec<(f64, f64)> {
        let points = self.profile.points_m(tolerance_m).into_iter();
        points.map(|(u, r)| (self.front_m + u, r)).collect()
    }
}

impl Body {
    /// The body of a design. `None` when a section has no width that can be found, or a
    /// shape that does not exist; [`check`](crate::check()) names which.
    #[must_use]
    pub fn new(design: &Design) -> Option<Self> {
        let mut front_m = 0.0;
        let mut stretches: Vec<Stretch> = Vec::with_capacity(design.sections.len());
        for (i, section) in design.sections.iter().enumerate() {
            let width_ahead = i.checked_sub(1).map(|ahead| width_mm(design, ahead));
            let ahead_m = match width_ahead {
                Some(width) => radius_m(width?),
                None => 0.0,
            };
            let radius_m = radius_m(width_mm(design, i)?);
            let length_m = section.length_mm / 1000.0;
            let profile = match section.kind {
                SectionKind::Cone => Profile::straight(0.0, radius_m, length_m),
                SectionKind::Ogive => Profile::ogive(radius_m, length_m),
                SectionKind::Ellipsoid => Profile::ellipsoid(radius_m, length_m),
                SectionKind::Paraboloid => Profile::paraboloid(radius_m, length_m),
                SectionKind::Dome => Profile::dome(radius_m, length_m),
                SectionKind::Tube | SectionKind::Neck => {
                    Profile::straight(radius_m, radius_m, length_m)
                }
                SectionKind::StraightTaper => {
                    Profile::straight(ahead_m, radius_m, length_m)
                }
                SectionKind::RoundedTaper => {
                    Profile::rounded(ahead_m, radius_m, length_m)
                }
            }?;
            stretches.push(Stretch { front_m, profile });
            front_m += length_m;
        }
        (!stretches.is_empty()).then_some(Self { stretches })
    }

    /// The sections from nose to tail, at least one.
    #[must_use]
    pub fn stretches(&self) -> &[Stretch] {
        &self.stretches
    }

    /// Distance from the nose tip to the end of the last section, in metres.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.stretches.last().map_or(0.0, Stretch::rear_m)
    }

    /// The largest width of the body, in metres: one calibre.
    #[must_use]
    pub fn width_m(&self) -> f64 {
        let ends =
            |s: &Stretch| s.profile.front_radius_m().max(s.profile.rear_radius_m());
        2.0 * self.stretches.iter().map(ends).fold(0.0, f64::max)
    }

    /// Radius at a distance from the nose tip, in metres; at a step the one behind it;
    /// zero off the body.
    #[must_use]
    pub fn radius_at_m(&self, x_m: f64) -> f64 {
        self.stretches
            .iter()
            .rev()
            .find(|s| x_m >= s.front_m - SAME_PLACE_M)
            .filter(|s| x_m <= s.rear_m() + SAME_PLACE_M)
            .map_or(0.0, |s| s.profile.radius_m(x_m - s.front_m))
    }

    /// What the outline encloses, in cubic metres.
    #[must_use]
    pub fn volume_m3(&self) -> f64 {
        self.stretches.iter().map(|s| s.profile.volume_m3()).sum()
    }

    /// One side of the outline as points `(x, radius)` in metres, from front to tail, no
    /// further than `tolerance_m` from the curve. Steps in width appear as two points at
    /// the same x.
    #[must_use]
    pub fn chain_m(&self, tolerance_m: f64) -> Vec<(f64, f64)> {
        let mut chain = Vec::new();
        for stretch in &self.stretches {
            for point in stretch.outline_m(tolerance_m) {
                if chain.last() != Some(&point) {
                    chain.push(point);
                }
            }
        }
        chain
    }
}

fn radius_m(width_mm: f64) -> f64 {
    width_mm / 2000.0
}

/// The width of section `i`, its own or its neighbour's, in millimetres. `None` when the
/// chain of neighbours ends without a width, and for a taper without one of its own.
pub(crate) fn width_mm(design: &Design, i: usize) -> Option<f64> {
    let mut at = i;
    let forwards = design.sections.get(i)?.kind.is_nose();
    loop {
        let section = design.sections.get(at)?;
        if section.diameter_mm.is_some() {
            return section.diameter_mm;
        }
        if section.kind.is_taper() {
            return None;
        }
        at = if forwards {
            at + 1
        } else {
            let ahead = at.checked_sub(1)?;
            // A nose without a width takes it from behind: it has none to give.
            if design.sections[ahead].kind.is_nose()
                && design.sections[ahead].diameter_mm.is_none()
            {
                return None;
            }
            ahead
        };
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, Section};

    #[test]
    fn sections_lie_end_to_end_and_widths_follow_their_neighbours() {
        let body = Body::new(&Example::Puffin.design()).unwrap();
        let ends: Vec<_> = body.stretches().iter().map(|s| s.rear_m()).collect();
        let expected = [0.120, 0.245, 0.300, 0.321];
        for (end, expected) in ends.iter().zip(expected) {
            assert!((end - expected).abs() < 1e-12);
        }
        assert!((body.width_m() - 0.065).abs() < 1e-12);
        assert!((body.radius_at_m(0.120) - 0.0325).abs() < 1e-12);
        assert!((body.radius_at_m(0.310) - 0.014).abs() < 1e-12);
        assert_eq!(body.radius_at_m(0.0), 0.0);
        assert_eq!(body.radius_at_m(0.4), 0.0);
        assert_eq!(body.radius_at_m(-0.1), 0.0);
    }

    #[test]
    fn a_width_that_nobody_gives_is_missing() {
        let mut design = Example::Gannet.design();
        design.sections[1].diameter_mm = None;
        assert_eq!(width_mm(&design, 0), None);
        assert_eq!(width_mm(&design, 1), None);
        assert!(Body::new(&design).is_none());
        assert!(Body::new(&Design::default()).is_none());
        let taper =
            Section { kind: SectionKind::RoundedTaper, ..design.sections[1].clone() };
        design.sections[0].diameter_mm = Some(24.0);
        assert_eq!(width_mm(&design, 1), Some(24.0));
        design.sections.push(taper);
        assert_eq!(width_mm(&design, 2), None);
    }
}
