//! The numbers that stand for colours, levels and kinds of help. They are the format: none
//! is ever changed, or given to something else.

use noseward_lesson::{Colour, Level, Support};

pub(super) fn colour_code(colour: Colour) -> u8 {
    match colour {
        Colour::Red => 0,
        Colour::Orange => 1,
        Colour::Yellow => 2,
        Colour::Green => 3,
        Colour::Blue => 4,
        Colour::Purple => 5,
        Colour::Brown => 6,
        Colour::Black => 7,
        Colour::Grey => 8,
        Colour::White => 9,
        Colour::Silver => 10,
        Colour::Gold => 11,
    }
}

pub(super) fn colour(code: u8) -> Option<Colour> {
    Colour::ALL.into_iter().find(|&colour| colour_code(colour) == code)
}

pub(super) fn level_code(level: Level) -> u8 {
    match level {
        Level::Balance => 0,
        Level::Measure => 1,
        Level::Explain => 2,
        Level::Model => 3,
    }
}

pub(super) fn level(code: u8) -> Option<Level> {
    Level::ALL.into_iter().find(|&level| level_code(level) == code)
}

pub(super) fn support_code(support: Support) -> u8 {
    match support {
        Support::Sentences => 0,
        Support::Questions => 1,
        Support::None => 2,
    }
}

pub(super) fn support(code: u8) -> Option<Support> {
    Support::ALL.into_iter().find(|&support| support_code(support) == code)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde::Serialize;

    fn pinned<T: Serialize>(read: fn(u8) -> Option<T>, names: &[&str]) {
        for code in 0..=u8::MAX {
            let found = read(code).map(|found| serde_json::to_value(found).unwrap());
            let name = names.get(usize::from(code)).map(|&name| name.into());
            assert_eq!(found, name, "{code}");
        }
    }

    #[test]
    fn every_number_is_pinned() {
        pinned(
            colour,
            &[
                "red", "orange", "yellow", "green", "blue", "purple", "brown", "black",
                "grey", "white", "silver", "gold",
            ],
        );
        pinned(level, &["balance", "measure", "explain", "model"]);
        pinned(support, &["sentences", "questions", "none"]);
    }
}
