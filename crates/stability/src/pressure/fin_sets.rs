//! Several sets of fins on one body: how they shade one another, and which fly in the
//! wake of others.

use crate::design::Design;
use crate::outline::fin::Fin;

/// Beyond four at one place, fins shade one another: this many count. Lower bound, our
/// judgement.
const MOST_FINS: f64 = 4.0;
/// A set counts as flying in another's wake from this share on. Our judgement.
const WAKE_TOLD: f64 = 0.5;

/// What the other sets leave of one set's lift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Crowd {
    /// Share that counts beside the fins at the same place: 1 for up to four fins, n of
    /// them count as four.
    pub(crate) share: f64,
    /// How much of the set is behind another one: 0 beside or ahead of all others, 1
    /// behind one of them altogether.
    pub(crate) in_wake: f64,
}

impl Crowd {
    /// Whether the set flies in another's wake.
    pub(crate) fn is_in_wake(self) -> bool {
        self.in_wake >= WAKE_TOLD
    }
}

/// Every set's crowd. Sets that overlap along the body count together, as far as they
/// overlap, so that nothing jumps when one is moved along.
pub(crate) fn crowds(design: &Design) -> Vec<Crowd> {
    let extents: Vec<(f64, f64)> = design
        .fins
        .iter()
        .map(|set| {
            let front_mm = set.start_mm;
            (front_mm, front_mm + Fin::new(&set.planform).reach_m() * 1000.0)
        })
        .collect();
    (0..extents.len())
        .map(|i| {
            let mut fins = f64::from(design.fins[i].count);
            let mut in_wake: f64 = 0.0;
            for j in (0..extents.len()).filter(|&j| j != i) {
                let beside = overlap(extents[i], extents[j]);
                fins += f64::from(design.fins[j].count) * beside;
                if extents[j].0 < extents[i].0 {
                    in_wake = in_wake.max(1.0 - beside);
                }
            }
            Crowd { share: (MOST_FINS / fins).min(1.0), in_wake }
        })
        .collect()
}

/// The length that two stretches share, as a share of the shorter one.
fn overlap(a: (f64, f64), b: (f64, f64)) -> f64 {
    let shorter = (a.1 - a.0).min(b.1 - b.0);
    let both = a.1.min(b.1) - a.0.max(b.0);
    if shorter > 0.0 { (both / shorter).clamp(0.0, 1.0) } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    fn two_sets(start_mm: f64) -> Vec<Crowd> {
        let mut design = Example::Puffin.design();
        let mut second = design.fins[0].clone();
        second.start_mm = start_mm;
        second.roll_deg = 45.0;
        design.fins.push(second);
        crowds(&design)
    }

    #[test]
    fn one_set_of_four_stands_alone() {
        let alone = Crowd { share: 1.0, in_wake: 0.0 };
        assert_eq!(crowds(&Example::Puffin.design()), [alone]);
    }

    #[test]
    fn sets_side_by_side_count_together() {
        let crowd = Crowd { share: 0.5, in_wake: 0.0 };
        assert_eq!(two_sets(215.0), [crowd, crowd]);
    }

    /// The set that is further forward flies in clean air.
    #[test]
    fn a_set_behind_another_is_in_its_wake() {
        let [behind, ahead] = two_sets(105.0)[..] else { panic!() };
        assert_eq!(ahead, Crowd { share: 1.0, in_wake: 0.0 });
        assert_eq!(behind, Crowd { share: 1.0, in_wake: 1.0 });
        assert!(behind.is_in_wake() && !ahead.is_in_wake());
    }

    #[test]
    fn nothing_jumps_as_a_set_is_moved_along() {
        let mut last = two_sets(100.0);
        for k in 0..1500 {
            let next = two_sets(100.0 + 0.1 * f64::from(k));
            for (a, b) in last.iter().zip(&next) {
                assert!((a.share - b.share).abs() < 0.01, "{a:?} {b:?}");
                assert!((a.in_wake - b.in_wake).abs() < 0.01, "{a:?} {b:?}");
            }
            last = next;
        }
    }
}
