//! What names and labels must not hold.

/// The text as it is kept where several lines are welcome: each line without control
/// characters and marks that turn the direction of writing, tabs as spaces, at most
/// `most_chars` characters in all.
///
/// ```
/// use noseward_stability::cleaned_lines;
///
/// assert_eq!(cleaned_lines("It\twobbled.\r\nThen not.\u{7}", 30), "It wobbled.\nThen not.");
/// assert_eq!(cleaned_lines("tail first", 4), "tail");
/// ```
#[must_use]
pub fn cleaned_lines(text: &str, most_chars: usize) -> String {
    let ends = with_short_ends(text).map(|c| if c == '\r' { '\n' } else { c });
    let unified: String = ends.collect();
    let lines = unified.split('\n').map(|line| {
        let mut line = line.to_owned();
        clean(&mut line);
        line
    });
    lines.collect::<Vec<_>>().join("\n").chars().take(most_chars).collect()
}

/// The text with its first letter as a capital, if that is one of A to Z.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}

/// Takes control characters out of a text; tabs and line breaks become spaces.
pub(super) fn clean(text: &mut String) {
    if !text.contains(|c| is_break(c) || is_control(c)) {
        return;
    }
    *text = with_short_ends(text)
        .filter_map(|c| match c {
            _ if is_break(c) => Some(' '),
            _ if is_control(c) => None,
            _ => Some(c),
        })
        .collect();
}

/// A text in which no end of a line takes two characters.
fn with_short_ends(text: &str) -> impl Iterator<Item = char> {
    let mut last = ' ';
    text.chars().filter(move |&c| (std::mem::replace(&mut last, c), c) != ('\r', '\n'))
}

fn is_break(c: char) -> bool {
    matches!(c, '\t' | '\n' | '\r' | '\u{85}' | '\u{2028}' | '\u{2029}')
}

fn is_control(c: char) -> bool {
    let turns = matches!(
        c,
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}'
    );
    c.is_control() || turns || c == '\u{feff}'
}

#[cfg(test)]
mod tests {
    use crate::{Design, Weight};

    fn cleaned(text: &str) -> String {
        let weight = Weight { label: text.into(), ..Weight::default() };
        let design =
            Design { name: text.into(), weights: vec![weight], ..Design::default() };
        let design = design.rounded();
        assert_eq!(design.name, design.weights[0].label);
        design.name
    }

    #[test]
    fn every_listed_character_is_taken_out() {
        let listed = [
            0x00..=0x1f,
            0x7f..=0x9f,
            0x61c..=0x61c,
            0x200e..=0x200f,
            0x2028..=0x202e,
            0x2066..=0x2069,
            0xfeff..=0xfeff,
        ];
        for c in listed.into_iter().flatten().filter_map(char::from_u32) {
            let text = cleaned(&format!("a{c}b"));
            assert!(text == "ab" || text == "a b", "{c:?}: {text:?}");
        }
    }

    #[test]
    fn a_capital_is_one_of_a_to_z() {
        for (text, with) in [("fins", "Fins"), ("", ""), ("möwe", "Möwe"), ("éa", "éa")]
        {
            assert_eq!(super::capital(text), with);
        }
    }

    #[test]
    fn a_break_is_one_space() {
        assert_eq!(cleaned("a\tb\nc\rd\r\ne\u{2028}f"), "a b c d e f");
        assert_eq!(cleaned("\u{feff}a\u{202e}b\u{7}\u{0}c"), "abc");
    }

    #[test]
    fn what_people_write_stays() {
        // The third joins its signs by U+200D.
        for text in ["", " Tern 2 ", "👩\u{200d}🚀", "Möwe ½", "海鸥", "שחף", "नाक"]
        {
            assert_eq!(cleaned(text), text);
        }
    }
}
