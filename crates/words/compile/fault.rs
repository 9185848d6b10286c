//! What is wrong with a file, and what to do about it.

use std::fmt;

use super::Source;

/// A fault at a line of a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Fault {
    place: String,
    what: String,
    help: String,
}

impl Fault {
    /// A fault at a line of this file, counted from 1.
    pub(crate) fn new(source: &Source, line: usize, what: &str, help: &str) -> Self {
        let place = format!("languages/{}/{}:{line}", source.language, source.file);
        Self { place, what: what.into(), help: help.into() }
    }

    /// A fault of what is known of a language.
    pub(crate) fn of_language(key: &str, what: &str) -> Self {
        Self {
            place: "src/languages.rs".into(),
            what: format!("{key}: {what}"),
            help: "see compile/plurals.rs and compile/numbers.rs".into(),
        }
    }
}

impl fmt::Display for Fault {
    /// On one line, as cargo wants it.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}: {}", self.place, self.what, self.help)
    }
}
