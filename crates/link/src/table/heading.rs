//! The heading of a column: words in any language, and the key behind them.

/// The heading of the column with a key: the key in brackets behind the words, or alone.
pub(super) fn written(key: &str, words: &str) -> String {
    if words.is_empty() { key.to_owned() } else { format!("{words} [{key}]") }
}

/// Whether a heading is that of the column with a key, in any case.
pub(crate) fn has_key(heading: &str, key: &str) -> bool {
    key_of(heading).eq_ignore_ascii_case(key)
}

/// What stands in the brackets at the end of a heading, or all of it where there are none.
fn key_of(heading: &str) -> &str {
    let heading = heading.trim();
    let bracketed = heading.strip_suffix(']').and_then(|front| front.rsplit_once('['));
    bracketed.map_or(heading, |(_, key)| key.trim())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_heading_is_known_by_its_key_alone() {
        for words in
            ["", "Level", "Länge [mm]", "طول الصاروخ (mm)", "level]", "[", "a, b; c"]
        {
            let heading = written("level", words);
            assert!(has_key(&heading, "level"), "{heading}");
            assert!(has_key(&heading.to_uppercase(), "level"), "{heading}");
            assert!(!has_key(&heading, "help"), "{heading}");
        }
        for heading in ["level", " LEVEL ", "[level]", "Was wir zeigen [ level ] "] {
            assert!(has_key(heading, "level"), "{heading}");
        }
        for heading in
            ["", "Level of detail", "level []", "[level] of detail", "level [x]"]
        {
            assert!(!has_key(heading, "level"), "{heading}");
        }
    }
}
