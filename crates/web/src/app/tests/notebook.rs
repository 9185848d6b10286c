//! The notebook: what it does to the rocket on the page, and the page to it.

use super::*;

use crate::later::Ask;
use noseward_lesson::{Colour, Group, Notebook, SwingOutcome, Telling};
use noseward_link::{Format, NotebookFile, open_notebook_file, open_table};
use noseward_stability::evaluations;

pub(super) const FIN_SPAN: Field = Field::Fins(0, FinField::Span);
const FIN_COUNT: Field = Field::Fins(0, FinField::Count);

/// The page before its later part is here.
pub(super) fn unloaded() -> State {
    let mut state = open("", None);
    state.parts = Loading::default();
    state
}

pub(super) fn tell(state: &mut State, msg: NotebookMsg) -> Vec<Effect> {
    update(state, Msg::Notebook(msg))
}

/// What happens when all that is asked for arrives, or nothing does.
pub(super) fn loaded(state: &mut State, done: bool) -> Vec<Effect> {
    let mut effects = Vec::new();
    for part in Part::ALL {
        effects.extend(tell(state, NotebookMsg::Loaded(part, done)));
    }
    effects
}

pub(super) fn press(
    state: &mut State,
    action: &str,
    target: impl ToString,
) -> Vec<Effect> {
    let target = target.to_string();
    update(state, Msg::parse(action, &target).expect("the control means something"))
}

pub(super) fn write(state: &mut State, field: &str, text: &str) -> Vec<Effect> {
    tell(state, NotebookMsg::Typed { field: field.into(), text: text.into() })
}

/// The name and the text of the file that a button hands over.
fn handed_over(state: &mut State, action: &str) -> (String, String) {
    let saved = press(state, action, "").into_iter().find_map(|effect| match effect {
        Effect::Download { name, text } => Some((name, text)),
        _ => None,
    });
    saved.expect("a file is handed over")
}

/// Begins a trial of the rocket on the page as a group does, by turning to its readings; of
/// the same rocket once more where it has a trial.
pub(super) fn begin(state: &mut State) {
    if state.is_of_trial() {
        press(state, "nb-once-more", "");
    } else {
        write(state, "nb:centre_of_mass_reading_1_mm", "");
    }
    tell(state, NotebookMsg::Left { field: "nb:centre_of_mass_reading_1_mm".into() });
}

/// A page whose notebook is loaded.
pub(super) fn desk() -> State {
    let mut state = unloaded();
    let kept = NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false };
    assert!(tell(&mut state, kept).contains(&Effect::Load(Part::Notebook)));
    loaded(&mut state, true);
    state
}

/// Everything that is shown anywhere, as one text.
pub(super) fn shown(state: &mut State) -> String {
    let mut all = regions(state);
    all.extend(places::paper(state, Paper::Notebook));
    all.into_iter().map(|region| region.markup).collect()
}

/// What is said at the moment.
pub(super) fn said(state: &State) -> Option<String> {
    match &state.notice {
        Some(Notice::Said { words, .. }) => Some(words.clone()),
        _ => None,
    }
}

/// What is asked beside the button that locks a prediction, where somebody looks just then.
fn asked(state: &State) -> Option<String> {
    let asks = state.desk.look.nudge.clone()?;
    assert_eq!(region(state, "nb-lock-asks"), asks);
    Some(asks)
}

pub(super) fn file(state: &mut State) -> String {
    call(state, Ask::Kept).text.expect("the notebook is loaded")
}

pub(super) fn predict(state: &mut State, outcome: usize, because: &str) {
    press(state, "nb-outcome", outcome);
    write(state, "nb:draft_because", because);
    press(state, "nb-lock", "");
    if because.is_empty() {
        // Asked for a reason once, and gone on without.
        press(state, "nb-lock", "");
    }
}

pub(super) fn swing(state: &mut State, outcome: SwingOutcome) {
    update(state, Msg::To(Place::Swing));
    update(state, SwingMsg::SpaceChecked(true).into());
    update(state, SwingMsg::Swung(outcome).into());
}

pub(super) fn in_hand(state: &State) -> &noseward_lesson::Trial {
    state.desk.notebook.in_hand().expect("a trial is in hand")
}

/// The place of the notebook comes with what was kept, and takes no step of the history.
#[test]
fn what_is_done_after_opening_can_be_undone() {
    let mut state = desk();
    assert_ne!(state.desk.slot, 0);
    let hash = link::hash(&Example::Gannet.design().into());
    update(&mut state, Msg::HashChanged(hash));
    assert_eq!(state.design.name, "Gannet");
    update(&mut state, Msg::Undo);
    assert_eq!(state.design.name, "Puffin");
    assert_eq!(said(&state).unwrap(), "Undone: another rocket, Gannet.");
    // Undo goes through every place: readings, words, the choice.
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "141");
    write(&mut state, "nb:note", "it shook");
    press(&mut state, "nb-outcome", 1);
    for what in ["the choice", "the note", "trial 1 taken back"] {
        update(&mut state, Msg::Undo);
        let said = said(&state).unwrap();
        assert!(said.contains(what) || said.contains("trial 1 begun"), "{said}");
    }
    assert!(state.desk.notebook.is_blank());
}

/// The notebook shows every trial in a list, charts, a pair and sentences; the rocket on the
/// page is that of the trial in hand.
#[test]
fn a_change_has_one_report() {
    let mut state = desk();
    write(&mut state, "nb:level", "3");
    for span in ["61", "65", "70", "75"] {
        begin(&mut state);
        typed(&mut state, FIN_SPAN, span);
        write(&mut state, "nb:centre_of_mass_reading_1_mm", "150");
        write(&mut state, "nb:centre_of_pressure_reading_1_mm", "170");
        if span != "75" {
            predict(&mut state, 0, "long fins");
            swing(&mut state, SwingOutcome::Steady);
        }
    }
    press(&mut state, "nb-pair", 2);
    assert_eq!(state.desk.notebook.trials().len(), 4);
    assert_eq!(in_hand(&state).id(), 4);
    let redraw = |state: &mut State| {
        // Not paper, which is worked out when it is printed.
        let shown: String =
            regions(state).into_iter().map(|region| region.markup).collect();
        for part in ["Measured beside worked out", "side by side", "What else moved"] {
            assert!(shown.contains(part), "{part}");
        }
    };
    // So that its form knows its own rocket.
    press(&mut state, "su-two", "");
    redraw(&mut state);
    let before = evaluations();
    redraw(&mut state);
    assert_eq!(evaluations() - before, 0, "nothing has changed");
    update(&mut state, Msg::Typed { field: FIN_SPAN, text: "80".into() });
    redraw(&mut state);
    assert_eq!(evaluations() - before, 1, "one rocket has changed");
}

#[test]
fn the_rocket_to_compare_with_keeps_what_was_measured() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "150");
    write(&mut state, "nb:centre_of_pressure_reading_1_mm", "170");
    predict(&mut state, 0, "long fins");
    swing(&mut state, SwingOutcome::Steady);
    let judged = state.report.figures.clone();
    typed(&mut state, FIN_SPAN, "75");
    let figures = &state.swing.previous.as_ref().expect("it was swung").figures;
    assert_eq!(Some(figures), judged.as_ref());
    assert!((figures.separation_m - 0.020).abs() < 1e-12);
}

#[test]
fn nothing_can_be_swung_or_is_told_before_a_prediction() {
    let mut state = desk();
    state.desk.notebook.telling = Telling::Verdict;
    begin(&mut state);
    assert!(!state.is_predicted());
    assert!(!state.tells_outcome());
    swing(&mut state, SwingOutcome::Steady);
    assert!(state.swings.outcomes().is_empty(), "first predict");
    assert!(region(&state, "swing-record").contains("First predict"));
    let strip = region(&state, "strip");
    assert!(
        strip.contains("Predict first") && !strip.contains("elf-righting"),
        "{strip}"
    );

    press(&mut state, "nb-lock", "");
    assert!(!state.is_predicted(), "an outcome has to be chosen");
    predict(&mut state, 1, "small fins");
    assert!(state.is_predicted());
    swing(&mut state, SwingOutcome::Steady);
    assert_eq!(in_hand(&state).swings().outcomes(), [SwingOutcome::Steady]);
    assert!(!in_hand(&state).swung_first());
}

#[test]
fn a_locked_rocket_stays_as_it_was() {
    let mut state = desk();
    begin(&mut state);
    typed(&mut state, FIN_SPAN, "61");
    assert_eq!(in_hand(&state).design(), &state.design, "it follows");
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Wobbling);
    let locked = in_hand(&state).clone();
    typed(&mut state, FIN_SPAN, "75");
    assert_eq!(in_hand(&state), &locked);
    assert!(!state.is_of_trial());
    swing(&mut state, SwingOutcome::Steady);
    assert_eq!(in_hand(&state), &locked);
    // Typing the old number again makes it the same rocket, with its swings.
    typed(&mut state, FIN_SPAN, "61");
    assert!(state.is_predicted());
    assert_eq!(state.swings.outcomes(), [SwingOutcome::Wobbling]);
    // Measuring it is no change of it.
    typed(&mut state, Field::TotalMass, "90");
    assert!(state.is_predicted());
    assert_eq!(state.swings.outcomes(), [SwingOutcome::Wobbling]);
}

#[test]
fn another_string_is_another_trial() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Steady);
    let string = SetupField::Setup(noseward_stability::SwingField::String);
    update(&mut state, SwingMsg::Typed(string, "2".into()).into());
    assert!(!state.is_of_trial());
    swing(&mut state, SwingOutcome::TailFirst);
    assert_eq!(in_hand(&state).swings().outcomes(), [SwingOutcome::Steady]);
    update(&mut state, SwingMsg::Typed(string, "1".into()).into());
    assert!(state.is_predicted());
    assert_eq!(state.swings.outcomes(), [SwingOutcome::Steady]);
}

#[test]
fn three_more_swings_are_another_trial() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    for _ in 0..3 {
        swing(&mut state, SwingOutcome::Steady);
    }
    press(&mut state, "nb-once-more", "");
    assert_eq!(state.place, Place::Predict, "and says so: it wants a prediction");
    assert_eq!(state.desk.notebook.trials().len(), 2);
    assert_eq!(state.desk.notebook.trial(1).unwrap().swings().counted().count(), 3);
    assert!(!state.is_predicted());
}

#[test]
fn two_changes_are_named_and_either_can_be_undone() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    let baseline = state.design.clone();
    begin(&mut state);
    assert!(shown(&mut state).contains("Nothing has changed"));
    typed(&mut state, FIN_SPAN, "75");
    let one = shown(&mut state);
    assert!(!one.contains("nb-unfair") && one.contains("What else moved"), "{one}");
    typed(&mut state, FIN_COUNT, "3");
    let two = shown(&mut state);
    assert!(two.contains("nb-unfair") && two.contains("two changes"), "{two}");
    press(&mut state, "nb-undo-change", 0);
    assert!(!shown(&mut state).contains("nb-unfair"));
    press(&mut state, "nb-undo-change", 0);
    assert!(shown(&mut state).contains("Nothing has changed"));
    assert_eq!(state.design, baseline);
    // Whoever leads may allow it: nothing is nagged about, and the row says so.
    typed(&mut state, FIN_SPAN, "75");
    typed(&mut state, FIN_COUNT, "3");
    press(&mut state, "nb-allow", "");
    let allowed = shown(&mut state);
    assert!(!allowed.contains("nb-undo-change"), "{allowed}");
    assert!(allowed.contains("two changes (allowed)"), "{allowed}");
}

#[test]
fn readings_are_as_people_type_them_and_odd_ones_stay() {
    let mut state = desk();
    begin(&mut state);
    for (text, i) in ["200", "20,3 cm", "251"].into_iter().zip(1..) {
        write(&mut state, &format!("nb:centre_of_mass_reading_{i}_mm"), text);
    }
    assert_eq!(in_hand(&state).measured.mass.mm, [Some(200.0), Some(203.0), Some(251.0)]);
    assert!(shown(&mut state).contains("What do you do with it?"));
    write(&mut state, "nb:centre_of_mass_left_out", "2");
    write(&mut state, "nb:centre_of_mass_left_out_reason", "the string slipped");
    let out = in_hand(&state).measured.mass.left_out.clone().unwrap();
    assert_eq!((out.reading, out.reason.as_str()), (2, "the string slipped"));
    assert_eq!(in_hand(&state).measured.mass.mm[2], Some(251.0));
    // What cannot be read stays in its field, and what stood there before does not count
    // in its place.
    let marked =
        |state: &State| region(state, "measure-mass").contains("aria-invalid=\"true\"");
    assert!(!marked(&state));
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "1,234");
    assert!(marked(&state));
    assert_eq!(in_hand(&state).measured.mass.mm[0], None);
    let page = shown(&mut state);
    for part in ["Reading 1: Is that 1.234 or 1234?", "does not count", "value=\"1,234\""]
    {
        assert!(page.contains(part), "{part}: {page}");
    }
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "1.234");
    assert!(!marked(&state));
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "");
    assert_eq!(in_hand(&state).measured.mass.mm[0], None);
}

#[test]
fn what_was_measured_adds_up_on_the_page() {
    let mut state = desk();
    begin(&mut state);
    for (point, i, text) in
        [("mass", 1, "129"), ("pressure", 1, "160"), ("pressure", 2, "163")]
    {
        write(&mut state, &format!("nb:centre_of_{point}_reading_{i}_mm"), text);
    }
    let found = in_hand(&state).measured.clone();
    let computed = noseward_lesson::compare(&state.design.clone().into(), &found)
        .unwrap()
        .separation;
    let computed = computed.computed_mm.round();
    let difference = format!("{:.1} mm", 32.5 - computed).replace('-', "−");
    let page = shown(&mut state);
    let heading = "<th scope=\"col\">Point</th>";
    for part in
        ["161.5 mm from the nose", "<strong>32.5 mm</strong>", &difference, heading]
    {
        assert!(page.contains(part), "{part}: {page}");
    }
}

#[test]
fn a_lock_asks_once_about_what_makes_no_fair_test() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "it is long");
    assert!(in_hand(&state).is_locked(), "a baseline has nothing to differ from");
    swing(&mut state, SwingOutcome::Steady);
    let locks = |state: &mut State| {
        press(state, "nb-outcome", 0);
        write(state, "nb:draft_because", "so I think");
        press(state, "nb-lock", "");
        (in_hand(state).is_locked(), asked(state).unwrap_or_default())
    };
    begin(&mut state);
    let (locked, asked) = locks(&mut state);
    assert!(!locked && asked.contains("Nothing has changed"), "{asked}");
    press(&mut state, "nb-lock", "");
    assert!(in_hand(&state).is_locked(), "asked once");
    typed(&mut state, FIN_SPAN, "70");
    typed(&mut state, FIN_COUNT, "3");
    begin(&mut state);
    let (locked, asked) = locks(&mut state);
    assert!(!locked && asked.contains("More than one thing"), "{asked}");
    press(&mut state, "nb-lock", "");
    assert!(in_hand(&state).is_locked(), "asked once");
    // Where it is allowed nobody is asked.
    press(&mut state, "nb-allow", "");
    typed(&mut state, FIN_SPAN, "80");
    typed(&mut state, FIN_COUNT, "4");
    begin(&mut state);
    assert!(locks(&mut state).0);
}

#[test]
fn a_trial_that_is_brought_back_is_in_hand_where_its_rocket_is_shown() {
    let mut state = desk();
    begin(&mut state);
    press(&mut state, "nb-delete", 1);
    press(&mut state, "nb-restore", 1);
    assert_eq!(in_hand(&state).id(), 1);
    press(&mut state, "nb-delete", 1);
    typed(&mut state, FIN_SPAN, "70");
    press(&mut state, "nb-restore", 1);
    assert!(state.desk.notebook.in_hand().is_none());
    assert!(shown(&mut state).contains("Open it to go on"));
    press(&mut state, "nb-up", 1);
    assert!(shown(&mut state).contains("the first one already"));
}

#[test]
fn what_was_said_goes_when_something_else_happens() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "it is long");
    assert!(shown(&mut state).contains("Next: the cards, with the adult"));
    swing(&mut state, SwingOutcome::Steady);
    assert!(!shown(&mut state).contains("Next: the cards, with the adult"));
    press(&mut state, "nb-delete", 1);
    assert!(shown(&mut state).contains("Trial 1 is deleted. It can"));
    typed(&mut state, FIN_SPAN, "70");
    assert!(!shown(&mut state).contains("Trial 1 is deleted. It can"));
}

#[test]
fn two_notebooks_with_one_label_are_told_apart() {
    let mut state = desk();
    begin(&mut state);
    let other = file(&mut state).replace(r#""note": """#, r#""note": "theirs""#);
    begin(&mut state);
    tell(&mut state, NotebookMsg::OpenText(other));
    let page = shown(&mut state);
    for part in ["Another notebook here is Red 1 too", "Red 1: 2 trials, Puffin"] {
        assert!(page.contains(part), "{part}: {page}");
    }
}

#[test]
fn a_guess_is_made_before_measuring() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:centre_of_mass_guess_mm", "180");
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "200");
    write(&mut state, "nb:centre_of_mass_guess_mm", "201");
    assert_eq!(in_hand(&state).measured.mass.guess_mm, Some(180.0));
    tell(
        &mut state,
        NotebookMsg::Left { field: "nb:centre_of_mass_reading_1_mm".into() },
    );
    assert!(shown(&mut state).contains("Your guess was 180 mm"));
}

#[test]
fn ranges_that_overlap_are_too_close_to_call() {
    let mut state = desk();
    begin(&mut state);
    for ((mass, pressure), i) in
        [("150", "158"), ("156", "152"), ("153", "160")].into_iter().zip(1..)
    {
        write(&mut state, &format!("nb:centre_of_mass_reading_{i}_mm"), mass);
        write(&mut state, &format!("nb:centre_of_pressure_reading_{i}_mm"), pressure);
    }
    assert!(shown(&mut state).contains("Too close to call"));
    write(&mut state, "nb:centre_of_mass_reading_2_mm", "151");
    write(&mut state, "nb:centre_of_mass_reading_3_mm", "150,5");
    assert!(!shown(&mut state).contains("Too close to call"));
}

#[test]
fn trials_are_reopened_copied_moved_deleted_and_brought_back() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Steady);
    let first = state.record();
    typed(&mut state, FIN_SPAN, "75");
    begin(&mut state);
    assert_eq!(in_hand(&state).compared_with(), Some(1));
    press(&mut state, "nb-open", 1);
    assert_eq!(state.record(), first, "the rocket as it was, with its swings");
    press(&mut state, "nb-copy", 2);
    assert_eq!(state.desk.notebook.trials().len(), 3);
    assert_eq!(state.text_of(FIN_SPAN), "75");
    press(&mut state, "nb-up", 3);
    let ids = |state: &State| -> Vec<u16> {
        state.desk.notebook.trials().iter().map(|trial| trial.id()).collect()
    };
    assert_eq!(ids(&state), [1, 3, 2]);
    press(&mut state, "nb-delete", 1);
    assert_eq!(ids(&state), [3, 2]);
    press(&mut state, "nb-restore", 1);
    assert_eq!(ids(&state), [1, 3, 2]);
    press(&mut state, "nb-pair", 2);
    assert!(shown(&mut state).contains("side by side"));
}

#[test]
fn a_plan_is_made_ahead_and_begun() {
    let mut state = desk();
    write(&mut state, "nb:plan", "bigger fins");
    press(&mut state, "nb-plan-add", "");
    assert_eq!(state.desk.notebook.plans(), ["bigger fins"]);
    assert!(state.desk.look.plan.is_empty(), "the next one can be typed");
    press(&mut state, "nb-begin-plan", 0);
    assert_eq!(in_hand(&state).plan, "bigger fins");
    assert!(shown(&mut state).contains("Planned: bigger fins"));
}

#[test]
fn another_rocket_from_elsewhere_does_not_take_a_trial_over() {
    let mut state = desk();
    begin(&mut state);
    let mine = in_hand(&state).design().clone();
    let hash = link::hash(&Example::Gannet.design().into());
    update(&mut state, Msg::HashChanged(hash));
    assert_eq!(state.design.name, "Gannet");
    assert_eq!(state.desk.notebook.trial(1).unwrap().design(), &mine);
    assert!(!state.is_of_trial());
}

#[test]
fn what_is_kept_is_there_again() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:draft_because", "half a sen");
    let kept = file(&mut state);
    let mut again = unloaded();
    let slots = vec![(4, kept)];
    tell(&mut again, NotebookMsg::Kept { slots, open: 4, afresh: false });
    loaded(&mut again, true);
    assert_eq!(again.desk.notebook, state.desk.notebook);
    assert_eq!((again.desk.slot, again.desk.unsaved), (4, false));
    assert!(shown(&mut again).contains("half a sen"));
}

#[test]
fn a_kept_trial_keeps_its_rocket_where_a_link_brought_another() {
    let mut state = desk();
    begin(&mut state);
    let mine = in_hand(&state).design().clone();
    let kept = file(&mut state);
    let link = link::hash(&Example::Gannet.design().into());
    let mut again = open(&link, None);
    tell(
        &mut again,
        NotebookMsg::Kept { slots: vec![(1, kept)], open: 1, afresh: false },
    );
    loaded(&mut again, true);
    assert_eq!(again.design.name, "Gannet");
    assert_eq!(again.desk.notebook.trial(1).unwrap().design(), &mine);
    assert!(!again.is_of_trial());
}

#[test]
fn three_groups_share_one_computer() {
    let mut state = desk();
    let mut notebooks: Vec<(u32, Notebook)> = Vec::new();
    for span in ["61", "62", "63"] {
        if !notebooks.is_empty() {
            press(&mut state, "nb-new-group", "");
        }
        typed(&mut state, FIN_SPAN, span);
        begin(&mut state);
        write(&mut state, "nb:note", &format!("span {span}"));
        notebooks.push((state.desk.slot, state.desk.notebook.clone()));
    }
    let groups: Vec<String> = notebooks
        .iter()
        .map(|(_, notebook)| places::labels::group(notebook.group))
        .collect();
    assert_eq!(groups, ["Red 1", "Red 2", "Red 3"]);
    for (slot, notebook) in notebooks.iter().chain(&notebooks) {
        write(&mut state, "nb:slot", &slot.to_string());
        assert_eq!(&state.desk.notebook, notebook);
        assert_eq!(&state.design, in_hand(&state).design(), "its rocket is on the page");
        assert_eq!(state.desk.notebook.trials().len(), 1);
    }
}

#[test]
fn two_tabs_keep_both_their_notebooks() {
    let mut state = desk();
    begin(&mut state);
    let slot = state.desk.slot;
    let theirs = {
        let mut other = desk();
        typed(&mut other, FIN_SPAN, "80");
        begin(&mut other);
        file(&mut other)
    };
    let mine = state.desk.notebook.clone();
    let text = Some(theirs.clone());
    tell(&mut state, NotebookMsg::KeptElsewhere { slot, text, mine: None });
    assert_eq!(state.desk.notebook, mine);
    assert_ne!(state.desk.slot, slot, "in a place of its own");
    let there = state.desk.slots.iter().find(|known| known.number == slot).unwrap();
    assert_eq!(there.text, theirs);
}

#[test]
fn what_could_not_be_kept_is_not_replaced_by_another_tabs() {
    let mut state = desk();
    begin(&mut state);
    let slot = state.desk.slot;
    let mut theirs = state.desk.notebook.clone();
    theirs.trial_mut(1).unwrap().note = "theirs".into();
    let theirs = link::notebook_text(&NotebookFile { notebook: theirs, rocket: None });
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "203");
    // There was no room for it.
    update(&mut state, Msg::Wrote { refused: true });
    tell(&mut state, NotebookMsg::KeptElsewhere { slot, text: Some(theirs), mine: None });
    assert_eq!(in_hand(&state).measured.mass.mm[0], Some(203.0));
    assert_ne!(state.desk.slot, slot, "it stands beside the other tab's");
}

#[test]
fn another_tabs_words_are_shown_once_they_are_here() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:note", "abc");
    let slot = state.desk.slot;
    let mut theirs = state.desk.notebook.clone();
    theirs.trial_mut(1).unwrap().note = "abc and more".into();
    let theirs = link::notebook_text(&NotebookFile { notebook: theirs, rocket: None });
    state.desk.unsaved = false;
    tell(&mut state, NotebookMsg::KeptElsewhere { slot, text: Some(theirs), mine: None });
    assert_eq!(in_hand(&state).note, "abc and more");
    assert!(shown(&mut state).contains("abc and more</textarea>"));
}

#[test]
fn a_notebook_from_elsewhere_stands_beside_the_open_one() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 1, "small fins");
    let mine = state.desk.notebook.clone();
    let slot = state.desk.slot;
    for text in [
        crate::notebook::file(&state).replace("small fins", "big fins"),
        handed_over(&mut state, "nb-csv-comma").1.replace("small fins", "tiny fins"),
        handed_over(&mut state, "nb-text").1.replace("small fins", "no fins"),
    ] {
        tell(&mut state, NotebookMsg::OpenText(text));
        assert_ne!(state.desk.slot, slot);
        let changed = in_or_first(&state).clone();
        assert!(changed.is_altered(), "a prediction changed by hand says so");
        let page = shown(&mut state);
        for place in
            ["in this trial was changed", ">changed by hand, outside of the page<"]
        {
            assert!(page.contains(place), "{place}: {page}");
        }
        write(&mut state, "nb:slot", &slot.to_string());
        assert_eq!(state.desk.notebook, mine, "nothing happened to the open one");
    }
    // Without a row.
    let table = link::to_table(&mine, Format::Tabs, &|_| String::new());
    let rows = table.lines().filter(|line| !line.starts_with("trial\t"));
    let without = rows.collect::<Vec<_>>().join("\r\n");
    tell(&mut state, NotebookMsg::OpenText(without));
    assert!(state.desk.notebook.is_altered());
    let page = shown(&mut state);
    assert!(page.contains("Trials were taken out of this notebook"), "{page}");
    write(&mut state, "nb:slot", &slot.to_string());
    // The same one again is no second one.
    let count = state.desk.slots.len();
    let text = file(&mut state);
    tell(&mut state, NotebookMsg::OpenText(text));
    assert_eq!((state.desk.slots.len(), state.desk.slot), (count, slot));
}

fn in_or_first(state: &State) -> &noseward_lesson::Trial {
    let notebook = &state.desk.notebook;
    notebook.in_hand().or(notebook.trials().first()).expect("it has a trial")
}

#[test]
fn every_spelling_brings_the_notebook_back() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 1, "=1+1; \"quoted\", and\ntwo lines");
    swing(&mut state, SwingOutcome::Wobbling);
    let notebook = state.desk.notebook.clone();
    assert_eq!(
        link::open_notebook_hash(&file(&mut state)).unwrap().unwrap().notebook,
        notebook
    );
    for (action, ending) in [
        ("nb-csv-comma", "red-1-semicolons.csv"),
        ("nb-csv-point", "red-1.csv"),
        ("nb-text", "red-1.txt"),
    ] {
        let (name, text) = handed_over(&mut state, action);
        assert!(name.ends_with(ending), "{name}");
        assert_eq!(open_table(&text).unwrap(), notebook);
    }
    for action in ["nb-copy-table", "nb-copy-table-comma"] {
        let copied =
            press(&mut state, action, "").into_iter().find_map(|effect| match effect {
                Effect::Copy { text, is_link: false } => Some(text),
                _ => None,
            });
        let table = copied.expect("a table is copied");
        assert!(
            table.starts_with("Kind of row [kind_of_row]\tGroup [group]\t"),
            "{table}"
        );
        assert_eq!(open_table(&table).unwrap(), notebook);
    }
}

#[test]
fn a_later_thought_never_hides_the_first() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 2, "no fins to speak of");
    swing(&mut state, SwingOutcome::Steady);
    predict(&mut state, 0, "we saw it");
    let page = shown(&mut state);
    for words in [
        "no fins to speak of",
        "we saw it",
        "written after 1 swing",
        "later: nose first, steady",
    ] {
        assert!(page.contains(words), "{words}: {page}");
    }
    update(&mut state, Msg::Undo);
    update(&mut state, Msg::Undo);
    let first = state.desk.notebook.trial(1).unwrap().predictions().first().unwrap();
    assert_eq!(first.because, "no fins to speak of");
}

#[test]
fn every_level_shows_its_own_and_keeps_everything() {
    let mut state = desk();
    begin(&mut state);
    for (text, i) in ["200", "203", "201"].into_iter().zip(1..) {
        write(&mut state, &format!("nb:centre_of_mass_reading_{i}_mm"), text);
        write(
            &mut state,
            &format!("nb:centre_of_pressure_reading_{i}_mm"),
            &format!("24{i}"),
        );
    }
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Steady);
    let before = state.desk.notebook.clone();
    let mut lengths = Vec::new();
    for level in 0..4 {
        write(&mut state, "nb:level", &level.to_string());
        let page = shown(&mut state);
        assert_eq!(page.contains("Body widths"), level >= 2, "{level}");
        assert_eq!(page.contains("Range:"), level >= 1, "{level}");
        assert_eq!(page.contains("Moments:"), level == 3, "{level}");
        lengths.push(page.len());
    }
    assert!(lengths.is_sorted(), "{lengths:?}");
    write(&mut state, "nb:level", "1");
    assert_eq!(state.desk.notebook, before);
}

#[test]
fn help_with_the_conclusion_has_three_levels() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Steady);
    assert!(shown(&mut state).contains("nb-use"));
    press(&mut state, "nb-use", "0 0");
    let used = state.desk.notebook.conclusion.claim.clone();
    write(&mut state, "nb:help", "1");
    let questions = shown(&mut state);
    assert!(!questions.contains("nb-use") && questions.contains("what did you find out"));
    write(&mut state, "nb:help", "2");
    let empty = shown(&mut state);
    assert!(!empty.contains("nb-use") && !empty.contains("what did you find out"));
    assert_eq!(state.desk.notebook.conclusion.claim, used, "what is written stays");
}

#[test]
fn a_sentence_to_use_goes_behind_the_text_while_there_is_room() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "");
    swing(&mut state, SwingOutcome::Steady);
    write(&mut state, "nb:evidence", "We saw it.");
    press(&mut state, "nb-use", "1 0");
    let used = state.desk.notebook.conclusion.evidence.clone();
    assert!(used.starts_with("We saw it.\nTrial 1: "), "{used}");
    press(&mut state, "nb-use", "1 0");
    assert_eq!(state.desk.notebook.conclusion.evidence, used);
    assert_eq!(said(&state).as_deref(), Some("That sentence is there already."));
    let long = "x".repeat(noseward_lesson::BOX_CHARS - 10);
    write(&mut state, "nb:evidence", &long);
    press(&mut state, "nb-use", "1 0");
    assert_eq!(state.desk.notebook.conclusion.evidence, long);
    assert!(said(&state).unwrap().starts_with("There is no room for that sentence"));
}

#[test]
fn a_notebook_that_could_not_load_says_so_and_tries_again() {
    let mut state = unloaded();
    tell(&mut state, NotebookMsg::Kept { slots: Vec::new(), open: 0, afresh: false });
    loaded(&mut state, false);
    assert!(region(&state, "waits").contains("could not be loaded"));
    // Deleting needs nothing of that.
    update(&mut state, Msg::To(Place::Lead));
    let waiting = shell::waiting(&state);
    assert!(waiting.iter().any(|region| {
        region.id == "delete" && region.markup.contains("ask-to-delete")
    }));
    loaded(&mut state, false);
    assert!(press(&mut state, "nb-again", "").contains(&Effect::Load(Part::Notebook)));
    loaded(&mut state, true);
    assert!(!region(&state, "waits").contains("could not be loaded"));
}

/// Lets the browser keep what it was told to keep.
fn keep(state: &mut State, effects: Vec<Effect>) {
    for effect in effects {
        if let Effect::KeepNotebook { slot, text } = effect {
            let more = tell(state, NotebookMsg::IsKept { slot, text });
            keep(state, more);
        }
    }
}

#[test]
fn a_notebook_that_is_put_away_keeps_its_own_label() {
    let mut state = desk();
    let mut labels = Vec::new();
    for _ in 0..3 {
        begin(&mut state);
        labels.push(places::labels::group(state.desk.notebook.group));
        let effects = press(&mut state, "nb-new-group", "");
        keep(&mut state, effects);
    }
    assert_eq!(labels, ["Red 1", "Red 2", "Red 3"]);
    let kept: Vec<String> = state
        .desk
        .slots
        .iter()
        .filter_map(|slot| slot.group.map(places::labels::group))
        .collect();
    assert_eq!(kept, labels);
    // A label that is taken is said so.
    write(&mut state, "nb:number", "2");
    assert!(shown(&mut state).contains("Another notebook here is Red 2 too"));
}

#[test]
fn what_came_in_meanwhile_is_still_to_be_kept() {
    let mut state = desk();
    let theirs = {
        let mut other = desk();
        begin(&mut other);
        file(&mut other)
    };
    write(&mut state, "nb:colour", "0");
    let effects = tell(&mut state, NotebookMsg::OpenText(theirs));
    keep(&mut state, effects);
    assert!(state.desk.unsaved);
}

#[test]
fn undo_puts_no_rocket_into_another_trial_or_group() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "a");
    swing(&mut state, SwingOutcome::Steady);
    typed(&mut state, FIN_SPAN, "75");
    begin(&mut state);
    press(&mut state, "nb-open", 1);
    press(&mut state, "nb-open", 2);
    let second = in_hand(&state).clone();
    update(&mut state, Msg::Undo);
    assert_eq!(state.desk.notebook.trial(2), Some(&second));

    let mut state = desk();
    typed(&mut state, FIN_SPAN, "61");
    begin(&mut state);
    let slot = state.desk.slot;
    press(&mut state, "nb-new-group", "");
    typed(&mut state, FIN_SPAN, "99");
    begin(&mut state);
    write(&mut state, "nb:slot", &slot.to_string());
    let mine = in_hand(&state).clone();
    update(&mut state, Msg::Undo);
    assert_eq!(state.desk.notebook.trial(1), Some(&mine));
}

#[test]
fn swings_never_wander_from_trial_to_trial() {
    let swung = |state: &mut State| {
        typed(state, FIN_SPAN, "61");
        begin(state);
        predict(state, 0, "a");
        for _ in 0..3 {
            swing(state, SwingOutcome::Steady);
        }
    };
    // The same rocket again.
    let mut state = desk();
    swung(&mut state);
    begin(&mut state);
    assert_eq!(in_hand(&state).id(), 2);
    assert!(in_hand(&state).swings().outcomes().is_empty());
    assert!(state.swings.outcomes().is_empty() && !in_hand(&state).swung_first());
    // Another one that becomes the old one again.
    let mut state = desk();
    swung(&mut state);
    typed(&mut state, FIN_SPAN, "75");
    begin(&mut state);
    typed(&mut state, FIN_SPAN, "61");
    assert!(in_hand(&state).swings().outcomes().is_empty());
    // Three more swings, locked, and undone.
    let mut state = desk();
    swung(&mut state);
    begin(&mut state);
    predict(&mut state, 0, "b");
    update(&mut state, Msg::Undo);
    update(&mut state, SwingMsg::TakeBack.into());
    let second = state.desk.notebook.trial(2).unwrap();
    assert!(second.swings().outcomes().is_empty(), "{:?}", second.swings());
    // A link to the same rocket with swings of its own.
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "a");
    let mut record = state.record();
    record.swings.add(SwingOutcome::TailFirst);
    update(&mut state, Msg::OpenText(link::hash(&record)));
    assert_eq!(state.swings.outcomes(), [SwingOutcome::TailFirst]);
    swing(&mut state, SwingOutcome::Steady);
    press(&mut state, "nb-open", 1);
    assert!(in_hand(&state).swings().outcomes().is_empty());
    swing(&mut state, SwingOutcome::Steady);
    assert_eq!(in_hand(&state).swings().outcomes(), [SwingOutcome::Steady]);
}

#[test]
fn a_swing_that_was_recorded_by_mistake_is_corrected_with_a_trace() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "a");
    for outcome in
        [SwingOutcome::TailFirst, SwingOutcome::Sideways, SwingOutcome::Wobbling]
    {
        swing(&mut state, outcome);
        assert!(region(&state, "swing-record").contains("id=\"swung-wrong\""));
        update(&mut state, SwingMsg::TakeBack.into());
        assert!(state.swings.outcomes().is_empty());
        assert!(in_hand(&state).taken_back().ends_with(&[outcome]));
    }
    // Undo takes no correction away, and brings no swing back.
    update(&mut state, Msg::Undo);
    let trial = state.desk.notebook.trial(1).unwrap();
    assert_eq!((trial.taken_back().len(), trial.swings().outcomes()), (3, &[][..]));
    update(&mut state, Msg::Redo);
    swing(&mut state, SwingOutcome::Steady);
    let told = region(&state, "swing-record");
    assert!(told.contains("Taken back, and kept on record: tail first; "), "{told}");
    assert!(told.contains("begin another one instead"), "{told}");
    assert!(!told.contains("id=\"swung-wrong\""), "{told}");
    update(&mut state, SwingMsg::TakeBack.into());
    assert_eq!(in_hand(&state).swings().outcomes(), [SwingOutcome::Steady]);
    assert!(shown(&mut state).contains("taken back: tail first; "));
    let kept = open_notebook_file(&crate::notebook::file(&state)).unwrap().notebook;
    assert_eq!(kept.trial(1).unwrap().taken_back().len(), 3);
    assert!(!kept.is_altered() && !kept.trial(1).unwrap().is_altered());
}

#[test]
fn undo_right_after_a_swing_says_so_and_leaves_the_readings() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "141");
    tell(
        &mut state,
        NotebookMsg::Left { field: "nb:centre_of_mass_reading_1_mm".into() },
    );
    predict(&mut state, 0, "a");
    swing(&mut state, SwingOutcome::TailFirst);
    update(&mut state, Msg::Undo);
    assert!(said(&state).is_some_and(|words| words.contains("can’t be undone")));
    assert_eq!(in_hand(&state).measured.mass.mm[0], Some(141.0));
    assert_eq!(in_hand(&state).swings().outcomes(), [SwingOutcome::TailFirst]);
    // Asked once: from then on it goes further back.
    update(&mut state, Msg::Undo);
    assert_eq!(state.desk.notebook.trial(1).unwrap().measured.mass.mm[0], None);
    assert_eq!(state.desk.notebook.trial(1).unwrap().swings().outcomes().len(), 1);
}

#[test]
fn a_guess_that_cannot_be_read_goes_with_the_first_reading() {
    let mut state = desk();
    begin(&mut state);
    write(&mut state, "nb:centre_of_mass_guess_mm", "dunno");
    assert!(shown(&mut state).contains("Your guess:"));
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "141");
    assert!(!shown(&mut state).contains("Your guess:"));
}

#[test]
fn what_was_seen_before_a_prediction_stays_on_record() {
    let mut state = lost::swung_elsewhere(SwingOutcome::Steady);
    begin(&mut state);
    update(&mut state, SwingMsg::TakeBack.into());
    predict(&mut state, 0, "a");
    assert!(in_hand(&state).swung_first());
    assert!(shown(&mut state).contains("swung before it was predicted"));
}

#[test]
fn the_rocket_on_the_page_waits_with_its_group() {
    let mut state = desk();
    begin(&mut state);
    predict(&mut state, 0, "a");
    typed(&mut state, FIN_SPAN, "77");
    let slot = state.desk.slot;
    press(&mut state, "nb-new-group", "");
    begin(&mut state);
    write(&mut state, "nb:slot", &slot.to_string());
    assert_eq!(state.text_of(FIN_SPAN), "77");
}

#[test]
fn a_plan_without_room_is_not_thrown_away() {
    let mut state = desk();
    for i in 0..12 {
        write(&mut state, "nb:plan", &format!("plan {i}"));
        press(&mut state, "nb-plan-add", "");
    }
    write(&mut state, "nb:plan", "one more");
    press(&mut state, "nb-plan-add", "");
    assert!(shown(&mut state).contains("value=\"one more\""));
    assert!(shown(&mut state).contains("room for 12 plans"));
}

#[test]
fn a_link_to_a_notebook_does_not_overwrite_the_kept_rocket() {
    let mut other = desk();
    begin(&mut other);
    let text = file(&mut other);
    let mine = Example::Gannet.design();
    let mut state = open("", Some(&mine));
    let slots = Vec::new();
    tell(&mut state, NotebookMsg::Kept { slots, open: 0, afresh: false });
    tell(&mut state, NotebookMsg::OpenLink(text));
    loaded(&mut state, true);
    assert_eq!(state.design.name, "Puffin");
    assert_eq!(state.keeping, Keeping::Other(Box::new(mine.rounded().into())));
}

#[test]
fn a_fresh_start_opens_no_notebook_and_loses_none() {
    let mut state = desk();
    begin(&mut state);
    let kept = file(&mut state);
    let mut afresh = unloaded();
    let slots = vec![(1, kept.clone())];
    tell(&mut afresh, NotebookMsg::Kept { slots, open: 1, afresh: true });
    loaded(&mut afresh, true);
    assert!(afresh.desk.notebook.is_blank());
    assert_ne!(afresh.desk.slot, 1);
    assert_eq!(afresh.desk.slots[0].text, kept);
}

#[test]
fn what_cannot_be_opened_is_told_where_it_was_typed() {
    let mut state = desk();
    begin(&mut state);
    let codes = link::notebook_parts(&NotebookFile {
        notebook: state.desk.notebook.clone(),
        rocket: None,
    });
    let wrong = codes.unwrap()[0].replacen("N1", "N1*", 1);
    let effects = update(&mut state, Msg::OpenText(wrong));
    assert!(!effects.contains(&Effect::CloseMenus));
    let told = region(&state, "open-fault");
    assert!(told.contains("Row 1 has “*”"), "{told}");
}

/// A class hands in all at once: everything is opened or named, and nothing goes without a
/// word.
#[test]
fn whatever_is_pasted_at_once_is_opened_or_named() {
    let spelled = |example: Example| link::hash(&example.design().into());
    let notebook = |colour| {
        let mut state = desk();
        state.desk.notebook.group = Group::new(colour, 1).expect("1 is a number");
        begin(&mut state);
        state.desk.notebook.clone()
    };
    let both = [Colour::Blue, Colour::Green].map(notebook);
    let result = noseward_lesson::TrialResult::of(&both[1], 1).expect("a trial");
    let result = link::result_code(&result);
    let links = both.map(|notebook| {
        let file = NotebookFile { notebook, rocket: None };
        link::notebook_hash(&file).expect("it is short")
    });

    let mut state = desk();
    let text = format!("{}\n{}\n{result}\nn1.{}", links[0], links[1], "A".repeat(40));
    update(&mut state, Msg::OpenText(text));
    let words = said(&state).expect("it says what came");
    for part in
        ["of Blue 1 is here", "of Green 1 is here", "result of Green 1", "Number 4 of 4"]
    {
        assert!(words.contains(part), "{part} is not in {words}");
    }
    let groups = state.desk.slots.iter().filter_map(|slot| slot.group);
    assert_eq!(groups.count() + 1, 2, "{:?}", state.desk.slots);

    let mut state = desk();
    let two = format!("{} and {}", spelled(Example::Tern), spelled(Example::Gannet));
    update(&mut state, Msg::OpenText(two));
    assert_eq!(state.design.name, "Tern");
    let words = said(&state).expect("it names the other");
    assert!(words.contains("Not opened: Gannet"), "{words}");

    // One rocket twice, as a mail may have it, is one rocket.
    let mut state = desk();
    let twice = format!("[{0}]({0})", spelled(Example::Tern));
    update(&mut state, Msg::OpenText(twice));
    assert_eq!((state.design.name.as_str(), said(&state)), ("Tern", None));
}

/// What was deleted goes from this computer, and the next notebook here is open.
#[test]
fn a_deleted_notebook_is_dropped_and_another_one_opened() {
    let mut state = desk();
    begin(&mut state);
    let first = state.desk.slot;
    press(&mut state, "nb-new-group", "");
    begin(&mut state);
    let second = state.desk.slot;
    assert_ne!(first, second);
    let effects = press(&mut state, "nb-delete-now", "");
    assert!(effects.contains(&Effect::DropNotebook(second)), "{effects:?}");
    assert_eq!(state.desk.slot, first);
    // The last one leaves an empty notebook of the same group behind.
    let group = state.desk.notebook.group;
    let effects = press(&mut state, "nb-delete-now", "");
    assert!(effects.contains(&Effect::DropNotebook(first)), "{effects:?}");
    assert!(state.desk.notebook.is_blank());
    assert_eq!(state.desk.notebook.group, group);
}

/// Only what makes a test unfair holds a prediction up.
#[test]
fn a_fair_prediction_is_locked_at_once() {
    let changed = |fields: &[(Field, &str)]| {
        let mut state = desk();
        begin(&mut state);
        predict(&mut state, 0, "a long nose");
        for (field, text) in fields {
            typed(&mut state, *field, text);
        }
        begin(&mut state);
        press(&mut state, "nb-outcome", 0);
        write(&mut state, "nb:draft_because", "it is heavier in front");
        press(&mut state, "nb-lock", "");
        (in_hand(&state).is_locked(), asked(&state))
    };
    let (locked, said) = changed(&[(CLAY_PLACE, "30")]);
    assert!(locked, "{said:?}");
    let (locked, said) = changed(&[]);
    assert!(!locked && said.is_some_and(|words| words.contains("Nothing has changed")));
    let (locked, said) = changed(&[(CLAY_PLACE, "30"), (FIN_SPAN, "80")]);
    assert!(!locked && said.is_some_and(|words| words.contains("More than one thing")));
}

#[test]
fn symbols_are_drawn_when_asked_for() {
    let mut state = desk();
    begin(&mut state);
    assert!(!shown(&mut state).contains("Part 1 of"));
    press(&mut state, "nb-symbols", "");
    let all = shown(&mut state);
    assert!(all.contains("Part 1 of") && all.contains("share__symbol"));
}

/// A slip stays in its field and on record, and counts nowhere: not on the page, on paper or
/// in what is handed in.
#[test]
fn a_reading_that_cannot_be_true_counts_nowhere() {
    let mut state = desk();
    begin(&mut state);
    let id = state.trial_in_hand().unwrap().id();
    let is_done = |state: &State| Place::Measure.is_done(state);
    for (typed, why) in [
        ("23.6", "Reading 1: Only 23.6 mm: read in centimetres?"),
        ("-5", "Reading 1: A ruler shows nothing below zero."),
        ("9999", "Reading 1: This lies beyond the rocket"),
    ] {
        write(&mut state, "nb:centre_of_mass_reading_1_mm", typed);
        write(&mut state, "nb:centre_of_pressure_reading_1_mm", "180");
        assert!(state.measured.centre_of_mass.is_none(), "{typed}");
        assert!(!is_done(&state), "{typed}");
        assert_eq!(state.desk.notebook.summaries()[0].measured_separation_mm, None);
        tell(&mut state, NotebookMsg::Left { field: "nb:x".into() });
        let shown = shown(&mut state);
        assert!(shown.contains(why), "{typed}: {shown}");
        assert!(shown.contains("It does not count until it is changed."), "{typed}");
        assert!(shown.contains("reading 1 does not count: it cannot be true"), "{typed}");
        assert!(!shown.contains("before you changed it"), "{typed}: {shown}");
        let (_, words) = handed_over(&mut state, "nb-text");
        let told = "Reading 1 does not count: it cannot be true of this rocket.";
        assert!(words.contains(told), "{words}");
        let result = noseward_lesson::TrialResult::of(&state.desk.notebook, id).unwrap();
        assert_eq!(result.mass, None, "{typed}");
    }
    write(&mut state, "nb:centre_of_mass_reading_1_mm", "150");
    assert!(is_done(&state));
}

/// Wherever the separation of a trial is told, it is the same, and said to be measured or
/// worked out.
#[test]
fn compare_and_conclude_tell_the_same_separation() {
    let mut state = desk();
    for (span, mass, pressure) in [("45", "150", "162"), ("70", "150", "196")] {
        typed(&mut state, FIN_SPAN, span);
        for (point, mm) in [("mass", mass), ("pressure", pressure)] {
            for reading in 1..=3 {
                let field = format!("nb:centre_of_{point}_reading_{reading}_mm");
                write(&mut state, &field, mm);
            }
        }
        predict(&mut state, 0, "long nose");
    }
    go(&mut state, Place::Compare);
    let compare = page(&state);
    assert!(
        compare.contains("measured separation grew from 12 mm to 46 mm"),
        "{compare}"
    );
    assert!(compare.contains("46 mm measured"), "{compare}");
    go(&mut state, Place::Conclude);
    let conclude = page(&state);
    assert!(conclude.contains("measured separation 46 mm"), "{conclude}");
}

/// A reload between two swings of a set goes on at the card that asks for the space again.
#[test]
fn a_set_of_swings_goes_on_where_it_was() {
    let mut state = desk();
    predict(&mut state, 0, "long nose");
    go(&mut state, Place::Swing);
    for (swings, card) in [(0, "1 of 7"), (1, "5 of 7"), (2, "5 of 7"), (3, "1 of 7")] {
        if swings > 0 {
            update(&mut state, SwingMsg::SpaceChecked(true).into());
            update(&mut state, SwingMsg::Swung(SwingOutcome::Steady).into());
        }
        assert_eq!(state.swings.outcomes().len(), swings);
        let kept = file(&mut state);
        let mut again = unloaded();
        let slots = vec![(1, kept)];
        tell(&mut again, NotebookMsg::Kept { slots, open: 1, afresh: false });
        loaded(&mut again, true);
        go(&mut again, Place::Swing);
        let cards = region(&again, "swing-cards");
        assert!(cards.contains(card), "{swings}: {cards}");
        let said = region(&again, "swing-record");
        let count = format!("{swings} of 3 swings recorded.");
        assert!(
            said.contains(if swings < 3 { &count } else { "Three swings" }),
            "{said}"
        );
    }
}

#[test]
fn the_notebook_on_paper_has_rocket_guesses_and_swings() {
    let mut state = desk();
    write(&mut state, "nb:centre_of_mass_guess_mm", "133");
    predict(&mut state, 0, "long nose");
    go(&mut state, Place::Swing);
    for outcome in [SwingOutcome::Sideways, SwingOutcome::Slipped] {
        update(&mut state, SwingMsg::SpaceChecked(true).into());
        update(&mut state, SwingMsg::Swung(outcome).into());
    }
    let paper = &places::paper(&state, Paper::Notebook)[0].markup;
    for told in [
        "The rocket of trial 1",
        "drawn to scale with its two points",
        "133 mm",
        "sideways or tumbling; string slipped, do again",
    ] {
        assert!(paper.contains(told), "{told}: {paper}");
    }
}
