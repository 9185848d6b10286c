//! How sheets say what the page says with marks in it.

use noseward_words::{self as words, Mark, Marked};

/// A sentence as it is printed: what is only spoken is left out, and a group’s own words stand
/// in quotation marks.
#[must_use]
pub(super) fn printed(sentence: &Marked) -> String {
    let (open, close) = match words::language().key {
        "de" => ("„", "“"),
        "ar" => ("«", "»"),
        _ => ("“", "”"),
    };
    let run = |(mark, run): (Option<Mark>, &str)| match mark {
        Some(Mark::Aside) => String::new(),
        Some(Mark::Value) => format!("{open}{run}{close}"),
        _ => run.to_owned(),
    };
    sentence.runs().map(run).collect()
}
