//! A sentence without arguments.

use std::borrow::Cow;
use std::fmt;
use std::ops::Deref;

use crate::say::{Sentence, plain};

/// A sentence without arguments, in whatever language is in use when it is looked at.
///
/// It is one pointer, which costs the page less than a `&str` wherever a sentence is said, and
/// a constant, so that tables can hold it. What it says lives as long as the program, in every
/// language: [`Text::as_str`].
#[derive(Clone, Copy)]
pub struct Text(pub(crate) &'static Sentence);

impl Text {
    /// What it says now.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        plain(self.0)
    }
}

impl Deref for Text {
    type Target = str;

    fn deref(&self) -> &str {
        self.as_str()
    }
}

impl AsRef<str> for Text {
    fn as_ref(&self) -> &str {
        self
    }
}

impl fmt::Display for Text {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self)
    }
}

impl fmt::Debug for Text {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.as_str(), f)
    }
}

/// Two are the same that say the same.
impl PartialEq for Text {
    fn eq(&self, other: &Self) -> bool {
        self.as_str() == other.as_str()
    }
}

impl Eq for Text {}

impl PartialEq<str> for Text {
    fn eq(&self, other: &str) -> bool {
        self.as_str() == other
    }
}

impl PartialEq<&str> for Text {
    fn eq(&self, other: &&str) -> bool {
        self.as_str() == *other
    }
}

impl From<Text> for &'static str {
    fn from(text: Text) -> Self {
        text.as_str()
    }
}

impl From<Text> for Cow<'static, str> {
    fn from(text: Text) -> Self {
        Cow::Borrowed(text.as_str())
    }
}

impl From<Text> for String {
    #[inline(always)]
    fn from(text: Text) -> Self {
        owned(text.0)
    }
}

#[inline(never)]
fn owned(sentence: &'static Sentence) -> String {
    (*plain(sentence)).to_owned()
}

/// One call where it stands in markup.
#[cfg(feature = "maud")]
impl maud::Render for Text {
    #[inline(always)]
    fn render_to(&self, buffer: &mut String) {
        render(self.0, buffer);
    }
}

#[cfg(feature = "maud")]
#[inline(never)]
fn render(sentence: &'static Sentence, buffer: &mut String) {
    maud::Render::render_to(plain(sentence), buffer);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::faults_body;

    #[test]
    fn a_text_is_what_it_says() {
        const BODY: Text = faults_body();
        assert_eq!(BODY, "Body");
        assert_eq!(BODY, *"Body");
        assert_eq!(BODY, faults_body());
        assert_ne!(BODY, crate::faults_fins());
        assert_eq!(BODY.len(), 4);
        assert_eq!(format!("{BODY:>6} {BODY:?}"), "  Body \"Body\"");
        assert_eq!(<&str>::from(BODY), "Body");
        assert_eq!(String::from(BODY), "Body");
        assert_eq!(Cow::from(BODY), "Body");
    }
}
