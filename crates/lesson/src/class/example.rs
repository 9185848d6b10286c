//! An invented class, for practice and for lessons without a rocket: an after-school club by a
//! harbour, whose rockets are named after sea birds. It makes the slips that classes make.

use noseward_stability::{Design, Example, Planform, Weight};

use crate::{
    BalancePoint, Colour, Draft, Group, Notebook, Record, Rocket, SwingOutcome, Swings,
};
use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};

/// Groups of the invented class.
pub const EXAMPLE_GROUPS: u8 = 24;
/// The separation, in millimetres, from which on an invented rocket flies nose-first, give or
/// take what its group does with it.
const TURNS_AT_MM: f64 = 18.0;
/// How far each group's rockets are from that, in millimetres.
const LUCK_MM: [f64; 12] =
    [-9.0, 4.0, 15.0, -3.0, 8.0, -14.0, 0.0, 11.0, -6.0, 2.0, -11.0, 6.0];
/// By how much readings are off, in millimetres, each in its turn.
const OFF_MM: [f64; 7] = [0.0, 2.0, -1.0, 3.0, -2.0, 1.0, -3.0];
/// Where the weight in the nose goes, in millimetres from its tip.
const NOSE_MM: f64 = 40.0;

/// A slip that a group makes.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Slip {
    None,
    /// Both points read from the edge of the ruler and not from its zero.
    RulerZero,
    /// One reading, written three times.
    WrittenThrice,
    /// Two things changed at once.
    TwoChanges,
    /// Swung once and then put away.
    Unfinished,
    /// Predicted when it was swung already.
    PredictedLate,
    /// Tail and nose mixed up in the outcome.
    OtherWayRound,
}

/// The notebooks of the invented class: one a group, two trials each, every number worked out of
/// its rocket and then read, swung and slipped with as children do. The same at every call.
/// Their results [must be marked](crate::TrialResult::example) as invented.
#[must_use]
pub fn example_class() -> Vec<Notebook> {
    (0..EXAMPLE_GROUPS).filter_map(notebook).collect()
}

fn notebook(number: u8) -> Option<Notebook> {
    let place = usize::from(number);
    let colour = Colour::ALL[place % Colour::ALL.len()];
    let mut notebook = Notebook::default();
    notebook.group = Group::new(colour, number / 12 + 1)?;
    let slip = slip(number);
    let before = Example::ALL[place % Example::ALL.len()].design();
    let after = changed(&before, place, slip);
    for (design, turn) in [(before, 0), (after, 1)] {
        trial(&mut notebook, design, 2 * place + turn, slip)?;
    }
    Some(notebook)
}

/// Seven of the 24 make a slip.
fn slip(number: u8) -> Slip {
    match number {
        4 => Slip::RulerZero,
        7 => Slip::WrittenThrice,
        10 => Slip::TwoChanges,
        13 => Slip::Unfinished,
        17 => Slip::PredictedLate,
        20 => Slip::OtherWayRound,
        22 => Slip::RulerZero,
        _ => Slip::None,
    }
}

/// The rocket with one thing changed: more in the nose, or fins that reach farther out.
fn changed(before: &Design, place: usize, slip: Slip) -> Design {
    let mut after = before.clone();
    let share = [0.3, 0.6, 1.0][place / 4 % 3];
    if place.is_multiple_of(2) || slip == Slip::TwoChanges {
        let heaviest = before.weights.first().map_or(10.0, |weight| weight.mass_g);
        let mass_g = (heaviest * share).round().max(1.0);
        match after.weights.first_mut() {
            Some(weight) if weight.position_mm < 100.0 => weight.mass_g += mass_g,
            _ => after.weights.push(Weight {
                label: String::new(),
                mass_g: 2.0 * mass_g,
                position_mm: NOSE_MM,
            }),
        }
    }
    if !place.is_multiple_of(2) || slip == Slip::TwoChanges {
        for fins in &mut after.fins {
            if let Planform::FourSided { span_mm, .. } = &mut fins.planform {
                *span_mm = (*span_mm * (1.0 + 0.4 * share)).round();
            }
        }
    }
    after
}

/// Measures, predicts and swings a rocket: the trial of this turn in the class.
fn trial(notebook: &mut Notebook, design: Design, turn: usize, slip: Slip) -> Option<()> {
    let rocket = Rocket::from(design.clone());
    let figures = rocket.figures()?;
    let points_mm = [
        figures.computed_mass.centre_m * 1000.0,
        figures.centre_of_pressure_side_on_m * 1000.0,
    ];
    let separation_mm = points_mm[1] - points_mm[0];
    let id = notebook.begin(&Record::from(design)).ok()?;
    let trial = notebook.trial_mut(id)?;
    for (at, (point, mm)) in BalancePoint::ALL.into_iter().zip(points_mm).enumerate() {
        let off = |i: usize| OFF_MM[(turn * 5 + at * 3 + i) % OFF_MM.len()];
        let zero = if slip == Slip::RulerZero { 12.0 } else { 0.0 };
        let readings = [0, 1, 2].map(|i| match slip {
            Slip::WrittenThrice => mm.round(),
            _ => (mm + zero + off(i)).round(),
        });
        trial.measured.of_mut(point).mm = readings.map(Some);
    }
    let nose_first = separation_mm + LUCK_MM[turn % LUCK_MM.len()] > TURNS_AT_MM;
    let swings = Swings::new(
        Default::default(),
        outcomes(nose_first != (slip == Slip::OtherWayRound), separation_mm, turn, slip),
    )
    .ok()?;
    // Every third group expects the other thing.
    let expects = if (separation_mm > 0.0) == (!turn.is_multiple_of(3)) {
        Steady
    } else {
        TailFirst
    };
    trial.draft = Draft { outcome: Some(expects), because: String::new() };
    if slip == Slip::PredictedLate {
        notebook.swing(&swings);
        notebook.lock(id);
    } else {
        notebook.lock(id);
        notebook.swing(&swings);
    }
    Some(())
}

/// What the group saw.
fn outcomes(
    nose_first: bool,
    separation_mm: f64,
    turn: usize,
    slip: Slip,
) -> Vec<SwingOutcome> {
    let is_near = (separation_mm - TURNS_AT_MM).abs() < 15.0;
    let mut seen = match (nose_first, is_near) {
        (true, false) => vec![Steady; 3],
        (true, true) => vec![Wobbling, Steady, Wobbling],
        (false, true) => vec![Sideways, Sideways, TailFirst],
        (false, false) => vec![TailFirst; 3],
    };
    if turn % 7 == 3 {
        seen[1] = NotSure;
    }
    if turn % 9 == 4 {
        seen.insert(1, Slipped);
    }
    if slip == Slip::Unfinished {
        seen.truncate(1);
    }
    seen
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Class, ClassLabel, Odd, Refusal, TrialResult, odd, turning_point};

    fn results() -> Vec<TrialResult> {
        example_class()
            .iter()
            .flat_map(|notebook| {
                notebook
                    .trials()
                    .iter()
                    .filter_map(|trial| TrialResult::of(notebook, trial.id()))
            })
            .map(|result| TrialResult { example: true, ..result })
            .collect()
    }

    #[test]
    fn it_has_twenty_four_groups_and_a_pattern() {
        let notebooks = example_class();
        assert_eq!(notebooks.len(), usize::from(EXAMPLE_GROUPS));
        assert_eq!(notebooks, example_class());
        assert!(notebooks.iter().all(|notebook| !notebook.is_altered()));
        let mut class = Class::default();
        let mut refused = Vec::new();
        for result in results() {
            match class.add(&ClassLabel::default(), result, false) {
                Ok(_) => {}
                Err(refusal) => refused.push(refusal),
            }
        }
        assert_eq!(refused, [Refusal::Unfinished { swings: 1 }; 2]);
        assert_eq!(class.entries().len(), 46);
        assert!(class.is_example());
        let seen: Vec<_> = class
            .counting()
            .filter_map(|entry| {
                let result = &entry.result;
                Some((result.measured_separation_mm()?, result.nose_first()?).into())
            })
            .collect();
        let found = turning_point(&seen).expect("neither parted nor one-sided");
        assert!((0.0..40.0).contains(&found.at), "{found:?}");
    }

    #[test]
    fn its_slips_are_those_that_are_asked_about() {
        let found: Vec<Odd> = results().iter().flat_map(odd).collect();
        let count = |is: fn(&Odd) -> bool| found.iter().filter(|odd| is(odd)).count();
        assert_eq!(count(|odd| matches!(odd, Odd::SameSlip { .. })), 4, "{found:?}");
        assert_eq!(count(|odd| matches!(odd, Odd::AllEqual { .. })), 2, "{found:?}");
        assert!(count(|odd| matches!(odd, Odd::OtherOutcome { .. })) >= 1, "{found:?}");
        let results = results();
        let unfair = results.iter().filter(|result| result.is_fair() == Some(false));
        assert_eq!(unfair.count(), 1);
        let late = results.iter().filter(|result| result.swung_first);
        assert_eq!(late.count(), 2);
    }
}
