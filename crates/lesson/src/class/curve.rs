//! The chance of nose-first against separation: a logistic curve, fitted by maximum
//! likelihood.
//!
//! `ln(p/(1 − p)) = intercept + slope · separation`, by Newton's steps, which for this curve
//! are iteratively reweighted least squares (P. `McCullagh` & J. A. Nelder, Generalized Linear
//! Models, 2nd ed., 1989, sections 2.5 and 4.4). The log-likelihood is concave, so a step
//! that does not gain is halved and none can lead astray.
//!
//! Everything is worked out on separations that are shifted and scaled to −1 … 1: then the
//! answers shift, scale and mirror with the data, and no unit is too small or too large.

use super::{NoseFirst, Seen};

/// Half the width of a 95 % band of a normal distribution, in standard deviations.
pub(super) const NORMAL_95: f64 = 1.959_963_984_540_054;
/// Newton's steps at most: some ten are usual, and where outcomes hardly overlap each adds
/// about one to the steepness, which then ends below a hundred.
const MOST_STEPS: usize = 500;
/// A step that changes the curve by no more than this share is the last one.
const SAME: f64 = 1e-12;
/// Separations nearer than this part of half their spread are one: beyond all rulers, and
/// it keeps every weight of the fit within a double's reach.
const PARTS: f64 = 1_099_511_627_776.0;

/// Separations to −1 … 1 and back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    middle: f64,
    half: f64,
}

impl Scale {
    /// `None` without trials, or where all are at one separation.
    pub(super) fn of(seen: &[Seen]) -> Option<Self> {
        let mut separations =
            seen.iter().filter(|seen| seen.counts()).map(|seen| seen.separation);
        let first = separations.next()?;
        let (least, most) =
            separations.fold((first, first), |(a, b), x| (a.min(x), b.max(x)));
        let half = most / 2.0 - least / 2.0;
        (half > 0.0).then_some(Self { middle: most / 2.0 + least / 2.0, half })
    }

    pub(super) fn to(self, separation: f64) -> f64 {
        (separation - self.middle) / self.half
    }

    pub(super) fn back(self, scaled: f64) -> f64 {
        self.middle + self.half * scaled
    }
}

/// Trials on the scale, for fitting.
#[derive(Debug)]
pub(super) struct Likelihood {
    pub(super) scale: Scale,
    /// Place, how many nose-first, and how many not.
    points: Vec<[f64; 3]>,
}

/// Sums of the weights: of all, their mean place, and their squares about it.
struct Information {
    weight: f64,
    mean: f64,
    spread: f64,
}

impl Likelihood {
    pub(super) fn new(seen: &[Seen]) -> Option<Self> {
        let scale = Scale::of(seen)?;
        let point = |seen: &Seen| {
            let place = libm::round(scale.to(seen.separation) * PARTS) / PARTS;
            [place, f64::from(seen.nose_first), f64::from(seen.otherwise)]
        };
        let mut points: Vec<_> =
            seen.iter().filter(|seen| seen.counts()).map(point).collect();
        // Those at one place are one: a day of many schools has thousands at a few hundred.
        points.sort_unstable_by(|a, b| a[0].total_cmp(&b[0]));
        points.dedup_by(|next, kept| {
            let is_there = next[0] == kept[0];
            if is_there {
                kept[1] += next[1];
                kept[2] += next[2];
            }
            is_there
        });
        Some(Self { scale, points })
    }

    /// The side of the nose-first ones where one separation parts them from all others; both
    /// outcomes may lie at that one. Exactly then there is no curve of greatest likelihood
    /// (A. Albert & J. A. Anderson, Biometrika 71, 1984, 1-10: complete and quasi-complete
    /// separation), both outcomes and two places given.
    pub(super) fn parted(&self) -> Option<NoseFirst> {
        let reach = |of: usize| {
            let places = self.points.iter().filter(|point| point[of] > 0.0);
            places.fold((f64::INFINITY, -f64::INFINITY), |(least, most), point| {
                (least.min(point[0]), most.max(point[0]))
            })
        };
        let (nose_first, otherwise) = (reach(1), reach(2));
        if otherwise.1 <= nose_first.0 {
            Some(NoseFirst::Above)
        } else if nose_first.1 <= otherwise.0 {
            Some(NoseFirst::Below)
        } else {
            None
        }
    }

    pub(super) fn log_likelihood(&self, [level, steep]: [f64; 2]) -> f64 {
        let of = |[place, nose_first, otherwise]: &[f64; 3]| {
            let odds = level + steep * place;
            // ln(1 + e^x) without leaving a double's reach.
            let softplus = |x: f64| x.max(0.0) + libm::log1p(libm::exp(-x.abs()));
            -nose_first * softplus(-odds) - otherwise * softplus(odds)
        };
        self.points.iter().map(of).sum()
    }

    fn information(&self, at: [f64; 2]) -> Information {
        let weight = |&[place, nose_first, otherwise]: &[f64; 3]| {
            (nose_first + otherwise) * variance(at[0] + at[1] * place)
        };
        let sum: f64 = self.points.iter().map(weight).sum();
        let mean = self.points.iter().map(|p| weight(p) * p[0]).sum::<f64>() / sum;
        let square = |p: &[f64; 3]| weight(p) * (p[0] - mean) * (p[0] - mean);
        Information { weight: sum, mean, spread: self.points.iter().map(square).sum() }
    }

    /// The next of Newton's steps: freely, or along a line through nothing.
    fn step(&self, at: [f64; 2], along: Option<[f64; 2]>) -> [f64; 2] {
        let Information { weight, mean, spread } = self.information(at);
        let (mut pull, mut turn) = (0.0, 0.0);
        for [place, nose_first, otherwise] in &self.points {
            let odds = at[0] + at[1] * place;
            let off = nose_first * chance(-odds) - otherwise * chance(odds);
            pull += off;
            turn += off * (place - mean);
        }
        if let Some([level, steep]) = along {
            let at_mean = level + steep * mean;
            let far = (pull * at_mean + turn * steep)
                / (weight * at_mean * at_mean + spread * steep * steep);
            return [far * level, far * steep];
        }
        let steep = turn / spread;
        [pull / weight - mean * steep, steep]
    }

    /// Level and steepness of greatest likelihood, of all or of those along a line through
    /// nothing, from where it is sought. The trials must overlap.
    pub(super) fn best(&self, along: Option<[f64; 2]>, from: [f64; 2]) -> [f64; 2] {
        let mut at = from;
        let mut reached = self.log_likelihood(at);
        for _ in 0..MOST_STEPS {
            let mut step = self.step(at, along);
            // Beyond this a gain is lost in the last bits.
            let least = reached - SAME * reached.abs();
            let mut next = [at[0] + step[0], at[1] + step[1]];
            while self.log_likelihood(next) < least {
                step = step.map(|part| part / 2.0);
                next = [at[0] + step[0], at[1] + step[1]];
            }
            (at, reached) = (next, self.log_likelihood(next));
            let far = step[0].abs().max(step[1].abs());
            if far <= SAME * (1.0 + at[0].abs().max(at[1].abs())) {
                break;
            }
        }
        at
    }

    pub(super) fn curve(&self) -> Curve {
        let at = self.best(None, [0.0; 2]);
        let Information { weight, mean, spread } = self.information(at);
        let covariance =
            [1.0 / weight + mean * mean / spread, -mean / spread, 1.0 / spread];
        Curve { scale: self.scale, at, covariance }
    }
}

/// The chance of nose-first against separation, as fitted to a class's trials.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    pub(super) scale: Scale,
    /// Level and steepness on the scale.
    pub(super) at: [f64; 2],
    /// Variance of the level, covariance, variance of the steepness.
    pub(super) covariance: [f64; 3],
}

impl Curve {
    /// `ln(p/(1 − p))` at no separation.
    #[must_use]
    pub fn intercept(&self) -> f64 {
        self.at[0] - self.slope() * self.scale.middle
    }

    /// How `ln(p/(1 − p))` grows with the separation, a unit of that.
    #[must_use]
    pub fn slope(&self) -> f64 {
        self.at[1] / self.scale.half
    }

    /// The variance of the intercept, its covariance with the slope, and the variance of the
    /// slope: the inverse of the expected information.
    #[must_use]
    pub fn covariance(&self) -> [f64; 3] {
        let [level, both, steep] = self.covariance;
        let Scale { middle, half } = self.scale;
        let shift = middle / half;
        [
            level - 2.0 * shift * both + shift * shift * steep,
            (both - shift * steep) / half,
            steep / half / half,
        ]
    }

    /// The chance of nose-first at a separation, from 0 to 1.
    #[must_use]
    pub fn chance(&self, separation: f64) -> f64 {
        chance(self.odds(self.scale.to(separation)))
    }

    /// Least and most of the 95 % band of [`Curve::chance`] at one separation: of the
    /// curve, not of one more rocket, and at that separation alone.
    ///
    /// `ln(p/(1 − p))` ± 1.96 of its standard error, and back (D. W. Hosmer & S. Lemeshow,
    /// Applied Logistic Regression, 2nd ed., 2000, section 1.4): always between 0 and 1.
    #[must_use]
    pub fn chance_band(&self, separation: f64) -> (f64, f64) {
        let place = self.scale.to(separation);
        let half = NORMAL_95 * self.odds_variance(place).sqrt();
        (chance(self.odds(place) - half), chance(self.odds(place) + half))
    }

    fn odds(&self, place: f64) -> f64 {
        self.at[0] + self.at[1] * place
    }

    fn odds_variance(&self, place: f64) -> f64 {
        let [level, both, steep] = self.covariance;
        (level + place * (2.0 * both + place * steep)).max(0.0)
    }

    /// The share by which one more trial at a separation is expected to narrow the turning
    /// point's standard error, from 0 to 1.
    ///
    /// To first order the turning point's variance is `g V g'` with g along (1, turning
    /// point); a trial there adds `p (1 − p) u u'` of information, u = (1, separation),
    /// whatever comes of it, and so takes off `w (g V u')²/(1 + w u V u')` (S. D. Silvey,
    /// Optimal Design, 1980, on designs that are c-optimal, one trial at a time).
    pub(super) fn narrowing(&self, separation: f64) -> f64 {
        let [level, both, steep] = self.covariance;
        let (place, turning) = (self.scale.to(separation), -self.at[0] / self.at[1]);
        let weight = variance(self.odds(place));
        let shared = level + (place + turning) * both + place * turning * steep;
        let taken = weight * shared * shared / (1.0 + weight * self.odds_variance(place));
        1.0 - (1.0 - taken / self.odds_variance(turning)).max(0.0).sqrt()
    }
}

fn chance(odds: f64) -> f64 {
    1.0 / (1.0 + libm::exp(-odds))
}

/// `p (1 − p)`.
fn variance(odds: f64) -> f64 {
    let least = libm::exp(-odds.abs());
    least / ((1.0 + least) * (1.0 + least))
}
