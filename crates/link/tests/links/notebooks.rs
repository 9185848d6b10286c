//! Notebooks for the tests: one with something of everything, an ordinary one, the largest,
//! and random ones.

use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, BalancePoint, Colour, Draft, End, Group, LeftOut, Level,
    MOST_PLANS, MOST_TAKEN_BACK, MOST_TRIALS, MOST_VERSIONS, NOTE_CHARS, Notebook,
    PLAN_CHARS, REASON_CHARS, Record, SetUp, Statement, Support, SwingOutcome, Swings,
    Telling, TrialResult,
};
use noseward_link::{NotebookFile, in_code};
use noseward_stability::Example;
use proptest::collection::vec;
use proptest::prelude::*;

use crate::designs;

/// Locks a prediction.
pub(crate) fn predict(
    notebook: &mut Notebook,
    id: u16,
    outcome: SwingOutcome,
    because: &str,
) {
    let trial = notebook.trial_mut(id).expect("a trial that was begun");
    trial.draft = Draft { outcome: Some(outcome), because: because.into() };
    assert!(notebook.lock(id), "{because}");
}

/// Swings the rocket in hand.
fn swing(notebook: &mut Notebook, outcomes: &[SwingOutcome]) {
    let mut swings = notebook.in_hand().expect("a trial in hand").swings().clone();
    for &outcome in outcomes {
        assert!(swings.add(outcome));
    }
    notebook.swing(&swings);
}

/// Three trials and a deleted one, plans, a conclusion, later versions of a prediction,
/// readings from the tail and one that is left out.
pub(crate) fn everything() -> NotebookFile {
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
    let group = Group::new(Colour::Blue, 4).expect("there is a Blue 4");
    let mut notebook = Notebook::default().set_up_as(group);
    notebook.level = Level::Explain;
    notebook.support = Support::Questions;
    notebook.allows_two_changes = true;
    notebook.telling = Telling::Points;
    for plan in ["heavier nose", "longer body", "fins further back"] {
        assert!(notebook.add_plan(plan));
    }
    let mut record = Record::from(Example::Razorbill.design());
    notebook.begin(&record).expect("room");
    predict(&mut notebook, 1, Sideways, "The fins are small.");
    swing(&mut notebook, &[TailFirst, Slipped, TailFirst, Sideways]);
    predict(&mut notebook, 1, TailFirst, "It did.\nTwice.");
    let trial = notebook.trial_mut(1).expect("the first");
    trial.note = "Windy “outside”, so we went in.\n½ turn a second".into();
    trial.measured.rocket_length_mm = Some(412.5);
    trial.measured.cutout_length_mm = Some(388.0);
    trial.measured.mass.guess_mm = Some(200.0);
    trial.measured.mass.mm = [Some(231.0), Some(233.5), Some(190.0)];
    trial.measured.mass.left_out =
        Some(LeftOut { reading: 2, reason: "The string had slipped.".into() });
    trial.measured.pressure.from = End::Tail;
    trial.measured.pressure.mm = [Some(171.0), None, Some(172.5)];

    record.design.weights[0].mass_g += 10.0;
    notebook.begin_plan(0, &record).expect("room");
    predict(&mut notebook, 2, Wobbling, "The weight pulls the nose down.");
    swing(&mut notebook, &[Wobbling, NotSure, Wobbling]);
    notebook.begin(&Example::Gannet.design().into()).expect("room");
    predict(&mut notebook, 3, Steady, "");
    notebook.delete(3);
    record.design.weights[0].mass_g += 10.0;
    notebook.begin(&record).expect("room");
    notebook.compare(4, Some(1));
    swing(&mut notebook, &[Steady]);
    let trial = notebook.trial_mut(4).expect("the last");
    trial.draft = Draft { outcome: Some(Steady), because: "Still".into() };
    notebook.conclusion.claim = "A heavier nose keeps it nose first.".into();
    notebook.conclusion.evidence = "Trials 1, 2 and 4.".into();
    notebook.conclusion.reason = "The centre of mass moves forward.".into();
    notebook.conclusion.trust = "Three swings each; the hall was calm.".into();
    record.swings.add(Steady);
    NotebookFile { notebook, rocket: Some(record) }
}

/// Five trials as a group writes them in a lesson: one change each, three readings of each
/// point, three swings, and two sentences.
pub(crate) fn ordinary() -> NotebookFile {
    use SwingOutcome::{Sideways, Steady, TailFirst, Wobbling};
    let mut notebook = Notebook::default();
    let mut record = Record::from(Example::Razorbill.design());
    let seen = [TailFirst, Sideways, Wobbling, Steady, Steady];
    for (outcome, id) in seen.into_iter().zip(1..) {
        notebook.begin(&record).expect("room");
        let because = "We think so because the heavy clay is nearer the nose now.";
        predict(&mut notebook, id, outcome, because);
        swing(&mut notebook, &[outcome; 3]);
        let trial = notebook.trial_mut(id).expect("it was begun");
        trial.note = "The string slipped once and we tied it again.".into();
        trial.measured.rocket_length_mm = Some(410.0);
        trial.measured.cutout_length_mm = Some(386.0);
        for point in BalancePoint::ALL {
            let mm = 200.0 + f64::from(id);
            let readings = trial.measured.of_mut(point);
            readings.guess_mm = Some(mm + 7.0);
            readings.mm = [Some(mm), Some(mm + 2.0), Some(mm + 3.5)];
        }
        record.design.weights[0].mass_g += 5.0;
    }
    for of in Statement::ALL {
        let text = notebook.conclusion.text_mut(of);
        *text = "With more clay in the nose it flew nose first, in 3 swings of 3.".into();
    }
    NotebookFile { notebook, rocket: Some(record) }
}

/// As much as there is room for, of one rocket.
pub(crate) fn largest(record: &Record) -> NotebookFile {
    let long = |chars| "🚀".repeat(chars);
    let mut notebook = Notebook::default();
    for id in 1..=u16::try_from(MOST_TRIALS).expect("not many") {
        notebook.begin(record).expect("room");
        // Swings of another trial do not come along.
        notebook.swing(&record.swings);
        for version in 0..MOST_VERSIONS {
            let because = format!("{version}{}", long(BECAUSE_CHARS - 1));
            predict(&mut notebook, id, SwingOutcome::TailFirst, &because);
        }
        for _ in 0..MOST_TAKEN_BACK {
            // With fewer outcomes than a rocket can have, and then with all of them again.
            let seen = record.swings.outcomes();
            let all_but_one = &seen[..seen.len().saturating_sub(1)];
            let fewer = Swings::new(record.swings.setup, all_but_one.iter().copied());
            notebook.swing(&fewer.expect("fewer than there can be"));
            notebook.swing(&record.swings);
        }
        let trial = notebook.trial_mut(id).expect("it was begun");
        trial.plan = long(PLAN_CHARS);
        trial.note = long(NOTE_CHARS);
        trial.draft.outcome = Some(SwingOutcome::TailFirst);
        trial.draft.because = long(BECAUSE_CHARS);
        trial.measured.rocket_length_mm = Some(1999.9);
        trial.measured.cutout_length_mm = Some(1999.9);
        for point in BalancePoint::ALL {
            let readings = trial.measured.of_mut(point);
            readings.guess_mm = Some(1999.9);
            readings.mm = [Some(1999.9); 3];
            readings.left_out = Some(LeftOut { reading: 1, reason: long(REASON_CHARS) });
        }
    }
    for _ in 0..MOST_PLANS {
        assert!(notebook.add_plan(&long(PLAN_CHARS)));
    }
    for of in Statement::ALL {
        *notebook.conclusion.text_mut(of) = long(BOX_CHARS);
    }
    NotebookFile { notebook, rocket: Some(record.clone()) }
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof![2 => Just(String::new()), 2 => "[ -~\n]{0,60}", 1 => "\\PC{0,20}"]
}

fn outcome() -> impl Strategy<Value = SwingOutcome> {
    prop::sample::select(&SwingOutcome::ALL[..])
}

fn reading() -> impl Strategy<Value = Option<f64>> {
    prop::option::of(-50.0..3000.0)
}

/// Random notebooks as they are kept: [`NotebookFile::rounded`].
pub(crate) fn notebook() -> impl Strategy<Value = NotebookFile> {
    let trial = (
        designs::record(),
        vec((outcome(), text()), 0..4),
        (text(), text(), text()),
        vec(reading(), 10),
        prop::option::of((0..3_usize, text())),
        (any::<bool>(), 0..6_u16),
    );
    let rocket = prop::option::of(designs::record());
    let plans = vec("[a-z ]{1,30}", 0..4);
    (
        vec(trial, 0..5),
        rocket,
        plans,
        vec(text(), 4),
        prop::sample::select(&Colour::ALL[..]),
        (1..=40_u8, any::<bool>(), prop::sample::select(&Telling::ALL[..])),
    )
        .prop_map(
            |(trials, rocket, plans, boxes, colour, (number, two_changes, telling))| {
                let group = Group::new(colour, number);
                let set_up = SetUp {
                    allows_two_changes: two_changes,
                    telling,
                    ..SetUp::default()
                };
                let group = group.expect("from 1 to 40");
                let mut notebook = Notebook::of_set_up(group, &set_up);
                if number % 2 == 0 {
                    notebook.lift_set_up();
                }
                for (
                    record,
                    versions,
                    (plan, note, because),
                    mm,
                    left_out,
                    (delete, with),
                ) in trials
                {
                    let id = notebook.begin(&record).expect("room");
                    for (outcome, because) in versions {
                        let trial = notebook.trial_mut(id).expect("it was begun");
                        trial.draft = Draft { outcome: Some(outcome), because };
                        notebook.lock(id);
                    }
                    notebook.compare(id, Some(with));
                    let trial = notebook.trial_mut(id).expect("it was begun");
                    (trial.plan, trial.note, trial.draft.because) = (plan, note, because);
                    let measured = &mut trial.measured;
                    (measured.rocket_length_mm, measured.cutout_length_mm) =
                        (mm[0], mm[1]);
                    measured.mass.guess_mm = mm[2];
                    measured.mass.mm = [mm[3], mm[4], mm[5]];
                    measured.pressure.from = if delete { End::Tail } else { End::Nose };
                    measured.pressure.mm = [mm[7], mm[8], mm[9]];
                    measured.pressure.left_out =
                        left_out.map(|(reading, reason)| LeftOut { reading, reason });
                    if delete && id.is_multiple_of(2) {
                        notebook.delete(id);
                    }
                }
                for plan in plans {
                    notebook.add_plan(&plan);
                }
                for (of, text) in Statement::ALL.into_iter().zip(boxes) {
                    *notebook.conclusion.text_mut(of) = text;
                }
                NotebookFile { notebook, rocket }.rounded()
            },
        )
}

/// What a trial came to, as a code holds it.
pub(crate) fn result_of(notebook: &Notebook, id: u16) -> Option<TrialResult> {
    TrialResult::of(notebook, id).map(|result| in_code(&result))
}
