//! The code of a result: short, of one length, and no slip goes unseen.

use noseward_lesson::{Notebook, PointResult, ResultPrediction, SwingOutcome};
use noseward_link::{
    At, LinkError, LinkErrorKind, compact, open_result_code, result_code,
};
use noseward_stability::{Design, evaluate};

use crate::notebooks::{everything, ordinary, result_of};

const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

#[test]
fn it_holds_what_the_trial_came_to() {
    let notebook = everything().notebook;
    let result = result_of(&notebook, 1).unwrap();
    assert_eq!(result.group.key(), "blue 4");
    assert_eq!((result.trial, result.compared_with, result.changes), (1, None, None));
    // 231 and 233.5 from the nose; the third is left out.
    let mass =
        PointResult { readings_mm: [None; 3], middle_mm: 232.3, range_mm: 2.5, count: 2 };
    assert_eq!(result.mass, Some(mass));
    // 171 and 172.5 from the tail of a cut-out of 388 for a rocket of 412.5.
    let scale = 412.5 / 388.0;
    let pressure = result.pressure.unwrap();
    assert!((pressure.middle_mm - (388.0 - 171.75) * scale).abs() <= 0.05 + 1e-9);
    assert!((pressure.range_mm - 1.5 * scale).abs() <= 0.05 + 1e-9);
    assert_eq!(pressure.count, 2);
    let outcome = SwingOutcome::Sideways;
    assert_eq!(result.predicted, Some(ResultPrediction { outcome, swings_seen: 0 }));
    assert_eq!(result.outcomes.len(), 4);
    assert!(result.allows_two_changes && !result.altered && !result.swung_first);
    let figures = evaluate(notebook.trial(1).unwrap().design()).figures.unwrap();
    let model = result.model.unwrap();
    for (mm, m) in [
        (model.length_mm, figures.length_m),
        (model.body_width_mm, figures.body_width_m),
        (model.mass_point_mm, figures.computed_mass.centre_m),
        (model.pressure_point_mm, figures.centre_of_pressure_side_on_m),
    ] {
        assert!((mm - m * 1000.0).abs() <= 0.05 + 1e-9, "{mm}");
    }
    assert!((model.mass_g - figures.mass.mass_kg * 1000.0).abs() <= 0.05 + 1e-9);

    let fourth = result_of(&notebook, 4).unwrap();
    let changes = notebook.changes_of(notebook.trial(4).unwrap()).len();
    assert!(changes > 0);
    assert_eq!(fourth.compared_with, Some(1));
    assert_eq!(fourth.changes.map(usize::from), Some(changes));
    assert!(fourth.swung_first && fourth.predicted.is_none() && fourth.mass.is_none());
    for absent in [0, 3, 5] {
        assert_eq!(result_of(&notebook, absent), None);
    }
}

#[test]
fn it_is_short_and_comes_back() {
    let mut empty = Notebook::default();
    empty.begin(&Design::default().into()).unwrap();
    for notebook in [everything().notebook, ordinary().notebook, empty] {
        for trial in notebook.trials() {
            let result = result_of(&notebook, trial.id()).unwrap();
            let text = result_code(&result);
            assert_eq!((text.len(), compact(&text).len()), (74, 60), "{text}");
            assert!(text.starts_with("T1"));
            for text in [text.clone(), text.to_lowercase(), compact(&text)] {
                assert_eq!(open_result_code(&text), Ok(result.clone()));
            }
        }
    }
}

#[test]
fn every_slip_is_seen_and_its_row_named() {
    let notebook = everything().notebook;
    for trial in notebook.trials() {
        let result = result_of(&notebook, trial.id()).unwrap();
        let symbols = compact(&result_code(&result)).into_bytes();
        let open = |symbols: &[u8]| {
            let opened = open_result_code(std::str::from_utf8(symbols).unwrap());
            let error = opened.unwrap_err();
            assert_eq!(error.at, At::Result);
            error.kind
        };
        for i in 0..symbols.len() {
            for &with in ALPHABET.iter().filter(|&&with| with != symbols[i]) {
                let mut changed = symbols.clone();
                changed[i] = with;
                let fault = open(&changed);
                let row = LinkErrorKind::Rows { rows: vec![i / 20 + 1] };
                assert!(i < 2 || fault == row, "{i} {fault:?}");
            }
            if i + 1 < symbols.len() && symbols[i] != symbols[i + 1] {
                let mut changed = symbols.clone();
                changed.swap(i, i + 1);
                open(&changed);
            }
            let row = i / 20 + 1;
            let early = LinkErrorKind::EndsEarly { row };
            let fault = open(&symbols[..i]);
            assert_eq!(fault, if i < 2 { LinkErrorKind::Nothing } else { early });
        }
        assert_eq!(
            open(&[b"T2", &symbols[2..]].concat()),
            LinkErrorKind::Newer { version: 2 }
        );
    }
    let nothing = LinkError { kind: LinkErrorKind::Nothing, at: At::Result };
    assert_eq!(open_result_code("hello"), Err(nothing));
}

/// Two wrong characters in each of two rows: the rows let one pair in 1024 pass, and the
/// checksum one in 65,536 of those.
#[test]
fn no_pair_of_slips_goes_unseen() {
    let notebook = ordinary().notebook;
    let result = result_of(&notebook, 2).unwrap();
    let right = compact(&result_code(&result)).into_bytes();
    let mut tried = 0;
    for i in 2..right.len() {
        for j in i + 1..right.len() {
            for shift in [1, 7, 13, 19, 25, 31] {
                let mut symbols = right.clone();
                for (place, by) in [(i, shift), (j, shift * 3 % 31 + 1)] {
                    let value = ALPHABET.iter().position(|&c| c == right[place]).unwrap();
                    symbols[place] = ALPHABET[(value + by) % 32];
                }
                let text = std::str::from_utf8(&symbols).unwrap();
                assert!(open_result_code(text).is_err(), "{text}");
                tried += 1;
            }
        }
    }
    assert!(tried > 8000, "{tried}");
}
