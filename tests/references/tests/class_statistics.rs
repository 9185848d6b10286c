//! The turning point of a class: its logistic curve, its bands, and what is refused.
//!
//! Compared with published sets (`data/logit_*.csv`, sources in their first lines) and their
//! coefficients (`data/logit_coefficients.csv`, published, and fitted again there with
//! statsmodels), and with `tests/fixtures/class.json`, which `make_class.py` works out with
//! statsmodels and with roots by `scipy.optimize.brentq`.

use noseward_lesson::{
    Band, Gap, NoTurningPoint, NoseFirst, Reach, Seen, TurningPoint, WhyThere,
    next_trial, turning_point,
};
use noseward_references_tests::{assert_close, assert_within, table};
use proptest::collection::vec;
use proptest::prelude::*;
use serde::Deserialize;

const CHALLENGER: &str = include_str!("../data/logit_challenger.csv");
const MENARCHE: &str = include_str!("../data/logit_menarche.csv");
const STUDY_HOURS: &str = include_str!("../data/logit_study_hours.csv");
const COEFFICIENTS: &str = include_str!("../data/logit_coefficients.csv");
const CLASSES: &str = include_str!("../../fixtures/class.json");

#[derive(Deserialize)]
struct File {
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    name: String,
    trials: Vec<(f64, u32, u32)>,
    intercept: f64,
    slope: f64,
    covariance: [f64; 3],
    at: f64,
    /// Separation, chance, and its band.
    chances: Vec<[f64; 4]>,
    fieller: Option<[f64; 2]>,
    likelihood: Option<[f64; 2]>,
}

fn number(text: &str) -> f64 {
    text.parse().expect("a number")
}

/// A set: its place, how many of how many, by columns.
fn set(
    text: &str,
    place: usize,
    some: usize,
    of: impl Fn(&[String]) -> u32,
) -> Vec<Seen> {
    let seen = |row: &Vec<String>| {
        let nose_first = row[some].parse().expect("a count");
        let separation = number(&row[place]);
        Seen { separation, nose_first, otherwise: of(row) - nose_first }
    };
    table(text).iter().map(seen).collect()
}

/// The published sets, in the order of `logit_coefficients.csv`.
fn sets() -> [Vec<Seen>; 4] {
    [
        set(CHALLENGER, 1, 3, |_| 1),
        set(CHALLENGER, 1, 4, |_| 6),
        set(MENARCHE, 0, 2, |row| row[1].parse().expect("a count")),
        set(STUDY_HOURS, 0, 1, |_| 1),
    ]
}

fn found(seen: &[Seen]) -> TurningPoint {
    turning_point(seen).expect("they overlap")
}

/// Ends of a band; of one without an end, none.
fn ends(band: Band) -> Option<[f64; 2]> {
    match band {
        Band::Between { least, most } => Some([least, most]),
        Band::Unbounded => None,
    }
}

/// Coefficients, standard errors and covariance of the published sets, to one part in a
/// million or to the digits that stand there.
#[test]
fn published_sets_have_their_coefficients() {
    let rows = table(COEFFICIENTS);
    assert_eq!(rows.len(), 4);
    for (row, seen) in rows.iter().zip(sets()) {
        let curve = found(&seen).curve;
        let [level, both, steep] = curve.covariance();
        let values = [curve.intercept(), curve.slope(), level.sqrt(), steep.sqrt(), both];
        for (value, text) in values.into_iter().zip(&row[1..6]) {
            assert_close(&row[0], value, number(text), 1e-6);
        }
    }
    // x at 0.5 in REFERENCES: 64.7946 °F and 13.00662 years; p(31 °F) 0.99961 and 0.81777.
    let [one, six, years, _] = sets().map(|seen| found(&seen));
    assert_within("°F", one.at, 64.7946, 5e-5);
    assert_within("years", years.at, 13.00662, 5e-6);
    assert_within("31 °F", one.curve.chance(31.0), 0.99961, 5e-6);
    assert_within("31 °F of six", six.curve.chance(31.0), 0.81777, 5e-6);
    // A falling curve is told, and not refused.
    let sides = [one, six, years].map(|found| found.nose_first);
    assert_eq!(sides, [NoseFirst::Below, NoseFirst::Below, NoseFirst::Above]);
}

/// Curve, its band and both bands of the turning point, of the published sets and of 40
/// made-up classes, against statsmodels and roots by scipy.
#[test]
fn curves_and_bands_agree_with_another_program() {
    let file: File = serde_json::from_str(CLASSES).expect("the fixture");
    assert_eq!(file.cases.len(), 44);
    for case in &file.cases {
        let name = &case.name;
        let seen: Vec<_> = case
            .trials
            .iter()
            .map(|&(separation, nose_first, otherwise)| Seen {
                separation,
                nose_first,
                otherwise,
            })
            .collect();
        let found = found(&seen);
        let curve = found.curve;
        assert_close(name, curve.intercept(), case.intercept, 1e-7);
        assert_close(name, curve.slope(), case.slope, 1e-7);
        for (value, expected) in curve.covariance().into_iter().zip(case.covariance) {
            assert_close(name, value, expected, 1e-6);
        }
        assert_close(name, found.at, case.at, 1e-7);
        for [at, chance, least, most] in case.chances.iter().copied() {
            let band = curve.chance_band(at);
            assert_close(name, curve.chance(at), chance, 1e-6);
            assert_close(name, band.0, least, 1e-6);
            assert_close(name, band.1, most, 1e-6);
        }
        for (band, expected) in
            [(found.fieller(), case.fieller), (found.band, case.likelihood)]
        {
            assert_eq!(ends(band).is_some(), expected.is_some(), "{name}: {band:?}");
            let both =
                ends(band).into_iter().flatten().zip(expected.into_iter().flatten());
            for (value, expected) in both {
                assert_close(name, value, expected, 1e-6);
            }
        }
    }
    let open = |band: fn(&Case) -> Option<[f64; 2]>| {
        file.cases.iter().filter(|case| band(case).is_none()).count()
    };
    assert_eq!((open(|case| case.fieller), open(|case| case.likelihood)), (13, 3));
}

/// At the ends of Fieller's band the curve is 1.96 standard errors from one half, by the
/// band of the curve itself: its upper or lower edge is one half there.
#[test]
fn fieller_ends_where_the_curves_band_leaves_one_half() {
    for seen in sets() {
        let found = found(&seen);
        let [least, most] = ends(found.fieller()).expect("it ends");
        assert!(least < found.at && found.at < most);
        for end in [least, most] {
            let (low, high) = found.curve.chance_band(end);
            let off = (low - 0.5).abs().min((high - 0.5).abs());
            assert!(off < 1e-9, "{off}");
        }
    }
}

/// Sets that one separation parts have no greatest likelihood, wherever the gap is and
/// however narrow; a tenth of a millimetre of overlap has one.
#[test]
fn parted_sets_are_refused_with_their_gap() {
    let hours = set(STUDY_HOURS, 0, 1, |_| 1);
    let parted = |at: f64, nose_first: NoseFirst| -> Vec<_> {
        let above = nose_first == NoseFirst::Above;
        hours
            .iter()
            .map(|s| Seen::from((s.separation, (s.separation > at) == above)))
            .collect()
    };
    for nose_first in [NoseFirst::Above, NoseFirst::Below] {
        let gap = Gap { from: 2.5, to: 2.75, nose_first };
        let refused = turning_point(&parted(2.6, nose_first));
        assert_eq!(refused, Err(NoTurningPoint::Parted(gap)));
        // Both outcomes at the end of one group: quasi-complete.
        let mut touching = parted(2.6, nose_first);
        touching.push(Seen::from((2.75, nose_first == NoseFirst::Below)));
        let gap = Gap { from: 2.75, to: 2.75, nose_first };
        assert_eq!(turning_point(&touching), Err(NoTurningPoint::Parted(gap)));
        touching.push(Seen::from((2.8, nose_first == NoseFirst::Below)));
        let found = found(&touching);
        assert_eq!(found.nose_first, nose_first);
        assert!((found.at - 2.75).abs() < 0.1, "{found:?}");
        // So little overlap that the curve is all but a step.
        touching.pop();
        touching.push(Seen::from((2.75 + 1e-9, nose_first == NoseFirst::Below)));
        let steep = turning_point(&touching).expect("they overlap");
        let [least, most] = ends(steep.band).expect("it ends");
        assert!(least < 2.75 && most > 2.75 && most - least < 0.6, "{steep:?}");
        assert!((steep.at - 2.75).abs() < 0.01, "{steep:?}");
    }
}

#[test]
fn what_tells_nothing_is_refused() {
    let seven = |outcomes: [u8; 7]| -> Vec<_> {
        (0_u8..7)
            .zip(outcomes)
            .map(|(i, nose)| Seen::from((f64::from(i), nose == 1)))
            .collect()
    };
    let few = turning_point(&seven([0, 0, 0, 1, 0, 1, 1])[..6]);
    assert_eq!(few, Err(NoTurningPoint::TooFew { trials: 6, least: 7 }));
    let one_sided =
        |nose_first| NoTurningPoint::OneSided { nose_first, least: 0.0, most: 6.0 };
    assert_eq!(turning_point(&seven([1; 7])), Err(one_sided(true)));
    assert_eq!(turning_point(&seven([0; 7])), Err(one_sided(false)));
    assert_eq!(turning_point(&seven([0, 1, 1, 0, 1, 1, 0])), Err(NoTurningPoint::Level));
    let (separation, otherwise) = (12.5, 4);
    let same = turning_point(&[Seen { separation, nose_first: 5, otherwise }]);
    assert_eq!(same, Err(NoTurningPoint::SameSeparation { separation }));
    // What is no number, or counts nothing, is no trial.
    let mut more = seven([0, 0, 0, 1, 0, 1, 1]);
    let plain = turning_point(&more);
    more.push(Seen::from((f64::NAN, true)));
    more.push(Seen::from((f64::INFINITY, false)));
    more.push(Seen { separation: 900.0, nose_first: 0, otherwise: 0 });
    assert!(plain.is_ok());
    assert_eq!(turning_point(&more), plain);
}

/// Why seven: of all outcomes of evenly spaced trials that overlap, none bounds the band with
/// six, and with seven four do.
#[test]
fn seven_evenly_spaced_trials_are_the_least_that_can_tell() {
    let evenly = |trials: u32, outcomes: u32| {
        let nose_first = move |i: u32| (outcomes >> i).is_multiple_of(2);
        (0..trials).map(move |i| Seen::from((f64::from(i), nose_first(i))))
    };
    let bounded = (0..1 << 7).filter(|&outcomes| {
        let seen: Vec<_> = evenly(7, outcomes).collect();
        turning_point(&seen).is_ok_and(|found| ends(found.band).is_some())
    });
    assert_eq!(bounded.count(), 4);
    // Six are refused. Of each twice the curve is the same, and its likelihood ratio to no
    // slope is half of theirs.
    let ratio = |outcomes: u32| {
        let twice: Vec<_> = evenly(6, outcomes).chain(evenly(6, outcomes)).collect();
        let Ok(found) = turning_point(&twice) else { return 0.0 };
        let share = f64::from(6 - outcomes.count_ones()) / 6.0;
        let gain = |seen: &Seen| {
            let chance = found.curve.chance(seen.separation);
            let nose_first = seen.nose_first == 1;
            libm::log(if nose_first {
                chance / share
            } else {
                (1.0 - chance) / (1.0 - share)
            })
        };
        evenly(6, outcomes).map(|seen| 2.0 * gain(&seen)).sum::<f64>()
    };
    let most = (0..1 << 6).map(ratio).fold(0.0, f64::max);
    assert_within("of six", most, 3.361_792, 1e-6);
    assert!(most < 3.841);
}

/// How often the bands hold the true value and have no end, of made-up classes of 20 whose
/// outcomes overlap: what the docs say of them.
#[test]
fn the_likelihoods_band_holds_the_true_value_and_ends() {
    let mut bits = 1_u64;
    // Steele, Lea & Flood, Fast splittable pseudorandom number generators, 2014.
    let mut unit = || {
        bits = bits.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = (bits ^ (bits >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        #[expect(clippy::cast_precision_loss, reason = "53 bits have room")]
        let unit = ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64;
        unit
    };
    const TRUE: f64 = 0.2;
    for steep in [4.0, 8.0, 16.0] {
        let (mut all, mut holds, mut open, mut fieller_open) = (0.0, 0.0, 0.0, 0.0);
        while all < 400.0 {
            let mut trial = |_| {
                let separation = 2.0 * unit() - 1.0;
                let chance = 1.0 / (1.0 + libm::exp(-steep * (separation - TRUE)));
                Seen::from((separation, unit() < chance))
            };
            let seen: Vec<_> = (0..20).map(&mut trial).collect();
            let Ok(found) = turning_point(&seen) else { continue };
            all += 1.0;
            match ends(found.band) {
                Some([least, most]) if least <= TRUE && TRUE <= most => holds += 1.0,
                Some(_) => {}
                None => (holds, open) = (holds + 1.0, open + 1.0),
            }
            fieller_open += if ends(found.fieller()).is_none() { 1.0 } else { 0.0 };
        }
        let (holds, open) = (holds / all, open / all);
        assert!(holds > 0.92 && holds < 0.995, "{steep}: {holds}");
        assert!(open < 0.05, "{steep}: {open}");
        let fieller_open = fieller_open / all;
        assert!(
            fieller_open > 0.2 && fieller_open > 5.0 * open,
            "{steep}: {fieller_open}"
        );
    }
}

fn trials() -> impl Strategy<Value = Vec<Seen>> {
    let one = (-600_i16..=600, 0_u32..3, 0_u32..3).prop_map(
        |(tenths, nose_first, otherwise)| Seen {
            separation: f64::from(tenths) / 10.0,
            nose_first,
            otherwise,
        },
    );
    vec(one, 5..25)
}

/// What a turning point comes to when every separation is moved.
fn moved(seen: &[Seen], to: impl Fn(f64) -> f64) -> Vec<Seen> {
    seen.iter().map(|s| Seen { separation: to(s.separation), ..*s }).collect()
}

/// Both say the same after a move of separations, up or (mirrored) down.
fn assert_moved(
    seen: &[Seen],
    other: &[Seen],
    to: &dyn Fn(f64) -> f64,
) -> Result<(), TestCaseError> {
    let (now, then) = (turning_point(seen), turning_point(other));
    let (Ok(now), Ok(then)) = (now, then) else {
        prop_assert_eq!(now.is_err(), then.is_err());
        if let (Err(NoTurningPoint::Parted(now)), Err(NoTurningPoint::Parted(then))) =
            (now, then)
        {
            let mut ends = [to(now.from), to(now.to)];
            ends.sort_unstable_by(f64::total_cmp);
            prop_assert!((ends[0] - then.from).abs() + (ends[1] - then.to).abs() < 1e-9);
            prop_assert_eq!(to(1.0) > to(0.0), now.nose_first == then.nose_first);
        }
        return Ok(());
    };
    // Where one half lies far beyond what was tried, digits are lost.
    let near =
        |a: f64, b: f64| (to(a) - b).abs() <= 1e-6 * (to(a) - to(0.0)).abs().max(1.0);
    prop_assert!(near(now.at, then.at), "{} {}", to(now.at), then.at);
    prop_assert_eq!(to(1.0) > to(0.0), now.nose_first == then.nose_first);
    for at in [-50.0, 0.0, 20.0] {
        let (was, is) = (now.curve.chance_band(at), then.curve.chance_band(to(at)));
        prop_assert!((was.0 - is.0).abs() + (was.1 - is.1).abs() < 1e-8);
    }
    for (was, is) in [(now.band, then.band), (now.fieller(), then.fieller())] {
        prop_assert_eq!(ends(was).is_some(), ends(is).is_some());
        let (Some(mut was), Some(is)) = (ends(was), ends(is)) else { continue };
        if to(1.0) < to(0.0) {
            was.reverse();
        }
        prop_assert!(
            was.into_iter().zip(is).all(|(was, is)| near(was, is)),
            "{was:?} {is:?}"
        );
    }
    Ok(())
}

proptest! {
    #[test]
    fn shifted_scaled_and_mirrored_trials_have_answers_that_follow(
        seen in trials(), shift in -500.0..500.0, scale in 0.01..100.0,
    ) {
        let upward = |x: f64| shift + scale * x;
        let downward = |x: f64| shift - scale * x;
        assert_moved(&seen, &moved(&seen, upward), &upward)?;
        assert_moved(&seen, &moved(&seen, downward), &downward)?;
    }

    #[test]
    fn swapped_outcomes_turn_the_curve_over_at_the_same_place(seen in trials()) {
        let swapped: Vec<_> = seen
            .iter()
            .map(|s| Seen { nose_first: s.otherwise, otherwise: s.nose_first, ..*s })
            .collect();
        if let (Ok(now), Ok(then)) = (turning_point(&seen), turning_point(&swapped)) {
            prop_assert!((now.at - then.at).abs() <= 1e-6 * now.at.abs().max(1.0));
            prop_assert_ne!(now.nose_first, then.nose_first);
            let (a, b) = (now.curve.chance(10.0), then.curve.chance(10.0));
            prop_assert!((a + b - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn order_and_counting_together_do_not_matter(
        seen in trials(), order in Just((0..25).collect::<Vec<usize>>()).prop_shuffle(),
    ) {
        let apart = |s: Seen| {
            let one = move |nose_first| Seen::from((s.separation, nose_first));
            let yes = (0..s.nose_first).map(move |_| one(true));
            yes.chain((0..s.otherwise).map(move |_| one(false)))
        };
        let other: Vec<_> =
            order.iter().filter_map(|&i| seen.get(i)).copied().flat_map(apart).collect();
        assert_moved(&seen, &other, &|x| x)?;
    }

    #[test]
    fn the_next_trial_lies_within_reach(seen in trials(), least in -80.0..80.0, width in 0.1..200.0) {
        let reach = Reach { least, most: least + width };
        let next = next_trial(&seen, reach).expect("a real reach");
        prop_assert!(next.at >= reach.least && next.at <= reach.most, "{next:?}");
        if let WhyThere::Narrows { share } = next.why {
            prop_assert!(share > 0.0 && share < 1.0, "{next:?}");
        }
    }
}
