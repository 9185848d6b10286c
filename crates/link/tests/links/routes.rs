//! A notebook comes out of every route as it went in, and a locked prediction that was
//! changed on the way shows.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use crc::{CRC_32_ISO_HDLC, Crc};
use noseward_lesson::{Record, Trial};
use noseward_link::{
    Any, At, LinkError, LinkErrorKind, NotebookFile, QrSegments, code, hash,
    looks_like_notebook, looks_like_table, notebook_hash, notebook_parts, open_any,
    open_hash, open_notebook_file, open_notebook_hash, open_table, open_text, pieces,
    result_code, to_file, to_notebook_file,
};
use noseward_stability::Example;
use proptest::prelude::*;

use crate::designs;
use crate::detection::config;
use crate::notebooks::{everything, notebook, ordinary, result_of};

fn collected(parts: &[String]) -> NotebookFile {
    let mut collection = QrSegments::default();
    for part in parts {
        collection.add(part).expect("a part that was just made");
    }
    collection.notebook().expect("all parts").expect("a notebook")
}

#[test]
fn an_example_comes_through_every_route() {
    for file in [everything(), ordinary(), NotebookFile::default()] {
        let text = to_notebook_file(&file);
        let opened = open_notebook_file(&text).unwrap();
        assert_eq!(opened, file);
        assert_eq!(to_notebook_file(&opened), text);
        assert_eq!(collected(&notebook_parts(&file).unwrap()), file);
        if let Some(link) = notebook_hash(&file) {
            assert!(link.len() < 2000);
            assert_eq!(open_notebook_hash(&link), Some(Ok(file.clone())));
            assert_eq!(
                open_notebook_hash(&format!(" #{link}).")),
                Some(Ok(file.clone()))
            );
        }
    }
    assert!(notebook_hash(&everything()).is_some());
}

#[test]
fn each_spelling_is_told_from_the_others() {
    let file = everything();
    let record = Record::from(Example::Razorbill.design());
    let link = notebook_hash(&file).unwrap();
    let parts = notebook_parts(&file).unwrap();
    let result = result_of(&file.notebook, 2).unwrap();
    let typed = result_code(&result);
    let json = to_notebook_file(&file);
    for text in [
        json.clone(),
        json.replace("\"noseward\": ", "\"noseward\"\n:"),
        link.clone(),
        format!("Our notebook: https://x.test/a#{link}."),
        link.replacen('.', "%2E", 1),
    ] {
        assert!(looks_like_notebook(&text), "{text}");
        assert_eq!(open_any(&text), Ok(Any::Notebook(file.clone())), "{text}");
    }
    for text in [typed.clone(), typed.to_lowercase(), format!("Blue 4: {typed}\nBye")] {
        assert!(looks_like_notebook(&text), "{text}");
        assert_eq!(open_any(&text), Ok(Any::Result(result.clone())), "{text}");
    }
    for text in [parts[1].clone(), format!("Part 2: {}", parts[1]), parts.join("\n")] {
        assert!(looks_like_notebook(&text));
        let Ok(Any::Parts(parts)) = open_any(&text) else { panic!("parts: {text}") };
        assert!(!parts.missing().contains(&2));
    }
    for text in [hash(&record), code(&record), to_file(&record)] {
        assert!(!looks_like_notebook(&text));
        assert!(matches!(open_any(&text), Ok(Any::Rocket(_))));
    }
    for text in [
        "",
        "T1 was our best trial.",
        "n1. A heavier nose",
        "n1.\nn1.",
        "Nil by mouth, N1 and T1",
        "Title: nine nets in ten tins",
        "{\"noseward\": \"rocket\", \"name\": \"notebook\"}",
        "{\"name\": \"\\\"noseward\\\": \\\"notebook\\\"\"}",
    ] {
        assert!(!looks_like_notebook(text), "{text}");
        assert!(matches!(open_any(text), Err(LinkError { at: At::File, .. })), "{text}");
    }
}

/// A class hands in all at once: each thing is found, whatever stands between.
#[test]
fn several_things_in_one_text_are_told_apart() {
    let file = everything();
    let notebook = notebook_hash(&file).unwrap();
    let result = result_code(&result_of(&file.notebook, 2).unwrap());
    let rockets = Example::ALL.map(|example| Record::from(example.design()));
    let links = rockets.each_ref().map(hash);
    let codes = rockets.each_ref().map(code);
    let part = &notebook_parts(&file).unwrap()[0];
    for all in [
        vec![&links[0], &links[1], &notebook],
        vec![&result, &result, &codes[2], &links[3]],
        vec![&codes[0], &codes[1], part, &notebook],
    ] {
        let text = all.iter().fold("Ours:\n".to_owned(), |text, one| {
            format!("{text}{one}\nand https://x.test/a/b is no rocket. T1 was best:\n")
        });
        let found = pieces(&text);
        assert_eq!(found.len(), all.len(), "{text}");
        for (piece, one) in found.iter().zip(all) {
            assert!(piece.starts_with(one.as_str()));
            assert_eq!(open_any(piece), open_any(one));
        }
    }
    let json = to_notebook_file(&file);
    assert_eq!(pieces(&json), [json.as_str()]);
    assert!(pieces("Nil by mouth, N1 and T1").is_empty());
}

/// Rows of a code that somebody wrote down are no beginnings.
#[test]
fn one_code_is_one_piece() {
    let mut record = Record::from(Example::Puffin.design());
    for mass in 1..400 {
        record.design.weights[0].mass_g = f64::from(mass);
        let code = code(&record);
        assert_eq!(pieces(&code), [code.as_str()]);
        let numbered: Vec<String> =
            code.lines().zip(1..).map(|(row, n)| format!("{n}. {row}")).collect();
        assert_eq!(pieces(&numbered.join("\n")).len(), 1, "{code}");
    }
}

/// The other readers say of a notebook that it is no rocket.
#[test]
fn a_notebook_is_no_rocket() {
    let file = everything();
    let link = notebook_hash(&file).unwrap();
    assert_eq!(open_hash(&link), noseward_link::Opened::Nothing);
    assert!(open_text(&link).is_err());
    assert!(open_text(&to_notebook_file(&file)).is_err());
    assert!(open_text(&notebook_parts(&file).unwrap()[0]).is_err());
    let rocket = hash(&Example::Razorbill.design().into());
    assert_eq!(open_notebook_hash(&rocket), None);
    let other = rocket.replacen('r', "n", 1);
    let error = |kind: LinkErrorKind| Some(Err(LinkError { kind, at: At::Link }));
    assert_eq!(open_notebook_hash(&other), error(LinkErrorKind::Changed));
    let newer = link.replacen("n1", "n2", 1);
    assert_eq!(open_notebook_hash(&newer), error(LinkErrorKind::Newer { version: 2 }));
}

#[test]
fn every_cut_and_every_change_of_a_link_is_seen() {
    let file = everything();
    let link = notebook_hash(&file).unwrap();
    for end in 3..link.len() {
        let kind = LinkErrorKind::CutShort;
        let cut = Some(Err(LinkError { kind, at: At::Link }));
        assert_eq!(open_notebook_hash(&link[..end]), cut, "{end}");
    }
    for i in 3..link.len() {
        for with in ["A", "z", "-", "5"] {
            let mut changed = link.clone();
            changed.replace_range(i..=i, with);
            if changed != link {
                let opened = open_notebook_hash(&changed).unwrap();
                assert!(opened.is_err() || opened == Ok(file.clone()), "{changed}");
            }
        }
    }
}

const CRC: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);

/// The same link with some bytes of its payload replaced by as many others, and a checksum
/// that agrees.
fn forged(link: &str, from: &[u8], to: &[u8]) -> String {
    let (mark, text) = link.split_once('.').expect("a link");
    let mut bytes = URL_SAFE_NO_PAD.decode(text).expect("base64url");
    let at = bytes.windows(from.len()).position(|bytes| bytes == from);
    let at = at.expect("bytes that are there");
    bytes.splice(at..at + from.len(), to.iter().copied());
    let last = bytes.iter().skip(4).position(|&byte| byte < 128);
    let payload = last.expect("a length") + 5;
    let mut digest = CRC.digest();
    digest.update(&[mark.as_bytes()[0], 1]);
    digest.update(&bytes[payload..]);
    bytes.splice(..4, digest.finalize().to_le_bytes());
    format!("{mark}.{}", URL_SAFE_NO_PAD.encode(bytes))
}

#[test]
fn a_changed_prediction_shows_in_a_link() {
    let file = everything();
    let altered = |file: &NotebookFile| -> Vec<u16> {
        let all = file.notebook.trials().iter();
        all.filter(|trial| trial.is_altered()).map(Trial::id).collect()
    };
    assert_eq!(altered(&file), [] as [u16; 0]);
    let link = notebook_hash(&file).unwrap();
    let seal = file.notebook.trial(2).unwrap().seal().unwrap().0.to_le_bytes();
    // The second trial's outcome, its reason's length, how it was swung and what was seen.
    let because = &[1, 31, b'T'][..];
    let swung = &[76, 81, 17, 146, 1, 5, 1][..];
    for (from, to) in [
        (&b"pulls the nose down"[..], &b"pushes the nose up."[..]),
        (&seal, &[0, 0, 0, 1]),
        (because, &[0, 31, b'T']),
        (swung, &[76, 81, 17, 146, 0, 0, 0]),
        (swung, &[77, 81, 17, 146, 1, 5, 1]),
    ] {
        let forged = forged(&link, from, to);
        let opened = open_notebook_hash(&forged).unwrap().unwrap();
        assert_eq!(altered(&opened), [2], "{from:?}");
        // By whatever route it goes on, it says so.
        let again = open_notebook_file(&to_notebook_file(&opened)).unwrap();
        assert_eq!((&again, altered(&again)), (&opened, vec![2]));
        assert_eq!(collected(&notebook_parts(&opened).unwrap()), opened);
        assert!(result_of(&opened.notebook, 2).unwrap().altered);
    }
    // What is not sealed may be changed.
    let noted = forged(&link, b"we went in", b"we stayed.");
    assert_eq!(altered(&open_notebook_hash(&noted).unwrap().unwrap()), [] as [u16; 0]);
}

#[test]
fn a_changed_prediction_shows_in_a_file() {
    let file = everything();
    let text = to_notebook_file(&file);
    let seal = file.notebook.trial(2).unwrap().seal().unwrap().to_string();
    let second = text.find("\"trial\": 2,").unwrap();
    let (before, behind) = text.split_at(second);
    for (from, to) in [
        ("pulls the nose down", "pushes the nose up"),
        (
            "\"prediction_1_outcome\": \"wobbling\"",
            "\"prediction_1_outcome\": \"steady\"",
        ),
        ("\"seal\"", "\"prediction_1_swings_seen\": 2, \"seal\""),
        ("\"ellipsoid\"", "\"cone\""),
        ("\"corrugated_plastic\"", "\"balsa3\""),
        ("\"closed_front\": true", "\"closed_front\": false"),
        ("\"label\": \"sticky tape\"", "\"label\": \"clay\""),
        ("\"not_sure\"", "\"steady\""),
        ("\"string_m\": ", "\"string_m\": 2"),
        (&seal, "00000001"),
        (&format!("\"{seal}\""), "null"),
        ("\"length_mm\": ", "\"length_mm\": 1"),
        ("\"trial\": 2,", "\"trial\": 9,"),
        ("\"seal\"", "\"altered\": true, \"seal\""),
    ] {
        let changed = format!("{before}{}", behind.replacen(from, to, 1));
        assert_ne!(changed, text, "{from}");
        let opened = open_notebook_file(&changed).unwrap();
        let altered: Vec<_> =
            opened.notebook.trials().iter().map(Trial::is_altered).collect();
        assert_eq!(altered, [false, true, false], "{from}");
        if let Some(parts) = notebook_parts(&opened) {
            assert_eq!(collected(&parts), opened, "{from}");
        }
    }
}

/// Whatever the length, no reader takes more than a few steps for each character: these
/// would not end in hours if one went through the rest of the text at each beginning.
#[test]
fn plain_words_and_endless_links_are_little_work() {
    const BYTES: usize = 64 * 1024;
    for piece in [
        "n ",
        "t r n ",
        "no trial ran today ",
        "n1. ",
        "n1.A ",
        "n1.AAAAAAAAAAA ",
        "r1 ",
        "# ",
        "#r2",
        "R1 ",
        "N1AA AAAA AAAA ",
        "T1AA AAAA AAAA ",
        "RI ",
        "1. R\n",
        "{",
        "\"noseward\"",
        "> ",
        "kind_of_row ",
        "trial,",
        "--- ",
    ] {
        let text = piece.repeat(BYTES / piece.len());
        let _ = looks_like_notebook(&text);
        let _ = looks_like_table(&text);
        let _ = open_text(&text);
        let _ = open_any(&text);
        let _ = open_table(&text);
        let _ = open_hash(&text);
        let _ = QrSegments::default().add(&text);
    }
    for front in ["r1.", "n1.", "#r1.", "R1", "N1", "T1", "https://x.test/#n1."] {
        let text = format!("{front}{}", "A".repeat(BYTES));
        assert!(open_any(&text).is_err());
        let _ = open_hash(&text);
        let _ = open_notebook_hash(&text);
    }
}

proptest! {
    #![proptest_config(config(64))]

    #[test]
    fn what_is_sent_arrives(file in notebook()) {
        let text = to_notebook_file(&file);
        let opened = open_notebook_file(&text);
        prop_assert_eq!(opened.as_ref(), Ok(&file));
        prop_assert_eq!(to_notebook_file(&file), text);
        if let Some(link) = notebook_hash(&file) {
            prop_assert_eq!(open_notebook_hash(&link), Some(Ok(file.clone())));
        }
        let parts = notebook_parts(&file).expect("a small notebook");
        prop_assert_eq!(collected(&parts), file.clone());
        prop_assert!(!file.notebook.trials().iter().any(Trial::is_altered));
        for trial in file.notebook.trials() {
            let result = result_of(&file.notebook, trial.id()).expect("a trial");
            let opened = noseward_link::open_result_code(&result_code(&result));
            prop_assert_eq!(opened, Ok(result));
        }
    }

    #[test]
    fn a_rocket_is_left_to_its_own_reader(record in designs::record()) {
        for text in [hash(&record), code(&record), to_file(&record)] {
            prop_assert!(!looks_like_notebook(&text), "{}", text);
            let at = format!("Look: https://x.test/n1/t1?n=1#{text}");
            prop_assert!(text.starts_with('{') || !looks_like_notebook(&at), "{}", at);
        }
    }

    #[test]
    fn any_text_is_read_without_panic(text in "\\PC*", tail in "[0-9A-Za-z ._-]{0,300}") {
        let _ = open_any(&text);
        for front in ["N1", "T1", "n1.", "NI", "{\"noseward\":\"notebook\""] {
            let random = format!("{front}{tail}");
            let _ = looks_like_notebook(&random);
            let opened = open_any(&random);
            prop_assert!(!matches!(
                opened,
                Ok(Any::Notebook(_) | Any::Parts(_) | Any::Result(_))
            ));
            let _ = QrSegments::default().add(&format!("{text} {random}"));
        }
    }
}
