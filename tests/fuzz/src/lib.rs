//! What must hold for every record, and for every notebook, that was opened from anywhere.

mod class;
mod notebook;
mod picture;
mod spelling;

use std::borrow::Cow;

use noseward_drawing::{Item, LabelStyle, Point, Sheet, Told, rocket, svg_document};
use noseward_lesson::{Record, SwingOutcome, Swings};
use noseward_link::{
    LinkError, LinkErrorKind, Opened, code, hash, open_code, open_file, open_hash,
    to_file,
};
use noseward_stability::{
    Design, Fault, Field, Swing, SwingField, Units, check, evaluate,
};

pub use class::check_gathered;
pub use notebook::{
    NotebookInput, check_notebook, check_parts, check_result, check_set_up,
    notebook_input,
};
pub use picture::enlarged;
pub use spelling::{code_of, link_of, notebook_parts_of, payload, result_code_of};

/// Numbers up to this come out of a file as they went in, in millimetres and grams. Far
/// larger ones, which no check lets pass, may lose their last digit: the page reads JSON
/// without the table that would take.
const EXACT: f64 = 1e9;

/// What the bytes of a fuzzer stand for.
#[derive(Debug)]
pub enum Input<'a> {
    /// A text, as a person or a program might send it.
    Text(String),
    /// A payload, what stands behind the length, to be spelled with checksums that agree:
    /// random texts never have them.
    Payload(&'a [u8]),
}

/// Bytes that begin with 0 are a payload; all others are a text.
#[must_use]
pub fn input(bytes: &[u8]) -> Input<'_> {
    match bytes {
        [0, bytes @ ..] => Input::Payload(bytes),
        _ => Input::Text(String::from_utf8_lossy(bytes).into_owned()),
    }
}

/// Holds an error against what is promised of it: whoever reads it counts rows and lines
/// from 1.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_error(error: &LinkError) {
    use LinkErrorKind as Kind;
    let places = match &error.kind {
        Kind::Rows { rows } => {
            assert!(rows.is_sorted_by(|one, next| one < next), "{error:?}");
            rows.clone()
        }
        Kind::Swapped { rows: (one, other) } => vec![*one, *other],
        Kind::EndsEarly { row }
        | Kind::Character { row, .. }
        | Kind::TooFew { row }
        | Kind::TooMany { row }
        | Kind::MissingRow { row }
        | Kind::RowTwice { row } => vec![*row],
        Kind::EndsInLine { line }
        | Kind::Syntax { line, .. }
        | Kind::Content { line, .. } => {
            vec![*line]
        }
        Kind::Crowded { count, most, .. } => vec![count.saturating_sub(*most)],
        _ => return,
    };
    assert!(!places.is_empty() && !places.contains(&0), "{error:?}");
}

/// Holds a record against all that is promised of it.
///
/// # Panics
///
/// If a promise is broken: that is what the fuzzer looks for.
pub fn check_record(record: &Record) {
    check_spellings(record);
    check_swings(&record.swings);
    check_design(&record.design, &record.swings);
}

fn check_design(design: &Design, swings: &Swings) {
    for text in texts(design) {
        assert!(!text.contains(is_unwanted), "{text:?}");
    }
    let report = evaluate(design);
    let numbers = |fault: &Fault| fault.problem.values().0;
    let mut numbers = report.faults.iter().flat_map(numbers);
    assert!(numbers.all(|(_, number)| number.is_finite()));
    let Some(figures) = &report.figures else {
        assert!(!report.faults.is_empty(), "no figures, and no fault that says why");
        return;
    };
    let written = format!("{figures:?}");
    let numbers = written.split(|c: char| !c.is_ascii_alphanumeric());
    for word in numbers {
        assert!(word != "NaN" && word != "inf", "{written}");
    }
    if let Some(swing) = Swing::new(figures, &swings.setup) {
        assert!(swing.air_moment_n_m(1.0).is_finite());
        assert!(swing.spin_moment_n_m(1.0).is_finite());
    }
    for (width_px, height_px, labels) in
        [(240.0, 160.0, LabelStyle::Short), (900.0, 700.0, LabelStyle::Full)]
    {
        let told = Told::BOTH;
        let sheet = Sheet { width_px, height_px, units: Units::METRIC, labels, told };
        let scene = rocket(design, figures, &sheet).expect("figures need a body");
        for group in &scene.groups {
            check_items(&group.items);
        }
        assert!(svg_document(&scene, None).ends_with("</svg>"));
    }
}

/// What is written of a record opens as that record, in every spelling.
fn check_spellings(record: &Record) {
    let Opened::Record(kept) = open_hash(&hash(record)) else {
        panic!("a link that was just made does not open")
    };
    assert_eq!(kept.swings.outcomes(), record.swings.outcomes());
    // A file may hold more than a link has room for. What a link keeps, it keeps.
    assert_same(&open_hash(&hash(&kept)), &Opened::Record(kept.clone()));
    assert_same(&open_code(&code(record)), &Ok(kept.clone()));
    if largest(&kept).is_finite() {
        assert_same(&open_file(&to_file(&kept)), &Ok(kept));
    }
    if largest(record) <= EXACT {
        assert_same(&open_file(&to_file(record)), &Ok(record.clone()));
    } else if largest(record).is_finite() {
        let back = open_file(&to_file(record)).expect("a file that was just made");
        let fields = |record: &Record| {
            check(&record.design).iter().map(|fault| fault.field).collect()
        };
        let (before, after): (Vec<_>, Vec<_>) = (fields(record), fields(&back));
        assert_eq!(before, after);
    }
}

fn check_swings(swings: &Swings) {
    let counted: Vec<_> = swings.counted().collect();
    assert!(counted.len() <= 3 && swings.outcomes().len() <= 6);
    assert!(!counted.contains(&SwingOutcome::Slipped));
    let mut fewer = swings.clone();
    if let Some(last) = fewer.remove_last() {
        assert!(fewer.add(last), "no outcome stands behind the last that counts");
        assert_same(&fewer, swings);
    } else {
        assert_eq!(*swings, Swings::default());
    }
}

/// Equal, where one NaN is as good as another.
fn assert_same<T: std::fmt::Debug + PartialEq>(one: &T, other: &T) {
    if one != other {
        assert_eq!(format!("{one:?}"), format!("{other:?}"));
    }
}

/// The largest number of a record; NaN where one is.
fn largest(record: &Record) -> f64 {
    let design = &record.design;
    let numbers =
        Field::numbers(design).into_iter().filter_map(|field| field.get(design));
    let setup = SwingField::ALL.into_iter().map(|field| field.get(&record.swings.setup));
    numbers
        .chain(setup)
        .map(f64::abs)
        .fold(0.0, |most, size| if size.is_nan() || size > most { size } else { most })
}

fn texts(design: &Design) -> impl Iterator<Item = Cow<'_, str>> {
    let labels = design.weights.iter().map(|weight| Cow::from(weight.label.as_str()));
    labels.chain([Cow::from(design.name.as_str())])
}

/// The list that `FORMATS.md` refers to, written out once more.
fn is_unwanted(c: char) -> bool {
    matches!(
        u32::from(c),
        0x00..=0x1f
            | 0x7f..=0x9f
            | 0x61c
            | 0x200e
            | 0x200f
            | 0x2028..=0x202e
            | 0x2066..=0x2069
            | 0xfeff
    )
}

fn check_items(items: &[Item]) {
    let finite = |point: &Point| assert!(point.x.is_finite() && point.y.is_finite());
    for item in items {
        match item {
            Item::Path { path, .. } => {
                path.runs.iter().flat_map(|(points, _)| points).for_each(finite);
            }
            Item::Dot { centre, radius, .. } => {
                finite(centre);
                assert!(radius.is_finite());
            }
            Item::Text { at, .. } => finite(at),
            Item::Part { items, .. } => check_items(items),
            Item::Placed { at, scale, turned_deg, scene } => {
                finite(at);
                assert!(scale.is_finite() && turned_deg.is_finite());
                scene.groups.iter().for_each(|group| check_items(&group.items));
            }
            Item::Grip { at, apart_px, half_px } => {
                finite(at);
                assert!(apart_px.is_finite() && half_px.is_finite());
            }
        }
    }
}
