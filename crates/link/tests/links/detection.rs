//! A link that was cut or changed never shows wrong numbers as right.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use noseward_lesson::{Record, Swings};
use noseward_link::{
    LinkError, LinkErrorKind, Missing, Opened, hash, open_file, open_hash, to_file,
};
use noseward_stability::{Design, limits};
use proptest::prelude::*;

use crate::designs::{examples, record};

const BASE64URL: &[u8; 64] =
    b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// No failing case is written to disk: it is printed, and becomes a test of its own.
pub(crate) fn config(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

/// A record that is shown must be the one that was sent.
fn assert_not_another(text: &str, sent: &Record) {
    if let Opened::Record(shown) = open_hash(text) {
        assert_eq!(&shown, sent, "{text}");
    }
}

/// What a cut link shows is the front of what was sent, and the counts of what is missing
/// make it whole.
fn assert_front(opened: Opened, Record { design: sent, swings }: &Record) {
    let (design, missing) = match opened {
        Opened::Partial { design, missing } => (design, missing),
        Opened::Nothing
        | Opened::Damaged(LinkError { kind: LinkErrorKind::CutShort, .. }) => return,
        other => panic!("a cut link gives {other:?}"),
    };
    assert!(!missing.is_empty() && !design.sections.is_empty());
    assert_eq!((&design.name, design.measured), (&sent.name, sent.measured));
    assert!(sent.sections.starts_with(&design.sections));
    assert!(sent.fins.starts_with(&design.fins));
    assert!(sent.weights.starts_with(&design.weights));
    let mut lost = vec![
        Missing::Sections(sent.sections.len() - design.sections.len()),
        Missing::FinSets(sent.fins.len() - design.fins.len()),
        Missing::Weights(sent.weights.len() - design.weights.len()),
    ];
    lost.retain(|lost| match *lost {
        Missing::Sections(n) | Missing::FinSets(n) | Missing::Weights(n) => n > 0,
        Missing::Swings => false,
    });
    if *swings != Swings::default() {
        lost.push(Missing::Swings);
    }
    assert_eq!(missing, lost);
}

/// Kind and version, and the bytes behind them.
fn decode(text: &str) -> (&str, Vec<u8>) {
    let (mark, symbols) = text.split_once('.').expect("a link");
    (mark, URL_SAFE_NO_PAD.decode(symbols).expect("whole bytes"))
}

fn encode(mark: &str, bytes: &[u8]) -> String {
    format!("{mark}.{}", URL_SAFE_NO_PAD.encode(bytes))
}

#[test]
fn no_character_of_an_example_can_be_changed_unseen() {
    for sent in examples() {
        let text = hash(&sent);
        let replacements = BASE64URL.iter().chain(b"#.%)~ \n\0");
        for (i, &with) in
            (0..text.len()).flat_map(|i| replacements.clone().map(move |w| (i, w)))
        {
            let mut changed = text.clone().into_bytes();
            changed[i] = with;
            assert_not_another(std::str::from_utf8(&changed).unwrap(), &sent);
        }
    }
}

#[test]
fn no_byte_of_an_example_can_be_changed_unseen() {
    for sent in examples() {
        let text = hash(&sent);
        let (mark, bytes) = decode(&text);
        assert_eq!(mark, "r1");
        for i in 0..bytes.len() {
            for with in (0..=u8::MAX).filter(|&with| with != bytes[i]) {
                let mut changed = bytes.clone();
                changed[i] = with;
                let opened = open_hash(&encode(mark, &changed));
                assert!(!matches!(opened, Opened::Record(_)), "byte {i}: {with}");
            }
        }
    }
}

/// A phone that drops the end of a long message still shows the body.
#[test]
fn most_cuts_of_an_example_show_something() {
    for example in examples() {
        let text = hash(&example);
        let shown = (0..text.len())
            .filter(|&end| matches!(open_hash(&text[..end]), Opened::Partial { .. }))
            .count();
        assert!(2 * shown > text.len(), "{example:?}: {shown} of {}", text.len());
    }
}

proptest! {
    #![proptest_config(config(256))]

    #[test]
    fn what_is_sent_arrives(sent in record()) {
        let text = hash(&sent);
        prop_assert!(text.bytes().all(|b| BASE64URL.contains(&b) || b == b'.'));
        prop_assert_eq!(open_hash(&text), Opened::Record(sent.clone()));
        prop_assert_eq!(open_file(&to_file(&sent)), Ok(sent));
    }

    /// Text is the only thing that the strategy does not bound as `check` does.
    #[test]
    fn a_design_within_bounds_fits(sent in record()) {
        let Design { name, weights, .. } = &sent.design;
        let texts = weights.iter().map(|w| w.label.len());
        let bytes = name.len() + texts.sum::<usize>();
        let over = bytes.saturating_sub(limits::TEXT_BYTES);
        prop_assert!(hash(&sent).len() + "#".len() <= 1000 + (over * 4).div_ceil(3));
    }

    #[test]
    fn any_text_is_opened_without_panic(text in "\\PC*", tail in "[-_A-Za-z0-9.%]*") {
        let _ = open_hash(&text);
        let _ = open_file(&text);
        let link = format!("r1.{tail}");
        prop_assert!(!matches!(open_hash(&link), Opened::Record(_)));
        let _ = open_file(&format!("{{{text}"));
    }

    #[test]
    fn any_bytes_are_opened_without_panic(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        prop_assert!(!matches!(open_hash(&encode("r1", &bytes)), Opened::Record(_)));
    }
}

proptest! {
    #![proptest_config(config(40))]

    #[test]
    fn every_cut_is_seen(sent in record()) {
        let text = hash(&sent);
        for end in 0..text.len() {
            assert_front(open_hash(&text[..end]), &sent);
        }
    }

    #[test]
    fn every_change_is_seen(sent in record(), seed in any::<u64>()) {
        let text = hash(&sent);
        let (mark, bytes) = decode(&text);
        let mut random = seed | 1;
        let mut next = || {
            // Marsaglia, "Xorshift RNGs", 2003, the triple (13, 7, 17).
            random ^= random << 13;
            random ^= random >> 7;
            random ^= random << 17;
            random.to_le_bytes()[3]
        };
        for i in 0..text.len() {
            let mut changed = text.clone().into_bytes();
            changed[i] = BASE64URL[usize::from(next() % 64)];
            assert_not_another(std::str::from_utf8(&changed).unwrap(), &sent);
        }
        for i in 0..bytes.len() {
            let mut changed = bytes.clone();
            changed[i] ^= next().max(1);
            let opened = open_hash(&encode(mark, &changed));
            prop_assert!(!matches!(opened, Opened::Record(_)));
        }
    }
}
