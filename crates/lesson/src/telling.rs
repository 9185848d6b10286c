//! What a class is told when.

use serde::{Deserialize, Serialize};

/// When the page tells what it works out. A choice of whoever leads.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Telling {
    /// Everything at once.
    #[default]
    All,
    /// What the rocket will do, once the prediction of the trial is locked; the rest at
    /// once.
    Verdict,
    /// As [`Verdict`](Self::Verdict), and a point that was worked out once it was measured.
    Points,
}

impl Telling {
    /// Every kind, the one that holds nothing back first.
    pub const ALL: [Self; 3] = [Self::All, Self::Verdict, Self::Points];

    /// Whether a trial is told what its rocket will do, by whether its prediction is locked.
    #[must_use]
    pub fn tells_verdict(self, is_locked: bool) -> bool {
        match self {
            Self::All => true,
            Self::Verdict | Self::Points => is_locked,
        }
    }

    /// Whether a trial is told where a point was worked out to be, by whether that point
    /// was measured.
    #[must_use]
    pub fn tells_point(self, is_measured: bool) -> bool {
        match self {
            Self::All | Self::Verdict => true,
            Self::Points => is_measured,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Before and after, of the verdict and of a point.
    #[test]
    fn each_holds_back_more_than_the_one_before() {
        let told = Telling::ALL.map(|telling| {
            let verdict = [false, true].map(|is_locked| telling.tells_verdict(is_locked));
            let point = [false, true].map(|is_measured| telling.tells_point(is_measured));
            (verdict, point)
        });
        let (at_once, later) = ([true, true], [false, true]);
        assert_eq!(told, [(at_once, at_once), (later, at_once), (later, later)]);
        assert_eq!(Telling::default(), Telling::All);
    }
}
