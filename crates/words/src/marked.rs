//! A sentence with marks in it.

use std::borrow::Cow;

use crate::code::{CLOSE, TEXT};
use crate::mark::Mark;
use crate::say::{Sentence, plain};

/// A sentence with marked runs in it, for a view to put into elements of its own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marked(pub(crate) Cow<'static, str>);

impl Marked {
    /// A sentence without arguments.
    #[inline(never)]
    pub(crate) fn plain(sentence: &'static Sentence) -> Self {
        Self(Cow::Borrowed(plain(sentence)))
    }

    /// Its runs in order, each with its mark. No run is empty, and text from elsewhere
    /// brings no marks.
    #[must_use]
    pub fn runs(&self) -> Runs<'_> {
        Runs { rest: self.0.as_bytes(), mark: None }
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
    rest: &'a [u8],
    mark: Option<Mark>,
}

impl<'a> Iterator for Runs<'a> {
    type Item = (Option<Mark>, &'a str);

    fn next(&mut self) -> Option<Self::Item> {
        let is_code = |byte: &u8| (CLOSE..TEXT).contains(byte);
        while let Some((code, rest)) = self.rest.split_first().filter(|(b, _)| is_code(b))
        {
            self.mark = Mark::of(*code);
            self.rest = rest;
        }
        let length = self.rest.iter().position(is_code).unwrap_or(self.rest.len());
        let (run, rest) = self.rest.split_at_checked(length)?;
        self.rest = rest;
        // Codes are ASCII, so that what stands between them is text.
        let run = std::str::from_utf8(run).unwrap_or_default();
        (!run.is_empty()).then_some((self.mark, run))
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
