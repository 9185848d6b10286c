//! A class is set up, and its link is opened.

use super::notebook::{FIN_SPAN, begin, desk, predict, press, swing, tell, write};
use super::*;
use noseward_lesson::{
    Changeables, ClassQuestion, Group, LessonPlace, Level, SetUp, SwingOutcome, Telling,
};
use noseward_link::{SetUpLink, rules_text, set_up_code, set_up_hash};

/// A set-up of Puffin, in which only the number of fins is changed.
fn set_up() -> SetUp {
    SetUp {
        question: ClassQuestion::FinNumber,
        changeable: ClassQuestion::FinNumber.changeable(),
        level: Level::Explain,
        rocket: Some(Example::Puffin.design().rounded()),
        ..SetUp::default()
    }
}

fn group(key: &str) -> Option<Group> {
    Group::from_key(key)
}

fn link_for(set_up: &SetUp, group: Option<Group>) -> String {
    set_up_hash(&SetUpLink { set_up: set_up.clone(), group }).unwrap()
}

/// Opens a text as somebody who pastes it.
fn paste(state: &mut State, text: &str) -> Vec<Effect> {
    update(state, Msg::OpenText(text.to_owned()))
}

/// The page of a group that has opened its link.
fn joined(set_up: &SetUp, label: &str) -> State {
    let mut state = desk();
    paste(&mut state, &link_for(set_up, group(label)));
    assert_eq!(state.desk.notebook.group.key(), label);
    state
}

fn said(state: &State) -> &str {
    match &state.notice {
        Some(Notice::Said { words, .. }) => words,
        other => panic!("nothing is said: {other:?}"),
    }
}

/// As the browser tells that a notebook is kept.
fn keep(state: &mut State) {
    let text = crate::notebook::kept(state);
    tell(state, NotebookMsg::IsKept { slot: state.desk.slot, text });
    state.desk.unsaved = false;
}

#[test]
fn a_group_s_link_opens_its_notebook_with_everything_set() {
    for text in [
        link_for(&set_up(), group("green 1")),
        set_up_code(&SetUpLink { set_up: set_up(), group: group("green 1") }),
    ] {
        let mut state = desk();
        let effects = paste(&mut state, &text);
        assert!(effects.contains(&Effect::Keep), "it is kept");
        let notebook = &state.desk.notebook;
        assert_eq!(notebook.group.key(), "green 1");
        assert_eq!(notebook.rules(), Some(set_up().rules()));
        assert_eq!((notebook.level, notebook.telling), (Level::Explain, Telling::Points));
        assert_eq!(state.design.name, "Puffin");
        assert_eq!(state.place, Place::Rocket);
        let rules = rules_text(set_up().rules());
        assert_eq!(
            said(&state),
            format!(
                "You are Green 1 (rules {rules}). The notebook of your group is open."
            )
        );
        assert!(!state.can_undo(), "nobody undoes a set-up");
        // The answer is not given away.
        assert!(!state.tells_outcome() && !state.tells_points());
    }
}

#[test]
fn one_link_hands_out_labels_and_nobody_is_blue_1_by_accident() {
    let mut state = desk();
    let link = link_for(&set_up(), None);
    paste(&mut state, &link);
    assert_eq!(state.place, Place::Join);
    assert!(state.desk.is_to_open(&link), "it stays in the address");
    let markup = page(&state);
    for label in set_up().labels() {
        let button = format!(">{}</button>", places::labels::group(label));
        assert!(markup.contains(&button), "{markup}");
    }
    assert_eq!(markup.matches("data-action=\"join\"").count(), 10);
    assert_eq!(state.desk.notebook.rules(), None, "nothing has begun");
    press(&mut state, "join", 2);
    assert_eq!(state.desk.notebook.group.key(), "yellow 1");
    assert_eq!(state.place, Place::Rocket);
    assert!(!state.desk.is_to_open(&link));
    // Another group on the same computer is the next of the class.
    press(&mut state, "nb-new-group", "");
    assert_eq!(state.desk.notebook.group.key(), "red 1");
    assert_eq!(state.desk.notebook.rules(), Some(set_up().rules()));
}

#[test]
fn the_same_link_again_opens_the_same_notebook() {
    let mut state = joined(&set_up(), "red 1");
    begin(&mut state);
    keep(&mut state);
    let (slot, slots) = (state.desk.slot, state.desk.slots.len());
    for link in [link_for(&set_up(), group("red 1")), link_for(&set_up(), None)] {
        paste(&mut state, &link);
        if state.place == Place::Join {
            assert!(page(&state).contains("here already: 1 trial"));
            press(&mut state, "join", 0);
        }
        assert_eq!(state.desk.slot, slot);
        assert_eq!(state.desk.notebook.trials().len(), 1);
        assert_eq!(state.desk.slots.len(), slots, "nothing is doubled");
    }
    // From another group's notebook too.
    paste(&mut state, &link_for(&set_up(), group("blue 1")));
    assert_ne!(state.desk.slot, slot);
    paste(&mut state, &link_for(&set_up(), group("red 1")));
    assert_eq!((state.desk.slot, state.desk.notebook.trials().len()), (slot, 1));
    // What was corrected since comes along, and what has other rules is another notebook.
    let corrected = SetUp { level: Level::Model, ..set_up() };
    paste(&mut state, &link_for(&corrected, group("red 1")));
    assert_eq!((state.desk.slot, state.desk.notebook.level), (slot, Level::Model));
    let other = SetUp { allows_two_changes: true, ..set_up() };
    paste(&mut state, &link_for(&other, group("red 1")));
    assert_ne!(state.desk.slot, slot);
    assert!(state.desk.notebook.is_blank());
}

#[test]
fn what_stood_on_the_page_is_never_lost() {
    // A notebook with its rocket.
    let mut state = desk();
    typed(&mut state, FIN_SPAN, "70");
    begin(&mut state);
    let before = state.record();
    paste(&mut state, &link_for(&set_up(), group("red 1")));
    assert_ne!(state.record(), before);
    let slot = state.desk.slots[0].number;
    assert!(state.keeping.is_here());
    write(&mut state, "nb:slot", &slot.to_string());
    assert_eq!(state.record(), before);
    // A rocket without one.
    let mut state = desk();
    typed(&mut state, FIN_SPAN, "70");
    let before = state.record();
    paste(&mut state, &link_for(&set_up(), group("red 1")));
    assert_eq!(state.keeping, Keeping::Other(Box::new(before.clone())));
    update(&mut state, Msg::BackToMine);
    assert_eq!(state.record(), before);
}

/// Locks a prediction of a rocket with something changed.
fn second_trial(state: &mut State, edit: impl Fn(&mut State)) -> bool {
    begin(state);
    predict(state, 0, "so");
    swing(state, SwingOutcome::Steady);
    edit(state);
    begin(state);
    predict(state, 0, "so");
    state.is_predicted()
}

#[test]
fn what_may_not_be_changed_is_refused_by_name() {
    let rules = rules_text(set_up().rules());
    let mut state = joined(&set_up(), "red 1");
    assert!(!second_trial(&mut state, |state| {
        typed(state, FIN_SPAN, "70");
    }));
    let refused = format!(
        "In this lesson the fins keep their shape and size (rules {rules}). Undo that \
         change, or ask whoever leads."
    );
    assert_eq!(said(&state), refused);
    typed(&mut state, FIN_SPAN, "55");
    let number = Field::Fins(0, FinField::Count);
    typed(&mut state, number, "3");
    press(&mut state, "nb-lock", "");
    assert!(state.is_predicted(), "the number may be changed: {:?}", state.notice);
}

#[test]
fn two_changes_and_too_much_weight_are_refused_by_name() {
    let mut set_up = SetUp { changeable: Changeables::ALL, ..set_up() };
    set_up.limits.added_g = Some(20.0);
    let rules = rules_text(set_up.rules());
    let mut state = joined(&set_up, "red 1");
    let both = |state: &mut State| {
        typed(state, FIN_SPAN, "70");
        typed(state, CLAY_PLACE, "60");
    };
    assert!(!second_trial(&mut state, both));
    assert!(said(&state).starts_with("There are 2 changes"), "{}", said(&state));
    let mut state = joined(&set_up, "red 1");
    let mass = Field::Weight(0, WeightField::Mass);
    assert!(!second_trial(&mut state, |state| {
        typed(state, mass, "30");
    }));
    assert_eq!(
        said(&state),
        format!(
            "In this lesson at most 20 g of weight is added (rules {rules}). Take some \
             off, or ask whoever leads."
        )
    );
}

#[test]
fn a_longer_string_and_faster_turns_are_refused_by_name() {
    use crate::places::swing::SetupField;
    use noseward_stability::SwingField;
    for (field, text, words, usual) in [
        (SwingField::String, "1.2", "the string is at most 1 m long", "1"),
        (SwingField::Turns, "0.9", "with at most 0.8 turns a second", "0.8"),
    ] {
        let mut state = joined(&set_up(), "red 1");
        begin(&mut state);
        predict(&mut state, 0, "so");
        go(&mut state, Place::Swing);
        let typed = |text: &str| SwingMsg::Typed(SetupField::Setup(field), text.into());
        update(&mut state, typed(text).into());
        swing(&mut state, SwingOutcome::Steady);
        assert!(state.swings.outcomes().is_empty());
        assert!(said(&state).contains(words), "{}", said(&state));
        update(&mut state, typed(usual).into());
        swing(&mut state, SwingOutcome::Steady);
        assert_eq!(state.swings.outcomes().len(), 1, "{:?}", state.notice);
    }
}

#[test]
fn what_is_fixed_changes_only_where_somebody_lifts_it() {
    let rules = rules_text(set_up().rules());
    let mut state = joined(&set_up(), "red 1");
    for (field, said_of) in [
        ("nb:level", "How much detail there is"),
        ("nb:help", "How much help there is"),
        ("nb:telling", "What is told when"),
    ] {
        let before = state.desk.notebook.clone();
        write(&mut state, field, "0");
        assert_eq!(state.desk.notebook, before);
        let words = format!("{said_of} was set for this lesson (rules {rules}).");
        assert!(said(&state).starts_with(&words), "{}", said(&state));
    }
    press(&mut state, "nb-allow", "");
    assert!(said(&state).starts_with("How many changes at once"), "{}", said(&state));
    // They stand wherever results come from.
    begin(&mut state);
    go(&mut state, Place::HandIn);
    assert!(page(&state).contains(&format!("Made under the rules {rules}.")));
    go(&mut state, Place::Lead);
    assert!(page(&state).contains(&format!("under the rules {rules}")));
    press(&mut state, "nb-lift", "");
    assert_eq!(state.desk.notebook.rules(), None);
    write(&mut state, "nb:level", "0");
    assert_eq!(state.desk.notebook.level, Level::Balance);
}

#[test]
fn hidden_places_are_not_in_the_path_and_cannot_be_reached() {
    let mut set_up = set_up();
    for hidden in [LessonPlace::Rocket, LessonPlace::Swing, LessonPlace::Why] {
        set_up.places = set_up.places.toggled(hidden);
    }
    let mut state = joined(&set_up, "red 1");
    assert_eq!(state.place, Place::Measure, "the first that is shown");
    for hidden in [Place::Rocket, Place::Swing, Place::Why] {
        go(&mut state, hidden);
        assert_eq!(state.place, Place::Measure, "{hidden:?}");
        let link = format!("id=\"to-{}\"", hidden.key());
        assert!(!page(&state).contains(&link), "{link}");
    }
    go(&mut state, Place::Lead);
    assert_eq!(state.place, Place::Lead, "whoever leads always gets there");
    let mut state = joined(&set_up, "red 1");
    go(&mut state, Place::Predict);
    assert!(page(&state).contains("id=\"next\" href=\"?at=compare"));
}

#[test]
fn the_language_of_a_lesson_is_spoken_unless_somebody_chose_another() {
    let german = SetUp { language: "de".into(), ..set_up() };
    let link = link_for(&german, group("red 1"));
    let mut state = desk();
    let effects = paste(&mut state, &link);
    assert!(effects.contains(&Effect::FetchTable("de")), "{effects:?}");
    let mut state = desk();
    update(&mut state, Msg::Speak(noseward_words::Choice::ENGLISH));
    let effects = paste(&mut state, &link);
    assert!(!effects.contains(&Effect::FetchTable("de")), "{effects:?}");
    assert!(said(&state).contains("This lesson is meant to be in Deutsch."));
}

/// The link in the form, as it stands beside it.
fn link_in(state: &State) -> String {
    let markup: String =
        places::set_up::regions(state).into_iter().map(|region| region.markup).collect();
    let (_, input) = markup.split_once("id=\"set-up-link\"").expect("a link");
    let (_, value) = input.split_once("value=\"").unwrap();
    value.split('"').next().unwrap().to_owned()
}

#[test]
fn the_form_is_a_working_set_up_at_once_and_its_link_changes_with_it() {
    let mut state = desk();
    go(&mut state, Place::SetUp);
    let mut seen = vec![link_in(&state)];
    for (field, text) in [
        ("su:pupils", "24"),
        ("su:size", "4"),
        ("su:labels", "3"),
        ("su:level", "0"),
        ("su:help", "2"),
        ("su:telling", "0"),
        ("su:units", "1"),
        ("su:question", "0"),
        ("su:added", "30"),
        ("su:hall", "20"),
        ("su:string", "0,9"),
        ("su:turns", "0.7"),
        ("su:rocket", "2"),
    ] {
        let effects = write(&mut state, field, text);
        assert!(effects.contains(&Effect::KeepView), "{field}");
        let link = link_in(&state);
        assert!(!seen.contains(&link), "{field}");
        seen.push(link);
    }
    for (action, target) in
        [("su-may", "1"), ("su-shows", "7"), ("su-two", ""), ("su-rocket", "")]
    {
        press(&mut state, action, target);
        let link = link_in(&state);
        assert!(!seen.contains(&link), "{action}");
        seen.push(link);
    }
    // What cannot be read, or is too much, changes nothing.
    for (field, text) in
        [("su:pupils", "x"), ("su:pupils", "500"), ("su:string", "9"), ("su:size", "2.5")]
    {
        write(&mut state, field, text);
        assert_eq!(link_in(&state), seen[seen.len() - 1], "{field}");
    }
    assert!(page(&state).contains("A number from 0.3 to 3, please."));
}

#[test]
fn a_set_up_can_be_opened_in_the_form_and_given_back() {
    let mut state = desk();
    go(&mut state, Place::SetUp);
    let first = link_in(&state);
    write(&mut state, "su:open", "no set-up");
    assert!(page(&state).contains("This is no set-up."));
    let link = link_for(&set_up(), None);
    write(&mut state, "su:open", &format!("#{link}"));
    assert_eq!(link_in(&state), format!("#{link}"));
    assert_eq!(state.place, Place::SetUp);
    press(&mut state, "su-back", "");
    assert_eq!(link_in(&state), first);
}

/// A rocket that is too long for a link is refused with the reason.
#[test]
fn a_rocket_that_is_too_long_is_refused_with_what_to_do() {
    let mut state = desk();
    let choice = Choice::Planform(0);
    update(&mut state, Msg::Chose { choice, value: "1".into() });
    for _ in 0..20 {
        update(&mut state, Msg::AddCorner(0));
    }
    for _ in 0..3 {
        update(&mut state, Msg::Copy(Component::Fins(0)));
    }
    go(&mut state, Place::SetUp);
    press(&mut state, "su-rocket", "");
    let markup = page(&state);
    assert!(markup.contains("too many parts for a link of 540 characters"), "{markup}");
    assert!(press(&mut state, "su-copy", "").iter().all(|e| *e == Effect::Redraw));
}

#[test]
fn kit_and_timings_stand_below_the_form() {
    let mut state = desk();
    write(&mut state, "su:plan", "1");
    let sheet = page_of(&state);
    assert!(sheet.contains("Kit for 10 groups, pupils: 30"), "{sheet}");
    let bottle = "plastic drinks bottle, empty and dry</th><td>10</td><td>2</td>";
    assert!(sheet.contains(bottle), "{sheet}");
    assert!(sheet.contains("Lesson 2") && sheet.contains("<td>120</td>"));
    assert!(sheet.contains("This page does not."));
}

#[test]
fn room_to_string_says_what_fits_and_when_nothing_does() {
    let mut state = desk();
    write(&mut state, "su:hall", "12");
    let markup = page_of(&state);
    assert!(markup.contains("It does not fit into 12 m."), "{markup}");
    let needs_too_much = link_in(&state);
    press(&mut state, "su-room", 1);
    assert_ne!(link_in(&state), needs_too_much);
    assert!(page_of(&state).contains("It fits into 12 m."));
    write(&mut state, "su:hall", "3");
    assert!(page_of(&state).contains("No string fits."));
}

fn page_of(state: &State) -> String {
    places::set_up::regions(state).into_iter().map(|region| region.markup).collect()
}

/// What was kept of the form is there again after a reload.
#[test]
fn the_form_is_kept() {
    let mut state = desk();
    write(&mut state, "su:pupils", "24");
    assert!(state.set_up.changed);
    let again = State::new(&Opening {
        can_keep: true,
        set_up: state.set_up.text.clone(),
        ..Opening::default()
    });
    assert_eq!(link_in(&again), link_in(&state));
}
