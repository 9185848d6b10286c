//! What can be marked within a sentence.

use crate::code::FIRST_MARK;

/// A mark within a sentence. What it looks like, and where a link leads, the view knows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mark {
    /// `<b>`: said with weight.
    Strong,
    /// `<link>`: leads somewhere.
    Link,
    /// `<link2>`: leads somewhere else.
    SecondLink,
    /// `<button>`: does something.
    Button,
    /// `<key>`: a key of the keyboard.
    Key,
    /// `<value>`: a figure.
    Value,
    /// `<aside>`: what a narrow screen can do without.
    Aside,
}

impl Mark {
    /// All marks, in the order of their codes.
    pub(crate) const ALL: [Self; 7] = [
        Self::Strong,
        Self::Link,
        Self::SecondLink,
        Self::Button,
        Self::Key,
        Self::Value,
        Self::Aside,
    ];

    /// The mark that this code begins; `None` for any other.
    pub(crate) fn of(code: u8) -> Option<Self> {
        Self::ALL.get(usize::from(code.wrapping_sub(FIRST_MARK))).copied()
    }
}
