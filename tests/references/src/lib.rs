//! What the tests in `tests/` share: short ways to write a design and to read a table.
//!
//! The tests look at the stability crate from outside only. Each compares it with a
//! published value, with numbers worked out by another program (`tests/fixtures`), with
//! itself after a change that must not matter, or with what every class finds out.

use noseward_stability::{
    Body, Component, Design, Figures, FinSet, Mass, MassProperties, PartFigures,
    Planform, Section, SectionKind, evaluate,
};

/// A sheet of one kilogram a square metre: its mass is its area.
pub const UNIT_SHEET: Mass = Mass::SheetGPerM2(1000.0);

/// A section of unit sheet with a width of its own, in millimetres.
#[must_use]
pub fn section(kind: SectionKind, length_mm: f64, width_mm: f64) -> Section {
    Section {
        kind,
        length_mm,
        diameter_mm: Some(width_mm),
        closed_front: false,
        mass: UNIT_SHEET,
    }
}

/// A body of these sections and nothing else.
#[must_use]
pub fn bare(sections: Vec<Section>) -> Design {
    Design { sections, ..Design::default() }
}

/// A set of fins of unit sheet.
#[must_use]
pub fn fins(count: u32, start_mm: f64, planform: Planform) -> FinSet {
    FinSet { count, start_mm, roll_deg: 0.0, planform, mass: UNIT_SHEET }
}

/// A four-sided fin, in millimetres.
#[must_use]
pub fn four_sided(root_mm: f64, tip_mm: f64, span_mm: f64, sweep_mm: f64) -> Planform {
    Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm }
}

/// The figures of a design without faults that stop it.
///
/// # Panics
///
/// When a fault stops it.
#[must_use]
pub fn figures(design: &Design) -> Figures {
    let report = evaluate(design);
    report.figures.unwrap_or_else(|| panic!("stopped: {:?}", report.faults))
}

/// The figures of one part.
///
/// # Panics
///
/// When the design has no such part.
#[must_use]
pub fn part(design: &Design, part: Component) -> PartFigures {
    let found = figures(design).parts.into_iter().find(|p| p.part == part);
    found.unwrap_or_else(|| panic!("no part {part}"))
}

/// The mass properties of the first section.
#[must_use]
pub fn first_section(design: &Design) -> MassProperties {
    part(design, Component::Section(0)).mass
}

/// The body of a design.
///
/// # Panics
///
/// When it has none.
#[must_use]
pub fn body(design: &Design) -> Body {
    Body::new(design).expect("the design has a body")
}

/// Asserts that two numbers agree to a share of the expected one.
///
/// # Panics
///
/// When they do not, naming `what`.
#[track_caller]
pub fn assert_close(what: &str, found: f64, expected: f64, relative: f64) {
    assert_within(what, found, expected, relative * expected.abs());
}

/// Asserts that two numbers are at most `most` apart.
///
/// # Panics
///
/// When they are not, naming `what`.
#[track_caller]
pub fn assert_within(what: &str, found: f64, expected: f64, most: f64) {
    let off = (found - expected).abs();
    assert!(off <= most, "{what}: found {found:e}, expected {expected:e}, off {off:e}");
}

/// The rows of one of the tables in `data/`, below its line of column names. Lines that
/// start with `#` name the source.
///
/// # Panics
///
/// When the table cannot be read.
#[must_use]
pub fn table(text: &str) -> Vec<Vec<String>> {
    let mut reader =
        csv::ReaderBuilder::new().comment(Some(b'#')).from_reader(text.as_bytes());
    reader
        .records()
        .map(|row| row.expect("a row").iter().map(str::to_owned).collect())
        .collect()
}
