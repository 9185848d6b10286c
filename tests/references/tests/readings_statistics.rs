//! What ruler readings come to: middle value, range, separation, and whether the ranges of
//! the two points overlap.
//!
//! Compared with `tests/fixtures/readings.json`, which `make_readings.py` works out with
//! numpy (`median` and `ptp`) from readings at random scales, from either end.

use noseward_lesson::{BalancePoint, End, Measurements};
use noseward_references_tests::assert_within;
use serde::Deserialize;

const READINGS: &str = include_str!("../../fixtures/readings.json");

/// How closely they agree, in millimetres: the file keeps 13 digits of up to 900 mm.
const SAME_MM: f64 = 1e-9;

#[derive(Deserialize)]
struct File {
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    length_mm: f64,
    length_was_measured: bool,
    cutout_length_mm: Option<f64>,
    mass: Read,
    pressure: Read,
    separation_mm: f64,
    overlaps: bool,
}

#[derive(Deserialize)]
struct Read {
    from: End,
    mm: Vec<f64>,
    middle_mm: f64,
    range_mm: f64,
}

/// The readings of a case, and the length of the design that goes with them: a length that
/// was measured goes before it.
fn measured(case: &Case) -> (Measurements, f64) {
    let mut measured = Measurements {
        cutout_length_mm: case.cutout_length_mm,
        ..Measurements::default()
    };
    let mut design_length_mm = case.length_mm;
    if case.length_was_measured {
        measured.rocket_length_mm = Some(case.length_mm);
        design_length_mm = 1.1 * case.length_mm;
    }
    for (point, read) in
        [(BalancePoint::Mass, &case.mass), (BalancePoint::Pressure, &case.pressure)]
    {
        let readings = measured.of_mut(point);
        readings.from = read.from;
        for (place, mm) in readings.mm.iter_mut().zip(&read.mm) {
            *place = Some(*mm);
        }
    }
    (measured, design_length_mm)
}

#[test]
fn readings_come_to_what_numpy_says() {
    let file: File = serde_json::from_str(READINGS).expect("as the script writes it");
    assert_eq!(file.cases.len(), 60);
    for (i, case) in file.cases.iter().enumerate() {
        let (measured, length_mm) = measured(case);
        for (point, read) in
            [(BalancePoint::Mass, &case.mass), (BalancePoint::Pressure, &case.pressure)]
        {
            let what = format!("case {i}, {point:?}");
            let middle = measured.middle(point, length_mm).expect("there are readings");
            assert_within(&what, middle.middle_mm, read.middle_mm, SAME_MM);
            assert_within(&what, middle.range_mm(), read.range_mm, SAME_MM);
            assert_eq!(middle.count, read.mm.len(), "{what}");
        }
        let separation = measured.separation_mm(length_mm).expect("both were measured");
        let what = format!("case {i}, separation");
        assert_within(&what, separation, case.separation_mm, SAME_MM);
        assert_eq!(measured.overlaps(length_mm), Some(case.overlaps), "case {i}");
    }
}

/// The file has what it should try: each number of readings, both ends, cut-outs of other
/// sizes, and both answers.
#[test]
fn the_cases_are_of_every_kind() {
    let file: File = serde_json::from_str(READINGS).expect("as the script writes it");
    let count = |is: &dyn Fn(&Case) -> bool| file.cases.iter().filter(|c| is(c)).count();
    for readings in 1..=3 {
        assert!(count(&|case| case.mass.mm.len() == readings) > 5);
        assert!(count(&|case| case.pressure.mm.len() == readings) > 5);
    }
    assert!(count(&|case| case.mass.from == End::Tail) > 5);
    assert!(count(&|case| case.pressure.from == End::Tail) > 5);
    assert!(count(&|case| case.cutout_length_mm.is_some()) > 5);
    assert!(count(&|case| case.length_was_measured) > 5);
    assert!(count(&|case| case.overlaps) > 5);
    assert!(count(&|case| !case.overlaps) > 5);
}
