//! What somebody entered stays, whatever comes when.

use super::notebook::{
    FIN_SPAN as SPAN, begin, desk, file, in_hand, loaded, predict, press, said, shown,
    swing, tell, unloaded, write,
};
use super::*;
use noseward_lesson::SwingOutcome::{self, Steady, TailFirst, Wobbling};

/// A notebook as it is kept, with a trial of the first rocket that was predicted, and swung
/// so often.
fn kept_after(swings: usize) -> (Record, String) {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "a");
    for _ in 0..swings {
        swing(&mut state, Steady);
    }
    (state.record(), file(&mut state))
}

/// A page that opens with a rocket, and whose later part comes after the notebook was asked
/// for.
fn opened_with(record: &Record, kept: String) -> State {
    let mut state = waiting_with(record, kept);
    loaded(&mut state, true);
    state
}

fn waiting_with(record: &Record, kept: String) -> State {
    let mut state = open(&link::hash(record), None);
    state.parts = Loading::default();
    let slots = vec![(1, kept)];
    tell(&mut state, NotebookMsg::Kept { slots, open: 1, afresh: false });
    state
}

/// A page that opens with a link to a rocket that was swung elsewhere.
pub(super) fn swung_elsewhere(outcome: SwingOutcome) -> State {
    let mut record = Record::from(Example::Puffin.design());
    record.swings.add(outcome);
    let mut state = open(&link::hash(&record), None);
    tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    assert_eq!(state.swings.outcomes(), [outcome]);
    state
}

#[test]
fn swings_that_the_notebook_has_not_seen_stay_on_the_page() {
    // The notebook could not be kept, and the address knows one swing more.
    let (mut record, kept) = kept_after(1);
    record.swings.add(TailFirst);
    let mut state = opened_with(&record, kept.clone());
    assert_eq!(state.swings.outcomes(), [Steady, TailFirst]);
    assert!(!state.is_of_trial());
    let trial = state.desk.notebook.trial(1).unwrap();
    assert_eq!(trial.swings().outcomes(), [Steady], "nor do they wander into it");
    begin(&mut state);
    assert_eq!(in_hand(&state).swings().outcomes(), [Steady, TailFirst]);
    assert!(in_hand(&state).swung_first());
    // What the notebook knows, and more, it shows.
    let (record, _) = kept_after(0);
    let state = opened_with(&record, kept);
    assert_eq!(state.swings.outcomes(), [Steady]);
    assert!(state.is_predicted());
}

#[test]
fn another_tabs_notebook_takes_no_swings_away() {
    // On a page where no trial is in hand.
    let (record, theirs) = kept_after(1);
    let mut state = swung_elsewhere(Wobbling);
    let slot = state.desk.slot;
    let text = Some(theirs.clone());
    tell(&mut state, NotebookMsg::KeptElsewhere { slot, text, mine: None });
    assert_eq!(state.swings.outcomes(), [Wobbling]);
    // A slip that was taken back in another tab is taken back in this one too.
    let mut state = opened_with(&record, theirs);
    swing(&mut state, Wobbling);
    state.desk.unsaved = false;
    let (_, text) = kept_after(1);
    tell(
        &mut state,
        NotebookMsg::KeptElsewhere { slot: 1, text: Some(text), mine: None },
    );
    assert_eq!(state.swings.outcomes(), [Steady]);
    assert!(state.is_predicted());
}

#[test]
fn the_kept_rocket_comes_back_with_its_swings() {
    let (record, kept) = kept_after(0);
    let mut mine = record.clone();
    mine.swings.add(Wobbling);
    let mut state = State::new(&Opening {
        hash: link::hash(&Example::Gannet.design().into()),
        kept: Some(link::hash(&mine)),
        can_keep: true,
        ..Opening::default()
    });
    let slots = vec![(1, kept)];
    tell(&mut state, NotebookMsg::Kept { slots, open: 1, afresh: false });
    loaded(&mut state, true);
    update(&mut state, Msg::BackToMine);
    assert_eq!(state.swings.outcomes(), [Wobbling]);
    // And so does one that was put away, by undo.
    update(&mut state, Msg::Start(Start::Example(Example::Tern)));
    press(&mut state, "nb-open", 1);
    assert!(state.swings.outcomes().is_empty());
    update(&mut state, Msg::Undo);
    update(&mut state, Msg::Undo);
    assert_eq!(state.swings.outcomes(), [Wobbling]);
}

#[test]
fn swings_before_a_prediction_come_back_with_the_old_number() {
    let mut state = swung_elsewhere(Steady);
    begin(&mut state);
    let before = state.text_of(SPAN);
    typed(&mut state, SPAN, "75");
    assert!(state.swings.outcomes().is_empty() && !in_hand(&state).swung_first());
    typed(&mut state, SPAN, &before);
    assert_eq!(state.swings.outcomes(), [Steady]);
    assert_eq!(in_hand(&state).swings().outcomes(), [Steady]);
    // Undo likewise.
    typed(&mut state, SPAN, "75");
    update(&mut state, Msg::Left { field: SPAN });
    update(&mut state, Msg::Undo);
    assert_eq!(state.text_of(SPAN), before);
    assert_eq!(in_hand(&state).swings().outcomes(), [Steady]);
}

#[test]
fn what_is_typed_before_the_notebook_is_here_goes_into_the_trial_in_hand() {
    let mut state = desk();
    begin(&mut state);
    let (record, kept) = (state.record(), file(&mut state));
    let mut state = waiting_with(&record, kept.clone());
    typed(&mut state, SPAN, "75");
    let effects = loaded(&mut state, true);
    assert_eq!(in_hand(&state).design(), &state.design);
    assert_eq!(state.text_of(SPAN), "75");
    assert!(state.desk.unsaved && effects.contains(&Effect::Keep));
    // Another rocket does not.
    let mut state = waiting_with(&record, kept);
    update(&mut state, Msg::Start(Start::Example(Example::Gannet)));
    typed(&mut state, SPAN, "75");
    loaded(&mut state, true);
    assert!(!state.is_of_trial());
    assert_eq!(state.desk.notebook.trial(1).unwrap().design(), &record.design);
}

#[test]
fn a_notebooks_link_is_the_address_until_it_is_opened() {
    let hash = "#N1-what-somebody-sent";
    for msg in [NotebookMsg::OpenLink(hash.into()), NotebookMsg::OpenText(hash.into())] {
        let mut state = unloaded();
        tell(&mut state, msg);
        assert!(state.desk.is_to_open(hash));
        assert!(!state.desk.is_to_open("#steps"));
        loaded(&mut state, false);
        assert!(state.desk.is_to_open(hash), "it can still be loaded again");
        loaded(&mut state, true);
        assert!(!state.desk.is_to_open(hash));
    }
}

/// The parts that a page fetches of itself, in their order.
fn fetched(mut state: State) -> Vec<Part> {
    let mut effects =
        tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    let mut seen = Vec::new();
    loop {
        let asked = |effect: &Effect| match effect {
            Effect::Load(part) => Some(*part),
            _ => None,
        };
        let parts: Vec<Part> = effects.iter().filter_map(asked).collect();
        assert!(parts.len() <= 1, "{parts:?}");
        let Some(&part) = parts.first() else { break };
        assert!(!state.has_all_parts());
        seen.push(part);
        effects = tell(&mut state, NotebookMsg::Loaded(part, true));
    }
    assert!(state.has_all_parts());
    seen
}

#[test]
fn parts_come_one_after_the_other_until_all_of_a_lesson_are_here() {
    let is_for_pupils = |part: &Part| !part.is_for_leaders();
    let for_pupils: Vec<Part> = Part::ALL.into_iter().filter(is_for_pupils).collect();
    assert_eq!(fetched(unloaded()), for_pupils);
    let leads = State::new(&Opening { leads: true, ..Opening::default() });
    assert_eq!(fetched(leads), Part::ALL);
}

#[test]
fn the_place_that_a_link_names_is_loaded_with_the_notebook() {
    let mut state = State::new(&Opening { place: Place::Why, ..Opening::default() });
    let effects =
        tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    for part in [Part::Notebook, Part::Why] {
        assert!(effects.contains(&Effect::Load(part)), "{part:?}: {effects:?}");
    }
    // Nothing is fetched ahead while somebody waits for that.
    let is_load = |effect: &Effect| matches!(effect, Effect::Load(_));
    let effects = tell(&mut state, NotebookMsg::Loaded(Part::Notebook, true));
    assert!(!effects.iter().any(is_load), "{effects:?}");
    let effects = tell(&mut state, NotebookMsg::Loaded(Part::Why, true));
    assert!(effects.contains(&Effect::Load(Part::Certainty)), "{effects:?}");
}

#[test]
fn what_was_said_is_past_once_a_button_of_a_place_is_pressed() {
    let mut state = desk();
    begin(&mut state);
    let words = || Some(Notice::Said { alarming: true, words: "a word".into() });
    state.notice = words();
    update(&mut state, SwingMsg::Play(false).into());
    assert_eq!(said(&state).as_deref(), Some("a word"), "a motion is no answer");
    press(&mut state, "nb-outcome", 0);
    assert_eq!(said(&state), None);
    state.notice = words();
    press(&mut state, "nb-symbols", "");
    assert_eq!(said(&state), None);
}

#[test]
fn what_arrives_while_somebody_types_ends_no_step() {
    let mut state = unloaded();
    let before = state.text_of(SPAN);
    tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    tell(&mut state, NotebookMsg::Loaded(Part::Notebook, true));
    for (text, part) in ["7", "75"].into_iter().zip([Part::Certainty, Part::Why]) {
        update(&mut state, Msg::Typed { field: SPAN, text: text.into() });
        tell(&mut state, NotebookMsg::Loaded(part, true));
    }
    update(&mut state, Msg::Left { field: SPAN });
    update(&mut state, Msg::Undo);
    assert_eq!(state.text_of(SPAN), before);
}

#[test]
fn what_waits_for_a_part_that_does_not_come_is_told_and_done_once() {
    let mut state = desk();
    begin(&mut state);
    let text = crate::notebook::file(&state);
    let mut state = unloaded();
    tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    tell(&mut state, NotebookMsg::Loaded(Part::Notebook, true));
    for _ in 0..2 {
        let effects = update(&mut state, Msg::OpenText(text.clone()));
        assert!(effects.contains(&Effect::Load(Part::Files)), "{effects:?}");
        // The notebook is here meanwhile, and can be written in.
        assert!(!state.desk.waiting.is_empty());
        tell(&mut state, NotebookMsg::Loaded(Part::Files, false));
        assert!(said(&state).unwrap().contains("could not be loaded"));
    }
    tell(&mut state, NotebookMsg::Loaded(Part::Files, true));
    assert!(state.desk.waiting.is_empty());
    assert_eq!(in_hand(&state).id(), 1);
    assert!(said(&state).unwrap().starts_with("This is the notebook of"));
}

#[test]
fn no_place_is_given_twice() {
    let (_, kept) = kept_after(1);
    for last in [7, u32::MAX] {
        let mut state = unloaded();
        let slots = vec![(0, kept.clone()), (last, kept.clone())];
        tell(&mut state, NotebookMsg::Kept { slots, open: last, afresh: false });
        loaded(&mut state, true);
        for _ in 0..3 {
            press(&mut state, "nb-new-group", "");
            begin(&mut state);
        }
        let mut numbers: Vec<_> = state.desk.slots.iter().map(|s| s.number).collect();
        numbers.push(state.desk.slot);
        numbers.sort_unstable();
        numbers.dedup();
        assert_eq!(numbers.len(), 5, "{numbers:?}");
        let first = state.desk.slots.iter().find(|slot| slot.number == 0).unwrap();
        assert_eq!(first.text, kept);
    }
}

#[test]
fn a_place_has_one_name() {
    assert_eq!(Slot::number_of("7"), Some(7));
    assert_eq!(Slot::number_of("0"), Some(0));
    assert_eq!(Slot::number_of("4294967295"), Some(u32::MAX));
    for other in ["007", "+7", "00", "", "-1", "4294967296", "seven"] {
        assert_eq!(Slot::number_of(other), None, "{other}");
    }
}

#[test]
fn a_first_line_break_is_drawn() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:note", "\nbelow it");
    let text = "\nto copy";
    update(&mut state, Msg::Copied { text: text.into(), is_link: false, done: false });
    let page = shown(&mut state);
    // A browser drops the first one after the tag.
    for area in [">\n\nbelow it</textarea>", ">\n\nto copy</textarea>"] {
        assert!(page.contains(area), "{area:?}: {page}");
    }
    let own = page.matches("data-own-text").count();
    assert_eq!(page.matches("<textarea").count() - own, page.matches("\">\n").count());
}

#[test]
fn a_released_trial_is_kept_as_released() {
    for release in [
        Msg::Start(Start::Example(Example::Gannet)),
        Msg::OpenText(link::hash(&Example::Gannet.design().into())),
    ] {
        let mut state = desk();
        begin(&mut state);
        state.desk.unsaved = false;
        let effects = update(&mut state, release);
        assert!(state.desk.notebook.in_hand().is_none());
        assert!(state.desk.unsaved && effects.contains(&Effect::Keep));
    }
    // Undo brings the trial back, with its rocket.
    let mut state = desk();
    begin(&mut state);
    let mine = in_hand(&state).design().clone();
    update(&mut state, Msg::Start(Start::Example(Example::Gannet)));
    state.desk.unsaved = false;
    let effects = update(&mut state, Msg::Undo);
    assert_eq!(in_hand(&state).design(), &mine);
    assert_eq!(state.design, mine);
    assert!(state.desk.unsaved && effects.contains(&Effect::Keep));
}
