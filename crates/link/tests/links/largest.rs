//! The largest record without a fault that stops it, and what a link takes.

use crate::notebooks;
use noseward_lesson::{MOST_OUTCOMES, Record, SwingOutcome, Swings};
use noseward_link::{
    NOTEBOOK_BYTES, Opened, code, compact, hash, notebook_hash, notebook_parts,
    open_code, open_hash, open_notebook_file, to_notebook_file,
};
use noseward_stability::{
    BottleSize, Design, Example, FinSet, Mass, Measured, Planform, Problem, Quantity,
    Section, SectionKind, Severity, SwingField, SwingSetup, Weight, check, limits,
};

/// Characters of a link with its `#`.
fn length(record: &Record) -> usize {
    hash(record).len() + "#".len()
}

/// Twelve corners there and, a little further forward, twelve back, each as far from the
/// last as a fin allows. The edges do not cross: both ways only ever climb, or descend,
/// and keep their distance. The last edge between the two ways lies on the body.
fn zigzag() -> Planform {
    let reach = limits::FIN_REACH_MM;
    let half = limits::FIN_POINTS.1 / 2;
    let corner = |k: usize, forward: f64| {
        let along = if k.is_multiple_of(2) { -reach + 10.0 } else { reach };
        let down = reach / (half - 1) as f64;
        [along - forward, Quantity::Length.rounded(reach - down * k as f64)]
    };
    let there = (0..half).map(|k| corner(k, 0.0));
    let back = (0..half).rev().map(|k| corner(k, 10.0));
    Planform::PointsMm(there.chain(back).collect())
}

fn largest() -> Design {
    let mass = Mass::WeighedG(limits::MASS_G);
    let section = Section {
        kind: SectionKind::Tube,
        length_mm: limits::LENGTH_MM,
        diameter_mm: Some(limits::DIAMETER_MM.1),
        closed_front: true,
        mass,
    };
    let set = FinSet {
        count: limits::FIN_COUNT.1,
        start_mm: limits::LENGTH_MM,
        roll_deg: -360.0,
        planform: zigzag(),
        mass,
    };
    let weight = |label: &str| Weight {
        label: label.into(),
        mass_g: limits::MASS_G,
        position_mm: limits::LENGTH_MM,
    };
    let mut weights = vec![weight(""); limits::WEIGHTS];
    let mut left = limits::TEXT_BYTES - 4 * limits::LABEL_CHARS;
    for weight in &mut weights {
        let letters = left.min(limits::LABEL_CHARS);
        weight.label = "a".repeat(letters);
        left -= letters;
    }
    Design {
        name: "🚀".repeat(limits::LABEL_CHARS),
        sections: vec![section; limits::SECTIONS],
        fins: vec![set; limits::FIN_SETS],
        weights,
        measured: Measured { total_mass_g: Some(limits::MASS_G) },
    }
}

#[test]
fn the_largest_design_fits() {
    let design = largest();
    let stops: Vec<_> = check(&design)
        .into_iter()
        .filter(|fault| fault.severity() == Severity::Stop)
        .collect();
    assert_eq!(stops, []);
    // Its text is as long as it may be, so one letter more is told.
    let mut longer = design.clone();
    longer.weights[11].label.push('a');
    assert!(check(&longer).iter().any(|fault| fault.problem == Problem::TextTooLong));

    // The sum in `FORMATS.md`, which takes the longest form of every value.
    let alone = Record::from(design);
    assert_fits(&alone, 982, 62, 1237);

    assert_fits(&swung(alone.design), 994, 63, 1253);
}

fn assert_fits(record: &Record, link: usize, rows: usize, symbols: usize) {
    assert_eq!(length(record), link);
    assert!(length(record) <= 1000);
    assert_eq!(open_hash(&hash(record)), Opened::Record(record.clone()));

    let code = code(record);
    assert_eq!(code.lines().count(), rows);
    assert_eq!(code.replace([' ', '\n'], "").len(), symbols);
    assert_eq!(open_code(&code), Ok(record.clone()));
}

#[test]
fn an_ordinary_design_is_short() {
    let examples = Example::ALL.map(|example| Record::from(example.design()));
    for example in &examples {
        assert!(length(example) < 116, "{}: {}", example.design.name, length(example));
    }
    let bottles = BottleSize::ALL.map(|size| Record::from(size.design()));
    assert_eq!(bottles.each_ref().map(length), [43; 6]);
    assert_eq!(length(&Record::default()), 16);
}

fn swung(design: Design) -> Record {
    let mut setup = SwingSetup::default();
    for field in SwingField::ALL {
        field.set(&mut setup, field.bounds().1);
    }
    let swings = Swings::new(setup, [SwingOutcome::Slipped; MOST_OUTCOMES]);
    Record { design, swings: swings.expect("no more than there can be") }
}

/// The sums in `FORMATS.md`.
#[test]
fn the_largest_notebook_fits_into_a_file() {
    let file = notebooks::largest(&swung(largest()));
    let text = to_notebook_file(&file);
    assert_eq!(text.len(), 902_794);
    assert!(text.len() < NOTEBOOK_BYTES);
    assert_eq!(open_notebook_file(&text), Ok(file.clone()));
    assert_eq!(notebook_hash(&file), None);
    assert_eq!(notebook_parts(&file), None);
}

#[test]
fn an_ordinary_notebook_is_short() {
    for (file, count, part, link) in
        [(notebooks::ordinary(), 7, 284, 1471), (notebooks::everything(), 4, 262, 775)]
    {
        let parts = notebook_parts(&file).unwrap();
        assert_eq!((parts.len(), compact(&parts[0]).len()), (count, part));
        assert_eq!(notebook_hash(&file).unwrap().len() + "#".len(), link);
    }
}
