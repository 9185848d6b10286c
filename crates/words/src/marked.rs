//! A sentence with marks in it.

use std::borrow::Cow;

use crate::code::{CLOSE, TEXT};
use crate::mark::Mark;

/// A sentence with marked runs in it, for a view to put into elements of its own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marked(pub(crate) Cow<'static, str>);

impl Marked {
    /// A sentence without arguments.
    #[inline(never)]
    pub(crate) fn plain(sentence: &'static str) -> Self {
        Self(Cow::Borrowed(sentence))
    }

    /// Its runs in order, each with its mark. No run is empty, and text from elsewhere
    /// brings no marks.
    #[must_use]
    pub fn runs(&self) -> Runs<'_> {
        Runs { rest: &self.0, mark: None }
    }

    /// Its text, without marks.
    #[must_use]
    pub fn text(&self) -> String {
        self.runs().map(|(_, run)| run).collect()
    }
}

/// The runs of a sentence: [`Marked::runs`].
#[derive(Clone, Debug)]
pub struct Runs<'a> {
    rest: &'a str,
    mark: Option<Mark>,
}

impl<'a> Iterator for Runs<'a> {
    type Item = (Option<Mark>, &'a str);

    fn next(&mut self) -> Option<Self::Item> {
        loop {
            let is_code = |byte: &u8| (CLOSE..TEXT).contains(byte);
            let bytes = self.rest.as_bytes();
            let length = bytes.iter().position(is_code).unwrap_or(bytes.len());
            if length > 0 {
                // Codes are ASCII, so that both are there.
                let run = self.rest.get(..length)?;
                self.rest = self.rest.get(length..)?;
                return Some((self.mark, run));
            }
            self.mark = Mark::of(*bytes.first()?);
            self.rest = self.rest.get(1..)?;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::crash_notebook;

    #[test]
    fn a_sentence_is_cut_where_its_marks_are() {
        let sentence = crash_notebook("Blue 3");
        let runs: Vec<_> = sentence.runs().collect();
        assert_eq!(
            runs,
            [
                (None, "The notebook of "),
                (Some(Mark::Strong), "Blue 3"),
                (None, " was open: "),
                (Some(Mark::Link), "save it as a file"),
                (
                    None,
                    ". Open that file here later, if the notebook is not there any more."
                ),
            ]
        );
        let all: String = runs.into_iter().map(|(_, run)| run).collect();
        assert_eq!(sentence.text(), all);
    }

    #[test]
    fn no_run_is_empty() {
        let sentence = Marked("\u{16}\u{15}\u{17}é\u{15}\u{1F}z".into());
        let runs: Vec<_> = sentence.runs().collect();
        assert_eq!(runs, [(Some(Mark::Link), "é"), (None, "z")]);
        assert_eq!(Marked("".into()).runs().next(), None);
    }
}
