//! A text of any origin, told apart: a rocket, a notebook in any spelling, a result.

use noseward_lesson::TrialResult;

use crate::class::set_up::{self, SetUpLink, open_set_up};
use crate::code::{self, begins_with_right_row, looks_like, looks_like_code};
use crate::error::LinkError;
use crate::link::{is_link, is_long_link_of};
use crate::notebook::NotebookFile;
use crate::notebook::file::{MARK, open_notebook_file};
use crate::notebook::link::open_notebook_hash;
use crate::notebook::parts::{self, QrSegments};
use crate::result::{self, open_result_code};
use crate::text::{Text, open_text};

/// Bytes at the front of a file that are looked at.
const FRONT: usize = 1000;
/// Characters of base64url that make `n1.` a link rather than the number of a paragraph.
const LINK_CHARS: usize = 12;

/// What a text turned out to hold.
#[derive(Clone, Debug, PartialEq)]
pub enum Any {
    /// What [`open_text`] makes of it: a rocket.
    Rocket(Text),
    /// A notebook, from a file or a link.
    Notebook(NotebookFile),
    /// One or several parts of a notebook, perhaps all of them.
    Parts(QrSegments),
    /// What one trial came to.
    Result(TrialResult),
    /// How a lesson is set up.
    SetUp(Box<SetUpLink>),
}

/// What begins somewhere in a text.
enum Beginning<'a> {
    Rocket,
    Other(Spelled<'a>),
}

/// A spelling of something other than a rocket.
enum Spelled<'a> {
    File,
    NotebookLink(&'a str),
    Parts,
    Result(&'a str),
    SetUp(&'a str),
}

/// Whether what stands behind `#` in an address may be anything but one link to a rocket, or a
/// place in the page. One look at its letters: [`looks_like_notebook`] tells more.
#[must_use]
pub fn may_be_more(hash: &str) -> bool {
    /// No code is shorter.
    const SHORT: usize = 8;
    /// Of what is no rocket.
    const BEGINNINGS: [char; 6] = ['n', 'N', 't', 'T', 's', 'S'];
    let text = hash.strip_prefix('#').unwrap_or(hash);
    let is_one = text.chars().all(is_within);
    !is_one || text.len() >= SHORT && text.starts_with(BEGINNINGS)
}

/// Whether [`open_any`] rather than [`open_text`] is for this text. A glance: nothing is
/// opened, and it may still turn out to be damaged.
///
/// Of a text that holds several links or codes, the first counts.
#[must_use]
pub fn looks_like_notebook(text: &str) -> bool {
    spelled(text).is_some()
}

/// Opens a text that may be anything this crate writes: a notebook file, a link to a
/// notebook or a trial, parts of a notebook, the code of a result, a set-up, or else what
/// [`open_text`] opens.
///
/// # Errors
///
/// [`LinkError`]: that of the reader that the text was for.
pub fn open_any(text: &str) -> Result<Any, LinkError> {
    Ok(match spelled(text) {
        None => Any::Rocket(open_text(text)?),
        Some(Spelled::File) => Any::Notebook(open_notebook_file(text)?),
        Some(Spelled::NotebookLink(link)) => match open_notebook_hash(link) {
            Some(opened) => Any::Notebook(opened?),
            None => Any::Rocket(open_text(text)?),
        },
        Some(Spelled::Parts) => {
            let mut parts = QrSegments::default();
            parts.add(text)?;
            Any::Parts(parts)
        }
        Some(Spelled::Result(code)) => Any::Result(open_result_code(code)?),
        Some(Spelled::SetUp(text)) => Any::SetUp(Box::new(open_set_up(text)?)),
    })
}

/// Whether a character in front of another makes that one no beginning: links are made of
/// these, and so are addresses.
pub(crate) fn is_within(c: char) -> bool {
    c.is_ascii_alphanumeric()
        || matches!(c, '-' | '_' | '.' | '%' | '/' | '=' | '&' | '+')
}

/// What the first beginning of anything in a text is; `None` for a rocket's, or where
/// there is none.
fn spelled(text: &str) -> Option<Spelled<'_>> {
    let start = text.strip_prefix('\u{feff}').unwrap_or(text).trim_start();
    if start.starts_with('{') {
        return is_notebook_json(start).then_some(Spelled::File);
    }
    // Each beginning costs little: no more than a row of the text is looked at.
    match beginnings(text).find_map(|i| beginning(&text[i..]))? {
        Beginning::Rocket => None,
        Beginning::Other(spelled) => Some(spelled),
    }
}

/// The places in a text at which something may begin.
fn beginnings(text: &str) -> impl Iterator<Item = usize> {
    let mut within = false;
    text.char_indices().filter_map(move |(i, c)| {
        let begins =
            !within && matches!(c, 'N' | 'n' | 'R' | 'r' | 'S' | 's' | 'T' | 't');
        within = is_within(c);
        begins.then_some(i)
    })
}

/// What begins at the front of a text.
fn beginning(text: &str) -> Option<Beginning<'_>> {
    Some(if is_link(text) || looks_like_code(text) {
        Beginning::Rocket
    } else if is_long_link_of(b'n', text, LINK_CHARS) {
        Beginning::Other(Spelled::NotebookLink(text))
    } else if looks_like(parts::KIND, text) {
        Beginning::Other(Spelled::Parts)
    } else if looks_like(result::KIND, text) {
        Beginning::Other(Spelled::Result(text))
    } else if is_long_link_of(b's', text, LINK_CHARS) || looks_like(set_up::KIND, text) {
        Beginning::Other(Spelled::SetUp(text))
    } else {
        return None;
    })
}

/// The things that a text holds, each from its beginning to the next: links and codes of
/// rockets, notebooks, parts and results. A file is one; of other texts there is none.
///
/// The first begins where [`open_any`] finds it. A code further down counts where it begins
/// a line and its first row is right: groups of a code may look like the beginning of one.
#[must_use]
pub fn pieces(text: &str) -> Vec<&str> {
    let start = text.strip_prefix('\u{feff}').unwrap_or(text).trim_start();
    if start.starts_with('{') {
        return vec![text];
    }
    let mut starts = Vec::new();
    for i in beginnings(text) {
        let (before, rest) = text.split_at(i);
        let begins = if starts.is_empty() {
            beginning(rest).is_some()
        } else {
            begins_again(before, rest)
        };
        if begins {
            starts.push(i);
        }
    }
    let ends = starts.iter().skip(1).copied().chain([text.len()]);
    starts.iter().zip(ends).map(|(&start, end)| &text[start..end]).collect()
}

/// Whether something begins behind other things, beyond doubt.
fn begins_again(before: &str, rest: &str) -> bool {
    let begins_line = before.trim_end_matches([' ', '\t']).ends_with(['\n', '\r']);
    is_long_link_of(b'r', rest, LINK_CHARS)
        || is_long_link_of(b'n', rest, LINK_CHARS)
        || is_long_link_of(b's', rest, LINK_CHARS)
        || begins_line && begins_code(rest)
}

/// Whether a text begins with the first row of a code, and that row is right.
pub(crate) fn begins_code(text: &str) -> bool {
    let kinds = [code::KIND, parts::KIND, result::KIND, set_up::KIND];
    kinds.into_iter().any(|kind| begins_with_right_row(kind, text))
}

/// Whether `"noseward"` near the front is followed by `"notebook"`.
fn is_notebook_json(text: &str) -> bool {
    let front = &text[..text.floor_char_boundary(FRONT)];
    let value = front.split_once("\"noseward\"").map_or("", |(_, behind)| behind);
    let value = value.trim_start().strip_prefix(':').unwrap_or_default().trim_start();
    let value = value.strip_prefix('"').and_then(|value| value.strip_prefix(MARK));
    value.is_some_and(|behind| behind.starts_with('"'))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{hash, looks_like_table};
    use noseward_stability::Example;
    use proptest::prelude::*;

    #[test]
    fn a_rocket_and_a_place_in_the_page_are_no_more() {
        for example in Example::ALL {
            let hash = hash(&example.design().into());
            assert!(!may_be_more(&hash) && !may_be_more(&format!("#{hash}")));
        }
        for place in ["", "#", "#place-title", "#tools", "#notes"] {
            assert!(!may_be_more(place), "{place}");
        }
    }

    proptest! {
        /// Letters that codes and links begin with, and what stands between them.
        #[test]
        fn whatever_is_more_may_be_more(text in "([nNrRsStT1][0-9A-Za-z_-]{0,30}[ ,#.\n]{0,2}){1,3}") {
            let is_more = looks_like_notebook(&text)
                || looks_like_table(&text)
                || pieces(&text).len() > 1;
            prop_assert!(!is_more || may_be_more(&text), "{text}");
        }
    }
}
