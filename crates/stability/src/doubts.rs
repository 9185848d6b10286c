//! What the model of the air leaves open: what other published choices would give.

use crate::design::Design;
use crate::outcome::{Outcome, resting_angles};
use crate::outline::Body;
use crate::outline::side_view::SideView;
use crate::pressure::air::Unrolled;
use crate::pressure::crossflow::Crossflow;
use crate::pressure::model::Model;
use crate::pressure::rolls::Turned;
use crate::report::{Figures, Span};
use crate::tolerance::separation::Verdict;

/// What comes out of every choice on which sources differ, in the least favourable roll.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubts {
    /// From the foremost to the rearmost centre of pressure nose-on, in metres from the
    /// nose tip. `None` where the air pushes next to nothing by some choice.
    pub centre_of_pressure_nose_on_m: Option<Span>,
    /// Whether each outcome comes out of some choice, by [`Outcome::rank`].
    pub outcomes: [bool; 4],
}

/// How sure an outcome is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Confidence {
    /// Readings and all choices of the model agree on it.
    Agreed,
    /// The readings agree on it, some choices of the model do not.
    Probably,
    /// It changes within what the readings leave open.
    TooClose,
}

impl Doubts {
    /// What the model leaves open about a design with these figures. The cut-out's own
    /// idea, that the air pushes equally everywhere, is one of the choices.
    #[must_use]
    pub fn of(design: &Design, figures: &Figures) -> Option<Self> {
        let body = Body::new(design)?;
        let view = SideView::new(design, &body);
        let moved_m = figures.centre_of_pressure_side_on_m
            - figures.computed_centre_of_pressure_side_on_m;
        let centre_of_mass_m = figures.mass.centre_m;
        let own = Model::with_doubts().map(|model| (model, None));
        let equal = (Model::default(), Some(Crossflow::common()));
        let turned = Turned::all(design, &body, view);
        let mut outcomes = [false; 4];
        let mut nose_on = Vec::new();
        for (model, crossflow) in own.into_iter().chain([equal]) {
            let unrolled =
                Unrolled::new(design, &body, &turned[0].view, model, crossflow);
            let mut rank = 0;
            for Turned { view, .. } in &turned {
                let air = unrolled.seen_in(view, &body).moved(moved_m);
                let rests = resting_angles(&air, centre_of_mass_m);
                rank = rank.max(Outcome::of(&rests).rank());
                nose_on.push(air.centre_of_pressure_m(0.0));
            }
            outcomes[usize::from(rank)] = true;
        }
        let nose_on: Option<Vec<f64>> = nose_on.into_iter().collect();
        Some(Self { centre_of_pressure_nose_on_m: nose_on.and_then(Span::of), outcomes })
    }

    /// Whether every choice comes to the same outcome.
    #[must_use]
    pub fn agree(&self) -> bool {
        self.outcomes.iter().filter(|&&told| told).count() <= 1
    }

    /// How sure an outcome is, with these doubts and with what the draws say, as soon as
    /// they say something.
    #[must_use]
    pub fn confidence(&self, outcome: Outcome, draws: Option<&Verdict>) -> Confidence {
        let rank = usize::from(outcome.rank());
        if draws.is_some_and(|draws| !draws.settles(rank)) {
            Confidence::TooClose
        } else if self.agree() && self.outcomes[rank] {
            Confidence::Agreed
        } else {
            Confidence::Probably
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, MeasuredPoints, Resolution, SeparationDraws, evaluate};

    fn doubts(design: &Design) -> (Outcome, Doubts) {
        let figures = evaluate(design).figures.unwrap();
        (figures.outcome, Doubts::of(design, &figures).unwrap())
    }

    #[test]
    fn the_model_itself_is_one_of_the_choices() {
        for example in Example::ALL {
            let design = example.design();
            let figures = evaluate(&design).figures.unwrap();
            let doubts = Doubts::of(&design, &figures).unwrap();
            assert!(doubts.outcomes[usize::from(figures.outcome.rank())], "{example:?}");
            let span = doubts.centre_of_pressure_nose_on_m.unwrap();
            let own = figures.centre_of_pressure_nose_on_m.unwrap();
            assert!(span.least <= own && own <= span.most, "{example:?}");
            assert!(span.most - span.least > 0.002, "{example:?}");
        }
    }

    /// Fins behind fins may push nothing: the band reaches to that.
    #[test]
    fn a_wake_widens_the_band() {
        let mut design = Example::Puffin.design();
        let alone = doubts(&design).1.centre_of_pressure_nose_on_m.unwrap();
        let mut ahead = design.fins[0].clone();
        ahead.start_mm = 105.0;
        design.fins.push(ahead);
        let tandem = doubts(&design).1.centre_of_pressure_nose_on_m.unwrap();
        let width = |span: Span| span.most - span.least;
        assert!(width(tandem) > width(alone) + 0.01);
    }

    #[test]
    fn words_follow_readings_and_doubts() {
        let verdict = |shares| {
            let mut draws = SeparationDraws::new(
                &Example::Gannet.design(),
                &MeasuredPoints::default(),
                Resolution::default(),
            );
            draws.run(10_000);
            Verdict { shares, ..draws.verdict().unwrap() }
        };
        let outcome = Outcome::SelfRighting;
        let of = |outcomes| Doubts { centre_of_pressure_nose_on_m: None, outcomes };
        let (agreed, split) =
            (of([true, false, false, false]), of([true, true, false, false]));
        let sure = verdict([0.99, 0.01, 0.0, 0.0]);
        let open = verdict([0.9, 0.1, 0.0, 0.0]);
        let other = verdict([0.01, 0.99, 0.0, 0.0]);
        assert_eq!(agreed.confidence(outcome, None), Confidence::Agreed);
        assert_eq!(agreed.confidence(outcome, Some(&sure)), Confidence::Agreed);
        assert_eq!(split.confidence(outcome, Some(&sure)), Confidence::Probably);
        assert_eq!(agreed.confidence(outcome, Some(&open)), Confidence::TooClose);
        assert_eq!(agreed.confidence(outcome, Some(&other)), Confidence::TooClose);
    }
}
