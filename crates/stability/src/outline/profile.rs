//! The curve r(u) of one section and every integral that is taken of it.
//!
//! `u` runs from the front of the section towards the tail. Closed forms are used for
//! straight sides and for the dome, and for the side area of every shape; the shells of
//! the others are integrated by double-exponential quadrature, whose nodes are a table,
//! so that the result does not depend on the machine.

use quadrature::{clenshaw_curtis, double_exponential};
use std::f64::consts::PI;

use crate::design::units::within;

/// Relative accuracy asked of the quadrature.
const QUADRATURE_TOLERANCE: f64 = 1e-12;
/// How often a curve may be halved when it is turned into points.
const MAX_HALVINGS: u32 = 7;

/// The curve of one section, in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Profile {
    length: f64,
    curve: Curve,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Curve {
    /// From one radius to another along a straight line.
    Straight { front: f64, rear: f64 },
    /// From one radius to another along 3t² − 2t³, level at both ends.
    Rounded { front: f64, rear: f64 },
    /// Circular arc that ends parallel to the axis; `arc` is its radius.
    Ogive { base: f64, arc: f64 },
    /// Quarter ellipse.
    Ellipsoid { base: f64 },
    /// base · √(u / length).
    Paraboloid { base: f64 },
    /// Cap of a sphere of radius `ball`.
    Dome { base: f64, ball: f64 },
}

/// An area and its first moment about the front of the section.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct AreaMoments {
    /// ∫ dA
    pub(crate) area: f64,
    /// ∫ u dA
    pub(crate) first: f64,
}

/// The curved surface of the section as a thin shell, with its moments.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct ShellMoments {
    /// ∫ dS
    pub(crate) area: f64,
    /// ∫ u dS
    pub(crate) first: f64,
    /// ∫ u² dS
    pub(crate) second: f64,
    /// ∫ r² dS
    pub(crate) polar: f64,
}

/// A place `(u, r)` on the curve, with the parameter that it has there.
#[derive(Clone, Copy)]
struct Knot {
    s: f64,
    place: (f64, f64),
}

impl Profile {
    /// Straight sides from one radius to another: a cone, a tube, a neck or a taper.
    /// `None` unless the length is positive and a radius is.
    #[must_use]
    pub fn straight(front_m: f64, rear_m: f64, length_m: f64) -> Option<Self> {
        Self::between(front_m, rear_m, length_m, |front, rear| Curve::Straight {
            front,
            rear,
        })
    }

    /// A change of radius that is level at both ends. `None` as for `straight`.
    #[must_use]
    pub fn rounded(front_m: f64, rear_m: f64, length_m: f64) -> Option<Self> {
        Self::between(front_m, rear_m, length_m, |front, rear| Curve::Rounded {
            front,
            rear,
        })
    }

    fn between(
        front: f64,
        rear: f64,
        length: f64,
        curve: impl Fn(f64, f64) -> Curve,
    ) -> Option<Self> {
        let real = front >= 0.0 && rear >= 0.0 && front + rear > 0.0 && length > 0.0;
        (real && (front + rear + length).is_finite())
            .then(|| Self { length, curve: curve(front, rear) })
    }

    /// A tangent ogive. `None` unless its length is at least its radius: shorter, the arc
    /// would bulge beyond the base.
    #[must_use]
    pub fn ogive(base_m: f64, length_m: f64) -> Option<Self> {
        let fits = length_m >= base_m;
        // A circle through the tip that is level at the base. It is never smaller than
        // the length, but rounding may make it so where the ogive is half a ball.
        let arc = (base_m * base_m + length_m * length_m) / (2.0 * base_m);
        let arc = arc.max(length_m);
        Self::nose(base_m, length_m, Curve::Ogive { base: base_m, arc }).filter(|_| fits)
    }

    /// A quarter ellipse turned about the axis. `None` unless both sizes are positive.
    #[must_use]
    pub fn ellipsoid(base_m: f64, length_m: f64) -> Option<Self> {
        Self::nose(base_m, length_m, Curve::Ellipsoid { base: base_m })
    }

    /// A parabola turned about the axis. `None` unless both sizes are positive.
    #[must_use]
    pub fn paraboloid(base_m: f64, length_m: f64) -> Option<Self> {
        Self::nose(base_m, length_m, Curve::Paraboloid { base: base_m })
    }

    /// A cap cut off a sphere. `None` unless its length is at most its radius: longer, it
    /// would be more than half a sphere.
    #[must_use]
    pub fn dome(base_m: f64, length_m: f64) -> Option<Self> {
        let fits = length_m <= base_m;
        let ball = (base_m * base_m + length_m * length_m) / (2.0 * length_m);
        Self::nose(base_m, length_m, Curve::Dome { base: base_m, ball }).filter(|_| fits)
    }

    fn nose(base: f64, length: f64, curve: Curve) -> Option<Self> {
        let real = base > 0.0 && length > 0.0 && (base + length).is_finite();
        real.then_some(Self { length, curve })
    }

    /// Length along the axis, in metres.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.length
    }

    /// Radius at the front end, in metres.
    #[must_use]
    pub fn front_radius_m(&self) -> f64 {
        match self.curve {
            Curve::Straight { front, .. } | Curve::Rounded { front, .. } => front,
            Curve::Ogive { .. }
            | Curve::Ellipsoid { .. }
            | Curve::Paraboloid { .. }
            | Curve::Dome { .. } => 0.0,
        }
    }

    /// Radius at the rear end, in metres.
    #[must_use]
    pub fn rear_radius_m(&self) -> f64 {
        match self.curve {
            Curve::Straight { rear, .. } | Curve::Rounded { rear, .. } => rear,
            Curve::Ogive { base, .. }
            | Curve::Ellipsoid { base }
            | Curve::Paraboloid { base }
            | Curve::Dome { base, .. } => base,
        }
    }

    /// Radius at `u` metres behind the front end, in metres; `u` is held within the
    /// section.
    #[must_use]
    pub fn radius_m(&self, u: f64) -> f64 {
        let u = within(u, (0.0, self.length));
        let t = u / self.length;
        match self.curve {
            Curve::Straight { front, rear } => front + (rear - front) * t,
            Curve::Rounded { front, rear } => {
                front + (rear - front) * t * t * (3.0 - 2.0 * t)
            }
            Curve::Ogive { base, arc } => {
                // √(arc² − v²) − centre, written so that a slim ogive loses no digits.
                let centre = arc - base;
                u * (2.0 * self.length - u) / (self.half_chord(arc, u) + centre)
            }
            Curve::Ellipsoid { base } => base * (t * (2.0 - t)).sqrt(),
            Curve::Paraboloid { base } => base * t.sqrt(),
            Curve::Dome { ball, .. } => (u * (2.0 * ball - u)).max(0.0).sqrt(),
        }
        .max(0.0)
    }

    /// √(arc² − v²), with `v` measured from the base of an ogive. Positive behind the tip.
    fn half_chord(&self, arc: f64, u: f64) -> f64 {
        let v = self.length - u;
        ((arc - self.length + u) * (arc + v)).sqrt()
    }

    /// r ds/du: how much shell a slice of the section has, divided by 2π. Finite even at
    /// a blunt tip, where ds/du is not.
    fn shell_rate(&self, u: f64) -> f64 {
        let l = self.length;
        let t = u / l;
        match self.curve {
            Curve::Straight { front, rear } => {
                let slope = (rear - front) / l;
                self.radius_m(u) * (1.0 + slope * slope).sqrt()
            }
            Curve::Rounded { front, rear } => {
                let slope = (rear - front) * 6.0 * t * (1.0 - t) / l;
                self.radius_m(u) * (1.0 + slope * slope).sqrt()
            }
            Curve::Ogive { arc, .. } => self.radius_m(u) * arc / self.half_chord(arc, u),
            Curve::Ellipsoid { base } => {
                let slope = base * (1.0 - t) / l;
                let r = self.radius_m(u);
                (r * r + slope * slope * base * base).sqrt()
            }
            Curve::Paraboloid { base } => {
                let half_slope = base / (2.0 * l);
                base * (t + half_slope * half_slope).sqrt()
            }
            Curve::Dome { ball, .. } => ball,
        }
    }

    /// The side area (both sides of the axis) and its first moment about the front, in m²
    /// and m³. Closed form for every shape.
    pub(crate) fn side(&self) -> AreaMoments {
        let l = self.length;
        let (area, first) = match self.curve {
            Curve::Straight { front, rear } => {
                (l * (front + rear), l * l * (front + 2.0 * rear) / 3.0)
            }
            // ∫ 3t² − 2t³ = 1/2, ∫ t (3t² − 2t³) = 3/4 − 2/5
            Curve::Rounded { front, rear } => {
                (l * (front + rear), l * l * (front + 0.7 * (rear - front)))
            }
            Curve::Ogive { base, arc } => {
                // With v measured from the base: r = √(arc² − v²) − centre.
                let centre = arc - base;
                let angle = libm::asin(l / arc);
                let half_area = 0.5 * (arc * arc * angle - l * centre);
                // (arc³ − centre³)/3 − centre·l²/2, with l² = arc² − centre² multiplied out.
                let about_base = base * base * (3.0 * arc - base) / 6.0;
                (2.0 * half_area, 2.0 * (l * half_area - about_base))
            }
            Curve::Ellipsoid { base } => {
                let area = PI * l * base / 2.0;
                (area, area * l * (1.0 - 4.0 / (3.0 * PI)))
            }
            Curve::Paraboloid { base } => {
                (4.0 / 3.0 * base * l, 4.0 / 5.0 * base * l * l)
            }
            Curve::Dome { base, ball } => {
                // A segment of a circle, centred `ball` behind the tip.
                let centre = ball - l;
                let angle = libm::atan2(base, centre);
                let area = ball * ball * angle - base * centre;
                (area, ball * area - 2.0 / 3.0 * base * base * base)
            }
        };
        AreaMoments { area, first }
    }

    /// How far the side area spreads along the axis: its mean square distance from its
    /// centroid, in m², by Gauss's rule of five points (exact for straight and rounded
    /// sides, within 1 % for the others).
    pub(crate) fn side_spread_m2(&self) -> f64 {
        // Abramowitz & Stegun, table 25.4: places in −1..1 and their weights.
        const POINTS: [(f64, f64); 5] = [
            (-0.906_179_845_938_664, 0.236_926_885_056_189),
            (-0.538_469_310_105_683, 0.478_628_670_499_366),
            (0.0, 0.568_888_888_888_889),
            (0.538_469_310_105_683, 0.478_628_670_499_366),
            (0.906_179_845_938_664, 0.236_926_885_056_189),
        ];
        let (mut area, mut first, mut second) = (0.0, 0.0, 0.0);
        for (place, weight) in POINTS {
            let u = self.length * (1.0 + place) / 2.0;
            let slice = weight * self.radius_m(u);
            area += slice;
            first += slice * u;
            second += slice * u * u;
        }
        let centre = first / area;
        second / area - centre * centre
    }

    /// The curved surface as a thin shell, open at both ends, in m² to m⁴.
    pub(crate) fn shell(&self) -> ShellMoments {
        let l = self.length;
        match self.curve {
            Curve::Straight { front, rear } => {
                let slope = (rear - front) / l;
                let k = 2.0 * PI * (1.0 + slope * slope).sqrt() * l;
                ShellMoments {
                    area: k * (front + rear) / 2.0,
                    first: k * l * (front + 2.0 * rear) / 6.0,
                    second: k * l * l * (front + 3.0 * rear) / 12.0,
                    polar: k * (front + rear) * (front * front + rear * rear) / 4.0,
                }
            }
            Curve::Dome { ball, .. } => {
                let k = 2.0 * PI * ball * l;
                ShellMoments {
                    area: k,
                    first: k * l / 2.0,
                    second: k * l * l / 3.0,
                    polar: k * l * (ball - l / 3.0),
                }
            }
            Curve::Rounded { .. }
            | Curve::Ogive { .. }
            | Curve::Ellipsoid { .. }
            | Curve::Paraboloid { .. } => self.shell_by_quadrature(),
        }
    }

    fn shell_by_quadrature(&self) -> ShellMoments {
        let moment = |weight: &dyn Fn(f64) -> f64| {
            self.integral(&|u| self.shell_rate(u) * weight(u)) * 2.0 * PI
        };
        ShellMoments {
            area: moment(&|_| 1.0),
            first: moment(&|u| u),
            second: moment(&|u| u * u),
            polar: moment(&|u| {
                let r = self.radius_m(u);
                r * r
            }),
        }
    }

    /// What the section encloses, in cubic metres.
    #[must_use]
    pub fn volume_m3(&self) -> f64 {
        let l = self.length;
        match self.curve {
            Curve::Straight { front, rear } => {
                PI * l * (front * front + front * rear + rear * rear) / 3.0
            }
            // ∫ s = 1/2 and ∫ s² = 13/35 for s = 3t² − 2t³.
            Curve::Rounded { front, rear } => {
                let by = rear - front;
                PI * l * (front * front + front * by + 13.0 / 35.0 * by * by)
            }
            Curve::Ellipsoid { base } => PI * base * base * l * 2.0 / 3.0,
            Curve::Paraboloid { base } => PI * base * base * l / 2.0,
            Curve::Dome { ball, .. } => PI * l * l * (ball - l / 3.0),
            // The closed form loses the digits of a slim ogive.
            Curve::Ogive { .. } => self.volume_by_quadrature(),
        }
    }

    fn volume_by_quadrature(&self) -> f64 {
        PI * self.integral(&|u| {
            let r = self.radius_m(u);
            r * r
        })
    }

    /// ∫ k dS and ∫ u k dS of the cross-section S(u), in m² and m³: how the section
    /// widens, with `k` 1 where it grows and `shrinking(half_angle_rad)` where it
    /// narrows at that angle to the axis. `bends` are the angles at which that function
    /// may bend.
    pub(crate) fn growth(
        &self,
        shrinking: &dyn Fn(f64) -> f64,
        bends: &[f64],
    ) -> AreaMoments {
        let l = self.length;
        let (front, rear) = (self.front_radius_m(), self.rear_radius_m());
        let rear_area = PI * rear * rear;
        let whole = AreaMoments {
            area: rear_area - PI * front * front,
            first: l * rear_area - self.volume_m3(),
        };
        if rear >= front {
            return whole;
        }
        let narrows = (front - rear) / l;
        match self.curve {
            Curve::Rounded { .. } => {
                // The slope is 6t(1 − t) times the mean one; the places where it passes a
                // bend divide the section, so that each piece is smooth.
                let mut cuts = vec![0.0, l];
                for &bend in bends {
                    let inner = 1.0 - 2.0 / 3.0 * libm::tan(bend) / narrows;
                    if inner > 0.0 {
                        let off = inner.sqrt() / 2.0;
                        // In order, of which there are few: a sort is 2 KB of a first visit.
                        for cut in [l * (0.5 - off), l * (0.5 + off)] {
                            let before = cuts.iter().take_while(|c| **c < cut).count();
                            cuts.insert(before, cut);
                        }
                    }
                }
                let weight = |u: f64| {
                    let t = u / l;
                    let slope = narrows * 6.0 * t * (1.0 - t);
                    -2.0 * PI * self.radius_m(u) * slope * shrinking(libm::atan(slope))
                };
                // Smooth to the ends of each piece, where this rule needs fewest points.
                let piece = |f: &dyn Fn(f64) -> f64, from: f64, to: f64| {
                    let size = weight(f64::midpoint(from, to)).abs();
                    if size == 0.0 {
                        return 0.0;
                    }
                    let unit = |t: f64| f(from + (to - from) * t) / (size * l);
                    let sum = clenshaw_curtis::integrate(unit, 0.0, 1.0, 1e-9);
                    sum.integral * size * l * (to - from)
                };
                let over = |f: &dyn Fn(f64) -> f64| -> f64 {
                    cuts.windows(2).map(|w| piece(f, w[0], w[1])).sum()
                };
                AreaMoments { area: over(&weight), first: over(&|u| u * weight(u)) }
            }
            _ => {
                let k = shrinking(libm::atan(narrows));
                AreaMoments { area: k * whole.area, first: k * whole.first }
            }
        }
    }

    /// ∫ f du over the section.
    fn integral(&self, f: &dyn Fn(f64) -> f64) -> f64 {
        integral(f, 0.0, self.length)
    }

    /// Points `(u, r)` from the front end to the rear end, no further than `tolerance_m`
    /// from the curve (up to 128 chords).
    pub(crate) fn points_m(&self, tolerance_m: f64) -> Vec<(f64, f64)> {
        let mut points = vec![(0.0, self.front_radius_m())];
        if !matches!(self.curve, Curve::Straight { .. }) {
            self.halve(
                self.knot(0.0),
                self.knot(1.0),
                tolerance_m,
                MAX_HALVINGS,
                &mut points,
            );
        }
        points.push((self.length, self.rear_radius_m()));
        points
    }

    /// The place at parameter `s` of 0 to 1. Squared, so that points crowd at a blunt tip.
    fn knot(&self, s: f64) -> Knot {
        let u = match self.curve {
            Curve::Straight { .. } | Curve::Rounded { .. } => self.length * s,
            Curve::Ogive { .. }
            | Curve::Ellipsoid { .. }
            | Curve::Paraboloid { .. }
            | Curve::Dome { .. } => self.length * s * s,
        };
        Knot { s, place: (u, self.radius_m(u)) }
    }

    fn halve(
        &self,
        a: Knot,
        b: Knot,
        tolerance: f64,
        left: u32,
        out: &mut Vec<(f64, f64)>,
    ) {
        // An S-curve crosses its chord in the middle, so two more places are looked at.
        let between = [0.25, 0.5, 0.75].map(|k| self.knot(a.s + (b.s - a.s) * k));
        let strays = between
            .iter()
            .any(|knot| distance_to_chord(knot.place, a.place, b.place) > tolerance);
        if left == 0 || !strays {
            return;
        }
        let middle = between[1];
        self.halve(a, middle, tolerance, left - 1, out);
        out.push(middle.place);
        self.halve(middle, b, tolerance, left - 1, out);
    }
}

/// ∫ f from `from` to `to`.
///
/// The library's stopping rule compares absolute sizes, so it is given an integral of
/// order one: over 0 to 1, of f divided by its size in the middle and at the end.
fn integral(f: &dyn Fn(f64) -> f64, from: f64, to: f64) -> f64 {
    let length = to - from;
    let at = |t: f64| f(from + length * t);
    let size = at(0.5).abs().max(at(1.0).abs());
    if size == 0.0 || length == 0.0 {
        return 0.0;
    }
    let unit = |t: f64| at(t) / size;
    let sum = double_exponential::integrate(unit, 0.0, 1.0, QUADRATURE_TOLERANCE);
    sum.integral * size * length
}

/// Distance of a point from the line through two others.
fn distance_to_chord(p: (f64, f64), a: (f64, f64), b: (f64, f64)) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let length = (dx * dx + dy * dy).sqrt();
    if length == 0.0 {
        return 0.0;
    }
    ((p.0 - a.0) * dy - (p.1 - a.1) * dx).abs() / length
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shapes() -> Vec<(&'static str, Profile)> {
        let (r, l) = (0.045, 0.13);
        vec![
            ("cone", Profile::straight(0.0, r, l)),
            ("tube", Profile::straight(r, r, l)),
            ("straight taper", Profile::straight(r, 0.014, l)),
            ("rounded taper", Profile::rounded(r, 0.014, l)),
            ("ogive", Profile::ogive(r, l)),
            ("ellipsoid", Profile::ellipsoid(r, l)),
            ("paraboloid", Profile::paraboloid(r, l)),
            ("flat dome", Profile::dome(r, 0.02)),
            ("half sphere", Profile::dome(r, r)),
        ]
        .into_iter()
        .map(|(name, profile)| (name, profile.expect(name)))
        .collect()
    }

    fn close(a: f64, b: f64, tolerance: f64) -> bool {
        (a - b).abs() <= tolerance * b.abs()
    }

    /// Found by fuzzing: for some sizes the arc came out smaller than the length.
    #[test]
    fn every_ogive_that_is_half_a_ball_is_one() {
        for tenths in 5..=2500 {
            let r = f64::from(tenths) * 0.1 / 1000.0;
            let profile = Profile::ogive(r, r).unwrap();
            let (side, shell) = (profile.side(), profile.shell());
            for (value, expected) in [
                (side.area, PI * r * r / 2.0),
                (side.first, PI * r * r / 2.0 * (r - 4.0 * r / (3.0 * PI))),
                (shell.area, 2.0 * PI * r * r),
                (shell.first, PI * r * r * r),
                (profile.volume_m3(), 2.0 / 3.0 * PI * r * r * r),
            ] {
                assert!((value / expected - 1.0).abs() < 1e-6, "{r}: {value} {expected}");
            }
        }
    }

    #[test]
    fn side_area_agrees_with_quadrature() {
        for (name, profile) in shapes() {
            let side = profile.side();
            let area = 2.0 * profile.integral(&|u| profile.radius_m(u));
            let first = 2.0 * profile.integral(&|u| u * profile.radius_m(u));
            assert!(close(side.area, area, 1e-9), "{name}: {} {area}", side.area);
            assert!(close(side.first, first, 1e-9), "{name}: {} {first}", side.first);
        }
    }

    #[test]
    fn closed_volumes_agree_with_quadrature() {
        for (name, profile) in shapes() {
            let (closed, sum) = (profile.volume_m3(), profile.volume_by_quadrature());
            assert!(close(closed, sum, 1e-9), "{name}");
        }
    }

    /// Growth counted in full is the difference of the two end areas, and a shoulder in
    /// pieces is the same as in one.
    #[test]
    fn growth_in_full_and_in_pieces() {
        for (name, profile) in shapes() {
            let full = profile.growth(&|_| 1.0, &[]);
            let ends = |r: f64| PI * r * r;
            let by = ends(profile.rear_radius_m()) - ends(profile.front_radius_m());
            assert!((full.area - by).abs() < 1e-12, "{name}");
            let pieces = profile.growth(&|_| 1.0, &[0.1, 0.2, 0.3, 1.5]);
            assert!((full.area - pieces.area).abs() < 1e-11, "{name}");
            assert!((full.first - pieces.first).abs() < 1e-12, "{name}");
        }
    }

    #[test]
    fn closed_shells_agree_with_quadrature() {
        for (name, profile) in shapes() {
            let (closed, sum) = (profile.shell(), profile.shell_by_quadrature());
            assert!(close(closed.area, sum.area, 1e-9), "{name}");
            assert!(close(closed.first, sum.first, 1e-9), "{name}");
            assert!(close(closed.second, sum.second, 1e-9), "{name}");
            assert!(close(closed.polar, sum.polar, 1e-9), "{name}");
        }
    }

    #[test]
    fn shell_area_agrees_with_the_points() {
        for (name, profile) in shapes() {
            let rings: f64 = profile
                .points_m(1e-6)
                .windows(2)
                .map(|w| {
                    let ((u0, r0), (u1, r1)) = (w[0], w[1]);
                    PI * (r0 + r1) * libm::hypot(u1 - u0, r1 - r0)
                })
                .sum();
            assert!(close(rings, profile.shell().area, 1e-3), "{name}");
        }
    }

    #[test]
    fn points_stay_near_the_curve_and_run_rearwards() {
        for (name, profile) in shapes() {
            let points = profile.points_m(2e-5);
            assert!(points.len() <= 130, "{name}: {}", points.len());
            for w in points.windows(2) {
                let ((u0, r0), (u1, r1)) = (w[0], w[1]);
                assert!(u1 > u0, "{name}");
                for k in 1..10 {
                    let f = f64::from(k) / 10.0;
                    let u = u0 + (u1 - u0) * f;
                    let p = (u, profile.radius_m(u));
                    let off = distance_to_chord(p, (u0, r0), (u1, r1));
                    assert!(off < 1e-4, "{name}: {off} at {u}");
                }
            }
        }
    }

    #[test]
    fn the_two_ends_are_where_they_should_be() {
        for (name, profile) in shapes() {
            let (front, rear) = (profile.radius_m(0.0), profile.radius_m(9.0));
            assert!((front - profile.front_radius_m()).abs() < 1e-12, "{name}");
            assert!((rear - profile.rear_radius_m()).abs() < 1e-12, "{name}");
        }
    }

    #[test]
    fn shapes_that_do_not_exist_are_refused() {
        assert_eq!(Profile::ogive(0.05, 0.04), None);
        assert_eq!(Profile::dome(0.05, 0.06), None);
        assert_eq!(Profile::straight(0.0, 0.0, 0.1), None);
        assert_eq!(Profile::straight(0.1, -0.1, 0.1), None);
        assert_eq!(Profile::rounded(0.1, f64::NAN, 0.1), None);
        assert_eq!(Profile::ellipsoid(0.1, 0.0), None);
        assert_eq!(Profile::paraboloid(f64::INFINITY, 0.1), None);
    }

    /// A sphere's volume: MathWorld, "Sphere"; a cone's: MathWorld, "Cone".
    #[test]
    fn volumes_of_known_solids() {
        let half_sphere = Profile::dome(0.05, 0.05).unwrap();
        let expected = 2.0 / 3.0 * PI * 0.05 * 0.05 * 0.05;
        assert!(close(half_sphere.volume_m3(), expected, 1e-9));
        let cone = Profile::straight(0.0, 0.05, 0.12).unwrap();
        assert!(close(cone.volume_m3(), PI * 0.05 * 0.05 * 0.12 / 3.0, 1e-9));
    }
}
