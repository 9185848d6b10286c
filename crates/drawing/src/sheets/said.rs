//! How sheets say what the page says with marks in it.

use noseward_lesson::{BalancePoint, Statement};
use noseward_words::{self as words, Mark, Marked, Text};

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

/// A point as an argument of a sentence.
pub(super) fn point_in(point: BalancePoint) -> words::BalancePoint {
    match point {
        BalancePoint::Mass => words::BalancePoint::Mass,
        BalancePoint::Pressure => words::BalancePoint::Pressure,
    }
}

/// The question that a box of the conclusion asks.
pub(super) fn asked(statement: Statement) -> Text {
    match statement {
        Statement::Claim => words::conclude_claim(),
        Statement::Evidence => words::conclude_evidence(),
        Statement::Reason => words::conclude_reason(),
        Statement::Trust => words::conclude_trust(),
    }
}
