//! What groups wrote is marked, and reports are given back.

use super::class::{class_of, code, paste, say, shown};
use super::notebook::{begin, desk, file, predict, press, swing, write};
use super::*;
use crate::places::class::{self as place, ClassMsg};
use noseward_lesson::{Statement, SwingOutcome};

/// A notebook of two trials with one change between them, and what it concludes.
fn notebook(we: &str) -> String {
    let mut state = desk();
    for place in ["40", "60"] {
        if place == "60" {
            begin(&mut state);
        }
        typed(&mut state, CLAY_PLACE, place);
        for (field, text) in [
            ("nb:centre_of_mass_reading_1_mm", "150"),
            ("nb:centre_of_mass_reading_2_mm", "153"),
            ("nb:centre_of_pressure_reading_1_mm", "190"),
            ("nb:centre_of_pressure_reading_2_mm", "188"),
        ] {
            write(&mut state, field, text);
        }
        predict(&mut state, 0, "the nose is heavy");
        for _ in 0..3 {
            swing(&mut state, SwingOutcome::Steady);
        }
    }
    for of in Statement::ALL {
        *state.desk.notebook.conclusion.text_mut(of) = format!("{we} say: {of:?}");
    }
    file(&mut state)
}

/// The invented class, at the view with this number.
fn example(view: usize) -> State {
    let mut state = class_of(None);
    say(&mut state, ClassMsg::Example);
    press(&mut state, "cl-show", view);
    state
}

const MARKING: usize = 3;
const REPORTS: usize = 4;

fn downloaded(
    state: &mut State,
    action: &str,
    target: impl ToString,
) -> (String, String) {
    match press(state, action, target).into_iter().next() {
        Some(Effect::Download { name, text }) => (name, text),
        other => panic!("{other:?}"),
    }
}

fn sheet(state: &mut State, paper: Paper) -> String {
    call(state, Ask::Paper(paper)).regions.remove(0).markup
}

#[test]
fn what_a_group_wrote_stands_beside_its_data_and_what_is_found_is_kept() {
    let mut state = class_of(None);
    press(&mut state, "cl-show", MARKING);
    assert!(shown(&state).contains("No notebook has come whole yet"));
    paste(&mut state, &notebook("We"));
    paste(&mut state, &code(2, SwingOutcome::Steady));
    let words = shown(&state);
    for told in [
        "We say: Claim",
        "We say: Trust",
        "37.5 mm",
        "2 readings, range 3 mm",
        "Trials with a measured separation: 2 of 2",
        "Compared trials that changed no more than one thing: 1 of 1",
        "Trials predicted before swinging: 2 of 2",
        "Only numbers came from: Yellow 1",
        "the separation went from 37.5 mm to 37.5 mm",
        "Notebook 1 of 1",
    ] {
        assert!(words.contains(told), "{told}: {words}");
    }
    let pressed = |state: &State| {
        place::regions(state)[1].markup.matches("cl-find\" data-target").count()
            - place::regions(state)[1].markup.matches("aria-pressed=\"false\"").count()
    };
    assert_eq!(pressed(&state), 0, "nothing is found by itself");
    let effects = press(&mut state, "cl-find", "1");
    assert!(effects.contains(&Effect::Keep) && pressed(&state) == 1);
    press(&mut state, "cl-find", "4");
    press(&mut state, "cl-find", "1");
    let mut state = class_of(Some(&place::kept(&state)));
    press(&mut state, "cl-show", MARKING);
    assert_eq!(pressed(&state), 1);
    let (name, text) = downloaded(&mut state, "cl-report", 9);
    assert!(name.starts_with("noseward-class-") && name.ends_with("-1.txt"), "{name}");
    assert!(text.contains("which way the air turns the rocket."), "{text}");
    assert!(!text.contains("fits the group"), "{text}");
}

#[test]
fn one_notebook_after_the_other_and_each_by_its_label() {
    let mut state = example(MARKING);
    let at = |state: &State| {
        let words = shown(state);
        let at = words.find("What ").expect("a heading");
        words[at..].split(" wrote").next().unwrap().to_owned()
    };
    assert_eq!(at(&state), "What Red 1");
    assert!(shown(&state).contains("Notebook 1 of 24"));
    assert!(shown(&state).contains("Invented, for practice"));
    press(&mut state, "cl-step", 0);
    assert_eq!(at(&state), "What Gold 2");
    press(&mut state, "cl-step", 1);
    press(&mut state, "cl-step", 1);
    assert_eq!(at(&state), "What Red 2");
    let effects = press(&mut state, "cl-step", 2);
    assert!(effects.contains(&Effect::Focus("cl:marked".into())));
    assert_eq!(at(&state), "What Orange 1");
    write(&mut state, "cl:marked", "4");
    assert_eq!(at(&state), "What Yellow 1");
    // What is looked at stays when others come, and goes with the invented class.
    paste(&mut state, &notebook("We"));
    assert_eq!(at(&state), "What Yellow 1");
    press(&mut state, "cl-drop-example", "");
    assert!(shown(&state).contains("Notebook 1 of 1"));
    assert!(!shown(&state).contains("Invented"));
}

#[test]
fn two_notebooks_under_one_label_are_told_apart() {
    let mut state = class_of(None);
    press(&mut state, "cl-show", MARKING);
    paste(&mut state, &notebook("We"));
    paste(&mut state, &notebook("Others"));
    let words = shown(&state);
    assert!(words.contains(", notebook 1 of 2") && words.contains(", notebook 2 of 2"));
    assert_eq!(sheet(&mut state, Paper::Groups).matches("class=\"report\"").count(), 2);
}

#[test]
fn a_class_that_was_saved_opens_again_without_loss() {
    let mut state = example(MARKING);
    paste(&mut state, &notebook("We"));
    press(&mut state, "cl-find", "0");
    press(&mut state, "cl-find", "9");
    press(&mut state, "cl-step", 1);
    press(&mut state, "cl-find", "5");
    press(&mut state, "cl-hide", "3");
    press(&mut state, "cl-mark", "3");
    press(&mut state, "cl-mark", "7");
    // A newer trial beside an older one.
    for (name, text) in
        [("colour", "0"), ("number", "1"), ("trial", "1"), ("point0", "201")]
    {
        write(&mut state, &format!("cl:{name}"), text);
    }
    press(&mut state, "cl-add-row", "");
    write(&mut state, "cl:label", "7b");
    write(&mut state, "cl:day", "2031-02-28");
    let set_up = link::set_up_hash(&link::SetUpLink::default());
    state.set_up.text = set_up;
    press(&mut state, "cl-hold", "");
    // What was refused waits here, and is no part of the class.
    press(&mut state, "cl-show", "0");
    while place::regions(&state)[1].markup.contains("cl-leave-out") {
        press(&mut state, "cl-leave-out", "0");
    }
    let (name, text) = downloaded(&mut state, "cl-save", "");
    assert_eq!(name, "noseward-class-7b.csv");
    let kept = place::kept(&state);
    assert!(kept.contains("513") && kept.contains("2031-02-28"));
    let mut other = class_of(None);
    say(&mut other, ClassMsg::Files(vec![(name, Some(text))]));
    for (came, went) in place::kept(&other).lines().zip(kept.lines()) {
        assert_eq!(came, went);
    }
    assert_eq!(place::kept(&other).len(), kept.len());
    // And once more changes nothing.
    paste(&mut other, &kept);
    assert_eq!(place::kept(&other), kept);
}

#[test]
fn reports_say_on_every_page_what_is_invented_and_leave_it_out_beside_what_is_real() {
    let mut state = example(REPORTS);
    let effects = press(&mut state, "cl-report", 0);
    assert!(effects.contains(&Effect::Print(Paper::Groups)));
    let groups = sheet(&mut state, Paper::Groups);
    assert_eq!(groups.matches("class=\"report\"").count(), 24);
    assert_eq!(groups.matches("Invented, for practice").count(), 24);
    assert_eq!(groups.matches("not permission to").count(), 24);
    let class = sheet(&mut state, Paper::Class);
    assert_eq!(class.matches("Invented, for practice").count(), 1);
    for told in
        ["Trials: 46, groups: 23", "that came true", "on average", "Half of these"]
    {
        assert!(class.contains(told), "{told}: {class}");
    }
    assert_eq!(class.matches("<tr>").count(), 47);
    paste(&mut state, &notebook("We"));
    paste(&mut state, &code(2, SwingOutcome::Steady));
    let groups = sheet(&mut state, Paper::Groups);
    assert_eq!(groups.matches("class=\"report\"").count(), 2);
    assert!(groups.contains("Only numbers came") && groups.contains("We say: Reason"));
    for paper in [Paper::Groups, Paper::Class, Paper::Group] {
        let sheet = sheet(&mut state, paper);
        assert_eq!(sheet.contains("nvented"), paper == Paper::Group, "{sheet}");
    }
}

#[test]
fn the_class_as_text_and_as_a_table_for_people() {
    let mut state = example(MARKING);
    press(&mut state, "cl-find", "7");
    let (name, text) = downloaded(&mut state, "cl-report", 7);
    assert_eq!(name, "noseward-class-report.txt");
    assert!(text.starts_with("Report of the class\nInvented, for practice\nTrials: 46"));
    assert!(text.contains("more than once. In 1 of 24 notebooks."), "{text}");
    assert_eq!(text.matches("Separation measured: ").count(), 46);
    let (name, text) = downloaded(&mut state, "cl-report", 8);
    assert_eq!(name, "noseward-class-groups.txt");
    assert_eq!(text.matches("Report of ").count(), 24);
    assert_eq!(text.matches("Each point was read more than once.").count(), 1);
    let (name, text) = downloaded(&mut state, "cl-report", 4);
    assert_eq!(name, "noseward-class-table-semicolons.csv");
    let head = text.lines().next().unwrap();
    for told in
        ["What changed [what_changed];", "Flew nose-first [nose_first]", ";Invented ["]
    {
        assert!(head.contains(told), "{told}: {head}");
    }
    assert!(!text.contains("n1."), "whole notebooks are in the file of the class");
    let effects = press(&mut state, "cl-report", 5);
    assert!(matches!(&effects[..], [Effect::Copy { text, .. }] if text.contains('\t')));
}

#[test]
fn the_invented_groups_wrote_something_to_mark() {
    let mut state = example(MARKING);
    let (_, text) = downloaded(&mut state, "cl-report", 8);
    for (told, groups) in [
        ("That is behind the centre of mass", 5),
        ("That is not far enough behind", 1),
        ("Claim: Fins do not matter", 6),
        ("Evidence: We all saw it.", 6),
        ("Trust: We are very sure.", 6),
        ("Evidence: In trial 1 the separation was", 12),
        ("nothing yet", 0),
        ("- one more fin", 8),
    ] {
        assert_eq!(text.matches(told).count(), groups, "{told}");
    }
    // In the language in use.
    noseward_words::speak(noseward_words::table_of("de"));
    let mut state = example(MARKING);
    let (_, text) = downloaded(&mut state, "cl-report", 8);
    noseward_words::speak(None);
    assert_eq!(text.matches("Wir sind ganz sicher.").count(), 6, "{text}");
    assert!(!text.contains(" the ") && text.contains("Erfunden"), "{text}");
}
