//! A rocket that stays as it is, with its report.

use std::cell::OnceCell;
use std::fmt;

use noseward_stability::{Design, Figures, Report, evaluate};

/// A design with its report, worked out when somebody first asks for it and then kept:
/// another design is another rocket.
///
/// ```
/// use noseward_lesson::Rocket;
/// use noseward_stability::Example;
///
/// let rocket = Rocket::from(Example::Puffin.design());
/// assert!(rocket.figures().is_some());
/// assert!(std::ptr::eq(rocket.report(), rocket.report()));
/// ```
#[derive(Clone)]
pub struct Rocket {
    design: Design,
    report: OnceCell<Report>,
}

impl Rocket {
    /// As it is described.
    #[must_use]
    pub fn design(&self) -> &Design {
        &self.design
    }

    /// What is known about it by computation.
    #[must_use]
    pub fn report(&self) -> &Report {
        self.report.get_or_init(|| evaluate(&self.design))
    }

    /// Its figures; `None` when a fault stops the computation.
    #[must_use]
    pub fn figures(&self) -> Option<&Figures> {
        self.report().figures.as_ref()
    }
}

impl From<Design> for Rocket {
    fn from(design: Design) -> Self {
        Self { design, report: OnceCell::new() }
    }
}

impl From<Rocket> for Design {
    fn from(rocket: Rocket) -> Self {
        rocket.design
    }
}

/// The description: whether somebody has asked for the rest is no part of a rocket.
impl fmt::Debug for Rocket {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.design.fmt(formatter)
    }
}

/// Whether they are described in the same way: the rest follows.
impl PartialEq for Rocket {
    fn eq(&self, other: &Self) -> bool {
        self.design == other.design
    }
}
