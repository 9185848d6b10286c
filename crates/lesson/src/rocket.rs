//! A rocket that stays as it is, with its report.

use std::cell::OnceCell;
use std::fmt;
use std::rc::Rc;

use noseward_stability::{Design, Figures, Report, evaluate};

/// A design with its report, worked out when somebody first asks for it and then kept:
/// another design is another rocket. Copies share both, so that a history of notebooks costs
/// little.
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
    shared: Rc<(Design, OnceCell<Report>)>,
}

impl Rocket {
    /// As it is described.
    #[must_use]
    pub fn design(&self) -> &Design {
        &self.shared.0
    }

    /// What is known about it by computation.
    #[must_use]
    pub fn report(&self) -> &Report {
        self.shared.1.get_or_init(|| evaluate(self.design()))
    }

    /// Its figures; `None` when a fault stops the computation.
    #[must_use]
    pub fn figures(&self) -> Option<&Figures> {
        self.report().figures.as_ref()
    }
}

impl Rocket {
    /// A design whose report is known already.
    pub(crate) fn known(design: Design, report: Report) -> Self {
        Self { shared: Rc::new((design, OnceCell::from(report))) }
    }
}

impl From<Design> for Rocket {
    fn from(design: Design) -> Self {
        Self { shared: Rc::new((design, OnceCell::new())) }
    }
}

impl From<Rocket> for Design {
    fn from(rocket: Rocket) -> Self {
        Rc::try_unwrap(rocket.shared).map_or_else(|shared| shared.0.clone(), |own| own.0)
    }
}

/// The description: whether somebody has asked for the rest is no part of a rocket.
impl fmt::Debug for Rocket {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.design().fmt(formatter)
    }
}

/// Whether they are described in the same way: the rest follows.
impl PartialEq for Rocket {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.shared, &other.shared) || self.design() == other.design()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::Example;

    #[test]
    fn a_rocket_is_what_its_description_says() {
        let [tern, again, puffin] = [Example::Tern, Example::Tern, Example::Puffin]
            .map(|example| Rocket::from(example.design()));
        assert!(again.figures().is_some());
        assert_eq!(tern, again);
        assert_ne!(tern, puffin);
        assert_eq!(format!("{tern:?}"), format!("{:?}", Example::Tern.design()));
    }
}
