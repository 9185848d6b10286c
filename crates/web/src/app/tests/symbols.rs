//! Reading symbols: pictures one after the other, a camera that is given back, and what is read.

use super::notebook::{begin, desk, predict};
use super::*;
use crate::app::symbols::{CameraPage, learn};
use crate::places::symbols::reader;
use noseward_link::{NotebookFile, SymbolFault, notebook_parts};

fn page() -> State {
    let mut state = State::new(&Opening { can_keep: true, ..Opening::default() });
    state.parts = Loading::all(Code::Here);
    state
}

fn tell(state: &mut State, msg: SymbolsMsg) -> Vec<Effect> {
    update(state, Msg::Notebook(NotebookMsg::Symbols(msg)))
}

fn picture(name: &str, texts: &[&str], faults: &[SymbolFault]) -> SymbolsNews {
    let texts = texts.iter().map(|text| (*text).to_owned()).collect();
    let faults = faults.to_vec();
    SymbolsNews::Looked(PictureRead {
        name: name.into(),
        is_picture: true,
        texts,
        faults,
    })
}

fn shown(state: &State) -> String {
    reader(state).into_string()
}

const START: Effect = Effect::Symbols(Looking::StartCamera);
const STOP: Effect = Effect::Symbols(Looking::StopCamera);

/// A notebook in its parts, and the codes of both.
fn parts() -> Vec<String> {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 1, &"a long reason, ".repeat(18));
    let notebook = state.desk.notebook.clone();
    let parts = notebook_parts(&NotebookFile { notebook, rocket: None }).unwrap();
    assert!(parts.len() > 1);
    parts
}

#[test]
fn what_several_pictures_say_is_opened_as_if_it_was_pasted() {
    let parts = parts();
    let mut state = page();
    let at_pictures = Effect::Symbols(Looking::AtPictures);
    assert_eq!(tell(&mut state, SymbolsMsg::Chose), [Effect::Redraw, at_pictures]);
    learn(&mut state, SymbolsNews::Took(2));
    assert!(shown(&state).contains("picture 1 of 2"), "{}", shown(&state));
    learn(&mut state, picture("a.jpg", &[&parts[0]], &[]));
    assert!(state.desk.notebook.is_blank() && state.notice.is_none());
    // More come meanwhile.
    learn(&mut state, SymbolsNews::Took(1));
    assert!(shown(&state).contains("picture 2 of 3"));
    learn(&mut state, picture("b.jpg", &[], &[SymbolFault::Unclear]));
    let rest: Vec<&str> = parts[1..].iter().map(String::as_str).collect();
    learn(&mut state, picture("c.jpg", &rest, &[]));
    assert_eq!(state.desk.notebook.trials().len(), 1);
    let said = shown(&state);
    for sentence in ["a.jpg", "1 symbol was read.", "b.jpg", "1 symbol is there, but"] {
        assert!(said.contains(sentence), "{sentence}: {said}");
    }
    assert!(!said.contains(" of 3"), "{said}");
    // The next lot is told anew.
    learn(&mut state, SymbolsNews::Took(1));
    assert!(!shown(&state).contains("a.jpg"));
}

#[test]
fn pictures_without_a_symbol_are_told_and_open_nothing() {
    let mut state = page();
    learn(&mut state, SymbolsNews::Took(4));
    learn(&mut state, picture("sky.jpg", &[], &[]));
    let file = PictureRead {
        name: "<b>.pdf".into(),
        is_picture: false,
        texts: vec![],
        faults: vec![],
    };
    learn(&mut state, SymbolsNews::Looked(file));
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
    assert!(state.notice.is_none());
}

#[test]
fn a_rocket_that_is_read_can_be_taken_back() {
    let mut state = page();
    let before = state.design.clone();
    let tern = Example::Tern.design();
    tell(&mut state, SymbolsMsg::StartCamera);
    learn(&mut state, SymbolsNews::Saw(vec![link::hash(&tern.clone().into())]));
    assert_eq!(state.design, tern.rounded());
    update(&mut state, Msg::Undo);
    assert_eq!(state.design, before);
}

#[test]
fn the_code_loads_when_somebody_reads_a_symbol_and_ahead_only_where_somebody_leads() {
    let mut state = page();
    state.parts = Loading::default();
    let mut loaded = Vec::new();
    let kept = NotebookMsg::Kept { slots: vec![], open: 0, afresh: false };
    let mut due = update(&mut state, Msg::Notebook(kept));
    while let Some(effect) = due.pop() {
        if let Effect::Load(part) = effect {
            loaded.push(part);
            let msg = Msg::Notebook(NotebookMsg::Loaded(part, true));
            due.extend(update(&mut state, msg));
        }
    }
    assert!(state.has_all_parts());
    assert!(!loaded.contains(&Part::Symbols));
    let effects = tell(&mut state, SymbolsMsg::StartCamera);
    assert!(effects.contains(&Effect::Load(Part::Symbols)), "{effects:?}");
    let msg = Msg::Notebook(NotebookMsg::Loaded(Part::Symbols, true));
    assert!(update(&mut state, msg).contains(&START));
    assert_eq!(state.symbols.camera, Camera::Asked);
}

#[test]
fn the_camera_runs_until_it_is_stopped() {
    let mut state = page();
    assert!(!shown(&state).contains("<video"));
    assert_eq!(tell(&mut state, SymbolsMsg::StartCamera), [Effect::Redraw, START]);
    // Pressed twice.
    assert_eq!(tell(&mut state, SymbolsMsg::StartCamera), []);
    assert!(shown(&state).contains("<video") && shown(&state).contains("Allow it there"));
    learn(&mut state, SymbolsNews::CameraRuns);
    assert!(shown(&state).contains("Hold one symbol after the other"));
    learn(&mut state, SymbolsNews::Saw(vec!["A".into(), "B".into()]));
    assert!(shown(&state).contains("has read 2 symbols"));
    assert_eq!(tell(&mut state, SymbolsMsg::StopCamera), [Effect::Redraw, STOP]);
    assert!(!shown(&state).contains("<video"));
    // The next time all of them are new.
    tell(&mut state, SymbolsMsg::StartCamera);
    assert!(!shown(&state).contains("has read"));
}

#[test]
fn a_refused_camera_says_why_and_what_else_works() {
    use CameraFault::{Blocked, FilePage, InUse, InsecurePage, NoCamera, NotAllowed};
    let mut state = page();
    let mut told = Vec::new();
    for fault in [NoCamera, NotAllowed, InsecurePage, FilePage, Blocked, InUse] {
        assert!(tell(&mut state, SymbolsMsg::StartCamera).contains(&START));
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
fn deleting_everything_forgets_what_was_read() {
    let mut state = page();
    tell(&mut state, SymbolsMsg::StartCamera);
    learn(&mut state, SymbolsNews::Took(1));
    update(&mut state, Msg::Deleted { left: 0 });
    assert_eq!(state.symbols, Symbols::default());
    let before = state.design.clone();
    let tern = link::hash(&Example::Tern.design().into());
    learn(&mut state, picture("a.jpg", &[&tern], &[]));
    assert_eq!((state.design, state.symbols), (before, Symbols::default()));
}
