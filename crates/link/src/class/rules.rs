//! The code of a lesson's rules as four letters.

use noseward_lesson::{RULES_BITS, RulesCode};

use crate::code::symbols::{letter, symbol};

/// Letters of a code, five bits each.
const LETTERS: u32 = RULES_BITS / 5;

/// Four of the letters and digits of codes, such as `K7QX`.
#[must_use]
pub fn rules_text(rules: RulesCode) -> String {
    let value = |i: u32| rules.value() >> (RULES_BITS - 5 * (i + 1)) & 31;
    (0..LETTERS).map(|i| letter(u8::try_from(value(i)).unwrap_or(0))).collect()
}

/// The code of four letters, typed as those of all codes are; `None` for anything else.
#[must_use]
pub fn rules_of_text(text: &str) -> Option<RulesCode> {
    let (mut value, mut count) = (0, 0);
    for slot in text.chars().filter_map(symbol) {
        count += 1;
        if count > LETTERS {
            return None;
        }
        value = value << 5 | u32::from(slot.ok()?);
    }
    RulesCode::new(value).filter(|_| count == LETTERS)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn four_letters_there_and_back() {
        for value in (0..1 << RULES_BITS).step_by(97) {
            let rules = RulesCode::new(value).unwrap();
            let text = rules_text(rules);
            assert_eq!(text.len(), 4);
            assert_eq!(rules_of_text(&text), Some(rules));
            assert_eq!(rules_of_text(&format!(" {} ", text.to_lowercase())), Some(rules));
        }
        assert_eq!(rules_text(RulesCode::new(0x1_2345).unwrap()), "28T5");
        assert_eq!(rules_of_text("28TO"), rules_of_text("28T0"));
        for bad in ["", "28T", "28T5X", "28T!", "28U5"] {
            assert_eq!(rules_of_text(bad), None, "{bad}");
        }
    }
}
