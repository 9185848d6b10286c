//! What is kept, and who may write it.

use super::*;

/// A tab that keeps its rocket.
fn tab() -> State {
    open("", Some(&Example::Gannet.design()))
}

fn tern() -> String {
    link::to_file(&Example::Tern.design().into())
}

#[test]
fn another_tab_is_not_overwritten_until_somebody_says_so() {
    let mut state = tab();
    let effects = update(&mut state, Msg::KeptElsewhere(Some(tern())));
    assert!(!effects.contains(&Effect::Keep), "{effects:?}");
    let tern = Example::Tern.design().rounded();
    assert_eq!(state.keeping, Keeping::Other(Box::new(tern.clone().into())));
    assert!(region(&state, "notice").contains("Tern"));
    // Typing does not change that.
    typed(&mut state, WIDTH, "70");
    assert!(!state.keeping.is_here());
    let effects = update(&mut state, Msg::KeepThis);
    assert!(effects.contains(&Effect::Keep));
    assert!(state.keeping.is_here());
    update(&mut state, Msg::Undo);
    assert_eq!(state.design, tern);
}

#[test]
fn another_tab_with_the_same_rocket_is_no_news() {
    let mut state = tab();
    let same = link::to_file(&state.record());
    update(&mut state, Msg::KeptElsewhere(Some(same)));
    assert!(state.keeping.is_here());
    assert_eq!(region(&state, "notice"), "");
}

#[test]
fn the_kept_rocket_can_be_shown_instead() {
    let mut state = tab();
    update(&mut state, Msg::KeptElsewhere(Some(tern())));
    update(&mut state, Msg::BackToMine);
    assert_eq!(state.design.name, "Tern");
    assert!(state.keeping.is_here());
    update(&mut state, Msg::Undo);
    assert_eq!(state.design.name, "Gannet");
}

#[test]
fn what_cannot_be_read_is_left_alone_and_can_be_saved() {
    let newer = r#"{"noseward":"rocket","version":99,"design":{}}"#;
    let mut state = State::new(&Opening {
        kept: Some(newer.into()),
        can_keep: true,
        ..Opening::default()
    });
    assert_eq!(state.design.name, "Puffin");
    assert_eq!(state.keeping, Keeping::Unreadable(newer.into()));
    assert!(region(&state, "notice").contains("cannot be read here"));
    let effects = update(&mut state, Msg::SaveKept);
    assert!(matches!(
        effects.as_slice(),
        [Effect::Download { text, .. }] if text == newer
    ));
    update(&mut state, Msg::KeepThis);
    assert!(state.keeping.is_here());
}

#[test]
fn a_browser_that_keeps_nothing_is_told_at_once_with_a_way_out() {
    let mut state = State::new(&Opening::default());
    assert_eq!(state.keeping, Keeping::Blocked);
    let notice = region(&state, "notice");
    assert!(notice.contains("keeps nothing") && notice.contains("copy-link"));
    // Later, when the space runs out.
    let mut late = tab();
    update(&mut late, Msg::CouldNotKeep);
    assert_eq!(region(&late, "notice"), notice);
    // Closing the message does not make it untrue.
    update(&mut state, Msg::Dismiss);
    assert_eq!(region(&state, "notice"), "");
    assert!(region(&state, "keeping").contains("keeps nothing"));
    assert_eq!(update(&mut state, Msg::KeepThis), []);
    assert_eq!(state.keeping, Keeping::Blocked);
}

#[test]
fn deleting_asks_first_and_leaves_nothing_to_undo() {
    let mut state = tab();
    typed(&mut state, Field::Name, "Ours");
    update(&mut state, Msg::AskToDelete(true));
    assert!(region(&state, "delete").contains("delete-now"));
    update(&mut state, Msg::AskToDelete(false));
    assert!(!region(&state, "delete").contains("delete-now"));
    assert_eq!(state.design.name, "Ours");
    assert_eq!(update(&mut state, Msg::DeleteAll), [Effect::DeleteAll]);
    let effects = update(&mut state, Msg::Deleted { left: 0 });
    assert!(!effects.contains(&Effect::Keep), "it would be there again");
    assert_eq!(state.design.name, "Puffin");
    assert!(!state.can_undo() && state.keeping.is_here());
    assert!(region(&state, "notice").contains("nothing is left"));
    update(&mut state, Msg::Deleted { left: 2 });
    assert!(region(&state, "notice").contains("Not everything"));
}

#[test]
fn what_another_tab_deleted_stays_deleted() {
    let mut state = tab();
    update(&mut state, Msg::KeptElsewhere(None));
    typed(&mut state, WIDTH, "70");
    assert_eq!(state.keeping, Keeping::Emptied);
    assert!(region(&state, "notice").contains("deleted in another tab"));
}
