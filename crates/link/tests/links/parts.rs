//! Parts of a notebook come in any order, and no slip goes unseen.

use noseward_link::{
    At, LinkError, LinkErrorKind, NotebookFile, QrSegments, compact, notebook_parts,
};
use proptest::prelude::*;

use crate::detection::config;
use crate::notebooks::{everything, notebook, ordinary};

const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const ROW: usize = 20;

fn parts(file: &NotebookFile) -> Vec<String> {
    notebook_parts(file).expect("a small notebook")
}

#[test]
fn they_are_printed_in_groups_and_rows() {
    for part in parts(&ordinary()) {
        assert!(part.starts_with("N1"));
        for row in part.lines() {
            let groups: Vec<&str> = row.split(' ').collect();
            assert!(groups.len() <= 5 && groups.iter().all(|group| group.len() <= 4));
        }
        let symbols = compact(&part);
        assert!(symbols.len() <= 300);
        assert!(symbols.bytes().all(|symbol| ALPHABET.contains(&symbol)));
    }
}

#[test]
fn a_text_may_hold_several_among_other_words() {
    let file = everything();
    let parts = parts(&file);
    let packed: Vec<String> = parts.iter().map(|part| compact(part)).collect();
    for text in [
        parts.join("\n"),
        parts.join("\n\n"),
        packed.concat(),
        packed.join(" "),
        packed.join(";"),
        packed.join("\r\n").to_lowercase(),
        format!("Nearly done: \n{}\nN1 is first. Bye!", parts.join("\nand now\n")),
        format!("#{}", packed.join("\n#")),
        parts.join("\n").replace('0', "O").replace('1', "l"),
    ] {
        let mut collection = QrSegments::default();
        let progress = collection.add(&text).unwrap();
        assert!(progress.is_whole(), "{text}: {progress:?}");
        assert_eq!(usize::from(progress.added), parts.len());
        assert_eq!(collection.notebook(), Some(Ok(file.clone())));
    }
}

#[test]
fn what_is_missing_is_named_and_doubles_do_no_harm() {
    let parts = parts(&ordinary());
    let last = u8::try_from(parts.len()).unwrap();
    let mut collection = QrSegments::default();
    assert_eq!((collection.missing(), collection.progress().of), (vec![], 0));
    let progress = collection.add(&parts[2]).unwrap();
    assert_eq!((progress.have, progress.of, progress.added), (1, last, 1));
    let progress = collection.add(&format!("{}\n{}", parts[2], parts[0])).unwrap();
    assert_eq!((progress.have, progress.added), (2, 1));
    assert_eq!(collection.add(&parts[0]).unwrap().added, 0);
    let missing: Vec<u8> = (1..=last).filter(|&part| part != 1 && part != 3).collect();
    assert_eq!(collection.missing(), missing);
    assert_eq!(collection.notebook(), None);
}

#[test]
fn another_notebook_is_refused_and_the_right_ones_stay() {
    let (one, other) = (parts(&ordinary()), parts(&everything()));
    let mut later = ordinary();
    later.notebook.conclusion.claim.push('!');
    let later = parts(&later);
    let mut collection = QrSegments::default();
    collection.add(&one[0]).unwrap();
    for strange in [&other[0], &other[1], &later[1]] {
        let text = format!("{strange}\n{}", one[1]);
        let fault = collection.add(&text).unwrap_err();
        assert_eq!(fault.kind, LinkErrorKind::OtherNotebook);
        assert!(matches!(fault.at, At::Part(Some(_))), "{fault:?}");
        assert_eq!(collection.progress().have, 2);
    }
    collection.add(&one.concat()).unwrap();
    assert_eq!(collection.notebook(), Some(Ok(ordinary())));
}

#[test]
fn a_cut_part_is_named_and_the_others_stay() {
    let parts = parts(&ordinary());
    let mut collection = QrSegments::default();
    let cut = &parts[0][..parts[0].len() / 2];
    let fault = collection.add(&format!("{cut}\n\n{}", parts[1])).unwrap_err();
    assert_eq!(fault.at, At::Part(Some(1)));
    assert_eq!(collection.progress().have, 1);
    let fault = collection.add(cut).unwrap_err();
    let row = compact(cut).len() / ROW + 1;
    let error = |kind, part| LinkError { kind, at: At::Part(part) };
    assert_eq!(fault, error(LinkErrorKind::EndsEarly { row }, Some(1)));
    for nothing in ["", "hello", "M1AB CDEF GHJK MNPQ", "N1 is first"] {
        let no_part = error(LinkErrorKind::Nothing, None);
        assert_eq!(collection.add(nothing), Err(no_part), "{nothing}");
    }
    let newer = parts[0].replacen("N1", "N2", 1);
    let newer = collection.add(&newer).unwrap_err();
    assert_eq!(newer, error(LinkErrorKind::Newer { version: 2 }, None));
    let large = " ".repeat(300_000);
    let fault = LinkErrorKind::TooLarge { bytes: 300_000 };
    assert_eq!(collection.add(&large), Err(error(fault, None)));
}

/// Every single wrong character of every part, and every swap of neighbours.
#[test]
fn every_slip_is_seen_and_its_row_named() {
    let mut slips = 0;
    for part in parts(&everything()) {
        let symbols = compact(&part).into_bytes();
        let mut refused = |changed: &[u8], row: Option<usize>| {
            let mut collection = QrSegments::default();
            let text = std::str::from_utf8(changed).unwrap();
            let fault = collection.add(text).unwrap_err();
            assert_eq!(collection.progress().have, 0, "{text}");
            if let Some(row) = row {
                assert_eq!(fault.kind, LinkErrorKind::Rows { rows: vec![row] }, "{text}");
            }
            slips += 1;
        };
        for i in 0..symbols.len() {
            let row = (i > 1).then_some(i / ROW + 1);
            for &with in ALPHABET.iter().filter(|&&with| with != symbols[i]) {
                let mut changed = symbols.clone();
                changed[i] = with;
                refused(&changed, row);
            }
            if i + 1 < symbols.len() && symbols[i] != symbols[i + 1] {
                let mut changed = symbols.clone();
                changed.swap(i, i + 1);
                refused(&changed, None);
            }
        }
    }
    assert!(slips > 30_000, "{slips}");
}

proptest! {
    #![proptest_config(config(48))]

    #[test]
    fn any_order_will_do(
        file in notebook(),
        swaps in prop::collection::vec(any::<(prop::sample::Index, prop::sample::Index)>(), 30),
    ) {
        let mut shuffled = parts(&file);
        for (i, j) in swaps {
            let count = shuffled.len();
            shuffled.swap(i.index(count), j.index(count));
        }
        let mut collection = QrSegments::default();
        for (i, part) in shuffled.iter().enumerate() {
            prop_assert_eq!(collection.missing().is_empty(), i == 0);
            prop_assert_eq!(collection.notebook(), None);
            collection.add(part).expect("a part");
        }
        prop_assert_eq!(collection.notebook(), Some(Ok(file)));
    }

    /// Several wrong characters at once: a row lets one in 32 pass, the check of the part
    /// one in a million of those.
    #[test]
    fn many_slips_are_seen(
        file in notebook(),
        slips in prop::collection::vec((any::<prop::sample::Index>(), 0..32_usize), 1..9),
    ) {
        for part in parts(&file) {
            let right = compact(&part).into_bytes();
            let mut symbols = right.clone();
            for (place, with) in &slips {
                symbols[place.index(right.len())] = ALPHABET[*with];
            }
            let mut collection = QrSegments::default();
            let text = std::str::from_utf8(&symbols).expect("ASCII");
            let added = collection.add(text).is_ok();
            prop_assert_eq!(added, symbols == right, "{}", text);
        }
    }

    #[test]
    fn two_notebooks_do_not_mix(one in notebook(), other in notebook()) {
        let (first, second) = (parts(&one), parts(&other));
        prop_assume!(one != other);
        let mut collection = QrSegments::default();
        collection.add(&first[0]).expect("a part");
        for i in 0..first.len().max(second.len()) {
            if let Some(part) = second.get(i) {
                prop_assert!(collection.add(part).is_err());
            }
            if let Some(part) = first.get(i) {
                collection.add(part).expect("a part");
            }
        }
        prop_assert_eq!(collection.notebook(), Some(Ok(one)));
    }
}
