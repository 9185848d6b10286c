//! What is kept, and who may write it.

use super::*;
use crate::later::Ask;

/// A tab that keeps its rocket.
fn tab() -> State {
    open("", Some(&Example::Gannet.design()))
}

fn tern() -> String {
    link::hash(&Example::Tern.design().into())
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
    let same = link::hash(&state.record());
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
    // Closing the message does not make it untrue.
    update(&mut state, Msg::Dismiss);
    assert_eq!(region(&state, "notice"), "");
    assert!(region(&state, "keeping").contains("keeps nothing"));
    assert_eq!(update(&mut state, Msg::KeepThis), []);
    assert_eq!(state.keeping, Keeping::Blocked);
}

#[test]
fn a_refused_write_is_told_once_and_taken_back_when_one_succeeds() {
    let mut state = tab();
    notebook::begin(&mut state);
    let warns = |state: &mut State| {
        region(state, "notice").contains("Save the notebook as a file")
    };
    assert!(!warns(&mut state));
    update(&mut state, Msg::Wrote { refused: true });
    assert!(state.keeping.is_here(), "the next change is tried again");
    let notice = region(&state, "notice");
    for part in ["not kept", "copy-link", "data-action=\"save\""] {
        assert!(notice.contains(part), "{part}: {notice}");
    }
    update(&mut state, Msg::Dismiss);
    assert_eq!(update(&mut state, Msg::Wrote { refused: true }), [], "no news");
    assert!(!region(&state, "notice").contains("The last changes"));
    assert!(region(&state, "keeping").contains("not kept"));
    assert!(warns(&mut state), "of the notebook, with its file");
    update(&mut state, Msg::Wrote { refused: false });
    assert!(region(&state, "keeping").contains("Kept in this browser"));
    assert!(!warns(&mut state));
    // What still says so goes too, and nothing else that is said.
    update(&mut state, Msg::Wrote { refused: true });
    update(&mut state, Msg::Wrote { refused: false });
    assert_eq!(region(&state, "notice"), "");
    update(&mut state, Msg::Wrote { refused: true });
    update(&mut state, Msg::Save);
    update(&mut state, Msg::Wrote { refused: false });
    assert!(region(&state, "passing").contains("Saved as"));
}

#[test]
fn a_notebook_that_was_put_away_and_not_kept_is_warned_about() {
    let mut state = tab();
    state.refused = true;
    state.desk.put_away = vec![(3, Some("{}".into()))];
    let notice = region(&state, "notice");
    assert!(notice.contains("open before"), "{notice}");
}

#[test]
fn what_is_kept_is_read_where_nothing_can_be_written() {
    let state = State::new(&Opening {
        kept: Some(link::hash(&Example::Gannet.design().into())),
        can_keep: true,
        refused: true,
        ..Opening::default()
    });
    assert_eq!(state.design.name, "Gannet");
    assert!(state.keeping.is_here());
    assert!(region(&state, "notice").contains("not kept"));
}

#[test]
fn a_crash_finds_the_name_of_the_open_notebook_and_what_is_not_kept_of_it() {
    let mut state = tab();
    let left = |state: &mut State| call(state, Ask::Crash).regions.remove(0).markup;
    assert_eq!(left(&mut state), "", "there is nothing in it");
    notebook::begin(&mut state);
    let unsaved = left(&mut state);
    for part in ["Red 1", "noseward/notebook/0", "n1."] {
        assert!(unsaved.contains(part), "{part}: {unsaved}");
    }
    state.desk.unsaved = false;
    let kept = left(&mut state);
    assert!(kept.contains("noseward/notebook/0") && !kept.contains("n1."), "{kept}");
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
    assert!(region(&state, "passing").contains("nothing is left"));
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
