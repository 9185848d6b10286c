//! All markup of the page, the later part's included, walked without a browser.

use super::*;
use crate::places::class::ClassMsg;
use crate::places::class::symbols::{self, PictureRead, SymbolsNews};
use crate::places::paper::{PaperMsg, Sheet};
use crate::places::set_up::SetUpMsg;
use noseward_lesson::{LeftOut, Level, Statement, Support, SwingOutcome};

/// The page as it stands before anything is drawn.
const PAGE: &str = include_str!("../../../../../www/index.html");
/// Needs the text of a field, so that the browser's side answers it.
const OPEN_PASTED: &str = "open-pasted";
/// What a text of a person must not be able to do.
const EVIL: &str = "<img src=x onerror=alert(1)>\"'&</textarea><b>";
/// Words that promise what nobody can: they stand nowhere on the page.
const PROMISES: [&str; 8] = [
    "safe to",
    "is safe",
    "safely",
    "approved",
    "guarantee",
    "ready to fly",
    "you may swing",
    "you may launch",
];

/// The values of an attribute in some markup.
fn values<'a>(markup: &'a str, attribute: &str) -> Vec<&'a str> {
    let mark = format!(" {attribute}=\"");
    markup
        .split(mark.as_str())
        .skip(1)
        .map(|rest| rest.split('"').next().unwrap())
        .collect()
}

fn states() -> Vec<State> {
    let mut states: Vec<State> = starts()
        .into_iter()
        .map(|start| {
            let mut state = open("", None);
            update(&mut state, Msg::Start(start));
            state
        })
        .collect();
    let mut faulty = open("", Some(&Example::Razorbill.design()));
    faulty.keeping = Keeping::Other(Box::new(Example::Tern.design().into()));
    faulty.notice = Some(Notice::KeepsNothing);
    faulty.asks_to_delete = true;
    notebook::predict(&mut faulty, 0, "so I think");
    update(&mut faulty, Msg::To(Place::Swing));
    update(&mut faulty, SwingMsg::SpaceChecked(true).into());
    faulty.swing.card = SPACE_CARD;
    update(&mut faulty, Msg::WorkOut);
    update(&mut faulty, SwingMsg::Swung(SwingOutcome::Slipped).into());
    update(&mut faulty, SwingMsg::Compare.into());
    faulty.computer.framed = true;
    faulty.address = Some("https://example.org/".into());
    faulty.computer.tried(Capability::Save, CapabilityProbe::Asking);
    update(&mut faulty, Msg::Add(Addition::Fins));
    let choice = Choice::Planform(1);
    update(&mut faulty, Msg::Chose { choice, value: "1".into() });
    update(&mut faulty, Msg::AddCorner(1));
    typed(&mut faulty, CLAY_PLACE, "1,234");
    typed(&mut faulty, WIDTH, "x");
    let mut empty = open("", None);
    for _ in 0..4 {
        update(&mut empty, Msg::Remove(Component::Section(0)));
    }
    empty.place = Place::Swing;
    empty.keeping = Keeping::Unreadable(String::new());
    empty.notice = Some(Notice::NotKept);
    states.extend([faulty, empty]);
    states
}

/// Notebooks in every state of a trial, with words of a person wherever there is room.
fn notebooks() -> Vec<State> {
    let press = |state: &mut State, action: &str, target: &str| {
        update(state, Msg::parse(action, target).expect("it means something"));
    };
    let write = |state: &mut State, field: &str| {
        let (field, text) = (field.to_owned(), EVIL.to_owned());
        update(state, Msg::Notebook(NotebookMsg::Typed { field, text }));
    };
    let mut state = open("", None);
    let mut found = vec![desk_with(&mut state)];
    // A name that is too long would leave nothing to swing.
    typed(&mut state, Field::Name, "<img src=x>\"'&");
    notebook::begin(&mut state);
    let trial = state.desk.notebook.in_hand_mut().unwrap();
    trial.measured.mass.mm = [Some(140.0), Some(142.0), Some(250.0)];
    trial.measured.mass.left_out = Some(LeftOut { reading: 2, reason: EVIL.into() });
    trial.measured.pressure.mm = [Some(200.0), Some(203.0), None];
    state.take_readings();
    for field in ["nb:draft_because", "nb:note", "nb:plan"] {
        write(&mut state, field);
    }
    found.push(desk_with(&mut state));
    press(&mut state, "nb-plan-add", "");
    write(&mut state, "nb:plan");
    press(&mut state, "nb-outcome", "0");
    press(&mut state, "nb-lock", "");
    update(&mut state, Msg::To(Place::Swing));
    update(&mut state, SwingMsg::SpaceChecked(true).into());
    for outcome in [SwingOutcome::Steady, SwingOutcome::TailFirst, SwingOutcome::Steady] {
        assert!(state.may_swing(), "{}", state.is_space_checked());
        update(&mut state, SwingMsg::Swung(outcome).into());
    }
    found.push(desk_with(&mut state));
    // Another rocket than that of the locked trial.
    typed(&mut state, CLAY_PLACE, "60");
    found.push(desk_with(&mut state));
    for change in ["61", "62"] {
        notebook::begin(&mut state);
        typed(&mut state, CLAY_PLACE, change);
        typed(&mut state, WIDTH, "70");
        press(&mut state, "nb-outcome", "2");
        press(&mut state, "nb-lock", "");
        found.push(desk_with(&mut state));
        press(&mut state, "nb-lock", "");
        update(&mut state, Msg::To(Place::Swing));
        update(&mut state, SwingMsg::SpaceChecked(true).into());
        assert!(state.may_swing(), "{}", state.is_space_checked());
        update(&mut state, SwingMsg::Swung(SwingOutcome::Wobbling).into());
    }
    press(&mut state, "nb-copy", "2");
    press(&mut state, "nb-delete", "2");
    press(&mut state, "nb-pair", "3");
    press(&mut state, "nb-symbols", "");
    press(&mut state, "nb-ask-delete", "");
    for of in Statement::ALL {
        *state.desk.notebook.conclusion.text_mut(of) = EVIL.into();
    }
    let copied = Msg::Copied { text: EVIL.into(), is_link: false, done: false };
    update(&mut state, copied);
    found.push(desk_with(&mut state));
    state.desk.notebook.conclusion = noseward_lesson::Conclusion::default();
    for level in Level::ALL {
        for support in Support::ALL {
            (state.desk.notebook.level, state.desk.notebook.support) = (level, support);
            found.push(desk_with(&mut state));
        }
    }
    press(&mut state, "nb-new-group", "");
    found.push(desk_with(&mut state));
    found
}

/// The state as it is now, apart: what comes later changes nothing of it.
fn desk_with(state: &mut State) -> State {
    let mut copy = open("", None);
    copy.show_record(state.record());
    copy.desk.notebook = state.desk.notebook.clone();
    copy.desk.slots = state.desk.slots.clone();
    copy.desk.slot = state.desk.slot;
    let (from, to) = (&state.desk.look, &mut copy.desk.look);
    to.plan.clone_from(&from.plan);
    (to.nudge, to.pair) = (from.nudge.clone(), from.pair);
    copy.notice.clone_from(&state.notice);
    to.shows_symbols = from.shows_symbols;
    to.asks_to_delete = from.asks_to_delete;
    copy.take_readings();
    copy
}

/// Whatever a place, the shell or a sheet of paper shows of a state.
fn everything(state: &State) -> String {
    let markup = |regions: Vec<Region>| -> String {
        regions.into_iter().map(|region| region.markup).collect()
    };
    let mut all = markup(regions(state));
    for paper in [Paper::Rocket, Paper::Lesson, Paper::Swing, Paper::Notebook] {
        all += &markup(places::paper(state, paper));
    }
    for paper in [Paper::Group, Paper::Groups, Paper::Class] {
        all += &markup(places::class::paper(state, paper));
    }
    all + &markup(shell::crash::for_crash(state))
}

/// The markup of the page with each place on it, what is static included.
fn pages(state: &State) -> Vec<String> {
    let mut round = shell::first(state);
    round.extend(shell::then(state));
    let page = |place: Vec<Region>| {
        let regions = round.iter().chain(&place);
        let inside: String = regions.clone().map(|r| r.markup.as_str()).collect();
        let ids: String =
            place.iter().map(|r| format!("<div id=\"{}\">", r.id)).collect();
        format!("{PAGE}{ids}{inside}")
    };
    in_places(state).into_iter().map(page).collect()
}

/// Each tag with something in it, without what stands between them.
fn tags(markup: &str) -> impl Iterator<Item = &str> {
    markup.split('<').skip(1).map(|rest| rest.split('>').next().unwrap_or(rest))
}

/// Everything that the page can show here, with what is static.
fn all_states() -> Vec<State> {
    let mut all = states();
    all.extend(notebooks());
    all.extend(set_ups());
    all.extend(classes());
    all.extend(sheets());
    all
}

/// Sheets of a rocket with words of a person in its name, and what asks before it shows any.
fn sheets() -> Vec<State> {
    let of = |sheet| {
        let mut state = open("", None);
        typed(&mut state, Field::Name, "<img src=x>\"'&");
        paper::choose(&mut state, sheet);
        state
    };
    [Sheet::CutOut, Sheet::Answers, Sheet::TeacherPack].map(of).into()
}

/// Each view of a class of whole notebooks, with words of a person in them, codes, texts that
/// cannot be read, and the invented class.
fn classes() -> Vec<State> {
    let mut state = notebooks().remove(4);
    for of in Statement::ALL {
        *state.desk.notebook.conclusion.text_mut(of) = EVIL.into();
    }
    let notebook = notebook::file(&mut state);
    let at = |view: usize, texts: &[&str]| {
        let mut state = class::class_of(None);
        for text in texts {
            class::paste(&mut state, text);
        }
        if texts.is_empty() {
            class::say(&mut state, ClassMsg::Example);
        }
        for action in ["cl-find", "cl-hide", "cl-mark"] {
            notebook::press(&mut state, action, "0");
        }
        notebook::press(&mut state, "cl-show", view);
        state
    };
    let result = class::code(5, SwingOutcome::Steady);
    let views =
        (0..5).flat_map(|view| [at(view, &[]), at(view, &[&notebook, &result, EVIL])]);
    views.chain([reads_symbols()]).collect()
}

/// A class whose groups' symbols are read, in a picture with words of a person in its name.
fn reads_symbols() -> State {
    let mut state = class::class_of(None);
    class::say(&mut state, ClassMsg::Camera(true));
    symbols::learn(&mut state, SymbolsNews::Took(2));
    let (name, is_picture, read, faults) = (EVIL.into(), true, 0, vec![]);
    let picture = PictureRead { name, is_picture, read, faults };
    symbols::learn(&mut state, SymbolsNews::Looked(picture, vec![]));
    state
}

/// The form of a set-up with all that can be wrong in it, a link that asks for the group, and
/// a notebook under rules.
fn set_ups() -> Vec<State> {
    let mut state = open("", None);
    let set = |state: &mut State, field: &str, text: &str| {
        let (field, text) = (format!("su:{field}"), text.to_owned());
        update(state, Msg::Notebook(NotebookMsg::Typed { field, text }));
    };
    for (field, text) in [
        ("question", "own"),
        ("own", EVIL),
        ("hall", "14"),
        ("open", EVIL),
        ("pupils", EVIL),
        ("size", "9"),
    ] {
        set(&mut state, field, text);
    }
    let link = link::set_up_hash(&link::SetUpLink::default()).unwrap();
    let mut asks = open("", None);
    update(&mut asks, Msg::OpenText(link.clone()));
    let mut begun = open("", None);
    update(&mut begun, Msg::OpenText(link));
    update(&mut begun, Msg::parse("join", "0").expect("it means something"));
    vec![state, asks, begun]
}

/// Of a place that only whoever leads opens, its part knows.
fn means_something(action: &str, target: &str) -> bool {
    match Msg::parse(action, target) {
        Some(Msg::Notebook(NotebookMsg::Place(PlaceMsg::Led(part, control)))) => {
            match part {
                Part::SetUp => SetUpMsg::parse(&control).is_some(),
                Part::Paper => PaperMsg::parse(&control).is_some(),
                _ => ClassMsg::parse(&control).is_some(),
            }
        }
        msg => msg.is_some(),
    }
}

#[test]
fn every_control_means_something() {
    let mut actions = std::collections::BTreeSet::new();
    for mut state in all_states() {
        for all in [false, true] {
            state.all_measurements = all;
            let markup = everything(&state);
            for tag in tags(&markup).chain(tags(PAGE)) {
                let first = |a| values(tag, a).first().copied();
                let Some(action) = first("data-action") else { continue };
                let target = first("data-target").unwrap_or_default();
                if action == OPEN_PASTED {
                    continue;
                }
                assert!(means_something(action, target), "{action} {target}");
                actions.insert(action.to_owned());
            }
            for field in values(&markup, "data-field") {
                assert!(field.parse::<Field>().is_ok(), "{field}");
            }
            for choice in values(&markup, "data-choice") {
                let field = choice.parse().ok();
                assert!(field.and_then(Choice::from_field).is_some(), "{choice}");
            }
            for note in values(&markup, "data-note") {
                let is_lead =
                    places::set_up::is_field(note) || places::class::is_field(note);
                assert!(is_lead || crate::notebook::is_field(note), "{note}");
            }
        }
    }
    // The walk sees what it is for.
    for action in [
        "nb-csv-point",
        "nb-copy-result",
        "nb-plan-remove",
        "nb-once-more",
        "to",
        "dismiss",
        "nb-keep-it",
        "nb-delete",
        "nb-use",
        "nb-restore",
        "nb-undo-change",
        "swung",
        "space-checked",
        "swing-card",
        "copy-link",
        "cl-find",
        "cl-step",
        "cl-report",
        "cl-take-all",
    ] {
        assert!(actions.contains(action), "{action} was never seen");
    }
}

#[test]
fn every_id_is_there_once_and_whatever_names_one_finds_it() {
    for mut state in all_states() {
        for all in [false, true] {
            state.all_measurements = all;
            for page in pages(&state) {
                let mut ids = values(&page, "id");
                ids.sort_unstable();
                let twice: Vec<_> = ids.windows(2).filter(|w| w[0] == w[1]).collect();
                assert!(twice.is_empty(), "{twice:?}");
                for named in ["for", "aria-describedby", "aria-labelledby"] {
                    for id in values(&page, named) {
                        assert!(ids.contains(&id), "{named}={id}");
                    }
                }
            }
        }
    }
}

/// No text of a person becomes markup, wherever it stands.
#[test]
fn words_of_a_person_are_words_in_every_notebook() {
    let mut seen = 0;
    for state in notebooks().into_iter().chain(classes()) {
        let markup = everything(&state);
        seen += markup.matches("&lt;img").count();
        for raw in ["<img", "</textarea><b>", "onerror=alert(1)>"] {
            assert!(!markup.contains(raw), "{raw}");
        }
    }
    assert!(seen > 100, "{seen}");
}

#[test]
fn no_word_that_promises_anything() {
    let check = |text: &str| {
        let text = text.to_lowercase();
        for word in PROMISES {
            assert!(!text.contains(word), "{word}");
        }
    };
    check(PAGE);
    let mut all = String::new();
    for state in all_states() {
        let markup = everything(&state);
        check(&markup);
        all += &markup;
    }
    // What is easily left out of the walk.
    for seen in
        ["nb-chart-words", "nb-pair", "nb__written", "copy-by-hand", "swung-wrong"]
    {
        assert!(all.contains(seen), "{seen} was never seen");
    }
}

/// Each sheet that can lie about alone says it.
#[test]
fn every_sheet_says_that_it_is_no_permission() {
    let (_, lesson) = PAGE.split_once("<article class=\"paper\"").unwrap();
    assert!(lesson.contains("data-words=\"index-paper-local\""));
    let (_, lesson) = noseward_words::by_key("index-paper-local").unwrap();
    assert!(lesson.text().contains("not permission to"));
    let mut state = notebooks().remove(2);
    for paper in [Paper::Rocket, Paper::Swing, Paper::Notebook] {
        let regions = call(&mut state, Ask::Paper(paper)).regions;
        let sheet: String = regions.into_iter().map(|region| region.markup).collect();
        assert!(sheet.contains("not permission to"), "{paper:?}: {sheet}");
    }
    for place in [places::swing::regions(&state), places::why::regions(&state)] {
        let text: String = place.into_iter().map(|region| region.markup).collect();
        assert!(text.contains("This page does not."), "{text}");
    }
}

#[test]
fn fields_that_count_as_shown_are_in_the_markup() {
    for mut state in states() {
        for all in [false, true] {
            state.all_measurements = all;
            let markup: String =
                places::rocket::regions(&state).into_iter().map(|r| r.markup).collect();
            for field in Field::numbers(&state.design) {
                let there = markup.contains(&format!("id=\"{field}\""));
                assert!(
                    there || !places::rocket::is_shown(&state, field),
                    "{field} {all}"
                );
                assert!(there || !all, "{field} is nowhere");
            }
        }
    }
}

#[test]
fn what_a_person_typed_is_escaped_everywhere() {
    let evil = "<img src=x>\"'&";
    let mut state = open("", None);
    typed(&mut state, Field::Name, evil);
    typed(&mut state, Field::Weight(0, WeightField::Label), evil);
    typed(&mut state, WIDTH, evil);
    for all in [false, true] {
        state.all_measurements = all;
        let mut markup = everything(&state);
        markup += &shell::drawing(&state).unwrap().document();
        assert!(markup.contains("&lt;img"));
        assert!(!markup.contains("<img"));
        assert!(!markup.contains("x>\"'"));
    }
}
