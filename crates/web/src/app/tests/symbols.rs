//! Reading symbols: pictures one after the other, a camera that is given back, and what is read.

use super::class::{self, class_of, code, finish};
use super::notebook::{begin, desk, predict, press, swing};
use super::*;
use crate::places;
use crate::places::class::ClassMsg;
use crate::places::class::symbols::{
    CameraFault, CameraPage, PictureRead, Symbols, SymbolsNews, learn,
};
use noseward_lesson::SwingOutcome;
use noseward_link::{NotebookFile, SymbolFault, notebook_parts};

fn page() -> State {
    class_of(None)
}

/// What the place says of the class, once all is taken in.
fn class(state: &mut State) -> String {
    finish(state);
    class::shown(state)
}

const NOTHING: &str = "Gather what the groups found";

fn tell(state: &mut State, msg: ClassMsg) -> Vec<Effect> {
    update(state, PlaceMsg::Class(msg).into())
}

fn symbols(state: &State) -> &Symbols {
    &state.class.desk.as_ref().unwrap().symbols
}

fn picture(name: &str, texts: &[&str], faults: &[SymbolFault]) -> SymbolsNews {
    let (read, faults) = (texts.len(), faults.to_vec());
    let picture = PictureRead { name: name.into(), is_picture: true, read, faults };
    SymbolsNews::Looked(picture, texts.iter().map(|text| (*text).to_owned()).collect())
}

fn shown(state: &State) -> String {
    places::class::regions(state).into_iter().map(|region| region.markup).collect()
}

const START: Effect = Effect::Look(Looking::StartCamera);
const STOP: Effect = Effect::Look(Looking::StopCamera);

/// A notebook in its parts, and the codes of both.
fn parts() -> Vec<String> {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 1, &"a long reason, ".repeat(18));
    for _ in 0..3 {
        swing(&mut state, SwingOutcome::Steady);
    }
    let notebook = state.desk.notebook.clone();
    let parts = notebook_parts(&NotebookFile { notebook, rocket: None }).unwrap();
    assert!(parts.len() > 1);
    parts
}

#[test]
fn what_several_pictures_say_comes_to_the_class() {
    let parts = parts();
    let codes = [1, 2].map(|colour| code(colour, SwingOutcome::Steady));
    let mut state = page();
    let at_files = Effect::Look(Looking::AtFiles);
    assert_eq!(tell(&mut state, ClassMsg::Chosen), [at_files]);
    learn(&mut state, SymbolsNews::Took(2));
    assert!(shown(&state).contains("picture 1 of 2"), "{}", shown(&state));
    learn(&mut state, picture("a.jpg", &[&parts[0], &codes[0]], &[]));
    assert!(class(&mut state).contains(NOTHING));
    // More come meanwhile.
    learn(&mut state, SymbolsNews::Took(1));
    assert!(shown(&state).contains("picture 2 of 3"));
    learn(&mut state, picture("b.jpg", &[&codes[1]], &[SymbolFault::Unclear]));
    let rest: Vec<&str> = parts[1..].iter().map(String::as_str).collect();
    learn(&mut state, picture("c.jpg", &rest, &[]));
    // Each result and the trial of the notebook.
    let words = class(&mut state);
    assert!(words.contains("New trials: 3, whole notebooks: 1."), "{words}");
    let said = shown(&state);
    for sentence in ["a.jpg", "2 symbols were read.", "b.jpg", "1 symbol is there, but"] {
        assert!(said.contains(sentence), "{sentence}: {said}");
    }
    assert!(!said.contains("picture 3") && !said.contains("Of a notebook"), "{said}");
    // The next lot is told anew, and all of the first is undone at once.
    learn(&mut state, SymbolsNews::Took(1));
    assert!(!shown(&state).contains("a.jpg"));
    press(&mut state, "cl-undo", "");
    assert!(class(&mut state).contains(NOTHING));
}

#[test]
fn a_notebook_is_handed_on_once_all_of_its_symbols_are_read() {
    let parts = parts();
    let mut state = page();
    tell(&mut state, ClassMsg::Camera(true));
    for (part, before) in parts.iter().zip(0..) {
        assert!(class(&mut state).contains(NOTHING));
        let told = format!("Of a notebook {before} of {} symbols", parts.len());
        assert_eq!(shown(&state).contains(&told), before > 0, "{told}");
        learn(&mut state, SymbolsNews::Saw(vec![part.clone()]));
    }
    assert!(!shown(&state).contains("Of a notebook"));
    let words = class(&mut state);
    assert!(words.contains("whole notebooks: 1."), "{words}");
    assert!(!words.contains("to be mended"), "{words}");
    // Another time one of them is enough, wherever the class went meanwhile.
    press(&mut state, "cl-undo", "");
    assert!(class(&mut state).contains(NOTHING));
    tell(&mut state, ClassMsg::Camera(false));
    tell(&mut state, ClassMsg::Camera(true));
    learn(&mut state, SymbolsNews::Saw(vec![parts[0].clone()]));
    assert!(class(&mut state).contains("whole notebooks: 1."));
}

#[test]
fn what_says_nothing_of_a_trial_waits_in_the_class_with_where_it_stood() {
    let mut state = page();
    learn(&mut state, SymbolsNews::Took(1));
    let tern = link::hash(&Example::Tern.design().into());
    learn(&mut state, picture("tern.jpg", &[&tern], &[]));
    assert!(class(&mut state).contains(NOTHING));
    let words = class(&mut state);
    assert!(words.contains("to be mended: 1") && words.contains("tern.jpg, line 1"));
    assert!(words.contains("This is a rocket without a trial"), "{words}");
}

#[test]
fn pictures_without_a_symbol_are_told_and_open_nothing() {
    let mut state = page();
    learn(&mut state, SymbolsNews::Took(4));
    learn(&mut state, picture("sky.jpg", &[], &[]));
    let (name, is_picture, read, faults) = ("<b>.pdf".into(), false, 0, vec![]);
    let file = PictureRead { name, is_picture, read, faults };
    learn(&mut state, SymbolsNews::Looked(file, vec![]));
    let (cut, odd) = (SymbolFault::Incomplete, SymbolFault::NotText);
    learn(&mut state, picture("half.jpg", &[], &[cut, cut, odd]));
    learn(&mut state, picture("sky.jpg", &[], &[]));
    let said = shown(&state);
    for sentence in [
        "No QR symbol was found",
        "cannot open this file as a picture",
        "&lt;b&gt;.pdf",
        "Of 2 symbols only parts are in it",
        "1 symbol holds no text.",
    ] {
        assert!(said.contains(sentence), "{sentence}: {said}");
    }
    assert!(!state.class.is_busy && class(&mut state).contains(NOTHING));
}

#[test]
fn the_camera_runs_until_it_is_stopped() {
    let mut state = page();
    assert!(!shown(&state).contains("<video"));
    assert_eq!(tell(&mut state, ClassMsg::Camera(true)), [Effect::Redraw, START]);
    // Pressed twice.
    assert_eq!(tell(&mut state, ClassMsg::Camera(true)), []);
    assert!(shown(&state).contains("<video") && shown(&state).contains("Allow it there"));
    learn(&mut state, SymbolsNews::CameraRuns);
    assert!(shown(&state).contains("Hold one symbol after the other"));
    learn(&mut state, SymbolsNews::Saw(vec!["A".into(), "B".into()]));
    assert!(shown(&state).contains("has read 2 symbols"));
    assert_eq!(tell(&mut state, ClassMsg::Camera(false)), [Effect::Redraw, STOP]);
    assert!(!shown(&state).contains("<video"));
    // The next time all of them are new.
    tell(&mut state, ClassMsg::Camera(true));
    assert!(!shown(&state).contains("has read"));
}

#[test]
fn a_refused_camera_says_why_and_what_else_works() {
    use CameraFault::{Blocked, FilePage, InUse, InsecurePage, NoCamera, NotAllowed};
    let mut state = page();
    let mut told = Vec::new();
    for fault in [NoCamera, NotAllowed, InsecurePage, FilePage, Blocked, InUse] {
        assert!(tell(&mut state, ClassMsg::Camera(true)).contains(&START));
        assert!(learn(&mut state, SymbolsNews::CameraRefused(fault)).contains(&STOP));
        let said = shown(&state);
        assert!(said.contains("works without a camera"), "{said}");
        assert!(!said.contains("<video") && !told.contains(&said), "{said}");
        told.push(said);
    }
}

#[test]
fn every_refusal_of_a_browser_has_its_kind() {
    use CameraFault::{Blocked, FilePage, InUse, InsecurePage, NoCamera, NotAllowed};
    let served = CameraPage { is_file: false, is_secure: true, is_barred: false };
    let insecure = CameraPage { is_secure: false, ..served };
    let file = CameraPage { is_file: true, ..served };
    let barred = CameraPage { is_barred: true, ..served };
    for (name, page, fault) in [
        (Some("NotAllowedError"), served, NotAllowed),
        (Some("NotAllowedError"), barred, Blocked),
        (Some("NotAllowedError"), file, FilePage),
        (Some("NotFoundError"), served, NoCamera),
        (Some("NotFoundError"), file, NoCamera),
        (Some("OverconstrainedError"), served, NoCamera),
        (Some("NotReadableError"), served, InUse),
        (Some("AbortError"), file, InUse),
        (Some("SecurityError"), served, Blocked),
        (None, insecure, InsecurePage),
        (None, CameraPage { is_secure: false, ..file }, FilePage),
        (None, served, Blocked),
        (Some("TypeError"), served, NotAllowed),
    ] {
        assert_eq!(CameraFault::of(name, page), fault, "{name:?} {page:?}");
    }
}

/// What is still looked at then opens nothing, and the camera, which asks the state, stops.
#[test]
fn deleting_the_class_forgets_what_was_read() {
    let code = code(0, SwingOutcome::Steady);
    for everything in [false, true] {
        let mut state = page();
        tell(&mut state, ClassMsg::Camera(true));
        learn(&mut state, SymbolsNews::Took(1));
        if everything {
            update(&mut state, Msg::Deleted { left: 0 });
        } else {
            tell(&mut state, ClassMsg::Delete);
        }
        learn(&mut state, picture("a.jpg", &[&code], &[]));
        let desk = state.class.desk.as_ref();
        assert!(desk.is_none_or(|desk| desk.symbols == Symbols::default()));
        assert!(!state.class.is_busy);
    }
}

/// What was read goes on, and the camera runs on.
#[test]
fn what_another_tab_keeps_of_the_class_disturbs_no_reading() {
    let mut state = page();
    learn(&mut state, SymbolsNews::Took(2));
    tell(&mut state, ClassMsg::Camera(true));
    tell(&mut state, ClassMsg::Elsewhere(None));
    assert!(symbols(&state).wants_camera() && symbols(&state).is_looking());
}
