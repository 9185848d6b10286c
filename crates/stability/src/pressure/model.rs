//! The choices within the model of the air on which sources differ.

/// How the fins' lift is raised by the body between them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CarryOver {
    /// K = 1 + R/(s + R) on the fins alone: the cautious choice (Barrowman 1967).
    #[default]
    FinsOnly,
    /// K = (1 + R/(s + R))², with what is carried over to the body (slender-body theory;
    /// Pitts, Nielsen & Kaattari 1957, NACA Report 1307).
    WithBody,
}

/// How a narrowing stretch of body counts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Shoulder {
    /// In full up to 15 degrees of half-angle, not at all from 25, a straight line
    /// between: the air leaves a steep shoulder. Our judgement, chosen so that the stern of
    /// a measured hull keeps 81 % of its negative lift where 73 % were measured (Roddy 1990,
    /// DTRC/SHD-1298-08): the error puts the centre of pressure too far forward, which is
    /// the cautious side.
    #[default]
    Fades,
    /// In full, however steep: slender-body theory to the letter (Munk 1924).
    InFull,
    /// Not at all.
    NotAtAll,
}

/// Where a fin's lift acts at small angles.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FinCentre {
    /// At a quarter of the mean aerodynamic chord (Barrowman 1967).
    #[default]
    QuarterChord,
    /// Further forward on a stubby fin, as lifting-surface computations give for
    /// rectangles. For swept fins a cautious bound: their own centres lie further back.
    Stubby,
}

/// How fins behind other fins count.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Wake {
    /// As in clean air.
    #[default]
    InFull,
    /// Not at all, as far as they are behind: the worst that a wake can do.
    NoLift,
}

/// One set of choices.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Model {
    /// Fins beside a body.
    pub carry_over: CarryOver,
    /// Narrowing stretches.
    pub shoulder: Shoulder,
    /// Stubby fins.
    pub fin_centre: FinCentre,
    /// Fins behind fins.
    pub wake: Wake,
}

/// Half-angle up to which a narrowing stretch counts in full, in degrees.
const SHOULDER_FULL_DEG: f64 = 15.0;
/// Half-angle from which it does not count, in degrees.
const SHOULDER_NOTHING_DEG: f64 = 25.0;

impl Model {
    /// The model itself and each of its doubts alone: what another published choice
    /// would give.
    #[must_use]
    pub fn with_doubts() -> [Self; 6] {
        let plain = Self::default();
        [
            plain,
            Self { carry_over: CarryOver::WithBody, ..plain },
            Self { shoulder: Shoulder::InFull, ..plain },
            Self { shoulder: Shoulder::NotAtAll, ..plain },
            Self { fin_centre: FinCentre::Stubby, ..plain },
            Self { wake: Wake::NoLift, ..plain },
        ]
    }
}

impl Shoulder {
    /// The share that counts at a local half-angle.
    pub(crate) fn share(self, half_angle_rad: f64) -> f64 {
        let degrees = half_angle_rad.to_degrees();
        match self {
            Self::InFull => 1.0,
            Self::NotAtAll => 0.0,
            Self::Fades => ((SHOULDER_NOTHING_DEG - degrees)
                / (SHOULDER_NOTHING_DEG - SHOULDER_FULL_DEG))
                .clamp(0.0, 1.0),
        }
    }

    /// The angles at which the share bends.
    pub(crate) fn bends_rad() -> [f64; 2] {
        [SHOULDER_FULL_DEG.to_radians(), SHOULDER_NOTHING_DEG.to_radians()]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_shoulder_fades_from_fifteen_to_twenty_five_degrees() {
        for (degrees, share) in
            [(0.0, 1.0), (15.0, 1.0), (20.0, 0.5), (25.0, 0.0), (90.0, 0.0)]
        {
            let found = Shoulder::Fades.share(f64::to_radians(degrees));
            assert!((found - share).abs() < 1e-12, "{degrees}");
        }
    }
}
