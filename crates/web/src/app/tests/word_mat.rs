//! The word mat: every word with its sentence and its picture, and a second language beside it.

use std::collections::BTreeSet;

use super::speech::{choice, page, table};
use super::*;
use noseward_words::{Table, language, speak};

/// A card: its picture, and what each language says on it, as the attributes of its element,
/// the word and the sentence.
#[derive(Debug)]
struct Card {
    picture: String,
    said: Vec<[String; 3]>,
}

/// What stands between two texts, and what follows.
fn between<'a>(text: &'a str, from: &str, to: &str) -> (&'a str, &'a str) {
    let (_, rest) = text.split_once(from).unwrap_or_else(|| panic!("{from} in {text}"));
    rest.split_once(to).unwrap_or_else(|| panic!("{to} in {text}"))
}

fn mat(state: &State) -> String {
    places::word_mat::regions(state).into_iter().map(|region| region.markup).collect()
}

fn cards(state: &State) -> Vec<Card> {
    let card = |card: &str| {
        let (picture, said) = between(card, "<svg", "</svg>");
        let said =
            said.split("</div>").filter(|said| said.contains("<div")).map(|said| {
                let (attributes, said) = between(said, "<div", ">");
                let (word, said) = between(said, "<h4>", "</h4>");
                [attributes, word, between(said, "<p>", "</p>").0].map(str::to_owned)
            });
        Card { picture: picture.to_owned(), said: said.collect() }
    };
    mat(state).split("<li class=\"word\">").skip(1).map(card).collect()
}

fn in_language(key: &str) -> State {
    let mut state = page();
    update(&mut state, Msg::Speak(choice(key)));
    if key != "en" {
        update(&mut state, Msg::TableCame(table(choice(key).language.key)));
    }
    assert_eq!(state.speech.spoken(), choice(key));
    state
}

#[test]
fn thirty_words_have_a_sentence_and_a_picture_in_every_language() {
    let alone = |key| {
        let cards = cards(&in_language(key));
        assert_eq!(cards.len(), 30, "{key}");
        let mut seen = BTreeSet::new();
        for Card { picture, said } in &cards {
            let [[attributes, word, sentence]] = &said[..] else { panic!("{said:?}") };
            assert_eq!(attributes, "", "it is the language of the page");
            assert!(picture.contains("aria-hidden=\"true\""), "{picture}");
            assert!(picture.contains("<path") && !picture.contains("<text"), "{picture}");
            assert!(!word.is_empty() && !word.ends_with('.'), "{word}");
            assert!(sentence.ends_with('.') && sentence.len() > 20, "{sentence}");
            for part in [picture, word, sentence] {
                assert!(seen.insert(part.clone()), "twice: {part}");
            }
        }
        speak(None);
        cards
    };
    let english = alone("en");
    for key in ["de", "ar"] {
        for (english, other) in english.iter().zip(alone(key)) {
            // Pictures stay as they are, also from right to left.
            assert_eq!(english.picture, other.picture);
            assert_ne!(english.said[0][2], other.said[0][2], "{key}");
        }
    }
    alone("en-plain");
    let american = alone("en-US");
    assert!(american.iter().any(|card| card.said[0][1] == "Center of mass"));
}

#[test]
fn a_second_language_stands_beside_the_first() {
    let mut state = in_language("en");
    let alone = cards(&state);
    let effects = update(&mut state, Msg::Beside(Some(choice("de").language)));
    assert_eq!(effects, [Effect::FetchTable("de"), Effect::Redraw]);
    // Until it is here, the list shows it.
    assert!(mat(&state).contains("value=\"de\" lang=\"de\" selected"), "{}", mat(&state));
    assert_eq!(cards(&state)[0].said.len(), 1);
    update(&mut state, Msg::TableCame(table("de")));
    assert_eq!(state.speech.spoken(), choice("en"));
    let two = cards(&state);
    for (card, alone) in two.iter().zip(&alone) {
        let [first, [attributes, word, _]] = &card.said[..] else { panic!("{card:?}") };
        assert_eq!(first, &alone.said[0]);
        assert_eq!(attributes, " lang=\"de\" dir=\"ltr\"");
        assert!(!word.is_empty());
    }
    assert!(two.iter().any(|card| card.said[1][1] == "Schwerpunkt"));
    // Another one, and none again.
    update(&mut state, Msg::Beside(Some(choice("ar").language)));
    update(&mut state, Msg::TableCame(table("ar")));
    assert_eq!(cards(&state)[29].said[1][0], " lang=\"ar\" dir=\"rtl\"");
    let effects = update(&mut state, Msg::Beside(None));
    assert_eq!(effects, [Effect::Redraw]);
    assert_eq!(cards(&state)[0].said.len(), 1);
    // It is fetched once.
    let effects = update(&mut state, Msg::Beside(Some(choice("de").language)));
    assert_eq!(effects, [Effect::Redraw]);
    assert_eq!(language().key, "en");
}

#[test]
fn the_first_language_goes_on_with_its_digits() {
    let mut state = in_language("ar-u-nu-arab");
    assert_eq!(Number::fixed(1.5, 1).to_string(), "١٫٥");
    // What is built in need not be fetched.
    assert_eq!(
        update(&mut state, Msg::Beside(Some(choice("en").language))),
        [Effect::Redraw]
    );
    assert!(mat(&state).contains("lang=\"en-GB\" dir=\"ltr\"><h4>Nose (nose cone)</h4>"));
    assert_eq!(Number::fixed(1.5, 1).to_string(), "١٫٥");
    // Every other language is offered, once; none that is spoken, nor one for tests.
    let offered = |state: &State| -> Vec<_> {
        state.speech.offered_beside().map(|language| language.key).collect()
    };
    assert_eq!(offered(&state), ["en", "en-plain", "en-US", "de"]);
    // Beside itself a language is there once.
    update(&mut state, Msg::Speak(choice("en")));
    assert_eq!(cards(&state)[0].said.len(), 1);
    assert_eq!(offered(&state), ["en-plain", "en-US", "de", "ar"]);
    speak(None);
}

#[test]
fn a_second_language_that_does_not_come_is_told_and_nothing_is_lost() {
    for bytes in [None, Some(b"<!doctype html>".to_vec())] {
        let mut state = in_language("de");
        let before = mat(&state);
        update(&mut state, Msg::Beside(Some(choice("ar").language)));
        update(&mut state, Msg::TableCame(bytes));
        let Some(Notice::Said { alarming: true, words }) = &state.notice else {
            panic!("{:?}", state.notice)
        };
        assert!(words.contains("العربية"), "{words}");
        assert_eq!(mat(&state), before);
        assert_eq!(state.speech.spoken(), choice("de"));
        // Choosing it again fetches it again.
        let effects = update(&mut state, Msg::Beside(Some(choice("ar").language)));
        assert_eq!(effects, [Effect::FetchTable("ar"), Effect::Redraw]);
        update(&mut state, Msg::TableCame(table("ar")));
        assert_eq!(cards(&state)[0].said.len(), 2);
        speak(None);
    }
}

#[test]
fn two_languages_on_their_way_each_come_to_their_place() {
    for order in [["de", "ar"], ["ar", "de"]] {
        let mut state = in_language("en");
        update(&mut state, Msg::Speak(choice("de")));
        update(&mut state, Msg::Beside(Some(choice("ar").language)));
        for key in order {
            update(&mut state, Msg::TableCame(table(key)));
        }
        assert_eq!(state.speech.spoken(), choice("de"));
        let spoken = Table::load(table("de").unwrap()).unwrap().language();
        assert_eq!(language(), spoken);
        assert_eq!(cards(&state)[0].said[1][0], " lang=\"ar\" dir=\"rtl\"");
        // The place that follows speaks the first one.
        assert!(shell::then(&state).iter().any(|region| region.markup.contains("Mehr")));
        speak(None);
    }
}

#[test]
fn the_place_is_printed_as_it_is() {
    let mut state = page();
    let print = Msg::parse("print-place", "").unwrap();
    assert!(mat(&state).contains("data-action=\"print-place\""));
    assert_eq!(update(&mut state, print), [Effect::PrintPlace]);
}
