//! Reading symbols: one picture after the other, and a camera that is given back.

use super::*;
use crate::app::symbols::CameraPage;
use noseward_link::SymbolFault;

fn page() -> State {
    let mut state = State::new(&Opening { can_keep: true, ..Opening::default() });
    state.parts = Loading::all(Code::Here);
    state
}

fn tell(state: &mut State, msg: SymbolsMsg) -> Vec<Effect> {
    update(state, Msg::Notebook(NotebookMsg::Symbols(msg)))
}

fn picture(name: &str, texts: &[&str]) -> SymbolsMsg {
    let read = texts.iter().map(|text| Ok((*text).to_owned()));
    let found = if texts.is_empty() {
        Err(PictureFault::NoSymbol)
    } else {
        Ok(read.chain([Err(SymbolFault::Incomplete)]).collect())
    };
    SymbolsMsg::Looked(PictureRead { name: name.into(), found })
}

const AT_PICTURE: Effect = Effect::Symbols(Looking::AtPicture);
const START: Effect = Effect::Symbols(Looking::StartCamera);
const STOP: Effect = Effect::Symbols(Looking::StopCamera);

#[test]
fn pictures_are_looked_at_one_after_the_other() {
    let mut state = page();
    assert_eq!(tell(&mut state, SymbolsMsg::Chose(2)), [Effect::Redraw, AT_PICTURE]);
    // More come while the first is looked at: only one is looked at at a time.
    assert_eq!(tell(&mut state, SymbolsMsg::Chose(1)), [Effect::Redraw]);
    let first = tell(&mut state, picture("a.jpg", &["R1", "N1"]));
    assert_eq!(first, [Effect::Redraw, AT_PICTURE]);
    assert_eq!(
        tell(&mut state, picture("b.jpg", &["N1", "N2"])),
        [Effect::Redraw, AT_PICTURE]
    );
    assert_eq!(tell(&mut state, picture("c.jpg", &[])), [Effect::Redraw]);
    assert_eq!(state.symbols.texts, ["R1", "N1", "N2"]);
    let names: Vec<&str> =
        state.symbols.pictures.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["a.jpg", "b.jpg", "c.jpg"]);
    assert_eq!(state.symbols.pictures[2].found, Err(PictureFault::NoSymbol));
    // The next lot is told anew; what was read stays.
    tell(&mut state, SymbolsMsg::Chose(1));
    assert_eq!(state.symbols.pictures, []);
    assert_eq!(state.symbols.texts.len(), 3);
    tell(&mut state, picture("d.jpg", &["R1"]));
    assert_eq!(tell(&mut state, SymbolsMsg::Chose(0)), [Effect::Redraw]);
}

#[test]
fn the_code_loads_when_somebody_reads_a_symbol_and_not_before() {
    let mut state = page();
    state.parts = Loading::default();
    let mut loaded = Vec::new();
    let mut due = update(
        &mut state,
        Msg::Notebook(NotebookMsg::Kept { slots: vec![], open: 0, afresh: false }),
    );
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
    assert_eq!(effects, [Effect::Load(Part::Symbols), Effect::Redraw]);
    let msg = Msg::Notebook(NotebookMsg::Loaded(Part::Symbols, true));
    assert!(update(&mut state, msg).contains(&START));
    assert_eq!(state.symbols.camera, Camera::Asked);
}

#[test]
fn the_camera_tells_a_text_once() {
    let mut state = page();
    assert_eq!(tell(&mut state, SymbolsMsg::StartCamera), [Effect::Redraw, START]);
    // Pressed twice.
    assert_eq!(tell(&mut state, SymbolsMsg::StartCamera), [Effect::Redraw]);
    tell(&mut state, SymbolsMsg::CameraRuns);
    assert_eq!(state.symbols.camera, Camera::Runs);
    for texts in [vec!["A"], vec!["A", "B"], vec!["B"], vec!["A"]] {
        let texts = texts.into_iter().map(Into::into).collect();
        tell(&mut state, SymbolsMsg::Saw(texts));
    }
    assert_eq!(state.symbols.texts, ["A", "B"]);
}

#[test]
fn the_camera_is_given_back_by_the_button_and_on_leaving_the_place() {
    let leave = |state: &mut State| update(state, Msg::To(Place::Measure));
    for runs in [false, true] {
        let mut state = page();
        tell(&mut state, SymbolsMsg::StartCamera);
        if runs {
            tell(&mut state, SymbolsMsg::CameraRuns);
        }
        assert!(leave(&mut state).contains(&STOP));
        assert_eq!(state.symbols.camera, Camera::Off);
        assert!(!leave(&mut state).contains(&STOP));
        tell(&mut state, SymbolsMsg::StartCamera);
        assert_eq!(tell(&mut state, SymbolsMsg::StopCamera), [Effect::Redraw, STOP]);
        assert_eq!(tell(&mut state, SymbolsMsg::StopCamera), [Effect::Redraw]);
    }
}

#[test]
fn a_refused_camera_says_why_until_the_next_try() {
    let mut state = page();
    tell(&mut state, SymbolsMsg::StartCamera);
    tell(&mut state, SymbolsMsg::CameraRefused(CameraFault::InUse));
    assert_eq!(state.symbols.camera, Camera::Refused(CameraFault::InUse));
    assert!(tell(&mut state, SymbolsMsg::StartCamera).contains(&START));
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

/// Whoever deletes everything gives the camera back too: what runs is told by the state.
#[test]
fn deleting_everything_forgets_what_was_read() {
    let mut state = page();
    tell(&mut state, SymbolsMsg::StartCamera);
    tell(&mut state, SymbolsMsg::Saw(vec!["A".into()]));
    update(&mut state, Msg::Deleted { left: 0 });
    assert_eq!(state.symbols, Symbols::default());
}
