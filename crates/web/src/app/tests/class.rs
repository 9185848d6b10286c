//! What groups hand in is gathered.

use super::notebook::{begin, desk, predict, press, swing, write};
use super::*;
use crate::places::class::{self as place, ClassMsg};
use noseward_lesson::{Group, SwingOutcome};
use noseward_link::{result_code, rules_text};

pub(super) fn class_of(kept: Option<&str>) -> State {
    let opening = Opening { class: kept.map(str::to_owned), ..Opening::default() };
    let mut state = State::new(&opening);
    state.parts = Loading::all(Code::Here);
    place::open(&mut state);
    finish(&mut state);
    state
}

pub(super) fn finish(state: &mut State) {
    while state.class.is_busy {
        update(state, Msg::Slice);
    }
}

pub(super) fn say(state: &mut State, msg: ClassMsg) -> Vec<Effect> {
    let effects = update(state, PlaceMsg::Class(msg).into());
    finish(state);
    effects
}

pub(super) fn paste(state: &mut State, text: &str) {
    write(state, "cl:pasted", text);
    press(state, "cl-gather", "");
    finish(state);
}

pub(super) fn shown(state: &State) -> String {
    let text: String = place::regions(state).into_iter().map(|r| r.markup).collect();
    // Words alone.
    let parts =
        text.split('<').map(|part| part.split_once('>').map_or("", |(_, words)| words));
    parts.collect::<Vec<_>>().join(" ")
}

/// The code of a group's first trial.
pub(super) fn code(colour: usize, outcome: SwingOutcome) -> String {
    let mut state = desk();
    state.desk.notebook.group =
        Group::new(noseward_lesson::Colour::ALL[colour], 1).unwrap();
    begin(&mut state);
    predict(&mut state, 0, "it is heavy in front");
    for _ in 0..3 {
        swing(&mut state, outcome);
    }
    let result = noseward_lesson::TrialResult::of(&state.desk.notebook, 1).unwrap();
    result_code(&result)
}

#[test]
fn codes_come_in_once_and_what_is_damaged_waits_to_be_mended() {
    let mut state = class_of(None);
    let codes = [0, 1, 2].map(|colour| code(colour, SwingOutcome::Steady));
    // Two letters of its second row changed places.
    let mut damaged: Vec<char> = codes[2].chars().collect();
    let at = (30..).find(|&i| damaged[i] != damaged[i + 1]).unwrap();
    damaged.swap(at, at + 1);
    let damaged: String = damaged.into_iter().collect();
    paste(
        &mut state,
        &format!("{}\n{}\n{}\nsee you\n{damaged}", codes[0], codes[1], codes[0]),
    );
    let words = shown(&state);
    assert!(words.contains("Trials: 2, groups: 2"), "{words}");
    assert!(
        words.contains("counted once: 1") && words.contains("to be mended: 1"),
        "{words}"
    );
    assert!(words.contains("nothing to take in: 1"), "{words}");
    // What is refused is still there after a reload, and can be mended.
    let mut state = class_of(Some(&place::kept(&state)));
    assert!(shown(&state).contains("to be mended: 1"));
    write(&mut state, "cl:mend0", &codes[2]);
    press(&mut state, "cl-again", "0");
    finish(&mut state);
    let words = shown(&state);
    assert!(
        words.contains("Trials: 3, groups: 3") && !words.contains("to be mended"),
        "{words}"
    );
    press(&mut state, "cl-undo", "");
    assert!(shown(&state).contains("Trials: 2, groups: 2"));
}

#[test]
fn a_class_is_kept_saved_and_opened_without_loss() {
    let mut state = class_of(None);
    say(&mut state, ClassMsg::Example);
    say(&mut state, ClassMsg::Mark(3));
    say(&mut state, ClassMsg::Hide(5));
    write(&mut state, "cl:label", "7b");
    write(&mut state, "cl:day", "2027-07-31");
    let kept = place::kept(&state);
    assert_eq!(place::kept(&class_of(Some(&kept))), kept);
    let effects = press(&mut state, "cl-save", "");
    let Some(Effect::Download { name, text }) = effects.first() else {
        panic!("{effects:?}")
    };
    assert_eq!(name, "noseward-class-7b.csv");
    let mut other = class_of(None);
    let files = vec![(name.clone(), Some(text.clone()))];
    say(&mut other, ClassMsg::Files(files));
    let without_refused = |kept: &str| kept.split('\u{1e}').next().unwrap().to_owned();
    assert_eq!(without_refused(&place::kept(&other)), without_refused(&kept));
}

#[test]
fn a_day_that_is_past_is_told() {
    let mut state = class_of(None);
    say(&mut state, ClassMsg::Example);
    write(&mut state, "cl:day", "2026-11-27");
    state.class.today = (2026, 11, 27);
    assert!(!shown(&state).contains("The day has passed"));
    state.class.today = (2026, 11, 28);
    assert!(shown(&state).contains("The day has passed"));
    write(&mut state, "cl:day", "2026-02-30");
    assert!(!shown(&state).contains("The day has passed"), "no such day");
}

#[test]
fn results_of_other_rules_wait_until_somebody_takes_them() {
    let mut state = class_of(None);
    let set_up = noseward_lesson::SetUp::default();
    let link = noseward_link::SetUpLink { set_up: set_up.clone(), group: None };
    state.set_up.text = noseward_link::set_up_hash(&link);
    press(&mut state, "cl-hold", "");
    paste(&mut state, &code(4, SwingOutcome::Sideways));
    let words = shown(&state);
    assert!(
        words.contains(&rules_text(set_up.rules())) && words.contains("names no rules"),
        "{words}"
    );
    press(&mut state, "cl-take", "0");
    let words = shown(&state);
    assert!(
        words.contains("Trials: 1, groups: 1") && !words.contains("names no rules"),
        "{words}"
    );
    // It stays in when it is opened again.
    let state = class_of(Some(&place::kept(&state)));
    assert!(shown(&state).contains("Trials: 1, groups: 1"));
    assert!(shown(&state).contains(&rules_text(set_up.rules())));
}

#[test]
fn another_tab_s_results_come_to_ours() {
    let mut ours = class_of(None);
    paste(&mut ours, &code(0, SwingOutcome::Steady));
    let mut theirs = class_of(None);
    paste(&mut theirs, &code(1, SwingOutcome::Steady));
    let both = place::kept(&theirs);
    say(&mut ours, ClassMsg::Elsewhere(Some(both.clone())));
    assert!(shown(&ours).contains("Trials: 2, groups: 2"));
    assert!(ours.class.unsaved, "what only this tab has is to be kept");
    // Where all of it was kept, the other tab's word holds.
    ours.class.unsaved = false;
    say(&mut ours, ClassMsg::Elsewhere(Some(both)));
    assert!(shown(&ours).contains("Trials: 1, groups: 1"));
    say(&mut ours, ClassMsg::Elsewhere(None));
    assert_eq!(place::kept(&ours), "");
}

#[test]
fn a_row_from_paper_is_typed_and_taken_in_with_enter() {
    let mut state = class_of(None);
    let typed = |state: &mut State, name: &str, text: &str| {
        write(state, &format!("cl:{name}"), text)
    };
    for (name, text) in [
        ("colour", "3"),
        ("number", "4"),
        ("point0", "201 203.5 202"),
        ("point1", "240"),
        ("predicted", "0"),
        ("swing0", "0"),
        ("swing1", "0"),
        ("swing2", "2"),
        ("changed", "10 g more in the nose"),
    ] {
        typed(&mut state, name, text);
    }
    press(&mut state, "cl-add-row", "");
    let words = shown(&state);
    assert!(words.contains("Green 4, trial 1 is in."), "{words}");
    press(&mut state, "cl-show", "2");
    let words = shown(&state);
    for told in ["202 mm", "240 mm", "38 mm", "10 g more in the nose"] {
        assert!(words.contains(told), "{told}: {words}");
    }
    // The next row is of the same group; what is wrong in it is told.
    press(&mut state, "cl-show", "0");
    typed(&mut state, "point0", "201 x");
    let effects = press(&mut state, "cl-add-row", "");
    assert!(effects.contains(&Effect::Focus("cl:point0".into())), "{effects:?}");
    assert!(shown(&state).contains("“x” is no length"));
    typed(&mut state, "trial", "0");
    press(&mut state, "cl-add-row", "");
    assert!(shown(&state).contains("whole number from 1 to 999"));
}

#[test]
fn the_pattern_is_told_in_sentences() {
    let mut state = class_of(None);
    press(&mut state, "cl-show", "1");
    assert!(shown(&state).contains("Nothing to show yet"));
    say(&mut state, ClassMsg::Example);
    let words = shown(&state);
    for told in [
        "Half of these rockets fly nose-first",
        "95 %",
        "One more trial",
        "Readings that look odd",
    ] {
        assert!(words.contains(told), "{told}: {words}");
    }
    press(&mut state, "cl-widths", "");
    assert!(shown(&state).contains("body widths"));
    press(&mut state, "cl-board", "");
    let words = shown(&state);
    assert!(!words.contains("Readings that look odd"), "for whoever leads alone");
    let effects = press(&mut state, "cl-timer", "0");
    assert!(effects.contains(&Effect::Clock));
    for (now, told) in [(1000.0, "2:00"), (1061.0, "0:59"), (1200.0, "Time is up")] {
        say(&mut state, ClassMsg::Clock(now));
        assert!(shown(&state).contains(told), "{told}");
    }
}

#[test]
fn deleting_is_asked_about_and_leaves_nothing() {
    let mut state = class_of(None);
    say(&mut state, ClassMsg::Example);
    press(&mut state, "cl-ask-delete", "");
    press(&mut state, "cl-keep", "");
    assert!(shown(&state).contains("Trials: 46"));
    press(&mut state, "cl-ask-delete", "");
    press(&mut state, "cl-delete", "");
    assert_eq!(place::kept(&state), "");
    assert!(state.class.unsaved, "what is kept goes too");
}

#[test]
fn taking_in_much_is_done_in_slices_and_can_be_stopped() {
    let mut state = class_of(None);
    say(&mut state, ClassMsg::Example);
    let effects = press(&mut state, "cl-save", "");
    let Some(Effect::Download { text, .. }) = effects.first() else {
        panic!("{effects:?}")
    };
    let mut other = class_of(None);
    let files: Vec<_> =
        (0..400).map(|i| (format!("{i}.csv"), Some(text.clone()))).collect();
    update(&mut other, PlaceMsg::Class(ClassMsg::Files(files)).into());
    // How far it is is told now and then.
    let slices: Vec<_> = (0..8).map(|_| update(&mut other, Msg::Slice)).collect();
    assert!(slices[..7].iter().all(|effects| *effects == [Effect::Slice]), "{slices:?}");
    assert_eq!(slices[7], [Effect::Slice, Effect::Redraw]);
    assert!(other.class.is_busy && shown(&other).contains("Texts read"));
    // Typing goes on meanwhile.
    write(&mut other, "cl:pasted", "abc");
    press(&mut other, "cl-stop", "");
    finish(&mut other);
    let words = shown(&other);
    assert!(words.contains("Stopped.") && words.contains("Trials: 46"), "{words}");
}
