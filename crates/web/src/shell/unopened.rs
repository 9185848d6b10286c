//! Why a link cannot be opened, or a file not even be read. What else cannot be opened is said
//! by whoever opens it.

use noseward_link::LinkErrorKind;
use noseward_words as words;

/// What is wrong with a link, and what to do about it.
pub(crate) fn link(kind: &LinkErrorKind) -> String {
    match kind {
        LinkErrorKind::TooLarge { .. } => words::unopened_too_long(),
        LinkErrorKind::Newer { .. } => words::unopened_newer(),
        LinkErrorKind::Unknown { key } => return words::unopened_unknown(key),
        LinkErrorKind::CutShort => words::unopened_cut_short(),
        _ => words::unopened_changed(),
    }
    .into()
}

/// A file of so many bytes is not opened at all.
pub(crate) fn file_too_large(bytes: usize) -> String {
    words::unopened_file_too_large((bytes / 1024).into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_fault_of_a_link_says_what_to_do() {
        for (kind, words) in [
            (
                LinkErrorKind::TooLarge { bytes: 70_000 },
                "This link is longer than any that this page makes. Copy it again from \
                 where it came from.",
            ),
            (
                LinkErrorKind::Newer { version: 9 },
                "This link was made by a newer version of this page. Reload the page, then \
                 open it again.",
            ),
            (
                LinkErrorKind::Unknown { key: "wings".into() },
                "This link has something that this version of the page does not know: \
                 “wings”. Reload the page, then open it again.",
            ),
            (
                LinkErrorKind::CutShort,
                "This link was cut short on its way. Copy the whole link and open it again.",
            ),
            (
                LinkErrorKind::Changed,
                "This link was changed on its way, so its numbers cannot be trusted. Copy it \
                 again from where it came from.",
            ),
        ] {
            assert_eq!(link(&kind), words);
        }
        assert_eq!(
            file_too_large(300 * 1024),
            "This file is too large to be a rocket (300 KB). Choose a file that this page \
             saved."
        );
    }
}
