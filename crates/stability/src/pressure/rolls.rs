//! The rolls in which a rocket may meet the wind. A flying rocket rolls, so the least
//! favourable one counts.

use crate::design::Design;
use crate::outline::Body;
use crate::outline::side_view::SideView;

/// Two rolls this close, in degrees, are one.
const SAME_DEG: f64 = 1e-9;

/// The angles in degrees by which to turn a rocket to see it in every way that may be the
/// least or the most favourable: 0, the view of the drawing, and all others at which the
/// fins of some set are seen as wide or as narrow as they can be.
///
/// A search in small steps finds no roll that is less favourable by more than half a
/// millimetre of separation: a test says so.
fn telling_rolls_deg(design: &Design) -> Vec<f64> {
    rolls_deg(design, 2)
}

/// The same in so many steps from one fin to the next.
fn rolls_deg(design: &Design, steps: u32) -> Vec<f64> {
    let turns: Vec<u32> = design.fins.iter().map(|set| repeats(set.count)).collect();
    let common = turns.iter().copied().reduce(gcd).unwrap_or(1);
    let period_deg = 180.0 / f64::from(common);
    let mut rolls = vec![0.0];
    for (set, &repeats) in design.fins.iter().zip(&turns) {
        let step_deg = 180.0 / f64::from(repeats * steps);
        for k in 0..steps * repeats / common {
            let roll = step_deg * f64::from(k) - set.roll_deg;
            let roll = roll.rem_euclid(period_deg);
            let known = |&r: &f64| {
                let off = (r - roll).abs();
                off < SAME_DEG || period_deg - off < SAME_DEG
            };
            if !rolls.iter().any(known) {
                rolls.push(roll);
            }
        }
    }
    rolls
}

/// How often the side view of so many equal fins repeats itself, but for left and right,
/// in half a turn.
fn repeats(count: u32) -> u32 {
    let count = count.max(1);
    if count.is_multiple_of(2) { count / 2 } else { count }
}

fn gcd(a: u32, b: u32) -> u32 {
    if b == 0 { a } else { gcd(b, a % b) }
}

/// The centre of pressure side-on in many rolls, the telling ones among them, in metres from
/// the nose tip. Between those more of the fins may be seen than at any of them, since they
/// lie less behind one another.
pub(crate) fn side_on_over_rolls_m(
    design: &Design,
    body: &Body,
    view: &SideView,
) -> Vec<f64> {
    let rolls = rolls_deg(design, 36).into_iter();
    rolls
        .map(|roll_deg| {
            let turned = rolled(design, roll_deg);
            view.with_fins_of(&turned, body).area_and_centroid_m().1
        })
        .collect()
}

fn rolled(design: &Design, by_deg: f64) -> Design {
    let mut rolled = design.clone();
    for set in &mut rolled.fins {
        set.roll_deg += by_deg;
    }
    rolled
}

/// A rocket turned about its axis, as it is seen then.
#[derive(Clone, Debug)]
pub(crate) struct Turned {
    /// By how much it is turned out of the view of the drawing, in degrees.
    pub(crate) roll_deg: f64,
    pub(crate) view: SideView,
}

impl Turned {
    /// The rocket in every telling roll, the view of the drawing first.
    pub(crate) fn all(design: &Design, body: &Body, view: SideView) -> Vec<Self> {
        let rolls = telling_rolls_deg(design).into_iter().skip(1).map(|roll_deg| {
            let view = view.with_fins_of(&rolled(design, roll_deg), body);
            Self { roll_deg, view }
        });
        let rolls: Vec<Self> = rolls.collect();
        std::iter::once(Self { roll_deg: 0.0, view }).chain(rolls).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    fn rolls(sets: &[(u32, f64)]) -> Vec<f64> {
        let mut design = Example::Puffin.design();
        let set = design.fins[0].clone();
        design.fins = sets
            .iter()
            .map(|&(count, roll_deg)| crate::FinSet { count, roll_deg, ..set.clone() })
            .collect();
        telling_rolls_deg(&design)
    }

    #[test]
    fn flat_and_between_for_each_set() {
        assert_eq!(rolls(&[]), [0.0]);
        assert_eq!(rolls(&[(2, 0.0)]), [0.0, 90.0]);
        assert_eq!(rolls(&[(3, 0.0)]), [0.0, 30.0]);
        assert_eq!(rolls(&[(4, 0.0)]), [0.0, 45.0]);
        assert_eq!(rolls(&[(4, 45.0)]), [0.0, 45.0]);
        assert_eq!(rolls(&[(4, 10.0)]), [0.0, 80.0, 35.0]);
        assert_eq!(rolls(&[(4, 0.0), (8, 0.0)]), [0.0, 45.0, 22.5, 67.5]);
        assert_eq!(rolls(&[(3, 0.0), (4, 0.0)]).len(), 8);
    }
}
