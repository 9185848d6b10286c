//! Random work in a notebook, with undo and redo at random.

use super::*;
use crate::{NotebookParts, Predictions, SwingOutcome};
use noseward_stability::Example;
use proptest::prelude::*;

/// Something that a group does.
#[derive(Clone, Debug)]
enum Act {
    Span(u8),
    Rename(u8),
    Begin,
    Choose(u8),
    Lock,
    Swing(u8),
    Read(u8, u8),
    Note(u8),
    Copy(u8),
    Delete(u8),
    Restore(u8),
    Shift(u8, bool),
    Plan(u8),
    Take(u8),
    Undo,
    Redo,
}

fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        (0_u8..4).prop_map(Act::Span),
        (0_u8..3).prop_map(Act::Rename),
        Just(Act::Begin),
        (0_u8..4).prop_map(Act::Choose),
        Just(Act::Lock),
        (0_u8..4).prop_map(Act::Swing),
        (0_u8..3, 0_u8..4).prop_map(|(place, mm)| Act::Read(place, mm)),
        (0_u8..3).prop_map(Act::Note),
        (1_u8..4).prop_map(Act::Copy),
        (1_u8..4).prop_map(Act::Delete),
        (1_u8..4).prop_map(Act::Restore),
        (1_u8..4, any::<bool>()).prop_map(|(id, front)| Act::Shift(id, front)),
        (0_u8..3).prop_map(Act::Plan),
        (1_u8..4).prop_map(Act::Take),
        Just(Act::Undo),
        Just(Act::Redo),
    ]
}

/// Does something, as the page does it.
fn perform(document: &mut Document, act: &Act) {
    let Document { record, notebook } = document;
    match *act {
        Act::Span(k) => {
            record.design.fins[0].start_mm = 200.0 + f64::from(k);
            record.swings = record.swings.setup.into();
            notebook.follow(record);
            if notebook.is_in_hand(&record.design, &record.swings.setup) {
                record.swings = notebook.in_hand().unwrap().swings().clone();
            }
        }
        Act::Rename(k) => record.design.name = format!("rocket {k}"),
        Act::Begin => {
            let _ = notebook.begin(record);
            record.swings = record.swings.setup.into();
        }
        Act::Choose(k) => {
            if let Some(trial) = notebook.in_hand_mut() {
                trial.draft.outcome = Some(SwingOutcome::ALL[usize::from(k)]);
            }
        }
        Act::Lock => {
            if let Some(id) = notebook.in_hand().map(crate::Trial::id) {
                notebook.lock(id);
            }
        }
        Act::Swing(k) => {
            let is_here = notebook.is_in_hand(&record.design, &record.swings.setup);
            if is_here
                && notebook.in_hand().unwrap().is_locked()
                && record.swings.add(SwingOutcome::ALL[usize::from(k)])
            {
                notebook.swing(&record.swings);
            }
        }
        Act::Read(place, mm) => {
            if let Some(trial) = notebook.in_hand_mut() {
                trial.measured.mass.mm[usize::from(place)] = Some(100.0 + f64::from(mm));
            }
        }
        Act::Note(k) => {
            if let Some(trial) = notebook.in_hand_mut() {
                trial.note = format!("note {k}");
            }
        }
        Act::Copy(id) => {
            let _ = notebook.copy(id.into());
        }
        Act::Delete(id) => {
            notebook.delete(id.into());
        }
        Act::Restore(id) => {
            notebook.restore(id.into());
        }
        Act::Shift(id, front) => {
            notebook.shift(id.into(), front);
        }
        Act::Plan(k) => {
            notebook.add_plan(&format!("plan {k}"));
        }
        Act::Take(id) => {
            if let Some(trial) = notebook.take_in_hand(id.into()) {
                *record = trial.record();
            }
        }
        Act::Undo | Act::Redo => {}
    }
}

fn start() -> Document {
    let record = crate::Record::from(Example::Puffin.design()).rounded();
    Document { record, notebook: crate::Notebook::default() }
}

/// Every prediction and every swing that is on record, by trial.
fn facts(document: &Document) -> Vec<(u16, Predictions, Vec<SwingOutcome>)> {
    let notebook = &document.notebook;
    let deleted = notebook.deleted().iter().map(|deleted| &deleted.trial);
    let mut facts: Vec<_> = notebook
        .trials()
        .iter()
        .chain(deleted)
        .filter(|trial| trial.has_facts())
        .map(|trial| {
            let seen = trial.swings().outcomes().to_vec();
            (trial.id(), trial.predictions().clone(), seen)
        })
        .collect();
    facts.sort_by_key(|(id, ..)| *id);
    facts
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Undo and redo take no prediction and no swing back, leave nothing that looks as if
    /// somebody had changed it by hand, and are never silent.
    #[test]
    fn facts_stay(acts in prop::collection::vec(act(), 1..40)) {
        let mut now = start();
        let mut history = History::new(now.clone());
        for act in &acts {
            let shown = match act {
                Act::Undo => {
                    prop_assert_eq!(history.undone(), history_of(&history).undo());
                    history.undo()
                }
                Act::Redo => history.redo(),
                _ => {
                    perform(&mut now, act);
                    history.follow(&now, None);
                    continue;
                }
            };
            let Some(shown) = shown else { continue };
            prop_assert_ne!(&shown, &now);
            prop_assert_eq!(facts(&shown), facts(&now));
            now = shown;
            let parts = NotebookParts::from(now.notebook.clone());
            let again = crate::Notebook::try_from(parts).expect("it can be opened");
            prop_assert!(!again.is_altered());
            prop_assert!(again.trials().iter().all(|trial| !trial.is_altered()));
        }
    }

    /// Where nothing was locked, every step goes back to exactly what was, and forward.
    #[test]
    fn there_and_back_again(acts in prop::collection::vec(act(), 1..30)) {
        let mut now = start();
        let mut history = History::new(now.clone());
        let mut been = vec![now.clone()];
        for act in acts {
            if matches!(act, Act::Lock | Act::Undo | Act::Redo) {
                continue;
            }
            perform(&mut now, &act);
            if history.follow(&now, None) {
                been.push(now.clone());
            }
        }
        for before in been.iter().rev().skip(1) {
            prop_assert_eq!(history.undo(), Some(before.clone()));
        }
        prop_assert_eq!(history.undo(), None);
        for after in been.iter().skip(1) {
            prop_assert_eq!(history.redo(), Some(after.clone()));
        }
        prop_assert_eq!(history.redo(), None);
    }
}

fn history_of(history: &History) -> History {
    History {
        before: history.before.clone(),
        now: history.now.clone(),
        after: history.after.clone(),
        open: None,
    }
}

#[test]
fn typing_in_one_field_is_one_step() {
    let mut now = start();
    let mut history = History::new(now.clone());
    for start_mm in [201.0, 202.0, 203.0] {
        now.record.design.fins[0].start_mm = start_mm;
        assert!(history.follow(&now, Some("/fins/0/start_mm")));
    }
    assert!(!history.follow(&now, Some("/fins/0/start_mm")), "nothing new");
    assert_eq!(history.now(), &now);
    history.seal();
    now.record.design.fins[0].start_mm = 204.0;
    history.follow(&now, Some("/fins/0/start_mm"));
    let back = history.undo().unwrap();
    assert_eq!(back.record.design.fins[0].start_mm.to_bits(), 203.0_f64.to_bits());
    assert_eq!(history.undo(), Some(start()));
    assert_eq!(history.undo(), None);
}

#[test]
fn the_oldest_step_goes() {
    let mut now = start();
    let mut history = History::new(now.clone());
    for k in 0..MOST_STEPS + 5 {
        now.record.design.name = format!("rocket {k}");
        history.follow(&now, None);
    }
    let mut steps = 0;
    while history.undo().is_some() {
        steps += 1;
    }
    assert_eq!(steps, MOST_STEPS);
}
