//! The separation at which half of the rockets fly nose-first, and how sure that is.

use std::f64::consts::PI;

use super::curve::{Curve, Likelihood, NORMAL_95};
use super::{NoseFirst, Seen};

/// The least trials for a turning point. With six or fewer, one to a separation and those
/// evenly spaced, no outcomes that overlap bound the band: whatever was seen, the answer
/// would be "anywhere". With seven a few do (4 of 114), by trying all of them.
pub const LEAST_TRIALS: u64 = 7;

/// A curve less steep than this on separations from −1 to 1 is level but for its last bits.
const LEVEL: f64 = 1e-9;
/// Halvings of an angle, until nothing is left of it.
const HALVINGS: usize = 60;

/// The separation at which half of the rockets fly nose-first, by a logistic curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TurningPoint {
    /// Where it is, in the unit of the trials. It may lie outside of what was tried.
    pub at: f64,
    /// Where it may be, at 95 %.
    ///
    /// All places t that the likelihood ratio does not rule out: those for which the best
    /// curve through one half at t is at most 1.92 (3.84 by 2) less likely, in logarithm, than
    /// the best of all (D. A. Williams, Interval estimation of the median lethal dose,
    /// Biometrics 42, 1986, 641-645). Why this and not a closed form: see
    /// [`TurningPoint::fieller`].
    pub band: Band,
    /// On which side rockets fly nose-first.
    pub nose_first: NoseFirst,
    /// The curve.
    pub curve: Curve,
}

/// A 95 % band of a turning point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Band {
    /// From one separation to another.
    Between {
        /// The smallest.
        least: f64,
        /// The largest.
        most: f64,
    },
    /// It has no end on one side at least: these trials hardly tell whether the separation
    /// matters.
    Unbounded,
}

/// Why there is no turning point. The first of these that holds is told.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoTurningPoint {
    /// There are too few trials.
    TooFew {
        /// How many there are.
        trials: u64,
        /// How many it takes: [`LEAST_TRIALS`].
        least: u64,
    },
    /// All went the same way.
    OneSided {
        /// Whether nose-first.
        nose_first: bool,
        /// The smallest separation that was tried.
        least: f64,
        /// The largest.
        most: f64,
    },
    /// All have the same separation.
    SameSeparation {
        /// Which.
        separation: f64,
    },
    /// One separation parts those that flew nose-first from all others: the turning point
    /// is somewhere in the gap, and nothing tells how steep the curve is.
    Parted(Gap),
    /// Nose-first is as likely everywhere.
    Level,
}

/// The gap between the two outcomes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// The largest separation of the group with the smaller ones.
    pub from: f64,
    /// The smallest of the other group: the same where both outcomes were seen there.
    pub to: f64,
    /// On which side of it rockets flew nose-first.
    pub nose_first: NoseFirst,
}

/// The separation at which half of the rockets fly nose-first.
///
/// # Errors
///
/// [`NoTurningPoint`] says why there is none. Whether the outcomes overlap is told by their
/// least and largest separations, not by a fit that runs away. A curve that falls is no
/// error: [`TurningPoint::nose_first`] tells it.
///
/// ```
/// use noseward_lesson::{Band, NoTurningPoint, NoseFirst, Seen, turning_point};
///
/// let nose_first = [false, false, false, true, false, true, true, true];
/// let mut seen: Vec<_> =
///     (0_u8..).zip(nose_first).map(|(i, nose)| Seen::from((f64::from(i), nose))).collect();
/// let found = turning_point(&seen).expect("they overlap");
/// assert!((found.at - 3.5).abs() < 1e-9 && found.nose_first == NoseFirst::Above);
/// assert!(matches!(found.band, Band::Between { least, most } if least < 3.0 && most > 4.0));
///
/// seen[3].separation = 4.5;
/// let Err(NoTurningPoint::Parted(gap)) = turning_point(&seen) else { panic!("overlap") };
/// assert_eq!((gap.from, gap.to, gap.nose_first), (4.0, 4.5, NoseFirst::Above));
/// ```
pub fn turning_point(seen: &[Seen]) -> Result<TurningPoint, NoTurningPoint> {
    let all = Group::of(seen, |seen| seen.nose_first.max(seen.otherwise));
    let nose_first = Group::of(seen, |seen| seen.nose_first);
    let otherwise = Group::of(seen, |seen| seen.otherwise);
    let trials = nose_first.trials + otherwise.trials;
    if trials < LEAST_TRIALS {
        return Err(NoTurningPoint::TooFew { trials, least: LEAST_TRIALS });
    }
    let Group { least, most, .. } = all;
    if nose_first.trials == 0 || otherwise.trials == 0 {
        let nose_first = otherwise.trials == 0;
        return Err(NoTurningPoint::OneSided { nose_first, least, most });
    }
    let Some(likelihood) = Likelihood::new(seen) else {
        return Err(NoTurningPoint::SameSeparation { separation: least });
    };
    if let Some(side) = likelihood.parted() {
        let (from, to) = match side {
            NoseFirst::Above => (otherwise.most, nose_first.least),
            NoseFirst::Below => (nose_first.most, otherwise.least),
        };
        return Err(NoTurningPoint::Parted(Gap { from, to, nose_first: side }));
    }
    let curve = likelihood.curve();
    let [level, steep] = curve.at;
    if steep.abs() < LEVEL {
        return Err(NoTurningPoint::Level);
    }
    Ok(TurningPoint {
        at: curve.scale.back(-level / steep),
        band: likelihood_band(&likelihood, curve.at),
        nose_first: if steep > 0.0 { NoseFirst::Above } else { NoseFirst::Below },
        curve,
    })
}

/// The trials with one outcome.
struct Group {
    trials: u64,
    least: f64,
    most: f64,
}

impl Group {
    fn of(seen: &[Seen], count: impl Fn(&Seen) -> u32) -> Self {
        let mut group = Self { trials: 0, least: f64::INFINITY, most: f64::NEG_INFINITY };
        for seen in seen.iter().filter(|seen| seen.counts() && count(seen) > 0) {
            group.trials += u64::from(count(seen));
            group.least = group.least.min(seen.separation);
            group.most = group.most.max(seen.separation);
        }
        group
    }
}

/// The places that the likelihood does not rule out.
///
/// Curves through one half at t are a line through nothing in the plane of level and
/// steepness, at an angle of which t is minus the cotangent. Those that are likely enough
/// are a convex patch of the plane, so the angles that meet it are one stretch; it ends
/// before the line of no steepness, or the band has no end.
fn likelihood_band(likelihood: &Likelihood, best: [f64; 2]) -> Band {
    let enough = likelihood.log_likelihood(best) - NORMAL_95 * NORMAL_95 / 2.0;
    let keeps = |angle: f64| {
        let (steep, level) = libm::sincos(angle);
        // The best curve's foot on the line is near the best of the line.
        let foot = best[0] * level + best[1] * steep;
        let at = likelihood.best(Some([level, steep]), [foot * level, foot * steep]);
        likelihood.log_likelihood(at) >= enough
    };
    if keeps(0.0) {
        return Band::Unbounded;
    }
    let upward = best.map(|part| part * 1_f64.copysign(best[1]));
    let found = libm::atan2(upward[1], upward[0]);
    let edge = |mut out: f64| {
        let mut kept = found;
        for _ in 0..HALVINGS {
            let middle = kept / 2.0 + out / 2.0;
            *(if keeps(middle) { &mut kept } else { &mut out }) = middle;
        }
        let (steep, level) = libm::sincos(kept);
        likelihood.scale.back(-level / steep)
    };
    Band::Between { least: edge(0.0), most: edge(PI) }
}

impl TurningPoint {
    /// The 95 % band by E. C. Fieller's theorem (Journal of the Royal Statistical Society B
    /// 16, 1954, 175-185; D. J. Finney, Probit Analysis, 3rd ed., 1971, chapter 4): all t
    /// with `(a + b t)² ≤ 1.96² (V_aa + 2 t V_ab + t² V_bb)`. [Unbounded](Band::Unbounded)
    /// where the slope is less than 1.96 of its standard errors from nothing, though the
    /// quadratic may then leave out a stretch in the middle.
    ///
    /// Of the closed forms this is the one to take: the delta method (a/b ± 1.96 of a
    /// standard error to first order) ends even where the slope may be nothing, and holds
    /// the true value too rarely, for 89 to 91 of 100 made-up classes of 20 whose outcomes
    /// overlap (slopes of 4 to 16 on separations from −1 to 1); Fieller's holds it for
    /// nearly all. But it errs the other way: the steeper the curve, the larger the slope's
    /// standard error (W. W. Hauck & A. Donner, Journal of the American Statistical
    /// Association 72, 1977, 851-853), so that it has no end for 27 to 90 of those 100, most
    /// often where the trials tell the most. The likelihood's band has no end for at most
    /// 3, and holds the true value for 94 to 98 (`tests/references/tests/class_statistics.rs`
    /// counts both anew); with a slope of 2 it has none for 37, as it should. So
    /// [`TurningPoint::band`] is what a class is told, and this stands beside it for
    /// comparison with published numbers.
    #[must_use]
    pub fn fieller(&self) -> Band {
        let Curve { scale, at: [level, steep], covariance } = self.curve;
        let [level_part, both_part, steep_part] =
            covariance.map(|part| NORMAL_95 * NORMAL_95 * part);
        let square = steep * steep - steep_part;
        if square <= 0.0 {
            return Band::Unbounded;
        }
        let half = level * steep - both_part;
        let rest = level * level - level_part;
        let root = (half * half - square * rest).max(0.0).sqrt();
        let end = |root: f64| scale.back((root - half) / square);
        Band::Between { least: end(-root), most: end(root) }
    }
}
