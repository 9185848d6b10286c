//! The place Paper: sheets are chosen, seen, printed, and made into PDF a little at a time.

use super::*;
use crate::places::paper::Sheet;

fn press(state: &mut State, action: &str, target: &str) -> Vec<Effect> {
    update(state, Msg::parse(action, target).expect("it means something"))
}

/// What the place shows once all of it is made.
fn shown(state: &mut State) -> String {
    let mut effects = places::paper::open(state);
    while effects.contains(&Effect::Slice) {
        effects = update(state, Msg::Slice);
    }
    places::paper::regions(state).into_iter().map(|region| region.markup).collect()
}

pub(super) fn choose(state: &mut State, sheet: Sheet) {
    let place = Sheet::all().position(|one| one == sheet).expect("it is listed");
    press(state, "pp-sheet", &place.to_string());
}

/// What is handed to the person.
fn handed(state: &mut State, action: &str) -> (String, Vec<u8>, bool) {
    let effects = press(state, action, "");
    let Some(Effect::Hand { name, bytes, opens }) = effects.into_iter().next() else {
        panic!("{action} hands out nothing")
    };
    (name, bytes, opens)
}

#[test]
fn every_sheet_has_pages_on_both_papers_and_becomes_a_pdf() {
    let mut state = open("", None);
    notebook::begin(&mut state);
    press(&mut state, "pp-anyway", "");
    for sheet in Sheet::all() {
        choose(&mut state, sheet);
        for size in ["a4", "letter"] {
            press(&mut state, "pp-size", size);
            assert!(shown(&mut state).contains("<svg"), "{sheet:?}");
            let (name, bytes, opens) = handed(&mut state, "pp-save");
            assert!(name.ends_with(".pdf") && bytes.starts_with(b"%PDF-"), "{name}");
            assert!(!opens);
        }
    }
    let (.., opens) = handed(&mut state, "pp-open");
    assert!(opens);
}

#[test]
fn pages_are_leafed_through_as_far_as_there_are_some() {
    let mut state = open("", None);
    for (action, page) in [
        ("pp-before", "Page 1 of 3"),
        ("pp-behind", "Page 2 of 3"),
        ("pp-behind", "Page 3 of 3"),
        ("pp-behind", "Page 3 of 3"),
        ("pp-before", "Page 2 of 3"),
    ] {
        press(&mut state, action, "");
        assert!(shown(&mut state).contains(page), "{action} {page}");
    }
    // Another sheet is begun with its first page.
    choose(&mut state, Sheet::CutOutSmall);
    choose(&mut state, Sheet::CutOut);
    assert!(shown(&mut state).contains("Page 1 of 3"));
}

#[test]
fn answers_are_not_told_before_both_points_are_measured() {
    let mut state = open("", None);
    choose(&mut state, Sheet::Answers);
    let told = |state: &mut State| shown(state).contains("<svg");
    assert!(!told(&mut state) && shown(&mut state).contains("not been measured yet"));
    press(&mut state, "pp-anyway", "");
    assert!(told(&mut state));
    let mut measured = open("", None);
    notebook::begin(&mut measured);
    let trial = measured.desk.notebook.in_hand_mut().unwrap();
    trial.measured.mass.mm = [Some(140.0), Some(142.0), None];
    trial.measured.pressure.mm = [Some(200.0), Some(203.0), None];
    measured.take_readings();
    choose(&mut measured, Sheet::Answers);
    assert!(told(&mut measured));
}

#[test]
fn a_design_without_a_body_is_asked_for() {
    let mut state = open("", None);
    for _ in 0..4 {
        update(&mut state, Msg::Remove(Component::Section(0)));
    }
    assert!(shown(&mut state).contains("First describe a rocket"));
    // A rocket without a trial has no report.
    let mut untried = open("", None);
    choose(&mut untried, Sheet::Report);
    assert!(shown(&mut untried).contains("nor the notebook has anything"));
}

#[test]
fn what_is_printed_has_every_page_and_its_paper() {
    let mut state = open("", None);
    let sheet = |state: &mut State| -> String {
        shown(state);
        places::paper::on_paper(state).into_iter().map(|region| region.markup).collect()
    };
    assert_eq!(sheet(&mut state).matches("<svg").count(), 3);
    assert!(sheet(&mut state).contains("leaves--a4"));
    assert!(sheet(&mut state).contains("width=\"210mm\" height=\"297mm\""));
    press(&mut state, "pp-size", "letter");
    assert!(sheet(&mut state).contains("leaves--letter"));
    assert!(press(&mut state, "pp-print", "").contains(&Effect::Print(Paper::Sheets)));
}

/// A pack is made sheet by sheet, and anew where something of it has changed.
#[test]
fn what_is_shown_follows_the_rocket() {
    let mut state = open("", None);
    choose(&mut state, Sheet::PupilPack);
    assert!(state.paper.as_ref().is_some_and(|desk| desk.is_busy()));
    let first: String =
        places::paper::regions(&state).into_iter().map(|region| region.markup).collect();
    assert!(first.contains("Making sheets: 1 of 4") && !first.contains("pp-save"));
    assert!(shown(&mut state).contains("pp-save"));
    choose(&mut state, Sheet::CutOut);
    assert!(shown(&mut state).contains("Puffin"));
    typed(&mut state, Field::Name, "Kittiwake");
    assert!(shown(&mut state).contains("Kittiwake"));
}
