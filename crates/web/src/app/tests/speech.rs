//! The language: how the page opens in it, and what switching keeps.

use super::*;
use noseward_words::{Choice, TABLES};

/// As the page says it of itself.
const AVAILABLE: &str = "en-plain en-US de ar en-XA";

pub(super) fn table(key: &str) -> Option<Vec<u8>> {
    TABLES.iter().find(|(known, _)| *known == key).map(|(_, bytes)| bytes.to_vec())
}

pub(super) fn choice(key: &str) -> Choice {
    Choice::parse(key).unwrap()
}

fn awaited(available: &str, chosen: Option<&str>, wished: &str) -> &'static str {
    let speech = Speech::opening(available.into(), chosen, wished);
    speech.awaited().unwrap_or("en")
}

/// A page with every language to be had.
pub(super) fn page() -> State {
    let speech = Speech::opening(AVAILABLE.into(), None, "en-GB");
    let mut state = State::new(&Opening { can_keep: true, speech, ..Opening::default() });
    state.parts = Loading::all(Code::Here);
    state
}

#[test]
fn what_was_chosen_comes_before_what_is_wished() {
    let all = |chosen, wished| awaited(AVAILABLE, chosen, wished);
    assert_eq!(all(None, "fr-FR de-AT en"), "de");
    assert_eq!(all(None, "en-US en"), "en-US");
    assert_eq!(all(None, "en-NZ de"), "en");
    assert_eq!(all(None, "fr ja"), "en");
    assert_eq!(all(Some("ar-u-nu-arab"), "de"), "ar");
    assert_eq!(all(Some("de"), "en-US"), "de");
    assert_eq!(all(Some("nonsense"), "de"), "de");
    assert_eq!(all(Some("en"), "de"), "en");
    // The pseudo-language is nobody's wish; a test may name it.
    assert_eq!(all(None, "en-XB"), "en");
    assert_eq!(all(Some("en-XA"), ""), "en-XA");
    // The single file has what was put into it.
    assert_eq!(awaited("", Some("de"), "ar"), "en");
    assert_eq!(awaited("ar", Some("de"), "en-US"), "en");
}

#[test]
fn a_page_that_opens_in_another_language_speaks_it_from_the_first_word() {
    let mut speech = Speech::opening(AVAILABLE.into(), None, "ar-EG");
    assert_eq!(speech.take(table("ar")), Ok(true));
    assert_eq!((speech.spoken(), speech.awaited()), (choice("ar"), None));
    // It was the browser's wish, which may be another next time.
    assert_eq!(speech.chosen(), None);
    let state = State::new(&Opening { can_keep: true, speech, ..Opening::default() });
    assert!(markup(&shell::then(&state)).contains("لماذا؟"));
}

#[test]
fn sentences_that_do_not_come_leave_english_and_say_so() {
    for bytes in [
        None,
        Some(b"<!doctype html>".to_vec()),
        table("de").map(|mut bytes| {
            bytes.truncate(100);
            bytes
        }),
    ] {
        let mut speech = Speech::opening(AVAILABLE.into(), Some("de"), "");
        assert_eq!(speech.take(bytes.clone()), Err("Deutsch"));
        assert_eq!(speech.spoken(), Choice::ENGLISH);
        let mut state = page();
        update(&mut state, Msg::Speak(choice("de")));
        update(&mut state, Msg::TableCame(bytes));
        let Some(Notice::Said { alarming: true, words }) = &state.notice else {
            panic!("{:?}", state.notice)
        };
        assert!(words.starts_with("Deutsch could not be loaded"), "{words}");
        // Choosing it again fetches it again.
        let effects = update(&mut state, Msg::Speak(choice("de")));
        assert!(effects.contains(&Effect::FetchTable("de")), "{effects:?}");
        update(&mut state, Msg::TableCame(table("de")));
        assert_eq!(state.speech.spoken(), choice("de"));
        noseward_words::speak(None);
    }
}

#[test]
fn switching_loses_nothing_not_even_a_half_typed_number() {
    let mut state = page();
    update(&mut state, Msg::Typed { field: WIDTH, text: "6".into() });
    update(&mut state, Msg::Typed { field: CLAY_PLACE, text: "4o".into() });
    let (design, drafts) = (state.design.clone(), state.drafts.clone());
    let effects = update(&mut state, Msg::Speak(choice("de")));
    assert_eq!(effects, [Effect::FetchTable("de"), Effect::Redraw]);
    // Until it is here the page goes on as it was; the list shows what was chosen.
    assert!(markup(&shell::then(&state)).contains("Why?"));
    let chosen: Vec<_> =
        state.speech.offered().into_iter().filter(|(_, now)| *now).collect();
    assert_eq!(chosen, [(choice("de"), true)]);
    let effects = update(&mut state, Msg::TableCame(table("de")));
    assert_eq!(effects, [Effect::Speak, Effect::Redraw, Effect::KeepView]);
    assert!(markup(&shell::then(&state)).contains("Warum?"));
    assert_eq!(state.text_of(CLAY_PLACE), "4o");
    assert_eq!((&state.design, &state.drafts), (&design, &drafts));
    assert!(state.can_undo());
    // Back again at once, and forth: it is fetched only once.
    for key in ["en", "de", "en"] {
        let effects = update(&mut state, Msg::Speak(choice(key)));
        assert!(effects.contains(&Effect::Speak), "{effects:?}");
        assert_eq!(state.speech.chosen(), Some(key.to_owned()));
    }
    assert!(markup(&shell::then(&state)).contains("Why?"));
}

#[test]
fn of_two_languages_on_their_way_the_last_is_spoken() {
    let mut state = page();
    update(&mut state, Msg::Speak(choice("de")));
    update(&mut state, Msg::Speak(choice("ar-u-nu-arab")));
    update(&mut state, Msg::TableCame(table("de")));
    assert_eq!(state.speech.spoken(), Choice::ENGLISH);
    update(&mut state, Msg::TableCame(table("ar")));
    assert_eq!(state.speech.spoken(), choice("ar-u-nu-arab"));
    assert!(markup(&shell::first(&state)).contains('٫'), "a decimal");
    noseward_words::speak(None);
}

#[test]
fn deleting_everything_deletes_the_choice_too() {
    let mut state = page();
    update(&mut state, Msg::Speak(choice("de")));
    update(&mut state, Msg::TableCame(table("de")));
    update(&mut state, Msg::Deleted { left: 0 });
    assert_eq!(state.speech.chosen(), None);
    assert_eq!(state.speech.spoken(), choice("de"), "what is on the screen stays");
    noseward_words::speak(None);
}

fn markup(regions: &[Region]) -> String {
    regions.iter().map(|region| region.markup.as_str()).collect()
}

#[test]
fn whoever_leads_is_told_that_no_teacher_has_read_it() {
    let mut state = page();
    let told = markup(&places::lead::regions(&state));
    assert!(!told.contains("no teacher"), "English is our own");
    update(&mut state, Msg::Speak(choice("de")));
    update(&mut state, Msg::TableCame(table("de")));
    let told = markup(&places::lead::regions(&state));
    assert!(told.contains("Noch hat keine Lehrkraft jeden Satz gelesen."), "{told}");
    noseward_words::speak(None);
}
