//! The way through the lesson: places, trials that begin by themselves, what goes out.

use super::notebook::{
    FIN_SPAN, begin, desk, in_hand, loaded, predict, press, swing, tell, write,
};
use super::*;
use noseward_lesson::{BalancePoint, Colour, Group, MOST_GROUP_NUMBER, SwingOutcome};
use noseward_link::Any;
use noseward_stability::SwingField;

const STRING: SetupField = SetupField::Setup(SwingField::String);

mod going {
    use super::*;

    #[test]
    fn a_place_is_a_step_in_the_history_only_when_somebody_goes_there() {
        let mut state = open("", None);
        let arrived =
            |step| vec![Effect::CloseMenus, Effect::Arrive { step }, Effect::Redraw];
        assert_eq!(go(&mut state, Place::Measure), arrived(true));
        assert_eq!(state.place, Place::Measure);
        assert_eq!(go(&mut state, Place::Measure), arrived(false), "it is there already");
        assert_eq!(update(&mut state, Msg::Back(Place::Rocket)), arrived(false));
        assert_eq!(state.place, Place::Rocket);
        let mut swing = arrived(true);
        swing.push(Effect::Slice);
        assert_eq!(go(&mut state, Place::Swing), swing);
        assert!(state.swing.known.is_some());
        update(&mut state, Msg::Back(Place::Rocket));
        typed(&mut state, CLAY_PLACE, "50");
        assert!(state.swing.known.is_none());
        update(&mut state, Msg::Back(Place::Swing));
        assert!(state.swing.known.is_some(), "however one comes there");
    }

    #[test]
    fn the_later_part_is_loaded_once_somebody_goes_anywhere() {
        let mut state = open("", None);
        state.parts = Loading::default();
        let effects = go(&mut state, Place::Why);
        assert!(effects.contains(&Effect::Load(Part::Why)), "{effects:?}");
        assert!(region(&state, "waits").contains("Getting it out"));
        assert!(effects.contains(&Effect::Load(Part::Notebook)), "{effects:?}");
        let effects = go(&mut state, Place::Predict);
        assert!(effects.contains(&Effect::Load(Part::Trial)), "{effects:?}");
        assert!(!effects.contains(&Effect::Load(Part::Notebook)), "it is on its way");
        // Where the swing test was opened first, its motion follows.
        go(&mut state, Place::Swing);
        assert!(state.swing.known.is_none());
        loaded(&mut state, true);
        assert!(state.swing.known.is_some());
        assert_eq!(region(&state, "waits"), "");
    }

    #[test]
    fn what_was_under_way_ends_and_what_was_entered_stays() {
        let mut state = desk();
        write(&mut state, "nb:centre_of_mass_reading_1_mm", "203");
        let before = (state.record(), state.desk.notebook.clone());
        go(&mut state, Place::Swing);
        update(&mut state, SwingMsg::Play(true).into());
        update(&mut state, Msg::AskToDelete(true));
        update(&mut state, Msg::Typed { field: WIDTH, text: "65.0".into() });
        state.notice = Some(Notice::said("done"));
        go(&mut state, Place::Compare);
        assert_eq!((&state.notice, &state.typing), (&None, &None));
        assert!(!state.swing.motion.playing && !state.asks_to_delete);
        assert_eq!((state.record(), state.desk.notebook.clone()), before);
        let alarm = Notice::FileFault("no".into());
        state.notice = Some(alarm.clone());
        go(&mut state, Place::Rocket);
        assert_eq!(state.notice, Some(alarm));
    }

    /// Each place names itself, and the path says where one is.
    #[test]
    fn the_path_and_the_way_on_lead_through_every_place() {
        let mut state = desk();
        let mut seen = Vec::new();
        loop {
            let place = state.place;
            let head = region(&state, "place-title");
            assert_eq!(head, place.heading().as_str());
            let path = region(&state, "path");
            let (_, current) = path.split_once("aria-current=\"page\"").unwrap();
            assert!(current.contains(&format!("\"path__name\">{}<", place.name())));
            assert_eq!(path.matches("aria-current").count(), 1, "{path}");
            seen.push(place);
            let bar = region(&state, "next-bar");
            let next = format!(" id=\"next\" href=\"{}#", place.next(&state).href());
            assert!(bar.contains(&next), "{bar}");
            let next = place.next(&state);
            go(&mut state, next);
            if state.place == Place::Rocket {
                break;
            }
        }
        assert_eq!(seen, Place::path(&state).collect::<Vec<_>>());
    }
}

mod beginning {
    use super::*;

    fn count(state: &State) -> usize {
        state.desk.notebook.trials().len()
    }

    /// What belongs to a trial: a field with its text, or the choice of an outcome.
    const OF_TRIAL: [(&str, &str); 10] = [
        ("nb:centre_of_mass_guess_mm", "180"),
        ("nb:centre_of_pressure_guess_mm", "x"),
        ("nb:centre_of_mass_reading_1_mm", "203"),
        ("nb:centre_of_pressure_reading_3_mm", "20,4 cm"),
        ("nb:rocket_length_mm", "300"),
        ("nb:cutout_length_mm", "290"),
        ("nb:centre_of_mass_from", "tail"),
        ("nb:draft_because", "long fins"),
        ("nb:compared_with", ""),
        ("nb-outcome", "1"),
    ];

    fn do_it(state: &mut State, (what, text): (&str, &str)) {
        if what == "nb-outcome" {
            press(state, what, text);
        } else {
            write(state, what, text);
        }
    }

    #[test]
    fn measuring_or_predicting_begins_the_trial_exactly_once() {
        for first in OF_TRIAL {
            let mut state = desk();
            do_it(&mut state, first);
            assert_eq!((count(&state), in_hand(&state).id()), (1, 1), "{first:?}");
            assert_eq!(in_hand(&state).design(), &state.design);
            assert!(state.desk.unsaved && state.is_of_trial());
            for other in OF_TRIAL {
                do_it(&mut state, other);
            }
            // It follows the rocket until it is locked.
            typed(&mut state, FIN_SPAN, "61");
            do_it(&mut state, first);
            assert_eq!(count(&state), 1, "{first:?}");
            predict(&mut state, 0, "long fins");
            do_it(&mut state, ("nb:centre_of_mass_reading_2_mm", "204"));
            assert_eq!(count(&state), 1, "a locked one is measured further");
            // Another rocket is another trial, once somebody does something with it.
            typed(&mut state, FIN_SPAN, "75");
            assert_eq!(count(&state), 1);
            let locked = in_hand(&state).clone();
            for _ in 0..2 {
                do_it(&mut state, first);
                assert_eq!((count(&state), in_hand(&state).id()), (2, 2), "{first:?}");
            }
            assert_eq!(state.desk.notebook.trial(1), Some(&locked));
            assert_eq!(in_hand(&state).design(), &state.design);
            let with = if first.0 == "nb:compared_with" { None } else { Some(1) };
            assert_eq!(in_hand(&state).compared_with(), with);
        }
    }

    #[test]
    fn what_is_of_the_whole_notebook_begins_no_trial() {
        let mut state = desk();
        for (field, text) in [
            ("nb:plan", "bigger fins"),
            ("nb:claim", "long fins help"),
            ("nb:evidence", "three swings"),
            ("nb:reason", "the air"),
            ("nb:trust", "some"),
            ("nb:note", "windy"),
            ("nb:colour", "3"),
            ("nb:number", "7"),
            ("nb:level", "2"),
            ("nb:help", "1"),
            ("nb:telling", "1"),
        ] {
            write(&mut state, field, text);
        }
        for action in ["nb-plan-add", "nb-allow", "nb-lock", "nb-symbols"] {
            press(&mut state, action, "");
        }
        for place in Place::all() {
            go(&mut state, place);
        }
        assert_eq!(count(&state), 0);
        assert!(!state.desk.notebook.is_blank(), "it is written all the same");
    }

    #[test]
    fn the_trial_that_will_begin_is_named_before_it_does() {
        let mut state = desk();
        go(&mut state, Place::Predict);
        assert!(region(&state, "predict-what").contains("Trial 1."));
        predict(&mut state, 0, "long fins");
        typed(&mut state, FIN_SPAN, "75");
        assert!(region(&state, "predict-what").contains("Trial 2."));
        assert!(region(&state, "predict-changed").contains("Since trial 1:"));
        let line = region(&state, "trial-line");
        assert!(line.contains("changed since trial 1: trial 2 begins when"), "{line}");
        press(&mut state, "nb-open", 1);
        assert!(state.is_predicted(), "it can be brought back");
        assert_eq!(count(&state), 1);
    }

    #[test]
    fn a_full_notebook_says_so_and_takes_nothing_in() {
        let mut state = desk();
        while state.trial().is_some() {
            state.desk.notebook.begin(&state.record()).unwrap();
            let span = 60 + count(&state);
            typed(&mut state, FIN_SPAN, &span.to_string());
            predict(&mut state, 0, "so I think");
            typed(&mut state, FIN_SPAN, "59");
        }
        let before = state.desk.notebook.clone();
        for what in OF_TRIAL {
            do_it(&mut state, what);
            assert!(region(&state, "notice").contains("room for"), "{what:?}");
            update(&mut state, Msg::Dismiss);
        }
        assert_eq!(state.desk.notebook, before);
        for place in [Place::Measure, Place::Predict] {
            go(&mut state, place);
            assert!(region(&state, "full").contains("room for"), "{place:?}");
        }
    }
}

mod locking {
    use super::*;

    /// Chooses one of so many, by the same chance every time.
    struct Chance(u64);

    impl Chance {
        fn of(&mut self, count: usize) -> usize {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            usize::try_from(self.0 >> 33).unwrap() % count
        }
    }

    /// Something that somebody can do on the page as it stands.
    fn something(state: &State, chance: &mut Chance) -> Msg {
        const TEXTS: [&str; 7] = ["0", "1", "2", "60", "150", "1.5", "so I think"];
        let text = TEXTS[chance.of(TEXTS.len())].to_owned();
        let page = page(state);
        let mut all = Vec::new();
        for tag in page.split('<').filter_map(|rest| rest.split('>').next()) {
            let value = |name: &str| {
                let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
                rest.split('"').next()
            };
            let text = text.clone();
            if let Some(action) = value("data-action").filter(|a| *a != "open-pasted") {
                all.extend(Msg::parse(action, value("data-target").unwrap_or_default()));
            } else if let Some(field) = value("data-note") {
                let field = field.to_owned();
                all.push(Msg::Notebook(NotebookMsg::Typed { field, text }));
            } else if let Some(field) = value("data-field").and_then(|f| f.parse().ok()) {
                all.push(Msg::Typed { field, text });
            } else if let Some(field) = value("data-swing").and_then(SetupField::parse) {
                all.push(SwingMsg::Typed(field, text).into());
            }
        }
        all.swap_remove(chance.of(all.len()))
    }

    /// Whatever somebody does on the page, in whatever order: a swing is recorded of a locked
    /// trial alone, no first prediction changes, and the focus goes to what is there.
    #[test]
    fn no_order_of_doing_things_records_a_swing_without_a_prediction() {
        let mut swings = 0;
        for seed in 0..3 {
            let mut chance = Chance(seed);
            let mut state = desk();
            let mut did = Vec::new();
            let mut firsts = Vec::new();
            // What is pressed next, the last first.
            let mut coming = Vec::new();
            for _ in 0..120 {
                let msg = match coming.pop() {
                    Some(msg) => msg,
                    None => match chance.of(16) {
                        // Now and then somebody goes on as the lesson does.
                        0 => {
                            coming = pressed(&[
                                ("nb-lock", ""),
                                ("nb-lock", ""),
                                ("nb-outcome", "0"),
                            ]);
                            Msg::To(Place::Predict)
                        }
                        1..=3 => {
                            coming = pressed(&[("swung", "1"), ("space-checked", "")]);
                            Msg::To(Place::Swing)
                        }
                        4 => Msg::Start(Start::Example(Example::Tern)),
                        5..=6 => Msg::To(Place::all().nth(chance.of(9)).unwrap()),
                        _ => something(&state, &mut chance),
                    },
                };
                did.push(msg.clone());
                let (was, predicted) =
                    (state.swings.outcomes().len(), state.is_predicted());
                let is_swing = matches!(
                    msg,
                    Msg::Notebook(NotebookMsg::Place(PlaceMsg::Swing(SwingMsg::Swung(
                        _
                    ))))
                );
                for effect in update(&mut state, msg) {
                    match effect {
                        Effect::KeepNotebook { slot, text } => {
                            tell(&mut state, NotebookMsg::IsKept { slot, text });
                        }
                        Effect::Focus(id) => {
                            assert!(is_there(&state, &id), "{id}: {did:?}");
                        }
                        _ => {}
                    }
                }
                if is_swing && state.swings.outcomes().len() > was {
                    assert!(predicted, "{did:?}");
                    swings += 1;
                }
                for trial in state.desk.notebook.trials() {
                    let swung = !trial.swings().outcomes().is_empty();
                    let honest = trial.is_locked() || trial.swung_first();
                    assert!(!swung || honest, "trial {}: {did:?}", trial.id());
                    let Some(first) = trial.predictions().first() else { continue };
                    let of = (state.desk.slot, trial.id());
                    match firsts.iter().find(|(known, _)| *known == of) {
                        Some((_, known)) => assert_eq!(known, first, "{did:?}"),
                        None => firsts.push((of, first.clone())),
                    }
                }
            }
        }
        assert!(swings > 2, "{swings}");
    }

    fn pressed(controls: &[(&str, &str)]) -> Vec<Msg> {
        let all = controls.iter().map(|(action, target)| Msg::parse(action, target));
        all.map(Option::unwrap).collect()
    }

    /// Whether the focus can go to an element, as the screen looks for it.
    fn is_there(state: &State, id: &str) -> bool {
        let page = page(state);
        let has = |attribute: &str, value: &str| {
            page.contains(&format!(" {attribute}=\"{value}\""))
        };
        // Where the last part of a kind was removed, the heading of the place has it.
        id.starts_with("part:") || has("id", id) || has("id", &format!("choice:{id}"))
    }
}

mod typing {
    use super::*;

    #[test]
    fn what_is_typed_stays_as_it_is_typed_until_the_field_is_left() {
        let mut state = desk();
        let note = "nb:centre_of_mass_reading_1_mm";
        let field = |state: &State, id: &str| {
            let page = page(state);
            let (_, tag) = page.split_once(&format!(" id=\"{id}\"")).unwrap();
            let (tag, _) = tag.split_once('>').unwrap();
            let (_, value) = tag.split_once(" value=\"").unwrap();
            value.split('"').next().unwrap().to_owned()
        };
        // A dimension of the rocket.
        update(&mut state, Msg::Typed { field: WIDTH, text: "6,60 cm".into() });
        assert_eq!(state.text_of(WIDTH), "6,60 cm");
        assert_eq!(field(&state, &WIDTH.to_string()), "6,60 cm");
        update(&mut state, Msg::Left { field: CLAY_PLACE });
        assert_eq!(state.text_of(WIDTH), "6,60 cm", "another field was left");
        update(&mut state, Msg::Left { field: WIDTH });
        assert_eq!(field(&state, &WIDTH.to_string()), "66");
        // A reading, and the string.
        go(&mut state, Place::Measure);
        write(&mut state, note, "20,30 cm");
        assert_eq!(field(&state, note), "20,30 cm");
        tell(&mut state, NotebookMsg::Left { field: note.into() });
        assert_eq!(field(&state, note), "203");
        go(&mut state, Place::Swing);
        let text = "080 cm".to_owned();
        update(&mut state, SwingMsg::Typed(STRING, text).into());
        assert_eq!(state.setup_text(STRING), "080 cm");
        assert_eq!(field(&state, "swing:string"), "080 cm");
        update(&mut state, SwingMsg::Left(STRING).into());
        assert_eq!(field(&state, "swing:string"), "0.8");
        // Two fields are never typed in at once.
        update(&mut state, Msg::Typed { field: WIDTH, text: "6,70 cm".into() });
        update(&mut state, Msg::Typed { field: CLAY_PLACE, text: "4,50 cm".into() });
        assert_eq!(state.text_of(WIDTH), "67");
    }

    #[test]
    fn another_rocket_is_never_shown_with_text_that_was_typed_for_this_one() {
        let hash = link::hash(&Example::Gannet.design().into());
        for msg in [
            Msg::Undo,
            Msg::Start(Start::Example(Example::Gannet)),
            Msg::OpenText(hash.clone()),
            Msg::HashChanged(hash),
            Msg::Remove(Component::Weight(0)),
            Msg::To(Place::Measure),
            Msg::Back(Place::Rocket),
        ] {
            for text in ["6,60 cm", "6,5 cm or so"] {
                let mut state = desk();
                let is_draft = text.ends_with("so");
                typed(&mut state, WIDTH, "64");
                update(&mut state, Msg::Left { field: WIDTH });
                update(&mut state, Msg::Typed { field: WIDTH, text: text.into() });
                update(&mut state, msg.clone());
                assert_eq!(state.typing, None, "{msg:?}");
                // What could not be read stays with its rocket.
                let goes = matches!(msg, Msg::To(_) | Msg::Back(_));
                assert_eq!(state.text_of(WIDTH) == text, is_draft && goes, "{msg:?}");
            }
        }
        let mut state = desk();
        typed(&mut state, WIDTH, "6,60 cm");
        update(&mut state, Msg::Undo);
        assert_eq!(state.text_of(WIDTH), "65");
        update(&mut state, Msg::Redo);
        assert_eq!(state.text_of(WIDTH), "66");
    }
}

mod going_out {
    use super::*;

    fn copied(effects: &[Effect]) -> String {
        let [Effect::Copy { text, is_link: true }] = effects else {
            panic!("{effects:?}")
        };
        text.clone()
    }

    fn after_sign(link: &str) -> &str {
        link.split_once('#').unwrap().1
    }

    #[test]
    fn copy_link_and_save_mean_the_notebook_too_once_something_is_written() {
        let mut state = desk();
        let rocket = copied(&update(&mut state, Msg::CopyLink));
        assert_eq!(after_sign(&rocket), link::hash(&state.record()));
        let [Effect::Download { name, text }, Effect::Redraw] =
            &update(&mut state, Msg::Save)[..]
        else {
            panic!()
        };
        assert_eq!(link::open_file(text).unwrap(), state.record());
        assert_eq!(*name, link::file_name(&state.design));
        assert!(!state.handed_in);
        let ways: [fn(&mut State); 3] = [
            |state| drop(write(state, "nb:centre_of_mass_reading_1_mm", "203")),
            |state| drop(write(state, "nb:claim", "long fins help")),
            |state| {
                write(state, "nb:plan", "bigger fins");
                press(state, "nb-plan-add", "");
            },
        ];
        for written in ways {
            let mut state = desk();
            written(&mut state);
            let link = copied(&update(&mut state, Msg::CopyLink));
            let Ok(Any::Notebook(file)) = link::open_any(after_sign(&link)) else {
                panic!("{link}")
            };
            assert_eq!(file.notebook, state.desk.notebook.clone().rounded());
            assert_eq!(file.rocket, Some(state.record()), "with the rocket on the page");
            assert!(!state.handed_in, "it is not copied yet");
            let effects = update(&mut state, Msg::Save);
            let Some(Effect::Download { name, text }) = effects.first() else { panic!() };
            assert_eq!(*name, link::notebook_file_name(&state.desk.notebook));
            let saved = link::open_notebook_file(text).unwrap().notebook;
            assert_eq!(saved, state.desk.notebook);
            assert!(state.handed_in);
            // The rocket alone can still be saved.
            let effects = update(&mut state, Msg::SaveRocket);
            let Some(Effect::Download { text, .. }) = effects.first() else { panic!() };
            assert_eq!(link::open_file(text).unwrap(), state.record());
        }
    }

    #[test]
    fn what_was_copied_is_said_and_a_blocked_clipboard_shows_the_text() {
        let mut state = desk();
        let msg =
            |text: &str, is_link, done| Msg::Copied { text: text.into(), is_link, done };
        let rocket = copied(&update(&mut state, Msg::CopyLink));
        update(&mut state, msg(&rocket, true, true));
        assert!(region(&state, "passing").contains("It holds the rocket;"));
        assert!(!state.handed_in);
        begin(&mut state);
        let link = copied(&update(&mut state, Msg::CopyLink));
        update(&mut state, msg(&link, true, false));
        assert!(region(&state, "copy-by-hand").contains(&link));
        assert!(!state.handed_in, "nobody has it yet");
        update(&mut state, msg(&link, true, true));
        assert!(region(&state, "passing").contains("the rocket and the notebook"));
        assert!(state.handed_in);
        // A code is no link.
        update(&mut state, msg("AB12", false, true));
        assert_eq!(state.notice, Some(Notice::said("Copied.")));
    }

    #[test]
    fn a_link_opens_in_the_place_that_it_was_copied_in() {
        let mut state = desk();
        state.address = Some("https://example.org/n/".into());
        for (place, search) in [(Place::Rocket, ""), (Place::Compare, "?at=compare")] {
            go(&mut state, place);
            let link = copied(&update(&mut state, Msg::CopyLink));
            let start = format!("https://example.org/n/{search}#");
            assert!(link.starts_with(&start), "{link}");
        }
        // A file on one computer has no address on another.
        state.address = None;
        assert!(copied(&update(&mut state, Msg::CopyLink)).starts_with('#'));
    }

    #[test]
    fn without_its_code_what_goes_out_is_the_rocket() {
        let mut state = open("", None);
        state.parts = Loading::default();
        let link = copied(&update(&mut state, Msg::CopyLink));
        assert_eq!(after_sign(&link), link::hash(&state.record()));
    }
}

mod labels {
    use super::*;

    fn with_lot(lot: f64) -> State {
        let mut state =
            State::new(&Opening { lot, can_keep: true, ..Opening::default() });
        let slots = Vec::new();
        tell(&mut state, NotebookMsg::Kept { slots, open: 0, afresh: false });
        loaded(&mut state, true);
        state
    }

    #[test]
    fn a_new_notebooks_label_is_by_chance() {
        let count = Colour::ALL.len() * usize::from(MOST_GROUP_NUMBER);
        let mut all = Vec::new();
        for i in 0..count {
            #[expect(clippy::cast_precision_loss, reason = "480")]
            let state = with_lot((i as f64 + 0.5) / count as f64);
            all.push(state.desk.notebook.group.key());
        }
        all.sort_unstable();
        all.dedup();
        assert_eq!(all.len(), count, "each label as likely as the others");
        let first = Group::new(Colour::ALL[0], 1).unwrap();
        for lot in [0.0, 1.0, -1.0, 2.0, f64::NAN] {
            assert_eq!(with_lot(lot).desk.notebook.group, first, "{lot}");
        }
    }

    #[test]
    fn the_next_group_here_gets_the_next_label_and_none_twice() {
        let mut state = with_lot(0.999);
        let mut labels = Vec::new();
        for _ in 0..5 {
            begin(&mut state);
            labels.push(state.desk.notebook.group.key());
            press(&mut state, "nb-new-group", "");
        }
        let mut sorted = labels.clone();
        sorted.sort_unstable();
        sorted.dedup();
        assert_eq!(sorted.len(), 5, "{labels:?}");
        // Once everything is deleted it begins at the same place again.
        update(&mut state, Msg::Deleted { left: 0 });
        assert_eq!(state.desk.notebook.group.key(), labels[0]);
    }

    #[test]
    fn a_label_is_chosen_anew_in_the_line_under_the_header() {
        let mut state = with_lot(0.0);
        let menu = region(&state, "group-menu");
        assert!(menu.contains("nb:colour") && menu.contains("nb:number"), "{menu}");
        write(&mut state, "nb:colour", "4");
        write(&mut state, "nb:number", "7");
        assert_eq!(places::labels::group(state.desk.notebook.group), "Blue 7");
        assert!(region(&state, "trial-line").contains("Blue 7"));
        for (field, text) in [("nb:colour", "99"), ("nb:number", "0"), ("nb:number", "x")]
        {
            write(&mut state, field, text);
            assert_eq!(places::labels::group(state.desk.notebook.group), "Blue 7");
        }
    }
}

mod ticks {
    use super::*;

    fn done(state: &State) -> Vec<Place> {
        Place::all().filter(|place| place.is_done(state)).collect()
    }

    #[test]
    fn each_place_is_ticked_when_the_trial_is_done_with_it() {
        let mut state = desk();
        assert_eq!(done(&state), []);
        let mut ticked = Vec::new();
        let mut now = |state: &State, place: Option<Place>| {
            ticked.extend(place);
            assert_eq!(done(state), ticked);
            let path = region(state, "path");
            assert_eq!(path.matches("path__dot--done").count(), ticked.len(), "{path}");
            assert_eq!(path.matches("(done)").count(), ticked.len(), "{path}");
        };
        write(&mut state, "nb:centre_of_mass_reading_1_mm", "150");
        now(&state, Some(Place::Rocket));
        assert!(!in_hand(&state).measured.of(BalancePoint::Pressure).any());
        write(&mut state, "nb:centre_of_pressure_reading_1_mm", "170");
        now(&state, Some(Place::Measure));
        press(&mut state, "nb-outcome", 0);
        now(&state, None);
        predict(&mut state, 0, "long fins");
        now(&state, Some(Place::Predict));
        for _ in 0..2 {
            swing(&mut state, SwingOutcome::Steady);
            now(&state, None);
        }
        swing(&mut state, SwingOutcome::Slipped);
        now(&state, None);
        swing(&mut state, SwingOutcome::Steady);
        now(&state, Some(Place::Swing));
        write(&mut state, "nb:note", "the fins");
        now(&state, Some(Place::Compare));
        write(&mut state, "nb:claim", "long fins help");
        now(&state, Some(Place::Conclude));
        press(&mut state, "nb-save", "");
        now(&state, Some(Place::HandIn));
        // Where one goes changes nothing of it.
        for place in Place::all() {
            go(&mut state, place);
            now(&state, None);
        }
        // The next trial begins anew; what is of the whole notebook stays.
        press(&mut state, "nb-once-more", "");
        assert_eq!(done(&state), [Place::Rocket, Place::Conclude, Place::HandIn]);
        // Another group has handed nothing in.
        press(&mut state, "nb-new-group", "");
        assert_eq!(done(&state), []);
    }

    /// What was not swung tells nothing yet.
    #[test]
    fn a_conclusion_needs_swings() {
        let mut state = desk();
        predict(&mut state, 0, "long fins");
        write(&mut state, "nb:claim", "long fins help");
        for _ in 0..3 {
            assert!(!Place::Conclude.is_done(&state));
            swing(&mut state, SwingOutcome::Steady);
        }
        assert!(Place::Conclude.is_done(&state));
    }

    #[test]
    fn the_way_on_says_what_is_still_to_be_done() {
        let mut state = desk();
        let words = |state: &mut State, place| {
            go(state, place);
            let is_main = region(state, "next-bar").contains("button--main");
            (region(state, "next-words"), is_main)
        };
        let (told, main) = words(&mut state, Place::Measure);
        assert!(told.starts_with("First a guess") && !main, "{told}");
        let (told, main) = words(&mut state, Place::Swing);
        assert!(told.starts_with("First lock") && !main, "{told}");
        write(&mut state, "nb:centre_of_mass_reading_1_mm", "150");
        write(&mut state, "nb:centre_of_pressure_reading_1_mm", "170");
        let (told, main) = words(&mut state, Place::Measure);
        assert!(told.starts_with("Next:") && main, "{told}");
        predict(&mut state, 0, "long fins");
        let (told, main) = words(&mut state, Place::Predict);
        assert!(told.starts_with("Locked.") && main, "{told}");
        for _ in 0..3 {
            swing(&mut state, SwingOutcome::Steady);
        }
        let (told, main) = words(&mut state, Place::Swing);
        assert!(told.starts_with("Next:") && main, "{told}");
        // Another rocket has all of it before it.
        typed(&mut state, FIN_SPAN, "75");
        for place in [Place::Measure, Place::Predict, Place::Swing] {
            let (told, main) = words(&mut state, place);
            assert!(told.starts_with("First") && !main, "{place:?}: {told}");
        }
        typed(&mut state, FIN_SPAN, "900000");
        let (told, main) = words(&mut state, Place::Rocket);
        assert!(told.starts_with("First put right") && !main, "{told}");
    }
}
