//! How measured and computed separations of a class agree.

/// Half the width of the limits of agreement, in standard deviations: that of 95 % of a
/// normal distribution.
const LIMITS: f64 = 1.96;

/// How two ways to find the same thing agree.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Agreement {
    /// How many pairs there are, at least one.
    pub count: usize,
    /// The mean of measured less computed.
    pub mean_difference: f64,
    /// How the differences scatter; `None` with one pair.
    pub limits: Option<Limits>,
    /// In how many the signs differ, so that the two ways differ in which point is nearer
    /// the nose. Nothing has no sign.
    pub other_sign: usize,
}

/// How differences scatter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Their standard deviation, with one less than their number below the line.
    pub standard_deviation: f64,
    /// The lower 95 % limit of agreement.
    pub least: f64,
    /// The upper one.
    pub most: f64,
}

/// How measured and computed separations agree, of pairs (measured, computed) in one unit,
/// which is that of the answer too. `None` without a pair; one that is not finite does not
/// count.
///
/// The 95 % limits of agreement are the mean difference ± 1.96 of their standard deviation:
/// some 95 of 100 rockets differ by no more, if the differences are about normal (J. M. Bland
/// & D. G. Altman, Lancet 327, 1986, 307-310, who write 2 for 1.96). With few pairs the
/// limits are themselves unsure, by some 1.7 standard deviations over the root of their
/// number.
#[must_use]
pub fn agreement(pairs: &[(f64, f64)]) -> Option<Agreement> {
    let real =
        || pairs.iter().filter(|(measured, computed)| (measured - computed).is_finite());
    let count = real().count();
    let number = real().fold(0.0, |number, _| number + 1.0);
    if count == 0 {
        return None;
    }
    let difference = |&(measured, computed): &(f64, f64)| measured - computed;
    let mean = real().map(difference).sum::<f64>() / number;
    let square = |pair| (difference(pair) - mean) * (difference(pair) - mean);
    let limits = (count > 1).then(|| {
        let standard_deviation =
            (real().map(square).sum::<f64>() / (number - 1.0)).sqrt();
        let half = LIMITS * standard_deviation;
        Limits { standard_deviation, least: mean - half, most: mean + half }
    });
    let apart = |&&(a, b): &&(f64, f64)| a > 0.0 && b < 0.0 || a < 0.0 && b > 0.0;
    let other_sign = real().filter(apart).count();
    Some(Agreement { count, mean_difference: mean, limits, other_sign })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn by_hand() {
        // Differences 1, 3, -1, 1: mean 1, squares 0, 4, 4, 0, by 3.
        let pairs = [(11.0, 10.0), (1.0, -2.0), (-1.0, 0.0), (0.0, -1.0)];
        let found = agreement(&pairs).unwrap();
        assert_eq!((found.count, found.mean_difference, found.other_sign), (4, 1.0, 1));
        let limits = found.limits.unwrap();
        let deviation = (8.0_f64 / 3.0).sqrt();
        assert!((limits.standard_deviation - deviation).abs() < 1e-15);
        assert!((limits.least - (1.0 - 1.96 * deviation)).abs() < 1e-15);
        assert!((limits.most - (1.0 + 1.96 * deviation)).abs() < 1e-15);
    }

    #[test]
    fn one_pair_does_not_scatter_and_none_says_nothing() {
        let one =
            agreement(&[(-2.0, 3.0), (f64::NAN, 1.0), (1.0, f64::INFINITY)]).unwrap();
        let expected =
            Agreement { count: 1, mean_difference: -5.0, limits: None, other_sign: 1 };
        assert_eq!(one, expected);
        assert_eq!(agreement(&[(f64::NAN, 0.0)]), None);
        assert_eq!(agreement(&[]), None);
    }
}
