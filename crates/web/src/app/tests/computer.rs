//! What a computer allows.

use super::*;

#[test]
fn each_thing_that_is_barred_is_named_with_a_way_that_still_works() {
    let mut state = State::new(&Opening::default());
    for way in Capability::ALL {
        assert_eq!(update(&mut state, Msg::Try(way)), [Effect::Try(way), Effect::Redraw]);
        update(&mut state, Msg::Tried(way, CapabilityProbe::Barred));
    }
    update(&mut state, Msg::Offline(Some(false)));
    let check = region(&state, "check");
    assert_eq!(check.matches("<td>Barred</td>").count(), 5, "{check}");
    for help in ["write down the code", "paste it under", "table of numbers"] {
        assert!(check.contains(help), "{help}");
    }
}

#[test]
fn a_copied_link_answers_the_question_about_copying() {
    let mut state = open("", None);
    update(&mut state, Msg::Copied { text: String::new(), is_link: true, done: true });
    assert_eq!(state.computer.trial(Capability::Copy), CapabilityProbe::Works);
    assert_eq!(state.computer.trial(Capability::Save), CapabilityProbe::Open);
}

#[test]
fn in_a_frame_a_tab_of_its_own_is_offered() {
    let mut computer = Computer::default();
    computer.framed = true;
    let state = State::new(&Opening {
        computer,
        address: Some("https://example.org/n/".into()),
        ..Opening::default()
    });
    let href = format!("https://example.org/n/#{}", link::hash(&state.record()));
    assert!(region(&state, "check").contains(&href));
    assert!(!region(&open("", None), "check").contains("own-tab"));
}
