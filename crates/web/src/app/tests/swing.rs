//! The swing bench.

use super::*;
use crate::places::predict::PredictMsg;
use noseward_lesson::SwingOutcome;
use noseward_stability::{Settles, SwingField};

const STRING: SetupField = SetupField::Setup(SwingField::String);

fn bench(state: &mut State, msg: SwingMsg) -> Vec<Effect> {
    update(state, msg.into())
}

/// Works out the bench alone: the draws of the uncertainty take longer.
fn work(state: &mut State) {
    while !super::super::swing::slice(state).is_empty() {}
}

/// A page with its bench in view and worked out.
fn in_view(example: Example) -> State {
    let mut state = open("", None);
    update(&mut state, Msg::Start(Start::Example(example)));
    update(&mut state, Msg::To(Place::Swing));
    work(&mut state);
    state
}

/// The same with a prediction locked, and the space checked.
fn ready(example: Example) -> State {
    let mut state = in_view(example);
    notebook::predict(&mut state, 0, "so I think");
    assert!(state.is_predicted());
    bench(&mut state, SwingMsg::SpaceChecked(true));
    state
}

fn known(state: &State) -> &SwingResult {
    state.swing.known.as_deref().unwrap()
}

#[test]
fn nothing_is_worked_out_until_the_bench_is_in_view() {
    let mut state = open("", None);
    update(&mut state, Msg::Slice);
    assert!(state.swing.known.is_none());
    assert!(region(&state, "swing-words").contains("Being worked out"));
    update(&mut state, Msg::To(Place::Swing));
    assert!(state.swing.known.is_some(), "at once");
    // The starts follow the draws by themselves.
    while update(&mut state, Msg::Slice).contains(&Effect::Slice) {}
    assert!(known(&state).starts.is_done());
    assert!(known(&state).draws.is_done());
}

#[test]
fn a_rocket_at_the_border_is_too_close_to_call() {
    let words = |example| region(&in_view(example), "swing-words");
    assert!(words(Example::Razorbill).contains("Too close to call on the string."));
    assert!(!words(Example::Puffin).contains("Too close to call"));
    // Not before they are drawn.
    let mut state = in_view(Example::Razorbill);
    bench(&mut state, SwingMsg::Start(80.0));
    assert!(!region(&state, "swing-words").contains("Too close to call"));
}

#[test]
fn another_rocket_or_string_is_worked_out_anew() {
    let mut state = in_view(Example::Puffin);
    let before = known(&state).swing.space().clear_m;
    bench(&mut state, SwingMsg::Typed(STRING, "0,6".into()));
    let shorter = known(&state).swing.space().clear_m;
    assert!(shorter < before - 0.5);
    assert!(
        region(&state, "swing-room")
            .contains(&format!("within <strong>{shorter} m</strong>"))
    );
    let length_m = known(&state).swing.space().swept_m;
    typed(&mut state, Field::Section(1, SectionField::Length), "225");
    assert!(known(&state).swing.space().swept_m > length_m + 0.01, "of the new rocket");
    update(&mut state, Msg::To(Place::Rocket));
    typed(&mut state, WIDTH, "70");
    assert!(state.swing.known.is_none(), "nobody looks");
    update(&mut state, Msg::To(Place::Swing));
    assert!(state.swing.known.is_some());
}

#[test]
fn a_string_may_be_typed_in_any_unit_and_nonsense_loses_nothing() {
    let mut state = in_view(Example::Puffin);
    for (text, metres) in [("1.2", 1.2), ("1,2", 1.2), ("120 cm", 1.2), ("1200mm", 1.2)] {
        bench(&mut state, SwingMsg::Typed(STRING, text.into()));
        assert!((state.swings.setup.string_m - metres).abs() < 1e-9, "{text}");
    }
    bench(&mut state, SwingMsg::Typed(STRING, "long".into()));
    assert_eq!(state.setup_text(STRING), "long");
    assert!(region(&state, "swing-fault-string").contains("I cannot read this"));
    assert!((state.swings.setup.string_m - 1.2).abs() < 1e-9);
    assert!(state.swing.known.is_none(), "no distance from an older number");
    bench(&mut state, SwingMsg::Typed(STRING, "15".into()));
    assert!(region(&state, "swing-fault-string").contains("from 0.3 m to 3 m"));
    assert!(state.swing.known.is_none(), "nothing is worked out from that");
    assert!(region(&state, "swing-words").contains("Nothing to swing"));
}

#[test]
fn what_it_comes_to_is_told_in_words() {
    for (example, words) in [
        (Example::Puffin, "comes round nose-first in"),
        (Example::Tern, "settles across its path, turned by"),
        (Example::Razorbill, "settles across its path, turned by"),
        (Example::Gannet, "comes round nose-first in"),
    ] {
        let state = in_view(example);
        let told = region(&state, "swing-words");
        assert!(told.contains(words), "{example:?}: {told}");
    }
}

/// Whole sentences, as they are read out.
#[test]
fn what_it_comes_to_is_whole_sentences() {
    let told = |turns: &str, start: f64| {
        let mut state = in_view(Example::Puffin);
        let field = SetupField::Setup(SwingField::Turns);
        bench(&mut state, SwingMsg::Typed(field, turns.into()));
        bench(&mut state, SwingMsg::Start(start));
        region(&state, "swing-words")
    };
    for (turns, start, words) in [
        ("0.8", 0.0, "Started at 0°, it is nose-first at once.</strong>"),
        (
            "0.8",
            90.0,
            "Started at 90°, it comes round nose-first in about 0.5 s (0.5 turns). It still \
             swings by 3° at the end.</strong></p>",
        ),
        ("3", 90.0, "<strong>Do not swing this. Shorter string, fewer turns, lighter "),
        ("9", 90.0, "Nothing to swing yet. First put the number above right."),
    ] {
        let found = told(turns, start);
        assert!(found.contains(words), "{turns} {start}: {found}");
    }
}

#[test]
fn faults_are_in_the_units_of_the_reader() {
    let mut state = in_view(Example::Puffin);
    let arm = SetupField::Setup(SwingField::Arm);
    bench(&mut state, SwingMsg::Typed(arm, "2".into()));
    assert_eq!(state.setup_fault(arm).unwrap(), "Use a number from 0 m to 1 m.");
    state.units = Units::INCH;
    assert_eq!(state.setup_fault(arm).unwrap(), "Use a number from 0 in to 39.37 in.");
    let turns = SetupField::Setup(SwingField::Turns);
    bench(&mut state, SwingMsg::Typed(turns, "5".into()));
    let fault = state.setup_fault(turns).unwrap();
    assert_eq!(fault, "Use a number from 0.3 turns a second to 3 turns a second.");
    bench(&mut state, SwingMsg::Typed(turns, "many".into()));
    let fault = state.setup_fault(turns).unwrap();
    assert_eq!(fault, "I cannot read this. Type, for example, 1.");
}

#[test]
fn a_hidden_outcome_stays_hidden_on_the_bench() {
    let mut state = in_view(Example::Puffin);
    assert!(region(&state, "swing-model").contains("nose-first"));
    state.desk.notebook.telling = noseward_lesson::Telling::Verdict;
    let told = region(&state, "swing-model");
    assert!(!told.contains("nose-first") && !told.contains("<svg"), "{told}");
    assert!(places::swing::moving(&state).is_empty());
}

#[test]
fn no_outcome_without_a_look_at_the_space() {
    let mut state = in_view(Example::Puffin);
    notebook::predict(&mut state, 0, "so I think");
    bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
    assert!(!state.record().has_swings());
    assert!(region(&state, "swing-record").contains("First the space has to be checked"));
    bench(&mut state, SwingMsg::SpaceChecked(true));
    let effects = bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
    assert!(effects.contains(&Effect::Keep));
    assert!(state.record().has_swings());
}

#[test]
fn three_swings_count_and_a_slip_does_not() {
    let mut state = ready(Example::Puffin);
    for outcome in [
        SwingOutcome::Steady,
        SwingOutcome::Slipped,
        SwingOutcome::Wobbling,
        SwingOutcome::NotSure,
    ] {
        bench(&mut state, SwingMsg::Swung(outcome));
    }
    assert!(state.swings.is_done());
    let told = region(&state, "swing-record");
    assert!(told.contains("Three swings recorded. Worked out here: nose first."));
    bench(&mut state, SwingMsg::Swung(SwingOutcome::TailFirst));
    assert_eq!(state.swings.outcomes().len(), 4, "no fourth that counts");
    bench(&mut state, SwingMsg::TakeBack);
    assert!(!state.swings.is_done());
    // A reload finds them again.
    let link = link::hash(&state.record());
    assert_eq!(open(&link, None).record(), state.record());
}

#[test]
fn swings_stay_with_the_rocket_that_was_swung() {
    let mut state = ready(Example::Puffin);
    bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
    typed(&mut state, Field::Name, "Other words");
    assert!(state.record().has_swings(), "a name changes no rocket");
    update(&mut state, Msg::Left { field: Field::Name });

    typed(&mut state, WIDTH, "7");
    typed(&mut state, WIDTH, "70");
    update(&mut state, Msg::Left { field: WIDTH });
    assert!(!state.record().has_swings());
    work(&mut state);
    let before = region(&state, "swing-before");
    assert!(
        before.contains("62 mm") && before.contains("nose first, steady"),
        "{before}"
    );
    assert!(known(&state).before.is_some(), "its curve is drawn beside the new one");
    // The old width again, or undo: it is the rocket that was swung.
    typed(&mut state, WIDTH, "65");
    assert!(state.record().has_swings() && state.swing.previous.is_none());
    update(&mut state, Msg::Undo);
    update(&mut state, Msg::Undo);
    assert_eq!(state.design.sections[1].diameter_mm, Some(65.0));
    assert!(state.record().has_swings());
}

#[test]
fn swings_stay_with_the_string_they_were_swung_on() {
    let mut state = ready(Example::Puffin);
    bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
    bench(&mut state, SwingMsg::Typed(STRING, "0.8".into()));
    assert!(!state.record().has_swings());
    assert!(region(&state, "swing-before").contains("nose first, steady"));
    bench(&mut state, SwingMsg::Typed(STRING, "1".into()));
    assert!(state.record().has_swings());
}

#[test]
fn more_space_than_was_checked_has_to_be_checked_again() {
    let mut state = ready(Example::Puffin);
    assert!(state.may_swing());
    bench(&mut state, SwingMsg::Typed(STRING, "1.6".into()));
    assert!(!state.may_swing(), "a longer string");
    assert!(region(&state, "swing-record").contains("First the space"));
    bench(&mut state, SwingMsg::Typed(STRING, "0.8".into()));
    assert!(state.may_swing(), "less than what was checked");
    bench(&mut state, SwingMsg::Typed(STRING, "1".into()));
    typed(&mut state, Field::Weight(0, WeightField::Mass), "30");
    assert!(!state.may_swing(), "a heavier rocket");
    typed(&mut state, Field::Weight(0, WeightField::Mass), "20");
    assert!(state.may_swing());
    notebook::begin(&mut state);
    notebook::predict(&mut state, 0, "again");
    update(&mut state, PlaceMsg::Predict(PredictMsg::Lock).into());
    assert!(state.is_predicted() && !state.may_swing(), "another set of three swings");
}

#[test]
fn the_figures_of_the_space_add_up() {
    for example in Example::ALL {
        let space = known(&in_view(example)).swing.space();
        // What is told adds up: rounded up to half a metre, never down.
        assert!(space.clear_m >= space.swept_m + space.throw_m);
        assert!(space.clear_m < space.swept_m + space.throw_m + 0.5);
    }
}

/// The lesson on paper names the radius that the page works out for the same string.
#[test]
fn paper_and_page_name_one_radius() {
    let (_, page) = noseward_words::by_key("index-paper-swing").unwrap();
    let page = page.text();
    let setup = noseward_stability::SwingSetup::default();
    let swing = format!(
        "{} m of string and {} turns a second",
        setup.string_m, setup.turns_per_s
    );
    assert!(page.contains(&swing), "{swing}");
    for example in Example::ALL {
        let clear_m = known(&in_view(example)).swing.space().clear_m;
        assert!(clear_m <= 9.5, "it fits a hall");
        assert!(page.contains(&format!("mark a line {clear_m} m from the swinger")));
    }
}

#[test]
fn swings_are_facts_and_are_not_undone() {
    let mut state = ready(Example::Puffin);
    bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
    while state.can_undo() {
        update(&mut state, Msg::Undo);
    }
    let trial = state.desk.notebook.trial(1).expect("it was predicted");
    assert_eq!(trial.swings().outcomes(), [SwingOutcome::Steady]);
    assert!(trial.is_locked());
}

#[test]
fn the_pictures_play_pause_step_and_end() {
    let mut state = in_view(Example::Puffin);
    assert!(bench(&mut state, SwingMsg::Play(true)).contains(&Effect::Animate));
    let effects = bench(&mut state, SwingMsg::Tick(0.2));
    assert_eq!(effects, [Effect::DrawMotion, Effect::Animate]);
    let speed = state.swing.motion.speed;
    assert!((state.swing.motion.time_s - 0.2 * speed).abs() < 1e-12);
    bench(&mut state, SwingMsg::Play(false));
    assert_eq!(bench(&mut state, SwingMsg::Tick(0.2)), []);
    bench(&mut state, SwingMsg::Step);
    assert!((state.swing.motion.time_s - 0.2 * speed - 0.1).abs() < 1e-12);
    bench(&mut state, SwingMsg::Play(true));
    for _ in 0..400 {
        bench(&mut state, SwingMsg::Tick(0.25));
    }
    assert!(!state.swing.motion.playing);
    let end_s = known(&state).trajectory.samples.last().unwrap().time_s;
    assert_eq!(state.swing.motion.time_s, end_s);
    bench(&mut state, SwingMsg::Play(true));
    assert_eq!(state.swing.motion.time_s, 0.0, "from the start again");
}

/// A frame of the motion redraws groups alone: they must be those of the pictures.
#[test]
fn what_moves_is_what_the_pictures_show() {
    for example in Example::ALL {
        let mut state = in_view(example);
        for _ in 0..5 {
            bench(&mut state, SwingMsg::Step);
            let shown = region(&state, "swing-model");
            let moving = places::swing::moving(&state);
            assert!(
                ["turning", "cursor", "rocket"]
                    .iter()
                    .all(|key| { moving.iter().any(|(_, moved, _)| moved == key) })
            );
            for (id, key, markup) in moving {
                let picture = region(&state, id);
                assert!(picture.contains(&markup), "{example:?} {id} {key}");
                assert!(shown.contains(&picture), "{id}");
            }
        }
    }
}

#[test]
fn nothing_moves_where_stillness_is_asked_for() {
    let mut state = in_view(Example::Puffin);
    update(&mut state, Msg::Still(true));
    assert!(!bench(&mut state, SwingMsg::Play(true)).contains(&Effect::Animate));
    assert!(!state.swing.motion.playing);
    let model = region(&state, "swing-model");
    assert!(!model.contains("id=\"swing-play\"") && model.contains("id=\"swing-step\""));
    assert_eq!(model.matches("<li>").count(), 6);
}

#[test]
fn the_start_is_chosen_by_slider_or_number() {
    let mut state = in_view(Example::Tern);
    bench(&mut state, SwingMsg::Start(35.0));
    assert_eq!(state.setup_text(SetupField::Start), "35");
    assert!((known(&state).settling.start_rad.to_degrees() - 35.0).abs() < 1e-9);
    bench(&mut state, SwingMsg::Typed(SetupField::Start, "12.5".into()));
    assert!((known(&state).settling.start_rad.to_degrees() - 12.5).abs() < 1e-9);
    bench(&mut state, SwingMsg::Typed(SetupField::Start, "200".into()));
    assert!(region(&state, "swing-fault-start").contains("0 to 180"));
    bench(&mut state, SwingMsg::Typed(SetupField::Start, "90".into()));
    assert!(matches!(known(&state).settling.comes_to, Settles::Across { .. }));
}

#[test]
fn the_adult_is_always_asked() {
    for example in Example::ALL {
        let state = in_view(example);
        assert!(region(&state, "swing-room").contains("Ask the adult before you swing"));
    }
}

/// Too fast or too hard for a pupil's arm: no result, no space to check, nothing recorded.
#[test]
fn what_is_too_much_is_not_swung() {
    let turns = SetupField::Setup(SwingField::Turns);
    for (string, pace) in [("3", "3"), ("2", "1.5")] {
        let mut state = ready(Example::Puffin);
        bench(&mut state, SwingMsg::Typed(STRING, string.into()));
        bench(&mut state, SwingMsg::Typed(turns, pace.into()));
        let words = region(&state, "swing-words");
        assert!(words.contains("Do not swing this. Shorter string"), "{words}");
        assert_eq!(region(&state, "swing-strip"), "");
        assert!(!region(&state, "swing-model").contains("swing-player"));
        bench(&mut state, SwingMsg::SpaceChecked(true));
        assert!(!state.may_swing());
        bench(&mut state, SwingMsg::Swung(SwingOutcome::Steady));
        assert_eq!(state.swings.outcomes(), []);
    }
}

/// What is too much says so at the space, the cards and the record, told or untold.
#[test]
fn a_refusal_stands_wherever_somebody_looks() {
    let mut state = in_view(Example::Puffin);
    state.desk.notebook.telling = noseward_lesson::Telling::Verdict;
    bench(&mut state, SwingMsg::Typed(STRING, "3".into()));
    bench(&mut state, SwingMsg::Typed(SetupField::Setup(SwingField::Turns), "3".into()));
    assert!(!state.tells_outcome(), "a trial whose prediction is not locked");
    for id in ["swing-room", "swing-cards", "swing-record"] {
        let told = region(&state, id);
        assert!(told.contains("Do not swing this"), "{id}: {told}");
        assert!(!told.contains("First the space"), "{id}: {told}");
    }
}

/// One look at the space is for three swings.
#[test]
fn the_space_is_looked_at_before_every_three_swings() {
    let three = |state: &mut State| {
        for _ in 0..3 {
            bench(state, SwingMsg::Swung(SwingOutcome::Steady));
        }
        assert!(state.swings.is_done());
    };
    let mut state = ready(Example::Puffin);
    three(&mut state);
    bench(&mut state, SwingMsg::TakeBack);
    assert!(!state.may_swing(), "a fourth");
    let mut state = ready(Example::Puffin);
    three(&mut state);
    typed(&mut state, CLAY_PLACE, "40");
    assert!(!state.may_swing(), "another rocket");
    // A check that falls takes the card behind it with it.
    let mut state = ready(Example::Puffin);
    bench(&mut state, SwingMsg::Card(CARDS - 1));
    assert!(region(&state, "swing-cards").contains("Let it slow"));
    bench(&mut state, SwingMsg::Typed(STRING, "1.4".into()));
    let cards = region(&state, "swing-cards");
    assert!(cards.contains("id=\"space-checked\""), "{cards}");
}

#[test]
fn the_string_may_leave_it_open() {
    let mut state = in_view(Example::Razorbill);
    while update(&mut state, Msg::Slice).contains(&Effect::Slice) {}
    let verdict = known(&state).draws.verdict().unwrap();
    let told = region(&state, "swing-words").contains("Too close to call on the string");
    assert_eq!(told, verdict.is_too_close());
    let mut sure = in_view(Example::Puffin);
    while update(&mut sure, Msg::Slice).contains(&Effect::Slice) {}
    assert!(!known(&sure).draws.verdict().unwrap().is_too_close());
    assert!(!region(&sure, "swing-words").contains("Too close to call"));
}

/// Nobody is told to swing faster.
#[test]
fn no_sentence_asks_for_more_speed() {
    let mut state = in_view(Example::Puffin);
    let turns = SetupField::Setup(SwingField::Turns);
    bench(&mut state, SwingMsg::Typed(turns, "0.4".into()));
    let all: String =
        places::swing::regions(&state).into_iter().map(|r| r.markup).collect();
    let all = all.to_lowercase();
    for word in ["swing faster", "faster turns", "more turns"] {
        assert!(!all.contains(word), "{word}");
    }
}

#[test]
fn what_was_seen_counts_where_it_differs() {
    let mut state = ready(Example::Puffin);
    for _ in 0..3 {
        bench(&mut state, SwingMsg::Swung(SwingOutcome::TailFirst));
    }
    let told = region(&state, "swing-record");
    let words = "You saw: tail first; tail first; tail first. Worked out here: nose first. \
                 What you saw counts.";
    assert!(told.contains(words), "{told}");
}

#[test]
fn every_card_leads_on_and_paper_has_them_all() {
    let mut state = in_view(Example::Puffin);
    bench(&mut state, SwingMsg::Card(CARDS - 1));
    assert_eq!(state.swing.card, SPACE_CARD, "the space comes first");
    bench(&mut state, SwingMsg::SpaceChecked(true));
    for card in 0..CARDS {
        bench(&mut state, SwingMsg::Card(card));
        let shown = region(&state, "swing-cards");
        assert!(shown.contains(&format!("{} of {CARDS}", card + 1)));
        assert_eq!(shown.contains("swing-card:next"), card + 1 < CARDS);
    }
    let cards = places::swing::paper(&state).into_string();
    for word in ["level", "Tape", "Tug", "line", "Eye protection", "One person", "grab"] {
        assert!(cards.contains(word), "{word}");
    }
}
