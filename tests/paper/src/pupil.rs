//! The sheets that pupils use.

use noseward_drawing::paper::{Page, PaperSize};
use noseward_drawing::sheets;
use noseward_lesson::{Level, SetUp, Statement, example_class};
use noseward_stability::Units;
use noseward_words as words;

const ADDRESS: &str = "https://rockets.example/noseward/";
/// A code as long as one of a set-up.
const CODE: &str = "S1M8 8FNG TJ64 0027 G30N\n00G0 0G02 3ZG6 K0H0 000S\nQK80 ZR80 GY";

/// What all symbols of these sheets say.
#[must_use]
pub fn symbol_words() -> String {
    format!("{ADDRESS}#{}", CODE.split_whitespace().collect::<String>())
}

pub(crate) fn record(size: PaperSize) -> Vec<Page> {
    sheets::record(size, Level::Measure, Units::METRIC)
}

pub(crate) fn results(size: PaperSize) -> Vec<Page> {
    sheets::results(size, Units::METRIC)
}

pub(crate) fn blank_charts(size: PaperSize) -> Vec<Page> {
    sheets::blank_charts(size, Units::METRIC)
}

pub(crate) fn report(size: PaperSize) -> Vec<Page> {
    let mut notebook = example_class().swap_remove(10);
    let claim = notebook.conclusion.text_mut(Statement::Claim);
    *claim = "With more clay in the nose it flew nose first: −3 mm became 5 mm.".into();
    let of = sheets::GroupReport {
        notebook: &notebook,
        units: Units::METRIC,
        address: Some(ADDRESS),
        rules: Some("K7Q0"),
        code: Some(CODE),
        changed: |_| "mass of the weight".into(),
    };
    sheets::report(size, &of)
}

pub(crate) fn word_mat(size: PaperSize) -> Vec<Page> {
    let terms = [
        (words::term_nose(), words::means_nose(), "r;aM25 18C25 10 28 5 32 3Z"),
        (words::term_middle(), words::means_middle(), "s;dM13 30h0;lM29 5V18"),
        (words::term_ballast(), words::means_ballast(), "b;mM4 40a5 5 0 1 0 10 0"),
    ];
    let terms =
        terms.map(|(name, means, picture)| sheets::MatTerm { name, means, picture });
    sheets::word_mat(size, &terms)
}

pub(crate) fn labels(size: PaperSize) -> Vec<Page> {
    sheets::labels(size, &SetUp::default(), Some(ADDRESS), "K7Q0", &|_| CODE.to_owned())
}
