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
/// What the groups put into the nose of their first rocket, in grams: of each example, group by
/// group. So separations lie on both sides of the turning point, and close to it.
const NOSE_G: [[u8; 6]; 4] = [
    [20, 2, 8, 3, 12, 9],
    [1, 8, 4, 12, 2, 6],
    [3, 14, 2, 6, 10, 18],
    [2, 1, 1, 2, 1, 1],
];
/// Where that goes, in millimetres from the tip.
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
    let before = first(place);
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

/// The first rocket of a group: one of the examples, with as much in the nose as the group has.
fn first(place: usize) -> Design {
    let example = place % Example::ALL.len();
    let mut design = Example::ALL[example].design();
    design.weights = vec![Weight {
        label: String::new(),
        mass_g: NOSE_G[example][place / Example::ALL.len()].into(),
        position_mm: NOSE_MM,
    }];
    design
}

/// The rocket with one thing changed: more in the nose, or fins that reach farther out.
fn changed(before: &Design, place: usize, slip: Slip) -> Design {
    let mut after = before.clone();
    let share = [0.3, 0.6, 1.0][place / 4 % 3];
    if place.is_multiple_of(2) || slip == Slip::TwoChanges {
        for weight in &mut after.weights {
            weight.mass_g += (weight.mass_g * share).round().max(1.0);
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
        let off = |i: usize| OFF_MM[(turn * 5 + at * 2 + i) % OFF_MM.len()];
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
    // Every third time a group expects the other thing.
    let expects =
        if (separation_mm > 0.0) != turn.is_multiple_of(3) { Steady } else { TailFirst };
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
    use crate::{
        Band, Class, ClassLabel, NoseFirst, Odd, Refusal, Score, TrialResult, agreement,
        count_predictions, odd, turning_point,
    };

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
        let turns = |is_in: fn(&TrialResult) -> bool| {
            let entries = class.counting().map(|(_, entry)| &entry.result);
            let seen: Vec<_> = entries
                .filter(|result| is_in(result))
                .filter_map(|result| {
                    Some((result.measured_separation_mm()?, result.nose_first()?).into())
                })
                .collect();
            turning_point(&seen).expect("neither parted nor one-sided")
        };
        // With its slips, and without those trials that a leader asks about.
        for found in [turns(|_| true), turns(|result| odd(result).is_empty())] {
            assert!((found.at - TURNS_AT_MM).abs() < 4.0, "{found:?}");
            let Band::Between { least, most } = found.band else { panic!("{found:?}") };
            assert!(least > 0.0 && most < 2.0 * TURNS_AT_MM, "{found:?}");
            assert_eq!(found.nose_first, NoseFirst::Above);
        }
    }

    #[test]
    fn its_measurements_and_its_predictions_are_good_in_part() {
        let results = results();
        let pairs: Vec<_> = results
            .iter()
            .filter_map(|result| {
                Some((result.measured_separation_mm()?, result.computed_separation_mm()?))
            })
            .collect();
        let agreement = agreement(&pairs).unwrap();
        assert_eq!(agreement.count, 48);
        assert!(agreement.mean_difference.abs() < 1.0, "{agreement:?}");
        let spread = agreement.limits.unwrap().standard_deviation;
        assert!((1.0..3.0).contains(&spread), "{agreement:?}");
        assert_eq!(agreement.other_sign, 1);
        let Score { right, of } = count_predictions(&results).before;
        assert!(right > of / 4 && right < of * 3 / 4, "{right} of {of}");
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
