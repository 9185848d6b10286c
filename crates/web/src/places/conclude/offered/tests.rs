//! What is offered, and asked, of real trials.

use super::*;
use SwingOutcome::{Sideways, Steady, TailFirst, Wobbling};
use noseward_lesson::{
    Draft, LeftOut, Level, Measurements, Notebook, Record, Sentences, Statement,
    SwingOutcome,
};
use noseward_stability::{Design, Example, Mass, Planform};

/// Begins a trial, with readings of both points, and swings it.
fn tried(
    notebook: &mut Notebook,
    design: &Design,
    readings: [[Option<f64>; 3]; 2],
    predicted: Option<SwingOutcome>,
    seen: &[SwingOutcome],
) {
    let mut record = Record::from(design.clone());
    let id = notebook.begin(&record).unwrap();
    let trial = notebook.trial_mut(id).unwrap();
    [trial.measured.mass.mm, trial.measured.pressure.mm] = readings;
    trial.draft = Draft { outcome: predicted, because: String::new() };
    notebook.lock(id);
    for outcome in seen {
        record.swings.add(*outcome);
    }
    notebook.swing(&record.swings);
}

/// Tern; then larger fins; then a fourth one and a heavier nose, read badly.
fn notebook() -> Notebook {
    let mut notebook = Notebook::default();
    let mut design = Example::Tern.design();
    let readings = [[150.0, 152.0, 149.0], [162.0, 161.0, 163.0]];
    let seen = [Sideways, Sideways, TailFirst];
    let readings = readings.map(|three| three.map(Some));
    tried(&mut notebook, &design, readings, Some(Sideways), &seen);
    design.fins[0].planform = Planform::FourSided {
        root_mm: 65.0,
        tip_mm: 40.0,
        span_mm: 60.0,
        sweep_mm: 25.0,
    };
    let readings = [[158.0, 156.0, 160.0], [204.0, 204.0, 206.0]];
    let readings = readings.map(|three| three.map(Some));
    tried(&mut notebook, &design, readings, Some(Sideways), &[Steady; 3]);
    design.fins[0].count = 4;
    design.sections[0].mass = Mass::WeighedG(9.0);
    let readings = [[Some(150.0), Some(170.0), None], [168.0, 172.0, 228.0].map(Some)];
    tried(&mut notebook, &design, readings, None, &[Steady, TailFirst]);
    let third = notebook.trial_mut(3).unwrap();
    third.measured.pressure.left_out =
        Some(LeftOut { reading: 2, reason: "The card was bent.".into() });
    notebook
}

fn offered(notebook: &Notebook, of: Statement, units: Units) -> Vec<String> {
    let sentences = Sentences::of(notebook);
    sentences.offered(of).iter().map(|offered| sentence(offered, units)).collect()
}

fn asked(notebook: &Notebook, of: Statement) -> String {
    question(Sentences::of(notebook).question(of), Units::METRIC)
}

fn said(of: Statement) -> Vec<String> {
    offered(&notebook(), of, Units::METRIC)
}

#[test]
fn claims_tell_one_change_and_what_followed() {
    assert_eq!(
        said(Statement::Claim),
        [
            "The fins were made larger. The measured separation grew from 12 mm to 46 mm.",
            "The fins were made larger. The swing went from “sideways or tumbling” to \
             “nose first, steady”.",
        ]
    );
    let mut other = notebook();
    for id in [1, 2] {
        other.trial_mut(id).unwrap().measured = Measurements::default();
    }
    let claims = offered(&other, Statement::Claim, Units::METRIC);
    let worked_out =
        "The fins were made larger. The worked-out separation went from −7 mm to 6 mm.";
    assert_eq!(claims[0], worked_out);
    let second = other.trial_mut(2).unwrap();
    second.measured.mass.mm = [150.0, 170.0, 160.0].map(Some);
    second.measured.pressure.mm = [168.0; 3].map(Some);
    let claims = offered(&other, Statement::Claim, Units::METRIC);
    assert!(claims[0].ends_with(" The two points were too close to call."), "{claims:?}");
    let stayed = followed(Followed::Swing(Steady, Steady), Units::METRIC);
    assert_eq!(stayed, "The swing stayed “nose first, steady”.");
}

#[test]
fn evidence_is_one_piece_a_trial() {
    assert_eq!(
        said(Statement::Evidence),
        [
            "Trial 1: measured separation 12 mm, sideways or tumbling in 2 of 3 swings. \
             We had predicted “sideways or tumbling”, and it came true.",
            "Trial 2 (fin shape): measured separation 46 mm, nose first, steady in 3 of 3 \
             swings. We had predicted “sideways or tumbling”, and it did not come true.",
            "Trial 3 (2 changes): measured separation 10 mm, different outcomes in 2 \
             swings.",
        ]
    );
    let mut first_level = notebook();
    first_level.level = Level::Balance;
    let said = offered(&first_level, Statement::Evidence, Units::METRIC);
    assert!(
        said[1].contains(
            ": centre of mass nearer the nose. Swings: nose first, steady in 3 of 3 \
             swings. We had predicted "
        ),
        "{said:?}"
    );
    assert!(
        said[2].contains(": points too close to call. Swings: different outcomes in 2 "),
        "{said:?}"
    );
    // What is worked out is said to be so, and the same rocket again is the same.
    let mut plain = Notebook::default();
    let tern = Example::Tern.design();
    tried(&mut plain, &tern, [[None; 3]; 2], Some(Steady), &[]);
    tried(&mut plain, &tern, [[None; 3]; 2], None, &[Steady; 3]);
    let worked_out = offered(&plain, Statement::Evidence, Units::METRIC);
    assert!(worked_out[0].starts_with("Trial 1: worked-out separation "));
    assert!(worked_out[0].ends_with(". We had predicted “nose first, steady”."));
    assert!(worked_out[1].starts_with("Trial 2 (the same as trial 1): worked-out "));
    plain.level = Level::Balance;
    let worked_out = offered(&plain, Statement::Evidence, Units::METRIC);
    assert!(worked_out[0].starts_with("Trial 1: worked out: centre of "));
}

#[test]
fn reasons_are_openers_about_the_push_of_the_air() {
    assert_eq!(
        said(Statement::Reason),
        [
            "In trial 1 the swing was “sideways or tumbling”. The centre of mass was \
             nearer the nose, and …",
            "In trial 2 the air pushed behind the centre of mass, so the nose …",
            "When the rocket turns sideways, the air pushes it at …",
            "A longer way between the two points means that the air …",
        ]
    );
    assert_eq!(
        [Turned::PushedAhead, Turned::CloseTogether].map(|how| turned(4, how)),
        [
            "In trial 4 the air pushed ahead of the centre of mass, so the nose …",
            "In trial 4 the two points were close together, so the air …",
        ]
    );
}

#[test]
fn trust_has_the_real_ranges_and_what_was_amiss() {
    assert_eq!(
        said(Statement::Trust),
        [
            "Our three readings of the centre of mass in trial 1 lie within 3 mm.",
            "Our three readings of the centre of pressure (side-on) in trial 1 lie \
             within 2 mm.",
            "Our three readings of the centre of mass in trial 2 lie within 4 mm.",
            "Our three readings of the centre of pressure (side-on) in trial 2 lie \
             within 2 mm.",
            "Our two readings of the centre of mass in trial 3 lie within 20 mm.",
            "Our two readings of the centre of pressure (side-on) in trial 3 lie \
             within 4 mm.",
            "In trial 3 we left out the reading 228 mm: The card was bent.",
            "The two ranges overlap in trial 3: too close to call.",
            "In trial 3 two things changed: nose mass, fin number.",
            "In trial 3 only two swings count.",
            "The swings of trial 3 did not agree.",
            "For trial 3 we predicted nothing.",
        ]
    );
    use noseward_lesson::BalancePoint::{Mass, Pressure};
    for (what, words) in [
        (Trust::OneReading(Mass), "In trial 1 one reading of the centre of mass counts."),
        (
            Trust::OneReading(Pressure),
            "In trial 1 one reading of the centre of pressure (side-on) counts.",
        ),
        (
            Trust::LeftOut { mm: 158.5, reason: "" },
            "In trial 1 we left out the reading 158.5 mm without a reason.",
        ),
        (Trust::NotMeasured, "The separation of trial 1 is worked out, not measured."),
        (
            Trust::Alike(3),
            "The separations of trials 3 and 1 are too close to tell apart.",
        ),
        (Trust::FewSwings(0), "Trial 1 was not swung, or no swing counts."),
        (Trust::FewSwings(1), "In trial 1 only one swing counts."),
        (Trust::PredictedLate, "In trial 1 we predicted after the swing."),
        (Trust::Altered, "Trial 1 was changed outside the notebook."),
    ] {
        assert_eq!(trust(1, what, Units::METRIC), words);
    }
    let many = "In trial 2 6 things changed: a, b.";
    assert_eq!(words::offered_changes(2_u8.into(), 6_u8.into(), "a, b"), many);
}

#[test]
fn questions_are_about_the_groups_own_trials() {
    let ask = |notebook: &Notebook| Statement::ALL.map(|of| asked(notebook, of));
    assert_eq!(
        ask(&notebook()),
        [
            "The fins were made larger. What happened?",
            "Which numbers of trials 1 and 2 show it?",
            "Why was the swing of trial 2 “nose first, steady”? Where did the air push?",
            "In trial 3 the two ranges overlap. What can you still say, and what not?",
        ]
    );
    let mut two = notebook();
    two.delete(3);
    assert_eq!(
        ask(&two)[3],
        "Your readings of the centre of mass in trial 2 differ by 4 mm. What does that \
         change?"
    );
    assert_eq!(
        ask(&Notebook::default()),
        [
            "What did you change, and what happened?",
            "Which numbers and which swings show it?",
            "Why did it happen? Where did the air push?",
            "How sure are you? Measure each point three times to find out.",
        ]
    );
}

/// Short enough for a child of nine, and none of the words that promise too much.
#[test]
fn sentences_are_short_and_promise_nothing() {
    let mut inches = notebook();
    inches.level = Level::Balance;
    let design = Example::Tern.design();
    tried(&mut inches, &design, [[None; 3]; 2], Some(Steady), &[Wobbling; 3]);
    for (notebook, units) in [(notebook(), Units::METRIC), (inches, Units::INCH)] {
        for of in Statement::ALL {
            let mut all = offered(&notebook, of, units);
            all.push(asked(&notebook, of));
            for text in all {
                for word in ["safe", "approved", "prove"] {
                    assert!(!text.contains(word), "{text}");
                }
                for sentence in text.replace(". ", ".\n").replace("? ", "?\n").lines() {
                    let words = sentence.split_whitespace().count();
                    assert!(words <= 17, "{words} words: {sentence}");
                }
            }
        }
    }
}
