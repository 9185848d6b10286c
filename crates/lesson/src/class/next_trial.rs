//! Which trial would settle it: where one more tells the most.

use super::Seen;
use super::turning_point::{Gap, NoTurningPoint, TurningPoint, turning_point};

/// Steps of the reach that are looked at.
const STEPS: u32 = 200;

/// A stretch of separations, in the unit of the trials.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reach {
    /// The smallest.
    pub least: f64,
    /// The largest.
    pub most: f64,
}

/// A separation that is worth a trial.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NextTrial {
    /// Which, within what the class can build.
    pub at: f64,
    /// Why this one.
    pub why: WhyThere,
}

/// Why a trial at one separation tells the most.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WhyThere {
    /// It is expected to narrow the turning point most.
    Narrows {
        /// The share that it is expected to take off the turning point's standard error,
        /// from 0 to 1.
        share: f64,
    },
    /// The turning point lies in this gap.
    InGap(Gap),
    /// Nothing was tried in this stretch.
    Untried(Reach),
}

impl Reach {
    fn width(self) -> f64 {
        self.most - self.least
    }

    fn middle(self) -> f64 {
        self.least / 2.0 + self.most / 2.0
    }

    fn within(self, separation: f64) -> f64 {
        separation.max(self.least).min(self.most)
    }

    fn is_real(self) -> bool {
        self.width() > 0.0 && self.width().is_finite()
    }
}

/// Where one more trial tells the most, within what the class can build.
///
/// With a turning point, where the expected information narrows it most, of 200 even steps
/// of the reach; where a gap parts the outcomes, its middle, or beside it where it has no
/// width; with all outcomes alike, beyond the end behind which the other must begin; else in
/// the widest stretch without a trial. `None` where the reach has no width or is not finite.
#[must_use]
pub fn next_trial(seen: &[Seen], reach: Reach) -> Option<NextTrial> {
    next_trial_after(&turning_point(seen), seen, reach)
}

/// The same where the [turning point](turning_point()) of the trials is known already: that takes
/// nearly all of the time.
#[must_use]
pub fn next_trial_after(
    found: &Result<TurningPoint, NoTurningPoint>,
    seen: &[Seen],
    reach: Reach,
) -> Option<NextTrial> {
    if !reach.is_real() {
        return None;
    }
    match *found {
        Ok(found) => {
            let (mut at, mut share) = (reach.least, 0.0);
            for step in 0..=STEPS {
                let part = f64::from(step) / f64::from(STEPS);
                let place = reach.within(reach.least + part * reach.width());
                let narrowed = found.curve.narrowing(place);
                if narrowed > share {
                    (at, share) = (place, narrowed);
                }
            }
            Some(NextTrial { at, why: WhyThere::Narrows { share } })
        }
        Err(NoTurningPoint::Parted(gap)) => {
            let at = reach.within(in_gap(seen, gap, reach));
            Some(NextTrial { at, why: WhyThere::InGap(gap) })
        }
        Err(NoTurningPoint::OneSided { nose_first, least, most }) => {
            let beyond = if nose_first {
                Reach { most: least.min(reach.most), ..reach }
            } else {
                Reach { least: most.max(reach.least), ..reach }
            };
            if beyond.is_real() {
                return Some(untried(beyond));
            }
            empty_region(seen, reach).map(untried)
        }
        Err(
            NoTurningPoint::TooFew { .. }
            | NoTurningPoint::SameSeparation { .. }
            | NoTurningPoint::Level,
        ) => empty_region(seen, reach).map(untried),
    }
}

fn untried(region: Reach) -> NextTrial {
    NextTrial { at: region.middle(), why: WhyThere::Untried(region) }
}

/// The middle of a gap. Where both outcomes lie at one separation another trial there
/// would tell nothing new: then the middle of the wider stretch beside it.
fn in_gap(seen: &[Seen], gap: Gap, reach: Reach) -> f64 {
    let at = gap.from;
    if gap.to > at {
        return Reach { least: at, most: gap.to }.middle();
    }
    let stretches = empty_regions(seen, reach);
    let beside = stretches.into_iter().filter(|s| s.least == at || s.most == at);
    widest(beside).map_or(at, Reach::middle)
}

/// The widest stretch of the reach without a trial; of equal ones the first. `None` where
/// the reach has no width or is not finite.
#[must_use]
pub fn empty_region(seen: &[Seen], reach: Reach) -> Option<Reach> {
    widest(empty_regions(seen, reach).into_iter())
}

fn widest(regions: impl Iterator<Item = Reach>) -> Option<Reach> {
    let real = regions.filter(|region| region.is_real());
    real.reduce(|best, region| if region.width() > best.width() { region } else { best })
}

/// The stretches of the reach between trials, the smallest separations first.
fn empty_regions(seen: &[Seen], reach: Reach) -> Vec<Reach> {
    let tried = seen.iter().filter(|seen| seen.counts()).map(|seen| seen.separation);
    let mut ends: Vec<f64> =
        tried.filter(|&tried| tried > reach.least && tried < reach.most).collect();
    ends.push(reach.most);
    ends.sort_unstable_by(f64::total_cmp);
    let mut least = reach.least;
    let region = |most| Reach { least: std::mem::replace(&mut least, most), most };
    ends.into_iter().map(region).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::class::{Band, NoseFirst};

    const REACH: Reach = Reach { least: -50.0, most: 150.0 };

    fn seen(trials: &[(f64, bool)]) -> Vec<Seen> {
        trials.iter().copied().map(Seen::from).collect()
    }

    fn overlapping() -> Vec<Seen> {
        let nose_first = [0, 0, 0, 1, 0, 1, 0, 1, 1, 1];
        let trial = |(i, nose)| (f64::from(i) * 10.0, nose == 1);
        seen(&(0_u8..).zip(nose_first).map(trial).collect::<Vec<_>>())
    }

    /// The share that is told is what comes of adding the trial to the information, worked
    /// out by its inverse, and no other place in the reach gives more.
    #[test]
    fn the_narrowing_is_that_of_the_information() {
        let seen = overlapping();
        let curve = turning_point(&seen).unwrap().curve;
        let variance = |more: Option<f64>| {
            let mut sums = [0.0; 3];
            for x in seen.iter().map(|seen| seen.separation).chain(more) {
                let weight = curve.chance(x) * (1.0 - curve.chance(x));
                sums = [sums[0] + weight, sums[1] + weight * x, sums[2] + weight * x * x];
            }
            let [s0, s1, s2] = sums;
            let at = -curve.intercept() / curve.slope();
            (s2 - 2.0 * at * s1 + at * at * s0) / (s0 * s2 - s1 * s1)
        };
        let found = next_trial(&seen, REACH).unwrap();
        let WhyThere::Narrows { share } = found.why else { panic!("{found:?}") };
        let narrowed = |at| 1.0 - (variance(Some(at)) / variance(None)).sqrt();
        assert!((share - narrowed(found.at)).abs() < 1e-9, "{share}");
        for at in (-50..=150).map(f64::from) {
            assert!(narrowed(at) <= share + 1e-12, "{at}");
        }
        assert!(share > 0.01 && share < 0.5, "{share}");
        // Near the turning point, and never outside of the reach.
        assert!((found.at - 45.0).abs() < 20.0, "{found:?}");
        let low = Reach { least: -50.0, most: 10.0 };
        assert_eq!(next_trial(&seen, low).unwrap().at, 10.0);
    }

    /// What is expected, averaged over both outcomes and fitted anew, is narrower than after
    /// a trial far off.
    #[test]
    fn the_band_is_narrower_after_it_than_after_one_far_off() {
        // Enough of them that no single outcome takes the band's end away.
        let seen = [overlapping(), overlapping(), overlapping()].concat();
        let width = |at: f64| {
            let chance = turning_point(&seen).unwrap().curve.chance(at);
            let after = |nose_first| {
                let more: Vec<_> =
                    seen.iter().copied().chain([Seen::from((at, nose_first))]).collect();
                let Band::Between { least, most } = turning_point(&more).unwrap().band
                else {
                    panic!("no end at {at}")
                };
                most - least
            };
            chance * after(true) + (1.0 - chance) * after(false)
        };
        let at = next_trial(&seen, REACH).unwrap().at;
        assert!(width(at) < width(-20.0) && width(at) < width(110.0));
    }

    #[test]
    fn the_middle_of_a_gap_or_beside_one_without_width() {
        let mut parted: Vec<_> =
            (0_u8..8).map(|i| (f64::from(i) * 10.0, i > 3)).collect();
        let found = next_trial(&seen(&parted), REACH).unwrap();
        let gap = Gap { from: 30.0, to: 40.0, nose_first: NoseFirst::Above };
        assert_eq!(found, NextTrial { at: 35.0, why: WhyThere::InGap(gap) });
        let high = Reach { least: 38.0, most: 90.0 };
        assert_eq!(next_trial(&seen(&parted), high).unwrap().at, 38.0);
        // Both outcomes at 30, its neighbours at 20 and 40, then at 20 and 50.
        parted[4].0 = 30.0;
        assert_eq!(next_trial(&seen(&parted), REACH).unwrap().at, 40.0);
        parted[2].0 = -20.0;
        assert_eq!(next_trial(&seen(&parted), REACH).unwrap().at, 20.0);
        let apart = Reach { least: 60.0, most: 90.0 };
        assert_eq!(next_trial(&seen(&parted), apart).unwrap().at, 60.0);
    }

    #[test]
    fn alike_ones_are_tried_beyond_the_end() {
        let mut alike: Vec<_> = (0_u8..8).map(|i| (f64::from(i) * 10.0, true)).collect();
        let at =
            |trials: &[(f64, bool)], reach| next_trial(&seen(trials), reach).unwrap();
        let region = Reach { least: -50.0, most: 0.0 };
        let there = NextTrial { at: -25.0, why: WhyThere::Untried(region) };
        assert_eq!(at(&alike, REACH), there);
        // No room below: the widest stretch above.
        assert_eq!(at(&alike, Reach { least: 0.0, most: 150.0 }).at, 110.0);
        alike.iter_mut().for_each(|trial| trial.1 = false);
        assert_eq!(at(&alike, REACH).at, 110.0);
        // All of them beyond the reach.
        assert_eq!(at(&alike, Reach { least: -60.0, most: -40.0 }).at, -50.0);
    }

    #[test]
    fn few_or_equal_ones_go_where_nothing_was_tried() {
        let few = seen(&[(0.0, false), (60.0, true), (f64::NAN, true)]);
        let region = Reach { least: 60.0, most: 150.0 };
        assert_eq!(empty_region(&few, REACH), Some(region));
        let there = NextTrial { at: 105.0, why: WhyThere::Untried(region) };
        assert_eq!(next_trial(&few, REACH), Some(there));
        assert_eq!(empty_region(&[], REACH), Some(REACH));
        assert_eq!(next_trial(&[], REACH).unwrap().at, 50.0);
        let same: Vec<_> = (0..8).map(|i| (100.0, i > 3)).collect();
        assert_eq!(next_trial(&seen(&same), REACH).unwrap().at, 25.0);
        let (least, most) = (3.0, f64::NAN);
        for reach in [Reach { least, most: 3.0 }, Reach { least, most }] {
            assert_eq!(next_trial(&few, reach), None);
            assert_eq!(empty_region(&few, reach), None);
        }
    }
}
