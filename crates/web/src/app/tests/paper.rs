//! The place Paper: sheets are chosen, seen, printed, and made into PDF a little at a time.

use super::*;
use crate::places::paper::{Drawing, Picture, Sheet};
use noseward_drawing::sheets::teacher::{TeacherSheet, hazard_heads, hazard_rows};
use noseward_lesson::SwingOutcome;

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

fn measure(state: &mut State) {
    let trial = state.desk.notebook.in_hand_mut().unwrap();
    trial.measured.mass.mm = [Some(140.0), Some(142.0), None];
    trial.measured.pressure.mm = [Some(200.0), Some(203.0), None];
    state.take_readings();
}

#[test]
fn every_sheet_has_pages_on_both_papers_and_becomes_a_pdf() {
    let mut state = open("", None);
    notebook::begin(&mut state);
    measure(&mut state);
    notebook::predict(&mut state, 1, "small fins");
    notebook::swing(&mut state, SwingOutcome::Steady);
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
    measure(&mut measured);
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

/// A text that a button hands out.
fn text_of(state: &mut State, action: &str) -> (String, String) {
    let effects = press(state, action, "");
    let Some(Effect::Hand { name, bytes, opens: false }) = effects.first().cloned()
    else {
        panic!("{action} hands out nothing")
    };
    (name, String::from_utf8(bytes).unwrap())
}

#[test]
fn what_is_cut_out_is_for_a_cutter_too() {
    let mut state = open("", None);
    let fins = state.design.fins[0].count as usize;
    for (sheet, name, pieces) in [
        (Sheet::CutOut, "noseward-cut-out-outline.svg", 0),
        (Sheet::Fins, "noseward-fins-outline.svg", fins),
        (Sheet::Nose, "noseward-nose-and-tapers-outline.svg", 1),
        (Sheet::Strip, "noseward-strip-outline.svg", 1),
        (Sheet::Tools, "noseward-ruler-and-stand-outline.svg", 2),
    ] {
        choose(&mut state, sheet);
        assert!(shown(&mut state).contains("pp-outline"), "{name}");
        let (called, svg) = text_of(&mut state, "pp-outline");
        assert_eq!(called, name);
        let height = svg.split_once("mm\" height=\"").expect("it is in millimetres").1;
        let height: f64 = height.split_once("mm").unwrap().0.parse().unwrap();
        assert!((20.0..700.0).contains(&height), "{name} is {height} mm high");
        assert!(!svg.contains("var(") && !svg.contains("<rect"), "{name}");
        // Pieces with words on them lie in a place of their own.
        let placed = svg.matches("translate(0 ").count();
        assert!(placed >= pieces, "{name}: {placed} of {pieces}");
    }
    for sheet in [Sheet::Answers, Sheet::Record] {
        choose(&mut state, sheet);
        assert!(
            !shown(&mut state).contains("pp-outline")
                && press(&mut state, "pp-outline", "").is_empty()
        );
    }
}

#[test]
fn hazards_are_a_table_as_the_language_has_it() {
    let mut state = open("", None);
    choose(&mut state, Sheet::Teacher(TeacherSheet::Cover));
    assert!(!shown(&mut state).contains("pp-table"));
    choose(&mut state, Sheet::Teacher(TeacherSheet::Hazards));
    assert!(shown(&mut state).contains("pp-table"));
    let (name, table) = text_of(&mut state, "pp-table");
    assert_eq!(name, "noseward-hazards.csv");
    let heads = table.strip_prefix('\u{feff}').expect("a byte order mark").lines().next();
    assert_eq!(heads, Some(&*hazard_heads().join(",")));
    assert_eq!(table.lines().count(), 1 + hazard_rows().len());
}

#[test]
fn a_drawing_is_handed_out_for_other_programs() {
    let mut state = open("", None);
    press(&mut state, "pp-anyway", "");
    // Without a notebook there is nothing for its charts.
    for (drawing, key, is_there) in [
        (Drawing::Rocket, "rocket", true),
        (Drawing::Outline, "outline", true),
        (Drawing::Chart, "chart", false),
        (Drawing::Series, "series", false),
        (Drawing::Air, "air", true),
    ] {
        choose(&mut state, Sheet::Drawing(drawing));
        assert_eq!(shown(&mut state).contains("leaf--drawn"), is_there, "{key}");
        if is_there {
            let (name, svg) = text_of(&mut state, "pp-svg");
            assert_eq!(name, format!("noseward-{key}.svg"));
            assert!(!svg.contains("var(") && svg.contains("fill=\"#fff\""), "{name}");
            assert!(!svg.contains("class=\"grip\"") && !svg.contains("<title"), "{name}");
        } else {
            assert!(press(&mut state, "pp-svg", "").is_empty());
        }
    }
}

#[test]
fn the_charts_of_the_notebook_are_drawn_once_it_has_something() {
    let mut state = open("", None);
    notebook::begin(&mut state);
    measure(&mut state);
    notebook::predict(&mut state, 1, "small fins");
    notebook::swing(&mut state, SwingOutcome::Steady);
    for drawing in [Drawing::Chart, Drawing::Series] {
        choose(&mut state, Sheet::Drawing(drawing));
        let (name, svg) = text_of(&mut state, "pp-svg");
        assert!(
            svg.contains(">1<") || svg.contains("\u{2068}1\u{2069}"),
            "{name}: {svg}"
        );
    }
}

#[test]
fn what_is_shown_is_painted_as_a_picture() {
    let mut state = open("", None);
    press(&mut state, "pp-behind", "");
    let painted = |state: &mut State| {
        assert_eq!(press(state, "pp-png", ""), [Effect::Look(Looking::AtSheet)]);
        let picture = state.paper.as_mut().and_then(|desk| desk.picture.take());
        let Picture { scene, scale, name } = picture.expect("there is one");
        (name, (scene.width * scale).round(), (scene.height * scale).round())
    };
    let page = ("noseward-cut-out-2.png".to_owned(), 2480.0, 3508.0);
    assert_eq!(painted(&mut state), page);
    choose(&mut state, Sheet::Drawing(Drawing::Rocket));
    let drawing = ("noseward-rocket.png".to_owned(), 2160.0, 1680.0);
    assert_eq!(painted(&mut state), drawing);
    let told = |state: &State| match &state.notice {
        Some(Notice::Said { alarming, words }) => (*alarming, words.clone()),
        other => panic!("{other:?}"),
    };
    places::paper::painted(&mut state, Some("noseward-rocket.png"));
    let (alarming, words) = told(&state);
    assert!(!alarming && words.contains("noseward-rocket.png"), "{words}");
    places::paper::painted(&mut state, None);
    let (alarming, words) = told(&state);
    assert!(alarming && words.contains("could not paint"), "{words}");
}
