//! What is told when.

use super::notebook::{FIN_SPAN, begin, desk, predict, swing, write};
use super::*;
use noseward_lesson::SwingOutcome;

/// What gives away that a rocket rights itself, in small letters.
const OUTCOME: [&str; 7] = [
    "self-righting",
    "back nose-first",
    "round nose-first",
    "at rest, with the wind",
    "the air turns",
    "flying straight: how",
    "full dot",
];

/// Everything that may tell an outcome: what stands at the drawing, why, the swing test, the
/// rocket in words, what is spoken, and paper.
fn told(state: &mut State) -> String {
    let here = state.place;
    let mut told = region(state, "strip") + &region(state, "in-words");
    for place in [Place::Why, Place::Swing, Place::Predict, Place::Compare] {
        state.place = place;
        told += &page(state);
    }
    state.place = here;
    for paper in [Paper::Rocket, Paper::Swing, Paper::Notebook] {
        told += &places::paper(state, paper).remove(0).markup;
    }
    (told + &shell::spoken(state)).to_lowercase()
}

/// A new notebook whose rocket is worked out, told as whoever leads wishes.
fn worked_out(telling: &str) -> State {
    let mut state = desk();
    write(&mut state, "nb:telling", telling);
    go(&mut state, Place::Swing);
    update(&mut state, Msg::WorkOut);
    state
}

#[test]
fn everything_is_told_at_once_unless_somebody_wishes_otherwise() {
    let mut state = worked_out("0");
    let mut fresh = desk();
    go(&mut fresh, Place::Swing);
    update(&mut fresh, Msg::WorkOut);
    assert_eq!(fresh.desk.notebook, state.desk.notebook, "it is the usual way");
    let told = told(&mut state);
    for words in OUTCOME {
        assert!(told.contains(words), "{words}: {told}");
    }
    assert!(shell::spoken(&state).contains("Self-righting."));
    begin(&mut state);
    assert!(state.tells_outcome(), "in a trial too");
}

#[test]
fn the_verdict_is_hidden_until_the_prediction_is_locked() {
    {
        let mut state = worked_out("1");
        let hidden = |state: &mut State| {
            let told = told(state);
            for words in OUTCOME {
                assert!(!told.contains(words), "{words}: {told}");
            }
            assert!(told.contains("hidden until you have predicted"));
            assert!(region(state, "strip").contains("Predict first."));
            assert!(!shell::spoken(state).contains("ighting"));
            assert!(shell::spoken(state).starts_with("Separation"));
            state.place = Place::Why;
            for id in ["air-graph", "angle", "air-turned", "air-sure"] {
                assert!(!page(state).contains(&format!("id=\"{id}\"")), "{id}");
            }
            state.place = Place::Swing;
            assert!(places::swing::moving(state).is_empty());
        };
        let open = |state: &mut State| {
            let told = told(state);
            for words in OUTCOME {
                assert!(told.contains(words), "{words}: {told}");
            }
        };
        hidden(&mut state);
        begin(&mut state);
        hidden(&mut state);
        update(&mut state, Msg::parse("nb-outcome", "0").unwrap());
        hidden(&mut state);
        predict(&mut state, 0, "the fins are far behind");
        open(&mut state);
        swing(&mut state, SwingOutcome::Steady);
        open(&mut state);
        // Another rocket wants another prediction; the old number is the old rocket.
        let span = state.text_of(FIN_SPAN);
        typed(&mut state, FIN_SPAN, "75");
        update(&mut state, Msg::WorkOut);
        hidden(&mut state);
        typed(&mut state, FIN_SPAN, &span);
        update(&mut state, Msg::WorkOut);
        open(&mut state);
        // Nor does another trial of the same rocket wait for less.
        update(&mut state, Msg::parse("nb-once-more", "").unwrap());
        hidden(&mut state);
    }
}

/// How it is told is a setting: nothing that was written changes with it.
#[test]
fn another_way_of_telling_loses_nothing() {
    let mut state = worked_out("0");
    predict(&mut state, 0, "the fins are far behind");
    swing(&mut state, SwingOutcome::Steady);
    let before = state.desk.notebook.clone();
    for telling in ["1", "0"] {
        write(&mut state, "nb:telling", telling);
        assert!(state.tells_outcome(), "it is locked");
    }
    assert_eq!(state.desk.notebook, before);
    // The next group's notebook is set up in the same way.
    write(&mut state, "nb:telling", "1");
    update(&mut state, Msg::parse("nb-new-group", "").unwrap());
    assert!(!state.tells_outcome());
}
