//! A rounded shape as leaves that stand side by side on a band: each is as wide at every height
//! as its share of the girth there, measured along the side.

use std::f64::consts::PI;

use noseward_words as texts;

use super::piece::{Label, Piece};
use crate::scene::{Path, Point};

/// How high the band is, in millimetres.
pub(super) const BAND_MM: f64 = 12.0;
/// How far the tab at its end reaches, and a small tab of a leaf.
pub(super) const TAB_MM: f64 = 10.0;
const TOOTH_MM: f64 = 4.0;
/// How long a small tab is, about.
const TOOTH_LONG_MM: f64 = 14.0;
/// Between a small tab and the next leaf.
const FREE_MM: f64 = 0.8;
/// Leaves are about so wide.
const LEAF_MM: f64 = 36.0;
/// How many there are, fewest and most.
const LEAVES: (u32, u32) = (6, 12);

/// A rounded shape cut into equal leaves.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Leaves {
    /// How many.
    pub(super) count: u32,
    /// Along the side from the wide end, and half the width of a leaf there, in millimetres.
    pub(super) half: Vec<(f64, f64)>,
    /// Whether the wide end is the front.
    pub(super) wide_front: bool,
}

impl Leaves {
    /// Of a side from front to rear: places along the axis and radii, in millimetres.
    pub(super) fn new(side: &[(f64, f64)]) -> Self {
        let radius = |at: Option<&(f64, f64)>| at.map_or(0.0, |at| at.1);
        let wide_front = radius(side.first()) > radius(side.last());
        let from_wide: Vec<(f64, f64)> =
            if wide_front { side.to_vec() } else { side.iter().rev().copied().collect() };
        let widest = radius(from_wide.first());
        let wanted = 2.0 * PI * widest / LEAF_MM;
        let mut count = LEAVES.0;
        while count < LEAVES.1 && f64::from(count) < wanted {
            count += 2;
        }
        let (mut run, mut half) = (0.0, Vec::new());
        let mut last = from_wide.first().copied();
        for at in from_wide {
            if let Some((x, radius)) = last.replace(at) {
                run += libm::hypot(at.0 - x, at.1 - radius);
            }
            half.push((run, PI * at.1 / f64::from(count)));
        }
        Self { count, half, wide_front }
    }

    /// How wide a leaf is where it stands on the band.
    pub(super) fn width(&self) -> f64 {
        2.0 * self.half.first().map_or(0.0, |at| at.1)
    }

    /// Whether leaves lean in from where they stand, so that the band has to be folded there.
    fn leans(&self) -> bool {
        const LEAST_SINE: f64 = 0.25;
        let [(_, wide), (run, next), ..] = self.half[..] else { return false };
        // Of a leaf so much of the girth is seen.
        let narrows = (wide - next) * f64::from(self.count) / PI;
        narrows > LEAST_SINE * run
    }

    fn length(&self) -> f64 {
        self.half.last().map_or(0.0, |at| at.0)
    }

    fn half_at(&self, run: f64) -> f64 {
        let next = self.half.partition_point(|at| at.0 < run);
        let at = |i: usize| self.half.get(i).copied();
        match (next.checked_sub(1).and_then(at), at(next)) {
            (Some((x, a)), Some((z, b))) if z > x => a + (b - a) * (run - x) / (z - x),
            (_, Some((_, half))) | (Some((_, half)), None) => half,
            (None, None) => 0.0,
        }
    }

    /// Where the small tabs of a leaf begin and end along its side: where its neighbour leaves
    /// room for them, and not on its very tip.
    fn teeth(&self) -> Vec<(f64, f64)> {
        const STEP_MM: f64 = 0.5;
        let (width, length) = (self.width(), self.length());
        let mut from = 0.0;
        while from < length && width - 2.0 * self.half_at(from) < TOOTH_MM + FREE_MM {
            from += STEP_MM;
        }
        let mut to = length - 2.0;
        while to > from && self.half_at(to) < 1.5 {
            to -= STEP_MM;
        }
        let count = ((to - from) / TOOTH_LONG_MM).round();
        let mut teeth = Vec::new();
        let mut k = 0.0;
        while k < count {
            let at = |k: f64| from + (to - from) * k / count;
            teeth.push((at(k), at(k + 1.0)));
            k += 1.0;
        }
        teeth
    }

    /// Some leaves beside each other on their band, with the tab at its end.
    pub(super) fn piece(&self, leaves: u32, said: &str) -> Piece {
        let (width, length) = (self.width(), self.length());
        let end = width * f64::from(leaves);
        let at = |x: f64, run: f64| Point { x, y: length - run };
        let mut cut = vec![at(0.0, -BAND_MM)];
        let mut folds = Path::default();
        let teeth = self.teeth();
        for leaf in 0..leaves {
            let middle = width * (f64::from(leaf) + 0.5);
            cut.extend(self.half.iter().map(|&(run, half)| at(middle - half, run)));
            let down = self.half.iter().rev();
            let plain = down.map(|&(run, half)| (run, at(middle + half, run)));
            let right = |run: f64| at(middle + self.half_at(run), run);
            let mut waiting = teeth.iter().rev().peekable();
            for (run, point) in plain {
                while let Some(&&(from, to)) = waiting.peek().filter(|t| t.1 > run) {
                    cut.extend(tooth(right(from), right(to)));
                    waiting.next();
                }
                if teeth.iter().all(|&(from, to)| run <= from || run >= to) {
                    cut.push(point);
                }
            }
            for &(from, to) in &teeth {
                folds.line(right(from), right(to));
            }
            if self.leans() {
                let half = width / 2.0 - FREE_MM;
                folds.line(at(middle - half, 0.0), at(middle + half, 0.0));
            }
        }
        cut.dedup();
        cut.extend([
            at(end + TAB_MM, -2.0),
            at(end + TAB_MM, 2.0 - BAND_MM),
            at(end, -BAND_MM),
        ]);
        let marks = Path::open(vec![at(end, 0.0), at(end, -BAND_MM)]);
        Piece { cut, folds, marks, words: self.words(end, said) }.at_home()
    }

    fn words(&self, end: f64, said: &str) -> Vec<Label> {
        let (x, y) = (end / 2.0, self.length() + BAND_MM / 2.0);
        let narrow = self.half.last().is_some_and(|at| at.1 > 0.0);
        let (shift, room) = if narrow { (2.6, 4.6) } else { (0.0, 6.0) };
        let label =
            |y: f64, said: &str| Label::new(Point { x, y }, (end - 6.0, room), 0.0, said);
        let mut words: Vec<Label> = label(y - shift, said).into_iter().collect();
        if narrow {
            let end = if self.wide_front {
                texts::paper_parts_narrow_rear()
            } else {
                texts::paper_parts_narrow_front()
            };
            words.extend(label(y + shift, end.as_str()));
        }
        words
    }
}

/// A small tab on the right of an edge that goes up from `low` to `high`: from above, downwards.
fn tooth(low: Point, high: Point) -> [Point; 4] {
    let (dx, dy) = (high.x - low.x, high.y - low.y);
    let long = libm::hypot(dx, dy);
    let at = |share: f64, out: f64| Point {
        x: low.x + dx * share - dy / long * out,
        y: low.y + dy * share + dx / long * out,
    };
    let aside = (TOOTH_MM * 0.6 / long).min(0.3);
    [high, at(1.0 - aside, TOOTH_MM), at(aside, TOOTH_MM), low]
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Body, Example, Profile, Section, SectionKind};

    /// The side of a section behind which a tube of 90 mm follows, at 0.02 mm.
    fn side(
        kind: SectionKind,
        length_mm: f64,
        wide_mm: f64,
    ) -> (Vec<(f64, f64)>, Profile) {
        let mut design = Example::Puffin.design();
        let nose = Section { kind, length_mm, ..design.sections[0].clone() };
        design.sections = vec![
            Section { diameter_mm: Some(wide_mm), ..nose.clone() },
            Section { kind: SectionKind::Tube, diameter_mm: Some(wide_mm), ..nose },
        ];
        let stretch = Body::new(&design).unwrap().stretches()[0];
        let points = stretch.outline_m(2e-5).into_iter();
        (points.map(|(x, r)| (x * 1000.0, r * 1000.0)).collect(), stretch.profile)
    }

    fn area_mm2(leaves: &Leaves) -> f64 {
        let strip = |w: &[(f64, f64)]| (w[1].0 - w[0].0) * (w[0].1 + w[1].1);
        leaves.half.windows(2).map(strip).sum::<f64>() * f64::from(leaves.count)
    }

    /// On half a ball of radius R the girth at s from the rim is 2π R cos(s / R), and its
    /// surface is 2π R² (MathWorld, "Sphere").
    #[test]
    fn leaves_of_half_a_ball_are_together_as_wide_as_its_girth() {
        let leaves = Leaves::new(&side(SectionKind::Dome, 45.0, 90.0).0);
        for &(run, half) in &leaves.half {
            let girth = 2.0 * PI * 45.0 * libm::cos(run / 45.0);
            let all = 2.0 * half * f64::from(leaves.count);
            assert!((all - girth).abs() < 0.1, "{run}: {all} {girth}");
        }
        assert!((leaves.length() - 45.0 * PI / 2.0).abs() < 0.02);
        assert!((area_mm2(&leaves) / (2.0 * PI * 45.0 * 45.0) - 1.0).abs() < 2e-3);
    }

    /// ∫ 2π r √(1 + r'²) du by the midpoint rule, with u = length · t³ so that it is tame at a
    /// blunt tip.
    #[test]
    fn leaves_have_the_surface_by_quadrature() {
        for (kind, length) in [
            (SectionKind::Ogive, 120.0),
            (SectionKind::Ellipsoid, 120.0),
            (SectionKind::Paraboloid, 60.0),
            (SectionKind::Dome, 20.0),
        ] {
            let (side, profile) = side(kind, length, 90.0);
            let steps = 20_000_u32;
            let place = |k: u32| {
                let t = f64::from(k) / f64::from(steps);
                let u = length * t * t * t;
                (u, profile.radius_m(u / 1000.0) * 1000.0)
            };
            let ring = |k: u32| {
                let ((u, r), (v, s)) = (place(k), place(k + 1));
                PI * (r + s) * libm::hypot(v - u, s - r)
            };
            let wanted: f64 = (0..steps).map(ring).sum();
            let found = area_mm2(&Leaves::new(&side));
            assert!((found / wanted - 1.0).abs() < 1e-3, "{kind:?}: {found} {wanted}");
        }
    }

    #[test]
    fn the_band_is_folded_where_leaves_lean_in() {
        let leans = |kind, length| Leaves::new(&side(kind, length, 90.0).0).leans();
        assert!(leans(SectionKind::Dome, 20.0) && leans(SectionKind::Paraboloid, 60.0));
        assert!(!leans(SectionKind::Dome, 45.0) && !leans(SectionKind::Ogive, 90.0));
    }

    #[test]
    fn small_tabs_keep_off_the_next_leaf() {
        for (kind, length) in [
            (SectionKind::Ogive, 120.0),
            (SectionKind::Ellipsoid, 120.0),
            (SectionKind::Dome, 20.0),
        ] {
            let leaves = Leaves::new(&side(kind, length, 90.0).0);
            let teeth = leaves.teeth();
            assert!(!teeth.is_empty() || kind == SectionKind::Dome);
            let width = leaves.width();
            let right = |run: f64| Point { x: leaves.half_at(run), y: -run };
            for (from, to) in teeth {
                for p in tooth(right(from), right(to)) {
                    let next = width - leaves.half_at(-p.y);
                    assert!(p.x < next, "{kind:?}: {p:?} {next}");
                }
            }
        }
    }
}
